#include "app/desk/model/queue_board.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/course_list.h"
#include "app/desk/model/course_rows.h"
#include "app/desk/model/finding_words.h"
#include "app/desk/model/phone_outlooks.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "app/desk/queue/act_words.h"

#include <QLocale>
#include <QSignalBlocker>

#include <algorithm>
#include <array>

namespace ebbline::deskapp {

namespace {

constexpr int silentFilter = 5;

QueueFilter::Facts factsOf(const triage::Row& row, const journal::State& state)
{
    const auto& treatment = state.courses.at(row.course).treatment;
    return {treatment ? treatment->treatment.placedBy : std::string(), row.takenBy, row.day};
}

}  // namespace

QueueBoard::QueueBoard(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace)
{
    connect(&workplace, &Workplace::changed, this, &QueueBoard::refresh);
    connect(&workplace, &Workplace::openChanged, this, &QueueBoard::refresh);
    connect(&m_queueFilter, &QueueFilter::chosen, this, &QueueBoard::refresh);
}

QueueRow QueueBoard::rowOf(const triage::Row& row, const desk::CourseSummary& summary, const QString& reach,
                           const clock::Moment& now)
{
    const auto& first = row.findings.front();
    QueueRow words;
    words.key = keyOf(row.course);
    words.urgency = static_cast<int>(row.urgency);
    words.urgencyName = urgencyName(row.urgency);
    const auto& course = m_workplace.state().courses.at(row.course);
    words.advice = urgencyAdvice(row.urgency, isShownByPhone(first, course));
    words.name = QString::fromStdString(summary.patientName);
    words.phone = leftToRight(summary.patientPhone);
    words.day = dayText(row.day);
    words.title = findingTitle(first);
    words.reason = findingReason(first);
    words.entryKey = raisingEntry(first, course);
    const auto others = otherUrgentTitles(row);
    words.others = others.isEmpty() ? QString() : tr("Also to call about: %1").arg(others.join(QStringLiteral(" · ")));
    if (const auto rest = row.findings.size() - 1 - static_cast<std::size_t>(others.size()); rest > 0) {
        words.more = tr("and %Ln more", nullptr, static_cast<int>(rest));
    }
    words.since = whenText(row.since, now);
    words.waiting = agoText(row.since, now);
    words.isTaken = row.takenBy.has_value();
    words.isMine = row.takenBy && *row.takenBy == m_workplace.desk().person();
    const bool isOverdue = triage::isOverdue(row, now);
    words.taken = row.lastAct ? onItText(row, isOverdue && row.touched, now) : tr("Nobody has taken it");
    if (isOverdue) {
        words.overdue = row.touched ? lapsedText(*row.lastAct, now) : tr("Nobody has acted for %1").arg(words.waiting);
    }
    if (summary.unopened > 0) {
        words.unopened = tr("%Ln not opened", "entries", static_cast<int>(summary.unopened));
    }
    words.lastEntry = summary.lastEntry ? tr("Last entry %1 ago").arg(agoText(*summary.lastEntry, now))
                                        : tr("No entry yet");
    words.reach = reach;
    const auto symptom = symptomOf(first);
    words.sparkName = charts::symptomName(symptom);
    words.leftCurve = charts::pictureOf(m_workplace.desk().curve(row.course, {symptom, recovery::Side::left}));
    words.rightCurve = charts::pictureOf(m_workplace.desk().curve(row.course, {symptom, recovery::Side::right}));
    words.silent = row.silent;
    words.spoken = tr("%1: %2, %3. %4. %5 Since %6.", "urgency, name, day, title, reason, since")
                       .arg(words.urgencyName, words.name, words.day, words.title, words.reason, words.since);
    for (const auto& sentence : {words.taken, words.others, words.overdue}) {
        words.spoken += sentence.isEmpty() ? QString() : u' ' + sentence + u'.';
    }
    if (!reach.isEmpty()) {
        words.spoken += u' ' + reach;
    }
    return words;
}

void QueueBoard::refresh()
{
    QList<RowList::Row> rows;
    m_hidden = 0;
    m_hiddenUrgent = 0;
    m_past = 0;
    m_queueFilter.begin();
    m_queue.clear();
    m_summary.clear();
    m_overdue.clear();
    if (m_workplace.isOpen()) {
        const auto now = m_workplace.now();
        const PhoneOutlooks phones(m_workplace);
        m_queue = m_workplace.desk().queue();
        // A course that only fell silent stands apart, at the end, in core's own order.
        std::stable_partition(m_queue.begin(), m_queue.end(), [](const triage::Row& row) { return !row.silent; });
        std::array<int, 5> counts{};
        int silent = 0;
        int overdue = 0;
        bool headed = false;
        for (const auto& row : m_queue) {
            if (row.findings.empty()) {
                continue;
            }
            ++(row.silent ? silent : counts[static_cast<std::size_t>(row.urgency)]);
            const bool past = triage::isVisitOfLongAgo(row, now);  // counted in a line of its own
            m_past += past ? 1 : 0;
            overdue += !past && triage::isOverdue(row, now) ? 1 : 0;
            if (past && foldsPast()) {
                continue;
            }
            auto words = rowOf(row, m_workplace.desk().summary(row.course).value_or(desk::CourseSummary{}), phones.text(row.course), now);
            const auto facts = factsOf(row, m_workplace.state());
            m_queueFilter.count(facts);
            if (m_queueFilter.lets(facts) && matches(words, row.course)) {
                if (row.silent && !headed) {
                    words.heading = tr("Not heard from: silence is not good news");
                    headed = true;
                }
                rows.append({words.key, row.silent ? QStringLiteral("silent") : QStringLiteral("open"),
                             QVariant::fromValue(words)});
            } else {
                ++m_hidden;
                m_hiddenUrgent += row.urgency <= recovery::Urgency::callNow || (!past && triage::isOverdue(row, now)) ? 1 : 0;
            }
        }
        QStringList parts;
        const std::array texts{QString(), tr("%Ln emergency(ies)", nullptr, counts[1]),
                               tr("%Ln to call now", nullptr, counts[2]),
                               tr("%Ln for the next working day", nullptr, counts[3]),
                               tr("%Ln for the follow-up", nullptr, counts[4])};
        for (std::size_t i = 1; i < counts.size(); ++i) {
            if (counts[i] > 0) {
                parts << texts[i];
            }
        }
        if (silent > 0) {
            parts << tr("%Ln not heard from", nullptr, silent);
        }
        m_filters = {tr("Everyone %1").arg(charts::digits(static_cast<int>(m_queue.size())))};
        for (int urgency = 1; urgency <= 4; ++urgency) {
            m_filters << tr("%1 %2", "urgency, count")
                             .arg(urgencyName(static_cast<recovery::Urgency>(urgency)),
                                  charts::digits(counts[static_cast<std::size_t>(urgency)]));
        }
        m_filters << tr("%1 %2", "urgency, count").arg(tr("Not heard from"), charts::digits(silent));
        if (overdue > 0) {
            const auto clinic = m_workplace.desk().clinic();
            const auto onCall = clinic ? leftToRight(clinic->contacts.onCallPhone) : QString();
            m_overdue = tr("%Ln row(s) wait longer than agreed.", nullptr, overdue)
                        + (onCall.isEmpty() ? QString() : QLatin1Char(' ') + tr("On call: %1").arg(onCall));
        }
        m_summary = parts.isEmpty() ? tr("Nobody waits") : parts.join(QStringLiteral(" · "));
    } else {
        forgetFilters();
        m_queueFilter.begin();  // nobody's name stays behind
        cancelClosing();
        forgetUndo();
    }
    m_rows.setRows(std::move(rows));
    m_queueFilter.end();
    Q_EMIT changed();
}

bool QueueBoard::matches(const QueueRow& row, const recovery::CourseId& course)
{
    if (m_filter != 0 && (m_filter == silentFilter) != row.silent) {
        return false;
    }
    if (m_filter != 0 && m_filter != silentFilter && row.urgency != m_filter) {
        return false;
    }
    const std::array whose{true, !row.isTaken, row.isMine, !row.unopened.isEmpty()};
    if (!whose[static_cast<std::size_t>(m_whose)]) {
        return false;
    }
    if (m_search.isEmpty() || row.name.contains(m_search, Qt::CaseInsensitive)
        || row.title.contains(m_search, Qt::CaseInsensitive)) {
        return true;
    }
    return hasLot(m_workplace.state(), course, m_search);
}

QString QueueBoard::pastVisits() const
{
    return m_past > 0 ? tr("Visits missed more than %1 days ago, with nothing written down since: %2")
                            .arg(charts::digits(static_cast<int>(triage::visitOfLongAgo.count())), charts::digits(m_past))
                      : QString();
}

bool QueueBoard::foldsPast() const
{
    return !m_pastShown && m_search.isEmpty() && m_filter != silentFilter;
}

void QueueBoard::setPastShown(bool shown)
{
    if (shown != m_pastShown) {
        m_pastShown = shown;
        refresh();
    }
}

QString QueueBoard::emptyTitle() const
{
    return m_hidden > 0 ? tr("No match") : m_past > 0 ? tr("Only visits missed long ago") : tr("Nobody waits for an answer");
}

QString QueueBoard::emptyText() const
{
    return m_hidden > 0 ? tr("Take search and filters off to see the others.")
                        : tr("Courses show up here when a warning sign, a rule or a silence asks for a look.");
}

QString QueueBoard::hidden() const
{
    return m_hidden > 0 ? tr("%Ln hidden by search or filters", nullptr, m_hidden) : QString();
}

QString QueueBoard::hiddenUrgent() const
{
    return m_hiddenUrgent > 0 ? tr("%Ln urgent row(s) hidden by search or filters", nullptr, m_hiddenUrgent) : QString();
}

/// They are of one sitting: whoever comes next sees everybody.
void QueueBoard::forgetFilters()
{
    m_search.clear();
    m_filter = 0;
    m_whose = 0;
    m_pastShown = false;
    if (m_queueFilter.isOn() || m_queueFilter.isChoosing()) {
        const QSignalBlocker quiet(m_queueFilter);
        m_queueFilter.takeAllOff();
    }
}

void QueueBoard::showAll()
{
    forgetFilters();
    refresh();
}

void QueueBoard::setSearch(const QString& text)
{
    if (text != m_search) {
        m_search = text;
        refresh();
    }
}

void QueueBoard::setUrgencyFilter(int urgency)
{
    const int next = std::clamp(urgency, 0, silentFilter);
    if (next != m_filter) {
        m_filter = next;
        refresh();
    }
}

QStringList QueueBoard::whoseFilters() const
{
    return {tr("All"), tr("Nobody on it"), tr("Mine"), tr("Not opened")};
}

void QueueBoard::setWhose(int whose)
{
    const int next = std::clamp(whose, 0, 3);
    if (next != m_whose) {
        m_whose = next;
        refresh();
    }
}

QString QueueBoard::entryAt(int row) const
{
    const auto& rows = m_rows.rows();
    return row >= 0 && row < rows.size() ? rows[row].value.value<QueueRow>().entryKey : QString();
}

int QueueBoard::nextUnopened(int from) const
{
    const auto& rows = m_rows.rows();
    for (int step = 1; step <= rows.size(); ++step) {
        const auto row = (from + step) % rows.size();
        if (!rows[row].value.value<QueueRow>().unopened.isEmpty()) {
            return static_cast<int>(row);
        }
    }
    return -1;
}

void QueueBoard::actOnAll(const QString& key, records::Act act, const QString& did)
{
    const auto course = courseFromKey(key);
    const auto row = std::find_if(m_queue.begin(), m_queue.end(), [&](const auto& candidate) { return candidate.course == course; });
    if (row == m_queue.end()) {
        return;
    }
    std::vector<std::string> findings;
    for (const auto& finding : row->findings) {
        findings.push_back(finding.key);
    }
    const auto done = m_workplace.desk().actOn(course, findings, act);
    if (m_workplace.settle(done ? Done{} : Done(fail(done.error())))) {
        offerUndo(course, *done, did.arg(m_workplace.patientName(course)));
    }
}

void QueueBoard::offerUndo(const recovery::CourseId& course, const std::vector<journal::OperationId>& acts, const QString& title)
{
    if (!acts.empty()) {
        m_undo = Target{course, {}, title, acts};
        Q_EMIT undoChanged();
    }
}

void QueueBoard::take(const QString& key)
{
    actOnAll(key, records::Act::taken, tr("Taken: %1"));
}

void QueueBoard::called(const QString& key)
{
    actOnAll(key, records::Act::called, tr("Called: %1"));
}

void QueueBoard::startClosing(const QString& key)
{
    const auto course = courseFromKey(key);
    const auto row = std::find_if(m_queue.begin(), m_queue.end(), [&](const auto& candidate) { return candidate.course == course; });
    if (row == m_queue.end()) {
        return;
    }
    if (!m_workplace.mayDo(records::Task::close)) {
        return;
    }
    const auto& first = row->findings.front();
    m_closing = Target{course, first.key,
                       tr("%1: %2", "name, finding").arg(m_workplace.patientName(course), findingTitle(first))};
    Q_EMIT closingChanged();
}

void QueueBoard::close(int outcome, const QString& note)
{
    // No outcome, no closing: a finding never leaves the queue without a word about what was done.
    if (!m_closing || outcome <= 0 || outcome > static_cast<int>(records::Outcome::notReached)) {
        return;
    }
    const auto target = *m_closing;
    m_closing.reset();
    Q_EMIT closingChanged();
    if (m_workplace.settle(m_workplace.desk().act(target.course, target.finding, records::Act::closed,
                                                  static_cast<records::Outcome>(outcome), note.toStdString()))) {
        m_undo = Target{target.course, target.finding, tr("Closed: %1").arg(target.title)};
        Q_EMIT undoChanged();
    }
}

void QueueBoard::cancelClosing()
{
    if (m_closing) {
        m_closing.reset();
        Q_EMIT closingChanged();
    }
}

void QueueBoard::undo()
{
    if (m_undo) {
        const auto target = *m_undo;
        forgetUndo();
        m_workplace.settle(target.acts.empty() ? m_workplace.desk().act(target.course, target.finding, records::Act::reopened)
                                               : m_workplace.desk().takeBack(target.course, target.acts));
    }
}

void QueueBoard::forgetUndo()
{
    if (m_undo) {
        m_undo.reset();
        Q_EMIT undoChanged();
    }
}

}  // namespace ebbline::deskapp
