#pragma once
/// \file
/// Invented courses whose truth is known: to calibrate before there are patients, to rehearse, and
/// to measure what the triggers find. Nothing here is clinical evidence.
///
/// Two models that share no formula: `decay` (a smooth curve through noise) and `steps` (a score
/// that steps up and down at chance moments). Every assumption: docs/statistics/detection.md.

#include "core/recovery/entry.h"
#include "core/triggers/judge.h"

#include <array>
#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace ebbline::rehearsal {

enum class Kind : std::uint8_t {
    plain, infection, haematoma, slowRecovery, puckering, silent,
    lateHaematoma,   ///< day 7 to 10
    worseningFolds,  ///< folds that grow in the second week
    threadOut, weakness, salivaSwelling, paleSkin, bleeding,  ///< told by a warning sign, hardly by a score
    airway, allergy, numbingReaction, severeIllness, strokeSigns, vision,  ///< told by a sign of an emergency
    threadLump, spreadingColour,  ///< told by a sign
    fever,              ///< told by a temperature
    spreadingNumbness,  ///< told by scores of numbness, which no other kind writes
    severePain,         ///< pain of one side at 7 or more for two days, as if nothing relieved it
    febrileInfection,   ///< an infection by its scores, with colour at an entry point and a fever half a day later
};

/// What the triggers are there for, and are measured on.
inline constexpr std::array allKinds{Kind::plain,        Kind::infection, Kind::haematoma,
                                     Kind::slowRecovery, Kind::puckering, Kind::silent};
/// What else a diary can show.
inline constexpr std::array rareKinds{Kind::lateHaematoma,  Kind::worseningFolds,  Kind::threadOut,     Kind::weakness,
                                      Kind::salivaSwelling, Kind::paleSkin,        Kind::bleeding,      Kind::airway,
                                      Kind::allergy,        Kind::numbingReaction, Kind::severeIllness, Kind::strokeSigns,
                                      Kind::vision,         Kind::threadLump,      Kind::spreadingColour, Kind::fever,         Kind::spreadingNumbness,
                                      Kind::severePain,     Kind::febrileInfection};

/// As in the table of truth: `plain`, `infection`, `haematoma`, `slow-recovery`, `puckering`, `silent`;
/// `late-haematoma`, `worsening-puckering`, `thread-out`, `weakness`, `saliva-swelling`, `pale-skin`, `bleeding`,
/// `airway`, `allergy`, `numbing-reaction`, `severe-illness`, `stroke-signs`, `vision`, `thread-lump`, `spreading-colour`,
/// `fever`, `spreading-numbness`, `severe-pain`, `febrile-infection`.
std::string_view word(Kind kind);
Result<Kind> kindFromWord(std::string_view text);

/// What was really going on.
struct Truth {
    std::string kind = "plain";  ///< any word; `plain` is an uncomplicated course
    std::optional<clock::Moment> onset;
    recovery::Side side = recovery::Side::none;
    bool isPlain() const { return kind == "plain"; }
};

/// Warning signs ticked at an entry; at least one.
struct TickedSigns {
    clock::Moment at;
    recovery::Signs signs;
};

/// A temperature of an entry.
struct MeasuredTemperature {
    clock::Moment at;
    recovery::Temperature temperature;
};

struct KnownCourse {
    std::string name;
    triggers::CourseInput input;
    Truth truth;
    std::vector<TickedSigns> signs = {};  ///< by time; triggers do not see them, warnings do
    std::vector<MeasuredTemperature> temperatures = {};  ///< the same
};

enum class Model : std::uint8_t { decay, steps };

/// When the patient writes: `mixed` as people do, `daily` every evening, `twice` morning and evening,
/// `plan` as the default care plan asks: twice on days 0 to 3, in the evening up to day 14, then on
/// days 16, 18 and 20.
enum class Rhythm : std::uint8_t { mixed, daily, twice, plan };

struct Invention {
    Model model = Model::decay;
    Rhythm rhythm = Rhythm::mixed;
    std::uint64_t seed = 1;
    /// How large a complication's addition is and how fast it grows, as shares of what the model usually draws: trouble
    /// of other sizes than the triggers were made with. Above 0; 1 is the usual course, to the last score. They change
    /// infections (febrile ones as well), bleedings (late ones as well) and folds that stay, whose pace is none; other kinds ignore them. Sizes
    /// are points, pace is points a day: half the size at the usual pace is reached in half the time. Below a third of the
    /// size an addition may never reach the one point that counts as its onset.
    double trouble = 1;
    double pace = 1;
};

inline constexpr int inventedDays = 22;  ///< day 0 to day 21

/// The same (invention, kind, number) is the same course on every machine, whatever else was drawn.
KnownCourse invent(const Invention& invention, Kind kind, int number);

/// The evening of day 21, when the course ends and is judged for the last time. Later by the hours that an entry of that day was
/// written in a zone further west. What was written on a later day is beyond it, however far ahead its clock was.
clock::Moment endOf(const triggers::CourseInput& input);

}  // namespace ebbline::rehearsal
