#pragma once
/// \file
/// What a computer gives to the desk: notices on its screen. Apart from device.h, so that a desk links no keyring.

#include "platform/notifications/bells.h"

#include <memory>

namespace ebbline::device {

/// Bells for notices of the moment alone, of a program that books none; null: this device has none.
std::unique_ptr<notifications::Bells> openNotices(const clock::Clock& clock);

}  // namespace ebbline::device
