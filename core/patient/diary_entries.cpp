// Entries: the draft that survives everything, the durable record, what it raises at once.

#include "core/patient/inside.h"

#include "core/bytes/reader.h"
#include "core/records/entry_draft.h"

#include <algorithm>
#include <limits>

namespace ebbline::patient {

namespace {

constexpr const char* draftName = "entry-draft";
constexpr const char* correctionName = "correction-draft";
constexpr std::uint8_t draftForm = 1;
constexpr std::size_t maximumTyped = 20;
constexpr std::size_t maximumDraft = 16 * 1024;

/// Any version of it: a correction may have moved the entry since, and what it raised stays with it.
bool spokeOf(const journal::EntryHistory& history, const clock::Moment& at)
{
    return std::ranges::any_of(history.versions, [&](const auto& version) { return version.value.at == at; });
}

bytes::Bytes encoded(const Draft& draft)
{
    return bytes::Writer()
        .u8(draftForm)
        .u8(static_cast<std::uint8_t>(std::clamp(draft.step, 0, 31)))
        .block(bytes::viewOf(std::string_view(draft.temperatureText).substr(0, maximumTyped)))
        .block(records::encode(records::EntryRecorded{draft.entry}))
        .bytes();
}

}  // namespace

Result<Draft> Diary::Inside::draftOf(const char* name) const
{
    const auto stored = vault.kept(name);
    if (!stored)
        return fail(stored.error());
    bytes::Reader reader(*stored);
    const bool known = reader.u8() == draftForm;
    const int step = reader.u8();
    const bytes::View typed = reader.block(maximumTyped);
    const bytes::View entry = reader.block(maximumDraft);
    auto decoded = records::decodeEntryDraft(entry);
    if (!known || !reader.atEnd() || !decoded)
        return fail(Reason::notFound, "draft: of another version of the program");
    return Draft{std::move(*decoded), std::string(typed.begin(), typed.end()), step};
}

Result<Draft> Diary::draft() const { return m_inside->draftOf(draftName); }
Result<Draft> Diary::correctionDraft() const { return m_inside->draftOf(correctionName); }
Done Diary::keepDraft(const Draft& draft) { return m_inside->vault.keep(draftName, encoded(draft)); }
Done Diary::keepCorrection(const Draft& draft) { return m_inside->vault.keep(correctionName, encoded(draft)); }
Done Diary::discardDraft() { return m_inside->vault.keep(draftName, {}); }
Done Diary::discardCorrection() { return m_inside->vault.keep(correctionName, {}); }

recovery::Entry Diary::blankEntry() const
{
    recovery::Entry entry;
    entry.id = recovery::EntryId{crypto::randomArray<16>()};
    if (const journal::CourseState* course = m_inside->course())
        entry.course = course->opened->course;
    entry.at = entry.recordedAt = m_inside->now();
    return entry;
}

std::vector<triage::Finding> Diary::Inside::findings() const
{
    const journal::CourseState* current = course();
    return current ? triage::findingsOf(*current, now()) : std::vector<triage::Finding>{};
}

Result<Saved> Diary::record(const recovery::Entry& entry)
{
    if (!m_inside->course())
        return fail(Reason::invalidState, "entry: no clinic has been joined");
    return m_inside->store(entry, {});
}

Result<Saved> Diary::amend(const recovery::EntryId& old, const recovery::Entry& entry)
{
    const journal::CourseState* course = m_inside->course();
    const auto found = course ? course->entries.find(old) : decltype(course->entries.end()){};
    if (!course || found == course->entries.end())
        return fail(Reason::notFound, "entry: there is none to correct");
    recovery::Entry corrected = entry;
    corrected.id = old;
    return m_inside->store(std::move(corrected), found->second.versions.back().operation);
}

/// As it would be stored now. Somebody may have set the phone's clock while it was being typed: a
/// moment that lies ahead becomes this one, and one before the treatment stays as the clock said.
recovery::Entry Diary::Inside::dated(recovery::Entry entry) const
{
    entry.course = course()->opened->course;
    entry.recordedAt = now();
    if (entry.at.at > entry.recordedAt.at)
        entry.at = entry.recordedAt;
    return entry;
}

/// On the state with this entry in it.
std::vector<triage::Finding> Diary::Inside::raisedBy(const recovery::Entry& entry) const
{
    journal::CourseState with = *course();
    with.entries[entry.id].versions.push_back({entry, {}, entry.recordedAt, {std::numeric_limits<std::uint64_t>::max()}});
    std::vector<triage::Finding> raised = triage::findingsOf(with, entry.recordedAt);
    std::erase_if(raised, [&](const triage::Finding& finding) {
        return finding.entry ? *finding.entry != entry.id : finding.raisedAt != entry.at;
    });
    std::stable_sort(raised.begin(), raised.end(),
                     [](const triage::Finding& a, const triage::Finding& b) { return a.urgency < b.urgency; });
    return raised;
}

std::vector<triage::Finding> Diary::judged(const recovery::Entry& entry) const
{
    return m_inside->course() ? m_inside->raisedBy(m_inside->dated(entry)) : std::vector<triage::Finding>{};
}

Result<Saved> Diary::Inside::store(recovery::Entry entry, std::optional<journal::OperationId> supersedes)
{
    entry = dated(std::move(entry));
    if (const Done checked = recovery::check(entry); !checked)
        return fail(checked.error());

    // Judged before it is stored: the warning and the entry become durable together.
    std::vector<triage::Finding> raised = raisedBy(entry);
    std::vector<records::Body> bodies{records::EntryRecorded{entry}};
    for (const triage::Finding& finding : raised)
        if (finding.urgency <= recovery::Urgency::callNow)
            bodies.push_back(records::WarningShown{entry.course, entry.id, finding.key, finding.urgency,
                                                   entry.recordedAt, false});
    // Correcting an old entry leaves the one that is being typed alone.
    std::vector<std::string_view> finished;
    for (const char* name : {draftName, correctionName})
        if (const auto typed = draftOf(name); typed && typed->entry.id == entry.id)
            finished.emplace_back(name);
    const auto appended = append(bodies, entry.recordedAt, supersedes, finished);
    if (!appended)
        return fail(appended.error());
    return Saved{entry.id, std::move(raised)};
}

EntryState Diary::Inside::stateOf(const journal::EntryHistory& history) const
{
    EntryState state;
    const journal::CourseState* current = course();
    const journal::OperationId& newest = history.versions.back().operation;
    const journal::Opening* opened = current->opening(history);
    if (const journal::Opening* before = opened ? nullptr : current->earlierOpening(history))
        state.openedBefore = *before;
    if (newest.device != vault.device()) {
        // Of the phone that this one replaces: it came from the clinic, which had it when it opened the course here.
        // The last time that it did: earlier than that nothing tells on which phone.
        state.since = std::max(current->openedAt.at, current->visits.back().entered.at);
    } else {
        state.since = vault.deliveredAt(newest);
    }
    if (!state.since)
        return state;
    state.place = EntryState::Place::withClinic;
    if (opened) {
        state.place = EntryState::Place::opened;
        state.openedBy = opened->by;
        state.openedAt = opened->at;
    }
    return state;
}

EntryView Diary::Inside::viewOf(const recovery::EntryId& id, const std::vector<triage::Finding>& findings) const
{
    const journal::CourseState* current = course();
    const journal::EntryHistory& history = current->entries.at(id);
    EntryView view{history, std::max(0, clock::dayOfRecovery(current->opened->treated, history.current().at)),
                   stateOf(history), {}};
    for (const triage::Finding& finding : findings)
        if (finding.entry ? *finding.entry == id : spokeOf(history, finding.raisedAt))
            view.findings.push_back(finding);
    return view;
}

std::vector<EntryView> Diary::history() const
{
    std::vector<EntryView> views;
    const journal::CourseState* course = m_inside->course();
    if (!course)
        return views;
    const auto findings = m_inside->findings();
    for (const auto& [id, entry] : course->entries)
        views.push_back(m_inside->viewOf(id, findings));
    std::stable_sort(views.begin(), views.end(), [](const EntryView& a, const EntryView& b) {
        return a.history.current().at.at > b.history.current().at.at;
    });
    return views;
}

std::optional<recovery::Entry> Diary::lastBefore(clock::Instant at) const
{
    std::optional<recovery::Entry> last;
    if (const journal::CourseState* course = m_inside->course())
        for (const auto& [id, history] : course->entries) {
            const recovery::Entry& entry = history.current();
            if (entry.at.at < at && (!last || entry.at.at > last->at.at))
                last = entry;
        }
    return last;
}

recovery::EntryId Diary::Inside::raisedIn(const triage::Finding& finding) const
{
    if (finding.entry)
        return *finding.entry;
    const auto* trigger = std::get_if<triggers::Finding>(&finding.what);
    if (trigger && trigger->trigger == triggers::Trigger::silence)
        return {};
    for (const auto& [id, history] : course()->entries)
        if (spokeOf(history, finding.raisedAt))
            return id;
    return {};
}

bool Diary::isConfirmed(const triage::Finding& finding) const
{
    const journal::CourseState* course = m_inside->course();
    return course && std::ranges::any_of(course->warnings, [&](const records::WarningShown& shown) {
        // Before keys told of urgency the subject was named, and the urgency beside it.
        return shown.confirmed
               && (triage::isKeyOf(shown.rule, finding)
                   || (shown.rule == finding.subject && shown.urgency <= finding.urgency && finding.firstOfSubject));
    });
}

Done Diary::confirmWarning(const triage::Finding& finding)
{
    const journal::CourseState* course = m_inside->course();
    if (!course || course->entries.empty())
        return fail(Reason::invalidState, "warning: there is no entry that raised it");
    const recovery::EntryId entry = m_inside->raisedIn(finding);
    if (entry.isNull())
        return fail(Reason::notFound, "warning: the entry that raised it is not there");
    const auto appended = m_inside->append({records::WarningShown{course->opened->course, entry, finding.key,
                                                                  finding.urgency, m_inside->now(), true}},
                                           m_inside->now());
    return appended ? Done{} : Done(fail(appended.error()));
}

}  // namespace ebbline::patient
