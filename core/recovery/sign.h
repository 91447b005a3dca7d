#pragma once
/// \file
/// Warning signs: yes/no findings that need action whatever the curve says. What each one
/// means and how urgent it is stands in core/warnings; here are only the names.
/// The numbers are stored and sent: never renumber.

#include "core/result/result.h"

#include <array>
#include <cstdint>
#include <string_view>

namespace ebbline::recovery {

enum class Sign : std::uint8_t {
    breathing = 1,         ///< hard to breathe, noisy breathing, cannot swallow saliva
    neckSwelling = 2,      ///< swelling of the neck or under the jaw that grows fast
    allergy = 3,           ///< throat or tongue swells, wheeze, faint, or hives with any of these
    numbingReaction = 4,   ///< soon after the injection: metal taste, ringing ears, confusion, twitching
    severeIllness = 5,     ///< shivering hard, confused, mottled skin, no urine for a day
    strokeSigns = 6,       ///< face droops with a weak arm or slurred speech
    vision = 7,            ///< sudden loss of sight or double vision
    fastSwelling = 8,      ///< one side swells visibly within an hour, or keeps growing
    paleSkin = 9,          ///< skin turns white, grey or net-like, cold, or blisters
    colourChange = 10,     ///< near an entry point redder, purpler, greyer or darker than the other side
    warmer = 11,           ///< warmer to the back of the hand than the other side
    firmer = 12,           ///< firm, shiny or tight
    moreTender = 13,       ///< more tender than yesterday
    edgeMoved = 14,        ///< the edge has moved past where it was
    thickFluid = 15,       ///< thick yellow, green or milky fluid
    threadOut = 16,        ///< a thread end shows through the skin
    faceWeakness = 17,     ///< cannot close an eye, raise a brow, or the smile is crooked
    salivaSwelling = 18,   ///< cheek swells on eating, or clear fluid runs
    bleeding = 19,         ///< an entry point bleeds after 15 minutes of firm pressure
    pulsatingLump = 20,    ///< a lump that beats
    threadLump = 21,       ///< a thread can be seen or felt, calm skin
    shivering = 22,        ///< chills, with or without a measured temperature
};

inline constexpr std::array allSigns{
    Sign::breathing,    Sign::neckSwelling, Sign::allergy,    Sign::numbingReaction,
    Sign::severeIllness, Sign::strokeSigns, Sign::vision,     Sign::fastSwelling,
    Sign::paleSkin,     Sign::colourChange, Sign::warmer,     Sign::firmer,
    Sign::moreTender,   Sign::edgeMoved,    Sign::thickFluid, Sign::threadOut,
    Sign::faceWeakness, Sign::salivaSwelling, Sign::bleeding, Sign::pulsatingLump,
    Sign::threadLump,   Sign::shivering};

/// Lower-case words joined by hyphens, as in the open table of signs: `breathing`,
/// `neck-swelling`, `thick-fluid`, ...
std::string_view word(Sign sign);

/// \returns Reason::malformed naming the word if it is not one of ours.
Result<Sign> signFromWord(std::string_view text);

/// What to do about a finding, named by the act, most urgent first.
enum class Urgency : std::uint8_t {
    emergency = 1,       ///< call the emergency number now
    callNow = 2,         ///< call the practitioner's number now, the same day
    nextWorkingDay = 3,  ///< the clinic answers on the next working day
    atReview = 4,        ///< raise it at the follow-up
};

/// `emergency`, `call-now`, `next-working-day`, `at-review`.
std::string_view word(Urgency urgency);
Result<Urgency> urgencyFromWord(std::string_view text);

}  // namespace ebbline::recovery
