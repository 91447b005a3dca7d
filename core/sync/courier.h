#pragma once
/// \file
/// How a request reaches a hub. One thread; the answer comes later, on the same thread (the
/// in-process courier of tests answers before send() returns).

#include "core/mailbox/wire.h"

#include <functional>

namespace ebbline::sync {

class Courier {
public:
    virtual ~Courier() = default;
    /// `answer` is called exactly once, or never if the courier is destroyed before: a response of any status, or
    /// Reason::unreachable, Reason::forged (the hub's certificate is not the pinned one). A request that asks the hub to
    /// wait (`wait=`) is given that time as well.
    virtual void send(const mailbox::Request& request,
                      std::function<void(Result<mailbox::Response>)> answer) = 0;

    /// As send() for a GET of `path`, without body and signature, and also of a hub that nobody vouches for: what it
    /// sends is to be authenticated by other means, and nothing else ever goes over that connection. `met`: SHA-256
    /// of the SPKI that the hub showed; zeros without TLS, or where the courier is pinned and asks that hub alone.
    virtual void fetchUnvouched(const std::string& path,
                                std::function<void(Result<mailbox::Response>, const bytes::Array<32>& met)> answer)
    {
        send({"GET", path, {}, {}, {}}, [answer = std::move(answer)](Result<mailbox::Response> response) {
            answer(std::move(response), {});
        });
    }
};

}  // namespace ebbline::sync
