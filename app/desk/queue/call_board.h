#pragma once
/// \file
/// A call: whom, on which number, what to ask, and what is written down of it. Nothing is noted as done
/// before somebody says that it was.

#include "app/desk/model/workplace.h"
#include "core/aftercare/visit.h"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <optional>
#include <set>
#include <utility>

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
    Q_PROPERTY(QString others READ others NOTIFY changed FINAL)  ///< what somebody else did last; empty: nobody else was the last
    Q_PROPERTY(QString arrived READ arrived NOTIFY changed FINAL)  ///< what came since the call was begun, and is open; empty: nothing
    Q_PROPERTY(bool linked READ isLinked NOTIFY changed FINAL)
    Q_PROPERTY(bool asksVisit READ asksVisit NOTIFY changed FINAL)            ///< for the new day of the visit
    Q_PROPERTY(QString visitAgreed READ visitAgreed NOTIFY changed FINAL)     ///< so far
    Q_PROPERTY(QString visitDay READ visitDay WRITE setVisitDay NOTIFY changed FINAL)     ///< ISO date
    Q_PROPERTY(QString visitTime READ visitTime WRITE setVisitTime NOTIFY changed FINAL)  ///< "10:30"; empty: only the day
    Q_PROPERTY(bool visitMovable READ isVisitMovable NOTIFY changed FINAL)    ///< there is a day left that it may have, on a phone
    Q_PROPERTY(QString visitTooLate READ visitTooLate NOTIFY changed FINAL)   ///< to move it; empty: not asked for, or not too late
    Q_PROPERTY(QString visitProblem READ visitProblem NOTIFY changed FINAL)
    Q_PROPERTY(QString visitShows READ visitShows NOTIFY changed FINAL)       ///< what the phone will show; empty: no day yet
    Q_PROPERTY(QString visitUntold READ visitUntold NOTIFY changed FINAL)     ///< that no phone shows it; empty: one does
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
    /// Said only: the call is noted on what it was begun about.
    QString arrived() const { return m_arrived; }
    bool isLinked() const { return m_linked; }
    bool asksVisit() const { return m_asksVisit; }
    QString visitAgreed() const;
    QString visitDay() const { return m_visitDay; }
    void setVisitDay(const QString& day);
    QString visitTime() const { return m_visitTime; }
    void setVisitTime(const QString& time);
    bool isVisitMovable() const;
    QString visitTooLate() const;
    QString visitProblem() const;
    QString visitShows() const;
    QString visitUntold() const;
    QString note() const { return m_note; }
    void setNote(const QString& note);

    /// With the key of an open finding the call is noted on that one alone, without it on all that are open.
    Q_INVOKABLE void start(const QString& course, const QString& only = {});
    Q_INVOKABLE void leave();
    /// Writes down that the patient was called, with the note, on what the call is about.
    Q_INVOKABLE void reached();
    Q_INVOKABLE void notReached();
    /// She rang the clinic: of a call that is about no finding.
    Q_INVOKABLE void sheRang();
    /// As start(), and asks at once for the new day of the visit where a phone goes by it. Notes nothing: that is for the button.
    /// With the key of an open finding the visit answers that one alone, without it all that are open.
    Q_INVOKABLE void startVisit(const QString& course, const QString& finding = {});
    /// The visit was brought forward. A course that a phone has goes by its new day: asks for it first.
    Q_INVOKABLE void broughtForward();
    /// Sends the note to the patient's phone instead; it is not the note of a call then.
    Q_INVOKABLE void sendAsMessage();

Q_SIGNALS:
    void changed();
    void noteChanged();
    /// Something was noted, and can be taken back.
    void noted(const ebbline::recovery::CourseId& course, const std::vector<ebbline::journal::OperationId>& acts, const QString& title);

private:
    /// Also while the panel stands: whoever is about to dial gets the number that was corrected just now.
    void sayWho(const desk::CourseSummary& summary);
    void act(const std::vector<std::string>& findings, records::Act act, records::Outcome outcome, const QString& did);
    void note(records::Contact contact, const QString& did);
    void settleNoted(const Result<std::vector<journal::OperationId>>& done, const QString& did);
    void forgetVisit();
    void tellOthers();
    std::optional<aftercare::Visit> visit() const;
    /// The first and the last day that it may be brought to.
    std::pair<clock::LocalDay, clock::LocalDay> visitDays() const;
    QString rangeText() const;

    Workplace& m_workplace;
    recovery::CourseId m_course;
    std::vector<std::string> m_findings;  ///< that the call is about: open ones when it was begun
    std::set<std::string> m_known;        ///< all that were open then
    std::vector<std::string> m_answered;  ///< those of them that a visit brought forward answers
    QString m_title;
    QString m_phone;
    QString m_language;
    QStringList m_reasons;
    QStringList m_script;
    QString m_others;
    QString m_arrived;
    QString m_note;
    bool m_linked = false;
    struct Opened {
        clock::Moment treated;
        clock::Moment followUp;
        clock::LocalDay latest;  ///< of all days that were ever agreed
    };
    std::optional<Opened> m_opened;  ///< what a phone has of the course; empty: none has it
    bool m_asksVisit = false;
    QString m_visitDay;
    QString m_visitTime;
};

}  // namespace ebbline::deskapp
