#pragma once
/// \file
/// The HTTP library of the hub with nothing behind it: every request is read whole and answered 200.

#include "core/mailbox/wire.h"

#include <functional>
#include <memory>

namespace ebbline::bench {

class BareEcho {
public:
    /// `check` decides between 200 and 401, on the thread that read the request; empty: always 200.
    explicit BareEcho(int threads, std::function<bool(const mailbox::Request&)> check = {});
    ~BareEcho();
    BareEcho(const BareEcho&) = delete;
    BareEcho& operator=(const BareEcho&) = delete;
    std::uint16_t port() const;

private:
    struct Inside;
    std::unique_ptr<Inside> m_inside;
};

}  // namespace ebbline::bench
