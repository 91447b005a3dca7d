// What every page is held to is seen to fail: each check, on a page that has this one fault, and on one that has none.
#include "tests/screens/complaints.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>

#include <QQmlComponent>
#include <QQmlEngine>

#include <memory>

using namespace ebbline;
using screens::listed;

namespace {

constexpr qreal leastTarget = 48;
constexpr int side = 300;  ///< px of the window, either way

/// These items, in a window of their own.
class Page {
public:
    explicit Page(const QByteArray& items, bool mirrored = false)
    {
        QQmlComponent component(&m_engine);
        component.setData("import QtQuick\nimport QtQuick.Controls.Basic\nItem { width: 300; height: 300; LayoutMirroring.enabled: "
                              + QByteArray(mirrored ? "true" : "false") + "; LayoutMirroring.childrenInherit: true\n" + items + "}",
                          QUrl());
        m_window.resize(side, side);
        m_page.reset(qobject_cast<QQuickItem*>(component.create()));
        CAPTURE(component.errorString().toStdString());
        REQUIRE(m_page);
        m_page->setParentItem(m_window.contentItem());
        m_window.show();
        screens::settle(m_window);
    }
    QQuickWindow& window() { return m_window; }

private:
    QQmlEngine m_engine;
    QQuickWindow m_window;
    std::unique_ptr<QQuickItem> m_page;
};

constexpr auto title = R"(
    Text { x: 10; y: 10; text: "A page"; font.pixelSize: 20; color: "black"; Accessible.role: Accessible.Heading; Accessible.name: text }
)";
constexpr auto control = R"(
    Button { x: 10; y: 60; width: 120; height: 48; text: "one"; Accessible.role: Accessible.Button; Accessible.name: text; Accessible.onPressAction: clicked() }
)";

using Check = QStringList (*)(QQuickWindow&);

/// What the check says of the title, the control and `items`.
std::string said(Check check, const QByteArray& items)
{
    Page page(QByteArray(title) + control + items);
    return listed(check(page.window()));
}

bool complains(Check check, const QByteArray& items, const std::string& of)
{
    const auto faults = said(check, items);
    CAPTURE(items.toStdString(), faults);
    CHECK(faults.find(of) != std::string::npos);
    return !faults.empty();
}

QStringList smallTargets(QQuickWindow& window) { return screens::smallTargets(window, leastTarget); }
QStringList emptyPage(QQuickWindow& window) { return screens::emptyPage(window); }

}  // namespace

TEST_CASE("a sound page is complained of by no check", "[screens]")
{
    Page page(QByteArray(title) + control);
    for (const Check check : {Check(emptyPage), Check(screens::withoutName), Check(screens::withoutAction), Check(smallTargets), Check(screens::cutOff),
                              Check(screens::overEdge), Check(screens::overlapping), Check(screens::brokenWords), Check(screens::brokenActs), Check(screens::faint), Check(screens::outOfOrder)})
        CHECK(listed(check(page.window())) == "");
}

TEST_CASE("a page that does not load, without its title, or with nothing to use is noticed", "[screens]")
{
    const auto faults = [](const QByteArray& items, const QString& wanted = {}) {
        Page page(items);
        return listed(screens::emptyPage(page.window(), wanted));
    };
    CHECK(faults("") == "no title: \"\"\nnothing to use");
    CHECK(faults(title) == "nothing to use");
    CHECK(faults(control) == "no title: \"\"");
    CHECK(faults(QByteArray(title) + control, QStringLiteral("A page")) == "");
    CHECK(faults(QByteArray(title) + control, QStringLiteral("Another")) == "no title: \"Another\"");
    // The window's own title and controls stand in for none of the page.
    CHECK(faults(QByteArray(title) + control + "Loader { objectName: \"page\"; width: 300; height: 300 }") == "no page: it does not load");
    CHECK(faults(QByteArray(title) + control + "Loader { objectName: \"page\"; width: 300; height: 300; sourceComponent: Item {} }", QStringLiteral("A page"))
          == "nothing to use");
    // Where scrolling brings it, and where it does not.
    const auto scrolled = [](int y) {
        return QByteArray(title) + "Flickable { y: 50; width: 300; height: 100; contentHeight: 400; clip: true\n Button { y: " + QByteArray::number(y)
               + "; width: 100; height: 48; text: \"one\" } }";
    };
    CHECK(faults(scrolled(300)) == "");
    CHECK(faults(scrolled(500)) == "nothing to use");
}

TEST_CASE("a figure without a name is noticed", "[screens]")
{
    CHECK(complains(screens::withoutName, "Rectangle { y: 150; width: 50; height: 50; Accessible.role: Accessible.Graphic }", "no name"));
}

TEST_CASE("a control that a screen reader cannot press is noticed", "[screens]")
{
    CHECK(complains(screens::withoutAction, R"(ComboBox { y: 150; width: 100; height: 48; model: ["two"]; Accessible.name: currentText })",
                    "can not be pressed"));
}

TEST_CASE("a button that is too small for a thumb is noticed", "[screens]")
{
    CHECK(complains(smallTargets, R"(Button { y: 150; width: 47; height: 48; text: "a" })", "47 x 48"));
    CHECK(complains(smallTargets, R"(Button { y: 150; width: 48; height: 47; text: "a" })", "48 x 47"));
}

TEST_CASE("words that are cut off, or hidden where no scrolling brings them, are noticed", "[screens]")
{
    CHECK(complains(screens::cutOff, R"(Text { y: 150; width: 30; text: "wider than its room" })", "in 30 x"));
    CHECK(complains(screens::cutOff, R"(Text { y: 150; width: 30; text: "أوسع من مكانه" })", "in 30 x"));
    CHECK(complains(screens::cutOff, R"(Text { y: 150; width: 30; elide: Text.ElideRight; text: "wider than its room" })", "wider than its room"));
    CHECK(complains(screens::cutOff, R"(Text { x: 280; y: 150; text: "beside the window" })", "sticks out to a side"));
    CHECK(complains(screens::cutOff, R"(Text { y: 295; text: "below the window" })", "hidden behind an edge"));
    const auto scrolled = [](const QByteArray& items) {
        return "Flickable { y: 120; width: 300; height: 100; contentHeight: 400; clip: true\n" + items + "}";
    };
    CHECK(said(screens::cutOff, scrolled("Text { y: 350; text: \"further down\" }")) == "");
    CHECK(complains(screens::cutOff, scrolled("Text { y: 450; text: \"below the end\" }"), "hidden behind an edge"));
    CHECK(complains(screens::cutOff, scrolled("Text { y: -50; text: \"above the beginning\" }"), "hidden behind an edge"));
    CHECK(complains(screens::cutOff, scrolled("Item { y: 10; width: 300; height: 20; clip: true\n Text { y: 25; text: \"behind a frame\" } }"), "hidden behind an edge"));
    CHECK(said(screens::cutOff, scrolled("Flickable { y: 250; width: 300; height: 40; contentWidth: 600; clip: true\n Text { x: 400; text: \"further on\" } }")) == "");
}

TEST_CASE("a button that sticks out of the window is noticed", "[screens]")
{
    CHECK(complains(screens::overEdge, R"(Button { x: 250; y: 150; width: 100; height: 48; text: "two" })", "from 250 to 350"));
    CHECK(complains(screens::overEdge, R"(Button { x: -50; y: 150; width: 100; height: 48; text: "two" })", "from -50 to 50"));
}

TEST_CASE("what lies on something else is noticed", "[screens]")
{
    CHECK(complains(screens::overlapping, R"(Button { x: 60; y: 80; width: 120; height: 48; text: "two" })", "\"one\" and "));
    CHECK(complains(screens::overlapping, R"(Text { x: 20; y: 12; text: "another title" })", "\"A page\" and "));
}

TEST_CASE("a word that had to be broken is noticed", "[screens]")
{
    CHECK(complains(screens::brokenWords, R"(Text { y: 150; width: 60; wrapMode: Text.WrapAnywhere; font.pixelSize: 16; text: "unpronounceably" })",
                    "\"unpronounceably\" is "));
    CHECK(complains(screens::brokenWords, R"(Text { y: 150; width: 60; wrapMode: Text.WrapAnywhere; font.pixelSize: 16; text: "wor\u2028ds" })",
                    "one word on several lines"));
    CHECK(complains(screens::brokenActs, R"(Button { y: 150; width: 60; contentItem: Text { wrapMode: Text.WrapAnywhere; font.pixelSize: 16; text: "unpronounceably" } })",
                    "\"unpronounceably\" is "));
    CHECK(screens::brokenActs(Page(R"(Text { y: 150; width: 60; wrapMode: Text.WrapAnywhere; font.pixelSize: 16; text: "unpronounceably" })").window()).isEmpty());
}

TEST_CASE("words that are too faint to read are noticed", "[screens]")
{
    CHECK(complains(screens::faint, R"(Text { y: 150; font.pixelSize: 20; color: "#bbbbbb"; text: "pale" })", "#bbbbbb on #ffffff"));
}

TEST_CASE("the check of the keyboard's order sees what is read later and comes first, in either direction", "[screens][keys]")
{
    const auto faultsOf = [](const char* buttons, bool mirrored) {
        Page page(buttons, mirrored);
        return screens::outOfOrder(page.window()).size();
    };
    constexpr auto down = "Button { text: \"one\"; y: 0 } Button { text: \"two\"; y: 100 }";
    constexpr auto up = "Button { text: \"one\"; y: 100 } Button { text: \"two\"; y: 0 }";
    constexpr auto across = "Button { text: \"one\"; x: 0; y: 6; width: 90 } Button { text: \"two\"; x: 100; width: 90 }";
    constexpr auto backwards = "Button { text: \"one\"; x: 100; width: 90 } Button { text: \"two\"; x: 0; y: 6; width: 90 }";
    for (const bool mirrored : {false, true}) {
        CHECK(faultsOf(down, mirrored) == 0);
        CHECK(faultsOf(up, mirrored) == 1);
    }
    CHECK(faultsOf(across, false) == 0);
    CHECK(faultsOf(across, true) == 1);
    CHECK(faultsOf(backwards, false) == 1);
    CHECK(faultsOf(backwards, true) == 0);
}
