#pragma once
/// \file
/// Where a lot of a product went: every patient who received it, with the number to call. However a lot was written
/// down, it is found; a lot is no cause, and nothing here says so.

#include "app/desk/model/row_list.h"
#include "app/desk/practice/practice_board.h"
#include "app/desk/sheet/paper.h"

namespace ebbline::deskapp {

struct LotRow {
    Q_GADGET
    QML_VALUE_TYPE(lotRow)
    Q_PROPERTY(QString key MEMBER key)  ///< of lot and product
    Q_PROPERTY(QString lot MEMBER lot)  ///< with its product, or that it is not known
    Q_PROPERTY(QString courses MEMBER courses)
    Q_PROPERTY(QString outcomes MEMBER outcomes)
    Q_PROPERTY(QString spoken MEMBER spoken)

public:
    QString key;
    QString lot;
    QString courses;
    QString outcomes;
    QString spoken;
    bool operator==(const LotRow&) const = default;
};

struct CallRow {
    Q_GADGET
    QML_VALUE_TYPE(callRow)
    Q_PROPERTY(QString course MEMBER course)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString phone MEMBER phone)
    Q_PROPERTY(QString treated MEMBER treated)
    Q_PROPERTY(QString printed MEMBER printed)
    Q_PROPERTY(QString outcome MEMBER outcome)
    Q_PROPERTY(QString spoken MEMBER spoken)

public:
    QString course;
    QString name;
    QString phone;
    QString treated;
    QString treatedAt;  ///< the same as files have it: ISO 8601 with its offset
    QString printed;    ///< with a word where the product is not known and may be the one of the list
    QString written;    ///< the lot alone, as files have it
    QString article;    ///< the product as her record says it; empty: not known
    QString outcome;
    QString spoken;
    bool operator==(const CallRow&) const = default;
};

class LotBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString search READ search WRITE setSearch NOTIFY changed FINAL)
    Q_PROPERTY(ebbline::deskapp::RowList* lots READ lots CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::RowList* calls READ calls CONSTANT FINAL)
    Q_PROPERTY(QString chosen READ chosen NOTIFY changed FINAL)  ///< key of a row; empty: none
    Q_PROPERTY(QString says READ says NOTIFY changed FINAL)
    Q_PROPERTY(QString outcome READ outcome NOTIFY changed FINAL)

public:
    LotBoard(Workplace& workplace, PracticeBoard& practice, QObject* parent = nullptr);

    void refresh();
    QString search() const { return m_search; }
    void setSearch(const QString& text);
    RowList* lots() { return &m_lots; }
    RowList* calls() { return &m_calls; }
    QString chosen() const { return m_chosen; }
    Q_INVOKABLE void choose(const QString& key);
    QString says() const { return m_says; }
    QString outcome() const { return m_outcome; }
    /// The call list of the chosen lot.
    Paper callList() const;
    /// `.pdf`, `.txt` or `.csv`. \returns false and says why in outcome().
    bool write(const QString& path);
    Q_INVOKABLE void saveAs();

Q_SIGNALS:
    void changed();

private:
    Workplace& m_workplace;
    PracticeBoard& m_practice;
    RowList m_lots;
    RowList m_calls;
    QString m_search;
    QString m_chosen;
    QString m_chosenLot;      ///< its name, as shown
    std::string m_tracedLot;
    std::string m_tracedArticle;
    QString m_says;
    QString m_outcome;
};

}  // namespace ebbline::deskapp
