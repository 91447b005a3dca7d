#pragma once
/// \file
/// Requests to a hub on this machine over one kept connection, each waiting for its answer; counts every byte on the wire.

#include "core/sync/courier.h"

#include <memory>

namespace ebbline::bench {

class HttpCourier final : public sync::Courier {
public:
    explicit HttpCourier(std::uint16_t port);
    ~HttpCourier() override;
    void send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer) override;

    std::uint64_t requests = 0;
    std::uint64_t bytes = 0;  ///< of HTTP, both ways; what TCP adds is not counted

private:
    struct Way;
    std::unique_ptr<Way> m_way;
};

}  // namespace ebbline::bench
