#pragma once
/// \file
/// Bells on Android, through the class invalid.ebbline.diary.Bridge of the package.

#include "platform/notifications/ringer.h"

#include <memory>

namespace ebbline::android {

/// Make one at a time: the phone tells the newest.
std::unique_ptr<notifications::Ringer> makeRinger();

}  // namespace ebbline::android
