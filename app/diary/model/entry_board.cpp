#include "app/diary/model/entry_board.h"

#include "app/diary/model/entry_words.h"
#include "app/diary/model/words.h"

#include <QLocale>

#include <algorithm>

namespace ebbline::diaryapp {

namespace {

using recovery::Side;
using recovery::Stream;
using recovery::Symptom;

/// Asked every time, always in this order; the others on request.
constexpr std::array alwaysAsked{Symptom::swelling, Symptom::pain, Symptom::bruising, Symptom::tightness,
                                 Symptom::puckering};
constexpr std::array onRequest{Symptom::twinges, Symptom::numbness};
constexpr int moreAsked = 16;

}  // namespace

EntryBoard::EntryBoard(Home& home, DiarySettings& settings, QObject* parent)
    : QObject(parent), m_home(home), m_settings(settings), m_moment(home)
{
    connect(&m_moment, &EntryMoment::picked, this, [this] {
        m_entry.at = m_moment.at();
        m_entry.recordedAt = m_home.now();  // that it is about this moment was said now
        m_before = m_home.diary().lastBefore(m_entry.at.at);
        keep();
    });
    connect(&m_moment, &EntryMoment::takenAsNow, this, [this] {
        // Every question comes again with what was touched then; nothing is said no to for now.
        m_entry.absent.clear();
        m_place = 0;
        keep();
    });
    connect(&home, &Home::openChanged, this, [this] {
        if (m_home.isOpen())
            return;
        // Nothing of what was typed stays in memory: it lies in the vault.
        m_entry = {};
        m_before.reset();
        m_amends.reset();
        m_temperature.clear();
        m_temperatureProblem.clear();
        m_noteFull = false;
        m_problem.clear();
        m_findings.clear();
        m_throwing = false;
        m_unsaved = false;
        m_unkept = false;
        m_read.clear();
        Q_EMIT changed();
    });
}

bool EntryBoard::isBegun(const patient::Draft& draft)
{
    const recovery::Entry& entry = draft.entry;
    return !entry.scores.empty() || !entry.present.empty() || !entry.absent.empty() || entry.temperature || !entry.note.empty()
           || !draft.temperatureText.empty() || entry.isLate();
}

bool EntryBoard::isBegunOfNow() const
{
    if (!m_home.isOpen())
        return false;
    const auto kept = m_home.diary().draft();
    return kept && isBegun(*kept) && !kept->entry.isLate();
}

/// The step with, in its fifth bit, whether the questions on request are among them.
int EntryBoard::keptStep() const
{
    return static_cast<int>(m_place) + (m_symptoms.size() > alwaysAsked.size() ? moreAsked : 0);
}

void EntryBoard::start(const patient::Draft& draft)
{
    m_symptoms.assign(alwaysAsked.begin(), alwaysAsked.end());
    if ((draft.step & moreAsked) != 0)
        m_symptoms.insert(m_symptoms.end(), onRequest.begin(), onRequest.end());
    m_place = std::min(static_cast<std::size_t>(draft.step & (moreAsked - 1)), m_symptoms.size() + 1);
    m_problem.clear();
    m_temperatureProblem.clear();
    m_noteFull = false;
    m_findings.clear();
    m_unsaved = false;
    m_unkept = false;
    m_throwing = false;
    m_entry = draft.entry;
    m_temperature = QString::fromStdString(draft.temperatureText);
    if (m_temperature.isEmpty() && m_entry.temperature)
        m_temperature = QLocale().toString(isFahrenheit() ? m_entry.temperature->fahrenheit() : m_entry.temperature->celsius(), 'f', 1);
    m_before = m_home.diary().lastBefore(m_entry.at.at);
    m_moment.show(m_entry.at, m_amends.has_value());
}

Done EntryBoard::open(Place place)
{
    const auto kept = m_home.diary().draft();
    if (!kept && kept.error().reason != Reason::notFound)
        return fail(kept.error());
    m_amends.reset();
    if (kept && isBegun(*kept)) {
        start(*kept);
        // Go on at the first question that is not answered.
        while (place == Place::firstOpen && m_place < m_symptoms.size() && m_entry.scores.contains({symptom(), Side::left})
               && m_entry.scores.contains({symptom(), Side::right}))
            ++m_place;
        // Begun as "now", and that was a while ago.
        if (m_entry.at.at >= m_entry.recordedAt.at)
            m_moment.ask();
    } else {
        start({m_home.diary().blankEntry(), {}, kept && place == Place::asLeft ? kept->step : 0});
    }
    Q_EMIT changed();
    return {};
}

Done EntryBoard::amend(const recovery::EntryId& id)
{
    const auto kept = m_home.diary().correctionDraft();
    if (!kept && kept.error().reason != Reason::notFound)
        return fail(kept.error());
    for (const patient::EntryView& view : m_home.diary().history()) {
        const recovery::Entry& entry = view.history.current();
        if (entry.id != id)
            continue;
        m_amends = id;
        start(kept && kept->entry.id == id ? *kept : patient::Draft{entry, {}, 0});
        Q_EMIT changed();
        return {};
    }
    return fail(Reason::notFound, "entry: there is none to correct");
}

EntryBoard::Step EntryBoard::step() const
{
    if (m_place < m_symptoms.size())
        return Step::Score;
    return m_place == m_symptoms.size() ? Step::Signs : Step::Rest;
}

QString EntryBoard::progress() const
{
    //: "2 of 7": the place of a question among all
    return tr("%1 of %2").arg(digits(static_cast<int>(m_place) + 1), digits(stepCount()));
}

qreal EntryBoard::share() const
{
    return (static_cast<qreal>(m_place) + 1) / stepCount();
}

QString EntryBoard::question() const
{
    switch (step()) {
    case Step::Score: return symptomQuestion(symptom());
    case Step::Signs: return tr("Is any of this true?");
    case Step::Rest: return tr("Anything else?");
    }
    return {};
}

QString EntryBoard::scale() const
{
    return step() == Step::Score ? tr("%1, %2.").arg(lowestWord(symptom()), highestWord(symptom())) : QString();
}

QList<SideAnswer> EntryBoard::sides() const
{
    QList<SideAnswer> answers;
    if (step() != Step::Score)
        return answers;
    // As on the face chart, seen from in front: the right side stands on the left.
    for (const Side side : {Side::right, Side::left}) {
        const Stream stream{symptom(), side};
        SideAnswer answer{static_cast<int>(side), sideName(side), -1, {}};
        if (const auto found = m_entry.scores.find(stream); found != m_entry.scores.end())
            answer.points = found->second.points();
        if (m_before)
            if (const auto last = m_before->scores.find(stream); last != m_before->scores.end())
                answer.before = tr("Last time %1").arg(digits(last->second.points()));
        answers << answer;
    }
    return answers;
}

QString EntryBoard::nextWord() const
{
    if (step() != Step::Score)
        return {};
    const bool answered = m_entry.scores.contains({symptom(), Side::left}) || m_entry.scores.contains({symptom(), Side::right});
    return answered ? tr("Next") : tr("Skip this one");
}

QList<SignLine> EntryBoard::signLines() const
{
    QList<SignLine> lines;
    for (const recovery::Sign sign : recovery::allSigns)
        lines << SignLine{static_cast<int>(sign), signQuestion(sign), m_entry.present.contains(sign)};
    return lines;
}

QString EntryBoard::signsWord() const
{
    return m_entry.present.empty() ? tr("None of these") : tr("Only what I ticked");
}

bool EntryBoard::isMoreOffered() const
{
    return step() == Step::Rest && m_symptoms.size() == alwaysAsked.size();
}

QString EntryBoard::summary() const
{
    recovery::Entry scored;
    scored.scores = m_entry.scores;
    return entryText(scored, isFahrenheit());
}

/// Every tap is durable: a failure is said, and what was typed stays on the page.
void EntryBoard::keep()
{
    if (!m_home.isOpen())
        return;  // a field that is left because the diary locked: its letters are kept already
    const patient::Draft draft{m_entry, m_temperature.toStdString(), keptStep()};
    const Done kept = m_amends ? m_home.diary().keepCorrection(draft) : m_home.diary().keepDraft(draft);
    m_unkept = !kept;
    m_problem = kept ? QString() : errorText(kept.error());
    Q_EMIT changed();
}

void EntryBoard::answer(int side, int points)
{
    const auto score = recovery::Score::of(points);
    if (step() != Step::Score || !score || (side != 1 && side != 2))
        return;
    m_entry.scores.insert_or_assign(Stream{symptom(), static_cast<Side>(side)}, *score);
    keep();
}

void EntryBoard::clear(int side)
{
    if (step() == Step::Score && m_entry.scores.erase({symptom(), static_cast<Side>(side)}) > 0)
        keep();
}

void EntryBoard::next()
{
    m_place = std::min(m_place + 1, m_symptoms.size() + 1);
    m_throwing = false;
    keep();
}

void EntryBoard::back()
{
    m_throwing = false;
    if (m_place == 0 || m_moment.isAsking())
        return Q_EMIT left();
    --m_place;
    keep();
}

void EntryBoard::askMore()
{
    m_place = m_symptoms.size();
    m_symptoms.insert(m_symptoms.end(), onRequest.begin(), onRequest.end());
    keep();
}

void EntryBoard::tick(int sign, bool present)
{
    const auto value = static_cast<recovery::Sign>(sign);
    m_entry.absent.erase(value);
    if (present)
        m_entry.present.insert(value);
    else
        m_entry.present.erase(value);
    keep();
}

void EntryBoard::signsDone()
{
    // Only this act says no to what is not ticked; leaving the page says nothing.
    for (const recovery::Sign sign : recovery::allSigns)
        if (!m_entry.present.contains(sign))
            m_entry.absent.insert(sign);
    next();  // keeps both at once: one touch is one durable write
    warnOf(m_home.isOpen() ? m_home.diary().judged(m_entry) : std::vector<triage::Finding>{});
}

QString EntryBoard::keptNote(const QString& text)
{
    // Whole characters only: no cut inside a pair of surrogates, which is one character.
    QString kept = text;
    while (static_cast<std::size_t>(kept.toUtf8().size()) > recovery::Entry::maximumNote) {
        kept.truncate(std::min(kept.size() - 1, kept.size() * static_cast<qsizetype>(recovery::Entry::maximumNote) / kept.toUtf8().size()));
        if (!kept.isEmpty() && kept.back().isHighSurrogate())
            kept.chop(1);
    }
    return kept;
}

void EntryBoard::writeNote(const QString& text)
{
    if (text == note())
        return;
    const QString kept = keptNote(text);
    m_noteFull = kept.size() < text.size();
    m_entry.note = kept.toStdString();
    keep();
}

QString EntryBoard::noteProblem() const
{
    return m_noteFull ? tr("The note is full. What comes after this is not kept.") : QString();
}

void EntryBoard::save()
{
    writeTemperature(m_temperature);
    if (!m_home.isOpen())
        return;
    if (!m_temperatureProblem.isEmpty()) {
        m_problem = tr("Please look at the temperature. Then save again.");
        Q_EMIT changed();
        return warnOf(m_home.diary().judged(m_entry));
    }
    const auto stored = m_amends ? m_home.diary().amend(*m_amends, m_entry) : m_home.diary().record(m_entry);
    m_unsaved = m_tried = !stored;
    if (!stored) {
        m_problem = errorText(stored.error());
        m_findings = m_home.diary().judged(m_entry);
        Q_EMIT changed();
        Q_EMIT notSaved();
        return;
    }
    m_findings = stored->findings;
    m_saved = stored->entry;
    m_unkept = false;
    m_problem.clear();
    // What was read while it was typed is on record as read with the entry. A failure leaves it to be read again.
    for (const triage::Finding& finding : m_findings)
        if (finding.urgency <= recovery::Urgency::callNow && isRead(stored->entry, finding))
            (void)m_home.diary().confirmWarning(finding);
    m_home.touch();
    Q_EMIT saved();
}

}  // namespace ebbline::diaryapp
