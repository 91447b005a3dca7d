#pragma once
/// \file
/// All courses, newest treatment first: the way to one that asks for nothing, and to link a phone.

#include "app/desk/model/row_list.h"
#include "app/desk/model/workplace.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace ebbline::deskapp {

struct CourseRow {
    Q_GADGET
    QML_VALUE_TYPE(courseRow)
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString day MEMBER day)
    Q_PROPERTY(QString treated MEMBER treated)
    Q_PROPERTY(QString state MEMBER state)     ///< linked or not, closed, last entry
    Q_PROPERTY(QString news MEMBER news)       ///< entries not opened, messages not read
    Q_PROPERTY(bool linked MEMBER linked)
    Q_PROPERTY(bool closed MEMBER closed)
    Q_PROPERTY(QString spoken MEMBER spoken)

public:
    QString key;
    QString name;
    QString day;
    QString treated;
    QString state;
    QString news;
    bool linked = false;
    bool closed = false;
    QString spoken;
    bool operator==(const CourseRow&) const = default;
};

class CourseList : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(ebbline::deskapp::RowList* rows READ rows CONSTANT FINAL)
    Q_PROPERTY(QString search READ search WRITE setSearch NOTIFY changed FINAL)  ///< name, or a lot
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)
    Q_PROPERTY(QString emptyText READ emptyText NOTIFY changed FINAL)

public:
    explicit CourseList(Workplace& workplace, QObject* parent = nullptr);

    void refresh();
    RowList* rows() { return &m_rows; }
    QString search() const { return m_search; }
    void setSearch(const QString& text);
    QString summary() const { return m_summary; }
    QString emptyText() const;

Q_SIGNALS:
    void changed();

private:
    Workplace& m_workplace;
    RowList m_rows;
    QString m_search;
    QString m_summary;
};

/// Whether a thread of this course has a lot that contains the text.
bool hasLot(const journal::State& state, const recovery::CourseId& course, const QString& text);

}  // namespace ebbline::deskapp
