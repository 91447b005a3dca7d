#pragma once
/// \file
/// One fuzz target: bytes from outside go into one reader of ours. A target checks more than
/// "does not crash": what is read and written again must read the same.

#include "core/bytes/bytes.h"
#include "core/crypto/crypto.h"

#include <cstdio>
#include <cstdlib>

namespace ebbline::fuzz {

/// What must hold whatever the input; ends the program with the words if it does not.
inline void mustHold(bool condition, const char* what)
{
    if (condition)
        return;
    std::fprintf(stderr, "does not hold: %s\n", what);
    std::abort();
}

/// The body of a target. Anything it returns normally is fine.
void tryInput(bytes::View input);

}  // namespace ebbline::fuzz

extern "C" int LLVMFuzzerInitialize(int*, char***)
{
    ebbline::fuzz::mustHold(ebbline::crypto::initialise().has_value(), "the cryptography library starts");
    return 0;
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    ebbline::fuzz::tryInput({data, size});
    return 0;
}
