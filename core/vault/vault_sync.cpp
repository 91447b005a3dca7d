// The part of the vault that sync works with: links, outbox, envelopes on their way, cursors.

#include "core/vault/inside.h"
#include "core/vault/rows.h"

namespace ebbline::vault {

Done Vault::putLink(const Link& link)
{
    auto statement = m_inside->database.prepare(
        "INSERT INTO link (mailbox, course, peer_signing, peer_box, root, epoch, hub, hub_key, ended, roster)"
        " VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10) ON CONFLICT (mailbox) DO UPDATE SET course = excluded.course,"
        " peer_signing = excluded.peer_signing, peer_box = excluded.peer_box, root = excluded.root,"
        " epoch = excluded.epoch, hub = excluded.hub, hub_key = excluded.hub_key, ended = excluded.ended,"
        " roster = excluded.roster");
    if (!statement)
        return fail(statement.error());
    return statement->bind(link.mailbox.view())
        .bind(link.course.view())
        .bind(bytes::View(link.peerSigning.value))
        .bind(bytes::View(link.peerBox.value))
        .bind(bytes::View(link.clinicRoot.value))
        .bind(static_cast<std::int64_t>(link.epoch))
        .bind(std::string_view(link.hub))
        .bind(bytes::View(link.hubKeyHash))
        .bind(std::int64_t{link.ended ? 1 : 0})
        .bind(static_cast<std::int64_t>(link.roster))
        .run();
}

Done Vault::putOnlyLink(const Link& link)
{
    return m_inside->database.transaction([&]() -> Done {
        auto end = m_inside->database.prepare("UPDATE link SET ended = 1 WHERE mailbox <> ?1");
        if (!end)
            return fail(end.error());
        if (const Done ended = end->bind(link.mailbox.view()).run(); !ended)
            return ended;
        return putLink(link);
    });
}

Result<std::vector<Link>> Vault::links() const
{
    std::vector<Link> links;
    auto rows = m_inside->database.prepare(
        "SELECT mailbox, course, peer_signing, peer_box, root, epoch, hub, hub_key, ended, roster FROM link ORDER BY mailbox");
    const Done read = forEachRow(rows, [&](store::Statement& row) -> Done {
        Link link;
        link.mailbox.value = arrayOf<16>(row.blob(0));
        link.course.value = arrayOf<16>(row.blob(1));
        link.peerSigning.value = arrayOf<32>(row.blob(2));
        link.peerBox.value = arrayOf<32>(row.blob(3));
        link.clinicRoot.value = arrayOf<32>(row.blob(4));
        link.epoch = static_cast<std::uint32_t>(row.integer(5));
        link.hub = row.text(6);
        link.hubKeyHash = arrayOf<32>(row.blob(7));
        link.ended = row.integer(8) != 0;
        link.roster = static_cast<std::uint64_t>(row.integer(9));
        links.push_back(std::move(link));
        return {};
    });
    return read ? Result<std::vector<Link>>(std::move(links)) : fail(read.error());
}

Result<std::vector<journal::Operation>> Vault::unsealed(const envelope::MailboxId& mailbox) const
{
    std::vector<journal::Operation> operations;
    auto rows = m_inside->database.prepare("SELECT o.bytes, t.bytes FROM operation o LEFT JOIN tail t ON t.hash = o.tail"
                                             " WHERE o.mailbox = ?1 AND o.carried = 0 ORDER BY o.number");
    if (rows)
        rows->bind(mailbox.view());
    const Done read = forEachRow(rows, [&](store::Statement& row) -> Done {
        auto operation = journal::decode(wholeOf(row, 0, 1));
        if (!operation)
            return fail(Reason::damaged, "vault: an operation cannot be read");
        operations.push_back(std::move(*operation));
        return {};
    });
    if (!read)
        return fail(read.error());
    return operations;
}

bool Vault::hasUnsealed() const
{
    auto row = m_inside->database.prepare(
        "SELECT 1 FROM operation o WHERE o.mailbox IS NOT NULL AND o.carried = 0"
        " AND NOT EXISTS (SELECT 1 FROM link l WHERE l.mailbox = o.mailbox AND l.ended = 1) LIMIT 1");
    const Result<bool> any = row ? row->step() : fail(row.error());
    return !any || *any;
}

Done Vault::Inside::putEnvelope(const envelope::MailboxId& mailbox, std::uint64_t sequence, bytes::View envelope)
{
    auto insert = database.prepare("INSERT INTO outgoing (mailbox, sequence, envelope) VALUES (?1, ?2, ?3)");
    if (!insert)
        return fail(insert.error());
    if (const Done done = insert->bind(mailbox.view()).bind(static_cast<std::int64_t>(sequence)).bind(envelope).run(); !done)
        return done;
    const Cursor head{sequence, envelope::hashOf(envelope)};
    if (const Done noted = notePassed(mailbox, device, head); !noted)
        return noted;
    return putHead(database, mailbox, device, head);
}

Done Vault::storeSealed(const envelope::MailboxId& mailbox, std::uint64_t sequence, bytes::View envelope,
                        const std::vector<journal::OperationId>& carried)
{
    Inside& inside = *m_inside;
    return inside.database.transaction([&]() -> Done {
        for (const journal::OperationId& id : carried) {
            auto mark = inside.database.prepare("UPDATE operation SET carried = ?1 WHERE device = ?2 AND number = ?3");
            if (!mark)
                return fail(mark.error());
            if (const Done done = mark->bind(static_cast<std::int64_t>(sequence))
                                      .bind(id.device.view())
                                      .bind(static_cast<std::int64_t>(id.number))
                                      .run();
                !done)
                return done;
        }
        return inside.putEnvelope(mailbox, sequence, envelope);
    });
}

Result<std::vector<Outgoing>> Vault::outgoing(const envelope::MailboxId& mailbox) const
{
    std::vector<Outgoing> waiting;
    auto rows = m_inside->database.prepare(
        "SELECT sequence, envelope, at_hub, offered_at FROM outgoing WHERE mailbox = ?1 ORDER BY sequence");
    if (rows)
        rows->bind(mailbox.view());
    const Done read = forEachRow(rows, [&](store::Statement& row) -> Done {
        waiting.push_back({mailbox, static_cast<std::uint64_t>(row.integer(0)), row.blob(1), row.integer(2) != 0,
                           instantOf(row.integer(3))});
        return {};
    });
    if (!read)
        return fail(read.error());
    return waiting;
}

Done Vault::markAtHub(const envelope::MailboxId& mailbox, std::uint64_t sequence)
{
    auto statement = m_inside->database.prepare(
        "UPDATE outgoing SET at_hub = 1, offered_at = ?3 WHERE mailbox = ?1 AND sequence = ?2");
    if (!statement)
        return fail(statement.error());
    return statement->bind(mailbox.view())
        .bind(static_cast<std::int64_t>(sequence))
        .bind(millisOf(m_inside->clock.now()))
        .run();
}

Result<Cursor> Vault::ownHead(const envelope::MailboxId& mailbox) const
{
    return headOf(m_inside->database, mailbox, m_inside->device);
}

Result<Cursor> Vault::peerHead(const envelope::MailboxId& mailbox, const envelope::DeviceId& sender) const
{
    return headOf(m_inside->database, mailbox, sender);
}

/// The journal is appended to, never written over: another operation under a name that is taken is refused.
Result<bool> Vault::Inside::insertForeign(const journal::Operation& operation)
{
    const bytes::Bytes encoded = journal::encode(operation);
    const auto known = bytesOf(operation.id);
    if (!known)
        return fail(known.error());
    if (*known && **known != encoded)
        return fail(Reason::alreadyExists, "operation: another one has this number");
    if (*known)
        return false;
    const auto cut = putTail(encoded);
    if (!cut)
        return fail(cut.error());
    auto put = database.prepare("INSERT INTO operation (device, number, bytes, tail) VALUES (?1, ?2, ?3, ?4)");
    if (!put)
        return fail(put.error());
    put->bind(operation.id.device.view()).bind(static_cast<std::int64_t>(operation.id.number)).bind(ownPart(encoded, *cut));
    bindTail(*put, *cut);
    if (const Done done = put->run(); !done)
        return fail(done.error());
    return true;
}

Result<std::optional<bytes::Bytes>> Vault::Inside::bytesOf(const journal::OperationId& id)
{
    auto known = database.prepare("SELECT o.bytes, t.bytes FROM operation o LEFT JOIN tail t ON t.hash = o.tail"
                                  " WHERE o.device = ?1 AND o.number = ?2");
    if (!known)
        return fail(known.error());
    const Result<bool> row = known->bind(id.device.view()).bind(static_cast<std::int64_t>(id.number)).step();
    if (!row)
        return fail(row.error());
    return *row ? std::optional(wholeOf(*known, 0, 1)) : std::nullopt;
}

Result<std::set<journal::OperationId>> Vault::disputed(const std::vector<journal::Operation>& operations) const
{
    std::set<journal::OperationId> disputed;
    for (const journal::Operation& operation : operations) {
        const auto known = m_inside->bytesOf(operation.id);
        if (!known)
            return fail(known.error());
        if (*known && **known != journal::encode(operation))
            disputed.insert(operation.id);
    }
    return disputed;
}

Done Vault::accept(const envelope::MailboxId& mailbox, const envelope::DeviceId& sender, const Cursor& head,
                   const std::vector<journal::Operation>& operations, const std::function<Done()>& with)
{
    Inside& inside = *m_inside;
    std::vector<const journal::Operation*> fresh;
    const Done stored = inside.database.transaction([&]() -> Done {
        for (const journal::Operation& operation : operations) {
            const Result<bool> inserted = inside.insertForeign(operation);
            if (!inserted)
                return fail(inserted.error());
            if (!*inserted)
                continue;
            fresh.push_back(&operation);
            if (const Done dropped = inside.dropRemoved(operation); !dropped)
                return dropped;
            if (const Done early = inside.noteEarly(operation); !early)
                return early;
        }
        if (with)
            if (const Done done = with(); !done)
                return done;
        if (const Done noted = inside.notePassed(mailbox, sender, head); !noted)
            return noted;
        return putHead(inside.database, mailbox, sender, head);
    });
    if (!stored)
        return stored;
    const clock::Instant now = inside.clock.now();
    for (const journal::Operation* operation : fresh) {
        inside.hybrid.observe(operation->stamp, now);
        inside.journal.add(*operation);
    }
    return {};
}

Done Vault::together(const std::function<Done()>& work)
{
    return m_inside->database.transaction(work);
}

Done Vault::acknowledged(const envelope::MailboxId& mailbox, std::uint64_t sequence, clock::Instant at)
{
    Inside& inside = *m_inside;
    return inside.database.transaction([&]() -> Done {
        auto put = inside.database.prepare("INSERT OR IGNORE INTO delivered (mailbox, sequence, at) VALUES (?1, ?2, ?3)");
        if (!put)
            return fail(put.error());
        if (const Done done = put->bind(mailbox.view())
                                  .bind(static_cast<std::int64_t>(sequence))
                                  .bind(millisOf(at))
                                  .run();
            !done)
            return done;
        auto release = inside.database.prepare("DELETE FROM outgoing WHERE mailbox = ?1 AND sequence <= ?2");
        if (!release)
            return fail(release.error());
        return release->bind(mailbox.view()).bind(static_cast<std::int64_t>(sequence)).run();
    });
}

Delivered Vault::delivered(const envelope::MailboxId& mailbox) const
{
    Delivered delivered;
    auto statement = m_inside->database.prepare(
        "SELECT sequence, at FROM delivered WHERE mailbox = ?1 ORDER BY sequence DESC LIMIT 1");
    if (statement)
        if (const Result<bool> row = statement->bind(mailbox.view()).step(); row && *row) {
            delivered.sequence = static_cast<std::uint64_t>(statement->integer(0));
            delivered.at = clock::Instant{std::chrono::milliseconds{statement->integer(1)}};
        }
    return delivered;
}

std::optional<clock::Instant> Vault::deliveredAt(const envelope::MailboxId& mailbox, std::uint64_t sequence) const
{
    auto statement = m_inside->database.prepare(
        "SELECT at FROM delivered WHERE mailbox = ?1 AND sequence >= ?2 ORDER BY sequence LIMIT 1");
    if (!statement)
        return std::nullopt;
    const Result<bool> row = statement->bind(mailbox.view()).bind(static_cast<std::int64_t>(sequence)).step();
    if (!row || !*row)
        return std::nullopt;
    return clock::Instant{std::chrono::milliseconds{statement->integer(0)}};
}

std::optional<clock::Instant> Vault::deliveredAt(const journal::OperationId& id) const
{
    auto statement = m_inside->database.prepare(
        "SELECT mailbox, carried FROM operation WHERE device = ?1 AND number = ?2 AND carried > 0");
    if (!statement)
        return std::nullopt;
    const Result<bool> row = statement->bind(id.device.view()).bind(static_cast<std::int64_t>(id.number)).step();
    if (!row || !*row)
        return std::nullopt;
    return deliveredAt(envelope::MailboxId{arrayOf<16>(statement->blob(0))}, static_cast<std::uint64_t>(statement->integer(1)));
}

std::uint64_t Vault::carriedBy(const journal::OperationId& id) const
{
    auto statement = m_inside->database.prepare("SELECT carried FROM operation WHERE device = ?1 AND number = ?2");
    if (!statement)
        return 0;
    const Result<bool> row = statement->bind(id.device.view()).bind(static_cast<std::int64_t>(id.number)).step();
    return row && *row ? static_cast<std::uint64_t>(statement->integer(0)) : 0;
}

}  // namespace ebbline::vault
