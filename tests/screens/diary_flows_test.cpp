// The diary used from end to end on its real pages: with a finger, with a keyboard, and with a screen
// reader, in English, German and Arabic.
#include "app/diary/model/words.h"
#include "tests/screens/complaints.h"
#include "tests/screens/diary_hands.h"
#include "tests/screens/hands.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <catch2/generators/catch_generators_range.hpp>

#include <QCoreApplication>
#include <QTest>

#include <algorithm>
#include <string_view>

using namespace ebbline;
using recovery::Side;
using recovery::Symptom;
using screens::DemoPatient;
using screens::hands;
using screens::markName;
using screens::open;
using screens::said;
using screens::typeKeys;
using Page = app::DiaryProgram::Page;

namespace {

const QString passphrase = QString::fromLatin1(DemoPatient::passphrase);
const QString hub = QString::fromLatin1(DemoPatient::hub);

}  // namespace

TEST_CASE("the flows are tried in each language with a finger, with a keyboard and with a screen reader", "[diary][flows]")
{
    for (const auto* tried : {&screens::ways, &screens::waysWithReturn})
        for (const std::string_view language : {"en", "de", "ar"})
            for (const std::vector<int>& kinds : {std::vector{0}, std::vector{1, 2}, std::vector{3}}) {
                CAPTURE(language, kinds);
                CHECK(std::any_of(tried->begin(), tried->end(), [&](const screens::Way& way) { return way.language == language && std::ranges::find(kinds, way.kind) != kinds.end(); }));
            }
}

TEST_CASE("a patient makes a diary and joins by a typed code, with each kind of hands", "[diary][flows]")
{
    const auto [kind, language] = GENERATE(from_range(screens::ways));
    CAPTURE(kind, language);
    screens::Ear ear;
    DemoPatient patient;
    auto program = patient.program(QString::fromLatin1(language));
    open(*program);
    const auto act = hands(kind, *program->window());

    REQUIRE(act.fill(said("LockPage", "Passphrase"), passphrase));
    REQUIRE(act.fill(said("LockPage", "The same once more"), passphrase));
    REQUIRE(act.use(said("LockPage", "Make my diary")));
    REQUIRE(program->page() == Page::join);

    REQUIRE(act.fill(said("JoinPage", "Or type the code, 24 letters and digits"), patient.showsCode()));
    REQUIRE(act.fill(said("JoinPage", "The address under the code"), hub));
    REQUIRE(act.use(said("JoinPage", "Use this code")));
    program->joining()->poll();
    patient.looks();
    program->joining()->poll();
    REQUIRE(program->joining()->stage() == diaryapp::JoinBoard::Stage::Compare);
    patient.confirms();
    patient.sends();
    program->joining()->poll();
    program->joining()->poll();

    CHECK(program->page() == Page::today);
    CHECK(ear.take() == "");
}

TEST_CASE("a patient reads what she types, once and in sight, with each kind of hands", "[diary][flows][lock]")
{
    const auto [kind, language] = GENERATE(from_range(screens::ways));
    CAPTURE(kind, language);
    screens::Ear ear;
    DemoPatient patient;
    auto program = patient.program(QString::fromLatin1(language));
    open(*program);
    auto& window = *program->window();
    const auto act = hands(kind, window);
    constexpr int normal = 0, password = 2;  // TextInput.Normal, TextInput.Password
    const auto echo = [&](const char* name) {
        const auto* field = screens::named(window, said("LockPage", name));
        return field != nullptr ? field->property("echoMode").toInt() : -1;
    };

    REQUIRE(act.fill(said("LockPage", "Passphrase"), passphrase));
    CHECK(echo("Passphrase") == password);
    REQUIRE(act.use(said("SecretField", "Show what I type")));
    CHECK(echo("Passphrase") == normal);
    CHECK(screens::named(window, said("LockPage", "The same once more")) == nullptr);
    // The page is left: out of sight again, and to be typed twice.
    program->openCall();
    screens::settle(window);
    program->back();
    screens::settle(window);
    CHECK(echo("Passphrase") == password);
    CHECK(echo("The same once more") == password);

    REQUIRE(act.fill(said("LockPage", "Passphrase"), passphrase));
    REQUIRE(act.use(said("SecretField", "Show what I type")));
    REQUIRE(act.use(said("LockPage", "Make my diary")));
    CHECK(program->page() == Page::join);
    CHECK(ear.take() == "");
}

TEST_CASE("a patient has her passphrase drawn, with each kind of hands", "[diary][flows][lock]")
{
    const auto [kind, language] = GENERATE(from_range(screens::ways));
    CAPTURE(kind, language);
    screens::Ear ear;
    DemoPatient patient;
    auto program = patient.program(QString::fromLatin1(language));
    open(*program);
    auto& window = *program->window();
    const auto act = hands(kind, window);
    const auto inSight = [&] {
        for (const auto* item : screens::visibleItems(window))
            if (item->inherits("QQuickText") && item->property("text").toString() == program->locking()->drawn())
                return true;
        return false;
    };

    REQUIRE(act.use(said("LockPage", "Draw one for me")));
    CHECK(inSight());
    CHECK(screens::named(window, said("LockPage", "Passphrase")) == nullptr);
    REQUIRE(act.use(said("DrawnBox", "Show it")));
    CHECK_FALSE(inSight());
    REQUIRE(act.use(said("DrawnBox", "Draw another one")));
    CHECK(inSight());
    // The page is left: out of sight until it is asked for.
    program->openCall();
    screens::settle(window);
    program->back();
    screens::settle(window);
    CHECK_FALSE(inSight());
    REQUIRE(act.use(said("DrawnBox", "Show it")));
    CHECK(inSight());
    REQUIRE(act.use(said("LockPage", "It is on paper")));
    CHECK_FALSE(inSight());
    CHECK(screens::named(window, said("DrawnBox", "Show it")) == nullptr);
    const auto groups = program->locking()->askedGroups();
    const QStringList paper = program->locking()->drawn().split(QLatin1Char('-'));
    REQUIRE(act.fill(program->locking()->askedText(), paper.at(groups[0] - 1) + QLatin1Char('-') + paper.at(groups[1] - 1)));
    REQUIRE(act.use(said("LockPage", "Make my diary")));
    CHECK(program->page() == Page::join);
    CHECK(ear.take() == "");
}

TEST_CASE("a patient writes an entry, meets a warning and reads it, with each kind of hands", "[diary][flows]")
{
    const auto [kind, language] = GENERATE(from_range(screens::waysWithReturn));
    CAPTURE(kind, language);
    screens::Ear ear;
    DemoPatient patient;
    auto program = patient.joined(QString::fromLatin1(language));
    patient.setOffline(true);
    open(*program);
    const auto act = hands(kind, *program->window());

    REQUIRE(act.use(said("ebbline::diaryapp::TodayBoard", "Write down how it is")));
    REQUIRE(program->page() == Page::entry);
    REQUIRE(act.use(markName(Symptom::swelling, Side::right, 2)));
    REQUIRE(act.use(markName(Symptom::swelling, Side::left, 3)));
    REQUIRE(act.use(said("ebbline::diaryapp::EntryBoard", "Next")));
    REQUIRE(act.use(markName(Symptom::pain, Side::left, 0)));
    REQUIRE(act.use(said("ebbline::diaryapp::EntryBoard", "Next")));
    for (int i = 0; i < 3; ++i)
        REQUIRE(act.use(said("ebbline::diaryapp::EntryBoard", "Skip this one")));
    if (kind == 2)
        QTest::keyClick(program->window(), Qt::Key_Tab);
    REQUIRE(hands(kind == 2 ? 1 : kind, *program->window()).use(diaryapp::signQuestion(recovery::Sign::breathing)));
    REQUIRE(act.use(said("ebbline::diaryapp::EntryBoard", "Only what I ticked")));
    // What she ticked is an emergency: it waits for no other answer.
    REQUIRE(program->page() == Page::warning);
    CHECK(program->home().diary().history().empty());
    REQUIRE(act.use(said("WarningPage", "I have read this")));
    REQUIRE(program->page() == Page::entry);
    REQUIRE(act.fill(said("RestStep", "Temperature, if you measured it"), QStringLiteral("38.5")));
    REQUIRE(act.fill(said("RestStep", "In your own words, if you like"), QStringLiteral("It came on after lunch.")));
    REQUIRE(act.use(said("EntryPage", "Save")));

    REQUIRE(program->page() == Page::warning);
    CHECK(program->warning()->isEmergency());
    const auto entry = program->home().diary().history().front().history.current();
    CHECK(entry.scores.at({Symptom::swelling, Side::right}).points() == 2);
    CHECK(entry.scores.at({Symptom::swelling, Side::left}).points() == 3);
    CHECK(entry.scores.at({Symptom::pain, Side::left}).points() == 0);
    CHECK(entry.scores.size() == 3);
    CHECK(entry.present == recovery::Signs{recovery::Sign::breathing});
    REQUIRE(entry.temperature);
    CHECK(std::abs(entry.temperature->celsius() - 38.5) < 0.01);
    CHECK(entry.note == "It came on after lunch.");

    REQUIRE(act.use(said("WarningPage", "I have read this")));
    CHECK(program->page() == Page::today);
    CHECK(program->home().diary().today().standing.empty());
    CHECK(ear.take() == "");
}

TEST_CASE("a patient answers a reminder, with each kind of hands", "[diary][flows]")
{
    const auto [kind, language] = GENERATE(from_range(screens::waysWithReturn));
    CAPTURE(kind, language);
    DemoPatient patient;
    auto program = patient.joined(QString::fromLatin1(language));
    patient.goTo(0, 19, 40);
    program->openToday();
    open(*program);
    const auto due = program->today()->due().size();
    REQUIRE(due > 1);

    REQUIRE(hands(kind, *program->window()).use(said("DueCard", "Done")));
    CHECK(program->today()->due().size() == due - 1);
}

TEST_CASE("a patient keeps a photograph, looks at it and takes it back, with each kind of hands", "[diary][flows][photo]")
{
    const auto [kind, language] = GENERATE(from_range(screens::waysWithReturn));
    CAPTURE(kind, language);
    screens::Ear ear;
    DemoPatient patient;
    auto program = patient.joined(QString::fromLatin1(language));
    patient.setOffline(true);
    open(*program);
    const auto act = hands(kind, *program->window());

    REQUIRE(act.use(said("TodayPage", "What I wrote")));
    REQUIRE(act.use(said("HistoryPage", "Add photographs")));
    REQUIRE(act.use(said("PhotoPage", "Which side") + QStringLiteral(": ") + said("DiaryPhotos", "Your left side")));
    DemoPatient::aims(*program);
    screens::settle(*program->window());
    REQUIRE(act.use(said("PhotoPage", "Take another")));
    CHECK(program->home().diary().photos().empty());
    DemoPatient::aims(*program);
    screens::settle(*program->window());
    REQUIRE(act.use(said("PhotoPage", "Keep it")));
    REQUIRE(program->home().diary().photos().size() == 1);
    CHECK(program->home().diary().photos().front().pose == photos::Pose::leftOblique);
    REQUIRE(act.use(said("PhotoPage", "Done")));
    REQUIRE(program->page() == Page::history);

    REQUIRE(act.use(said("PhotoThumb", "Photograph. %1").arg(program->history()->entries().first().photos.first().title)));
    REQUIRE(program->page() == Page::picture);
    REQUIRE(act.use(said("PicturePage", "Take it back …")));
    REQUIRE(act.use(said("PicturePage", "Leave it")));
    CHECK(program->home().diary().photos().size() == 1);
    REQUIRE(act.use(said("PicturePage", "Take it back …")));
    REQUIRE(act.use(said("PicturePage", "Take it back now. There is no way back.")));
    CHECK(program->page() == Page::history);
    CHECK(program->home().diary().photos().empty());
    CHECK(ear.take() == "");
}

TEST_CASE("a patient changes the language, and every page turns with it", "[diary][flows]")
{
    const int kind = GENERATE(0, 1, 2, 3);
    CAPTURE(kind);
    screens::Ear ear;
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    open(*program);
    const auto act = hands(kind, *program->window());

    REQUIRE(act.use(said("TodayPage", "Settings")));
    REQUIRE(act.use(QStringLiteral("Language: العربية")));
    CHECK(program->isRightToLeft());
    CHECK(program->page() == Page::settings);
    CHECK(program->pageTitle() == QStringLiteral("الإعدادات"));
    REQUIRE(act.use(QStringLiteral("رجوع")));
    CHECK(program->page() == Page::today);
    CHECK(program->window()->title() == QStringLiteral("مفكرة Ebbline"));
    CHECK(ear.take() == "");
}

TEST_CASE("help is one act away on every page, locked or not", "[diary][flows][call]")
{
    const auto [kind, language] = GENERATE(from_range(screens::ways));
    CAPTURE(kind, language);
    DemoPatient patient;
    auto program = patient.joined(QString::fromLatin1(language));
    open(*program);
    const auto act = hands(kind, *program->window());
    const QList<std::function<void()>> pages{[&] { program->openToday(); },   [&] { program->openEntry(); },
                                             [&] { program->openHistory(); }, [&] { program->openNotes(); },
                                             [&] { program->openSettings(); }, [&] { program->lock(); }};
    for (const auto& show : pages) {
        show();
        screens::settle(*program->window());
        CAPTURE(program->pageName().toStdString());
        REQUIRE(act.use(said("TopLine", "I need help")));
        CHECK(program->page() == Page::call);
        CHECK(screens::named(*program->window(), said("CallButton", "%1: %2").arg(said("ebbline::diaryapp::WarningBoard", "Your clinic"), QStringLiteral("\u2066+00\u00a0555\u00a00100\u2069"))) != nullptr);
    }
}

TEST_CASE("a screen reader cannot press what is disabled", "[diary][flows]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    open(*program);
    program->openNotes();
    screens::settle(*program->window());
    CHECK(screens::named(*program->window(), said("NotesPage", "Send when there is a network")) == nullptr);
    REQUIRE(screens::write(*program->window(), said("NotesPage", "Your note"), QStringLiteral("It itches.")));
    REQUIRE(screens::press(*program->window(), said("NotesPage", "Send when there is a network")));
    REQUIRE(program->history()->notes().size() == 1);
    CHECK(program->history()->notes().first().text == QLatin1String("It itches."));
}

TEST_CASE("a program that ends takes its charts with it, while they still have an event loop", "[diary][flows]")
{
    screens::Ear ear;
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tell(*program, 3);
    open(*program);
    REQUIRE(program->page() == Page::today);

    program.reset();

    CHECK(qApp->findChildren<QQuickItem*>(QString(), Qt::FindDirectChildrenOnly).isEmpty());
    CHECK(ear.take() == "");
}

TEST_CASE("the phone's own key for back does what Back does, from question to question and to the day", "[diary][flows]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    open(*program);
    program->openEntry();
    program->entry()->next();
    const QString second = program->entry()->question();
    screens::settle(*program->window());
    QTest::keyClick(program->window(), Qt::Key_Back);
    CHECK(program->entry()->question() != second);
    QTest::keyClick(program->window(), Qt::Key_Back);
    CHECK(program->page() == app::DiaryProgram::Page::today);
    program->openSettings();
    program->openReminders();
    screens::settle(*program->window());
    QTest::keyClick(program->window(), Qt::Key_Back);
    CHECK(program->page() == app::DiaryProgram::Page::settings);
}
