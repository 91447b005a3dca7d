#pragma once
/// \file
/// The courier by which a code is used. A typed code knows no key of the hub until its bundle came; from then on the
/// courier is another one, pinned to that key.

#include "core/pairing/hub_address.h"
#include "core/sync/courier.h"

#include <memory>

namespace ebbline::sync {

class EnrolmentWay {
public:
    /// Makes a courier pinned to the key, SHA-256 of the hub's SPKI; zeros: no pin. Empty pointer: there is no way.
    using Make = std::function<std::unique_ptr<Courier>(const pairing::HubAddress& hub, const bytes::Array<32>& key)>;

    explicit EnrolmentWay(Make make) : m_make(std::move(make)) {}

    /// The courier to this hub and key: the one that is there if it leads to both, else a new one, and the old one
    /// ends. nullptr: there is no way. \pre not from within an answer of the courier
    Courier* to(const pairing::HubAddress& hub, const bytes::Array<32>& key);
    void close() { m_courier.reset(); }

private:
    Make m_make;
    std::unique_ptr<Courier> m_courier;
    pairing::HubAddress m_hub;
    bytes::Array<32> m_key{};
};

}  // namespace ebbline::sync
