#pragma once
/// \file
/// Rules over a course that ask for a review. Judged entry by entry in time order, never looking
/// ahead: what is found at a moment depends on entries up to that moment only.

#include "core/recovery/entry.h"
#include "core/triggers/protocol.h"

#include <map>
#include <optional>
#include <vector>

namespace ebbline::triggers {

/// One firing of one trigger. `numbers` are what the sentence needs, by name: "score", "day",
/// "usualHigh", "lowest", "left", "right", "statistic", "threshold". A slow recovery has "mean", of the last three answers
/// of the stream that it names. A rebound has "neverFell" where no score before its "lowest" was higher. A fold that stays has what it rests on: "weekBefore", its score then; "together", its
/// points over the last three days; "beginning", its mean score up to day 4; none of them if it is noted for the day. A silence has "waited", the days
/// after which it was raised, and "days", how long it has lasted by now or until somebody wrote: the
/// only number that goes on after a finding was raised. One that is raised because a visit was missed has
/// "visit", the visit's day. Sides that part over several symptoms together have "apart", the points of all of them.
/// A level or a slow recovery that names no side has "overall": 1 if it is over all symptoms, 0 if one symptom was scored
/// without sides.
struct Finding {
    Trigger trigger;
    recovery::Urgency urgency;
    recovery::Stream stream{recovery::Symptom::pain, recovery::Side::none};
    clock::Moment raisedAt;
    int day = 0;
    std::map<std::string, double> numbers;
    /// Whose numbers these are, if that may be another than the stream's: one side that fills is one finding, whichever symptom shows it.
    std::optional<recovery::Symptom> shown = {};

    /// What is told of, in words and curves.
    recovery::Symptom symptom() const { return shown.value_or(stream.symptom); }
    bool operator==(const Finding&) const = default;
};

/// Scores of one moment.
struct Observation {
    clock::Moment at;
    recovery::Scores scores;
};

struct CourseInput {
    clock::Moment treated;
    recovery::Scores baseline;  ///< practitioner's, right after treatment
    std::vector<Observation> observations;                 ///< any order; sorted inside
};

/// Whether a level or a slow recovery is one of all symptoms together; its stream then names the symptom that led when it
/// was raised, and no other finding stands for the same. A finding of before it was marked counts as one if it names no side.
bool isOverall(const Finding& finding);

/// All findings of a course up to `now`, oldest first. A trigger fires once per stream, and once over all symptoms
/// whichever of them leads, until it has been quiet for a day that has an entry, or becomes more urgent. Silence is judged against
/// `now`. Entries from before the treatment count as made right after it, later ones than `now` not
/// at all; the same entry twice is the same as once; of several answers of a day the highest counts.
std::vector<Finding> judge(const CourseInput& course, const Protocol& protocol, const clock::Moment& now);

/// What is known of the visit on the plan's followUpDay. `unknown`, as in a table of scores: nothing is expected
/// after it. `awaited`: no follow-up was recorded by `now`, so that a patient who stays silent has missed it.
enum class Visit : std::uint8_t { unknown, awaited };

/// The same for a course of which everything has arrived: an entry that lies after `now` is judged as
/// it was written, because one of two clocks is wrong and a finding must not wait for the other. Silence
/// alone is told by `now`: an entry after it neither ends a silence nor begins one.
std::vector<Finding> judgeArrived(const CourseInput& course, const Protocol& protocol, const clock::Moment& now,
                                  Visit visit = Visit::unknown);

/// One English sentence that a practitioner would say, with the numbers behind it.
std::string explain(const Finding& finding);

}  // namespace ebbline::triggers
