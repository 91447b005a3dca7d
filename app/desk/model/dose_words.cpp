#include "app/desk/model/dose_words.h"
#include "app/charts/curve_words.h"

#include <QCoreApplication>
#include <QLocale>

#include <cmath>

namespace ebbline::deskapp {

namespace {

class Dose {
    Q_DECLARE_TR_FUNCTIONS(Dose)
};

QString number(double value, int decimals)
{
    return QLocale().toString(value, 'f', decimals);
}

QString shortest(double value)
{
    return QLocale().toString(value, 'f', QLocale::FloatingPointShortest);
}

/// A sum of many tracks is off by some 1e-15 of itself: what is whole but for that is whole.
constexpr double rounding = 1e-9;

double wholeBelow(double value)
{
    return std::floor(value * (1 + rounding));
}

}  // namespace

DoseWords doseWords(const recovery::Treatment& treatment, const anaesthesia::Limits& limits)
{
    DoseWords words;
    const auto dose = anaesthesia::doseOf(treatment, limits);
    const bool solutionWith = treatment.anaesthetic.drug == recovery::Drug::lidocaineWithEpinephrine;
    const bool epinephrine = dose ? dose->limitedAs == recovery::Drug::lidocaineWithEpinephrine : solutionWith;
    const auto kind = epinephrine    ? Dose::tr("with epinephrine")
                      : dose && dose->epinephrineInPart ? Dose::tr("plain, the lower one, as not all of it had epinephrine")
                      : solutionWith ? Dose::tr("plain, the lower one, as some was given otherwise")
                                     : Dose::tr("plain");
    const anaesthesia::Limits label;
    words.source = Dose::tr("Limit by US label, %1: %2 mg/kg, in general not over %3 mg")
                       .arg(kind, number(epinephrine ? label.epinephrineMgPerKg : label.plainMgPerKg, 1),
                            number(epinephrine ? label.epinephrineCapMg : label.plainCapMg, 0));
    const double perKg = epinephrine ? limits.epinephrineMgPerKg : limits.plainMgPerKg;
    const double cap = epinephrine ? limits.epinephrineCapMg : limits.plainCapMg;
    const bool lowerCap = cap < (epinephrine ? label.epinephrineCapMg : label.plainCapMg);
    if (lowerCap || perKg < (epinephrine ? label.epinephrineMgPerKg : label.plainMgPerKg)) {
        words.clinic = Dose::tr("Your clinic's limit, %1: %2 mg/kg, not over %3 mg").arg(kind, shortest(perKg), shortest(cap));
    }
    if (!dose) {
        words.problem = Dose::tr("No dose can be shown: check the solution, the volumes and the weight.");
        return words;
    }
    words.given = Dose::tr("%1 mL given, %2 mg lidocaine (%3 mg/mL)")
                      .arg(number(dose->givenMl, 1), number(dose->solutionMg, 0), number(dose->concentrationMgPerMl, 1));
    if (dose->epinephrineUg > 0) {
        words.given += QStringLiteral(" · ") + (dose->epinephrineInPart ? Dose::tr("at most %1 µg epinephrine") : Dose::tr("%1 µg epinephrine"))
                              .arg(number(dose->epinephrineUg, 0));
    }
    if (dose->otherwiseMg > 0) {
        words.given += QStringLiteral(" · ")
                       + Dose::tr("%1 mg given otherwise, %2 mg in all").arg(shortest(dose->otherwiseMg), number(dose->givenMg, 0));
    }
    if (!dose->maximumMg || *dose->maximumMg <= 0) {
        words.maximum = Dose::tr("Enter the weight to see the maximum.");
    } else {
        words.part = dose->givenMg / *dose->maximumMg;
        // Rounded down: a limit is never shown larger than it is.
        words.maximum = Dose::tr("At most %1 mg").arg(number(wholeBelow(*dose->maximumMg), 0));
        if (dose->maximumMl) {
            words.maximum += QStringLiteral(", ")
                             + Dose::tr("%1 mL of this solution").arg(number(wholeBelow(*dose->maximumMl * 10) / 10, 1));
        }
        if (dose->capped) {
            words.maximum += QStringLiteral(" ") + (lowerCap ? Dose::tr("(your clinic's cap)") : Dose::tr("(the label's cap)"));
        }
        words.share = Dose::tr("%1 of the maximum").arg(charts::withPercent(QLocale().toString(qRound(words.part * 100))));
        if (dose->overMaximum) {
            words.warning = Dose::tr("Over the maximum by %1 mg. Give no more.")
                                .arg(number(std::ceil(dose->givenMg - *dose->maximumMg - rounding * dose->givenMg), 0));
        }
    }
    if (!dose->tracksOverHalfMl.empty()) {
        QStringList tracks;
        for (const int track : dose->tracksOverHalfMl) {
            tracks << QLocale().toString(track);
        }
        words.tracks = Dose::tr("More than %1 mL along track %2 (common practice, no source)", nullptr,
                                static_cast<int>(tracks.size()))
                           .arg(number(0.5, 1), QLocale().createSeparatedList(tracks));
    }
    return words;
}

}  // namespace ebbline::deskapp
