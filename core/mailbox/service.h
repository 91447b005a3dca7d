#pragma once
/// \file
/// The hub's rules: a request in, a response out. No HTTP, no thread, no clock of its own.
/// Routes: docs/formats/hub.md.
///
/// Unknown, foreign and revoked look the same from outside. All writes are idempotent or only go
/// forward, so a replayed request changes nothing.

#include "core/mailbox/limits.h"
#include "core/mailbox/mail_store.h"
#include "core/mailbox/wire.h"

#include <deque>
#include <mutex>
#include <set>

namespace ebbline::mailbox {

inline constexpr std::size_t maximumAnswer = 1024 * 1024;  ///< bytes of envelopes in one answer
inline constexpr std::size_t maximumRequestBody = 300 * 1024;

struct Limits {
    Quota quota;
    Rate perDevice{120, 2};        ///< requests of one device
    Rate perAddress{600, 10};      ///< requests of one address
    Rate blobsPerDevice{240, 4};     ///< requests about blobs, which take nothing from the others
    Rate blobsPerAddress{1200, 20};
    Rate enrolPerAddress{10, 10.0 / 3600};
    std::chrono::seconds window{300};     ///< of a request's time around the hub's
    std::chrono::minutes offerLifetime{10};
    std::chrono::hours retention{24 * 7};  ///< kept after the acknowledgement
    std::chrono::hours blobRetention{24 * 30};         ///< kept after a desk holds it: its colleagues come for it, too
    std::chrono::hours unclaimedBlobRetention{24 * 90};  ///< kept without any request about it
};

class Service {
public:
    Service(MailStore& store, Limits limits);

    /// `address` is used for limits only, and never stored. Safe to call from several threads.
    /// `again`: the same request looks a second time after a wait; its nonce and its limits were
    /// counted already. Does not throw: what a store or the memory throws is answered 503.
    Response handle(const Request& request, const std::string& address, clock::Instant now, bool again = false);

    /// The mailbox a caller waits for, if the request is a valid-looking long poll: a GET of a
    /// mailbox with `wait=seconds`. The server asks again when something arrives there.
    static std::optional<std::pair<envelope::MailboxId, std::chrono::seconds>> waitOf(const Request& request);

    /// The mailbox a successful PUT wrote to; empty for other requests.
    static std::optional<envelope::MailboxId> writtenBy(const Request& request);

    /// Whether it is a request about blobs, with limits of its own.
    static bool isAboutBlobs(const Request& request);

    /// Drops what is past its time; call every few minutes. \returns what the store said; the next call tries again.
    Done tidy(clock::Instant now);

private:
    struct Call;
    Response route(Call& call);
    Result<Device> authorised(const Call& call);
    bool isFresh(const Authorisation& authorisation, clock::Instant now);

    Response registerDesk(Call& call);
    Response putOffer(Call& call, const Device& device);
    Response bundle(Call& call);
    Response enrol(Call& call);
    Response enrolment(Call& call, const Device& device);
    Response answerOffer(Call& call, const Device& device);
    Response linkOffer(Call& call, const Device& device);
    Response offerAnswer(Call& call);
    Response putEnvelope(Call& call, const Device& device);
    Response getEnvelopes(Call& call, const Device& device);
    Response acknowledge(Call& call, const Device& device);
    Response aboutBlob(Call& call, const Device& device);
    Response beginBlob(Call& call, const Device& device);
    Response aboutChunk(Call& call, const Device& device);
    Response blobs(Call& call, const Device& device);
    Response news(Call& call, const Device& device);
    Response endDevices(Call& call, const Device& desk);
    Result<StoredOffer> ownOffer(const Call& call, const Device& device);

    MailStore& m_store;
    Limits m_limits;
    RateLimiter m_devices;
    RateLimiter m_addresses;
    RateLimiter m_enrolments;
    RateLimiter m_blobDevices;
    RateLimiter m_blobAddresses;
    std::mutex m_nonceMutex;
    using Nonces = std::set<std::pair<envelope::DeviceId, bytes::Array<16>>>;
    Nonces m_nonces;
    std::deque<std::pair<clock::Instant, Nonces::iterator>> m_noncesInOrder;  ///< as they came
};

}  // namespace ebbline::mailbox
