#include "core/learning/lots.h"

#include <algorithm>
#include <map>
#include <set>

namespace ebbline::learning {

std::string lotKey(std::string_view printed)
{
    std::string key;
    for (const char c : printed)
        if (std::string_view(" \t.-_/").find(c) == std::string_view::npos)
            key += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    return key;
}

namespace {

/// What of a course is of the lot; `wanted` empty: any product. One of that product speaks for the course before one of none.
const PackLot* lotIn(const PastCourse& course, std::string_view key, std::string_view wanted, bool unknownAlone)
{
    const PackLot* found = nullptr;
    for (const PackLot& lot : course.lots) {
        const bool fits = unknownAlone ? lot.article.empty() : wanted.empty() || lot.article.empty() || lot.article == wanted;
        if (fits && lotKey(lot.printed) == key && (found == nullptr || (found->article.empty() && !lot.article.empty())))
            found = &lot;
    }
    return found;
}

void take(LotTrace& trace, const PastCourse& course, const PackLot& lot)
{
    const bool known = course.outcome.has_value();
    trace.courses.push_back({course.name, course.treated, lot.printed, known ? std::optional(course.outcome->complicated) : std::nullopt, lot.article});
    trace.share.known += known ? 1 : 0;
    trace.share.unknown += known ? 0 : 1;
    trace.share.complicated += known && course.outcome->complicated ? 1 : 0;
}

void finish(LotTrace& trace)
{
    std::sort(trace.courses.begin(), trace.courses.end(), [](const LotCourse& a, const LotCourse& b) {
        return a.treated.at != b.treated.at ? a.treated.at < b.treated.at : a.course < b.course;
    });
    trace.share.share = shareOf(trace.share.complicated, trace.share.known);
}

LotTrace begun(std::string key, std::string_view article)
{
    LotTrace trace;
    trace.share.group = article.empty() ? key : key + " " + std::string(article);
    trace.key = std::move(key);
    trace.article = article;
    return trace;
}

}  // namespace

std::vector<LotTrace> traceLots(std::span<const PastCourse> courses)
{
    // By key, each with its products; the empty one is not known.
    std::map<std::string, std::set<std::string>> products;
    std::map<std::string, std::vector<const PastCourse*>> receivers;
    for (const PastCourse& course : courses)
        for (const PackLot& lot : course.lots)
            if (const std::string key = lotKey(lot.printed); !key.empty()) {
                products[key].insert(lot.article);
                std::vector<const PastCourse*>& those = receivers[key];
                if (those.empty() || those.back() != &course)
                    those.push_back(&course);
            }
    std::vector<LotTrace> all;
    for (const auto& [key, articles] : products) {
        const auto add = [&](const std::string& article) {
            LotTrace trace = begun(key, article);
            for (const PastCourse* course : receivers[key])
                if (const PackLot* lot = lotIn(*course, key, article, article.empty()))
                    take(trace, *course, *lot);
            finish(trace);
            all.push_back(std::move(trace));
        };
        for (const std::string& article : articles)
            if (!article.empty())
                add(article);
        if (articles.contains({}))
            add({});
    }
    return all;
}

LotTrace traceLot(std::span<const PastCourse> courses, std::string_view lot, std::string_view article)
{
    LotTrace trace = begun(lotKey(lot), article);
    if (trace.key.empty())
        return trace;
    for (const PastCourse& course : courses)
        if (const PackLot* found = lotIn(course, trace.key, article, false))
            take(trace, course, *found);
    finish(trace);
    return trace;
}

}  // namespace ebbline::learning
