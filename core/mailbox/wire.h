#pragma once
/// \file
/// What a client says to a hub and what the hub answers, without HTTP: the same two structures
/// are carried by the HTTP server and client of platform/ and, in tests, handed over directly.
/// Paths, bodies and statuses: docs/formats/hub.md.

#include "core/clock/instant.h"
#include "core/envelope/envelope.h"

#include <string>

namespace ebbline::mailbox {

struct Request {
    std::string method;         ///< GET, PUT, POST
    std::string path;           ///< begins with /v1/
    std::string query;          ///< without the question mark; identifiers only
    bytes::Bytes body;
    std::string authorisation;  ///< the EB-Auth header, empty where none is needed
};

struct Response {
    int status = 0;             ///< HTTP status
    bytes::Bytes body;
    std::int64_t retryAfterSeconds = 0;  ///< with 429 and 503
    std::string hubTime;        ///< seconds since 1970, always sent: a client keeps the difference
    std::int64_t clinic = 0;    ///< whose device asked; 0 if it is not known. For the server itself, and never sent
    std::string_view refused{};  ///< why nobody was let in, in words of the program; for the server's own log, and never sent
};

/// Signs a request: device, time by the hub's clock, a fresh nonce, and Ed25519 over
/// "EB-REQ-v1" and all parts. Sets request.authorisation.
void signRequest(Request& request, const crypto::SigningKey& key, clock::Instant hubTime);

struct Authorisation {
    envelope::DeviceId device;
    std::int64_t unixSeconds = 0;
    bytes::Array<16> nonce{};
    crypto::Signature signature{};
};

/// \returns Reason::malformed.
Result<Authorisation> parseAuthorisation(std::string_view header);

/// Whether the signature over the request holds for this key.
bool signatureHolds(const Request& request, const Authorisation& authorisation,
                    const crypto::SigningPublicKey& key);

}  // namespace ebbline::mailbox
