// What an entry raises while it is still being written: a warning waits neither for the rest of it nor for storage.

#include "app/diary/model/entry_board.h"

#include <algorithm>

namespace ebbline::diaryapp {

/// Whatever of it asks for a call and was not read yet takes the page, most urgent first, before anything is saved.
void EntryBoard::warnOf(std::vector<triage::Finding> findings)
{
    const auto isNews = [this](const triage::Finding& finding) {
        return finding.urgency <= recovery::Urgency::callNow && !isRead(finding) && !m_home.diary().isConfirmed(finding);
    };
    if (std::ranges::none_of(findings, isNews))
        return;
    m_findings = std::move(findings);
    m_unsaved = true;
    m_tried = false;
    Q_EMIT notSaved();
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

bool EntryBoard::reopenLoud()
{
    const auto kept = m_home.diary().draft();
    if (!kept || kept->entry.present.empty())
        return false;
    recovery::Entry signs = kept->entry;
    signs.temperature.reset();  // it may be half typed
    std::vector<triage::Finding> findings = m_home.diary().judged(signs);
    if (findings.empty() || findings.front().urgency > recovery::Urgency::callNow || !open(Place::asLeft))
        return false;
    warnOf(std::move(findings));
    return m_unsaved;
}

}  // namespace ebbline::diaryapp
