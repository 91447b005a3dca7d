#pragma once
/// \file
/// One encrypted file: SQLCipher behind a small, typed door. The only place that knows SQL.
///
/// Guards at every open, because the wrong library would write plaintext without a word:
/// the key goes in through sqlite3_key_v2, `PRAGMA cipher_version` must answer, and after the
/// first write the file must not begin with "SQLite format 3".
/// WAL, synchronous=FULL, foreign keys on, secure_delete on, temporary data in memory.

#include "core/bytes/bytes.h"
#include "core/crypto/crypto.h"
#include "core/result/result.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace ebbline::store {

class Statement;

/// A migration moves the file from version n-1 to n, n being its place in the list, from 1.
using Migration = std::string_view;  ///< SQL, may hold several statements

class Database {
public:
    Database(Database&&) noexcept;
    Database& operator=(Database&&) noexcept;
    ~Database();

    /// Opens or creates, then runs the migrations that are still missing, each in a transaction
    /// of its own.
    /// \returns Reason::wrongKey if the key does not open the file (or page 1 is damaged: the two
    ///          cannot be told apart here; vault/key_slots can), Reason::damaged,
    ///          Reason::unsupported if the file is newer than the migrations known,
    ///          Reason::storageFull, Reason::storageFailed.
    static Result<Database> open(const std::filesystem::path& file, const crypto::Secret& key,
                                 std::span<const Migration> migrations);

    /// Opens an existing file as it is, for looking and copying: no migration, nothing is changed.
    /// \returns as open(), and Reason::notFound.
    static Result<Database> inspect(const std::filesystem::path& file, const crypto::Secret& key);

    /// \returns a statement, compiled once per text and kept. Reason::invalidState for bad SQL.
    Result<Statement> prepare(std::string_view sql);

    /// Runs one or several statements without parameters.
    Done run(std::string_view sql);

    /// Runs `work` in one durable transaction: all of it or nothing, nothing if it throws. Nested calls join the outer one.
    Done transaction(const std::function<Done()>& work);

    /// One thing that is wrong with the file.
    struct Damage {
        enum class Where : std::uint8_t { page, structure } where;
        std::string detail;
    };
    /// Checks every page's authentication tag and the structure of the file. Empty if all is well;
    /// at most 50 of a kind.
    std::vector<Damage> damage();

    /// \returns Reason::damaged naming the first that is wrong.
    Done verify();

    /// The same for two files that hold the same rows in the same tables, however they are laid out.
    Result<bytes::Array<32>> digest();

    /// A consistent copy, of one moment, into a new file under `key`. The copy is opened, verified
    /// and compared before success. \returns its digest; Reason::alreadyExists, Reason::storageFull.
    Result<bytes::Array<32>> copyTo(const std::filesystem::path& file, const crypto::Secret& key);

    int version() const;  ///< number of migrations applied

private:
    friend class Statement;
    struct Handle;
    explicit Database(std::unique_ptr<Handle> handle);
    /// A connection with its key that has read the file once, and the file's version.
    static Result<std::unique_ptr<Handle>> connect(const std::filesystem::path& file, const crypto::Secret& key,
                                                   bool create, bool leaveLog = false);
    std::unique_ptr<Handle> m_handle;
};

/// One run of a compiled statement. Bind in order, then step; it resets when it goes out of scope.
class Statement {
public:
    Statement(Statement&&) noexcept;
    Statement& operator=(Statement&&) noexcept;
    ~Statement();

    Statement& bind(std::int64_t value);
    Statement& bind(double value);
    Statement& bind(std::string_view text);
    Statement& bind(bytes::View blob);
    Statement& bindNull();

    /// \returns true if there is a row to read.
    Result<bool> step();
    /// Runs to the end, ignoring rows.
    Done run();

    std::int64_t integer(int column) const;
    double real(int column) const;
    std::string text(int column) const;
    bytes::Bytes blob(int column) const;
    bool isNull(int column) const;

private:
    friend class Database;
    struct Handle;
    explicit Statement(std::unique_ptr<Handle> handle);
    std::unique_ptr<Handle> m_handle;
};

}  // namespace ebbline::store
