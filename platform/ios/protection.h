#pragma once
/// \file
/// The diary's files on iOS: sealed by the system while the phone is locked, and in no backup.

#include "core/result/result.h"

#include <string>

namespace ebbline::ios {

/// Makes the folder if it is missing. What is later written into it takes its class over, as the program's
/// entitlement also says for every file.
/// \returns Reason::storageFailed if one of the two could not be set.
Done protectFolder(const std::string& folder);

}  // namespace ebbline::ios
