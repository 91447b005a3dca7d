// Several people over one queue: who was at a row last, what was forgotten, and a note that follows what changes.
#include "app/desk/model/course_events.h"
#include "app/desk/model/course_look.h"
#include "app/desk/model/times.h"
#include "app/desk/sheet/sheet_content.h"
#include "tests/screens/demo_clinic.h"
#include "tests/screens/hands.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>

#include <QClipboard>
#include <QFile>
#include <QGuiApplication>
#include <QTemporaryDir>

#include <algorithm>
#include <utility>

using namespace ebbline;

namespace {

constexpr auto mara = "Dr Mara Lindqvist";
constexpr auto ilan = "Ilan Osei";

struct TwoAtOnce {
    screens::DemoClinic clinic;
    std::unique_ptr<app::DeskProgram> program = clinic.program(QStringLiteral("en"));

    deskapp::CallBoard& call() { return *program->call(); }
    QString key(const char* patient) { return deskapp::keyOf(clinic.course(patient)); }
    deskapp::QueueRow row(const char* patient)
    {
        const int at = program->queue()->rows()->rowOf(key(patient));
        REQUIRE(at >= 0);
        return program->queue()->rows()->rows()[at].value.value<deskapp::QueueRow>();
    }
    /// As it comes from another desk.
    void act(const char* person, const char* patient, records::Act act, records::Outcome outcome = records::Outcome::none)
    {
        auto& desk = program->workplace().desk();
        const auto here = desk.person();
        desk.setPerson(person);
        std::vector<std::string> open;
        const auto view = desk.course(clinic.course(patient));
        for (const auto& finding : view->findings) {
            if (finding.open) {
                open.push_back(finding.key);
            }
        }
        REQUIRE(desk.actOn(clinic.course(patient), open, act, outcome));
        desk.setPerson(here);
        program->workplace().settle({});
    }
    /// As it arrives from her phone.
    void tell(const char* patient, recovery::Sign sign)
    {
        recovery::Entry entry;
        entry.id = recovery::EntryId{crypto::randomArray<16>()};
        entry.course = clinic.course(patient);
        entry.at = entry.recordedAt = program->workplace().now();
        entry.present = {sign};
        REQUIRE(program->workplace().desk().vault().append({records::EntryRecorded{entry}}, program->workplace().now()));
        program->workplace().settle({});
    }
    std::vector<std::string> calledAbout(const char* patient)
    {
        std::vector<std::string> found;
        for (const auto& act : program->workplace().desk().course(clinic.course(patient))->state->acts) {
            if (act.act == records::Act::called && act.by == mara) {
                found.push_back(act.finding);
            }
        }
        return found;
    }
    void later(std::chrono::minutes by)
    {
        clinic.clock().advance(by);
        program->queue()->refresh();
    }
};

}  // namespace

TEST_CASE("a call of a colleague who did not take the row stands on it and in the panel, also while the panel is open", "[desk][queue][call][safety]")
{
    TwoAtOnce at;
    constexpr auto odile = "Odile Brandt";
    CHECK(at.row(odile).taken == QLatin1String("Nobody has taken it"));
    at.call().start(at.key(odile));
    CHECK(at.call().others().isEmpty());

    at.act(ilan, odile, records::Act::called);

    const auto said = QStringLiteral("Ilan Osei spoke with her, Today 14:05");
    CHECK(at.call().others() == said + QStringLiteral(". Ask before you call twice."));
    CHECK(at.row(odile).taken == said);
    CHECK(at.row(odile).spoken.contains(said));
    CHECK_FALSE(at.row(odile).isTaken);  // she can be taken still

    at.later(std::chrono::minutes(5));
    at.act(ilan, odile, records::Act::visitBroughtForward);
    CHECK(at.row(odile).taken == QLatin1String("Ilan Osei brought the visit forward, Today 14:10"));
}

TEST_CASE("who took a row over is not warned of whom she took it from, and is of what others do after it", "[desk][queue][call]")
{
    TwoAtOnce at;
    constexpr auto tomas = "Tomas Reyl";
    at.call().start(at.key(tomas));
    CHECK(at.call().others().startsWith(QLatin1String("Ilan Osei called and did not reach her")));
    at.later(std::chrono::minutes(1));
    at.program->queue()->take(at.key(tomas));
    at.call().start(at.key(tomas));
    CHECK(at.call().others().isEmpty());

    at.later(std::chrono::minutes(1));
    at.act(ilan, tomas, records::Act::taken);
    at.call().start(at.key(tomas));
    CHECK(at.call().others() == QLatin1String("Taken by Ilan Osei, Today 14:07. Ask before you call twice."));
}

TEST_CASE("a row on which nobody acted says so once, and that nobody has it", "[desk][queue]")
{
    TwoAtOnce at;
    const auto row = at.row("Noor Castellan");
    CHECK(row.overdue.startsWith(QLatin1String("Nobody has acted for ")));
    CHECK(row.taken == QLatin1String("Nobody has taken it"));
    CHECK(row.spoken.count(row.taken) == 1);
    CHECK(row.spoken.count(row.overdue) == 1);
}

TEST_CASE("an emergency that arrives during a call about nothing is said on its panel, and the call stays what it was", "[desk][queue][call][safety]")
{
    TwoAtOnce at;
    constexpr auto petra = "Petra Halden";
    REQUIRE(at.program->show(QSize(1280, 900)));
    at.program->openQueue();
    auto& window = *at.program->window();
    const auto called = at.calledAbout(petra);
    const auto nothing = QStringLiteral("Nothing is open: the call is noted on the course.");
    at.call().start(at.key(petra));
    screens::settle(window);
    CHECK(at.call().arrived().isEmpty());
    CHECK(screens::spoken(window, nothing) != nullptr);

    at.tell(petra, recovery::Sign::breathing);
    screens::settle(window);
    CHECK(at.call().arrived().startsWith(QLatin1String("Since you opened this, something new came: ")));
    CHECK(at.call().arrived().contains(at.row(petra).title));
    CHECK(screens::spoken(window, at.call().arrived()) != nullptr);
    CHECK(screens::spoken(window, nothing) == nullptr);

    at.call().sheRang();
    const auto view = at.program->workplace().desk().course(at.clinic.course(petra));
    REQUIRE(view);
    CHECK(view->state->calls.size() == 1);
    CHECK(at.calledAbout(petra) == called);
    at.call().start(at.key(petra));
    CHECK(at.call().arrived().isEmpty());
    CHECK_FALSE(at.call().reasons().isEmpty());
}

TEST_CASE("what was done in the last day stands in the order of time, calls about nothing among the rest", "[desk][handover]")
{
    TwoAtOnce at;
    at.call().start(at.key("Petra Halden"));
    at.call().sheRang();
    at.later(std::chrono::minutes(10));
    at.act(ilan, "Odile Brandt", records::Act::taken);
    at.program->openHandOver();
    const auto text = at.program->handOver()->text();
    const auto rang = text.indexOf(QLatin1String("Petra Halden: She rang, and"));
    const auto taken = text.indexOf(QLatin1String("Odile Brandt: Taken by Ilan Osei"));
    REQUIRE(rang >= 0);
    CHECK(taken > rang);
}

TEST_CASE("what was taken and forgotten says by whom and since when, and can be taken anew", "[desk][queue][safety]")
{
    TwoAtOnce at;
    constexpr auto noor = "Noor Castellan";
    at.program->queue()->take(at.key(noor));
    at.later(std::chrono::minutes(4));
    CHECK(at.row(noor).overdue.isEmpty());

    at.later(std::chrono::minutes(116));
    auto row = at.row(noor);
    CHECK(row.overdue == QLatin1String("Taken by Dr Mara Lindqvist 2 h ago, nothing noted since"));
    CHECK(row.spoken.count(row.overdue) == 1);
    CHECK(row.taken.isEmpty());  // it would say the same once more
    CHECK(row.spoken.count(QLatin1String("Dr Mara Lindqvist")) == 1);
    CHECK_FALSE(at.program->queue()->overdue().isEmpty());

    at.program->queue()->take(at.key(noor));
    CHECK(at.row(noor).overdue.isEmpty());
    at.act(ilan, noor, records::Act::called);
    at.later(std::chrono::minutes(59));
    CHECK(at.row(noor).overdue.isEmpty());
    const auto hers = QStringLiteral("Taken by Dr Mara Lindqvist, Today 16:05");
    CHECK(at.row(noor).taken == QStringLiteral("Ilan Osei spoke with her, Today 16:05 · ") + hers);
    CHECK(at.row(noor).spoken.contains(hers));
    at.later(std::chrono::minutes(2));
    CHECK(at.row(noor).overdue == QLatin1String("Ilan Osei spoke with her 1 h ago, nothing noted since"));
    CHECK(at.row(noor).taken == hers);
    at.act(ilan, noor, records::Act::called, records::Outcome::notReached);
    CHECK(at.row(noor).overdue == QLatin1String("Ilan Osei called and did not reach her, Today 17:06, nothing noted since"));
}

TEST_CASE("a call from the page of a course shows its panel and notes nothing before somebody says so, on one finding or on all", "[desk][call][course][safety]")
{
    TwoAtOnce at;
    constexpr auto tomas = "Tomas Reyl";
    std::vector<std::string> open;
    const auto hers = at.program->workplace().desk().course(at.clinic.course(tomas));
    for (const auto& finding : hers->findings) {
        if (finding.open) {
            open.push_back(finding.key);
        }
    }
    REQUIRE(open.size() > 1);
    at.call().start(at.key(tomas), QStringLiteral("no/such finding"));
    CHECK_FALSE(at.call().isShown());

    at.call().start(at.key(tomas), QString::fromStdString(open.back()));
    CHECK(at.call().isShown());
    CHECK(at.call().reasons().size() == 1);
    CHECK(at.call().script().size() >= 4);
    CHECK(at.calledAbout(tomas).empty());
    at.call().reached();
    CHECK(at.calledAbout(tomas) == std::vector{open.back()});

    at.call().start(at.key(tomas));
    CHECK(at.call().reasons().size() == static_cast<qsizetype>(open.size()));
    at.call().notReached();
    CHECK(at.calledAbout(tomas).size() == 1 + open.size());
}

TEST_CASE("a hand-over follows what is noted while it is on the screen, and is made anew before it goes anywhere", "[desk][handover][safety]")
{
    TwoAtOnce at;
    auto& note = *at.program->handOver();
    at.program->openHandOver();
    REQUIRE(note.paper().parts.first().rows.size() > 1);
    const auto onOdile = [&] {
        for (const auto& row : note.paper().parts.first().rows) {
            if (row[1].startsWith(QLatin1String("Odile Brandt"))) {
                return row[4];
            }
        }
        return QString();
    };
    CHECK(onOdile() == QLatin1String("nobody"));
    at.act(ilan, "Odile Brandt", records::Act::taken);
    CHECK(onOdile() == QLatin1String(ilan));
    CHECK(note.text().contains(QLatin1String("Odile Brandt: Taken by Ilan Osei")));

    const QTemporaryDir files;
    const auto path = files.filePath(QStringLiteral("note.txt"));
    const auto stampNow = [&] { return deskapp::stampText(at.program->workplace().now()); };
    at.later(std::chrono::minutes(30));
    CHECK_FALSE(note.text().contains(stampNow()));
    REQUIRE(note.write(path));
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    CHECK(QString::fromUtf8(file.readAll()).contains(stampNow()));
    at.later(std::chrono::minutes(30));
    note.copy();
    CHECK(QGuiApplication::clipboard()->text().contains(stampNow()));
    CHECK_FALSE(note.outcome().isEmpty());

    at.program->lock();
    CHECK(note.paper().title.isEmpty());
    CHECK_FALSE(note.write(path));
}

TEST_CASE("a patient who rings with nothing open leaves a trace on her course, in the hand-over, the sheet and the files, and can be undone", "[desk][call][course]")
{
    TwoAtOnce at;
    constexpr auto petra = "Petra Halden";
    auto& course = *at.program->course();
    at.program->openCourse(at.key(petra));
    REQUIRE(course.openFindings() == 0);
    CHECK(course.calls().isEmpty());
    at.call().start(at.key(petra));
    REQUIRE(at.call().isShown());
    CHECK(at.call().reasons().isEmpty());
    CHECK(at.call().script().size() >= 4);
    CHECK(at.call().script().first().contains(QLatin1String("Can you breathe")));
    at.call().setNote(QStringLiteral("May I wash my hair?"));

    at.call().sheRang();

    CHECK_FALSE(at.call().isShown());
    REQUIRE(course.calls().size() == 1);
    CHECK(course.calls().first() == QLatin1String("She rang, and Dr Mara Lindqvist answered, Today 14:05. May I wash my hair?"));
    const auto events = deskapp::eventsOf(*at.program->workplace().desk().course(at.clinic.course(petra))->state);
    CHECK(std::ranges::any_of(events, [](const auto& event) { return event.label == QLatin1String("she rang"); }));
    at.program->openHandOver();
    CHECK(at.program->handOver()->text().contains(QLatin1String("Petra Halden: She rang, and Dr Mara Lindqvist answered")));
    const auto sheet = deskapp::sheetOf(at.program->workplace(), at.clinic.course(petra));
    REQUIRE(sheet);
    CHECK(sheet->asText().contains(QLatin1String("May I wash my hair?")));
    CHECK(deskapp::coursePaper(at.program->workplace(), at.clinic.course(petra)).asText().contains(QLatin1String("May I wash my hair?")));
    CHECK(at.program->queue()->undoText() == QLatin1String("She called us: Petra Halden"));

    at.program->queue()->undo();

    at.program->openCourse(at.key(petra));
    REQUIRE(course.calls().size() == 1);
    CHECK(course.calls().first().endsWith(QLatin1String("Taken back by Dr Mara Lindqvist")));

    for (const auto& [noted, said] : {std::pair(&deskapp::CallBoard::reached, "Dr Mara Lindqvist spoke with her"),
                                      std::pair(&deskapp::CallBoard::notReached, "Dr Mara Lindqvist called and did not reach her"),
                                      std::pair(&deskapp::CallBoard::broughtForward, "Dr Mara Lindqvist brought the visit forward")}) {
        at.call().start(at.key(petra));
        (at.call().*noted)();
        CHECK(course.calls().last().startsWith(QLatin1String(said)));
    }
    // Where something is open the call is about that.
    at.call().start(at.key("Tomas Reyl"));
    at.call().sheRang();
    CHECK(at.call().isShown());
    at.program->lock();
    CHECK(course.calls().isEmpty());
}
