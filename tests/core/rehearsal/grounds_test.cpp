// What thresholds rest on, and when a budget is shown to hold.

#include "core/rehearsal/grounds.h"

#include "core/rehearsal/calibrate.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using namespace ebbline::rehearsal;

TEST_CASE("a budget is shown to hold from so many courses on, until rules are changed", "[rehearsal][grounds]")
{
    const Grounds enough = groundsOf(calibratedOn(enoughForThresholds));
    CHECK(enough.courses == enoughForThresholds);
    CHECK(enough.isBudgetShown());
    CHECK_FALSE(enough.isFew());

    const Grounds few = groundsOf(calibratedOn(enoughForThresholds - 1));
    CHECK(few.isFew());
    CHECK_FALSE(few.isBudgetShown());

    const std::string changed = withChange(calibratedOn(5000));
    CHECK(groundsOf(changed).courses == 5000);
    CHECK(groundsOf(changed).changed);
    CHECK_FALSE(groundsOf(changed).isBudgetShown());
    CHECK(withChange(changed) == changed);
}

TEST_CASE("what a text of another program says is shown by nothing", "[rehearsal][grounds]")
{
    for (const char* text : {"", "first", "-5 uncomplicated courses", "5000", "5000 courses", "5000 uncomplicated courses and more"}) {
        CAPTURE(text);
        CHECK_FALSE(groundsOf(text).courses);
        CHECK_FALSE(groundsOf(text).isBudgetShown());
    }
}

TEST_CASE("invented courses show nothing of a budget, however many they are", "[rehearsal][grounds]")
{
    const Grounds grounds = groundsOf("8000 invented courses");
    CHECK(grounds.invented);
    CHECK(grounds.courses == 8000);
    CHECK_FALSE(grounds.isFew());
    CHECK_FALSE(grounds.isBudgetShown());
    CHECK_FALSE(groundsOf(triggers::Thresholds{}.calibratedOn).isBudgetShown());
}

TEST_CASE("guards are rules, thresholds of statistics are not", "[rehearsal][grounds]")
{
    const triggers::Thresholds usual;
    triggers::Thresholds other = usual;
    other.level += 1;
    other.slowOverall -= 0.1;
    other.falseAlertBudget = 5;
    other.calibratedOn = calibratedOn(40);
    CHECK(sameRules(usual, other));
    other.slowGuard += 1;
    CHECK_FALSE(sameRules(usual, other));
}

TEST_CASE("the days on which the plan asks matter, and its other instructions do not", "[rehearsal][grounds]")
{
    const aftercare::CarePlan usual = triggers::defaultProtocol().carePlan;
    aftercare::CarePlan plan = usual;
    std::erase_if(plan.instructions, [](const auto& one) { return one.kind == aftercare::InstructionKind::coldPack; });
    CHECK(sameAsking(usual, plan));
    std::erase_if(plan.instructions, [](const auto& one) { return one.kind == aftercare::InstructionKind::diaryEntry; });
    CHECK_FALSE(sameAsking(usual, plan));
}

TEST_CASE("what came in a file shows no budget of this clinic, whatever the file says", "[rehearsal][grounds]")
{
    const std::string text = withFile(calibratedOn(5000));
    CHECK(groundsOf(text).courses == 5000);
    CHECK(groundsOf(text).brought);
    CHECK_FALSE(groundsOf(text).isBudgetShown());
    CHECK(withFile(text) == text);

    const std::string changed = withChange(text);
    CHECK(groundsOf(changed).brought);
    CHECK(groundsOf(changed).changed);
    CHECK(withFile(withChange(calibratedOn(5000))) == changed);
    CHECK(withFile(changed) == changed);
    CHECK_FALSE(groundsOf(calibratedOn(5000)).brought);
}
