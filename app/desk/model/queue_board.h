#pragma once
/// \file
/// The opening page: whom to look at, in which order, and why. Rows keep core's order; courses
/// that are merely silent stand apart, so that nobody reads silence as "fine".

#include "app/charts/curve_picture.h"
#include "app/desk/model/row_list.h"
#include "app/desk/model/workplace.h"
#include "app/desk/queue/queue_filter.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace ebbline::deskapp {

/// One course of the queue, in words.
struct QueueRow {
    Q_GADGET
    QML_VALUE_TYPE(queueRow)
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(int urgency MEMBER urgency)      ///< recovery::Urgency; chooses the form
    Q_PROPERTY(QString urgencyName MEMBER urgencyName)
    Q_PROPERTY(QString advice MEMBER advice)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString phone MEMBER phone)
    Q_PROPERTY(QString day MEMBER day)
    Q_PROPERTY(QString title MEMBER title)      ///< of the most urgent open finding
    Q_PROPERTY(QString reason MEMBER reason)
    Q_PROPERTY(QString entryKey MEMBER entryKey)  ///< of the entry that raised it; empty: none did, or it is not here
    Q_PROPERTY(QString others MEMBER others)    ///< the other reasons for a call now; empty: none
    Q_PROPERTY(QString more MEMBER more)        ///< "and 2 more" that are less urgent; empty: none
    Q_PROPERTY(QString since MEMBER since)
    Q_PROPERTY(QString waiting MEMBER waiting)
    Q_PROPERTY(QString taken MEMBER taken)      ///< who was at it last and who has it, or that nobody has; without what `overdue` says
    Q_PROPERTY(bool isTaken MEMBER isTaken)
    Q_PROPERTY(bool isMine MEMBER isMine)       ///< taken by the person at the desk
    Q_PROPERTY(QString overdue MEMBER overdue)  ///< waits longer than agreed, taken or not; empty: no
    Q_PROPERTY(QString unopened MEMBER unopened)
    Q_PROPERTY(QString lastEntry MEMBER lastEntry)
    Q_PROPERTY(QString reach MEMBER reach)      ///< that the phone is not heard of, and the like; empty: nothing to say
    Q_PROPERTY(QString sparkName MEMBER sparkName)
    Q_PROPERTY(ebbline::charts::CurvePicture leftCurve MEMBER leftCurve)
    Q_PROPERTY(ebbline::charts::CurvePicture rightCurve MEMBER rightCurve)
    Q_PROPERTY(bool silent MEMBER silent)
    Q_PROPERTY(QString heading MEMBER heading)  ///< over the first of those who fell silent
    Q_PROPERTY(QString spoken MEMBER spoken)    ///< the whole row as one sentence

public:
    QString key;
    int urgency = 4;
    QString urgencyName;
    QString advice;
    QString name;
    QString phone;
    QString day;
    QString title;
    QString reason;
    QString entryKey;
    QString others;
    QString more;
    QString since;
    QString waiting;
    QString taken;
    bool isTaken = false;
    bool isMine = false;
    QString overdue;
    QString unopened;
    QString lastEntry;
    QString reach;
    QString sparkName;
    charts::CurvePicture leftCurve;
    charts::CurvePicture rightCurve;
    bool silent = false;
    QString heading;
    QString spoken;
    bool operator==(const QueueRow&) const = default;
};

class QueueBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(ebbline::deskapp::RowList* rows READ rows CONSTANT FINAL)
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)   ///< "1 emergency, 2 to call now"
    Q_PROPERTY(QStringList filters READ filters NOTIFY changed FINAL)  ///< "Everyone 6", then by urgency
    Q_PROPERTY(QString emptyTitle READ emptyTitle NOTIFY changed FINAL)
    Q_PROPERTY(QString emptyText READ emptyText NOTIFY changed FINAL)
    Q_PROPERTY(QString search READ search WRITE setSearch NOTIFY changed FINAL)
    Q_PROPERTY(int urgencyFilter READ urgencyFilter WRITE setUrgencyFilter NOTIFY changed FINAL)  ///< 0 all, 1..4, 5 silent
    Q_PROPERTY(QStringList whoseFilters READ whoseFilters NOTIFY changed FINAL)
    Q_PROPERTY(int whose READ whose WRITE setWhose NOTIFY changed FINAL)  ///< 0 all, 1 nobody's, 2 mine, 3 not opened
    Q_PROPERTY(QString overdue READ overdue NOTIFY changed FINAL)   ///< how many wait longer than agreed, taken or not; empty: none
    Q_PROPERTY(QString hidden READ hidden NOTIFY changed FINAL)     ///< how many the filter hides
    Q_PROPERTY(ebbline::deskapp::QueueFilter* filter READ filter CONSTANT FINAL)
    Q_PROPERTY(QString hiddenUrgent READ hiddenUrgent NOTIFY changed FINAL)  ///< how many of them are for now, or wait longer than agreed; empty: none
    Q_PROPERTY(QString pastVisits READ pastVisits NOTIFY changed FINAL)  ///< how many visits were missed long ago; empty: none
    Q_PROPERTY(bool pastShown READ isPastShown WRITE setPastShown NOTIFY changed FINAL)  ///< their rows; else that line stands for them
    Q_PROPERTY(bool closing READ isClosing NOTIFY closingChanged FINAL)
    Q_PROPERTY(QString closingKey READ closingKey NOTIFY closingChanged FINAL)  ///< course and finding
    Q_PROPERTY(QString closingTitle READ closingTitle NOTIFY closingChanged FINAL)
    Q_PROPERTY(QString undoText READ undoText NOTIFY undoChanged FINAL)  ///< empty: nothing to undo

public:
    explicit QueueBoard(Workplace& workplace, QObject* parent = nullptr);

    RowList* rows() { return &m_rows; }
    QString summary() const { return m_summary; }
    QStringList filters() const { return m_filters; }
    QString emptyTitle() const;
    QString emptyText() const;
    QString search() const { return m_search; }
    void setSearch(const QString& text);
    int urgencyFilter() const { return m_filter; }
    void setUrgencyFilter(int urgency);
    QStringList whoseFilters() const;
    int whose() const { return m_whose; }
    void setWhose(int whose);
    QString overdue() const { return m_overdue; }
    QString hidden() const;
    QueueFilter* filter() { return &m_queueFilter; }
    QString hiddenUrgent() const;
    QString pastVisits() const;
    bool isPastShown() const { return m_pastShown; }
    void setPastShown(bool shown);
    /// Takes search and every filter off.
    Q_INVOKABLE void showAll();
    /// The entry behind the reason of a row; empty as QueueRow::entryKey.
    Q_INVOKABLE QString entryAt(int row) const;
    /// The next row from this one on that has entries nobody opened; -1 if there is none.
    Q_INVOKABLE int nextUnopened(int from) const;
    bool isClosing() const { return m_closing.has_value(); }
    QString closingKey() const { return m_closing ? keyOf(m_closing->course) + u'/' + QString::fromStdString(m_closing->finding) : QString(); }
    QString closingTitle() const { return m_closing ? m_closing->title : QString(); }
    QString undoText() const { return m_undo ? m_undo->title : QString(); }

    /// Acts on every open finding of a course: one person, one call, all reasons.
    Q_INVOKABLE void take(const QString& key);
    Q_INVOKABLE void called(const QString& key);
    /// Closing is one finding at a time, with an outcome: the most urgent open one of the row.
    Q_INVOKABLE void startClosing(const QString& key);
    Q_INVOKABLE void close(int outcome, const QString& note);
    Q_INVOKABLE void cancelClosing();
    /// Reopens what was closed last, or takes back what was noted last. \pre undoText() is not empty.
    Q_INVOKABLE void undo();
    /// Offers to take back what was noted elsewhere, by a call.
    void offerUndo(const recovery::CourseId& course, const std::vector<journal::OperationId>& acts, const QString& title);
    /// As it was read last; those that only fell silent at the end.
    const std::vector<triage::Row>& waiting() const { return m_queue; }
    Q_INVOKABLE void forgetUndo();

    void refresh();

Q_SIGNALS:
    void changed();
    void closingChanged();
    void undoChanged();

private:
    struct Target {
        recovery::CourseId course;
        std::string finding;
        QString title;
        std::vector<journal::OperationId> acts = {};  ///< to take back; empty: the finding was closed
    };

    QueueRow rowOf(const triage::Row& row, const desk::CourseSummary& summary, const QString& reach, const clock::Moment& now);
    void actOnAll(const QString& key, records::Act act, const QString& did);
    void forgetFilters();
    /// Who searches, or looks at the silent ones, sees them too.
    bool foldsPast() const;
    bool matches(const QueueRow& row, const recovery::CourseId& course);

    Workplace& m_workplace;
    RowList m_rows;
    std::vector<triage::Row> m_queue;
    QString m_summary;
    QStringList m_filters;
    QString m_search;
    int m_filter = 0;
    QueueFilter m_queueFilter;
    int m_hidden = 0;
    int m_hiddenUrgent = 0;
    int m_whose = 0;
    int m_past = 0;  ///< rows of visits missed long ago, shown or not
    bool m_pastShown = false;
    QString m_overdue;
    std::optional<Target> m_closing;
    std::optional<Target> m_undo;
};

}  // namespace ebbline::deskapp
