#pragma once
/// \file
/// Reading rows of the vault; inside of core/vault only.

#include "core/clock/instant.h"
#include "core/store/database.h"
#include "core/vault/tails.h"
#include "core/vault/vault.h"

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

inline Done putHead(store::Database& database, const envelope::MailboxId& mailbox, const envelope::DeviceId& device,
             const Cursor& head)
{
    auto statement = database.prepare("INSERT INTO head (mailbox, device, sequence, hash) VALUES (?1, ?2, ?3, ?4)"
                                      " ON CONFLICT (mailbox, device) DO UPDATE SET sequence = excluded.sequence,"
                                      " hash = excluded.hash");
    if (!statement)
        return fail(statement.error());
    return statement->bind(mailbox.view())
        .bind(device.view())
        .bind(static_cast<std::int64_t>(head.sequence))
        .bind(bytes::View(head.hash))
        .run();
}

/// A head that cannot be read must not pass for one at the beginning: what follows it would fork.
inline Result<Cursor> headOf(store::Database& database, const envelope::MailboxId& mailbox, const envelope::DeviceId& device)
{
    auto statement = database.prepare("SELECT sequence, hash FROM head WHERE mailbox = ?1 AND device = ?2");
    if (!statement)
        return fail(statement.error());
    const Result<bool> row = statement->bind(mailbox.view()).bind(device.view()).step();
    if (!row)
        return fail(row.error());
    if (!*row)
        return Cursor{};
    return Cursor{static_cast<std::uint64_t>(statement->integer(0)), arrayOf<32>(statement->blob(1))};
}

}  // namespace ebbline::vault
