#include "core/store/handle.h"

#include <sqlite3.h>

#include <new>

namespace ebbline::store {

Statement::Handle::~Handle()
{
    if (statement == nullptr)
        return;
    sqlite3_reset(statement);
    sqlite3_clear_bindings(statement);
    // Kept for the next time; where there is no memory to keep it, let go.
    try {
        database->idle.emplace(std::move(sql), statement);
    } catch (const std::bad_alloc&) {
        sqlite3_finalize(statement);
    }
}

Statement::Statement(std::unique_ptr<Handle> handle) : m_handle(std::move(handle)) {}
Statement::Statement(Statement&&) noexcept = default;
Statement& Statement::operator=(Statement&&) noexcept = default;
Statement::~Statement() = default;

Result<Statement> Database::prepare(std::string_view sql)
{
    auto handle = std::make_unique<Statement::Handle>();
    handle->database = m_handle.get();
    handle->sql = sql;
    if (const auto found = m_handle->idle.find(sql); found != m_handle->idle.end()) {
        handle->statement = found->second;
        m_handle->idle.erase(found);
    } else if (sqlite3_prepare_v3(m_handle->connection, sql.data(), static_cast<int>(sql.size()),
                                  SQLITE_PREPARE_PERSISTENT, &handle->statement, nullptr)
                   != SQLITE_OK
               || handle->statement == nullptr) {
        return fail(m_handle->error("prepare"));
    }
    return Statement(std::move(handle));
}

namespace {

void note(bool& misbound, int code)
{
    misbound = misbound || code != SQLITE_OK;
}

}  // namespace

Statement& Statement::bind(std::int64_t value)
{
    note(m_handle->misbound, sqlite3_bind_int64(m_handle->statement, ++m_handle->bound, value));
    return *this;
}

Statement& Statement::bind(double value)
{
    note(m_handle->misbound, sqlite3_bind_double(m_handle->statement, ++m_handle->bound, value));
    return *this;
}

Statement& Statement::bind(std::string_view text)
{
    note(m_handle->misbound, sqlite3_bind_text64(m_handle->statement, ++m_handle->bound, text.data(), text.size(),
                                                 SQLITE_TRANSIENT, SQLITE_UTF8));
    return *this;
}

Statement& Statement::bind(bytes::View blob)
{
    const int place = ++m_handle->bound;
    const int code = blob.empty()
                         ? sqlite3_bind_zeroblob(m_handle->statement, place, 0)
                         : sqlite3_bind_blob64(m_handle->statement, place, blob.data(), blob.size(), SQLITE_TRANSIENT);
    note(m_handle->misbound, code);
    return *this;
}

Statement& Statement::bindNull()
{
    note(m_handle->misbound, sqlite3_bind_null(m_handle->statement, ++m_handle->bound));
    return *this;
}

Result<bool> Statement::step()
{
    if (m_handle->misbound)
        return fail(Reason::invalidState, "store: a value was bound that the statement does not have");
    switch (sqlite3_step(m_handle->statement)) {
    case SQLITE_ROW: return true;
    case SQLITE_DONE: return false;
    default: return fail(m_handle->database->error("step"));
    }
}

Done Statement::run()
{
    for (;;) {
        const Result<bool> row = step();
        if (!row)
            return fail(row.error());
        if (!*row)
            return {};
    }
}

std::int64_t Statement::integer(int column) const
{
    return sqlite3_column_int64(m_handle->statement, column);
}

double Statement::real(int column) const
{
    return sqlite3_column_double(m_handle->statement, column);
}

std::string Statement::text(int column) const
{
    const auto* data = reinterpret_cast<const char*>(sqlite3_column_text(m_handle->statement, column));
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_handle->statement, column));
    return data == nullptr ? std::string() : std::string(data, size);
}

bytes::Bytes Statement::blob(int column) const
{
    const auto* data = static_cast<const std::uint8_t*>(sqlite3_column_blob(m_handle->statement, column));
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_handle->statement, column));
    return data == nullptr ? bytes::Bytes() : bytes::Bytes(data, data + size);
}

bool Statement::isNull(int column) const
{
    return sqlite3_column_type(m_handle->statement, column) == SQLITE_NULL;
}

}  // namespace ebbline::store
