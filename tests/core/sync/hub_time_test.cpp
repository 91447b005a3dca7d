// A clock that is wrong is said, and changes nothing else.

#include "core/sync/hub_time.h"
#include "tests/core/desk/clinic_world.h"

#include <limits>

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

struct Pair {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat();
    patient::Diary& phone = world.join(course);
    clock::Instant truly = world.clock.now();

    Pair()
    {
        // The hub keeps its own time.
        world.courier.tamper = [this](const mailbox::Request&, mailbox::Response& response) {
            response.hubTime = std::to_string(std::chrono::floor<std::chrono::seconds>(truly.time_since_epoch()).count());
        };
    }
    std::optional<std::chrono::minutes> found(std::chrono::milliseconds ahead)
    {
        world.clock.turnWall(truly + ahead);
        world.syncPhone(phone);
        return sync::clockAhead(phone.vault());
    }
};

}  // namespace

TEST_CASE("a clock more than ten minutes from the hub's is said with its minutes, fast or slow, and no other", "[sync][clocks]")
{
    Pair pair;
    CHECK_FALSE(pair.found(0s));
    CHECK_FALSE(pair.found(10min));
    CHECK(pair.found(10min + 1s) == 10min);
    CHECK(pair.found(14min + 40s) == 15min);
    CHECK(pair.found(48h) == 48h);
    CHECK_FALSE(pair.found(-10min));
    CHECK(pair.found(-11min) == -11min);
    CHECK(pair.found(-48h) == -48h);
    CHECK_FALSE(pair.found(9min));
}

TEST_CASE("it is found by the next look alone, and stays until then", "[sync][clocks]")
{
    Pair pair;
    REQUIRE(pair.found(20min) == 20min);
    pair.world.clock.turnWall(pair.truly);
    CHECK(sync::clockAhead(pair.phone.vault()) == 20min);
    pair.world.courier.offline = true;
    CHECK(pair.found(0s) == 20min);
    pair.world.courier.offline = false;
    CHECK_FALSE(pair.found(0s));
}

TEST_CASE("a wrong clock changes no entry: it is kept as it was entered, on both sides", "[sync][clocks]")
{
    Pair pair;
    REQUIRE(pair.found(3h) == 3h);
    const auto entry = pair.world.entryOf(pair.phone, 3, 2);
    REQUIRE(pair.phone.record(entry));
    pair.world.syncPhone(pair.phone);
    pair.world.clock.turnWall(pair.truly);
    pair.world.syncDesk();
    const auto& entries = pair.world.desk.course(pair.course)->state->entries;
    REQUIRE(entries.size() == 1);
    CHECK(entries.begin()->second.current().at == entry.at);
}

TEST_CASE("a time that no hub can mean is none", "[sync][clocks]")
{
    CHECK(sync::hubTimeIn("1772352000") == 1772352000s);
    for (const char* said : {"", "-1", "soon", "1772352000 ", "253402300800", "99999999999999999999"})
        CHECK_FALSE(sync::hubTimeIn(said));
}

TEST_CASE("a hub that says a time out of all reason makes a clock wrong by ten years and no more, which a page can count", "[sync][clocks][hostile]")
{
    Pair pair;
    pair.world.courier.tamper = [](const mailbox::Request&, mailbox::Response& response) { response.hubTime = "253402300799"; };  // the year 9999
    CHECK(pair.found(0s) == -sync::mostClockAhead);
    pair.world.courier.tamper = {};
    REQUIRE(sync::noteClockAhead(pair.phone.vault(), std::chrono::years(8000)));
    CHECK(sync::clockAhead(pair.phone.vault()) == sync::mostClockAhead);
    CHECK(sync::mostClockAhead.count() <= std::numeric_limits<int>::max());
}

TEST_CASE("an operation that bears the first or the last time there is came early only where it is ahead", "[sync][clocks][hostile]")
{
    Pair pair;
    const auto bearing = [&](clock::Instant at) {
        const auto entry = pair.world.entryOf(pair.phone, 3, 2);
        REQUIRE(pair.phone.vault().append({records::EntryRecorded{entry}}, {at, std::chrono::minutes(0), "UTC"},
                                          pair.world.desk.course(pair.course)->state->link->mailbox));
        pair.world.syncPhone(pair.phone);
        pair.world.syncDesk();
        return pair.world.desk.vault().cameEarly()->size();
    };
    CHECK(bearing(clock::Instant::min()) == 0);
    CHECK(bearing(clock::Instant::max()) == 1);
    CHECK(pair.world.desk.course(pair.course)->state->entries.size() == 2);
}
