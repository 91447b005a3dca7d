#pragma once
/// \file
/// Keys, nonces and identifiers from a seed, so that a simulated run can be repeated to the byte. Tests only:
/// it replaces the source that core/crypto draws from, for the whole program, while the object lives.

#include <cstdint>
#include <memory>

namespace ebbline::simulation {

class SeededRandomness {
public:
    explicit SeededRandomness(std::uint64_t seed);
    ~SeededRandomness();
    SeededRandomness(const SeededRandomness&) = delete;
    SeededRandomness& operator=(const SeededRandomness&) = delete;

    /// Begins anew with another seed.
    static void reseed(std::uint64_t seed);
};

}  // namespace ebbline::simulation
