#pragma once
/// \file
/// Invented cohorts and the tables of docs/statistics/detection.md, for whichever protocol is measured.

#include "core/rehearsal/rehearse.h"

#include <map>
#include <string>
#include <vector>

namespace ebbline::bench {

inline constexpr std::array models{rehearsal::Model::decay, rehearsal::Model::steps};
inline constexpr std::array rhythms{rehearsal::Rhythm::mixed, rehearsal::Rhythm::daily, rehearsal::Rhythm::twice,
                                    rehearsal::Rhythm::plan};

struct Sizes {
    int calibration = 4000;
    int plain = 4000;
    int each = 1000;
};

const char* nameOf(rehearsal::Model model);
const char* nameOf(rehearsal::Rhythm rhythm);

/// `0.912 (0.901-0.922)`, Wilson, 95 %.
std::string text(long part, long whole);

std::vector<rehearsal::KnownCourse> cohort(const rehearsal::Invention& invention, rehearsal::Kind kind, int count);

/// One cohort for each of allKinds, in their order.
using Cohorts = std::vector<std::vector<rehearsal::KnownCourse>>;
Cohorts freshCohorts(const rehearsal::Invention& invention, const Sizes& sizes);

/// By kind.
using Figures = std::map<std::string, rehearsal::KindFigures>;
Figures figuresUnder(const Cohorts& cohorts, const triggers::Protocol& protocol);

/// What is found and at which burden: a header, and a row for each model and rhythm.
void printMainHeader(const std::string& title);
void printMainRow(const std::string& name, const Figures& figures);

/// How late, and on which side: the same.
void printDelayHeader(const std::string& title);
void printDelayRow(const std::string& name, const Figures& figures);

}  // namespace ebbline::bench
