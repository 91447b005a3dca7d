#pragma once
/// \file
/// The door: creates the clinic's vault, or opens it. A passphrase is kept only while the cost of its stretching is
/// measured, beside the interface, and wiped then.

#include "app/controls/cost_meter.h"
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
    Q_PROPERTY(bool working READ isWorking NOTIFY changed FINAL)          ///< something was begun that takes a moment
    Q_PROPERTY(QString doing READ doing NOTIFY changed FINAL)             ///< while working, to show and to read out

public:
    static constexpr int shortestPassphrase = 12;  ///< characters

    /// \param cost  of a new passphrase; empty: measured once, when one is set
    /// \param measure  how; empty: vault::calibratedCost()
    UnlockBoard(Workplace& workplace, std::optional<crypto::StretchCost> cost, QObject* parent = nullptr, controls::CostMeter::Measure measure = {});

    bool vaultExists() const { return m_workplace.vaultExists(); }
    QString title() const;
    QString text() const;
    QString problem() const { return m_problem; }
    bool isCodeOffered() const;
    bool isRecovering() const { return m_recovering; }
    bool isWorking() const { return m_meter.isBusy(); }
    QString doing() const;

    Q_INVOKABLE bool unlock(const QString& passphrase);
    Q_INVOKABLE void useCode(bool recovering);
    /// Opens with the recovery code and sets a new passphrase.
    /// \returns true once that is done; false for a problem, and while working: it goes on by itself then.
    Q_INVOKABLE bool recover(const QString& code, const QString& passphrase, const QString& again);
    /// A clinic of invented patients, to look around in.
    Q_INVOKABLE bool openDemo();
    /// \returns as recover()
    Q_INVOKABLE bool create(const QString& passphrase, const QString& again);
    /// What works stops before it has written anything.
    Q_INVOKABLE void stop();

Q_SIGNALS:
    void changed();

private:
    bool settle(const Done& outcome);
    /// Sets the new passphrase by a code that was read.
    bool renew(const vault::RecoveryCode& code, bytes::View fresh, const crypto::StretchCost& cost);
    bool isUsable(const QString& passphrase, const QString& again);

    Workplace& m_workplace;
    controls::CostMeter m_meter;
    bool m_recovering = false;
    QString m_problem;
};

}  // namespace ebbline::deskapp
