// The file of wrapped keys, as somebody with the device in hand might change it.

#include "tests/fuzz/fuzz_target.h"

#include "core/vault/key_slots.h"

void ebbline::fuzz::tryInput(bytes::View input)
{
    const auto slots = vault::KeySlots::decode(input);
    if (!slots)
        return;
    const auto again = vault::KeySlots::decode(slots->encode());
    mustHold(again.has_value(), "what was read can be written and read again");
    mustHold(again->encode() == slots->encode(), "writing is stable");
}
