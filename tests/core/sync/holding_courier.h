#pragma once
/// \file
/// A hub that keeps a long poll until it has something to say, in one process with its clients.

#include "tests/core/desk/clinic_world.h"

#include <utility>

namespace ebbline::test {

/// Keeps a long poll as a hub does: answers it only when it has something to say, or when its time is over.
class HoldingCourier final : public sync::Courier {
public:
    explicit HoldingCourier(ClinicWorld& world) : m_world(world) {}

    void send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer) override
    {
        asked.push_back(request);
        if (m_world.courier.offline)
            return answer(fail(Reason::unreachable, "no network"));
        mailbox::Response response = m_world.service.handle(request, "127.0.0.1", m_world.clock.now());
        if (!mailbox::Service::waitOf(request) || mailbox::Service::endsWait(request, response))
            return answer(response);
        m_held = {request, std::move(answer)};
    }
    /// Something was put, or `over`: the time is.
    void look(bool over = false)
    {
        if (!m_held)
            return;
        mailbox::Response response = m_world.service.handle(m_held->first, "127.0.0.1", m_world.clock.now(), true);
        if (over || mailbox::Service::endsWait(m_held->first, response))
            std::exchange(m_held, {})->second(response);
    }
    /// The way breaks off under whoever waits.
    void breakOff()
    {
        if (m_held)
            std::exchange(m_held, {})->second(fail(Reason::unreachable, "broken off"));
    }
    bool isHolding() const { return m_held.has_value(); }

    std::vector<mailbox::Request> asked;

private:
    ClinicWorld& m_world;
    std::optional<std::pair<mailbox::Request, std::function<void(Result<mailbox::Response>)>>> m_held;
};

}  // namespace ebbline::test
