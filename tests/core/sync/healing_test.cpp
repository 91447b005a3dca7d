// A desk whose vault was damaged: what its backup lacks comes again from the hub and the phones, and is whole afterwards.

#include "tests/core/desk/clinic_world.h"

#include "core/vault/backup.h"
#include "core/vault/inspection.h"

#include <fstream>

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

void flipByte(const std::filesystem::path& file, std::streamoff place)
{
    std::fstream io(file, std::ios::in | std::ios::out | std::ios::binary);
    io.seekg(place);
    const int byte = io.get();
    REQUIRE(byte >= 0);
    io.seekp(place);
    io.put(static_cast<char>(byte ^ 1));
}

}  // namespace

TEST_CASE("a desk that was damaged and restored from a backup has what came since from its peers, and all of it is whole", "[sync][errors]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    const auto home = world.folder.path() / "desk";
    const auto offered = vault::Offered::passphrase(test::passphrase);
    const auto recordAndSync = [&] {
        world.clock.advance(5h);
        REQUIRE(phone.record(world.entryOf(phone, 3, 2)));
        for (int i = 0; i < 2; ++i) {
            world.syncPhone(phone);
            world.syncDesk();
        }
        world.syncPhone(phone);
    };
    recordAndSync();
    REQUIRE(vault::backup(home, offered, world.clock.readings(), world.folder.path() / "backup"));
    for (int i = 0; i < 4; ++i)
        recordAndSync();
    REQUIRE(world.desk.course(course)->state->entries.size() == 5);
    const auto entries = world.desk.course(course)->state->entries.size();

    // The desk is closed, and a page of its database goes bad: that is called damage, and the file stays for whoever can do more.
    world.desk = *desk::Desk::create(world.folder.path() / "other", test::passphrase, test::cheap, world.clock, world.zone);
    flipByte(home / "vault.db", 3 * 4096 + 100);
    CHECK_FALSE(vault::inspect(home, offered, world.clock.readings())->sound());
    std::filesystem::rename(home, world.folder.path() / "damaged");
    REQUIRE(vault::restore(world.folder.path() / "backup", offered, world.clock.readings(), home));
    auto restored = desk::Desk::unlock(home, test::passphrase, world.clock, world.zone);
    REQUIRE(restored);
    world.desk = std::move(*restored);
    REQUIRE(world.desk.course(course)->state->entries.size() == 1);

    for (int i = 0; i < 3; ++i) {
        world.syncDesk();
        world.syncPhone(phone);
    }
    CHECK(world.desk.course(course)->state->entries.size() == entries);
    const auto standing = world.desk.vault().standing(phone.link()->mailbox);
    CHECK_FALSE(standing->gap);
    CHECK_FALSE(standing->fork);
    CHECK(world.desk.vault().verify());
    CHECK(std::filesystem::exists(world.folder.path() / "damaged" / "vault.db"));

    recordAndSync();
    CHECK(world.desk.course(course)->state->entries.size() == entries + 1);
}
