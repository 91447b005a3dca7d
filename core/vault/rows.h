#pragma once
/// \file
/// Reading rows of the vault; inside of core/vault only.

#include "core/clock/instant.h"
#include "core/store/database.h"

namespace ebbline::vault {

template <std::size_t N>
bytes::Array<N> arrayOf(const bytes::Bytes& blob)
{
    bytes::Array<N> out{};
    std::copy_n(blob.begin(), std::min(blob.size(), N), out.begin());
    return out;
}

inline std::int64_t millisOf(clock::Instant instant) { return instant.time_since_epoch().count(); }
inline clock::Instant instantOf(std::int64_t millis) { return clock::Instant{std::chrono::milliseconds{millis}}; }

/// Runs a statement for each row; the first error ends it.
inline Done forEachRow(Result<store::Statement>& statement, const std::function<Done(store::Statement&)>& take)
{
    if (!statement)
        return fail(statement.error());
    for (;;) {
        const Result<bool> row = statement->step();
        if (!row)
            return fail(row.error());
        if (!*row)
            return {};
        if (const Done taken = take(*statement); !taken)
            return taken;
    }
}

}  // namespace ebbline::vault
