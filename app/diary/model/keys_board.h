#pragma once
/// \file
/// The lock of the diary: changing the passphrase, and the recovery code on paper.

#include "app/controls/code_on_paper.h"
#include "app/diary/model/home.h"

#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace ebbline::diaryapp {

class KeysBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString oldProblem READ oldProblem NOTIFY changed FINAL)
    Q_PROPERTY(QString newProblem READ newProblem NOTIFY changed FINAL)
    Q_PROPERTY(QString repeatProblem READ repeatProblem NOTIFY changed FINAL)
    Q_PROPERTY(QString outcome READ outcome NOTIFY changed FINAL)          ///< of the last change
    Q_PROPERTY(QString codeState READ codeState NOTIFY changed FINAL)      ///< whether there is a code
    Q_PROPERTY(QString phoneHalf READ phoneHalf NOTIFY changed FINAL)      ///< that the passphrase needs this phone too; empty: it does not
    Q_PROPERTY(QString codeUnread READ codeUnread NOTIFY changed FINAL)    ///< that nothing of the code was read from paper, and what waits for it; empty: nothing does
    Q_PROPERTY(QString codeProblem READ codeProblem NOTIFY changed FINAL)
    Q_PROPERTY(QString code READ code NOTIFY changed FINAL)                ///< until it was read back from the paper; empty otherwise
    Q_PROPERTY(bool asking READ isAsking NOTIFY changed FINAL)             ///< for a group of it, from the paper; it is out of sight then
    Q_PROPERTY(QString askedText READ askedText NOTIFY changed FINAL)      ///< for which group
    Q_PROPERTY(QString askedProblem READ askedProblem NOTIFY changed FINAL)
    Q_PROPERTY(QString pageOutcome READ pageOutcome NOTIFY changed FINAL)  ///< of the page to print
    Q_PROPERTY(bool working READ isWorking NOTIFY changed FINAL)           ///< something was begun that takes a moment
    Q_PROPERTY(QString doing READ doing NOTIFY changed FINAL)              ///< while working, to show and to read out
    Q_PROPERTY(QString makeWord READ makeWord NOTIFY changed FINAL)        ///< "Make a code", "Make a new code"

public:
    explicit KeysBoard(Home& home, QObject* parent = nullptr);

    QString oldProblem() const { return m_oldProblem; }
    QString newProblem() const { return m_newProblem; }
    QString repeatProblem() const { return m_repeatProblem; }
    QString outcome() const { return m_outcome; }
    QString codeState() const;
    QString phoneHalf() const;
    QString codeUnread() const;
    QString codeProblem() const { return m_codeProblem; }
    QString code() const { return m_code.code(); }
    bool isAsking() const { return m_code.isAsking(); }
    QString askedText() const;
    QString askedProblem() const { return m_askedProblem; }
    QString pageOutcome() const { return m_pageOutcome; }
    /// From 1 to 9. \pre isAsking()
    int askedGroup() const { return m_code.askedGroup(); }
    QString makeWord() const;
    bool isWorking() const { return m_home.meter().isBusy(); }
    QString doing() const;

    Q_INVOKABLE void change(const QString& old, const QString& fresh, const QString& again);
    /// Asks for the passphrase again, so that a diary left open does not give itself away.
    Q_INVOKABLE void makeCode(const QString& passphrase);
    /// The diary locked while a code was not read back: says that it is not shown again.
    void sayCodeIsGone();
    static QString goneText();
    /// She says that it is written down: a group of it, another one each time, is asked back before it goes for good.
    Q_INVOKABLE void askBack();
    /// It is not: shows it once more.
    Q_INVOKABLE void showCode();
    /// It stands on the paper: it is shown no more, and that it was read is kept. Anything else keeps it, to be shown once more;
    /// nothing is counted.
    /// `typed`: the group that was asked for, or the whole code.
    Q_INVOKABLE void readBack(const QString& typed);
    /// Writes a page to print with the code on it, as plain as the paper, where she chose to.
    Q_INVOKABLE void savePage(const QUrl& file);
    /// What works stops before it has written anything.
    Q_INVOKABLE void stop();
    /// Nothing works, and nothing is shown.
    void clear();

    /// What is wrong with a new passphrase; empty: nothing.
    static QString faultOf(const QString& fresh);

Q_SIGNALS:
    void changed();

private:
    void forget();
    void set(bytes::View old, bytes::View fresh);
    void renew(bytes::View passphrase);
    Home& m_home;
    QString m_oldProblem;
    QString m_newProblem;
    QString m_repeatProblem;
    QString m_outcome;
    QString m_codeProblem;
    controls::CodeOnPaper m_code;
    QString m_askedProblem;
    QString m_pageOutcome;
};

}  // namespace ebbline::diaryapp
