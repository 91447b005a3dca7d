#pragma once
/// \file
/// The photographs of a course in words: which day, which view, beside which entry, and what is true of each now.
/// Left and right are the patient's own.

#include "app/desk/model/row_list.h"
#include "core/desk/desk.h"

#include <QMetaType>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <set>

namespace ebbline::deskapp {

struct PhotoRow {
    Q_GADGET
    QML_VALUE_TYPE(photoRow)
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(QString day MEMBER day)
    Q_PROPERTY(QString view MEMBER view)
    Q_PROPERTY(QString when MEMBER when)
    Q_PROPERTY(QString beside MEMBER beside)  ///< the entry it was taken beside, or who put it in; empty: it stands by itself
    Q_PROPERTY(QString state MEMBER state)    ///< why there is no picture; empty: there is one
    Q_PROPERTY(bool shown MEMBER shown)       ///< there is a picture
    Q_PROPERTY(QString spoken MEMBER spoken)

public:
    QString key;
    QString day;
    QString view;
    QString when;
    QString beside;
    QString state;
    bool shown = false;
    QString spoken;
    bool operator==(const PhotoRow&) const = default;
};

/// "Front", "From the patient's left".
QString poseName(photos::Pose pose);
/// On which side of the picture the patient's sides are: one sentence.
QString poseSides(photos::Pose pose);

/// "Today 20:05", or "right after the treatment" of one that the clinic took then.
QString takenText(const desk::CoursePhoto& photo, const clock::Moment& now);
/// Who put one of the clinic's in; empty for a patient's.
QString putInText(const desk::CoursePhoto& photo);

/// The clinic's own first, then the patient's, each oldest first, those that were taken back among them. `unreadable`: what would not be decoded here.
QList<RowList::Row> photoRows(const std::vector<desk::CoursePhoto>& photos, const journal::CourseState& course,
                              const clock::Moment& now, const std::set<photos::PhotoId>& unreadable);
/// "12 photographs · 1 still arriving"; empty without any.
QString photosSummary(const QList<RowList::Row>& rows, int arriving);
/// Beside which entry it was taken: "Beside the entry of today 20:05". Empty if it stands by itself.
QString besideText(const journal::CourseState& course, const recovery::EntryId& entry, const clock::Moment& now);
/// "Photographs: Front, From the patient's left" of one entry; empty without any.
QString photosOfEntry(const journal::CourseState& course, const recovery::EntryId& entry);

}  // namespace ebbline::deskapp
