#include "app/tool/number_words.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace ebbline::tool {

namespace {

constexpr double smallestShown = 1e-15;

}  // namespace

std::string shown(double value, int digits)
{
    constexpr double rounding = 1e-12;
    char text[400];
    const double size = std::abs(value);
    // What would be rounded to 0 and is more than a rounding error keeps two digits.
    if (size >= rounding && size < 0.5 * std::pow(10, -digits))
        std::snprintf(text, sizeof text, "%.1e", value);
    else
        std::snprintf(text, sizeof text, "%.*f", digits, size < rounding ? 0.0 : value);
    return text;
}

std::string percent(double share)
{
    // So many digits that neither 0 % nor 100 % stands for what is close to it.
    const double nearest = 100 * std::min(share, 1 - share);
    const int more = nearest > 0 ? static_cast<int>(std::max(0.0, -std::floor(std::log10(nearest)))) : 0;
    constexpr int mostDigits = 14;  // of what a double can tell from 0 % or 100 %
    if (1 + more > mostDigits)
        return share < 0.5 ? "below 0.00000000000001 %" : "above 99.9999999999999 %";
    char text[64];
    std::snprintf(text, sizeof text, "%.*f", 1 + more, 100 * share);
    return std::string(text) + " %";
}

std::string integrated(double share, double error)
{
    if (share < error)
        return "below " + percent(error);
    return share > 1 - error ? "above " + percent(1 - error) : percent(share);
}

std::string probabilityText(double p)
{
    return p < 0.0001 ? "p < 0.0001" : "p = " + shown(p, 4);
}

void setProbability(Json& json, const std::string& name, double p)
{
    if (p < smallestShown)
        json[name + "Below"] = smallestShown;
    else
        json[name] = p;
}

}  // namespace ebbline::tool
