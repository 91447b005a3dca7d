#pragma once
/// \file
/// A clinic with a phone and a second desk that can be enlisted.

#include "tests/core/desk/clinic_world.h"

namespace ebbline::test {

inline sync::Report syncOf(desk::Desk& desk, sync::Courier& courier)
{
    sync::Report report;
    desk.syncNow(courier, [&](const sync::Report& done) { report = done; });
    return report;
}

struct TwoDesks {
    ClinicWorld world;
    recovery::CourseId course = world.treat();
    patient::Diary& phone = world.join(course);
    desk::Desk second = *desk::Desk::create(world.folder.path() / "second", passphrase, cheap, world.clock, world.zone);
    desk::Inviting::NewDesk kind = desk::Inviting::NewDesk::plain;

    void enlist()
    {
        second.setPerson("Dr. Jonas Feld");
        REQUIRE(world.desk.allowStep(passphrase));
        desk::Inviting inviting(world.desk, world.clock, kind);
        inviting.start(world.courier, [] {});
        REQUIRE(inviting.step() == desk::Inviting::Step::shown);
        desk::Applying applying(second, world.clock);
        REQUIRE(applying.start(inviting.typedCode(), "hub.example"));
        for (int i = 0; i < 4; ++i) {
            applying.poll(world.courier, [] {});
            inviting.poll(world.courier, [] {});
        }
        REQUIRE(applying.step() == desk::Applying::Step::compare);
        CHECK(applying.confirmationNumber() == inviting.confirmationNumber());
        inviting.confirm(world.courier, [] {});
        applying.poll(world.courier, [] {});
        REQUIRE(applying.step() == desk::Applying::Step::linked);
        CHECK(inviting.step() == desk::Inviting::Step::linked);
    }
    void everybody(int rounds = 3)
    {
        for (int i = 0; i < rounds; ++i) {
            world.syncPhone(phone);
            world.syncDesk();
            syncOf(second, world.courier);
        }
        world.syncPhone(phone);
    }
    std::string whole(desk::Desk& desk) { return journal::dump(desk.vault().state()); }
    void record() { REQUIRE(phone.record(world.entryOf(phone, 3, 2))); }
};

}  // namespace ebbline::test
