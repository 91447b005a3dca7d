#include "core/mailbox/embedded_tables.h"

#include <fstream>
#include <iterator>

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
    std::ifstream input(file, std::ios::binary);
    if (!input) {
        const crypto::Secret fresh = crypto::Secret::random();
        std::ofstream output(file, std::ios::binary | std::ios::trunc);
        std::error_code problem;
        std::filesystem::permissions(file, std::filesystem::perms::owner_read | std::filesystem::perms::owner_write, problem);
        output.write(reinterpret_cast<const char*>(fresh.view().data()), crypto::Secret::size);
        output.flush();
        if (!output || problem)
            return fail(Reason::storageFailed, "hub: the key file cannot be written");
        return fresh.clone();
    }
    bytes::Bytes contents(std::istreambuf_iterator<char>(input), {});
    if (contents.size() != crypto::Secret::size)
        return fail(Reason::malformed, "hub: the key file must hold 32 bytes");
    crypto::Secret key = crypto::Secret::from(contents);
    crypto::wipe(contents);
    return key;
}

}  // namespace ebbline::mailbox
