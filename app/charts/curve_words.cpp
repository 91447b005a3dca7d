#include "app/charts/curve_words.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>

namespace ebbline::charts {

namespace {

/// The context of these words in the translation files.
class Charts {
    Q_DECLARE_TR_FUNCTIONS(Charts)
};

QString placeInBand(const curves::Point& point, const std::vector<curves::BandDay>& band)
{
    const auto found = std::find_if(band.begin(), band.end(), [&](const curves::BandDay& day) {
        return day.day == static_cast<int>(point.day);
    });
    if (found == band.end()) {
        return {};
    }
    const auto& usual = found->inner;
    const QString text = point.points > usual.high ? Charts::tr("above the usual range (%1 to %2)")
                         : point.points < usual.low ? Charts::tr("below the usual range (%1 to %2)")
                                                    : Charts::tr("inside the usual range (%1 to %2)");
    return text.arg(digits(usual.low), digits(usual.high));
}

}  // namespace

QString digits(int number)
{
    auto locale = QLocale();
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(number);
}

/// As the Unicode Common Locale Data Repository has it (numbers, percent formats), for the languages of our programs.
QString withPercent(const QString& number)
{
    const QLocale locale;
    constexpr QChar noBreak(0x00A0);
    constexpr QChar narrow(0x202F);
    switch (locale.language()) {
    case QLocale::German:
    case QLocale::Spanish: return number + noBreak + locale.percent();
    case QLocale::French: return number + narrow + locale.percent();
    case QLocale::Turkish: return locale.percent() + number;
    default: return number + locale.percent();
    }
}

QString symptomName(recovery::Symptom symptom)
{
    switch (symptom) {
    case recovery::Symptom::pain:
        return Charts::tr("Pain");
    case recovery::Symptom::swelling:
        return Charts::tr("Swelling");
    case recovery::Symptom::bruising:
        return Charts::tr("Bruising");
    case recovery::Symptom::tightness:
        return Charts::tr("Tightness");
    case recovery::Symptom::twinges:
        return Charts::tr("Twinges");
    case recovery::Symptom::puckering:
        return Charts::tr("Puckering");
    case recovery::Symptom::numbness:
        return Charts::tr("Numbness");
    }
    return {};
}

QString sideName(recovery::Side side)
{
    switch (side) {
    case recovery::Side::left:
        return Charts::tr("left");
    case recovery::Side::right:
        return Charts::tr("right");
    case recovery::Side::none:
        break;
    }
    return {};
}

QString streamName(const recovery::Stream& stream)
{
    const auto symptom = symptomName(stream.symptom);
    switch (stream.side) {
    case recovery::Side::left:
        return Charts::tr("%1, patient's left").arg(symptom);
    case recovery::Side::right:
        return Charts::tr("%1, patient's right").arg(symptom);
    case recovery::Side::none:
        break;
    }
    return symptom;
}

namespace {

/// Year, month and day in figures keep their order inside text that runs from the right.
QString inItsOrder(const QString& date)
{
    constexpr QChar isolate(0x2066);
    constexpr QChar end(0x2069);
    return QLocale().textDirection() == Qt::RightToLeft ? isolate + date + end : date;
}

}  // namespace

QString bandLegend(const bands::Provenance& provenance)
{
    const auto version = QString::fromStdString(provenance.version);
    if (provenance.assumption) {
        return Charts::tr("Usual range, 10th to 90th of 100 patients (%1): an assumption, "
               "no courses of this clinic behind it").arg(version);
    }
    if (provenance.courses < bands::fewestCourses) {
        return Charts::tr("Usual range, 10th to 90th of 100 patients (%1): too few, only "
               "%Ln course(s) behind it", nullptr, provenance.courses).arg(version);
    }
    return Charts::tr("Usual range, 10th to 90th of 100 patients (%1): from %Ln course(s), "
               "learned %2", nullptr, provenance.courses)
        .arg(version, inItsOrder(QString::fromStdString(provenance.learnedOn)));
}

QString curveSentence(const curves::Curve& curve)
{
    const auto name = streamName(curve.stream);
    if (curve.points.empty()) {
        return Charts::tr("%1: nothing recorded yet.").arg(name);
    }
    const auto& first = curve.points.front();
    const auto& last = curve.points.back();
    QString text = Charts::tr("%1: %Ln score(s), day %2 to day %3.", nullptr, static_cast<int>(curve.points.size()))
                       .arg(name, digits(static_cast<int>(first.day)), digits(static_cast<int>(last.day)));
    if (curve.peak) {
        text += u' ' + Charts::tr("Highest %1 on day %2.")
                           .arg(digits(curve.peak->points), digits(static_cast<int>(curve.peak->day)));
    }
    text += u' ' + Charts::tr("Last %1 on day %2")
                       .arg(digits(last.points), digits(static_cast<int>(last.day)));
    const auto place = placeInBand(last, curve.band);
    text += place.isEmpty() ? QStringLiteral(".") : Charts::tr(", %1.").arg(place);
    if (curve.forecast) {
        text += u' ' + Charts::tr("Expected on day %1: %2 to %3, most likely %4.")
                           .arg(digits(curve.forecast->day), digits(curve.forecast->low),
                                digits(curve.forecast->high), digits(curve.forecast->median));
    }
    return text;
}

}  // namespace ebbline::charts
