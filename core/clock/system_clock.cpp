#include "core/clock/instant.h"

#include <cctype>
#include <ctime>
#include <fstream>
#include <random>

namespace ebbline::clock {

namespace {

using std::chrono::milliseconds;

/// Time asleep counts where the system can say it.
milliseconds steadily()
{
#ifdef CLOCK_BOOTTIME
    timespec reading{};
    if (::clock_gettime(CLOCK_BOOTTIME, &reading) == 0)
        return milliseconds{static_cast<std::int64_t>(reading.tv_sec) * 1000 + reading.tv_nsec / 1'000'000};
#endif
    return std::chrono::floor<milliseconds>(std::chrono::steady_clock::now().time_since_epoch());
}

int hexDigit(char c)
{
    if (c >= '0' && c <= '9')
        return c - '0';
    return c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
}

/// The kernel's name of this boot, 32 hexadecimal digits with dashes. \returns false if there is none.
bool readBootId(std::array<std::uint8_t, 16>& run)
{
    std::ifstream file("/proc/sys/kernel/random/boot_id");
    std::size_t digits = 0;
    for (char c = 0; digits < 32 && file.get(c);) {
        if (c == '-')
            continue;
        const int digit = hexDigit(c);
        if (digit < 0)
            return false;
        auto& byte = run[digits++ / 2];
        byte = static_cast<std::uint8_t>((byte << 4) | digit);
    }
    return digits == 32;
}

}  // namespace

SystemClock::SystemClock()
{
    m_wholeBoot = readBootId(m_run);
    if (m_wholeBoot)
        return;
    std::random_device source;
    std::generate(m_run.begin(), m_run.end(), [&] { return static_cast<std::uint8_t>(source() & 0xff); });
    m_began = steadily();
}

Instant SystemClock::now() const
{
    return std::chrono::floor<milliseconds>(std::chrono::system_clock::now());
}

Uptime SystemClock::uptime() const
{
    return {m_run, steadily() - m_began, m_wholeBoot};
}

}  // namespace ebbline::clock
