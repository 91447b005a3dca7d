// The patient's guide, followed with a finger from the first page to the third entry. Each name in bold or in quotes
// that is touched here has to stand in the guide, so that a page cannot drift away from it unseen.
#include "tests/screens/complaints.h"
#include "tests/screens/diary_hands.h"
#include "tests/screens/hands.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QFile>
#include <QRegularExpression>
#include <QTest>

#include <cstdio>

using namespace ebbline;
using recovery::Side;
using recovery::Symptom;
using screens::DemoPatient;
using screens::markName;
using screens::open;
using Page = app::DiaryProgram::Page;

namespace {

const QString passphrase = QString::fromLatin1(DemoPatient::passphrase);

QString guide()
{
    static const QRegularExpression ends(QStringLiteral("\\s+"));  // a name may be broken over two lines
    QFile file(QStringLiteral(EBBLINE_DOCS "/guides/patient.md"));
    REQUIRE(file.open(QIODevice::ReadOnly));
    return QString::fromUtf8(file.readAll()).replace(ends, QStringLiteral(" "));
}

/// A finger that counts, over one phone.
struct Follower {
    DemoPatient patient;
    std::unique_ptr<app::DiaryProgram> program = patient.program(QStringLiteral("en"));
    const QString words = guide();
    int touches = 0;
    int keys = 0;

    void touch(const QString& name)
    {
        CAPTURE(name.toStdString(), program->pageName().toStdString());
        REQUIRE(screens::touch(*program->window(), name));
        ++touches;
    }
    /// A control that the guide names.
    void touchNamed(const char* name)
    {
        const QString text = QString::fromUtf8(name);
        CAPTURE(name);
        CHECK((words.contains(QStringLiteral("**%1**").arg(text)) || words.contains(QStringLiteral("\"%1\"").arg(text))));
        touch(text);
    }
    void type(const QString& field, const QString& text)
    {
        touch(field);
        for (const QChar letter : text)
            QTest::keyClick(program->window(), letter.toLatin1());
        keys += static_cast<int>(text.size());
        screens::settle(*program->window());
    }
    void join()
    {
        REQUIRE(program->page() == Page::join);
        type(QStringLiteral("Or type the code, 24 letters and digits"), patient.showsCode());
        type(QStringLiteral("The address under the code"), QString::fromLatin1(DemoPatient::hub));
        touch(QStringLiteral("Use this code"));
        program->joining()->poll();
        patient.looks();
        program->joining()->poll();
        REQUIRE(program->joining()->number().remove(QLatin1Char(' ')) == patient.number());  // read aloud, and the same at the clinic
        patient.confirms();
        patient.sends();
        program->joining()->poll();
        program->joining()->poll();
        screens::settle(*program->window());
        REQUIRE(program->page() == Page::today);
    }
    /// Both sides of each question, and on to the signs.
    void answerAll(int points)
    {
        for (const Symptom symptom : {Symptom::swelling, Symptom::pain, Symptom::bruising, Symptom::tightness, Symptom::puckering}) {
            for (const Side side : {Side::right, Side::left})
                touch(markName(symptom, side, points));
            touch(QStringLiteral("Next"));
        }
    }
};

}  // namespace

TEST_CASE("joining as the guide says takes six touches with a passphrase that is typed, and seven with one that is drawn", "[diary][flows][guide]")
{
    const bool drawn = GENERATE(false, true);
    screens::Ear ear;
    Follower she;
    open(*she.program);
    if (drawn) {
        she.touchNamed("Draw one for me");
        she.touchNamed("It is on paper");
        const auto groups = she.program->locking()->askedGroups();
        const QStringList paper = she.program->locking()->drawn().split(QLatin1Char('-'));
        she.type(she.program->locking()->askedText(), paper.at(groups[0] - 1) + paper.at(groups[1] - 1));
        she.touch(QStringLiteral("Make my diary"));
    } else {
        she.type(QStringLiteral("Passphrase"), passphrase);
        she.touchNamed("Show what I type");
        she.touch(QStringLiteral("Make my diary"));
    }
    she.join();
    std::printf("joining, passphrase %s: %d touches, %d letters typed\n", drawn ? "drawn" : "typed", she.touches, she.keys);
    CHECK(she.touches <= (drawn ? 7 : 6));

    // Before she leaves: the clinic's number is there.
    she.touchNamed("I need help");
    CHECK(screens::named(*she.program->window(), QStringLiteral("Your clinic: \u2066+00\u00a0555\u00a00100\u2069")) != nullptr);
    CHECK(ear.take() == "");
}

TEST_CASE("who follows the guide from the first page comes to a third entry, and meets nothing that it does not name", "[diary][flows][guide]")
{
    screens::Ear ear;
    Follower she;
    open(*she.program);
    she.type(QStringLiteral("Passphrase"), passphrase);
    she.touchNamed("Show what I type");
    she.touch(QStringLiteral("Make my diary"));
    she.join();

    // At the clinic: reminders, and a try.
    she.touch(QStringLiteral("Ring for reminders"));
    she.touchNamed("Ring once to try it");
    CHECK(she.patient.bells().tries == 1);
    she.touch(QStringLiteral("Put this away"));

    // That evening: what is due, and the first entry.
    she.patient.goTo(0, 20);
    she.program->openToday();
    screens::settle(*she.program->window());
    const auto due = she.program->today()->due().size();
    she.touchNamed("Done");
    CHECK(she.program->today()->due().size() == due - 1);
    she.touch(QStringLiteral("Write down how it is"));
    she.answerAll(3);
    she.touchNamed("None of these");
    she.touchNamed("Save");
    REQUIRE(she.program->home().diary().history().size() == 1);
    she.touch(QStringLiteral("Close"));

    // The next evening the phone goes out in the middle, and she goes on where she was.
    she.patient.goTo(1, 20);
    she.program->openToday();
    screens::settle(*she.program->window());
    she.touch(QStringLiteral("Write down how it is"));
    she.touch(markName(Symptom::swelling, Side::right, 2));
    she.program.reset();
    she.program = she.patient.program(QStringLiteral("en"));
    open(*she.program);
    she.type(QStringLiteral("Passphrase"), passphrase);
    she.touch(QStringLiteral("Open my diary"));
    she.touch(QStringLiteral("Go on with your entry"));
    she.answerAll(2);
    she.touchNamed("None of these");
    she.touchNamed("Save");
    REQUIRE(she.program->home().diary().history().size() == 2);
    she.touch(QStringLiteral("Close"));

    // On the third day one sign is true that can wait: what to do stands on the day's page until it is read.
    she.patient.goTo(2, 20);
    she.program->openToday();
    screens::settle(*she.program->window());
    she.touch(QStringLiteral("Write down how it is"));
    she.answerAll(1);
    she.touch(QStringLiteral("I can see or feel a thread. The skin is calm."));
    she.touchNamed("Only what I ticked");
    she.touchNamed("Save");
    REQUIRE(she.program->home().diary().history().size() == 3);
    REQUIRE(she.program->page() == Page::today);
    she.touch(QStringLiteral("Close"));
    CHECK_FALSE(she.program->today()->adviceTitle().isEmpty());
    she.touchNamed("I have read this");
    CHECK(she.program->today()->adviceTitle().isEmpty());
    she.touchNamed("What I wrote");
    CHECK(she.program->history()->entries().size() == 3);
    std::printf("from the first page to the third entry and back to it: %d touches, %d letters typed\n", she.touches, she.keys);
    CHECK(ear.take() == "");
}
