#pragma once
/// \file
/// Tells the other hubs over the same database of a write, and hears of theirs, by LISTEN and NOTIFY;
/// inside of platform/postgres only.
///
/// A hint only, on a connection of its own and after the commit: NOTIFY inside of the transaction
/// would make all commits of the database wait for one another. While the connection is away, who
/// waits is told to look every so often.

#include "platform/postgres/connection.h"
#include "platform/postgres/postgres_store.h"

#include <mutex>
#include <thread>

namespace ebbline::postgres {

class Listener {
public:
    explicit Listener(const Settings& settings);
    ~Listener();
    Listener(const Listener&) = delete;
    Listener& operator=(const Listener&) = delete;

    void setHeard(mailbox::MailStore::Heard heard);
    /// Tells the others, soon.
    void announce(const mailbox::Written& written);

private:
    void live();
    void connect();
    /// \returns whether nothing happened.
    bool wait(std::chrono::milliseconds atMost);
    void receive(bool quiet);
    void tell();
    void call(const std::optional<mailbox::Written>& written);

    Settings m_settings;
    std::unique_ptr<Connection> m_connection;  ///< of the thread
    int m_wake = -1;                           ///< an eventfd
    std::mutex m_heardMutex;
    mailbox::MailStore::Heard m_heard;
    std::mutex m_mutex;
    std::set<mailbox::Written> m_toTell;
    bool m_stopping = false;
    std::thread m_thread;
};

}  // namespace ebbline::postgres
