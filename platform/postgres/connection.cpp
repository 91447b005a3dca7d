#include "platform/postgres/connection.h"

#include <algorithm>
#include <cstring>

namespace ebbline::postgres {

namespace {

/// What is said for the operator unless the address says otherwise: a host that vanished without a
/// word is given up after seconds, and only a server that takes writes is taken.
struct Default {
    const char* key;
    const char* value;
};
constexpr Default defaults[] = {
    {"target_session_attrs", "read-write"}, {"connect_timeout", "3"},   {"keepalives", "1"},
    {"keepalives_idle", "5"},               {"keepalives_interval", "2"}, {"keepalives_count", "3"},
    {"tcp_user_timeout", "10000"},          {"application_name", "ebbline-hub"},
};

using Options = std::unique_ptr<PQconninfoOption, void (*)(PQconninfoOption*)>;

/// A warning after a commit says that it did not wait for its standby to the end: it is then as
/// unknown as one whose answer was lost.
void notice(void* warned, const PGresult* result)
{
    const char* severity = PQresultErrorField(result, PG_DIAG_SEVERITY_NONLOCALIZED);
    if (severity && std::string_view(severity) == "WARNING")
        *static_cast<bool*>(warned) = true;
}

/// SQLSTATE to reason. The class says what can be done about it.
Reason reasonOf(std::string_view state)
{
    if (state == "P0002")
        return Reason::notFound;
    if (state == "23505")
        return Reason::alreadyExists;
    if (state == "42501")  // row level security
        return Reason::notFound;
    // Connection, shutdown, crash, start-up; a server that became a standby; deadlock, serialisation.
    if (state.empty() || state.starts_with("08") || state.starts_with("57P") || state == "25006" || state.starts_with("40"))
        return Reason::unreachable;
    return Reason::storageFailed;
}

}  // namespace

Arguments& Arguments::add(std::int64_t value)
{
    std::string big(8, '\0');
    for (int i = 0; i < 8; ++i)
        big[static_cast<std::size_t>(i)] = static_cast<char>(static_cast<std::uint64_t>(value) >> (56 - 8 * i));
    m_values.push_back({std::move(big), 1});
    return *this;
}

Arguments& Arguments::add(bool value)
{
    m_values.push_back({std::string(1, value ? '\1' : '\0'), 1});
    return *this;
}

Arguments& Arguments::add(bytes::View blob)
{
    m_values.push_back({std::string(blob.begin(), blob.end()), 1});
    return *this;
}

Arguments& Arguments::add(std::string_view text)
{
    m_values.push_back({std::string(text), 0});
    return *this;
}

Arguments::Raw Arguments::raw() const
{
    Raw raw;
    for (const Value& value : m_values) {
        raw.values.push_back(value.bytes.c_str());
        raw.lengths.push_back(static_cast<int>(value.bytes.size()));
        raw.formats.push_back(value.format);
    }
    return raw;
}

std::string_view Rows::raw(int row, int column) const
{
    return {PQgetvalue(m_result.get(), row, column), static_cast<std::size_t>(PQgetlength(m_result.get(), row, column))};
}

std::int64_t Rows::integer(int row, int column) const
{
    const std::string_view value = raw(row, column);
    std::uint64_t number = !value.empty() && (value.front() & '\x80') ? ~std::uint64_t{0} : 0;
    for (const char byte : value)
        number = number << 8 | static_cast<std::uint8_t>(byte);
    return static_cast<std::int64_t>(number);
}

bool Rows::truth(int row, int column) const
{
    const std::string_view value = raw(row, column);
    return !value.empty() && value.front() != '\0';
}

bytes::Bytes Rows::blob(int row, int column) const
{
    const std::string_view value = raw(row, column);
    return {value.begin(), value.end()};
}

std::string Rows::text(int row, int column) const
{
    return std::string(raw(row, column));
}

Result<std::unique_ptr<Connection>> Connection::open(const std::string& address)
{
    char* complaint = nullptr;
    const Options given(PQconninfoParse(address.c_str(), &complaint), &PQconninfoFree);
    const std::unique_ptr<char, void (*)(void*)> said(complaint, &PQfreemem);
    if (!given)
        return fail(Reason::malformed, "store: not an address of a database");
    std::vector<const char*> keys, values;
    for (const Default& each : defaults) {
        keys.push_back(each.key);
        values.push_back(each.value);
    }
    // Later ones win.
    for (const PQconninfoOption* option = given.get(); option->keyword; ++option)
        if (option->val) {
            keys.push_back(option->keyword);
            values.push_back(option->val);
        }
    keys.push_back(nullptr);
    values.push_back(nullptr);
    std::unique_ptr<Connection> connection(new Connection(PQconnectdbParams(keys.data(), values.data(), 0)));
    if (!connection->handle() || PQstatus(connection->handle()) != CONNECTION_OK)
        return fail(Reason::unreachable, std::string("store: ") + PQerrorMessage(connection->handle()));
    PQsetNoticeReceiver(connection->handle(), &notice, &connection->m_warned);
    // No time limit on a statement: a commit that is cut off while it waits for the standby would be seen here and
    // lost there.
    if (const Done ready = connection->run("SET search_path TO ebbline; SET statement_timeout TO 0;"
                                           " SET idle_in_transaction_session_timeout TO 60000; SET client_min_messages TO warning");
        !ready)
        return fail(ready.error());
    return connection;
}

Error Connection::errorOf(const PGresult* result)
{
    const char* state = result ? PQresultErrorField(result, PG_DIAG_SQLSTATE) : nullptr;
    const std::string_view code = state ? state : "";
    const Reason reason = PQstatus(m_handle.get()) == CONNECTION_OK ? reasonOf(code) : Reason::unreachable;
    // A deadlock is over at once; with anything else of this kind, this is no place to ask again.
    if (reason == Reason::unreachable && !code.starts_with("40"))
        m_lost = true;
    // The server's own words may quote an argument: the code is enough.
    return {reason, "store: the database said " + (code.empty() ? std::string("nothing") : std::string(code))};
}

Done Connection::run(const std::string& sql)
{
    m_warned = false;
    const std::unique_ptr<PGresult, void (*)(PGresult*)> result(PQexec(m_handle.get(), sql.c_str()), &PQclear);
    const ExecStatusType status = PQresultStatus(result.get());
    if (status != PGRES_COMMAND_OK && status != PGRES_TUPLES_OK)
        return fail(errorOf(result.get()));
    if (m_warned)
        return fail(unfinished());
    return {};
}

Result<std::string> Connection::prepared(const std::string& sql)
{
    const auto known = std::ranges::find(m_prepared, sql, [](const auto& each) -> const std::string& { return each.first; });
    if (known != m_prepared.end())
        return known->second;
    const std::string name = "s" + std::to_string(m_prepared.size());
    const std::unique_ptr<PGresult, void (*)(PGresult*)> result(
        PQprepare(m_handle.get(), name.c_str(), sql.c_str(), 0, nullptr), &PQclear);
    if (PQresultStatus(result.get()) != PGRES_COMMAND_OK)
        return fail(errorOf(result.get()));
    m_prepared.emplace_back(sql, name);
    return name;
}

Result<Rows> Connection::ask(const std::string& sql, const Arguments& arguments)
{
    const Result<std::string> name = prepared(sql);
    if (!name)
        return fail(name.error());
    const Arguments::Raw raw = arguments.raw();
    m_warned = false;
    PGresult* result = PQexecPrepared(m_handle.get(), name->c_str(), arguments.count(), raw.values.data(),
                                      raw.lengths.data(), raw.formats.data(), 1);
    Rows rows(result);
    const ExecStatusType status = PQresultStatus(result);
    if (status != PGRES_TUPLES_OK && status != PGRES_COMMAND_OK)
        return fail(errorOf(result));
    if (m_warned)
        return fail(unfinished());
    return rows;
}

Error Connection::unfinished()
{
    m_lost = true;
    return {Reason::unreachable, "store: a commit did not wait for its standby"};
}

Result<std::vector<Rows>> Connection::askEach(const std::string& sql, const std::vector<Arguments>& arguments)
{
    const Result<std::string> name = prepared(sql);
    if (!name)
        return fail(name.error());
    if (PQenterPipelineMode(m_handle.get()) != 1)
        return fail(errorOf(nullptr));
    m_warned = false;
    bool sent = true;
    for (const Arguments& each : arguments) {
        const Arguments::Raw raw = each.raw();
        sent = sent
               && PQsendQueryPrepared(m_handle.get(), name->c_str(), each.count(), raw.values.data(), raw.lengths.data(),
                                      raw.formats.data(), 1) == 1;
    }
    sent = sent && PQpipelineSync(m_handle.get()) == 1;
    std::vector<Rows> rows;
    std::optional<Error> problem;
    bool synced = false;
    // A failed statement makes the server skip the others up to the sync; all answers are read either way.
    while (sent && !synced && !lost()) {
        PGresult* result = PQgetResult(m_handle.get());
        if (!result)
            continue;
        Rows each(result);
        switch (PQresultStatus(result)) {
        case PGRES_TUPLES_OK: rows.push_back(std::move(each)); break;
        case PGRES_PIPELINE_SYNC: synced = true; break;
        case PGRES_PIPELINE_ABORTED: break;
        default:
            if (!problem)
                problem = errorOf(result);
        }
    }
    if (!synced || PQexitPipelineMode(m_handle.get()) != 1)
        m_lost = true;
    if (problem)
        return fail(*problem);
    if (m_warned)
        return fail(unfinished());
    if (!synced || rows.size() != arguments.size()) {
        m_lost = true;
        return fail(Reason::unreachable, "store: the connection ended");
    }
    return rows;
}

}  // namespace ebbline::postgres
