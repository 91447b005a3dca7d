#pragma once
/// \file
/// Where jobs with the keyring of a Linux session are done: one thread with an event loop. The library that does them
/// (QtKeychain) answers later, and the diary asks a key store that answers at once or says that it does not.

#include "core/crypto/crypto.h"

#include <QObject>
#include <QString>
#include <QThread>

#include <chrono>
#include <optional>

namespace ebbline::keyring {

/// Under what the keyring knows the diary; the iOS keychain has the same name.
QString programInKeyring();

/// What came of a job.
enum class Said : std::uint8_t {
    done,
    notThere,     ///< nothing is kept under that name, or somebody put the keyring's question away
    otherLength,  ///< what is kept is not 32 bytes
    refused,
    failed,       ///< for a reason that the library does not tell
    nothing,      ///< no answer within the wait; the job may still be done later
};

struct Answer {
    Said said = Said::nothing;
    std::optional<crypto::Secret> secret = std::nullopt;  ///< there if a reading is done
};

/// At most one in a process: the library keeps one queue for all its jobs, in the thread that asked first. A job that
/// waits for a person holds up those behind it; each call returns after its wait all the same.
class KeyringThread {
public:
    KeyringThread();
    ~KeyringThread();
    KeyringThread(const KeyringThread&) = delete;
    KeyringThread& operator=(const KeyringThread&) = delete;

    Answer read(const QString& entry, std::chrono::milliseconds wait);
    Said write(const QString& entry, const crypto::Secret& secret, std::chrono::milliseconds wait);
    Said remove(const QString& entry, std::chrono::milliseconds wait);

private:
    QThread m_thread;
    QObject m_place;  ///< lives in the thread
};

}  // namespace ebbline::keyring
