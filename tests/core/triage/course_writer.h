#pragma once
/// \file
/// A course as devices write it, operation by operation, for tests of what is found in it.

#include "core/triage/queue.h"

#include "tests/core/records/sample_bodies.h"

namespace ebbline::test {

inline const auto treatedAt = momentAt("2027-03-01T10:00:00+01:00");

inline clock::Moment hoursAfter(double hours)
{
    clock::Moment moment = treatedAt;
    moment.at += std::chrono::milliseconds(static_cast<std::int64_t>(hours * 3'600'000));
    return moment;
}

inline records::CourseOpened openedCourse()
{
    return {sampleCourse, treatedAt, "Dr. Ada Lund", {}, hoursAfter(21 * 24), {}, triggers::defaultProtocol(), {}};
}

inline recovery::Entry entryAt(std::uint8_t number, double hours)
{
    recovery::Entry entry;
    entry.id = idOf<recovery::EntryTag>(number);
    entry.course = sampleCourse;
    entry.at = entry.recordedAt = hoursAfter(hours);
    return entry;
}

inline void setScore(recovery::Entry& entry, recovery::Symptom symptom, recovery::Side side, int points)
{
    entry.scores.insert_or_assign(recovery::Stream{symptom, side}, *recovery::Score::of(points));
}

struct Writer {
    std::uint8_t device;
    std::uint64_t number = 0;

    journal::Operation write(const records::Body& body, std::uint64_t time, std::optional<journal::OperationId> corrects = {})
    {
        journal::Operation operation;
        operation.id = {idOf<envelope::DeviceTag>(device), ++number};
        operation.stamp = clock::HybridTime{time << 16};
        operation.entered = treatedAt;
        operation.kind = static_cast<std::uint16_t>(records::kindOf(body));
        operation.course = records::courseOf(body);
        operation.supersedes = corrects;
        operation.body = records::encode(body);
        return operation;
    }
};

inline records::FindingActed actOn(const std::string& finding, records::Act act, const clock::Moment& at, const char* by = "Dr. Ada Lund")
{
    return {sampleCourse, finding, act, act == records::Act::closed ? records::Outcome::advised : records::Outcome::none, by, {}, at};
}

inline std::vector<triage::Finding> findingsIn(const journal::State& state, const clock::Moment& now)
{
    const auto course = state.courses.find(sampleCourse);
    return course == state.courses.end() ? std::vector<triage::Finding>{} : triage::findingsOf(course->second, now);
}

}  // namespace ebbline::test
