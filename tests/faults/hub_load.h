#pragma once
/// \file
/// A clinic with many phones that put envelopes through hubs which may die at any moment, and a
/// ledger of what was acknowledged.

#include "core/mailbox/mail_store.h"
#include "core/mailbox/wire.h"

#include <atomic>
#include <chrono>
#include <random>
#include <thread>

namespace ebbline::faults {

/// Somebody with a key, and signed requests of theirs as bytes for a socket.
struct Member {
    crypto::SigningKey key = crypto::SigningKey::generate();
    envelope::DeviceId id = envelope::deviceIdOf(key.publicKey());

    std::string http(std::string method, std::string path, std::string query, const bytes::Bytes& body, clock::Instant now) const;
};

/// 0 if there is no whole status line.
int statusOf(const std::string& response);

struct Phone {
    Member member;
    envelope::MailboxId mailbox{crypto::randomArray<16>()};
    std::vector<bytes::Array<32>> offered{};  ///< hash of each envelope, from sequence 1
    std::size_t acknowledged = 0;             ///< by a hub: so many from the first
};

class HubLoad {
public:
    /// Admits a clinic with its phones and a desk to the store.
    HubLoad(mailbox::MailStore& store, std::size_t phones, std::uint64_t seed);
    ~HubLoad() { stop(); }

    /// Threads that put, each for its own share of the phones, through any of the ports.
    void start(const std::vector<std::uint16_t>& ports, std::size_t threads);
    void stop();

    struct Counts {
        std::uint64_t acknowledged = 0, unanswered = 0, refused = 0;
        std::chrono::milliseconds longestSilence{0};  ///< without any acknowledgement, while it ran
    };
    Counts counts() const;
    /// Waits until something that began from now on was acknowledged. \returns how long that took.
    std::chrono::milliseconds untilServed() const;

    struct Verdict {
        std::uint64_t found = 0, lost = 0, altered = 0, unknown = 0;
    };
    /// Reads every mailbox as the desk does, page by page, and compares.
    Verdict check(mailbox::MailStore& store) const;

    const mailbox::Device& desk() const { return m_desk; }

private:
    void live(std::size_t first, std::size_t step, std::uint64_t seed);
    void noteServed();

    std::vector<Phone> m_phones;
    mailbox::Device m_desk;
    crypto::BoxKey m_clinicBox = crypto::BoxKey::generate();
    std::uint64_t m_seed;
    std::vector<std::uint16_t> m_ports;
    std::vector<std::thread> m_threads;
    std::atomic<bool> m_stopping = false;
    std::atomic<std::uint64_t> m_acknowledged = 0, m_unanswered = 0, m_refused = 0;
    std::atomic<std::int64_t> m_lastServed = 0, m_longestSilence = 0, m_latestBegun = 0;  ///< ms of the steady clock
};

}  // namespace ebbline::faults
