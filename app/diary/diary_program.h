#pragma once
/// \file
/// The patient's program as one object: build it, show it, steer it, take its picture. main.cpp does
/// so from the command line; a test or a story gives its own clock, folder, courier and zone and
/// drives the same pages.
///
/// | page | how to show it |
/// |---|---|
/// | lock | at the start, and after lock() |
/// | join | at the start, once the diary is made |
/// | today | openToday() |
/// | entry | openEntry(); entry()->... |
/// | warning | after saving an entry that raises one; openWarning() |
/// | call | openCall(), from every page |
/// | history | openHistory() |
/// | notes | openNotes() |
/// | photo | openPhoto(), or saveThenPhoto() at the end of an entry |
/// | picture | openPicture(key) |
/// | settings | openSettings() |
/// | reminders | openReminders() |
/// | keys | openKeys() |
/// | mine | openMine() |
/// | notices | openNotices() |
/// | licence | openLicence(name) |
///
/// Needs a QApplication.

#include "app/controls/idle_lock.h"
#include "app/diary/model/diary_settings.h"
#include "app/diary/model/entry_board.h"
#include "app/diary/model/history_board.h"
#include "app/diary/model/home.h"
#include "app/diary/model/join_board.h"
#include "app/diary/model/keys_board.h"
#include "app/diary/model/lock_board.h"
#include "app/diary/model/mine_board.h"
#include "app/diary/model/photo_board.h"
#include "app/diary/model/picture_board.h"
#include "app/diary/model/reminder_board.h"
#include "app/diary/model/today_board.h"
#include "app/diary/model/warning_board.h"
#include "app/notices/notice_board.h"
#include "app/pulse/hub_pulse.h"

#include <QQmlApplicationEngine>
#include <QSize>
#include <QTranslator>
#include <QUrl>

class QQuickWindow;

namespace ebbline::app {

struct DiarySetup {
    std::filesystem::path folder;  ///< of the vault; settings lie beside it
    const clock::Clock& clock;
    aftercare::Zone zone;
    diaryapp::CourierMaker courier = {};
    std::optional<crypto::StretchCost> cost = {};  ///< of a passphrase; empty: measured when one is set
    QString language = {};         ///< empty: as kept, else as the system
    std::chrono::milliseconds syncEvery{0};  ///< zero: only when asked
    notifications::Bells* bells = nullptr;   ///< of this device; outlives the program
    keystore::SecretKeeper* secrets = nullptr;  ///< of this device; outlives the program
    bool locksWhenIdle = false;              ///< after the minutes chosen in the settings
};

class DiaryProgram : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by main")
    Q_PROPERTY(QUrl pageSource READ pageSource NOTIFY pageChanged FINAL)
    Q_PROPERTY(QString pageTitle READ pageTitle NOTIFY pageChanged FINAL)
    Q_PROPERTY(bool backShown READ isBackShown NOTIFY backChanged FINAL)
    Q_PROPERTY(bool callShown READ isCallShown NOTIFY pageChanged FINAL)
    Q_PROPERTY(bool rightToLeft READ isRightToLeft NOTIFY languageChanged FINAL)
    Q_PROPERTY(qreal keyboardHeight READ keyboardHeight NOTIFY keyboardChanged FINAL)  ///< px of the window that it covers
    Q_PROPERTY(QString notice READ notice NOTIFY noticeChanged FINAL)
    Q_PROPERTY(bool undoShown READ isUndoShown NOTIFY noticeChanged FINAL)  ///< the last save can be corrected
    Q_PROPERTY(ebbline::controls::IdleLock* idle READ idle CONSTANT FINAL)
    Q_PROPERTY(ebbline::diaryapp::LockBoard* locking READ locking CONSTANT FINAL)
    Q_PROPERTY(ebbline::diaryapp::JoinBoard* joining READ joining CONSTANT FINAL)
    Q_PROPERTY(ebbline::diaryapp::TodayBoard* today READ today CONSTANT FINAL)
    Q_PROPERTY(ebbline::diaryapp::EntryBoard* entry READ entry CONSTANT FINAL)
    Q_PROPERTY(ebbline::diaryapp::WarningBoard* warning READ warning CONSTANT FINAL)
    Q_PROPERTY(ebbline::diaryapp::HistoryBoard* history READ history CONSTANT FINAL)
    Q_PROPERTY(ebbline::diaryapp::PhotoBoard* photo READ photo CONSTANT FINAL)
    Q_PROPERTY(ebbline::diaryapp::PictureBoard* picture READ picture CONSTANT FINAL)
    Q_PROPERTY(ebbline::diaryapp::DiarySettings* settings READ settings CONSTANT FINAL)
    Q_PROPERTY(ebbline::diaryapp::ReminderBoard* reminders READ reminders CONSTANT FINAL)
    Q_PROPERTY(ebbline::diaryapp::KeysBoard* keys READ keys CONSTANT FINAL)
    Q_PROPERTY(ebbline::diaryapp::MineBoard* mine READ mine CONSTANT FINAL)
    Q_PROPERTY(ebbline::notices::NoticeBoard* notices READ notices CONSTANT FINAL)

public:
    enum class Page { lock, join, today, entry, warning, call, history, notes, photo, picture, settings, reminders, keys, mine, notices, licence };
    Q_ENUM(Page)

    explicit DiaryProgram(DiarySetup setup, QObject* parent = nullptr);

    bool show(const QSize& size);
    QQuickWindow* window() const;
    bool grab(const QString& file);

    diaryapp::Home& home() { return m_home; }
    Page page() const { return m_page; }
    QString pageName() const;
    QUrl pageSource() const;
    QString pageTitle() const;
    bool isBackShown() const;
    bool isCallShown() const { return m_page != Page::call && m_page != Page::warning; }
    bool isRightToLeft() const;
    qreal keyboardHeight() const { return m_keyboardHeight; }
    /// A keyboard on the screen covers this much of the window from below: the pages keep clear of it.
    void setKeyboardHeight(qreal height);
    QString notice() const { return m_notice; }
    bool isUndoShown() const { return m_undoable.has_value(); }

    controls::IdleLock* idle() { return &m_idle; }
    diaryapp::LockBoard* locking() { return &m_locking; }
    diaryapp::JoinBoard* joining() { return &m_joining; }
    diaryapp::TodayBoard* today() { return &m_today; }
    diaryapp::EntryBoard* entry() { return &m_entry; }
    diaryapp::WarningBoard* warning() { return &m_warning; }
    diaryapp::HistoryBoard* history() { return &m_history; }
    diaryapp::PhotoBoard* photo() { return &m_photo; }
    diaryapp::PictureBoard* picture() { return &m_picture; }
    diaryapp::DiarySettings* settings() { return &m_settings; }
    diaryapp::ReminderBoard* reminders() { return &m_reminders; }
    diaryapp::KeysBoard* keys() { return &m_keys; }
    diaryapp::MineBoard* mine() { return &m_mine; }
    notices::NoticeBoard* notices() { return &m_notices; }

    pulse::HubPulse& pulse() { return m_pulse; }
    /// The phone is in another time zone, or may be: reminders keep the wall clock.
    void travelTo(const aftercare::Zone& zone) { m_home.travelTo(zone); }

    Q_INVOKABLE void openToday();
    Q_INVOKABLE void openEntry();
    Q_INVOKABLE void openCall();
    Q_INVOKABLE void openWarning();
    Q_INVOKABLE void openHistory()
    {
        if (m_home.isOpen())
            turnTo(Page::history);
    }
    Q_INVOKABLE void openNotes();
    Q_INVOKABLE void openPhoto();
    /// Saves the entry, and goes on to photographs only if nothing is to be read first.
    Q_INVOKABLE void saveThenPhoto();
    Q_INVOKABLE void openPicture(const QString& key);
    Q_INVOKABLE void openSettings() { turnTo(Page::settings); }
    Q_INVOKABLE void openReminders()
    {
        if (m_home.isOpen())
            turnTo(Page::reminders);
    }
    Q_INVOKABLE void openKeys();
    Q_INVOKABLE void openMine();
    Q_INVOKABLE void openNotices() { turnTo(Page::notices); }
    /// The text of one of notices()->licences().
    Q_INVOKABLE void openLicence(const QString& name)
    {
        if (m_notices.choose(name))
            turnTo(Page::licence);
    }
    /// An entry about a moment that was forgotten.
    Q_INVOKABLE void openEarlier();
    Q_INVOKABLE void amend(const QString& entry);
    Q_INVOKABLE void undoSave();
    Q_INVOKABLE void back();
    Q_INVOKABLE void lock();
    /// Locks because nobody uses it: the next unlocking leads to where she was. Whom to call stays in sight if it was.
    void lockIdle();
    Q_INVOKABLE void dismissNotice();
    /// Sends and fetches what there is; says nothing when there is no network, the states do.
    Q_INVOKABLE void syncNow();
    /// The same because the patient asked: says how it went.
    Q_INVOKABLE void askNow();

Q_SIGNALS:
    void pageChanged();
    void backChanged();
    void languageChanged();
    void noticeChanged();
    void keyboardChanged();

private:
    void turnTo(Page page);
    void arrive();
    void watchUse();
    void goOn();
    /// What asks for something stays until it is closed; the rest goes by itself.
    void say(const QString& text, std::optional<recovery::EntryId> undoable = {}, bool stays = false);
    void applyLanguage();
    void afterSave();
    void afterRun(const sync::Report& report);
    bool isAllSent(const sync::Report& report) const;
    void wirePhotos();
    void afterRefusal();
    void afterReading();

    DiarySetup m_setup;
    diaryapp::DiarySettings m_settings;
    diaryapp::Home m_home;
    controls::IdleLock m_idle;
    diaryapp::LockBoard m_locking;
    diaryapp::JoinBoard m_joining;
    diaryapp::TodayBoard m_today;
    diaryapp::EntryBoard m_entry;
    diaryapp::WarningBoard m_warning;
    diaryapp::PhotoShelf m_shelf;
    diaryapp::PhotoBoard m_photo;
    diaryapp::PictureBoard m_picture;
    diaryapp::HistoryBoard m_history;
    diaryapp::ReminderBoard m_reminders;
    diaryapp::KeysBoard m_keys;
    diaryapp::MineBoard m_mine;
    notices::NoticeBoard m_notices{QStringLiteral("diary")};
    Page m_page = Page::lock;
    Page m_before = Page::lock;
    struct Left {
        Page page;
        std::optional<recovery::EntryId> amends;
        bool codeShown;
    };
    std::optional<Left> m_left;  ///< where she was when it locked by itself
    QString m_notice;
    std::optional<recovery::EntryId> m_undoable;
    QTimer m_noticeTimer;
    pulse::HubPulse m_pulse;
    qreal m_keyboardHeight = 0;
    bool m_asked = false;  ///< the patient waits for the answer
    bool m_codeLeft = false;      ///< a recovery code went with its page, and that is not said yet
    bool m_tellsMissing = false;  ///< the notice in sight says that a message is missing
    QTranslator m_translator;
    QQmlApplicationEngine m_engine;
};

}  // namespace ebbline::app
