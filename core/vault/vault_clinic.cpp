// A clinic with several desks: its keys, its rosters, what one desk tells another, phones that are replaced.

#include "core/bytes/reader.h"
#include "core/vault/inside.h"
#include "core/vault/rows.h"

namespace ebbline::vault {

Done Vault::Inside::loadClinicKeys()
{
    const Error missing{Reason::damaged, "vault: the clinic's keys are missing"};
    auto rootSeed = fact("root");
    const auto rootPublic = fact("root-public");
    if ((!rootSeed && !rootPublic) || (rootSeed && rootSeed->size() != 32)
        || (rootPublic && rootPublic->size() != 32))
        return std::unexpected(missing);
    root.reset();
    if (rootSeed) {
        root = crypto::SigningKey::fromSeed(*rootSeed);
        rootKey = root->publicKey();
        crypto::wipe(*rootSeed);
    }
    if (rootPublic)
        rootKey = crypto::SigningPublicKey{arrayOf<32>(*rootPublic)};
    if (root && root->publicKey() != *rootKey)
        return std::unexpected(missing);
    return loadNumberedKeys("epoch");
}

bool Vault::holdsRoot() const { return m_inside->root.has_value(); }
const crypto::SigningKey& Vault::clinicRoot() const { return *m_inside->root; }
const crypto::SigningPublicKey& Vault::clinicRootKey() const { return *m_inside->rootKey; }
const crypto::BoxKey& Vault::clinicEpoch() const { return m_inside->epochs.rbegin()->second; }
std::uint32_t Vault::epochNumber() const { return m_inside->epochs.empty() ? 0 : m_inside->epochs.rbegin()->first; }

const crypto::BoxKey* Vault::epochKey(std::uint32_t number) const
{
    const auto found = m_inside->epochs.find(number);
    return found == m_inside->epochs.end() ? nullptr : &found->second;
}

Done Vault::Inside::storeEpoch(std::uint32_t number, const crypto::BoxKey& key)
{
    auto put = database.prepare("INSERT INTO epoch (number, secret) VALUES (?1, ?2)"
                                          " ON CONFLICT (number) DO UPDATE SET secret = excluded.secret");
    if (!put)
        return fail(put.error());
    if (const Done done = put->bind(std::int64_t{number}).bind(key.secret()).run(); !done)
        return done;
    return putKept(begunName(number), bytes::Writer().u64(static_cast<std::uint64_t>(millisOf(clock.now()))).bytes());
}

Done Vault::putEpoch(std::uint32_t number, const crypto::BoxKey& key)
{
    const Done stored = m_inside->database.transaction([&] { return m_inside->storeEpoch(number, key); });
    if (!stored)
        return stored;
    m_inside->epochs.insert_or_assign(number, key.clone());
    return {};
}

Done Vault::joinClinic(const crypto::SigningPublicKey& root, bytes::View rootSeed)
{
    Inside& inside = *m_inside;
    const auto own = links();
    if (!own)
        return fail(own.error());
    if (inside.owner != Owner::clinic || !inside.journal.operations().empty() || !own->empty())
        return fail(Reason::invalidState, "desk: it has patients of its own");
    const Done stored = inside.database.transaction([&]() -> Done {
        auto forget = inside.database.prepare("DELETE FROM fact WHERE name = 'root'");
        if (!forget)
            return fail(forget.error());
        if (const Done done = forget->run(); !done)
            return done;
        if (!rootSeed.empty())
            if (const Done done = inside.putFact("root", rootSeed); !done)
                return done;
        return inside.putFact("root-public", root.value);
    });
    return stored ? inside.loadClinicKeys() : stored;
}

Result<bool> Vault::putRoster(const crypto::SigningPublicKey& root, const KeptRoster& roster, const crypto::BoxKey* epochSecret)
{
    Inside& inside = *m_inside;
    bool newer = false;
    const Done stored = inside.database.transaction([&]() -> Done {
        auto known = inside.database.prepare("SELECT number, signed FROM roster WHERE root = ?1");
        if (!known)
            return fail(known.error());
        const Result<bool> row = known->bind(bytes::View(root.value)).step();
        if (!row)
            return fail(row.error());
        const auto number = static_cast<std::int64_t>(roster.number);
        if (*row && known->integer(0) == number && known->blob(1) != roster.signedBytes)
            return fail(Reason::outOfOrder, "roster: another one has the same number");
        if (*row && known->integer(0) >= number)
            return {};
        newer = true;
        auto put = inside.database.prepare("INSERT INTO roster (root, number, signed) VALUES (?1, ?2, ?3) ON CONFLICT (root)"
                                           " DO UPDATE SET number = excluded.number, signed = excluded.signed");
        if (!put)
            return fail(put.error());
        if (const Done done = put->bind(bytes::View(root.value)).bind(number).bind(bytes::View(roster.signedBytes)).run(); !done)
            return done;
        if (inside.owner == Owner::clinic)
            return epochSecret ? inside.storeEpoch(roster.epoch, *epochSecret) : Done{};
        auto seal = inside.database.prepare("UPDATE link SET epoch = ?1, peer_box = ?2 WHERE root = ?3 AND epoch < ?1");
        if (!seal)
            return fail(seal.error());
        return seal->bind(std::int64_t{roster.epoch}).bind(bytes::View(roster.epochKey.value)).bind(bytes::View(root.value)).run();
    });
    if (!stored)
        return fail(stored.error());
    if (newer && epochSecret)
        inside.epochs.insert_or_assign(roster.epoch, epochSecret->clone());
    return newer;
}

Result<bytes::Bytes> Vault::roster(const crypto::SigningPublicKey& root) const
{
    auto statement = m_inside->database.prepare("SELECT signed FROM roster WHERE root = ?1");
    if (!statement)
        return fail(statement.error());
    const Result<bool> row = statement->bind(bytes::View(root.value)).step();
    if (!row)
        return fail(row.error());
    if (!*row)
        return fail(Reason::notFound, "roster: none has come");
    return statement->blob(0);
}

Done Vault::noteRosterSent(const envelope::MailboxId& mailbox, std::uint64_t number)
{
    for (const char* sql : {"UPDATE link SET roster = ?1 WHERE mailbox = ?2", "UPDATE channel SET roster = ?1 WHERE mailbox = ?2"}) {
        auto note = m_inside->database.prepare(sql);
        if (!note)
            return fail(note.error());
        if (const Done done = note->bind(static_cast<std::int64_t>(number)).bind(mailbox.view()).run(); !done)
            return done;
    }
    return {};
}

Done Vault::endLink(const envelope::MailboxId& mailbox)
{
    auto end = m_inside->database.prepare("UPDATE link SET ended = 1 WHERE mailbox = ?1");
    if (!end)
        return fail(end.error());
    return end->bind(mailbox.view()).run();
}

Done Vault::putChannel(const Channel& channel)
{
    auto put = m_inside->database.prepare(
        "INSERT INTO channel (mailbox, signing, box, hub, roster, ended) VALUES (?1, ?2, ?3, ?4, ?5, ?6) ON CONFLICT (mailbox)"
        " DO UPDATE SET signing = excluded.signing, box = excluded.box, hub = excluded.hub, roster = excluded.roster,"
        " ended = excluded.ended");
    if (!put)
        return fail(put.error());
    return put->bind(channel.mailbox.view())
        .bind(bytes::View(channel.peerSigning.value))
        .bind(bytes::View(channel.peerBox.value))
        .bind(std::string_view(channel.hub))
        .bind(static_cast<std::int64_t>(channel.roster))
        .bind(std::int64_t{channel.ended ? 1 : 0})
        .run();
}

Result<std::vector<Channel>> Vault::channels() const
{
    std::vector<Channel> channels;
    auto rows = m_inside->database.prepare("SELECT mailbox, signing, box, hub, roster, ended FROM channel ORDER BY mailbox");
    const Done read = forEachRow(rows, [&](store::Statement& row) -> Done {
        channels.push_back({envelope::MailboxId{arrayOf<16>(row.blob(0))}, {arrayOf<32>(row.blob(1))}, {arrayOf<32>(row.blob(2))},
                            row.text(3), static_cast<std::uint64_t>(row.integer(4)), row.integer(5) != 0});
        return {};
    });
    return read ? Result<std::vector<Channel>>(std::move(channels)) : fail(read.error());
}

Result<std::vector<journal::Operation>> Vault::untold(const envelope::MailboxId& channel, std::size_t atMost) const
{
    // The other wrote its own operations itself.
    std::vector<journal::Operation> operations;
    auto rows = m_inside->database.prepare(
        "SELECT o.bytes, e.bytes FROM operation o LEFT JOIN channel_told t ON t.mailbox = ?1 AND t.device = o.device"
        " LEFT JOIN tail e ON e.hash = o.tail"
        " WHERE o.number > ifnull(t.number, 0) AND o.device <> ?2 ORDER BY o.device, o.number LIMIT ?3");
    envelope::DeviceId other;
    const auto all = channels();
    if (!all)
        return fail(all.error());
    for (const Channel& each : *all)
        if (each.mailbox == channel)
            other = envelope::deviceIdOf(each.peerSigning);
    if (rows)
        rows->bind(channel.view()).bind(other.view()).bind(static_cast<std::int64_t>(atMost));
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

Done Vault::Inside::noteTold(const envelope::MailboxId& channel, const journal::OperationId& id)
{
    auto note = database.prepare("INSERT INTO channel_told (mailbox, device, number) VALUES (?1, ?2, ?3)"
                                 " ON CONFLICT (mailbox, device) DO UPDATE SET number = max(number, excluded.number)");
    if (!note)
        return fail(note.error());
    return note->bind(channel.view()).bind(id.device.view()).bind(static_cast<std::int64_t>(id.number)).run();
}

Done Vault::storeTold(const envelope::MailboxId& channel, std::uint64_t sequence, bytes::View envelope,
                      const std::vector<journal::OperationId>& told)
{
    Inside& inside = *m_inside;
    return inside.database.transaction([&]() -> Done {
        for (const journal::OperationId& id : told)
            if (const Done noted = inside.noteTold(channel, id); !noted)
                return noted;
        return inside.putEnvelope(channel, sequence, envelope);
    });
}

Done Vault::noteTold(const envelope::MailboxId& channel, const std::vector<journal::Operation>& operations)
{
    Inside& inside = *m_inside;
    return inside.database.transaction([&]() -> Done {
        for (const journal::Operation& operation : operations)
            if (const Done noted = inside.noteTold(channel, operation.id); !noted)
                return noted;
        return {};
    });
}

Done Vault::tellLate(const std::vector<journal::Operation>& operations)
{
    Inside& inside = *m_inside;
    return inside.database.transaction([&]() -> Done {
        for (const journal::Operation& operation : operations) {
            auto lower = inside.database.prepare(
                "UPDATE channel_told SET number = ?2 - 1 WHERE device = ?1 AND number >= ?2"
                " AND NOT EXISTS (SELECT 1 FROM operation o WHERE o.device = ?1 AND o.number = ?2)");
            if (!lower)
                return fail(lower.error());
            lower->bind(operation.id.device.view()).bind(static_cast<std::int64_t>(operation.id.number));
            if (const Done lowered = lower->run(); !lowered)
                return lowered;
        }
        return {};
    });
}

Result<std::vector<Vault::Head>> Vault::peerHeads() const
{
    std::vector<Head> heads;
    auto rows = m_inside->database.prepare("SELECT h.mailbox, h.device, h.sequence, h.hash FROM head h JOIN link l"
                                           " ON l.mailbox = h.mailbox WHERE h.device <> ?1 ORDER BY h.mailbox, h.device");
    if (rows)
        rows->bind(m_inside->device.view());
    const Done read = forEachRow(rows, [&](store::Statement& row) -> Done {
        heads.push_back({envelope::MailboxId{arrayOf<16>(row.blob(0))}, envelope::DeviceId{arrayOf<16>(row.blob(1))},
                         {static_cast<std::uint64_t>(row.integer(2)), arrayOf<32>(row.blob(3))}});
        return {};
    });
    if (!read)
        return fail(read.error());
    return heads;
}

Done Vault::adoptHead(const Head& head)
{
    Inside& inside = *m_inside;
    return inside.database.transaction([&]() -> Done {
        const Result<Cursor> known = headOf(inside.database, head.mailbox, head.device);
        if (!known)
            return fail(known.error());
        if (head.device == inside.device || known->sequence >= head.cursor.sequence)
            return {};
        if (const Done noted = inside.notePassed(head.mailbox, head.device, head.cursor); !noted)
            return noted;
        return putHead(inside.database, head.mailbox, head.device, head.cursor);
    });
}

Done Vault::sendAgain(const std::vector<journal::OperationId>& operations, const envelope::MailboxId& mailbox)
{
    Inside& inside = *m_inside;
    return inside.database.transaction([&]() -> Done {
        for (const journal::OperationId& id : operations) {
            auto mark = inside.database.prepare("UPDATE operation SET mailbox = ?1, carried = 0 WHERE device = ?2 AND number = ?3");
            if (!mark)
                return fail(mark.error());
            if (const Done done = mark->bind(mailbox.view()).bind(id.device.view()).bind(static_cast<std::int64_t>(id.number)).run();
                !done)
                return done;
        }
        return {};
    });
}

}  // namespace ebbline::vault
