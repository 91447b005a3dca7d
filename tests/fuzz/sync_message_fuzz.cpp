// What stands inside an envelope: compressed batches and acknowledgements.

#include "tests/fuzz/fuzz_target.h"

#include "core/sync/messages.h"

void ebbline::fuzz::tryInput(bytes::View input)
{
    if (const auto operations = sync::unpackOperations(input)) {
        const auto again = sync::unpackOperations(sync::packOperations(*operations));
        mustHold(again && *again == *operations, "a batch survives packing");
    }
    if (const auto acknowledgement = sync::unpackAcknowledgement(input)) {
        const auto again = sync::unpackAcknowledgement(sync::pack(*acknowledgement));
        mustHold(again && *again == *acknowledgement, "an acknowledgement survives packing");
    }
}
