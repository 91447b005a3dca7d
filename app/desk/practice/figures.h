#pragma once
/// \file
/// The figures of the practice page, made from what core worked out.

#include "app/desk/practice/practice_figure.h"
#include "core/desk/practice.h"

#include <functional>

namespace ebbline::deskapp {

/// A course's name for a table: the patient's, or empty if she is not known.
using CourseName = std::function<QString(const std::string& course)>;

QList<PracticeFigure> complicationFigures(const desk::PracticeFigures& figures);
QList<PracticeFigure> resolutionFigures(const desk::PracticeFigures& figures);
/// Two groups of a way side by side; `first` and `second` are its words in core.
QList<PracticeFigure> comparisonFigures(const learning::Comparison& comparison, learning::Way way);
/// `odds` tells whether the two probabilities have been followed yet.
QList<PracticeFigure> watchFigures(const learning::PracticeWatch& watch, const learning::WatchDesign& design, bool odds,
                                   const CourseName& name);
QList<PracticeFigure> burdenFigures(const desk::Burden& burden);
QList<PracticeFigure> adherenceFigures(const desk::Adherence& adherence);

/// A figure that can only say what it lacks.
PracticeFigure lackingFigure(const QString& key, const QString& title, const QString& why);

}  // namespace ebbline::deskapp
