#pragma once
/// \file
/// The stage of the story: a clock that stands still until told, a real hub, the clinic's program,
/// and a phone's program for each patient.

#include "app/desk/desk_program.h"
#include "app/diary/diary_program.h"
#include "app/story/hub_process.h"
#include "app/story/scenario.h"

namespace ebbline::story {

struct Phone {
    const Patient* patient = nullptr;
    recovery::CourseId course;
    std::unique_ptr<app::DiaryProgram> program;
    std::size_t told = 0;  ///< how many of the patient's tellings are written
};

/// What stands on the screens while somebody is treated and her phone linked, in this order.
enum class Scene { registered, threadsDrawn, anaestheticCounted, careSaid, recorded, codeShown, numbersShown, joined };

class Stage {
public:
    /// Looks at the screens; the phone is the last of phones().
    using Onlooker = std::function<void(Scene)>;

    Stage(const Scenario& scenario, QString folder, QString hubProgram, QString language);

    /// Clinic, hub, protocols. \returns what went wrong.
    Done setUp();
    /// Treats a patient on the desk's pages and joins her phone by the picture of the code, or by typing it.
    Done treat(const Patient& patient, const Onlooker& look);

    void setTime(clock::LocalDay day, int minuteOfDay);
    clock::Instant now() const { return m_clock.now(); }
    app::DeskProgram& desk() { return *m_desk; }
    std::vector<std::unique_ptr<Phone>>& phones() { return m_phones; }
    HubProcess& hub() { return m_hub; }
    const bytes::Bytes& carried() const { return *m_carried; }
    const aftercare::Zone& zone() const { return m_zone; }
    const QString& folder() const { return m_folder; }

    /// Programs over empty folders, as on the first day; gone with what they wrote when the stage's folder goes.
    std::unique_ptr<app::DiaryProgram> freshPhone(const QString& name);
    std::unique_ptr<app::DeskProgram> freshDesk(const QString& name);

    /// Returns when the run is over. \returns what it found.
    sync::Report syncPhone(Phone& phone);
    /// As the desk's program does it, with all that it notes and says of it.
    sync::Report syncDesk();

    static constexpr auto passphrase = "slow tide over warm sand";

private:
    Done writeDown(const Patient& patient, const Onlooker& look);
    Done pair(Phone& phone, const Onlooker& look);
    std::unique_ptr<sync::Courier> courierTo(const std::string& base) const;

    const Scenario& m_scenario;
    QString m_folder;
    QString m_language;
    aftercare::Zone m_zone;
    clock::ManualClock m_clock;
    HubProcess m_hub;
    std::shared_ptr<bytes::Bytes> m_carried = std::make_shared<bytes::Bytes>();
    std::unique_ptr<app::DeskProgram> m_desk;
    std::vector<std::unique_ptr<Phone>> m_phones;
};

/// Runs the event loop until `ready` says so. \returns false after `patience`.
bool waitFor(const std::function<bool()>& ready, std::chrono::milliseconds patience = std::chrono::seconds(20));

}  // namespace ebbline::story
