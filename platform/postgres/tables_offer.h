#pragma once
/// \file
/// A migration apart, for its length; inside of platform/postgres only, as tables.h.

#include <string_view>

namespace ebbline::postgres {

/// An offer is answered once, and whoever answers it differently is told. Before, the first answer stood and the second was told
/// that it had been taken.
inline constexpr std::string_view offerAnsweredOnce = R"sql(
    CREATE OR REPLACE FUNCTION answer_offer(p_id bytea, p_nonce bytea) RETURNS int LANGUAGE plpgsql AS $$
    BEGIN
        PERFORM as_named(p_id);
        UPDATE offer SET nonce = p_nonce WHERE id = p_id AND nonce IN ('', p_nonce);
        IF FOUND THEN RETURN 0; END IF;
        RETURN CASE WHEN EXISTS (SELECT FROM offer WHERE id = p_id) THEN 2 ELSE 1 END;
    END $$;
    )sql";

}  // namespace ebbline::postgres
