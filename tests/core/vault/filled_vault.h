#pragma once
/// \file
/// A vault with something of everything in it, for tests of inspection, backup and damage.

#include "core/vault/inspection.h"
#include "core/vault/vault.h"

#include "tests/core/records/sample_bodies.h"
#include "tests/core/vault/folder.h"

#include <fstream>

namespace ebbline::test {

inline constexpr crypto::StretchCost cheapCost{1, 8 * 1024};
inline const bytes::View herons = bytes::viewOf("three calm herons wade");
inline const auto secondEvening = momentAt("2027-03-02T20:00:00+01:00");
inline const auto someMailbox = idOf<envelope::MailboxTag>(8);

struct FilledVault {
    Folder folder;
    clock::ManualClock clock{secondEvening.at};

    explicit FilledVault(std::uint8_t entries = 20)
    {
        auto vault = vault::Vault::create(path(), vault::Vault::Owner::patient, herons, cheapCost, clock);
        REQUIRE(vault);
        for (const records::Body& body : sampleBodies())
            REQUIRE(vault->append({body}, secondEvening));
        for (std::uint8_t i = 0; i < entries; ++i)
            REQUIRE(vault->append({records::EntryRecorded{sampleEntry(static_cast<std::uint8_t>(100 + i))}}, secondEvening,
                                  someMailbox));
        for (std::uint64_t sequence = 1; sequence <= 3; ++sequence)
            REQUIRE(vault->storeSealed(someMailbox, sequence, bytes::viewOf("sealed " + std::to_string(sequence)), {}));
        REQUIRE(vault::writeOpenInfo(path(), {{"Practice on the Mole", "+00 555 0110", "+00 555 0119", "112"}, secondEvening}));
    }

    const std::filesystem::path& path() const { return folder.path(); }
    vault::Offered offered() const { return vault::Offered::passphrase(herons); }
    crypto::Secret dataKey() const
    {
        auto key = vault::openDataKey(path(), offered(), clock.readings());
        REQUIRE(key);
        return std::move(*key);
    }
    /// The tables, writable, as nobody but a test opens them.
    store::Database database() const
    {
        const std::vector<store::Migration> asItIs(5);
        auto opened = store::Database::open(path() / "vault.db", crypto::derive(dataKey(), 1, "eb-vault"), asItIs);
        REQUIRE(opened);
        return std::move(*opened);
    }
    vault::Inspection inspected() const
    {
        auto found = vault::inspect(path(), offered(), clock.readings());
        REQUIRE(found);
        return std::move(*found);
    }
};

inline std::string contentsOf(const std::filesystem::path& file)
{
    std::ifstream input(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(input), {}};
}

inline void put(const std::filesystem::path& file, const std::string& contents)
{
    std::ofstream(file, std::ios::binary | std::ios::trunc) << contents;
}

/// Changes one byte.
inline void scratch(const std::filesystem::path& file, std::size_t place, int by = 1)
{
    std::fstream io(file, std::ios::in | std::ios::out | std::ios::binary);
    io.seekg(static_cast<std::streamoff>(place));
    const int byte = io.get();
    REQUIRE(byte >= 0);
    io.seekp(static_cast<std::streamoff>(place));
    io.put(static_cast<char>(byte ^ by));
}

}  // namespace ebbline::test
