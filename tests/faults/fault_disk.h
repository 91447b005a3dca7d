#pragma once
/// \file
/// A disk that fails when told: a VFS of SQLite that stands before the real one, counts the calls, makes
/// one of them (or all from one on) fail, and forgets at a power cut what was never synced. Tests only.

#include "core/bytes/bytes.h"

#include <cstdint>
#include <filesystem>
#include <map>
#include <memory>
#include <optional>
#include <random>
#include <string>
#include <vector>

struct sqlite3_vfs;

namespace ebbline::faults {

enum class Fault : std::uint8_t {
    none,
    once,        ///< one call fails with an I/O error
    fromThenOn,  ///< and every one after it
    full,        ///< one write finds the disk full; other calls pass, the next write fails
    shortWrite,  ///< one write stores half of its bytes and fails
    powerCut,    ///< nothing happens any more, until powerReturns()
};

class FaultDisk {
public:
    /// Becomes SQLite's default from here on. One at a time.
    FaultDisk();
    ~FaultDisk();
    FaultDisk(const FaultDisk&) = delete;
    FaultDisk& operator=(const FaultDisk&) = delete;

    /// Starts counting anew; the `at`-th call from now (from 1) is the one. What is on the disk at this
    /// moment counts as synced.
    void arm(Fault fault, std::uint64_t at);
    void disarm() { arm(Fault::none, 0); }

    std::uint64_t calls() const { return m_calls; }
    std::uint64_t injected() const { return m_injected; }

    /// What a power cut did to the files.
    struct Loss {
        std::uint64_t dropped = 0;   ///< unsynced writes of which nothing was kept
        std::uint64_t torn = 0;      ///< of which some 512-byte sectors were kept
        std::uint64_t kept = 0;      ///< kept whole, out of luck
        std::uint64_t revived = 0;   ///< deleted files that are back
    };
    /// After a cut: leaves on the disk what was synced, and of the rest, sector by sector, what chance
    /// wants. The order of writes is not kept. Disarms.
    /// \pre every database is closed
    Loss powerReturns(std::mt19937_64& random);

    // --- for the callbacks ---
    struct Change {
        std::uint64_t offset = 0;
        std::string bytes;
        bool truncate = false;
    };
    struct Image {
        std::string durable;
        bool exists = false;      ///< durably
        bool deleted = false;     ///< but the folder was not synced since
        std::vector<Change> pending;
    };
    /// Counts a call. \returns true if it must fail.
    bool strikes(bool isWrite = false);
    bool tearsThisWrite() const { return m_fault == Fault::shortWrite && m_calls == m_at; }
    bool fillsThisWrite() const { return m_fault == Fault::full; }
    bool isOff() const { return m_off; }
    Image* imageOf(const std::string& path);
    void forget(const std::string& path, bool durably);
    sqlite3_vfs* real() const { return m_real; }

private:
    sqlite3_vfs* m_real = nullptr;
    std::unique_ptr<sqlite3_vfs> m_own;
    Fault m_fault = Fault::none;
    std::uint64_t m_at = 0;
    std::uint64_t m_calls = 0;
    std::uint64_t m_injected = 0;
    bool m_off = false;
    bool m_filled = false;
    std::map<std::string, Image> m_images;
};

}  // namespace ebbline::faults
