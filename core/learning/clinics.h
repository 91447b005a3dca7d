#pragma once
/// \file
/// Pooling over clinics (or techniques): a clinic with few courses is drawn towards the others, one with
/// many stays where it is. Only counts are needed; no course leaves its clinic. docs/statistics/learning.md.

#include "core/learning/shares.h"
#include "core/statistics/pooling.h"

#include <span>

namespace ebbline::learning {

inline constexpr long fewestGroups = 3;  ///< to say anything of how they differ

struct ClinicCounts {
    std::string name;
    long complicated = 0;
    long known = 0;
};

struct PooledClinic {
    ClinicCounts counts;
    Answer<Share> own;          ///< by itself
    double share;               ///< drawn towards the others
    statistics::Interval limits;  ///< 95 % of its posterior
};

struct Pool {
    /// How the clinics' true shares spread. None: they differ no more than chance makes them; then one
    /// share for all, with Jeffreys' prior, is given to each, and its interval knows nothing of
    /// differences that so few courses cannot show.
    std::optional<statistics::Beta> between;
    std::vector<PooledClinic> clinics;  ///< in the given order
};

/// Clinics without a known outcome are given the share of a clinic nobody knows yet.
/// \returns not enough with fewer than fewestGroups clinics that know fewestCourses outcomes together,
///          counts that cannot be, or Lack::apart: clinics of which each has all complicated or none say
///          nothing that another could be drawn towards.
Answer<Pool> poolClinics(std::span<const ClinicCounts> clinics);

/// From courses, by their clinic.
std::vector<ClinicCounts> countsByClinic(std::span<const PastCourse> courses);

}  // namespace ebbline::learning
