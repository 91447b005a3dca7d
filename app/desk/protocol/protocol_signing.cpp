// Rehearsal and signature of a protocol in the making.

#include "app/desk/protocol/protocol_editor.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/finding_words.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "app/desk/practice/band_board.h"
#include "app/desk/practice/practice_words.h"
#include "app/desk/protocol/protocol_changes.h"

#include <algorithm>
#include <utility>

namespace ebbline::deskapp {

namespace {

class Rehearsals {
    Q_DECLARE_TR_FUNCTIONS(Rehearsals)
};

QString kindName(const std::string& kind)
{
    if (kind == "plain") {
        return Rehearsals::tr("Uncomplicated");
    }
    if (kind == "infection") {
        return Rehearsals::tr("Infection");
    }
    if (kind == "haematoma") {
        return Rehearsals::tr("Haematoma");
    }
    if (kind == "slow-recovery") {
        return Rehearsals::tr("Slow recovery");
    }
    if (kind == "puckering") {
        return Rehearsals::tr("Puckering that stays");
    }
    if (kind == "silent") {
        return Rehearsals::tr("Falls silent");
    }
    return kind == "complicated" ? Rehearsals::tr("Complicated") : complicationName(QString::fromStdString(kind));
}

QString partText(long part, long whole)
{
    const auto limits = rehearsal::share(part, whole);
    return limits ? Rehearsals::tr("%1 of %2 (%3 to %4 in 100)", "flagged, courses, limits")
                        .arg(charts::digits(static_cast<int>(part)), charts::digits(static_cast<int>(whole)), numberText(100 * limits->low, 0),
                             numberText(100 * limits->high, 0))
                  : QStringLiteral("–");
}

const rehearsal::KindFigures* figuresOf(const std::vector<rehearsal::KindFigures>& all, const std::string& kind)
{
    const auto found = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.kind == kind; });
    return found == all.end() ? nullptr : &*found;
}

QString flaggedText(const std::vector<rehearsal::KindFigures>& all, const std::string& kind)
{
    const auto* figures = figuresOf(all, kind);
    return figures == nullptr ? QStringLiteral("–") : partText(figures->flagged, figures->courses);
}

using Figures = std::vector<rehearsal::KindFigures>;

/// The kinds of the rows, and what they are called.
std::vector<std::pair<std::string, QString>> named(const QString& courses, const Figures& all)
{
    std::vector<std::pair<std::string, QString>> names;
    for (const auto& figures : all) {
        names.emplace_back(figures.kind, courses.arg(kindName(figures.kind)));
    }
    return names;
}

QString partOf(const Figures& all, const std::string& kind, long rehearsal::KindFigures::*part)
{
    const auto* figures = figuresOf(all, kind);
    return figures == nullptr ? QStringLiteral("–") : partText(figures->*part, figures->courses);
}

/// Whether a row of its own says how many are to be called, or are not heard from: of the uncomplicated always, of others where the protocols differ.
bool tells(const Figures& before, const Figures& after, const std::string& kind, long rehearsal::KindFigures::*part)
{
    const auto* was = figuresOf(before, kind);
    const auto* is = figuresOf(after, kind);
    return was != nullptr && is != nullptr && (kind == "plain" || was->*part != is->*part);
}

QString soonText(const std::vector<rehearsal::KindFigures>& all, const std::string& kind)
{
    const auto* figures = figuresOf(all, kind);
    return figures == nullptr || kind == "plain" ? QStringLiteral("–") : partText(figures->withinDay, figures->timed);
}

QString findingLine(const std::optional<triggers::Finding>& finding)
{
    if (!finding) {
        return Rehearsals::tr("no such finding");
    }
    triage::Finding shown;
    shown.urgency = finding->urgency;
    shown.what = *finding;
    shown.raisedAt = finding->raisedAt;
    shown.day = finding->day;
    return Rehearsals::tr("%1: %2 (%3)", "day, finding, urgency")
        .arg(dayText(finding->day), findingTitle(shown), urgencyName(finding->urgency));
}

}  // namespace

void ProtocolEditor::rehearse()
{
    if (!m_workplace.isOpen() || m_rehearsing || !problem().isEmpty()) {
        return;
    }
    m_rehearsing = true;
    m_progress = std::make_shared<std::atomic<double>>(0);
    m_watch.start();
    m_outcome.clear();
    Q_EMIT changed();
    m_pool.start([this, round = m_round, progress = m_progress, draft = m_draft, material = m_workplace.desk().rehearsalMaterial(), before = m_inUse,
                  after = protocol()] {
        auto done = desk::rehearseProtocol(material, before, after, [progress](double part) {
            double now = progress->load();
            while (now >= 0 && !progress->compare_exchange_weak(now, part)) {
            }
            return now >= 0;
        });
        QMetaObject::invokeMethod(
            this,
            [this, round, draft, done = std::move(done)] {
                if (round == m_round) {
                    m_watch.stop();
                    m_rehearsing = false;
                    if (done) {
                        m_rehearsed = Rehearsed{draft, *done};
                    }
                    Q_EMIT changed();
                }
            },
            Qt::QueuedConnection);
    });
}

QString ProtocolEditor::verdict() const
{
    if (!m_rehearsed) {
        return {};
    }
    const auto& result = m_rehearsed->result;
    QStringList lines;
    static_assert(desk::inventedModels == std::array{rehearsal::Model::decay, rehearsal::Model::steps});
    const auto flagged = [](const Figures& figures) {
        const auto* plain = figuresOf(figures, "plain");
        return plain == nullptr ? QStringLiteral("–") : charts::digits(static_cast<int>(plain->flagged));
    };
    const auto each = charts::digits(desk::inventedPlain);
    lines << tr("Of %1 uncomplicated courses invented smooth it flags %2, the one in use %3; of %4 invented in steps %5, the one in use %6.")
                 .arg(each, flagged(result.after.invented[0]), flagged(result.before.invented[0]), each,
                      flagged(result.after.invented[1]), flagged(result.before.invented[1]));
    if (result.after.perWeek && result.before.perWeek) {
        lines << tr("With as many patients as lately: about %1 alerts a week, now %2.", "number, number")
                     .arg(numberText(*result.after.perWeek), numberText(*result.before.perWeek));
    } else {
        lines << tr("No past course to rehearse on: only invented courses speak.");
    }
    lines << tr("%Ln past course(s) would have been flagged otherwise.", nullptr, static_cast<int>(result.differences.size()));
    if (!isRehearsed()) {
        lines << tr("The protocol has been changed since: rehearse it again.");
    }
    return lines.join(QLatin1Char(' '));
}

QStringList ProtocolEditor::figuresHeader() const
{
    return {tr("Courses"), tr("Flagged, in use"), tr("Flagged, changed"), tr("Within a day, in use"), tr("Within a day, changed")};
}

QVariantList ProtocolEditor::figures() const
{
    QVariantList rows;
    if (!m_rehearsed) {
        return rows;
    }
    const QString none = QStringLiteral("–");
    const auto add = [&](const QString& courses, const Figures& before, const Figures& after, bool timed) {
        for (const auto& [kind, of] : named(courses, after)) {
            rows.append(QVariant(QStringList{of, flaggedText(before, kind), flaggedText(after, kind), timed ? soonText(before, kind) : none,
                                             timed ? soonText(after, kind) : none}));
        }
        for (const auto& [part, what] : {std::pair{&rehearsal::KindFigures::callNow, tr("%1, call now", "courses")},
                                         std::pair{&rehearsal::KindFigures::silent, tr("%1, not heard from", "courses")}}) {
            for (const auto& [kind, of] : named(courses, after)) {
                if (tells(before, after, kind, part)) {
                    rows.append(QVariant(QStringList{what.arg(of), partOf(before, kind, part), partOf(after, kind, part), none, none}));
                }
            }
        }
    };
    const auto& result = m_rehearsed->result;
    add(tr("Invented, smooth: %1"), result.before.invented[0], result.after.invented[0], true);
    add(tr("Invented, in steps: %1"), result.before.invented[1], result.after.invented[1], true);
    add(tr("Past: %1"), result.before.past, result.after.past, false);
    return rows;
}

QVariantList ProtocolEditor::differences() const
{
    QVariantList rows;
    if (m_rehearsed && m_workplace.isOpen()) {
        for (const auto& course : m_rehearsed->result.differences) {
            rows.append(QVariant(QStringList{m_workplace.patientName(courseFromKey(QString::fromStdString(course.course))), kindName(course.kind),
                                             findingLine(course.before), findingLine(course.after)}));
        }
    }
    return rows;
}

QStringList ProtocolEditor::changes() const
{
    QStringList lines = planChanges(m_inUse.carePlan, m_draft.plan) + ruleChanges(m_inUse.thresholds, m_draft.thresholds);
    if (bringsRange()) {
        lines << tr("Usual range: %1 (was %2)", "version, version")
                     .arg(leftToRight(m_draft.band.provenance().version), leftToRight(m_inUse.band.provenance().version));
    }
    return lines;
}

/// Why the range that the draft brings cannot come into use; empty if it can.
QString ProtocolEditor::rangeProblem() const
{
    if (!m_workplace.isOpen() || !bringsRange()) {
        return {};
    }
    const auto& history = m_workplace.desk().bandHistory();
    const auto& version = m_draft.band.provenance().version;
    if (history.allows({version, history.previous() == version, {}, {}, {}})) {
        return {};
    }
    const auto* learned = history.find(version);
    return tr("It cannot be signed with the usual range that came with it. %1").arg(learned == nullptr ? QString() : checkText(*learned)).trimmed();
}

QStringList ProtocolEditor::missing() const
{
    QStringList lines;
    if (m_draft == asInUse()) {
        lines << tr("Nothing is changed yet.");
    } else if (!problem().isEmpty()) {
        lines << problem();
    } else if (!isRehearsed()) {
        lines << tr("Rehearse it first: nothing goes live unseen.");
    }
    if (const auto range = rangeProblem(); !range.isEmpty()) {
        lines << range;
    }
    if (m_workplace.isOpen() && m_workplace.desk().person().empty()) {
        lines << tr("Say who is at the desk.");
    }
    return lines;
}

void ProtocolEditor::sign()
{
    if (!m_workplace.isOpen() || !missing().isEmpty() || !m_workplace.mayDo(records::Task::protocol)) {
        return;
    }
    const auto next = protocol();
    auto former = m_inUse;
    const auto done = bringsRange() ? m_workplace.desk().signWithBand(next, tr("With version %1 of %2", "number, protocol").arg(next.version).arg(QString::fromStdString(next.name)).toStdString())
                                    : m_workplace.desk().signProtocol(next);
    if (!m_workplace.settle(done)) {
        return;
    }
    open(next.name);
    m_signedOver = std::move(former);
    m_outcome = tr("Version %1 is signed. It goes to phones that are linked from now on; courses that run keep theirs.").arg(charts::digits(next.version));
    refresh();
}

void ProtocolEditor::takeBack()
{
    if (!m_workplace.isOpen() || !m_signedOver || m_workplace.desk().person().empty() || !m_workplace.mayDo(records::Task::protocol)) {
        return;
    }
    auto again = *m_signedOver;
    again.version = m_inUse.version + 1;
    again.former.reset();
    const auto& history = m_workplace.desk().bandHistory();
    // The range goes back with it if nothing else came into use since; else it stays what it is.
    const bool back = !(again.band == m_inUse.band) && history.previous() == again.band.provenance().version;
    if (!back) {
        again.band = m_inUse.band;
    }
    const auto done = back ? m_workplace.desk().signWithBand(again, tr("The signature of version %1 was undone").arg(m_inUse.version).toStdString())
                           : m_workplace.desk().signProtocol(again);
    if (m_workplace.settle(done)) {
        m_signedOver.reset();
        open(again.name);
        m_outcome = tr("What was in use before is in use again, as version %1.").arg(charts::digits(again.version));
        refresh();
    }
}

QStringList ProtocolEditor::versions() const
{
    QStringList lines;
    if (m_workplace.isOpen()) {
        const auto all = m_workplace.desk().protocolVersions(m_inUse.name);
        for (auto version = all.rbegin(); version != all.rend(); ++version) {
            lines << tr("Version %1, signed %2").arg(charts::digits(version->protocol.version), whenText(version->at, m_workplace.now()));
        }
    }
    return lines;
}

}  // namespace ebbline::deskapp
