// The colours of the theme against what they stand on, in each look.
//
// Contrast ratio (L1 + 0.05) / (L2 + 0.05) and relative luminance: WCAG 2.2, W3C Recommendation 2023,
// glossary; at least 4.5 for text (1.4.3) and 3 for marks and edges that carry meaning (1.4.11). The
// pairs are those of the pages; what is painted there is measured again by the screens tests.
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QColor>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QtPlugin>

Q_IMPORT_PLUGIN(Ebbline_ThemePlugin)

using namespace ebbline;

namespace {

struct Pair {
    const char* mark;
    const char* ground;
};

constexpr Pair texts[]{
    {"ink", "paper"},       {"ink", "card"},        {"ink", "chosen"},      {"inkSoft", "paper"},   {"inkSoft", "card"},
    {"inkSoft", "chosen"},  {"tide", "paper"},      {"tide", "card"},       {"tide", "chosen"},     {"inkOnTide", "tide"},
    {"left", "paper"},      {"left", "card"},       {"right", "paper"},     {"right", "card"},      {"inkOnTide", "left"},
    {"inkOnTide", "right"}, {"emergency", "paper"}, {"emergency", "card"},  {"callNow", "paper"},   {"callNow", "card"},
    {"callNow", "chosen"},  {"nextDay", "paper"},   {"nextDay", "card"},    {"atReview", "paper"},  {"atReview", "card"},
    {"inkOnTide", "emergency"}, {"inkOnTide", "callNow"}, {"inkOnAlarm", "emergencyFill"}, {"inkOnAlarm", "callNowFill"},
    {"inkSoft", "sand"},
};

constexpr Pair marks[]{
    {"line", "paper"},    {"line", "card"},    {"focus", "paper"},   {"focus", "card"},   {"bandEdge", "paper"}, {"bandEdge", "card"},
    {"left", "sand"},     {"right", "sand"},   {"left", "chosen"},   {"right", "chosen"}, {"callNow", "card"},   {"bandEdge", "sand"},
};

}  // namespace

TEST_CASE("every colour of the theme stands out from what it is painted on, in each look", "[theme][contrast]")
{
    const int look = GENERATE(0, 1, 2);
    CAPTURE(look);
    QQmlEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    QQmlComponent component(&engine);
    component.setData("import QtQuick\nimport Ebbline.Theme\nQtObject { property QtObject theme: Theme }", {});
    const std::unique_ptr<QObject> holder(component.create());
    REQUIRE(component.errorString().toStdString() == "");
    auto* theme = holder->property("theme").value<QObject*>();
    REQUIRE(theme != nullptr);
    theme->setProperty("look", look);
    const auto colour = [&](const char* name) {
        const auto value = theme->property(name);
        REQUIRE(value.isValid());
        return value.value<QColor>();
    };

    for (const auto& [mark, ground] : texts) {
        CAPTURE(mark, ground);
        CHECK(screens::contrast(colour(mark), colour(ground)) >= 4.5);
    }
    for (const auto& [mark, ground] : marks) {
        CAPTURE(mark, ground);
        CHECK(screens::contrast(colour(mark), colour(ground)) >= 3.0);
    }
}

TEST_CASE("the contrast of black on white is 21 to 1", "[theme][contrast]")
{
    CHECK(std::abs(screens::contrast(Qt::black, Qt::white) - 21) < 0.01);
    CHECK(std::abs(screens::contrast(QColor(0x76, 0x76, 0x76), Qt::white) - 4.54) < 0.01);
}
