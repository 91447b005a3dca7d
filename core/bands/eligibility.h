#pragma once
/// \file
/// Which courses may teach a band, and why the others may not. docs/statistics/band.md.

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace ebbline::bands {

/// Days 0 to 21 of a course, and how many of them must have a score: half (a choice of ours).
inline constexpr int courseDays = 22;
inline constexpr int fewestObservedDays = courseDays / 2;

/// Stored: never renumber.
enum class Refusal : std::uint8_t {
    noConsent = 1,    ///< the patient did not agree that her course teaches
    stillOpen = 2,    ///< no follow-up closes it: nobody knows how it ended
    complicated = 3,  ///< the follow-up names a complication, or calls it not uncomplicated
    treated = 4,      ///< something was done about a finding: from there on it is no natural course
    tooFewDays = 5,   ///< fewer than fewestObservedDays of days 0..21 have a score
};
inline constexpr std::array allRefusals{Refusal::noConsent, Refusal::stillOpen, Refusal::complicated, Refusal::treated,
                                        Refusal::tooFewDays};

/// `no-consent`, `still-open`, `complicated`, `treated`, `too-few-days`.
std::string_view word(Refusal refusal);

/// What is known of a course; whatever is unknown counts as not given.
struct CourseFacts {
    bool consented = false;
    bool closed = false;
    bool uncomplicated = false;  ///< as the follow-up says
    bool treated = false;        ///< in the clinic, or sent to urgent care, because of a finding
    int observedDays = 0;        ///< of days 0..21, with at least one score
};

/// The first reason that holds, in the order of the enumeration: of a patient who did not agree
/// nothing further is asked. Empty: the course may teach.
std::optional<Refusal> refusalOf(const CourseFacts& facts);

}  // namespace ebbline::bands
