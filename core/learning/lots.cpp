#include "core/learning/lots.h"

#include <algorithm>
#include <map>

namespace ebbline::learning {

std::string lotKey(std::string_view printed)
{
    std::string key;
    for (const char c : printed)
        if (std::string_view(" \t.-_/").find(c) == std::string_view::npos)
            key += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    return key;
}

std::vector<LotTrace> traceLots(std::span<const PastCourse> courses)
{
    std::map<std::string, LotTrace> traces;
    for (const PastCourse& course : courses) {
        std::map<std::string, std::string> printed;
        for (const std::string& lot : course.lots)
            if (std::string key = lotKey(lot); !key.empty())
                printed.try_emplace(std::move(key), lot);
        for (const auto& [key, lot] : printed) {
            LotTrace& trace = traces[key];
            trace.key = trace.share.group = key;
            const bool known = course.outcome.has_value();
            trace.courses.push_back({course.name, course.treated, lot,
                                     known ? std::optional(course.outcome->complicated) : std::nullopt});
            trace.share.known += known ? 1 : 0;
            trace.share.unknown += known ? 0 : 1;
            trace.share.complicated += known && course.outcome->complicated ? 1 : 0;
        }
    }
    std::vector<LotTrace> all;
    for (auto& [key, trace] : traces) {
        std::sort(trace.courses.begin(), trace.courses.end(), [](const LotCourse& a, const LotCourse& b) {
            return a.treated.at != b.treated.at ? a.treated.at < b.treated.at : a.course < b.course;
        });
        trace.share.share = shareOf(trace.share.complicated, trace.share.known);
        all.push_back(std::move(trace));
    }
    return all;
}

LotTrace traceLot(std::span<const PastCourse> courses, std::string_view lot)
{
    const std::string key = lotKey(lot);
    for (LotTrace& trace : traceLots(courses))
        if (trace.key == key)
            return std::move(trace);
    LotTrace none;
    none.key = none.share.group = key;
    return none;
}

}  // namespace ebbline::learning
