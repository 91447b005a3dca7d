#include "core/rehearsal/invented_course.h"

#include "core/rehearsal/invented_signs.h"

#include <algorithm>
#include <utility>

namespace ebbline::rehearsal {

namespace {

using recovery::Side;
using recovery::Symptom;

constexpr std::array<std::pair<Kind, std::string_view>, 25> words{{{Kind::plain, "plain"},
                                                                  {Kind::infection, "infection"},
                                                                  {Kind::haematoma, "haematoma"},
                                                                  {Kind::slowRecovery, "slow-recovery"},
                                                                  {Kind::puckering, "puckering"},
                                                                  {Kind::silent, "silent"},
                                                                  {Kind::lateHaematoma, "late-haematoma"},
                                                                  {Kind::worseningFolds, "worsening-puckering"},
                                                                  {Kind::threadOut, "thread-out"},
                                                                  {Kind::weakness, "weakness"},
                                                                  {Kind::salivaSwelling, "saliva-swelling"},
                                                                  {Kind::paleSkin, "pale-skin"},
                                                                  {Kind::bleeding, "bleeding"},
                                                                  {Kind::airway, "airway"},
                                                                  {Kind::allergy, "allergy"},
                                                                  {Kind::numbingReaction, "numbing-reaction"},
                                                                  {Kind::severeIllness, "severe-illness"},
                                                                  {Kind::strokeSigns, "stroke-signs"},
                                                                  {Kind::vision, "vision"},
                                                                  {Kind::threadLump, "thread-lump"},
                                                                  {Kind::spreadingColour, "spreading-colour"},
                                                                  {Kind::fever, "fever"},
                                                                  {Kind::spreadingNumbness, "spreading-numbness"},
                                                                  {Kind::severePain, "severe-pain"},
                                                                  {Kind::febrileInfection, "febrile-infection"}}};
/// Signs and temperatures have streams of chance of their own: the scores do not depend on them.
constexpr std::uint64_t streamOfSigns = std::uint64_t{1} << 60;
constexpr std::uint64_t streamOfTemperatures = std::uint64_t{1} << 61;

constexpr double itemSkipped = 0.02;       // one symptom left out of an entry
constexpr double nominalOnsetHour = 7 * 24;  // of what is there from the start and only then abnormal

Onset onsetOf(Chance& chance, Kind kind, Model model)
{
    Onset onset;
    onset.side = static_cast<std::size_t>(chance.whole(0, 1));
    const bool decay = model == Model::decay;
    if (scoredLike(kind) == Kind::infection)
        onset.hour = decay ? chance.between(4 * 24, 7.5 * 24) : chance.between(3 * 24, 9 * 24);
    else if (kind == Kind::haematoma)
        onset.hour = decay ? chance.between(2, 60) : chance.between(1, 72);
    else
        onset.hour = onsetByKind(chance, kind).value_or(nominalOnsetHour);
    return onset;
}

clock::Moment after(const clock::Moment& treated, double hours)
{
    clock::Moment at = treated;
    at.at += std::chrono::minutes(static_cast<long>(hours * 60));
    return at;
}

/// Right after the treatment the practitioner sees swelling, bruising and folds; pain is numbed.
bool practitionerScores(std::size_t symptom)
{
    const Symptom scored = scoredSymptoms[symptom];
    return scored == Symptom::swelling || scored == Symptom::bruising || scored == Symptom::puckering;
}

recovery::Score scoreOf(int points)
{
    return recovery::Score::of(points).value_or(recovery::Score::of(0).value());
}

}  // namespace

std::string_view word(Kind kind)
{
    for (const auto& [value, text] : words)
        if (value == kind)
            return text;
    return "unknown";
}

Result<Kind> kindFromWord(std::string_view text)
{
    for (const auto& [value, candidate] : words)
        if (candidate == text)
            return value;
    return fail(Reason::malformed, "kind: '" + std::string(text.substr(0, 40)) + "' is not one of ours");
}

KnownCourse invent(const Invention& invention, Kind kind, int number)
{
    const auto stream = (static_cast<std::uint64_t>(kind) << 40) + (static_cast<std::uint64_t>(invention.model) << 36)
                        + (static_cast<std::uint64_t>(invention.rhythm) << 32) + static_cast<std::uint64_t>(number);
    Chance chance(invention.seed, stream);
    const Diary diary = diaryOf(chance, kind, invention.rhythm, number);
    const Onset onset = onsetOf(chance, kind, invention.model);

    std::vector<double> hours = diary.hours;
    if (diary.hasBaseline)
        hours.insert(hours.begin(), 0.0);
    const Strength strength{invention.trouble, invention.pace};
    std::vector<Sheet> sheets = invention.model == Model::decay
                                    ? scoresByDecay(chance, scoredLike(kind), onset, strength, hours)
                                    : scoresBySteps(chance, scoredLike(kind), onset, strength, hours);
    if (kind == Kind::worseningFolds)
        worsenFolds(chance, onset, hours, sheets);
    if (kind == Kind::severePain)
        hurtBadly(chance, onset, hours, sheets);
    std::vector<std::array<int, 2>> numbness;
    if (kind == Kind::spreadingNumbness)
        numbness = numbnessThatSpreads(chance, onset, hours);

    KnownCourse course;
    course.name = std::string(word(kind)) + "-" + std::to_string(number);
    course.input.treated = diary.treated;
    const std::size_t first = diary.hasBaseline ? 1 : 0;
    for (std::size_t s = 0; diary.hasBaseline && s < symptomCount; ++s)
        for (std::size_t side = 0; practitionerScores(s) && side < 2; ++side)
            course.input.baseline.insert_or_assign({scoredSymptoms[s], recovery::bothSides[side]},
                                                   scoreOf(sheets[0][s][side]));
    for (std::size_t i = 0; i < diary.hours.size(); ++i) {
        triggers::Observation observation{diary.moments[i], {}};
        for (std::size_t s = 0; s < symptomCount; ++s) {
            if (chance.happens(itemSkipped))
                continue;
            for (std::size_t side = 0; side < 2; ++side)
                observation.scores.insert_or_assign({scoredSymptoms[s], recovery::bothSides[side]},
                                                    scoreOf(sheets[first + i][s][side]));
        }
        for (std::size_t side = 0; !numbness.empty() && side < 2; ++side)
            observation.scores.insert_or_assign({Symptom::numbness, recovery::bothSides[side]}, scoreOf(numbness[first + i][side]));
        course.input.observations.push_back(std::move(observation));
    }

    Chance ofSigns(invention.seed, streamOfSigns + stream);
    course.signs = tickedSigns(ofSigns, kind, onset, diary.hours, diary.moments);
    Chance ofTemperatures(invention.seed, streamOfTemperatures + stream);
    course.temperatures = temperatures(ofTemperatures, kind, onset, diary.hours, diary.moments);
    course.truth.kind = word(kind);
    if (kind == Kind::silent)
        course.truth.onset = diary.moments.empty() ? diary.treated : diary.moments.back();
    else if (kind != Kind::plain)
        course.truth.onset = after(diary.treated, onset.hour);
    const bool bothSides =
        kind == Kind::plain || kind == Kind::slowRecovery || kind == Kind::silent || kind == Kind::fever;
    if (!bothSides)
        course.truth.side = recovery::bothSides[onset.side];
    return course;
}

clock::Moment endOf(const triggers::CourseInput& input)
{
    clock::Moment end = input.treated;
    const auto evening = std::chrono::minutes(23 * 60 + 59 - input.treated.minuteOfDay());
    end.at += std::chrono::days(inventedDays - 1) + evening;
    for (const triggers::Observation& observation : input.observations)
        if (observation.at.at > end.at && clock::dayOfRecovery(input.treated, observation.at) < inventedDays)
            end = observation.at;
    return end;
}

}  // namespace ebbline::rehearsal
