#pragma once
/// \file
/// Long polls: who waits for which mailbox. A waiter is a timer that is cut short; one that is woken
/// while it looks remembers it, and looks again instead of waiting. Inside of platform/server only.

#include "core/envelope/envelope.h"

#include <boost/asio/steady_timer.hpp>

#include <map>
#include <memory>
#include <mutex>

namespace ebbline::server {

/// Used on the strand of its own connection only.
struct Waiter {
    explicit Waiter(const boost::asio::any_io_executor& executor) : timer(executor) {}
    boost::asio::steady_timer timer;
    bool woken = false;
};

class Waiting {
public:
    using Place = std::shared_ptr<Waiter>;

    void add(const envelope::MailboxId& mailbox, const Place& place);
    void remove(const envelope::MailboxId& mailbox, const Place& place);
    /// Something arrived: everybody who waits for this mailbox looks again.
    void wake(const envelope::MailboxId& mailbox);
    void wakeAll();
    std::size_t count() const;

private:
    static void call(const Place& place);
    mutable std::mutex m_mutex;
    std::multimap<envelope::MailboxId, Place> m_waiters;
};

}  // namespace ebbline::server
