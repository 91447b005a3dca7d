// What a mailbox holds.

#include "core/bytes/text.h"
#include "platform/postgres/inside.h"

#include <algorithm>

namespace ebbline::postgres {

namespace {

std::int64_t number(std::uint64_t value) { return static_cast<std::int64_t>(value); }
std::int64_t millis(clock::Instant instant) { return instant.time_since_epoch().count(); }

Arguments accessOf(const Device& device, const envelope::MailboxId& mailbox)
{
    Arguments arguments;
    arguments.add(device.clinic).add(device.role == Role::desk).add(mailbox.view()).add(device.id.view());
    return arguments;
}

template <std::size_t N>
bytes::Array<N> arrayOf(const bytes::Bytes& blob)
{
    bytes::Array<N> out{};
    std::copy_n(blob.begin(), std::min(blob.size(), N), out.begin());
    return out;
}

constexpr std::int64_t droppedAtOnce = 500;  ///< mailboxes
constexpr const char* putEnvelopeSql =
    "SELECT put_envelope($1::bigint, $2::boolean, $3::bytea, $4::bytea, $5::bigint, $6::bytea, $7::bigint, $8::bigint, $9::bigint)";

}  // namespace

Done PostgresStore::putEnvelope(const Device& sender, const envelope::MailboxId& mailbox, std::uint64_t sequence,
                                bytes::View body, clock::Instant received, const Quota& quota)
{
    Put put{&mailbox, accessOf(sender, mailbox)};
    put.arguments.add(number(sequence)).add(body).add(millis(received));
    put.arguments.add(number(quota.bytes)).add(number(quota.envelopes));
    m_puts.run(put, [this](const std::vector<Put*>& puts) {
        if (const Done stored = putAll(puts); !stored)
            for (Put* each : puts)
                each->outcome = stored;
    });
    const std::scoped_lock lock(m_listenerMutex);
    if (put.outcome && m_listener)
        m_listener->announce({mailbox, sender.clinic});
    return put.outcome;
}

Done PostgresStore::putAll(std::vector<Put*> puts)
{
    // Every hub locks mailboxes in the same order, so no two batches wait for each other.
    std::ranges::stable_sort(puts, {}, [](const Put* put) { return *put->mailbox; });
    std::vector<Arguments> arguments;
    for (Put* put : puts)
        arguments.push_back(put->arguments);
    const auto answers = m_pool.with([&](Connection& connection) { return connection.askEach(putEnvelopeSql, arguments); });
    if (!answers)
        return fail(answers.error());
    for (std::size_t i = 0; i < puts.size(); ++i)
        puts[i]->outcome = outcomeOf((*answers)[i].integer(0, 0));
    return {};
}

Result<std::vector<StoredEnvelope>> PostgresStore::envelopesAfter(const Device& reader, const envelope::MailboxId& mailbox,
                                                                  const std::vector<Position>& positions,
                                                                  std::size_t atMostBytes)
{
    std::string devices, sequences;
    for (const Position& position : positions) {
        devices += (devices.empty() ? "\"\\\\x" : ",\"\\\\x") + bytes::toHex(position.device.view()) + '"';
        sequences += (sequences.empty() ? "" : ",") + std::to_string(number(position.sequence));
    }
    Arguments arguments = accessOf(reader, mailbox);
    arguments.add(std::string_view("{" + devices + "}")).add(std::string_view("{" + sequences + "}"));
    arguments.add(number(atMostBytes));
    const auto rows = ask("SELECT device, sequence, body FROM envelopes_after($1::bigint, $2::boolean, $3::bytea, $4::bytea,"
                          " $5::bytea[], $6::bigint[], $7::bigint)",
                          arguments);
    if (!rows)
        return fail(rows.error());
    std::vector<StoredEnvelope> found;
    for (int row = 0; row < rows->count(); ++row)
        found.push_back({envelope::DeviceId{arrayOf<16>(rows->blob(row, 0))},
                         static_cast<std::uint64_t>(rows->integer(row, 1)), rows->blob(row, 2)});
    return found;
}

Done PostgresStore::acknowledge(const Device& reader, const envelope::MailboxId& mailbox, const Position& position,
                                clock::Instant at)
{
    Arguments arguments = accessOf(reader, mailbox);
    arguments.add(position.device.view()).add(number(position.sequence)).add(millis(at));
    return call("SELECT acknowledge($1::bigint, $2::boolean, $3::bytea, $4::bytea, $5::bytea, $6::bigint, $7::bigint)", arguments);
}

Result<std::vector<envelope::MailboxId>> PostgresStore::withNews(const Device& reader)
{
    const auto rows = askAs(
        "as_clinic($1::bigint)", Arguments().add(reader.clinic),
        "SELECT DISTINCT e.mailbox FROM mailbox m JOIN envelope e ON e.mailbox = m.id"
        " LEFT JOIN ack a ON a.mailbox = e.mailbox AND a.reader = $2::bytea AND a.device = e.device"
        " WHERE m.clinic = $1::bigint AND e.device <> $2::bytea AND (e.device = m.phone OR m.phone = $2::bytea)"
        " AND e.sequence > coalesce(a.sequence, 0) ORDER BY e.mailbox",
        Arguments().add(reader.clinic).add(reader.id.view()));
    if (!rows)
        return fail(rows.error());
    std::vector<envelope::MailboxId> found;
    for (int row = 0; row < rows->count(); ++row)
        found.push_back(envelope::MailboxId{arrayOf<16>(rows->blob(row, 0))});
    return found;
}

Done PostgresStore::dropAcknowledged(clock::Instant acknowledgedBefore)
{
    const std::int64_t before = millis(acknowledgedBefore);
    for (;;) {
        const auto mailboxes =
            ask("SELECT may_be_dropped($1::bigint, $2::bigint)", Arguments().add(before).add(droppedAtOnce));
        if (!mailboxes)
            return fail(mailboxes.error());
        // A short transaction each: whoever puts into a mailbox waits for this one at most.
        for (int row = 0; row < mailboxes->count(); ++row)
            if (const Done dropped = call("SELECT drop_acknowledged($1::bytea, $2::bigint)",
                                          Arguments().add(bytes::View(mailboxes->blob(row, 0))).add(before));
                !dropped)
                return dropped;
        if (mailboxes->count() < droppedAtOnce)
            return {};
    }
}

Done PostgresStore::ready()
{
    const auto rows = ask("SELECT 1");
    return rows ? Done{} : Done(fail(rows.error()));
}

Result<Usage> PostgresStore::usage(clock::Instant now)
{
    const auto rows = askAs(
        "as_whole()", {},
        "SELECT (SELECT count(*) FROM clinic), (SELECT count(*) FROM device), count(*), coalesce(sum(envelopes), 0)::bigint,"
        " coalesce(sum(bytes), 0)::bigint, coalesce(sum(blobs), 0)::bigint, coalesce(sum(blob_bytes), 0)::bigint FROM mailbox",
        {});
    if (!rows)
        return fail(rows.error());
    Usage usage{rows->integer(0, 0), rows->integer(0, 1), rows->integer(0, 2), rows->integer(0, 3), rows->integer(0, 4), 0, 0,
                rows->integer(0, 5), rows->integer(0, 6)};
    const auto waiting = askAs(
        "as_whole()", {},
        "SELECT count(*), coalesce(sum((e.received < $2::bigint)::int), 0)::bigint, coalesce(sum((e.received < $3::bigint)::int), 0)::bigint,"
        " coalesce(sum((e.received < $4::bigint)::int), 0)::bigint FROM envelope e WHERE e.received < $1::bigint"
        " AND NOT EXISTS (SELECT FROM ack a WHERE a.mailbox = e.mailbox AND a.device = e.device AND a.reader <> a.device"
        " AND a.sequence >= e.sequence)",
        Arguments()
            .add(millis(now - std::chrono::days(30)))
            .add(millis(now - std::chrono::days(60)))
            .add(millis(now - std::chrono::days(85)))
            .add(millis(now - std::chrono::days(90))));
    if (!waiting)
        return fail(waiting.error());
    usage.waitingOver30Days = waiting->integer(0, 0);
    usage.waitingOver60Days = waiting->integer(0, 1);
    usage.waitingOver85Days = waiting->integer(0, 2);
    usage.waitingOver90Days = waiting->integer(0, 3);
    return usage;
}

void PostgresStore::whenOthersWrite(Heard heard)
{
    const std::scoped_lock lock(m_listenerMutex);
    if (!m_listener && !heard)
        return;
    if (!m_listener)
        m_listener = std::make_unique<Listener>(m_settings);
    m_listener->setHeard(std::move(heard));
}

}  // namespace ebbline::postgres
