#pragma once
/// \file
/// Writing down what was found and agreed at the follow-up; saving closes the course.

#include "app/desk/model/row_list.h"
#include "app/desk/model/workplace.h"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <map>
#include <set>

namespace ebbline::deskapp {

/// One choice of a list that can be ticked.
struct TickRow {
    Q_GADGET
    QML_VALUE_TYPE(tickRow)
    Q_PROPERTY(QString word MEMBER word)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString meaning MEMBER meaning)  ///< what the name is to mean
    Q_PROPERTY(bool ticked MEMBER ticked)

public:
    QString word;
    QString name;
    QString meaning;
    bool ticked = false;
    bool operator==(const TickRow&) const = default;
};

/// An open finding that asked for a call or the emergency number, and what became of it.
struct AnswerRow {
    Q_GADGET
    QML_VALUE_TYPE(answerRow)
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString reason MEMBER reason)
    Q_PROPERTY(int outcome MEMBER outcome)  ///< records::Outcome, 0 none yet

public:
    QString key;
    QString title;
    QString reason;
    int outcome = 0;
    bool operator==(const AnswerRow&) const = default;
};

class FollowUpEditor : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString key READ key NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QStringList changeNames READ changeNames NOTIFY changed FINAL)
    Q_PROPERTY(int change READ change WRITE setChange NOTIFY changed FINAL)  ///< GlobalChange, 0 none yet
    Q_PROPERTY(QStringList satisfactionNames READ satisfactionNames NOTIFY changed FINAL)
    Q_PROPERTY(int satisfaction READ satisfaction WRITE setSatisfaction NOTIFY changed FINAL)  ///< 1..5, 0 none
    Q_PROPERTY(ebbline::deskapp::RowList* complications READ complications CONSTANT FINAL)
    Q_PROPERTY(int uncomplicated READ uncomplicated WRITE setUncomplicated NOTIFY changed FINAL)  ///< 0 not said, 1 it was, 2 it was not
    Q_PROPERTY(ebbline::deskapp::RowList* answers READ answers CONSTANT FINAL)  ///< of AnswerRow
    Q_PROPERTY(bool uncomplicatedFixed READ isUncomplicatedFixed NOTIFY changed FINAL)  ///< a complication is ticked
    Q_PROPERTY(QString management READ management WRITE setManagement NOTIFY changed FINAL)
    Q_PROPERTY(QString nextPlan READ nextPlan WRITE setNextPlan NOTIFY changed FINAL)
    Q_PROPERTY(QStringList missing READ missing NOTIFY changed FINAL)
    Q_PROPERTY(QString recordedBy READ recordedBy NOTIFY changed FINAL)      ///< empty: not recorded yet
    Q_PROPERTY(QStringList openQuestions READ openQuestions NOTIFY changed FINAL)

public:
    explicit FollowUpEditor(Workplace& workplace, QObject* parent = nullptr);

    bool open(const recovery::CourseId& course);
    /// Makes the words anew and keeps what was typed.
    void retranslate();

    const recovery::CourseId& course() const { return m_course; }
    QString key() const { return keyOf(m_course); }
    QString name() const;
    QStringList changeNames() const;
    int change() const { return m_change; }
    void setChange(int change);
    QStringList satisfactionNames() const;
    int satisfaction() const { return m_satisfaction; }
    void setSatisfaction(int satisfaction);
    RowList* complications() { return &m_rows; }
    int uncomplicated() const { return m_complications.empty() ? m_uncomplicated : 2; }
    void setUncomplicated(int said);
    RowList* answers() { return &m_answerRows; }
    bool isUncomplicatedFixed() const { return !m_complications.empty(); }
    QString management() const { return m_management; }
    void setManagement(const QString& text);
    QString nextPlan() const { return m_nextPlan; }
    void setNextPlan(const QString& text);
    QStringList missing() const;
    QString recordedBy() const { return m_recordedBy; }
    QStringList openQuestions() const { return m_openQuestions; }

    Q_INVOKABLE void tick(const QString& word, bool ticked);
    /// What became of an open finding, as records::Outcome; recorded with the follow-up.
    Q_INVOKABLE void answer(const QString& finding, int outcome);
    Q_INVOKABLE void save();

Q_SIGNALS:
    void changed();
    void recorded();

private:
    void refreshRows();
    /// The findings that ask for an answer as they stand now: one may come, or be closed elsewhere, meanwhile.
    void refreshAnswers();
    QString place() const { return QStringLiteral("followUp/") + keyOf(m_course); }
    /// What was chosen and typed, durable at every change.
    void keep();
    void takeUpBegun();

    Workplace& m_workplace;
    recovery::CourseId m_course;
    int m_change = 0;
    int m_satisfaction = 0;
    std::set<QString> m_complications;
    int m_uncomplicated = 0;
    std::map<QString, int> m_answers;  ///< by finding
    QString m_management;
    QString m_nextPlan;
    QString m_recordedBy;
    QStringList m_openQuestions;
    RowList m_rows;
    RowList m_answerRows;
};

/// What is still to be settled in a course, as questions for the visit: open findings, entries
/// nobody opened, silence, puckering that stays, a phone never linked.
QStringList openQuestionsOf(const desk::CourseView& view);

}  // namespace ebbline::deskapp
