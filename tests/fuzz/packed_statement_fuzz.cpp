// What desks tell each other inside an envelope: statements, secrets of epochs, heads.

#include "tests/fuzz/fuzz_target.h"

#include "core/sync/messages.h"

#include <algorithm>

using namespace ebbline;

void fuzz::tryInput(bytes::View input)
{
    const auto unpacked = sync::unpackStatement(input);
    if (!unpacked)
        return;
    bytes::Bytes again;
    if (const auto* statement = std::get_if<sync::SignedStatement>(&*unpacked))
        again = sync::packSigned(statement->signedBytes);
    else if (const auto* secret = std::get_if<sync::EpochSecret>(&*unpacked))
        again = sync::pack(*secret);
    else {
        const auto& heads = std::get<sync::Heads>(*unpacked);
        mustHold(heads.size() <= sync::mostHeads, "heads keep their bounds");
        again = sync::pack(heads);
    }
    mustHold(std::ranges::equal(again, input), "a message has one form only");
}
