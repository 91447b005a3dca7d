#include "core/statistics/log_rank.h"

#include "core/statistics/distributions.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace ebbline::statistics {

namespace {

struct Member {
    double time;
    bool event;
    bool first;
};

}  // namespace

Result<LogRank> logRank(std::span<const Followed> first, std::span<const Followed> second, Emphasis emphasis)
{
    if (first.empty() || second.empty())
        return fail(Reason::notEnough, "a group is empty");
    std::vector<Member> all;
    all.reserve(first.size() + second.size());
    for (const Followed& one : first)
        all.push_back({one.time, one.event, true});
    for (const Followed& one : second)
        all.push_back({one.time, one.event, false});
    for (const Member& member : all)
        if (!(member.time >= 0) || !std::isfinite(member.time))
            return fail(Reason::outOfRange, "time: want a finite number >= 0");
    std::ranges::sort(all, {}, &Member::time);

    LogRank test{};
    auto atRisk = static_cast<double>(all.size());
    auto atRiskFirst = static_cast<double>(first.size());
    double survival = 1;  // of both groups together, before the time looked at
    for (std::size_t i = 0; i < all.size();) {
        const double time = all[i].time;
        double events = 0, eventsFirst = 0, leaving = 0, leavingFirst = 0;
        for (; i < all.size() && all[i].time == time; ++i) {
            ++leaving;
            leavingFirst += all[i].first;
            events += all[i].event;
            eventsFirst += all[i].event && all[i].first;
        }
        if (events > 0) {
            const double weight = emphasis == Emphasis::early ? survival : 1;
            const double share = atRiskFirst / atRisk;
            test.observedFirst += weight * eventsFirst;
            test.expectedFirst += weight * events * share;
            test.observedSecond += weight * (events - eventsFirst);
            test.expectedSecond += weight * events * (1 - share);
            if (atRisk > 1)
                test.variance += weight * weight * events * share * (1 - share) * (atRisk - events) / (atRisk - 1);
            survival *= 1 - events / atRisk;
        }
        atRisk -= leaving;
        atRiskFirst -= leavingFirst;
    }
    if (!(test.variance > 0))
        return fail(Reason::notEnough, "nothing happened while both groups were at risk");
    const double off = test.observedFirst - test.expectedFirst;
    test.chiSquare = off * off / test.variance;
    const Result<double> probability = chiSquareUpper(test.chiSquare, 1);
    if (!probability)
        return fail(probability.error());
    test.probability = *probability;
    return test;
}

}  // namespace ebbline::statistics
