#include "core/mailbox/embedded_store.h"

#include "core/mailbox/embedded_inside.h"
#include "core/mailbox/embedded_tables.h"

namespace ebbline::mailbox {

Result<std::int64_t> EmbeddedStore::addClinic(const crypto::SigningPublicKey& root, const std::string& hint)
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

Result<std::int64_t> EmbeddedStore::clinicOf(const crypto::SigningPublicKey& root)
{
    const std::scoped_lock lock(m_mutex);
    return find("SELECT id FROM clinic WHERE root = ?1", root.value);
}

Done EmbeddedStore::putDevice(const Device& device)
{
    const std::scoped_lock lock(m_mutex);
    return insertDevice(device);
}

Result<Device> EmbeddedStore::device(const envelope::DeviceId& id)
{
    const std::scoped_lock lock(m_readingMutex);
    auto s = m_reading.prepare("SELECT clinic, key, role, revoked FROM device WHERE id = ?1");
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

Done EmbeddedStore::revokeDevice(const envelope::DeviceId& id)
{
    const std::scoped_lock lock(m_mutex);
    const Result<std::int64_t> role = find("SELECT role FROM device WHERE id = ?1", id.value);
    if (!role)
        return fail(role.error().reason, "device: unknown");
    return m_database.transaction([&]() -> Done {
        const Done revoked = run("UPDATE device SET revoked = 1 WHERE id = ?1", [&](store::Statement& s) { s.bind(id.view()); });
        return revoked && *role == static_cast<std::int64_t>(Role::desk) ? dropUnread(id) : revoked;
    });
}

Done EmbeddedStore::putOffer(const StoredOffer& offer)
{
    const std::scoped_lock lock(m_mutex);
    const auto known = readOffer("WHERE id = ?1", offer.id);
    if (known)
        return known->isSame(offer) ? Done{} : Done(fail(Reason::alreadyExists, "offer: another one has this number"));
    if (known.error().reason != Reason::notFound)
        return fail(known.error());
    return run("INSERT INTO offer (id, clinic, proof, locator, bundle, tag, expires) VALUES (?1,?2,?3,?4,?5,?6,?7)",
               [&](store::Statement& s) {
                   s.bind(bytes::View(offer.id)).bind(offer.clinic).bind(bytes::View(offer.proof));
                   s.bind(bytes::View(offer.locator)).bind(bytes::View(offer.bundle));
                   s.bind(bytes::View(offer.bundleTag)).bind(millis(offer.expires));
               });
}

Result<StoredOffer> EmbeddedStore::offer(const OfferId& id)
{
    const std::scoped_lock lock(m_mutex);
    return readOffer("WHERE id = ?1", id);
}

Result<StoredOffer> EmbeddedStore::offerByLocator(const bytes::Array<4>& locator)
{
    const std::scoped_lock lock(m_mutex);
    return readOffer("WHERE locator = ?1 ORDER BY expires DESC LIMIT 1", locator);
}

Done EmbeddedStore::takeOffer(const OfferId& id, bytes::View request)
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

Done EmbeddedStore::answerOffer(const OfferId& id, bytes::View nonce)
{
    const std::scoped_lock lock(m_mutex);
    return m_database.transaction([&]() -> Done {
        const Result<StoredOffer> known = readOffer("WHERE id = ?1", id);
        if (!known)
            return fail(known.error());
        if (!known->nonce.empty() && !std::ranges::equal(nonce, known->nonce))
            return fail(Reason::alreadyExists, "offer: it was answered before");
        return run("UPDATE offer SET nonce = ?1 WHERE id = ?2",
                   [&](store::Statement& s) { s.bind(nonce).bind(bytes::View(id)); });
    });
}

Done EmbeddedStore::linkOffer(const OfferId& id, bytes::View link, const envelope::MailboxId& mailbox, const Device& phone)
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

Done EmbeddedStore::dropOffersBefore(clock::Instant instant)
{
    const std::scoped_lock lock(m_mutex);
    return run("DELETE FROM offer WHERE expires < ?1", [&](store::Statement& s) { s.bind(millis(instant)); });
}

Done EmbeddedStore::ready()
{
    const std::scoped_lock lock(m_mutex);
    return m_database.run("SELECT 1");
}

Done EmbeddedStore::run(std::string_view sql, const std::function<void(store::Statement&)>& bind)
{
    auto statement = m_database.prepare(sql);
    if (!statement)
        return fail(statement.error());
    bind(*statement);
    return statement->run();
}

/// The first column of the row with this key.
Result<std::int64_t> EmbeddedStore::find(std::string_view sql, bytes::View key)
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

Done EmbeddedStore::insertDevice(const Device& device)
{
    return run("INSERT OR IGNORE INTO device (id, clinic, key, role) VALUES (?1, ?2, ?3, ?4)", [&](store::Statement& s) {
        s.bind(device.id.view()).bind(device.clinic).bind(bytes::View(device.key.value));
        s.bind(static_cast<std::int64_t>(device.role));
    });
}

Result<StoredOffer> EmbeddedStore::readOffer(const std::string& where, bytes::View key)
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

Result<bool> holdsEmbeddedStore(const std::filesystem::path& folder)
{
    std::error_code problem;
    const bool holds = std::filesystem::exists(folder / "hub.db", problem);
    if (problem)
        return fail(Reason::storageFailed, "hub: the folder cannot be looked into; run this as the user that the hub runs as");
    return holds;
}

Result<std::unique_ptr<MailStore>> openEmbeddedStore(const std::filesystem::path& folder,
                                                     const std::filesystem::path& keyFile, IfMissing ifMissing)
{
    const Result<bool> there = holdsEmbeddedStore(folder);
    if (!there)
        return fail(there.error());
    if (!*there && ifMissing == IfMissing::refuse)
        return fail(Reason::notFound, "hub: no store is in this folder, and none was made; name the folder that the hub serves");
    std::error_code problem;
    std::filesystem::create_directories(folder, problem);
    if (problem)
        return fail(Reason::storageFailed, "hub: the folder cannot be made");
    const std::filesystem::path keyPath = keyFile.empty() ? folder / "hub.key" : keyFile;
    if (!std::filesystem::exists(std::filesystem::symlink_status(keyPath, problem)) && *there)
        return fail(Reason::wrongKey, "hub: its store is there, its key file is not");
    const Result<crypto::Secret> key = keyFrom(keyPath);
    if (!key)
        return fail(key.error());
    auto database = store::Database::open(folder / "hub.db", *key, hubMigrations);
    if (!database)
        return fail(database.error());
    auto reading = store::Database::inspect(folder / "hub.db", *key);
    if (!reading)
        return fail(reading.error());
    return std::make_unique<EmbeddedStore>(std::move(*database), std::move(*reading));
}

}  // namespace ebbline::mailbox
