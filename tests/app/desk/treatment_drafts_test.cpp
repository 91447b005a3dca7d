// The drafts of treatments: each patient has her own, none is lost, none stands under another's name.
#include "core/records/bodies.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

#include <QSignalSpy>

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

const QString ada = QStringLiteral("Ada Quill");
const QString berta = QStringLiteral("Berta Lind");

struct Writing {
    screens::DemoClinic clinic;
    std::unique_ptr<app::DeskProgram> program = clinic.program(QStringLiteral("en"));
    QString first;
    QString second;

    Writing()
    {
        first = enrol(ada);
        second = enrol(berta);
        program->openTreatment();
    }

    QString enrol(const QString& name)
    {
        const auto made = program->workplace().desk().registerPatient(name.toStdString(), {}, "en");
        REQUIRE(made);
        return deskapp::keyOf(*made);
    }

    deskapp::TreatmentEditor& editor() { return *program->treatment(); }
    desk::Desk& desk() { return program->workplace().desk(); }

    /// A whole record of whoever is chosen.
    void write(const QString& kilograms)
    {
        editor().draw({296, 170}, {252, 262});
        editor().setWeight(kilograms);
        editor().setConsentGiven(true);
        editor().setCautionsGiven(true);
        editor().setLearningConsent(true);
        editor().setBaseline(1, 2, 4);
        editor().setNote(QStringLiteral("bleeds easily"));
    }

    void restart()
    {
        program.reset();
        program = clinic.program(QStringLiteral("en"));
        program->openTreatment();
    }

    QStringList begun()
    {
        QStringList names;
        for (const auto& row : editor().begun()->rows())
            names << row.value.value<deskapp::PatientRow>().name;
        return names;
    }
};

std::string draftName(const QString& key) { return "treatment-draft/" + key.toStdString(); }
const QString nobody(32, u'0');

}  // namespace

TEST_CASE("another patient gets nothing of the first one's: no consent, no weight, no maximum, no threads", "[desk][treatment][draft]")
{
    Writing writing;
    auto& editor = writing.editor();
    editor.choosePatient(writing.first);
    writing.write(QStringLiteral("80"));
    const auto hers = editor.treatment();

    editor.choosePatient(writing.second);

    CHECK(editor.patientKey() == writing.second);
    CHECK(editor.weight().isEmpty());
    CHECK_FALSE(editor.consentGiven());
    CHECK_FALSE(editor.cautionsGiven());
    CHECK_FALSE(editor.learningConsent());
    CHECK(editor.note().isEmpty());
    CHECK(editor.treatment().baseline.empty());
    CHECK(editor.placements()->rowCount() == 0);
    CHECK(editor.treatment().course != hers.course);
    CHECK_FALSE(editor.canUndo());

    editor.choosePatient(writing.first);
    CHECK(editor.treatment() == hers);
}

TEST_CASE("two drafts live side by side, and one waits while the other is recorded", "[desk][treatment][draft]")
{
    Writing writing;
    writing.editor().choosePatient(writing.first);
    writing.write(QStringLiteral("80"));
    const auto hers = writing.editor().treatment();
    writing.editor().choosePatient(writing.second);
    writing.write(QStringLiteral("48"));
    CHECK(writing.begun() == QStringList{ada, berta});

    writing.restart();
    CHECK(writing.editor().patientKey() == writing.second);
    CHECK(writing.editor().weight() == QLatin1String("48"));
    CHECK(writing.begun() == QStringList{ada, berta});
    QSignalSpy recorded(&writing.editor(), &deskapp::TreatmentEditor::recorded);
    writing.editor().save();
    REQUIRE(recorded.count() == 1);

    writing.program->openTreatment();
    CHECK(writing.editor().patientKey().isEmpty());
    CHECK(writing.editor().placements()->rowCount() == 0);
    CHECK(writing.begun() == QStringList{ada});
    writing.editor().takeUpBegun(writing.first);
    CHECK(writing.editor().treatment() == hers);
}

TEST_CASE("a patient who was only looked for is not begun", "[desk][treatment][draft]")
{
    Writing writing;
    writing.editor().choosePatient(writing.first);
    writing.editor().choosePatient(writing.second);
    CHECK(writing.begun().isEmpty());
    writing.restart();
    CHECK(writing.editor().patientKey() == writing.second);
    CHECK_FALSE(writing.editor().isFromDraft());
}

TEST_CASE("what was written while nobody was chosen goes to the patient chosen, unless she has a draft", "[desk][treatment][draft]")
{
    Writing writing;
    auto& editor = writing.editor();
    editor.draw({296, 170}, {252, 262});
    editor.setTime(QStringLiteral("13:00"));
    CHECK(writing.begun() == QStringList{QStringLiteral("Nobody chosen yet")});
    editor.choosePatient(writing.first);
    CHECK(editor.placements()->rowCount() == 1);
    CHECK(writing.begun() == QStringList{ada});
    writing.restart();
    CHECK(writing.editor().patientKey() == writing.first);
    CHECK(writing.editor().time() == QLatin1String("13:00"));
    CHECK(writing.editor().placements()->rowCount() == 1);

    writing.editor().takeUpBegun(QStringLiteral("nobody"));
    CHECK(writing.editor().placements()->rowCount() == 0);
    writing.editor().setNote(QStringLiteral("of nobody"));
    writing.editor().choosePatient(writing.first);
    CHECK(writing.editor().note().isEmpty());
    CHECK(writing.editor().placements()->rowCount() == 1);
    CHECK(writing.begun().size() == 2);
    writing.editor().takeUpBegun(QStringLiteral("nobody"));
    CHECK(writing.editor().note() == QLatin1String("of nobody"));
}

TEST_CASE("the one draft of an older program is its patient's, with the time that was said", "[desk][treatment][draft]")
{
    Writing writing;
    auto former = writing.desk().blankTreatment(deskapp::patientFromKey(writing.first));
    former.placements.push_back({});
    former.consentGiven = true;
    auto& vault = writing.desk().vault();
    REQUIRE(vault.keep("treatment-draft", records::encode(records::TreatmentRecorded{former})));
    REQUIRE(vault.keep("desk/begun/treatment/when", bytes::viewOf("said")));
    writing.clinic.clock().advance(2h);

    writing.restart();

    CHECK(writing.editor().treatment() == former);
    CHECK(writing.desk().vault().kept("treatment-draft").error().reason == Reason::notFound);
    writing.editor().setStep(3);
    CHECK(writing.editor().treatment().at == former.at);  // it was said, and is not renewed
}

TEST_CASE("an older program's draft waits while its patient has one, and nothing is kept over it", "[desk][treatment][draft]")
{
    Writing writing;
    writing.editor().choosePatient(writing.first);
    writing.write(QStringLiteral("80"));
    const auto own = writing.editor().treatment();
    auto former = writing.desk().blankTreatment(own.patient);
    former.note = "of before";
    REQUIRE(writing.desk().vault().keep("treatment-draft", records::encode(records::TreatmentRecorded{former})));
    writing.program->openTreatment();
    CHECK(writing.editor().treatment() == own);
    writing.editor().save();
    writing.program->openTreatment();
    CHECK(writing.editor().note() == QLatin1String("of before"));
}

TEST_CASE("a draft that cannot be read stays as it is, and that is said", "[desk][treatment][draft][errors]")
{
    Writing writing;
    const bytes::Bytes garbage{'g', 'a', 'r', 'b', 'a', 'g', 'e'};
    const auto keep = [&](const std::string& name) { REQUIRE(writing.desk().vault().keep(name, garbage)); };
    QSignalSpy failed(&writing.program->workplace(), &deskapp::Workplace::failed);
    std::string name;
    SECTION("of a patient")
    {
        name = draftName(writing.first);
        keep(name);
        writing.editor().choosePatient(writing.first);
        CHECK(writing.begun() == QStringList{ada});
    }
    SECTION("of nobody")
    {
        name = draftName(nobody);
        keep(name);
        writing.program->openTreatment();
    }
    CHECK(failed.count() == 1);
    writing.write(QStringLiteral("80"));
    CHECK(writing.editor().kept().contains(QLatin1String("cannot be read")));
    CHECK(writing.desk().vault().kept(name) == garbage);

    // What is written meanwhile waits, too, while the desk is open.
    writing.editor().takeUpBegun(writing.second);
    CHECK(writing.editor().kept().isEmpty());
    writing.editor().takeUpBegun(name == draftName(nobody) ? QStringLiteral("nobody") : writing.first);
    CHECK(writing.editor().weight() == QLatin1String("80"));
    writing.editor().startOver();
    writing.editor().undo();
    CHECK(writing.desk().vault().kept(name) == garbage);

    writing.editor().choosePatient(writing.first);
    writing.editor().save();
    CHECK(writing.program->page() == app::DeskProgram::Page::pairing);
    CHECK(writing.desk().vault().kept(name) == garbage);
}

TEST_CASE("an older program's draft that cannot be read is said, and stays", "[desk][treatment][draft][errors]")
{
    Writing writing;
    const bytes::Bytes garbage{'g'};
    REQUIRE(writing.desk().vault().keep("treatment-draft", garbage));
    QSignalSpy failed(&writing.program->workplace(), &deskapp::Workplace::failed);
    writing.program->openTreatment();
    CHECK(failed.count() == 1);
    writing.write(QStringLiteral("80"));
    writing.editor().choosePatient(writing.first);
    CHECK(writing.desk().vault().kept("treatment-draft") == garbage);
}

TEST_CASE("a draft under another patient's name is not taken up", "[desk][treatment][draft][errors]")
{
    Writing writing;
    const auto hers = writing.desk().blankTreatment(deskapp::patientFromKey(writing.first));
    REQUIRE(writing.desk().vault().keep(draftName(writing.second), records::encode(records::TreatmentRecorded{hers})));
    const auto draft = writing.desk().draft(deskapp::patientFromKey(writing.second));
    REQUIRE_FALSE(draft);
    CHECK(draft.error().reason == Reason::damaged);
}

TEST_CASE("starting over is undone: threads, consent, weight and time are back", "[desk][treatment][undo]")
{
    Writing writing;
    auto& editor = writing.editor();
    editor.choosePatient(writing.first);
    writing.write(QStringLiteral("80"));
    editor.setDay(QStringLiteral("2027-03-20"));
    editor.setTime(QStringLiteral("13:00"));
    const auto before = editor.treatment();

    editor.startOver();
    CHECK(editor.placements()->rowCount() == 0);
    CHECK_FALSE(editor.consentGiven());
    CHECK(editor.day() == QLatin1String("2027-03-22"));
    CHECK(editor.patientKey() == writing.first);
    CHECK(writing.begun().isEmpty());

    editor.undo();
    CHECK(editor.treatment() == before);
    CHECK(editor.weight() == QLatin1String("80"));
    CHECK(editor.day() == QLatin1String("2027-03-20"));
    CHECK(editor.time() == QLatin1String("13:00"));
    CHECK(editor.missing().isEmpty());
    writing.restart();
    CHECK(writing.editor().treatment() == before);
}

TEST_CASE("starting over leaves the plan beside, also over a restart", "[desk][treatment][undo]")
{
    Writing writing;
    writing.editor().choosePatient(writing.first);
    writing.write(QStringLiteral("80"));
    writing.editor().keepAsPlan();
    writing.editor().startOver();
    CHECK(writing.editor().isPlanned());
    writing.restart();
    CHECK(writing.editor().patientKey() == writing.first);
    CHECK(writing.editor().isPlanned());
    CHECK(writing.editor().placements()->rowCount() == 0);
}

TEST_CASE("leaving the page and coming back ends no undo, and another patient's is her own", "[desk][treatment][undo]")
{
    Writing writing;
    auto& editor = writing.editor();
    editor.choosePatient(writing.first);
    writing.write(QStringLiteral("80"));
    writing.program->openQueue();
    writing.program->openTreatment();
    REQUIRE(editor.canUndo());
    editor.choosePatient(writing.second);
    CHECK_FALSE(editor.canUndo());
    editor.setNote(QStringLiteral("hers"));
    editor.choosePatient(writing.first);
    editor.undo();
    CHECK(editor.note().isEmpty());
    while (editor.canUndo())
        editor.undo();
    CHECK(editor.placements()->rowCount() == 0);
    editor.choosePatient(writing.second);
    CHECK(editor.note() == QLatin1String("hers"));

    writing.program->lock();
    CHECK_FALSE(editor.canUndo());
}

TEST_CASE("a note typed letter by letter is undone at once, on any step", "[desk][treatment][undo]")
{
    Writing writing;
    auto& editor = writing.editor();
    editor.choosePatient(writing.first);
    editor.draw({296, 170}, {252, 262});
    editor.setStep(3);
    const QString words = QStringLiteral("bleeds easily");
    for (qsizetype letters = 1; letters <= words.size(); ++letters)
        editor.setNote(words.left(letters));
    editor.undo();
    CHECK(editor.note().isEmpty());
    CHECK(editor.placements()->rowCount() == 1);
}
