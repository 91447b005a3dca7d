// What a camera reads and what a person types.

#include "tests/fuzz/fuzz_target.h"

#include "core/pairing/code.h"

void ebbline::fuzz::tryInput(bytes::View input)
{
    const std::string_view text(reinterpret_cast<const char*>(input.data()), input.size());
    if (const auto offer = pairing::fromQrText(text, clock::Instant{})) {
        const auto again = pairing::fromQrText(pairing::toQrText(*offer), clock::Instant{});
        mustHold(again && *again == *offer, "an offer survives writing and reading");
    }
    if (const auto code = pairing::typedCodeFromText(text)) {
        const auto again = pairing::typedCodeFromText(pairing::toText(*code));
        mustHold(again && *again == *code, "a typed code survives writing and reading");
    }
}
