#pragma once
/// \file
/// The numbers of the practice page in words, and what is lacking where there is no number.

#include "core/desk/practice.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace ebbline::deskapp {

/// The context of its translations.
class Practice {
    Q_DECLARE_TR_FUNCTIONS(Practice)
};

/// "4.8%", as the language sets it.
QString percentText(double share);
/// "12.3", to so many decimals; never "-0.0".
QString numberText(double value, int decimals = 1);
/// A probability as so many of a hundred: "12.3"; "fewer than 0.1" rather than 0.0.
QString ofHundredText(double probability);
/// "Not enough to say: 4 known outcomes, 10 are needed".
QString lackText(const learning::NotEnough& lack);
/// "4.8 % (2.1 to 10.6)", or what is lacking.
QString shareText(const learning::Answer<learning::Share>& share);
/// "3 of 62 courses".
QString countText(long part, long whole);
/// "Where threads end".
QString wayName(learning::Way way);
/// "Short of the moving zone", "19 G", "With epinephrine".
QString groupName(learning::Way way, const std::string& group);
/// What to beware of when two groups of this way are held against each other.
QString wayCaution(learning::Way way);
/// A number for a file: with a point, shortest form that reads back the same.
QString rawNumber(double value);

}  // namespace ebbline::deskapp
