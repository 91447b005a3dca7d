#include "tests/bench/defaults_tradeoff.h"

#include <algorithm>
#include <cstdio>

namespace ebbline::bench {

using namespace ebbline::rehearsal;

namespace {

constexpr std::array firstDays{8, 12};  // the default first
constexpr std::array slowThresholds{0.6, 0.7, 0.8, 0.9, 1.05, 1.15};
constexpr std::array foldPoints{5, 6, 7, 8, 9, 10};

KindFigures figuresOn(const Cohorts& cohorts, Kind kind, const triggers::Protocol& protocol)
{
    std::vector<CourseVerdict> verdicts;
    for (const KnownCourse& course : cohorts[static_cast<std::size_t>(kind)])
        verdicts.push_back(verdictOn(course, protocol));
    return figuresOf(verdicts).front();
}

long answersAboutFolds(const KnownCourse& course)
{
    return std::ranges::count_if(course.input.observations, [&](const auto& o) {
        return clock::dayOfRecovery(course.input.treated, o.at) >= 8
               && std::ranges::any_of(o.scores, [](const auto& score) { return score.first.symptom == recovery::Symptom::puckering; });
    });
}

double rate(long part, const KindFigures& figures)
{
    return static_cast<double>(part) / static_cast<double>(figures.courses);
}

}  // namespace

DefaultsTradeOff::DefaultsTradeOff()
{
    for (const int day : firstDays)
        for (const double threshold : slowThresholds) {
            Variant variant{.protocol = triggers::defaultProtocol()};
            variant.protocol.thresholds.slowFirstDay = day;
            variant.protocol.thresholds.slowOverall = threshold;
            m_slow.push_back(std::move(variant));
        }
    for (const int points : foldPoints) {
        Variant variant{.protocol = triggers::defaultProtocol()};
        variant.protocol.thresholds.puckeringTogether = points;
        m_folds.push_back(std::move(variant));
    }
}

void DefaultsTradeOff::take(Model model, const Cohorts& cohorts)
{
    const auto place = static_cast<std::size_t>(model);
    for (Variant& variant : m_slow) {
        Worst& worst = variant.worst[place];
        const KindFigures plain = figuresOn(cohorts, Kind::plain, variant.protocol);
        const KindFigures slow = figuresOn(cohorts, Kind::slowRecovery, variant.protocol);
        const KindFigures infection = figuresOn(cohorts, Kind::infection, variant.protocol);
        worst.burden = std::max(worst.burden, rate(plain.flagged, plain));
        worst.found = std::min(worst.found, rate(slow.flagged, slow));
        worst.infection = std::min(worst.infection, rate(infection.withinThreeDays, infection));
    }
    for (const KnownCourse& course : cohorts[static_cast<std::size_t>(Kind::puckering)]) {
        if (verdictOn(course, triggers::defaultProtocol()).sinceOnset)
            continue;
        ++m_missed[place].folds;
        m_missed[place].fewAnswers += answersAboutFolds(course) < 3;
    }
    for (Variant& variant : m_folds) {
        Worst& worst = variant.worst[place];
        const KindFigures plain = figuresOn(cohorts, Kind::plain, variant.protocol);
        const KindFigures folds = figuresOn(cohorts, Kind::puckering, variant.protocol);
        worst.burden = std::max(worst.burden, rate(plain.reviewNotes, plain));
        worst.found = std::min(worst.found, rate(folds.flagged, folds));
    }
}

void DefaultsTradeOff::print() const
{
    std::printf("### The default protocol with another number for slow recovery: the worst rhythm of each model\n\n"
                "| first day | over all symptoms above |");
    for (const Model model : models)
        std::printf(" %s: alert in plain | slow recovery | infection, 72 h |", nameOf(model));
    std::printf("\n|---|---|---|---|---|---|---|---|\n");
    for (const Variant& variant : m_slow) {
        std::printf("| %d | %.2f |", variant.protocol.thresholds.slowFirstDay, variant.protocol.thresholds.slowOverall);
        for (const Worst& worst : variant.worst)
            std::printf(" %.3f | %.3f | %.3f |", worst.burden, worst.found, worst.infection);
        std::printf("\n");
    }
    std::printf("\n### The default protocol with another number for folds: the worst rhythm of each model\n\n"
                "| points over three days |");
    for (const Model model : models)
        std::printf(" %s: note in plain | folds that stay |", nameOf(model));
    std::printf("\n|---|---|---|---|---|\n");
    for (const Variant& variant : m_folds) {
        std::printf("| %d |", variant.protocol.thresholds.puckeringTogether);
        for (const Worst& worst : variant.worst)
            std::printf(" %.3f | %.3f |", worst.burden, worst.found);
        std::printf("\n");
    }
    for (const Model model : models) {
        const Missed& missed = m_missed[static_cast<std::size_t>(model)];
        std::printf("\n%s: of %ld folds that the defaults miss, all rhythms together, %ld have fewer than three answers from day 8 on.", nameOf(model),
                    missed.folds, missed.fewAnswers);
    }
    std::printf("\n\n");
}

std::vector<Curve> DefaultsTradeOff::slowCurves() const
{
    std::vector<Curve> curves;
    for (const Model model : models) {
        Curve curve{std::string("slow recovery (") + nameOf(model) + ")", {}};
        for (const Variant& variant : m_slow)
            if (variant.protocol.thresholds.slowFirstDay == firstDays.front()) {
                const Worst& worst = variant.worst[static_cast<std::size_t>(model)];
                curve.points.emplace_back(100 * worst.burden, worst.found);
            }
        curves.push_back(std::move(curve));
    }
    return curves;
}

std::vector<Curve> DefaultsTradeOff::foldCurves() const
{
    std::vector<Curve> curves;
    for (const Model model : models) {
        Curve curve{std::string("folds that stay (") + nameOf(model) + ")", {}};
        for (const Variant& variant : m_folds) {
            const Worst& worst = variant.worst[static_cast<std::size_t>(model)];
            curve.points.emplace_back(100 * worst.burden, worst.found);
        }
        curves.push_back(std::move(curve));
    }
    return curves;
}

}  // namespace ebbline::bench
