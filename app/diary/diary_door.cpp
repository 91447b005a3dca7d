// The door of the diary: what shows when it opens and locks, by hand or because nobody uses it.
#include "app/diary/diary_program.h"

#include "app/diary/model/words.h"

#include <utility>

namespace ebbline::app {

void DiaryProgram::watchUse()
{
    const auto limit = [this] { m_idle.setLimit(std::chrono::minutes(m_settings.lockMinutes())); };
    limit();
    connect(&m_settings, &diaryapp::DiarySettings::changed, this, limit);
    connect(&m_idle, &controls::IdleLock::lockAsked, this, &DiaryProgram::lockIdle);
    // A screen reader acts without a touch or a key: what it changes is use as well.
    const auto used = [this] { m_idle.used(); };
    connect(this, &DiaryProgram::pageChanged, this, used);
    connect(&m_settings, &diaryapp::DiarySettings::changed, this, used);
    connect(&m_entry, &diaryapp::EntryBoard::changed, this, used);
    connect(&m_history, &diaryapp::HistoryBoard::draftChanged, this, used);
}

void DiaryProgram::arrive()
{
    m_idle.watch(m_setup.locksWhenIdle && m_home.isOpen());
    if (!m_home.isOpen()) {
        m_pulse.end();
        // What was just said may be about her health: nobody reads it off a locked phone.
        dismissNotice();
        // Whoever reads whom to call, or what to do about a warning, needs the numbers more than a locked page.
        const bool calling = m_left && (m_left->page == Page::call || m_left->page == Page::warning);
        return calling ? openCall() : turnTo(Page::lock);
    }
    if (!m_home.diary().joined())
        return turnTo(Page::join);
    openToday();
    goOn();
    m_pulse.begin();
}

void DiaryProgram::goOn()
{
    const auto left = std::exchange(m_left, {});
    if (!left || m_page != Page::today)
        return;  // a warning that nobody has read comes first; what was typed waits on the day's page
    switch (left->page) {
    case Page::entry: {
        const Done opened = left->amends ? m_entry.amend(*left->amends) : m_entry.open(diaryapp::EntryBoard::Place::asLeft);
        return opened ? turnTo(Page::entry) : say(diaryapp::errorText(opened.error()), {}, true);
    }
    case Page::history: return openHistory();
    case Page::notes: return openNotes();
    case Page::settings: return openSettings();
    case Page::reminders: return openReminders();
    case Page::keys:
        openKeys();
        return left->codeShown ? m_keys.sayCodeIsGone() : void();
    case Page::mine: return openMine();
    case Page::notices:
    case Page::licence: return openNotices();
    default: return;
    }
}

void DiaryProgram::lock()
{
    m_idle.watch(false);  // what closing changes is no use, and asks for no second lock
    if (m_home.isOpen())
        controls::finishTyping(window());
    m_pulse.end();  // the courier goes with the diary, and its answers with it
    m_asked = false;
    m_home.lock();
}

void DiaryProgram::lockIdle()
{
    if (m_page == Page::warning)
        m_warning.keepOverLock();
    m_left = Left{m_page, m_page == Page::entry ? m_entry.amends() : std::nullopt, !m_keys.code().isEmpty()};
    lock();
}

}  // namespace ebbline::app
