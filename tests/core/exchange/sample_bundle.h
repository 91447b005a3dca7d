#pragma once
/// \file
/// A course with one of everything that a bundle holds, for tests.

#include "tests/core/records/sample_bodies.h"

#include "core/exchange/fhir_bundle.h"

#include <nlohmann/json.hpp>

#include <stdexcept>

namespace ebbline::test {

using Json = nlohmann::json;

inline exchange::CourseRecord sample()
{
    exchange::CourseRecord record;
    record.course = sampleCourse;
    record.treatment = sampleTreatment();
    record.treated = record.treatment->at;
    record.baseline = record.treatment->baseline;
    record.entries = {sampleEntry(9), sampleEntry(10)};
    for (const records::Body& body : sampleBodies()) {
        if (const auto* answer = std::get_if<records::ReminderAnswered>(&body))
            record.answers = {*answer};
        if (const auto* message = std::get_if<records::MessageWritten>(&body))
            record.messages = {*message};
        if (const auto* visit = std::get_if<records::FollowUpRecorded>(&body))
            record.followUp = *visit;
        if (const auto* read = std::get_if<records::MessageRead>(&body))
            record.reads = {*read};
        if (const auto* taken = std::get_if<records::PhotoTaken>(&body))
            record.pictures = {{taken->manifest.photo, taken->pose, taken->entry, taken->at, std::nullopt}};
    }
    record.treatment->consentGiven = true;
    record.corrections = {{idOf<recovery::EntryTag>(10), momentAt("2027-03-02T20:30:00+01:00")}};
    record.care = exchange::PlannedCare{"usual", aftercare::defaultCarePlan(), momentAt("2027-03-22T10:30:00+01:00")};
    record.care->plan.instructions[3].clinicText = "Ten minutes, with a cloth between.";
    record.care->plan.instructions[1].ignoresQuietHours = true;
    exchange::PictureFacts facts{"photo-001-day-1-left.jpg", 41'234, {}};
    facts.sha1.fill(0xa5);
    record.pictures[0].picture = facts;
    return record;
}

/// One that was answered, and one that nobody answered.
inline std::vector<exchange::DueReminder> sampleReminders()
{
    return {{"dressings-off/0/1140", momentAt("2027-03-01T19:00:00+01:00")}, {"entry-points/1/1260", momentAt("2027-03-02T21:00:00+01:00")}};
}

inline std::string written(const exchange::CourseRecord& record)
{
    return exchange::writeBundle(record, {}, {.patientName = "", .written = record.treated, .program = "test", .reminders = sampleReminders()});
}

inline std::vector<Json> resources(const std::string& bundle, const std::string& type)
{
    std::vector<Json> found;
    const Json whole = Json::parse(bundle);
    for (const Json& entry : whole["entry"]) {
        if (entry["resource"]["resourceType"] == type)
            found.push_back(entry["resource"]);
    }
    return found;
}

/// The first resource of a type, with its fullUrl, in a bundle that has one.
inline Json& entryOf(Json& bundle, const char* type)
{
    for (Json& entry : bundle["entry"]) {
        if (entry["resource"]["resourceType"] == type)
            return entry;
    }
    throw std::logic_error(std::string("the sample has no ") + type);
}

/// The whole bundle with one element changed by `change`.
template <typename Change>
Result<exchange::CourseRecord> changed(const std::string& type, Change change)
{
    Json bundle = Json::parse(written(sample()));
    for (Json& entry : bundle["entry"]) {
        if (entry["resource"]["resourceType"] == type)
            change(entry["resource"]);
    }
    return exchange::readBundle(bundle.dump());
}

}  // namespace ebbline::test
