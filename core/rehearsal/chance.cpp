#include "core/rehearsal/chance.h"

#include <cmath>

namespace ebbline::rehearsal {

namespace {

constexpr double ln2High = 6.93147180369123816490e-01;  // ln 2 in two parts, their sum exact to 1e-26
constexpr double ln2Low = 1.90821492927058770002e-10;
constexpr double sqrtHalf = 0.70710678118654752440;

/// Mixes a seed and a stream into one start (the finaliser of a 64-bit linear congruence, the
/// constants of Steele, Lea and Flood, OOPSLA 2014).
std::uint64_t mixed(std::uint64_t seed, std::uint64_t stream)
{
    std::uint64_t x = seed + 0x9e3779b97f4a7c15ULL * (stream + 1);
    x = (x ^ (x >> 30)) * 0xbf58476d1ce4e5b9ULL;
    x = (x ^ (x >> 27)) * 0x94d049bb133111ebULL;
    return x ^ (x >> 31);
}

}  // namespace

double portableExp(double x)
{
    const double steps = std::floor(x / 0.6931471805599453 + 0.5);
    const double rest = (x - steps * ln2High) - steps * ln2Low;  // within half of ln 2
    double term = 1;
    double sum = 1;
    for (int i = 1; i <= 18; ++i) {
        term *= rest / i;
        sum += term;
    }
    return std::ldexp(sum, static_cast<int>(steps));
}

double portableLog(double x)
{
    int power = 0;
    double mantissa = std::frexp(x, &power);
    if (mantissa < sqrtHalf) {
        mantissa *= 2;
        --power;
    }
    // ln m = 2 artanh((m - 1) / (m + 1)), |t| < 0.172: the series falls by 0.03 a term.
    const double t = (mantissa - 1) / (mantissa + 1);
    const double square = t * t;
    double power2 = t;
    double sum = 0;
    for (int i = 1; i <= 23; i += 2) {
        sum += power2 / i;
        power2 *= square;
    }
    return power * ln2High + (2 * sum + power * ln2Low);
}

Chance::Chance(std::uint64_t seed, std::uint64_t stream) : m_engine(mixed(seed, stream)) {}

double Chance::uniform()
{
    return static_cast<double>(m_engine() >> 11) * 0x1.0p-53;
}

double Chance::between(double low, double high)
{
    return low + (high - low) * uniform();
}

int Chance::whole(int low, int high)
{
    return low + static_cast<int>(uniform() * (high - low + 1));
}

bool Chance::happens(double probability)
{
    return uniform() < probability;
}

double Chance::normal(double mean, double spread)
{
    if (m_hasSpare) {
        m_hasSpare = false;
        return mean + spread * m_spare;
    }
    double u = 0;
    double v = 0;
    double square = 0;
    do {
        u = 2 * uniform() - 1;
        v = 2 * uniform() - 1;
        square = u * u + v * v;
    } while (square >= 1 || square == 0);
    const double stretch = std::sqrt(-2 * portableLog(square) / square);
    m_spare = v * stretch;
    m_hasSpare = true;
    return mean + spread * u * stretch;
}

double Chance::logNormal(double median, double spread)
{
    return median * portableExp(normal(0, spread));
}

double Chance::exponential(double mean)
{
    return -mean * portableLog(1 - uniform());
}

double Chance::gamma(int shape, double mean)
{
    double sum = 0;
    for (int i = 0; i < shape; ++i)
        sum += exponential(mean / shape);
    return sum;
}

double Chance::beta(int a, int b)
{
    const double first = gamma(a, a);
    return first / (first + gamma(b, b));
}

}  // namespace ebbline::rehearsal
