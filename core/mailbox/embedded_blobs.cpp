// Blobs of the embedded store.

#include "core/mailbox/embedded_inside.h"

namespace ebbline::mailbox {

namespace {

constexpr const char* unknown = "blob: unknown";

std::int64_t number(std::uint64_t value) { return static_cast<std::int64_t>(value); }

}  // namespace

Result<BlobStanding> EmbeddedStore::standingOf(const envelope::MailboxId& mailbox, const BlobId& blob)
{
    auto row = m_database.prepare("SELECT chunks, size, done FROM blob WHERE mailbox = ?1 AND id = ?2");
    if (!row)
        return fail(row.error());
    const Result<bool> found = row->bind(mailbox.view()).bind(blob.view()).step();
    if (!found)
        return fail(found.error());
    if (!*found)
        return fail(Reason::notFound, unknown);
    BlobStanding standing{{static_cast<std::uint32_t>(row->integer(0)), static_cast<std::uint64_t>(row->integer(1))},
                          row->integer(2) != 0, {}};
    if (standing.complete)
        return standing;
    auto chunks = m_database.prepare("SELECT number FROM blob_chunk WHERE mailbox = ?1 AND blob = ?2 ORDER BY number");
    if (!chunks)
        return fail(chunks.error());
    chunks->bind(mailbox.view()).bind(blob.view());
    std::uint32_t next = 0;
    for (;;) {
        const Result<bool> more = chunks->step();
        if (!more)
            return fail(more.error());
        const std::uint32_t there = *more ? static_cast<std::uint32_t>(chunks->integer(0)) : standing.shape.chunks;
        for (; next < there; ++next)
            standing.missing.push_back(next);
        next = there + 1;
        if (!*more)
            return standing;
    }
}

Result<BlobStanding> EmbeddedStore::beginBlob(const Device& sender, const envelope::MailboxId& mailbox, const BlobId& blob,
                                              const BlobShape& shape, clock::Instant at, const Quota& quota)
{
    const std::scoped_lock lock(m_mutex);
    Result<BlobStanding> standing = fail(Reason::notFound, unknown);
    const Done done = m_database.transaction([&]() -> Done {
        if (const Done allowed = mayUse(mailbox, sender); !allowed)
            return allowed;
        standing = standingOf(mailbox, blob);
        if (!standing && standing.error().reason != Reason::notFound)
            return fail(standing.error());
        if (standing) {
            if (standing->shape != shape)
                return fail(Reason::alreadyExists, "blob: another one has this name");
            return run("UPDATE blob SET touched = max(touched, ?1) WHERE mailbox = ?2 AND id = ?3", [&](store::Statement& s) {
                s.bind(millis(at)).bind(mailbox.view()).bind(blob.view());
            });
        }
        auto room = m_database.prepare("UPDATE mailbox SET blob_bytes = blob_bytes + ?1, blobs = blobs + 1"
                                       " WHERE id = ?2 AND blob_bytes + ?1 <= ?3 AND blobs < ?4 RETURNING 1");
        if (!room)
            return fail(room.error());
        room->bind(number(shape.size)).bind(mailbox.view()).bind(number(quota.blobBytes)).bind(number(quota.blobs));
        const Result<bool> fits = room->step();
        if (!fits)
            return fail(fits.error());
        if (!*fits)
            return fail(Reason::storageFull, "mailbox: its quota of blobs is reached");
        if (const Result<bool> ended = room->step(); !ended)
            return fail(ended.error());
        if (const Done made = run("INSERT INTO blob (mailbox, id, size, chunks, touched) VALUES (?1, ?2, ?3, ?4, ?5)",
                                  [&](store::Statement& s) {
                                      s.bind(mailbox.view()).bind(blob.view()).bind(number(shape.size));
                                      s.bind(std::int64_t{shape.chunks}).bind(millis(at));
                                  });
            !made)
            return made;
        standing = standingOf(mailbox, blob);
        return standing ? Done{} : Done(fail(standing.error()));
    });
    return done ? standing : fail(done.error());
}

Done EmbeddedStore::putChunk(const Device& sender, const envelope::MailboxId& mailbox, const BlobId& blob,
                             std::uint32_t place, bytes::View body, clock::Instant at)
{
    const std::scoped_lock lock(m_mutex);
    return m_database.transaction([&]() -> Done {
        if (const Done allowed = mayUse(mailbox, sender); !allowed)
            return allowed;
        auto known = m_database.prepare("SELECT body FROM blob_chunk WHERE mailbox = ?1 AND blob = ?2 AND number = ?3");
        if (!known)
            return fail(known.error());
        const Result<bool> row = known->bind(mailbox.view()).bind(blob.view()).bind(std::int64_t{place}).step();
        if (!row)
            return fail(row.error());
        if (*row) {
            const bytes::Bytes there = known->blob(0);
            return std::ranges::equal(there, body) ? Done{} : Done(fail(Reason::alreadyExists, "blob: another chunk stands there"));
        }
        // What was announced is not exceeded; a finished blob takes nothing more.
        auto room = m_database.prepare(
            "UPDATE blob SET touched = max(touched, ?1) WHERE mailbox = ?2 AND id = ?3 AND done = 0 AND chunks > ?4 AND size >= ?5 +"
            " (SELECT coalesce(sum(length(body)), 0) FROM blob_chunk WHERE mailbox = ?2 AND blob = ?3) RETURNING 1");
        if (!room)
            return fail(room.error());
        room->bind(millis(at)).bind(mailbox.view()).bind(blob.view()).bind(std::int64_t{place}).bind(number(body.size()));
        const Result<bool> fits = room->step();
        if (!fits)
            return fail(fits.error());
        if (!*fits)
            return fail(Reason::notFound, unknown);
        if (const Result<bool> ended = room->step(); !ended)
            return fail(ended.error());
        return run("INSERT INTO blob_chunk (mailbox, blob, number, body) VALUES (?1, ?2, ?3, ?4)", [&](store::Statement& s) {
            s.bind(mailbox.view()).bind(blob.view()).bind(std::int64_t{place}).bind(body);
        });
    });
}

Done EmbeddedStore::finishBlob(const Device& sender, const envelope::MailboxId& mailbox, const BlobId& blob, clock::Instant at)
{
    const std::scoped_lock lock(m_mutex);
    return m_database.transaction([&]() -> Done {
        if (const Done allowed = mayUse(mailbox, sender); !allowed)
            return allowed;
        const auto standing = standingOf(mailbox, blob);
        if (!standing)
            return fail(standing.error());
        if (!standing->missing.empty())
            return fail(Reason::alreadyExists, "blob: chunks are missing");
        return run("UPDATE blob SET done = 1, touched = max(touched, ?1) WHERE mailbox = ?2 AND id = ?3", [&](store::Statement& s) {
            s.bind(millis(at)).bind(mailbox.view()).bind(blob.view());
        });
    });
}

Result<bytes::Bytes> EmbeddedStore::chunk(const Device& reader, const envelope::MailboxId& mailbox, const BlobId& blob,
                                          std::uint32_t place)
{
    const std::scoped_lock lock(m_mutex);
    if (const Done allowed = mayUse(mailbox, reader); !allowed)
        return fail(allowed.error());
    auto row = m_database.prepare("SELECT c.body FROM blob_chunk c JOIN blob b ON b.mailbox = c.mailbox AND b.id = c.blob"
                                  " WHERE c.mailbox = ?1 AND c.blob = ?2 AND c.number = ?3 AND b.done = 1");
    if (!row)
        return fail(row.error());
    const Result<bool> found = row->bind(mailbox.view()).bind(blob.view()).bind(std::int64_t{place}).step();
    if (!found)
        return fail(found.error());
    return *found ? Result<bytes::Bytes>(row->blob(0)) : fail(Reason::notFound, unknown);
}

Result<std::vector<BlobId>> EmbeddedStore::finishedBlobs(const Device& reader, const envelope::MailboxId& mailbox)
{
    const std::scoped_lock lock(m_mutex);
    if (const Done allowed = mayUse(mailbox, reader); !allowed)
        return fail(allowed.error());
    auto rows = m_database.prepare("SELECT id FROM blob WHERE mailbox = ?1 AND done = 1 ORDER BY id");
    if (!rows)
        return fail(rows.error());
    rows->bind(mailbox.view());
    std::vector<BlobId> found;
    for (;;) {
        const Result<bool> row = rows->step();
        if (!row)
            return fail(row.error());
        if (!*row)
            return found;
        found.push_back(BlobId{arrayOf<16>(rows->blob(0))});
    }
}

Done EmbeddedStore::acknowledgeBlob(const Device& reader, const envelope::MailboxId& mailbox, const BlobId& blob, clock::Instant at)
{
    const std::scoped_lock lock(m_mutex);
    if (const Done allowed = mayUse(mailbox, reader); !allowed)
        return allowed;
    return run("UPDATE blob SET acknowledged = ?1 WHERE mailbox = ?2 AND id = ?3 AND done = 1 AND acknowledged IS NULL",
               [&](store::Statement& s) { s.bind(millis(at)).bind(mailbox.view()).bind(blob.view()); });
}

Done EmbeddedStore::dropWhere(const std::string& which, const std::function<void(store::Statement&)>& bind)
{
    for (const std::string& sql :
         {"DELETE FROM blob_chunk WHERE EXISTS (SELECT 1 FROM blob WHERE blob.mailbox = blob_chunk.mailbox AND blob.id ="
          " blob_chunk.blob AND " + which + ")",
          "UPDATE mailbox SET blob_bytes = blob_bytes - gone.size, blobs = blobs - gone.count FROM (SELECT mailbox, sum(size) AS size,"
          " count(*) AS count FROM blob WHERE " + which + " GROUP BY mailbox) AS gone WHERE mailbox.id = gone.mailbox",
          "DELETE FROM blob WHERE " + which})
        if (const Done dropped = run(sql, bind); !dropped)
            return dropped;
    return {};
}

Done EmbeddedStore::dropBlob(const Device& device, const envelope::MailboxId& mailbox, const BlobId& blob)
{
    const std::scoped_lock lock(m_mutex);
    return m_database.transaction([&]() -> Done {
        if (const Done allowed = mayUse(mailbox, device); !allowed)
            return allowed;
        return dropWhere("blob.mailbox = ?1 AND blob.id = ?2",
                         [&](store::Statement& s) { s.bind(mailbox.view()).bind(blob.view()); });
    });
}

Done EmbeddedStore::dropBlobs(clock::Instant acknowledgedBefore, clock::Instant touchedBefore)
{
    const std::scoped_lock lock(m_mutex);
    return m_database.transaction([&]() -> Done {
        return dropWhere("(blob.acknowledged < ?1 OR blob.touched < ?2)",
                         [&](store::Statement& s) { s.bind(millis(acknowledgedBefore)).bind(millis(touchedBefore)); });
    });
}

}  // namespace ebbline::mailbox
