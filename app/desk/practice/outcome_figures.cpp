// Complications, time to settle, and two groups side by side.

#include "app/desk/practice/figure_parts.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/words.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace ebbline::deskapp {

namespace {

QString zoneFromWord(const std::string& word)
{
    for (const recovery::Zone zone : recovery::allZones) {
        if (word == recovery::word(zone)) {
            return zoneName(zone);
        }
    }
    return Practice::tr("Not told");
}

QString daysText(const learning::Mean& mean)
{
    return Practice::tr("%1 days (%2 to %3)", "mean, its limits").arg(numberText(mean.days), numberText(mean.low), numberText(mean.high));
}

QString medianText(const std::optional<learning::Median>& median)
{
    if (!median) {
        return Practice::tr("not reached");
    }
    const auto end = [](const std::optional<double>& limit) { return limit ? numberText(*limit) : QStringLiteral("–"); };
    return Practice::tr("%1 (%2 to %3)", "share, its limits").arg(numberText(median->days), end(median->low), end(median->high));
}

charts::FigurePicture stepsOf(const std::vector<learning::Resolution>& resolutions)
{
    charts::FigurePicture picture;
    scaleDays(picture);
    picture.yTitle = Practice::tr("Courses that still have it, per cent");
    for (const int share : {0, 25, 50, 75, 100}) {
        picture.yTicks.append({share / 100.0, charts::digits(share)});
    }
    int drawn = 0;
    for (const auto& resolution : resolutions) {
        if (!resolution.times || resolution.times->curve.steps.empty()) {
            continue;
        }
        charts::FigureLine line;
        line.label = charts::symptomName(resolution.symptom);
        line.stepped = true;
        line.stroke = static_cast<charts::FigureLine::Stroke>(drawn % 3);
        line.soft = drawn >= 3;
        line.points.append({0, 1});
        for (const auto& step : resolution.times->curve.steps) {
            line.points.append({step.time, step.survival});
        }
        picture.lines.append(line);
        ++drawn;
    }
    return drawn > 0 ? picture : charts::FigurePicture();
}

}  // namespace

QList<PracticeFigure> complicationFigures(const desk::PracticeFigures& figures)
{
    auto all = sharesFigure(QStringLiteral("complications"), Practice::tr("Complicated courses"), {figures.all},
                            [](const std::string&) { return Practice::tr("All courses"); });
    all.says = figures.all.share
                   ? Practice::tr("%1 were complicated: %2.", "courses, share")
                         .arg(countText(figures.all.complicated, figures.all.known), shareText(figures.all.share))
                   : lackText(figures.all.share.error()) + QStringLiteral(".");
    all.caution = figures.all.unknown > 0
                      ? Practice::tr("%Ln course(s) without a follow-up are not counted: they may be worse or better.", nullptr,
                                     static_cast<int>(figures.all.unknown))
                      : QString();
    QList<PracticeFigure> list{all};
    if (!figures.kinds.empty()) {
        auto kinds = sharesFigure(QStringLiteral("complication-kinds"), Practice::tr("By kind"), figures.kinds,
                                  [](const std::string& word) { return complicationName(QString::fromStdString(word)); });
        kinds.says = Practice::tr("Most often: %1.").arg(complicationName(QString::fromStdString(figures.kinds.front().group)));
        kinds.caution = Practice::tr("A course with two kinds counts in both.");
        list.append(kinds);
    } else {
        list.append(lackingFigure(QStringLiteral("complication-kinds"), Practice::tr("By kind"),
                                  Practice::tr("No complication is on record yet. That is no proof that there is none: the limits above say how many there may be.")));
    }
    auto zones = sharesFigure(QStringLiteral("complication-zones"), Practice::tr("By zone"), figures.zones, zoneFromWord);
    zones.says = Practice::tr("A course counts in every zone that it has.");
    zones.caution = Practice::tr("Shares of zones do not add up: neighbouring zones share their patients.");
    list.append(zones);
    return list;
}

QList<PracticeFigure> resolutionFigures(const desk::PracticeFigures& figures)
{
    PracticeFigure figure;
    figure.key = QStringLiteral("time-to-settle");
    figure.title = Practice::tr("How long symptoms last");
    figure.method = Practice::tr("Gone: a score of 1 or below on two days in a row that last; the worse side counts. Curves: Kaplan-Meier, median with limits of Brookmeyer and Crowley, 95%. Mean days up to day 20, normal limits.");
    figure.caution = Practice::tr("Who feels well may stop writing: then this looks slower than it is.");
    figure.header = {Practice::tr("Symptom"), Practice::tr("Courses with it"), Practice::tr("Gone"), Practice::tr("Median day, 95% limits"),
                     Practice::tr("Days with it up to day 20")};
    figure.csv.append({QStringLiteral("symptom"), QStringLiteral("courses"), QStringLiteral("gone"), QStringLiteral("never"),
                       QStringLiteral("median_days"), QStringLiteral("median_low"), QStringLiteral("median_high"),
                       QStringLiteral("mean_days"), QStringLiteral("mean_low"), QStringLiteral("mean_high"), QStringLiteral("method")});
    QStringList medians;
    figure.enough = false;
    for (const auto& resolution : figures.resolutions) {
        const auto name = charts::symptomName(resolution.symptom);
        QStringList line{QString::fromUtf8(recovery::word(resolution.symptom)), QString::number(resolution.courses),
                         QString::number(resolution.resolved), QString::number(resolution.never), {}, {}, {}, {}, {}, {},
                         QStringLiteral("Kaplan-Meier; restricted mean to day 20; 95 %")};
        QStringList cells{name, charts::digits(static_cast<int>(resolution.courses)), charts::digits(static_cast<int>(resolution.resolved))};
        if (resolution.times) {
            const auto& times = *resolution.times;
            figure.enough = true;
            cells << medianText(times.median) << (times.mean ? daysText(*times.mean) : lackText(times.mean.error()));
            if (times.median) {
                medians << Practice::tr("%1 %2", "symptom, days").arg(name, numberText(times.median->days));
                line[4] = rawNumber(times.median->days);
                line[5] = times.median->low ? rawNumber(*times.median->low) : QString();
                line[6] = times.median->high ? rawNumber(*times.median->high) : QString();
            }
            if (times.mean) {
                line[7] = rawNumber(times.mean->days);
                line[8] = rawNumber(times.mean->low);
                line[9] = rawNumber(times.mean->high);
            }
        } else {
            cells << lackText(resolution.times.error()) << QString();
        }
        figure.table.append(QVariant(cells));
        figure.csv.append(line);
    }
    figure.picture = stepsOf(figures.resolutions);
    figure.says = medians.isEmpty() ? Practice::tr("Not enough to say: for no symptom are there enough courses in which it went.")
                                    : Practice::tr("Half were rid of it by day: %1.").arg(QLocale().createSeparatedList(medians));
    return {figure};
}

namespace {

PracticeFigure shareComparison(const learning::Comparison& comparison, learning::Way way, const QString& first, const QString& second)
{
    auto figure = sharesFigure(QStringLiteral("comparison-complications"), Practice::tr("Complications side by side"),
                               {comparison.first, comparison.second}, [&](const std::string& group) { return groupName(way, group); });
    figure.method = Practice::tr("Shares: Wilson, 95%. Difference: Newcombe. Test: Fisher, two-sided. Power: exact for this test.");
    if (!comparison.shares) {
        figure.says = lackText(comparison.shares.error()) + QStringLiteral(".");
        figure.enough = false;
        return figure;
    }
    const auto& shares = *comparison.shares;
    figure.says = Practice::tr("%1 less %2: %3 points of 100 (%4 to %5).", "group, group, difference, its limits")
                      .arg(first, second, numberText(100 * shares.difference.difference), numberText(100 * shares.difference.low),
                           numberText(100 * shares.difference.high));
    QStringList power;
    power << Practice::tr("So many courses would find a doubling of %1 in %2 of 100 cases.", "share, number")
                 .arg(percentText(shares.reference), numberText(100 * shares.powerForDouble, 0));
    power << (shares.smallestFound ? Practice::tr("Found in 80 of 100 cases: %1 or more beside it.").arg(percentText(*shares.smallestFound))
                                   : Practice::tr("No difference at all would be found in 80 of 100 cases."));
    constexpr double smallest = 0.001;  // as three decimals show it
    power << (shares.probability && *shares.probability < smallest
                  ? Practice::tr("Probability by chance alone: below %1.").arg(numberText(smallest, 3))
              : shares.probability ? Practice::tr("Probability by chance alone: %1.").arg(numberText(*shares.probability, 3))
                                 : Practice::tr("No test: all ended alike."));
    figure.caution = power.join(QLatin1Char(' '));
    figure.csv.append({QStringLiteral("difference"), {}, {}, {}, rawNumber(shares.difference.difference), rawNumber(shares.difference.low),
                       rawNumber(shares.difference.high), QStringLiteral("Newcombe 95 %")});
    figure.csv.append({QStringLiteral("fisher_two_sided"), {}, {}, {}, shares.probability ? rawNumber(*shares.probability) : QString(), {}, {},
                       QStringLiteral("Fisher exact")});
    figure.csv.append({QStringLiteral("power_for_double"), {}, {}, {}, rawNumber(shares.powerForDouble), {}, {},
                       QStringLiteral("exact power of Fisher's test")});
    figure.csv.append({QString::fromUtf8(learning::caution), {}, {}, {}, {}, {}, {}, {}});
    return figure;
}

PracticeFigure timeComparison(const learning::Comparison& comparison, const QString& first, const QString& second)
{
    PracticeFigure figure;
    figure.key = QStringLiteral("comparison-times");
    figure.title = Practice::tr("Days with each symptom, difference");
    figure.method = Practice::tr("Difference of mean days up to day 20 (restricted means), normal limits, 95%; log-rank test.");
    figure.caution = Practice::tr("Seven symptoms are seven tests: among them one probability below 0.05 is common if nothing differs.");
    figure.header = {Practice::tr("Symptom"), first, second, Practice::tr("Difference, days"), Practice::tr("By chance"),
                     Practice::tr("Found in 80 of 100")};
    figure.csv.append({QStringLiteral("symptom"), QStringLiteral("first_days"), QStringLiteral("second_days"), QStringLiteral("difference"),
                       QStringLiteral("low"), QStringLiteral("high"), QStringLiteral("log_rank"), QStringLiteral("smallest_found"),
                       QStringLiteral("method")});
    double widest = 1;
    figure.enough = false;
    for (const auto& [symptom, times] : comparison.symptoms) {
        charts::RangeRow row;
        row.label = charts::symptomName(symptom);
        QStringList line{QString::fromUtf8(recovery::word(symptom)), {}, {}, {}, {}, {}, {}, {},
                         QStringLiteral("restricted means to day 20; log-rank")};
        if (times) {
            figure.enough = row.known = true;
            row.low = times->low;
            row.value = times->difference;
            row.high = times->high;
            row.text = Practice::tr("%1 days (%2 to %3)", "mean, its limits")
                           .arg(numberText(times->difference), numberText(times->low), numberText(times->high));
            widest = std::max({widest, std::abs(times->low), std::abs(times->high)});
            figure.table.append(QVariant(QStringList{row.label, numberText(times->first.days), numberText(times->second.days), row.text,
                                                     numberText(times->probability, 3), Practice::tr("%1 days").arg(numberText(times->smallestFound))}));
            const std::array values{times->first.days, times->second.days, times->difference, times->low, times->high, times->probability,
                                    times->smallestFound};
            for (std::size_t i = 0; i < values.size(); ++i) {
                line[static_cast<qsizetype>(i) + 1] = rawNumber(values[i]);
            }
        } else {
            row.text = lackText(times.error());
            figure.table.append(QVariant(QStringList{row.label, {}, {}, row.text, {}, {}}));
        }
        figure.picture.rows.append(row);
        figure.csv.append(line);
    }
    figure.csv.append({QString::fromUtf8(learning::caution), {}, {}, {}, {}, {}, {}, {}, {}});
    scaleAbout0(figure.picture, std::min(widest, 20.0), 0.5);
    figure.picture.xTitle = Practice::tr("Days: to the left %1 is shorter, to the right %2", "group, group").arg(first, second);
    figure.says = figure.enough ? Practice::tr("Days with the symptom up to day 20, %1 less %2.", "group, group").arg(first, second)
                                : Practice::tr("Not enough to say: for no symptom are there enough courses in both groups.");
    return figure;
}

}  // namespace

QList<PracticeFigure> comparisonFigures(const learning::Comparison& comparison, learning::Way way)
{
    const auto first = groupName(way, comparison.first.group);
    const auto second = groupName(way, comparison.second.group);
    return {shareComparison(comparison, way, first, second), timeComparison(comparison, first, second)};
}

}  // namespace ebbline::deskapp
