#include "core/mailbox/embedded_tables.h"

#include "core/bytes/text.h"
#include "core/store/durable_file.h"

namespace ebbline::mailbox {

const std::array<store::Migration, 3> hubMigrations{R"sql(
    CREATE TABLE clinic (id INTEGER PRIMARY KEY, root BLOB NOT NULL UNIQUE, hint TEXT NOT NULL) STRICT;
    CREATE TABLE device (
        id BLOB PRIMARY KEY, clinic INTEGER NOT NULL REFERENCES clinic(id), key BLOB NOT NULL,
        role INTEGER NOT NULL, revoked INTEGER NOT NULL DEFAULT 0
    ) STRICT, WITHOUT ROWID;
    CREATE TABLE offer (
        id BLOB PRIMARY KEY, clinic INTEGER NOT NULL REFERENCES clinic(id), proof BLOB NOT NULL,
        locator BLOB NOT NULL, bundle BLOB NOT NULL, tag BLOB NOT NULL, expires INTEGER NOT NULL,
        request BLOB NOT NULL DEFAULT x'', twice INTEGER NOT NULL DEFAULT 0,
        nonce BLOB NOT NULL DEFAULT x'', link BLOB NOT NULL DEFAULT x''
    ) STRICT, WITHOUT ROWID;
    CREATE INDEX offer_locator ON offer (locator);
    CREATE TABLE mailbox (
        id BLOB PRIMARY KEY, clinic INTEGER NOT NULL REFERENCES clinic(id), phone BLOB NOT NULL,
        bytes INTEGER NOT NULL DEFAULT 0, envelopes INTEGER NOT NULL DEFAULT 0
    ) STRICT, WITHOUT ROWID;
    CREATE TABLE envelope (
        mailbox BLOB NOT NULL, device BLOB NOT NULL, sequence INTEGER NOT NULL, body BLOB NOT NULL,
        received INTEGER NOT NULL, PRIMARY KEY (mailbox, device, sequence)
    ) STRICT, WITHOUT ROWID;
    CREATE TABLE ack (
        mailbox BLOB NOT NULL, reader BLOB NOT NULL, device BLOB NOT NULL, sequence INTEGER NOT NULL,
        at INTEGER NOT NULL, PRIMARY KEY (mailbox, reader, device)
    ) STRICT, WITHOUT ROWID;
    )sql",
    // Envelopes in order of arrival: an envelope of the usual size fits into half a page, where a
    // row inside of the key's tree would spill into a page of its own.
    R"sql(
    CREATE TABLE arrived (
        number INTEGER PRIMARY KEY, mailbox BLOB NOT NULL, device BLOB NOT NULL, sequence INTEGER NOT NULL,
        received INTEGER NOT NULL, body BLOB NOT NULL, UNIQUE (mailbox, device, sequence)
    ) STRICT;
    INSERT INTO arrived (mailbox, device, sequence, received, body)
        SELECT mailbox, device, sequence, received, body FROM envelope ORDER BY received, mailbox, device, sequence;
    DROP TABLE envelope;
    ALTER TABLE arrived RENAME TO envelope;
    CREATE INDEX envelope_received ON envelope (received);
    )sql",
    // Blobs: their room is reserved when they are announced. Chunks in order of arrival, as envelopes are.
    R"sql(
    CREATE TABLE blob (
        mailbox BLOB NOT NULL, id BLOB NOT NULL, size INTEGER NOT NULL, chunks INTEGER NOT NULL,
        done INTEGER NOT NULL DEFAULT 0, touched INTEGER NOT NULL, acknowledged INTEGER, PRIMARY KEY (mailbox, id)
    ) STRICT, WITHOUT ROWID;
    CREATE TABLE blob_chunk (
        row INTEGER PRIMARY KEY, mailbox BLOB NOT NULL, blob BLOB NOT NULL, number INTEGER NOT NULL,
        body BLOB NOT NULL, UNIQUE (mailbox, blob, number)
    ) STRICT;
    ALTER TABLE mailbox ADD COLUMN blob_bytes INTEGER NOT NULL DEFAULT 0;
    ALTER TABLE mailbox ADD COLUMN blobs INTEGER NOT NULL DEFAULT 0;
    )sql"};

Result<crypto::Secret> keyFrom(const std::filesystem::path& file)
{
    auto contents = store::readWhole(file, crypto::Secret::size);
    if (!contents && contents.error().reason == Reason::notFound) {
        // Whole before it has its name, and never in place of one that somebody else made meanwhile.
        std::filesystem::path made = file;
        made += ".made-" + bytes::toHex(crypto::randomArray<8>());
        if (const Done written = store::writeDurably(made, crypto::Secret::random().view()); !written)
            return fail(written.error());
        const Done named = store::renameToNew(made, file);
        std::error_code ignored;
        std::filesystem::remove(made, ignored);
        if (!named && named.error().reason != Reason::alreadyExists)
            return fail(named.error());
        contents = store::readWhole(file, crypto::Secret::size);
    }
    if (!contents && contents.error().reason != Reason::tooLarge)
        return fail(contents.error());
    if (!contents || contents->size() != crypto::Secret::size)
        return fail(Reason::malformed, "hub: the key file must hold 32 bytes");
    crypto::Secret key = crypto::Secret::from(*contents);
    crypto::wipe(*contents);
    return key;
}

}  // namespace ebbline::mailbox
