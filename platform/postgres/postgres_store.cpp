#include "platform/postgres/postgres_store.h"

#include "platform/postgres/inside.h"
#include "platform/postgres/migrations.h"

namespace ebbline::postgres {

namespace {

template <std::size_t N>
bytes::Array<N> arrayOf(const bytes::Bytes& blob)
{
    bytes::Array<N> out{};
    std::copy_n(blob.begin(), std::min(blob.size(), N), out.begin());
    return out;
}

std::int64_t millis(clock::Instant instant) { return instant.time_since_epoch().count(); }

}  // namespace

Done outcomeOf(std::int64_t number)
{
    switch (number) {
    case 0: return {};
    case 1: return fail(Reason::notFound, "store: unknown");
    case 2: return fail(Reason::alreadyExists, "store: another one stands there");
    case 3: return fail(Reason::storageFull, "mailbox: its quota is reached");
    default: return fail(Reason::storageFailed, "store: an answer that this program does not know");
    }
}

Result<Rows> PostgresStore::ask(const std::string& sql, const Arguments& arguments)
{
    return m_pool.with([&](Connection& connection) { return connection.ask(sql, arguments); });
}

Done PostgresStore::call(const std::string& sql, const Arguments& arguments)
{
    const auto rows = ask(sql, arguments);
    if (!rows)
        return fail(rows.error());
    return rows->count() == 1 ? outcomeOf(rows->integer(0, 0)) : Done(fail(Reason::storageFailed, "store: no answer"));
}

Result<Rows> PostgresStore::askAs(const std::string& setting, const Arguments& what, const std::string& sql,
                                  const Arguments& arguments)
{
    return m_pool.with([&](Connection& connection) -> Result<Rows> {
        if (const Done begun = connection.run("BEGIN"); !begun)
            return fail(begun.error());
        auto set = connection.ask("SELECT " + setting, what);
        auto rows = set ? connection.ask(sql, arguments) : fail(set.error());
        const Done ended = connection.run(rows ? "COMMIT" : "ROLLBACK");
        if (rows && !ended)
            return fail(ended.error());
        return rows;
    });
}

Result<std::int64_t> PostgresStore::addClinic(const crypto::SigningPublicKey& root, const std::string& hint)
{
    const auto rows = askAs("as_named($1::bytea)", Arguments().add(bytes::View(root.value)),
                            "INSERT INTO clinic (root, hint) VALUES ($1::bytea, $2::text) ON CONFLICT DO NOTHING RETURNING id",
                            Arguments().add(bytes::View(root.value)).add(std::string_view(hint)));
    if (!rows)
        return fail(rows.error());
    if (rows->count() == 0)
        return fail(Reason::alreadyExists, "clinic: this root is known");
    return rows->integer(0, 0);
}

Result<std::int64_t> PostgresStore::clinicOf(const crypto::SigningPublicKey& root)
{
    const auto rows = askAs("as_named($1::bytea)", Arguments().add(bytes::View(root.value)),
                            "SELECT id FROM clinic WHERE root = $1::bytea", Arguments().add(bytes::View(root.value)));
    if (!rows)
        return fail(rows.error());
    if (rows->count() == 0)
        return fail(Reason::notFound, "clinic: unknown");
    return rows->integer(0, 0);
}

Done PostgresStore::putDevice(const Device& device)
{
    return call("SELECT put_device($1::bigint, $2::bytea, $3::bytea, $4::bigint)",
                Arguments()
                    .add(device.clinic)
                    .add(device.id.view())
                    .add(bytes::View(device.key.value))
                    .add(static_cast<std::int64_t>(device.role)));
}

Result<Device> PostgresStore::device(const envelope::DeviceId& id)
{
    // One journey: every signed request comes here first.
    const auto rows = ask("SELECT clinic, key, role, revoked FROM device_of($1::bytea)", Arguments().add(id.view()));
    if (!rows)
        return fail(rows.error());
    if (rows->count() == 0)
        return fail(Reason::notFound, "device: unknown");
    Device device;
    device.id = id;
    device.clinic = rows->integer(0, 0);
    device.key.value = arrayOf<32>(rows->blob(0, 1));
    device.role = static_cast<Role>(rows->integer(0, 2));
    device.revoked = rows->truth(0, 3);
    return device;
}

Done PostgresStore::revokeDevice(const envelope::DeviceId& id)
{
    if (const Done revoked = call("SELECT revoke_device($1::bytea)", Arguments().add(id.view())); !revoked)
        return revoked;
    // It is refused from here on. Mailboxes are locked in the order in which puts lock them.
    const auto dropped = askAs(
        "as_whole()", {},
        "WITH held AS MATERIALIZED (SELECT m.id FROM mailbox m WHERE EXISTS (SELECT FROM device d WHERE d.id = $1::bytea"
        " AND d.role = $2::bigint AND d.clinic = m.clinic) AND EXISTS (SELECT FROM envelope e WHERE e.mailbox = m.id AND"
        " e.device = $1::bytea) ORDER BY m.id FOR UPDATE),"
        " gone AS (DELETE FROM envelope e USING held WHERE e.mailbox = held.id AND e.device = $1::bytea"
        " AND NOT EXISTS (SELECT FROM ack a WHERE a.mailbox = e.mailbox AND a.device = e.device AND a.reader <> a.device"
        " AND a.sequence >= e.sequence) RETURNING e.mailbox, octet_length(e.body) AS size),"
        " freed AS (SELECT mailbox, sum(size) AS size, count(*) AS number FROM gone GROUP BY mailbox)"
        " UPDATE mailbox m SET bytes = bytes - freed.size, envelopes = envelopes - freed.number FROM freed WHERE m.id = freed.mailbox",
        Arguments().add(id.view()).add(static_cast<std::int64_t>(Role::desk)));
    return dropped ? Done{} : Done(fail(dropped.error()));
}

Done PostgresStore::putOffer(const StoredOffer& offer)
{
    const auto rows = askAs("as_clinic($1::bigint)", Arguments().add(offer.clinic),
                            "INSERT INTO offer (id, clinic, proof, locator, bundle, tag, expires)"
                            " VALUES ($1::bytea, $2::bigint, $3::bytea, $4::bytea, $5::bytea, $6::bytea, $7::bigint)",
                            Arguments()
                                .add(bytes::View(offer.id))
                                .add(offer.clinic)
                                .add(bytes::View(offer.proof))
                                .add(bytes::View(offer.locator))
                                .add(bytes::View(offer.bundle))
                                .add(bytes::View(offer.bundleTag))
                                .add(millis(offer.expires)));
    if (rows || rows.error().reason != Reason::alreadyExists)
        return rows ? Done{} : Done(fail(rows.error()));
    // Perhaps its own, whose answer was lost.
    const auto known = this->offer(offer.id);
    return known && known->isSame(offer) ? Done{} : Done(fail(known ? rows.error() : known.error()));
}

Result<StoredOffer> PostgresStore::readOffer(const std::string& where, bytes::View key)
{
    const auto rows = askAs("as_named($1::bytea)", Arguments().add(key),
                            "SELECT id, clinic, proof, locator, bundle, tag, expires, request, twice, nonce, link FROM offer " + where,
                            Arguments().add(key));
    if (!rows)
        return fail(rows.error());
    if (rows->count() == 0)
        return fail(Reason::notFound, "offer: unknown");
    StoredOffer offer;
    offer.id = arrayOf<8>(rows->blob(0, 0));
    offer.clinic = rows->integer(0, 1);
    offer.proof = arrayOf<32>(rows->blob(0, 2));
    offer.locator = arrayOf<4>(rows->blob(0, 3));
    offer.bundle = rows->blob(0, 4);
    offer.bundleTag = arrayOf<32>(rows->blob(0, 5));
    offer.expires = clock::Instant{std::chrono::milliseconds{rows->integer(0, 6)}};
    offer.request = rows->blob(0, 7);
    offer.usedTwice = rows->truth(0, 8);
    offer.nonce = rows->blob(0, 9);
    offer.link = rows->blob(0, 10);
    return offer;
}

Result<StoredOffer> PostgresStore::offer(const OfferId& id)
{
    return readOffer("WHERE id = $1::bytea", id);
}

Result<StoredOffer> PostgresStore::offerByLocator(const bytes::Array<4>& locator)
{
    return readOffer("WHERE locator = $1::bytea ORDER BY expires DESC LIMIT 1", locator);
}

Done PostgresStore::takeOffer(const OfferId& id, bytes::View request)
{
    return call("SELECT take_offer($1::bytea, $2::bytea)", Arguments().add(bytes::View(id)).add(request));
}

Done PostgresStore::answerOffer(const OfferId& id, bytes::View nonce)
{
    return call("SELECT answer_offer($1::bytea, $2::bytea)", Arguments().add(bytes::View(id)).add(nonce));
}

Done PostgresStore::linkOffer(const OfferId& id, bytes::View link, const envelope::MailboxId& mailbox, const Device& phone)
{
    return call("SELECT link_offer($1::bigint, $2::bytea, $3::bytea, $4::bytea, $5::bytea, $6::bytea, $7::bigint)",
                Arguments()
                    .add(phone.clinic)
                    .add(bytes::View(id))
                    .add(link)
                    .add(mailbox.view())
                    .add(phone.id.view())
                    .add(bytes::View(phone.key.value))
                    .add(static_cast<std::int64_t>(phone.role)));
}

Done PostgresStore::dropOffersBefore(clock::Instant instant)
{
    const auto rows = askAs("as_whole()", {}, "DELETE FROM offer WHERE expires < $1::bigint", Arguments().add(millis(instant)));
    return rows ? Done{} : Done(fail(rows.error()));
}

bool isAddress(const std::string& store)
{
    // `host=/run/postgresql dbname=ebbline`: a word before the first sign of equality, where a path has a slash.
    const std::size_t equals = store.find('=');
    const bool isWords = equals != std::string::npos && store.find('/') > equals;
    return isWords || store.starts_with("postgres://") || store.starts_with("postgresql://");
}

Result<std::unique_ptr<MailStore>> openPostgresStore(const Settings& settings)
{
    auto store = std::make_unique<PostgresStore>(settings);
    const Done ready = store->pool().with([&settings](Connection& connection) -> Done {
        if (const Done fit = checkServer(connection); !fit)
            return fit;
        const Result<bool> there = hasTables(connection);
        if (!there)
            return fail(there.error());
        if (!*there && settings.ifMissing == mailbox::IfMissing::refuse)
            return fail(Reason::notFound, "store: this database holds no tables of a hub, and none were made; name the database that the hub serves");
        return migrate(connection);
    });
    if (!ready)
        return fail(ready.error());
    return store;
}

}  // namespace ebbline::postgres
