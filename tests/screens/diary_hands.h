#pragma once
/// \file
/// The kinds of hands on the pages of the diary, in the languages in which it is tried: controls are named as the
/// program names them, through the translator that it has installed.

#include "tests/screens/demo_patient.h"
#include "tests/screens/hands.h"

#include <QQuickWindow>

#include <vector>

namespace ebbline::screens {

struct Way {
    int kind;  ///< of hands()
    const char* language;
};
/// A finger, a keyboard and a screen reader in each of the languages.
extern const std::vector<Way> ways;
/// The same for pages without a field to type into: with the return key too, in German instead of Space.
extern const std::vector<Way> waysWithReturn;

/// As the program says it now. \param context  of the translation: the page, or the class with its namespace
QString said(const char* context, const char* source);
/// The name of a number of a question: "How swollen is it? Your left: 3 of 10".
QString markName(recovery::Symptom symptom, recovery::Side side, int points);

/// A phone's window, 360 x 780, that has the keyboard.
void open(app::DiaryProgram& program);

}  // namespace ebbline::screens
