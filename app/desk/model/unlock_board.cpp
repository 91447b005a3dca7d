#include "app/desk/model/unlock_board.h"

#include "app/desk/model/words.h"

namespace ebbline::deskapp {

UnlockBoard::UnlockBoard(Workplace& workplace, const crypto::StretchCost& cost, QObject* parent)
    : QObject(parent), m_workplace(workplace), m_cost(cost)
{
    connect(&workplace, &Workplace::openChanged, this, &UnlockBoard::changed);
}

QString UnlockBoard::title() const
{
    return vaultExists() ? tr("Unlock the desk") : tr("Set up the desk");
}

QString UnlockBoard::text() const
{
    return vaultExists() ? tr("Everything about patients is encrypted on this computer until you unlock it.")
                         : tr("Choose a passphrase of at least %Ln character(s). It encrypts everything about patients on this "
                              "computer. Nobody can recover it for you: write it down and keep it in a safe place.",
                              nullptr, shortestPassphrase);
}

bool UnlockBoard::settle(const Done& outcome)
{
    m_problem = outcome ? QString() : errorText(outcome.error());
    Q_EMIT changed();
    return outcome.has_value();
}

bool UnlockBoard::unlock(const QString& passphrase)
{
    if (passphrase.isEmpty()) {
        return false;
    }
    auto raw = passphrase.toUtf8().toStdString();
    const auto outcome = m_workplace.unlock(bytes::viewOf(raw));
    std::fill(raw.begin(), raw.end(), '\0');
    return settle(outcome);
}

bool UnlockBoard::openDemo()
{
    return settle(m_workplace.openDemo());
}

bool UnlockBoard::create(const QString& passphrase, const QString& again)
{
    if (passphrase.size() < shortestPassphrase) {
        m_problem = tr("Too short: at least %Ln character(s).", nullptr, shortestPassphrase);
        Q_EMIT changed();
        return false;
    }
    if (passphrase != again) {
        m_problem = tr("The two are not the same.");
        Q_EMIT changed();
        return false;
    }
    auto raw = passphrase.toUtf8().toStdString();
    const auto outcome = m_workplace.create(bytes::viewOf(raw), m_cost);
    std::fill(raw.begin(), raw.end(), '\0');
    return settle(outcome);
}

}  // namespace ebbline::deskapp
