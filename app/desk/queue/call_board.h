#pragma once
/// \file
/// A call: whom, on which number, what to ask, and what is written down of it. Nothing is noted as done
/// before somebody says that it was.

#include "app/desk/model/workplace.h"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace ebbline::deskapp {

class CallBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(bool shown READ isShown NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString phone READ phone NOTIFY changed FINAL)
    Q_PROPERTY(QString language READ language NOTIFY changed FINAL)
    Q_PROPERTY(QStringList reasons READ reasons NOTIFY changed FINAL)
    Q_PROPERTY(QStringList script READ script NOTIFY changed FINAL)
    Q_PROPERTY(QString others READ others NOTIFY changed FINAL)  ///< somebody else has taken it; empty: no
    Q_PROPERTY(bool linked READ isLinked NOTIFY changed FINAL)
    Q_PROPERTY(QString note READ note WRITE setNote NOTIFY noteChanged FINAL)

public:
    explicit CallBoard(Workplace& workplace, QObject* parent = nullptr);

    bool isShown() const { return !m_course.isNull(); }
    QString title() const { return m_title; }
    QString phone() const { return m_phone; }
    /// A sentence that says in which language she reads; empty if that is not on record.
    QString language() const { return m_language; }
    QStringList reasons() const { return m_reasons; }
    QStringList script() const { return m_script; }
    QString others() const { return m_others; }
    bool isLinked() const { return m_linked; }
    QString note() const { return m_note; }
    void setNote(const QString& note);

    Q_INVOKABLE void start(const QString& course);
    Q_INVOKABLE void leave();
    /// Writes down that the patient was called, with the note, on every open finding.
    Q_INVOKABLE void reached();
    Q_INVOKABLE void notReached();
    /// The visit was brought forward.
    Q_INVOKABLE void broughtForward();
    /// Sends the note to the patient's phone instead; it is not the note of a call then.
    Q_INVOKABLE void sendAsMessage();

Q_SIGNALS:
    void changed();
    void noteChanged();
    /// Something was noted, and can be taken back.
    void noted(const ebbline::recovery::CourseId& course, const std::vector<ebbline::journal::OperationId>& acts, const QString& title);

private:
    void act(records::Act act, records::Outcome outcome, const QString& did);

    Workplace& m_workplace;
    recovery::CourseId m_course;
    std::vector<std::string> m_findings;
    QString m_title;
    QString m_phone;
    QString m_language;
    QStringList m_reasons;
    QStringList m_script;
    QString m_others;
    QString m_note;
    bool m_linked = false;
};

}  // namespace ebbline::deskapp
