#pragma once
/// \file
/// Emergency numbers by the region where the phone is: before a clinic is joined, and beside the clinic's own where they differ.
/// Sources: docs/clinical/emergency_numbers.md.

#include <QList>
#include <QLocale>
#include <QString>
#include <QTimeZone>

namespace ebbline::diaryapp {

struct RegionNumber {
    QString title;   ///< "Emergency number (United Kingdom)"
    QString number;  ///< as dialled, digits only
};

/// Where a phone is: the region of its time zone, which follows a traveller and does not hang on the language; where the zone
/// belongs to no region, that of its settings.
QLocale::Territory regionOf(const QTimeZone& zone, QLocale::Territory settings);
/// The same of this device.
QLocale::Territory regionHere();

/// The number for an ambulance in a region. Where none is known, all that are, each with its place.
QList<RegionNumber> emergencyNumbersIn(QLocale::Territory region);

}  // namespace ebbline::diaryapp
