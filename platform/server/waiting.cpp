#include "platform/server/waiting.h"

#include <boost/asio/post.hpp>

namespace ebbline::server {

void Waiting::cancel(const Timer& timer)
{
    // A timer belongs to its own thread.
    boost::asio::post(timer->get_executor(), [timer] { timer->cancel(); });
}

void Waiting::add(const envelope::MailboxId& mailbox, const Timer& timer)
{
    const std::scoped_lock lock(m_mutex);
    m_waiters.emplace(mailbox, timer);
}

void Waiting::remove(const envelope::MailboxId& mailbox, const Timer& timer)
{
    const std::scoped_lock lock(m_mutex);
    const auto [first, last] = m_waiters.equal_range(mailbox);
    for (auto place = first; place != last; ++place)
        if (place->second == timer) {
            m_waiters.erase(place);
            return;
        }
}

void Waiting::wake(const envelope::MailboxId& mailbox)
{
    const std::scoped_lock lock(m_mutex);
    const auto [first, last] = m_waiters.equal_range(mailbox);
    for (auto place = first; place != last; ++place)
        cancel(place->second);
}

void Waiting::wakeAll()
{
    const std::scoped_lock lock(m_mutex);
    for (const auto& [mailbox, timer] : m_waiters)
        cancel(timer);
}

std::size_t Waiting::count() const
{
    const std::scoped_lock lock(m_mutex);
    return m_waiters.size();
}

}  // namespace ebbline::server
