#pragma once
/// \file
/// One request on its way through the service; inside of core/mailbox only.

#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "core/mailbox/service.h"

#include <vector>

namespace ebbline::mailbox {

struct Service::Call {
    const Request& request;
    const std::string& address;
    clock::Instant now;
    bool again = false;
    std::vector<std::string_view> parts{};  ///< of the path, without /v1/
    std::int64_t clinic = 0;                ///< of the device, once it is known
    std::string_view refused{};             ///< why nobody was let in, where that is the answer
};

/// Empty bodies of errors are all alike: they tell an attacker nothing.
inline Response answer(int status, bytes::Bytes body = {})
{
    return Response{status, std::move(body), 0, {}};
}

/// The status for what a store said.
inline Response answerFor(const Error& error)
{
    switch (error.reason) {
    case Reason::notFound: return answer(404);
    case Reason::alreadyExists: return answer(409);
    case Reason::storageFull: return answer(507);
    case Reason::forged:
    case Reason::expired:
    case Reason::wrongKey: return answer(401);
    case Reason::storageFailed:
    case Reason::unreachable:
    case Reason::damaged: {
        Response later = answer(503);
        later.retryAfterSeconds = 2;
        return later;
    }
    default: return answer(400);
    }
}

inline Response answerFor(const Done& done)
{
    return done ? answer(200) : answerFor(done.error());
}

template <std::size_t N>
std::optional<bytes::Array<N>> hexPart(std::string_view text)
{
    const auto decoded = bytes::fromHex(text);
    if (!decoded || decoded->size() != N)
        return std::nullopt;
    bytes::Array<N> out;
    std::copy(decoded->begin(), decoded->end(), out.begin());
    return out;
}

std::vector<std::string_view> split(std::string_view text, char separator);
std::optional<std::uint64_t> numberIn(std::string_view text);

}  // namespace ebbline::mailbox
