#include "core/recovery/treatment_changes.h"

#include "core/recovery/plan.h"

#include <algorithm>
#include <tuple>

namespace ebbline::recovery {

namespace {

using Part = TreatmentPart;

/// Numbers of a thread in both records; 0 where it has none.
struct Pair {
    int former;
    int now;
};

std::vector<Pair> pairsOf(const std::vector<Placement>& former, const std::vector<Placement>& now)
{
    const PlanComparison compared = compareWithPlan(former, now);
    std::vector<Pair> pairs;
    for (const PlanMatch& match : compared.matches)
        pairs.push_back({match.planned, match.done});
    for (const int number : compared.leftOut)
        pairs.push_back({number, std::ranges::find(compared.added, number) == compared.added.end() ? 0 : number});
    for (const int number : compared.added)
        if (std::ranges::find(compared.leftOut, number) == compared.leftOut.end())
            pairs.push_back({0, number});
    std::ranges::sort(pairs, {}, [](const Pair& pair) { return std::tuple(pair.former == 0, pair.former, pair.now); });
    return pairs;
}

void addThread(std::vector<TreatmentChange>& changes, const Placement& was, const Placement& is, const Pair& pair)
{
    const auto add = [&](Part part, bool differs) {
        if (differs)
            changes.push_back({part, pair.former, pair.now});
    };
    add(Part::side, was.side != is.side);
    add(Part::zone, was.zone != is.zone);
    add(Part::track, was.view != is.view || was.entry != is.entry || was.end != is.end);
    add(Part::ending, was.ending != is.ending);
    add(Part::thread, was.material != is.material || was.form != is.form || was.gauge != is.gauge || was.lengthMm != is.lengthMm);
    add(Part::instrument, was.instrument != is.instrument || was.instrumentLengthMm != is.instrumentLengthMm);
    add(Part::lot, was.lot != is.lot || was.expiry != is.expiry || was.article != is.article);
    add(Part::volume, was.anaestheticMl != is.anaestheticMl);
    add(Part::epinephrine, was.epinephrineAt != is.epinephrineAt);
    add(Part::redoing, was.redone != is.redone);
}

void addThreads(std::vector<TreatmentChange>& changes, const std::vector<Placement>& former, const std::vector<Placement>& now)
{
    const std::size_t before = changes.size();
    for (const Pair& pair : pairsOf(former, now)) {
        if (pair.former == 0)
            changes.push_back({Part::threadAdded, 0, pair.now});
        else if (pair.now == 0)
            changes.push_back({Part::threadRemoved, pair.former, 0});
        else
            addThread(changes, former[static_cast<std::size_t>(pair.former) - 1], now[static_cast<std::size_t>(pair.now) - 1], pair);
    }
    if (changes.size() == before && former != now)
        changes.push_back({Part::threadOrder, 0, 0});
}

}  // namespace

std::vector<TreatmentChange> changesOf(const Treatment& former, const Treatment& now)
{
    std::vector<TreatmentChange> changes;
    const auto add = [&](Part part, bool differs) {
        if (differs)
            changes.push_back({part, 0, 0});
    };
    add(Part::time, former.at != now.at);
    addThreads(changes, former.placements, now.placements);
    add(Part::solution, former.anaesthetic != now.anaesthetic);
    add(Part::otherwise, former.otherwiseMg != now.otherwiseMg);
    add(Part::weight, former.weightKg != now.weightKg);
    add(Part::placedBy, former.placedBy != now.placedBy);
    add(Part::dressings, former.dressings != now.dressings);
    add(Part::cautions, former.cautionsGiven != now.cautionsGiven);
    add(Part::consent, former.consentGiven != now.consentGiven);
    add(Part::learningConsent, former.learningConsent != now.learningConsent);
    add(Part::baseline, former.baseline != now.baseline);
    add(Part::plan, former.planned != now.planned);
    add(Part::note, former.note != now.note);
    return changes;
}

}  // namespace ebbline::recovery
