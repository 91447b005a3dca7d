#pragma once
/// \file
/// Making a diary, and opening it again.

#include "app/diary/model/home.h"

#include <QtQml/qqmlregistration.h>

namespace ebbline::diaryapp {

class LockBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(bool fresh READ isFresh NOTIFY changed FINAL)       ///< there is no diary yet
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(QString repeatProblem READ repeatProblem NOTIFY changed FINAL)

public:
    static constexpr int shortest = 15;  ///< characters; a short secret can be searched for offline

    explicit LockBoard(Home& home, QObject* parent = nullptr);

    bool isFresh() const { return !m_home.exists(); }
    QString problem() const { return m_problem; }
    QString repeatProblem() const { return m_repeatProblem; }

    /// Makes the diary if both are the same and long enough.
    Q_INVOKABLE void create(const QString& passphrase, const QString& again);
    Q_INVOKABLE void unlock(const QString& passphrase);

Q_SIGNALS:
    void changed();

private:
    void say(const QString& problem, const QString& repeat = {});
    Home& m_home;
    QString m_problem;
    QString m_repeatProblem;
};

}  // namespace ebbline::diaryapp
