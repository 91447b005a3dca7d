#pragma once
/// \file
/// The clinic's program as one object: build it, show it, steer it, take its picture. main.cpp
/// does so from the command line; a test or a story gives its own clock, folder, courier and zone
/// and drives the same pages.
///
///     DeskProgram program({.folder = folder, .clock = clock, .zone = zone, .courier = maker});
///     program.show(QSize(1280, 800));
///     program.workplace().create(passphrase, cost);      // or unlock
///     program.openQueue();                               // any page below
///     program.grab("queue.png");
///
/// | page | how to show it |
/// |---|---|
/// | unlock | at the start, and after lock() |
/// | person | whoAmI() |
/// | queue | openQueue() |
/// | courses | openCourses() |
/// | treatment | openTreatment(); treatment()->setStep(0..3) |
/// | treatment, correcting one | openCorrection(course) |
/// | pairing | openPairing(course) |
/// | course | openCourse(course) |
/// | photos | openPhotos(course), openPhotos(course, photo) |
/// | followUp | openFollowUp(course) |
/// | sheet | openSheet(course) |
/// | protocols | openProtocols() |
/// | handOver | openHandOver() |
/// | protocolEdit | openProtocolEdit() |
/// | protocolFile | protocolTaking()->read(file) |
/// | practice | openPractice() |
/// | clinic | openClinic() |
/// | desks | openDesks(); a desk is added by the page pairing, openDeskPairing() |
/// | apply | openApply() |
/// | keep | openKeep() |
/// | traces | openTraces() |
/// | settings | openSettings() |
/// | notices | openNotices() |
/// | licence | openLicence(name) |
///
/// Courses are named by deskapp::keyOf(). Needs a QApplication. After show(), `changed` of the
/// workplace keeps every page current.

#include "app/controls/idle_lock.h"
#include "app/desk/clinic/apply_board.h"
#include "app/desk/clinic/desks_board.h"
#include "app/desk/clinic/dose_limits.h"
#include "app/desk/clinic/keep_board.h"
#include "app/desk/clinic/role_board.h"
#include "app/desk/clinic/trace_board.h"
#include "app/desk/model/begun.h"
#include "app/desk/model/clinic_editor.h"
#include "app/desk/model/course_board.h"
#include "app/desk/model/course_list.h"
#include "app/desk/model/follow_up_editor.h"
#include "app/desk/model/hub_watch.h"
#include "app/desk/model/pairing_board.h"
#include "app/desk/model/protocol_board.h"
#include "app/desk/model/queue_board.h"
#include "app/desk/model/settings_board.h"
#include "app/desk/model/treatment_editor.h"
#include "app/desk/model/patient_editor.h"
#include "app/desk/model/unlock_board.h"
#include "app/desk/photos/photo_board.h"
#include "app/desk/practice/band_board.h"
#include "app/desk/practice/lot_board.h"
#include "app/desk/practice/practice_board.h"
#include "app/desk/protocol/protocol_editor.h"
#include "app/desk/protocol/protocol_taking.h"
#include "app/desk/queue/call_board.h"
#include "app/desk/queue/hand_over_board.h"
#include "app/desk/queue/queue_alarm.h"
#include "app/desk/sheet/sheet_board.h"
#include "app/notices/notice_board.h"

#include <QQmlApplicationEngine>
#include <QSize>
#include <QTimer>
#include <QTranslator>

class QQuickWindow;

namespace ebbline::app {

struct DeskSetup {
    std::filesystem::path folder;   ///< of the vault; settings lie beside it as desk.ini
    const clock::Clock& clock;
    aftercare::Zone zone;
    deskapp::CourierMaker courier = {};
    std::optional<crypto::StretchCost> cost = {};  ///< of a passphrase; empty: measured when one is set
    QString language = {};          ///< empty: as kept, else as the system
    std::chrono::milliseconds syncEvery{0};  ///< zero: only when asked
    bool locksWhenIdle = false;     ///< after the minutes chosen in the settings
    notifications::Bells* bells = nullptr;  ///< for notices on the desktop; null: there are none
};

class DeskProgram : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by main")
    Q_PROPERTY(QString page READ pageName NOTIFY pageChanged FINAL)
    Q_PROPERTY(QUrl pageSource READ pageSource NOTIFY pageChanged FINAL)
    Q_PROPERTY(QString pageTitle READ pageTitle NOTIFY pageChanged FINAL)
    Q_PROPERTY(bool open READ isOpen NOTIFY pageChanged FINAL)
    Q_PROPERTY(bool demo READ isDemo NOTIFY pageChanged FINAL)  ///< invented patients
    Q_PROPERTY(bool rightToLeft READ isRightToLeft NOTIFY directionChanged FINAL)
    Q_PROPERTY(QString notice READ notice NOTIFY noticeChanged FINAL)  ///< something went wrong; empty: no
    Q_PROPERTY(QStringList outcomes READ outcomes NOTIFY directionChanged FINAL)  ///< of closing, from 1 on
    Q_PROPERTY(bool helpShown READ isHelpShown WRITE setHelpShown NOTIFY helpShownChanged FINAL)
    Q_PROPERTY(ebbline::controls::IdleLock* idle READ idle CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::Begun* begun READ begun CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::UnlockBoard* unlocking READ unlocking CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::QueueBoard* queue READ queue CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::QueueAlarm* alarm READ alarm CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::CallBoard* call READ call CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::HandOverBoard* handOver READ handOver CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::CourseList* courses READ courses CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::TreatmentEditor* treatment READ treatment CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::PatientEditor* patient READ patient CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::PairingBoard* pairing READ pairing CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::CourseBoard* course READ course CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::PhotoBoard* photos READ photos CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::FollowUpEditor* followUp READ followUp CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::SheetBoard* sheet READ sheet CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::ProtocolBoard* protocols READ protocols CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::ProtocolEditor* protocolEditor READ protocolEditor CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::ProtocolTaking* protocolTaking READ protocolTaking CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::PracticeBoard* practice READ practice CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::LotBoard* lots READ lots CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::BandBoard* bands READ bands CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::ClinicEditor* clinic READ clinic CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::RoleBoard* roles READ roles CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::DoseLimits* doseLimits READ doseLimits CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::DesksBoard* desks READ desks CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::ApplyBoard* applying READ applying CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::KeepBoard* keep READ keep CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::TraceBoard* traces READ traces CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::SettingsBoard* settings READ settings CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::HubWatch* hub READ hub CONSTANT FINAL)
    Q_PROPERTY(ebbline::notices::NoticeBoard* notices READ notices CONSTANT FINAL)

public:
    enum class Page { unlock, person, queue, handOver, courses, treatment, pairing, course, photos, followUp, sheet, protocols, protocolEdit, protocolFile, practice, clinic, desks, apply, keep, traces, settings, notices, licence };
    Q_ENUM(Page)

    explicit DeskProgram(DeskSetup setup, QObject* parent = nullptr);

    /// Opens the window. \returns false if the pages could not be loaded.
    bool show(const QSize& size);
    QQuickWindow* window() const;
    QQmlEngine& engine() { return m_engine; }
    /// Renders what is on the screen now into a PNG file.
    bool grab(const QString& file);

    deskapp::Workplace& workplace() { return m_workplace; }
    Page page() const { return m_page; }
    QString pageName() const;
    QUrl pageSource() const;
    QString pageTitle() const;
    bool isOpen() const { return m_workplace.isOpen(); }
    bool isDemo() const { return m_workplace.isDemo(); }
    bool isRightToLeft() const;
    QString notice() const { return m_notice; }
    QStringList outcomes() const;
    bool isHelpShown() const { return m_helpShown; }
    void setHelpShown(bool shown);

    controls::IdleLock* idle() { return &m_idle; }
    deskapp::Begun* begun() { return &m_begun; }
    deskapp::UnlockBoard* unlocking() { return &m_unlocking; }
    deskapp::QueueBoard* queue() { return &m_queue; }
    deskapp::QueueAlarm* alarm() { return &m_alarm; }
    deskapp::CallBoard* call() { return &m_call; }
    deskapp::HandOverBoard* handOver() { return &m_handOver; }
    deskapp::CourseList* courses() { return &m_courses; }
    deskapp::TreatmentEditor* treatment() { return &m_treatment; }
    deskapp::PatientEditor* patient() { return &m_patient; }
    deskapp::PairingBoard* pairing() { return &m_pairing; }
    deskapp::CourseBoard* course() { return &m_course; }
    deskapp::PhotoBoard* photos() { return &m_photos; }
    deskapp::FollowUpEditor* followUp() { return &m_followUp; }
    deskapp::SheetBoard* sheet() { return &m_sheet; }
    deskapp::ProtocolBoard* protocols() { return &m_protocols; }
    deskapp::ProtocolEditor* protocolEditor() { return &m_protocolEditor; }
    deskapp::ProtocolTaking* protocolTaking() { return &m_protocolTaking; }
    deskapp::PracticeBoard* practice() { return &m_practice; }
    deskapp::LotBoard* lots() { return &m_lots; }
    deskapp::BandBoard* bands() { return &m_bands; }
    deskapp::ClinicEditor* clinic() { return &m_clinic; }
    deskapp::RoleBoard* roles() { return &m_roles; }
    deskapp::DoseLimits* doseLimits() { return &m_doseLimits; }
    deskapp::DesksBoard* desks() { return &m_desks; }
    deskapp::ApplyBoard* applying() { return &m_applying; }
    deskapp::KeepBoard* keep() { return &m_keep; }
    deskapp::TraceBoard* traces() { return &m_traces; }
    deskapp::SettingsBoard* settings() { return &m_settings; }
    deskapp::HubWatch* hub() { return &m_hub; }
    notices::NoticeBoard* notices() { return &m_notices; }

    Q_INVOKABLE void openQueue();
    Q_INVOKABLE void openHandOver();
    Q_INVOKABLE void openCourses();
    Q_INVOKABLE void openTreatment();
    Q_INVOKABLE void openCorrection(const QString& course);  ///< of the record of its treatment
    Q_INVOKABLE void openPairing(const QString& course);
    /// With the key of an entry: at that entry, which stands out.
    Q_INVOKABLE void openCourse(const QString& course, const QString& entry = {});
    /// Two photographs beside each other; with a photograph's key, that one. Nothing if the course has none to show.
    Q_INVOKABLE void openPhotos(const QString& course, const QString& photo = {});
    Q_INVOKABLE void openFollowUp(const QString& course);
    Q_INVOKABLE void openSheet(const QString& course);
    Q_INVOKABLE void openProtocols();
    Q_INVOKABLE void openProtocolEdit();  ///< of the protocol chosen on the page of protocols
    Q_INVOKABLE void openPractice();
    Q_INVOKABLE void openClinic();
    Q_INVOKABLE void openDesks();
    Q_INVOKABLE void openDeskPairing();
    Q_INVOKABLE void openApply();  ///< only in a vault that has no clinic yet
    Q_INVOKABLE void openKeep();
    Q_INVOKABLE void openTraces();
    Q_INVOKABLE void openSettings();
    Q_INVOKABLE void openNotices();
    Q_INVOKABLE void openLicence(const QString& name);  ///< one of notices()->licences()
    Q_INVOKABLE void whoAmI();
    Q_INVOKABLE void choosePerson(const QString& name);
    Q_INVOKABLE void lock();
    /// Locks because nobody uses it: whoever unlocks it and says who she is finds what was begun.
    void lockIdle();
    Q_INVOKABLE void dismissNotice();

Q_SIGNALS:
    void pageChanged();
    void directionChanged();
    void noticeChanged();
    void helpShownChanged();

private:
    void turnTo(Page page);
    void afterUnlock();
    void watchUse();
    void goOn();
    void applyLanguage();
    void sayCodeIsGone();

    DeskSetup m_setup;
    deskapp::SettingsBoard m_settings;
    deskapp::Workplace m_workplace;
    controls::IdleLock m_idle;
    deskapp::Begun m_begun;
    deskapp::UnlockBoard m_unlocking;
    deskapp::HubWatch m_hub;
    deskapp::QueueBoard m_queue;
    deskapp::QueueAlarm m_alarm;
    deskapp::CallBoard m_call;
    deskapp::HandOverBoard m_handOver;
    deskapp::CourseList m_courses;
    deskapp::TreatmentEditor m_treatment;
    deskapp::PatientEditor m_patient;
    deskapp::PairingBoard m_pairing;
    deskapp::CourseBoard m_course;
    deskapp::PhotoBoard m_photos;
    deskapp::FollowUpEditor m_followUp;
    deskapp::SheetBoard m_sheet;
    deskapp::ProtocolBoard m_protocols;
    deskapp::ProtocolEditor m_protocolEditor;
    deskapp::ProtocolTaking m_protocolTaking;
    deskapp::PracticeBoard m_practice;
    deskapp::LotBoard m_lots;
    deskapp::BandBoard m_bands;
    deskapp::ClinicEditor m_clinic;
    deskapp::RoleBoard m_roles;
    deskapp::DoseLimits m_doseLimits;
    deskapp::DesksBoard m_desks;
    deskapp::ApplyBoard m_applying;
    deskapp::KeepBoard m_keep;
    deskapp::TraceBoard m_traces;
    notices::NoticeBoard m_notices{QStringLiteral("desk")};
    Page m_page = Page::unlock;
    struct Left {
        Page page;
        int step;  ///< of the treatment or the protocol
        bool codeShown;
        recovery::CourseId course;
    };
    std::optional<Left> m_left;  ///< what was on the screen when it locked by itself
    QString m_notice;
    bool m_helpShown = false;
    QTranslator m_translator;
    QTimer m_minute;  ///< waiting times and freshness grow old on the screen too
    QQmlApplicationEngine m_engine;
};

}  // namespace ebbline::app
