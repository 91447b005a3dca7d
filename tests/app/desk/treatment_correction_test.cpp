// A recorded treatment is corrected: its own draft, what is asked before it is recorded, and what stands on the course then.
#include "app/desk/model/correction_words.h"
#include "core/bytes/text.h"
#include "tests/screens/complaints.h"
#include "tests/screens/demo_clinic.h"
#include "tests/screens/hands.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QCoreApplication>
#include <QTest>

using namespace ebbline;
using namespace std::chrono_literals;
using Page = app::DeskProgram::Page;

namespace {

const QString why = QStringLiteral("the lot of the other tray");

struct Room {
    screens::DemoClinic clinic;
    std::unique_ptr<app::DeskProgram> program = clinic.program(QStringLiteral("en"));
    recovery::CourseId course = clinic.course("Tomas Reyl");

    deskapp::TreatmentEditor& editor() { return *program->treatment(); }
    deskapp::CourseBoard& board() { return *program->course(); }
    desk::Desk& desk() { return program->workplace().desk(); }
    const journal::CourseState& state() { return program->workplace().state().courses.at(course); }
    const recovery::Treatment& record() { return state().treatment->treatment; }
    void correct()
    {
        program->openCourse(deskapp::keyOf(course));
        program->openCorrection(deskapp::keyOf(course));
        REQUIRE(program->page() == Page::treatment);
        REQUIRE(editor().isCorrection());
    }
    void takeOtherLot()
    {
        editor().choose(1);
        editor().setLot(QStringLiteral("ZZ-77"));
    }
    /// As another desk writes it.
    void colleagueCorrects()
    {
        auto correction = desk().beginCorrection(course);
        REQUIRE(correction);
        correction->treatment.note = "the colleague's";
        correction->treatment.corrected->reason = "a note was missing";
        REQUIRE(desk().correctTreatment(*correction));
        program->workplace().settle({});
    }
    bool tells(const QString& words) { return board().recordCorrections().join(u'\n').contains(words); }
};

}  // namespace

TEST_CASE("a wrong lot is corrected with a reason, and the course shows who, when, why and what stood there", "[desk][correction]")
{
    Room room;
    room.program->openCourse(deskapp::keyOf(room.course));
    const auto former = room.record();
    CHECK(room.board().recordCorrections().isEmpty());
    room.correct();
    CHECK(room.editor().reason().isEmpty());
    CHECK(room.editor().corrections().isEmpty());
    CHECK(room.editor().missing().contains(QStringLiteral("Say why it is corrected.")));
    CHECK(room.editor().missing().contains(QStringLiteral("Nothing is changed yet.")));

    room.takeOtherLot();
    REQUIRE(room.editor().corrections().size() == 1);
    CHECK(room.editor().corrections().first().startsWith(QStringLiteral("Thread 1: lot ")));
    CHECK(room.editor().missing() == QStringList{QStringLiteral("Say why it is corrected.")});
    room.editor().save();
    CHECK(room.record() == former);
    room.editor().setReason(why);
    CHECK(room.editor().missing().isEmpty());
    room.editor().save();

    CHECK(room.program->page() == Page::course);
    CHECK_FALSE(room.editor().isCorrection());
    CHECK(room.record().placements[0].lot == "ZZ-77");
    CHECK(room.record().at == former.at);
    CHECK(room.state().treatmentVersions.size() == 2);
    REQUIRE(room.board().recordCorrections().size() == 2);
    CHECK(room.board().recordCorrections()[0].startsWith(QStringLiteral("Corrected Today")));
    CHECK(room.board().recordCorrections()[0].endsWith(QStringLiteral("by Dr Mara Lindqvist. Why: ") + why));
    CHECK(room.tells(QStringLiteral("until then lot ")));
    CHECK(room.board().threads().first().contains(QStringLiteral("ZZ-77")));
    CHECK(room.board().recordCrossed().isEmpty());
    CHECK_FALSE(room.board().isCorrectionBegun());
}

TEST_CASE("a correction is kept apart from a new treatment of the same patient, over the lock, and can be dropped", "[desk][correction][draft]")
{
    Room room;
    const auto patient = deskapp::keyOf(room.record().patient);
    room.program->openTreatment();
    room.editor().choosePatient(patient);
    room.editor().setNote(QStringLiteral("brow, next month"));
    room.correct();
    CHECK(room.editor().note() != QStringLiteral("brow, next month"));
    room.takeOtherLot();
    room.editor().setReason(why);

    room.program->openTreatment();
    CHECK_FALSE(room.editor().isCorrection());
    CHECK(room.editor().patientKey() == patient);
    CHECK(room.editor().note() == QStringLiteral("brow, next month"));
    CHECK(room.editor().canUndo());

    room.program.reset();
    room.program = room.clinic.program(QStringLiteral("en"));
    room.program->openCourse(deskapp::keyOf(room.course));
    CHECK(room.board().isCorrectionBegun());
    room.correct();
    CHECK(room.editor().isFromDraft());
    CHECK(room.editor().reason() == why);
    CHECK(room.editor().corrections().size() == 1);
    room.editor().dropCorrection();
    CHECK(room.program->page() == Page::course);
    CHECK_FALSE(room.board().isCorrectionBegun());
    CHECK(room.state().treatmentVersions.size() == 1);
    CHECK(room.desk().draft(room.record().patient)->note == "brow, next month");
}

TEST_CASE("a correction that is being written is there as it was after a lock, at its step, and not over a new treatment", "[desk][correction][idle]")
{
    Room room;
    room.correct();
    room.takeOtherLot();
    room.editor().setReason(why);
    room.editor().setStep(2);
    room.program->lockIdle();
    CHECK_FALSE(room.editor().isCorrection());
    CHECK(room.editor().reason().isEmpty());
    REQUIRE(room.program->unlocking()->unlock(QString::fromLatin1(screens::DemoClinic::passphrase)));
    room.program->choosePerson(QStringLiteral("Ilan Osei"));
    CHECK(room.program->page() == Page::treatment);
    CHECK(room.editor().isCorrection());
    CHECK(room.editor().step() == 2);
    CHECK(room.editor().reason() == why);
    CHECK(room.editor().corrections().size() == 1);
}

TEST_CASE("what is set back is no correction, and no draft of one stays", "[desk][correction][draft]")
{
    Room room;
    room.correct();
    room.takeOtherLot();
    CHECK(room.desk().correction(room.course).has_value());
    room.editor().undo();
    CHECK(room.editor().corrections().isEmpty());
    CHECK(room.desk().correction(room.course).error().reason == Reason::notFound);
}

TEST_CASE("whose a record is cannot be corrected, and a consent that was not given can", "[desk][correction]")
{
    Room room;
    const auto other = room.desk().registerPatient("Berta Lind", {}, "en");
    REQUIRE(other);
    const auto patient = room.record().patient;
    room.correct();
    room.editor().choosePatient(deskapp::keyOf(*other));
    room.editor().takeUpBegun(QString());
    CHECK_FALSE(room.editor().registerPatient(QStringLiteral("Odile Brandt"), {}, 0));
    room.editor().startOver();
    CHECK(room.editor().patientKey() == deskapp::keyOf(patient));
    CHECK(room.editor().corrections().isEmpty());

    REQUIRE(room.record().consentGiven);
    room.correct();
    room.editor().setConsentGiven(false);
    room.editor().setReason(QStringLiteral("the form is not signed"));
    CHECK(room.editor().missing().isEmpty());
    room.editor().save();
    CHECK_FALSE(room.record().consentGiven);
    CHECK(room.tells(QStringLiteral("Consent: no; until then yes")));
}

TEST_CASE("before it is recorded it says what the phone gets, and a corrected day is the course's day then", "[desk][correction]")
{
    Room room;
    room.correct();
    room.takeOtherLot();
    room.editor().setReason(why);
    CHECK(room.editor().phoneKeeps().contains(QStringLiteral("nothing of this goes there")));
    const auto counted = room.desk().summary(room.course)->day;
    auto day = QDate::fromString(room.editor().day(), Qt::ISODate);
    room.editor().setDay(day.addDays(-1).toString(Qt::ISODate));
    CHECK(room.editor().phoneKeeps().startsWith(QStringLiteral("With the next sync her phone gets")));
    if (!room.editor().whenQuestion().isEmpty())
        room.editor().confirmWhen();
    room.editor().save();
    CHECK(room.program->page() == Page::course);
    CHECK(room.desk().summary(room.course)->day == counted + 1);
    CHECK(room.state().opened->treated == room.record().at);
    CHECK(room.tells(QStringLiteral("When the treatment was: ")));
}

TEST_CASE("the plan of a record stays with its correction until it is dropped, and undo brings it back", "[desk][correction]")
{
    Room room;
    auto planned = room.desk().beginCorrection(room.course);
    REQUIRE(planned);
    planned->treatment.planned = {recovery::asPlanned(planned->treatment.placements[0])};
    planned->treatment.corrected->reason = "with the plan";
    REQUIRE(room.desk().correctTreatment(*planned));
    room.correct();
    CHECK(room.editor().isPlanned());
    room.editor().keepAsPlan();
    CHECK(room.editor().treatment().planned.size() == 1);
    room.editor().dropPlan();
    CHECK_FALSE(room.editor().isPlanned());
    CHECK(room.editor().corrections() == QStringList{QStringLiteral("Threads of the plan: none; until then 1")});
    room.editor().undo();
    CHECK(room.editor().isPlanned());
    CHECK(room.editor().corrections().isEmpty());
}

TEST_CASE("a colleague's correction meanwhile is said before and after, and both stay in sight", "[desk][correction]")
{
    Room room;
    room.correct();
    room.takeOtherLot();
    room.editor().setReason(why);
    CHECK(room.editor().correctionNews().isEmpty());
    room.colleagueCorrects();
    CHECK(room.editor().correctionNews().startsWith(QStringLiteral("A colleague corrected this record meanwhile.")));
    CHECK(room.editor().corrections().size() == 2);  // her note goes with it
    room.editor().save();
    CHECK(room.board().recordCrossed().startsWith(QStringLiteral("Two desks recorded this")));
    CHECK(room.tells(why));
    CHECK(room.tells(QStringLiteral("a note was missing")));
    CHECK(room.tells(QStringLiteral("the colleague's")));
}

TEST_CASE("who has seen a colleague's correction keeps her draft, and nobody is told later that she did not know", "[desk][correction]")
{
    Room room;
    room.correct();
    room.takeOtherLot();
    room.editor().setReason(why);
    room.colleagueCorrects();
    REQUIRE_FALSE(room.editor().correctionNews().isEmpty());
    room.editor().seeNews();
    CHECK(room.editor().correctionNews().isEmpty());
    CHECK(room.editor().reason() == why);
    CHECK(room.editor().corrections().size() == 2);
    CHECK(room.desk().correction(room.course)->seen == room.state().treatmentVersions.back().operation);
    room.editor().save();
    CHECK(room.board().recordCrossed().isEmpty());
    CHECK(room.record().placements[0].lot == "ZZ-77");
}

TEST_CASE("a course that is counted by another day than its record says tells so, and recording it as it is sets that right", "[desk][correction]")
{
    Room room;
    auto opened = *room.state().opened;
    opened.treated = room.record().at;
    opened.treated.at -= 24h;
    opened.baseline = room.record().baseline;
    REQUIRE(room.desk().vault().append({opened}, room.program->workplace().now(), std::nullopt));
    room.program->workplace().settle({});
    room.correct();
    CHECK(room.board().countedOtherwise().startsWith(QStringLiteral("This course and its phone count by another day")));
    CHECK(room.editor().corrections().isEmpty());
    room.editor().setReason(QStringLiteral("the record is right"));
    CHECK(room.editor().missing().isEmpty());
    room.editor().save();
    CHECK(room.program->page() == Page::course);
    CHECK(room.board().countedOtherwise().isEmpty());
    CHECK(room.state().opened->treated == room.record().at);
}

TEST_CASE("whose role does not allow it keeps a correction as a draft, and records none", "[desk][correction][roles]")
{
    Room room;
    const auto owner = room.desk().person();
    auto clinic = *room.desk().clinic();
    clinic.people.push_back("Mina Orr");
    REQUIRE(room.desk().describeClinic(clinic));
    REQUIRE(room.desk().giveRole(owner, records::Role::inCharge));
    REQUIRE(room.desk().giveRole("Mina Orr", records::Role::assistant));
    room.desk().setPerson("Mina Orr");
    room.correct();
    room.takeOtherLot();
    room.editor().setReason(why);
    room.editor().save();
    CHECK(room.state().treatmentVersions.size() == 1);
    CHECK(room.editor().isCorrection());
    CHECK(room.desk().correction(room.course).has_value());
}

TEST_CASE("a draft of a correction that cannot be read is said and stays, and the correction is recorded beside it", "[desk][correction][draft]")
{
    Room room;
    const auto name = "treatment-correction/" + bytes::toHex(room.course.view());
    const std::string unread = "of a newer program";
    REQUIRE(room.desk().vault().keep(name, bytes::viewOf(unread)));
    room.correct();
    CHECK(room.program->notice().startsWith(QStringLiteral("What was begun here cannot be read.")));
    room.takeOtherLot();
    room.editor().setReason(why);
    room.editor().save();
    CHECK(room.record().placements[0].lot == "ZZ-77");
    CHECK(room.desk().vault().kept(name) == bytes::Bytes(unread.begin(), unread.end()));
}

TEST_CASE("a record that came without the one before it says so, and one without a reason too", "[desk][correction]")
{
    journal::CourseState course;
    const deskapp::Stamp stamp = [](const clock::Moment&) { return QStringLiteral("then"); };
    CHECK(deskapp::treatmentCorrectionLines(course, stamp).isEmpty());
    records::TreatmentRecorded record;
    record.treatment.corrected = recovery::Correction{"misread", {}};
    course.treatmentVersions.push_back({record, {}, {}});
    CHECK(deskapp::treatmentCorrectionLines(course, stamp)
          == QStringList{QStringLiteral("Corrected then by somebody. Why: misread"), QStringLiteral("What stood there until then has not arrived at this desk.")});
    record.treatment.corrected.reset();
    course.treatmentVersions.push_back({record, {}, {}});
    CHECK(deskapp::treatmentCorrectionLines(course, stamp).mid(0, 2)
          == QStringList{QStringLiteral("Recorded again then, without a reason"), QStringLiteral("Nothing differs from what stood there.")});
}

TEST_CASE("a wrong lot is corrected on the pages themselves, with each kind of hands", "[desk][flows][correction]")
{
    const int kind = GENERATE(4, 1, 3);  // mouse, keys, screen reader: screens::hands()
    const char* language = GENERATE("en", "de", "ar");
    CAPTURE(kind, language);
    const auto said = [](const char* context, const char* words) { return QCoreApplication::translate(context, words); };
    screens::Ear ear;
    screens::DemoClinic clinic;
    auto program = clinic.program(QString::fromLatin1(language));
    REQUIRE(program->show(QSize(1280, 900)));
    auto& window = *program->window();
    window.requestActivate();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    const auto hand = screens::hands(kind, window);
    const auto course = clinic.course("Tomas Reyl");
    program->openCourse(deskapp::keyOf(course));
    screens::settle(window);
    REQUIRE(hand.use(said("TreatmentPanel", "Correct the treatment")));
    REQUIRE(program->page() == Page::treatment);
    screens::settle(window);
    REQUIRE(hand.fill(said("TreatmentCorrection", "Why the record is corrected"), why));
    auto& editor = *program->treatment();
    editor.choose(1);
    editor.setLot(QStringLiteral("ZZ-77"));
    screens::settle(window);
    CHECK(screens::spoken(window, editor.corrections().first()) != nullptr);
    CHECK(screens::spoken(window, editor.phoneKeeps()) != nullptr);
    for (int step = 1; step < 4; ++step)
        REQUIRE(hand.use(said("TreatmentPage", "Next: %1").arg(editor.steps().at(step))));
    screens::settle(window);
    REQUIRE(hand.use(said("TreatmentPage", "Record the correction")));
    CHECK(program->page() == Page::course);
    screens::settle(window);
    CHECK(program->workplace().state().courses.at(course).treatment->treatment.placements[0].lot == "ZZ-77");
    CHECK(screens::spoken(window, program->course()->recordCorrections().first()) != nullptr);
    CHECK(ear.take() == "");
}
