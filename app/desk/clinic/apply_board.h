#pragma once
/// \file
/// A new, empty desk joins its colleagues' clinic: the code from an owner's desk, six digits, and the keys arrive.

#include "app/desk/model/hub_watch.h"
#include "core/desk/inviting.h"
#include "core/sync/enrolment_way.h"

#include <QTimer>

namespace ebbline::deskapp {

class ApplyBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(bool typing READ isTyping NOTIFY changed FINAL)        ///< no code taken yet
    Q_PROPERTY(bool comparing READ isComparing NOTIFY changed FINAL)
    Q_PROPERTY(bool joined READ isJoined NOTIFY changed FINAL)
    Q_PROPERTY(bool ready READ isReady NOTIFY changed FINAL)          ///< and what colleagues wrote is here
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString text READ text NOTIFY changed FINAL)
    Q_PROPERTY(QString number READ number NOTIFY changed FINAL)       ///< "042 917"
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)

public:
    ApplyBoard(Workplace& workplace, CourierMaker maker, QObject* parent = nullptr);

    /// Only a vault without patients and without a clinic of its own joins another.
    bool mayJoin() const;
    bool isTyping() const { return !m_applying; }
    bool isComparing() const;
    bool isJoined() const { return m_joined; }
    bool isReady() const;
    QString title() const;
    QString text() const;
    QString number() const;
    QString problem() const { return m_problem; }

    Q_INVOKABLE void start(const QString& code, const QString& hub);
    Q_INVOKABLE void startOver();
    /// Asks the hub once; the board does so by itself every two seconds.
    void poll();

Q_SIGNALS:
    void changed();
    /// The desk has the clinic's keys; what colleagues wrote comes with the next questions to the hub.
    void arrived();

private:
    desk::Applying::Step step() const;
    void follow();
    sync::Courier* courier();

    Workplace& m_workplace;
    sync::EnrolmentWay m_way;
    std::shared_ptr<desk::Applying> m_applying;
    bool m_joined = false;
    QString m_problem;
    QTimer m_timer;
};

}  // namespace ebbline::deskapp
