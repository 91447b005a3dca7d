#pragma once
/// \file
/// Bells on iOS, through the notification centre. Plain C++ outside, so that nobody else sees Objective-C.

#include "platform/notifications/ringer.h"

#include <memory>

namespace ebbline::ios {

/// Make one at a time: the phone tells the newest.
std::unique_ptr<notifications::Ringer> makeRinger();

}  // namespace ebbline::ios
