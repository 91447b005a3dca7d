#include "app/diary/model/lock_board.h"

#include "app/controls/typed_secret.h"
#include "app/diary/model/keys_board.h"
#include "app/diary/model/words.h"
#include "core/vault/drawn_passphrase.h"

namespace ebbline::diaryapp {

LockBoard::LockBoard(Home& home, QObject* parent) : QObject(parent), m_home(home)
{
    connect(&home, &Home::openChanged, this, [this] {
        m_recovering = false;
        m_lost = false;
        forgetDrawn();
        say({});
    });
}

LockBoard::~LockBoard()
{
    forgetDrawn();
}

void LockBoard::forgetDrawn()
{
    m_drawn.fill(QChar(0));
    m_drawn.clear();
}

void LockBoard::say(const QString& problem, const QString& repeat)
{
    m_problem = problem;
    m_repeatProblem = repeat;
    m_codeProblem.clear();
    Q_EMIT changed();
}

void LockBoard::create(const QString& passphrase, const QString& again)
{
    if (const QString fault = KeysBoard::faultOf(passphrase); !fault.isEmpty())
        return say(fault);
    if (passphrase != again)
        return say({}, tr("These two are not the same."));
    if (const Done made = m_home.create(TypedSecret(passphrase).view()); !made)
        say(errorText(made.error()));
}

void LockBoard::draw()
{
    if (!isFresh())
        return;
    forgetDrawn();
    std::string text = vault::drawPassphrase();
    m_drawn = QString::fromStdString(text);
    crypto::wipe({reinterpret_cast<std::uint8_t*>(text.data()), text.size()});
    say({});
}

void LockBoard::chooseOwn()
{
    forgetDrawn();
    say({});
}

void LockBoard::createDrawn()
{
    if (m_drawn.isEmpty())
        return;
    if (const Done made = m_home.create(TypedSecret(m_drawn).view()); !made)
        say(errorText(made.error()));
}

void LockBoard::unlock(const QString& passphrase)
{
    const Done opened = m_home.unlock(TypedSecret(passphrase).view());
    if (opened)
        return;
    if (opened.error().reason != Reason::refused)
        return say(errorText(opened.error()));
    say(m_home.isHalfWithSession()
            ? tr("This computer does not give its half of the key. If it asks for the password of its keyring, type that first. Then try again. If that does not help, use your recovery code.")
            : tr("This phone does not give its half of the key. Try again. If that does not help, use your recovery code."));
}

QString LockBoard::bothLost() const
{
    if (!isLostOffered() || !m_lost)
        return {};
    return tr("Try again first. Without passphrase and code this diary stays closed. You can join anew on another device, or on this one once the data of this app is deleted: your clinic shows a new code. Taking the app off may not delete its data. The entries you sent come back. Photographs stay with your clinic. What was not sent is lost.");
}

void LockBoard::tellLost()
{
    m_lost = isLostOffered();
    Q_EMIT changed();
}

void LockBoard::useCode(bool code)
{
    m_recovering = code && isCodeOffered();
    m_lost = false;
    say({});
}

void LockBoard::recover(const QString& code, const QString& fresh, const QString& again)
{
    const auto read = vault::RecoveryCode::fromText(code.toStdString());
    if (!read) {
        say({});
        m_codeProblem = tr("This is not a recovery code. It has 36 letters and digits in nine groups. Check each one.");
        return Q_EMIT changed();
    }
    if (const QString fault = KeysBoard::faultOf(fresh); !fault.isEmpty())
        return say(fault);
    if (fresh != again)
        return say({}, tr("These two are not the same."));
    if (const Done opened = m_home.recover(*read, TypedSecret(fresh).view()); !opened) {
        say({});
        m_codeProblem = opened.error().reason == Reason::wrongKey ? tr("This code does not open the diary. Only the newest one does.")
                                                                  : errorText(opened.error());
        Q_EMIT changed();
    }
}

}  // namespace ebbline::diaryapp
