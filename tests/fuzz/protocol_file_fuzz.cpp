// A protocol as a file that a clinic takes in from somewhere else.

#include "tests/fuzz/fuzz_target.h"

#include "core/exchange/protocol_file.h"

void ebbline::fuzz::tryInput(bytes::View input)
{
    const auto file = exchange::protocolFromText({reinterpret_cast<const char*>(input.data()), input.size()});
    if (!file) {
        mustHold(!file.error().detail.empty(), "a refusal says why");
        return;
    }
    if (!file->written)
        return;  // of an older format, which is written no more
    const auto again = exchange::protocolFromText(exchange::protocolText(*file));
    mustHold(again.has_value() && *again == *file, "a protocol survives writing and reading");
}
