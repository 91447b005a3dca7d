#pragma once
/// \file
/// One connection by libpq; inside of platform/postgres only. A thread at a time.

#include "core/bytes/bytes.h"
#include "core/result/result.h"

#include <libpq-fe.h>

#include <cstdint>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace ebbline::postgres {

/// Arguments of one statement, in order, in PostgreSQL's binary form but for text.
class Arguments {
public:
    Arguments& add(std::int64_t value);
    Arguments& add(bool value);
    Arguments& add(bytes::View blob);
    Arguments& add(std::string_view text);

    int count() const { return static_cast<int>(m_values.size()); }
    /// Pointers into this object: it must stay as it is while they are used.
    struct Raw {
        std::vector<const char*> values;
        std::vector<int> lengths, formats;
    };
    Raw raw() const;

private:
    struct Value {
        std::string bytes;
        int format;
    };
    std::vector<Value> m_values;
};

/// What came back: rows in binary form.
class Rows {
public:
    explicit Rows(PGresult* result) : m_result(result, &PQclear) {}

    int count() const { return PQntuples(m_result.get()); }
    std::int64_t integer(int row, int column) const;  ///< smallint, integer or bigint
    bool truth(int row, int column) const;
    bytes::Bytes blob(int row, int column) const;
    std::string text(int row, int column) const;

private:
    std::string_view raw(int row, int column) const;
    std::unique_ptr<PGresult, void (*)(PGresult*)> m_result;
};

class Connection {
public:
    /// Connects, tries every host of the address, and takes only a server that accepts writes.
    /// \returns Reason::unreachable.
    static Result<std::unique_ptr<Connection>> open(const std::string& address);

    /// Several statements without arguments or rows.
    Done run(const std::string& sql);
    /// One statement in a transaction of its own.
    Result<Rows> ask(const std::string& sql, const Arguments& arguments = {});
    /// The same statement with each of the arguments, in one transaction and one journey. If one fails,
    /// none took effect.
    Result<std::vector<Rows>> askEach(const std::string& sql, const std::vector<Arguments>& arguments);

    /// Whether it can be used no more.
    bool lost() const { return m_lost || PQstatus(m_handle.get()) != CONNECTION_OK; }
    PGconn* handle() const { return m_handle.get(); }

private:
    explicit Connection(PGconn* handle) : m_handle(handle, &PQfinish) {}
    /// The name of a prepared statement for this text.
    Result<std::string> prepared(const std::string& sql);
    Error errorOf(const PGresult* result);
    Error unfinished();

    std::unique_ptr<PGconn, void (*)(PGconn*)> m_handle;
    std::vector<std::pair<std::string, std::string>> m_prepared;  ///< text, name
    bool m_lost = false;
    bool m_warned = false;  ///< by the server, during the last call
};

}  // namespace ebbline::postgres
