#include "core/desk/invented_past.h"

#include "core/rehearsal/invented_course.h"
#include "core/triage/queue.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

namespace ebbline::desk {

namespace {

using recovery::Zone;
using rehearsal::Kind;

constexpr int pieces = 100;            // courses of one transaction
constexpr int daysApart = 3;           // between two treatments of a small clinic
constexpr int hourOfTreatment = 10;

constexpr std::array given{"Alva", "Benet", "Cosima", "Daria", "Elio", "Fenja", "Galia", "Hanno", "Ilka", "Jorun", "Kaja", "Leander", "Maelle"};
constexpr std::array family{"Quillon", "Rastede", "Sommerau", "Tavik", "Umbral", "Vesterholt", "Wrenfield", "Yarrick", "Zandoval", "Ashgrove",
                            "Brackwater"};
/// As three people would write two lots, and a third that is written one way only.
constexpr std::array lots{"TH-4417", "TH 4417", "QN-2208", "qn2208", "RB.0031"};
constexpr std::array materials{recovery::Material::pdo, recovery::Material::pdo, recovery::Material::plla, recovery::Material::pcl};

/// Whole numbers that look drawn but are the same each time (Knuth's multiplicative hash).
unsigned drawn(int number, unsigned of, unsigned salt)
{
    return ((static_cast<unsigned>(number) + 1 + salt * 7919U) * 2654435761U >> 8) % of;
}

Kind kindOf(int number)
{
    switch (drawn(number, 25, 1)) {
    case 0: return Kind::infection;
    case 1: return Kind::haematoma;
    case 2: return Kind::puckering;
    case 3: return Kind::slowRecovery;
    case 4: return Kind::silent;
    default: return Kind::plain;
    }
}

std::vector<std::string> complicationsOf(Kind kind)
{
    switch (kind) {
    case Kind::infection: return {"infection"};
    case Kind::haematoma: return {"haematoma"};
    case Kind::puckering: return {"lasting puckering"};
    default: return {};
    }
}

recovery::Treatment treatmentOf(int number, const recovery::PatientId& patient, const clock::Moment& at)
{
    recovery::Treatment treatment;
    treatment.course = recovery::CourseId{crypto::randomArray<16>()};
    treatment.patient = patient;
    treatment.at = at;
    recovery::Placement thread;
    thread.ending = drawn(number, 5, 2) < 3 ? recovery::Ending::shortOfMovingZone : recovery::Ending::pastMovingZone;
    thread.material = materials[drawn(number, 4, 3)];
    thread.gauge = drawn(number, 3, 4) == 0 ? 21 : 19;
    thread.instrument = thread.gauge == 21 ? recovery::Instrument::sharpNeedle : recovery::Instrument::bluntCannula;
    thread.instrumentLengthMm = 90;
    const bool epinephrine = drawn(number, 2, 7) == 0;
    thread.epinephrineAt = !epinephrine                   ? recovery::EpinephrineAt::nowhere
                           : drawn(number, 3, 16) == 0 ? recovery::EpinephrineAt::entryPoint
                                                       : recovery::EpinephrineAt::both;
    thread.lot = lots[drawn(number, 5, 5)];
    thread.expiry = "2029-06-30";
    thread.anaestheticMl = 0.4;
    const bool neck = drawn(number, 4, 6) == 0;
    const std::array<Zone, 3> zones = neck ? std::array{Zone::neck, Zone::submental, Zone::neck} : std::array{Zone::midface, Zone::nasolabial, Zone::jawline};
    double down = neck ? 380 : 170;
    for (const Zone zone : zones) {
        thread.zone = zone;
        thread.entry = {300, down};
        thread.end = {256, down + 80};
        down += 30;
        treatment.placements.push_back(thread);
        treatment.placements.push_back(recovery::mirrored(thread));
    }
    treatment.anaesthetic = {epinephrine ? recovery::Drug::lidocaineWithEpinephrine : recovery::Drug::lidocaine, 1.0, epinephrine ? 200'000 : 0, 0, 2};
    treatment.weightKg = 52 + drawn(number, 30, 8);
    treatment.consentGiven = treatment.cautionsGiven = true;
    treatment.learningConsent = drawn(number, 8, 9) != 0;
    return treatment;
}

/// One course in the making.
struct Course {
    int number;
    Kind kind;
    recovery::Treatment treatment;
};

records::CourseOpened openedOf(const Desk& desk, const Course& course, const triggers::Protocol& protocol, const bytes::Bytes& signature,
                               const clock::Moment& followUp)
{
    const auto clinic = desk.clinic();
    return {course.treatment.course, course.treatment.at, desk.person(), clinic ? clinic->contacts : records::Contacts{}, followUp, {}, protocol, signature};
}

/// What is told up to `until`.
void tell(std::vector<records::Body>& bodies, const Course& course, const aftercare::Zone& zone, const clock::Moment& until)
{
    const rehearsal::KnownCourse told = rehearsal::invent({rehearsal::Model::decay, rehearsal::Rhythm::plan, 11}, course.kind, course.number);
    for (const triggers::Observation& observation : told.input.observations) {
        recovery::Entry entry;
        entry.id = recovery::EntryId{crypto::randomArray<16>()};
        entry.course = course.treatment.course;
        entry.at = zone.moment(course.treatment.at.at + (observation.at.at - told.input.treated.at));
        if (entry.at.at > until.at)
            break;
        entry.recordedAt = entry.at;
        entry.scores = observation.scores;
        bodies.push_back(records::EntryRecorded{entry});
    }
}

void answer(std::vector<records::Body>& bodies, const Course& course, const triggers::Protocol& protocol, const aftercare::Zone& zone)
{
    int asked = course.number;
    for (const aftercare::Reminder& reminder : aftercare::remindersOf(protocol.carePlan, course.treatment.at, zone, {})) {
        if (reminder.kind == aftercare::InstructionKind::diaryEntry || drawn(++asked, 10, 10) > 7)
            continue;
        const bool done = drawn(asked, 9, 11) != 0;
        bodies.push_back(records::ReminderAnswered{course.treatment.course, reminder.key,
                                                   done ? records::ReminderAnswer::done : records::ReminderAnswer::notDone,
                                                   zone.moment(reminder.due), {}});
    }
}

/// What a clinic would have done about the findings, up to the follow-up, or for good where there was none.
void act(std::vector<records::Body>& bodies, const Desk& desk, const Course& course, const clock::Moment& end, bool cameBack,
         const aftercare::Zone& zone)
{
    const auto view = desk.course(course.treatment.course);
    if (!view)
        return;
    const bool trouble = !complicationsOf(course.kind).empty();
    int number = course.number;
    for (const triage::Finding& finding : triage::findingsOf(*view->state, end)) {
        if (cameBack && (finding.urgency == recovery::Urgency::atReview || drawn(++number, 12, 12) == 0))
            continue;
        const clock::Moment at = zone.moment(finding.raisedAt.at + std::chrono::hours(1 + drawn(number, 9, 13)));
        if (at.at >= end.at)
            continue;
        const auto done = [&](records::Act what, records::Outcome outcome) {
            bodies.push_back(records::FindingActed{course.treatment.course, finding.key, what, outcome, desk.person(), {}, at});
        };
        done(records::Act::taken, records::Outcome::none);
        done(records::Act::called, cameBack ? records::Outcome::none : records::Outcome::notReached);
        if (trouble)
            done(records::Act::visitBroughtForward, records::Outcome::none);
        const bool advised = drawn(number, 3, 14) == 0;
        done(records::Act::closed, !cameBack ? records::Outcome::notReached
                                   : trouble ? records::Outcome::treatedInClinic
                                   : advised ? records::Outcome::advised
                                             : records::Outcome::reassured);
    }
}

records::FollowUpRecorded followUpOf(const Course& course, const std::string& by, const clock::Moment& at)
{
    records::FollowUpRecorded followUp;
    followUp.course = course.treatment.course;
    followUp.complications = complicationsOf(course.kind);
    followUp.uncomplicated = followUp.complications.empty();
    followUp.change = followUp.uncomplicated ? records::GlobalChange::muchBetter : records::GlobalChange::better;
    followUp.satisfaction = followUp.uncomplicated ? 4 : 3;
    followUp.by = by;
    followUp.at = at;
    return followUp;
}

}  // namespace

Done addInventedPast(Desk& desk, const aftercare::Zone& zone, const InventedPast& past)
{
    triggers::Protocol protocol = triggers::defaultProtocol();
    if (!past.protocolName.empty())
        protocol.name = past.protocolName;
    const auto signature = desk.vault().clinicRoot().sign(records::encodeProtocol(protocol));
    const bytes::Bytes ofClinic(signature.begin(), signature.end());
    const auto append = [&](std::vector<records::Body>& bodies) -> Done {
        if (bodies.empty())
            return {};
        const auto appended = desk.vault().append(bodies, past.now);
        bodies.clear();
        return appended ? Done{} : Done(fail(appended.error()));
    };

    for (int begin = 0; begin < past.courses; begin += pieces) {
        std::vector<Course> courses;
        std::vector<records::Body> bodies;
        for (int number = begin; number < std::min(past.courses, begin + pieces); ++number) {
            const recovery::PatientId patient{crypto::randomArray<16>()};
            const auto n = static_cast<std::size_t>(number);
            const std::string name = std::string(given[n % given.size()]) + " " + family[n / given.size() % family.size()];
            bodies.push_back(records::PatientRegistered{patient, name, "+00 555 " + std::to_string(1000 + number), "en"});
            const int daysAgo = 24 + daysApart * (past.courses - 1 - number);
            const clock::Moment at = zone.moment(
                zone.instantOf(past.now.day() - std::chrono::days(daysAgo), std::chrono::hours(hourOfTreatment)));
            Course course{number, kindOf(number), treatmentOf(number, patient, at)};
            bodies.push_back(records::TreatmentRecorded{course.treatment});
            bodies.push_back(records::PatientLinked{course.treatment.course, envelope::MailboxId{crypto::randomArray<16>()}, {}, {}});
            const clock::Moment followUp = zone.moment(at.at + std::chrono::days(21));
            bodies.push_back(openedOf(desk, course, protocol, ofClinic, followUp));
            tell(bodies, course, zone, past.now);
            if (past.acts)
                answer(bodies, course, protocol, zone);
            courses.push_back(std::move(course));
        }
        if (const Done done = append(bodies); !done)
            return done;
        for (const Course& course : courses) {
            const clock::Moment at = zone.moment(course.treatment.at.at + std::chrono::days(21));
            // Some never come back: nobody knows how their courses ended.
            const bool cameBack = drawn(course.number, 14, 15) != 0;
            if (past.acts)
                act(bodies, desk, course, cameBack ? at : past.now, cameBack, zone);
            if (cameBack) {
                if (const auto view = desk.course(course.treatment.course); view && !view->state->entries.empty())
                    bodies.push_back(records::VersionsOpened{course.treatment.course, view->state->unopened(), desk.person(), at});
                bodies.push_back(followUpOf(course, desk.person(), at));
            }
        }
        if (const Done done = append(bodies); !done)
            return done;
    }
    return {};
}

namespace {

/// What the phones would have told at once of what stands in the queue.
std::vector<records::Body> shownByPhones(const Desk& desk)
{
    std::vector<records::Body> shown;
    for (const triage::Row& row : desk.queue()) {
        const auto view = desk.course(row.course);
        for (const triage::Finding& finding : row.findings) {
            if (!view || finding.urgency > recovery::Urgency::callNow)
                continue;
            for (const auto& [id, history] : view->state->entries)
                if (finding.entry ? *finding.entry == id : history.current().at == finding.raisedAt)
                    shown.push_back(records::WarningShown{row.course, id, finding.key, finding.urgency, history.current().recordedAt, false});
        }
    }
    return shown;
}

/// What else stands in a clinic on some day: a colleague is on a call, a message waits, an entry came late, another was amended.
Done addOddities(Desk& desk, const aftercare::Zone& zone, const clock::Moment& now, const std::map<std::string, recovery::CourseId>& courses)
{
    const auto ago = [&](std::chrono::minutes minutes) { return zone.moment(now.at - minutes); };
    const auto entryOf = [&](const char* name, const clock::Moment& at, const clock::Moment& recordedAt) {
        recovery::Entry entry;
        entry.id = recovery::EntryId{crypto::randomArray<16>()};
        entry.course = courses.at(name);
        entry.at = at;
        entry.recordedAt = recordedAt;
        for (const recovery::Side side : recovery::bothSides)
            entry.scores.insert_or_assign({recovery::Symptom::tightness, side}, *recovery::Score::of(2));
        return entry;
    };
    std::vector<records::Body> bodies;
    const auto taken = courses.at("Ruta Calloway");
    for (const triage::Row& row : desk.queue())
        if (row.course == taken)
            for (const triage::Finding& finding : row.findings)
                bodies.push_back(records::FindingActed{taken, finding.key, records::Act::taken, records::Outcome::none, "Dr Mara Lindqvist", {},
                                                       ago(std::chrono::minutes(12))});
    const auto asks = courses.at("Vesna Gorland");
    bodies.push_back(records::MessageWritten{asks, records::MessageId{crypto::randomArray<16>()}, "May I wash my hair today?", {}, ago(std::chrono::minutes(95))});
    bodies.push_back(records::EntryRecorded{entryOf("Wim Hollart", ago(std::chrono::hours(50)), ago(std::chrono::hours(26)))});
    recovery::Entry amended = entryOf("Sanne Dorrin", ago(std::chrono::hours(30)), ago(std::chrono::hours(30)));
    bodies.push_back(records::EntryRecorded{amended});
    const auto appended = desk.vault().append(bodies, now);
    if (!appended)
        return fail(appended.error());
    for (const recovery::Side side : recovery::bothSides)
        amended.scores.insert_or_assign({recovery::Symptom::tightness, side}, *recovery::Score::of(3));
    const auto corrected = desk.vault().append({records::EntryRecorded{amended}}, now, {}, appended->back());
    return corrected ? Done{} : Done(fail(corrected.error()));
}

}  // namespace

Done hearInventedPhones(Desk& desk)
{
    const auto links = desk.vault().links();
    if (!links)
        return fail(links.error());
    for (const vault::Link& link : *links)
        if (const Done heard = desk.vault().accept(link.mailbox, envelope::deviceIdOf(link.peerSigning), {1, {}}, {}); !heard)
            return heard;
    return {};
}

Done addInventedToday(Desk& desk, const aftercare::Zone& zone, const clock::Moment& now)
{
    using recovery::Sign;
    constexpr int heardToday = 60;
    struct Running {
        const char* name;
        int daysAgo;
        Kind kind;
        recovery::Signs signs;               ///< with the last entry
        std::optional<double> celsius;
        const char* note;
        int heardUntil;                     ///< day of recovery after which nothing came; heardToday: none
        bool linked = true;
    };
    const std::array running{
        Running{"Oriel Tamsin", 0, Kind::plain, {Sign::breathing, Sign::neckSwelling}, {}, "My neck feels tight and it is hard to swallow.", heardToday},
        Running{"Pelle Ardmore", 1, Kind::haematoma, {Sign::fastSwelling}, {}, "My left cheek is much fuller than last night.", heardToday},
        Running{"Ruta Calloway", 6, Kind::infection, {Sign::warmer, Sign::moreTender, Sign::colourChange}, 38.4, "The left side hurts more since last night.", heardToday},
        Running{"Sanne Dorrin", 8, Kind::plain, {Sign::threadLump}, {}, "I can feel a small bump near my temple.", heardToday},
        Running{"Tirza Ebberly", 20, Kind::puckering, {}, {}, "", heardToday},
        Running{"Ulrik Fenwood", 9, Kind::plain, {}, {}, "", 4},
        Running{"Vesna Gorland", 4, Kind::plain, {}, {}, "", heardToday},
        Running{"Wim Hollart", 12, Kind::slowRecovery, {}, {}, "", heardToday},
        Running{"Xenia Ibarsson", 0, Kind::plain, {}, {}, "", heardToday, false},
    };
    const triggers::Protocol protocol = triggers::defaultProtocol();
    const auto signature = desk.vault().clinicRoot().sign(records::encodeProtocol(protocol));
    std::vector<records::Body> bodies;
    std::map<std::string, recovery::CourseId> courses;
    int number = 900;
    for (const Running& one : running) {
        const recovery::PatientId patient{crypto::randomArray<16>()};
        bodies.push_back(records::PatientRegistered{patient, one.name, "+00 555 " + std::to_string(2000 + number), "en"});
        const clock::Moment at = zone.moment(std::min(now.at - std::chrono::hours(3),
                                                      zone.instantOf(now.day() - std::chrono::days(one.daysAgo), std::chrono::hours(hourOfTreatment))));
        const Course course{++number, one.kind, treatmentOf(number, patient, at)};
        courses[one.name] = course.treatment.course;
        bodies.push_back(records::TreatmentRecorded{course.treatment});
        if (!one.linked)
            continue;
        vault::Link link;
        link.mailbox = envelope::MailboxId{crypto::randomArray<16>()};
        link.course = course.treatment.course;
        link.peerSigning = crypto::SigningKey::generate().publicKey();
        bodies.push_back(records::PatientLinked{link.course, link.mailbox, link.peerSigning.value, {}});
        // Invented phones are nowhere; of one it is known when it was heard last.
        if (one.heardUntil < heardToday)
            if (const Done kept = desk.vault().putLink(link); !kept)
                return kept;
        bodies.push_back(openedOf(desk, course, protocol, bytes::Bytes(signature.begin(), signature.end()), zone.moment(at.at + std::chrono::days(21))));
        tell(bodies, course, zone, zone.moment(std::min(now.at - std::chrono::hours(2), at.at + std::chrono::days(one.heardUntil))));
        if (one.signs.empty() && !one.celsius)
            continue;
        recovery::Entry last;
        last.id = recovery::EntryId{crypto::randomArray<16>()};
        last.course = course.treatment.course;
        last.at = last.recordedAt = zone.moment(now.at - std::chrono::minutes(40 + 13 * (number % 7)));
        last.present = one.signs;
        if (one.celsius) {
            const auto temperature = recovery::Temperature::celsius(*one.celsius);
            if (!temperature)
                return fail(temperature.error());
            last.temperature = *temperature;
        }
        last.note = one.note;
        bodies.push_back(records::EntryRecorded{last});
    }
    if (const auto appended = desk.vault().append(bodies, now); !appended)
        return fail(appended.error());
    const std::vector<records::Body> shown = shownByPhones(desk);
    if (!shown.empty())
        if (const auto appended = desk.vault().append(shown, now); !appended)
            return fail(appended.error());
    return addOddities(desk, zone, now, courses);
}

}  // namespace ebbline::desk
