// What the clinic's people note stays among them.

#include "core/records/audience.h"

#include "tests/core/records/sample_bodies.h"

#include <catch2/catch_test_macros.hpp>

#include <set>

using namespace ebbline;
using namespace ebbline::records;

TEST_CASE("only what a phone writes or takes goes between it and the clinic", "[records]")
{
    std::set<Kind> between;
    for (const Body& body : test::sampleBodies())
        if (goesBetween(kindOf(body)))
            between.insert(kindOf(body));
    CHECK(between == std::set<Kind>{Kind::courseOpened, Kind::entryRecorded, Kind::reminderAnswered, Kind::warningShown,
                                    Kind::entriesOpened, Kind::messageWritten, Kind::messageRead, Kind::photoTaken,
                                    Kind::photoRemoved, Kind::photosReceived, Kind::versionsOpened, Kind::keyAnnounced});
}
