#include "core/vault/tables.h"

namespace ebbline::vault {

const std::array<store::Migration, 5> vaultMigrations{
    R"sql(
    -- Keys and facts of this device.
    CREATE TABLE fact (name TEXT PRIMARY KEY, value BLOB NOT NULL) STRICT, WITHOUT ROWID;

    -- The journal, as canonical bytes. `chain` links this device's own operations; `mailbox` is set
    -- where one is for a peer, `carried` is the sequence of the envelope that took it, 0 before.
    CREATE TABLE operation (
        device BLOB NOT NULL,
        number INTEGER NOT NULL,
        bytes BLOB NOT NULL,
        chain BLOB,
        mailbox BLOB,
        carried INTEGER NOT NULL DEFAULT 0,
        PRIMARY KEY (device, number)
    ) STRICT, WITHOUT ROWID;
    CREATE INDEX operation_waiting ON operation (mailbox, number) WHERE mailbox IS NOT NULL AND carried = 0;

    -- Small values of this device alone: drafts, settings.
    CREATE TABLE kept (name TEXT PRIMARY KEY, value BLOB NOT NULL) STRICT, WITHOUT ROWID;

    CREATE TABLE link (
        mailbox BLOB PRIMARY KEY,
        course BLOB NOT NULL,
        peer_signing BLOB NOT NULL,
        peer_box BLOB NOT NULL,
        root BLOB NOT NULL,
        epoch INTEGER NOT NULL,
        hub TEXT NOT NULL,
        hub_key BLOB NOT NULL
    ) STRICT, WITHOUT ROWID;

    -- Envelopes of ours that the peer has not acknowledged.
    CREATE TABLE outgoing (
        mailbox BLOB NOT NULL,
        sequence INTEGER NOT NULL,
        envelope BLOB NOT NULL,
        at_hub INTEGER NOT NULL DEFAULT 0,
        PRIMARY KEY (mailbox, sequence)
    ) STRICT, WITHOUT ROWID;

    -- The highest envelope without a gap, of ours and of each peer.
    CREATE TABLE head (
        mailbox BLOB NOT NULL,
        device BLOB NOT NULL,
        sequence INTEGER NOT NULL,
        hash BLOB NOT NULL,
        PRIMARY KEY (mailbox, device)
    ) STRICT, WITHOUT ROWID;

    -- The peer's signed acknowledgements, each with the time that it says.
    CREATE TABLE delivered (
        mailbox BLOB NOT NULL,
        sequence INTEGER NOT NULL,
        at INTEGER NOT NULL,
        PRIMARY KEY (mailbox, sequence)
    ) STRICT, WITHOUT ROWID;

    -- What could not be accepted is kept with the reason.
    CREATE TABLE quarantine (
        id INTEGER PRIMARY KEY,
        mailbox BLOB NOT NULL,
        hash BLOB NOT NULL,
        envelope BLOB NOT NULL,
        reason INTEGER NOT NULL,
        detail TEXT NOT NULL,
        UNIQUE (mailbox, hash)
    ) STRICT;
    )sql",
    R"sql(
    -- Which versions this file went through, in words for whoever looks at it later.
    CREATE TABLE schema (version INTEGER PRIMARY KEY, brought TEXT NOT NULL) STRICT;
    INSERT INTO schema (version, brought) VALUES
        (1, 'journal, outbox, links, heads, acknowledgements, quarantine'),
        (2, 'table of versions');
    )sql",
    R"sql(
    -- When the hub last took an envelope: it is offered again while the peer has not acknowledged it.
    ALTER TABLE outgoing ADD COLUMN offered_at INTEGER NOT NULL DEFAULT 0;

    -- The hash of every envelope that was sealed here or accepted, and when by our own clock: a second one
    -- with its number, and an acknowledgement of another one, show.
    CREATE TABLE passed (
        mailbox BLOB NOT NULL,
        device BLOB NOT NULL,
        sequence INTEGER NOT NULL,
        hash BLOB NOT NULL,
        at INTEGER NOT NULL,
        PRIMARY KEY (mailbox, device, sequence)
    ) STRICT, WITHOUT ROWID;

    -- How it stands with a device in a mailbox; our own device has a row of its own. `last_at`: when we last
    -- sealed, or last accepted something new from the peer. `ahead`: the highest number seen before its turn.
    CREATE TABLE standing (
        mailbox BLOB NOT NULL,
        device BLOB NOT NULL,
        last_at INTEGER NOT NULL DEFAULT 0,
        ahead INTEGER NOT NULL DEFAULT 0,
        fork INTEGER NOT NULL DEFAULT 0,
        rolled_back INTEGER NOT NULL DEFAULT 0,
        refused INTEGER NOT NULL DEFAULT 0,
        PRIMARY KEY (mailbox, device)
    ) STRICT, WITHOUT ROWID;

    -- `ended`: another phone took the place of this one. `roster`: the newest that this phone was sent.
    ALTER TABLE link ADD COLUMN ended INTEGER NOT NULL DEFAULT 0;
    ALTER TABLE link ADD COLUMN roster INTEGER NOT NULL DEFAULT 0;

    -- What a clinic says about itself, signed by its root: the newest of each.
    CREATE TABLE roster (root BLOB PRIMARY KEY, number INTEGER NOT NULL, signed BLOB NOT NULL) STRICT, WITHOUT ROWID;

    -- Clinic only: the secrets of its epochs, and its other desks with how far each was told.
    CREATE TABLE epoch (number INTEGER PRIMARY KEY, secret BLOB NOT NULL) STRICT;
    CREATE TABLE channel (
        mailbox BLOB PRIMARY KEY,
        signing BLOB NOT NULL,
        box BLOB NOT NULL,
        hub TEXT NOT NULL,
        roster INTEGER NOT NULL DEFAULT 0,
        ended INTEGER NOT NULL DEFAULT 0
    ) STRICT, WITHOUT ROWID;
    CREATE TABLE channel_told (
        mailbox BLOB NOT NULL,
        device BLOB NOT NULL,
        number INTEGER NOT NULL,
        PRIMARY KEY (mailbox, device)
    ) STRICT, WITHOUT ROWID;

    INSERT INTO schema (version, brought) VALUES
        (3, 'offers again, hashes of what passed, standing of a mailbox; rosters, epochs, other desks');
    )sql",
    R"sql(
    -- Sealed photographs, chunk by chunk, as the phone sealed them or as they came. Large rows: by number, so that
    -- the names are found without reading the chunks.
    CREATE TABLE photo_chunk (
        id INTEGER PRIMARY KEY,
        photo BLOB NOT NULL,
        number INTEGER NOT NULL,
        body BLOB NOT NULL,
        UNIQUE (photo, number)
    ) STRICT;

    -- What was tried with a hub. `at_hub`: it said that it holds all of it; `tried_at`: when, by our own clock;
    -- `refused`: it came whole and is none that we would show.
    CREATE TABLE photo_standing (
        photo BLOB PRIMARY KEY,
        at_hub INTEGER NOT NULL,
        tried_at INTEGER NOT NULL,
        refused INTEGER NOT NULL
    ) STRICT, WITHOUT ROWID;

    INSERT INTO schema (version, brought) VALUES (4, 'photographs');
    )sql",
    R"sql(
    -- What operations have in common at their end, by its BLAKE2b-256: every course carries its protocol, which is
    -- nearly all of its bytes. An operation with a tail is its own bytes and then the tail's.
    CREATE TABLE tail (hash BLOB PRIMARY KEY, bytes BLOB NOT NULL) STRICT;
    ALTER TABLE operation ADD COLUMN tail BLOB REFERENCES tail (hash);

    INSERT INTO schema (version, brought) VALUES (5, 'common ends of operations, kept once');
    )sql"};

}  // namespace ebbline::vault
