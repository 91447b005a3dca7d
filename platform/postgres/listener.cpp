#include "platform/postgres/listener.h"

#include "core/bytes/text.h"

#include <poll.h>
#include <sys/eventfd.h>
#include <unistd.h>

namespace ebbline::postgres {

namespace {

constexpr std::size_t maximumPayload = 7'900;  ///< bytes; the server takes less than 8000
constexpr std::size_t idDigits = 32;
constexpr std::chrono::milliseconds togetherWithin{3};

}  // namespace

Listener::Listener(const Settings& settings) : m_settings(settings), m_wake(::eventfd(0, EFD_CLOEXEC | EFD_NONBLOCK))
{
    m_thread = std::thread([this] { live(); });
}

Listener::~Listener()
{
    {
        const std::scoped_lock lock(m_mutex);
        m_stopping = true;
    }
    (void)::eventfd_write(m_wake, 1);
    m_thread.join();
    ::close(m_wake);
}

void Listener::setHeard(mailbox::MailStore::Heard heard)
{
    const std::scoped_lock lock(m_heardMutex);
    m_heard = std::move(heard);
}

void Listener::announce(const envelope::MailboxId& mailbox)
{
    {
        const std::scoped_lock lock(m_mutex);
        m_toTell.insert(mailbox);
    }
    (void)::eventfd_write(m_wake, 1);
}

void Listener::call(const std::optional<envelope::MailboxId>& mailbox)
{
    const std::scoped_lock lock(m_heardMutex);
    if (m_heard)
        m_heard(mailbox);
}

void Listener::live()
{
    for (;;) {
        {
            const std::scoped_lock lock(m_mutex);
            if (m_stopping)
                return;
        }
        if (!m_connection || m_connection->lost()) {
            connect();
            // What was said while nobody listened is unknown: everybody looks.
            call(std::nullopt);
            if (!m_connection) {
                wait(m_settings.lookAgain);
                continue;
            }
        }
        tell();
        if (m_connection)
            receive(wait(std::chrono::seconds(5)));
    }
}

void Listener::connect()
{
    m_connection.reset();
    auto opened = Connection::open(m_settings.address);
    if (opened && (*opened)->run("LISTEN ebbline_mail"))
        m_connection = std::move(*opened);
}

bool Listener::wait(std::chrono::milliseconds atMost)
{
    pollfd ends[2] = {{m_wake, POLLIN, 0}, {m_connection ? PQsocket(m_connection->handle()) : -1, POLLIN, 0}};
    const int ready = ::poll(ends, m_connection ? 2 : 1, static_cast<int>(atMost.count()));
    // What is told within these milliseconds is told together.
    if (ends[0].revents != 0)
        std::this_thread::sleep_for(togetherWithin);
    eventfd_t ignored = 0;
    (void)::eventfd_read(m_wake, &ignored);
    return ready == 0;
}

void Listener::receive(bool quiet)
{
    // Asked after a silence, or a server that is gone would be noticed by the system's timers only.
    if (PQconsumeInput(m_connection->handle()) != 1 || (quiet && !m_connection->run("SELECT 1"))) {
        m_connection.reset();
        return;
    }
    while (PGnotify* notice = PQnotifies(m_connection->handle())) {
        const std::unique_ptr<PGnotify, void (*)(void*)> owned(notice, &PQfreemem);
        if (notice->be_pid == PQbackendPID(m_connection->handle()))
            continue;
        const std::string_view text(notice->extra);
        for (std::size_t at = 0; at + idDigits <= text.size(); at += idDigits)
            if (const auto id = bytes::fromHex(text.substr(at, idDigits))) {
                envelope::MailboxId mailbox;
                std::copy(id->begin(), id->end(), mailbox.value.begin());
                call(mailbox);
            }
    }
}

void Listener::tell()
{
    std::set<envelope::MailboxId> mailboxes;
    {
        const std::scoped_lock lock(m_mutex);
        mailboxes.swap(m_toTell);
    }
    std::string payload;
    const auto send = [&] {
        if (!payload.empty() && !m_connection->ask("SELECT pg_notify('ebbline_mail', $1::text)", Arguments().add(std::string_view(payload))))
            m_connection.reset();
        payload.clear();
    };
    for (const envelope::MailboxId& mailbox : mailboxes) {
        payload += bytes::toHex(mailbox.view());
        if (payload.size() + idDigits > maximumPayload)
            send();
        if (!m_connection)
            return;
    }
    send();
}

}  // namespace ebbline::postgres
