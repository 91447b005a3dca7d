#include "app/desk/model/plan_words.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/treatment_rows.h"
#include "app/desk/model/words.h"
#include "core/recovery/plan.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>

namespace ebbline::deskapp {

namespace {

class Treatment {
    Q_DECLARE_TR_FUNCTIONS(Treatment)
};

QString listOf(const std::vector<int>& numbers)
{
    QStringList words;
    for (const int number : numbers) {
        words << charts::digits(number);
    }
    return QLocale().createSeparatedList(words);
}

QString nowText(const recovery::PlanMatch& match)
{
    return match.done == match.planned ? charts::digits(match.done)
                                       : Treatment::tr("%1 (in the plan %2)", "number of a thread, its number in the plan")
                                             .arg(charts::digits(match.done), charts::digits(match.planned));
}

QString fateText(const recovery::PlanComparison& comparison, int planned)
{
    const auto match = std::ranges::find(comparison.matches, planned, &recovery::PlanMatch::planned);
    if (match == comparison.matches.end()) {
        return Treatment::tr("Left out.");
    }
    QStringList parts{Treatment::tr("Placed as thread %1.").arg(charts::digits(match->done))};
    if (match->moved) {
        parts << Treatment::tr("Moved.");
    }
    if (match->otherwise) {
        parts << Treatment::tr("Otherwise than planned.");
    }
    return parts.join(u' ');
}

}  // namespace

QString planSentence(std::span<const recovery::Placement> planned, std::span<const recovery::Placement> done)
{
    const auto comparison = recovery::compareWithPlan(planned, done);
    QStringList moved;
    QStringList otherwise;
    for (const auto& match : comparison.matches) {
        if (match.moved) {
            moved << nowText(match);
        }
        if (match.otherwise) {
            otherwise << nowText(match);
        }
    }
    const QLocale locale;
    QStringList parts{Treatment::tr("Planned: %1. Placed: %2.", "threads, threads")
                          .arg(charts::digits(static_cast<int>(planned.size())), charts::digits(static_cast<int>(done.size())))};
    if (!comparison.leftOut.empty()) {
        parts << Treatment::tr("Left out: %1.", "numbers of threads in the plan").arg(listOf(comparison.leftOut));
    }
    if (!comparison.added.empty()) {
        parts << Treatment::tr("Not in the plan: %1.", "numbers of threads").arg(listOf(comparison.added));
    }
    if (!moved.isEmpty()) {
        parts << Treatment::tr("Moved: %1.", "numbers of threads").arg(locale.createSeparatedList(moved));
    }
    if (!otherwise.isEmpty()) {
        parts << Treatment::tr("Otherwise than planned: %1.", "numbers of threads").arg(locale.createSeparatedList(otherwise));
    }
    if (comparison.isAsPlanned()) {
        parts << Treatment::tr("As planned.");
    }
    return parts.join(u' ');
}

QStringList planLines(const recovery::Treatment& treatment)
{
    if (treatment.planned.empty()) {
        return {};
    }
    const auto comparison = recovery::compareWithPlan(treatment.planned, treatment.placements);
    QStringList lines{planSentence(treatment.planned, treatment.placements)};
    int number = 0;
    for (const auto& planned : treatment.planned) {
        ++number;
        const auto instrument = instrumentText(planned);
        const auto thread = instrument.isEmpty() ? threadText(planned) : threadText(planned) + QStringLiteral(" · ") + instrument;
        lines << Treatment::tr("Planned thread %1: %2, %3. %4. %5. %6", "number, side, zone, ending, thread, what became of it")
                     .arg(charts::digits(number), sideTitle(planned.side), zoneName(planned.zone), endingName(planned.ending), thread,
                          fateText(comparison, number));
    }
    return lines;
}

}  // namespace ebbline::deskapp
