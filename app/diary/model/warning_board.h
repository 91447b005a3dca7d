#pragma once
/// \file
/// Warnings, and whom to call. Calm, exact, never ahead of the facts, never softened.

#include "app/diary/model/emergency_numbers.h"
#include "app/diary/model/diary_settings.h"
#include "app/diary/model/home.h"

#include <QLocale>
#include <QSet>
#include <QtQml/qqmlregistration.h>

namespace ebbline::diaryapp {

/// A number to call.
struct CallLine {
    Q_GADGET
    QML_VALUE_TYPE(callLine)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString number MEMBER number)
    Q_PROPERTY(bool emergency MEMBER emergency)

public:
    QString title;
    QString number;
    bool emergency = false;
    bool operator==(const CallLine&) const = default;
};

class WarningBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(bool emergency READ isEmergency NOTIFY changed FINAL)
    Q_PROPERTY(bool loud READ isLoud NOTIFY changed FINAL)  ///< emergency or call now: takes the whole page
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString doNow READ doNow NOTIFY changed FINAL)
    Q_PROPERTY(QString meaning READ meaning NOTIFY changed FINAL)  ///< what it can mean; over a lock without what was found
    Q_PROPERTY(QString reason READ reason NOTIFY changed FINAL)
    Q_PROPERTY(QString sentState READ sentState NOTIFY changed FINAL)
    Q_PROPERTY(QString unsaved READ unsaved NOTIFY changed FINAL)    ///< that it is not saved, and why; else empty
    Q_PROPERTY(QString readHint READ readHint NOTIFY changed FINAL)  ///< where the warning goes once read
    /// Numbers in the order to try them: for an emergency the emergency number first. Behind the clinic's stands the one of
    /// the phone's region, if that is known and another.
    Q_PROPERTY(QList<ebbline::diaryapp::CallLine> calls READ calls NOTIFY changed FINAL)
    Q_PROPERTY(QString callHint READ callHint NOTIFY changed FINAL)  ///< that another place has another emergency number
    Q_PROPERTY(bool choosingPlace READ isChoosingPlace NOTIFY changed FINAL)  ///< of several places, which is hers is not known: none leads
    Q_PROPERTY(QString undialled READ undialled NOTIFY undialledChanged FINAL)  ///< the number that nothing here dials, as far as can be known; empty: none
    Q_PROPERTY(bool dialTried READ isDialTried NOTIFY undialledChanged FINAL)   ///< of `undialled`: a call may have started all the same
    Q_PROPERTY(QString clinicName READ clinicName NOTIFY changed FINAL)
    Q_PROPERTY(QStringList emergencySigns READ emergencySigns NOTIFY changed FINAL)
    Q_PROPERTY(QStringList callSigns READ callSigns NOTIFY changed FINAL)  ///< for the clinic, the same day

public:
    WarningBoard(Home& home, DiarySettings& settings, QObject* parent = nullptr);

    /// The findings to show, most urgent first.
    void show(std::vector<triage::Finding> findings);
    /// The same of an entry that is not saved: `problem` says why it could not be; empty: nobody has tried yet.
    void showUnsaved(std::vector<triage::Finding> findings, const QString& problem);
    /// What still stands from earlier entries, and was not read in this run.
    void showStanding();
    /// The diary is about to lock: what to do and how urgent it is stay, and what was found goes.
    void keepOverLock();
    bool isKeptOverLock() const { return m_keptOverLock; }
    bool isEmpty() const { return m_findings.empty(); }

    bool isEmergency() const;
    bool isLoud() const;
    QString title() const;
    QString doNow() const;
    QString meaning() const;
    QString reason() const;
    QString sentState() const;
    QString unsaved() const { return m_unsaved; }
    QString readHint() const;
    QList<CallLine> calls() const;
    QString callHint() const;
    bool isChoosingPlace() const { return !m_home.contacts() && calls().size() > 1; }
    /// Where the phone is; at first as its time zone or its settings say.
    void setRegion(QLocale::Territory region);
    QString undialled() const { return m_undialled; }
    bool isDialTried() const { return m_dialTried; }
    QString clinicName() const;
    QStringList emergencySigns() const;
    QStringList callSigns() const;

    /// The patient has read it: recorded, and it no longer covers the day. Where that cannot be recorded, it is said, and
    /// the warning comes again when the diary is opened next. Of an entry that is not saved nothing is recorded.
    Q_INVOKABLE void confirm();
    /// Hands the number to the device. \returns false where nothing can dial: undialled() says so, until another page
    /// shows. Only a phone knows that it dials: elsewhere the number also stands there if the device took it.
    Q_INVOKABLE bool call(const QString& number);

Q_SIGNALS:
    void changed();
    void undialledChanged();  ///< apart from the others: the button that was touched stays, and keeps the keyboard
    void confirmed();
    void failed(const QString& text);

private:
    void setUndialled(const QString& number);
    Home& m_home;
    DiarySettings& m_settings;
    std::vector<triage::Finding> m_findings;
    QString m_unsaved;
    QString m_undialled;
    bool m_dialTried = false;
    QLocale::Territory m_region = regionHere();
    bool m_keptOverLock = false;
    QSet<QString> m_read;  ///< keys of findings whose reading could not be recorded
};

}  // namespace ebbline::diaryapp
