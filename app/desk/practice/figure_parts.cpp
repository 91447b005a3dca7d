#include "app/desk/practice/figure_parts.h"

#include "app/charts/curve_words.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace ebbline::deskapp {

void scaleShares(charts::FigurePicture& picture, double highest)
{
    double step = 0.01;
    for (const double candidate : {0.02, 0.05, 0.1, 0.2}) {
        if (highest / step > 6) {
            step = candidate;
        }
    }
    const int steps = std::max(1, static_cast<int>(std::ceil(std::min(1.0, highest) / step - 1e-9)));
    picture.xLow = 0;
    picture.xHigh = steps * step;
    for (int i = 0; i <= steps; ++i) {
        picture.xTicks.append({i * step, charts::digits(static_cast<int>(std::lround(100 * i * step)))});
    }
    picture.xTitle = Practice::tr("Per cent of courses");
}

void scaleDays(charts::FigurePicture& picture)
{
    picture.xLow = 0;
    picture.xHigh = 21;
    for (const int day : {0, 1, 3, 7, 14, 21}) {
        picture.xTicks.append({static_cast<double>(day), charts::digits(day)});
    }
    picture.xTitle = Practice::tr("Days since the treatment");
}

void scaleAbout0(charts::FigurePicture& picture, double widest, double unit)
{
    double step = unit;
    while (widest / step > 4) {
        step *= 2;
    }
    const int steps = std::max(1, static_cast<int>(std::ceil(widest / step)));
    picture.xLow = -steps * step;
    picture.xHigh = steps * step;
    picture.reference = 0;
    for (int i = -steps; i <= steps; ++i) {
        picture.xTicks.append({i * step, numberText(i * step, step < 1 ? 1 : 0)});
    }
}

charts::RangeRow rangeOf(const QString& label, const learning::Answer<learning::Share>& share)
{
    charts::RangeRow row;
    row.label = label;
    row.text = shareText(share);
    row.known = share.has_value();
    if (share) {
        row.low = share->limits.low;
        row.value = share->share;
        row.high = share->limits.high;
    }
    return row;
}

PracticeFigure sharesFigure(const QString& key, const QString& title, const std::vector<learning::GroupShare>& groups,
                            const std::function<QString(const std::string&)>& nameOf)
{
    PracticeFigure figure;
    figure.key = key;
    figure.title = title;
    figure.method = Practice::tr("Share of courses whose outcome is known. Limits: Wilson, 95%. Courses without a follow-up are left out and counted apart.");
    figure.header = {Practice::tr("Group"), Practice::tr("Complicated"), Practice::tr("Outcome known"), Practice::tr("Not known"),
                     Practice::tr("Share, 95% limits")};
    figure.csv.append({QStringLiteral("group"), QStringLiteral("complicated"), QStringLiteral("known"), QStringLiteral("unknown"),
                       QStringLiteral("share"), QStringLiteral("low"), QStringLiteral("high"), QStringLiteral("method")});
    double highest = 0.05;
    figure.enough = false;
    for (const auto& group : groups) {
        const auto name = nameOf(group.group);
        figure.picture.rows.append(rangeOf(name, group.share));
        figure.table.append(QVariant(QStringList{name, charts::digits(static_cast<int>(group.complicated)),
                                                 charts::digits(static_cast<int>(group.known)),
                                                 charts::digits(static_cast<int>(group.unknown)), shareText(group.share)}));
        QStringList line{QString::fromStdString(group.group), QString::number(group.complicated), QString::number(group.known),
                         QString::number(group.unknown), {}, {}, {}, QStringLiteral("Wilson 95 %")};
        if (group.share) {
            highest = std::max(highest, group.share->limits.high);
            line[4] = rawNumber(group.share->share);
            line[5] = rawNumber(group.share->limits.low);
            line[6] = rawNumber(group.share->limits.high);
            figure.enough = true;
        }
        figure.csv.append(line);
    }
    scaleShares(figure.picture, highest);
    return figure;
}

PracticeFigure lackingFigure(const QString& key, const QString& title, const QString& why)
{
    PracticeFigure figure;
    figure.key = key;
    figure.title = title;
    figure.says = why;
    figure.enough = false;
    return figure;
}

}  // namespace ebbline::deskapp
