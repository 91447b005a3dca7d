// Blobs of a store in a database.

#include "platform/postgres/inside.h"

namespace ebbline::postgres {

namespace {

std::int64_t number(std::uint64_t value) { return static_cast<std::int64_t>(value); }
std::int64_t millis(clock::Instant instant) { return instant.time_since_epoch().count(); }

/// Whose blob it is, and who asks: the first five arguments of every function.
Arguments blobOf(const Device& device, const envelope::MailboxId& mailbox, const BlobId& blob)
{
    Arguments arguments;
    arguments.add(device.clinic).add(device.role == Role::desk).add(mailbox.view()).add(device.id.view()).add(blob.view());
    return arguments;
}

constexpr std::int64_t droppedAtOnce = 500;  ///< mailboxes

}  // namespace

Result<BlobStanding> PostgresStore::beginBlob(const Device& sender, const envelope::MailboxId& mailbox, const BlobId& blob,
                                              const BlobShape& shape, clock::Instant at, const Quota& quota)
{
    Arguments arguments = blobOf(sender, mailbox, blob);
    arguments.add(number(shape.size)).add(std::int64_t{shape.chunks}).add(millis(at));
    arguments.add(number(quota.blobBytes)).add(number(quota.blobs));
    const auto rows = ask("SELECT outcome, complete, missing FROM begin_blob($1::bigint, $2::boolean, $3::bytea, $4::bytea, $5::bytea,"
                          " $6::bigint, $7::bigint, $8::bigint, $9::bigint, $10::bigint)",
                          arguments);
    if (!rows)
        return fail(rows.error());
    if (rows->count() == 0)
        return fail(Reason::storageFailed, "store: no answer");
    if (const Done outcome = outcomeOf(rows->integer(0, 0)); !outcome)
        return fail(outcome.error());
    BlobStanding standing{shape, rows->truth(0, 1), {}};
    // One row for each that is missing; one with -1 if none is.
    for (int row = 0; row < rows->count(); ++row)
        if (rows->integer(row, 2) >= 0)
            standing.missing.push_back(static_cast<std::uint32_t>(rows->integer(row, 2)));
    return standing;
}

Done PostgresStore::putChunk(const Device& sender, const envelope::MailboxId& mailbox, const BlobId& blob, std::uint32_t place,
                             bytes::View body, clock::Instant at)
{
    Arguments arguments = blobOf(sender, mailbox, blob);
    arguments.add(std::int64_t{place}).add(body).add(millis(at));
    return call("SELECT put_chunk($1::bigint, $2::boolean, $3::bytea, $4::bytea, $5::bytea, $6::bigint, $7::bytea, $8::bigint)", arguments);
}

Done PostgresStore::finishBlob(const Device& sender, const envelope::MailboxId& mailbox, const BlobId& blob, clock::Instant at)
{
    Arguments arguments = blobOf(sender, mailbox, blob);
    arguments.add(millis(at));
    return call("SELECT finish_blob($1::bigint, $2::boolean, $3::bytea, $4::bytea, $5::bytea, $6::bigint)", arguments);
}

Result<bytes::Bytes> PostgresStore::chunk(const Device& reader, const envelope::MailboxId& mailbox, const BlobId& blob, std::uint32_t place)
{
    Arguments arguments = blobOf(reader, mailbox, blob);
    arguments.add(std::int64_t{place});
    const auto rows = ask("SELECT body FROM chunk_of($1::bigint, $2::boolean, $3::bytea, $4::bytea, $5::bytea, $6::bigint)", arguments);
    if (!rows)
        return fail(rows.error());
    return rows->count() == 1 ? Result<bytes::Bytes>(rows->blob(0, 0)) : fail(Reason::notFound, "blob: unknown");
}

Result<std::vector<BlobId>> PostgresStore::finishedBlobs(const Device& reader, const envelope::MailboxId& mailbox)
{
    Arguments arguments;
    arguments.add(reader.clinic).add(reader.role == Role::desk).add(mailbox.view()).add(reader.id.view());
    const auto rows = ask("SELECT finished_blobs($1::bigint, $2::boolean, $3::bytea, $4::bytea)", arguments);
    if (!rows)
        return fail(rows.error());
    std::vector<BlobId> found;
    for (int row = 0; row < rows->count(); ++row) {
        const bytes::Bytes name = rows->blob(row, 0);
        if (name.size() == sizeof(BlobId::value))
            found.push_back(BlobId::from(name));
    }
    return found;
}

Done PostgresStore::acknowledgeBlob(const Device& reader, const envelope::MailboxId& mailbox, const BlobId& blob, clock::Instant at)
{
    Arguments arguments = blobOf(reader, mailbox, blob);
    arguments.add(millis(at));
    return call("SELECT acknowledge_blob($1::bigint, $2::boolean, $3::bytea, $4::bytea, $5::bytea, $6::bigint)", arguments);
}

Done PostgresStore::dropBlob(const Device& device, const envelope::MailboxId& mailbox, const BlobId& blob)
{
    return call("SELECT drop_blob($1::bigint, $2::boolean, $3::bytea, $4::bytea, $5::bytea)", blobOf(device, mailbox, blob));
}

Done PostgresStore::dropBlobs(clock::Instant acknowledgedBefore, clock::Instant touchedBefore)
{
    const std::int64_t acknowledged = millis(acknowledgedBefore), touched = millis(touchedBefore);
    for (;;) {
        const auto mailboxes = ask("SELECT blobs_may_be_dropped($1::bigint, $2::bigint, $3::bigint)",
                                   Arguments().add(acknowledged).add(touched).add(droppedAtOnce));
        if (!mailboxes)
            return fail(mailboxes.error());
        // A short transaction each: whoever puts into a mailbox waits for this one at most.
        for (int row = 0; row < mailboxes->count(); ++row)
            if (const Done dropped = call("SELECT drop_blobs($1::bytea, $2::bigint, $3::bigint)",
                                          Arguments().add(bytes::View(mailboxes->blob(row, 0))).add(acknowledged).add(touched));
                !dropped)
                return dropped;
        if (mailboxes->count() < droppedAtOnce)
            return {};
    }
}

}  // namespace ebbline::postgres
