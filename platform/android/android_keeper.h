#pragma once
/// \file
/// The key store of Android, through the class invalid.ebbline.diary.SecretBox of the package.

#include "platform/keystore/secret_keeper.h"

#include <memory>

namespace ebbline::android {

std::unique_ptr<keystore::SecretKeeper> makeKeeper();

}  // namespace ebbline::android
