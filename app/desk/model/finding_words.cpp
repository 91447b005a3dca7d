#include "app/desk/model/finding_words.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>

namespace ebbline::deskapp {

namespace {

class Findings {
    Q_DECLARE_TR_FUNCTIONS(Findings)
};

/// "Pain, left".
QString streamText(const recovery::Stream& stream)
{
    const auto symptom = charts::symptomName(stream.symptom);
    return stream.side == recovery::Side::none
               ? symptom
               : Findings::tr("%1, %2", "symptom, side").arg(symptom, charts::sideName(stream.side));
}

QString number(const triggers::Finding& finding, const char* name)
{
    const auto found = finding.numbers.find(name);
    if (found == finding.numbers.end()) {
        return QStringLiteral("–");
    }
    const double value = found->second;
    return value == static_cast<int>(value) ? charts::digits(static_cast<int>(value))
                                            : QLocale().toString(value, 'f', 1);
}

bool has(const triggers::Finding& finding, const char* name)
{
    return finding.numbers.contains(name);
}

/// What the note of a fold rests on, beside its score.
QString groundsOf(const triggers::Finding& finding)
{
    QStringList grounds;
    if (has(finding, "weekBefore")) {
        grounds << Findings::tr("A week before: %1.").arg(number(finding, "weekBefore"));
    }
    if (has(finding, "together")) {
        grounds << Findings::tr("Over its last three days: %1 points.").arg(number(finding, "together"));
    }
    if (has(finding, "beginning")) {
        grounds << Findings::tr("In its first days: %1.").arg(number(finding, "beginning"));
    }
    return grounds.isEmpty() ? Findings::tr("Noted because it is so late.") : grounds.join(QLatin1Char(' '));
}

QString triggerTitle(const triggers::Finding& finding)
{
    const auto stream = triggers::isOverall(finding) ? Findings::tr("All symptoms together") : streamText(finding.stream);
    switch (finding.trigger) {
    case triggers::Trigger::level:
        return Findings::tr("%1: above the usual range").arg(stream);
    case triggers::Trigger::rebound:
        return has(finding, "neverFell") ? Findings::tr("%1: rising").arg(stream) : Findings::tr("%1: rising again").arg(stream);
    case triggers::Trigger::sideDivergence:
        return Findings::tr("%1: one side much worse").arg(charts::symptomName(finding.symptom()));
    case triggers::Trigger::slowRecovery:
        return Findings::tr("%1: slow to settle").arg(stream);
    case triggers::Trigger::persistentPuckering:
        return Findings::tr("%1: does not smooth out").arg(stream);
    case triggers::Trigger::silence:
        return Findings::tr("Nothing heard");
    }
    return {};
}

QString triggerReason(const triggers::Finding& finding)
{
    const auto day = charts::digits(finding.day);
    switch (finding.trigger) {
    case triggers::Trigger::slowRecovery:
        // Today's answer alone may be a usual one, and so may the symptom that leads all of them.
        if (triggers::isOverall(finding)) {
            return Findings::tr("Day %1; among them %2, on average %3 over its last three days with an answer, usual up to %4.")
                .arg(day, charts::symptomName(finding.stream.symptom), number(finding, "mean"), number(finding, "usualHigh"));
        }
        return Findings::tr("On average %1 over its last three days with an answer, up to day %2; usual up to %3.")
            .arg(number(finding, "mean"), day, number(finding, "usualHigh"));
    case triggers::Trigger::level:
        if (triggers::isOverall(finding)) {
            return Findings::tr("Day %1; among them %2 with %3, usual up to %4.")
                .arg(day, charts::symptomName(finding.stream.symptom), number(finding, "score"), number(finding, "usualHigh"));
        }
        return Findings::tr("%1 on day %2; usual up to %3.")
            .arg(number(finding, "score"), day, number(finding, "usualHigh"));
    case triggers::Trigger::rebound:
        return Findings::tr("%1 on day %2 after a low of %3.")
            .arg(number(finding, "score"), day, number(finding, "lowest"));
    case triggers::Trigger::sideDivergence: {
        const QString sides = Findings::tr("Left %1, right %2 on day %3.")
                                  .arg(number(finding, "left"), number(finding, "right"), day);
        return has(finding, "apart") ? sides + QLatin1Char(' ')
                                           + Findings::tr("All symptoms together: %1 points apart.").arg(number(finding, "apart"))
                                     : sides;
    }
    case triggers::Trigger::persistentPuckering:
        return Findings::tr("Still %1 on day %2.").arg(number(finding, "score"), day) + QLatin1Char(' ') + groundsOf(finding);
    case triggers::Trigger::silence: {
        const QString quiet = Findings::tr("No entry for %Ln day(s).", nullptr,
                                           has(finding, "days") ? static_cast<int>(finding.numbers.at("days")) : 0);
        return has(finding, "visit") ? quiet + QLatin1Char(' ')
                                           + Findings::tr("The visit was to be on day %1; by day %2 no follow-up was recorded.")
                                                 .arg(number(finding, "visit"), day)
                                     : quiet;
    }
    }
    return {};
}

QString warningTitle(const warnings::Finding& finding)
{
    const auto sign = recovery::signFromWord(finding.rule);
    QString title;
    if (finding.rule == "fever") {
        title = Findings::tr("Fever");
    } else if (finding.rule == "fever-with-inflammation") {
        title = Findings::tr("Fever with inflammation of the face");
    } else if (finding.rule == "face-weakness-early") {
        title = Findings::tr("Weakness of the face, perhaps still the numbing");
    } else if (finding.rule == "spreading") {
        title = Findings::tr("Signs of a spreading inflammation");
    } else if (finding.rule == "severe-pain") {
        title = Findings::tr("Severe pain");
    } else if (finding.rule == "one-sided-swelling") {
        title = Findings::tr("One side swells and hurts");
    } else if (sign) {
        title = signName(*sign);
    } else {
        title = finding.reasons.empty() ? QString::fromStdString(finding.rule) : reasonText(finding.reasons.front());
    }
    return finding.side == recovery::Side::none
               ? title
               : Findings::tr("%1, %2", "finding, side").arg(title, charts::sideName(finding.side));
}

}  // namespace

QString reasonText(const std::string& reason)
{
    if (const auto sign = recovery::signFromWord(reason)) {
        return signName(*sign);
    }
    const auto text = QString::fromStdString(reason);
    static const QRegularExpression temperature(QStringLiteral("^temperature ([0-9.]+) C$"));
    if (const auto match = temperature.match(text); match.hasMatch()) {
        return Findings::tr("Temperature %1 °C").arg(QLocale().toString(match.captured(1).toDouble(), 'f', 1));
    }
    static const QRegularExpression against(QStringLiteral("^swelling ([0-9]+) against ([0-9]+)$"));
    if (const auto match = against.match(text); match.hasMatch()) {
        return Findings::tr("swelling %1 against %2")
            .arg(charts::digits(match.captured(1).toInt()), charts::digits(match.captured(2).toInt()));
    }
    static const QRegularExpression pain(QStringLiteral("^pain ([0-9]+)$"));
    if (const auto match = pain.match(text); match.hasMatch()) {
        return Findings::tr("pain %1").arg(charts::digits(match.captured(1).toInt()));
    }
    return text;
}

QString findingTitle(const triage::Finding& finding)
{
    const auto* warning = std::get_if<warnings::Finding>(&finding.what);
    return warning != nullptr ? warningTitle(*warning)
                              : triggerTitle(std::get<triggers::Finding>(finding.what));
}

namespace {

QString reasonAsRaised(const triage::Finding& finding)
{
    if (const auto* trigger = std::get_if<triggers::Finding>(&finding.what)) {
        return triggerReason(*trigger);
    }
    QStringList reasons;
    for (const auto& reason : std::get<warnings::Finding>(finding.what).reasons) {
        reasons << reasonText(reason);
    }
    const auto listed = QLocale().createSeparatedList(reasons);
    return Findings::tr("The patient answered on day %1: %2.").arg(charts::digits(finding.day), listed);
}

}  // namespace

QString findingReason(const triage::Finding& finding)
{
    const QString reason = reasonAsRaised(finding);
    if (!finding.changedSince) {
        return reason;
    }
    if (finding.recounted) {
        return reason + QLatin1Char(' ')
               + Findings::tr("Raised by a day of the treatment, or scores right after it, that were corrected since. It stays until somebody closes it.");
    }
    return reason + QLatin1Char(' ')
           + Findings::tr("Corrected or added to since: as the entries stand now, this would not be raised. It stays until somebody closes it.");
}

QString findingBasis(const triage::Finding& finding)
{
    if (const auto* warning = std::get_if<warnings::Finding>(&finding.what)) {
        return Findings::tr("Warning rule “%1”: acts whatever the curve says.")
            .arg(QString::fromStdString(warning->rule));
    }
    const auto& trigger = std::get<triggers::Finding>(finding.what);
    const auto word = triggers::word(trigger.trigger);
    const auto rule = QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()));
    if (has(trigger, "statistic") && has(trigger, "threshold")) {
        return Findings::tr("Rule “%1”: statistic %2, threshold %3.")
            .arg(rule, QLocale().toString(trigger.numbers.at("statistic"), 'f', 2),
                 QLocale().toString(trigger.numbers.at("threshold"), 'f', 2));
    }
    return Findings::tr("Rule “%1”.").arg(rule);
}

QStringList otherUrgentTitles(const triage::Row& row)
{
    QStringList titles;
    for (std::size_t i = 1; i < row.findings.size(); ++i) {
        if (row.findings[i].urgency <= recovery::Urgency::callNow) {
            titles << findingTitle(row.findings[i]);
        }
    }
    return titles;
}

recovery::Symptom symptomOf(const triage::Finding& finding)
{
    const auto* trigger = std::get_if<triggers::Finding>(&finding.what);
    return trigger != nullptr && trigger->trigger != triggers::Trigger::silence ? trigger->symptom()
                                                                                : recovery::Symptom::pain;
}

}  // namespace ebbline::deskapp
