#pragma once
/// \file
/// What happened in a course, for the line under the time axis.

#include "app/charts/curve_picture.h"
#include "core/journal/state.h"

namespace ebbline::deskapp {

/// Days since the treatment's midnight: the whole is the day of recovery, the fraction the local time of day.
double recoveryDays(const clock::Moment& treated, const clock::Moment& at);

/// Warnings shown, reminders done, what people did about findings, entries opened, entries without scores, photographs,
/// the follow-up; by time, and each word once a day. Empty without a treatment, which is day 0.
QList<charts::Event> eventsOf(const journal::CourseState& course);

/// The same, day by day, for whoever does not see the line.
QString eventsSentence(const QList<charts::Event>& events);

}  // namespace ebbline::deskapp
