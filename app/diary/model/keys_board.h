#pragma once
/// \file
/// The lock of the diary: changing the passphrase, and the recovery code on paper.

#include "app/diary/model/home.h"

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
    Q_PROPERTY(QString codeProblem READ codeProblem NOTIFY changed FINAL)
    Q_PROPERTY(QString code READ code NOTIFY changed FINAL)                ///< shown once; empty otherwise
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
    QString codeProblem() const { return m_codeProblem; }
    QString code() const { return m_code; }
    QString makeWord() const;
    bool isWorking() const { return m_home.meter().isBusy(); }
    QString doing() const;

    Q_INVOKABLE void change(const QString& old, const QString& fresh, const QString& again);
    /// Asks for the passphrase again, so that a diary left open does not give itself away.
    Q_INVOKABLE void makeCode(const QString& passphrase);
    /// The diary locked while a code was in sight: says that it is not shown again.
    void sayCodeIsGone();
    /// The code was written down: it is shown no more.
    Q_INVOKABLE void hideCode();
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
    QString m_code;
};

}  // namespace ebbline::diaryapp
