#pragma once
/// \file
/// The trade-off of detection_bench as a picture (SVG 1.1).

#include <string>
#include <utility>
#include <vector>

namespace ebbline::bench {

struct Curve {
    std::string name;
    std::vector<std::pair<double, double>> points;  ///< (false alerts per 100, share found)
};

/// Budgets 0 to 20 across, shares found from 0.5 to 1 upwards. Each curve has its own mark.
std::string tradeOffPicture(const std::vector<Curve>& curves);

}  // namespace ebbline::bench
