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
    Q_PROPERTY(bool codeOffered READ isCodeOffered NOTIFY changed FINAL)  ///< a recovery code was made for this vault
    Q_PROPERTY(bool recovering READ isRecovering NOTIFY changed FINAL)    ///< by it, to a new passphrase

public:
    static constexpr int shortestPassphrase = 12;  ///< characters

    UnlockBoard(Workplace& workplace, std::optional<crypto::StretchCost> cost, QObject* parent = nullptr);

    bool vaultExists() const { return m_workplace.vaultExists(); }
    QString title() const;
    QString text() const;
    QString problem() const { return m_problem; }
    bool isCodeOffered() const;
    bool isRecovering() const { return m_recovering; }

    Q_INVOKABLE bool unlock(const QString& passphrase);
    Q_INVOKABLE void useCode(bool recovering);
    /// Opens with the recovery code and sets a new passphrase.
    Q_INVOKABLE bool recover(const QString& code, const QString& passphrase, const QString& again);
    /// A clinic of invented patients, to look around in.
    Q_INVOKABLE bool openDemo();
    Q_INVOKABLE bool create(const QString& passphrase, const QString& again);

Q_SIGNALS:
    void changed();

private:
    bool settle(const Done& outcome);
    crypto::StretchCost cost() const { return m_cost ? *m_cost : vault::calibratedCost(m_workplace.clock()); }
    bool isUsable(const QString& passphrase, const QString& again);

    Workplace& m_workplace;
    std::optional<crypto::StretchCost> m_cost;
    bool m_recovering = false;
    QString m_problem;
};

}  // namespace ebbline::deskapp
