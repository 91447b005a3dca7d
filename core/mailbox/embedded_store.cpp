#include "core/mailbox/embedded_store.h"

#include "core/mailbox/embedded_tables.h"

#include <map>
#include <mutex>

namespace ebbline::mailbox {

namespace {

std::int64_t millis(clock::Instant instant) { return instant.time_since_epoch().count(); }
std::int64_t number(std::uint64_t sequence) { return static_cast<std::int64_t>(sequence); }

template <std::size_t N>
bytes::Array<N> arrayOf(const bytes::Bytes& blob)
{
    bytes::Array<N> out{};
    std::copy_n(blob.begin(), std::min(blob.size(), N), out.begin());
    return out;
}

class EmbeddedStore final : public MailStore {
public:
    explicit EmbeddedStore(store::Database database) : m_database(std::move(database)) {}

    Result<std::int64_t> addClinic(const crypto::SigningPublicKey& root, const std::string& hint) override
    {
        const std::scoped_lock lock(m_mutex);
        if (const auto known = find("SELECT id FROM clinic WHERE root = ?1", root.value))
            return fail(Reason::alreadyExists, "clinic: this root is known");
        if (const Done done = run("INSERT INTO clinic (root, hint) VALUES (?1, ?2)",
                                  [&](store::Statement& s) { s.bind(bytes::View(root.value)).bind(std::string_view(hint)); });
            !done)
            return fail(done.error());
        return find("SELECT id FROM clinic WHERE root = ?1", root.value);
    }

    Result<std::int64_t> clinicOf(const crypto::SigningPublicKey& root) override
    {
        const std::scoped_lock lock(m_mutex);
        return find("SELECT id FROM clinic WHERE root = ?1", root.value);
    }

    Done putDevice(const Device& device) override
    {
        const std::scoped_lock lock(m_mutex);
        return insertDevice(device);
    }

    Result<Device> device(const envelope::DeviceId& id) override
    {
        const std::scoped_lock lock(m_mutex);
        auto s = m_database.prepare("SELECT clinic, key, role, revoked FROM device WHERE id = ?1");
        if (!s)
            return fail(s.error());
        const Result<bool> row = s->bind(id.view()).step();
        if (!row)
            return fail(row.error());
        if (!*row)
            return fail(Reason::notFound, "device: unknown");
        Device device;
        device.id = id;
        device.clinic = s->integer(0);
        device.key.value = arrayOf<32>(s->blob(1));
        device.role = static_cast<Role>(s->integer(2));
        device.revoked = s->integer(3) != 0;
        return device;
    }

    Done revokeDevice(const envelope::DeviceId& id) override
    {
        const std::scoped_lock lock(m_mutex);
        if (!find("SELECT clinic FROM device WHERE id = ?1", id.value))
            return fail(Reason::notFound, "device: unknown");
        return run("UPDATE device SET revoked = 1 WHERE id = ?1", [&](store::Statement& s) { s.bind(id.view()); });
    }

    Done putOffer(const StoredOffer& offer) override
    {
        const std::scoped_lock lock(m_mutex);
        return run("INSERT INTO offer (id, clinic, proof, locator, bundle, tag, expires) VALUES (?1,?2,?3,?4,?5,?6,?7)",
                   [&](store::Statement& s) {
                       s.bind(bytes::View(offer.id)).bind(offer.clinic).bind(bytes::View(offer.proof));
                       s.bind(bytes::View(offer.locator)).bind(bytes::View(offer.bundle));
                       s.bind(bytes::View(offer.bundleTag)).bind(millis(offer.expires));
                   });
    }

    Result<StoredOffer> offer(const OfferId& id) override
    {
        const std::scoped_lock lock(m_mutex);
        return readOffer("WHERE id = ?1", id);
    }

    Result<StoredOffer> offerByLocator(const bytes::Array<4>& locator) override
    {
        const std::scoped_lock lock(m_mutex);
        return readOffer("WHERE locator = ?1 ORDER BY expires DESC LIMIT 1", locator);
    }

    Done takeOffer(const OfferId& id, bytes::View request) override
    {
        const std::scoped_lock lock(m_mutex);
        bool other = false;
        const Done done = m_database.transaction([&]() -> Done {
            const Result<StoredOffer> known = readOffer("WHERE id = ?1", id);
            if (!known)
                return fail(known.error());
            if (known->request.empty())
                return run("UPDATE offer SET request = ?1 WHERE id = ?2",
                           [&](store::Statement& s) { s.bind(request).bind(bytes::View(id)); });
            other = !std::equal(request.begin(), request.end(), known->request.begin(), known->request.end());
            if (!other)
                return {};
            return run("UPDATE offer SET twice = 1 WHERE id = ?1", [&](store::Statement& s) { s.bind(bytes::View(id)); });
        });
        if (!done)
            return done;
        return other ? Done(fail(Reason::alreadyExists, "offer: it was used before")) : Done{};
    }

    Done answerOffer(const OfferId& id, bytes::View nonce) override
    {
        const std::scoped_lock lock(m_mutex);
        return run("UPDATE offer SET nonce = ?1 WHERE id = ?2 AND nonce = x''",
                   [&](store::Statement& s) { s.bind(nonce).bind(bytes::View(id)); });
    }

    Done linkOffer(const OfferId& id, bytes::View link, const envelope::MailboxId& mailbox, const Device& phone) override
    {
        const std::scoped_lock lock(m_mutex);
        return m_database.transaction([&]() -> Done {
            if (const Done admitted = insertDevice(phone); !admitted)
                return admitted;
            if (const Done made = run("INSERT OR IGNORE INTO mailbox (id, clinic, phone) VALUES (?1, ?2, ?3)",
                                      [&](store::Statement& s) {
                                          s.bind(mailbox.view()).bind(phone.clinic).bind(phone.id.view());
                                      });
                !made)
                return made;
            return run("UPDATE offer SET link = ?1 WHERE id = ?2",
                       [&](store::Statement& s) { s.bind(link).bind(bytes::View(id)); });
        });
    }

    Done dropOffersBefore(clock::Instant instant) override
    {
        const std::scoped_lock lock(m_mutex);
        return run("DELETE FROM offer WHERE expires < ?1", [&](store::Statement& s) { s.bind(millis(instant)); });
    }

    Done mayUse(const envelope::MailboxId& mailbox, const Device& device) override
    {
        const std::scoped_lock lock(m_mutex);
        auto s = m_database.prepare("SELECT clinic, phone FROM mailbox WHERE id = ?1");
        if (!s)
            return fail(s.error());
        const Result<bool> row = s->bind(mailbox.view()).step();
        if (!row)
            return fail(row.error());
        const bool allowed = *row && s->integer(0) == device.clinic
                             && (device.role == Role::desk || arrayOf<16>(s->blob(1)) == device.id.value);
        return allowed ? Done{} : Done(fail(Reason::notFound, "mailbox: unknown"));
    }

    Done putEnvelope(const envelope::MailboxId& mailbox, const StoredEnvelope& envelope, clock::Instant received,
                     const Quota& quota) override
    {
        const std::scoped_lock lock(m_mutex);
        return m_database.transaction([&]() -> Done {
            auto known = m_database.prepare("SELECT body FROM envelope WHERE mailbox = ?1 AND device = ?2 AND sequence = ?3");
            if (!known)
                return fail(known.error());
            const Result<bool> row =
                known->bind(mailbox.view()).bind(envelope.device.view()).bind(number(envelope.sequence)).step();
            if (!row)
                return fail(row.error());
            if (*row)
                return known->blob(0) == envelope.body
                           ? Done{}
                           : Done(fail(Reason::alreadyExists, "envelope: another one stands there"));
            auto room = m_database.prepare("UPDATE mailbox SET bytes = bytes + ?1, envelopes = envelopes + 1"
                                           " WHERE id = ?2 AND bytes + ?1 <= ?3 AND envelopes < ?4 RETURNING 1");
            if (!room)
                return fail(room.error());
            room->bind(static_cast<std::int64_t>(envelope.body.size()))
                .bind(mailbox.view())
                .bind(static_cast<std::int64_t>(quota.bytes))
                .bind(static_cast<std::int64_t>(quota.envelopes));
            const Result<bool> fits = room->step();
            if (!fits)
                return fail(fits.error());
            if (!*fits)
                return fail(Reason::storageFull, "mailbox: its quota is reached");
            (void)room->step();
            return run("INSERT INTO envelope (mailbox, device, sequence, body, received) VALUES (?1, ?2, ?3, ?4, ?5)",
                       [&](store::Statement& s) {
                           s.bind(mailbox.view()).bind(envelope.device.view()).bind(number(envelope.sequence));
                           s.bind(bytes::View(envelope.body)).bind(millis(received));
                       });
        });
    }

    Result<std::vector<StoredEnvelope>> envelopesAfter(const envelope::MailboxId& mailbox,
                                                       const envelope::DeviceId& reader,
                                                       const std::vector<Position>& positions,
                                                       std::size_t atMostBytes) override
    {
        const std::scoped_lock lock(m_mutex);
        std::map<envelope::DeviceId, std::uint64_t> held;
        for (const Position& position : positions)
            held[position.device] = position.sequence;
        auto devices = m_database.prepare("SELECT DISTINCT device FROM envelope WHERE mailbox = ?1 AND device <> ?2 ORDER BY device");
        if (!devices)
            return fail(devices.error());
        devices->bind(mailbox.view()).bind(reader.view());
        std::vector<StoredEnvelope> found;
        std::size_t size = 0;
        for (;;) {
            const Result<bool> row = devices->step();
            if (!row)
                return fail(row.error());
            if (!*row || size >= atMostBytes)
                return found;
            const envelope::DeviceId device{arrayOf<16>(devices->blob(0))};
            auto rows = m_database.prepare("SELECT sequence, body FROM envelope WHERE mailbox = ?1 AND device = ?2"
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

    Done acknowledge(const envelope::MailboxId& mailbox, const envelope::DeviceId& reader, const Position& position,
                     clock::Instant at) override
    {
        const std::scoped_lock lock(m_mutex);
        return run("INSERT INTO ack (mailbox, reader, device, sequence, at) VALUES (?1, ?2, ?3, ?4, ?5)"
                   " ON CONFLICT (mailbox, reader, device) DO UPDATE SET sequence = excluded.sequence, at = excluded.at"
                   " WHERE excluded.sequence > ack.sequence",
                   [&](store::Statement& s) {
                       s.bind(mailbox.view()).bind(reader.view()).bind(position.device.view());
                       s.bind(number(position.sequence)).bind(millis(at));
                   });
    }

    Result<std::vector<envelope::MailboxId>> withNews(std::int64_t clinic, const envelope::DeviceId& reader) override
    {
        const std::scoped_lock lock(m_mutex);
        auto rows = m_database.prepare(
            "SELECT DISTINCT e.mailbox FROM mailbox m JOIN envelope e ON e.mailbox = m.id"
            " LEFT JOIN ack a ON a.mailbox = e.mailbox AND a.reader = ?1 AND a.device = e.device"
            " WHERE m.clinic = ?2 AND e.device <> ?1 AND e.sequence > coalesce(a.sequence, 0) ORDER BY e.mailbox");
        if (!rows)
            return fail(rows.error());
        rows->bind(reader.view()).bind(clinic);
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

    Done dropAcknowledged(clock::Instant acknowledgedBefore) override
    {
        const std::scoped_lock lock(m_mutex);
        return m_database.transaction([&]() -> Done {
            if (const Done dropped = run("DELETE FROM envelope WHERE EXISTS (SELECT 1 FROM ack a WHERE a.mailbox ="
                                         " envelope.mailbox AND a.device = envelope.device AND a.sequence >="
                                         " envelope.sequence AND a.at < ?1)",
                                         [&](store::Statement& s) { s.bind(millis(acknowledgedBefore)); });
                !dropped)
                return dropped;
            return m_database.run("UPDATE mailbox SET envelopes = (SELECT count(*) FROM envelope e WHERE e.mailbox = id),"
                                  " bytes = (SELECT coalesce(sum(length(body)), 0) FROM envelope e WHERE e.mailbox = id)");
        });
    }

    Result<Usage> usage() override
    {
        const std::scoped_lock lock(m_mutex);
        auto s = m_database.prepare("SELECT (SELECT count(*) FROM clinic), (SELECT count(*) FROM device),"
                                    " (SELECT count(*) FROM mailbox), (SELECT count(*) FROM envelope),"
                                    " (SELECT coalesce(sum(length(body)), 0) FROM envelope)");
        if (!s)
            return fail(s.error());
        const Result<bool> row = s->step();
        if (!row)
            return fail(row.error());
        return Usage{s->integer(0), s->integer(1), s->integer(2), s->integer(3), s->integer(4)};
    }

private:
    Done run(std::string_view sql, const std::function<void(store::Statement&)>& bind)
    {
        auto statement = m_database.prepare(sql);
        if (!statement)
            return fail(statement.error());
        bind(*statement);
        return statement->run();
    }

    /// The first column of the row with this key.
    Result<std::int64_t> find(std::string_view sql, bytes::View key)
    {
        auto statement = m_database.prepare(sql);
        if (!statement)
            return fail(statement.error());
        const Result<bool> row = statement->bind(key).step();
        if (!row)
            return fail(row.error());
        if (!*row)
            return fail(Reason::notFound, "not there");
        return statement->integer(0);
    }

    Done insertDevice(const Device& device)
    {
        return run("INSERT OR IGNORE INTO device (id, clinic, key, role) VALUES (?1, ?2, ?3, ?4)", [&](store::Statement& s) {
            s.bind(device.id.view()).bind(device.clinic).bind(bytes::View(device.key.value));
            s.bind(static_cast<std::int64_t>(device.role));
        });
    }

    Result<StoredOffer> readOffer(const std::string& where, bytes::View key)
    {
        auto s = m_database.prepare("SELECT id, clinic, proof, locator, bundle, tag, expires, request, twice, nonce, link"
                                    " FROM offer " + where);
        if (!s)
            return fail(s.error());
        const Result<bool> row = s->bind(key).step();
        if (!row)
            return fail(row.error());
        if (!*row)
            return fail(Reason::notFound, "offer: unknown");
        StoredOffer offer;
        offer.id = arrayOf<8>(s->blob(0));
        offer.clinic = s->integer(1);
        offer.proof = arrayOf<32>(s->blob(2));
        offer.locator = arrayOf<4>(s->blob(3));
        offer.bundle = s->blob(4);
        offer.bundleTag = arrayOf<32>(s->blob(5));
        offer.expires = clock::Instant{std::chrono::milliseconds{s->integer(6)}};
        offer.request = s->blob(7);
        offer.usedTwice = s->integer(8) != 0;
        offer.nonce = s->blob(9);
        offer.link = s->blob(10);
        return offer;
    }

    std::mutex m_mutex;
    store::Database m_database;
};

}  // namespace

Result<std::unique_ptr<MailStore>> openEmbeddedStore(const std::filesystem::path& folder,
                                                     const std::filesystem::path& keyFile)
{
    std::error_code problem;
    std::filesystem::create_directories(folder, problem);
    if (problem)
        return fail(Reason::storageFailed, "hub: the folder cannot be made");
    const Result<crypto::Secret> key = keyFrom(keyFile.empty() ? folder / "hub.key" : keyFile);
    if (!key)
        return fail(key.error());
    auto database = store::Database::open(folder / "hub.db", *key, hubMigrations);
    if (!database)
        return fail(database.error());
    return std::make_unique<EmbeddedStore>(std::move(*database));
}

}  // namespace ebbline::mailbox
