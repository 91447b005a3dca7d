// Keys that are replaced now and then, and what this device remembers of them.

#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "core/vault/inside.h"
#include "core/vault/rows.h"

namespace ebbline::vault {

Result<std::vector<std::pair<std::string, bytes::Bytes>>> Vault::keptUnder(std::string_view prefix) const
{
    std::vector<std::pair<std::string, bytes::Bytes>> found;
    auto rows = m_inside->database.prepare("SELECT name, value FROM kept WHERE name > ?1 AND name < ?1 || '~' ORDER BY name");
    if (rows)
        rows->bind(prefix);
    const Done read = forEachRow(rows, [&](store::Statement& row) -> Done {
        found.emplace_back(row.text(0), row.blob(1));
        return {};
    });
    if (!read)
        return fail(read.error());
    return found;
}

std::string begunName(std::uint32_t number) { return "key-begun/" + std::to_string(number); }
std::string goneName(std::uint32_t number) { return "key-gone/" + std::to_string(number); }

namespace {

std::string sealedToName(const envelope::MailboxId& mailbox) { return "sealed-to/" + bytes::toHex(mailbox.view()); }

bytes::Bytes number64(std::uint64_t value) { return bytes::Writer().u64(value).bytes(); }

}  // namespace

Done Vault::Inside::loadNumberedKeys(std::string_view firstName)
{
    const Error missing{Reason::damaged, "vault: the device's keys are missing"};
    epochs.clear();
    auto first = fact(firstName);
    if (!first && first.error().reason != Reason::notFound)
        return fail(first.error());
    if (first) {
        if (first->size() != 32)
            return std::unexpected(missing);
        epochs.emplace(1, crypto::BoxKey::fromSecret(*first));
        crypto::wipe(*first);
    } else {
        const auto gone = keptOf(goneName(1));
        if (!gone)
            return fail(gone.error());
        if (!*gone)
            return std::unexpected(missing);
    }
    auto rows = database.prepare("SELECT number, secret FROM epoch ORDER BY number");
    const Done read = forEachRow(rows, [&](store::Statement& row) -> Done {
        bytes::Bytes secret = row.blob(1);
        if (secret.size() != 32)
            return std::unexpected(missing);
        epochs.insert_or_assign(static_cast<std::uint32_t>(row.integer(0)), crypto::BoxKey::fromSecret(secret));
        crypto::wipe(secret);
        return {};
    });
    return !read ? read : epochs.empty() ? Done(std::unexpected(missing)) : Done{};
}

Result<std::vector<Vault::KeyAge>> Vault::keyAges()
{
    Inside& inside = *m_inside;
    std::vector<KeyAge> ages;
    for (const auto& [number, key] : inside.epochs) {
        const auto begun = inside.keptOf(begunName(number));
        if (!begun)
            return fail(begun.error());
        if (*begun && (*begun)->size() == 8) {
            ages.push_back({number, instantOf(static_cast<std::int64_t>(bytes::Reader(**begun).u64()))});
            continue;
        }
        ages.push_back({number, inside.clock.now()});
        if (const Done noted = keep(begunName(number), number64(static_cast<std::uint64_t>(millisOf(ages.back().begunAt)))); !noted)
            return fail(noted.error());
    }
    return ages;
}

Done Vault::destroyKey(std::uint32_t number)
{
    Inside& inside = *m_inside;
    if (inside.epochs.empty() || number >= inside.epochs.rbegin()->first)
        return fail(Reason::refused, "key: it is in force");
    const bool first = number == 1;
    const char* const name = inside.owner == Owner::clinic ? "epoch" : "box";
    const Done done = inside.database.transaction([&]() -> Done {
        if (const Done noted = inside.putKept(goneName(number), number64(static_cast<std::uint64_t>(millisOf(inside.clock.now())))); !noted)
            return noted;
        if (const Done forgotten = inside.putKept(begunName(number), {}); !forgotten)
            return forgotten;
        for (const char* sql : {"DELETE FROM epoch WHERE number = ?1", "DELETE FROM fact WHERE name = ?1"}) {
            const bool fact = std::string_view(sql).find("fact") != std::string_view::npos;
            if (fact && !first)
                continue;
            auto gone = inside.database.prepare(sql);
            if (!gone)
                return fail(gone.error());
            if (fact)
                gone->bind(std::string_view(name));
            else
                gone->bind(std::int64_t{number});
            if (const Done removed = gone->run(); !removed)
                return removed;
        }
        return {};
    });
    if (!done)
        return done;
    inside.epochs.erase(number);
    // The pages before stand in the log until it is carried over; one that is in use is carried over later.
    (void)inside.database.run("PRAGMA wal_checkpoint(TRUNCATE)");
    return {};
}

bool Vault::isDestroyed(std::uint32_t number) const
{
    const auto gone = m_inside->keptOf(goneName(number));
    return gone && gone->has_value();
}

bool Vault::hasDestroyed() const
{
    const auto gone = keptUnder("key-gone/");
    return gone && !gone->empty();
}

std::vector<const crypto::BoxKey*> Vault::boxKeys() const
{
    std::vector<const crypto::BoxKey*> keys;
    for (auto key = m_inside->epochs.rbegin(); key != m_inside->epochs.rend(); ++key)
        keys.push_back(&key->second);
    return keys;
}

Done Vault::announceKey(const recovery::CourseId& course, const envelope::MailboxId& mailbox, const clock::Moment& entered, bool fresh)
{
    Inside& inside = *m_inside;
    if (inside.owner != Owner::patient || inside.epochs.empty())
        return fail(Reason::invalidState, "key: a desk announces none");
    const std::uint32_t newest = inside.epochs.rbegin()->first;
    const std::uint32_t number = fresh ? newest + 1 : newest;
    const crypto::BoxKey key = fresh ? crypto::BoxKey::generate() : inside.epochs.rbegin()->second.clone();
    const auto appended = appendWith({records::KeyAnnounced{course, number, key.publicKey().value}}, entered, mailbox, {},
                                     [&] { return fresh ? inside.storeEpoch(number, key) : Done{}; });
    if (!appended)
        return fail(appended.error());
    inside.epochs.insert_or_assign(number, key.clone());
    return {};
}

Result<std::uint32_t> Vault::sealedTo(const envelope::MailboxId& mailbox) const
{
    const auto value = m_inside->keptOf(sealedToName(mailbox));
    if (!value)
        return fail(value.error());
    return *value && (*value)->size() == 8 ? static_cast<std::uint32_t>(bytes::Reader(**value).u64()) : 0;
}

Done Vault::noteSealedTo(const envelope::MailboxId& mailbox, std::uint32_t number)
{
    return keep(sealedToName(mailbox), number64(number));
}

Result<std::optional<std::pair<std::uint64_t, std::uint64_t>>> Vault::sealAgain(const envelope::MailboxId& mailbox, std::uint64_t held)
{
    using Answer = std::optional<std::pair<std::uint64_t, std::uint64_t>>;
    Inside& inside = *m_inside;
    Answer again;
    const Done done = inside.database.transaction([&]() -> Done {
        const Result<Cursor> own = headOf(inside.database, mailbox, inside.device);
        if (!own)
            return fail(own.error());
        const std::uint64_t from = std::max(held, delivered(mailbox).sequence);
        if (from >= own->sequence)
            return {};
        again.emplace(from + 1, own->sequence);
        for (const char* sql : {"UPDATE operation SET carried = 0 WHERE mailbox = ?1 AND carried > ?2",
                                "DELETE FROM outgoing WHERE mailbox = ?1 AND sequence > ?2",
                                "UPDATE link SET roster = 0 WHERE mailbox = ?1 AND ?2 >= 0"}) {
            auto statement = inside.database.prepare(sql);
            if (!statement)
                return fail(statement.error());
            if (const Done ran = statement->bind(mailbox.view()).bind(static_cast<std::int64_t>(from)).run(); !ran)
                return ran;
        }
        return {};
    });
    return done ? Result<Answer>(again) : fail(done.error());
}

Done Vault::releaseQuarantine(const envelope::MailboxId& mailbox, const envelope::DeviceId& sender, std::uint64_t first, std::uint64_t last)
{
    // Sender and sequence stand at the same place of every envelope.
    auto release = m_inside->database.prepare("DELETE FROM quarantine WHERE mailbox = ?1 AND substr(envelope, 25, 16) = ?2"
                                              " AND substr(envelope, 41, 8) BETWEEN ?3 AND ?4");
    if (!release)
        return fail(release.error());
    const bytes::Bytes low = number64(first), high = number64(last);
    return release->bind(mailbox.view()).bind(sender.view()).bind(bytes::View(low)).bind(bytes::View(high)).run();
}

}  // namespace ebbline::vault
