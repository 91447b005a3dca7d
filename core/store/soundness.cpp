// Whether a file is whole, whether two hold the same, and a copy that is proved to.

#include "core/store/handle.h"

#include <sqlite3.h>

#include <sstream>

namespace ebbline::store {

namespace {

constexpr std::size_t reportedAtMost = 50;

std::string inQuotes(std::string_view name)
{
    std::string out = "\"";
    for (const char c : name)
        out += c == '"' ? std::string("\"\"") : std::string(1, c);
    return out + '"';
}

void addNumber(crypto::Hash256& hash, std::uint64_t number)
{
    bytes::Array<8> big;
    for (std::size_t i = 0; i < big.size(); ++i)
        big[i] = static_cast<std::uint8_t>(number >> (8 * (7 - i)));
    hash.add(big);
}

/// One value with its type and length, so that no two rows read alike.
void addColumn(crypto::Hash256& hash, sqlite3_stmt* row, int column)
{
    const int type = sqlite3_column_type(row, column);
    addNumber(hash, static_cast<std::uint64_t>(type));
    if (type == SQLITE_INTEGER) {
        addNumber(hash, static_cast<std::uint64_t>(sqlite3_column_int64(row, column)));
        return;
    }
    // Of anything else the stored bytes; a real number as the text that SQLite writes for it.
    const auto* data = type == SQLITE_BLOB ? static_cast<const std::uint8_t*>(sqlite3_column_blob(row, column))
                                           : reinterpret_cast<const std::uint8_t*>(sqlite3_column_text(row, column));
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(row, column));
    addNumber(hash, size);
    if (data != nullptr)
        hash.add({data, size});
}

/// Calls `row` for each row. \returns the code of what ended it, SQLITE_DONE if all were read.
int forEachRow(sqlite3* connection, const std::string& sql, const std::function<void(sqlite3_stmt*)>& row)
{
    sqlite3_stmt* statement = nullptr;
    int code = sqlite3_prepare_v2(connection, sql.c_str(), -1, &statement, nullptr);
    if (code == SQLITE_OK)
        for (code = sqlite3_step(statement); code == SQLITE_ROW; code = sqlite3_step(statement))
            row(statement);
    sqlite3_finalize(statement);
    return code;
}

std::string textOf(sqlite3_stmt* row, int column)
{
    const auto* text = reinterpret_cast<const char*>(sqlite3_column_text(row, column));
    return text == nullptr ? std::string() : std::string(text);
}

bool digestOf(sqlite3* connection, const std::string& schema, bytes::Array<32>& digest)
{
    crypto::Hash256 hash;
    hash.add(bytes::viewOf(pragma(connection, ("PRAGMA " + schema + ".user_version").c_str())));
    std::vector<std::string> tables;
    int code = forEachRow(connection,
                          "SELECT name FROM " + schema + ".sqlite_master WHERE type = 'table' ORDER BY name",
                          [&](sqlite3_stmt* row) { tables.push_back(textOf(row, 0)); });
    for (const std::string& table : tables) {
        if (code != SQLITE_DONE)
            return false;
        addNumber(hash, table.size());
        hash.add(bytes::viewOf(table));
        // A full scan follows the primary key, the same in both files.
        code = forEachRow(connection, "SELECT * FROM " + schema + "." + inQuotes(table) + " NOT INDEXED",
                          [&](sqlite3_stmt* row) {
                              const int columns = sqlite3_column_count(row);
                              addNumber(hash, static_cast<std::uint64_t>(columns));
                              for (int i = 0; i < columns; ++i)
                                  addColumn(hash, row, i);
                          });
    }
    digest = hash.take();
    return code == SQLITE_DONE;
}

}  // namespace

std::vector<Database::Damage> Database::damage()
{
    std::vector<Damage> found;
    sqlite3* connection = m_handle->connection;
    // The check of pages reads the file itself: what waits beside it goes in first.
    sqlite3_exec(connection, "PRAGMA query_only = OFF; PRAGMA wal_checkpoint(TRUNCATE)", nullptr, nullptr, nullptr);
    const auto add = [&](Damage::Where where, const std::string& text) {
        const auto same = std::count_if(found.begin(), found.end(), [&](const Damage& d) { return d.where == where; });
        if (static_cast<std::size_t>(same) < reportedAtMost)
            found.push_back({where, text});
    };
    int code = forEachRow(connection, "PRAGMA cipher_integrity_check",
                          [&](sqlite3_stmt* row) { add(Damage::Where::page, textOf(row, 0)); });
    if (code != SQLITE_DONE)
        add(Damage::Where::page, "the check ended with code " + std::to_string(code));
    code = forEachRow(connection, "PRAGMA integrity_check", [&](sqlite3_stmt* row) {
        // One row may hold several lines, and one that only names the database.
        std::istringstream lines(textOf(row, 0));
        for (std::string line; std::getline(lines, line);)
            if (line != "ok" && !line.starts_with("*** in database"))
                add(Damage::Where::structure, line);
    });
    if (code != SQLITE_DONE)
        add(Damage::Where::structure, "the check ended with code " + std::to_string(code));
    return found;
}

Done Database::verify()
{
    if (const std::vector<Damage> found = damage(); !found.empty())
        return fail(Reason::damaged, "store: " + found.front().detail);
    return {};
}

Result<bytes::Array<32>> Database::digest()
{
    bytes::Array<32> digest;
    if (!digestOf(m_handle->connection, "main", digest))
        return fail(m_handle->error("digest"));
    return digest;
}

Result<bytes::Array<32>> Database::copyTo(const std::filesystem::path& file, const crypto::Secret& key)
{
    if (std::filesystem::exists(file))
        return fail(Reason::alreadyExists, "store: there is a file where the copy should go");
    if (const Done writable = run("PRAGMA query_only = OFF"); !writable)
        return fail(writable.error());
    {
        Result<Statement> attach = prepare("ATTACH DATABASE ?1 AS copy KEY ?2");
        if (!attach)
            return fail(attach.error());
        std::string text = rawKey(key);
        const Done attached = attach->bind(file.string()).bind(std::string_view(text)).run();
        crypto::wipe({reinterpret_cast<std::uint8_t*>(text.data()), text.size()});
        if (!attached)
            return fail(attached.error());
    }
    // One read transaction, so that what is copied and what is compared are of one moment.
    bytes::Array<32> original{};
    Done copied = run("BEGIN");
    if (copied)
        copied = run("SELECT sqlcipher_export('copy')");
    if (copied)
        copied = run("PRAGMA copy.user_version = " + std::to_string(m_handle->version));
    if (copied && !digestOf(m_handle->connection, "main", original))
        copied = fail(m_handle->error("digest"));
    if (copied)
        copied = run("COMMIT");
    if (sqlite3_get_autocommit(m_handle->connection) == 0)
        (void)run("ROLLBACK");
    const Done detached = run("DETACH DATABASE copy");
    if (copied && !detached)
        copied = detached;
    if (!copied)
        return fail(copied.error());

    // A copy counts only once it has been opened, verified and compared.
    Result<Database> reopened = inspect(file, key);
    if (!reopened)
        return fail(reopened.error());
    if (const Done whole = reopened->verify(); !whole)
        return fail(whole.error());
    const Result<bytes::Array<32>> copy = reopened->digest();
    if (!copy)
        return copy;
    if (*copy != original)
        return fail(Reason::damaged, "store: the copy does not hold what the file holds");
    return copy;
}

}  // namespace ebbline::store
