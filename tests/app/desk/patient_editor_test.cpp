// What a patient was registered with, corrected: on its panel, and wherever the number stands.
#include "core/bytes/text.h"
#include "tests/screens/complaints.h"
#include "tests/screens/demo_clinic.h"
#include "tests/screens/hands.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;

namespace {

const QString fresh = QStringLiteral("+00 555 0199");

struct Room {
    screens::DemoClinic clinic;
    std::unique_ptr<app::DeskProgram> program = clinic.program(QStringLiteral("en"));
    recovery::CourseId course = clinic.course("Tomas Reyl");

    deskapp::PatientEditor& editor() { return *program->patient(); }
    deskapp::CourseBoard& board() { return *program->course(); }
    desk::Desk& desk() { return program->workplace().desk(); }
    void openCourse() { program->openCourse(deskapp::keyOf(course)); }
    void openPanel()
    {
        openCourse();
        editor().open(board().patientKey());
        REQUIRE(editor().isShown());
    }
    /// As another desk writes it.
    void colleagueCorrects(const std::string& phone)
    {
        auto patient = desk().vault().state().patients.at(deskapp::patientFromKey(board().patientKey()));
        patient.phone = phone;
        const auto seen = desk().corrections(patient.patient);
        REQUIRE(desk().correctPatient(patient, seen.empty() ? std::nullopt : std::optional(seen.back().operation)));
        program->workplace().settle({});
    }
};

}  // namespace

TEST_CASE("a corrected number stands on the course, in the queue, on a call that is open, and on the hand-over", "[desk][patients]")
{
    Room room;
    room.openPanel();
    const auto former = room.board().phone();
    REQUIRE_FALSE(former.contains(fresh));
    CHECK_FALSE(room.editor().isSavable());
    room.program->call()->start(deskapp::keyOf(room.course));
    CHECK(room.program->call()->phone() == former);

    room.editor().setPhone(fresh);
    CHECK(room.editor().isSavable());
    REQUIRE(room.editor().save());
    CHECK_FALSE(room.editor().isShown());
    CHECK(room.board().phone().contains(fresh));
    CHECK(room.program->call()->phone().contains(fresh));
    const int row = room.program->queue()->rows()->rowOf(deskapp::keyOf(room.course));
    REQUIRE(row >= 0);
    CHECK(room.program->queue()->rows()->rows()[row].value.value<deskapp::QueueRow>().phone.contains(fresh));
    room.program->openHandOver();
    const auto paper = room.program->handOver()->text();
    CHECK(paper.contains(fresh));

    REQUIRE(room.board().corrections().size() == 1);
    CHECK(room.board().corrections().first().startsWith(QStringLiteral("Corrected Today")));
    CHECK(room.board().corrections().first().contains(QStringLiteral("by Dr Mara Lindqvist: number until then: ")));
    CHECK(room.board().corrections().first().contains(former));
    CHECK(room.board().crossed().isEmpty());
}

TEST_CASE("a correction can be undone at once, and both stay in sight", "[desk][patients]")
{
    Room room;
    room.openPanel();
    const auto former = room.board().phone();
    room.editor().setPhone(fresh);
    REQUIRE(room.editor().save());
    CHECK(room.editor().undoText() == QStringLiteral("Corrected: Tomas Reyl"));
    room.editor().undo();
    CHECK(room.board().phone() == former);
    REQUIRE(room.board().corrections().size() == 2);
    CHECK(room.editor().undoText().isEmpty());
    // Above the curves the newest alone; all of them are on the panel.
    REQUIRE(room.program->show(QSize(1280, 900)));
    room.openCourse();
    auto& window = *room.program->window();
    screens::settle(window);
    CHECK(screens::spoken(window, room.board().corrections()[0]) != nullptr);
    CHECK(screens::spoken(window, room.board().corrections()[1]) == nullptr);
    CHECK(room.editor().history().isEmpty());

    // Not over what somebody corrected since.
    room.editor().open(room.board().patientKey());
    room.editor().setPhone(fresh);
    REQUIRE(room.editor().save());
    room.colleagueCorrects("+00 555 0177");
    room.editor().undo();
    CHECK(room.program->notice().startsWith(QStringLiteral("It was corrected again meanwhile")));
    CHECK(room.board().phone().contains(QStringLiteral("+00 555 0177")));
}

TEST_CASE("what was refused is said on the panel, and what was typed stays", "[desk][patients]")
{
    Room room;
    room.openPanel();
    room.editor().setName(QStringLiteral("  "));
    CHECK_FALSE(room.editor().isSavable());
    room.editor().setName(QStringLiteral("Tomas Reyl"));
    const QString long41(41, QLatin1Char('5'));
    room.editor().setPhone(long41);
    const auto operations = room.program->workplace().state().operations;
    CHECK_FALSE(room.editor().save());
    CHECK_FALSE(room.editor().problem().isEmpty());
    CHECK(room.editor().phone() == long41);
    CHECK(room.program->workplace().state().operations == operations);
    room.editor().setPhone(fresh);
    CHECK(room.editor().problem().isEmpty());
    CHECK(room.editor().save());
}

TEST_CASE("a colleague's correction meanwhile is said, and only what is changed here is changed", "[desk][patients]")
{
    Room room;
    room.openPanel();
    room.editor().setName(QStringLiteral("Thomas Reyl"));
    CHECK(room.editor().meanwhile().isEmpty());
    room.colleagueCorrects("+00 555 0177");
    CHECK(room.editor().meanwhile().startsWith(QStringLiteral("Dr Mara Lindqvist corrected this meanwhile: number until then: ")));
    REQUIRE(room.editor().save());
    CHECK(room.board().name() == QStringLiteral("Thomas Reyl"));
    CHECK(room.board().phone().contains(QStringLiteral("+00 555 0177")));
    CHECK(room.board().crossed().startsWith(QStringLiteral("Two desks corrected this")));
    room.colleagueCorrects("+00 555 0178");
    CHECK(room.board().crossed().isEmpty());
}

TEST_CASE("a language is corrected, and one that this desk does not name stays unless another is chosen", "[desk][patients]")
{
    Room room;
    room.openPanel();
    auto patient = room.desk().vault().state().patients.at(deskapp::patientFromKey(room.board().patientKey()));
    patient.language = "en-IE";
    REQUIRE(room.desk().correctPatient(patient, {}));
    room.openPanel();
    room.editor().setPhone(fresh);
    REQUIRE(room.editor().save());
    CHECK(room.desk().vault().state().patients.at(patient.patient).language == "en-IE");
    room.editor().open(room.board().patientKey());
    room.editor().setLanguage(static_cast<int>(room.editor().languages().indexOf(QStringLiteral("Deutsch"))));
    REQUIRE(room.editor().save());
    CHECK(room.desk().vault().state().patients.at(patient.patient).language == "de");
    room.program->call()->start(deskapp::keyOf(room.course));
    CHECK(room.program->call()->language().contains(QStringLiteral("Deutsch")));
}

TEST_CASE("a correction that was begun is there after the desk was locked, upon what was in sight then", "[desk][patients]")
{
    Room room;
    room.openPanel();
    room.editor().setPhone(fresh);
    room.program->lock();
    CHECK_FALSE(room.editor().isShown());
    CHECK(room.editor().phone().isEmpty());
    room.clinic.clock().advance(std::chrono::minutes(1));
    REQUIRE(room.program->workplace().unlock(bytes::viewOf(screens::DemoClinic::passphrase)));
    room.program->choosePerson(QStringLiteral("Dr Mara Lindqvist"));
    room.openPanel();
    CHECK(room.editor().phone() == fresh);
    CHECK(room.editor().isSavable());

    room.editor().setAside();
    room.editor().open(room.board().patientKey());
    CHECK(room.editor().phone() == fresh);
    room.editor().leave();
    room.editor().open(room.board().patientKey());
    CHECK(room.editor().phone() != fresh);
}

TEST_CASE("a correction that was begun changes what was changed in it, whatever the one that it came from left since", "[desk][patients]")
{
    Room room;
    room.openPanel();
    auto patient = room.desk().vault().state().patients.at(deskapp::patientFromKey(room.board().patientKey()));
    const auto former = patient.phone;
    room.editor().setName(QStringLiteral("Thomas Reyl"));
    room.editor().setAside();
    room.colleagueCorrects("+00 555 0177");
    room.editor().open(room.board().patientKey());
    CHECK(room.editor().phone() == QString::fromStdString(former));
    CHECK(room.editor().name() == QStringLiteral("Thomas Reyl"));
    REQUIRE(room.editor().save());
    CHECK(room.desk().vault().state().patients.at(patient.patient).phone == "+00 555 0177");

    // One that an older program kept says nothing of what stood there.
    room.editor().open(room.board().patientKey());
    const auto seen = room.desk().corrections(patient.patient).back().operation;
    const auto place = "desk/begun/patient/" + deskapp::keyOf(patient.patient).toStdString();
    const auto begun = "Tomas Reyl\n+00 555 0177\nen\n" + bytes::toHex(seen.device.view()) + '/' + std::to_string(seen.number);
    room.editor().leave();
    REQUIRE(room.desk().vault().keep(place, bytes::viewOf(begun)));
    room.editor().open(room.board().patientKey());
    CHECK(room.editor().name() == QStringLiteral("Tomas Reyl"));
    REQUIRE(room.editor().save());
    CHECK(room.board().name() == QStringLiteral("Tomas Reyl"));
    CHECK(room.board().phone().contains(QStringLiteral("+00 555 0177")));
}

TEST_CASE("a number is corrected on the course page by mouse, keyboard and screen reader", "[desk][patients][flow]")
{
    const int kind = GENERATE(1, 3, 4);  // screens::hands(): keyboard, screen reader, mouse
    Room room;
    screens::Ear ear;
    REQUIRE(room.program->show(QSize(1280, 900)));
    room.openCourse();
    screens::settle(*room.program->window());
    auto hands = screens::hands(kind, *room.program->window());
    REQUIRE(hands.use(QStringLiteral("Correct name, number, language")));
    screens::settle(*room.program->window());
    REQUIRE(room.editor().isShown());
    REQUIRE(hands.fill(QStringLiteral("Phone number, to call the patient"), fresh));
    REQUIRE(hands.use(QStringLiteral("Record the correction")));
    screens::settle(*room.program->window());
    CHECK(room.board().phone().contains(fresh));
    CHECK_FALSE(room.editor().isShown());
    CHECK(room.board().corrections().size() == 1);
    REQUIRE(hands.use(QStringLiteral("Undo")));
    CHECK(room.board().corrections().size() == 2);
    CHECK(ear.take() == "");
}
