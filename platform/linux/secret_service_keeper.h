#pragma once
/// \file
/// The key store of a Linux session: the keyring that answers as org.freedesktop.secrets (Secret Service API, draft,
/// freedesktop.org), through QtKeychain and libsecret. It keeps a copied disk from being searched. It keeps nothing from
/// the other programs of the session: whoever can ask the keyring gets the secret (docs/decisions/0036).
///
/// The library does not tell a keyring that stays locked from one that has nothing. So the service is looked at first, by
/// calls that bring no window: what is not there is not asked for, and what is there and not given out is not called lost.

#include "platform/keystore/secret_keeper.h"
#include "platform/linux/keyring_thread.h"

#include <QDBusConnection>
#include <QVariantList>

#include <memory>

namespace ebbline::keyring {

/// Inside a sandbox (Flatpak) libsecret keeps secrets in a file of the sandbox, sealed by a key that the desktop's portal
/// gives (org.freedesktop.portal.Secret); the service itself is not looked at there.
enum class Where : std::uint8_t { session, sandbox };

/// Of one step; an act has at most six.
struct Waits {
    std::chrono::milliseconds answer{3'000};
    std::chrono::milliseconds person{1'000};  ///< for a keyring that is locked: its window stays when the wait is over
};

/// Names the secret of a diary: each folder has its own. A diary that is moved does not find its secret any more.
QString entryFor(const QString& folder);

class SecretServiceKeeper final : public keystore::SecretKeeper {
public:
    /// \param entry  as entryFor() has it
    /// \param bus    of the session; libsecret asks the one that DBUS_SESSION_BUS_ADDRESS names
    SecretServiceKeeper(std::shared_ptr<KeyringThread> thread, QString entry, Where where,
                        QDBusConnection bus = QDBusConnection::sessionBus(), Waits waits = {});

    /// False too where libsecret is not installed, and in a session where QtKeychain would ask KWallet in place of the
    /// service: what that says can not be told apart.
    bool isThere() const override;
    bool isOfSession() const override { return true; }
    /// Reason::storageFailed also while the keyring is locked: it asks for its password in a window of its own.
    Result<crypto::Secret> fetch() override;
    /// Never brings a window in a session: Reason::storageFailed if no keyring is open to keep the secret in.
    Result<crypto::Secret> make() override;
    Done forget() override;

private:
    struct Look {
        bool answered = false;
        bool kept = false;
        bool locked = false;
    };
    Look look() const;
    bool isOpenForNew() const;
    bool isNamed(const QString& service) const;
    bool asksWallet() const;
    QDBusMessage ask(const QString& path, const QString& interface, const QString& method, const QVariantList& arguments) const;

    std::shared_ptr<KeyringThread> m_thread;
    QString m_entry;
    Where m_where;
    QDBusConnection m_bus;
    Waits m_waits;
};

}  // namespace ebbline::keyring
