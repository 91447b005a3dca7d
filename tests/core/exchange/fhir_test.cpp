// A course as a FHIR bundle: everything comes back, nothing is named that need not be, and what
// is not ours or not sound is refused.
#include "tests/core/exchange/sample_bundle.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <fstream>
#include <functional>
#include <set>

using namespace ebbline;
using exchange::CourseRecord;
using test::changed;
using test::Json;
using test::resources;
using test::sample;
using test::written;

TEST_CASE("who placed the threads and what was redone come back from a bundle", "[exchange][fhir]")
{
    CourseRecord record = sample();
    record.treatment->placedBy = "Dr. Ada Lund";
    record.treatment->placements[0].redone = recovery::Redone{recovery::Redoing::added, "one side hung lower"};
    const auto back = exchange::readBundle(written(record));
    REQUIRE(back);
    CHECK(back->treatment == record.treatment);
}

TEST_CASE("lidocaine given otherwise comes back from a bundle, and what was not written down stays so", "[exchange][fhir]")
{
    CourseRecord record = sample();
    record.treatment->otherwiseMg = GENERATE(std::optional<double>(), std::optional(0.0), std::optional(37.5));
    const auto back = exchange::readBundle(written(record));
    REQUIRE(back);
    CHECK(back->treatment == record.treatment);

    record.treatment->otherwiseMg = 1000.5;
    CHECK_FALSE(exchange::readBundle(written(record)));
}

TEST_CASE("needle or cannula and epinephrine of a thread come back from a bundle, and what was not said stays so", "[exchange][fhir]")
{
    using recovery::EpinephrineAt;
    using recovery::Instrument;
    CourseRecord record = sample();
    record.treatment->anaesthetic.drug = recovery::Drug::lidocaineWithEpinephrine;
    record.treatment->anaesthetic.epinephrineOneIn = 200'000;
    recovery::Placement& thread = record.treatment->placements[0];
    thread.instrument = GENERATE(std::optional<Instrument>(), std::optional(Instrument::sharpNeedle), std::optional(Instrument::bluntCannula));
    thread.instrumentLengthMm = GENERATE(std::optional<int>(), std::optional(90));
    thread.epinephrineAt = GENERATE(std::optional<EpinephrineAt>(), std::optional(EpinephrineAt::nowhere), std::optional(EpinephrineAt::entryPoint),
                                    std::optional(EpinephrineAt::track), std::optional(EpinephrineAt::both));
    const auto back = exchange::readBundle(written(record));
    REQUIRE(back);
    CHECK(back->treatment == record.treatment);

    thread.instrumentLengthMm = 501;
    CHECK_FALSE(exchange::readBundle(written(record)));
}

TEST_CASE("the product of a lot and the plan come back from a bundle, each in its own resource", "[exchange][fhir]")
{
    CourseRecord record = sample();
    recovery::Treatment& treatment = *record.treatment;
    treatment.placements[0].lot = "TH-4417";
    treatment.placements[0].article = "09506000134352";
    auto planned = recovery::asPlanned(treatment.placements[0]);
    planned.instrument = recovery::Instrument::bluntCannula;
    planned.instrumentLengthMm = 90;
    planned.lengthMm = 70;
    treatment.planned = {planned, recovery::asPlanned(treatment.placements[1])};
    const auto text = written(record);
    const auto back = exchange::readBundle(text);
    REQUIRE(back);
    CHECK(back->treatment == record.treatment);
    CHECK(written(*back) == text);

    // FHIR R4: Device.udiCarrier.deviceIdentifier with GS1 as its issuer; DeviceRequest.intent `plan`.
    const auto devices = resources(text, "Device");
    CHECK(std::count_if(devices.begin(), devices.end(), [](const Json& device) { return device.contains("udiCarrier"); }) == 1);
    const auto requests = resources(text, "DeviceRequest");
    REQUIRE(requests.size() == 2);
    CHECK(requests[0]["intent"] == "plan");

    treatment.placements[0].article = "09506000134353";
    CHECK_FALSE(exchange::readBundle(written(record)));
    treatment.placements[0].article.reset();
    treatment.planned[0].gauge = 40;
    CHECK_FALSE(exchange::readBundle(written(record)));
}

TEST_CASE("a course comes back from its bundle as it was", "[exchange][fhir]")
{
    const CourseRecord record = sample();
    const auto back = exchange::readBundle(written(record));
    REQUIRE(back);
    CHECK(back->treatment == record.treatment);
    CHECK(back->entries == record.entries);
    CHECK(back->answers == record.answers);
    CHECK(back->messages == record.messages);
    CHECK(back->followUp == record.followUp);
    CHECK(*back == record);
    CHECK(written(*back) == written(record));
}

TEST_CASE("a phone's course, which has no record of the treatment, comes back as well", "[exchange][fhir]")
{
    CourseRecord record = sample();
    record.treatment.reset();
    record.followUp.reset();
    CHECK(exchange::readBundle(written(record)).value() == record);
}

TEST_CASE("scores, signs, temperatures and notes of any entry come back", "[exchange][fhir][property]")
{
    const bool held = rc::check([] {
        CourseRecord record = sample();
        recovery::Entry entry = test::sampleEntry(11);
        entry.scores.clear();
        entry.present.clear();
        entry.absent.clear();
        for (const auto symptom : recovery::allSymptoms) {
            for (const auto side : recovery::bothSides) {
                if (*rc::gen::arbitrary<bool>())
                    entry.scores.insert_or_assign({symptom, side}, recovery::Score::of(*rc::gen::inRange(0, 11)).value());
            }
        }
        for (const auto sign : recovery::allSigns) {
            const int answer = *rc::gen::inRange(0, 3);
            if (answer == 1)
                entry.present.insert(sign);
            if (answer == 2)
                entry.absent.insert(sign);
        }
        entry.temperature.reset();
        if (*rc::gen::arbitrary<bool>())
            entry.temperature = recovery::Temperature::celsius(*rc::gen::inRange(300, 450) / 10.0).value();
        entry.note = *rc::gen::element<std::string>("", "[[[[ \"{", "Schwellung links\nseit heute", "أفضل اليوم", std::string(300, '['));
        record.entries = {entry};
        record.corrections.clear();
        record.pictures.clear();
        RC_ASSERT(exchange::readBundle(written(record)).value() == record);
    });
    CHECK(held);
}

TEST_CASE("pain and temperature carry published codes, everything else our own", "[exchange][fhir]")
{
    // LOINC 72514-3 and 8310-5 with UCUM `Cel`, as published implementation guides of FHIR R4 use them
    // (vital signs profile, HL7 FHIR 4.0.1, observation-vitalsigns).
    for (const Json& observation : resources(written(sample()), "Observation")) {
        const Json& coding = observation["code"]["coding"][0];
        if (coding["system"] == "http://loinc.org")
            CHECK((coding["code"] == "72514-3" || coding["code"] == "8310-5"));
        else
            CHECK(coding["system"].get<std::string>().starts_with("urn:ebbline:"));
        if (coding["code"] == "8310-5")
            CHECK(observation["valueQuantity"]["code"] == "Cel");
    }
    CHECK_FALSE(resources(written(sample()), "Observation").empty());
}

TEST_CASE("a patient is a pseudonym unless her name is asked for", "[exchange][fhir][privacy]")
{
    CHECK_FALSE(resources(written(sample()), "Patient").at(0).contains("name"));
    const CourseRecord record = sample();
    const auto named = exchange::writeBundle(record, {}, {.patientName = "Vera Lind", .written = record.treated, .program = ""});
    CHECK(resources(named, "Patient").at(0)["name"][0]["text"] == "Vera Lind");
}

TEST_CASE("a bundle says which program put it together, in which version and when", "[exchange][fhir]")
{
    const CourseRecord record = sample();
    const auto by = [&](const std::string& program) {
        auto found = resources(exchange::writeBundle(record, {}, {.patientName = "", .written = record.treated, .program = program}), "Provenance");
        std::erase_if(found, [](const Json& provenance) { return !provenance.contains("contained"); });
        return found;
    };
    const auto said = by("ebbline desk 1.2.3");
    REQUIRE(said.size() == 1);
    const Json& device = said[0]["contained"][0];
    CHECK(device["deviceName"][0]["name"] == "ebbline desk");
    CHECK(device["version"][0]["value"] == "1.2.3");
    CHECK(said[0]["agent"][0]["who"]["reference"] == "#" + device["id"].get<std::string>());
    const Json bundle = Json::parse(written(record));
    CHECK(said[0]["target"][0]["identifier"] == bundle["identifier"]);
    CHECK(said[0]["recorded"] == bundle["timestamp"]);

    REQUIRE(by("seed").size() == 1);
    CHECK_FALSE(by("seed")[0]["contained"][0].contains("version"));
    CHECK(by("").empty());
}

TEST_CASE("docs/formats/fhir.md names every number that stands for a word", "[exchange][fhir][docs]")
{
    std::ifstream file(EBBLINE_FHIR_PAGE);
    const std::string page((std::istreambuf_iterator<char>(file)), {});
    const auto check = [&page](const char* name, std::initializer_list<std::pair<int, std::string_view>> values) {
        std::string row = "| `" + std::string(name) + "` | ";
        for (const auto& [number, word] : values)
            row += (number == values.begin()->first ? "" : ", ") + std::to_string(number) + " " + std::string(word);
        CAPTURE(row);
        CHECK(page.find(row + " |") != std::string::npos);
    };
    using namespace recovery;
    const auto numbered = [](auto value) { return std::pair(static_cast<int>(value), word(value)); };
    check("side", {{static_cast<int>(Side::none), "none"}, {static_cast<int>(Side::left), "left"}, {static_cast<int>(Side::right), "right"}});
    check("zone", {numbered(Zone::brow), numbered(Zone::temple), numbered(Zone::midface), numbered(Zone::cheek), numbered(Zone::nasolabial),
                   numbered(Zone::marionette), numbered(Zone::jawline), numbered(Zone::submental), numbered(Zone::neck)});
    check("view", {{static_cast<int>(ChartView::front), "front"}, {static_cast<int>(ChartView::leftOblique), "left oblique"},
                   {static_cast<int>(ChartView::rightOblique), "right oblique"}});
    check("ending", {numbered(Ending::shortOfMovingZone), numbered(Ending::pastMovingZone)});
    check("material", {numbered(Material::pdo), numbered(Material::plla), numbered(Material::pcl), numbered(Material::plcl), numbered(Material::other)});
    check("form", {numbered(Form::smooth), numbered(Form::twisted), numbered(Form::barbedOneWay), numbered(Form::barbedTwoWay), numbered(Form::moulded),
                   numbered(Form::cones)});
    check("redone", {{static_cast<int>(Redoing::replaced), "replaced"}, {static_cast<int>(Redoing::added), "added"}});
    check("instrument", {{static_cast<int>(Instrument::sharpNeedle), "sharp needle"}, {static_cast<int>(Instrument::bluntCannula), "blunt cannula"}});
    check("epinephrine-at", {{static_cast<int>(EpinephrineAt::nowhere), "nowhere"}, {static_cast<int>(EpinephrineAt::entryPoint), "at the entry point"},
                             {static_cast<int>(EpinephrineAt::track), "along the track"}, {static_cast<int>(EpinephrineAt::both), "both"}});
    check("drug", {{static_cast<int>(Drug::lidocaine), "lidocaine"}, {static_cast<int>(Drug::lidocaineWithEpinephrine), "lidocaine with epinephrine"}});
    using enum records::GlobalChange;
    check("change", {{static_cast<int>(veryMuchBetter), "very much better"}, {static_cast<int>(muchBetter), "much better"},
                     {static_cast<int>(better), "better"}, {static_cast<int>(unchanged), "unchanged"}, {static_cast<int>(worse), "worse"}});
}

TEST_CASE("every thread carries its lot and expiry, every entry its moment with the offset", "[exchange][fhir]")
{
    const CourseRecord record = sample();
    const auto devices = resources(written(record), "Device");
    REQUIRE(devices.size() == record.treatment->placements.size());
    for (std::size_t i = 0; i < devices.size(); ++i)
        CHECK(devices[i]["lotNumber"] == record.treatment->placements[i].lot);
    for (const Json& response : resources(written(record), "QuestionnaireResponse"))
        CHECK(response["authored"].get<std::string>().find_last_of("+-") > 10);
}

TEST_CASE("every reference points at something in the bundle", "[exchange][fhir]")
{
    const Json bundle = Json::parse(written(sample()));
    std::set<std::string> there;
    for (const Json& entry : bundle["entry"])
        CHECK(there.insert(entry["fullUrl"]).second);
    std::size_t seen = 0;
    const std::function<void(const Json&)> walk = [&](const Json& value) {
        if (value.is_object() && value.contains("reference") && value["reference"].is_string() && value["reference"] != "#program") {
            ++seen;
            CHECK(there.contains(value["reference"].get<std::string>()));
        }
        if (value.is_structured()) {
            for (const auto& child : value)
                walk(child);
        }
    };
    walk(bundle);
    CHECK(seen > 10);
}

TEST_CASE("what is not a bundle of ours is refused and says why", "[exchange][fhir][errors]")
{
    const auto reasonOf = [](const auto& result) {
        REQUIRE_FALSE(result);
        return result.error().reason;
    };
    CHECK(reasonOf(exchange::readBundle("")) == Reason::malformed);
    CHECK(reasonOf(exchange::readBundle("[]")) == Reason::malformed);
    CHECK(reasonOf(exchange::readBundle(R"({"resourceType":"Patient"})")) == Reason::malformed);
    CHECK(reasonOf(exchange::readBundle(std::string(100'000, '['))) == Reason::malformed);
    CHECK(reasonOf(exchange::readBundle(std::string(exchange::maximumBundleBytes + 1, ' '))) == Reason::tooLarge);
    CHECK(reasonOf(changed("Procedure", [](Json& r) { r.erase("performedDateTime"); })) == Reason::malformed);
    CHECK(reasonOf(changed("Procedure", [](Json& r) { r["performedDateTime"] = "yesterday"; })) == Reason::malformed);
    CHECK(reasonOf(changed("Procedure", [](Json& r) { r["focalDevice"][0]["manipulated"]["reference"] = "urn:uuid:0"; }))
          == Reason::malformed);
    CHECK(reasonOf(changed("Device", [](Json& r) { r["extension"].erase(0); })) == Reason::malformed);
    CHECK(reasonOf(changed("Device", [](Json& r) { r["extension"][1]["valueInteger"] = 77; })) == Reason::outOfRange);
    CHECK(reasonOf(changed("Device", [](Json& r) { r["property"][0]["valueQuantity"][0]["value"] = 9000; })) == Reason::outOfRange);
    CHECK(reasonOf(changed("QuestionnaireResponse", [](Json& r) { r["item"][0]["answer"][0]["valueInteger"] = 11; }))
          == Reason::outOfRange);
    CHECK(reasonOf(changed("QuestionnaireResponse", [](Json& r) { r["item"][0]["answer"][0]["valueInteger"] = 2.5; }))
          == Reason::malformed);
    CHECK(reasonOf(changed("QuestionnaireResponse", [](Json& r) { r["item"][0]["linkId"] = "score.pain"; })) == Reason::malformed);
    CHECK_FALSE(changed("QuestionnaireResponse", [](Json& r) { r["item"][0]["linkId"] = "score.hunger.left"; }));
    CHECK(reasonOf(changed("QuestionnaireResponse", [](Json& r) { r.erase("extension"); })) == Reason::malformed);
    CHECK(reasonOf(changed("Task", [](Json& r) { r["status"] = "perhaps"; })) == Reason::malformed);
    CHECK(reasonOf(changed("Communication", [](Json& r) { r["payload"] = "words"; })) == Reason::malformed);
}

TEST_CASE("a resource of somebody else's is passed over", "[exchange][fhir]")
{
    Json bundle = Json::parse(written(sample()));
    bundle["entry"].push_back({{"fullUrl", "urn:uuid:00000000-0000-0000-0000-000000000001"},
                               {"resource", {{"resourceType", "Immunization"}, {"status", "completed"}}}});
    CHECK(exchange::readBundle(bundle.dump()).value() == sample());
}

TEST_CASE("no bytes make the reader of bundles misbehave", "[exchange][fhir][property]")
{
    const std::string whole = written(sample());
    const bool held = rc::check([&whole] {
        std::string damaged = whole;
        const int changes = *rc::gen::inRange(1, 8);
        for (int i = 0; i < changes; ++i)
            damaged[*rc::gen::inRange<std::size_t>(0, damaged.size())] = *rc::gen::arbitrary<char>();
        if (*rc::gen::arbitrary<bool>())
            damaged.resize(*rc::gen::inRange<std::size_t>(0, damaged.size()));
        const auto read = exchange::readBundle(damaged);
        // Whatever was read keeps the bounds that everything of ours keeps.
        if (read) {
            for (const recovery::Entry& entry : read->entries)
                RC_ASSERT(recovery::check(entry).has_value());
        } else {
            RC_ASSERT(!read.error().detail.empty());
        }
    });
    CHECK(held);
}
