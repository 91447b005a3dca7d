#pragma once
/// \file
/// Chance that is the same on every machine.
///
/// The standard fixes std::mt19937_64 to the bit, but not its distributions, and not the last bit
/// of exp and log. All of that is written out here in sums and products alone, so that a seed means
/// the same courses everywhere.

#include <cstdint>
#include <random>

namespace ebbline::rehearsal {

/// e^x for |x| <= 700 and the natural logarithm of x > 0, to about 1e-15 relative, made of
/// additions, multiplications and exact powers of two.
double portableExp(double x);
double portableLog(double x);

class Chance {
public:
    /// A stream of its own for each (seed, stream): drawing more from one leaves the others alone.
    Chance(std::uint64_t seed, std::uint64_t stream);

    double uniform();                          ///< 0 <= u < 1
    double between(double low, double high);   ///< low <= u < high
    int whole(int low, int high);              ///< low..high, both included, all alike
    bool happens(double probability);
    double normal(double mean, double spread); ///< polar method (Marsaglia and Bray 1964)
    double logNormal(double median, double spread);  ///< spread of the logarithm
    double exponential(double mean);
    double gamma(int shape, double mean);      ///< a sum of `shape` exponentials
    double beta(int a, int b);                 ///< from two gammas of whole shape

private:
    std::mt19937_64 m_engine;
    double m_spare = 0;
    bool m_hasSpare = false;
};

}  // namespace ebbline::rehearsal
