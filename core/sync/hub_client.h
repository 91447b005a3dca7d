#pragma once
/// \file
/// Requests to a hub, signed with the device's key by the hub's own clock: a phone whose clock is
/// wrong learns the difference from the first answer and asks again.

#include "core/sync/courier.h"

#include <memory>
#include <optional>

namespace ebbline::sync {

class HubClient : public std::enable_shared_from_this<HubClient> {
public:
    using Answer = std::function<void(Result<mailbox::Response>)>;

    HubClient(Courier& courier, const crypto::SigningKey& key, const clock::Clock& clock)
        : m_courier(courier), m_key(key), m_clock(clock)
    {
    }

    /// Answers with any 2xx response; other statuses become an error: 401 and 404
    /// Reason::refused, 409 Reason::alreadyExists, 413 Reason::tooLarge, 429 Reason::tooSoon with
    /// the seconds, 507 Reason::storageFull, 5xx Reason::unreachable.
    void signedRequest(mailbox::Request request, Answer answer);

    /// How long the last answer that was no success asked to be left alone; 0: it did not ask.
    std::chrono::seconds retryAfter() const { return m_retryAfter; }

    /// How far our clock is ahead of the hub's, by its last answer; empty before one.
    std::optional<std::chrono::seconds> clockAhead() const { return m_ahead; }

    /// The same without a signature.
    static void plainRequest(Courier& courier, const mailbox::Request& request, const Answer& answer);

private:
    void attempt(mailbox::Request request, Answer answer, bool again);
    Courier& m_courier;
    const crypto::SigningKey& m_key;
    const clock::Clock& m_clock;
    std::chrono::seconds m_offset{0};  ///< of the hub's clock, for signing; learnt from a refusal
    std::optional<std::chrono::seconds> m_ahead;
    std::chrono::seconds m_retryAfter{0};
};

/// A 2xx response, or the error that its status stands for.
Result<mailbox::Response> judged(Result<mailbox::Response> response);
/// The hub does not know who asks (status 401), or does not believe it; another refusal is none of this.
bool isUnknownThere(const Error& error);
/// The status that judged() made an error of; 0: the error is none of a hub's answers.
int statusOf(const Error& error);

}  // namespace ebbline::sync
