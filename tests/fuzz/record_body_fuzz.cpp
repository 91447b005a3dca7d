// The bodies of every kind. The first byte picks the kind, the rest is the body.

#include "tests/fuzz/fuzz_target.h"

#include "core/records/bodies.h"

void ebbline::fuzz::tryInput(bytes::View input)
{
    if (input.empty())
        return;
    const bytes::View rest = input.subspan(1);
    constexpr int kinds = static_cast<int>(records::newestKind) + 1;
    const auto kind = static_cast<records::Kind>(input[0] % (kinds + 1));
    if (const auto body = records::decode(kind, rest)) {
        mustHold(records::kindOf(*body) == kind, "a body is of the kind it was read as");
        mustHold(records::check(*body).has_value(), "what is read keeps its bounds");
        const auto again = records::decode(kind, records::encode(*body));
        mustHold(again && records::encode(*again) == records::encode(*body), "a body survives writing and reading");
    }
    (void)records::decodeDraft(rest);
    if (const auto protocol = records::decodeProtocol(rest))
        mustHold(records::decodeProtocol(records::encodeProtocol(*protocol)).has_value(), "a protocol can be read again");
}
