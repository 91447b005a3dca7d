#pragma once
/// \file
/// What a new clinic would pay for finding more with another number among the default thresholds: slow recovery against
/// false alerts, folds that stay against notes for the review.

#include "tests/bench/detection_tables.h"
#include "tests/bench/tradeoff_picture.h"

#include <array>
#include <vector>

namespace ebbline::bench {

class DefaultsTradeOff {
public:
    DefaultsTradeOff();

    /// Judges the cohorts of one model and rhythm under every variant; of the rhythms the worst counts.
    void take(rehearsal::Model model, const Cohorts& cohorts);

    void print() const;

    std::vector<Curve> slowCurves() const;
    std::vector<Curve> foldCurves() const;

private:
    /// Of one model, over its rhythms.
    struct Worst {
        double burden = 0;     ///< highest share of plain courses with an alert, or with a note
        double found = 1;      ///< lowest share
        double infection = 1;  ///< lowest share found within 72 hours
    };
    /// Folds that the default protocol misses, over all rhythms, and those of them that could not be seen by rules that want three answers.
    struct Missed {
        long folds = 0;
        long fewAnswers = 0;  ///< fewer than three from day 8 on
    };
    struct Variant {
        triggers::Protocol protocol;
        std::array<Worst, models.size()> worst{};
    };

    std::array<Missed, models.size()> m_missed{};
    std::vector<Variant> m_slow;   ///< the threshold over all symptoms and the first day vary
    std::vector<Variant> m_folds;  ///< the points over three days vary
};

}  // namespace ebbline::bench
