#pragma once
/// \file
/// Invented courses of the past, for a clinic to look around in and for benches: patients who do not exist,
/// treated one after the other, most with a follow-up, some complicated, findings acted upon. Scores come
/// from core/rehearsal's inventions. Nothing here is clinical evidence.

#include "core/desk/desk.h"

namespace ebbline::desk {

struct InventedPast {
    int courses = 56;
    clock::Moment now;             ///< the last of them was treated three weeks and some days ago
    std::string protocolName = {};  ///< empty: the default's
    bool acts = true;              ///< findings are closed as somebody would have, reminders answered
};

/// Into a desk whose person is named. The same request gives the same patients, scores and outcomes; ids differ.
/// \returns as the vault's append().
Done addInventedPast(Desk& desk, const aftercare::Zone& zone, const InventedPast& past);

/// Nine courses that run now, one for every state of the queue: an emergency, calls, the next working day,
/// a fold at its follow-up, silence, two that ask for nothing, and one without a phone.
Done addInventedToday(Desk& desk, const aftercare::Zone& zone, const clock::Moment& now);

}  // namespace ebbline::desk
