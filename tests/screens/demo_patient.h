#pragma once
/// \file
/// An invented patient with a phone, her clinic and its hub in one process, for tests of the diary.
/// The clock stands still until told; the network is there until told.

#include "app/diary/diary_program.h"
#include "core/aftercare/visit.h"
#include "core/desk/desk.h"
#include "core/desk/inviting.h"
#include "core/mailbox/service.h"
#include "tests/platform/keystore/fake_keeper.h"
#include "tests/screens/spoken_bells.h"

#include <QTemporaryDir>

#include <memory>

namespace ebbline::screens {

class DemoPatient {
public:
    /// Day 0, the treatment done at 10:30, the clinic ready to link a phone.
    DemoPatient();

    static constexpr auto passphrase = "three calm herons wade";
    static constexpr auto hub = "hub.example";

    clock::ManualClock& clock() { return m_clock; }
    const aftercare::Zone& zone() const { return m_zone; }
    std::filesystem::path folder() const;

    /// A program over the phone's folder: empty at first, locked once a diary was made.
    std::unique_ptr<app::DiaryProgram> program(const QString& language);
    /// The same, with the diary made, linked, and the care plan there.
    std::unique_ptr<app::DiaryProgram> joined(const QString& language);
    /// A second phone that takes the place of the first: the same course, a folder of its own.
    std::unique_ptr<app::DiaryProgram> joinedOnAnotherPhone(const QString& language);

    /// Of her phone. The person has not been asked yet.
    SpokenBells& bells() { return m_bells; }
    /// Of her phone: not there until told.
    test::FakeKeeper& keeper() { return m_keeper; }

    /// What the clinic does. Each throws std::runtime_error if it cannot.
    QString showsCode();                    ///< the typed code of a new offer
    std::string showsQr();                  ///< the text of the code that is drawn beside it
    QUrl showsPicture();                    ///< a file with the picture of a new offer's code
    void looks();                           ///< asks the hub about the offer
    QString number() const;                 ///< six digits, once a phone has come
    void confirms();                        ///< both read the same number
    void sends();                           ///< syncs the desk
    void agrees(const aftercare::Visit& visit);  ///< another follow-up, on its way to the phone
    /// Another care plan, on its way to the phone.
    void plans(const std::function<void(aftercare::CarePlan&)>& change);
    void opens();                           ///< syncs, opens what came, syncs
    void writes(const std::string& text);   ///< a note, on its way to the phone

    /// From the next program on: it locks by itself.
    void setLocksWhenIdle(bool locks) { m_locksWhenIdle = locks; }
    /// From the next program on: it sends and fetches by itself, this often.
    void setSyncEvery(std::chrono::milliseconds every) { m_syncEvery = every; }
    /// No request gets through while this holds.
    void setOffline(bool offline) { m_offline = offline; }
    bool isOffline() const { return m_offline; }
    /// While this holds, somebody answers the phone in the hub's place, and the key shows that it is not the hub's.
    void setStranger(bool stranger) { m_stranger = stranger; }
    /// The clock goes to a local time of a day of recovery.
    void goTo(int day, int hour, int minute = 0);

    /// Writes an entry with the same points on both sides for the five questions always asked.
    static void tell(app::DiaryProgram& program, int points);
    /// Takes a picture of a drawn face for the photo page, and waits until it can be looked at.
    static void aims(app::DiaryProgram& program, double swelling = 0);
    /// Runs the event loop until the pictures of the history are there. \returns false if they do not come.
    static bool seesPhotos(app::DiaryProgram& program);
    /// Runs the event loop until `ready` says so. \returns false after ten seconds.
    static bool waits(const std::function<bool()>& ready);
    /// Answers nothing but one sign, and saves.
    static void tellSign(app::DiaryProgram& program, recovery::Sign sign);

private:
    std::unique_ptr<sync::Courier> courier();
    std::unique_ptr<app::DiaryProgram> programIn(const std::filesystem::path& folder, const QString& language);
    void join(app::DiaryProgram& program);

    QTemporaryDir m_folder;
    SpokenBells m_bells;
    test::FakeKeeper m_keeper = test::FakeKeeper::absent();
    clock::ManualClock m_clock;
    aftercare::Zone m_zone;
    bool m_offline = false;
    bool m_stranger = false;
    std::chrono::milliseconds m_syncEvery{0};
    bool m_locksWhenIdle = false;
    std::unique_ptr<mailbox::MailStore> m_store;
    std::unique_ptr<mailbox::Service> m_service;
    std::unique_ptr<sync::Courier> m_deskCourier;
    std::optional<desk::Desk> m_desk;
    std::optional<desk::Inviting> m_inviting;
    recovery::CourseId m_course;
};

}  // namespace ebbline::screens
