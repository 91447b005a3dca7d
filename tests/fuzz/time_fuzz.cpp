// Times as text.

#include "tests/fuzz/fuzz_target.h"

#include "core/clock/iso8601.h"

void ebbline::fuzz::tryInput(bytes::View input)
{
    const std::string_view text(reinterpret_cast<const char*>(input.data()), input.size());
    const auto moment = clock::parseIso8601(text);
    if (!moment)
        return;
    const auto again = clock::parseIso8601(clock::toIso8601(*moment));
    mustHold(again && again->at == moment->at && again->offset == moment->offset, "a time survives writing and reading");
}
