// What can wait is told in full as well: every reason, all of what to do, until it was read and after.
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace ebbline;
using recovery::Sign;
using screens::DemoPatient;
using Page = app::DiaryProgram::Page;

namespace {

const QString doNotPull = QStringLiteral("Do not pull it and do not cut it. Cover it.");
const QString general = QStringLiteral("It is in your entry. If you hear nothing by the next working day, call. If it gets worse, call at once.");

std::unique_ptr<app::DiaryProgram> withThreads(DemoPatient& patient)
{
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    patient.goTo(2, 12);
    program->openEntry();
    auto& entry = *program->entry();
    while (entry.step() == diaryapp::EntryBoard::Step::Score)
        entry.next();
    entry.tick(static_cast<int>(Sign::threadLump), true);
    entry.tick(static_cast<int>(Sign::threadOut), true);
    entry.signsDone();
    entry.save();
    REQUIRE(program->page() == Page::today);
    return program;
}

}  // namespace

TEST_CASE("advice that can wait names every reason and all of what to do, until it was read", "[diary][advice][safety]")
{
    DemoPatient patient;
    auto program = withThreads(patient);
    const auto& today = *program->today();

    CHECK(today.adviceTitle() == QLatin1String("Your clinic should hear of this"));
    CHECK(today.adviceDoNow().startsWith(doNotPull));
    CHECK(today.adviceDoNow().endsWith(general));
    CHECK(today.adviceReason().contains(diaryapp::signQuestion(Sign::threadLump)));
    CHECK(today.adviceReason().contains(diaryapp::signQuestion(Sign::threadOut)));
    CHECK(program->notice().contains(today.adviceTitle()));

    // Closing the notice, or the program, reads nothing.
    program->dismissNotice();
    program.reset();
    program = patient.program(QStringLiteral("en"));
    REQUIRE(program->home().unlock(bytes::viewOf(DemoPatient::passphrase)));
    CHECK(program->today()->adviceDoNow().startsWith(doNotPull));

    program->today()->readAdvice();
    CHECK(program->today()->adviceTitle().isEmpty());
    patient.goTo(3, 9);
    program->openToday();
    CHECK(program->today()->adviceTitle().isEmpty());
}

TEST_CASE("advice that was read stays readable with its entry", "[diary][advice]")
{
    DemoPatient patient;
    auto program = withThreads(patient);
    program->today()->readAdvice();

    const auto entry = program->history()->entries().first();
    CHECK(entry.warning == QLatin1String("Your clinic should hear of this"));
    CHECK_FALSE(entry.loud);
    CHECK(entry.advice.contains(doNotPull));
    CHECK(entry.advice.contains(general));
    CHECK(entry.advice.contains(diaryapp::signQuestion(Sign::threadLump)));
    CHECK(entry.advice.contains(diaryapp::signQuestion(Sign::threadOut)));
}

TEST_CASE("what can wait beside a warning is shown once the warning was read", "[diary][advice]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    program->openEntry();
    auto& entry = *program->entry();
    while (entry.step() == diaryapp::EntryBoard::Step::Score)
        entry.next();
    entry.tick(static_cast<int>(Sign::threadOut), true);
    entry.tick(static_cast<int>(Sign::fastSwelling), true);
    entry.signsDone();
    program->warning()->confirm();
    entry.save();

    CHECK(program->page() == Page::today);
    CHECK(program->today()->adviceDoNow().startsWith(doNotPull));
    CHECK(program->history()->entries().first().warning == QLatin1String("Call your clinic now"));
    CHECK(program->history()->entries().first().advice.contains(doNotPull));
}

TEST_CASE("reading what can wait reads nothing that becomes more urgent", "[diary][advice][safety]")
{
    DemoPatient patient;
    auto program = withThreads(patient);
    program->today()->readAdvice();
    REQUIRE(program->home().diary().today().standing.empty());

    // Fluid at the thread makes the same finding one to call for.
    program->amend(program->history()->entries().first().key);
    auto& entry = *program->entry();
    while (entry.step() == diaryapp::EntryBoard::Step::Score)
        entry.next();
    entry.tick(static_cast<int>(Sign::thickFluid), true);
    entry.signsDone();
    CHECK(program->page() == Page::warning);
    entry.save();
    const auto standing = program->home().diary().today().standing;
    CHECK(std::ranges::any_of(standing, [](const triage::Finding& finding) {
        const auto* warning = std::get_if<warnings::Finding>(&finding.what);
        return warning && warning->rule == "thread-out" && finding.urgency == recovery::Urgency::callNow;
    }));
}

TEST_CASE("no advice says that the clinic will answer: it may not have heard", "[diary][advice][safety]")
{
    triage::Finding finding;
    finding.urgency = recovery::Urgency::nextWorkingDay;
    finding.what = warnings::Finding{"thread-lump", finding.urgency, recovery::Side::none, {"thread-lump"}};
    CHECK(diaryapp::adviceFor(finding).doNow == general);
    finding.changedSince = true;
    CHECK(diaryapp::adviceFor(finding).reason.endsWith(QLatin1String("You have changed or added to this since. The advice stays.")));
    finding.recounted = true;
    CHECK(diaryapp::adviceFor(finding).reason.endsWith(QLatin1String("The clinic has changed its record of your treatment since. The advice stays.")));
}

TEST_CASE("sides that part are told by the symptom that shows it and by how far they are apart in all, each line once", "[diary][advice]")
{
    triggers::Finding sides{triggers::Trigger::sideDivergence, recovery::Urgency::nextWorkingDay,
                            {recovery::Symptom::pain, recovery::Side::left}, {}, 1, {{"left", 8}, {"right", 3}}};
    triage::Finding one;
    one.urgency = recovery::Urgency::nextWorkingDay;
    one.what = sides;
    sides.urgency = recovery::Urgency::callNow;
    sides.stream.symptom = recovery::Symptom::swelling;
    sides.shown = recovery::Symptom::pain;
    sides.numbers["apart"] = 9;
    triage::Finding filling;
    filling.urgency = recovery::Urgency::callNow;
    filling.what = sides;

    CHECK(diaryapp::adviceFor({filling, one}, false).reason
          == QLatin1String("Pain: 8 on your left and 3 on your right.\nAll in all, your sides are 9 points apart."));
}

TEST_CASE("a score that rises is told as it is: back up again, or up from where it had been all along", "[diary][advice]")
{
    triage::Finding finding;
    finding.urgency = recovery::Urgency::nextWorkingDay;
    triggers::Finding rising{triggers::Trigger::rebound, finding.urgency, {recovery::Symptom::pain, recovery::Side::left}, {}, 1, {{"score", 5}, {"lowest", 2}}};
    finding.what = rising;
    CHECK(diaryapp::adviceFor(finding).reason == QLatin1String("Pain, your left: it went down to 2 and is at 5 again."));
    rising.numbers["neverFell"] = 1;
    finding.what = rising;
    CHECK(diaryapp::adviceFor(finding).reason == QLatin1String("Pain, your left: it was at 2 and is at 5 now."));
}
