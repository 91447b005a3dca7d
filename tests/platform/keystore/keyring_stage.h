#pragma once
/// \file
/// What the cases on the session's keyring share: the library that is tried keeps one connection and one queue for
/// as long as its process lives.

#include "platform/linux/secret_service_keeper.h"
#include "tests/platform/keystore/secret_service.h"

namespace ebbline::test {

struct KeyringStage {
    SecretService& service;
    std::shared_ptr<keyring::KeyringThread> thread;
    QDBusConnection bus;
};

/// Set by the program before any case runs.
inline KeyringStage* keyringStage = nullptr;

}  // namespace ebbline::test
