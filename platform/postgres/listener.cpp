#include "platform/postgres/listener.h"

#include "core/bytes/reader.h"
#include "core/bytes/text.h"

#include <poll.h>
#include <sys/eventfd.h>
#include <unistd.h>

namespace ebbline::postgres {

namespace {

constexpr std::size_t maximumPayload = 7'900;  ///< bytes; the server takes less than 8000
constexpr std::size_t mailboxDigits = 32;
constexpr std::size_t digits = mailboxDigits + 16;  ///< and the clinic's number
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

void Listener::announce(const mailbox::Written& written)
{
    {
        const std::scoped_lock lock(m_mutex);
        m_toTell.insert(written);
    }
    (void)::eventfd_write(m_wake, 1);
}

void Listener::call(const std::optional<mailbox::Written>& written)
{
    const std::scoped_lock lock(m_heardMutex);
    if (m_heard)
        m_heard(written);
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
    if (opened && (*opened)->run("LISTEN ebbline_written"))
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
        for (std::size_t at = 0; at + digits <= text.size(); at += digits)
            if (const auto named = bytes::fromHex(text.substr(at, digits))) {
                bytes::Reader reader(*named);
                const auto mailbox = reader.id<envelope::MailboxTag>();
                call(mailbox::Written{mailbox, static_cast<std::int64_t>(reader.u64())});
            }
    }
}

void Listener::tell()
{
    std::set<mailbox::Written> all;
    {
        const std::scoped_lock lock(m_mutex);
        all.swap(m_toTell);
    }
    std::string payload;
    const auto send = [&] {
        if (!payload.empty() && !m_connection->ask("SELECT pg_notify('ebbline_written', $1::text)", Arguments().add(std::string_view(payload))))
            m_connection.reset();
        payload.clear();
    };
    for (const mailbox::Written& written : all) {
        payload += bytes::toHex(bytes::Writer().raw(written.mailbox.view()).u64(static_cast<std::uint64_t>(written.clinic)).bytes());
        if (payload.size() + digits > maximumPayload)
            send();
        if (!m_connection)
            return;
    }
    send();
}

}  // namespace ebbline::postgres
