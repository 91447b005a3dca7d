#include "platform/postgres/tables.h"

#include "platform/postgres/tables_drop.h"
#include "platform/postgres/tables_offer.h"

namespace ebbline::postgres {

/// Every row carries the clinic that it belongs to. A call names its clinic for its own transaction
/// (`ebbline.clinic`); a row that is found by its unguessable key alone is named (`ebbline.named`);
/// what counts or tidies everything says so (`ebbline.whole`). Forced, so that the owner of the tables
/// is held to it as well; a partition shows nothing but through its table.
const std::array<std::string_view, 6> migrations{
    R"sql(
    CREATE TABLE clinic (
        id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY, root bytea NOT NULL UNIQUE, hint text NOT NULL
    );
    CREATE TABLE device (
        id bytea PRIMARY KEY, clinic bigint NOT NULL REFERENCES clinic, key bytea NOT NULL,
        role smallint NOT NULL, revoked boolean NOT NULL DEFAULT false
    );
    CREATE TABLE offer (
        id bytea PRIMARY KEY, clinic bigint NOT NULL REFERENCES clinic, proof bytea NOT NULL,
        locator bytea NOT NULL, bundle bytea NOT NULL, tag bytea NOT NULL, expires bigint NOT NULL,
        request bytea NOT NULL DEFAULT '', twice boolean NOT NULL DEFAULT false,
        nonce bytea NOT NULL DEFAULT '', link bytea NOT NULL DEFAULT ''
    );
    CREATE INDEX offer_locator ON offer (locator);
    CREATE INDEX offer_expires ON offer (expires);
    CREATE TABLE mailbox (
        id bytea PRIMARY KEY, clinic bigint NOT NULL REFERENCES clinic, phone bytea NOT NULL,
        bytes bigint NOT NULL DEFAULT 0, envelopes bigint NOT NULL DEFAULT 0
    ) WITH (fillfactor = 50);
    CREATE INDEX mailbox_clinic ON mailbox (clinic);
    CREATE TABLE envelope (
        mailbox bytea NOT NULL, device bytea NOT NULL, sequence bigint NOT NULL, clinic bigint NOT NULL,
        received bigint NOT NULL, body bytea NOT NULL, PRIMARY KEY (mailbox, device, sequence)
    ) PARTITION BY HASH (mailbox);
    -- Ciphertext: trying to compress it is time lost.
    ALTER TABLE envelope ALTER COLUMN body SET STORAGE EXTERNAL;
    CREATE INDEX envelope_received ON envelope USING brin (received);
    CREATE TABLE ack (
        mailbox bytea NOT NULL, reader bytea NOT NULL, device bytea NOT NULL, sequence bigint NOT NULL,
        clinic bigint NOT NULL, at bigint NOT NULL, PRIMARY KEY (mailbox, reader, device)
    );
    DO $$ BEGIN
        FOR part IN 0..15 LOOP
            EXECUTE format('CREATE TABLE envelope_%s PARTITION OF envelope FOR VALUES WITH (MODULUS 16, REMAINDER %s)',
                           part, part);
            EXECUTE format('ALTER TABLE envelope_%s ENABLE ROW LEVEL SECURITY, FORCE ROW LEVEL SECURITY', part);
        END LOOP;
    END $$;
    )sql",
    R"sql(
    CREATE FUNCTION asked_clinic() RETURNS bigint LANGUAGE sql STABLE PARALLEL SAFE AS
        $$ SELECT nullif(current_setting('ebbline.clinic', true), '')::bigint $$;
    CREATE FUNCTION asked_name() RETURNS bytea LANGUAGE sql STABLE PARALLEL SAFE AS
        $$ SELECT decode(nullif(current_setting('ebbline.named', true), ''), 'hex') $$;
    CREATE FUNCTION asked_whole() RETURNS boolean LANGUAGE sql STABLE PARALLEL SAFE AS
        $$ SELECT coalesce(current_setting('ebbline.whole', true), '') = 'on' $$;
    CREATE POLICY own ON clinic USING
        (id = (SELECT asked_clinic()) OR root = (SELECT asked_name()) OR (SELECT asked_whole()));
    CREATE POLICY own ON device USING
        (clinic = (SELECT asked_clinic()) OR id = (SELECT asked_name()) OR (SELECT asked_whole()));
    CREATE POLICY own ON offer USING
        (clinic = (SELECT asked_clinic()) OR id = (SELECT asked_name()) OR locator = (SELECT asked_name())
         OR (SELECT asked_whole()));
    CREATE POLICY own ON mailbox USING (clinic = (SELECT asked_clinic()) OR (SELECT asked_whole()));
    CREATE POLICY own ON envelope USING (clinic = (SELECT asked_clinic()) OR (SELECT asked_whole()));
    CREATE POLICY own ON ack USING (clinic = (SELECT asked_clinic()) OR (SELECT asked_whole()));
    DO $$ DECLARE each text; BEGIN
        FOREACH each IN ARRAY ARRAY['clinic', 'device', 'offer', 'mailbox', 'envelope', 'ack'] LOOP
            EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY, FORCE ROW LEVEL SECURITY', each);
        END LOOP;
    END $$;
    )sql",
    // Answers are numbers: 0 done, 1 unknown or foreign, 2 something else stands there, 3 full. What is
    // asked again writes again, so that its commit waits for the standby as the first one did.
    R"sql(
    CREATE FUNCTION as_clinic(which bigint) RETURNS void LANGUAGE sql AS
        $$ SELECT set_config('ebbline.clinic', which::text, true) $$;
    CREATE FUNCTION as_named(what bytea) RETURNS void LANGUAGE sql AS
        $$ SELECT set_config('ebbline.named', encode(what, 'hex'), true) $$;
    CREATE FUNCTION as_whole() RETURNS void LANGUAGE sql AS $$ SELECT set_config('ebbline.whole', 'on', true) $$;

    CREATE FUNCTION put_device(p_clinic bigint, p_id bytea, p_key bytea, p_role bigint) RETURNS int LANGUAGE plpgsql AS $$
    BEGIN
        PERFORM as_clinic(p_clinic);
        UPDATE device SET key = key WHERE id = p_id;
        IF NOT FOUND THEN
            INSERT INTO device (id, clinic, key, role) VALUES (p_id, p_clinic, p_key, p_role) ON CONFLICT DO NOTHING;
        END IF;
        RETURN 0;
    END $$;

    CREATE FUNCTION device_of(p_id bytea) RETURNS TABLE (clinic bigint, key bytea, role smallint, revoked boolean)
        LANGUAGE plpgsql AS $$
    BEGIN
        PERFORM set_config('ebbline.named', encode(p_id, 'hex'), true);
        RETURN QUERY SELECT d.clinic, d.key, d.role, d.revoked FROM device d WHERE d.id = p_id;
    END $$;

    CREATE FUNCTION revoke_device(p_id bytea) RETURNS int LANGUAGE plpgsql AS $$
    BEGIN
        PERFORM as_named(p_id);
        UPDATE device SET revoked = true WHERE id = p_id;
        RETURN CASE WHEN FOUND THEN 0 ELSE 1 END;
    END $$;

    CREATE FUNCTION take_offer(p_id bytea, p_request bytea) RETURNS int LANGUAGE plpgsql AS $$
    BEGIN
        PERFORM as_named(p_id);
        UPDATE offer SET request = p_request WHERE id = p_id AND request IN ('', p_request);
        IF FOUND THEN RETURN 0; END IF;
        UPDATE offer SET twice = true WHERE id = p_id;
        RETURN CASE WHEN FOUND THEN 2 ELSE 1 END;
    END $$;

    CREATE FUNCTION answer_offer(p_id bytea, p_nonce bytea) RETURNS int LANGUAGE plpgsql AS $$
    BEGIN
        PERFORM as_named(p_id);
        UPDATE offer SET nonce = CASE WHEN nonce = '' THEN p_nonce ELSE nonce END WHERE id = p_id;
        RETURN 0;
    END $$;

    CREATE FUNCTION link_offer(p_clinic bigint, p_id bytea, p_link bytea, p_mailbox bytea, p_phone bytea, p_key bytea,
                               p_role bigint) RETURNS int LANGUAGE plpgsql AS $$
    BEGIN
        PERFORM put_device(p_clinic, p_phone, p_key, p_role);
        INSERT INTO mailbox (id, clinic, phone) VALUES (p_mailbox, p_clinic, p_phone) ON CONFLICT DO NOTHING;
        UPDATE offer SET link = p_link WHERE id = p_id;
        RETURN 0;
    END $$;

    CREATE FUNCTION put_envelope(p_clinic bigint, p_desk boolean, p_mailbox bytea, p_device bytea, p_sequence bigint,
                                 p_body bytea, p_received bigint, p_most_bytes bigint, p_most_envelopes bigint)
        RETURNS int LANGUAGE plpgsql AS $$
    DECLARE
        size CONSTANT bigint := octet_length(p_body);
        there bytea;
    BEGIN
        PERFORM set_config('ebbline.clinic', p_clinic::text, true);
        -- Locks the mailbox: what it takes, it takes one after the other.
        UPDATE mailbox SET bytes = bytes + size, envelopes = envelopes + 1
            WHERE id = p_mailbox AND (p_desk OR phone = p_device)
                AND bytes + size <= p_most_bytes AND envelopes < p_most_envelopes;
        IF FOUND THEN
            INSERT INTO envelope (mailbox, device, sequence, clinic, received, body)
                VALUES (p_mailbox, p_device, p_sequence, p_clinic, p_received, p_body) ON CONFLICT DO NOTHING;
            IF FOUND THEN RETURN 0; END IF;
            UPDATE mailbox SET bytes = bytes - size, envelopes = envelopes - 1 WHERE id = p_mailbox;
        ELSE
            UPDATE mailbox SET envelopes = envelopes WHERE id = p_mailbox AND (p_desk OR phone = p_device);
            IF NOT FOUND THEN RETURN 1; END IF;
        END IF;
        SELECT body INTO there FROM envelope WHERE mailbox = p_mailbox AND device = p_device AND sequence = p_sequence;
        RETURN CASE WHEN NOT FOUND THEN 3 WHEN there = p_body THEN 0 ELSE 2 END;
    END $$;

    CREATE FUNCTION check_access(p_clinic bigint, p_desk boolean, p_mailbox bytea, p_device bytea) RETURNS void
        LANGUAGE plpgsql AS $$
    BEGIN
        PERFORM as_clinic(p_clinic);
        IF NOT EXISTS (SELECT FROM mailbox WHERE id = p_mailbox AND (p_desk OR phone = p_device)) THEN
            RAISE no_data_found;
        END IF;
    END $$;

    CREATE FUNCTION envelopes_after(p_clinic bigint, p_desk boolean, p_mailbox bytea, p_reader bytea, p_devices bytea[],
                                    p_sequences bigint[], p_at_most bigint)
        RETURNS TABLE (device bytea, sequence bigint, body bytea) LANGUAGE plpgsql AS $$
    BEGIN
        PERFORM check_access(p_clinic, p_desk, p_mailbox, p_reader);
        -- One statement, so one moment.
        RETURN QUERY
            SELECT f.device, f.sequence, f.body FROM (
                SELECT e.device, e.sequence, e.body,
                       sum(octet_length(e.body)) OVER (ORDER BY e.device, e.sequence) - octet_length(e.body) AS before
                FROM envelope e LEFT JOIN
                    (SELECT h.device, max(h.sequence) AS sequence FROM unnest(p_devices, p_sequences) AS h(device, sequence)
                     GROUP BY h.device) held ON held.device = e.device
                WHERE e.mailbox = p_mailbox AND e.device <> p_reader AND e.sequence > coalesce(held.sequence, 0)) f
            WHERE f.before < p_at_most ORDER BY f.device, f.sequence;
    END $$;

    CREATE FUNCTION acknowledge(p_clinic bigint, p_desk boolean, p_mailbox bytea, p_reader bytea, p_device bytea,
                                p_sequence bigint, p_at bigint) RETURNS int LANGUAGE plpgsql AS $$
    BEGIN
        PERFORM check_access(p_clinic, p_desk, p_mailbox, p_reader);
        INSERT INTO ack (mailbox, reader, device, sequence, clinic, at)
            VALUES (p_mailbox, p_reader, p_device, p_sequence, p_clinic, p_at)
            ON CONFLICT (mailbox, reader, device) DO UPDATE SET sequence = excluded.sequence, at = excluded.at
            WHERE excluded.sequence > ack.sequence;
        RETURN 0;
    END $$;

    CREATE FUNCTION with_news(p_clinic bigint, p_reader bytea) RETURNS SETOF bytea LANGUAGE plpgsql AS $$
    BEGIN
        PERFORM as_clinic(p_clinic);
        RETURN QUERY
            SELECT DISTINCT e.mailbox FROM mailbox m JOIN envelope e ON e.mailbox = m.id
                LEFT JOIN ack a ON a.mailbox = e.mailbox AND a.reader = p_reader AND a.device = e.device
            WHERE m.clinic = p_clinic AND e.device <> p_reader AND e.sequence > coalesce(a.sequence, 0)
            ORDER BY e.mailbox;
    END $$;

    CREATE FUNCTION may_be_dropped(p_before bigint, p_at_most bigint) RETURNS SETOF bytea LANGUAGE plpgsql AS $$
    BEGIN
        PERFORM as_whole();
        RETURN QUERY
            SELECT DISTINCT e.mailbox FROM ack a JOIN envelope e
                ON e.mailbox = a.mailbox AND e.device = a.device AND e.sequence <= a.sequence
            WHERE a.at < p_before AND a.reader <> a.device LIMIT p_at_most;
    END $$;

    CREATE FUNCTION drop_acknowledged(p_mailbox bytea, p_before bigint) RETURNS int LANGUAGE plpgsql AS $$
    DECLARE
        freed bigint;
        gone bigint;
    BEGIN
        PERFORM as_whole();
        -- In the order in which a put locks.
        PERFORM FROM mailbox WHERE id = p_mailbox FOR UPDATE;
        WITH dropped AS (
            DELETE FROM envelope e USING ack a
            WHERE e.mailbox = p_mailbox AND a.mailbox = e.mailbox AND a.device = e.device AND a.reader <> a.device
                AND a.sequence >= e.sequence AND a.at < p_before
            RETURNING octet_length(e.body) AS size)
        SELECT coalesce(sum(size), 0), count(*) INTO freed, gone FROM dropped;
        UPDATE mailbox SET bytes = bytes - freed, envelopes = envelopes - gone WHERE id = p_mailbox;
        RETURN 0;
    END $$;
    )sql",
    // Blobs. Their room is reserved when they are announced; finished ones only are read.
    R"sql(
    ALTER TABLE mailbox ADD COLUMN blob_bytes bigint NOT NULL DEFAULT 0, ADD COLUMN blobs bigint NOT NULL DEFAULT 0;
    CREATE TABLE blob (
        mailbox bytea NOT NULL, id bytea NOT NULL, clinic bigint NOT NULL, size bigint NOT NULL, chunks bigint NOT NULL,
        done boolean NOT NULL DEFAULT false, touched bigint NOT NULL, acknowledged bigint, PRIMARY KEY (mailbox, id)
    );
    CREATE TABLE blob_chunk (
        mailbox bytea NOT NULL, blob bytea NOT NULL, number bigint NOT NULL, clinic bigint NOT NULL, body bytea NOT NULL,
        PRIMARY KEY (mailbox, blob, number)
    );
    ALTER TABLE blob_chunk ALTER COLUMN body SET STORAGE EXTERNAL;
    DO $$ DECLARE each text; BEGIN
        FOREACH each IN ARRAY ARRAY['blob', 'blob_chunk'] LOOP
            EXECUTE format('CREATE POLICY own ON %I USING (clinic = (SELECT asked_clinic()) OR (SELECT asked_whole()))', each);
            EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY, FORCE ROW LEVEL SECURITY', each);
        END LOOP;
    END $$;

    -- Whether the device may use the mailbox; locks it, so that what changes there changes one after the other.
    CREATE FUNCTION take_mailbox(p_clinic bigint, p_desk boolean, p_mailbox bytea, p_device bytea) RETURNS boolean
        LANGUAGE plpgsql AS $$
    BEGIN
        PERFORM as_clinic(p_clinic);
        PERFORM FROM mailbox WHERE id = p_mailbox AND (p_desk OR phone = p_device) FOR UPDATE;
        RETURN FOUND;
    END $$;

    CREATE FUNCTION begin_blob(p_clinic bigint, p_desk boolean, p_mailbox bytea, p_device bytea, p_blob bytea, p_size bigint,
                               p_chunks bigint, p_at bigint, p_most_bytes bigint, p_most_blobs bigint)
        RETURNS TABLE (outcome int, complete boolean, missing bigint) LANGUAGE plpgsql AS $$
    DECLARE
        known blob%ROWTYPE;
    BEGIN
        IF NOT take_mailbox(p_clinic, p_desk, p_mailbox, p_device) THEN
            RETURN QUERY SELECT 1, false, -1::bigint;
            RETURN;
        END IF;
        SELECT * INTO known FROM blob WHERE mailbox = p_mailbox AND id = p_blob;
        IF FOUND THEN
            IF known.size <> p_size OR known.chunks <> p_chunks THEN
                RETURN QUERY SELECT 2, false, -1::bigint;
                RETURN;
            END IF;
            UPDATE blob SET touched = greatest(touched, p_at) WHERE mailbox = p_mailbox AND id = p_blob;
        ELSE
            UPDATE mailbox SET blob_bytes = blob_bytes + p_size, blobs = blobs + 1
                WHERE id = p_mailbox AND blob_bytes + p_size <= p_most_bytes AND blobs < p_most_blobs;
            IF NOT FOUND THEN
                RETURN QUERY SELECT 3, false, -1::bigint;
                RETURN;
            END IF;
            INSERT INTO blob (mailbox, id, clinic, size, chunks, touched)
                VALUES (p_mailbox, p_blob, p_clinic, p_size, p_chunks, p_at);
        END IF;
        IF NOT coalesce(known.done, false) THEN
            RETURN QUERY SELECT 0, false, n FROM generate_series(0, p_chunks - 1) AS n
                WHERE NOT EXISTS (SELECT FROM blob_chunk c WHERE c.mailbox = p_mailbox AND c.blob = p_blob AND c.number = n)
                ORDER BY n;
        END IF;
        IF NOT FOUND OR coalesce(known.done, false) THEN
            RETURN QUERY SELECT 0, coalesce(known.done, false), -1::bigint;
        END IF;
    END $$;

    CREATE FUNCTION put_chunk(p_clinic bigint, p_desk boolean, p_mailbox bytea, p_device bytea, p_blob bytea, p_number bigint,
                              p_body bytea, p_at bigint) RETURNS int LANGUAGE plpgsql AS $$
    DECLARE
        there bytea;
    BEGIN
        IF NOT take_mailbox(p_clinic, p_desk, p_mailbox, p_device) THEN RETURN 1; END IF;
        SELECT body INTO there FROM blob_chunk WHERE mailbox = p_mailbox AND blob = p_blob AND number = p_number;
        IF FOUND AND there <> p_body THEN RETURN 2; END IF;
        IF FOUND THEN
            -- Written again, so that its commit waits as the first one did.
            UPDATE blob SET touched = touched WHERE mailbox = p_mailbox AND id = p_blob;
            RETURN 0;
        END IF;
        UPDATE blob SET touched = greatest(touched, p_at)
            WHERE mailbox = p_mailbox AND id = p_blob AND NOT done AND chunks > p_number AND size >= octet_length(p_body) +
                (SELECT coalesce(sum(octet_length(c.body)), 0) FROM blob_chunk c WHERE c.mailbox = p_mailbox AND c.blob = p_blob);
        IF NOT FOUND THEN RETURN 1; END IF;
        INSERT INTO blob_chunk (mailbox, blob, number, clinic, body) VALUES (p_mailbox, p_blob, p_number, p_clinic, p_body);
        RETURN 0;
    END $$;

    CREATE FUNCTION finish_blob(p_clinic bigint, p_desk boolean, p_mailbox bytea, p_device bytea, p_blob bytea, p_at bigint)
        RETURNS int LANGUAGE plpgsql AS $$
    DECLARE
        known blob%ROWTYPE;
        there bigint;
    BEGIN
        IF NOT take_mailbox(p_clinic, p_desk, p_mailbox, p_device) THEN RETURN 1; END IF;
        SELECT * INTO known FROM blob WHERE mailbox = p_mailbox AND id = p_blob;
        IF NOT FOUND THEN RETURN 1; END IF;
        SELECT count(*) INTO there FROM blob_chunk WHERE mailbox = p_mailbox AND blob = p_blob;
        IF there < known.chunks THEN RETURN 2; END IF;
        UPDATE blob SET done = true, touched = greatest(touched, p_at) WHERE mailbox = p_mailbox AND id = p_blob;
        RETURN 0;
    END $$;

    CREATE FUNCTION chunk_of(p_clinic bigint, p_desk boolean, p_mailbox bytea, p_reader bytea, p_blob bytea, p_number bigint)
        RETURNS TABLE (body bytea) LANGUAGE plpgsql AS $$
    BEGIN
        PERFORM check_access(p_clinic, p_desk, p_mailbox, p_reader);
        RETURN QUERY SELECT c.body FROM blob_chunk c JOIN blob b ON b.mailbox = c.mailbox AND b.id = c.blob
            WHERE c.mailbox = p_mailbox AND c.blob = p_blob AND c.number = p_number AND b.done;
    END $$;

    CREATE FUNCTION finished_blobs(p_clinic bigint, p_desk boolean, p_mailbox bytea, p_reader bytea) RETURNS SETOF bytea
        LANGUAGE plpgsql AS $$
    BEGIN
        PERFORM check_access(p_clinic, p_desk, p_mailbox, p_reader);
        RETURN QUERY SELECT b.id FROM blob b WHERE b.mailbox = p_mailbox AND b.done ORDER BY b.id;
    END $$;

    CREATE FUNCTION acknowledge_blob(p_clinic bigint, p_desk boolean, p_mailbox bytea, p_reader bytea, p_blob bytea, p_at bigint)
        RETURNS int LANGUAGE plpgsql AS $$
    BEGIN
        PERFORM check_access(p_clinic, p_desk, p_mailbox, p_reader);
        UPDATE blob SET acknowledged = coalesce(acknowledged, p_at) WHERE mailbox = p_mailbox AND id = p_blob AND done;
        RETURN 0;
    END $$;

    CREATE FUNCTION drop_blob(p_clinic bigint, p_desk boolean, p_mailbox bytea, p_device bytea, p_blob bytea) RETURNS int
        LANGUAGE plpgsql AS $$
    DECLARE
        freed bigint;
    BEGIN
        IF NOT take_mailbox(p_clinic, p_desk, p_mailbox, p_device) THEN RETURN 1; END IF;
        DELETE FROM blob_chunk WHERE mailbox = p_mailbox AND blob = p_blob;
        DELETE FROM blob WHERE mailbox = p_mailbox AND id = p_blob RETURNING size INTO freed;
        IF FOUND THEN
            UPDATE mailbox SET blob_bytes = blob_bytes - freed, blobs = blobs - 1 WHERE id = p_mailbox;
        END IF;
        RETURN 0;
    END $$;

    CREATE FUNCTION blobs_may_be_dropped(p_acknowledged bigint, p_touched bigint, p_at_most bigint) RETURNS SETOF bytea
        LANGUAGE plpgsql AS $$
    BEGIN
        PERFORM as_whole();
        RETURN QUERY SELECT DISTINCT mailbox FROM blob WHERE acknowledged < p_acknowledged OR touched < p_touched LIMIT p_at_most;
    END $$;

    CREATE FUNCTION drop_blobs(p_mailbox bytea, p_acknowledged bigint, p_touched bigint) RETURNS int LANGUAGE plpgsql AS $$
    DECLARE
        freed bigint;
        gone bigint;
    BEGIN
        PERFORM as_whole();
        PERFORM FROM mailbox WHERE id = p_mailbox FOR UPDATE;
        DELETE FROM blob_chunk c USING blob b WHERE c.mailbox = p_mailbox AND b.mailbox = c.mailbox AND b.id = c.blob
            AND (b.acknowledged < p_acknowledged OR b.touched < p_touched);
        WITH dropped AS (
            DELETE FROM blob WHERE mailbox = p_mailbox AND (acknowledged < p_acknowledged OR touched < p_touched) RETURNING size)
        SELECT coalesce(sum(size), 0), count(*) INTO freed, gone FROM dropped;
        UPDATE mailbox SET blob_bytes = blob_bytes - freed, blobs = blobs - gone WHERE id = p_mailbox;
        RETURN 0;
    END $$;
    )sql",
    acknowledgementsOnce, offerAnsweredOnce};

}  // namespace ebbline::postgres
