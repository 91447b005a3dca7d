#pragma once
/// \file
/// How long a chart of independent normal observations with standard deviation 1 runs before it
/// signals, on average (ARL), when their mean is off by `shift` from the first observation on.
///
/// Solves the integral equation of the run length with Gauss-Legendre nodes. Symptom scores are
/// discrete, skewed and follow one another: these figures check the charts' code and give a feeling for
/// their parameters; the thresholds of triggers come from whole courses (core/rehearsal).
/// Sources: E. S. Page, "Continuous inspection schemes", Biometrika 41 (1954) 100-115; C. W. Champ,
/// S. E. Rigdon, "A comparison of the Markov chain and the integral equation approaches for evaluating
/// the run length distribution of quality control charts", Communications in Statistics - Simulation
/// and Computation 20 (1991) 191-204; S. V. Crowder, "A simple method for studying run-length
/// distributions of exponentially weighted moving average charts", Technometrics 29 (1987) 401-407.
///
/// Every function \returns Reason::outOfRange naming the argument, and for an average above 1e10
/// observations, which the equation cannot tell from never.

#include "core/result/result.h"

namespace ebbline::statistics {

/// Upper CUSUM with slack `slack` (0..10) and decision value `decision` (above 0, at most 50), both in
/// standard deviations, started at 0.
Result<double> cusumRunLength(double slack, double decision, double shift);

/// The same two CUSUMs up and down; 1/ARL is the sum of both.
Result<double> cusumRunLengthBothWays(double slack, double decision, double shift);

/// P(the upper CUSUM has signalled by the n-th observation), n >= 0.
Result<double> cusumSignalProbability(double slack, double decision, double shift, int observations);

/// EWMA with weight 0.01..1 and the steady limits +- width * sqrt(weight / (2 - weight)) from the first
/// observation on, started at the centre; width above 0, at most 8.
Result<double> ewmaRunLength(double weight, double width, double shift);

/// P(the EWMA has signalled by the n-th observation), n >= 0.
Result<double> ewmaSignalProbability(double weight, double width, double shift, int observations);

}  // namespace ebbline::statistics
