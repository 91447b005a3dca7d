#include "tests/screens/diary_hands.h"

#include "app/diary/model/words.h"
#include "tests/screens/screen_check.h"

#include <QCoreApplication>
#include <QTest>

#include <stdexcept>

namespace ebbline::screens {

const std::vector<Way> ways{{0, "en"}, {1, "en"}, {3, "en"}, {0, "de"}, {1, "de"}, {3, "de"}, {0, "ar"}, {1, "ar"}, {3, "ar"}};
const std::vector<Way> waysWithReturn{{0, "en"}, {1, "en"}, {2, "en"}, {3, "en"}, {0, "de"}, {2, "de"}, {3, "de"}, {0, "ar"}, {1, "ar"}, {3, "ar"}};

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
