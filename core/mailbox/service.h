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
inline constexpr std::chrono::seconds longestWait{25};     ///< of one long poll

/// How a desk names the news that it knows already, as `known` of GET /v1/news: 32 hexadecimal digits. Empty for none.
std::string knownNews(bytes::View news);

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

    struct Wait {
        std::optional<envelope::MailboxId> mailbox;  ///< empty: any of the caller's clinic
        std::chrono::seconds time;                   ///< 1 s to longestWait
    };
    /// What a caller waits for, if the request is a valid-looking long poll: a GET of a mailbox or of the
    /// news with `wait=seconds`. The server asks again when something arrives there.
    static std::optional<Wait> waitOf(const Request& request);

    /// Whether the answer says more than who waits knows: a mailbox has something past the positions; the news are
    /// other than those whose hash (knownNews()) the caller named as `known`. Whatever is not a success ends a wait, too.
    static bool endsWait(const Request& request, const Response& response);

    /// The mailbox a successful PUT wrote to; empty for other requests.
    static std::optional<envelope::MailboxId> writtenBy(const Request& request);

    /// Whether it is a request about blobs, with limits of its own.
    static bool isAboutBlobs(const Request& request);

    /// Drops what is past its time; call every few minutes. \returns what the store said; the next call tries again.
    Done tidy(clock::Instant now);

private:
    struct Call;
    Response route(Call& call);
    Result<Device> authorised(Call& call);
    static Response refuse(Call& call, int status, std::string_view why);
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
    static Response noOffer(Call& call, const Result<StoredOffer>& offer);
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
