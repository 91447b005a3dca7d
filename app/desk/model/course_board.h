#pragma once
/// \file
/// The page of one course: who, what day, how reachable; findings and what was done about them;
/// entries; messages; its curves. Showing a course opens its entries in the name of the person at
/// the desk; entries that arrive later wait for an act of their own.

#include "app/desk/model/course_rows.h"
#include "app/desk/model/curve_board.h"
#include "app/desk/model/usual_board.h"
#include "app/desk/sheet/paper_printer.h"

namespace ebbline::deskapp {

class CourseBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString key READ key NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString phone READ phone NOTIFY changed FINAL)
    Q_PROPERTY(QString patientKey READ patientKey NOTIFY changed FINAL)        ///< empty: no treatment on record
    Q_PROPERTY(QStringList corrections READ corrections NOTIFY changed FINAL)  ///< of name, number and language, the newest first
    Q_PROPERTY(QString crossed READ crossed NOTIFY changed FINAL)              ///< two desks corrected at once; empty: no
    Q_PROPERTY(QString day READ day NOTIFY changed FINAL)
    Q_PROPERTY(QString facts READ facts NOTIFY changed FINAL)          ///< treated when, threads, protocol
    Q_PROPERTY(QStringList threads READ threads NOTIFY changed FINAL)  ///< as recorded, each with lot, expiry and volume
    Q_PROPERTY(QStringList care READ care NOTIFY changed FINAL)        ///< as recorded: anaesthetic, dressings, consent
    Q_PROPERTY(QStringList recordCorrections READ recordCorrections NOTIFY changed FINAL)  ///< of the treatment, the newest first
    Q_PROPERTY(QString countedOtherwise READ countedOtherwise NOTIFY changed FINAL)  ///< by another day than the record's; empty: no
    Q_PROPERTY(QString recordCrossed READ recordCrossed NOTIFY changed FINAL)  ///< two desks recorded it at once; empty: no
    Q_PROPERTY(bool correctionBegun READ isCorrectionBegun NOTIFY changed FINAL)
    Q_PROPERTY(QString reach READ reach NOTIFY changed FINAL)          ///< linked phone, last entry
    Q_PROPERTY(QString adherence READ adherence NOTIFY changed FINAL)
    Q_PROPERTY(QString news READ news NOTIFY changed FINAL)            ///< since this person last looked; empty: nobody is named
    Q_PROPERTY(QString forecast READ forecast NOTIFY changed FINAL)    ///< to the follow-up; empty once it is over
    Q_PROPERTY(QString outcome READ outcome NOTIFY outcomeChanged FINAL)  ///< of writing a file
    Q_PROPERTY(bool linked READ isLinked NOTIFY changed FINAL)
    Q_PROPERTY(bool phoneChangeable READ isPhoneChangeable NOTIFY changed FINAL)  ///< linked, and the course runs
    Q_PROPERTY(bool closed READ isClosed NOTIFY changed FINAL)
    Q_PROPERTY(QString unopenedText READ unopenedText NOTIFY changed FINAL)  ///< empty: all are opened
    Q_PROPERTY(QString messageDraft READ messageDraft WRITE setMessageDraft NOTIFY draftChanged FINAL)
    Q_PROPERTY(QString messageProblem READ messageProblem NOTIFY draftChanged FINAL)
    Q_PROPERTY(ebbline::deskapp::RowList* findings READ findings CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::RowList* entries READ entries CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::RowList* messages READ messages CONSTANT FINAL)
    Q_PROPERTY(QString lighted READ lighted NOTIFY lightedChanged FINAL)  ///< key of the entry that a reason led to; empty: none
    Q_PROPERTY(ebbline::deskapp::UsualBoard* usual READ usual CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::CurveBoard* curves READ curves CONSTANT FINAL)
    Q_PROPERTY(int openFindings READ openFindings NOTIFY changed FINAL)
    Q_PROPERTY(QStringList calls READ calls NOTIFY changed FINAL)  ///< that were about no finding, oldest first
    Q_PROPERTY(QString closingTitle READ closingTitle NOTIFY closingChanged FINAL)
    Q_PROPERTY(QString closingKey READ closingKey NOTIFY closingChanged FINAL)  ///< finding being closed

public:
    explicit CourseBoard(Workplace& workplace, QObject* parent = nullptr);

    /// Shows a course and opens its entries. \returns false if there is no such course.
    bool show(const recovery::CourseId& course);
    void refresh();

    const recovery::CourseId& course() const { return m_course; }
    QString key() const { return keyOf(m_course); }
    QString name() const { return m_name; }
    QString phone() const { return m_phone; }
    QString patientKey() const { return m_patientKey; }
    QStringList corrections() const { return m_corrections; }
    QString crossed() const { return m_crossed; }
    QString day() const { return m_day; }
    QString facts() const { return m_facts; }
    QStringList threads() const { return m_threads; }
    QStringList care() const { return m_care; }
    QStringList recordCorrections() const { return m_recordCorrections; }
    QString countedOtherwise() const { return m_countedOtherwise; }
    QString recordCrossed() const { return m_recordCrossed; }
    bool isCorrectionBegun() const { return m_correctionBegun; }
    QString reach() const { return m_reach; }
    QString adherence() const { return m_adherence; }
    QString news() const { return m_newsText; }
    QString forecast() const { return m_forecast; }
    QString outcome() const { return m_outcome; }
    bool isLinked() const { return m_linked; }
    bool isPhoneChangeable() const { return m_linked && !m_closed; }
    bool isClosed() const { return m_closed; }
    QString unopenedText() const { return m_unopenedText; }
    QString messageDraft() const { return m_messageDraft; }
    void setMessageDraft(const QString& text);
    QString messageProblem() const;
    RowList* findings() { return &m_findings; }
    RowList* entries() { return &m_entries; }
    RowList* messages() { return &m_messages; }
    UsualBoard* usual() { return &m_usual; }
    CurveBoard* curves() { return &m_curves; }
    int openFindings() const;
    QStringList calls() const { return m_calls; }
    QString closingTitle() const;
    QString closingKey() const { return m_closingKey; }

    QString lighted() const { return m_lighted; }
    /// Leads to the entry that raised something; nothing if the course has no such entry.
    Q_INVOKABLE void light(const QString& entry);
    Q_INVOKABLE void openEntries();
    Q_INVOKABLE void see(const QString& finding);
    Q_INVOKABLE void take(const QString& finding);
    /// One person takes everything that is open.
    Q_INVOKABLE void takeAll();
    Q_INVOKABLE void startClosing(const QString& finding);
    Q_INVOKABLE void close(int outcome, const QString& note);
    Q_INVOKABLE void cancelClosing();
    Q_INVOKABLE void reopen(const QString& finding);
    /// The usual message that is chosen goes behind what is written already; nothing is sent by it.
    Q_INVOKABLE void takeUsual();
    Q_INVOKABLE void send();
    /// `.csv` (the open table of scores), `.pdf` or `.txt`. \returns false and says why in outcome().
    bool write(const QString& path);
    Q_INVOKABLE void saveAs();
    /// Asks which printer, then prints the same list; outcome() says what came of it.
    Q_INVOKABLE void print();

Q_SIGNALS:
    void changed();
    void outcomeChanged();
    void draftChanged();
    void closingChanged();
    void lightedChanged();
    /// Something was noted that can be taken back for a while; `title` says it with the patient's name.
    void noted(const ebbline::recovery::CourseId& course, const std::vector<ebbline::journal::OperationId>& acts, const QString& title);

private:
    /// The same on some findings, all or none, with a way back. `did`: "Taken: %1".
    void noteOn(const std::vector<std::string>& findings, records::Act what, const QString& did);
    void act(const QString& finding, records::Act what, records::Outcome outcome = records::Outcome::none,
             const QString& note = {});
    void empty();

    Workplace& m_workplace;
    PaperPrinter m_printer;
    recovery::CourseId m_course;
    QString m_name;
    QString m_phone;
    QString m_patientKey;
    QStringList m_corrections;
    QString m_crossed;
    QString m_day;
    QString m_facts;
    QStringList m_threads;
    QStringList m_care;
    QStringList m_recordCorrections;
    QString m_countedOtherwise;
    QString m_recordCrossed;
    bool m_correctionBegun = false;
    QString m_reach;
    QString m_adherence;
    QString m_newsText;
    QString m_forecast;
    QString m_outcome;
    bool m_linked = false;
    bool m_closed = false;
    QString m_unopenedText;
    bool m_news = false;  ///< entries not opened or messages not read
    QString m_messageDraft;
    RowList m_findings;
    QStringList m_calls;
    RowList m_entries;
    RowList m_messages;
    QString m_lighted;
    UsualBoard m_usual;
    CurveBoard m_curves;
    QString m_closingKey;
};

}  // namespace ebbline::deskapp
