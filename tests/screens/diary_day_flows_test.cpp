// The acts of the days after joining, on the real pages: opening and locking, correcting, an earlier moment, throwing
// away, trying a bell, more curves, calling where nothing can dial, taking along and deleting.
#include "tests/screens/complaints.h"
#include "tests/screens/diary_hands.h"
#include "tests/screens/hands.h"
#include "tests/screens/in_reach.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <catch2/generators/catch_generators_range.hpp>

#include <QAccessible>
#include <QDir>
#include <QTemporaryDir>

using namespace ebbline;
using recovery::Side;
using recovery::Symptom;
using screens::DemoPatient;
using screens::hands;
using screens::markName;
using screens::open;
using screens::said;
using Page = app::DiaryProgram::Page;

namespace {

const QString passphrase = QString::fromLatin1(DemoPatient::passphrase);
constexpr auto entryBoard = "ebbline::diaryapp::EntryBoard";
constexpr auto todayBoard = "ebbline::diaryapp::TodayBoard";

/// From the first question to the last page of an entry, with one answer.
void answerOne(const screens::Hands& act, int points)
{
    REQUIRE(act.use(markName(Symptom::swelling, Side::left, points)));
    REQUIRE(act.use(said(entryBoard, "Next")));
    for (int question = 1; question < 5; ++question)
        REQUIRE(act.use(said(entryBoard, "Skip this one")));
    REQUIRE(act.use(said(entryBoard, "None of these")));
}

/// A dialog of files is the system's: what it would choose is given to the board instead.
void closeDialogs(QQuickWindow& window)
{
    for (QObject* one : window.findChildren<QObject*>())
        if (one->inherits("QQuickAbstractDialog"))
            QMetaObject::invokeMethod(one, "close");
    screens::settle(window);
}

}  // namespace

TEST_CASE("a patient locks the diary and opens it again, with each kind of hands", "[diary][flows][lock]")
{
    const auto [kind, language] = GENERATE(from_range(screens::ways));
    CAPTURE(kind, language);
    screens::Ear ear;
    DemoPatient patient;
    auto program = patient.joined(QString::fromLatin1(language));
    open(*program);
    const auto act = hands(kind, *program->window());

    REQUIRE(act.use(said("TodayPage", "Settings")));
    REQUIRE(act.use(said("SettingsPage", "Lock the diary")));
    REQUIRE(program->page() == Page::lock);
    CHECK_FALSE(program->home().isOpen());
    REQUIRE(act.use(said("LockPage", "Open my diary")));  // nothing is typed
    CHECK(program->page() == Page::lock);
    REQUIRE(act.fill(said("LockPage", "Passphrase"), passphrase));
    patient.clock().advance(std::chrono::hours(1));
    REQUIRE(act.use(said("LockPage", "Open my diary")));
    CHECK(program->home().isOpen());
    CHECK(program->page() != Page::lock);
    CHECK(ear.take() == "");
}

TEST_CASE("a patient corrects an entry, and what was before stays, with each kind of hands", "[diary][flows]")
{
    const auto [kind, language] = GENERATE(from_range(screens::waysWithReturn));
    CAPTURE(kind, language);
    screens::Ear ear;
    DemoPatient patient;
    auto program = patient.joined(QString::fromLatin1(language));
    DemoPatient::tell(*program, 3);
    program->dismissNotice();
    open(*program);
    const auto act = hands(kind, *program->window());

    REQUIRE(act.use(said("TodayPage", "What I wrote")));
    REQUIRE(act.use(said("EntryCard", "Correct")));
    REQUIRE(program->page() == Page::entry);
    REQUIRE(act.use(markName(Symptom::swelling, Side::left, 5)));
    for (int question = 0; question < 5; ++question)
        REQUIRE(act.use(said(entryBoard, "Next")));
    REQUIRE(act.use(said(entryBoard, "None of these")));
    REQUIRE(act.use(said("EntryPage", "Save")));

    const auto versions = program->home().diary().history().front().history.versions;
    REQUIRE(versions.size() == 2);
    CHECK(versions.front().value.scores.at({Symptom::swelling, Side::left}).points() == 3);
    CHECK(versions.back().value.scores.at({Symptom::swelling, Side::left}).points() == 5);
    CHECK(ear.take() == "");
}

TEST_CASE("a patient writes about an earlier moment, with each kind of hands", "[diary][flows]")
{
    const auto [kind, language] = GENERATE(from_range(screens::waysWithReturn));
    CAPTURE(kind, language);
    screens::Ear ear;
    DemoPatient patient;
    auto program = patient.joined(QString::fromLatin1(language));
    patient.goTo(0, 20, 10);
    program->openToday();
    open(*program);
    const auto act = hands(kind, *program->window());
    const auto at = [&](std::size_t entry) { return patient.zone().moment(program->home().diary().history().at(entry).history.current().at.at).minuteOfDay(); };

    REQUIRE(act.use(said("TodayPage", "What I wrote")));
    REQUIRE(act.use(said("HistoryPage", "Add an earlier moment")));
    REQUIRE(program->page() == Page::entry);
    answerOne(act, 2);
    REQUIRE(act.use(said("EntryPage", "Save")));
    REQUIRE(program->home().diary().history().size() == 1);
    CHECK(at(0) == 20 * 60);
    const auto& first = program->home().diary().history().front().history.current();
    CHECK(first.recordedAt.at - first.at.at >= std::chrono::minutes(10));

    // The other way there: at the end of an entry begun as now.
    patient.goTo(0, 21, 40);
    program->dismissNotice();
    program->openEntry();
    screens::settle(*program->window());
    answerOne(act, 3);
    REQUIRE(act.use(said("MomentLine", "It was earlier")));
    REQUIRE(act.use(said("EntryPage", "Save")));
    REQUIRE(program->home().diary().history().size() == 2);
    CHECK(at(0) == 21 * 60 + 30);
    CHECK(ear.take() == "");
}

TEST_CASE("a patient throws an entry away only after she was asked, with each kind of hands", "[diary][flows]")
{
    const auto [kind, language] = GENERATE(from_range(screens::waysWithReturn));
    CAPTURE(kind, language);
    screens::Ear ear;
    DemoPatient patient;
    auto program = patient.joined(QString::fromLatin1(language));
    open(*program);
    const auto act = hands(kind, *program->window());
    const auto isBegun = [&] {
        const auto draft = program->home().diary().draft();
        return draft && diaryapp::EntryBoard::isBegun(*draft);
    };

    REQUIRE(act.use(said(todayBoard, "Write down how it is")));
    answerOne(act, 4);
    REQUIRE(act.use(said("RestStep", "Throw this entry away …")));
    REQUIRE(act.use(said("RestStep", "No, keep it")));
    CHECK(isBegun());
    REQUIRE(act.use(said("RestStep", "Throw this entry away …")));
    CHECK(isBegun());
    REQUIRE(act.use(said("RestStep", "Yes, throw it away")));
    CHECK_FALSE(isBegun());
    CHECK(program->page() == Page::today);
    CHECK(program->home().diary().history().empty());
    CHECK(ear.take() == "");
}

TEST_CASE("a note that is too long shows as it is kept, and says that it is full", "[diary][flows][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    open(*program);
    auto& window = *program->window();
    program->openEntry();
    answerOne(hands(0, window), 4);
    screens::settle(window);
    auto* field = screens::named(window, said("RestStep", "In your own words, if you like"));
    REQUIRE(field != nullptr);
    const QString full = QStringLiteral("a").repeated(recovery::Entry::maximumNote);
    for (const auto& [typed, shown] : {std::pair(full + QStringLiteral("bcd"), full), std::pair(full + QLatin1Char('e'), full)}) {
        REQUIRE(field->setProperty("text", typed));
        CHECK(field->property("text").toString() == shown);
        CHECK(program->entry()->note() == shown);
        CHECK(program->entry()->noteProblem() == QLatin1String("The note is full. What comes after this is not kept."));
        screens::settle(window);
        auto* sentence = screens::spoken(window, program->entry()->noteProblem());
        REQUIRE(sentence != nullptr);
        CHECK(QAccessible::queryAccessibleInterface(sentence)->role() == QAccessible::AlertMessage);
    }
}

TEST_CASE("the line that is typed stays in sight in a long note, and so does the word that it is full as it comes", "[diary][flows][safety]")
{
    const auto size = GENERATE(QSize(320, 568), QSize(360, 780));
    const int textSize = GENERATE(0, 2);
    CAPTURE(size.width(), textSize);
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->settings()->setTextSize(textSize);
    open(*program);
    auto& window = *program->window();
    window.resize(size);
    program->openEntry();
    answerOne(hands(3, window), 4);
    auto* field = screens::named(window, said("RestStep", "In your own words, if you like"));
    REQUIRE(field != nullptr);
    const auto sees = [&](const QQuickItem& item, const QRectF& part) {
        const auto box = item.mapRectToScene(part);
        return QRectF(QPointF(), size).contains(box) && screens::inSight(&item).contains(box.center());
    };
    const auto seesLine = [&] { return sees(*field, field->property("cursorRectangle").toRectF()); };
    field->setProperty("text", QStringLiteral("a day ").repeated(400).left(recovery::Entry::maximumNote - 1));
    field->forceActiveFocus();
    field->setProperty("cursorPosition", field->property("length"));
    screens::settle(window);
    REQUIRE(field->height() > size.height());
    CHECK(seesLine());
    const bool atEnd = GENERATE(true, false);
    if (!atEnd)
        field->setProperty("cursorPosition", 700);
    screens::settle(window);
    CHECK(seesLine());
    screens::typeKeys(window, QStringLiteral("xy"));
    auto* sentence = screens::spoken(window, program->entry()->noteProblem());
    REQUIRE(sentence != nullptr);
    CHECK(sees(*sentence, QRectF(0, 0, sentence->width(), sentence->height())));
    if (atEnd)
        CHECK(seesLine());
    else
        CHECK(field->property("cursorPosition").toInt() == 702);
}

TEST_CASE("a patient lets reminders ring and tries one on the spot, with each kind of hands", "[diary][flows][bells]")
{
    const auto [kind, language] = GENERATE(from_range(screens::waysWithReturn));
    CAPTURE(kind, language);
    screens::Ear ear;
    DemoPatient patient;
    auto program = patient.joined(QString::fromLatin1(language));
    open(*program);
    const auto act = hands(kind, *program->window());

    REQUIRE(act.use(said("BellCard", "Ring for reminders")));
    CHECK(program->reminders()->isRinging());
    REQUIRE(act.use(said("BellCard", "Ring once to try it")));
    CHECK(patient.bells().tries == 1);
    REQUIRE(act.use(said("BellCard", "Put this away")));
    CHECK(screens::named(*program->window(), said("BellCard", "Ring once to try it")) == nullptr);
    CHECK(ear.take() == "");
}

TEST_CASE("a patient looks at the other curves too, and no word of them is cut off on a small phone", "[diary][flows]")
{
    const auto [kind, language] = GENERATE(from_range(screens::waysWithReturn));
    const int textSize = GENERATE(0, 2);
    CAPTURE(kind, language, textSize);
    screens::Ear ear;
    DemoPatient patient;
    auto program = patient.joined(QString::fromLatin1(language));
    program->settings()->setTextSize(textSize);
    DemoPatient::tell(*program, 2);
    program->dismissNotice();
    open(*program);
    auto& window = *program->window();
    window.resize(320, 568);
    screens::settle(window);
    const auto act = hands(kind, window);
    const auto charts = [&] {
        const auto items = screens::visibleItems(window);
        return std::ranges::count_if(items, [](const QQuickItem* item) { return QByteArray(item->metaObject()->className()).startsWith("CurveChart_"); });
    };

    CHECK(charts() == 4);
    REQUIRE(act.use(said("TodayPage", "More curves")));
    CHECK(charts() == 10);
    CHECK(screens::listed(screens::cutOff(window)) == "");
    CHECK(screens::listed(screens::overlapping(window)) == "");
    REQUIRE(act.use(said("TodayPage", "Fewer curves")));
    CHECK(charts() == 4);
    CHECK(ear.take() == "");
}

TEST_CASE("a number touched where nothing can dial stands there large, with each kind of hands", "[diary][flows][call]")
{
    const auto [kind, language] = GENERATE(from_range(screens::ways));
    CAPTURE(kind, language);
    DemoPatient patient;
    auto program = patient.joined(QString::fromLatin1(language));
    open(*program);
    auto& window = *program->window();
    const auto act = hands(kind, window);
    const QString number = QStringLiteral("\u2066+00\u00a0555\u00a00199\u2069");
    const auto shown = [&](const QString& text) {
        for (const auto* item : screens::visibleItems(window))
            if (item->inherits("QQuickText") && item->property("text").toString() == text)
                return item;
        return static_cast<const QQuickItem*>(nullptr);
    };
    const QString word = said("CallButton", "This device can not call. Please dial this number on a phone:");

    REQUIRE(act.use(said("TopLine", "I need help")));
    CHECK(shown(word) == nullptr);
    REQUIRE(act.use(said("CallButton", "%1: %2").arg(said("ebbline::diaryapp::WarningBoard", "If nobody answers"), number)));
    REQUIRE(shown(word) != nullptr);
    REQUIRE(shown(number) != nullptr);
    CHECK(shown(number)->property("font").value<QFont>().pixelSize() > shown(word)->property("font").value<QFont>().pixelSize());
}

TEST_CASE("a patient makes a recovery code and reads a group of it back, with each kind of hands", "[diary][flows][lock]")
{
    const auto [kind, language] = GENERATE(from_range(screens::ways));
    CAPTURE(kind, language);
    screens::Ear ear;
    DemoPatient patient;
    auto program = patient.joined(QString::fromLatin1(language));
    program->openKeys();
    open(*program);
    const auto act = hands(kind, *program->window());
    auto& keys = *program->keys();

    REQUIRE(act.fill(said("KeysPage", "Your passphrase, to make a code"), passphrase));
    REQUIRE(act.use(keys.makeWord()));
    const QString code = keys.code();
    REQUIRE_FALSE(code.isEmpty());
    REQUIRE(screens::spoken(*program->window(), code) != nullptr);
    REQUIRE(act.use(said("KeysPage", "I have written it down")));
    CHECK(screens::spoken(*program->window(), code) == nullptr);
    REQUIRE(act.fill(keys.askedText(), QStringLiteral("2")));
    REQUIRE(act.use(said("CodeBack", "It is on my paper")));
    CHECK(screens::spoken(*program->window(), keys.askedProblem()) != nullptr);
    REQUIRE(act.use(said("CodeBack", "Show it once more")));
    CHECK(screens::spoken(*program->window(), code) != nullptr);
    REQUIRE(act.use(said("KeysPage", "I have written it down")));
    REQUIRE(act.fill(keys.askedText(), code.section(QLatin1Char('-'), keys.askedGroup() - 1, keys.askedGroup() - 1)));
    REQUIRE(act.use(said("CodeBack", "It is on my paper")));
    CHECK(keys.code().isEmpty());
    CHECK(screens::spoken(*program->window(), keys.outcome()) != nullptr);
    CHECK(ear.take() == "");
}

TEST_CASE("a patient takes her data along, with each kind of hands", "[diary][flows][mine]")
{
    const auto [kind, language] = GENERATE(from_range(screens::ways));
    CAPTURE(kind, language);
    DemoPatient patient;
    auto program = patient.joined(QString::fromLatin1(language));
    DemoPatient::tell(*program, 3);
    program->dismissNotice();
    open(*program);
    const auto act = hands(kind, *program->window());
    QTemporaryDir folder;

    REQUIRE(act.use(said("TodayPage", "Settings")));
    REQUIRE(act.use(said("SettingsPage", "My data")));
    CHECK(screens::named(*program->window(), said("MinePage", "Save my data to a folder"))== nullptr);  // not before the passphrase
    REQUIRE(act.fill(said("MinePage", "Your passphrase, to save it all"), passphrase));
    REQUIRE(act.use(said("MinePage", "Save my data to a folder")));
    closeDialogs(*program->window());
    program->mine()->takeAlong(QUrl::fromLocalFile(folder.path()));
    CHECK(QDir(folder.filePath(QStringLiteral("diary-2027-03-01"))).exists(QStringLiteral("diary.pdf")));
    CHECK(program->mine()->takeProblem().isEmpty());
}

TEST_CASE("a patient deletes the diary only after she was asked, with each kind of hands", "[diary][flows][mine]")
{
    const auto [kind, language] = GENERATE(from_range(screens::ways));
    CAPTURE(kind, language);
    screens::Ear ear;
    DemoPatient patient;
    auto program = patient.joined(QString::fromLatin1(language));
    open(*program);
    const auto act = hands(kind, *program->window());
    const QString lastButton = said("MinePage", "Delete it now. There is no way back.");

    REQUIRE(act.use(said("TodayPage", "Settings")));
    REQUIRE(act.use(said("SettingsPage", "My data")));
    CHECK(screens::named(*program->window(), lastButton) == nullptr);
    REQUIRE(act.use(said("MinePage", "Delete the diary …")));
    REQUIRE(act.fill(said("MinePage", "Your passphrase, to delete it all"), passphrase));
    REQUIRE(act.use(said("MinePage", "Keep it")));
    CHECK(program->home().exists());
    CHECK(screens::named(*program->window(), lastButton) == nullptr);
    REQUIRE(act.use(said("MinePage", "Delete the diary …")));
    REQUIRE(act.fill(said("MinePage", "Your passphrase, to delete it all"), passphrase));
    REQUIRE(act.use(lastButton));
    CHECK_FALSE(program->home().exists());
    CHECK(program->page() == Page::lock);
    CHECK(program->locking()->isFresh());
    CHECK(ear.take() == "");
}
