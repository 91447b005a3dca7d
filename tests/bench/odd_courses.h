#pragma once
/// \file
/// Invented courses as diaries are not supposed to be, and a band as no clinic has it: what must be judged
/// rightly all the same. For the benches.

#include "core/bands/band.h"
#include "core/triggers/judge.h"

namespace ebbline::bench {

/// Both models, every kind, with or without the practitioner's scores; days left out and days with several
/// entries, some of them within three hours; entries in any order, twice the same, from before the treatment,
/// from beyond the last day of the band, without a score, with one side only or without a side; journeys west
/// across midnight; scores that jump. The same number is the same course on every machine.
triggers::CourseInput oddCourse(int number);

/// The seed band made narrow, many answers impossible, with movements that differ from symptom to symptom.
bands::Band narrowBand();

}  // namespace ebbline::bench
