// What an entry raises while it is still being written: a warning waits neither for the rest of it nor for storage.

#include "app/diary/model/entry_board.h"

#include <algorithm>

namespace ebbline::diaryapp {

/// Whatever of it asks for a call and was not read yet takes the page, most urgent first, before anything is saved.
void EntryBoard::warnOf(std::vector<triage::Finding> findings)
{
    if (std::ranges::none_of(findings, [this](const triage::Finding& finding) { return isNews(m_entry.id, finding); }))
        return;
    m_findings = std::move(findings);
    m_unsaved = true;
    m_tried = false;
    Q_EMIT notSaved();
}

bool EntryBoard::isNews(const recovery::EntryId& entry, const triage::Finding& finding) const
{
    return finding.urgency <= recovery::Urgency::callNow && !isRead(entry, finding) && !m_home.diary().isConfirmed(finding);
}

namespace {

/// What a warning is told apart by while its entry is typed. A trigger's key has the moment, which moves as long as the entry's
/// lies ahead of the clock.
const std::string& nameOf(const triage::Finding& finding) { return finding.entry ? finding.key : finding.subject; }

}  // namespace

bool EntryBoard::isRead(const recovery::EntryId& entry, const triage::Finding& finding) const
{
    const auto found = m_read.find({entry, nameOf(finding)});
    return found != m_read.end() && found->second <= finding.urgency;
}

void EntryBoard::setRead()
{
    if (m_unsaved && !m_tried)
        for (const triage::Finding& finding : m_findings)
            m_read.insert_or_assign({m_entry.id, nameOf(finding)}, finding.urgency);
    m_unsaved = false;
}

bool EntryBoard::isLoudSaved() const
{
    return std::ranges::any_of(m_findings, [this](const triage::Finding& finding) {
        return finding.urgency <= recovery::Urgency::callNow && !isRead(m_entry.id, finding);
    });
}

/// What an entry raises as far as it is typed, if that asks for a call that nobody has read; else nothing.
std::vector<triage::Finding> EntryBoard::unreadOf(recovery::Entry typed) const
{
    typed.temperature.reset();  // it may be half typed
    std::vector<triage::Finding> findings = m_home.diary().judged(typed);
    if (std::ranges::none_of(findings, [&](const triage::Finding& finding) { return isNews(typed.id, finding); }))
        return {};
    return findings;
}

bool EntryBoard::reopenLoud()
{
    // What could not be kept is on the page alone.
    if (m_unkept)
        if (auto here = unreadOf(m_entry); !here.empty()) {
            warnOf(std::move(here));
            return true;
        }
    if (const auto kept = m_home.diary().draft())
        if (auto fresh = unreadOf(kept->entry); !fresh.empty() && open(Place::asLeft)) {
            warnOf(std::move(fresh));
            return true;
        }
    if (const auto kept = m_home.diary().correctionDraft())
        if (auto corrected = unreadOf(kept->entry); !corrected.empty() && amend(kept->entry.id)) {
            warnOf(std::move(corrected));
            return true;
        }
    return false;
}

}  // namespace ebbline::diaryapp
