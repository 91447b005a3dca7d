#pragma once
/// \file
/// Which moment an entry speaks of: now, or an earlier one that was forgotten. Offers only moments
/// between the treatment and now, in half hours.

#include "app/diary/model/home.h"

#include <QtQml/qqmlregistration.h>

namespace ebbline::diaryapp {

class EntryMoment : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(bool earlier READ isEarlier NOTIFY changed FINAL)    ///< not about now
    Q_PROPERTY(bool choosing READ isChoosing NOTIFY changed FINAL)  ///< day and time are in sight
    Q_PROPERTY(bool asking READ isAsking NOTIFY changed FINAL)  ///< begun a while ago: about then, or about now?
    Q_PROPERTY(QString askText READ askText NOTIFY changed FINAL)
    Q_PROPERTY(bool nowOffered READ isNowOffered NOTIFY changed FINAL)
    Q_PROPERTY(QString text READ text NOTIFY changed FINAL)         ///< "This is about yesterday 21:10."
    Q_PROPERTY(QStringList days READ days NOTIFY changed FINAL)
    Q_PROPERTY(QStringList times READ times NOTIFY changed FINAL)   ///< of the chosen day
    Q_PROPERTY(int day READ day NOTIFY changed FINAL)
    Q_PROPERTY(int time READ time NOTIFY changed FINAL)

public:
    explicit EntryMoment(Home& home, QObject* parent = nullptr);

    /// Shows a moment that is already there. \param fixed  a correction: "now" is not offered
    void show(const clock::Moment& at, bool fixed);
    /// What is shown was begun a while ago as "now": which of the two it is, only she knows.
    void ask();
    const clock::Moment& at() const { return m_at; }

    bool isEarlier() const { return m_fixed || m_earlier; }
    bool isChoosing() const { return m_choosing; }
    bool isAsking() const { return m_asking; }
    QString askText() const;
    bool isNowOffered() const { return !m_fixed; }
    QString text() const;
    QStringList days() const;
    QStringList times() const;
    int day() const;
    int time() const;

    /// Opens the choice, at the half hour before the moment that stands.
    Q_INVOKABLE void choose();
    Q_INVOKABLE void chooseDay(int index);
    Q_INVOKABLE void chooseTime(int index);
    Q_INVOKABLE void useNow();
    /// The answer to askText(): what was typed is about the moment at which it was begun.
    Q_INVOKABLE void keepThen();

Q_SIGNALS:
    void changed();
    void picked();
    void takenAsNow();  ///< after picked(): what was typed a while ago is said to be about now

private:
    std::vector<clock::Instant> halfHours(clock::LocalDay day) const;
    std::vector<clock::LocalDay> dayList() const;
    void pick(clock::Instant at);

    Home& m_home;
    clock::Moment m_at;
    bool m_earlier = false;
    bool m_fixed = false;
    bool m_choosing = false;
    bool m_asking = false;
};

}  // namespace ebbline::diaryapp
