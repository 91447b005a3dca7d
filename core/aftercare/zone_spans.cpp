#include "core/aftercare/zone_spans.h"

#include <date/tz.h>

namespace ebbline::aftercare {

std::vector<ZoneSpan> spansOf(const Zone& zone, clock::Instant from, clock::Instant to)
{
    using std::chrono::duration_cast;
    using std::chrono::minutes;
    const date::time_zone* const known = date::locate_zone(zone.name());  // a Zone is never one that is not there
    // A zone that never changed has begun long ago; no calendar needs to know when.
    const date::sys_seconds longAgo{date::sys_days{date::year{1970} / 1 / 1}};
    std::vector<ZoneSpan> spans;
    for (auto at = std::chrono::floor<std::chrono::seconds>(from); at <= to;) {
        const date::sys_info info = known->get_info(at);
        const bool begins = info.begin > longAgo;
        const auto begin = begins ? info.begin : longAgo;
        const auto before = begins ? known->get_info(begin - std::chrono::seconds(1)).offset : info.offset;
        spans.push_back({begin, duration_cast<minutes>(before), duration_cast<minutes>(info.offset),
                         info.save != minutes(0), info.abbrev});
        if (info.end <= at)
            break;
        at = info.end;
    }
    return spans;
}

}  // namespace ebbline::aftercare
