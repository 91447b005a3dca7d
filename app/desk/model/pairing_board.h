#pragma once
/// \file
/// Linking a patient's phone to a course, or another desk to the clinic, in the room: show a code, compare six
/// digits, confirm.

#include "app/desk/model/hub_watch.h"
#include "app/desk/model/qr_matrix.h"
#include "core/aftercare/visit.h"
#include "core/desk/inviting.h"

#include <QObject>
#include <QStringList>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

namespace ebbline::deskapp {

class PairingBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(bool forDesk READ isForDesk NOTIFY changed FINAL)      ///< another desk is invited, no phone
    Q_PROPERTY(bool owner READ isOwner WRITE setOwner NOTIFY changed FINAL)  ///< and gets the clinic's root key
    Q_PROPERTY(QStringList protocols READ protocols NOTIFY changed FINAL)
    Q_PROPERTY(int protocol READ protocol WRITE setProtocol NOTIFY changed FINAL)  ///< index
    Q_PROPERTY(QString followUp READ followUp WRITE setFollowUp NOTIFY changed FINAL)  ///< ISO date
    Q_PROPERTY(QString followUpTime READ followUpTime WRITE setFollowUpTime NOTIFY changed FINAL)  ///< "10:30"; empty: the day alone
    Q_PROPERTY(QString followUpProblem READ followUpProblem NOTIFY changed FINAL)
    Q_PROPERTY(QString followUpText READ followUpText NOTIFY changed FINAL)
    Q_PROPERTY(bool choosing READ isChoosing NOTIFY changed FINAL)    ///< no code shown yet
    Q_PROPERTY(bool codeShown READ isCodeShown NOTIFY changed FINAL)
    Q_PROPERTY(bool comparing READ isComparing NOTIFY changed FINAL)
    Q_PROPERTY(bool linked READ isLinked NOTIFY changed FINAL)
    Q_PROPERTY(bool ended READ isEnded NOTIFY changed FINAL)          ///< used twice, expired, failed
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString text READ text NOTIFY changed FINAL)
    Q_PROPERTY(bool alarming READ isAlarming NOTIFY changed FINAL)    ///< the code was used twice
    Q_PROPERTY(QString typedCode READ typedCode NOTIFY changed FINAL)
    Q_PROPERTY(QString hubAddress READ hubAddress NOTIFY changed FINAL)  ///< a typed code is too short to carry it
    Q_PROPERTY(QString timeLeft READ timeLeft NOTIFY changed FINAL)
    Q_PROPERTY(QString number READ number NOTIFY changed FINAL)       ///< "042 917"
    Q_PROPERTY(QString blocked READ blocked NOTIFY changed FINAL)     ///< why no code can be made
    Q_PROPERTY(bool replacing READ isReplacing NOTIFY changed FINAL)  ///< the course has a phone already
    Q_PROPERTY(QString former READ former NOTIFY changed FINAL)       ///< what the phones before held that never arrived
    Q_PROPERTY(QString replacingText READ replacingText NOTIFY changed FINAL)  ///< what becomes of the phone that is linked now, and former()
    Q_PROPERTY(bool oldLost READ isOldLost WRITE setOldLost NOTIFY changed FINAL)  ///< the phone that is replaced
    Q_PROPERTY(QStringList seconds READ seconds NOTIFY changed FINAL)  ///< who may stand by; empty: it is for one
    Q_PROPERTY(QString stepProblem READ stepProblem NOTIFY changed FINAL)
    Q_PROPERTY(QString phoneEnded READ phoneEnded NOTIFY changed FINAL)  ///< that the course's phone was ended just now; empty: it was not
    Q_PROPERTY(ebbline::deskapp::QrMatrix qr READ qr NOTIFY changed FINAL)

public:
    PairingBoard(Workplace& workplace, HubWatch& hub, QObject* parent = nullptr);

    /// A course to link. \returns false if there is no such course.
    bool open(const recovery::CourseId& course);
    /// Another desk, to be invited.
    void openForDesk();
    /// Lets go of an offer that was not confirmed.
    void leave();

    QString name() const;
    bool isForDesk() const { return m_forDesk; }
    bool isOwner() const { return m_owner; }
    void setOwner(bool owner);
    QStringList protocols() const;
    int protocol() const { return m_protocol; }
    void setProtocol(int index);
    QString followUp() const { return m_followUp; }
    void setFollowUp(const QString& date);
    QString followUpTime() const { return m_followUpTime; }
    void setFollowUpTime(const QString& time);
    QString followUpProblem() const;
    QString followUpText() const;
    bool isChoosing() const { return !m_inviting; }
    bool isCodeShown() const;
    bool isComparing() const;
    bool isLinked() const;
    bool isEnded() const;
    bool isAlarming() const;
    QString title() const;
    QString text() const;
    QString typedCode() const;
    QString hubAddress() const;
    QString timeLeft() const;
    QString number() const;
    QString blocked() const;
    QrMatrix qr() const { return m_qr; }

    bool isReplacing() const;
    QString former() const;
    QString replacingText() const;
    bool isOldLost() const { return m_oldLost; }
    void setOldLost(bool lost);
    QStringList seconds() const;
    QString stepProblem() const { return m_stepProblem; }
    QString phoneEnded() const { return m_phoneEnded; }

    /// `passphrase`: for another desk; `second`: a place in seconds, or -1.
    Q_INVOKABLE void start(const QString& passphrase = {}, int second = -1);
    /// The course's phone is lost, and no other one is here yet.
    Q_INVOKABLE void endPhone(const QString& passphrase);
    Q_INVOKABLE void confirm();
    Q_INVOKABLE void refuse();
    Q_INVOKABLE void again();
    /// Asks the hub once; the timer does it every second and a half while a code is open.
    void poll();

Q_SIGNALS:
    void changed();

private:
    desk::Inviting::Step step() const;
    void stepped();
    QString textForDesk() const;
    std::optional<aftercare::Visit> visit() const;
    void proposeFollowUp();

    Workplace& m_workplace;
    HubWatch& m_hub;
    recovery::CourseId m_course;
    bool m_forDesk = false;
    bool m_owner = false;
    bool m_oldLost = false;
    QString m_stepProblem;
    QString m_phoneEnded;
    std::vector<triggers::Protocol> m_protocols;
    int m_protocol = 0;
    clock::Moment m_treated;
    QString m_followUp;
    QString m_followUpTime;
    bool m_followUpTyped = false;  ///< no proposal of the protocol: another protocol leaves it
    std::shared_ptr<desk::Inviting> m_inviting;
    std::string m_qrText;
    QrMatrix m_qr;
    QTimer m_timer;
};

}  // namespace ebbline::deskapp
