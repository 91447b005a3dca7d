#include "app/diary/model/secret_sight.h"

#include "app/diary/model/keys_board.h"
#include "app/diary/model/lock_board.h"

#include <QGuiApplication>
#include <QSet>

namespace ebbline::diaryapp {

namespace {

/// Fewer different characters than this in a long passphrase are worth a word; they forbid nothing. Our own choice, no source.
constexpr qsizetype fewDifferent = 6;

}  // namespace

SecretSight::SecretSight(QObject* parent) : QObject(parent)
{
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState state) {
        if (state != Qt::ApplicationActive)
            setShown(false);
    });
    qGuiApp->installEventFilter(this);
}

bool SecretSight::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == qGuiApp && event->type() == QEvent::LanguageChange)
        Q_EMIT changed();
    return QObject::eventFilter(watched, event);
}

void SecretSight::setShown(bool shown)
{
    if (shown == m_shown)
        return;
    m_shown = shown;
    Q_EMIT changed();
}

void SecretSight::weigh(const QString& text)
{
    m_letters = text.size();
    m_different = QSet<QChar>(text.begin(), text.end()).size();
    Q_EMIT changed();
}

QString SecretSight::meter() const
{
    if (m_letters == 0)
        return KeysBoard::faultOf({});
    if (m_letters < LockBoard::shortest)
        return tr("%n letter(s) more.", "", static_cast<int>(LockBoard::shortest - m_letters));
    return m_different < fewDifferent ? tr("Long enough. But a few letters, again and again, are easy to guess.") : tr("Long enough.");
}

}  // namespace ebbline::diaryapp
