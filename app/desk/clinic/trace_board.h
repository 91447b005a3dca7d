#pragma once
/// \file
/// Who did what at the clinic's desks, for whoever answers for the clinic: searched, and saved as a table.

#include "app/desk/model/row_list.h"
#include "app/desk/model/workplace.h"

#include <vector>

namespace ebbline::deskapp {

struct TraceRow {
    Q_GADGET
    QML_VALUE_TYPE(traceRow)
    Q_PROPERTY(QString when MEMBER when)
    Q_PROPERTY(QString who MEMBER who)
    Q_PROPERTY(QString what MEMBER what)
    Q_PROPERTY(QString whom MEMBER whom)
    Q_PROPERTY(QString course MEMBER course)
    Q_PROPERTY(QString spoken MEMBER spoken)

public:
    QString when;
    QString at;      ///< the same as files have it: ISO 8601 with its offset
    QString who;     ///< a name, or the desk where none was noted
    QString what;
    QString whom;    ///< the patient, empty: nobody
    QString course;  ///< to open; empty: none
    QString spoken;
    bool operator==(const TraceRow&) const = default;
};

class TraceBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(ebbline::deskapp::RowList* rows READ rows CONSTANT FINAL)
    Q_PROPERTY(QString search READ search WRITE setSearch NOTIFY changed FINAL)
    Q_PROPERTY(QString says READ says NOTIFY changed FINAL)        ///< how many lines, and whether there are more
    Q_PROPERTY(bool more READ hasMore NOTIFY changed FINAL)        ///< older lines that are not shown yet
    Q_PROPERTY(QString outcome READ outcome NOTIFY changed FINAL)  ///< of saving

public:
    explicit TraceBoard(Workplace& workplace, QObject* parent = nullptr);

    /// Reads the whole journal: for the opening of the page, not for every change.
    void open();
    RowList* rows() { return &m_rows; }
    QString search() const { return m_search; }
    /// In any column of every line, whatever its case.
    void setSearch(const QString& search);
    QString says() const;
    bool hasMore() const { return m_found.size() > m_shown; }
    /// Shows as many older lines again.
    Q_INVOKABLE void showMore();
    QString outcome() const { return m_outcome; }

    /// All that was found, shown or not, as a table (CSV). \returns false with the outcome if it cannot be written.
    Q_INVOKABLE bool write(const QString& path);
    Q_INVOKABLE void saveAs();

Q_SIGNALS:
    void changed();

private:
    void list();
    void show();

    Workplace& m_workplace;
    static constexpr std::size_t page = 1000;  ///< lines
    std::vector<TraceRow> m_all;
    std::vector<std::size_t> m_found;  ///< of m_all, what the search finds
    std::size_t m_shown = page;
    RowList m_rows;
    QString m_search;
    QString m_outcome;
};

}  // namespace ebbline::deskapp
