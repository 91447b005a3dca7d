#pragma once
/// \file
/// Times as the desk writes them: the wall clock at which something happened, in the language's
/// own form. Days of recovery are counted from 0, the day of the treatment.

#include "core/clock/instant.h"

#include <QDate>
#include <QString>

#include <optional>

namespace ebbline::deskapp {

/// "Today 14:05", "Yesterday 09:12", else "12 Nov, 09:12"; `now` in the reader's zone.
QString whenText(const clock::Moment& moment, const clock::Moment& now);
/// "12 Nov 2026, 14:05 UTC+1": for paper, where "today" would soon be wrong and nobody knows the zone.
QString stampText(const clock::Moment& moment);
/// "14:05".
QString clockText(const clock::Moment& moment);
/// "14:05 UTC+1": for paper.
QString zonedClockText(const clock::Moment& moment);
/// "12 November 2026".
QString dateText(const clock::Moment& moment);
/// "25 min", "3 h", "2 days": how long ago, rounded down; "just now" under a minute.
QString agoText(const clock::Moment& moment, const clock::Moment& now);
/// "25 min", "3 h", "2 days": rounded down.
QString lengthText(std::chrono::minutes length);
/// "Day 5".
QString dayText(int day);

QDate dateOf(const clock::Moment& moment);
QDate dateOf(clock::LocalDay day);

/// What stands in a field to type a day, "2027-03-22", or a time of day, "14:05": the same in every language.
QString dayField(clock::LocalDay day);
QString timeField(int minuteOfDay);
/// What was typed there; empty if it is none. A time is also read as the language writes it, in any digits.
std::optional<clock::LocalDay> dayFrom(const QString& text);
std::optional<int> minuteFrom(const QString& text);

}  // namespace ebbline::deskapp
