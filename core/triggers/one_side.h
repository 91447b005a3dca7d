#pragma once
/// \file
/// Evidence that one side has begun to go its own way, reading by reading, in hours.
///
/// Inside of core/triggers. Exchanging left and right exchanges the two results and nothing else.

#include "core/triggers/side_watch.h"

namespace ebbline::triggers {

/// What a side gains when it is struck, on the even scale.
struct Signature {
    std::array<double, 4> weights;  ///< of its size that each of sideSymptoms shows
    double least;                   ///< sizes looked for; a day, if it grows
    double most;
    double growHours;               ///< it grows for so long; 0: it is there at once
};

/// Blood that fills one side within hours: swelling and pain, tightness less, a bruise later.
inline constexpr Signature bleeding{{1.0, 0.8, 0.65, 0.4}, 1.2, 2.6, 0};
/// What turns worse on one side from day to day: pain and swelling, tightness less.
inline constexpr Signature inflaming{{0.85, 1.0, 0.5, 0}, 0.5, 1.0, 96};

/// Generalised likelihood ratio: a signature that began before one of the last readings, against
/// differences and sums of the sides that wander as they usually do (a local level for each
/// symptom). Method: docs/statistics/triggers.md.
class OneSideWatch {
public:
    OneSideWatch(const bands::Movements& movements, const Signature& signature);

    /// The practitioner's differences right after the treatment, the first reading; nothing if none was scored.
    /// No later reading replaces it: it is the start that all others are held against.
    void start(const SideReadings& differences);

    /// Readings come in order of time. One that follows within three hours replaces the last of them: it
    /// tells of the same state. What is there at the first reading is the patient's own.
    void feed(double hours, const SideReadings& differences, const SideReadings& sums);

    /// The logarithm of the ratio for a side as of the last reading, 0 or more. \param side 0 left, 1 right
    double ratio(std::size_t side) const;

private:
    static constexpr std::size_t channels = 2 * sideSymptoms.size();  ///< differences, then sums
    static constexpr std::size_t mostBeginnings = 8;

    /// One number for each moment at which it may have begun, by count modulo their number: side by side,
    /// so that one instruction serves several of them.
    using Each = std::array<double, mostBeginnings>;

    /// The moments, and what has spoken for each since.
    struct Beginnings {
        Each hours{};
        Each unrest{};    ///< variance of the patient's surprises before, 1 being the usual
        Each apart{};     ///< agreement of the differences with the left being struck
        Each together{};  ///< agreement of the sums with either being struck
        Each strength{};  ///< how much could have been seen
        Each size{};      ///< at the reading that is taken in
        std::array<Each, channels> absorbed{};  ///< by the levels, per unit of size
    };
    struct Level {
        double hours = 0;
        double mean = 0;
        double variance = 0;
    };
    struct State {
        double hours = 0;
        std::array<Level, channels> levels{};
        Beginnings beginnings{};
        std::size_t begun = 0;
        double squares = 0;  ///< of the surprises of the differences
        int surprises = 0;
    };

    void take(double hours, const SideReadings& differences, const SideReadings& sums);
    void begin(State& next) const;
    /// What a variance makes of a reading: the same for all symptoms that were read at the same moments.
    struct Gain {
        double before = -1;  ///< the level's variance
        double precision = 0;
        double gain = 0;
        double after = 0;
    };
    void read(State& next, std::size_t channel, double value, Gain& gain) const;
    /// How large what began at each beginning would be by now.
    void grow(State& next) const;

    bands::Movements m_movements;
    Signature m_signature;
    State m_before;  ///< before the last reading that may be replaced
    State m_now;
    bool m_fed = false;  ///< with a reading that may be replaced
};

}  // namespace ebbline::triggers
