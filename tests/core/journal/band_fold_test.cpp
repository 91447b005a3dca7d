// Versions of the band in the journal: kept, chosen, gone back from, the same on every device.

#include "core/journal/state.h"

#include "tests/core/records/sample_bodies.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

#include <algorithm>

using namespace ebbline;
using namespace ebbline::journal;
using namespace ebbline::records;

namespace {

Operation written(const Body& body, std::uint64_t number)
{
    Operation operation;
    operation.id = {test::idOf<envelope::DeviceTag>(1), number};
    operation.stamp = clock::HybridTime{number << 16};
    operation.entered = test::momentAt("2027-05-01T18:00:00+02:00");
    operation.kind = static_cast<std::uint16_t>(kindOf(body));
    operation.body = encode(body);
    return operation;
}

BandChosen chosen(const std::string& version, bool back = false)
{
    return {{version, back, "Dr. Ada Lund", "agreed", test::momentAt("2027-05-02T09:00:00+02:00")}};
}

const std::string thirty = test::sampleBandLearned(30).learned.version();
const std::string forty = test::sampleBandLearned(40).learned.version();

}  // namespace

TEST_CASE("a learned band waits in the journal until somebody chooses it", "[journal][bands]")
{
    std::vector<Operation> operations{written(test::sampleBandLearned(30), 1)};
    CHECK(fold(operations).bands.activeVersion() == "seed-1");
    CHECK(fold(operations).bandThresholds.contains(thirty));

    operations.push_back(written(chosen(thirty), 2));
    const State state = fold(operations);
    CHECK(state.bands.activeVersion() == thirty);
    CHECK(state.bands.active().provenance().courses == 30);
    CHECK(state.bands.find(thirty)->refused.at(bands::Refusal::noConsent) == 3);
    CHECK(state.unreadable == 0);
}

TEST_CASE("a band of too few courses cannot come into use by any operation", "[journal][bands]")
{
    const BandLearned few = test::sampleBandLearned(12);
    const State state = fold(std::vector{written(few, 1), written(chosen(few.learned.version()), 2)});

    CHECK(state.bands.activeVersion() == "seed-1");
    CHECK(state.bands.choices().empty());
    CHECK(state.bands.versions().size() == 1);
}

TEST_CASE("the first version of a name counts, whatever a second one of that name says", "[journal][bands]")
{
    BandLearned other = test::sampleBandLearned(30);
    other.learned.by = "somebody else";
    const State state = fold(std::vector{written(other, 2), written(test::sampleBandLearned(30), 1)});

    REQUIRE(state.bands.versions().size() == 1);
    CHECK(state.bands.versions().front().by == "Dr. Ada Lund");
}

TEST_CASE("versions, choices and ways back arrive in any order and give the same state", "[journal][bands][property]")
{
    const std::vector<Operation> operations{
        written(test::sampleBandLearned(30), 1), written(chosen(thirty), 2),        written(test::sampleBandLearned(40), 3),
        written(chosen(forty), 4),               written(chosen(thirty, true), 5), written(chosen("seed-1", true), 6)};
    const std::string wanted = dump(fold(operations));
    CHECK(fold(operations).bands.choices().size() == 4);
    CHECK(fold(operations).bands.activeVersion() == "seed-1");

    CHECK(rc::check("one state", [&] {
        std::vector<Operation> shuffled = operations;
        for (std::size_t i = shuffled.size(); i > 1; --i)
            std::swap(shuffled[i - 1], shuffled[*rc::gen::inRange<std::size_t>(0, i)]);
        RC_ASSERT(dump(fold(shuffled)) == wanted);
    }));
}

TEST_CASE("a band whose courses are not in order, or are not those it was checked on, is refused", "[journal][bands][errors]")
{
    BandLearned unordered = test::sampleBandLearned(30);
    std::swap(unordered.learned.courses[0], unordered.learned.courses[5]);
    CHECK_FALSE(decode(Kind::bandLearned, encode(unordered)));

    BandLearned miscounted = test::sampleBandLearned(30);
    miscounted.learned.coverage.courses = 300;
    CHECK_FALSE(decode(Kind::bandLearned, encode(miscounted)));

    BandLearned impossible = test::sampleBandLearned(30);
    impossible.learned.coverage.overall90.high = 1.5;
    CHECK_FALSE(decode(Kind::bandLearned, encode(impossible)));
}

TEST_CASE("a band that came in a file is of the third form, and nobody counts the courses behind it", "[journal][bands]")
{
    BandLearned body = test::sampleBandLearned(30);
    body.learned.brought = bands::Brought{"clinic-2027-04-01-eeeeeeee", true};
    body.learned.courses.resize(12);  // those that it was checked on
    body.learned.coverage.courses = 12;
    const bytes::Bytes bytes = encode(body);
    CHECK(bytes[0] == 3);
    const auto back = decode(Kind::bandLearned, bytes);
    REQUIRE(back);
    CHECK(*back == Body(body));
    CHECK(encode(*back) == bytes);

    const State state = fold(std::vector{written(body, 1), written(chosen(thirty), 2)});
    REQUIRE(state.bands.versions().size() == 1);
    CHECK(state.bands.versions().front().brought->ofOthersAlone);
    // Twelve are too few to check it on, whatever it says of itself.
    CHECK(state.bands.activeVersion() == "seed-1");

    body.learned.courses.clear();
    body.learned.coverage.courses = 0;
    CHECK(decode(Kind::bandLearned, encode(body)));
    body.learned.brought.reset();
    CHECK_FALSE(decode(Kind::bandLearned, encode(body)));
}
