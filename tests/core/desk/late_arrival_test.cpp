// Closing a course closes nothing that was on its way.

#include "tests/core/desk/clinic_world.h"

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

const records::FollowUpRecorded well{{}, records::GlobalChange::muchBetter, 4, {}, true, "", "", "", {}};

struct Closing {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat("Rosa Quint");
    patient::Diary& phone = world.join(course);

    recovery::Entry ill()
    {
        auto entry = world.entryOf(phone, 2, 2);
        entry.present = {recovery::Sign::thickFluid};
        return entry;
    }

    void sync()
    {
        world.syncPhone(phone);
        world.syncDesk();
    }

    void close()
    {
        auto followUp = well;
        followUp.course = course;
        REQUIRE(world.desk.recordFollowUp(followUp));
    }
};

}  // namespace

TEST_CASE("a call-now entry that arrives after the course was closed stands until somebody closes it", "[desk][triage]")
{
    Closing closing;
    auto& [world, course, phone] = closing;
    world.clock.advance(24h * 20);
    REQUIRE(phone.record(closing.ill()));  // out of reach of the hub
    world.clock.advance(24h);
    closing.close();
    CHECK(world.desk.queue().empty());

    world.clock.advance(1h);
    closing.sync();

    auto queue = world.desk.queue();
    REQUIRE(queue.size() == 1);
    CHECK(queue.front().urgency == recovery::Urgency::callNow);
    // Opening it is reading, not answering.
    REQUIRE(world.desk.openEntries(course));
    REQUIRE(world.desk.queue().size() == 1);
    REQUIRE(world.desk.act(course, queue.front().findings.front().key, records::Act::closed, records::Outcome::treatedInClinic));
    CHECK(world.desk.queue().empty());
}

TEST_CASE("what somebody had opened or acted on before the follow-up is answered by it", "[desk][triage]")
{
    for (const bool opened : {true, false}) {
        Closing closing;
        auto& [world, course, phone] = closing;
        world.clock.advance(24h * 20);
        REQUIRE(phone.record(closing.ill()));
        closing.sync();
        REQUIRE(world.desk.queue().size() == 1);
        if (opened)
            REQUIRE(world.desk.openEntries(course));
        else
            REQUIRE(world.desk.act(course, world.desk.queue().front().findings.front().key, records::Act::called));
        world.clock.advance(24h);
        closing.close();

        CHECK(world.desk.queue().empty());
        const auto view = world.desk.course(course);
        REQUIRE_FALSE(view->findings.empty());
        CHECK_FALSE(view->findings.front().open);
    }
}

TEST_CASE("a correction on its way that asks for a call stands, though what it corrects was opened", "[desk][triage]")
{
    Closing closing;
    auto& [world, course, phone] = closing;
    world.clock.advance(24h * 20);
    const auto saved = phone.record(world.entryOf(phone, 2, 2));
    REQUIRE(saved);
    closing.sync();
    REQUIRE(world.desk.openEntries(course));
    auto entry = closing.ill();
    REQUIRE(phone.amend(saved->entry, entry));
    world.clock.advance(24h);
    closing.close();
    world.clock.advance(1h);
    closing.sync();

    CHECK(world.desk.queue().size() == 1);
}
