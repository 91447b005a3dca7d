#include "app/diary/model/keys_board.h"

#include "app/controls/typed_secret.h"
#include "app/diary/model/chosen_place.h"
#include "app/diary/model/lock_board.h"
#include "app/diary/model/words.h"

#include <QBuffer>
#include <QGuiApplication>
#include <QPdfWriter>
#include <QTextDocument>
#include <QTextOption>

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
    m_code.forget();
    for (QString* text : {&m_oldProblem, &m_newProblem, &m_repeatProblem, &m_outcome, &m_codeProblem, &m_askedProblem, &m_pageOutcome})
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

QString KeysBoard::codeUnread() const
{
    if (!m_home.isOpen() || m_code.isThere() || !m_home.isCodeUnread())
        return {};
    if (m_home.isBoundToDevice())
        return tr("Your newest code was not read back from your paper. If it is not there, make a new one. If this device loses its half of the key, only that code opens the diary.");
    return m_home.hasKeyStore()
               ? tr("This device could keep half of your key. It waits until a code was read back from your paper. For that, make a new code.")
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
        m_code.show(QString::fromStdString(made->text()));
    else
        m_codeProblem = errorText(made.error());
    Q_EMIT changed();
}

void KeysBoard::sayCodeIsGone()
{
    clear();
    m_outcome = goneText();
    Q_EMIT changed();
}

QString KeysBoard::goneText()
{
    return tr("The code is not shown any more. If it is not on your paper, make a new one.");
}

QString KeysBoard::askedText() const
{
    return isAsking() ? tr("From your paper: group %1 of %2").arg(digits(askedGroup()), digits(controls::CodeOnPaper::groups())) : QString();
}

void KeysBoard::askBack()
{
    if (!m_code.ask())
        return;
    m_pageOutcome.clear();
    Q_EMIT changed();
}

void KeysBoard::showCode()
{
    m_code.showAgain();
    m_askedProblem.clear();
    Q_EMIT changed();
}

void KeysBoard::readBack(const QString& typed)
{
    if (!isAsking())
        return;
    if (!m_code.isOnPaper(typed)) {
        m_askedProblem = tr("That is not this group. Look at your paper again. If it is not there, show the code once more.");
        return Q_EMIT changed();
    }
    if (const Done noted = m_home.noteCodeOnPaper(); !noted) {
        m_askedProblem = errorText(noted.error());
        return Q_EMIT changed();
    }
    clear();
    m_outcome = tr("Good. Keep the paper where only you find it.");
    Q_EMIT changed();
}

void KeysBoard::savePage(const QUrl& file)
{
    if (!m_code.isThere() || isAsking())
        return;
    QByteArray page;
    {
        QBuffer out(&page);
        out.open(QIODevice::WriteOnly);
        QPdfWriter writer(&out);
        writer.setPageSize(QPageSize(QPageSize::A4));
        writer.setPageMargins(QMarginsF(20, 20, 20, 20), QPageLayout::Millimeter);
        QTextDocument document;
        document.setDefaultFont(QGuiApplication::font());
        QTextOption option;
        option.setTextDirection(QGuiApplication::layoutDirection());
        document.setDefaultTextOption(option);
        document.setHtml(QStringLiteral("<h2>%1</h2><p>%2</p><p dir=\"ltr\"><big><b>%3</b></big></p>")
                             .arg(tr("The recovery code of my diary").toHtmlEscaped(), tr("It opens the diary with a new passphrase. Keep it where only you find it.").toHtmlEscaped(), code()));
        document.print(&writer);
    }
    m_pageOutcome = writeChosen(nameOfChosen(file), page)
                        ? tr("Done. Print the page, then delete the file: whoever finds it can open your diary.")
                        : tr("The file could not be written there. Choose another place.");
    page.fill('\0');
    Q_EMIT changed();
}

}  // namespace ebbline::diaryapp
