#include "app/story/story.h"

#include "app/story/album.h"
#include "app/story/hands.h"
#include "app/story/hub_process.h"
#include "app/story/practitioner.h"
#include "app/story/progress.h"
#include "app/story/snapshots.h"
#include "app/story/stage.h"
#include "app/story/summary.h"

#include <QDir>
#include <QFile>

#include <algorithm>

namespace ebbline::story {

namespace {

constexpr int morningSync = 9 * 60 + 30;
constexpr int eveningSync = 21 * 60;
constexpr int backupAt = 8 * 60;
constexpr int backupEvery = 6;  // days: before the desk asks for one
constexpr int demoDays = 9;

class Story {
public:
    Story(const StorySetup& setup, const Scenario& scenario)
        : m_endsAt(setup.endsAt), m_scenario(scenario), m_stage(scenario, setup.out + QStringLiteral("/work"), setup.hubProgram, QStringLiteral("en")),
          m_summary(scenario), m_album(setup.out, setup.screens)
    {
    }

    Done play()
    {
        if (const Done ready = m_stage.setUp(); !ready)
            return ready;
        for (int day = 0; day < m_scenario.days; ++day) {
            m_progress.say("day", static_cast<std::size_t>(day) + 1, static_cast<std::size_t>(m_scenario.days));
            if (const Done lived = liveThrough(day); !lived)
                return lived;
        }
        return close();
    }

    Summary& summary() { return m_summary; }
    Stage& stage() { return m_stage; }

private:
    struct Moment {
        int minute;
        std::function<Done()> happens;
    };

    Done liveThrough(int day)
    {
        std::vector<Moment> moments;
        for (const Patient& patient : m_scenario.patients)
            if (patient.treatedOnDay == day)
                moments.push_back({patient.treatedAtMinute, [&] { return treat(patient); }});
        for (auto& phone : m_stage.phones())
            addTellings(moments, *phone, day);
        // Phones treated today write later the same day.
        if (day % backupEvery == 0)
            moments.push_back({backupAt, [this] { return keepBackup(); }});
        moments.push_back({morningSync, [this] { return clinicLooks(); }});
        moments.push_back({eveningSync, [this] { return clinicLooks(); }});
        std::stable_sort(moments.begin(), moments.end(), [](const Moment& a, const Moment& b) { return a.minute < b.minute; });
        for (std::size_t i = 0; i < moments.size(); ++i) {
            m_stage.setTime(m_scenario.firstDay + std::chrono::days(day), moments[i].minute);
            if (m_endsAt && m_stage.now() > *m_endsAt)
                return {};
            const std::size_t phones = m_stage.phones().size();
            if (const Done done = moments[i].happens(); !done)
                return done;
            if (m_stage.phones().size() > phones) {
                addTellings(moments, *m_stage.phones().back(), day);
                std::stable_sort(moments.begin() + static_cast<std::ptrdiff_t>(i) + 1, moments.end(),
                                 [](const Moment& a, const Moment& b) { return a.minute < b.minute; });
            }
        }
        return {};
    }

    void addTellings(std::vector<Moment>& moments, Phone& phone, int storyDay)
    {
        const int day = storyDay - phone.patient->treatedOnDay;
        for (const Telling& telling : phone.patient->tellings)
            if (telling.day == day)
                moments.push_back({telling.minuteOfDay, [this, &phone, &telling] { return tell(phone, telling); }});
    }

    /// The line of it alone: a copy of invented patients is of use to nobody.
    Done keepBackup()
    {
        m_summary.count("backups noted");
        const Done noted = m_stage.desk().workplace().desk().noteStep(records::Step::backupMade, m_scenario.practitioner);
        m_stage.desk().workplace().settle(Done{});
        return noted;
    }

    Done treat(const Patient& patient)
    {
        const Done done = m_stage.treat(patient, [this](Scene scene) { m_album.atTheTreatment(m_stage, scene); });
        m_summary.count("treatments");
        if (done)
            m_summary.count("phones joined");
        return done;
    }

    Result<patient::Saved> write(patient::Diary& diary, const Telling& telling)
    {
        recovery::Entry entry = diary.blankEntry();
        entry.scores = telling.scores;
        entry.present = telling.signs;
        for (const recovery::Sign sign : recovery::allSigns)
            if (!entry.present.contains(sign))
                entry.absent.insert(sign);
        if (telling.celsius)
            entry.temperature = *recovery::Temperature::celsius(*telling.celsius);
        entry.note = telling.note;
        return diary.record(entry);
    }

    Done tell(Phone& phone, const Telling& telling)
    {
        patient::Diary& diary = phone.program->home().diary();
        phone.program->today()->refresh();
        m_album.beforeEntry(phone);
        // A few are not kept, as in life.
        const auto answered = answerReminders(*phone.program, telling.day % 6 != 4);
        if (!answered)
            return fail(answered.error());
        m_summary.count("reminders answered", *answered);
        const bool byHand = phone.patient->byHand;
        const auto saved = byHand ? writeByHand(*phone.program, telling) : write(diary, telling);
        if (!saved)
            return fail(saved.error());
        m_summary.count("entries");
        const bool loud = !saved->findings.empty() && saved->findings.front().urgency <= recovery::Urgency::callNow;
        if (byHand) {
            m_summary.count("entries tapped in");
            if (loud && m_followed.phone == nullptr)
                m_followed = {&phone, saved->entry, {}};
            look();
        }
        recovery::Entry entry = diary.blankEntry();
        entry.id = saved->entry;
        if (const Done taken = m_snapshots.take(phone, telling, entry); !taken)
            return taken;
        phone.program->home().touch();
        m_album.afterEntry(m_stage, phone, telling, saved->findings);
        for (const triage::Finding& finding : saved->findings)
            if (finding.urgency <= recovery::Urgency::callNow) {
                m_summary.count("warnings shown on phones");
                if (const Done confirmed = byHand ? readWarning(*phone.program) : diary.confirmWarning(finding); !confirmed)
                    return confirmed;
            }
        const bool offline = telling.day >= phone.patient->offlineFromDay && telling.day <= phone.patient->offlineToDay;
        if (offline) {
            m_summary.count("entries written offline");
            return {};
        }
        // The page sends by itself what was tapped in; whoever wants to know asks.
        if (byHand)
            if (const Done asked = askByHand(*phone.program); !asked)
                return asked;
        note(m_stage.syncPhone(phone));
        return {};
    }

    /// One entry on its way: what the phone's own page says of it, each time it says something else.
    struct Followed {
        Phone* phone = nullptr;
        recovery::EntryId entry;
        QStringList states;
    };

    void look()
    {
        if (m_followed.phone == nullptr)
            return;
        const QString state = stateShown(*m_followed.phone->program, m_followed.entry);
        if (m_followed.states.isEmpty() || m_followed.states.last() != state)
            m_followed.states << state;
    }

    /// Her phone fetches what the clinic has to say of the entry, as long as that can still change.
    void fetchForFollowed()
    {
        if (m_followed.phone == nullptr || m_followed.states.size() >= 3)
            return;
        note(m_stage.syncPhone(*m_followed.phone));
        look();
    }

    bool isByHand(const recovery::CourseId& course)
    {
        return std::ranges::any_of(m_stage.phones(), [&](const auto& phone) { return phone->course == course && phone->patient->byHand; });
    }

    Done clinicLooks()
    {
        note(m_stage.syncDesk());
        fetchForFollowed();
        desk::Desk& desk = m_stage.desk().workplace().desk();
        m_summary.count("looks with a backup overdue", desk.isBackupDue() ? 1 : 0);
        const deskapp::HubWatch& hub = *m_stage.desk().hub();
        m_summary.count("looks at a desk that does not hear the hub", !m_stage.phones().empty() && (hub.isStale() || !hub.trouble().isEmpty()) ? 1 : 0);
        m_album.atTheQueue(m_stage);
        if (m_endsAt && m_stage.now() > *m_endsAt - std::chrono::hours(60))
            return {};
        for (const triage::Row& row : desk.queue()) {
            if (const Done acted = isByHand(row.course) ? answerOnPages(row) : answer(desk, row); !acted)
                return acted;
        }
        for (const desk::CourseSummary& course : desk.courses())
            if (course.unopened > 0 && isByHand(course.course))
                m_stage.desk().openCourse(deskapp::keyOf(course.course));
            else if (course.unopened > 0)
                if (const Done opened = desk.openEntries(course.course); !opened)
                    return opened;
        m_stage.desk().workplace().settle(Done{});
        note(m_stage.syncDesk());
        fetchForFollowed();
        return {};
    }

    Done answerOnPages(const triage::Row& row)
    {
        for (const triage::Finding& finding : row.findings)
            m_summary.found(m_stage, row.course, finding);
        const auto answered = answerByHand(m_stage.desk(), row);
        if (!answered)
            return fail(answered.error());
        m_summary.count("calls", answered->calls);
        m_summary.count("calls on the page of calls", answered->calls);
        m_summary.count("findings closed at the queue", answered->closedAtTheQueue);
        m_summary.count("findings closed on the page of the course", answered->closedOnThePage);
        m_summary.count("findings seen on the page of the course", answered->seen);
        return {};
    }

    /// What the clinic does about a row: calls about what is urgent, writes to the silent, leaves the
    /// rest for the follow-up.
    Done answer(desk::Desk& desk, const triage::Row& row)
    {
        const bool seen = std::any_of(row.findings.begin(), row.findings.end(), [](const auto& finding) { return !finding.acts.empty(); });
        for (const triage::Finding& finding : row.findings) {
            m_summary.found(m_stage, row.course, finding);
            if (!finding.acts.empty())
                continue;
            if (finding.urgency <= recovery::Urgency::callNow) {
                for (const auto act : {records::Act::taken, records::Act::called})
                    if (const Done done = desk.act(row.course, finding.key, act); !done)
                        return done;
                if (const Done done = desk.act(row.course, finding.key, records::Act::closed, records::Outcome::treatedInClinic,
                                               "Seen the same day.");
                    !done)
                    return done;
                m_summary.count("calls");
            } else if (const Done done = desk.act(row.course, finding.key, records::Act::seen); !done) {
                return done;
            }
        }
        if (row.silent && !seen) {
            m_summary.count("notes to silent patients");
            return desk.writeMessage(row.course, "We have not heard from you for some days. How are you?");
        }
        return {};
    }

    Done close()
    {
        for (auto& phone : m_stage.phones())
            note(m_stage.syncPhone(*phone));
        note(m_stage.syncDesk());
        look();
        if (m_followed.phone != nullptr)
            m_summary.followed(m_followed.phone->patient->kind, m_followed.states);
        m_summary.count("photographs taken", static_cast<int>(m_snapshots.taken()));
        m_summary.count("photographs at the desk", static_cast<int>(m_snapshots.atTheDesk(m_stage)));
        if (!m_stage.phones().empty())
            if (const Done marked = m_snapshots.markEyes(m_stage, m_stage.phones().front()->course); !marked)
                return marked;
        m_album.atTheEnd(m_stage, [this](std::size_t at, std::size_t of) { m_progress.say("drawing", at, of); });
        if (m_endsAt)
            return {};
        for (const auto& phone : m_stage.phones())
            if (const Done held = followUp(*phone); !held)
                return held;
        m_summary.count("pictures", static_cast<int>(m_album.pictures()));
        if (const QStringList missing = m_album.missing(); !missing.isEmpty())
            return fail(Reason::notEnough, "pictures: missing are " + missing.join(QStringLiteral(", ")).toStdString());
        desk::Desk& desk = m_stage.desk().workplace().desk();
        for (auto& phone : m_stage.phones())
            if (const Done sound = phone->program->home().diary().vault().verify(); !sound)
                return sound;
        if (const Done sound = desk.vault().verify(); !sound)
            return sound;
        m_summary.count("vaults verified", static_cast<int>(m_stage.phones().size()) + 1);
        return m_summary.judgeSecrecy(m_stage);
    }

    Done followUp(const Phone& phone)
    {
        const bool pictured = phone.patient->kind == "plain";
        const FollowUp& found = phone.patient->followUp;
        if (const Done written = writeFollowUp(m_stage.desk(), phone.course, found); !written)
            return written;
        if (pictured)
            m_album.atTheFollowUp(m_stage, QStringLiteral("written"));
        if (const Done recorded = recordFollowUp(m_stage.desk(), phone.course, found); !recorded)
            return recorded;
        if (pictured)
            m_album.atTheFollowUp(m_stage, QStringLiteral("recorded"));
        m_summary.count("follow-ups recorded");
        return {};
    }

    void note(const sync::Report& report)
    {
        m_summary.count("syncs");
        m_summary.count("envelopes sent", static_cast<int>(report.envelopesSent));
        m_summary.count("envelopes received", static_cast<int>(report.envelopesReceived));
        m_summary.count("syncs with a problem", report.problem ? 1 : 0);
        m_summary.count("syncs that missed a message", report.gapSeen ? 1 : 0);
        m_summary.count("syncs that saw two histories", report.forkSeen ? 1 : 0);
        m_summary.count("syncs with a vault older than the clinic's", report.rolledBack ? 1 : 0);
        m_summary.count("envelopes refused", static_cast<int>(report.quarantined));
        m_summary.count("photographs refused", static_cast<int>(report.photosRefused));
    }

    std::optional<clock::Instant> m_endsAt;
    const Scenario& m_scenario;
    Stage m_stage;
    Summary m_summary;
    Album m_album;
    Snapshots m_snapshots;
    Followed m_followed;
    Progress m_progress;
};

}  // namespace

Result<FolderHold> playStory(const StorySetup& setup)
{
    if (const Done there = hubCanBeStarted(setup.hubProgram); !there)
        return fail(there.error());
    auto held = emptyForStory(setup.out);
    if (!held)
        return fail(held.error());
    if (!QDir().mkpath(setup.out + QStringLiteral("/work")))
        return fail(Reason::storageFailed, "story: the folder cannot be made");
    Scenario scenario = inventedScenario();
    if (setup.endsAt) {
        const auto zone = aftercare::Zone::find(scenario.zone);
        scenario.firstDay = zone->moment(*setup.endsAt).day() - std::chrono::days(demoDays - 1);
        scenario.days = demoDays;
    }
    Story story(setup, scenario);
    const Done played = story.play();
    const Done written = story.summary().write(setup.out + QStringLiteral("/summary.json"), played);
    if (!played || !written)
        return fail(played ? written.error() : played.error());
    return held;
}

}  // namespace ebbline::story
