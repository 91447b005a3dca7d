#pragma once
/// \file
/// What a changed protocol would have done: over the clinic's own past courses, whose outcome a person wrote
/// down, and over invented ones, whose truth is known to the hour. Run before a change is signed.

#include "core/rehearsal/rehearse.h"

#include <functional>

namespace ebbline::desk {

inline constexpr std::size_t mostRehearsed = 2000;  ///< past courses, the newest
inline constexpr int inventedPlain = 200;           ///< uncomplicated invented courses of each model
inline constexpr int inventedTroubled = 40;         ///< of each kind of trouble, of each model
inline constexpr std::array inventedModels{rehearsal::Model::decay, rehearsal::Model::steps};

struct RehearsalMaterial {
    std::vector<rehearsal::KnownCourse> past;  ///< newest treatment first; named by the course's id
    int treatedLately = 0;                     ///< courses begun within the last burdenWeeks weeks
};

/// One protocol over courses.
struct RehearsedSide {
    std::vector<rehearsal::KindFigures> past;
    std::array<std::vector<rehearsal::KindFigures>, inventedModels.size()> invented;  ///< of each of inventedModels
    long pastAlerts = 0;
    /// Alerts a week, if as many patients as lately had courses like those of the past; empty without one.
    std::optional<double> perWeek;
};

struct RehearsedCourse {
    std::string course;  ///< id, as in RehearsalMaterial
    std::string kind;
    rehearsal::Respects in;
    std::optional<triggers::Finding> before;  ///< the first that the other protocol does not raise so; empty: none
    std::optional<triggers::Finding> after;
};

struct ProtocolRehearsal {
    RehearsedSide before;
    RehearsedSide after;
    std::size_t pastCourses = 0;
    std::size_t inventedCourses = 0;
    std::vector<RehearsedCourse> differences;  ///< of past courses: anything raised by one alone, at another time or otherwise
    long inventedDifferences = 0;
};

/// A matter of seconds. `progress` is called with 0..1 and may ask to stop by returning false; then the
/// answer is Reason::refused. No past course is fine: then the invented ones speak alone.
Result<ProtocolRehearsal> rehearseProtocol(const RehearsalMaterial& material, const triggers::Protocol& before,
                                           const triggers::Protocol& after, const std::function<bool(double)>& progress);

}  // namespace ebbline::desk
