#include "platform/linux/secret_service_keeper.h"

#include <QDBusConnectionInterface>
#include <QDBusMessage>
#include <QDBusMetaType>
#include <QDBusObjectPath>
#include <QDBusPendingReply>
#include <QDBusVariant>
#include <QDir>
#include <QFileInfo>
#include <QLibrary>
#include <QMap>

#include <algorithm>
#include <array>

namespace ebbline::keyring {

namespace {

using Attributes = QMap<QString, QString>;
using Paths = QList<QDBusObjectPath>;

const QString secrets = QStringLiteral("org.freedesktop.secrets");
const QString secretsPath = QStringLiteral("/org/freedesktop/secrets");
const QString secretsInterface = QStringLiteral("org.freedesktop.Secret.Service");
const QString collection = QStringLiteral("org.freedesktop.Secret.Collection");
const QString portal = QStringLiteral("org.freedesktop.portal.Desktop");
const QString portalPath = QStringLiteral("/org/freedesktop/portal/desktop");
const QString properties = QStringLiteral("org.freedesktop.DBus.Properties");
const std::array wallets{QStringLiteral("org.kde.kwalletd"), QStringLiteral("org.kde.kwalletd5"), QStringLiteral("org.kde.kwalletd6")};

std::unexpected<Error> silent()
{
    return fail(Reason::storageFailed, "keyring: it does not answer now");
}

}  // namespace

QString entryFor(const QString& folder)
{
    return QStringLiteral("diary-secret ") + QDir::cleanPath(QFileInfo(folder).absoluteFilePath());
}

SecretServiceKeeper::SecretServiceKeeper(std::shared_ptr<KeyringThread> thread, QString entry, Where where, QDBusConnection bus, Waits waits)
    : m_thread(std::move(thread)), m_entry(std::move(entry)), m_where(where), m_bus(std::move(bus)), m_waits(waits)
{
    qDBusRegisterMetaType<Attributes>();
}

bool SecretServiceKeeper::isThere() const
{
    // The library's own way to libsecret; without it, it would ask other keyrings.
    if (!m_bus.isConnected() || !QLibrary(QStringLiteral("secret-1"), 0).load())
        return false;
    if (m_where == Where::session)
        return isNamed(secrets) && !asksWallet();
    auto call = QDBusMessage::createMethodCall(portal, portalPath, properties, QStringLiteral("Get"));
    call.setArguments({QStringLiteral("org.freedesktop.portal.Secret"), QStringLiteral("version")});
    const QDBusPendingReply<QDBusVariant> version = m_bus.call(call, QDBus::Block, static_cast<int>(m_waits.answer.count()));
    return !version.isError() && version.value().variant().toUInt() >= 1;
}

bool SecretServiceKeeper::isNamed(const QString& service) const
{
    auto* daemon = m_bus.interface();
    return daemon != nullptr
           && (daemon->isServiceRegistered(service) || daemon->activatableServiceNames().value().contains(service));
}

/// From its version 0.14 on QtKeychain asks KWallet in a session of Plasma, whenever it is there, and offers no choice.
bool SecretServiceKeeper::asksWallet() const
{
    const bool plasma = qgetenv("XDG_CURRENT_DESKTOP").contains("KDE") || qgetenv("DESKTOP_SESSION") == "kde"
                        || !qEnvironmentVariableIsEmpty("KDE_FULL_SESSION");
    return plasma && std::any_of(wallets.begin(), wallets.end(), [this](const QString& wallet) { return isNamed(wallet); });
}

QDBusMessage SecretServiceKeeper::ask(const QString& path, const QString& interface, const QString& method, const QVariantList& arguments) const
{
    auto call = QDBusMessage::createMethodCall(secrets, path, interface, method);
    call.setArguments(arguments);
    return m_bus.call(call, QDBus::Block, static_cast<int>(m_waits.answer.count()));
}

SecretServiceKeeper::Look SecretServiceKeeper::look() const
{
    const Attributes ours{{QStringLiteral("user"), m_entry}, {QStringLiteral("server"), programInKeyring()}};
    const QDBusPendingReply<Paths, Paths> found =
        ask(secretsPath, secretsInterface, QStringLiteral("SearchItems"), {QVariant::fromValue(ours)});
    if (found.isError())
        return {};
    const Paths open = found.argumentAt<0>();
    const Paths locked = found.argumentAt<1>();
    return {true, !open.isEmpty() || !locked.isEmpty(), open.isEmpty() && !locked.isEmpty()};
}

bool SecretServiceKeeper::isOpenForNew() const
{
    const QDBusPendingReply<QDBusObjectPath> usual =
        ask(secretsPath, secretsInterface, QStringLiteral("ReadAlias"), {QStringLiteral("default")});
    if (usual.isError() || usual.value().path() == QLatin1String("/"))
        return false;
    const QDBusPendingReply<QDBusVariant> locked =
        ask(usual.value().path(), properties, QStringLiteral("Get"), {collection, QStringLiteral("Locked")});
    const QVariant said = locked.isError() ? QVariant() : locked.value().variant();
    return said.typeId() == QMetaType::Bool && !said.toBool();
}

Result<crypto::Secret> SecretServiceKeeper::fetch()
{
    if (!isThere())
        return fail(Reason::unsupported, "keyring: this session has none that we use");
    auto wait = m_waits.answer;
    if (m_where == Where::session) {
        const Look seen = look();
        if (!seen.answered)
            return silent();
        if (!seen.kept)
            return fail(Reason::notFound, "keyring: no secret was made, or it is lost");
        if (seen.locked)
            wait = m_waits.person;
    }
    Answer answer = m_thread->read(m_entry, wait);
    switch (answer.said) {
    case Said::done: return std::move(*answer.secret);
    case Said::otherLength: return fail(Reason::damaged, "keyring: the secret has another length");
    case Said::notThere:
        if (m_where == Where::sandbox)
            return fail(Reason::notFound, "keyring: no secret was made, or it is lost");
        return fail(Reason::storageFailed, "keyring: the secret is there and is not given out");
    case Said::refused: return fail(Reason::storageFailed, "keyring: it refuses");
    case Said::failed:
    case Said::nothing: break;
    }
    return silent();
}

Result<crypto::Secret> SecretServiceKeeper::make()
{
    const Result<crypto::Secret> before = fetch();
    if (before || before.error().reason == Reason::damaged)
        return fail(Reason::alreadyExists, "keyring: there is a secret");
    if (before.error().reason != Reason::notFound)
        return fail(before.error());
    if (m_where == Where::session && !isOpenForNew())
        return fail(Reason::storageFailed, "keyring: none is open to keep a secret in");
    const crypto::Secret fresh = crypto::Secret::random();
    if (m_thread->write(m_entry, fresh, m_waits.answer) != Said::done)
        return fail(Reason::storageFailed, "keyring: the secret could not be kept");
    Result<crypto::Secret> back = fetch();
    if (back && !crypto::equal(back->view(), fresh.view()))
        return fail(Reason::storageFailed, "keyring: it gives back another secret");
    return back;
}

Done SecretServiceKeeper::forget()
{
    if (!isThere())
        return fail(Reason::unsupported, "keyring: this session has none that we use");
    if (m_where == Where::session) {
        const Look seen = look();
        if (seen.answered && !seen.kept)
            return {};
        if (!seen.answered)
            return silent();
    }
    const Said said = m_thread->remove(m_entry, m_waits.answer);
    if (said != Said::done && said != Said::notThere)
        return fail(Reason::storageFailed, "keyring: the secret is still there");
    if (m_where == Where::sandbox)
        return {};
    const Look after = look();
    if (!after.answered || after.kept)
        return fail(Reason::storageFailed, "keyring: the secret is still there");
    return {};
}

}  // namespace ebbline::keyring
