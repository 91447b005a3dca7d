#pragma once
/// \file
/// Corrects what a patient was registered with: name, number to call, language. What was written before stays on record and is
/// shown with who corrected it and when. Nothing of it goes to a phone.

#include "app/desk/model/workplace.h"

#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace ebbline::deskapp {

/// A line for each correction, the newest first: when, who, and what held until then; `now` in the reader's zone.
QStringList correctionLines(const std::vector<journal::PatientCorrection>& corrections, const clock::Moment& now);
/// That the last one was written without knowing of the one before it; empty: no.
QString crossedText(const std::vector<journal::PatientCorrection>& corrections);

class PatientEditor : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(bool shown READ isShown NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    Q_PROPERTY(QString phone READ phone WRITE setPhone NOTIFY changed FINAL)
    Q_PROPERTY(int language READ language WRITE setLanguage NOTIFY changed FINAL)  ///< a place in languages()
    Q_PROPERTY(QStringList languages READ languages NOTIFY changed FINAL)
    Q_PROPERTY(bool savable READ isSavable NOTIFY changed FINAL)        ///< there is a name, and something was changed
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)       ///< why it was not recorded; empty: nothing was refused
    Q_PROPERTY(QString meanwhile READ meanwhile NOTIFY changed FINAL)   ///< what a colleague corrected since it was opened; empty: nothing
    Q_PROPERTY(QStringList history READ history NOTIFY changed FINAL)   ///< as correctionLines()
    Q_PROPERTY(QString undoText READ undoText NOTIFY undoChanged FINAL) ///< empty: nothing to undo

public:
    explicit PatientEditor(Workplace& workplace, QObject* parent = nullptr);

    bool isShown() const { return !m_patient.isNull(); }
    QString title() const;
    QString name() const { return m_name; }
    void setName(const QString& name);
    QString phone() const { return m_phone; }
    void setPhone(const QString& phone);
    int language() const { return m_language; }
    void setLanguage(int language);
    QStringList languages() const;
    bool isSavable() const;
    QString problem() const { return m_problem; }
    QString meanwhile() const;
    QStringList history() const;
    QString undoText() const { return m_undo ? m_undo->title : QString(); }

    /// With what holds now, or with what was begun and not recorded.
    Q_INVOKABLE void open(const QString& patient);
    /// \returns whether it was recorded; else problem() says why not, and what was typed stays.
    Q_INVOKABLE bool save();
    /// Lets go of what was begun.
    Q_INVOKABLE void leave();
    /// Closes; what was begun is there when it is opened again.
    Q_INVOKABLE void setAside();
    /// Writes what held before the last correction anew.
    Q_INVOKABLE void undo();
    Q_INVOKABLE void forgetUndo();

Q_SIGNALS:
    void changed();
    void undoChanged();

private:
    QString place() const;
    records::PatientRegistered written() const;
    void edited();
    void close();

    Workplace& m_workplace;
    recovery::PatientId m_patient;
    records::PatientRegistered m_opened;            ///< what held when it was opened
    std::optional<journal::OperationId> m_seen;     ///< the correction that this came from; empty: the registering
    QString m_name;
    QString m_phone;
    int m_language = -1;
    QString m_problem;
    struct Target {
        recovery::PatientId patient;
        journal::OperationId correction;
        QString title;
    };
    std::optional<Target> m_undo;
};

}  // namespace ebbline::deskapp
