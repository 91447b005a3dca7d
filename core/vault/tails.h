#pragma once
/// \file
/// Operations whose bytes end alike share a row of the table `tail`; inside of core/vault only.

#include "core/bytes/shared_tails.h"
#include "core/store/database.h"

#include <map>
#include <optional>

namespace ebbline::vault {

/// By the BLAKE2b-256 of each.
using Tails = std::map<bytes::Bytes, bytes::SharedTails::Tail>;

/// What the bytes of an operation share with others: the name of the tail, and its length.
struct Cut {
    bytes::Array<32> tail;
    std::size_t length;
};

/// What goes into the columns `bytes` and `tail`.
inline bytes::View ownPart(bytes::View operation, const std::optional<Cut>& cut)
{
    return operation.first(operation.size() - (cut ? cut->length : 0));
}
inline void bindTail(store::Statement& statement, const std::optional<Cut>& cut)
{
    if (cut)
        statement.bind(bytes::View(cut->tail));
    else
        statement.bindNull();
}

/// The bytes of an operation from the columns of its own part and of the tail's bytes, which may be NULL.
inline bytes::Bytes wholeOf(const store::Statement& row, int own, int tail)
{
    bytes::Bytes whole = row.blob(own);
    if (!row.isNull(tail)) {
        const bytes::Bytes end = row.blob(tail);
        whole.insert(whole.end(), end.begin(), end.end());
    }
    return whole;
}

}  // namespace ebbline::vault
