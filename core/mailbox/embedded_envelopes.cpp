// What a mailbox of the embedded store holds.

#include "core/mailbox/embedded_inside.h"

#include <map>

namespace ebbline::mailbox {

namespace {

std::int64_t number(std::uint64_t sequence) { return static_cast<std::int64_t>(sequence); }

}  // namespace

Done EmbeddedStore::mayUse(store::Database& database, const envelope::MailboxId& mailbox, const Device& device)
{
    auto s = database.prepare("SELECT clinic, phone FROM mailbox WHERE id = ?1");
    if (!s)
        return fail(s.error());
    const Result<bool> row = s->bind(mailbox.view()).step();
    if (!row)
        return fail(row.error());
    const bool allowed = *row && s->integer(0) == device.clinic
                         && (device.role == Role::desk || arrayOf<16>(s->blob(1)) == device.id.value);
    return allowed ? Done{} : Done(fail(Reason::notFound, "mailbox: unknown"));
}

Done EmbeddedStore::putEnvelope(const Device& sender, const envelope::MailboxId& mailbox, std::uint64_t sequence,
                                bytes::View body, clock::Instant received, const Quota& quota)
{
    Put put{sender, mailbox, sequence, body, received, quota};
    m_puts.run(put, [this](const std::vector<Put*>& puts) {
        if (const Done stored = putAll(puts); !stored)
            for (Put* each : puts)
                each->outcome = stored;
    });
    return put.outcome;
}

Done EmbeddedStore::putAll(const std::vector<Put*>& puts)
{
    const std::scoped_lock lock(m_mutex);
    return m_database.transaction([&]() -> Done {
        for (Put* put : puts) {
            Result<Done> outcome = putOne(*put);
            if (!outcome)
                return fail(outcome.error());
            put->outcome = std::move(*outcome);
        }
        return {};
    });
}

Result<Done> EmbeddedStore::putOne(const Put& put)
{
    if (const Done allowed = mayUse(put.mailbox, put.sender); !allowed)
        return allowed.error().reason == Reason::notFound ? Result<Done>(allowed) : fail(allowed.error());
    auto known = m_database.prepare("SELECT body FROM envelope WHERE mailbox = ?1 AND device = ?2 AND sequence = ?3");
    if (!known)
        return fail(known.error());
    const Result<bool> row = known->bind(put.mailbox.view()).bind(put.sender.id.view()).bind(number(put.sequence)).step();
    if (!row)
        return fail(row.error());
    if (*row) {
        const bytes::Bytes there = known->blob(0);
        return std::equal(there.begin(), there.end(), put.body.begin(), put.body.end())
                   ? Done{}
                   : Done(fail(Reason::alreadyExists, "envelope: another one stands there"));
    }
    auto room = m_database.prepare("UPDATE mailbox SET bytes = bytes + ?1, envelopes = envelopes + 1"
                                   " WHERE id = ?2 AND bytes + ?1 <= ?3 AND envelopes < ?4 RETURNING 1");
    if (!room)
        return fail(room.error());
    room->bind(static_cast<std::int64_t>(put.body.size()))
        .bind(put.mailbox.view())
        .bind(static_cast<std::int64_t>(put.quota.bytes))
        .bind(static_cast<std::int64_t>(put.quota.envelopes));
    const Result<bool> fits = room->step();
    if (!fits)
        return fail(fits.error());
    if (!*fits)
        return Done(fail(Reason::storageFull, "mailbox: its quota is reached"));
    if (const Result<bool> ended = room->step(); !ended)
        return fail(ended.error());
    const Done stored = run("INSERT INTO envelope (mailbox, device, sequence, body, received) VALUES (?1, ?2, ?3, ?4, ?5)",
                            [&](store::Statement& s) {
                                s.bind(put.mailbox.view()).bind(put.sender.id.view()).bind(number(put.sequence));
                                s.bind(put.body).bind(millis(put.received));
                            });
    return stored ? Result<Done>(Done{}) : fail(stored.error());
}

Result<std::vector<StoredEnvelope>> EmbeddedStore::envelopesAfter(const Device& reader, const envelope::MailboxId& mailbox,
                                                                  const std::vector<Position>& positions,
                                                                  std::size_t atMostBytes)
{
    const std::scoped_lock lock(m_readingMutex);
    if (const Done allowed = mayUse(m_reading, mailbox, reader); !allowed)
        return fail(allowed.error());
    std::map<envelope::DeviceId, std::uint64_t> held;
    for (const Position& position : positions)
        held[position.device] = std::max(held[position.device], position.sequence);
    auto devices = m_reading.prepare("SELECT DISTINCT device FROM envelope WHERE mailbox = ?1 AND device <> ?2 ORDER BY device");
    if (!devices)
        return fail(devices.error());
    devices->bind(mailbox.view()).bind(reader.id.view());
    std::vector<StoredEnvelope> found;
    std::size_t size = 0;
    for (;;) {
        const Result<bool> row = devices->step();
        if (!row)
            return fail(row.error());
        if (!*row || size >= atMostBytes)
            return found;
        const envelope::DeviceId device{arrayOf<16>(devices->blob(0))};
        auto rows = m_reading.prepare("SELECT sequence, body FROM envelope WHERE mailbox = ?1 AND device = ?2"
                                       " AND sequence > ?3 ORDER BY sequence");
        if (!rows)
            return fail(rows.error());
        rows->bind(mailbox.view()).bind(device.view()).bind(number(held.contains(device) ? held.at(device) : 0));
        while (size < atMostBytes) {
            const Result<bool> next = rows->step();
            if (!next)
                return fail(next.error());
            if (!*next)
                break;
            found.push_back({device, static_cast<std::uint64_t>(rows->integer(0)), rows->blob(1)});
            size += found.back().body.size();
        }
    }
}

Done EmbeddedStore::acknowledge(const Device& reader, const envelope::MailboxId& mailbox, const Position& position,
                                clock::Instant at)
{
    const std::scoped_lock lock(m_mutex);
    if (const Done allowed = mayUse(mailbox, reader); !allowed)
        return allowed;
    return run("INSERT INTO ack (mailbox, reader, device, sequence, at) VALUES (?1, ?2, ?3, ?4, ?5)"
               " ON CONFLICT (mailbox, reader, device) DO UPDATE SET sequence = excluded.sequence, at = excluded.at"
               " WHERE excluded.sequence > ack.sequence",
               [&](store::Statement& s) {
                   s.bind(mailbox.view()).bind(reader.id.view()).bind(position.device.view());
                   s.bind(number(position.sequence)).bind(millis(at));
               });
}

Result<std::vector<envelope::MailboxId>> EmbeddedStore::withNews(const Device& reader)
{
    const std::scoped_lock lock(m_readingMutex);
    auto rows = m_reading.prepare(
        "SELECT DISTINCT e.mailbox FROM mailbox m JOIN envelope e ON e.mailbox = m.id"
        " LEFT JOIN ack a ON a.mailbox = e.mailbox AND a.reader = ?1 AND a.device = e.device"
        " WHERE m.clinic = ?2 AND e.device <> ?1 AND (e.device = m.phone OR m.phone = ?1)"
        " AND e.sequence > coalesce(a.sequence, 0) ORDER BY e.mailbox");
    if (!rows)
        return fail(rows.error());
    rows->bind(reader.id.view()).bind(reader.clinic);
    std::vector<envelope::MailboxId> found;
    for (;;) {
        const Result<bool> row = rows->step();
        if (!row)
            return fail(row.error());
        if (!*row)
            return found;
        found.push_back(envelope::MailboxId{arrayOf<16>(rows->blob(0))});
    }
}

Done EmbeddedStore::dropAcknowledged(clock::Instant acknowledgedBefore)
{
    const std::scoped_lock lock(m_mutex);
    return m_database.transaction([&]() -> Done {
        return drop("EXISTS (SELECT 1 FROM ack a WHERE a.mailbox = envelope.mailbox AND a.device = envelope.device"
                    " AND a.reader <> a.device AND a.sequence >= envelope.sequence AND a.at < ?1)",
                    [&](store::Statement& s) { s.bind(millis(acknowledgedBefore)); });
    });
}

Done EmbeddedStore::dropUnread(const envelope::DeviceId& device)
{
    return drop("device = ?1 AND NOT EXISTS (SELECT 1 FROM ack a WHERE a.mailbox = envelope.mailbox AND a.device = envelope.device"
                " AND a.reader <> a.device AND a.sequence >= envelope.sequence)",
                [&](store::Statement& s) { s.bind(device.view()); });
}

Done EmbeddedStore::drop(const std::string& which, const std::function<void(store::Statement&)>& bind)
{
    struct Freed {
        std::int64_t bytes = 0, envelopes = 0;
    };
    std::map<envelope::MailboxId, Freed> freed;
    auto dropped = m_database.prepare("DELETE FROM envelope WHERE " + which + " RETURNING mailbox, length(body)");
    if (!dropped)
        return fail(dropped.error());
    bind(*dropped);
    for (;;) {
        const Result<bool> row = dropped->step();
        if (!row)
            return fail(row.error());
        if (!*row)
            break;
        Freed& each = freed[envelope::MailboxId{arrayOf<16>(dropped->blob(0))}];
        each.bytes += dropped->integer(1);
        each.envelopes += 1;
    }
    for (const auto& [mailbox, each] : freed)
        if (const Done counted = run("UPDATE mailbox SET bytes = bytes - ?1, envelopes = envelopes - ?2 WHERE id = ?3",
                                     [&](store::Statement& s) {
                                         s.bind(each.bytes).bind(each.envelopes).bind(mailbox.view());
                                     });
            !counted)
            return counted;
    return {};
}

Result<Usage> EmbeddedStore::usage(clock::Instant now)
{
    const std::scoped_lock lock(m_mutex);
    auto s = m_database.prepare("SELECT (SELECT count(*) FROM clinic), (SELECT count(*) FROM device),"
                                " count(*), coalesce(sum(envelopes), 0), coalesce(sum(bytes), 0), coalesce(sum(blobs), 0),"
                                " coalesce(sum(blob_bytes), 0) FROM mailbox");
    if (!s)
        return fail(s.error());
    if (const Result<bool> row = s->step(); !row)
        return fail(row.error());
    Usage usage{s->integer(0), s->integer(1), s->integer(2), s->integer(3), s->integer(4), 0, 0, s->integer(5), s->integer(6)};
    auto waiting = m_database.prepare("SELECT count(*), coalesce(sum(e.received < ?2), 0), coalesce(sum(e.received < ?3), 0),"
                                      " coalesce(sum(e.received < ?4), 0) FROM envelope e WHERE e.received < ?1"
                                      " AND NOT EXISTS (SELECT 1 FROM ack a WHERE a.mailbox = e.mailbox AND a.device ="
                                      " e.device AND a.reader <> a.device AND a.sequence >= e.sequence)");
    if (!waiting)
        return fail(waiting.error());
    for (const int days : {30, 60, 85, 90})
        waiting->bind(millis(now - std::chrono::days(days)));
    if (const Result<bool> row = waiting->step(); !row)
        return fail(row.error());
    usage.waitingOver30Days = waiting->integer(0);
    usage.waitingOver60Days = waiting->integer(1);
    usage.waitingOver85Days = waiting->integer(2);
    usage.waitingOver90Days = waiting->integer(3);
    return usage;
}

void EmbeddedStore::whenOthersWrite(Heard)
{
    // The file belongs to one hub alone.
}

}  // namespace ebbline::mailbox
