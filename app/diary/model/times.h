#pragma once
/// \file
/// Times as the diary says them: the wall clock at which something was, in the language's form.

#include "core/clock/instant.h"

#include <QString>

namespace ebbline::diaryapp {

QString clockText(const clock::Moment& moment);                          ///< "14:05"
QString timeText(int minuteOfDay);                                       ///< the same of a local minute 0..1439
QString dateText(const clock::Moment& moment);                           ///< "22 March"
/// "Monday, 22 March 2027, 14:05 UTC+1": for what leaves the program, where neither year nor zone is known.
QString stampText(const clock::Moment& moment);
QString whenText(const clock::Moment& moment, const clock::Moment& now);  ///< "today 14:05", "Monday 9:12"
QString dayNameText(const clock::Moment& moment, const clock::Moment& now);  ///< "Today", "Yesterday", "22 March"
QString dayText(int day);                                                ///< "Day 2"
/// "14 minutes", "3 hours", "2 days": rounded down.
QString lengthText(std::chrono::minutes length);
/// "until day 13", "until tomorrow", "today": the last day an instruction holds.
QString untilText(int lastDay, int today);

}  // namespace ebbline::diaryapp
