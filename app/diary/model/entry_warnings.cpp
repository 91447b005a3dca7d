// What an entry raises while it is still being written: a warning waits neither for the rest of it nor for storage.

#include "app/diary/model/entry_board.h"

#include <algorithm>

namespace ebbline::diaryapp {

/// Whatever of it asks for a call and was not read yet takes the page, most urgent first, before anything is saved.
void EntryBoard::warnOf(std::vector<triage::Finding> findings)
{
    if (std::ranges::none_of(findings, [this](const triage::Finding& finding) { return isNews(finding); }))
        return;
    m_findings = std::move(findings);
    m_unsaved = true;
    m_tried = false;
    Q_EMIT notSaved();
}

bool EntryBoard::isNews(const triage::Finding& finding) const
{
    return finding.urgency <= recovery::Urgency::callNow && !isRead(finding) && !m_home.diary().isConfirmed(finding);
}

bool EntryBoard::isRead(const triage::Finding& finding) const
{
    const auto found = m_read.find(finding.key);
    return found != m_read.end() && found->second <= finding.urgency;
}

void EntryBoard::setRead()
{
    if (m_unsaved && !m_tried)
        for (const triage::Finding& finding : m_findings)
            m_read.insert_or_assign(finding.key, finding.urgency);
    m_unsaved = false;
}

bool EntryBoard::isLoudSaved() const
{
    return std::ranges::any_of(m_findings, [this](const triage::Finding& finding) {
        return finding.urgency <= recovery::Urgency::callNow && !isRead(finding);
    });
}

/// What is typed in raises a call that nobody has read.
std::vector<triage::Finding> EntryBoard::unreadOf(const Result<patient::Draft>& kept) const
{
    if (!kept)
        return {};
    recovery::Entry typed = kept->entry;
    typed.temperature.reset();  // it may be half typed
    std::vector<triage::Finding> findings = m_home.diary().judged(typed);
    if (std::ranges::none_of(findings, [this](const triage::Finding& finding) { return isNews(finding); }))
        return {};
    return findings;
}

bool EntryBoard::reopenLoud()
{
    if (auto fresh = unreadOf(m_home.diary().draft()); !fresh.empty() && open(Place::asLeft)) {
        warnOf(std::move(fresh));
        return true;
    }
    const auto correction = m_home.diary().correctionDraft();
    if (auto corrected = unreadOf(correction); !corrected.empty() && amend(correction->entry.id)) {
        warnOf(std::move(corrected));
        return true;
    }
    return false;
}

}  // namespace ebbline::diaryapp
