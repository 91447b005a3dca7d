#pragma once
/// \file
/// What long byte strings have in common at their end. Every course carries the protocol that it was opened with,
/// which is nearly all of its bytes and the same for thousands: kept once, thousands take the room of one.

#include "core/bytes/bytes.h"

#include <memory>
#include <vector>

namespace ebbline::bytes {

class SharedTails {
public:
    using Tail = std::shared_ptr<const Bytes>;

    static constexpr std::size_t shortest = 1024;  ///< bytes: what is shorter is not worth a place of its own
    static constexpr std::size_t most = 16;        ///< tails that are looked for: those that served last

    /// A tail that is kept elsewhere already.
    void add(Tail tail);

    /// What `whole` ends with and another string ended with before; null if there is no such tail yet. The whole
    /// string is remembered then, so that the next one may share with it.
    Tail tailOf(View whole);

private:
    std::vector<Tail> m_tails;  ///< the one that served last in front
    Bytes m_last;               ///< the last long string that shared nothing
};

/// A string of its own part and its tail, if it has one.
Bytes joined(View own, const SharedTails::Tail& tail);

}  // namespace ebbline::bytes
