#pragma once
/// \file
/// Who has which role at the clinic, and why a button is not for who is at the desk. A rule of the house, and no lock.

#include "app/desk/model/row_list.h"
#include "app/desk/model/workplace.h"

#include <QStringList>

#include <optional>
#include <utility>

namespace ebbline::deskapp {

struct PersonRow {
    Q_GADGET
    QML_VALUE_TYPE(personRow)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(int role MEMBER role)
    Q_PROPERTY(QString may MEMBER may)

public:
    QString name;
    int role = -1;  ///< a place in RoleBoard::names(), -1: none yet
    QString may;    ///< what it allows
    bool operator==(const PersonRow&) const = default;
};

class RoleBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(ebbline::deskapp::RowList* persons READ persons CONSTANT FINAL)  ///< in the clinic's order
    Q_PROPERTY(QStringList names READ names NOTIFY changed FINAL)            ///< of all roles
    Q_PROPERTY(QString outcome READ outcome NOTIFY changed FINAL)            ///< of the last change, or why there was none
    Q_PROPERTY(QString question READ question NOTIFY changed FINAL)          ///< before somebody takes a right from herself; empty: none
    // Why this is not for who is at the desk, and who may; empty: it is.
    Q_PROPERTY(QString treating READ treating NOTIFY changed FINAL)
    Q_PROPERTY(QString closing READ closing NOTIFY changed FINAL)
    Q_PROPERTY(QString protocols READ protocols NOTIFY changed FINAL)
    Q_PROPERTY(QString phones READ phones NOTIFY changed FINAL)
    Q_PROPERTY(QString desks READ desks NOTIFY changed FINAL)
    Q_PROPERTY(QString numbers READ numbers NOTIFY changed FINAL)
    Q_PROPERTY(QString people READ people NOTIFY changed FINAL)
    Q_PROPERTY(QString keeping READ keeping NOTIFY changed FINAL)
    Q_PROPERTY(QString figures READ figures NOTIFY changed FINAL)

public:
    explicit RoleBoard(Workplace& workplace, QObject* parent = nullptr);

    /// Forgets what was said of the last change.
    void open();
    /// Everything anew, in the desk's language.
    void refresh();
    RowList* persons() { return &m_persons; }
    QStringList names() const;
    QString outcome() const { return m_outcome; }
    QString treating() const { return barred(records::Task::treat); }
    QString closing() const { return barred(records::Task::close); }
    QString protocols() const { return barred(records::Task::protocol); }
    QString phones() const { return barred(records::Task::phones); }
    QString desks() const { return barred(records::Task::desks); }
    QString numbers() const { return barred(records::Task::numbers); }
    QString people() const { return barred(records::Task::people); }
    QString keeping() const { return barred(records::Task::keep); }
    QString figures() const { return barred(records::Task::figures); }

    QString question() const;
    /// Asks first, in question(), whether somebody means to take the right to give roles from herself.
    /// \param role  a place in names(). \returns whether the person has it now
    Q_INVOKABLE bool give(const QString& name, int role);
    /// \returns whether the person of the question has the role of it now; false without a question.
    Q_INVOKABLE bool giveAsked();
    /// Everything stays as it is.
    Q_INVOKABLE void leaveQuestion();

Q_SIGNALS:
    void changed();

private:
    QString barred(records::Task task) const;
    bool giveNow(const QString& name, records::Role role);

    Workplace& m_workplace;
    RowList m_persons;
    QString m_outcome;
    std::optional<std::pair<QString, records::Role>> m_asked;  ///< a person and a role that she takes her own right with
};

}  // namespace ebbline::deskapp
