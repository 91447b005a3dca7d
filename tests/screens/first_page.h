#pragma once
/// \file
/// A page must come out the same whether it was reached from another page or is the first that its window shows.

#include "tests/screens/screen_check.h"

#include <QQmlApplicationEngine>
#include <QVariant>

namespace ebbline::screens {

/// Scrolls all that scrolls to its beginning: how far down somebody was is up to the window.
void toTheTop(QQuickWindow& window);

/// What is drawn, in order: its words, place and size in the window.
QStringList placesIn(QQuickWindow& window);

/// Opens a second window on what the program shows now and compares it with the first. \returns what differs.
template <typename Program>
QStringList otherWhenFirst(Program& program, const QString& main)
{
    QQuickWindow& walked = *program.window();
    settle(walked);
    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    engine.setInitialProperties({{QStringLiteral("program"), QVariant::fromValue(&program)},
                                 {QStringLiteral("width"), walked.width()},
                                 {QStringLiteral("height"), walked.height()}});
    engine.load(QUrl(main));
    auto* fresh = engine.rootObjects().isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(engine.rootObjects().first());
    if (fresh == nullptr)
        return {QStringLiteral("no window")};
    settle(*fresh);
    toTheTop(walked);
    toTheTop(*fresh);
    const auto before = placesIn(walked);
    const auto now = placesIn(*fresh);
    QStringList other;
    for (const auto& line : before)
        if (!now.contains(line))
            other << QStringLiteral("reached: ") + line;
    for (const auto& line : now)
        if (!before.contains(line))
            other << QStringLiteral("first:   ") + line;
    return other;
}

}  // namespace ebbline::screens
