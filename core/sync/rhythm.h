#pragma once
/// \file
/// When a program turns to its hub next: looks at regular times, waits there in between for what comes, draws back from
/// a hub that does not answer, and leaves one alone that asks for it. Decides only; times and runs are the caller's.

#include "core/sync/link_sync.h"
#include "core/sync/listening.h"

namespace ebbline::sync {

/// A hub that asks to be left alone for longer is asked again after this. Our own choice: it may deny
/// its service, but not switch a program off.
inline constexpr std::chrono::minutes longestRetryAfter{60};

/// Full jitter back-off: 2 s doubled per failure up to 15 minutes; `random` in [0, 1).
std::chrono::milliseconds backOff(int failures, double random);

class Rhythm {
public:
    enum class What : std::uint8_t {
        run,   ///< sync::run()
        wait,  ///< Listening::wait()
    };
    struct Next {
        What what = What::run;
        std::chrono::milliseconds in{0};      ///< from now on
        std::chrono::seconds atMost{0};       ///< of a wait, at least 1
        bool leaveAlone = false;              ///< the hub asked for it: until then nothing but a person's own wish comes before
    };

    /// \param interval  between two looks while all is well, at least 1 s
    explicit Rhythm(std::chrono::milliseconds interval);

    /// A run is over. `random` in [0, 1), here and below.
    Next afterRun(const Report& report, double random);

    /// A wait is over, `took` after it began.
    Next afterWait(const Heard& heard, std::chrono::milliseconds took, double random);

    /// The device is in another network, or was asked by a person: what failed before says nothing any more.
    void forgetFailures();

private:
    Next goOnWaiting(std::chrono::milliseconds pause);

    std::chrono::milliseconds m_interval;
    std::chrono::milliseconds m_waited{0};  ///< since the last run, pauses included
    int m_failures = 0;   ///< runs in a row that did not reach the hub
    int m_early = 0;      ///< waits in a row that ended before their time with nothing new
    int m_idle = 0;       ///< runs in a row that a wait called for and that found nothing
    bool m_called = false;  ///< the run that comes was called for by a wait
};

}  // namespace ebbline::sync
