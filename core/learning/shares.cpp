#include "core/learning/shares.h"

#include <algorithm>
#include <map>
#include <set>

namespace ebbline::learning {

namespace {

std::set<std::string> groupsOf(const PastCourse& course, By by)
{
    switch (by) {
    case By::nothing: return {""};
    case By::technique: return {course.technique};
    case By::clinic: return {course.clinic};
    case By::zone: break;
    }
    return course.zones.empty() ? std::set<std::string>{""}
                                : std::set<std::string>(course.zones.begin(), course.zones.end());
}

}  // namespace

std::string sentence(const NotEnough& lack)
{
    const auto counted = [&](const char* what) {
        return std::string("not enough to say: ") + what + " " + std::to_string(lack.have) + ", want "
               + std::to_string(lack.want);
    };
    switch (lack.lack) {
    case Lack::outcomes: return counted("known outcomes");
    case Lack::courses: return counted("courses with the symptom");
    case Lack::followed: return counted("days followed");
    case Lack::groups: return counted("groups");
    case Lack::spread: return "not enough to say: nothing varied";
    case Lack::apart: return "not enough to say: the groups lie too far apart to be drawn together";
    case Lack::events: return "not enough to say: nothing happened in either group";
    }
    return "not enough to say";
}

Answer<Share> shareOf(long complicated, long known)
{
    const NotEnough lack{Lack::outcomes, known, fewestCourses};
    if (known < fewestCourses)
        return std::unexpected(lack);
    const auto limits = statistics::wilson(complicated, known);
    if (!limits)
        return std::unexpected(lack);
    return Share{static_cast<double>(complicated) / static_cast<double>(known), *limits};
}

std::vector<GroupShare> complicationShares(std::span<const PastCourse> courses, By by)
{
    std::map<std::string, GroupShare> groups;
    for (const PastCourse& course : courses)
        for (const std::string& name : groupsOf(course, by)) {
            GroupShare& group = groups[name];
            group.group = name;
            group.known += course.outcome ? 1 : 0;
            group.unknown += course.outcome ? 0 : 1;
            group.complicated += course.outcome && course.outcome->complicated ? 1 : 0;
        }
    std::vector<GroupShare> shares;
    for (auto& [name, group] : groups) {
        group.share = shareOf(group.complicated, group.known);
        shares.push_back(std::move(group));
    }
    return shares;
}

std::vector<GroupShare> complicationKinds(std::span<const PastCourse> courses)
{
    std::map<std::string, GroupShare> kinds;
    long known = 0;
    for (const PastCourse& course : courses) {
        known += course.outcome ? 1 : 0;
        if (course.outcome)
            for (const std::string& kind : std::set<std::string>(course.outcome->kinds.begin(), course.outcome->kinds.end()))
                ++kinds[kind].complicated;
    }
    std::vector<GroupShare> shares;
    for (auto& [kind, group] : kinds) {
        group.group = kind;
        group.known = known;
        group.unknown = static_cast<long>(courses.size()) - known;
        group.share = shareOf(group.complicated, known);
        shares.push_back(std::move(group));
    }
    std::stable_sort(shares.begin(), shares.end(),
                     [](const GroupShare& a, const GroupShare& b) { return a.complicated > b.complicated; });
    return shares;
}

}  // namespace ebbline::learning
