#pragma once
/// \file
/// The words of a curve, translated: names of symptoms and sides, which band is drawn, and the
/// sentence that says a chart to who cannot see it. Sides are named as the patient's own.

#include "core/curves/curve.h"

#include <QString>

namespace ebbline::charts {

QString symptomName(recovery::Symptom symptom);
/// "left", "right", or empty for a symptom without a side.
QString sideName(recovery::Side side);
/// "Pain, patient's left".
QString streamName(const recovery::Stream& stream);

/// "Usual range (10th to 90th of 100), seed-1: an assumption, no courses behind it yet."
QString bandLegend(const bands::Provenance& provenance);

/// "Pain, patient's left: 9 entries, day 0 to day 8. Highest 5 on day 1. Last 1 on day 8, inside
/// the usual range (0 to 3)." Says so too when nothing was recorded.
QString curveSentence(const curves::Curve& curve);

/// A whole number in the digits of the language.
QString digits(int number);
/// A number with the sign for percent as the language sets it: "23%" in English, "23 %" with a space that does not break
/// in German, Spanish and French, and a narrow one in French.
QString withPercent(const QString& number);

}  // namespace ebbline::charts
