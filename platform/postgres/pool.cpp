#include "platform/postgres/pool.h"

#include <thread>

namespace ebbline::postgres {

std::unique_ptr<Connection> Pool::take()
{
    std::unique_lock lock(m_mutex);
    m_free.wait(lock, [&] { return m_out < m_settings.connections; });
    ++m_out;
    if (m_idle.empty())
        return nullptr;
    std::unique_ptr<Connection> connection = std::move(m_idle.back());
    m_idle.pop_back();
    return connection;
}

void Pool::give(std::unique_ptr<Connection> connection)
{
    const std::scoped_lock lock(m_mutex);
    --m_out;
    // Where one connection was lost, the others stood to the same server.
    if (connection && connection->lost())
        m_idle.clear();
    else if (connection)
        m_idle.push_back(std::move(connection));
    m_free.notify_one();
}

void Pool::rest()
{
    std::this_thread::sleep_for(std::chrono::milliseconds(100));
}

}  // namespace ebbline::postgres
