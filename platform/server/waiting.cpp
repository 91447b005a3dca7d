#include "platform/server/waiting.h"

#include <boost/asio/post.hpp>

namespace ebbline::server {

void Waiting::call(const Place& place)
{
    boost::asio::post(place->timer.get_executor(), [place] {
        place->woken = true;
        place->timer.cancel();
    });
}

void Waiting::add(const For& what, const Place& place)
{
    const std::scoped_lock lock(m_mutex);
    m_waiters.emplace(what, place);
}

void Waiting::remove(const For& what, const Place& place)
{
    const std::scoped_lock lock(m_mutex);
    const auto [first, last] = m_waiters.equal_range(what);
    for (auto each = first; each != last; ++each)
        if (each->second == place) {
            m_waiters.erase(each);
            return;
        }
}

void Waiting::wake(const mailbox::Written& written)
{
    const std::scoped_lock lock(m_mutex);
    wakeFor(written.mailbox);
    wakeFor(written.clinic);
}

void Waiting::wakeFor(const For& what)
{
    const auto [first, last] = m_waiters.equal_range(what);
    for (auto place = first; place != last; ++place)
        call(place->second);
}

void Waiting::wakeAll()
{
    const std::scoped_lock lock(m_mutex);
    for (const auto& [what, place] : m_waiters)
        call(place);
}

std::size_t Waiting::count() const
{
    const std::scoped_lock lock(m_mutex);
    return m_waiters.size();
}

}  // namespace ebbline::server
