// Scores and signs behave as the standard map and set that they stand for.

#include "core/recovery/answers.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

#include <map>
#include <set>

using namespace ebbline;
using namespace ebbline::recovery;

namespace {

Stream anyStream()
{
    return {*rc::gen::elementOf(allSymptoms), *rc::gen::elementOf(std::vector{Side::none, Side::left, Side::right})};
}

bool same(const Scores& scores, const std::map<Stream, Score>& model)
{
    return std::equal(scores.begin(), scores.end(), model.begin(), model.end(),
                      [](const auto& a, const auto& b) { return a.first == b.first && a.second == b.second; });
}

}  // namespace

TEST_CASE("scores answer as a map does, whatever is done to them", "[recovery][answers][property]")
{
    CHECK(rc::check("against std::map", [] {
        Scores scores;
        std::map<Stream, Score> model;
        for (int step = *rc::gen::inRange(0, 60); step > 0; --step) {
            const Stream stream = anyStream();
            const Score score = *Score::of(*rc::gen::inRange(0, 11));
            switch (*rc::gen::inRange(0, 5)) {
            case 0: {
                const auto [place, isNew] = scores.emplace(stream, score);
                const auto [expected, expectedNew] = model.emplace(stream, score);
                RC_ASSERT(isNew == expectedNew);
                RC_ASSERT(place->second == expected->second);
                break;
            }
            case 1:
                scores.insert_or_assign(stream, score);
                model.insert_or_assign(stream, score);
                break;
            case 2: RC_ASSERT(scores.erase(stream) == model.erase(stream)); break;
            case 3: {
                const auto doubled = [](const Stream& of, Score was) {
                    return of.side == Side::left ? *Score::of(std::min(10, 2 * was.points())) : was;
                };
                scores.transform(doubled);
                for (auto& [of, was] : model)
                    was = doubled(of, was);
                break;
            }
            default:
                RC_ASSERT(scores.contains(stream) == model.contains(stream));
                if (const auto found = scores.find(stream); found != scores.end())
                    RC_ASSERT(found->second == model.at(stream) && scores.at(stream) == model.at(stream));
            }
            RC_ASSERT(same(scores, model));
            RC_ASSERT(scores.size() == model.size());
            RC_ASSERT(scores.empty() == model.empty());
        }
    }));
}

TEST_CASE("the order in which scores were given does not show", "[recovery][answers][property]")
{
    CHECK(rc::check("any order", [] {
        const auto points = *rc::gen::container<std::vector<int>>(6, rc::gen::inRange(0, 11));
        Scores forwards;
        Scores backwards;
        for (std::size_t i = 0; i < points.size(); ++i) {
            const std::size_t j = points.size() - 1 - i;
            forwards.emplace({allSymptoms[i], Side::left}, *Score::of(points[i]));
            backwards.emplace({allSymptoms[j], Side::left}, *Score::of(points[j]));
        }
        RC_ASSERT(forwards == backwards);
    }));
}

TEST_CASE("a stream that was not answered is nowhere", "[recovery][answers]")
{
    const Scores scores{{{Symptom::pain, Side::left}, *Score::of(3)}};
    CHECK_FALSE(scores.contains({Symptom::pain, Side::right}));
    CHECK(scores.find({Symptom::swelling, Side::left}) == scores.end());
    CHECK_THROWS_AS(scores.at({Symptom::pain, Side::none}), std::out_of_range);
}

TEST_CASE("signs answer as a set does, whatever is done to them", "[recovery][answers][property]")
{
    CHECK(rc::check("against std::set", [] {
        Signs signs;
        std::set<Sign> model;
        for (int step = *rc::gen::inRange(0, 60); step > 0; --step) {
            const Sign sign = *rc::gen::elementOf(allSigns);
            if (*rc::gen::inRange(0, 3) > 0) {
                RC_ASSERT(signs.insert(sign) == model.insert(sign).second);
            } else {
                signs.erase(sign);
                model.erase(sign);
            }
            RC_ASSERT(std::equal(signs.begin(), signs.end(), model.begin(), model.end()));
            RC_ASSERT(signs.size() == model.size());
            RC_ASSERT(signs.empty() == model.empty());
            RC_ASSERT(signs.contains(sign) == model.contains(sign));
        }
        RC_ASSERT(signs == Signs(model.begin(), model.end()));
    }));
}

TEST_CASE("signs hold every number that has room, and say no to others", "[recovery][answers]")
{
    for (const Sign sign : allSigns)
        CHECK(static_cast<unsigned>(sign) <= Signs::highestNumber);
    Signs signs;
    CHECK(signs.insert(static_cast<Sign>(Signs::highestNumber)));
    CHECK_FALSE(signs.insert(static_cast<Sign>(Signs::highestNumber + 1)));
    CHECK_FALSE(signs.contains(static_cast<Sign>(Signs::highestNumber + 1)));
    CHECK(signs.size() == 1);
}
