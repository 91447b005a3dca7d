// What people at the desk did about findings, and what they say to who comes next.

#include "core/desk/inside.h"

#include "core/aftercare/visit.h"
#include "core/bytes/reader.h"
#include "core/clock/iso8601.h"

#include <algorithm>

namespace ebbline::desk {

namespace {

/// Where a program kept the word before it went into the journal.
constexpr const char* pinnedName = "hand-over";
constexpr std::size_t longestWord = 4000;

std::vector<records::OperationName> namesOfWordsUp(const journal::State& state)
{
    std::vector<records::OperationName> names;
    for (const auto& [id, word] : state.wordsUp())
        names.push_back({id.device, id.number});
    return names;
}

/// The visit that was moved by this operation, or in one step with this act; null: none was, or it was moved again since.
const journal::Visit* movedWith(const journal::CourseState& course, const journal::OperationId& id)
{
    if (course.visits.size() < 2)
        return nullptr;
    const journal::Visit& last = course.visits.back();
    if (last.operation == id)
        return &last;
    const auto act = std::ranges::find(course.actOperations, id);
    if (act == course.actOperations.end() || last.operation.device != id.device)
        return nullptr;
    const auto& acted = course.acts[static_cast<std::size_t>(act - course.actOperations.begin())];
    return acted.act == records::Act::visitBroughtForward && last.entered == acted.at ? &last : nullptr;
}

/// The keys of which an act can speak. A silence goes when late entries arrive, also while somebody rings because of it: it is
/// left out beside others. With nothing else there, what was done with the patient is kept on the silence that was meant.
Result<std::vector<std::string>> stillThere(const journal::CourseState& course, const std::vector<std::string>& keys,
                                            const records::FindingActed& acted)
{
    const auto findings = triage::findingsOf(course, acted.at);
    std::vector<std::string> there;
    std::vector<std::string> gone;
    for (const std::string& key : keys) {
        if (std::ranges::find(findings, key, &triage::Finding::key) != findings.end())
            there.push_back(key);
        else if (triage::namesSilence(key))
            gone.push_back(key);
        else
            return fail(Reason::notFound, "finding: the course has no such finding");
    }
    if (!there.empty() || gone.empty())
        return there;
    if (acted.act == records::Act::called || acted.act == records::Act::visitBroughtForward)
        return gone;
    return fail(Reason::notFound, "finding: she was not silent, as it turned out");
}

/// The course as the phone has it, with the visit on another day.
records::CourseOpened withVisit(const journal::CourseState& course, const clock::Moment& followUp, const std::string& by)
{
    records::CourseOpened moved = *course.opened;
    moved.followUp = followUp;
    moved.practitioner = by;
    return moved;
}

}  // namespace

Done Desk::act(const recovery::CourseId& id, const std::string& finding, records::Act act, records::Outcome outcome,
               const std::string& note)
{
    const auto done = actOn(id, {finding}, act, outcome, note);
    return done ? Done{} : Done(fail(done.error()));
}

Result<std::vector<journal::OperationId>> Desk::actOn(const recovery::CourseId& id, const std::vector<std::string>& keys,
                                                      records::Act act, records::Outcome outcome, const std::string& note)
{
    const clock::Moment now = m_inside->now();
    const auto bodies = m_inside->acts(id, keys, {id, {}, act, outcome, m_inside->person, note, now});
    if (!bodies)
        return fail(bodies.error());
    if (bodies->empty())
        return std::vector<journal::OperationId>{};
    return m_inside->vault.append(*bodies, now);
}

Result<std::vector<records::Body>> Desk::Inside::acts(const recovery::CourseId& id, const std::vector<std::string>& keys,
                                                      records::FindingActed acted) const
{
    const journal::CourseState* found = course(id);
    if (!found)
        return fail(Reason::notFound, "course: unknown");
    if (person.empty())
        return fail(Reason::invalidState, "act: nobody is named at the desk");
    // Closing is the one act on a finding that a role may withhold: whoever is here may take and call a patient.
    if (acted.act == records::Act::closed)
        if (const Done may = needsTask(records::Task::close); !may)
            return fail(may.error());
    if (acted.act == records::Act::closed && acted.outcome == records::Outcome::none)
        return fail(Reason::notEnough, "act: closing needs an outcome");
    const auto named = stillThere(*found, keys, acted);
    if (!named)
        return fail(named.error());
    std::vector<records::Body> bodies;
    for (const std::string& key : *named) {
        acted.finding = key;
        bodies.push_back(acted);
    }
    return bodies;
}

Result<std::vector<journal::OperationId>> Desk::noteCall(const recovery::CourseId& id, records::Contact contact, const std::string& text)
{
    if (!m_inside->course(id))
        return fail(Reason::notFound, "course: unknown");
    if (m_inside->person.empty())
        return fail(Reason::invalidState, "call: nobody is named at the desk");
    const clock::Moment now = m_inside->now();
    const records::CallNoted call{id, contact, text, m_inside->person, now};
    if (const Done fits = records::check(call); !fits)
        return fail(fits.error());
    return m_inside->vault.append({call}, now);
}

Result<std::vector<journal::OperationId>> Desk::moveVisit(const recovery::CourseId& id, const clock::Moment& followUp,
                                                          const std::vector<std::string>& keys, const std::string& note)
{
    const clock::Moment now = m_inside->now();
    auto bodies = m_inside->acts(id, keys, {id, {}, records::Act::visitBroughtForward, records::Outcome::none, m_inside->person, note, now});
    if (!bodies)
        return fail(bodies.error());
    const journal::CourseState& course = *m_inside->course(id);
    const auto mailbox = m_inside->mailboxOf(id);
    if (!course.opened || !mailbox)
        return fail(Reason::invalidState, "course: no phone has it");
    if (const Done when = aftercare::check(aftercare::visitOf(followUp), course.opened->treated); !when)
        return fail(when.error());
    if (course.opened->followUp == followUp)
        return fail(Reason::alreadyExists, "follow-up: that is what was agreed");
    if (bodies->empty() && !note.empty())
        bodies->push_back(records::CallNoted{id, records::Contact::visitBroughtForward, note, m_inside->person, now});
    // Of these the phone gets the course alone: what people note stays at the clinic (records::goesBetween()).
    bodies->insert(bodies->begin(), withVisit(course, followUp, m_inside->person));
    return m_inside->vault.append(*bodies, now, mailbox);
}

Done Desk::takeBack(const recovery::CourseId& id, const std::vector<journal::OperationId>& acts)
{
    const journal::CourseState* found = m_inside->course(id);
    if (!found)
        return fail(Reason::notFound, "course: unknown");
    if (m_inside->person.empty())
        return fail(Reason::invalidState, "act: nobody is named at the desk");
    std::vector<records::Body> bodies;
    std::optional<clock::Moment> formerVisit;
    for (const journal::OperationId& act : acts) {
        if (found->actsTakenBack.contains(act))
            continue;
        if (movedWith(*found, act))
            formerVisit = found->visits[found->visits.size() - 2].followUp;
        if (std::ranges::find(found->visits, act, &journal::Visit::operation) != found->visits.end())
            continue;
        const bool isCall = std::ranges::any_of(found->calls, [&](const auto& call) { return call.operation == act; });
        if (!isCall && std::ranges::find(found->actOperations, act) == found->actOperations.end())
            return fail(Reason::notFound, "act: the course has no such act");
        bodies.push_back(records::ActTakenBack{id, {act.device, act.number}, m_inside->person, m_inside->now()});
    }
    if (formerVisit)
        bodies.push_back(withVisit(*found, *formerVisit, m_inside->person));
    if (bodies.empty())
        return fail(Reason::alreadyExists, "act: it is taken back");
    const auto appended = m_inside->vault.append(bodies, m_inside->now(), m_inside->mailboxOf(id));
    return appended ? Done{} : Done(fail(appended.error()));
}

Done Desk::recordFollowUp(const records::FollowUpRecorded& followUp, const Closings& closings)
{
    const journal::CourseState* found = m_inside->course(followUp.course);
    if (!found)
        return fail(Reason::notFound, "course: unknown");
    if (const Done may = m_inside->needsTask(records::Task::treat); !may)
        return may;
    const clock::Moment now = m_inside->now();
    const auto findings = triage::findingsOf(*found, now);
    std::vector<records::Body> bodies;
    for (const auto& [key, outcome] : closings) {
        if (std::ranges::find(findings, key, &triage::Finding::key) == findings.end()) {
            if (triage::namesSilence(key))
                continue;  // what she wrote arrived while the form was open
            return fail(Reason::notFound, "finding: the course has no such finding");
        }
        if (outcome == records::Outcome::none)
            return fail(Reason::notEnough, "act: closing needs an outcome");
        bodies.push_back(records::FindingActed{followUp.course, key, records::Act::closed, outcome, m_inside->person, {}, now});
    }
    records::FollowUpRecorded complete = followUp;
    complete.by = m_inside->person;
    complete.at = now;
    bodies.push_back(complete);
    const auto appended = m_inside->vault.append(bodies, now);
    return appended ? Done{} : Done(fail(appended.error()));
}

Done Desk::handOver(const std::string& text)
{
    if (m_inside->person.empty())
        return fail(Reason::invalidState, "hand-over: nobody is named at the desk");
    if (text.empty())
        return fail(Reason::notEnough, "hand-over: it is empty");
    if (text.size() > longestWord)
        return fail(Reason::tooLarge, "hand-over: it is too long");
    return m_inside->append(records::WordHandedOver{text, namesOfWordsUp(m_inside->vault.state()), m_inside->person, m_inside->now()});
}

Done Desk::takeWordsDown()
{
    auto up = namesOfWordsUp(m_inside->vault.state());
    if (up.empty())
        return {};
    if (m_inside->person.empty())
        return fail(Reason::invalidState, "hand-over: nobody is named at the desk");
    return m_inside->append(records::WordHandedOver{{}, std::move(up), m_inside->person, m_inside->now()});
}

std::vector<records::WordHandedOver> Desk::wordsUp() const
{
    std::vector<records::WordHandedOver> words;
    for (const auto& [id, word] : m_inside->vault.state().wordsUp())
        words.push_back(*word);
    return words;
}

Done Desk::adoptPinnedWord()
{
    const auto kept = m_inside->vault.kept(pinnedName);
    if (!kept)
        return kept.error().reason == Reason::notFound ? Done{} : Done(fail(kept.error()));
    bytes::Reader reader(*kept);
    const auto text = [&reader] {
        const bytes::View raw = reader.block(longestWord);
        return std::string(raw.begin(), raw.end());
    };
    const std::string by = text();
    const auto at = clock::parseIso8601(text());
    const std::string word = text();
    if (!reader.atEnd() || !at || word.empty())
        return fail(Reason::malformed, "hand-over: the word that was pinned cannot be read");
    return m_inside->append(records::WordHandedOver{word, {}, by, *at}, {}, {pinnedName});
}

}  // namespace ebbline::desk
