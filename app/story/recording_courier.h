#pragma once
/// \file
/// A courier that also keeps what it carries, so that the story can search it for words that must
/// not be readable on the way.

#include "core/sync/courier.h"

#include <memory>

namespace ebbline::story {

class RecordingCourier final : public sync::Courier {
public:
    RecordingCourier(std::unique_ptr<sync::Courier> inner, std::shared_ptr<bytes::Bytes> carried)
        : m_inner(std::move(inner)), m_carried(std::move(carried))
    {
    }

    void send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer) override
    {
        m_carried->insert(m_carried->end(), request.body.begin(), request.body.end());
        m_inner->send(request, std::move(answer));
    }

private:
    std::unique_ptr<sync::Courier> m_inner;
    std::shared_ptr<bytes::Bytes> m_carried;
};

}  // namespace ebbline::story
