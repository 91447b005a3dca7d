#pragma once
/// \file
/// What stands on the follow-up sheet of a course, in words and pictures, before any layout.

#include "app/charts/curve_picture.h"
#include "app/desk/model/course_rows.h"
#include "app/desk/model/treatment_editor.h"
#include "app/desk/model/workplace.h"
#include "app/desk/sheet/sheet_photos.h"

namespace ebbline::deskapp {

/// A line "label: value"; an empty value is a line to be filled in by hand.
struct SheetField {
    QString label;
    QString value;
};

struct SheetCurves {
    QString symptom;
    charts::CurvePicture left;
    charts::CurvePicture right;
};

struct SheetContent {
    QString clinic;
    QString title;
    QString patient;
    QString printed;              ///< when and by whom it was made
    QList<SheetField> facts;
    QList<face::Track> tracks;
    QList<PlacementRow> placements;
    QStringList anaesthetic;
    QStringList plan;             ///< what was planned and what became of it; empty: no plan was kept
    QString note;
    QStringList corrections;  ///< of the record of the treatment, the newest first
    QList<SheetCurves> curves;    ///< symptoms that have at least one score
    QList<charts::Event> events;
    QString bandLegend;
    QList<SheetPhotoPair> photos;  ///< empty unless they were asked for
    QList<FindingRow> findings;
    QStringList calls;            ///< that were about no finding
    QString adherence;
    QString entries;              ///< how many, on how many days
    QStringList openQuestions;
    QList<SheetField> followUp;
    bool followUpRecorded = false;

    /// The whole sheet as plain text, for who cannot see it.
    QString asText() const;
};

/// \returns as Desk::course().
Result<SheetContent> sheetOf(Workplace& workplace, const recovery::CourseId& course);

}  // namespace ebbline::deskapp
