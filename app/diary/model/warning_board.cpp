#include "app/diary/model/warning_board.h"

#include "app/diary/model/dial.h"
#include "app/diary/model/emergency_numbers.h"
#include "app/diary/model/words.h"
#include "core/warnings/warnings.h"

#include <QDesktopServices>
#include <QUrl>

namespace ebbline::diaryapp {

WarningBoard::WarningBoard(Home& home, DiarySettings& settings, QObject* parent)
    : QObject(parent), m_home(home), m_settings(settings)
{
    connect(&settings, &DiarySettings::changed, this, &WarningBoard::changed);
    connect(&home, &Home::changed, this, &WarningBoard::changed);
    connect(&home, &Home::openChanged, this, [this] {
        if (!m_home.isOpen())
            m_read.clear();
        Q_EMIT changed();
    });
}

void WarningBoard::show(std::vector<triage::Finding> findings)
{
    m_findings = std::move(findings);
    m_unsaved.clear();
    m_keptOverLock = false;
    setUndialled({});
    Q_EMIT changed();
}

void WarningBoard::showUnsaved(std::vector<triage::Finding> findings, const QString& problem)
{
    m_findings = std::move(findings);
    m_keptOverLock = false;
    m_unsaved = problem.isEmpty() ? tr("Your entry is not saved yet, and not with the clinic. You can go on with it after the call.")
                                  : tr("Your entry is not saved, and not with the clinic.") + QLatin1Char(' ') + problem;
    setUndialled({});
    Q_EMIT changed();
}

void WarningBoard::showStanding()
{
    std::vector<triage::Finding> standing = m_home.isOpen() ? m_home.diary().today().standing : std::vector<triage::Finding>{};
    std::erase_if(standing, [this](const triage::Finding& finding) { return m_read.contains(QString::fromStdString(finding.key)); });
    // Of an entry that could not be saved nothing stands in the diary: what was kept over the lock is all there is.
    if (standing.empty() && m_keptOverLock && !m_unsaved.isEmpty())
        return Q_EMIT changed();
    show(std::move(standing));
}

void WarningBoard::keepOverLock()
{
    if (!isLoud())
        return;
    const recovery::Urgency most = m_findings.front().urgency;
    std::erase_if(m_findings, [most](const triage::Finding& finding) { return finding.urgency != most && handsOn(finding).isEmpty(); });
    for (triage::Finding& finding : m_findings)
        if (auto* warning = std::get_if<warnings::Finding>(&finding.what))
            warning->reasons.clear();
    m_keptOverLock = true;
    Q_EMIT changed();
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
    // What she can do herself about a milder one is said as well; when she is to be seen, the most urgent one says alone.
    for (const triage::Finding& finding : m_findings)
        if (const QString line = handsOn(finding); finding.urgency <= recovery::Urgency::callNow && !line.isEmpty() && !lines.contains(line))
            lines << line;
    return lines.join(QLatin1Char('\n'));
}

QString WarningBoard::meaning() const
{
    if (!isLoud())
        return {};
    const recovery::Urgency most = m_findings.front().urgency;
    if (m_keptOverLock)
        return unnamedMeaning(most);
    QStringList lines;
    // What a sign can mean says more than what numbers can: those speak where nothing else does.
    for (const bool signs : {true, false})
        for (const triage::Finding& finding : m_findings)
            if (const QString line = meaningOf(finding); finding.urgency == most && std::holds_alternative<warnings::Finding>(finding.what) == signs
                && (signs || lines.isEmpty()) && !line.isEmpty() && !lines.contains(line))
                lines << line;
    return lines.isEmpty() ? unnamedMeaning(most) : lines.join(QLatin1Char('\n'));
}

QString WarningBoard::reason() const
{
    if (m_keptOverLock)
        return {};
    QStringList lines;
    for (const triage::Finding& finding : m_findings)
        for (const QString& line : adviceFor(finding, m_settings.isFahrenheit()).reason.split(QLatin1Char('\n')))
            if (!lines.contains(line))
                lines << line;
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

namespace {

/// In the words in which an entry asks for them: a sign is one thing, wherever it is read.
QStringList questionsOf(recovery::Urgency urgency)
{
    QStringList lines;
    for (const recovery::Sign sign : warnings::signsRaising(urgency))
        lines << signQuestion(sign);
    return lines;
}

}  // namespace

QStringList WarningBoard::emergencySigns() const
{
    return questionsOf(recovery::Urgency::emergency);
}

QStringList WarningBoard::callSigns() const
{
    return QStringList{m_settings.isFahrenheit() ? tr("You have a fever of 100.4 °F or more.") : tr("You have a fever of 38 °C or more.")}
           + questionsOf(recovery::Urgency::callNow)
           + QStringList{tr("Pain is 7 of 10 or more."), tr("Pain comes back."),
                         tr("In the first two days one side is more full and hurts more."),
                         tr("Two of these at one place: new colour, warm, firm, more sore."),
                         tr("A thread shows, and the skin there is warm, sore or has a new colour.")};
}

QList<CallLine> WarningBoard::calls() const
{
    QList<CallLine> lines;
    const auto contacts = m_home.contacts();
    if (!contacts) {
        // Before a clinic is joined there is no number of its own: each is said with its place.
        for (const RegionNumber& known : emergencyNumbersIn(m_region))
            lines << CallLine{known.title, known.number, true};
        return lines;
    }
    QList<CallLine> emergency{{tr("Emergency number"), QString::fromStdString(contacts->emergencyNumber), true}};
    // She may be in another country than her clinic: the number of where her phone is, if it is known, stands with the clinic's.
    if (const auto here = emergencyNumbersIn(m_region); here.size() == 1 && here.first().number != dialable(emergency.first().number))
        emergency << CallLine{here.first().title, here.first().number, true};
    if (isEmergency())
        lines << emergency;
    lines << CallLine{tr("Your clinic"), QString::fromStdString(contacts->clinicPhone), false};
    if (!contacts->onCallPhone.empty())
        lines << CallLine{tr("If nobody answers"), QString::fromStdString(contacts->onCallPhone), false};
    if (!isEmergency())
        lines << emergency;
    return lines;
}

QString WarningBoard::callHint() const
{
    return tr("You are in another place? Call the emergency number of that place.");
}

void WarningBoard::setRegion(QLocale::Territory region)
{
    m_region = region;
    Q_EMIT changed();
}

void WarningBoard::confirm()
{
    bool recorded = true;
    if (m_home.isOpen() && m_unsaved.isEmpty())
        for (const triage::Finding& finding : m_findings)
            if (finding.urgency <= recovery::Urgency::callNow && !m_home.diary().confirmWarning(finding)) {
                m_read.insert(QString::fromStdString(finding.key));
                recorded = false;
            }
    if (!recorded)
        Q_EMIT failed(tr("This phone could not note that you read the warning. It comes again when you open the diary next."));
    m_findings.clear();
    m_unsaved.clear();
    m_keptOverLock = false;
    m_home.touch();
    Q_EMIT confirmed();
}

bool WarningBoard::call(const QString& number)
{
    const bool dialled = QDesktopServices::openUrl(QUrl(QStringLiteral("tel:") + dialable(number)));
    // A desktop starts whatever is set for such an address, and hears nothing of what comes of it.
#if defined(Q_OS_ANDROID) || defined(Q_OS_IOS)
    constexpr bool answers = true;
#else
    constexpr bool answers = false;
#endif
    m_dialTried = dialled;
    setUndialled(dialled && answers ? QString() : number);
    return dialled;
}

void WarningBoard::setUndialled(const QString& number)
{
    m_undialled = number;
    Q_EMIT undialledChanged();
}

}  // namespace ebbline::diaryapp
