// What a warning can mean: said beside every warning that takes the page, in words that have their ground, and never instead
// of what to do.
#include "app/diary/model/words.h"
#include "core/warnings/warnings.h"
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QFile>
#include <QRegularExpression>

#include <map>
#include <set>

using namespace ebbline;
using recovery::Side;
using recovery::Sign;
using recovery::Symptom;
using screens::DemoPatient;
using Page = app::DiaryProgram::Page;

namespace {

/// Of every rule that can be loud, one finding that is: from each sign, each pair of signs, fever and scores.
std::map<std::string, warnings::Finding> loudFindings()
{
    std::map<std::string, warnings::Finding> found;
    const auto judge = [&](const recovery::Entry& entry) {
        for (auto& finding : warnings::judge(entry, {}))
            if (finding.urgency <= recovery::Urgency::callNow)
                found.emplace(finding.rule, finding);
    };
    for (const int hours : {1, 24, 100})
        for (const bool fever : {false, true})
            for (const Sign one : recovery::allSigns)
                for (const Sign other : recovery::allSigns) {
                    recovery::Entry entry;
                    entry.at.at += std::chrono::hours(hours);
                    entry.present = {one, other};
                    if (fever)
                        entry.temperature = *recovery::Temperature::celsius(38.5);
                    entry.scores.insert_or_assign({Symptom::pain, Side::left}, *recovery::Score::of(8));
                    entry.scores.insert_or_assign({Symptom::swelling, Side::left}, *recovery::Score::of(8));
                    entry.scores.insert_or_assign({Symptom::swelling, Side::right}, *recovery::Score::of(2));
                    judge(entry);
                }
    recovery::Entry feverish;
    feverish.temperature = *recovery::Temperature::celsius(38.5);
    judge(feverish);
    return found;
}

triage::Finding shown(const warnings::Finding& finding)
{
    triage::Finding shown;
    shown.urgency = finding.urgency;
    shown.what = finding;
    return shown;
}

}  // namespace

TEST_CASE("every warning that takes the page says what it can mean, in the words of the page that has their ground", "[diary][warning][meaning][safety]")
{
    QFile page(QStringLiteral(EBBLINE_DOCS "/clinical/warnings.md"));
    REQUIRE(page.open(QIODevice::ReadOnly));
    const QStringList lines = QString::fromUtf8(page.readAll()).split(QLatin1Char('\n'));
    const auto found = loudFindings();
    CHECK(found.size() == 21);
    for (const auto& [rule, finding] : found) {
        CAPTURE(rule);
        const QString meaning = diaryapp::meaningOf(shown(finding));
        REQUIRE_FALSE(meaning.isEmpty());
        // A row: rule, the words, their source.
        QString source;
        for (const QString& line : lines)
            if (const auto cells = line.split(QLatin1Char('|')); cells.size() == 5 && cells[2].trimmed() == meaning
                && cells[1].split(QLatin1Char(',')).replaceInStrings(QStringLiteral(" "), QString()).contains(QString::fromStdString(rule)))
                source = cells[3].trimmed();
        CHECK(source.size() > 3);
        // It never takes the place of what to do, nor softens it.
        static const QRegularExpression soothing(QStringLiteral("\\b(harmless|probably|usual|normal|fine|wait and|do not worry|most often)\\b"));
        CHECK_FALSE(soothing.match(meaning).hasMatch());
    }
}

TEST_CASE("a finding over a course says what it can mean where its ground names something, and nothing that waits", "[diary][warning][meaning][safety]")
{
    const auto saidOf = [](triggers::Trigger trigger, Symptom symptom, int day) {
        triggers::Finding finding{.trigger = trigger, .urgency = recovery::Urgency::callNow, .stream = {symptom, Side::left}, .raisedAt = {}, .day = day, .numbers = {}};
        triage::Finding shown;
        shown.urgency = finding.urgency;
        shown.what = finding;
        return diaryapp::meaningOf(shown);
    };
    using triggers::Trigger;
    CHECK(saidOf(Trigger::sideDivergence, Symptom::swelling, 4).contains(QLatin1String("It counts as that until a doctor has looked")));
    CHECK(saidOf(Trigger::sideDivergence, Symptom::swelling, 5) == QLatin1String("It can be blood under the skin, or an infection."));
    CHECK(saidOf(Trigger::level, Symptom::pain, 8).contains(QLatin1String("Pain this strong")));
    CHECK(saidOf(Trigger::rebound, Symptom::swelling, 8) == QLatin1String("Numbers alone do not say what it is. So call now."));
}

TEST_CASE("over a lock a warning says how grave it can be, and nothing of what was found", "[diary][warning][meaning][safety]")
{
    const Sign sign = GENERATE(Sign::breathing, Sign::severeIllness, Sign::thickFluid);
    DemoPatient patient;
    patient.setLocksWhenIdle(true);
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    DemoPatient::tellSign(*program, sign);
    REQUIRE(program->page() == Page::warning);
    auto& board = *program->warning();
    const QString open = board.meaning();
    CHECK_FALSE(open.isEmpty());

    program->lockIdle();
    REQUIRE(program->page() == Page::call);
    CHECK_FALSE(board.meaning().isEmpty());
    CHECK(board.meaning() != open);
    CHECK(board.meaning() == diaryapp::unnamedMeaning(board.isEmergency() ? recovery::Urgency::emergency : recovery::Urgency::callNow));

    REQUIRE(program->home().unlock(bytes::viewOf(DemoPatient::passphrase)));
    CHECK(board.meaning() == open);
}

TEST_CASE("of several signs the page says what the most urgent can mean, each once", "[diary][warning][meaning]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openEntry();
    auto& entry = *program->entry();
    while (entry.step() == diaryapp::EntryBoard::Step::Score)
        entry.next();
    for (const Sign sign : {Sign::vision, Sign::strokeSigns, Sign::thickFluid})
        entry.tick(static_cast<int>(sign), true);
    entry.signsDone();
    const QString meaning = program->warning()->meaning();
    CHECK(meaning.contains(QLatin1String("It can be a stroke.")));
    CHECK(meaning.contains(QLatin1String("The eye, or the blood flow to it")));
    CHECK_FALSE(meaning.contains(QLatin1String("pus")));
    CHECK(meaning.split(QLatin1Char('\n')).size() == 2);
}

TEST_CASE("without a warning nothing is said to mean anything", "[diary][warning][meaning]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openCall();
    CHECK(program->warning()->meaning().isEmpty());
}
