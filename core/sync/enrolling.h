#pragma once
/// \file
/// The half of pairing that reads a code: a phone that joins a clinic, a desk that joins its colleagues'. What
/// the signed link means to it is its own business: patient::Joining and desk::Applying say it.

#include "core/pairing/handshake.h"
#include "core/sync/courier.h"
#include "core/vault/vault.h"

namespace ebbline::sync {

class Enrolling {
public:
    enum class Step : std::uint8_t { idle, fetching, enrolling, waitingForClinic, compare, linked, failed };
    /// Takes the unsealed link of the offer; an error ends the enrolment.
    using TakeLink = std::function<Done(const pairing::Offer& offer, bytes::View link)>;

    /// A code of the other purpose is refused. \pre the vault outlives it
    Enrolling(const vault::Vault& vault, const clock::Clock& clock, pairing::Purpose purpose, TakeLink takeLink);
    // What takes the link belongs to one of them.
    Enrolling(const Enrolling&) = delete;
    Enrolling& operator=(const Enrolling&) = delete;

    /// Takes a QR text or a typed code. \returns Reason::malformed, Reason::expired, Reason::unsupported at once,
    /// Reason::refused for a code of the other purpose, and Reason::unprotected for plain HTTP to another machine. A
    /// typed code is too short to carry the hub: the caller names it, as people type addresses, and until the bundle
    /// that the code authenticates brought the hub's key, no key is known. docs/decisions/0043-a-typed-code-fetches-from-anybody.md
    Done start(std::string_view codeText, const std::string& hubForTypedCode = {});

    /// From the bundle on what it says, until then what was typed; zeros for the key.
    std::string hub() const;
    bool tls() const;
    bytes::Array<32> hubKeyHash() const;

    /// Asks the hub once; call again every second or two until compare, linked or failed. The courier is the one to
    /// the hub and the key that stand above (EnrolmentWay). The bundle is fetched from whoever answers: its key is held
    /// against the bundle's, and another one ends it as Reason::forged.
    void poll(Courier& courier, std::function<void()> changed);

    Step step() const;
    std::string confirmationNumber() const;  ///< six digits from compare on
    const std::optional<Error>& problem() const;

private:
    struct Inside;
    std::shared_ptr<Inside> m_inside;
};

}  // namespace ebbline::sync
