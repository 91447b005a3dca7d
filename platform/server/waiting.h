#pragma once
/// \file
/// Long polls: who waits for which mailbox. A waiter is a timer that is cut short.

#include "core/envelope/envelope.h"

#include <boost/asio/steady_timer.hpp>

#include <map>
#include <memory>
#include <mutex>

namespace ebbline::server {

class Waiting {
public:
    using Timer = std::shared_ptr<boost::asio::steady_timer>;

    void add(const envelope::MailboxId& mailbox, const Timer& timer);
    void remove(const envelope::MailboxId& mailbox, const Timer& timer);
    /// Something arrived: everybody who waits for this mailbox looks again.
    void wake(const envelope::MailboxId& mailbox);
    void wakeAll();
    std::size_t count() const;

private:
    static void cancel(const Timer& timer);
    mutable std::mutex m_mutex;
    std::multimap<envelope::MailboxId, Timer> m_waiters;
};

}  // namespace ebbline::server
