#include "app/desk/model/unlock_board.h"

#include "app/controls/typed_secret.h"
#include "app/desk/model/words.h"
#include "core/vault/ways_in.h"

#include <memory>
#include <utility>

namespace ebbline::deskapp {

UnlockBoard::UnlockBoard(Workplace& workplace, std::optional<crypto::StretchCost> cost, QObject* parent, controls::CostMeter::Measure measure)
    : QObject(parent), m_workplace(workplace),
      m_meter(cost, measure ? std::move(measure) : [&clock = workplace.clock()] { return vault::calibratedCost(clock); })
{
    connect(&m_meter, &controls::CostMeter::changed, this, &UnlockBoard::changed);
    connect(&workplace, &Workplace::openChanged, this, [this] { useCode(false); });
}

QString UnlockBoard::title() const
{
    return m_recovering ? tr("Open it with the recovery code") : vaultExists() ? tr("Unlock the desk") : tr("Set up the desk");
}

QString UnlockBoard::text() const
{
    if (m_recovering) {
        return tr("Type the code from the paper, and choose a new passphrase. The one that was lost opens nothing afterwards.");
    }
    return vaultExists() ? tr("What the desk keeps about patients is encrypted on this computer until you unlock it.")
                         : tr("Choose a passphrase of at least %Ln character(s). It encrypts what the desk keeps about patients "
                              "on this computer. Nobody can recover it for you: write it down and keep it in a safe place.",
                              nullptr, shortestPassphrase);
}

QString UnlockBoard::doing() const
{
    return isWorking() ? tr("One moment. The desk finds out how strong the lock can be on this computer.") : QString();
}

void UnlockBoard::stop()
{
    m_meter.cancel();
}

bool UnlockBoard::settle(const Done& outcome)
{
    m_problem = outcome ? QString() : errorText(outcome.error());
    Q_EMIT changed();
    return outcome.has_value();
}

bool UnlockBoard::unlock(const QString& passphrase)
{
    if (passphrase.isEmpty() || isWorking()) {
        return false;
    }
    return settle(m_workplace.unlock(TypedSecret(passphrase).view()));
}

bool UnlockBoard::openDemo()
{
    stop();
    return settle(m_workplace.openDemo());
}

bool UnlockBoard::isUsable(const QString& passphrase, const QString& again)
{
    m_problem.clear();
    if (passphrase.size() < shortestPassphrase) {
        m_problem = tr("Too short: at least %Ln character(s).", nullptr, shortestPassphrase);
    } else if (passphrase != again) {
        m_problem = tr("The two are not the same.");
    }
    Q_EMIT changed();
    return m_problem.isEmpty();
}

bool UnlockBoard::create(const QString& passphrase, const QString& again)
{
    if (isWorking() || !isUsable(passphrase, again)) {
        return false;
    }
    const auto done = std::make_shared<bool>(false);
    m_meter.ask([this, done, typed = std::make_shared<TypedSecret>(passphrase)](const crypto::StretchCost& cost) {
        *done = settle(m_workplace.create(typed->view(), cost));
    });
    return *done;
}

bool UnlockBoard::isCodeOffered() const
{
    return vaultExists() && vault::hasRecoveryCode(m_workplace.folder());
}

void UnlockBoard::useCode(bool recovering)
{
    stop();
    m_recovering = recovering && isCodeOffered();
    m_problem.clear();
    Q_EMIT changed();
}

bool UnlockBoard::recover(const QString& code, const QString& passphrase, const QString& again)
{
    if (isWorking()) {
        return false;
    }
    auto read = vault::RecoveryCode::fromText(code.toStdString());
    if (!read) {
        m_problem = tr("This is not a recovery code. It has 36 letters and digits in nine groups. Check each one.");
        Q_EMIT changed();
        return false;
    }
    if (!isUsable(passphrase, again)) {
        return false;
    }
    const auto done = std::make_shared<bool>(false);
    m_meter.ask([this, done, kept = std::make_shared<vault::RecoveryCode>(std::move(*read)),
                 fresh = std::make_shared<TypedSecret>(passphrase)](const crypto::StretchCost& cost) { *done = renew(*kept, fresh->view(), cost); });
    return *done;
}

bool UnlockBoard::renew(const vault::RecoveryCode& code, bytes::View fresh, const crypto::StretchCost& cost)
{
    auto outcome = vault::changePassphrase(m_workplace.folder(), vault::Offered::recoveryCode(code), fresh, cost, m_workplace.clock().readings());
    if (outcome) {
        outcome = m_workplace.unlock(fresh);
        if (outcome) {
            m_workplace.settle(m_workplace.desk().noteStep(records::Step::passphraseChanged, m_workplace.desk().person()));
        }
    } else if (outcome.error().reason == Reason::wrongKey) {
        m_problem = tr("This code does not open this vault. A newer one may have taken its place.");
        Q_EMIT changed();
    }
    return m_problem.isEmpty() && settle(outcome);
}

}  // namespace ebbline::deskapp
