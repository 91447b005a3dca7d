#include "app/diary/model/lock_board.h"

#include "app/diary/model/words.h"

namespace ebbline::diaryapp {

LockBoard::LockBoard(Home& home, QObject* parent) : QObject(parent), m_home(home)
{
    connect(&home, &Home::openChanged, this, [this] { say({}); });
}

void LockBoard::say(const QString& problem, const QString& repeat)
{
    m_problem = problem;
    m_repeatProblem = repeat;
    Q_EMIT changed();
}

void LockBoard::create(const QString& passphrase, const QString& again)
{
    if (passphrase.size() < shortest)
        return say(tr("Use at least %1 letters. Four or five words are easy to keep in mind.").arg(digits(shortest)));
    if (passphrase != again)
        return say({}, tr("These two are not the same."));
    QByteArray secret = passphrase.toUtf8();
    const Done made = m_home.create({reinterpret_cast<const std::uint8_t*>(secret.constData()), static_cast<std::size_t>(secret.size())});
    secret.fill('\0');
    if (!made)
        say(errorText(made.error()));
}

void LockBoard::unlock(const QString& passphrase)
{
    QByteArray secret = passphrase.toUtf8();
    const Done opened = m_home.unlock({reinterpret_cast<const std::uint8_t*>(secret.constData()), static_cast<std::size_t>(secret.size())});
    secret.fill('\0');
    if (!opened)
        say(errorText(opened.error()));
}

}  // namespace ebbline::diaryapp
