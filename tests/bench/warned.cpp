#include "tests/bench/warned.h"

#include "core/warnings/warnings.h"

namespace ebbline::bench {

namespace {

/// What the patient would have on her phone at that moment.
recovery::Entry entryOf(const rehearsal::KnownCourse& course, const triggers::Observation& observation)
{
    recovery::Entry entry;
    entry.at = entry.recordedAt = observation.at;
    entry.scores = observation.scores;
    for (const rehearsal::TickedSigns& ticked : course.signs)
        if (ticked.at.at == observation.at.at)
            for (const recovery::Sign sign : ticked.signs)
                entry.present.insert(sign);
    for (const rehearsal::MeasuredTemperature& measured : course.temperatures)
        if (measured.at.at == observation.at.at)
            entry.temperature = measured.temperature;
    return entry;
}

}  // namespace

std::optional<clock::Moment> firstWarning(const rehearsal::KnownCourse& course, recovery::Urgency urgency, const clock::Moment& from)
{
    for (const triggers::Observation& observation : course.input.observations) {
        if (observation.at.at < from.at)
            continue;
        const auto most = warnings::mostUrgent(warnings::judge(entryOf(course, observation), {.treated = course.input.treated}));
        if (most && *most <= urgency)
            return observation.at;
    }
    return std::nullopt;
}

bool warns(const rehearsal::KnownCourse& course)
{
    return firstWarning(course, recovery::Urgency::callNow, course.input.treated).has_value();
}

}  // namespace ebbline::bench
