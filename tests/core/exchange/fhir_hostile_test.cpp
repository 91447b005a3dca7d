// A bundle that somebody made to mislead: what is there twice, leads nowhere or to somebody else, or has another size than ours
// is refused, whatever else is right.
#include "tests/core/exchange/sample_bundle.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

#include <functional>
#include <initializer_list>

using namespace ebbline;
using test::changed;
using test::entryOf;
using test::Json;
using test::sample;
using test::written;

namespace {

constexpr const char* elsewhere = "urn:uuid:00000000-0000-0000-0000-0000000000ff";

/// Why the sample is refused after `change`; empty: it is read.
std::optional<Reason> refusalOf(const std::function<void(Json&)>& change)
{
    Json bundle = Json::parse(written(sample()));
    change(bundle);
    const auto read = exchange::readBundle(bundle.dump());
    return read ? std::nullopt : std::optional(read.error().reason);
}

/// The same with every resource of a type changed.
std::optional<Reason> refusalOf(const std::string& type, const std::function<void(Json&)>& change)
{
    const auto read = changed(type, change);
    return read ? std::nullopt : std::optional(read.error().reason);
}

/// A copy of the first resource of a type under another name, changed.
void add(Json& bundle, const std::string& type, const std::function<void(Json&)>& change = [](Json&) {})
{
    Json copy = entryOf(bundle, type.c_str());
    copy["fullUrl"] = elsewhere;
    change(copy["resource"]);
    bundle["entry"].push_back(std::move(copy));
}

}  // namespace

TEST_CASE("the sample that the hostile ones are made from is sound", "[exchange][fhir][errors]")
{
    CHECK_FALSE(refusalOf([](Json&) {}));
}

TEST_CASE("what can be in a bundle only once is refused when it comes twice", "[exchange][fhir][errors]")
{
    for (const char* type : {"Patient", "Procedure", "Questionnaire", "CarePlan", "Consent", "Task"}) {
        CAPTURE(type);
        CHECK(refusalOf([type](Json& bundle) { add(bundle, type); }) == Reason::malformed);
    }
    CHECK(refusalOf([](Json& bundle) {
              for (std::size_t i = 0, count = bundle["entry"].size(); i < count; ++i) {
                  Json copy = bundle["entry"][i];
                  if (!copy["resource"].contains("component"))
                      continue;
                  copy["fullUrl"] = elsewhere;
                  bundle["entry"].push_back(std::move(copy));
              }
          }) == Reason::malformed);
    // A thread that the treatment does not name, and one that it names twice.
    CHECK(refusalOf([](Json& bundle) { add(bundle, "Device"); }) == Reason::malformed);
    CHECK(refusalOf("Procedure", [](Json& r) { r["focalDevice"][1] = r["focalDevice"][0]; }) == Reason::malformed);
}

TEST_CASE("a thread of two products, one numbered by somebody else, and a plan for no treatment on record are refused", "[exchange][fhir][errors]")
{
    const Json carrier = {{"deviceIdentifier", "09506000134352"}, {"issuer", "http://hl7.org/fhir/NamingSystem/gs1-di"}};
    CHECK_FALSE(refusalOf("Device", [&](Json& r) { r["udiCarrier"] = Json::array({carrier}); }));
    CHECK(refusalOf("Device", [&](Json& r) { r["udiCarrier"] = Json::array({carrier, carrier}); }) == Reason::malformed);
    CHECK(refusalOf("Device", [&](Json& r) {
              r["udiCarrier"] = Json::array({carrier});
              r["udiCarrier"][0]["issuer"] = "urn:somebody";
          }) == Reason::malformed);
    CHECK(refusalOf("Device", [&](Json& r) {
              r["udiCarrier"] = Json::array({carrier});
              r["udiCarrier"][0]["deviceIdentifier"] = "09506000134353";
          }) == Reason::malformed);

    exchange::CourseRecord record = sample();
    record.treatment->planned = {recovery::asPlanned(record.treatment->placements[0])};
    Json bundle = Json::parse(written(record));
    for (Json& entry : bundle["entry"]) {
        Json& resource = entry["resource"];
        if (resource["resourceType"] == "DeviceRequest")
            resource["subject"]["reference"] = elsewhere;
    }
    CHECK_FALSE(exchange::readBundle(bundle.dump()));

    Json request = entryOf(bundle, "DeviceRequest");
    record.treatment.reset();
    Json bare = Json::parse(written(record));
    request["fullUrl"] = elsewhere;
    request["resource"]["subject"]["reference"] = entryOf(bare, "Patient")["fullUrl"];
    bare["entry"].push_back(std::move(request));
    const auto read = exchange::readBundle(bare.dump());
    REQUIRE_FALSE(read);
    CHECK(read.error().detail.starts_with("bundle: a plan is in it"));
}

TEST_CASE("two resources under one name are refused, in capitals as well", "[exchange][fhir][errors]")
{
    for (const char* type : {"QuestionnaireResponse", "Communication", "DocumentReference", "DeviceUseStatement"}) {
        CAPTURE(type);
        CHECK(refusalOf([type](Json& bundle) { bundle["entry"].push_back(Json(entryOf(bundle, type))); }) == Reason::malformed);
    }
    const auto named = [](const char* second) {
        return refusalOf([second](Json& bundle) {
            Json one = {{"fullUrl", "urn:uuid:0000000a-0000-0000-0000-000000000001"}, {"resource", {{"resourceType", "Immunization"}}}};
            bundle["entry"].push_back(one);
            one["fullUrl"] = second;
            bundle["entry"].push_back(one);
        });
    };
    CHECK_FALSE(named("urn:uuid:0000000b-0000-0000-0000-000000000001"));
    CHECK(named("urn:uuid:0000000A-0000-0000-0000-000000000001") == Reason::malformed);
}

TEST_CASE("nothing of another patient is taken for hers", "[exchange][fhir][errors][privacy]")
{
    for (const auto& [type, element] : std::initializer_list<std::pair<const char*, const char*>>{
             {"Procedure", "subject"}, {"Device", "patient"}, {"Consent", "patient"}, {"QuestionnaireResponse", "subject"},
             {"DocumentReference", "subject"}, {"CarePlan", "subject"}, {"Task", "for"}, {"Communication", "subject"}}) {
        CAPTURE(type);
        CHECK(refusalOf(type, [element](Json& r) { r[element]["reference"] = elsewhere; }) == Reason::malformed);
        CHECK(refusalOf(type, [element](Json& r) { r.erase(element); }) == Reason::malformed);
    }
    CHECK(refusalOf("Communication", [](Json& r) { r["sender"] = {{"reference", elsewhere}}; }) == Reason::malformed);
    CHECK(refusalOf([](Json& bundle) { entryOf(bundle, "Patient")["resource"] = {{"resourceType", "Basic"}}; }) == Reason::malformed);
}

TEST_CASE("an entry answers the questionnaire that is there, and nothing that it does not ask", "[exchange][fhir][errors]")
{
    const auto response = [](const std::function<void(Json&)>& change) { return refusalOf("QuestionnaireResponse", change); };
    CHECK(response([](Json& r) { r["questionnaire"] = "urn:ebbline:questionnaire:entry|2"; }) == Reason::unsupported);
    CHECK(response([](Json& r) { r["questionnaire"] = "urn:ebbline:questionnaire:entry"; }) == Reason::malformed);
    CHECK(response([](Json& r) { r["questionnaire"] = "http://example.org/questionnaire|1"; }) == Reason::malformed);
    CHECK(response([](Json& r) { r["item"].push_back(r["item"][0]); }) == Reason::malformed);
    CHECK(response([](Json& r) { r["item"][0]["answer"].push_back(r["item"][0]["answer"][0]); }) == Reason::malformed);
    CHECK(response([](Json& r) { r["item"].push_back({{"linkId", "hunger"}, {"answer", Json::array({{{"valueInteger", 1}}})}}); })
          == Reason::malformed);
    CHECK(response([](Json& r) { r["extension"].push_back(r["extension"][0]); }) == Reason::malformed);
    const auto questionnaire = [](const std::function<void(Json&)>& change) { return refusalOf("Questionnaire", change); };
    CHECK(questionnaire([](Json& r) { r["version"] = "2"; }) == Reason::unsupported);
    CHECK(questionnaire([](Json& r) { r["item"] = Json::array(); }) == Reason::malformed);
    CHECK(questionnaire([](Json& r) { r["item"][1]["linkId"] = r["item"][0]["linkId"]; }) == Reason::malformed);
    CHECK(questionnaire([](Json& r) { r["url"] = "urn:somebody:questionnaire"; }) == Reason::malformed);  // then ours is not there
}

TEST_CASE("a care plan out of its bounds is refused, and so is what leads out of it", "[exchange][fhir][errors]")
{
    const auto plan = [](const std::function<void(Json&)>& change) { return refusalOf("CarePlan", change); };
    const auto detail = [&plan](const std::function<void(Json&)>& change) {
        return plan([&change](Json& r) { change(r["activity"][0]["detail"]); });
    };
    CHECK(plan([](Json& r) { r["activity"].push_back(r["activity"][0]); }) == Reason::malformed);
    CHECK(plan([](Json& r) { r["activity"][0]["reference"] = {{"reference", elsewhere}}; }) == Reason::malformed);
    CHECK(plan([](Json& r) { r["activity"][0] = {{"reference", {{"reference", elsewhere}}}}; }) == Reason::malformed);
    CHECK(plan([](Json& r) { r["extension"].erase(0); }) == Reason::malformed);
    CHECK(plan([](Json& r) { r["extension"].erase(1); }) == Reason::malformed);
    CHECK(plan([](Json& r) { r["extension"][0]["valueInteger"] = 61; }) == Reason::outOfRange);
    CHECK(plan([](Json& r) { r["title"] = std::string(201, 'x'); }) == Reason::tooLarge);
    CHECK(plan([](Json& r) {
              for (int i = 0; i < 41; ++i) {
                  Json activity = r["activity"][0];
                  activity["detail"]["extension"][0]["valueString"] = "more-" + std::to_string(i);
                  r["activity"].push_back(std::move(activity));
              }
          }) == Reason::tooLarge);
    CHECK(detail([](Json& d) { d["extension"][0]["valueString"] = "No Such Name"; }) == Reason::malformed);
    CHECK(detail([](Json& d) { d["extension"][1]["valueInteger"] = 18; }) == Reason::outOfRange);
    CHECK(detail([](Json& d) { d["extension"][3]["valueInteger"] = 61; }) == Reason::outOfRange);
    CHECK(detail([](Json& d) { d["description"] = std::string(401, 'x'); }) == Reason::tooLarge);
    CHECK(detail([](Json& d) { d["description"] = 7; }) == Reason::malformed);
    // Of somebody else's plan nothing is read, but then our tasks name one that is not there.
    CHECK(plan([](Json& r) { r.erase("category"); }) == Reason::malformed);
    CHECK(refusalOf("Task", [](Json& r) { r["basedOn"][0]["reference"] = elsewhere; }) == Reason::malformed);
    CHECK(refusalOf("Task", [](Json& r) { r["basedOn"] = "the plan"; }) == Reason::malformed);
}

TEST_CASE("a reminder that nobody answered is no answer, whatever it claims beside", "[exchange][fhir][errors]")
{
    CHECK_FALSE(refusalOf([](Json& bundle) {
        add(bundle, "Task", [](Json& r) { r["status"] = "requested"; });
    }));
    Json bundle = Json::parse(written(sample()));
    add(bundle, "Task", [](Json& r) { r["status"] = "requested"; });
    CHECK(exchange::readBundle(bundle.dump()).value() == sample());
}

TEST_CASE("a photograph's file is a plain name, and its size and hash are whole", "[exchange][fhir][photos][errors]")
{
    const auto attachment = [](const std::function<void(Json&)>& change) {
        return refusalOf("DocumentReference", [&change](Json& r) { change(r["content"][0]["attachment"]); });
    };
    for (const char* file : {"", ".", "..", ".hidden", "../photo.jpg", "/etc/passwd", "a/b.jpg", "a\\b.jpg", "http://example.org/a.jpg", "a b.jpg"}) {
        CAPTURE(file);
        CHECK(attachment([file](Json& a) { a["url"] = file; }) == Reason::malformed);
    }
    CHECK(attachment([](Json& a) { a["url"] = std::string(101, 'x'); }) == Reason::malformed);
    CHECK(attachment([](Json& a) { a["contentType"] = "text/html"; }) == Reason::malformed);
    for (const int size : {0, -1, 4 * 1024 * 1024 + 1}) {
        CAPTURE(size);
        CHECK(attachment([size](Json& a) { a["size"] = size; }) == Reason::outOfRange);
    }
    CHECK(attachment([](Json& a) { a["size"] = "many"; }) == Reason::malformed);
    CHECK(attachment([](Json& a) { a["hash"] = "Zm9v"; }) == Reason::malformed);
    CHECK(attachment([](Json& a) { a["hash"] = "!"; }) == Reason::malformed);
    CHECK(attachment([](Json& a) { a.erase("hash"); }) == Reason::malformed);
    CHECK(attachment([](Json& a) { a.erase("size"); }) == Reason::malformed);
    CHECK(refusalOf("DocumentReference", [](Json& r) { r["content"].push_back(r["content"][0]); }) == Reason::malformed);
    CHECK(refusalOf("DocumentReference", [](Json& r) { r["context"]["related"][0]["reference"] = elsewhere; }) == Reason::malformed);
    CHECK(refusalOf("DocumentReference", [](Json& r) { r["extension"][0]["valueInteger"] = 4; }) == Reason::outOfRange);
}

TEST_CASE("a consent that the treatment does not record is refused", "[exchange][fhir][errors]")
{
    CHECK(refusalOf("Consent", [](Json& r) { r["status"] = "rejected"; }) == Reason::malformed);
    CHECK(refusalOf([](Json& bundle) { add(bundle, "Consent", [](Json& r) { r["category"][0]["coding"][0]["code"] = "learning"; }); })
          == Reason::malformed);
    CHECK(refusalOf("Procedure", [](Json& r) {
              for (Json& one : r["extension"])
                  if (one["url"] == "urn:ebbline:consent-given")
                      one["valueBoolean"] = false;
          }) == Reason::malformed);
    // Somebody else's, about something else.
    CHECK_FALSE(refusalOf([](Json& bundle) {
        add(bundle, "Consent", [](Json& r) {
            r["category"].erase(0);
            r["patient"]["reference"] = elsewhere;
        });
    }));
}

TEST_CASE("a correction of nothing, and a message of several, are refused", "[exchange][fhir][errors]")
{
    const auto correction = [](const std::function<void(Json&)>& change) {
        return refusalOf("Provenance", [&change](Json& r) {
            if (r.contains("activity"))
                change(r);
        });
    };
    CHECK(correction([](Json& r) { r["target"][0]["reference"] = elsewhere; }) == Reason::malformed);
    CHECK(correction([](Json& r) { r["target"] = Json::array(); }) == Reason::malformed);
    CHECK(correction([](Json& r) { r["recorded"] = "later"; }) == Reason::malformed);
    CHECK_FALSE(correction([](Json& r) { r.erase("activity"); }));  // somebody else's, then
    CHECK(refusalOf("Communication", [](Json& r) { r["payload"].push_back(r["payload"][0]); }) == Reason::malformed);
    CHECK(refusalOf("Communication", [](Json& r) { r["extension"].push_back(r["extension"][0]); }) == Reason::malformed);
    CHECK(refusalOf("Communication", [](Json& r) { r["extension"][0]["valueDateTime"] = 7; }) == Reason::malformed);
    CHECK(refusalOf("Communication", [](Json& r) {
              r["extension"][0]["_valueDateTime"]["extension"][0]["valueCode"] = std::string(65, 'x');
          }) == Reason::tooLarge);
}

TEST_CASE("more resources than any course has are refused before they are read", "[exchange][fhir][errors]")
{
    Json bundle = Json::parse(written(sample()));
    std::string many = bundle.dump();
    const std::size_t place = many.find("\"entry\":[") + 9;
    std::string more;
    for (std::size_t i = 0; i < exchange::maximumBundleResources; ++i)
        more += "{\"fullUrl\":\"x:" + std::to_string(i) + "\",\"resource\":{\"resourceType\":\"Basic\"}},";
    many.insert(place, more);
    REQUIRE(many.size() < exchange::maximumBundleBytes);
    const auto read = exchange::readBundle(many);
    REQUIRE_FALSE(read);
    CHECK(read.error().reason == Reason::tooLarge);
}

TEST_CASE("names that a course happens to share with what a bundle counts up do not clash", "[exchange][fhir]")
{
    // The writer names what has no id after the course: an entry, a message and a photograph of just those names.
    exchange::CourseRecord record = sample();
    const auto nth = [&record](std::uint8_t number) {
        bytes::Array<16> id = record.course.value;
        id[0] = static_cast<std::uint8_t>(id[0] ^ number);
        return id;
    };
    record.entries[0].id = recovery::EntryId{nth(1)};
    record.entries[1].id = recovery::EntryId{nth(2)};
    record.corrections = {{record.entries[1].id, record.entries[1].recordedAt}};
    record.messages[0].message = record.reads[0].message = records::MessageId{nth(3)};
    record.pictures[0].photo = photos::PhotoId{nth(0)};
    record.pictures[0].entry = record.entries[0].id;
    CHECK(exchange::readBundle(written(record)).value() == record);
    record.treatment.reset();
    CHECK(exchange::readBundle(written(record)).value() == record);  // and a phone names the patient after the course
}

TEST_CASE("one resource put out of its form never makes a course of two, or another patient's", "[exchange][fhir][property]")
{
    const Json whole = Json::parse(written(sample()));
    const bool held = rc::check([&whole] {
        Json bundle = whole;
        auto& entries = bundle["entry"];
        const auto from = *rc::gen::inRange<std::size_t>(0, entries.size());
        const auto to = *rc::gen::inRange<std::size_t>(0, entries.size());
        // One resource under the name, or with the content, of another.
        if (*rc::gen::arbitrary<bool>())
            entries[to]["resource"] = entries[from]["resource"];
        else
            std::swap(entries[to]["fullUrl"], entries[from]["fullUrl"]);
        const auto read = exchange::readBundle(bundle.dump());
        if (!read)
            return;
        RC_ASSERT(read->course == sample().course);
        RC_ASSERT(read->entries.size() <= sample().entries.size() + 1);
        // Whatever was read can be written, and comes back.
        RC_ASSERT(exchange::readBundle(written(*read)).value() == *read);
    });
    CHECK(held);
}

TEST_CASE("an object of more members than any resource has is refused before it is built up", "[exchange][fhir][errors]")
{
    std::string wide = "{\"resourceType\":\"Bundle\"";
    for (int i = 0; i < 1'000'000; ++i)
        wide += ",\"" + std::to_string(i) + "\":0";
    const auto read = exchange::readBundle(wide + "}");
    REQUIRE_FALSE(read);
    CHECK(read.error().detail.contains("more members"));
}
