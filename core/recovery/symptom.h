#pragma once
/// \file
/// What a patient scores. The numbers of the enumerations are stored and sent: never renumber.
/// The words (`word()`, `...FromWord()`) are those of the open table formats.

#include "core/result/result.h"

#include <array>
#include <cstdint>
#include <string_view>

namespace ebbline::recovery {

/// Always the patient's own left and right.
enum class Side : std::uint8_t { none = 0, left = 1, right = 2 };

enum class Symptom : std::uint8_t {
    pain = 1,
    swelling = 2,
    bruising = 3,
    tightness = 4,
    twinges = 5,    ///< sharp, short stabs while barbs settle
    puckering = 6,  ///< a dimple or fold that a thread pulls in
    numbness = 7,
};

inline constexpr std::array allSymptoms{Symptom::pain,    Symptom::swelling,  Symptom::bruising,
                                        Symptom::tightness, Symptom::twinges, Symptom::puckering,
                                        Symptom::numbness};
inline constexpr std::array bothSides{Side::left, Side::right};

/// An answer on the 11-point scale, 0 = none, 10 = the worst one can imagine.
class Score {
public:
    static constexpr int lowest = 0;
    static constexpr int highest = 10;

    /// \returns Reason::outOfRange unless 0 <= points <= 10.
    static Result<Score> of(int points);

    int points() const { return m_points; }
    auto operator<=>(const Score&) const = default;

private:
    explicit Score(std::uint8_t points) : m_points(points) {}
    std::uint8_t m_points;
};

/// `pain`, `swelling`, `bruising`, `tightness`, `twinges`, `puckering`, `numbness`.
std::string_view word(Symptom symptom);
/// `L`, `R` or `-`.
std::string_view word(Side side);

/// \returns Reason::malformed naming the word if it is not one of ours.
Result<Symptom> symptomFromWord(std::string_view text);
Result<Side> sideFromWord(std::string_view text);

/// Left becomes right and the other way round.
constexpr Side mirrored(Side side)
{
    return side == Side::left ? Side::right : side == Side::right ? Side::left : Side::none;
}

}  // namespace ebbline::recovery
