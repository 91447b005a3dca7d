// How it stands with a mailbox: what passed, what is missing, what was refused.

#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "core/vault/inside.h"
#include "core/vault/rows.h"

namespace ebbline::vault {

Done Vault::Inside::noteStanding(const envelope::MailboxId& mailbox, const envelope::DeviceId& who,
                                 std::string_view column, std::int64_t value)
{
    // The column is one of ours, never text from outside.
    const std::string name(column);
    auto statement = database.prepare("INSERT INTO standing (mailbox, device, " + name + ") VALUES (?1, ?2, ?3)"
                                      " ON CONFLICT (mailbox, device) DO UPDATE SET " + name + " = excluded." + name);
    if (!statement)
        return fail(statement.error());
    return statement->bind(mailbox.view()).bind(who.view()).bind(value).run();
}

Done Vault::Inside::notePassed(const envelope::MailboxId& mailbox, const envelope::DeviceId& who, const Cursor& head)
{
    auto put = database.prepare("INSERT INTO passed (mailbox, device, sequence, hash, at) VALUES (?1, ?2, ?3, ?4, ?5)"
                                " ON CONFLICT (mailbox, device, sequence) DO NOTHING");
    if (!put)
        return fail(put.error());
    const std::int64_t now = millisOf(clock.now());
    if (const Done done = put->bind(mailbox.view())
                              .bind(who.view())
                              .bind(static_cast<std::int64_t>(head.sequence))
                              .bind(bytes::View(head.hash))
                              .bind(now)
                              .run();
        !done)
        return done;
    auto release = database.prepare("DELETE FROM quarantine WHERE mailbox = ?1 AND hash = ?2");
    if (!release)
        return fail(release.error());
    if (const Done done = release->bind(mailbox.view()).bind(bytes::View(head.hash)).run(); !done)
        return done;
    return noteStanding(mailbox, who, "last_at", now);
}

Result<std::optional<envelope::Hash>> Vault::passed(const envelope::MailboxId& mailbox, const envelope::DeviceId& who,
                                                    std::uint64_t sequence) const
{
    auto statement = m_inside->database.prepare(
        "SELECT hash FROM passed WHERE mailbox = ?1 AND device = ?2 AND sequence = ?3");
    if (!statement)
        return fail(statement.error());
    const Result<bool> row =
        statement->bind(mailbox.view()).bind(who.view()).bind(static_cast<std::int64_t>(sequence)).step();
    if (!row)
        return fail(row.error());
    if (!*row)
        return std::optional<envelope::Hash>{};
    return std::optional(arrayOf<32>(statement->blob(0)));
}

Done Vault::noteAhead(const envelope::MailboxId& mailbox, const envelope::DeviceId& peer, std::uint64_t sequence)
{
    auto known = m_inside->database.prepare("SELECT ahead FROM standing WHERE mailbox = ?1 AND device = ?2");
    if (!known)
        return fail(known.error());
    const Result<bool> row = known->bind(mailbox.view()).bind(peer.view()).step();
    if (!row)
        return fail(row.error());
    const auto number = static_cast<std::int64_t>(sequence);
    if (*row && known->integer(0) >= number)
        return {};
    return m_inside->noteStanding(mailbox, peer, "ahead", number);
}

Done Vault::noteFork(const envelope::MailboxId& mailbox, const envelope::DeviceId& peer)
{
    return m_inside->noteStanding(mailbox, peer, "fork", 1);
}

Done Vault::noteRolledBack(const envelope::MailboxId& mailbox)
{
    return m_inside->noteStanding(mailbox, m_inside->device, "rolled_back", 1);
}

Done Vault::notePeerOlder(const envelope::MailboxId& mailbox, const envelope::DeviceId& peer)
{
    Inside& inside = *m_inside;
    return inside.database.transaction([&]() -> Done {
        auto ahead = inside.database.prepare("UPDATE standing SET ahead = 0 WHERE mailbox = ?1 AND device = ?2 AND ahead >= ?3");
        if (!ahead)
            return fail(ahead.error());
        if (const Done done = ahead->bind(mailbox.view()).bind(peer.view()).bind(static_cast<std::int64_t>(besideEveryChain)).run(); !done)
            return done;
        return inside.noteStanding(mailbox, peer, "rolled_back", 1);
    });
}

Result<Standing> Vault::standing(const envelope::MailboxId& mailbox) const
{
    Standing found;
    auto rows = m_inside->database.prepare(
        "SELECT s.device, s.last_at, s.ahead > ifnull(h.sequence, 0), s.fork, s.rolled_back, s.refused FROM standing s"
        " LEFT JOIN head h ON h.mailbox = s.mailbox AND h.device = s.device WHERE s.mailbox = ?1");
    if (rows)
        rows->bind(mailbox.view());
    const Done read = forEachRow(rows, [&](store::Statement& row) -> Done {
        const bool own = std::ranges::equal(row.blob(0), m_inside->device.view());
        if (row.integer(1) != 0) {
            auto& at = own ? found.spokeAt : found.heardAt;
            at = std::max(at.value_or(clock::Instant{}), instantOf(row.integer(1)));
        }
        found.gap = found.gap || row.integer(2) != 0;
        found.fork = found.fork || row.integer(3) != 0;
        bool& older = own ? found.rolledBack : found.peerOlder;
        older = older || row.integer(4) != 0;
        found.refused += static_cast<std::size_t>(row.integer(5));
        return {};
    });
    if (!read)
        return fail(read.error());
    // Acknowledgements wait for no acknowledgement of their own: only operations are counted.
    auto oldest = m_inside->database.prepare(
        "SELECT p.at FROM outgoing o JOIN passed p ON p.mailbox = o.mailbox AND p.device = ?2 AND p.sequence = o.sequence"
        " WHERE o.mailbox = ?1 AND substr(o.envelope, 5, 1) = x'01' ORDER BY o.sequence LIMIT 1");
    if (oldest)
        oldest->bind(mailbox.view()).bind(m_inside->device.view());
    const Done waited = forEachRow(oldest, [&](store::Statement& row) -> Done {
        found.unprovedSince = instantOf(row.integer(0));
        return {};
    });
    if (!waited)
        return fail(waited.error());
    return found;
}

Result<Vault::Kept> Vault::quarantine(const envelope::MailboxId& mailbox, bytes::View envelope, const Error& why)
{
    Inside& inside = *m_inside;
    Kept kept = Kept::known;
    const Done stored = inside.database.transaction([&]() -> Done {
        const envelope::Hash hash = envelope::hashOf(envelope);
        auto known = inside.database.prepare("SELECT 1 FROM quarantine WHERE mailbox = ?1 AND hash = ?2");
        if (!known)
            return fail(known.error());
        const Result<bool> row = known->bind(mailbox.view()).bind(bytes::View(hash)).step();
        if (!row)
            return fail(row.error());
        if (*row) {
            // One that waited for another before it may turn out to be unreadable in its turn.
            auto newer = inside.database.prepare("UPDATE quarantine SET reason = ?3, detail = ?4 WHERE mailbox = ?1 AND hash = ?2 AND reason <> ?3");
            if (!newer)
                return fail(newer.error());
            return newer->bind(mailbox.view())
                .bind(bytes::View(hash))
                .bind(static_cast<std::int64_t>(why.reason))
                .bind(std::string_view(why.detail))
                .run();
        }
        auto count = inside.database.prepare("INSERT INTO standing (mailbox, device, refused) VALUES (?1, ?2, 1)"
                                             " ON CONFLICT (mailbox, device) DO UPDATE SET refused = refused + 1");
        if (!count)
            return fail(count.error());
        if (const Done counted = count->bind(mailbox.view()).bind(inside.device.view()).run(); !counted)
            return counted;
        auto keep = inside.database.prepare("INSERT INTO quarantine (mailbox, hash, envelope, reason, detail)"
                                            " SELECT ?1, ?2, ?3, ?4, ?5"
                                            " WHERE (SELECT count(*) FROM quarantine WHERE mailbox = ?1) < ?6 RETURNING 1");
        if (!keep)
            return fail(keep.error());
        const Result<bool> put = keep->bind(mailbox.view())
            .bind(bytes::View(hash))
            .bind(envelope)
            .bind(static_cast<std::int64_t>(why.reason))
            .bind(std::string_view(why.detail))
            .bind(static_cast<std::int64_t>(mostQuarantined))
            .step();
        if (!put)
            return fail(put.error());
        kept = *put ? Kept::now : Kept::no;
        return {};
    });
    if (!stored)
        return fail(stored.error());
    return kept;
}

std::size_t Vault::quarantined(const envelope::MailboxId& mailbox) const
{
    auto statement = m_inside->database.prepare("SELECT count(*) FROM quarantine WHERE mailbox = ?1");
    if (!statement)
        return 0;
    const Result<bool> row = statement->bind(mailbox.view()).step();
    return row && *row ? static_cast<std::size_t>(statement->integer(0)) : 0;
}

Result<std::size_t> Vault::unreadable(const envelope::MailboxId& mailbox, const envelope::DeviceId& sender) const
{
    // The sender's place in an envelope: docs/formats/envelope.md. What only waits for one before it is told as missing.
    auto statement = m_inside->database.prepare("SELECT count(*) FROM quarantine WHERE mailbox = ?1 AND substr(envelope, 25, 16) = ?2 AND reason <> ?3");
    if (!statement)
        return fail(statement.error());
    const Result<bool> row =
        statement->bind(mailbox.view()).bind(sender.view()).bind(static_cast<std::int64_t>(Reason::outOfOrder)).step();
    if (!row)
        return fail(row.error());
    return *row ? static_cast<std::size_t>(statement->integer(0)) : std::size_t{0};
}

namespace {

/// Under names that begin so a vault keeps when operations came that bear a later time: device, slash, number.
constexpr std::string_view earlyPrefix = "came-early/";

}  // namespace

Done Vault::Inside::noteEarly(const journal::Operation& operation)
{
    const clock::Instant now = clock.now();
    // Not the difference: a time may be anything that eight bytes hold.
    if (operation.entered.at <= now + clearlyAhead)
        return {};
    return putKept(std::string(earlyPrefix) + bytes::toHex(operation.id.device.view()) + '/' + std::to_string(operation.id.number),
                   bytes::Writer().raw(operation.id.device.view()).u64(operation.id.number).u64(static_cast<std::uint64_t>(millisOf(now))).bytes());
}

Result<std::map<journal::OperationId, clock::Instant>> Vault::cameEarly() const
{
    const auto kept = keptUnder(earlyPrefix);
    if (!kept)
        return fail(kept.error());
    std::map<journal::OperationId, clock::Instant> early;
    for (const auto& [name, value] : *kept) {
        bytes::Reader reader(value);
        journal::OperationId id;
        id.device = reader.id<envelope::DeviceTag>();
        id.number = reader.u64();
        const auto millis = static_cast<std::int64_t>(reader.u64());
        if (reader.atEnd())
            early.insert_or_assign(id, instantOf(millis));
    }
    return early;
}

}  // namespace ebbline::vault
