// The practice over time, what alerts cost, and what patients did of what they were asked.

#include "app/desk/practice/figure_parts.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/protocol_board.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "core/clock/iso8601.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace ebbline::deskapp {

namespace {

charts::FigurePicture sumsOf(const learning::PracticeWatch& watch, const learning::WatchDesign& design)
{
    charts::FigurePicture picture;
    if (watch.points.empty()) {
        return picture;
    }
    const auto count = static_cast<double>(watch.points.size());
    picture.xHigh = std::max(10.0, count);
    double step = 5;
    while (picture.xHigh / step > 8) {
        step *= step == 5 || step == 50 || step == 500 ? 2 : 2.5;
    }
    for (double at = 0; at <= picture.xHigh + 1e-9; at += step) {
        picture.xTicks.append({at, charts::digits(static_cast<int>(at))});
    }
    picture.xTitle = Practice::tr("Treatments with a known outcome, one after the other");
    picture.yTitle = Practice::tr("Running sum, no unit");
    picture.yHigh = std::ceil(design.decision) + 1;
    picture.limit = design.decision;
    picture.limitText = Practice::tr("Look here from %1 on").arg(numberText(design.decision));
    for (int at = 0; at <= static_cast<int>(picture.yHigh); ++at) {
        picture.yTicks.append({static_cast<double>(at), charts::digits(at)});
    }
    charts::FigureLine line;
    int segment = -1;
    double number = 0;
    for (const auto& point : watch.points) {
        if (point.segment != segment) {
            if (!line.points.isEmpty()) {
                picture.lines.append(line);
            }
            line.points = {{number, 0}};
            segment = point.segment;
        }
        ++number;
        line.points.append({number, point.sum});
        if (point.signal) {
            picture.signalMarks.append({number, std::min(point.sum, picture.yHigh)});
        }
        if (point.complicated) {
            picture.ticksBelow.append(number);
        }
    }
    picture.lines.append(line);
    picture.belowText = Practice::tr("strokes: complicated courses");
    return picture;
}

}  // namespace

QList<PracticeFigure> watchFigures(const learning::PracticeWatch& watch, const learning::WatchDesign& design, bool odds, const CourseName& name)
{
    PracticeFigure figure;
    figure.key = QStringLiteral("practice-over-time");
    figure.title = Practice::tr("Have complications become more frequent?");
    figure.method = Practice::tr("CUSUM with one risk for every course (the sum of Steiner and others, Biostatistics 2000, adjusted to no patient): watches for odds %1 times as large as with a risk of %2; begins again after a signal.")
                        .arg(numberText(design.oddsRatio, 0), percentText(design.risk));
    figure.header = {Practice::tr("Number"), Practice::tr("Treated"), Practice::tr("Patient"), Practice::tr("Complicated"), Practice::tr("Running sum")};
    figure.csv.append({QStringLiteral("number"), QStringLiteral("course"), QStringLiteral("treated_at"), QStringLiteral("complicated"),
                       QStringLiteral("risk"), QStringLiteral("sum"), QStringLiteral("expected_minus_observed"), QStringLiteral("signal"),
                       QStringLiteral("method")});
    if (watch.points.empty()) {
        figure.says = Practice::tr("No course has a known outcome yet. Record follow-ups, and the line begins.");
        figure.enough = false;
        return {figure};
    }
    int number = 0;
    for (const auto& point : watch.points) {
        ++number;
        if (point.complicated || point.signal) {
            figure.table.append(QVariant(QStringList{charts::digits(number), dateText(point.treated), name(point.course),
                                                     point.signal ? Practice::tr("yes, and a signal") : Practice::tr("yes"),
                                                     numberText(point.sum, 2)}));
        }
        figure.csv.append({QString::number(number), QString::fromStdString(point.course),
                           QString::fromStdString(clock::toIso8601(point.treated)), QString::number(point.complicated ? 1 : 0),
                           rawNumber(point.risk), rawNumber(point.sum), rawNumber(point.expectedMinusObserved),
                           QString::number(point.signal ? 1 : 0), QStringLiteral("CUSUM, one risk for every course")});
    }
    const auto& last = watch.points.back();
    QStringList says;
    says << (watch.signalCount == 0 ? Practice::tr("No signal in %Ln treatment(s).", nullptr, number)
                                : Practice::tr("%Ln signal(s): look at the courses before each.", nullptr, static_cast<int>(watch.signalCount)));
    says << Practice::tr("Now at %1 of %2.", "sum, limit").arg(numberText(last.sum, 2), numberText(design.decision));
    const double excess = -last.expectedMinusObserved;
    says << (excess > 0 ? Practice::tr("%1 more complicated than expected.", "courses, a decimal number").arg(numberText(excess))
                        : Practice::tr("%1 fewer complicated than expected.", "courses, a decimal number").arg(numberText(-excess)));
    figure.says = says.join(QLatin1Char(' '));
    QStringList cautions;
    cautions << (odds ? Practice::tr("By chance alone such a line signals in %1 of 100 practices; if the odds really doubled, in %2.")
                            .arg(ofHundredText(watch.falseSignal), ofHundredText(watch.found))
                      : Practice::tr("How often chance alone would signal is still being worked out."));
    if (!watch.settled) {
        cautions << Practice::tr("Not settled: %Ln course(s) have no known outcome, some from before the last one shown.", nullptr,
                                 static_cast<int>(watch.unknown));
    }
    cautions << Practice::tr("The risk is an assumption, the same for every patient: a signal asks for a look, it blames nobody.");
    figure.caution = cautions.join(QLatin1Char(' '));
    figure.picture = sumsOf(watch, design);
    return {figure};
}

QList<PracticeFigure> burdenFigures(const desk::Burden& burden)
{
    PracticeFigure figure;
    figure.key = QStringLiteral("alerts");
    figure.title = Practice::tr("What alerts cost, and which were worth it");
    figure.method = Practice::tr("Alert: a warning or finding that asks for an act before the follow-up. Worth it: closed with advice, treatment or urgent care, or the visit was brought forward. Limits: Wilson, 95%. Alerts a week: over the last %Ln week(s).",
                                 nullptr, desk::burdenWeeks);
    figure.header = {Practice::tr("Closed as"), Practice::tr("Alerts")};
    figure.csv.append({QStringLiteral("what"), QStringLiteral("count"), QStringLiteral("method")});
    const auto add = [&](const QString& name, const QString& word, long count) {
        figure.table.append(QVariant(QStringList{name, charts::digits(static_cast<int>(count))}));
        figure.csv.append({word, QString::number(count), QStringLiteral("counted")});
    };
    for (int outcome = 1; outcome <= static_cast<int>(records::Outcome::notReached); ++outcome) {
        static const std::array words{"reassured", "advised", "treated-in-clinic", "sent-to-urgent-care", "not-reached"};
        add(outcomeName(static_cast<records::Outcome>(outcome)), QString::fromLatin1(words[static_cast<std::size_t>(outcome) - 1]),
            burden.byOutcome[static_cast<std::size_t>(outcome)]);
    }
    add(Practice::tr("Not closed before the follow-up"), QStringLiteral("at-follow-up"), burden.atFollowUp);
    add(Practice::tr("Still open"), QStringLiteral("open"), burden.open);
    add(Practice::tr("Apart: not heard from"), QStringLiteral("silences"), burden.silences);
    if (burden.alerts == 0) {
        figure.says = burden.courses == 0 ? Practice::tr("No course with a linked phone yet.")
                                          : Practice::tr("No alert in %Ln course(s).", nullptr, static_cast<int>(burden.courses));
        figure.enough = false;
        return {figure};
    }
    figure.says = Practice::tr("%1 raised an alert, %2 alert(s) in all, about %3 a week lately.", "courses, number, number")
                      .arg(countText(burden.alertedCourses, burden.courses), charts::digits(static_cast<int>(burden.alerts)),
                           numberText(burden.perWeek))
                  + QLatin1Char(' ')
                  + (burden.worthShare ? Practice::tr("Worth it, of those closed: %1.").arg(shareText(burden.worthShare))
                                       : lackText(burden.worthShare.error()) + QStringLiteral("."));
    figure.caution = Practice::tr("An alert that led to reassurance is counted as not worth it here. The patient may see that otherwise.");
    figure.picture.rows.append(rangeOf(Practice::tr("Worth it"), burden.worthShare));
    scaleShares(figure.picture, 1);
    figure.picture.xTitle = Practice::tr("Per cent of closed alerts");
    return {figure};
}

QList<PracticeFigure> adherenceFigures(const desk::Adherence& adherence)
{
    PracticeFigure figure;
    figure.key = QStringLiteral("adherence");
    figure.title = Practice::tr("What patients did of what they were asked");
    figure.method = Practice::tr("Entries: days on which the care plan asked and something was written. Reminders: answered “done”. Limits: Wilson, 95%; reminders of one patient resemble each other, so they are too narrow.");
    figure.caution = Practice::tr("An unanswered reminder is not a missed one: she may have done it without saying so.");
    figure.header = {Practice::tr("Asked for"), Practice::tr("Asked"), Practice::tr("Done"), Practice::tr("Not done"), Practice::tr("Share, 95% limits")};
    figure.csv.append({QStringLiteral("what"), QStringLiteral("asked"), QStringLiteral("done"), QStringLiteral("not_done"),
                       QStringLiteral("share"), QStringLiteral("low"), QStringLiteral("high"), QStringLiteral("method")});
    const auto add = [&](const QString& name, const QString& word, long asked, long done, const std::optional<long>& notDone) {
        const auto share = learning::shareOf(done, asked);
        auto row = rangeOf(name, share);
        figure.picture.rows.append(row);
        figure.table.append(QVariant(QStringList{name, charts::digits(static_cast<int>(asked)), charts::digits(static_cast<int>(done)),
                                                 notDone ? charts::digits(static_cast<int>(*notDone)) : QStringLiteral("–"), row.text}));
        figure.csv.append({word, QString::number(asked), QString::number(done), notDone ? QString::number(*notDone) : QString(),
                           share ? rawNumber(share->share) : QString(), share ? rawNumber(share->limits.low) : QString(),
                           share ? rawNumber(share->limits.high) : QString(), QStringLiteral("Wilson 95 %")});
    };
    if (adherence.courses == 0) {
        figure.says = Practice::tr("No course with a linked phone yet.");
        figure.enough = false;
        return {figure};
    }
    add(Practice::tr("Days with an entry"), QStringLiteral("entries"), adherence.askedDays, adherence.toldDays, {});
    for (const auto& kept : adherence.kept) {
        add(instructionName(kept.kind), QStringLiteral("reminder-%1").arg(static_cast<int>(kept.kind)), kept.due, kept.done, kept.notDone);
    }
    scaleShares(figure.picture, 1);
    figure.picture.xTitle = Practice::tr("Per cent of times asked");
    figure.says = Practice::tr("%1 wrote on %2 of %3 days asked.", "courses, days, days")
                      .arg(Practice::tr("%Ln course(s)", nullptr, static_cast<int>(adherence.courses)),
                           charts::digits(static_cast<int>(adherence.toldDays)), charts::digits(static_cast<int>(adherence.askedDays)));
    return {figure};
}

}  // namespace ebbline::deskapp
