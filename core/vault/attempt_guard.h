#pragma once
/// \file
/// Waiting times after wrong attempts, kept in a file of their own. Five attempts are free, then
/// 30 s, 1, 2, 5, 15 minutes, then an hour each. (A setting of ours; common practice, no source.)
///
/// The wait is measured by clock::Uptime, which nobody can set: turning the wall clock in either
/// direction changes nothing. After the machine started again, at least the time since then has
/// passed, and that much counts. Where runs are runs of the program only, the wait begins anew in
/// each (docs/decisions/0011-waiting-times.md).

#include "core/clock/instant.h"
#include "core/result/result.h"

#include <filesystem>

namespace ebbline::vault {

class AttemptGuard {
public:
    explicit AttemptGuard(std::filesystem::path folder) : m_folder(std::move(folder)) {}
    /// Counts an attempt, durably, before it is made. \returns Reason::tooSoon with the seconds
    /// left in the detail; Reason::storageFull, Reason::storageFailed: then make none.
    Done begin(const clock::Readings& now);
    /// After a success.
    Done clear();
    /// Seconds until the next attempt, 0 if free.
    std::int64_t secondsLeft(const clock::Readings& now) const;

private:
    std::filesystem::path m_folder;
};

}  // namespace ebbline::vault
