#pragma once
/// \file
/// Inside of core/rehearsal: what invented patients tick when they are asked for warning signs, what they measure, and
/// the complications that show there and hardly in the scores of every course. Assumptions: docs/statistics/detection.md.

#include "core/rehearsal/invented_scores.h"

namespace ebbline::rehearsal {

/// When it begins, hours after the treatment; nothing for kinds that the scores tell (allKinds).
std::optional<double> onsetByKind(Chance& chance, Kind kind);

/// The kind whose scores this one has: late bleeding those of a bleeding, a febrile infection those of an infection, the
/// rest those of an ordinary course.
Kind scoredLike(Kind kind);

/// Folds that grow on one side from the onset on, put on what was scored.
void worsenFolds(Chance& chance, const Onset& onset, const std::vector<double>& hours, std::vector<Sheet>& sheets);

/// Pain of one side that stands at 7 to 9 for two days from the onset on, put over what was scored. 7 and more is severe
/// (Serlin et al., Pain 1995;61:277); the rest is assumed.
void hurtBadly(Chance& chance, const Onset& onset, const std::vector<double>& hours, std::vector<Sheet>& sheets);

/// Numbness of both sides (left, right) at each of these hours, that of one side spreading from the onset on.
std::vector<std::array<int, 2>> numbnessThatSpreads(Chance& chance, const Onset& onset, const std::vector<double>& hours);

/// What was measured at the entries, in their order; most entries have no temperature. Only of
/// a fever and of a febrile infection, half a day after its onset, is any as high as 38.0.
std::vector<MeasuredTemperature> temperatures(Chance& chance, Kind kind, const Onset& onset, const std::vector<double>& hours,
                                              const std::vector<clock::Moment>& moments);

/// What is ticked at each of the entries, in their order; entries at which nothing is ticked are left out.
std::vector<TickedSigns> tickedSigns(Chance& chance, Kind kind, const Onset& onset, const std::vector<double>& hours,
                                     const std::vector<clock::Moment>& moments);

}  // namespace ebbline::rehearsal
