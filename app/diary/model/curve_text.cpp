#include "app/diary/model/curve_text.h"

#include "app/diary/model/times.h"
#include "app/diary/model/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace ebbline::diaryapp {

namespace {

QString said(const char* text)
{
    return QCoreApplication::translate("DiaryCurve", text);
}

QString place(const curves::Point& point, const std::vector<curves::BandDay>& band)
{
    const auto found = std::find_if(band.begin(), band.end(), [&](const curves::BandDay& day) {
        return day.day == static_cast<int>(point.day);
    });
    if (found == band.end())
        return {};
    const bands::Range& usual = found->inner;
    const QString text = point.points > usual.high ? said(QT_TRANSLATE_NOOP("DiaryCurve", "Above the usual range, %1 to %2."))
                         : point.points < usual.low ? said(QT_TRANSLATE_NOOP("DiaryCurve", "Below the usual range, %1 to %2."))
                                                    : said(QT_TRANSLATE_NOOP("DiaryCurve", "Inside the usual range, %1 to %2."));
    return QLatin1Char(' ') + text.arg(digits(usual.low), digits(usual.high));
}

}  // namespace

QString curveText(const curves::Curve& curve)
{
    if (curve.points.empty())
        return said(QT_TRANSLATE_NOOP("DiaryCurve", "Nothing written yet."));
    const curves::Point& last = curve.points.back();
    //: "Day 4: 3 of 10."
    QString text = said(QT_TRANSLATE_NOOP("DiaryCurve", "%1: %2 of 10.")).arg(dayText(static_cast<int>(last.day)), digits(last.points))
                   + place(last, curve.band);
    if (curve.peak && curve.peak->points > last.points)
        text += QLatin1Char(' ') + said(QT_TRANSLATE_NOOP("DiaryCurve", "Highest so far: %1, on day %2."))
                                       .arg(digits(curve.peak->points), digits(static_cast<int>(curve.peak->day)));
    return text;
}

}  // namespace ebbline::diaryapp
