#pragma once
/// \file
/// The desks that share this clinic: which there are, another one invited, a lost one shut out, a fresh key.

#include "app/desk/model/row_list.h"
#include "app/desk/model/workplace.h"

#include <QStringList>

#include <optional>

namespace ebbline::deskapp {

struct DeskRow {
    Q_GADGET
    QML_VALUE_TYPE(deskRow)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString holds MEMBER holds)
    Q_PROPERTY(QString wrote MEMBER wrote)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(bool removable MEMBER removable)

public:
    QString title;
    QString holds;           ///< which of the clinic's keys
    QString wrote;           ///< when it last did, as far as this desk has heard
    QString id;              ///< 32 hexadecimal digits, by which the hub knows it
    bool removable = false;  ///< from here
    bool operator==(const DeskRow&) const = default;
};

class DesksBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(ebbline::deskapp::RowList* desks READ desks CONSTANT FINAL)
    Q_PROPERTY(bool owner READ isOwner NOTIFY changed FINAL)       ///< this desk may change the list
    Q_PROPERTY(bool asking READ isAsking NOTIFY changed FINAL)     ///< an act waits for its yes
    Q_PROPERTY(QString askTitle READ askTitle NOTIFY changed FINAL)
    Q_PROPERTY(QString askText READ askText NOTIFY changed FINAL)
    Q_PROPERTY(QString askAct READ askAct NOTIFY changed FINAL)
    Q_PROPERTY(QStringList seconds READ seconds NOTIFY changed FINAL)  ///< who may stand by; empty: it is for one
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)  ///< why the act was not taken
    Q_PROPERTY(QStringList ended READ ended NOTIFY changed FINAL)  ///< devices that are over, and whether the hub refuses them
    Q_PROPERTY(QString outcome READ outcome NOTIFY changed FINAL)  ///< of the last act

public:
    explicit DesksBoard(Workplace& workplace, QObject* parent = nullptr);

    /// Reads the whole journal for when each desk last wrote: for the opening of the page, not for every change.
    void open();
    void refresh();
    RowList* desks() { return &m_desks; }
    bool isOwner() const;
    bool isAsking() const { return m_removing.has_value() || m_renewing; }
    QString askTitle() const;
    QString askText() const;
    QString askAct() const;
    QStringList seconds() const;
    QString problem() const { return m_problem; }
    QStringList ended() const;
    QString outcome() const { return m_outcome; }

    Q_INVOKABLE void askRemove(const QString& id);
    Q_INVOKABLE void askFreshKey();
    /// With this desk's passphrase, and who stands by: a place in seconds, or -1.
    Q_INVOKABLE void decide(const QString& passphrase, int second = -1);
    Q_INVOKABLE void cancel();

Q_SIGNALS:
    void changed();

private:
    Workplace& m_workplace;
    RowList m_desks;
    std::optional<envelope::DeviceId> m_removing;
    bool m_renewing = false;
    QString m_problem;
    QString m_outcome;
};

}  // namespace ebbline::deskapp
