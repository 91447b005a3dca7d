#pragma once
/// \file
/// Emergency numbers by the region of the phone: before a clinic is joined, and beside the clinic's own where they differ.
/// Sources: docs/clinical/emergency_numbers.md.

#include <QList>
#include <QLocale>
#include <QString>

namespace ebbline::diaryapp {

struct RegionNumber {
    QString title;   ///< "Emergency number (United Kingdom)"
    QString number;  ///< as dialled, digits only
};

/// The number for an ambulance in a region. Where none is known, all that are, each with its place.
QList<RegionNumber> emergencyNumbersIn(QLocale::Territory region);

}  // namespace ebbline::diaryapp
