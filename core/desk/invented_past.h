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

/// Nine courses that run now, one for every state of the queue: an emergency, calls, one of them taken by a colleague, the next
/// working day with an entry that was amended, a fold at its follow-up, silence of a phone that is not heard of, a message that nobody read,
/// an entry written late, and one without a phone.
Done addInventedToday(Desk& desk, const aftercare::Zone& zone, const clock::Moment& now);

/// Writes down that the phone of whoever fell silent was heard at this moment of the desk's clock, and never since.
/// \pre addInventedToday() \returns as the vault's accept().
Done hearInventedPhones(Desk& desk);

}  // namespace ebbline::desk
