// Drawing on the chart with a pointer and with keys alone.
#include "app/face/face_chart.h"

#include <catch2/catch_test_macros.hpp>

#include <QGuiApplication>
#include <QPointingDevice>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickWindow>
#include <QSignalSpy>
#include <QTest>

using namespace ebbline;
using namespace ebbline::face;

namespace {

/// A window of the frame's own size, so that pixels are units of the frame.
struct Stage {
    QQuickWindow window;
    FaceChart chart{window.contentItem()};

    Stage()
    {
        window.resize(400, 560);
        chart.setSize(QSizeF(400, 560));
        chart.setDrawable(true);
        window.show();
        window.requestActivate();
        REQUIRE(QTest::qWaitForWindowActive(&window));
        chart.forceActiveFocus();
    }

    void drag(const QPoint& from, const QPoint& to)
    {
        QTest::mousePress(&window, Qt::LeftButton, {}, from);
        QTest::mouseMove(&window, (from + to) / 2);
        QTest::mouseMove(&window, to);
        QTest::mouseRelease(&window, Qt::LeftButton, {}, to);
    }

    void key(int key, Qt::KeyboardModifiers modifiers = {}) { QTest::keyClick(&window, static_cast<Qt::Key>(key), modifiers); }
};

Track track(int number, QPointF entry, QPointF end)
{
    Track made;
    made.number = number;
    made.entry = entry;
    made.end = end;
    return made;
}

}  // namespace

TEST_CASE("pressing at the entry point and letting go at the end draws a thread", "[face][chart]")
{
    Stage stage;
    QSignalSpy drawn(&stage.chart, &FaceChart::drawn);

    stage.drag({290, 170}, {250, 260});

    REQUIRE(drawn.count() == 1);
    CHECK(drawn[0][0].toPointF() == QPointF(290, 170));
    CHECK(drawn[0][1].toPointF() == QPointF(250, 260));
}

TEST_CASE("a thread drawn with a finger, or with a mouse, does not scroll the page that holds the chart", "[face][chart][touch]")
{
    QQmlEngine engine;
    QQmlComponent component(&engine);
    component.setData("import QtQuick\nFlickable { width: 400; height: 300; contentHeight: 900 }", QUrl());
    const std::unique_ptr<QObject> made(component.create());
    auto* page = qobject_cast<QQuickItem*>(made.get());
    REQUIRE(page != nullptr);
    Stage stage;
    page->setParentItem(stage.window.contentItem());
    stage.chart.setParentItem(page->property("contentItem").value<QQuickItem*>());
    QSignalSpy drawn(&stage.chart, &FaceChart::drawn);

    SECTION("by finger")
    {
        static QPointingDevice* const screen = QTest::createTouchDevice();
        QTest::touchEvent(&stage.window, screen).press(1, QPoint(290, 270));
        for (int y = 260; y > 90; y -= 10) {
            QTest::touchEvent(&stage.window, screen).move(1, QPoint(270, y));
        }
        QTest::touchEvent(&stage.window, screen).release(1, QPoint(270, 90));
    }
    SECTION("by mouse")
    {
        QTest::mousePress(&stage.window, Qt::LeftButton, {}, {290, 270});
        for (int y = 260; y > 90; y -= 10) {
            QTest::mouseMove(&stage.window, {270, y});
        }
        QTest::mouseRelease(&stage.window, Qt::LeftButton, {}, {270, 90});
    }

    CHECK(page->property("contentY").toReal() == 0);
    REQUIRE(drawn.count() == 1);
    CHECK(drawn[0][0].toPointF() == QPointF(290, 270));
    CHECK(drawn[0][1].toPointF() == QPointF(270, 90));
    stage.chart.setParentItem(nullptr);
}

TEST_CASE("a click draws nothing: it chooses the thread under it, or none", "[face][chart]")
{
    Stage stage;
    stage.chart.setTracks({track(1, {290, 170}, {250, 260})});
    QSignalSpy drawn(&stage.chart, &FaceChart::drawn);
    QSignalSpy chosen(&stage.chart, &FaceChart::chosen);

    QTest::mouseClick(&stage.window, Qt::LeftButton, {}, {270, 215});
    QTest::mouseClick(&stage.window, Qt::LeftButton, {}, {100, 500});

    CHECK(drawn.isEmpty());
    REQUIRE(chosen.count() == 2);
    CHECK(chosen[0][0].toInt() == 1);
    CHECK(chosen[1][0].toInt() == 0);
}

TEST_CASE("dragging the end of the chosen thread moves it and leaves the entry point", "[face][chart]")
{
    Stage stage;
    stage.chart.setTracks({track(1, {290, 170}, {250, 260})});
    stage.chart.setSelected(1);
    QSignalSpy moved(&stage.chart, &FaceChart::moved);

    stage.drag({250, 260}, {240, 290});

    REQUIRE(moved.count() == 1);
    CHECK(moved[0][1].toPointF() == QPointF(290, 170));
    CHECK(moved[0][2].toPointF() == QPointF(240, 290));
}

TEST_CASE("a thread can be drawn with keys alone", "[face][chart][keys]")
{
    Stage stage;
    QSignalSpy drawn(&stage.chart, &FaceChart::drawn);

    stage.key(Qt::Key_Up);
    stage.key(Qt::Key_Space);
    for (int i = 0; i < 5; ++i) {
        stage.key(Qt::Key_Right);
    }
    stage.key(Qt::Key_Left, Qt::ShiftModifier);
    stage.key(Qt::Key_Return);

    REQUIRE(drawn.count() == 1);
    CHECK(drawn[0][0].toPointF() == QPointF(200, 272));
    CHECK(drawn[0][1].toPointF() == QPointF(239, 272));
}

TEST_CASE("Escape forgets the entry point set with keys", "[face][chart][keys]")
{
    Stage stage;
    QSignalSpy drawn(&stage.chart, &FaceChart::drawn);

    stage.key(Qt::Key_Space);
    stage.key(Qt::Key_Escape);
    stage.key(Qt::Key_Right);
    stage.key(Qt::Key_Right);
    stage.key(Qt::Key_Space);

    CHECK(drawn.isEmpty());
}

TEST_CASE("keys alone choose a thread and carry its entry point or its end somewhere else", "[face][chart][keys]")
{
    Stage stage;
    auto elsewhere = track(2, {100, 100}, {120, 200});
    elsewhere.view = static_cast<int>(recovery::ChartView::leftOblique);
    stage.chart.setTracks({track(1, {290, 170}, {250, 260}), elsewhere, track(3, {110, 170}, {150, 260})});
    QObject::connect(&stage.chart, &FaceChart::chosen, &stage.chart, &FaceChart::setSelected);
    QSignalSpy moved(&stage.chart, &FaceChart::moved);
    QSignalSpy drawn(&stage.chart, &FaceChart::drawn);

    SECTION("the threads of this view one after the other, and round")
    {
        QList<int> visited;
        for (const int key : {Qt::Key_PageDown, Qt::Key_PageDown, Qt::Key_PageDown, Qt::Key_PageUp}) {
            stage.key(key);
            visited << stage.chart.selected();
        }
        CHECK(visited == QList<int>{1, 3, 1, 3});
    }
    SECTION("the entry point; the end stays")
    {
        stage.key(Qt::Key_PageDown);
        stage.key(Qt::Key_Home);
        CHECK(stage.chart.cursorText().contains(QStringLiteral("Entry point of thread 1 taken")));
        stage.key(Qt::Key_Right);
        stage.key(Qt::Key_Up, Qt::ShiftModifier);
        stage.key(Qt::Key_Space);
        REQUIRE(moved.count() == 1);
        CHECK(moved[0][0].toInt() == 1);
        CHECK(moved[0][1].toPointF() == QPointF(298, 169));
        CHECK(moved[0][2].toPointF() == QPointF(250, 260));
    }
    SECTION("the end; the entry point stays")
    {
        stage.key(Qt::Key_PageUp);
        stage.key(Qt::Key_End);
        CHECK(stage.chart.cursorText().contains(QStringLiteral("End of thread 3 taken")));
        stage.key(Qt::Key_Down);
        stage.key(Qt::Key_Return);
        REQUIRE(moved.count() == 1);
        CHECK(moved[0][1].toPointF() == QPointF(110, 170));
        CHECK(moved[0][2].toPointF() == QPointF(150, 268));
    }
    SECTION("Escape leaves it where it was")
    {
        stage.key(Qt::Key_PageDown);
        stage.key(Qt::Key_End);
        stage.key(Qt::Key_Down);
        stage.key(Qt::Key_Escape);
        stage.key(Qt::Key_Space);
        CHECK(moved.isEmpty());
        CHECK(stage.chart.cursorText().contains(QStringLiteral("Entry point set")));
    }
    SECTION("nothing is taken while no thread is chosen")
    {
        stage.key(Qt::Key_Home);
        stage.key(Qt::Key_Space);
        CHECK(stage.chart.cursorText().contains(QStringLiteral("Entry point set")));
    }
    CHECK(drawn.isEmpty());
}

TEST_CASE("an end is not put down on its own entry point", "[face][chart][keys]")
{
    Stage stage;
    stage.chart.setTracks({track(1, {200, 200}, {200, 240})});
    stage.chart.setSelected(1);
    QSignalSpy moved(&stage.chart, &FaceChart::moved);

    stage.key(Qt::Key_End);
    for (int i = 0; i < 5; ++i) {
        stage.key(Qt::Key_Up);
    }
    stage.key(Qt::Key_Space);
    CHECK(moved.isEmpty());
    CHECK(stage.chart.cursorText().contains(QStringLiteral("End of thread 1 taken")));
    stage.key(Qt::Key_Up);
    stage.key(Qt::Key_Space);
    REQUIRE(moved.count() == 1);
    CHECK(moved[0][2].toPointF() == QPointF(200, 192));
}

TEST_CASE("the cursor never leaves the frame", "[face][chart][keys]")
{
    Stage stage;
    QSignalSpy drawn(&stage.chart, &FaceChart::drawn);

    stage.key(Qt::Key_Space);
    for (int i = 0; i < 100; ++i) {
        stage.key(Qt::Key_Right);
    }
    stage.key(Qt::Key_Space);

    REQUIRE(drawn.count() == 1);
    CHECK(drawn[0][1].toPointF().x() == recovery::chartWidth);
}

TEST_CASE("the face is not mirrored where text runs right to left", "[face][chart]")
{
    Stage stage;
    stage.chart.setTracks({track(1, {290, 170}, {250, 260})});
    stage.chart.setProperty("leftColor", QColor(Qt::red));
    stage.chart.setProperty("paper", QColor(Qt::white));
    const auto redOnTheRight = [&] {
        const auto picture = stage.window.grabWindow();
        int left = 0;
        int right = 0;
        for (int y = 0; y < picture.height(); ++y) {
            for (int x = 0; x < picture.width(); ++x) {
                const QColor pixel = picture.pixelColor(x, y);
                if (pixel.red() > 200 && pixel.green() < 60) {
                    ++(x < picture.width() / 2 ? left : right);
                }
            }
        }
        return right > 50 && left == 0;
    };

    CHECK(redOnTheRight());
    QGuiApplication::setLayoutDirection(Qt::RightToLeft);
    stage.chart.update();
    CHECK(redOnTheRight());
    QGuiApplication::setLayoutDirection(Qt::LeftToRight);
}
