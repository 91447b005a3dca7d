#include "tests/simulation/seeded_randomness.h"

#include <random>
#include <sodium.h>

namespace ebbline::simulation {

namespace {

std::mt19937_64& source()
{
    static std::mt19937_64 engine;
    return engine;
}

const char* name() { return "seeded, for tests"; }
std::uint32_t number() { return static_cast<std::uint32_t>(source()() >> 32); }
void fill(void* const out, const std::size_t size)
{
    auto* bytes = static_cast<std::uint8_t*>(out);
    for (std::size_t i = 0; i < size; ++i)
        bytes[i] = static_cast<std::uint8_t>(source()() >> 56);
}

randombytes_implementation seeded{name, number, nullptr, nullptr, fill, nullptr};

}  // namespace

SeededRandomness::SeededRandomness(std::uint64_t seed)
{
    reseed(seed);
    randombytes_set_implementation(&seeded);
}

SeededRandomness::~SeededRandomness()
{
    randombytes_set_implementation(&randombytes_sysrandom_implementation);
}

void SeededRandomness::reseed(std::uint64_t seed)
{
    source().seed(seed);
}

}  // namespace ebbline::simulation
