#pragma once
/// \file
/// Someone who uses the diary's own view models touch by touch, without end, and says on a pipe what the vault must
/// hold after each; and what a vault holds, to compare.

#include "core/patient/diary.h"

#include <QByteArray>

#include <array>
#include <filesystem>
#include <map>
#include <set>

namespace ebbline::taps {

/// What may not be lost.
struct Holds {
    int entries = 0;
    int versions = 0;         ///< of all entries
    std::uint64_t scores = 0; ///< sum of hashes, of what is answered in each entry as it stands
    std::string note;         ///< to the clinic, being written
    std::string correction;   ///< scores of the correction that is typed; empty: none
    std::set<std::string> due;                ///< reminders but those to write an entry
    std::map<std::string, int> answered;      ///< today
    int photos = 0;
    std::optional<patient::Draft> draft;

    static Holds of(const patient::Diary& diary);
    QByteArray line() const;
};

/// An entry's scores as one word.
std::string scoresOf(const recovery::Entry& entry);
std::uint64_t hashOf(const recovery::Entry& entry);

/// Every kind of touch.
inline constexpr std::array kinds{"answer", "next", "tick", "untick", "signs done", "words", "temperature", "save", "back", "earlier", "note",
                                  "correct", "save correction", "done", "not done", "later", "photo", "take back"};

/// Opens the diary and touches until it is killed. On standard output: `o` and what is held at first; before a touch `k` with
/// its kind, then `b` (`s` for the saving of an entry, which may be refused) with what is to be held after it; `d` with what is.
[[noreturn]] void live(const std::filesystem::path& folder, clock::Instant now, std::uint64_t seed);

}  // namespace ebbline::taps
