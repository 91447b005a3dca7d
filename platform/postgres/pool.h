#pragma once
/// \file
/// Connections that threads borrow; inside of platform/postgres only. One that was lost is opened
/// anew, to whichever host takes writes by then.

#include "platform/postgres/connection.h"
#include "platform/postgres/postgres_store.h"

#include <chrono>
#include <condition_variable>
#include <functional>
#include <mutex>

namespace ebbline::postgres {

class Pool {
public:
    explicit Pool(const Settings& settings) : m_settings(settings) {}

    /// Does `work` with a connection, again with another one while the reason is that no server is reached, until
    /// patience ends. `work` must be safe to repeat: whether a commit whose answer was lost took effect is not known.
    /// \returns what `work` returned; Reason::storageFailed if patience ended.
    template <typename Work>
    auto with(const Work& work) -> decltype(work(std::declval<Connection&>()))
    {
        const auto end = std::chrono::steady_clock::now() + m_settings.patience;
        for (;;) {
            std::unique_ptr<Connection> connection = take();
            std::optional<Error> problem;
            if (!connection) {
                auto opened = Connection::open(m_settings.address);
                if (opened)
                    connection = std::move(*opened);
                else
                    problem = opened.error();
            }
            if (connection) {
                auto outcome = work(*connection);
                give(std::move(connection));
                if (outcome || outcome.error().reason != Reason::unreachable)
                    return outcome;
                problem = outcome.error();
            } else {
                give(nullptr);
                if (problem->reason != Reason::unreachable)
                    return fail(*problem);
            }
            if (std::chrono::steady_clock::now() >= end)
                return fail(Reason::storageFailed, problem->detail);
            rest();
        }
    }

private:
    /// Waits for a turn. \returns an idle connection; null: none is open, the turn is for opening one.
    std::unique_ptr<Connection> take();
    void give(std::unique_ptr<Connection> connection);
    static void rest();

    Settings m_settings;
    std::mutex m_mutex;
    std::condition_variable m_free;
    std::vector<std::unique_ptr<Connection>> m_idle;
    std::size_t m_out = 0;
};

}  // namespace ebbline::postgres
