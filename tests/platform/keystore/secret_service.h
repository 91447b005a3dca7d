#pragma once
/// \file
/// A keyring on the test's own bus, that does what keyrings do: keeps one item, is locked, asks a person, refuses, loses
/// what it kept, answers something else. It answers in a thread of its own, as a keyring does in a process of its own:
/// who asks it waits.

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusObjectPath>
#include <QDBusVirtualObject>
#include <QMap>
#include <QThread>
#include <QVariantMap>

#include <mutex>
#include <optional>

namespace ebbline::test {

using Attributes = QMap<QString, QString>;

/// What the test sets and sees.
struct Keyring {
    enum class Person : std::uint8_t { away, agrees, refuses };

    std::optional<QByteArray> kept = std::nullopt;  ///< as it was stored: the library writes base64
    Attributes attributes;
    bool locked = false;
    bool hasUsual = true;    ///< a keyring that new secrets go to
    bool refuses = false;    ///< gives no secret out although it is open
    bool silent = false;     ///< takes calls and never answers
    bool rubbish = false;    ///< answers a search with a word
    bool forgetful = false;  ///< takes an item and keeps nothing
    Person person = Person::away;
    int made = 0;   ///< items
    int asked = 0;  ///< windows that were brought
    uint portal = 0;  ///< version of the desktop's portal for secrets; 0: it has none
};

class SecretService final : public QDBusVirtualObject {
    Q_OBJECT

public:
    /// \param bus  of the test, a connection of its own
    explicit SecretService(QDBusConnection bus);
    ~SecretService() override;
    bool start();
    void stop();
    /// It behaves well again and keeps nothing; a question that is still open is put away.
    void reset();
    /// The person comes back to the question that is open.
    void answer(Keyring::Person person);
    /// Changes or reads the keyring while it is not answering anybody.
    template<typename Act>
    auto with(Act act)
    {
        const std::lock_guard lock(m_mutex);
        return act(m_keyring);
    }

    QString introspect(const QString&) const override { return {}; }
    bool handleMessage(const QDBusMessage& message, const QDBusConnection& connection) override;

private:
    QVariantList replyTo(const QDBusMessage& message);
    QVariantMap propertiesOf(const QString& interface) const;
    bool isFound(const Attributes& wanted) const;
    void completed(Keyring::Person person);

    QDBusConnection m_bus;
    QThread m_thread;
    std::mutex m_mutex;
    Keyring m_keyring;
    bool m_questionOpen = false;
};

}  // namespace ebbline::test
