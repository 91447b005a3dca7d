// Roles at the desk: who has which, what a page is told, and that a refused act says who may.
#include "tests/screens/demo_clinic.h"
#include "tests/screens/hands.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>

#include <QAccessible>
#include <QSet>
#include <QSignalSpy>

using namespace ebbline;

namespace {

const QString mara = QStringLiteral("Dr Mara Lindqvist");
const QString ilan = QStringLiteral("Ilan Osei");

constexpr int inCharge = 0;
constexpr int assistant = 3;

struct Room {
    screens::DemoClinic clinic;
    std::unique_ptr<app::DeskProgram> program = clinic.program(QStringLiteral("en"));

    deskapp::RoleBoard& roles() { return *program->roles(); }
    deskapp::PersonRow person(int row) { return roles().persons()->rows()[row].value.value<deskapp::PersonRow>(); }
    void giveRoles()
    {
        REQUIRE(roles().give(mara, inCharge));
        REQUIRE(roles().give(ilan, assistant));
    }
    QStringList barred()
    {
        auto& all = roles();
        return {all.treating(), all.closing(), all.protocols(), all.phones(), all.desks(), all.numbers(), all.people(), all.keeping(), all.figures()};
    }
    std::size_t operations() { return program->workplace().state().operations; }
};

}  // namespace

TEST_CASE("everybody of the clinic is listed without a role at first, and nothing is barred", "[desk][roles]")
{
    Room room;
    room.program->openClinic();
    REQUIRE(room.roles().persons()->rowCount() == 2);
    CHECK(room.person(0).name == mara);
    CHECK(room.person(0).role == -1);
    CHECK(room.person(0).may == QStringLiteral("No role yet: may do everything."));
    CHECK(room.roles().names().size() == static_cast<qsizetype>(records::newestRole));
    for (const auto& text : room.barred()) {
        CHECK(text.isEmpty());
    }
}

TEST_CASE("a role that is given stands beside the name, and whoever may not is told who may", "[desk][roles]")
{
    Room room;
    room.giveRoles();
    CHECK(room.person(1).role == assistant);
    CHECK(room.person(1).may == QStringLiteral("Patients' phones."));
    CHECK(room.roles().outcome() == QStringLiteral("Ilan Osei: Assistant from now on."));
    CHECK(room.barred().filter(QStringLiteral("Dr")).isEmpty());

    const QSignalSpy changed(&room.roles(), &deskapp::RoleBoard::changed);
    room.program->choosePerson(ilan);
    CHECK(changed.count() > 0);
    CHECK(room.roles().closing() == QStringLiteral("Closing a finding: for Dr Mara Lindqvist. Your role here: Assistant."));
    CHECK(room.roles().phones().isEmpty());
    CHECK(room.barred().filter(mara).size() == 8);
    CHECK_FALSE(room.roles().give(ilan, inCharge));
    CHECK(room.person(1).role == assistant);
}

TEST_CASE("the last one who may name people keeps that, and the page says why", "[desk][roles]")
{
    Room room;
    room.giveRoles();
    CHECK_FALSE(room.roles().give(mara, assistant));
    CHECK(room.roles().outcome().contains(QStringLiteral("Somebody has to remain")));
    CHECK(room.person(0).role == inCharge);

    room.program->openClinic();
    room.program->clinic()->setProperty("people", ilan);
    const QSignalSpy said(&room.program->workplace(), &deskapp::Workplace::failed);
    CHECK_FALSE(room.program->clinic()->save());
    CHECK(said.count() == 1);
    CHECK(room.program->notice().contains(QStringLiteral("Somebody has to remain")));
    CHECK(room.program->workplace().desk().clinic()->people.size() == 2);
}

TEST_CASE("whoever takes the right to give roles from herself is asked first", "[desk][roles]")
{
    Room room;
    REQUIRE(room.roles().give(mara, inCharge));
    REQUIRE(room.roles().give(ilan, inCharge));
    const auto before = room.operations();
    CHECK_FALSE(room.roles().give(mara, assistant));
    CHECK(room.roles().question() == QStringLiteral("Dr Mara Lindqvist, “Assistant” takes the right to give roles from you. Only somebody else who has it can give it back."));
    CHECK(room.roles().outcome().isEmpty());

    // She leaves it; or chooses again, which asks again; or opens the page anew, which asks nothing.
    room.roles().leaveQuestion();
    CHECK(room.roles().question().isEmpty());
    CHECK_FALSE(room.roles().giveAsked());
    CHECK_FALSE(room.roles().give(mara, assistant));
    CHECK_FALSE(room.roles().give(mara, assistant));
    room.roles().open();
    CHECK(room.roles().question().isEmpty());
    CHECK_FALSE(room.roles().giveAsked());
    CHECK(room.person(0).role == inCharge);
    CHECK(room.operations() == before);

    CHECK_FALSE(room.roles().give(mara, assistant));
    CHECK(room.roles().giveAsked());
    CHECK(room.roles().question().isEmpty());
    CHECK(room.person(0).role == assistant);
    CHECK_FALSE(room.roles().people().isEmpty());
}

TEST_CASE("an assistant takes and calls a patient, and cannot begin to close a finding", "[desk][roles]")
{
    Room room;
    room.giveRoles();
    room.program->choosePerson(ilan);
    room.program->openQueue();
    auto& queue = *room.program->queue();
    const auto row = queue.rows()->keyAt(0);

    queue.startClosing(row);
    CHECK_FALSE(queue.isClosing());
    CHECK(room.program->notice() == room.roles().closing());
    room.program->openCourse(row);
    room.program->course()->startClosing(room.program->course()->findings()->keyAt(0));
    CHECK(room.program->course()->closingKey().isEmpty());

    const auto before = room.operations();
    queue.take(row);
    queue.called(row);
    CHECK(room.operations() > before + 1);
}

TEST_CASE("a page whose work is not for who is here writes nothing", "[desk][roles]")
{
    Room room;
    room.giveRoles();
    room.program->choosePerson(ilan);
    const auto before = room.operations();

    room.program->openClinic();
    room.program->clinic()->setProperty("clinicName", QStringLiteral("Practice at the Pier"));
    CHECK(room.program->clinic()->property("namesChanged").toBool());
    CHECK_FALSE(room.program->clinic()->save());
    room.program->desks()->askFreshKey();
    CHECK_FALSE(room.program->desks()->isAsking());
    room.program->openPractice();
    CHECK_FALSE(room.roles().figures().isEmpty());
    CHECK_FALSE(room.program->practice()->property("working").toBool());
    CHECK(room.operations() == before);

    room.program->openDeskPairing();
    CHECK(room.program->pairing()->blocked() == room.roles().desks());
}

TEST_CASE("who did what names who gave a role, and marks what a role did not allow", "[desk][roles][traces]")
{
    Room room;
    room.giveRoles();
    auto& workplace = room.program->workplace();
    const auto first = workplace.desk().queue().front();
    const auto finding = first.findings.front().key;
    // As a desk writes it that has not heard of the roles.
    const auto now = workplace.now();
    REQUIRE(workplace.desk().vault().append(
        {records::FindingActed{first.course, finding, records::Act::closed, records::Outcome::reassured, ilan.toStdString(), {}, now}}, now));

    room.program->openTraces();
    QStringList what;
    for (const auto& row : room.program->traces()->rows()->rows()) {
        what << row.value.value<deskapp::TraceRow>().what;
    }
    REQUIRE(what.size() > 2);
    CHECK(what[0] == QStringLiteral("Finding: Closed · not allowed by the role at that time"));
    CHECK(what[1] == QStringLiteral("Role of Ilan Osei: Assistant"));

    room.program->openCourse(deskapp::keyOf(first.course));
    QStringList acts;
    for (const auto& row : room.program->course()->findings()->rows()) {
        acts += row.value.value<deskapp::FindingRow>().acts;
    }
    CHECK_FALSE(acts.filter(QStringLiteral("not allowed by the role at that time")).isEmpty());
}

TEST_CASE("the invented clinic has several roles, and whoever is at its desk first may do everything", "[desk][roles]")
{
    Room room;
    room.program->lock();
    REQUIRE(room.program->unlocking()->openDemo());
    QSet<int> given;
    for (int row = 0; row < room.roles().persons()->rowCount(); ++row) {
        given.insert(room.person(row).role);
    }
    CHECK(given == QSet<int>{0, 1, 2, 3});
    for (const auto& text : room.barred()) {
        CHECK(text.isEmpty());
    }
}

TEST_CASE("the question before somebody gives away her own right has two buttons, and one of them leaves everything", "[desk][roles]")
{
    Room room;
    REQUIRE(room.roles().give(mara, inCharge));
    REQUIRE(room.roles().give(ilan, inCharge));
    REQUIRE(room.program->show(QSize(1280, 720)));
    room.program->openClinic();
    CHECK_FALSE(room.roles().give(mara, assistant));
    screens::settle(*room.program->window());
    auto& window = *room.program->window();
    const auto* act = screens::named(window, QStringLiteral("Give that role"));
    REQUIRE(act != nullptr);
    // The keyboard comes to the one that changes nothing, and that one stands first.
    REQUIRE(window.activeFocusItem() != nullptr);
    CHECK(window.activeFocusItem()->property("text").toString() == QLatin1String("Keep my role"));
    CHECK(window.activeFocusItem()->mapToScene(QPointF()).x() < act->mapToScene(QPointF()).x());
    auto* question = screens::spoken(window, room.roles().question());
    REQUIRE(question != nullptr);
    CHECK(QAccessible::queryAccessibleInterface(question)->role() == QAccessible::AlertMessage);
    REQUIRE(screens::press(*room.program->window(), QStringLiteral("Keep my role")));
    CHECK(room.roles().question().isEmpty());
    CHECK(room.person(0).role == inCharge);
}
