#include "app/desk/protocol/protocol_taking.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/file_choice.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "app/desk/practice/band_board.h"
#include "app/desk/protocol/protocol_changes.h"
#include "core/rehearsal/grounds.h"
#include "core/triggers/statistic.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QLocale>
#include <QSaveFile>

#include <utility>

namespace ebbline::deskapp {

namespace {

constexpr int shownDigits = 16;  // of a hash, to compare by eye
constexpr std::size_t longestGrounds = 150;  // bytes of what thresholds rest on: with its marks a journal takes 200

/// In groups of four.
QString hashText(const std::string& hash)
{
    const auto digits = QString::fromStdString(hash).left(shownDigits);
    QStringList groups;
    for (qsizetype i = 0; i < digits.size(); i += 4) {
        groups << digits.mid(i, 4);
    }
    return leftToRight(groups.join(QLatin1Char(' ')).toStdString());
}

QString refusalText(const Error& error)
{
    switch (error.reason) {
    case Reason::tooLarge:
        return ProtocolTaking::tr("This file is larger than a protocol can be. Nothing was changed. Choose the file that a desk saved, or that calibrate wrote.");
    case Reason::unsupported:
        return ProtocolTaking::tr("This file is written in a form that this program does not know. Nothing was changed. Update the program, or ask for the file from one of the same version.");
    default:
        return ProtocolTaking::tr("This is not a sound protocol file (%1). Nothing was changed. Choose another file, or have this one written anew; do not mend it by hand.")
            .arg(leftToRight(error.detail));
    }
}

}  // namespace

ProtocolTaking::ProtocolTaking(Workplace& workplace, ProtocolBoard& board, ProtocolEditor& editor, QObject* parent)
    : QObject(parent), m_workplace(workplace), m_board(board), m_editor(editor)
{
    connect(&workplace, &Workplace::openChanged, this, &ProtocolTaking::forget);
}

void ProtocolTaking::forget()
{
    m_file.reset();
    m_checked.reset();
    m_version.clear();
    m_withPlan = false;
    m_ofOthers = false;
    m_problem.clear();
    m_outcome.clear();
    Q_EMIT changed();
}

void ProtocolTaking::choose()
{
    askForFile(*this, tr("Take a protocol from a file"), {QStringLiteral("JSON (*.json)")}, [this](const QString& path) { read(path); });
}

bool ProtocolTaking::read(const QString& path)
{
    if (!m_workplace.isOpen() || inUse() == nullptr) {
        return false;
    }
    forget();
    QFile file(path);
    // A pipe or a device would keep the desk waiting.
    if (!QFileInfo(path).isFile() || !file.open(QIODevice::ReadOnly)) {
        m_problem = tr("The file cannot be read. Nothing was changed. Copy it to this computer, then choose it again.");
        Q_EMIT changed();
        return false;
    }
    const QByteArray bytes = file.read(static_cast<qint64>(exchange::maximumProtocolBytes) + 1);
    auto read = exchange::protocolFromText({bytes.constData(), static_cast<std::size_t>(bytes.size())});
    if (!read) {
        m_problem = refusalText(read.error());
        Q_EMIT changed();
        return false;
    }
    m_file = std::move(*read);
    look();
    Q_EMIT changed();
    Q_EMIT arrived();
    return true;
}

/// What becomes of the usual range.
void ProtocolTaking::look()
{
    m_checked.reset();
    m_version.clear();
    const auto& history = m_workplace.desk().bandHistory();
    const auto known = history.saying(m_file->protocol.band);
    const auto* version = known ? history.find(*known) : nullptr;
    if (m_file->protocol.thresholds.calibratedOn.size() > longestGrounds) {
        m_standing = Standing::refused;
    } else if (bands::contentHash(m_file->protocol.band) == bands::contentHash(inUse()->band)) {
        m_standing = Standing::inUse;
    } else if (known && (version == nullptr || !bands::objection(version->coverage))) {
        m_standing = Standing::known;
        m_version = *known;
    } else {
        auto checked = m_workplace.desk().checkBrought(m_file->protocol, m_ofOthers);
        m_standing = checked ? Standing::fresh : Standing::refused;
        if (checked) {
            m_checked = std::move(*checked);
        }
    }
}

QString ProtocolTaking::title() const
{
    return m_file ? tr("%1, version %2", "protocol in a file, number")
                        .arg(QString::fromStdString(m_file->protocol.name), charts::digits(m_file->protocol.version))
                  : QString();
}

QStringList ProtocolTaking::facts() const
{
    if (!m_file) {
        return {};
    }
    const auto& thresholds = m_file->protocol.thresholds;
    const auto& provenance = m_file->protocol.band.provenance();
    QStringList lines;
    lines << (m_file->written && !m_file->program.empty()
                  ? tr("Written %1 by %2.", "when, program").arg(stampText(*m_file->written), leftToRight(m_file->program))
                  : tr("It does not say when it was written, nor by which program."));
    lines << tr("Its thresholds were calibrated on %1, to a budget of %2 false alerts in 100 uncomplicated courses. So the file says; it is not shown that they hold it at this clinic.")
                 .arg(cohortText(thresholds.calibratedOn), QLocale().toString(thresholds.falseAlertBudget, 'g', 3));
    if (rehearsal::groundsOf(thresholds.calibratedOn).changed) {
        lines << ProtocolBoard::tr("Rules, or the days that are asked about, were changed since.");
    }
    lines << charts::bandLegend(provenance);
    if (!provenance.hash.empty()) {
        lines << tr("The hash of what is behind that range begins with %1.").arg(hashText(provenance.hash));
    }
    lines << tr("The file is not signed: nothing in it proves who wrote it. Take it only from somebody whom you can ask.");
    return lines;
}

QStringList ProtocolTaking::rulesHeader() const
{
    return {tr("Rule"), tr("In use"), tr("In the file")};
}

QVariantList ProtocolTaking::rules() const
{
    QVariantList rows;
    if (m_file && inUse() != nullptr) {
        for (const auto& row : rulesBeside(inUse()->thresholds, m_file->protocol.thresholds)) {
            rows.append(QVariant(row));
        }
    }
    return rows;
}

QString ProtocolTaking::rulesText() const
{
    return rules().isEmpty() ? tr("No rule differs.") : tr("All other rules are the same.");
}

QStringList ProtocolTaking::plan() const
{
    return m_file && inUse() != nullptr ? planChanges(inUse()->carePlan, m_file->protocol.carePlan) : QStringList();
}

void ProtocolTaking::setWithPlan(bool with)
{
    m_withPlan = with;
    Q_EMIT changed();
}

QString ProtocolTaking::range() const
{
    if (!m_file || !m_workplace.isOpen()) {
        return {};
    }
    switch (m_standing) {
    case Standing::inUse:
        return tr("It is the one in use.");
    case Standing::known:
        return tr("It is known here as %1, and may be used. It comes into use when the draft is signed.").arg(leftToRight(m_version));
    case Standing::fresh:
        break;
    case Standing::refused:
        return tr("It cannot be taken: it does not say soundly what is behind it. The draft keeps the usual range in use, and the thresholds that belong to it.");
    }
    const auto& learned = m_checked->learned;
    const auto then = bands::objection(learned.coverage) ? tr("A draft can be rehearsed with it, and not signed.")
                                                         : tr("It is kept as a version, and comes into use when the draft is signed.");
    return checkText(learned) + QLatin1Char(' ') + then;
}

void ProtocolTaking::setOfOthers(bool others)
{
    if (m_file && m_workplace.isOpen() && others != m_ofOthers) {
        m_ofOthers = others;
        look();
        Q_EMIT changed();
    }
}

QString ProtocolTaking::draftText() const
{
    if (!m_file || !m_workplace.isOpen() || inUse() == nullptr) {
        return {};
    }
    const auto kept = m_workplace.desk().protocolDraft();
    if (!kept && kept.error().reason != Reason::notFound) {
        return tr("A draft is there already, and cannot be read. It stays as it is: this one is not kept.");
    }
    const bool waits = kept && kept->name == inUse()->name
                       && !(kept->carePlan == inUse()->carePlan && kept->thresholds == inUse()->thresholds && kept->band == inUse()->band);
    return waits ? tr("A draft is there already. This one takes its place; \"Undo\" on the next page brings it back.") : QString();
}

void ProtocolTaking::makeDraft()
{
    if (!m_file || !m_workplace.isOpen() || inUse() == nullptr) {
        return;
    }
    auto& desk = m_workplace.desk();
    if (desk.person().empty()) {
        m_problem = tr("Say first who is at the desk: what is taken carries a name.");
        Q_EMIT changed();
        return;
    }
    if (!m_workplace.mayDo(records::Task::protocol)) {
        return;
    }
    look();
    auto protocol = m_file->protocol;
    auto band = inUse()->band;
    if (m_standing == Standing::known) {
        const auto* version = desk.bandHistory().find(m_version);
        band = version == nullptr ? bands::seedBand() : version->band;
    } else if (m_standing == Standing::fresh) {
        const auto kept = desk.keepBand(*m_checked);
        // The same check on the same courses is on record already, under the same name.
        if (!kept && kept.error().reason != Reason::alreadyExists) {
            m_workplace.settle(fail(kept.error()));
            return;
        }
        band = m_checked->learned.band;
    } else if (m_standing == Standing::refused) {
        for (const auto statistic : triggers::allStatistics) {
            triggers::thresholdOf(protocol.thresholds, statistic) = triggers::thresholdOf(inUse()->thresholds, statistic);
        }
        protocol.thresholds.falseAlertBudget = inUse()->thresholds.falseAlertBudget;
        protocol.thresholds.calibratedOn = inUse()->thresholds.calibratedOn;
    }
    m_editor.open(inUse()->name);
    m_editor.setStep(2);
    m_editor.take(protocol, band, m_withPlan);
    forget();
    m_workplace.settle({});
    Q_EMIT drafted();
}

bool ProtocolTaking::write(const QString& path)
{
    if (path.isEmpty() || !m_workplace.isOpen() || inUse() == nullptr) {
        return false;
    }
    const QString program = (QCoreApplication::applicationName() + QLatin1Char(' ') + QCoreApplication::applicationVersion()).trimmed();
    const auto text = QByteArray::fromStdString(exchange::protocolText({*inUse(), program.toStdString(), m_workplace.now()}));
    QSaveFile file(path);
    const bool written = file.open(QIODevice::WriteOnly) && file.write(text) == text.size() && file.commit();
    m_problem = written ? QString() : tr("The file cannot be written there. Choose another folder.");
    m_outcome = written ? tr("Saved as %1. It holds the care plan in the clinic's own words, the rules and the usual range; no patient stands in it.").arg(path) : QString();
    Q_EMIT changed();
    return written;
}

void ProtocolTaking::saveAs()
{
    if (!m_workplace.isOpen() || inUse() == nullptr) {
        return;
    }
    askWhereToSave(*this, tr("Save the protocol in use"),
        QStringLiteral("protocol-version-%1-%2.json").arg(QString::number(inUse()->version), dateOf(m_workplace.now()).toString(Qt::ISODate)),
        {QStringLiteral("JSON (*.json)")}, [this](const QString& path) { write(path); });
}

}  // namespace ebbline::deskapp
