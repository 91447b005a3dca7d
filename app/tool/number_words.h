#pragma once
/// \file
/// Numbers of an answer as words and as JSON: never 0 for what is more than that. Inside of app/tool only.

#include <nlohmann/json.hpp>

#include <string>

namespace ebbline::tool {

using Json = nlohmann::ordered_json;

/// `0.3080`; `2.1e-05` rather than `0.0000`.
std::string shown(double value, int digits = 4);

/// `30.8 %`, `0.0057 %`; never 0 % nor 100 % for what is neither.
std::string percent(double share);

/// As percent(), for a probability that was integrated to within `error`: `below 0.000001 %` or `above 99.999999 %`
/// nearer to the ends.
std::string integrated(double share, double error);

/// `p = 0.0312`, `p < 0.0001`.
std::string probabilityText(double p);

/// Sets `name`, or `nameBelow` where the probability is too small for a number: never 0.
void setProbability(Json& json, const std::string& name, double p);

/// Sets `name`; or `nameBelow`, `nameAbove` where it is nearer to 0 or 1 than the error of its integral.
inline void setIntegrated(Json& json, const std::string& name, double p, double error)
{
    if (p < error)
        json[name + "Below"] = error;
    else if (p > 1 - error)
        json[name + "Above"] = 1 - error;
    else
        json[name] = p;
}

}  // namespace ebbline::tool
