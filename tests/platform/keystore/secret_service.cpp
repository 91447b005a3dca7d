#include "tests/platform/keystore/secret_service.h"

#include <QDBusArgument>
#include <QDBusMetaType>
#include <QDBusVariant>

namespace ebbline::test {

/// A secret on its way: (oayays) of the Secret Service API.
struct Carried {
    QDBusObjectPath session;
    QByteArray parameters;
    QByteArray value;
    QString contentType;
};
using CarriedByItem = QMap<QDBusObjectPath, Carried>;
using Paths = QList<QDBusObjectPath>;

QDBusArgument& operator<<(QDBusArgument& out, const Carried& secret)
{
    out.beginStructure();
    out << secret.session << secret.parameters << secret.value << secret.contentType;
    out.endStructure();
    return out;
}

const QDBusArgument& operator>>(const QDBusArgument& in, Carried& secret)
{
    in.beginStructure();
    in >> secret.session >> secret.parameters >> secret.value >> secret.contentType;
    in.endStructure();
    return in;
}

}  // namespace ebbline::test

Q_DECLARE_METATYPE(ebbline::test::Carried)

namespace ebbline::test {

namespace {

const QString root = QStringLiteral("/org/freedesktop/secrets");
const QString portalRoot = QStringLiteral("/org/freedesktop/portal/desktop");
const QString name = QStringLiteral("org.freedesktop.secrets");
const QString portalName = QStringLiteral("org.freedesktop.portal.Desktop");
const QDBusObjectPath nothing(QStringLiteral("/"));
const QDBusObjectPath session(root + QStringLiteral("/session/s1"));
const QDBusObjectPath usual(root + QStringLiteral("/collection/login"));
const QDBusObjectPath item(root + QStringLiteral("/collection/login/1"));
const QDBusObjectPath question(root + QStringLiteral("/prompt/p1"));

QVariant paths(const Paths& list)
{
    return QVariant::fromValue(list);
}

QVariant path(const QDBusObjectPath& one)
{
    return QVariant::fromValue(one);
}

}  // namespace

SecretService::SecretService(QDBusConnection bus) : m_bus(std::move(bus))
{
    qDBusRegisterMetaType<Attributes>();
    qDBusRegisterMetaType<Carried>();
    qDBusRegisterMetaType<CarriedByItem>();
    m_bus.registerVirtualObject(root, this, QDBusConnection::SubPath);
    m_bus.registerVirtualObject(portalRoot, this, QDBusConnection::SubPath);
    moveToThread(&m_thread);
    m_thread.start();
}

SecretService::~SecretService()
{
    stop();
    m_bus.unregisterObject(root, QDBusConnection::UnregisterTree);
    m_bus.unregisterObject(portalRoot, QDBusConnection::UnregisterTree);
    m_thread.quit();
    m_thread.wait();
}

bool SecretService::start()
{
    return m_bus.registerService(name) && m_bus.registerService(portalName);
}

void SecretService::stop()
{
    m_bus.unregisterService(name);
    m_bus.unregisterService(portalName);
}

void SecretService::reset()
{
    const std::lock_guard lock(m_mutex);
    if (m_questionOpen)
        completed(Keyring::Person::refuses);
    m_keyring = Keyring{};
}

void SecretService::answer(Keyring::Person person)
{
    const std::lock_guard lock(m_mutex);
    if (m_questionOpen)
        completed(person);
}

void SecretService::completed(Keyring::Person person)
{
    m_questionOpen = person == Keyring::Person::away;
    if (m_questionOpen)
        return;
    const bool agreed = person == Keyring::Person::agrees;
    m_keyring.locked = m_keyring.locked && !agreed;
    auto signal = QDBusMessage::createSignal(question.path(), QStringLiteral("org.freedesktop.Secret.Prompt"), QStringLiteral("Completed"));
    signal << !agreed << QVariant::fromValue(QDBusVariant(paths(agreed ? Paths{item} : Paths{})));
    m_bus.send(signal);
}

bool SecretService::isFound(const Attributes& wanted) const
{
    if (!m_keyring.kept)
        return false;
    for (auto it = wanted.begin(); it != wanted.end(); ++it)
        if (m_keyring.attributes.value(it.key()) != it.value())
            return false;
    return true;
}

QVariantMap SecretService::propertiesOf(const QString& interface) const
{
    if (interface == QLatin1String("org.freedesktop.Secret.Service"))
        return {{QStringLiteral("Collections"), paths(m_keyring.hasUsual ? Paths{usual} : Paths{})}};
    if (interface == QLatin1String("org.freedesktop.portal.Secret"))
        return m_keyring.portal == 0 ? QVariantMap{} : QVariantMap{{QStringLiteral("version"), m_keyring.portal}};
    if (!interface.startsWith(QLatin1String("org.freedesktop.Secret.")))
        return {};
    return {{QStringLiteral("Label"), QStringLiteral("login")}, {QStringLiteral("Locked"), m_keyring.locked}};
}

/// Empty: there is no such thing here. \pre the keyring is not silent
QVariantList SecretService::replyTo(const QDBusMessage& message)
{
    const QString member = message.member();
    const QVariantList given = message.arguments();
    if (member == QLatin1String("GetAll"))
        return {propertiesOf(given.value(0).toString())};
    if (member == QLatin1String("Get")) {
        const QVariant value = propertiesOf(given.value(0).toString()).value(given.value(1).toString());
        return value.isValid() ? QVariantList{QVariant::fromValue(QDBusVariant(value))} : QVariantList{};
    }
    if (member == QLatin1String("OpenSession") && given.value(0).toString() == QLatin1String("plain"))
        return {QVariant::fromValue(QDBusVariant(QString())), path(session)};
    if (member == QLatin1String("SearchItems")) {
        if (m_keyring.rubbish)
            return {QStringLiteral("hello")};
        const bool found = isFound(qdbus_cast<Attributes>(given.value(0)));
        return {paths(found && !m_keyring.locked ? Paths{item} : Paths{}), paths(found && m_keyring.locked ? Paths{item} : Paths{})};
    }
    if (member == QLatin1String("ReadAlias"))
        return {path(m_keyring.hasUsual ? usual : nothing)};
    if (member == QLatin1String("Unlock")) {
        if (m_keyring.locked)
            return {paths({}), path(question)};
        return {paths(qdbus_cast<Paths>(given.value(0))), path(nothing)};
    }
    if (member == QLatin1String("GetSecrets") && !m_keyring.refuses) {
        CarriedByItem out;
        if (m_keyring.kept && !m_keyring.locked)
            out.insert(item, {session, {}, *m_keyring.kept, QStringLiteral("text/plain")});
        return {QVariant::fromValue(out)};
    }
    if (member == QLatin1String("CreateItem") && !m_keyring.locked) {
        const auto properties = qdbus_cast<QVariantMap>(given.value(0));
        ++m_keyring.made;
        if (!m_keyring.forgetful) {
            m_keyring.attributes = qdbus_cast<Attributes>(properties.value(QStringLiteral("org.freedesktop.Secret.Item.Attributes")));
            m_keyring.kept = qdbus_cast<Carried>(given.value(1)).value;
        }
        return {path(item), path(nothing)};
    }
    if (member == QLatin1String("Delete") && !m_keyring.locked) {
        m_keyring.kept.reset();
        return {path(nothing)};
    }
    return {};
}

bool SecretService::handleMessage(const QDBusMessage& message, const QDBusConnection& connection)
{
    const std::lock_guard lock(m_mutex);
    if (m_keyring.silent)
        return true;
    if (message.member() == QLatin1String("Prompt")) {
        ++m_keyring.asked;
        connection.send(message.createReply());
        completed(m_keyring.person);
        return true;
    }
    const QVariantList reply = replyTo(message);
    connection.send(reply.isEmpty() ? message.createErrorReply(QDBusError::NotSupported, QStringLiteral("not here"))
                                    : message.createReply(reply));
    return true;
}

}  // namespace ebbline::test
