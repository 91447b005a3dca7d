#pragma once
/// \file
/// Usual messages beside the field of a message: which there are, in which language the patient reads, and what both
/// sides will read before anything is written.

#include "app/desk/model/usual_texts.h"
#include "app/desk/model/workplace.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace ebbline::deskapp {

class UsualBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the board of a course")
    Q_PROPERTY(QStringList titles READ titles NOTIFY changed FINAL)
    Q_PROPERTY(int chosen READ chosen WRITE choose NOTIFY changed FINAL)  ///< of titles(); -1: none
    Q_PROPERTY(QStringList languages READ languages NOTIFY changed FINAL)
    Q_PROPERTY(int language READ language WRITE setLanguage NOTIFY changed FINAL)  ///< of languages(); -1: not known
    Q_PROPERTY(QString languageText READ languageText NOTIFY changed FINAL)  ///< where it is known from, or that it is not
    Q_PROPERTY(QString theirs READ theirs NOTIFY changed FINAL)   ///< what she will read; empty: no language
    Q_PROPERTY(QString theirsLabel READ theirsLabel NOTIFY changed FINAL)
    Q_PROPERTY(QString ours READ ours NOTIFY changed FINAL)       ///< the same in the desk's language; empty: it is the same
    Q_PROPERTY(QString caution READ caution NOTIFY changed FINAL) ///< a message is not enough now; empty: nothing to say

public:
    explicit UsualBoard(Workplace& workplace, QObject* parent = nullptr) : QObject(parent), m_workplace(workplace) {}

    /// For the patient of a course. `urgent`: a finding that asks for a call now is open; `waiting`: any finding is open,
    /// or an entry that nobody opened.
    void show(const desk::CourseSummary& course, bool urgent, bool waiting);
    void empty();

    QStringList titles() const;
    int chosen() const { return m_chosen; }
    void choose(int index);
    QStringList languages() const;
    int language() const;
    void setLanguage(int index);
    QString languageText() const;
    QString theirs() const;
    QString theirsLabel() const;
    QString ours() const;
    QString caution() const;

Q_SIGNALS:
    void changed();

private:
    std::vector<UsualText> offered() const;
    QString words(const QString& language) const;

    Workplace& m_workplace;
    recovery::CourseId m_course;
    QString m_registered;  ///< one of diaryLanguages(), or empty
    QString m_language;
    bool m_urgent = false;
    bool m_waiting = false;
    int m_chosen = -1;
};

}  // namespace ebbline::deskapp
