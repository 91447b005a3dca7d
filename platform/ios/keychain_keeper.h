#pragma once
/// \file
/// The key store of iOS: one item of the keychain.

#include "platform/keystore/secret_keeper.h"

#include <memory>

namespace ebbline::ios {

std::unique_ptr<keystore::SecretKeeper> makeKeeper();

}  // namespace ebbline::ios
