// The protocol page: every number that the phone judges by is on it.
#include "app/desk/model/protocol_board.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using deskapp::ProtocolLine;

namespace {

QStringList said(const QList<ProtocolLine>& rules)
{
    QStringList lines;
    for (const auto& rule : rules) {
        lines << rule.what + QLatin1String(" | ") + rule.until + QLatin1String(" | ") + rule.detail;
    }
    return lines;
}

}  // namespace

TEST_CASE("a change of any threshold or guard is seen among the rules", "[desk][protocol]")
{
    using triggers::Thresholds;
    const Thresholds usual;
    const QStringList before = said(deskapp::rulesOf(usual));
    const auto seen = [&before](auto member, auto value) {
        Thresholds changed;
        changed.*member = value;
        return said(deskapp::rulesOf(changed)) != before;
    };
    for (const auto threshold : {&Thresholds::level, &Thresholds::levelOverall, &Thresholds::rebound, &Thresholds::sideDivergence,
                                 &Thresholds::oneSideFills, &Thresholds::oneSideWorsens, &Thresholds::slowRecovery,
                                 &Thresholds::slowOverall}) {
        CHECK(seen(threshold, 99.0));
    }
    for (const auto guard : {&Thresholds::levelGuard, &Thresholds::reboundGuard, &Thresholds::reboundFirstDay, &Thresholds::sideGuard,
                             &Thresholds::fillingLastDay, &Thresholds::fillingGuard, &Thresholds::worseningGuard,
                             &Thresholds::slowFirstDay, &Thresholds::slowPeakGuard, &Thresholds::slowGuard, &Thresholds::puckeringDay,
                             &Thresholds::puckeringGuard, &Thresholds::puckeringStuckDay, &Thresholds::puckeringStuckGuard,
                             &Thresholds::puckeringKeptDay, &Thresholds::puckeringLateDay, &Thresholds::puckeringTogether,
                             &Thresholds::silentDays, &Thresholds::silentDaysWhenHigh}) {
        CHECK(seen(guard, 19));
    }
}

TEST_CASE("a rule says its threshold and its guard in words", "[desk][protocol]")
{
    triggers::Thresholds thresholds;
    thresholds.oneSideFills = 5.5;
    thresholds.fillingLastDay = 4;
    thresholds.fillingGuard = 5;

    CHECK(said(deskapp::rulesOf(thresholds))
              .contains(QLatin1String("Side divergence: one side fills in the first days | threshold 5.50 | up to day 4, at "
                                      "least 5 point(s) between the sides over pain, swelling, bruising and tightness")));
}

TEST_CASE("a budget that was not shown to hold is not asserted", "[desk][protocol]")
{
    triggers::Thresholds thresholds;
    thresholds.falseAlertBudget = 5;
    thresholds.calibratedOn = "60 uncomplicated courses";
    CHECK(deskapp::calibrationText(thresholds)
          == QLatin1String("Thresholds calibrated on 60 uncomplicated course(s). These are few: the thresholds are drawn towards "
                           "those before. It is not shown that they hold the budget of 5 false alerts in 100 uncomplicated courses."));
    thresholds.calibratedOn = "8000 invented courses, rules changed since";
    CHECK(deskapp::calibrationText(thresholds)
          == QLatin1String("Thresholds calibrated on 8,000 invented course(s). Rules, or the days that are asked about, were changed "
                           "since. It is not shown that they hold the budget of 5 false alerts in 100 uncomplicated courses."));
    thresholds.calibratedOn = "5000 uncomplicated courses, from a file";
    CHECK(deskapp::calibrationText(thresholds)
          == QLatin1String("Thresholds calibrated on 5,000 uncomplicated course(s). They came in a file: other patients may stand behind them. "
                           "It is not shown that they hold the budget of 5 false alerts in 100 uncomplicated courses."));
    thresholds.calibratedOn = "300 uncomplicated courses";
    CHECK(deskapp::calibrationText(thresholds).contains(QLatin1String("to at most 5 false alerts in 100")));
}

TEST_CASE("the page says what the thresholds were calibrated on and to which budget", "[desk][protocol]")
{
    screens::DemoClinic clinic;
    const auto program = clinic.program(QStringLiteral("en"));
    program->openProtocols();
    const auto& board = *program->protocols();

    REQUIRE_FALSE(board.names().isEmpty());
    CHECK(board.calibration()
          == QLatin1String("Thresholds calibrated on 8,000 invented courses. It is not shown that they hold the budget of 10 false alerts in 100 uncomplicated courses."));
    CHECK(board.band().contains(QLatin1String("assumption"), Qt::CaseInsensitive));
}
