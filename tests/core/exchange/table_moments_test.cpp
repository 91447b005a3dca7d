// Two entries of one moment are two entries in a table as well.

#include "core/exchange/table_moments.h"

#include "core/clock/iso8601.h"
#include "core/exchange/tables.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

#include <algorithm>

using namespace ebbline;
using namespace std::chrono_literals;
using recovery::Entry;
using recovery::Score;
using recovery::Side;
using recovery::Symptom;

namespace {

const clock::Moment treated = *clock::parseIso8601("2027-03-01T10:00:00+01:00");

Entry entryAt(std::uint8_t number, std::chrono::milliseconds after, std::chrono::milliseconds writtenAfter, int pain)
{
    Entry entry;
    bytes::Array<16> name{};
    name[0] = number;
    entry.id = recovery::EntryId{name};
    entry.at = entry.recordedAt = treated;
    entry.at.at += after;
    entry.recordedAt.at += writtenAfter;
    entry.scores.insert_or_assign(recovery::Stream{Symptom::pain, Side::left}, *Score::of(pain));
    return entry;
}

std::vector<exchange::TableEntry> placed(const std::vector<Entry>& entries)
{
    std::vector<const Entry*> all;
    for (const Entry& entry : entries)
        all.push_back(&entry);
    return exchange::inTables(all, treated);
}

std::string tableOf(const std::vector<exchange::TableEntry>& entries)
{
    std::vector<exchange::ScoreRow> rows;
    for (const auto& [entry, at] : entries)
        for (const auto& [stream, score] : entry->scores)
            rows.push_back({"mine", treated, at, stream.symptom, stream.side, score});
    return exchange::writeScores(rows);
}

}  // namespace

TEST_CASE("two entries about seven in the evening are two in a table, in the order of their writing, and it is read", "[exchange][tables]")
{
    const std::vector<Entry> entries{entryAt(1, 9h, 12h, 5), entryAt(2, 9h, 11h, 3), entryAt(3, 24h, 24h, 4)};

    const auto moved = placed(entries);

    REQUIRE(moved.size() == 3);
    CHECK(moved[0].entry == &entries[1]);
    CHECK(moved[0].at == entries[1].at);
    CHECK(moved[1].entry == &entries[0]);
    CHECK(clock::toIso8601(moved[1].at) == "2027-03-01T19:00:00.001+01:00");
    CHECK(moved[2].at == entries[2].at);
    const auto read = exchange::readScores(tableOf(moved));
    REQUIRE(read);
    REQUIRE(read->size() == 3);
    CHECK((*read)[0].score.points() == 3);
    CHECK((*read)[1].score.points() == 5);
}

TEST_CASE("entries of before the treatment stand right behind it, one behind the other", "[exchange][tables]")
{
    const std::vector<Entry> entries{entryAt(1, 0h, 2h, 3), entryAt(2, -5h, 1h, 5), entryAt(3, 1ms, 1ms, 4)};

    const auto moved = placed(entries);

    REQUIRE(moved.size() == 3);
    CHECK(moved[0].entry == &entries[1]);
    CHECK(moved[0].at.at == treated.at + 1ms);
    CHECK(moved[1].entry == &entries[0]);
    CHECK(moved[1].at.at == treated.at + 2ms);
    CHECK(moved[2].at.at == treated.at + 3ms);
    CHECK(exchange::readScores(tableOf(moved)));
}

TEST_CASE("no two entries share a moment in a table, none is lost, and whoever stood apart stays", "[exchange][tables][property]")
{
    CHECK(rc::check([] {
        std::vector<Entry> entries;
        const int count = *rc::gen::inRange(0, 30);
        for (int i = 0; i < count; ++i)
            entries.push_back(entryAt(static_cast<std::uint8_t>(i), std::chrono::minutes(30 * *rc::gen::inRange(-3, 12)),
                                      std::chrono::minutes(*rc::gen::inRange(0, 400)), *rc::gen::inRange(0, 11)));
        const auto moved = placed(entries);
        RC_ASSERT(moved.size() == entries.size());
        for (std::size_t i = 0; i < moved.size(); ++i) {
            RC_ASSERT(moved[i].at.at > (i > 0 ? moved[i - 1].at.at : treated.at));
            const auto alike = std::ranges::count_if(entries, [&](const Entry& each) { return each.at.at == moved[i].entry->at.at; });
            if (alike == 1 && moved[i].entry->at.at > treated.at)
                RC_ASSERT(moved[i].at == moved[i].entry->at);
        }
        RC_ASSERT(exchange::readScores(tableOf(moved)).has_value());
    }));
}
