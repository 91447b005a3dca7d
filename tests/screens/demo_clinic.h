#pragma once
/// \file
/// An invented clinic with invented patients in every state a queue can show, for tests of the
/// desk: a vault in a folder of its own, its clock standing still on an afternoon.

#include "app/desk/desk_program.h"
#include "core/mailbox/service.h"

#include <QTemporaryDir>

#include <map>
#include <memory>

namespace ebbline::screens {

class DemoClinic {
public:
    /// With so many courses of the past beside those of today (core/desk/invented_past).
    explicit DemoClinic(int past = 0);

    static constexpr auto passphrase = "waterline at low tide";

    clock::ManualClock& clock() { return m_clock; }
    std::filesystem::path folder() const;
    aftercare::Zone zone() const { return m_zone; }
    /// A program over the vault, unlocked, with somebody at the desk.
    std::unique_ptr<app::DeskProgram> program(const QString& language, deskapp::CourierMaker courier = {});
    /// A program over an empty folder.
    std::unique_ptr<app::DeskProgram> freshProgram(const QString& language, deskapp::CourierMaker courier = {});
    /// From the next program on: it locks by itself.
    void setLocksWhenIdle(bool locks) { m_locksWhenIdle = locks; }
    /// From the next program on: notices go there.
    void setBells(notifications::Bells* bells) { m_bells = bells; }
    /// A way to a hub in this process, which knows the clinic.
    deskapp::CourierMaker hub();
    /// A phone reads the code on the screen of the program, up to the six digits.
    void bringPhone(app::DeskProgram& program);
    /// The same with a code that was seen earlier.
    void bringPhone(app::DeskProgram& program, const QString& code);
    recovery::CourseId course(const std::string& patient) const { return m_courses.at(patient); }
    /// Where the eyes are in a photograph: known, since the faces are drawn.
    const photos::Eyes& eyesIn(const photos::PhotoId& photo) const { return m_eyes.at(photo); }

private:
    /// How a photograph got here, or did not.
    enum class Came { whole, inPart, refused, takenBack, undecodable };
    struct Shot {
        photos::Pose pose = photos::Pose::front;
        Came came = Came::whole;
    };
    struct Told {
        int day;
        int minuteOfDay;
        std::map<recovery::Symptom, std::array<int, 2>> scores;  ///< left, right
        recovery::Signs signs = {};
        std::optional<double> celsius = {};
        std::string note = {};
        int lateByHours = 0;
        std::vector<Shot> shots = {};
    };
    /// A photograph on its way: what stands in the journal, and the chunks that came.
    struct Sent {
        records::PhotoTaken taken;
        std::vector<bytes::Bytes> chunks;
        Came came;
    };

    clock::Moment moment(int daysAgo, int minuteOfDay) const;
    recovery::CourseId treat(desk::Desk& desk, const std::string& name, int daysAgo, bool linked);
    Sent photograph(const recovery::Entry& entry, const Told& told, const Shot& shot);
    void receive(desk::Desk& desk, const Sent& sent);
    void tell(desk::Desk& desk, const std::string& name, int daysAgo, const std::vector<Told>& told);
    /// Every phone says that it has what the desk wrote so far.
    void confirmAll(desk::Desk& desk);
    void fill(desk::Desk& desk, int past);

    QTemporaryDir m_folder;
    clock::ManualClock m_clock;
    aftercare::Zone m_zone;
    std::unique_ptr<mailbox::MailStore> m_store;
    std::unique_ptr<mailbox::Service> m_service;
    int m_phonesBrought = 0;
    bool m_locksWhenIdle = false;
    notifications::Bells* m_bells = nullptr;
    std::map<std::string, recovery::CourseId> m_courses;
    std::map<photos::PhotoId, photos::Eyes> m_eyes;
    std::map<std::string, envelope::MailboxId> m_mailboxes;
    std::map<std::string, crypto::SigningPublicKey> m_phones;
};

}  // namespace ebbline::screens
