#include "app/diary/model/warning_board.h"

#include "app/diary/model/words.h"

#include <QDesktopServices>
#include <QUrl>

namespace ebbline::diaryapp {

WarningBoard::WarningBoard(Home& home, DiarySettings& settings, QObject* parent)
    : QObject(parent), m_home(home), m_settings(settings)
{
    connect(&settings, &DiarySettings::changed, this, &WarningBoard::changed);
    connect(&home, &Home::changed, this, &WarningBoard::changed);
    connect(&home, &Home::openChanged, this, &WarningBoard::changed);
}

void WarningBoard::show(std::vector<triage::Finding> findings)
{
    m_findings = std::move(findings);
    m_unsaved.clear();
    Q_EMIT changed();
}

void WarningBoard::showUnsaved(std::vector<triage::Finding> findings, const QString& problem)
{
    m_findings = std::move(findings);
    m_unsaved = problem.isEmpty() ? tr("Your entry is not saved yet, and not with the clinic. You can go on with it after the call.")
                                  : tr("Your entry is not saved, and not with the clinic.") + QLatin1Char(' ') + problem;
    Q_EMIT changed();
}

void WarningBoard::showStanding()
{
    show(m_home.isOpen() ? m_home.diary().today().standing : std::vector<triage::Finding>{});
}

bool WarningBoard::isEmergency() const
{
    return !m_findings.empty() && m_findings.front().urgency == recovery::Urgency::emergency;
}

bool WarningBoard::isLoud() const
{
    return !m_findings.empty() && m_findings.front().urgency <= recovery::Urgency::callNow;
}

QString WarningBoard::title() const
{
    return m_findings.empty() ? tr("Whom to call") : adviceFor(m_findings.front()).title;
}

QString WarningBoard::doNow() const
{
    if (m_findings.empty())
        return tr("If you are worried, call. You do not need a reason.");
    QStringList lines;
    for (const triage::Finding& finding : m_findings)
        for (const QString& line : adviceFor(finding).doNow.split(QLatin1Char('\n')))
            if (finding.urgency == m_findings.front().urgency && !lines.contains(line))
                lines << line;
    return lines.join(QLatin1Char('\n'));
}

QString WarningBoard::reason() const
{
    QStringList lines;
    for (const triage::Finding& finding : m_findings) {
        const QString reason = adviceFor(finding, m_settings.isFahrenheit()).reason;
        if (!lines.contains(reason))
            lines << reason;
    }
    return lines.join(QLatin1Char('\n'));
}

QString WarningBoard::sentState() const
{
    return m_unsaved.isEmpty() ? tr("A call is faster than the diary: the clinic may not have seen your entry yet.") : QString();
}

QString WarningBoard::readHint() const
{
    return m_unsaved.isEmpty() ? tr("The warning stays in your diary") : tr("Back to your entry, to save it again");
}

QString WarningBoard::clinicName() const
{
    const auto contacts = m_home.contacts();
    return contacts ? QString::fromStdString(contacts->clinicName) : QString();
}

QStringList WarningBoard::emergencySigns() const
{
    return {tr("You can not breathe or swallow."), tr("Your neck or tongue swells fast."), tr("You faint."),
            tr("You suddenly see less, or see double."), tr("Your face droops and an arm is weak.")};
}

QStringList WarningBoard::callSigns() const
{
    return {m_settings.isFahrenheit() ? tr("You have a fever of 100.4 °F or more.") : tr("You have a fever of 38 °C or more."), tr("Fluid like pus comes out."), tr("One side keeps swelling."),
            tr("Pain comes back."), tr("Skin turns white, grey or cold.")};
}

QList<CallLine> WarningBoard::calls() const
{
    QList<CallLine> lines;
    const auto contacts = m_home.contacts();
    if (!contacts) {
        // Before a clinic is joined there is no number of its own; the European one is said with its place.
        lines << CallLine{tr("Emergency number (European Union)"), QStringLiteral("112"), true};
        return lines;
    }
    const CallLine emergency{tr("Emergency number"), QString::fromStdString(contacts->emergencyNumber), true};
    if (isEmergency())
        lines << emergency;
    lines << CallLine{tr("Your clinic"), QString::fromStdString(contacts->clinicPhone), false};
    if (!contacts->onCallPhone.empty())
        lines << CallLine{tr("If nobody answers"), QString::fromStdString(contacts->onCallPhone), false};
    if (!isEmergency())
        lines << emergency;
    return lines;
}

void WarningBoard::confirm()
{
    if (m_home.isOpen() && m_unsaved.isEmpty())
        for (const triage::Finding& finding : m_findings)
            if (finding.urgency <= recovery::Urgency::callNow)
                if (const Done done = m_home.diary().confirmWarning(finding); !done)
                    Q_EMIT failed(errorText(done.error()));
    m_findings.clear();
    m_unsaved.clear();
    m_home.touch();
    Q_EMIT confirmed();
}

bool WarningBoard::call(const QString& number)
{
    QString plain;
    for (const QChar c : number)
        if (c.isDigit() || c == QLatin1Char('+'))
            plain += c;
    return QDesktopServices::openUrl(QUrl(QStringLiteral("tel:") + plain));
}

}  // namespace ebbline::diaryapp
