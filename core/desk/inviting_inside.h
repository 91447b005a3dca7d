#pragma once
/// \file
/// What an offer holds while it is open; inside of core/desk only.

#include "core/desk/inside.h"
#include "core/desk/inviting.h"
#include "core/sync/hub_client.h"

namespace ebbline::desk {

struct Inviting::Inside {
    std::optional<NewDesk> newDesk;  ///< empty: a phone, for a course
    OldPhone old = OldPhone::atHand;
    std::optional<std::string> second;  ///< who stood by, at a step that is for two
    recovery::CourseId course;
    triggers::Protocol protocol;
    clock::Moment followUp;
    pairing::TypedCode typed;
    pairing::Offer offer;
    std::optional<pairing::EnrolRequest> request;
    bytes::Array<16> nonce{};
    std::string number;
    envelope::MailboxId mailbox;
    std::shared_ptr<sync::HubClient> hub;
    sync::Courier* courier = nullptr;
    bool announced = false;
    bool asking = false;
    bool answering = false;  ///< the nonce is on its way
};

}  // namespace ebbline::desk
