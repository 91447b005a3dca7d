// A table is judged as the phone judged what it was written from.

#include "app/tool/assess_tables.h"

#include "core/clock/iso8601.h"
#include "core/triage/queue.h"
#include "tests/core/desk/clinic_world.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <algorithm>
#include <random>
#include <set>
#include <tuple>

using namespace ebbline;
using namespace ebbline::tool;
using recovery::Side;
using recovery::Sign;
using recovery::Symptom;

namespace {

constexpr auto treatedAt = "2027-03-01T09:00:00+01:00";

exchange::ScoreRow score(const std::string& course, const char* at, Symptom symptom, Side side, int points)
{
    return {course, test::momentAt(treatedAt), test::momentAt(at), symptom, side, *recovery::Score::of(points)};
}

clock::Instant later() { return test::momentAt("2027-06-01T09:00:00+01:00").at; }

Assessed assessed(const std::vector<exchange::ScoreRow>& scores, clock::Instant now, const std::vector<exchange::SignRow>& signs = {})
{
    const auto done = assessTables(scores, signs, {}, triggers::defaultProtocol(), now);
    REQUIRE(done);
    return *done;
}

}  // namespace

TEST_CASE("a table of what a phone holds raises what the phone raised", "[tool][assess]")
{
    const auto seed = GENERATE(1u, 2u, 3u, 4u, 5u, 6u);
    CAPTURE(seed);
    std::mt19937 random(seed);
    test::ClinicWorld world;
    patient::Diary& phone = world.join(world.treat());
    const auto treated = phone.vault().state().courses.begin()->second.opened->treated;
    std::vector<exchange::ScoreRow> scores;
    std::vector<exchange::SignRow> signs;
    world.clock.advance(std::chrono::hours(10));
    for (int day = 0; day < 12; ++day, world.clock.advance(std::chrono::hours(24))) {
        if (random() % 5 == 0)
            continue;
        recovery::Entry entry = phone.blankEntry();
        for (const Symptom symptom : {Symptom::pain, Symptom::swelling, Symptom::bruising, Symptom::tightness})
            for (const Side side : recovery::bothSides) {
                const auto points = *recovery::Score::of(static_cast<int>(random() % 9));
                entry.scores.insert_or_assign({symptom, side}, points);
                scores.push_back({"c", treated, entry.at, symptom, side, points});
            }
        for (const Sign sign : {Sign::warmer, Sign::colourChange, Sign::threadOut, Sign::fastSwelling}) {
            const bool present = random() % 6 == 0;
            (present ? entry.present : entry.absent).insert(sign);
            signs.push_back({"c", treated, entry.at, sign, present});
        }
        REQUIRE(phone.record(entry));
    }
    const clock::Instant end = scores.back().enteredAt.at;

    using Raised = std::tuple<std::string, clock::Instant, recovery::Urgency, std::optional<Symptom>, Side, std::string>;
    std::multiset<Raised> onPhone;
    for (const triage::Finding& finding : triage::findingsOf(phone.vault().state().courses.begin()->second, world.zone.moment(end))) {
        if (const auto* trigger = std::get_if<triggers::Finding>(&finding.what)) {
            const auto symptom = trigger->trigger == triggers::Trigger::silence ? std::nullopt : std::optional(trigger->stream.symptom);
            onPhone.emplace(std::string(triggers::word(trigger->trigger)), finding.raisedAt.at, finding.urgency, symptom, trigger->stream.side,
                            triggers::explain(*trigger));
        } else {
            const auto& warning = std::get<warnings::Finding>(finding.what);
            std::string reason;
            for (const std::string& each : warning.reasons)
                reason += (reason.empty() ? "" : ", ") + each;
            onPhone.emplace(warning.rule, finding.raisedAt.at, finding.urgency, std::nullopt, warning.side, reason);
        }
    }
    std::multiset<Raised> onTable;
    const auto judged = assessed(scores, later(), signs);
    for (const exchange::FindingRow& row : judged.findings)
        onTable.emplace(row.trigger, row.raisedAt.at, row.urgency, row.symptom, row.side, row.reason);
    CHECK_FALSE(onPhone.empty());
    CHECK(onTable == onPhone);
}

TEST_CASE("severe pain asks for a call whether or not the table tells its side", "[tool][assess]")
{
    const Side side = GENERATE(Side::left, Side::right, Side::none);
    const auto done = assessed({score("c", "2027-03-02T20:00:00+01:00", Symptom::pain, side, 9),
                                score("c", "2027-03-03T20:00:00+01:00", Symptom::pain, side, 9)}, later());
    const auto severe = std::count_if(done.findings.begin(), done.findings.end(), [&](const exchange::FindingRow& row) {
        return row.trigger == "severe-pain" && row.urgency == recovery::Urgency::callNow && row.side == side;
    });
    CHECK(severe == 2);
}

TEST_CASE("what the practitioner scored right after the treatment is no entry and warns of nothing", "[tool][assess]")
{
    const auto done = assessed({score("c", treatedAt, Symptom::pain, Side::left, 8),
                                score("c", "2027-03-01T20:00:00+01:00", Symptom::pain, Side::left, 2)}, later());
    for (const exchange::FindingRow& row : done.findings)
        CHECK(row.trigger != "severe-pain");
}

TEST_CASE("a row in the future is counted and makes nobody silent", "[tool][assess]")
{
    const std::vector<exchange::ScoreRow> rows{score("a", "2027-03-02T20:00:00+01:00", Symptom::pain, Side::left, 2),
                                               score("b", "2027-03-02T20:00:00+01:00", Symptom::pain, Side::left, 2),
                                               score("b", "2099-03-02T20:00:00+01:00", Symptom::pain, Side::left, 2)};
    const auto done = assessed(rows, later());
    CHECK(done.ahead == 1);
    CHECK_FALSE(done.allAhead);
    CHECK(done.courses == 2);
    for (const exchange::FindingRow& row : done.findings)
        CHECK(row.trigger != "silence");

    // A table that lies in the future as a whole is judged to its own end.
    const auto early = assessed({rows[0], score("b", "2027-03-09T20:00:00+01:00", Symptom::pain, Side::left, 2)},
                                test::momentAt("2026-01-01T00:00:00Z").at);
    CHECK(early.ahead == 2);
    CHECK(early.allAhead);
    CHECK(std::any_of(early.findings.begin(), early.findings.end(), [](const exchange::FindingRow& row) {
        return row.course == "a" && row.trigger == "silence";
    }));
}

TEST_CASE("tables that disagree on the treatment are refused by line and column of both", "[tool][assess][errors]")
{
    const auto scores = exchange::readScores("course,treated_at,entered_at,symptom,side,score\n"
                                             "b,2027-03-01T09:00:00+01:00,2027-03-02T20:00:00+01:00,pain,L,2\n"
                                             "c,2027-03-01T09:00:00+01:00,2027-03-02T20:00:00+01:00,pain,L,2\n");
    const auto signs = exchange::readSigns("course,entered_at,treated_at,sign,present\n"
                                           "c,2027-03-02T20:00:00+01:00,2027-03-01T09:00:00+01:00,warmer,yes\n"
                                           "c,2027-03-02T21:00:00+01:00,2027-03-01T09:00:00+01:00,warmer,yes\n");
    REQUIRE(scores);
    REQUIRE(signs);
    CHECK(assessTables(*scores, *signs, {}, triggers::defaultProtocol(), later()));

    auto moved = *signs;
    moved[1].treatedAt = test::momentAt("2027-03-01T08:00:00+01:00");
    const auto done = assessTables(*scores, moved, {}, triggers::defaultProtocol(), later());
    REQUIRE_FALSE(done);
    CHECK(done.error().reason == Reason::malformed);
    CHECK(done.error().detail
          == "table of signs, line 3, column 3 (treated_at): course 'c' was treated at 2027-03-01T09:00:00+01:00 by line 3 of the table of "
             "scores, here at 2027-03-01T08:00:00+01:00");
}

TEST_CASE("a fever is judged from 38.0 on where a table of temperatures is handed in", "[tool][assess][boundary]")
{
    const auto at = "2027-03-04T20:00:00+01:00";
    const std::vector<exchange::ScoreRow> scores{score("c", at, Symptom::pain, Side::left, 2)};
    const auto temperature = [&](double celsius) {
        return std::vector<exchange::TemperatureRow>{
            {"c", test::momentAt(treatedAt), test::momentAt(at), *recovery::Temperature::celsius(celsius)}};
    };
    const auto rulesOf = [&](const std::vector<exchange::SignRow>& signs, const std::vector<exchange::TemperatureRow>& temperatures) {
        const auto done = assessTables(scores, signs, temperatures, triggers::defaultProtocol(), later());
        REQUIRE(done);
        std::set<std::string> called;
        for (const exchange::FindingRow& row : done->findings)
            if (row.urgency == recovery::Urgency::callNow)
                called.insert(row.trigger);
        return called;
    };
    const std::vector<exchange::SignRow> warm{{"c", test::momentAt(treatedAt), test::momentAt(at), Sign::warmer, true}};
    CHECK_FALSE(rulesOf({}, {}).contains("fever"));
    CHECK_FALSE(rulesOf({}, temperature(37.9)).contains("fever"));
    CHECK(rulesOf({}, temperature(38.0)).contains("fever"));
    // The sign of the same moment belongs to the same entry.
    CHECK(rulesOf(warm, temperature(38.0)).contains("fever-with-inflammation"));
}

TEST_CASE("whoever only measures is not silent, and a treatment told otherwise by the temperatures is refused", "[tool][assess][errors]")
{
    const std::vector<exchange::ScoreRow> scores{score("c", "2027-03-02T20:00:00+01:00", Symptom::pain, Side::left, 2),
                                                 score("d", "2027-03-07T19:00:00+01:00", Symptom::pain, Side::left, 2)};
    std::vector<exchange::TemperatureRow> temperatures{{"c", test::momentAt(treatedAt), test::momentAt("2027-03-05T08:00:00+01:00"),
                                                        *recovery::Temperature::celsius(36.8), {2, 2}}};
    const auto silences = [&](const std::vector<exchange::TemperatureRow>& measured) {
        const auto done = assessTables(scores, {}, measured, triggers::defaultProtocol(), later());
        REQUIRE(done);
        return std::count_if(done->findings.begin(), done->findings.end(), [](const exchange::FindingRow& row) {
            return row.course == "c" && row.trigger == "silence";
        });
    };
    CHECK(silences({}) == 1);
    CHECK(silences(temperatures) == 0);

    temperatures[0].treatedAt = test::momentAt("2027-03-01T08:00:00+01:00");
    const auto refused = assessTables(scores, {}, temperatures, triggers::defaultProtocol(), later());
    REQUIRE_FALSE(refused);
    CHECK(refused.error().reason == Reason::malformed);
    CHECK(refused.error().detail.starts_with("table of temperatures, line 2, column 2 (treated_at): course 'c' was treated at "));
}

TEST_CASE("a treatment that the tables tell by two clocks is one treatment, on the day of the table of scores", "[tool][assess]")
{
    const auto scores = exchange::readScores("course,treated_at,entered_at,symptom,side,score\n"
                                             "c,2027-03-01T00:30:00+01:00,2027-03-03T20:00:00+01:00,pain,L,9\n");
    const auto here = exchange::readSigns("course,treated_at,entered_at,sign,present\n"
                                          "c,2027-03-01T00:30:00+01:00,2027-03-03T20:00:00+01:00,thread-out,yes\n");
    const auto elsewhere = exchange::readSigns("course,treated_at,entered_at,sign,present\n"
                                               "c,2027-02-28T23:30:00Z,2027-03-03T19:00:00Z,thread-out,yes\n");
    REQUIRE(scores);
    REQUIRE(here);
    REQUIRE(elsewhere);
    const auto one = assessed(*scores, later(), *here);
    const auto two = assessed(*scores, later(), *elsewhere);
    REQUIRE(one.findings.size() >= 2);
    REQUIRE(two.findings.size() == one.findings.size());
    for (std::size_t i = 0; i < one.findings.size(); ++i) {
        CHECK(two.findings[i].trigger == one.findings[i].trigger);
        CHECK(two.findings[i].raisedAt.at == one.findings[i].raisedAt.at);
        CHECK(two.findings[i].reason == one.findings[i].reason);
    }
}

TEST_CASE("tables without a course say nothing, and not that nothing was found", "[tool][assess][errors]")
{
    const auto done = assessTables({}, {}, {}, triggers::defaultProtocol(), later());
    REQUIRE_FALSE(done);
    CHECK(done.error() == Error{Reason::notEnough, "no course"});
}

TEST_CASE("a score of a side and one without at the same moment are two answers, and the worse is not softened", "[tool][assess]")
{
    const auto at = "2027-03-02T20:00:00+01:00";
    const auto [mild, severe] = GENERATE(std::pair{Side::none, Side::left}, std::pair{Side::left, Side::none});
    const auto done = assessed({score("c", at, Symptom::pain, mild, 2), score("c", at, Symptom::pain, severe, 9)}, later());
    const auto calls = [&](Side side) {
        return std::count_if(done.findings.begin(), done.findings.end(), [&](const exchange::FindingRow& row) {
            return row.trigger == "severe-pain" && row.urgency == recovery::Urgency::callNow && row.side == side;
        });
    };
    CHECK(calls(severe) == 1);
    CHECK(calls(mild) == 0);
}

TEST_CASE("the first and the last year that a table can hold are judged as written", "[tool][assess][boundary]")
{
    const auto scores = exchange::readScores("course,treated_at,entered_at,symptom,side,score\n"
                                             "c,0001-01-01T00:00:00+14:00,9999-12-31T23:59:59-14:00,pain,L,9\n");
    REQUIRE(scores);
    const auto done = assessed(*scores, later());
    CHECK(done.allAhead);
    CHECK(std::any_of(done.findings.begin(), done.findings.end(), [](const exchange::FindingRow& row) {
        return row.trigger == "severe-pain" && clock::toIso8601(row.raisedAt) == "9999-12-31T23:59:59-14:00";
    }));
}
