#include "tests/bench/pictures/picture.h"
#include "tests/bench/pictures/published.h"

#include "core/statistics/pooling.h"

namespace ebbline::bench {

namespace {

using namespace statistics;

Picture rats()
{
    Picture picture("Seventy-one groups of rats: each group's own share, and where pooling draws it.",
                    axis("share of the group itself", 0, 0.4, 0.1, 1), axis("share after pooling", 0, 0.4, 0.1, 1));
    const auto pooled = [](const Beta& between) {
        Points points;
        for (const Counts& group : ratGroups)
            points.emplace_back(static_cast<double>(group.events) / static_cast<double>(group.total), updated(between, group).mean());
        return points;
    };
    const Beta moments = betaFromMoments(ratGroups).value();
    const Beta likeliest = fitBetaBinomial(ratGroups).value();
    picture.line({{0, 0}, {0.4, 0.4}}, {ink::edge, Dash::dotted, 1.2}, "not pooled");
    picture.across(likeliest.mean(), {ink::edge, Dash::dashed, 1.2}, "mean between groups");
    picture.marks(pooled(moments), Mark::hollow, ink::right, "distribution between groups by moments");
    picture.marks(pooled(likeliest), Mark::round, ink::tide, "by maximum likelihood (beta-binomial)");
    return picture;
}

Picture dirichlet()
{
    constexpr std::array seed{0.05, 0.15, 0.25, 0.20, 0.15, 0.10, 0.05, 0.02, 0.01, 0.01, 0.01};
    const CategoryCounts counts{0, 1, 2, 5, 8, 9, 4, 1, 0, 0, 0};
    Picture picture("Answers 0 to 10: the seed, thirty courses of one's own, and both together.", axis("answer", 0, 10, 1),
                    axis("share", 0, 0.35, 0.05, 2));
    Points start, own;
    for (std::size_t i = 0; i < seed.size(); ++i) {
        start.emplace_back(static_cast<double>(i), seed[i]);
        own.emplace_back(static_cast<double>(i), static_cast<double>(counts[i]) / 30);
    }
    const auto drawn = [&](double weight) {
        Points points;
        const std::vector<double> shares = pooledShares(seed, weight, counts).value();
        for (std::size_t i = 0; i < shares.size(); ++i)
            points.emplace_back(static_cast<double>(i), shares[i]);
        return points;
    };
    picture.line(start, {ink::edge, Dash::dotted, 1.6}, "seed");
    picture.marks(own, Mark::hollow, ink::right, "own shares, 30 courses");
    picture.line(drawn(30), {ink::tide, Dash::solid, 2}, "together, seed weighing 30 courses");
    picture.line(drawn(300), {ink::left, Dash::dashed, 1.4}, "together, seed weighing 300");
    return picture;
}

Picture run()
{
    Picture picture("How likely the next days are all without an entry, by what her own days were.", axis("days in a row", 1, 6, 1),
                    axis("P(all without an entry)", 0, 0.5, 0.1, 1));
    struct Own { long missed; long days; const char* name; Stroke stroke; };
    for (const auto& [missed, days, name, stroke] :
         {Own{0, 0, "before any day: Beta(2, 10)", {ink::edge, Dash::dotted, 1.6}},
          Own{0, 8, "wrote on all of 8 days", {ink::tide, Dash::solid, 2}},
          Own{5, 8, "missed 5 of 8 days", {ink::right, Dash::dashed, 2}}}) {
        const Beta belief = updated({2, 10}, {missed, days});
        Points points;
        for (int length = 1; length <= 6; ++length)
            points.emplace_back(length, probabilityOfRun(belief, length));
        picture.line(points, stroke, name);
    }
    return picture;
}

}  // namespace

std::vector<Named> poolingPictures()
{
    return {{"pooling", rats()}, {"dirichlet", dirichlet()}, {"run-of-events", run()}};
}

}  // namespace ebbline::bench
