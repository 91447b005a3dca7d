// A desk that was put back to an older copy: it learns it from its colleague, says so, and the colleague shows it.

#include "core/sync/messages.h"
#include "core/sync/older_copy.h"
#include "core/sync/outlook.h"
#include "tests/core/sync/two_desks.h"

#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

struct Clinic : test::TwoDesks {
    std::filesystem::path aside = world.folder.path() / "second-before";

    Clinic()
    {
        enlist();
        everybody();
    }
    void keepCopy() { std::filesystem::copy(world.folder.path() / "second", aside, std::filesystem::copy_options::recursive); }
    void putBack()
    {
        auto older = desk::Desk::unlock(aside, test::passphrase, world.clock, world.zone);
        REQUIRE(older.has_value());
        second = std::move(*older);
        second.setPerson("Dr. Jonas Feld");
    }
    sync::OtherDesks atFirst() { return *sync::otherDesksOf(world.desk.vault()); }
    sync::OtherDesks atSecond() { return *sync::otherDesksOf(second.vault()); }
};

}  // namespace

TEST_CASE("a desk that was put back to an older copy is told of on both desks, whether the hub remembers or not", "[sync][clinic]")
{
    const bool forgetful = GENERATE(false, true);
    CAPTURE(forgetful);
    Clinic clinic;
    clinic.keepCopy();
    REQUIRE(clinic.second.writeMessage(clinic.course, "Rest with the head raised."));
    clinic.everybody();
    CHECK(clinic.atFirst().older == 0);
    CHECK(clinic.atSecond().olderHere == 0);
    if (forgetful)
        (void)clinic.world.service.tidy(clinic.world.clock.now() + 24h * 9);

    clinic.putBack();
    REQUIRE(clinic.second.writeMessage(clinic.course, "Sleep on your back."));
    for (int i = 0; i < 4; ++i) {
        if (i == 1)
            clinic.world.clock.advance(sync::heartbeatEvery + 1h);
        clinic.everybody();
    }
    CHECK(clinic.atSecond().olderHere == 1);
    CHECK(clinic.atFirst().older == 1);
    // It is a word beside the chain: nothing counts as missing before it. A hub that forgot takes the fork as well.
    CHECK((clinic.atFirst().withheld == 0 || forgetful));
    CHECK(clinic.atFirst().olderHere == 0);
    CHECK(clinic.atSecond().older == 0);

    // It ends with that desk.
    auto channel = clinic.world.desk.vault().channels()->front();
    channel.ended = true;
    REQUIRE(clinic.world.desk.vault().putChannel(channel));
    CHECK(clinic.atFirst().older == 0);
}

TEST_CASE("a desk says once a day that it is an older copy, and not with every run", "[sync][clinic]")
{
    Clinic clinic;
    clinic.keepCopy();
    REQUIRE(clinic.second.writeMessage(clinic.course, "Rest with the head raised."));
    clinic.everybody();
    clinic.putBack();
    REQUIRE(clinic.second.writeMessage(clinic.course, "Sleep on your back."));
    int said = 0;
    clinic.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response&) {
        said += request.method == "PUT" && request.path.ends_with('/' + std::to_string(sync::olderCopyNumber)) ? 1 : 0;
    };
    clinic.everybody();
    clinic.world.clock.advance(sync::heartbeatEvery + 1h);
    clinic.everybody(4);
    const int before = said;
    REQUIRE(before > 0);
    clinic.everybody(3);
    CHECK(said == before);
    clinic.world.clock.advance(sync::heartbeatEvery + 1h);
    clinic.everybody(3);
    CHECK(said == before + 1);
    CHECK(clinic.atFirst().older == 1);
}

TEST_CASE("what says that a desk is an older copy is read as it was written, and one that is cut or longer is refused", "[sync]")
{
    const auto word = sync::pack(sync::OlderCopy{41});
    const auto read = sync::unpackStatement(word);
    REQUIRE(read.has_value());
    REQUIRE(std::holds_alternative<sync::OlderCopy>(*read));
    CHECK(std::get<sync::OlderCopy>(*read).own == 41);
    auto longer = word;
    longer.push_back(0);
    CHECK(sync::unpackStatement(longer).error().reason == Reason::malformed);
    CHECK(sync::unpackStatement(bytes::View(word).first(word.size() - 1)).error().reason == Reason::malformed);
}
