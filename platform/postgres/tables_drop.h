#pragma once
/// \file
/// A migration apart, for its length; inside of platform/postgres only, as tables.h.

#include <string_view>

namespace ebbline::postgres {

/// Up to which sequence an acknowledgement's envelopes are gone. Tidying looks only at acknowledgements past which something may
/// still lie, by an index that holds just these; before, every hub joined all of them with all envelopes every five minutes.
inline constexpr std::string_view acknowledgementsOnce = R"sql(
    ALTER TABLE ack ADD COLUMN dropped bigint NOT NULL DEFAULT 0;
    CREATE INDEX ack_to_drop ON ack (at) WHERE dropped < sequence AND reader <> device;

    CREATE OR REPLACE FUNCTION put_envelope(p_clinic bigint, p_desk boolean, p_mailbox bytea, p_device bytea, p_sequence bigint,
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
            IF FOUND THEN
                -- One that is offered again after it was acknowledged and dropped is to be dropped again.
                UPDATE ack SET dropped = p_sequence - 1
                    WHERE mailbox = p_mailbox AND device = p_device AND dropped >= p_sequence;
                RETURN 0;
            END IF;
            UPDATE mailbox SET bytes = bytes - size, envelopes = envelopes - 1 WHERE id = p_mailbox;
        ELSE
            UPDATE mailbox SET envelopes = envelopes WHERE id = p_mailbox AND (p_desk OR phone = p_device);
            IF NOT FOUND THEN RETURN 1; END IF;
        END IF;
        SELECT body INTO there FROM envelope WHERE mailbox = p_mailbox AND device = p_device AND sequence = p_sequence;
        RETURN CASE WHEN NOT FOUND THEN 3 WHEN there = p_body THEN 0 ELSE 2 END;
    END $$;

    CREATE OR REPLACE FUNCTION may_be_dropped(p_before bigint, p_at_most bigint) RETURNS SETOF bytea LANGUAGE plpgsql AS $$
    BEGIN
        PERFORM as_whole();
        RETURN QUERY
            SELECT DISTINCT a.mailbox FROM ack a
            WHERE a.dropped < a.sequence AND a.reader <> a.device AND a.at < p_before LIMIT p_at_most;
    END $$;

    CREATE OR REPLACE FUNCTION drop_acknowledged(p_mailbox bytea, p_before bigint) RETURNS int LANGUAGE plpgsql AS $$
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
        -- Of one that advanced meanwhile the time is another, and it stays to do.
        UPDATE ack SET dropped = sequence
            WHERE mailbox = p_mailbox AND reader <> device AND at < p_before AND dropped < sequence;
        RETURN 0;
    END $$;
    )sql";

}  // namespace ebbline::postgres
