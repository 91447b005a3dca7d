#pragma once
/// \file
/// Inside of core/rehearsal: what the two models share. Hours count from the treatment.

#include "core/rehearsal/chance.h"
#include "core/rehearsal/invented_course.h"

namespace ebbline::rehearsal {

/// The invented patients score these, in this order; numbness is left out (no anchor at all).
inline constexpr std::array scoredSymptoms{recovery::Symptom::pain,      recovery::Symptom::swelling,
                                           recovery::Symptom::bruising,  recovery::Symptom::tightness,
                                           recovery::Symptom::twinges,   recovery::Symptom::puckering};
inline constexpr std::size_t symptomCount = scoredSymptoms.size();

/// Points by symptom and side (left, right).
using Sheet = std::array<std::array<int, 2>, symptomCount>;

/// When and where a complication begins.
struct Onset {
    double hour = 0;
    std::size_t side = 0;  ///< 0 left, 1 right
};

/// How strong a complication is, as shares of what a model draws: Invention's `trouble` and `pace`. They scale what was
/// drawn and draw nothing themselves, so that 1 leaves every course as it is.
struct Strength {
    double size = 1;
    double pace = 1;
};

/// What she would write at each of these hours (ascending).
std::vector<Sheet> scoresByDecay(Chance& chance, Kind kind, const Onset& onset, const Strength& strength,
                                 const std::vector<double>& hours);
std::vector<Sheet> scoresBySteps(Chance& chance, Kind kind, const Onset& onset, const Strength& strength,
                                 const std::vector<double>& hours);

/// When she writes: wall-clock habits, missed days, giving up.
struct Diary {
    clock::Moment treated;
    bool hasBaseline = false;
    std::vector<double> hours;     ///< since the treatment, ascending
    std::vector<clock::Moment> moments;
};
Diary diaryOf(Chance& chance, Kind kind, Rhythm rhythm, int number);

}  // namespace ebbline::rehearsal
