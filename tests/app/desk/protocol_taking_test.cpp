// A protocol from a file: said in words, made a draft of, rehearsed and signed like every other; and one saved as a file.
#include "tests/core/records/sample_bodies.h"
#include "tests/screens/desk_pages.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QTemporaryDir>

using namespace ebbline;
using Page = app::DeskProgram::Page;

namespace {

struct Taking {
    screens::DemoClinic clinic{12};
    std::unique_ptr<app::DeskProgram> program = clinic.program(QStringLiteral("en"));
    deskapp::ProtocolTaking& taking = *program->protocolTaking();
    deskapp::ProtocolEditor& editor = *program->protocolEditor();

    Taking() { program->openProtocols(); }
    bool read(const std::string& text) { return taking.read(screens::protocolFileOf(clinic.folder().parent_path(), text)); }
    bool read(const exchange::ProtocolFile& file) { return read(exchange::protocolText(file)); }
    desk::Desk& desk() { return program->workplace().desk(); }
    triggers::Protocol inUse() { return desk().protocols().front(); }
    void sign()
    {
        editor.rehearse();
        screens::await(*program);
        editor.sign();
    }
};

bool says(const QStringList& lines, const char* words) { return lines.join(u'\n').contains(QLatin1String(words)); }

/// The range of the file as a version of this clinic, whose check held on thirty courses.
records::BandLearned heldHere(const exchange::ProtocolFile& file)
{
    auto body = test::sampleBandLearned(30);
    auto provenance = file.protocol.band.provenance();
    provenance.version = "brought-2027-03-22-aaaaaaaa";
    body.learned.brought = bands::Brought{file.protocol.band.provenance().version, true};
    body.learned.band = *bands::Band::create(provenance, file.protocol.band.table(), file.protocol.band.movements());
    body.thresholds = file.protocol.thresholds;
    return body;
}

}  // namespace

TEST_CASE("a file says what it is and what differs, and its draft is not live", "[desk][protocol][file]")
{
    Taking made;
    auto& taking = made.taking;
    const auto before = made.inUse();

    REQUIRE(made.read(screens::otherProtocol()));
    CHECK(made.program->page() == Page::protocolFile);
    CHECK(taking.title() == QLatin1String("Face, as the colleagues do it, version 7"));
    for (const char* words : {"ebbline 0.1.0", "14 Feb 2027", "320 uncomplicated course", "budget of 10", "calibrated-2027-02-01-aaaaaaaa",
                              "aaaa aaaa aaaa aaaa", "not signed"}) {
        CAPTURE(words);
        CHECK(says(taking.facts(), words));
    }
    QStringList rules;
    for (const auto& row : taking.rules()) {
        rules << row.toStringList().join(QLatin1String(" | "));
    }
    REQUIRE(rules.size() == 3);  // the level's threshold, its guard in two rules, and the guard of a side that worsens
    CHECK(rules[0].contains(QLatin1String("4.46")));
    CHECK(rules[0].contains(QLatin1String("4.90")));
    CHECK(rules[2].contains(QLatin1String("one side worsens")));
    CHECK(taking.plan() == QStringList{QStringLiteral("Follow-up on day 24 (was 21)")});
    CHECK(taking.draftText().isEmpty());

    taking.makeDraft();
    CHECK(made.program->page() == Page::protocolEdit);
    CHECK(made.editor.step() == 2);
    CHECK(made.inUse() == before);
    CHECK(made.desk().bandHistory().activeVersion() == "seed-1");
    CHECK(made.desk().bandHistory().versions().size() == 1);
    CHECK(made.editor.followUpDay() == 21);
    CHECK(made.editor.bringsRange());
    CHECK(says(made.editor.changes(), "Usual range: "));
    CHECK(says(made.editor.changes(), "threshold 4.90"));
    CHECK(says(made.editor.changes(), "at least 5 point"));
}

TEST_CASE("a range that could not be checked here is rehearsed, and never signed", "[desk][protocol][file]")
{
    Taking made;
    const auto before = made.inUse();
    REQUIRE(made.read(screens::otherProtocol()));
    CHECK(made.taking.asksOthers());
    CHECK(made.taking.range().contains(QLatin1String("Cannot be used yet")));
    made.taking.setOfOthers(true);
    CHECK(made.taking.range().contains(QLatin1String("Cannot be used yet")));
    made.taking.makeDraft();

    made.sign();
    REQUIRE(made.editor.isRehearsed());
    CHECK(says(made.editor.missing(), "It cannot be signed with the usual range"));
    CHECK(made.inUse() == before);

    made.editor.keepRange();
    CHECK_FALSE(made.editor.bringsRange());
    made.sign();
    CHECK(made.editor.missing().contains(QLatin1String("Nothing is changed yet.")));
    CHECK(made.inUse().thresholds.levelGuard == 4);
    CHECK(made.inUse().thresholds.level == before.thresholds.level);
    CHECK(made.inUse().thresholds.calibratedOn == before.thresholds.calibratedOn + ", rules changed since");
    CHECK(made.inUse().band == before.band);

    // Nobody finds it in use, and everybody finds where it came from.
    made.program->openPractice();
    const auto row = made.program->bands()->versions()->rows().first().value.value<deskapp::BandRow>();
    CHECK_FALSE(row.usable);
    CHECK(row.rests.contains(QLatin1String("calibrated-2027-02-01-aaaaaaaa")));
    CHECK(row.rests.contains(QLatin1String("no course of this clinic is behind it")));
}

TEST_CASE("a range that held here goes live with the signature, and goes back with it", "[desk][protocol][file]")
{
    Taking made;
    const auto before = made.inUse();
    const auto file = screens::otherProtocol();
    REQUIRE(made.desk().keepBand(heldHere(file)));

    REQUIRE(made.read(file));
    CHECK_FALSE(made.taking.asksOthers());
    CHECK(made.taking.range().contains(QLatin1String("brought-2027-03-22-aaaaaaaa")));
    made.taking.makeDraft();
    CHECK(made.desk().bandHistory().activeVersion() == "seed-1");
    made.sign();

    CHECK(made.desk().bandHistory().activeVersion() == "brought-2027-03-22-aaaaaaaa");
    CHECK(made.inUse().version == before.version + 1);
    CHECK(made.inUse().name == before.name);
    CHECK(made.inUse().thresholds.level == 4.9);
    CHECK(made.inUse().thresholds.calibratedOn == "320 uncomplicated courses, from a file");
    CHECK(deskapp::calibrationText(made.inUse().thresholds).contains(QLatin1String("They came in a file")));
    CHECK(made.editor.changes().isEmpty());

    REQUIRE(made.editor.canTakeBack());
    made.editor.takeBack();
    CHECK(made.desk().bandHistory().activeVersion() == "seed-1");
    CHECK(made.inUse().band == before.band);
    CHECK(made.inUse().thresholds == before.thresholds);
    CHECK(made.inUse().version == before.version + 2);
}

TEST_CASE("a draft that was there comes back by undo, and the one from the file outlives the lock", "[desk][protocol][file]")
{
    Taking made;
    made.program->openProtocolEdit();
    made.editor.setFollowUpDay(28);
    made.program->openProtocols();
    REQUIRE(made.read(screens::otherProtocol()));
    CHECK(made.taking.draftText().contains(QLatin1String("A draft is there already")));
    made.taking.setWithPlan(true);
    made.taking.makeDraft();
    CHECK(made.editor.followUpDay() == 24);
    made.editor.undo();
    CHECK(made.editor.followUpDay() == 28);
    CHECK_FALSE(made.editor.bringsRange());
    made.editor.redo();

    made.program->lock();
    CHECK(made.taking.title().isEmpty());
    REQUIRE(made.program->workplace().unlock(bytes::viewOf(screens::DemoClinic::passphrase)));
    made.program->choosePerson(QStringLiteral("Ilan Osei"));
    made.program->openProtocols();
    made.program->openProtocolEdit();
    CHECK(made.editor.followUpDay() == 24);
    CHECK(made.editor.bringsRange());
    CHECK(says(made.editor.changes(), "threshold 4.90"));
}

TEST_CASE("a draft from a file follows what was signed meanwhile", "[desk][protocol][file]")
{
    Taking made;
    REQUIRE(made.read(screens::otherProtocol()));
    made.taking.makeDraft();
    auto meanwhile = made.inUse();
    ++meanwhile.version;
    meanwhile.thresholds.level = 5.5;
    const auto draft = made.desk().protocolDraft();
    REQUIRE(draft);
    REQUIRE(made.desk().signProtocol(meanwhile));
    REQUIRE(made.desk().keepProtocolDraft(*draft));

    made.program->openProtocols();
    made.program->openProtocolEdit();
    CHECK_FALSE(made.editor.bringsRange());
    CHECK_FALSE(says(made.editor.changes(), "threshold 4.90"));
    CHECK(made.editor.changes().size() == 2);  // the guards of the file stay in the draft
}

TEST_CASE("what is no sound protocol is refused with what to do, and nothing is changed", "[desk][protocol][file][errors]")
{
    Taking made;
    const auto good = exchange::protocolText(screens::otherProtocol());
    const auto with = [&](const std::string& from, const std::string& to) {
        const auto place = good.find(from);
        REQUIRE(place != std::string::npos);
        return std::string(good).replace(place, from.size(), to);
    };
    struct Row { std::string text; const char* says; };
    const std::vector<Row> rows{{"", "Choose another file"},
                                {good.substr(0, good.size() / 2), "Choose another file"},
                                {std::string(2000, '['), "Choose another file"},
                                {"{\"format\": \"another\"}", "Choose another file"},
                                {with("\"levelGuard\": 4", "\"levelGuard\": 40"), "thresholds.levelGuard"},
                                {with("\"formatVersion\": 3", "\"formatVersion\": 9"), "Update the program"},
                                {std::string(exchange::maximumProtocolBytes + 1, ' '), "larger than a protocol can be"}};
    for (const auto& row : rows) {
        CAPTURE(row.says);
        CHECK_FALSE(made.read(row.text));
        CHECK(made.taking.problem().contains(QLatin1String(row.says)));
        CHECK(made.taking.problem().contains(QLatin1String("Nothing was changed")));
    }
    for (const auto& path : {QStringLiteral("/nowhere/protocol.json"), QStringLiteral("/dev/zero"), QString::fromStdString(made.clinic.folder().string())}) {
        CHECK_FALSE(made.taking.read(path));
        CHECK(made.taking.problem().contains(QLatin1String("cannot be read")));
    }
    CHECK(made.program->page() == Page::protocols);
    CHECK(made.taking.facts().isEmpty());
    made.taking.makeDraft();
    CHECK_FALSE(made.desk().protocolDraft());
    CHECK(made.desk().bandHistory().versions().empty());
}

TEST_CASE("a range that does not say what is behind it is left out, with its thresholds", "[desk][protocol][file]")
{
    Taking made;
    const auto before = made.inUse();
    auto file = screens::otherProtocol();
    file.protocol.thresholds.calibratedOn = std::string(300, 'x');
    REQUIRE(made.read(file));
    CHECK(made.taking.range().contains(QLatin1String("cannot be taken")));

    file = screens::otherProtocol();
    auto provenance = file.protocol.band.provenance();
    provenance.hash = "none";
    file.protocol.band = *bands::Band::create(provenance, file.protocol.band.table(), file.protocol.band.movements());
    REQUIRE(made.read(file));
    CHECK(made.taking.range().contains(QLatin1String("cannot be taken")));
    made.taking.makeDraft();
    CHECK_FALSE(made.editor.bringsRange());
    CHECK_FALSE(says(made.editor.changes(), "threshold 4.90"));
    made.sign();
    CHECK(made.inUse().thresholds.levelGuard == 4);
    CHECK(made.inUse().thresholds.level == before.thresholds.level);
    CHECK(made.inUse().band == before.band);
}

TEST_CASE("the protocol in use is saved as a file that is read back, and changes nothing here", "[desk][protocol][file]")
{
    Taking made;
    const QTemporaryDir folder;
    const auto path = folder.filePath(QStringLiteral("mine.json"));
    CHECK_FALSE(made.taking.write(QStringLiteral("/nowhere/mine.json")));
    CHECK(made.taking.problem().contains(QLatin1String("Choose another folder")));
    REQUIRE(made.taking.write(path));
    CHECK(made.taking.problem().isEmpty());
    CHECK(made.taking.outcome().contains(path));

    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    const auto read = exchange::protocolFromText(file.readAll().toStdString());
    REQUIRE(read);
    CHECK(read->protocol == made.inUse());
    CHECK(read->written->at == made.program->workplace().now().at);

    REQUIRE(made.taking.read(path));
    CHECK(made.taking.rules().isEmpty());
    CHECK(made.taking.plan().isEmpty());
    CHECK(made.taking.range().contains(QLatin1String("the one in use")));
    made.taking.makeDraft();
    CHECK(made.editor.changes().isEmpty());
    CHECK(made.editor.missing().contains(QLatin1String("Nothing is changed yet.")));
}
