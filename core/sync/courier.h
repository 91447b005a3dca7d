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
};

}  // namespace ebbline::sync
