// What a finding means for the patient. What to do comes before why.

#include "app/diary/model/entry_words.h"
#include "app/diary/model/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <cmath>

namespace ebbline::diaryapp {

namespace {

QString said(const char* text)
{
    return QCoreApplication::translate("DiaryAdvice", text);
}

QString titleFor(recovery::Urgency urgency)
{
    switch (urgency) {
    case recovery::Urgency::emergency: return said(QT_TRANSLATE_NOOP("DiaryAdvice", "Call the emergency number now"));
    case recovery::Urgency::callNow: return said(QT_TRANSLATE_NOOP("DiaryAdvice", "Call your clinic now"));
    case recovery::Urgency::nextWorkingDay: return said(QT_TRANSLATE_NOOP("DiaryAdvice", "Your clinic should hear of this"));
    case recovery::Urgency::atReview: return said(QT_TRANSLATE_NOOP("DiaryAdvice", "Bring this up at your visit"));
    }
    return {};
}

QString generalAdvice(recovery::Urgency urgency)
{
    switch (urgency) {
    case recovery::Urgency::emergency: return said(QT_TRANSLATE_NOOP("DiaryAdvice", "Do not wait and do not drive yourself. If nobody answers, call again, and ask someone near you for help. Then tell your clinic."));
    case recovery::Urgency::callNow: return said(QT_TRANSLATE_NOOP("DiaryAdvice", "Call, do not write. If nobody answers, call the second number. If nobody answers within 30 minutes, go to urgent care."));
    case recovery::Urgency::nextWorkingDay: return said(QT_TRANSLATE_NOOP("DiaryAdvice", "It is in your entry. If you hear nothing by the next working day, call. If it gets worse, call at once."));
    case recovery::Urgency::atReview: return said(QT_TRANSLATE_NOOP("DiaryAdvice", "It is in your entry. If it gets worse, call."));
    }
    return {};
}

/// A first thing to do that belongs to one rule; empty where the general advice is all.
QString firstAid(const std::string& rule)
{
    if (rule == "allergy")
        return said(QT_TRANSLATE_NOOP("DiaryAdvice", "If you were given an adrenaline pen, use it. Lie flat with your legs up. If it is hard to breathe, sit up."));
    if (rule == "bleeding")
        return said(QT_TRANSLATE_NOOP("DiaryAdvice", "Keep pressing with a clean cloth."));
    if (rule == "thread-out")
        return said(QT_TRANSLATE_NOOP("DiaryAdvice", "Do not pull it and do not cut it. Cover it."));
    if (rule == "fever-with-inflammation")
        return said(QT_TRANSLATE_NOOP("DiaryAdvice", "This needs to be seen tonight, not tomorrow."));
    if (rule == "face-weakness-early")
        return said(QT_TRANSLATE_NOOP("DiaryAdvice", "It may be the numbing. It should be gone 8 hours after the treatment. If it is not, call."));
    return {};
}

QString reasonOf(const std::string& reason, bool fahrenheit)
{
    const auto space = reason.find(' ');
    const std::string first = reason.substr(0, space);
    if (const auto sign = recovery::signFromWord(first))
        return signQuestion(*sign);
    const QString value = QString::fromStdString(reason.substr(std::min(reason.size(), space + 1))).section(QLatin1Char(' '), 0, 0);
    if (first == "temperature")
        if (const auto temperature = recovery::Temperature::celsius(value.toDouble()))
            return said(QT_TRANSLATE_NOOP("DiaryAdvice", "Your temperature is %1.")).arg(temperatureText(*temperature, fahrenheit));
    if (first == "pain")
        return said(QT_TRANSLATE_NOOP("DiaryAdvice", "Your pain is %1 of 10.")).arg(digits(value.toInt()));
    if (first == "swelling")
        return said(QT_TRANSLATE_NOOP("DiaryAdvice", "One side is much more swollen than the other."));
    return QString::fromStdString(reason);
}

QString number(const triggers::Finding& finding, const char* name)
{
    const auto found = finding.numbers.find(name);
    return found == finding.numbers.end() ? QString() : digits(static_cast<int>(std::lround(found->second)));
}

QString reasonOf(const triggers::Finding& finding)
{
    const QString what = symptomName(finding.symptom());
    const QString side = sideInSentence(finding.stream.side);
    const bool overall = triggers::isOverall(finding);
    using enum triggers::Trigger;
    switch (finding.trigger) {
    case level:
        if (overall)
            return said(QT_TRANSLATE_NOOP("DiaryAdvice", "All taken together, it is more than usual for this day."));
        return said(QT_TRANSLATE_NOOP("DiaryAdvice", "%1, %2: %3 of 10. Usual on this day is up to %4.")).arg(what, side, number(finding, "score"), number(finding, "usualHigh"));
    case rebound:
        if (finding.numbers.contains("neverFell"))
            return said(QT_TRANSLATE_NOOP("DiaryAdvice", "%1, %2: it was at %3 and is at %4 now.")).arg(what, side, number(finding, "lowest"), number(finding, "score"));
        return said(QT_TRANSLATE_NOOP("DiaryAdvice", "%1, %2: it went down to %3 and is at %4 again.")).arg(what, side, number(finding, "lowest"), number(finding, "score"));
    case sideDivergence: {
        const QString sides = said(QT_TRANSLATE_NOOP("DiaryAdvice", "%1: %2 on your left and %3 on your right.")).arg(what, number(finding, "left"), number(finding, "right"));
        // A line of its own: two findings may say the first alike, and it is said once.
        return finding.numbers.contains("apart")
                   ? sides + QLatin1Char('\n') + said(QT_TRANSLATE_NOOP("DiaryAdvice", "All in all, your sides are %1 points apart.")).arg(number(finding, "apart"))
                   : sides;
    }
    case slowRecovery:
        if (overall)
            return said(QT_TRANSLATE_NOOP("DiaryAdvice", "All in all, it takes longer than usual to go."));
        return said(QT_TRANSLATE_NOOP("DiaryAdvice", "%1, %2: it takes longer than usual to go.")).arg(what, side);
    case persistentPuckering:
        return said(QT_TRANSLATE_NOOP("DiaryAdvice", "%1, %2: it is still there.")).arg(what, side);
    case silence:
        return said(QT_TRANSLATE_NOOP("DiaryAdvice", "You have not written for some days."));
    }
    return {};
}

}  // namespace

Advice adviceFor(const triage::Finding& finding, bool fahrenheit)
{
    Advice advice{titleFor(finding.urgency), generalAdvice(finding.urgency), {}};
    if (const auto* warning = std::get_if<warnings::Finding>(&finding.what)) {
        if (const QString first = firstAid(warning->rule); !first.isEmpty())
            advice.doNow = first + QLatin1Char('\n') + advice.doNow;
        QStringList reasons;
        for (const std::string& reason : warning->reasons)
            reasons << reasonOf(reason, fahrenheit);
        advice.reason = reasons.join(QLatin1Char('\n'));
    } else {
        advice.reason = reasonOf(std::get<triggers::Finding>(finding.what));
    }
    if (finding.recounted)
        advice.reason += QLatin1Char('\n') + said(QT_TRANSLATE_NOOP("DiaryAdvice", "The clinic has changed its record of your treatment since. The advice stays."));
    else if (finding.changedSince)
        advice.reason += QLatin1Char('\n') + said(QT_TRANSLATE_NOOP("DiaryAdvice", "You have changed or added to this since. The advice stays."));
    return advice;
}

QString handsOn(const triage::Finding& finding)
{
    const auto* warning = std::get_if<warnings::Finding>(&finding.what);
    const bool byHand = warning != nullptr && (warning->rule == "allergy" || warning->rule == "bleeding" || warning->rule == "thread-out");
    return byHand ? firstAid(warning->rule) : QString();
}

Advice adviceFor(const std::vector<triage::Finding>& findings, bool fahrenheit)
{
    if (findings.empty())
        return {};
    QStringList first;
    QStringList reasons;
    const auto addTo = [](QStringList& lines, const QString& text) {
        for (const QString& line : text.split(QLatin1Char('\n'), Qt::SkipEmptyParts))
            if (!lines.contains(line))
                lines << line;
    };
    for (const triage::Finding& finding : findings) {
        if (const auto* warning = std::get_if<warnings::Finding>(&finding.what))
            addTo(first, firstAid(warning->rule));
        addTo(reasons, adviceFor(finding, fahrenheit).reason);
    }
    addTo(first, generalAdvice(findings.front().urgency));
    return {titleFor(findings.front().urgency), first.join(QLatin1Char('\n')), reasons.join(QLatin1Char('\n'))};
}

QString adviceText(const std::vector<triage::Finding>& findings, bool fahrenheit)
{
    const Advice advice = adviceFor(findings, fahrenheit);
    return advice.title.isEmpty() ? QString() : advice.title + QLatin1Char('\n') + advice.doNow + QLatin1Char('\n') + advice.reason;
}

}  // namespace ebbline::diaryapp
