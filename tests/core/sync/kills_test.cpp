// A program that is killed, or whose disk fails, at any of its calls to the disk: what belongs together is there
// together, and what was begun can be done again.

#include "tests/core/desk/clinic_world.h"
#include "tests/faults/fault_disk.h"

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

std::optional<desk::Desk> opened(const std::filesystem::path& folder, const test::ClinicWorld& world)
{
    auto desk = desk::Desk::unlock(folder, test::passphrase, world.clock, world.zone);
    REQUIRE(desk);
    desk->setPerson("Dr. Jonas Feld");
    return std::optional(std::move(*desk));
}

void syncRun(desk::Desk& desk, sync::Courier& courier)
{
    desk.syncNow(courier, [](const sync::Report&) {});
}

bool isEnvelope(const mailbox::Request& request) { return request.method == "PUT" && request.path.starts_with("/v1/m/"); }

/// A desk that joined a clinic, and a patient of whom it has not heard yet.
struct NewDesk {
    test::ClinicWorld world;
    std::filesystem::path home = world.folder.path() / "second";
    std::filesystem::path aside = world.folder.path() / "aside";

    NewDesk()
    {
        auto second = desk::Desk::create(home, test::passphrase, test::cheap, world.clock, world.zone);
        REQUIRE(second);
        REQUIRE(world.desk.allowStep(test::passphrase));
        desk::Inviting inviting(world.desk, world.clock, desk::Inviting::NewDesk::plain);
        inviting.start(world.courier, [] {});
        desk::Applying applying(*second, world.clock);
        REQUIRE(applying.start(inviting.qrText()));
        for (int i = 0; i < 4; ++i) {
            applying.poll(world.courier, [] {});
            inviting.poll(world.courier, [] {});
        }
        inviting.confirm(world.courier, [] {});
        applying.poll(world.courier, [] {});
        REQUIRE(applying.step() == desk::Applying::Step::linked);
        world.syncDesk();
        syncRun(*second, world.courier);
        world.join(world.treat());
        world.syncDesk();
        second = fail(Reason::locked, "closed");
        std::filesystem::copy(home, aside, std::filesystem::copy_options::recursive);
        world.courier.swallow = isEnvelope;  // each try begins alike
    }
    void back()
    {
        std::filesystem::remove_all(home);
        std::filesystem::copy(aside, home, std::filesystem::copy_options::recursive);
        world.clock.advance(1min);
    }
};

}  // namespace

TEST_CASE("a desk that is killed while it learns of a patient asks for that patient's mailbox afterwards", "[sync][faults]")
{
    NewDesk setting;
    std::uint64_t struck = 0;
    for (std::uint64_t at = 1;; at += 3) {
        CAPTURE(at);
        setting.back();
        faults::FaultDisk disk;
        auto second = opened(setting.home, setting.world);
        REQUIRE(second->vault().links()->size() == 0);
        disk.arm(faults::Fault::fromThenOn, at);
        syncRun(*second, setting.world.courier);
        const bool over = disk.calls() < at;
        struck += over ? 0 : 1;
        disk.disarm();
        second.reset();

        second = opened(setting.home, setting.world);
        syncRun(*second, setting.world.courier);
        REQUIRE(second->vault().links()->size() == 1);
        CHECK_FALSE(second->vault().links()->front().ended);
        CHECK(second->courses().size() == 1);
        if (over)
            break;
    }
    CHECK(struck > 20);
}

TEST_CASE("a change of phones that was interrupted can be made again, and the new phone gets the whole history", "[sync][faults]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& first = world.join(course);
    for (int i = 0; i < 2; ++i)
        REQUIRE(first.record(world.entryOf(first, i, i)));
    world.syncPhone(first);
    world.syncDesk();
    const auto home = world.folder.path() / "desk";
    world.desk = *desk::Desk::create(world.folder.path() / "idle", test::passphrase, test::cheap, world.clock, world.zone);

    std::uint64_t struck = 0;
    const auto newPhone = [&] {
        world.clock.advance(11min);
        auto phone = patient::Diary::create(world.folder.path() / ("next" + std::to_string(world.clock.now().time_since_epoch().count())),
                                            test::passphrase, test::cheap, world.clock, world.zone);
        REQUIRE(phone);
        return std::move(*phone);
    };
    const auto change = [&](desk::Desk& desk, patient::Diary& phone, const std::function<void(desk::Inviting&)>& confirm) {
        desk::Inviting inviting(desk, world.clock, course, triggers::defaultProtocol(), world.inDays(21));
        inviting.start(world.courier, [] {});
        patient::Joining joining(phone, world.clock);
        REQUIRE(joining.start(inviting.qrText()));
        for (int i = 0; i < 4; ++i) {
            joining.poll(world.courier, [] {});
            inviting.poll(world.courier, [] {});
        }
        REQUIRE(inviting.step() == desk::Inviting::Step::compare);
        confirm(inviting);
        joining.poll(world.courier, [] {});
    };
    for (std::uint64_t at = 1;; at += 1 + at / 8) {
        CAPTURE(at);
        bool over = false;
        patient::Diary tried = newPhone();
        {
            faults::FaultDisk disk;
            auto desk = opened(home, world);
            change(*desk, tried, [&](desk::Inviting& inviting) {
                disk.arm(faults::Fault::fromThenOn, at);
                inviting.confirm(world.courier, [] {});
                over = disk.calls() < at;
                disk.disarm();
            });
        }
        struck += over ? 0 : 1;

        patient::Diary phone = newPhone();
        auto desk = opened(home, world);
        change(*desk, phone, [&](desk::Inviting& inviting) { inviting.confirm(world.courier, [] {}); });
        syncRun(*desk, world.courier);
        world.syncPhone(phone);
        REQUIRE(phone.joined());
        CHECK(phone.history().size() == 2);
        const auto links = desk->vault().links();
        REQUIRE(links);
        CHECK(std::ranges::count(*links, false, &vault::Link::ended) == 1);
        if (over)
            break;
    }
    CHECK(struck > 10);
}
