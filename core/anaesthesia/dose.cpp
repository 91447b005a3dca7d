#include "core/anaesthesia/dose.h"

#include <algorithm>
#include <cmath>

namespace ebbline::anaesthesia {

namespace {

constexpr double mgPerMlPerPercent = 10;  // 1 % is 1 g in 100 mL
constexpr double trackNoteMl = 0.5;       // common practice, no source
/// Of the maximum. A sum of many tracks is off by some 1e-15 of itself; a billionth of 500 mg is no dose.
constexpr double roundingOfSums = 1e-9;

bool within(double value, double low, double high)
{
    return std::isfinite(value) && value >= low && value <= high;
}

/// Whether all of the solution held epinephrine. Where no thread says where, the solution's word stands for all, as in
/// the treatments of an older program; where one does, every other one has to say so too.
bool everywhere(const recovery::Treatment& treatment)
{
    const auto silent = [](const recovery::Placement& placement) { return !placement.epinephrineAt; };
    const auto whole = [](const recovery::Placement& placement) { return placement.epinephrineAt == recovery::EpinephrineAt::both; };
    return treatment.anaesthetic.drug == recovery::Drug::lidocaineWithEpinephrine
           && (std::ranges::all_of(treatment.placements, silent) || std::ranges::all_of(treatment.placements, whole));
}

}  // namespace

Done check(const Limits& limits)
{
    const Limits label;
    if (!within(limits.plainMgPerKg, 0.1, label.plainMgPerKg))
        return fail(Reason::outOfRange, "plain: want 0.1..4.5 mg/kg");
    if (!within(limits.plainCapMg, 1, label.plainCapMg))
        return fail(Reason::outOfRange, "plain, in all: want 1..300 mg");
    if (!within(limits.epinephrineMgPerKg, 0.1, label.epinephrineMgPerKg))
        return fail(Reason::outOfRange, "with epinephrine: want 0.1..7 mg/kg");
    if (!within(limits.epinephrineCapMg, 1, label.epinephrineCapMg))
        return fail(Reason::outOfRange, "with epinephrine, in all: want 1..500 mg");
    return {};
}

Result<double> concentration(double percent, double bicarbonatePart)
{
    if (!within(percent, 0.1, 4))
        return fail(Reason::outOfRange, "percent: want 0.1..4");
    if (!within(bicarbonatePart, 0, 1))
        return fail(Reason::outOfRange, "bicarbonate: want 0..1 part");
    return percent * mgPerMlPerPercent / (1 + bicarbonatePart);
}

Result<double> maximumMg(recovery::Drug drug, double weightKg, const Limits& limits)
{
    if (!std::isfinite(weightKg))
        return fail(Reason::notFinite, "weight: want a number");
    if (weightKg < 30 || weightKg > 300)
        return fail(Reason::outOfRange, "weight: want 30..300 kg");
    // The label is a ceiling: a clinic's own setting counts only where it is lower.
    const Limits label;
    if (drug == recovery::Drug::lidocaine)
        return std::min(std::min(limits.plainMgPerKg, label.plainMgPerKg) * weightKg,
                        std::min(limits.plainCapMg, label.plainCapMg));
    return std::min(std::min(limits.epinephrineMgPerKg, label.epinephrineMgPerKg) * weightKg,
                    std::min(limits.epinephrineCapMg, label.epinephrineCapMg));
}

Result<Dose> doseOf(const recovery::Treatment& treatment, const Limits& limits)
{
    const recovery::Anaesthetic& solution = treatment.anaesthetic;
    const Result<double> strength = concentration(solution.percent, solution.bicarbonatePart);
    if (!strength)
        return fail(strength.error());
    if (!within(solution.extraMl, 0, 100))
        return fail(Reason::outOfRange, "extra: want 0..100 mL");
    const double otherwise = treatment.otherwiseMg.value_or(0);
    if (!within(otherwise, 0, recovery::maximumOtherwiseMg))
        return fail(Reason::outOfRange, "given otherwise: want 0..1000 mg");

    Dose dose{};
    dose.givenMl = solution.extraMl;
    double mostWith = solution.extraMl;  // mL that can have held epinephrine: an entry point's share of a track is not known
    for (std::size_t i = 0; i < treatment.placements.size(); ++i) {
        const double volume = treatment.placements[i].anaestheticMl;
        if (!within(volume, 0, 20))
            return fail(Reason::outOfRange, "placement " + std::to_string(i + 1) + ": want 0..20 mL");
        dose.givenMl += volume;
        if (treatment.placements[i].epinephrineAt != recovery::EpinephrineAt::nowhere)
            mostWith += volume;
        if (volume > trackNoteMl)
            dose.tracksOverHalfMl.push_back(static_cast<int>(i + 1));
    }
    dose.concentrationMgPerMl = *strength;
    dose.solutionMg = dose.givenMl * *strength;
    dose.otherwiseMg = otherwise;
    dose.givenMg = dose.solutionMg + otherwise;
    dose.epinephrineInPart = solution.drug == recovery::Drug::lidocaineWithEpinephrine && !everywhere(treatment);
    dose.limitedAs = otherwise > 0 || dose.epinephrineInPart ? recovery::Drug::lidocaine : solution.drug;
    if (solution.epinephrineOneIn > 0)
        // 1 in n is 1 g in n mL, so a million micrograms in n mL, then diluted as the rest.
        dose.epinephrineUg = mostWith * 1e6 / solution.epinephrineOneIn / (1 + solution.bicarbonatePart);

    if (treatment.weightKg) {
        Result<double> maximum = maximumMg(dose.limitedAs, *treatment.weightKg, limits);
        if (!maximum)
            return fail(maximum.error());
        if (dose.limitedAs != solution.drug) {
            // A clinic may have set the other one lower: what is given beside it, or without, never raises the maximum.
            const Result<double> ofSolution = maximumMg(solution.drug, *treatment.weightKg, limits);
            if (ofSolution && *ofSolution < *maximum) {
                maximum = ofSolution;
                dose.limitedAs = solution.drug;
            }
        }
        const Limits label;
        const double cap = dose.limitedAs == recovery::Drug::lidocaine
                               ? std::min(limits.plainCapMg, label.plainCapMg)
                               : std::min(limits.epinephrineCapMg, label.epinephrineCapMg);
        dose.maximumMg = *maximum;
        dose.maximumMl = std::max(0.0, *maximum - otherwise) / *strength;
        dose.capped = *maximum >= cap;
        dose.overMaximum = dose.givenMg > *maximum * (1 + roundingOfSums);
    }
    return dose;
}

}  // namespace ebbline::anaesthesia
