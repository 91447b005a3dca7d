#pragma once
/// \file
/// What a run says of all mailboxes at its end, whichever of them it came to; inside of core/sync only.

#include "core/sync/link_sync.h"

namespace ebbline::sync {

/// What a hub may withhold shows by time alone, and what it refuses is kept.
void lookBack(const vault::Vault& vault, Report& report);

}  // namespace ebbline::sync
