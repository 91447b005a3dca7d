#include "tests/screens/diary_hands.h"

#include "app/diary/model/words.h"
#include "tests/screens/hands.h"
#include "tests/screens/screen_check.h"

#include <QCoreApplication>
#include <QTest>

#include <stdexcept>

namespace ebbline::screens {

namespace {

/// The keyboard, of the desk or on the screen, sends keys.
void typeKeys(QQuickWindow& window, const QString& text)
{
    for (const QChar letter : text)
        QTest::keyClick(&window, letter.toLatin1());
    settle(window);
}

Hands finger(QQuickWindow& window)
{
    return {[&window](const QString& name) { return touch(window, name); },
            [&window](const QString& name, const QString& text) {
                if (!touch(window, name))
                    return false;
                typeKeys(window, text);
                return true;
            }};
}

Hands keyboard(QQuickWindow& window, Qt::Key key)
{
    return {[&window, key](const QString& name) {
                if (!tabTo(window, name))
                    return false;
                QTest::keyClick(&window, key);
                settle(window);
                return true;
            },
            [&window](const QString& name, const QString& text) {
                if (!tabTo(window, name))
                    return false;
                typeKeys(window, text);
                return true;
            }};
}

Hands reader(QQuickWindow& window)
{
    return {[&window](const QString& name) { return press(window, name); },
            [&window](const QString& name, const QString& text) { return write(window, name, text); }};
}

}  // namespace

const std::vector<Way> ways{{0, "en"}, {1, "en"}, {3, "en"}, {0, "de"}, {3, "de"}, {0, "ar"}, {1, "ar"}, {3, "ar"}};
const std::vector<Way> waysWithReturn{{0, "en"}, {1, "en"}, {2, "en"}, {3, "en"}, {0, "de"}, {2, "de"}, {0, "ar"}, {1, "ar"}, {3, "ar"}};

Hands hands(int kind, QQuickWindow& window)
{
    switch (kind) {
    case 0: return finger(window);
    case 1: return keyboard(window, Qt::Key_Space);
    case 2: return keyboard(window, Qt::Key_Return);
    default: return reader(window);
    }
}

QString said(const char* context, const char* source)
{
    return QCoreApplication::translate(context, source);
}

QString markName(recovery::Symptom symptom, recovery::Side side, int points)
{
    return said("GaugeMark", "%1: %2 of 10").arg(diaryapp::symptomQuestion(symptom) + QLatin1Char(' ') + diaryapp::sideName(side)).arg(diaryapp::digits(points));
}

void open(app::DiaryProgram& program)
{
    const bool shown = program.show(QSize(360, 780));
    if (shown)
        program.window()->requestActivate();
    if (!shown || !QTest::qWaitForWindowActive(program.window()))
        throw std::runtime_error("the diary shows no window that takes keys");
    settle(*program.window());
}

}  // namespace ebbline::screens
