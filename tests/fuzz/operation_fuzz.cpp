// One operation of the journal, and its body, as another device sent them.

#include "tests/fuzz/fuzz_target.h"

#include "core/journal/operation.h"

void ebbline::fuzz::tryInput(bytes::View input)
{
    const auto operation = journal::decode(input);
    if (!operation)
        return;
    const auto bytes = journal::encode(*operation);
    const auto again = journal::decode(bytes);
    mustHold(again && *again == *operation, "an operation survives writing and reading");
}
