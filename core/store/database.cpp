#include "core/store/handle.h"

#include "core/bytes/text.h"

#include <sqlite3.h>

#include <array>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <unistd.h>

namespace ebbline::store {

namespace {

constexpr std::string_view plaintextHeader = "SQLite format 3";

Reason reasonFor(int code)
{
    switch (code & 0xff) {
    case SQLITE_FULL: return Reason::storageFull;
    case SQLITE_CORRUPT: return Reason::damaged;
    case SQLITE_NOTADB: return Reason::wrongKey;
    case SQLITE_ERROR:
    case SQLITE_MISUSE:
    case SQLITE_RANGE: return Reason::invalidState;
    case SQLITE_CONSTRAINT: return Reason::alreadyExists;
    case SQLITE_TOOBIG: return Reason::tooLarge;
    default: return Reason::storageFailed;
    }
}

Done giveKey(sqlite3* connection, const char* schema, const crypto::Secret& key)
{
    std::string text = rawKey(key);
    const int code = sqlite3_key_v2(connection, schema, text.data(), static_cast<int>(text.size()));
    crypto::wipe({reinterpret_cast<std::uint8_t*>(text.data()), text.size()});
    if (code != SQLITE_OK)
        return fail(Reason::storageFailed, "store: the key was not taken");
    return {};
}

/// An empty file that is nobody else's to read; what SQLite puts beside it takes the same rights.
Done makePrivate(const std::filesystem::path& file)
{
    const int made = ::open(file.c_str(), O_WRONLY | O_CREAT | O_CLOEXEC, 0600);
    if (made < 0)
        return fail(errno == ENOSPC ? Reason::storageFull : Reason::storageFailed, "store: the file cannot be made");
    ::close(made);
    return {};
}

/// The third guard: a file that says that it is plain SQLite was written without a key. Read through the
/// connection: to open and close the file a second time would let go of this process's locks on it (POSIX), and
/// another process, taking itself for the last one, would remove the log that this one goes on writing to.
Done refusePlaintext(sqlite3* connection)
{
    std::array<char, 16> head{};
    sqlite3_file* file = nullptr;
    if (sqlite3_file_control(connection, "main", SQLITE_FCNTL_FILE_POINTER, &file) != SQLITE_OK || !file || !file->pMethods)
        return fail(Reason::storageFailed, "store: the file cannot be looked at");
    if (file->pMethods->xRead(file, head.data(), static_cast<int>(head.size()), 0) == SQLITE_OK
        && std::memcmp(head.data(), plaintextHeader.data(), plaintextHeader.size()) == 0)
        return fail(Reason::damaged, "store: the file is not encrypted");
    return {};
}

}  // namespace

std::string rawKey(const crypto::Secret& key)
{
    return "x'" + bytes::toHex(key.view()) + "'";
}

std::string pragma(sqlite3* connection, const char* sql)
{
    sqlite3_stmt* statement = nullptr;
    std::string value;
    if (sqlite3_prepare_v2(connection, sql, -1, &statement, nullptr) == SQLITE_OK
        && sqlite3_step(statement) == SQLITE_ROW) {
        if (const auto* text = sqlite3_column_text(statement, 0))
            value = reinterpret_cast<const char*>(text);
    }
    sqlite3_finalize(statement);
    return value;
}

Database::Handle::~Handle()
{
    for (const auto& [sql, statement] : idle)
        sqlite3_finalize(statement);
    sqlite3_close_v2(connection);
}

Error Database::Handle::error(std::string_view doing) const
{
    const int code = sqlite3_extended_errcode(connection);
    return Error{reasonFor(code), "store: " + std::string(doing) + ": code " + std::to_string(code)};
}

Database::Database(std::unique_ptr<Handle> handle) : m_handle(std::move(handle)) {}
Database::Database(Database&&) noexcept = default;
Database& Database::operator=(Database&&) noexcept = default;
Database::~Database() = default;

Result<std::unique_ptr<Database::Handle>> Database::connect(const std::filesystem::path& file,
                                                            const crypto::Secret& key, bool create, bool leaveLog)
{
    wipeFreedMemory();
    if (create && !std::filesystem::exists(file))
        if (const Done made = makePrivate(file); !made)
            return fail(made.error());
    auto handle = std::make_unique<Handle>();
    const int flags = SQLITE_OPEN_READWRITE | SQLITE_OPEN_FULLMUTEX | (create ? SQLITE_OPEN_CREATE : 0);
    if (const int code = sqlite3_open_v2(file.c_str(), &handle->connection, flags, nullptr); code != SQLITE_OK)
        return fail(code == SQLITE_NOMEM ? Reason::tooLarge : Reason::storageFailed, "store: the file cannot be opened");
    // Until it has been read: closing carries a log over into the file, unread, and what lies beside it may be another's.
    sqlite3_db_config(handle->connection, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
    if (const auto plain = refusePlaintext(handle->connection); !plain)
        return fail(plain.error());
    sqlite3_extended_result_codes(handle->connection, 1);
    // A refused key is an answer, not news for the terminal.
    sqlite3_exec(handle->connection, "PRAGMA cipher_log_level = NONE", nullptr, nullptr, nullptr);
    if (const auto taken = giveKey(handle->connection, "main", key); !taken)
        return fail(taken.error());
    if (pragma(handle->connection, "PRAGMA cipher_version").empty())
        return fail(Reason::unsupported, "store: this program was linked without encryption");
    sqlite3_busy_timeout(handle->connection, 5000);
    if (sqlite3_exec(handle->connection, "SELECT count(*) FROM sqlite_master", nullptr, nullptr, nullptr) != SQLITE_OK)
        return fail(handle->error("open"));
    handle->version = std::atoi(pragma(handle->connection, "PRAGMA user_version").c_str());
    if (!leaveLog)
        sqlite3_db_config(handle->connection, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 0, nullptr);
    return handle;
}

Result<Database> Database::open(const std::filesystem::path& file, const crypto::Secret& key,
                                std::span<const Migration> migrations)
{
    auto handle = connect(file, key, true);
    if (!handle)
        return fail(handle.error());
    Database database(std::move(*handle));
    const int known = static_cast<int>(migrations.size());
    // Before anything else: a newer program's file is left as it is.
    if (database.version() > known)
        return fail(Reason::unsupported, "store: the file was written by a newer program");
    const Done prepared = database.run("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;"
                                       "PRAGMA foreign_keys = ON; PRAGMA secure_delete = ON;"
                                       "PRAGMA temp_store = MEMORY; PRAGMA cache_size = -16384");
    if (!prepared)
        return fail(prepared.error());
    for (int version = database.version(); version < known; ++version) {
        const Done moved = database.transaction([&]() -> Done {
            if (const Done ran = database.run(migrations[static_cast<std::size_t>(version)]); !ran)
                return ran;
            return database.run("PRAGMA user_version = " + std::to_string(version + 1));
        });
        if (!moved)
            return fail(moved.error());
        database.m_handle->version = version + 1;
    }
    if (const auto plain = refusePlaintext(database.m_handle->connection); !plain)
        return fail(plain.error());
    return database;
}

Result<Database> Database::inspect(const std::filesystem::path& file, const crypto::Secret& key)
{
    if (std::error_code ignored; !std::filesystem::exists(file, ignored))
        return fail(Reason::notFound, "store: there is no such file");
    // Whoever only looks leaves a log as it lies.
    std::error_code noLog;
    const auto log = std::filesystem::file_size(file.string() + "-wal", noLog);
    auto handle = connect(file, key, true, !noLog && log > 0);  // a copy is made through it
    if (!handle)
        return fail(handle.error());
    Database database(std::move(*handle));
    if (const Done prepared = database.run("PRAGMA temp_store = MEMORY; PRAGMA query_only = ON"); !prepared)
        return fail(prepared.error());
    return database;
}

Done Database::run(std::string_view sql)
{
    const std::string text(sql);
    if (sqlite3_exec(m_handle->connection, text.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK)
        return fail(m_handle->error("run"));
    return {};
}

Done Database::transaction(const std::function<Done()>& work)
{
    if (m_handle->depth > 0)
        return work();
    if (const Done begun = run("BEGIN IMMEDIATE"); !begun)
        return begun;
    ++m_handle->depth;
    Done done;
    try {
        done = work();
    } catch (...) {
        --m_handle->depth;
        (void)run("ROLLBACK");
        throw;
    }
    --m_handle->depth;
    if (done)
        done = run("COMMIT");
    // Some failures end the transaction by themselves.
    if (!done && sqlite3_get_autocommit(m_handle->connection) == 0)
        (void)run("ROLLBACK");
    return done;
}

int Database::version() const
{
    return m_handle->version;
}

}  // namespace ebbline::store
