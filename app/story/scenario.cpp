#include "app/story/scenario.h"

#include <algorithm>
#include <array>

namespace ebbline::story {

namespace {

using recovery::Score;
using recovery::Side;
using recovery::Sign;
using recovery::Stream;
using recovery::Symptom;

constexpr int morning = 9 * 60;
constexpr int evening = 20 * 60;
constexpr auto practitioner = "Dr. Ada Lund";

/// An ordinary course near the middle of the seed band, score points by day of recovery. Made up
/// for the story; docs/clinical/seed_band.md says what the band itself rests on.
struct Usual {
    Symptom symptom;
    std::array<int, 22> points;
};

constexpr std::array<Usual, 7> usual{{
    {Symptom::pain, {3, 3, 3, 2, 2, 1, 1, 1, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
    {Symptom::swelling, {3, 4, 4, 4, 3, 2, 2, 1, 1, 1, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
    {Symptom::bruising, {1, 3, 3, 3, 3, 2, 2, 2, 1, 1, 1, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
    {Symptom::tightness, {4, 4, 4, 3, 3, 3, 2, 2, 2, 1, 1, 1, 1, 1, 1, 0, 0, 0, 0, 0, 0, 0}},
    {Symptom::twinges, {1, 1, 1, 1, 1, 1, 1, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
    {Symptom::puckering, {3, 3, 3, 2, 2, 2, 1, 1, 1, 1, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
    {Symptom::numbness, {2, 1, 1, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
}};

Score scored(int points)
{
    return *Score::of(std::clamp(points, Score::lowest, Score::highest));
}

/// The ordinary scores of a day, the left side a little behind the right.
recovery::Scores usualOn(int day)
{
    recovery::Scores scores;
    for (const Usual& row : usual) {
        const int points = row.points[static_cast<std::size_t>(std::min(day, 21))];
        scores.insert_or_assign(Stream{row.symptom, Side::right}, scored(points));
        const bool slower = day % 4 == 1 && points > 0;
        scores.insert_or_assign(Stream{row.symptom, Side::left}, scored(points + (slower ? 1 : 0)));
    }
    return scores;
}

/// Evenings to the last day, mornings as well in the first week.
std::vector<Telling> usualCourse(int fromDay, int toDay)
{
    std::vector<Telling> tellings;
    for (int day = fromDay; day <= toDay; ++day) {
        if (day >= 1 && day <= 6)
            tellings.push_back({day, morning + day, usualOn(day), {}, {}, {}});
        tellings.push_back({day, evening + 3 * (day % 5), usualOn(day), {}, {}, {}});
    }
    return tellings;
}

Telling& at(std::vector<Telling>& tellings, int day, bool inTheEvening)
{
    return *std::find_if(tellings.begin(), tellings.end(), [&](const Telling& telling) {
        return telling.day == day && (telling.minuteOfDay >= 12 * 60) == inTheEvening;
    });
}

void raise(Telling& telling, Symptom symptom, Side side, int points)
{
    telling.scores.insert_or_assign(Stream{symptom, side}, scored(points));
}

/// A six-thread face: three threads a side, entries at the temple, ends short of the moving zone.
recovery::Treatment sixThreads(const std::string& lot, recovery::Ending ending)
{
    recovery::Treatment treatment;
    struct Line { recovery::Zone zone; double x1, y1, x2, y2; };
    constexpr std::array<Line, 3> lines{{{recovery::Zone::midface, 296, 170, 256, 256},
                                         {recovery::Zone::nasolabial, 299, 186, 260, 284},
                                         {recovery::Zone::jawline, 303, 206, 272, 326}}};
    for (const Line& line : lines) {
        recovery::Placement placement;
        placement.side = Side::left;
        placement.zone = line.zone;
        placement.entry = {line.x1, line.y1};
        placement.end = {line.x2, line.y2};
        placement.ending = ending;
        placement.lot = lot;
        placement.expiry = "2029-06-30";
        placement.anaestheticMl = 0.4;
        placement.instrument = recovery::Instrument::bluntCannula;
        placement.instrumentLengthMm = 100;
        placement.epinephrineAt = recovery::EpinephrineAt::both;
        treatment.placements.push_back(placement);
        treatment.placements.push_back(recovery::mirrored(placement));
    }
    treatment.anaesthetic = {recovery::Drug::lidocaineWithEpinephrine, 1.0, 200'000, 0.1, 1.0};
    treatment.weightKg = 62;
    treatment.placedBy = practitioner;
    treatment.dressings = true;
    treatment.cautionsGiven = true;
    treatment.consentGiven = true;
    treatment.learningConsent = true;
    for (const Side side : recovery::bothSides) {
        treatment.baseline.insert_or_assign(Stream{Symptom::swelling, side}, scored(2));
        treatment.baseline.insert_or_assign(Stream{Symptom::bruising, side}, scored(0));
    }
    return treatment;
}

Patient ordinary()
{
    Patient patient{.kind = "plain", .name = "Ines Varga", .phone = "+00 555 0101", .language = "en",
                    .treatedOnDay = 0, .treatedAtMinute = 10 * 60, .treatment = sixThreads("TH-4417", recovery::Ending::shortOfMovingZone),
                    .tellings = usualCourse(0, 21), .onsetMinutes = {}};
    at(patient.tellings, 1, true).note = "Slept on my back. Chewing feels odd.";
    for (const int day : {0, 7, 14, 21})
        at(patient.tellings, day, true).photos = {photos::Pose::front, photos::Pose::leftOblique};
    at(patient.tellings, 3, true).photos = {photos::Pose::front};
    patient.offlineFromDay = 3;
    patient.offlineToDay = 4;
    patient.followUp = {.satisfaction = 5, .nextPlan = "Photographs again in six months."};
    return patient;
}

/// One side fills within hours of the treatment.
Patient haematoma()
{
    Patient patient{.kind = "haematoma", .name = "Odile Brandt", .phone = "+00 555 0102", .language = "de",
                    .treatedOnDay = 0, .treatedAtMinute = 11 * 60 + 30, .treatment = sixThreads("TH-4417", recovery::Ending::pastMovingZone),
                    .tellings = usualCourse(0, 21), .onsetMinutes = 5 * 60, .side = Side::left};
    Telling first = at(patient.tellings, 0, true);
    first.minuteOfDay = 15 * 60;
    patient.tellings.insert(patient.tellings.begin(), first);
    Telling& night = patient.tellings[1];
    raise(night, Symptom::swelling, Side::left, 7);
    raise(night, Symptom::pain, Side::left, 6);
    raise(night, Symptom::bruising, Side::left, 5);
    night.note = "My left cheek is much fuller than an hour ago.";
    night.photos = {photos::Pose::front};
    at(patient.tellings, 7, true).photos = {photos::Pose::front};
    patient.followUp.complications = {"haematoma"};
    constexpr std::array<int, 8> falling{7, 6, 5, 5, 4, 3, 3, 2};
    for (int day = 1; day <= 8; ++day) {
        for (Telling& telling : patient.tellings) {
            if (telling.day != day)
                continue;
            const int points = falling[static_cast<std::size_t>(day - 1)];
            raise(telling, Symptom::swelling, Side::left, points);
            raise(telling, Symptom::bruising, Side::left, points);
            raise(telling, Symptom::pain, Side::left, std::max(0, points - 3));
        }
    }
    return patient;
}

/// Warmth and pain come up on the right from day 5.
Patient infection()
{
    Patient patient{.kind = "infection", .name = "Tomke Ahlers", .phone = "+00 555 0103", .language = "ar",
                    .treatedOnDay = 1, .treatedAtMinute = 9 * 60 + 15, .byHand = true, .treatment = sixThreads("TH-4420", recovery::Ending::shortOfMovingZone),
                    .tellings = usualCourse(0, 21), .onsetMinutes = 5 * 24 * 60, .side = Side::right};
    patient.followUp.complications = {"infection"};
    constexpr std::array<int, 10> pain{3, 5, 6, 5, 4, 3, 2, 1, 1, 0};
    for (int day = 5; day <= 14; ++day) {
        for (Telling& telling : patient.tellings) {
            if (telling.day != day)
                continue;
            const int points = pain[static_cast<std::size_t>(day - 5)];
            raise(telling, Symptom::pain, Side::right, points);
            raise(telling, Symptom::swelling, Side::right, points);
        }
    }
    Telling& warm = at(patient.tellings, 6, true);
    warm.signs = {Sign::warmer, Sign::moreTender};
    warm.celsius = 38.2;
    warm.note = "It throbs next to the ear, and I feel hot.";
    return patient;
}

/// Stops writing after day 4.
Patient silent()
{
    return Patient{.kind = "silent", .name = "Rosa Quint", .phone = "+00 555 0104", .language = "en",
                   .treatedOnDay = 1, .treatedAtMinute = 14 * 60, .typedCode = true, .treatment = sixThreads("TH-4420", recovery::Ending::shortOfMovingZone),
                   .tellings = usualCourse(0, 4), .onsetMinutes = 4 * 24 * 60};
}

/// A dimple on the left that stays.
Patient puckering()
{
    Patient patient{.kind = "puckering", .name = "Yara Selim", .phone = "+00 555 0105", .language = "en",
                    .treatedOnDay = 2, .treatedAtMinute = 16 * 60, .treatment = sixThreads("TH-4420", recovery::Ending::pastMovingZone),
                    .tellings = usualCourse(0, 21), .onsetMinutes = 0, .side = Side::left};
    for (Telling& telling : patient.tellings)
        raise(telling, Symptom::puckering, Side::left, 4);
    patient.followUp.complications = {"lasting puckering"};
    at(patient.tellings, 14, true).note = "The dimple beside my mouth has not moved.";
    return patient;
}

}  // namespace

Scenario inventedScenario()
{
    return Scenario{
        .clinicName = "Practice on the Mole",
        .clinicPhone = "+00 555 0110",
        .onCallPhone = "+00 555 0119",
        .emergencyNumber = "112",
        .zone = "Europe/Berlin",
        .practitioner = practitioner,
        .colleague = "Dr. Jonas Feld",
        .otherProtocol = "Neck alone",
        .firstDay = clock::LocalDay{std::chrono::year{2027} / 3 / 9},
        .days = 24,
        .patients = {ordinary(), haematoma(), infection(), silent(), puckering()},
    };
}

}  // namespace ebbline::story
