#pragma once
/// \file
/// The door: creates the clinic's vault, or opens it. A passphrase is never kept here.

#include "app/desk/model/workplace.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace ebbline::deskapp {

class UnlockBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(bool vaultExists READ vaultExists NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString text READ text NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)

public:
    static constexpr int shortestPassphrase = 12;  ///< characters

    UnlockBoard(Workplace& workplace, const crypto::StretchCost& cost, QObject* parent = nullptr);

    bool vaultExists() const { return m_workplace.vaultExists(); }
    QString title() const;
    QString text() const;
    QString problem() const { return m_problem; }

    Q_INVOKABLE bool unlock(const QString& passphrase);
    /// A clinic of invented patients, to look around in.
    Q_INVOKABLE bool openDemo();
    Q_INVOKABLE bool create(const QString& passphrase, const QString& again);

Q_SIGNALS:
    void changed();

private:
    bool settle(const Done& outcome);

    Workplace& m_workplace;
    crypto::StretchCost m_cost;
    QString m_problem;
};

}  // namespace ebbline::deskapp
