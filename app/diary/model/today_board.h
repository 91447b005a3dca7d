#pragma once
/// \file
/// The day: what is usual, what to do now, what comes next, how the course runs, what was sent.

#include "app/charts/curve_picture.h"
#include "app/diary/model/diary_settings.h"
#include "app/diary/model/home.h"
#include "app/diary/model/words.h"

#include <QtQml/qqmlregistration.h>

namespace ebbline::diaryapp {

/// One line with a title and a sentence: a reminder, or a rule in force.
struct DayLine {
    Q_GADGET
    QML_VALUE_TYPE(dayLine)
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString text MEMBER text)
    Q_PROPERTY(QString when MEMBER when)
    Q_PROPERTY(bool isEntry MEMBER isEntry)  ///< answered by writing an entry
    Q_PROPERTY(bool isDone MEMBER isDone)    ///< answered with "Done"

public:
    QString key;
    QString title;
    QString text;
    QString when;
    bool isEntry = false;
    bool isDone = false;
    bool operator==(const DayLine&) const = default;
};

class TodayBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString day READ day NOTIFY changed FINAL)              ///< "Day 2"
    Q_PROPERTY(QString followUp READ followUp NOTIFY changed FINAL)    ///< "Follow-up: 22 March, 10:00"
    Q_PROPERTY(QString visitMoved READ visitMoved NOTIFY changed FINAL)  ///< what was agreed before; empty: it was not moved
    Q_PROPERTY(QString usual READ usual NOTIFY changed FINAL)          ///< what is usual today, in words
    Q_PROPERTY(QString usualGround READ usualGround NOTIFY changed FINAL)  ///< what stands behind it
    Q_PROPERTY(QString sent READ sent NOTIFY changed FINAL)            ///< where the last entry is
    Q_PROPERTY(bool stuck READ isStuck NOTIFY changed FINAL)           ///< the outlook belongs to the top: a day without proof, or worse
    Q_PROPERTY(QString outlook READ outlook NOTIFY changed FINAL)      ///< what stands between her and the clinic; empty: nothing
    Q_PROPERTY(QString replaced READ replaced NOTIFY changed FINAL)    ///< another phone is linked now; empty: this one
    Q_PROPERTY(QString standing READ standing NOTIFY changed FINAL)    ///< a warning not read yet; empty: none
    Q_PROPERTY(QString adviceTitle READ adviceTitle NOTIFY changed FINAL)    ///< of what can wait and was not read yet; empty: nothing
    Q_PROPERTY(QString adviceDoNow READ adviceDoNow NOTIFY changed FINAL)    ///< all of what to do
    Q_PROPERTY(QString adviceReason READ adviceReason NOTIFY changed FINAL)  ///< all reasons
    Q_PROPERTY(QString unread READ unread NOTIFY changed FINAL)        ///< notes from the clinic; empty: none
    Q_PROPERTY(QList<ebbline::diaryapp::DayLine> due READ due NOTIFY changed FINAL)
    Q_PROPERTY(QList<ebbline::diaryapp::DayLine> answered READ answered NOTIFY changed FINAL)  ///< today, to look at and to take back
    Q_PROPERTY(QList<ebbline::diaryapp::DayLine> next READ next NOTIFY changed FINAL)
    Q_PROPERTY(QList<ebbline::diaryapp::DayLine> rules READ rules NOTIFY changed FINAL)
    Q_PROPERTY(QString writeWord READ writeWord NOTIFY changed FINAL)  ///< "Write down how it is", or to go on with it
    Q_PROPERTY(QStringList laterChoices READ laterChoices NOTIFY changed FINAL)
    Q_PROPERTY(QList<ebbline::charts::CurvePicture> curves READ curves NOTIFY changed FINAL)
    Q_PROPERTY(bool moreThere READ isMoreThere NOTIFY changed FINAL)  ///< there are moreCurves
    Q_PROPERTY(QList<ebbline::charts::CurvePicture> moreCurves READ moreCurves NOTIFY changed FINAL)

public:
    TodayBoard(Home& home, DiarySettings& settings, QObject* parent = nullptr);

    QString day() const;
    QString followUp() const;
    QString visitMoved() const;
    QString usual() const;
    QString usualGround() const;
    QString sent() const;
    QString outlook() const;
    bool isStuck() const;
    QString replaced() const;
    QString standing() const;
    QString adviceTitle() const { return m_advice.title; }
    QString adviceDoNow() const { return m_advice.doNow; }
    QString adviceReason() const { return m_advice.reason; }
    QString unread() const;
    QList<DayLine> due() const;
    QList<DayLine> answered() const;
    QList<DayLine> next() const;
    QList<DayLine> rules() const;
    QString writeWord() const;
    QStringList laterChoices() const;
    /// Swelling and pain, each left and right.
    QList<charts::CurvePicture> curves() const;
    bool isMoreThere() const;
    /// The other symptoms that were ever scored, in the order in which an entry asks for them.
    QList<charts::CurvePicture> moreCurves() const;

    Q_INVOKABLE void done(const QString& key);
    Q_INVOKABLE void notDone(const QString& key);
    Q_INVOKABLE void later(const QString& key, int choice);
    Q_INVOKABLE void refresh();
    /// The patient has read the advice: recorded, and it stands with its entry from then on.
    Q_INVOKABLE void readAdvice();

Q_SIGNALS:
    void changed();
    void failed(const QString& text);

private:
    std::string clinicTextOf(const aftercare::Reminder& reminder) const;
    DayLine lineOf(const patient::ReminderView& view, clock::Instant at) const;
    bool isScored(recovery::Symptom symptom) const;
    void addCurves(recovery::Symptom symptom, QList<charts::CurvePicture>& pictures) const;
    static QString refusedText(sync::Refusal::Why why);
    void answer(const QString& key, records::ReminderAnswer answer, std::optional<clock::Instant> until = {});
    std::vector<clock::Instant> laterTimes() const;

    Home& m_home;
    DiarySettings& m_settings;
    patient::Today m_today;
    Advice m_advice;
};

}  // namespace ebbline::diaryapp
