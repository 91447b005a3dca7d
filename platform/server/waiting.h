#pragma once
/// \file
/// Long polls: who waits for which mailbox, and which desk for any of its clinic's. A waiter is a timer that is cut
/// short; one that is woken while it looks remembers it, and looks again instead of waiting. Inside of platform/server only.

#include "core/mailbox/mail_store.h"

#include <boost/asio/steady_timer.hpp>

#include <map>
#include <memory>
#include <mutex>
#include <variant>

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
    /// A mailbox, or a clinic's number.
    using For = std::variant<envelope::MailboxId, std::int64_t>;

    void add(const For& what, const Place& place);
    /// Who is not there is no error.
    void remove(const For& what, const Place& place);
    /// Something arrived: everybody who waits for this mailbox or its clinic looks again.
    void wake(const mailbox::Written& written);
    void wakeAll();
    std::size_t count() const;

private:
    static void call(const Place& place);
    void wakeFor(const For& what);
    mutable std::mutex m_mutex;
    std::multimap<For, Place> m_waiters;
};

}  // namespace ebbline::server
