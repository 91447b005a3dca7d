#pragma once
/// \file
/// The photographs on the follow-up sheet: the first of each view, which is the clinic's own from right after the treatment where
/// there is one, and the last, aligned if somebody marked the eyes
/// in both. On paper only when the practitioner asks for it, and in colour, unlike the rest of the sheet.

#include "app/desk/model/workplace.h"
#include "app/desk/photos/photo_lay.h"

#include <QFont>
#include <QList>
#include <QString>

class QPainter;

namespace ebbline::deskapp {

struct SheetPhoto {
    photos::PhotoId photo;
    QString when;              ///< "Day 0, 12 Nov 2026, 20:05" or "Day 0, right after the treatment"
    MarkedPicture marked;      ///< without its picture until that was decoded
    bool unreadable = false;
};

/// One view. `last` is empty if there is only one photograph of it.
struct SheetPhotoPair {
    QString view;
    SheetPhoto first;
    std::optional<SheetPhoto> last;

    bool isAligned() const { return last && first.marked.eyes && last->marked.eyes; }
    /// "Front: day 0, …, and day 14, …, aligned by the eyes".
    QString asText() const;
    /// What is said of the two: aligned, as taken, or the only one.
    QString how() const;
};

/// Views of which at least one photograph is here: front, from the patient's left, from the patient's right.
QList<SheetPhotoPair> sheetPhotosOf(Workplace& workplace, const recovery::CourseId& course);

/// Height of the pictures with the words under them, in the units of the sheet.
inline constexpr double sheetPhotoHeight = 236;
/// The first on the left and the last on the right, in every language. Texts run as the painter's layout does.
void paintSheetPhotos(QPainter& painter, const QRectF& area, const SheetPhotoPair& pair, const QFont& font);

}  // namespace ebbline::deskapp
