// Changing a protocol: in words, undone, rehearsed, and signed only then.
#include "tests/screens/desk_pages.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;

namespace {

struct Editing {
    screens::DemoClinic clinic{12};
    std::unique_ptr<app::DeskProgram> program = clinic.program(QStringLiteral("en"));
    deskapp::ProtocolEditor& editor = *program->protocolEditor();

    Editing() { open(); }
    void open()
    {
        program->openProtocols();
        program->openProtocolEdit();
    }
    void rehearse()
    {
        editor.rehearse();
        screens::await(*program);
    }
    triggers::Protocol inUse() { return program->workplace().desk().protocols().front(); }
};

}  // namespace

TEST_CASE("nothing is signed before it was rehearsed as it is", "[desk][protocol][edit]")
{
    Editing editing;
    auto& editor = editing.editor;
    CHECK(editor.missing().contains(QLatin1String("Nothing is changed yet.")));
    const auto version = editing.inUse().version;

    editor.setFollowUpDay(24);
    CHECK(editor.changes().size() == 1);
    editor.sign();
    CHECK(editing.inUse().carePlan.followUpDay == 21);

    editing.rehearse();
    REQUIRE(editor.isRehearsed());
    CHECK(editor.missing().isEmpty());
    CHECK(editor.figures().size() >= 6);
    editor.setFollowUpDay(25);
    CHECK_FALSE(editor.isRehearsed());
    editor.sign();
    CHECK(editing.inUse().carePlan.followUpDay == 21);

    editor.undo();
    CHECK(editor.isRehearsed());
    editor.sign();
    CHECK(editing.inUse().carePlan.followUpDay == 24);
    CHECK(editing.inUse().version == version + 1);
    CHECK(editor.changes().isEmpty());

    REQUIRE(editor.canTakeBack());
    editor.takeBack();
    CHECK(editing.inUse().carePlan.followUpDay == 21);
    CHECK(editing.inUse().version == version + 2);
    CHECK(editor.versions().size() == 2);
    editor.takeUp(1);
    CHECK(editor.followUpDay() == 24);
}

TEST_CASE("an instruction is changed in plain words, and the patient's day shows it", "[desk][protocol][edit]")
{
    Editing editing;
    auto& editor = editing.editor;
    const auto before = editor.plan()->rowCount();
    const auto custom = editor.addable().size() - 1;
    editor.addInstruction(static_cast<int>(custom));
    CHECK(editor.plan()->rowCount() == before + 1);
    CHECK(editor.problem().contains(QLatin1String("needs its words")));
    editor.setClinicText(QStringLiteral("Drink enough."));
    CHECK(editor.problem().isEmpty());
    editor.setFirstDay(2);
    editor.setLastDay(4);
    editor.setTimes(QStringLiteral("20:15, 8:30"));
    CHECK(editor.timesProblem().isEmpty());
    CHECK(editor.times() == QLatin1String("08:30 20:15"));
    editor.setTimes(QStringLiteral("quarter past"));
    CHECK_FALSE(editor.timesProblem().isEmpty());
    CHECK(editor.times() == QLatin1String("08:30 20:15"));

    const auto saysSo = [&](int day) {
        editor.setPreviewDay(day);
        return editor.previewDue().join(u'\n').contains(QLatin1String("Drink enough."));
    };
    CHECK_FALSE(saysSo(1));
    CHECK(saysSo(2));
    CHECK(saysSo(4));
    CHECK_FALSE(saysSo(5));
    editor.setEveryDays(2);
    CHECK_FALSE(saysSo(3));
    CHECK(saysSo(4));
    editor.setTimes({});
    editor.setPreviewDay(3);
    CHECK(editor.previewRules().join(u'\n').contains(QLatin1String("Drink enough.")));

    editor.removeChosen();
    CHECK(editor.plan()->rowCount() == before);
    while (editor.canUndo()) {
        editor.undo();
    }
    CHECK(editor.changes().isEmpty());
    CHECK(editor.canRedo());
}

TEST_CASE("a draft outlives leaving the page and locking the desk", "[desk][protocol][edit]")
{
    Editing editing;
    editing.editor.setRule(0, 2);
    editing.editor.setFollowUpDay(28);
    editing.program->lock();
    CHECK(editing.editor.plan()->rowCount() == 0);
    REQUIRE(editing.program->workplace().unlock(bytes::viewOf(screens::DemoClinic::passphrase)));
    editing.program->choosePerson(QStringLiteral("Ilan Osei"));
    editing.open();
    CHECK(editing.editor.followUpDay() == 28);
    CHECK(editing.editor.changes().size() == 2);
    editing.editor.startOver();
    CHECK(editing.editor.changes().isEmpty());
    editing.editor.undo();
    CHECK(editing.editor.changes().size() == 2);
}

TEST_CASE("a draft that cannot be read stays as it is, and that is said", "[desk][protocol][edit][errors]")
{
    Editing editing;
    auto& vault = editing.program->workplace().desk().vault();
    const bytes::Bytes garbage{'g', 'a', 'r', 'b', 'a', 'g', 'e'};
    REQUIRE(vault.keep("protocol-draft", garbage));
    editing.open();
    CHECK(editing.program->notice().contains(QLatin1String("cannot be read")));
    editing.program->dismissNotice();
    editing.editor.setFollowUpDay(24);
    CHECK(editing.program->notice().contains(QLatin1String("not kept")));
    CHECK(vault.kept("protocol-draft") == garbage);
    editing.rehearse();
    editing.editor.sign();
    CHECK(editing.inUse().carePlan.followUpDay == 24);
    CHECK(vault.kept("protocol-draft") == garbage);
}

TEST_CASE("a draft with an instruction that still lacks its words is there again", "[desk][protocol][edit]")
{
    Editing editing;
    editing.editor.addInstruction(static_cast<int>(editing.editor.addable().size()) - 1);
    const auto rows = editing.editor.plan()->rowCount();
    REQUIRE_FALSE(editing.editor.problem().isEmpty());
    editing.open();
    CHECK(editing.editor.plan()->rowCount() == rows);
    CHECK_FALSE(editing.editor.problem().isEmpty());
}

TEST_CASE("an eager rule is seen in the rehearsal before anybody is called because of it", "[desk][protocol][rehearsal]")
{
    Editing editing;
    editing.editor.setRule(13, 1);
    editing.rehearse();
    REQUIRE(editing.editor.isRehearsed());
    CHECK(editing.editor.verdict().contains(QLatin1String("alerts a week")));
    CHECK(editing.editor.verdict().contains(QLatin1String("Of 200 uncomplicated courses invented smooth")));
    CHECK(editing.editor.verdict().contains(QLatin1String("of 200 invented in steps")));
}

TEST_CASE("a rehearsal says who is to be called and who is not heard from, by both models", "[desk][protocol][rehearsal]")
{
    Editing editing;
    editing.editor.setRule(13, 6);  // days without an entry
    editing.rehearse();
    const auto rowOf = [&](const char* title) {
        for (const QVariant& row : editing.editor.figures()) {
            if (row.toStringList().front() == QLatin1String(title)) {
                return row.toStringList();
            }
        }
        FAIL("no row " << title);
        return QStringList();
    };
    for (const char* model : {"Invented, smooth: Uncomplicated", "Invented, in steps: Uncomplicated"}) {
        const auto silent = rowOf((std::string(model) + ", not heard from").c_str());
        CHECK(silent[1] != silent[2]);
        const auto called = rowOf((std::string(model) + ", call now").c_str());
        CHECK(called[1] == called[2]);
    }
    // The silent list alone differs, and the past courses of it are named.
    CHECK_FALSE(editing.editor.differences().isEmpty());
}

TEST_CASE("no number of the editor touches a warning sign", "[desk][protocol][safety]")
{
    Editing editing;
    for (int rule = 0; rule < editing.editor.rules()->rowCount(); ++rule) {
        editing.editor.setRule(rule, 1000);
    }
    editing.rehearse();
    editing.editor.sign();
    const auto queue = editing.program->workplace().desk().queue();
    REQUIRE_FALSE(queue.empty());
    CHECK(queue.front().urgency == recovery::Urgency::emergency);
}
