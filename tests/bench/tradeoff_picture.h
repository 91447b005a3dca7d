#pragma once
/// \file
/// What more alerts or notes find, as a picture (SVG 1.1).

#include <string>
#include <utility>
#include <vector>

namespace ebbline::bench {

struct Curve {
    std::string name;
    std::vector<std::pair<double, double>> points;  ///< (burden per 100 courses, share found)
};

/// What lies across.
struct Burden {
    std::string words;
    int most;  ///< per 100 courses
    int step;
};

/// The burden from 0 across, shares found up to 1 upwards, from 0.5 or the tenth below all curves. Each curve has its own mark.
std::string tradeOffPicture(const Burden& burden, const std::vector<Curve>& curves);

}  // namespace ebbline::bench
