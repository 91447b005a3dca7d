#pragma once
/// \file
/// Emergency numbers before a clinic is joined, by the region of the phone. A clinic's own number takes their place.
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
