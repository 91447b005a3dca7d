#pragma once
/// \file
/// Random work on a vault, what was acknowledged of it, and whether that is there afterwards.

#include "core/photos/sealed_photo.h"
#include "core/vault/inspection.h"
#include "core/vault/vault.h"

#include <map>
#include <random>
#include <set>
#include <string>

namespace ebbline::faults {

/// One acknowledgement, small enough to go through a pipe in one piece.
struct Ack {
    enum class What : std::uint8_t { opened, begun, entry, draft, sealed, delivered, peer, quarantined, photo, photoBack } what = What::begun;
    std::uint64_t number = 0;
    bytes::Array<32> hash{};
};

/// Does one random thing to an open vault and says what was acknowledged; empty if the vault refused it.
class Worker {
public:
    Worker(vault::Vault& vault, std::uint64_t seed) : m_vault(vault), m_random(seed) {}
    std::optional<Ack> work();
    /// The named one of the kinds, for scenarios.
    std::optional<Ack> append(std::size_t entries);
    std::optional<Ack> keepDraft();
    std::optional<Ack> seal();
    std::optional<Ack> deliver();
    std::optional<Ack> acceptPeer();
    std::optional<Ack> quarantine();
    /// Reads whatever a program shows; acknowledges nothing.
    bool readAll();
    std::optional<Ack> takePhoto(const photos::SealedPhoto& photo);
    /// The oldest that is left; nothing to acknowledge if there is none.
    std::optional<Ack> takePhotoBack();

private:
    vault::Vault& m_vault;
    std::mt19937_64 m_random;
};

/// Everything acknowledged in the life of one vault.
class Ledger {
public:
    void add(const Ack& ack);
    std::size_t acknowledged() const { return m_acknowledged; }
    /// What is wrong with a reopened vault; empty if every promise is kept and nothing is half there.
    std::vector<std::string> check(const std::filesystem::path& folder, const crypto::Secret& dataKey,
                                   const clock::Clock& clock) const;

private:
    std::set<std::uint64_t> m_photos, m_photosBack;       ///< own numbers of the photographs
    std::map<std::uint64_t, bytes::Array<32>> m_entries;  ///< own number -> hash of the body
    std::uint64_t m_draft = 0;
    std::uint64_t m_sealed = 0;
    std::map<std::uint64_t, bytes::Array<32>> m_envelopes;
    std::uint64_t m_delivered = 0;
    std::uint64_t m_peer = 0;
    std::uint64_t m_quarantined = 0;
    std::size_t m_acknowledged = 0;
};

inline const bytes::View passphrase = bytes::viewOf("three calm herons wade");
inline constexpr crypto::StretchCost cheap{1, 8 * 1024};

/// A picture of two chunks, sealed with whatever randomness there is.
photos::SealedPhoto somePhoto();

/// A folder of a test's own, in memory where the machine has such a place; gone afterwards.
class Scratch {
public:
    explicit Scratch(const std::string& name);
    ~Scratch();
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
    const std::filesystem::path& path() const { return m_path; }

private:
    std::filesystem::path m_path;
};

/// `to` is replaced.
void copyFolder(const std::filesystem::path& from, const std::filesystem::path& to);

/// Seconds on a clock that only goes forward; for measuring and for `--minutes`.
double secondsNow();

/// `--name N` of the command line, else `otherwise`.
std::uint64_t option(int argc, char** argv, const std::string& name, std::uint64_t otherwise);

}  // namespace ebbline::faults
