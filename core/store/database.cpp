#include "core/store/handle.h"

#include "core/bytes/text.h"

#include <sqlite3.h>

#include <array>
#include <cstring>
#include <fstream>

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

/// x'<64 hexadecimal digits>': a raw key, so that the library stretches nothing.
std::string rawKey(const crypto::Secret& key)
{
    return "x'" + bytes::toHex(key.view()) + "'";
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

/// One value of a pragma as text; empty if it gives none.
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

/// The third guard: a file that says that it is plain SQLite was written without a key.
Done refusePlaintext(const std::filesystem::path& file)
{
    std::array<char, 16> head{};
    std::ifstream input(file, std::ios::binary);
    input.read(head.data(), head.size());
    if (input.gcount() == static_cast<std::streamsize>(head.size())
        && std::memcmp(head.data(), plaintextHeader.data(), plaintextHeader.size()) == 0)
        return fail(Reason::damaged, "store: the file is not encrypted");
    return {};
}

}  // namespace

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

Result<Database> Database::open(const std::filesystem::path& file, const crypto::Secret& key,
                                std::span<const Migration> migrations)
{
    if (const auto plain = refusePlaintext(file); !plain)
        return fail(plain.error());

    auto handle = std::make_unique<Handle>();
    handle->file = file;
    const int flags = SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE | SQLITE_OPEN_FULLMUTEX;
    if (sqlite3_open_v2(file.c_str(), &handle->connection, flags, nullptr) != SQLITE_OK)
        return fail(Reason::storageFailed, "store: the file cannot be opened");
    sqlite3_extended_result_codes(handle->connection, 1);
    // A refused key is an answer, not news for the terminal.
    sqlite3_exec(handle->connection, "PRAGMA cipher_log_level = NONE", nullptr, nullptr, nullptr);
    if (const auto taken = giveKey(handle->connection, "main", key); !taken)
        return fail(taken.error());
    if (pragma(handle->connection, "PRAGMA cipher_version").empty())
        return fail(Reason::unsupported, "store: this program was linked without encryption");

    Database database(std::move(handle));
    if (sqlite3_exec(database.m_handle->connection, "SELECT count(*) FROM sqlite_master", nullptr, nullptr, nullptr)
        != SQLITE_OK)
        return fail(database.m_handle->error("open"));
    const Done prepared = database.run("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;"
                                       "PRAGMA foreign_keys = ON; PRAGMA secure_delete = ON;"
                                       "PRAGMA temp_store = MEMORY; PRAGMA cache_size = -16384;"
                                       "PRAGMA busy_timeout = 5000");
    if (!prepared)
        return fail(prepared.error());

    const int known = static_cast<int>(migrations.size());
    int version = std::atoi(pragma(database.m_handle->connection, "PRAGMA user_version").c_str());
    if (version > known)
        return fail(Reason::unsupported, "store: the file was written by a newer program");
    for (; version < known; ++version) {
        const Done moved = database.transaction([&]() -> Done {
            if (const Done ran = database.run(migrations[static_cast<std::size_t>(version)]); !ran)
                return ran;
            return database.run("PRAGMA user_version = " + std::to_string(version + 1));
        });
        if (!moved)
            return fail(moved.error());
    }
    database.m_handle->version = version;
    if (const auto plain = refusePlaintext(file); !plain)
        return fail(plain.error());
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
    Done done = work();
    --m_handle->depth;
    if (done)
        done = run("COMMIT");
    // Some failures end the transaction by themselves.
    if (!done && sqlite3_get_autocommit(m_handle->connection) == 0)
        (void)run("ROLLBACK");
    return done;
}

Done Database::verify()
{
    const std::string page = pragma(m_handle->connection, "PRAGMA cipher_integrity_check");
    if (!page.empty())
        return fail(Reason::damaged, "store: " + page);
    const std::string structure = pragma(m_handle->connection, "PRAGMA integrity_check");
    if (structure != "ok")
        return fail(Reason::damaged, "store: " + structure);
    return {};
}

Done Database::copyTo(const std::filesystem::path& file, const crypto::Secret& key)
{
    if (std::filesystem::exists(file))
        return fail(Reason::alreadyExists, "store: there is a file where the copy should go");
    {
        Result<Statement> attach = prepare("ATTACH DATABASE ?1 AS copy KEY ?2");
        if (!attach)
            return fail(attach.error());
        const std::string text = rawKey(key);
        if (const Done attached = attach->bind(file.string()).bind(std::string_view(text)).run(); !attached)
            return attached;
    }
    Done copied = run("SELECT sqlcipher_export('copy'); PRAGMA copy.user_version = "
                      + std::to_string(m_handle->version));
    const Done detached = run("DETACH DATABASE copy");
    if (copied && !detached)
        copied = detached;
    if (!copied)
        return copied;

    // A copy counts only once it has been opened and read.
    const std::vector<Migration> none(static_cast<std::size_t>(m_handle->version), Migration{});
    Result<Database> reopened = open(file, key, none);
    if (!reopened)
        return fail(reopened.error());
    return reopened->verify();
}

int Database::version() const
{
    return m_handle->version;
}

}  // namespace ebbline::store
