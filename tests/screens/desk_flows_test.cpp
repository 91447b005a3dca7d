// The desk used from end to end on its real pages: with a mouse, with a keyboard, and with a screen reader.
#include "tests/screens/complaints.h"
#include "tests/screens/demo_clinic.h"
#include "tests/screens/hands.h"
#include "tests/screens/other_protocol.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QCoreApplication>
#include <QSignalSpy>
#include <QTest>

#include <algorithm>
#include <iostream>

using namespace ebbline;
using screens::hands;
using screens::typeKeys;
using Page = app::DeskProgram::Page;

namespace {

constexpr QSize desk(1280, 900);

/// What the pages say in the language of the program.
QString said(const char* context, const char* words) { return QCoreApplication::translate(context, words); }

constexpr int mouse = 4, spaceKey = 1, reader = 3;  // screens::hands()

/// Counts what is done by hand, and does it.
struct Counted {
    screens::Hands act;
    int acts = 0;

    bool use(const QString& name)
    {
        ++acts;
        return act.use(name);
    }
    bool fill(const QString& name, const QString& text)
    {
        ++acts;
        return act.fill(name, text);
    }
};

/// A line on the face chart, in its own frame: pressed, drawn and let go, or with arrows and Space.
void drawLine(QQuickWindow& window, int kind, QPointF entry, QPointF end)
{
    auto* chart = window.findChild<QQuickItem*>(QStringLiteral("faceChart"));
    REQUIRE(chart != nullptr);
    const double scale = std::min(chart->width() / recovery::chartWidth, chart->height() / recovery::chartHeight);
    const QPointF corner((chart->width() - recovery::chartWidth * scale) / 2, (chart->height() - recovery::chartHeight * scale) / 2);
    const auto at = [&](const QPointF& point) { return chart->mapToScene(corner + point * scale).toPoint(); };
    if (kind == mouse) {
        QTest::mousePress(&window, Qt::LeftButton, Qt::NoModifier, at(entry));
        QTest::mouseMove(&window, at((entry + end) / 2));
        QTest::mouseMove(&window, at(end));
        QTest::mouseRelease(&window, Qt::LeftButton, Qt::NoModifier, at(end));
    } else {
        chart->forceActiveFocus(Qt::TabFocusReason);
        const auto go = [&](int times, Qt::Key key) {
            for (int i = 0; i < times; ++i)
                QTest::keyClick(&window, key);
        };
        // Off the midline, where a thread is its own twin.
        go(3, Qt::Key_Right);
        QTest::keyClick(&window, Qt::Key_Space);
        go(10, Qt::Key_Down);
        QTest::keyClick(&window, Qt::Key_Space);
        go(10, Qt::Key_Up);
    }
    screens::settle(window);
}

void open(app::DeskProgram& program)
{
    REQUIRE(program.show(desk));
    auto& window = *program.window();
    window.requestActivate();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    screens::settle(window);
}

}  // namespace

TEST_CASE("a scanner that types the mark after the lot is heard: the lot ends where it ends", "[desk][flows][pack]")
{
    screens::Ear ear;
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    open(*program);
    program->openTreatment();
    auto& editor = *program->treatment();
    editor.registerPatient(QStringLiteral("Lea Fontaine"), QStringLiteral("+00 555 0150"), 1);
    editor.setStep(1);
    editor.draw({296, 170}, {252, 262});
    auto& window = *program->window();
    screens::settle(window);

    REQUIRE(screens::click(window, QStringLiteral("Code on the pack: scan it, or type it with its brackets")));
    typeKeys(window, QStringLiteral("10TH-4417"));
    QKeyEvent mark(QEvent::KeyPress, Qt::Key_BracketRight, Qt::ControlModifier, QStringLiteral("\u001d"));
    QCoreApplication::sendEvent(&window, &mark);
    typeKeys(window, QStringLiteral("21A17"));
    QTest::keyClick(&window, Qt::Key_Return);
    screens::settle(window);

    CHECK(editor.packProblem().isEmpty());
    CHECK(editor.lot() == QLatin1String("TH-4417"));
    CHECK(ear.take() == "");
}

TEST_CASE("each single key of the queue does what the page of keys says", "[desk][flows][keys]")
{
    screens::Ear ear;
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    open(*program);
    auto& window = *program->window();
    const auto key = [&](Qt::Key which) {
        QTest::keyClick(&window, which);
        screens::settle(window);
    };
    const auto backToQueue = [&] {
        program->openQueue();
        screens::settle(window);
        auto* queue = window.findChild<QQuickItem*>(QStringLiteral("queue"));
        REQUIRE(queue != nullptr);
        queue->forceActiveFocus();
        return queue;
    };

    auto* queue = backToQueue();
    key(Qt::Key_C);
    CHECK(program->call()->isShown());
    CHECK_FALSE(program->call()->asksVisit());
    key(Qt::Key_Escape);
    CHECK_FALSE(program->call()->isShown());

    queue = backToQueue();
    key(Qt::Key_F);
    CHECK(program->call()->asksVisit());
    key(Qt::Key_Escape);
    CHECK_FALSE(program->call()->isShown());

    queue = backToQueue();
    const int from = queue->property("currentIndex").toInt();
    const int next = program->queue()->nextUnopened(from);
    REQUIRE(next >= 0);
    key(Qt::Key_N);
    CHECK(queue->property("currentIndex").toInt() == next);

    program->queue()->setUrgencyFilter(1);
    const int few = program->queue()->rows()->rowCount();
    backToQueue();
    key(Qt::Key_A);
    CHECK(program->queue()->rows()->rowCount() > few);

    backToQueue();
    key(Qt::Key_H);
    CHECK(program->page() == Page::handOver);

    queue = backToQueue();
    const int row = queue->property("currentIndex").toInt();
    const auto entry = program->queue()->entryAt(row);
    key(Qt::Key_E);
    CHECK(program->page() == Page::course);
    CHECK(program->course()->key() == program->queue()->rows()->keyAt(row));
    CHECK_FALSE(entry.isEmpty());

    backToQueue();
    key(Qt::Key_Slash);
    typeKeys(window, QStringLiteral("tomas"));
    CHECK(program->queue()->search() == QLatin1String("tomas"));
    CHECK(ear.take() == "");
}

TEST_CASE("a treatment of six threads is written down and its phone linked, with each kind of hands", "[desk][flows][treatment]")
{
    const int kind = GENERATE(mouse, spaceKey, reader);
    const char* language = GENERATE("en", "de", "ar");
    CAPTURE(kind, language);
    screens::Ear ear;
    screens::DemoClinic clinic;
    auto program = clinic.program(QString::fromLatin1(language), clinic.hub());
    open(*program);
    auto& window = *program->window();
    Counted hand{hands(kind, window)};
    auto& editor = *program->treatment();
    QSignalSpy recorded(&editor, &deskapp::TreatmentEditor::recorded);

    REQUIRE(hand.use(said("Rail", "New treatment")));
    REQUIRE(hand.fill(said("TreatmentPatient", "Name"), QStringLiteral("Lea Fontaine")));
    REQUIRE(hand.fill(said("TreatmentPatient", "Phone number, to call the patient"), QStringLiteral("+00 555 0150")));
    REQUIRE(hand.use(said("TreatmentPatient", "Register")));
    const auto next = [&] { return hand.use(said("TreatmentPage", "Next: %1").arg(editor.steps().at(editor.step() + 1))); };
    REQUIRE(next());
    for (const double across : {296.0, 280.0, 264.0}) {
        drawLine(window, kind, {across, 170}, {across - 40, 262});
        ++hand.acts;
    }
    REQUIRE(editor.placements()->rowCount() == 3);
    REQUIRE(hand.use(said("FacePanel", "Mirror all")));
    REQUIRE(editor.placements()->rowCount() == 6);
    REQUIRE(next());
    REQUIRE(next());
    REQUIRE(hand.use(said("TreatmentCare", "Cautions explained: what is usual, when to call, what to spare")));
    REQUIRE(hand.use(said("TreatmentCare", "Consent to the treatment given")));
    REQUIRE(hand.use(said("TreatmentPage", "Record the treatment")));
    REQUIRE(program->page() == Page::pairing);
    REQUIRE(recorded.size() == 1);
    std::cout << "six threads written down in " << hand.acts << " acts, hands " << kind << '\n';
    CHECK(hand.acts <= 16);

    const auto course = deskapp::courseFromKey(recorded[0][0].toString());
    REQUIRE(hand.use(said("PairingPage", "Make a code")));
    clinic.bringPhone(*program);
    screens::settle(window);
    REQUIRE(hand.use(said("PairingPage", "Both show the same number")));
    CHECK(program->workplace().state().courses.at(course).link.has_value());
    CHECK(program->workplace().state().courses.at(course).treatment->treatment.placements.size() == 6);
    CHECK(ear.take() == "");
}

TEST_CASE("undo and redo stand on every step of a treatment, and what is begun for another patient waits, with each kind of hands", "[desk][flows][treatment][undo]")
{
    const int kind = GENERATE(mouse, spaceKey, reader);
    CAPTURE(kind);
    screens::Ear ear;
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    open(*program);
    program->openTreatment();
    auto& editor = *program->treatment();
    auto& window = *program->window();
    const auto hand = hands(kind, window);
    REQUIRE(editor.registerPatient(QStringLiteral("Lea Fontaine"), QStringLiteral("+00 555 0150"), 1));
    const auto first = editor.patientKey();
    for (const double across : {296.0, 280.0, 264.0})
        editor.draw({across, 170}, {across - 40, 262});
    editor.undo();
    for (int step = 0; step < 4; ++step) {
        CAPTURE(step);
        editor.setStep(step);
        screens::settle(window);
        REQUIRE(hand.use(said("TreatmentPage", "Undo")));
        CHECK(editor.placements()->rowCount() == 1);
        REQUIRE(hand.use(said("TreatmentPage", "Redo")));
        CHECK(editor.placements()->rowCount() == 2);
        QTest::keySequence(&window, QKeySequence(QKeySequence::Undo));
        CHECK(editor.placements()->rowCount() == 1);
        QTest::keySequence(&window, QKeySequence(QKeySequence::Redo));
        CHECK(editor.placements()->rowCount() == 2);
    }

    REQUIRE(hand.use(said("TreatmentPage", "Start over")));
    CHECK(editor.placements()->rowCount() == 0);
    REQUIRE(hand.use(said("TreatmentPage", "Undo")));
    CHECK(editor.placements()->rowCount() == 2);

    REQUIRE(editor.registerPatient(QStringLiteral("Mira Solberg"), QStringLiteral("+00 555 0151"), 1));
    CHECK(editor.placements()->rowCount() == 0);
    editor.setStep(0);
    screens::settle(window);
    REQUIRE(hand.use(QStringLiteral("Lea Fontaine")));
    CHECK(editor.patientKey() == first);
    CHECK(editor.placements()->rowCount() == 2);
    CHECK(ear.take() == "");
}

TEST_CASE("a call is handled, a follow-up recorded and its sheet opened, with each kind of hands", "[desk][flows][followup]")
{
    const int kind = GENERATE(mouse, spaceKey, reader);
    const char* language = GENERATE("en", "de", "ar");
    CAPTURE(kind, language);
    screens::Ear ear;
    screens::DemoClinic clinic;
    auto program = clinic.program(QString::fromLatin1(language));
    open(*program);
    auto& window = *program->window();
    const auto hand = hands(kind, window);

    const auto called = deskapp::courseFromKey(program->queue()->rows()->keyAt(0));
    REQUIRE(hand.use(said("QueueActs", "Call")));
    REQUIRE(program->call()->isShown());
    REQUIRE(hand.fill(said("CallPanel", "Note, or message to the patient"), QStringLiteral("Breathes well.")));
    REQUIRE(hand.use(said("CallPanel", "Spoke with her")));
    const auto view = program->workplace().desk().course(called);
    REQUIRE(view);
    CHECK(view->state->acts.back().act == records::Act::called);
    CHECK(view->state->acts.back().note == "Breathes well.");

    program->openCourse(deskapp::keyOf(clinic.course("Aiko Brandvold")));
    screens::settle(window);
    auto& editor = *program->followUp();
    const auto choose = [&](const char* label, const QString& option) {
        return hand.use(said("FollowUpPage", label) + QStringLiteral(": ") + option);
    };
    REQUIRE(hand.use(said("CoursePage", "Follow-up")));
    REQUIRE(choose("Against before the treatment", editor.changeNames().at(1)));
    REQUIRE(choose("How satisfied is the patient?", editor.satisfactionNames().at(4)));
    REQUIRE(choose("An uncomplicated course?", said("FollowUpPage", "Yes")));
    REQUIRE(hand.use(said("FollowUpPage", "Sheet")));
    CHECK(program->page() == Page::sheet);
    program->openFollowUp(deskapp::keyOf(clinic.course("Aiko Brandvold")));
    screens::settle(window);
    REQUIRE(hand.use(said("FollowUpPage", "Record and close the course")));
    CHECK(program->workplace().desk().course(clinic.course("Aiko Brandvold"))->state->followUp.has_value());
    CHECK(ear.take() == "");
}

TEST_CASE("on the page of a course a call opens its panel and notes nothing by itself, with each kind of hands", "[desk][flows][call][safety]")
{
    const int kind = GENERATE(mouse, spaceKey, reader);
    CAPTURE(kind);
    screens::Ear ear;
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    open(*program);
    auto& window = *program->window();
    const auto hand = hands(kind, window);
    const auto calls = [&](const char* patient) {
        const auto view = program->workplace().desk().course(clinic.course(patient));
        return view->state->calls.size()
               + static_cast<std::size_t>(std::ranges::count(view->state->acts, records::Act::called, &records::FindingActed::act));
    };
    program->openCourse(deskapp::keyOf(clinic.course("Odile Brandt")));
    screens::settle(window);
    REQUIRE(hand.use(said("FindingCard", "Call")));
    CHECK(program->call()->isShown());
    CHECK(calls("Odile Brandt") == 0);
    REQUIRE(hand.use(said("CallPanel", "Not reached")));
    CHECK(calls("Odile Brandt") == 1);

    program->openCourse(deskapp::keyOf(clinic.course("Aiko Brandvold")));
    screens::settle(window);
    REQUIRE(hand.use(said("FindingPanel", "Note a call")));
    REQUIRE(program->call()->isShown());
    REQUIRE(hand.use(said("CallPanel", "She called us")));
    CHECK_FALSE(program->call()->isShown());
    CHECK(calls("Aiko Brandvold") == 1);
    CHECK(ear.take() == "");
}

TEST_CASE("a protocol from a file is made a draft, rehearsed and signed without its range, with each kind of hands", "[desk][flows][protocol]")
{
    const int kind = GENERATE(mouse, spaceKey, reader);
    const char* language = GENERATE("en", "ar");
    CAPTURE(kind, language);
    screens::Ear ear;
    screens::DemoClinic clinic;
    auto program = clinic.program(QString::fromLatin1(language));
    open(*program);
    auto& window = *program->window();
    const auto hand = hands(kind, window);
    auto& editor = *program->protocolEditor();
    const auto inUse = [&] { return program->workplace().desk().protocols().front(); };

    program->openProtocols();
    REQUIRE(program->protocolTaking()->read(
        screens::protocolFileOf(clinic.folder().parent_path(), exchange::protocolText(screens::otherProtocol()))));
    screens::settle(window);
    REQUIRE(hand.use(said("ProtocolFilePage", "Take its care plan as well")));
    REQUIRE(program->protocolTaking()->withPlan());
    REQUIRE(hand.use(said("ProtocolFilePage", "No course of this clinic is behind it: check it on all of ours")));
    REQUIRE(program->protocolTaking()->ofOthers());
    REQUIRE(hand.use(said("ProtocolFilePage", "Make a draft of it")));
    screens::settle(window);
    REQUIRE(program->page() == Page::protocolEdit);
    CHECK(inUse().carePlan.followUpDay == 21);

    REQUIRE(hand.use(said("ProtocolSigning", "Keep the usual range in use")));
    REQUIRE_FALSE(editor.bringsRange());
    REQUIRE(hand.use(said("ProtocolSigning", "Rehearse")));
    while (editor.isRehearsing())
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 50);
    screens::settle(window);
    REQUIRE(hand.use(said("ProtocolSigning", "Sign it")));
    CHECK(inUse().carePlan.followUpDay == 24);
    CHECK(inUse().thresholds.levelGuard == 4);
    CHECK(ear.take() == "");
}
