#include "app/diary/model/keys_board.h"

#include "app/controls/typed_secret.h"
#include "app/diary/model/lock_board.h"
#include "app/diary/model/words.h"

#include <memory>

namespace ebbline::diaryapp {

KeysBoard::KeysBoard(Home& home, QObject* parent) : QObject(parent), m_home(home)
{
    connect(&home, &Home::openChanged, this, &KeysBoard::clear);
    connect(&home.meter(), &controls::CostMeter::changed, this, &KeysBoard::changed);
}

void KeysBoard::stop()
{
    m_home.meter().cancel();
}

QString KeysBoard::doing() const
{
    return isWorking() ? LockBoard::doingWord() : QString();
}

void KeysBoard::clear()
{
    stop();
    forget();
}

void KeysBoard::forget()
{
    m_code.fill(QChar(0));
    for (QString* text : {&m_oldProblem, &m_newProblem, &m_repeatProblem, &m_outcome, &m_codeProblem, &m_code})
        text->clear();
    Q_EMIT changed();
}

QString KeysBoard::faultOf(const QString& fresh)
{
    if (fresh.size() >= LockBoard::shortest)
        return {};
    return LockBoard::tr("Use at least %1 letters. Four or five words are easy to keep in mind.").arg(digits(LockBoard::shortest));
}

QString KeysBoard::codeState() const
{
    return m_home.hasRecoveryCode() ? tr("You have a recovery code. It is not stored here, only on your paper.")
                                    : tr("You have no recovery code yet.");
}

QString KeysBoard::phoneHalf() const
{
    if (m_home.isBoundToDevice() && m_home.isHalfWithSession())
        return tr("Your passphrase needs this computer too: its keyring, which your login opens, keeps the other half of the key. If the half is lost, or the diary is moved, only the recovery code opens the diary.");
    return m_home.isBoundToDevice()
               ? tr("Your passphrase needs this phone too: the phone keeps the other half of the key. If the phone loses it, only the recovery code opens the diary.")
               : QString();
}

QString KeysBoard::makeWord() const
{
    return m_home.hasRecoveryCode() ? tr("Make a new code") : tr("Make a code");
}

void KeysBoard::change(const QString& old, const QString& fresh, const QString& again)
{
    if (isWorking())
        return;
    clear();
    m_newProblem = faultOf(fresh);
    if (m_newProblem.isEmpty() && fresh != again)
        m_repeatProblem = tr("These two are not the same.");
    Q_EMIT changed();
    if (m_newProblem.isEmpty() && m_repeatProblem.isEmpty())
        m_home.meter().ask([this, now = std::make_shared<TypedSecret>(old), next = std::make_shared<TypedSecret>(fresh)](
                               const crypto::StretchCost&) { set(now->view(), next->view()); });
}

void KeysBoard::set(bytes::View old, bytes::View fresh)
{
    const Done changedIt = m_home.changePassphrase(old, fresh);
    if (changedIt)
        m_outcome = tr("Done. From now on only the new passphrase opens the diary.");
    else
        m_oldProblem = errorText(changedIt.error());
    Q_EMIT changed();
}

void KeysBoard::makeCode(const QString& passphrase)
{
    if (isWorking())
        return;
    clear();
    m_home.meter().ask([this, typed = std::make_shared<TypedSecret>(passphrase)](const crypto::StretchCost&) { renew(typed->view()); });
}

void KeysBoard::renew(bytes::View passphrase)
{
    const auto made = m_home.renewRecoveryCode(passphrase);
    if (made)
        m_code = QString::fromStdString(made->text());
    else
        m_codeProblem = errorText(made.error());
    Q_EMIT changed();
}

void KeysBoard::sayCodeIsGone()
{
    clear();
    m_outcome = tr("The code is not shown any more. If it is not on your paper, make a new one.");
    Q_EMIT changed();
}

void KeysBoard::hideCode()
{
    clear();
    m_outcome = tr("Good. Keep the paper where only you find it.");
    Q_EMIT changed();
}

}  // namespace ebbline::diaryapp
