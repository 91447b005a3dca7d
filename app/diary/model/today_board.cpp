#include "app/diary/model/today_board.h"

#include "app/diary/model/curve_text.h"
#include "app/diary/model/entry_board.h"
#include "app/diary/model/times.h"
#include "app/diary/model/words.h"
#include "core/aftercare/visit.h"
#include "core/sync/hub_time.h"

#include <algorithm>
#include <array>
#include <utility>

namespace ebbline::diaryapp {

TodayBoard::TodayBoard(Home& home, DiarySettings& settings, QObject* parent)
    : QObject(parent), m_home(home), m_settings(settings)
{
    connect(&settings, &DiarySettings::changed, this, &TodayBoard::refresh);
    connect(&home, &Home::changed, this, &TodayBoard::refresh);
    connect(&home, &Home::openChanged, this, &TodayBoard::refresh);
}

void TodayBoard::refresh()
{
    m_today = m_home.isOpen() && m_home.diary().joined() ? m_home.diary().today() : patient::Today{};
    if (m_home.isOpen() && m_home.diary().replaced()) {
        // The other phone reminds; asking here as well would be answered where nobody hears it.
        m_today.dueNow.clear();
        m_today.next.clear();
        m_today.answeredToday.clear();
    }
    m_advice = adviceFor(m_today.toRead, m_settings.isFahrenheit());
    Q_EMIT changed();
}

void TodayBoard::readAdvice()
{
    if (!m_home.isOpen())
        return;
    for (const triage::Finding& finding : std::exchange(m_today.toRead, {}))
        if (const Done done = m_home.diary().confirmWarning(finding); !done)
            Q_EMIT failed(errorText(done.error()));
    m_home.touch();
}

namespace {

/// The visit's own day and time, not those of the bell that reminds of it: one page names one time.
QString visitText(const clock::Moment& followUp, const clock::Moment& now)
{
    return aftercare::visitOf(followUp).minute ? whenText(followUp, now) : dateText(followUp);
}

}  // namespace

QString TodayBoard::day() const
{
    return dayText(m_today.day);
}

QString TodayBoard::followUp() const
{
    return aftercare::visitOf(m_today.followUp).minute
               ? tr("Follow-up visit: %1, %2").arg(dateText(m_today.followUp), clockText(m_today.followUp))
               : tr("Follow-up visit: %1").arg(dateText(m_today.followUp));
}

QString TodayBoard::visitMoved() const
{
    return m_today.formerVisit ? tr("Your clinic moved the visit. Before, it was: %1").arg(visitText(*m_today.formerVisit, m_today.now)) : QString();
}

QString TodayBoard::usual() const
{
    if (!m_home.isOpen() || !m_home.diary().joined())
        return {};
    const bands::Band& band = m_home.diary().course().protocol.band;
    QStringList parts;
    for (const auto symptom : {recovery::Symptom::swelling, recovery::Symptom::pain}) {
        const bands::Range range = band.inner(symptom, m_today.day);
        //: "Swelling 2 to 6": a symptom and its usual scores of 10
        parts << tr("%1 %2 to %3").arg(symptomName(symptom), digits(range.low), digits(range.high));
    }
    //: %1 is a list such as "Swelling 2 to 6, Pain 1 to 5"
    return tr("Usual today, of 10: %1.").arg(parts.join(tr(", ")));
}

QString TodayBoard::usualGround() const
{
    if (!m_home.isOpen() || !m_home.diary().joined())
        return {};
    const bands::Provenance& ground = m_home.diary().course().protocol.band.provenance();
    if (ground.assumption)
        return tr("This range is an assumption for now. It is not yet made from courses at your clinic.");
    return tr("This range comes from %n course(s) at your clinic.", "", ground.courses);
}

QString TodayBoard::sent() const
{
    if (!replaced().isEmpty())
        return {};  // what it says ends with the link
    if (!m_today.lastEntry)
        return tr("Nothing is written down yet.");
    const patient::EntryState& state = m_today.lastEntry->state;
    switch (state.place) {
    case patient::EntryState::Place::opened:
        return tr("Your last entry was opened by %1, %2.")
            .arg(QString::fromStdString(state.openedBy), whenText(*state.openedAt, m_today.now));
    case patient::EntryState::Place::withClinic:
        if (state.openedBefore)
            return tr("Your correction is on the clinic's computer since %1. Nobody has opened it yet. %2 opened what you wrote before, %3.")
                .arg(whenText(m_home.zone().moment(*state.since), m_today.now), QString::fromStdString(state.openedBefore->by),
                     whenText(state.openedBefore->at, m_today.now));
        return tr("Your last entry is on the clinic's computer since %1. Nobody has opened it yet.")
            .arg(whenText(m_home.zone().moment(*state.since), m_today.now));
    case patient::EntryState::Place::savedHere: break;
    }
    return tr("%n entry/entries saved on this phone, not with the clinic yet. If it is urgent, call.", "",
              static_cast<int>(m_today.waiting));
}

QString TodayBoard::refusedText(sync::Refusal::Why why)
{
    switch (why) {
    case sync::Refusal::Why::full: return tr("The server between is full. What you write does not fit in.");
    case sync::Refusal::Why::unknownThere: return tr("The server between does not know this phone any more.");
    case sync::Refusal::Why::taken:
    case sync::Refusal::Why::unreadable: break;
    }
    return tr("The server between does not take what this phone sends.");
}

QString TodayBoard::outlook() const
{
    if (!m_home.isOpen() || !m_home.diary().joined())
        return {};
    if (m_home.diary().replaced())
        return {};  // replaced() says it all
    const auto outlook = m_home.diary().outlook();
    if (!outlook)
        return {};
    using State = sync::Outlook::State;
    const auto when = [this](clock::Instant at) { return whenText(m_home.zone().moment(at), m_today.now); };
    QStringList lines;
    if (m_home.diary().tooOld())
        lines << tr("Your clinic needs a newer version of this app. Please update it. Until then, what you write may wait on this phone.");
    switch (outlook->state) {
    case State::olderHere: lines << tr("This phone holds an older copy of your diary. Some of what you wrote may be gone here. Call your clinic, please."); break;
    case State::forked: lines << tr("Two messages from the clinic do not fit together. Call your clinic before you act on one."); break;
    case State::refused:
        lines << refusedText(outlook->refusal->why) << tr("It stays on this phone, and this phone tries again. Call your clinic, please.");
        break;
    case State::withheld: lines << tr("A message from the clinic is missing here. Call your clinic, please."); break;
    case State::unheard:
        lines << (outlook->heardAt ? tr("This phone has heard nothing from the clinic since %1.").arg(when(*outlook->heardAt))
                                   : tr("This phone has heard nothing from the clinic yet."));
        break;
    case State::waiting:
    case State::delivered: break;
    }
    // Answers to reminders travel as well; what she wrote is what she waits for.
    if (outlook->waitingSince && m_today.waiting > 0)
        lines << tr("As far as this phone knows, what you wrote is not with the clinic. It has waited since %1.").arg(when(*outlook->waitingSince));
    if (const int days = m_today.waiting > 0 ? sync::overdueOf(*outlook, m_today.now.at) : 0; days > 0)
        lines << tr("That is more than %1 days. Call your clinic, please. Keep this phone and this program: what you wrote may be nowhere else.").arg(days);
    if (!lines.isEmpty())
        lines << tr("If you are worried, call. Do not wait for an answer here.");
    if (const auto ahead = sync::clockAhead(m_home.diary().vault()))
        lines << (ahead->count() > 0 ? tr("The clock of this phone is about %1 fast. Please set it: it rings your reminders.")
                                     : tr("The clock of this phone is about %1 slow. Please set it: it rings your reminders."))
                     .arg(lengthText(abs(*ahead)));
    return lines.join(QLatin1Char(' '));
}

bool TodayBoard::isStuck() const
{
    if (m_home.isOpen() && m_home.diary().joined() && m_home.diary().tooOld())
        return true;
    const auto outlook = m_home.isOpen() && m_home.diary().joined() ? m_home.diary().outlook() : std::nullopt;
    if (!outlook)
        return false;
    return outlook->state < sync::Outlook::State::waiting
           || (outlook->waitingSince && sync::isOver(*outlook->waitingSince, sync::longestSilence, m_today.now.at));
}

QString TodayBoard::replaced() const
{
    if (!m_home.isOpen() || !m_home.diary().replaced())
        return {};
    QStringList lines{tr("This phone is no longer linked with the clinic. What you write here reaches nobody, and reminders do not ring here. Use your other phone. If there is none, call your clinic.")};
    if (const auto left = m_home.diary().leftBehind(); left && !left->isNothing())
        lines << tr("%n thing(s) that you wrote here did not get to the clinic. Show them there, please.", "",
                    static_cast<int>(left->entries + left->messages + left->photos + left->others));
    return lines.join(QLatin1Char(' '));
}

QString TodayBoard::standing() const
{
    return m_today.standing.empty() ? QString() : adviceFor(m_today.standing.front()).title;
}

QString TodayBoard::unread() const
{
    return m_today.unread == 0 ? QString() : tr("%n new note(s) from the clinic", "", static_cast<int>(m_today.unread));
}

namespace {

/// Our words, then the clinic's own.
QString wordsOf(aftercare::InstructionKind kind, const std::string& clinicText)
{
    return (instructionText(kind) + QLatin1Char(' ') + QString::fromStdString(clinicText)).trimmed();
}

}  // namespace

/// From the plan: a reminder itself carries no words of the clinic, for it also rings and goes into calendars.
std::string TodayBoard::clinicTextOf(const aftercare::Reminder& reminder) const
{
    if (!m_home.isOpen() || !m_home.diary().joined())
        return {};
    const auto& plan = m_home.diary().course().protocol.carePlan.instructions;
    const auto own = std::ranges::find(plan, reminder.instruction, &aftercare::Instruction::id);
    return own == plan.end() ? std::string() : own->clinicText;
}

DayLine TodayBoard::lineOf(const patient::ReminderView& view, clock::Instant at) const
{
    const clock::Moment when = m_home.zone().moment(at);
    return {QString::fromStdString(view.reminder.key), instructionTitle(view.reminder.kind),
            wordsOf(view.reminder.kind, clinicTextOf(view.reminder)),
            view.reminder.kind == aftercare::InstructionKind::followUp ? visitText(m_today.followUp, m_today.now) : whenText(when, m_today.now),
            view.reminder.kind == aftercare::InstructionKind::diaryEntry, view.answer == records::ReminderAnswer::done};
}

QList<DayLine> TodayBoard::due() const
{
    QList<DayLine> lines;
    for (const patient::ReminderView& view : m_today.dueNow)
        lines << lineOf(view, view.reminder.due);
    return lines;
}

QList<DayLine> TodayBoard::answered() const
{
    QList<DayLine> lines;
    for (const patient::ReminderView& view : m_today.answeredToday) {
        if (view.reminder.kind == aftercare::InstructionKind::diaryEntry)
            continue;  // answered by what was written, which is corrected where it stands
        DayLine line = lineOf(view, view.reminder.due);
        const QString said = line.isDone ? tr("You said: done.") : tr("You said: not done.");
        // Only the clinic's words tell one instruction of its own from another.
        line.text = view.reminder.kind == aftercare::InstructionKind::custom ? (line.text + QLatin1Char(' ') + said).trimmed() : said;
        lines << line;
    }
    return lines;
}

QList<DayLine> TodayBoard::next() const
{
    QList<DayLine> lines;
    for (const patient::ReminderView& view : m_today.next)
        lines << lineOf(view, view.laterUntil.value_or(view.reminder.due));
    return lines;
}

QList<DayLine> TodayBoard::rules() const
{
    QList<DayLine> lines;
    for (const aftercare::Instruction& instruction : m_today.inForce) {
        if (instruction.kind == aftercare::InstructionKind::diaryEntry
            || instruction.kind == aftercare::InstructionKind::followUp)
            continue;
        lines << DayLine{QString::fromStdString(instruction.id), instructionTitle(instruction.kind), wordsOf(instruction.kind, instruction.clinicText),
                         untilText(instruction.lastDay, m_today.day), false, false};
    }
    return lines;
}

QString TodayBoard::writeWord() const
{
    const bool begun = m_home.isOpen() && m_home.diary().draft() && EntryBoard::isBegun(*m_home.diary().draft());
    return begun ? tr("Go on with your entry") : tr("Write down how it is");
}

std::vector<clock::Instant> TodayBoard::laterTimes() const
{
    const clock::Instant now = m_home.clock().now();
    return {now + std::chrono::minutes(30), now + std::chrono::hours(2)};
}

QStringList TodayBoard::laterChoices() const
{
    QStringList choices;
    for (const clock::Instant time : laterTimes())
        choices << tr("Later, %1").arg(clockText(m_home.zone().moment(time)));
    return choices;
}

namespace {

/// In sight at once.
constexpr std::array shownFirst{recovery::Symptom::swelling, recovery::Symptom::pain};
/// As an entry asks for them.
constexpr std::array shownOnRequest{recovery::Symptom::bruising, recovery::Symptom::tightness, recovery::Symptom::puckering,
                                    recovery::Symptom::twinges, recovery::Symptom::numbness};
static_assert(shownFirst.size() + shownOnRequest.size() == recovery::allSymptoms.size());

}  // namespace

bool TodayBoard::isScored(recovery::Symptom symptom) const
{
    return m_home.isOpen() && m_home.diary().joined()
           && (!m_home.diary().curve({symptom, recovery::Side::right}).points.empty()
               || !m_home.diary().curve({symptom, recovery::Side::left}).points.empty());
}

void TodayBoard::addCurves(recovery::Symptom symptom, QList<charts::CurvePicture>& pictures) const
{
    for (const auto side : {recovery::Side::right, recovery::Side::left}) {
        const curves::Curve curve = m_home.diary().curve({symptom, side});
        charts::CurvePicture picture = charts::pictureOf(curve);
        picture.sentence = curveText(curve);
        picture.title = tr("%1, %2").arg(symptomName(symptom), sideInSentence(side));
        pictures << picture;
    }
}

QList<charts::CurvePicture> TodayBoard::curves() const
{
    QList<charts::CurvePicture> pictures;
    if (m_home.isOpen() && m_home.diary().joined())
        for (const auto symptom : shownFirst)
            addCurves(symptom, pictures);
    return pictures;
}

bool TodayBoard::isMoreThere() const
{
    return std::ranges::any_of(shownOnRequest, [this](recovery::Symptom symptom) { return isScored(symptom); });
}

QList<charts::CurvePicture> TodayBoard::moreCurves() const
{
    QList<charts::CurvePicture> pictures;
    for (const auto symptom : shownOnRequest)
        if (isScored(symptom))
            addCurves(symptom, pictures);
    return pictures;
}

void TodayBoard::answer(const QString& key, records::ReminderAnswer answer, std::optional<clock::Instant> until)
{
    if (!m_home.isOpen())
        return;
    if (const Done stored = m_home.diary().answerReminder(key.toStdString(), answer, until); !stored)
        Q_EMIT failed(errorText(stored.error()));
    m_home.touch();
}

void TodayBoard::done(const QString& key) { answer(key, records::ReminderAnswer::done); }
void TodayBoard::notDone(const QString& key) { answer(key, records::ReminderAnswer::notDone); }

void TodayBoard::later(const QString& key, int choice)
{
    const auto times = laterTimes();
    if (choice >= 0 && choice < static_cast<int>(times.size()))
        answer(key, records::ReminderAnswer::later, times[static_cast<std::size_t>(choice)]);
}

}  // namespace ebbline::diaryapp
