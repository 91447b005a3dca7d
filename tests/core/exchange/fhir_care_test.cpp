// Of a course's bundle: the questionnaire, the care plan with its reminders, consents, photographs, and what was done about findings.
#include "tests/core/exchange/sample_bundle.h"

#include "core/exchange/picture_digest.h"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <fstream>
#include <map>
#include <set>

using namespace ebbline;
using exchange::CourseRecord;
using test::Json;
using test::resources;
using test::sample;
using test::written;

namespace {

/// The value of an extension of ours.
Json valueOf(const Json& resource, const std::string& name, const std::string& key)
{
    for (const Json& one : resource.value("extension", Json::array()))
        if (one["url"] == "urn:ebbline:" + name)
            return one.value(key, Json());
    return {};
}

journal::CourseState sampleState()
{
    journal::CourseState course;
    course.treatment = records::TreatmentRecorded{test::sampleTreatment()};
    course.opened = test::openedCourse(7);
    course.opened->treated = test::sampleTreatment().at;
    course.opened->followUp = test::momentAt("2027-03-24T00:00:00+01:00");
    const recovery::Entry entry = test::sampleEntry();
    course.entries[entry.id].versions = {{entry, {}, entry.recordedAt}, {entry, {}, test::momentAt("2027-03-02T20:30:00+01:00")}};
    const auto taken = [&](std::uint8_t number, std::uint8_t beside) {
        const auto manifest = test::sampleManifest(number);
        course.photos[manifest.photo].value = {test::sampleCourse, manifest, photos::Pose::front, test::idOf<recovery::EntryTag>(beside), entry.at};
    };
    taken(5, 9);
    taken(6, 9);
    taken(8, 77);
    // The clinic's own is its note, and not the patient's.
    taken(7, 9);
    course.clinicPhotos.emplace(test::idOf<photos::PhotoTag>(7), "Dr. Ada Lund");
    course.photosRemoved[test::idOf<photos::PhotoTag>(6)] = {test::sampleCourse, test::idOf<photos::PhotoTag>(6), entry.at};
    return course;
}

}  // namespace

TEST_CASE("the questionnaire asks everything that an entry can answer, and offers every score", "[exchange][fhir]")
{
    const auto questionnaires = resources(written(sample()), "Questionnaire");
    REQUIRE(questionnaires.size() == 1);
    std::set<std::string> links;
    std::size_t scores = 0;
    for (const Json& item : questionnaires[0]["item"]) {
        CHECK(links.insert(item["linkId"].get<std::string>()).second);
        CHECK_FALSE(item["text"].get<std::string>().empty());
        if (item["type"] == "choice") {
            ++scores;
            REQUIRE(item["answerOption"].size() == 11);
            for (int points = 0; points <= 10; ++points)
                CHECK(item["answerOption"][static_cast<std::size_t>(points)]["valueInteger"] == points);
        }
    }
    CHECK(scores == recovery::allSymptoms.size() * 2);
    for (const auto symptom : recovery::allSymptoms)
        for (const auto side : recovery::bothSides)
            CHECK(links.contains("score." + std::string(recovery::word(symptom)) + "." + std::string(recovery::word(side))));
    for (const auto sign : recovery::allSigns)
        CHECK(links.contains("sign." + std::string(recovery::word(sign))));
    CHECK(links.contains("temperature"));
    CHECK(links.contains("note"));
    // Who changes what is asked gives the questionnaire another version: an entry names the one that it answered.
    CHECK(questionnaires[0]["version"] == "1");
    CHECK(links.size() == 38);
}

TEST_CASE("every entry names the questionnaire that it answered, in its version", "[exchange][fhir]")
{
    const std::string bundle = written(sample());
    const Json questionnaire = resources(bundle, "Questionnaire").at(0);
    const auto responses = resources(bundle, "QuestionnaireResponse");
    CHECK(responses.size() == 2);
    for (const Json& response : responses)
        CHECK(response["questionnaire"] == questionnaire["url"].get<std::string>() + "|" + questionnaire["version"].get<std::string>());
}

TEST_CASE("the questionnaire asks for signs in the words of docs/formats/tables.md", "[exchange][fhir][docs]")
{
    std::ifstream file(EBBLINE_TABLES_PAGE);
    const std::string page((std::istreambuf_iterator<char>(file)), {});
    std::size_t asked = 0;
    const Json questionnaire = resources(written(sample()), "Questionnaire").at(0);
    for (const Json& item : questionnaire["item"]) {
        const auto link = item["linkId"].get<std::string>();
        if (!link.starts_with("sign."))
            continue;
        ++asked;
        const std::string row = "| `" + link.substr(5) + "` | " + item["text"].get<std::string>() + " |";
        CAPTURE(row);
        CHECK(page.find(row) != std::string::npos);
    }
    CHECK(asked == recovery::allSigns.size());
}

TEST_CASE("the care plan holds every instruction and every reminder, and each reminder names the plan", "[exchange][fhir]")
{
    const CourseRecord record = sample();
    const std::string bundle = written(record);
    Json whole = Json::parse(bundle);
    const Json& plan = test::entryOf(whole, "CarePlan");
    std::set<std::string> planned;
    std::size_t instructions = 0;
    for (const Json& activity : plan["resource"]["activity"]) {
        CHECK(activity.contains("detail") != activity.contains("reference"));
        if (activity.contains("reference"))
            planned.insert(activity["reference"]["reference"].get<std::string>());
        else
            CHECK(valueOf(activity["detail"], "instruction", "valueString") == record.care->plan.instructions.at(instructions++).id);
    }
    CHECK(instructions == record.care->plan.instructions.size());
    CHECK(plan["resource"]["activity"][1]["detail"]["scheduledString"] == "day 0 to 4, every day, at 21:00 by the patient's clock");
    std::map<std::string, Json> tasks;
    for (const Json& entry : whole["entry"]) {
        if (entry["resource"]["resourceType"] != "Task")
            continue;
        CHECK(planned.contains(entry["fullUrl"].get<std::string>()));
        CHECK(entry["resource"]["basedOn"][0]["reference"] == plan["fullUrl"]);
        tasks[entry["resource"]["description"].get<std::string>()] = entry["resource"];
    }
    REQUIRE(tasks.size() == 2);
    CHECK(planned.size() == 2);
    CHECK(tasks["dressings-off/0/1140"]["status"] == "on-hold");
    CHECK(tasks["dressings-off/0/1140"]["restriction"]["period"]["start"] == "2027-03-01T19:00:00+01:00");
    CHECK(tasks["entry-points/1/1260"]["status"] == "requested");
    CHECK_FALSE(tasks["entry-points/1/1260"].contains("lastModified"));
    CHECK(plan["resource"]["status"] == "completed");  // there was a follow-up

    CourseRecord running = record;
    running.followUp.reset();
    CHECK(resources(written(running), "CarePlan").at(0)["status"] == "active");
}

TEST_CASE("docs/formats/fhir.md names every kind of instruction by its number", "[exchange][fhir][docs]")
{
    std::ifstream file(EBBLINE_FHIR_PAGE);
    const std::string page((std::istreambuf_iterator<char>(file)), {});
    CourseRecord record = sample();
    record.care->plan.instructions.clear();
    for (int kind = 1; kind <= static_cast<int>(aftercare::InstructionKind::custom); ++kind)
        record.care->plan.instructions.push_back({"id-" + std::to_string(kind), static_cast<aftercare::InstructionKind>(kind), 0, 3, {}, 2, {}, false});
    std::string row = "| `kind` | ";
    const Json plan = resources(written(record), "CarePlan").at(0);
    for (const Json& activity : plan["activity"]) {
        if (!activity.contains("detail"))
            continue;
        const int kind = valueOf(activity["detail"], "kind", "valueInteger").get<int>();
        row += (kind == 1 ? "" : ", ") + std::to_string(kind) + " " + activity["detail"]["code"]["coding"][0]["code"].get<std::string>();
        CHECK(activity["detail"]["scheduledString"] == "day 0 to 3, every 2 days");
    }
    CAPTURE(row);
    CHECK(row.ends_with("17 custom"));
    CHECK(page.find(row + " |") != std::string::npos);
    CHECK(exchange::readBundle(written(record)).value() == record);
}

TEST_CASE("an answer about a visit that was moved is not the answer about the one that holds", "[exchange][fhir]")
{
    CourseRecord record = sample();
    const std::string key = "follow-up/21/480";
    record.answers = {{test::sampleCourse, key, records::ReminderAnswer::done, test::momentAt("2027-03-10T09:00:00+01:00"), std::nullopt}};
    const auto statuses = [&](bool isOlder) {
        const auto tasks = resources(exchange::writeBundle(record, {}, {.patientName = "", .written = record.treated, .program = "",
                                                                       .reminders = {{key, test::momentAt("2027-03-24T08:00:00+01:00"), isOlder}}}),
                                     "Task");
        std::vector<std::string> found;
        for (const Json& task : tasks)
            found.push_back(task["status"].get<std::string>() + (task.contains("restriction") ? " due" : ""));
        return found;
    };
    CHECK(statuses(false) == std::vector<std::string>{"completed due"});
    CHECK(statuses(true) == std::vector<std::string>{"completed", "requested due"});
}

TEST_CASE("every thread says where it lies", "[exchange][fhir]")
{
    const CourseRecord record = sample();
    Json whole = Json::parse(written(record));
    const auto uses = resources(whole.dump(), "DeviceUseStatement");
    REQUIRE(uses.size() == record.treatment->placements.size());
    const Json procedure = resources(whole.dump(), "Procedure").at(0);
    for (std::size_t i = 0; i < uses.size(); ++i) {
        CHECK(uses[i]["device"] == procedure["focalDevice"][i]["manipulated"]);
        CHECK(uses[i]["bodySite"] == procedure["bodySite"][i]);
    }
    CHECK(uses[0]["bodySite"]["text"] == "midface, the patient's left");
    CHECK(uses[1]["bodySite"]["text"] == "midface, the patient's right");
    CHECK(uses[0]["bodySite"]["coding"][0]["code"] == "midface-L");
    CHECK(uses[1]["bodySite"]["coding"][0]["code"] == "midface-R");
    std::set<std::string> sides;
    for (const Json& observation : resources(whole.dump(), "Observation"))
        if (observation.contains("bodySite"))
            sides.insert(observation["bodySite"]["coding"][0]["code"].get<std::string>() + ": " + observation["bodySite"]["text"].get<std::string>());
    CHECK(sides == std::set<std::string>{"L: the patient's left", "R: the patient's right"});
}

TEST_CASE("a consent is in the bundle where it was recorded, and nowhere else", "[exchange][fhir][privacy]")
{
    CourseRecord record = sample();
    const auto scopes = [&record] {
        std::vector<std::string> found;
        for (const Json& consent : resources(written(record), "Consent"))
            found.push_back(consent["scope"]["coding"][0]["code"].get<std::string>());
        return found;
    };
    CHECK(scopes() == std::vector<std::string>{"treatment"});
    record.treatment->learningConsent = true;
    CHECK(scopes() == std::vector<std::string>{"treatment", "learning"});
    CHECK(exchange::readBundle(written(record)).value() == record);
    record.treatment->consentGiven = record.treatment->learningConsent = false;
    CHECK(scopes().empty());
}

TEST_CASE("a finding points at what raised it, and says who did what with which outcome", "[exchange][fhir]")
{
    const CourseRecord record = sample();
    triage::Finding finding{};
    finding.key = "w/fever/none/09";
    finding.urgency = recovery::Urgency::callNow;
    finding.what = warnings::Finding{"fever", recovery::Urgency::callNow, recovery::Side::none, {"temperature 38.2 C"}};
    finding.entry = test::idOf<recovery::EntryTag>(9);
    finding.raisedAt = test::momentAt("2027-03-02T20:00:00+01:00");
    finding.changedSince = true;
    finding.acts = {{test::sampleCourse, finding.key, records::Act::visitBroughtForward, records::Outcome::advised, "Dr. Ada Lund", "Comes at six.",
                     finding.raisedAt}};
    triage::Finding rebound = finding;
    rebound.key = "t/rebound/swelling/L/1";
    rebound.what = triggers::Finding{triggers::Trigger::rebound, recovery::Urgency::callNow, {recovery::Symptom::swelling, recovery::Side::left},
                                     finding.raisedAt, 1, {{"score", 5}, {"lowest", 2}}};
    rebound.changedSince = false;
    rebound.acts.clear();
    const Json whole = Json::parse(exchange::writeBundle(record, std::vector{finding, rebound}, {.patientName = "", .written = record.treated, .program = ""}));
    std::vector<Json> issues;
    std::map<std::string, Json> byUrl;
    for (const Json& entry : whole["entry"]) {
        byUrl[entry["fullUrl"].get<std::string>()] = entry["resource"];
        if (entry["resource"]["resourceType"] == "DetectedIssue")
            issues.push_back(entry["resource"]);
    }
    REQUIRE(issues.size() == 2);
    const auto evidence = [&](const Json& issue, std::size_t place) { return byUrl[issue["evidence"][0]["detail"][place]["reference"].get<std::string>()]; };
    REQUIRE(issues[0]["evidence"][0]["detail"].size() == 2);
    CHECK(evidence(issues[0], 0)["resourceType"] == "QuestionnaireResponse");
    CHECK(evidence(issues[0], 1)["code"]["coding"][0]["code"] == "8310-5");
    CHECK(evidence(issues[1], 1)["code"]["coding"][0]["code"] == "swelling");
    CHECK(valueOf(issues[0], "changed-since", "valueBoolean") == true);
    CHECK(valueOf(issues[1], "changed-since", "valueBoolean").is_null());

    const Json& done = issues[0]["mitigation"].at(0);
    CHECK(done["action"]["coding"][0]["system"] == "urn:ebbline:act");
    CHECK(done["action"]["coding"][0]["code"] == "visit-brought-forward");
    CHECK(done["action"]["text"] == "visit brought forward: Comes at six.");
    CHECK(valueOf(done, "outcome", "valueString") == "advised");
    CHECK(done["author"]["display"] == "Dr. Ada Lund");
    CHECK(done["date"] == "2027-03-02T20:00:00+01:00");
    CHECK_FALSE(issues[1].contains("mitigation"));
}

TEST_CASE("a photograph goes by size and hash, and by its file only where one lies beside the bundle", "[exchange][fhir][photos]")
{
    CourseRecord record = sample();
    const bytes::View picture = bytes::viewOf("abc");
    const photos::PhotoId name = record.pictures[0].photo;
    const auto open = [&](const photos::PhotoId&) -> Result<bytes::Bytes> { return bytes::Bytes(picture.begin(), picture.end()); };
    const auto attachment = [&record] { return resources(written(record), "DocumentReference").at(0)["content"][0]["attachment"]; };
    exchange::describePictures(record, open);
    CHECK(attachment()["contentType"] == "image/jpeg");
    CHECK(attachment()["size"] == 3);
    // SHA-1 of "abc": RFC 3174, section 7.3, TEST1, in base64.
    CHECK(attachment()["hash"] == "qZk+NkcGgWq6PiVxeFDCbJzQ2J0=");
    CHECK_FALSE(attachment().contains("url"));
    CHECK_FALSE(attachment().contains("data"));
    CHECK(exchange::readBundle(written(record)).value() == record);

    const std::vector<std::pair<std::string, photos::PhotoId>> files{{"photo-001-day-1-left.jpg", name}};
    exchange::describePictures(record, open, files);
    CHECK(attachment()["url"] == "photo-001-day-1-left.jpg");
    CHECK(exchange::readBundle(written(record)).value() == record);

    record.pictures[0].picture.reset();
    exchange::describePictures(record, [](const photos::PhotoId&) -> Result<bytes::Bytes> { return fail(Reason::notEnough, "photo: still coming"); }, files);
    CHECK_FALSE(attachment().contains("size"));
    CHECK_FALSE(attachment().contains("url"));
    CHECK(exchange::readBundle(written(record)).value() == record);
}

TEST_CASE("no key of a photograph is in a bundle", "[exchange][fhir][photos][privacy]")
{
    const auto manifest = test::sampleManifest();
    const std::string bundle = written(sample());
    CHECK(bundle.find(exchange::toBase64(manifest.key)) == std::string::npos);
    CHECK(bundle.find(exchange::toBase64(manifest.hash)) == std::string::npos);
}

TEST_CASE("what goes out is what stands: photographs that were taken back stay, and entries that have not arrived are not named", "[exchange][fhir]")
{
    const auto record = exchange::recordOf(test::sampleCourse, sampleState());
    REQUIRE(record);
    REQUIRE(record->pictures.size() == 2);
    CHECK(record->pictures[0].photo == test::idOf<photos::PhotoTag>(5));
    CHECK(record->pictures[0].entry == test::idOf<recovery::EntryTag>(9));
    CHECK(record->pictures[1].photo == test::idOf<photos::PhotoTag>(8));
    CHECK(record->pictures[1].entry.isNull());
    CHECK(record->corrections == std::vector<exchange::Correction>{{test::idOf<recovery::EntryTag>(9), test::momentAt("2027-03-02T20:30:00+01:00")}});
    REQUIRE(record->care);
    CHECK(record->care->plan.followUpDay == 23);  // the visit was agreed for another day than the plan's
    CHECK(exchange::readBundle(written(*record)).value() == *record);
}

TEST_CASE("a bundle counts by one day where record and course part: by the one that judged its findings", "[exchange][fhir]")
{
    auto course = sampleState();
    course.opened->treated.at -= std::chrono::hours(24);
    REQUIRE(course.isCountedOtherwise());
    const auto record = exchange::recordOf(test::sampleCourse, course);
    REQUIRE(record);
    CHECK(record->treated == course.opened->treated);
    CHECK(record->baseline == course.opened->baseline);
    CHECK(record->treatment->at == record->treated);
    CHECK(exchange::readBundle(written(*record)).value() == *record);
}

TEST_CASE("a clinic's words that are no UTF-8 do not stop an export", "[exchange][fhir]")
{
    CourseRecord record = sample();
    record.care->plan.instructions[0].clinicText = "caf\xe9";
    CHECK(exchange::readBundle(written(record)).has_value());
}

TEST_CASE("reminders go out by the patient's clock, without those that ask for an entry", "[exchange][fhir]")
{
    const auto zone = aftercare::Zone::find("Europe/Berlin").value();
    const auto course = sampleState();
    const auto due = exchange::remindersOf(course, zone, {});
    REQUIRE_FALSE(due.empty());
    const exchange::DueReminder dressings{"dressings-off/0/1140", test::momentAt("2027-03-01T19:00:00+01:00"), false};
    CHECK(std::find(due.begin(), due.end(), dressings) != due.end());
    for (const exchange::DueReminder& reminder : due) {
        CHECK_FALSE(reminder.key.starts_with("diary"));
        CHECK(reminder.due.zone == "Europe/Berlin");
    }
    CHECK(exchange::remindersOf({}, zone, {}).empty());
}

TEST_CASE("what was written before there were questionnaires and plans is read as it was", "[exchange][fhir]")
{
    CourseRecord record = sample();
    record.care.reset();
    record.corrections.clear();
    record.pictures.clear();
    record.reads.clear();
    Json bundle = Json::parse(written(record));
    Json kept = Json::array();
    for (Json entry : bundle["entry"]) {
        const std::string type = entry["resource"]["resourceType"];
        if (type == "Questionnaire" || type == "Consent" || type == "DeviceUseStatement" || entry["resource"].value("status", "") == "requested")
            continue;
        for (const char* fresh : {"questionnaire", "author", "source", "performer", "recipient"})
            entry["resource"].erase(fresh);
        kept.push_back(std::move(entry));
    }
    bundle["entry"] = kept;
    CHECK(exchange::readBundle(bundle.dump()).value() == record);
}

TEST_CASE("answers stand in the order of their questions", "[exchange][fhir]")
{
    CourseRecord record = sample();
    REQUIRE_FALSE(record.entries.empty());
    record.entries[0].present = {recovery::allSigns.back()};
    record.entries[0].absent = {recovery::allSigns.front()};
    const std::string bundle = written(record);
    std::map<std::string, std::size_t> places;
    const Json questionnaire = resources(bundle, "Questionnaire").at(0);
    for (const Json& item : questionnaire["item"])
        places.emplace(item["linkId"].get<std::string>(), places.size());
    for (const Json& response : resources(bundle, "QuestionnaireResponse")) {
        std::vector<std::size_t> order;
        for (const Json& item : response["item"])
            order.push_back(places.at(item["linkId"].get<std::string>()));
        CHECK(std::ranges::is_sorted(order));
    }
}
