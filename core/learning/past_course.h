#pragma once
/// \file
/// A course that is over, as learning sees it: what was done, how it ended, what was scored.

#include "core/bands/learn_band.h"
#include "core/clock/instant.h"
#include "core/recovery/treatment.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace ebbline::learning {

/// Ways of placing threads that a practice can hold against each other.
enum class Way : std::uint8_t {
    ending,       ///< where threads end: `short-of-moving-zone`, `past-moving-zone`
    gauge,        ///< of needle or cannula, G: `19`
    epinephrine,  ///< at the entry point: `with`, `without`; empty where a thread does not say
    area,         ///< `face`, or `neck` for submental and neck
    threads,      ///< material and form, as techniqueOf()
};
inline constexpr std::array allWays{Way::ending, Way::gauge, Way::epinephrine, Way::area, Way::threads};

/// `ending`, `gauge`, `epinephrine`, `area`, `threads`.
std::string_view word(Way way);

/// How a course ended, as a person wrote it down.
struct Outcome {
    bool complicated = false;
    std::vector<std::string> kinds;  ///< words; may be empty in a complicated course
};

/// A lot as one or more threads of a course had it.
struct PackLot {
    std::string printed;     ///< as written down
    std::string article{};   ///< the product's trade item number (recovery::isArticle()); empty: not known
    bool operator==(const PackLot&) const = default;
};

struct PastCourse {
    std::string name;                ///< of the course, e.g. its id; never of a patient
    clock::Moment treated;
    std::string clinic;              ///< empty: one's own
    std::string technique;           ///< empty: unknown
    std::vector<std::string> zones;  ///< words, each once
    std::vector<PackLot> lots;
    std::optional<Outcome> outcome;  ///< empty: not known. It is left out, and never taken for a good one
    std::optional<double> risk;      ///< of a complication, known beforehand, 0 < risk < 1
    bands::TaughtCourse days;        ///< scores, a value a day and stream
    std::array<std::string, allWays.size()> ways{};  ///< by Way; empty: unknown

    const std::string& group(Way way) const { return ways[static_cast<std::size_t>(way)]; }
};

/// Material and form of the threads, e.g. "PDO barbed-two-way", or "mixed" if there are several.
std::string techniqueOf(const recovery::Treatment& treatment);
/// To which group of a way a treatment belongs; "mixed" if its placements differ, empty without one
/// or where one does not say.
std::string groupOf(const recovery::Treatment& treatment, Way way);
/// Words of the zones, in the order of the enumeration, each once.
std::vector<std::string> zonesOf(const recovery::Treatment& treatment);
/// In the order of the placements, each once; placements without a lot are left out.
std::vector<PackLot> lotsOf(const recovery::Treatment& treatment);

}  // namespace ebbline::learning
