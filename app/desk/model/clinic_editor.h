#pragma once
/// \file
/// The clinic: its name, whom a patient calls, and who works at this desk.

#include "app/desk/model/workplace.h"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace ebbline::deskapp {

class ClinicEditor : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString clinicName MEMBER m_name NOTIFY changed FINAL)
    Q_PROPERTY(QString clinicPhone MEMBER m_phone NOTIFY changed FINAL)
    Q_PROPERTY(QString onCallPhone MEMBER m_onCall NOTIFY changed FINAL)
    Q_PROPERTY(QString emergencyNumber MEMBER m_emergency NOTIFY changed FINAL)
    Q_PROPERTY(QString people MEMBER m_people NOTIFY changed FINAL)  ///< one name a line
    Q_PROPERTY(QString hub MEMBER m_hub NOTIFY changed FINAL)        ///< "host:port"
    /// SHA-256 of the hub's public key, 64 hexadecimal digits; asked for again when the hub changes.
    Q_PROPERTY(QString hubKey MEMBER m_hubKey NOTIFY changed FINAL)
    Q_PROPERTY(bool hubKeyAsked READ isHubKeyAsked NOTIFY changed FINAL)
    /// The clinic's public root key, 64 hexadecimal digits: what a hub admits it by. No secret.
    Q_PROPERTY(QString clinicKey READ clinicKey NOTIFY changed FINAL)
    Q_PROPERTY(QStringList missing READ missing NOTIFY changed FINAL)
    Q_PROPERTY(QString saved READ saved NOTIFY changed FINAL)
    Q_PROPERTY(QString contactsText READ contactsText NOTIFY changed FINAL)  ///< as recorded
    Q_PROPERTY(bool numbersChanged READ areNumbersChanged NOTIFY changed FINAL)  ///< against what is recorded: saving asks for the passphrase
    Q_PROPERTY(bool namesChanged READ areNamesChanged NOTIFY changed FINAL)  ///< people or the clinic's name, against what is recorded
    Q_PROPERTY(bool hubRenamed READ isHubRenamed NOTIFY changed FINAL)       ///< against what is recorded
    Q_PROPERTY(QString stepProblem READ stepProblem NOTIFY changed FINAL)
    Q_PROPERTY(bool described READ isDescribed NOTIFY peopleChanged FINAL)
    Q_PROPERTY(QString person READ person WRITE setPerson NOTIFY peopleChanged FINAL)

public:
    explicit ClinicEditor(Workplace& workplace, QObject* parent = nullptr);

    /// Takes what is recorded.
    void open();
    QStringList missing() const;
    bool isHubKeyAsked() const;
    QString clinicKey() const;
    QString contactsText() const;
    QString saved() const { return m_saved; }
    bool isDescribed() const;
    QString person() const;
    void setPerson(const QString& name);

    bool areNumbersChanged() const;
    bool areNamesChanged() const;
    bool isHubRenamed() const;
    QString stepProblem() const { return m_stepProblem; }

    /// `passphrase`: of this desk, if numbers to call changed.
    Q_INVOKABLE bool save(const QString& passphrase = {});
    Q_INVOKABLE void copyClinicKey();  ///< to the clipboard

Q_SIGNALS:
    void changed();
    void peopleChanged();

private:
    QStringList peopleLines() const;
    bool mayChange() const;
    QString recordedHub() const;  ///< \pre the workplace is open
    QString typed() const;        ///< all fields, to be kept
    void keep();
    void takeUpBegun();

    Workplace& m_workplace;
    QString m_name;
    QString m_phone;
    QString m_onCall;
    QString m_emergency;
    QString m_people;
    QString m_hub;
    QString m_hubKey;
    QString m_saved;
    QString m_stepProblem;
    QString m_opened;  ///< the fields as recorded
};

/// This very machine: the only place where a hub may be reached without TLS.
bool isThisMachine(const QString& hostAndPort);

}  // namespace ebbline::deskapp
