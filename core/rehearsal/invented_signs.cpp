#include "core/rehearsal/invented_signs.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace ebbline::rehearsal {

namespace {

using recovery::Sign;

constexpr double never = std::numeric_limits<double>::infinity();
constexpr double mistaken = 0.01;  // of entries: an ordinary change is ticked as a sign
constexpr double ticked = 0.9;     // of entries at which she has noticed it

/// A sign of a complication: how many of the patients notice it at all, when after the onset, and for
/// how long it is there.
struct Shown {
    Kind kind;
    Sign sign;
    double patients;
    double soonestHours;
    double latestHours;
    double lastsHours;
};

/// Assumptions, no source: which signs belong to which complication follows docs/clinical/warnings.md.
constexpr std::array shown{
    Shown{Kind::infection, Sign::moreTender, 0.6, 0, 48, never},
    Shown{Kind::infection, Sign::colourChange, 0.5, 0, 72, never},
    Shown{Kind::infection, Sign::warmer, 0.5, 0, 72, never},
    Shown{Kind::infection, Sign::firmer, 0.4, 12, 96, never},
    Shown{Kind::infection, Sign::thickFluid, 0.2, 24, 120, never},
    Shown{Kind::infection, Sign::shivering, 0.1, 24, 120, 48},
    Shown{Kind::haematoma, Sign::fastSwelling, 0.5, 0, 6, 24},
    Shown{Kind::lateHaematoma, Sign::fastSwelling, 0.5, 0, 6, 24},
    Shown{Kind::lateHaematoma, Sign::pulsatingLump, 0.1, 24, 96, never},
    Shown{Kind::threadOut, Sign::threadOut, 1, 0, 12, never},
    Shown{Kind::weakness, Sign::faceWeakness, 1, 0, 6, never},
    Shown{Kind::salivaSwelling, Sign::salivaSwelling, 1, 0, 24, never},
    Shown{Kind::paleSkin, Sign::paleSkin, 1, 0, 2, 24},
    Shown{Kind::bleeding, Sign::bleeding, 1, 0, 1, 6},
    Shown{Kind::airway, Sign::neckSwelling, 1, 0, 1, 12},
    Shown{Kind::airway, Sign::breathing, 0.5, 0, 2, 12},
    Shown{Kind::allergy, Sign::allergy, 1, 0, 1, 12},
    Shown{Kind::numbingReaction, Sign::numbingReaction, 1, 0, 1, 6},
    Shown{Kind::severeIllness, Sign::severeIllness, 1, 0, 12, 48},
    Shown{Kind::strokeSigns, Sign::strokeSigns, 1, 0, 1, 24},
    Shown{Kind::vision, Sign::vision, 1, 0, 1, 24},
    Shown{Kind::threadLump, Sign::threadLump, 1, 0, 24, never},
    Shown{Kind::spreadingColour, Sign::colourChange, 1, 0, 24, never},
    Shown{Kind::spreadingColour, Sign::edgeMoved, 1, 12, 48, never},
    Shown{Kind::spreadingColour, Sign::warmer, 0.5, 0, 48, never},
    Shown{Kind::fever, Sign::shivering, 0.3, 0, 24, 48},
    Shown{Kind::febrileInfection, Sign::colourChange, 1, 0, 24, never},
    Shown{Kind::febrileInfection, Sign::moreTender, 0.6, 0, 48, never},
    Shown{Kind::febrileInfection, Sign::warmer, 0.5, 0, 72, never},
    Shown{Kind::febrileInfection, Sign::shivering, 0.3, 12, 36, 48},
};
constexpr std::array ordinary{Sign::moreTender, Sign::colourChange, Sign::threadLump};

}  // namespace

std::optional<double> onsetByKind(Chance& chance, Kind kind)
{
    switch (kind) {
    case Kind::lateHaematoma: return chance.between(7 * 24, 10 * 24);
    case Kind::worseningFolds: return chance.between(8 * 24, 15 * 24);
    case Kind::threadOut: return chance.between(3 * 24, 18 * 24);
    case Kind::weakness: return chance.between(9, 48);
    case Kind::salivaSwelling: return chance.between(24, 7 * 24);
    case Kind::paleSkin: return chance.between(1, 24);
    case Kind::bleeding: return chance.between(1, 12);
    case Kind::airway: return chance.between(2, 12);          // most major bleedings: first 10 to 12 hours (Thorne)
    case Kind::allergy: return chance.between(2, 24);
    case Kind::numbingReaction: return chance.between(2, 12);  // late, after large dilute volumes: up to about 12 hours
    case Kind::severeIllness: return chance.between(3 * 24, 9 * 24);  // as an infection
    case Kind::strokeSigns:
    case Kind::vision: return chance.between(2, 20 * 24);
    case Kind::threadLump: return chance.between(3 * 24, 18 * 24);
    case Kind::spreadingColour: return chance.between(2 * 24, 9 * 24);
    case Kind::fever: return chance.between(3 * 24, 9 * 24);  // as an infection
    case Kind::spreadingNumbness: return chance.between(2 * 24, 12 * 24);
    case Kind::severePain: return chance.between(24, 14 * 24);
    default: return std::nullopt;
    }
}

Kind scoredLike(Kind kind)
{
    if (kind == Kind::lateHaematoma)
        return Kind::haematoma;
    if (kind == Kind::febrileInfection)
        return Kind::infection;
    return std::find(allKinds.begin(), allKinds.end(), kind) == allKinds.end() ? Kind::plain : kind;
}

void worsenFolds(Chance& chance, const Onset& onset, const std::vector<double>& hours, std::vector<Sheet>& sheets)
{
    constexpr std::size_t folds = 5;  // in scoredSymptoms
    const double gain = chance.between(3, 5);
    const double aDay = chance.between(0.6, 1.5);
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        const double since = hours[i] - onset.hour;
        const double more = since <= 0 ? 0 : std::min(gain, 1 + aDay * since / 24);
        int& points = sheets[i][folds][onset.side];
        points = std::clamp(points + static_cast<int>(std::floor(more + chance.uniform())), 0, 10);
    }
}

void hurtBadly(Chance& chance, const Onset& onset, const std::vector<double>& hours, std::vector<Sheet>& sheets)
{
    constexpr std::size_t pain = 0;  // in scoredSymptoms
    constexpr double lastsHours = 48;
    const int level = chance.whole(7, 9);
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        const double since = hours[i] - onset.hour;
        int& points = sheets[i][pain][onset.side];
        if (since >= 0 && since < lastsHours)
            points = std::max(points, level);
    }
}

std::vector<std::array<int, 2>> numbnessThatSpreads(Chance& chance, const Onset& onset, const std::vector<double>& hours)
{
    // Assumptions, no source: leaflets speak of six to eight weeks until ordinary numbness is gone, and of no score.
    constexpr double halvesInHours = 14 * 24;
    constexpr double ln2 = 0.6931471805599453;
    const double start = chance.between(1, 4);
    const double lean = chance.between(-0.5, 0.5);  // of the left over the right, points
    const double gain = chance.between(3, 5);
    const double aDay = chance.between(0.6, 1.5);
    std::vector<std::array<int, 2>> numbness;
    numbness.reserve(hours.size());
    for (const double hour : hours) {
        const double since = hour - onset.hour;
        const double more = since <= 0 ? 0 : std::min(gain, 1 + aDay * since / 24);
        std::array<int, 2> sides{};
        for (std::size_t side = 0; side < sides.size(); ++side) {
            const double usual = (start + (side == 0 ? lean : -lean)) * portableExp(-ln2 * hour / halvesInHours);
            const double felt = usual + (side == onset.side ? more : 0);
            sides[side] = std::clamp(static_cast<int>(std::floor(felt + chance.uniform())), 0, 10);
        }
        numbness.push_back(sides);
    }
    return numbness;
}

std::vector<MeasuredTemperature> temperatures(Chance& chance, Kind kind, const Onset& onset, const std::vector<double>& hours,
                                              const std::vector<clock::Moment>& moments)
{
    constexpr double measuresAnyway = 0.05;  // of entries
    constexpr double measuresHot = 0.8;      // of entries with a fever
    constexpr double feverHours = 48;
    constexpr double usual = 36.8, spread = 0.3, highestUsual = 37.6;
    constexpr double lowestFever = 38.0;
    const double height = chance.between(0.2, 1.6);  // of the fever above its bound
    const bool ill = kind == Kind::fever || kind == Kind::febrileInfection;
    const double from = onset.hour + (kind == Kind::febrileInfection ? 12 : 0);
    std::vector<MeasuredTemperature> measured;
    for (std::size_t i = 0; i < hours.size(); ++i) {
        const bool hot = ill && hours[i] >= from && hours[i] < from + feverHours;
        const double wobble = chance.normal(0, spread);
        if (!chance.happens(hot ? measuresHot : measuresAnyway))
            continue;
        const double celsius = hot ? std::max(lowestFever, lowestFever + height + wobble) : std::min(highestUsual, usual + wobble);
        // A thermometer shows tenths.
        if (const auto shown = recovery::Temperature::celsius(std::floor(10 * celsius + 0.5) / 10))
            measured.push_back({moments[i], *shown});
    }
    return measured;
}

std::vector<TickedSigns> tickedSigns(Chance& chance, Kind kind, const Onset& onset, const std::vector<double>& hours,
                                     const std::vector<clock::Moment>& moments)
{
    std::vector<std::pair<const Shown*, double>> noticed;  // with the hour from which on
    for (const Shown& each : shown)
        if (each.kind == kind && chance.happens(each.patients))
            noticed.emplace_back(&each, onset.hour + chance.between(each.soonestHours, each.latestHours));
    std::vector<TickedSigns> answers;
    for (std::size_t i = 0; i < hours.size(); ++i) {
        TickedSigns answer{moments[i], {}};
        for (const auto& [what, from] : noticed)
            if (hours[i] >= from && hours[i] < from + what->lastsHours && chance.happens(ticked))
                answer.signs.insert(what->sign);
        if (chance.happens(mistaken))
            answer.signs.insert(ordinary[static_cast<std::size_t>(chance.whole(0, static_cast<int>(ordinary.size()) - 1))]);
        if (!answer.signs.empty())
            answers.push_back(std::move(answer));
    }
    return answers;
}

}  // namespace ebbline::rehearsal
