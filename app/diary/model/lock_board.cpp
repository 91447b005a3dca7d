#include "app/diary/model/lock_board.h"

#include "app/controls/typed_secret.h"
#include "app/diary/model/keys_board.h"
#include "app/diary/model/words.h"
#include "core/vault/drawn_passphrase.h"

#include <memory>
#include <string_view>
#include <utility>

namespace ebbline::diaryapp {

LockBoard::LockBoard(Home& home, QObject* parent) : QObject(parent), m_home(home)
{
    connect(&home.meter(), &controls::CostMeter::changed, this, &LockBoard::changed);
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
    m_asking = false;
}

void LockBoard::say(const QString& problem, const QString& repeat)
{
    m_problem = problem;
    m_repeatProblem = repeat;
    m_codeProblem.clear();
    Q_EMIT changed();
}

QString LockBoard::doingWord()
{
    return tr("One moment. The diary finds out how strong the lock can be on this phone.");
}

QString LockBoard::doing() const
{
    return isWorking() ? doingWord() : QString();
}

void LockBoard::stop()
{
    m_home.meter().cancel();
}

void LockBoard::makeDiary(const QString& passphrase)
{
    m_home.meter().ask([this, typed = std::make_shared<TypedSecret>(passphrase)](const crypto::StretchCost&) {
        if (const Done made = m_home.create(typed->view()); !made)
            say(errorText(made.error()));
    });
}

void LockBoard::create(const QString& passphrase, const QString& again)
{
    if (isWorking())
        return;
    if (const QString fault = KeysBoard::faultOf(passphrase); !fault.isEmpty())
        return say(fault);
    if (passphrase != again)
        return say({}, tr("These two are not the same."));
    makeDiary(passphrase);
}

void LockBoard::draw()
{
    if (!isFresh())
        return;
    stop();
    forgetDrawn();
    std::string text = vault::drawPassphrase();
    m_drawn = QString::fromStdString(text);
    crypto::wipe({reinterpret_cast<std::uint8_t*>(text.data()), text.size()});
    say({});
}

void LockBoard::chooseOwn()
{
    stop();
    forgetDrawn();
    say({});
}

QString LockBoard::askedText() const
{
    return m_asking ? tr("From your paper: group %1 and group %2").arg(digits(m_groups[0]), digits(m_groups[1])) : QString();
}

void LockBoard::askBack()
{
    if (m_drawn.isEmpty() || m_asking)
        return;
    m_groups = vault::groupsToAsk();
    m_asking = true;
    say({});
}

void LockBoard::showDrawn()
{
    stop();
    m_asking = false;
    say({});
}

void LockBoard::createDrawn(const QString& typed)
{
    if (!m_asking || isWorking())
        return;
    const TypedSecret paper(typed);
    const TypedSecret whole(m_drawn);
    const auto text = [](const TypedSecret& secret) {
        return std::string_view(reinterpret_cast<const char*>(secret.view().data()), secret.view().size());
    };
    if (!vault::saysGroups(text(whole), m_groups, text(paper)))
        return say(tr("That is not what was drawn. Look at your paper again. If it is not there, show it once more."));
    say({});
    makeDiary(m_drawn);
}

void LockBoard::unlock(const QString& passphrase)
{
    if (isWorking())
        return;
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
    stop();
    m_recovering = code && isCodeOffered();
    m_lost = false;
    say({});
}

void LockBoard::recover(const QString& code, const QString& fresh, const QString& again)
{
    if (isWorking())
        return;
    auto read = vault::RecoveryCode::fromText(code.toStdString());
    if (!read) {
        say({});
        m_codeProblem = tr("This is not a recovery code. It has 36 letters and digits in nine groups. Check each one.");
        return Q_EMIT changed();
    }
    if (const QString fault = KeysBoard::faultOf(fresh); !fault.isEmpty())
        return say(fault);
    if (fresh != again)
        return say({}, tr("These two are not the same."));
    m_home.meter().ask([this, kept = std::make_shared<vault::RecoveryCode>(std::move(*read)),
                        typed = std::make_shared<TypedSecret>(fresh)](const crypto::StretchCost&) { renew(*kept, typed->view()); });
}

void LockBoard::renew(const vault::RecoveryCode& code, bytes::View fresh)
{
    if (const Done opened = m_home.recover(code, fresh); !opened) {
        say({});
        m_codeProblem = opened.error().reason == Reason::wrongKey ? tr("This code does not open the diary. Only the newest one does.")
                                                                  : errorText(opened.error());
        Q_EMIT changed();
    }
}

}  // namespace ebbline::diaryapp
