#include "core/aftercare/care_plan.h"

#include <date/tz.h>

#include <exception>

namespace ebbline::aftercare {

namespace {

const date::time_zone& zoneOf(const void* handle)
{
    return *static_cast<const date::time_zone*>(handle);
}

}  // namespace

Result<Zone> Zone::find(std::string_view name)
{
    try {
        const date::time_zone* found = date::locate_zone(std::string(name));
        return Zone(std::string(name), found);
    } catch (const std::exception&) {
        return fail(Reason::notFound, "time zone: the tz database has no such name");
    }
}

clock::Moment Zone::moment(clock::Instant at) const
{
    const date::sys_info info = zoneOf(m_handle).get_info(at);
    return {at, std::chrono::duration_cast<std::chrono::minutes>(info.offset), m_name};
}

clock::Instant Zone::instantOf(clock::LocalDay day, std::chrono::minutes sinceMidnight) const
{
    const date::local_time<std::chrono::milliseconds> local{day.time_since_epoch() + sinceMidnight};
    const date::local_info info = zoneOf(m_handle).get_info(local);
    // In a gap the two rules agree on the moment at which the clocks jump; of two equal readings the
    // first is meant.
    if (info.result == date::local_info::nonexistent)
        return std::chrono::time_point_cast<std::chrono::milliseconds>(info.first.end);
    return clock::Instant{local.time_since_epoch() - info.first.offset};
}

}  // namespace ebbline::aftercare
