#include "core/rehearsal/invented_scores.h"

#include <algorithm>
#include <cmath>

namespace ebbline::rehearsal {

namespace {

constexpr double stepHours = 1;
constexpr double stepsADay = 24 / stepHours;
constexpr double together = 0.88;        // chance that both sides see the same draw
constexpr double benignUpADay = 0.05;    // points up for no reason, each stream
constexpr int mostHalves = 20;

/// How the state of a symptom moves, half a point at a time: it starts somewhere, climbs until it
/// turns, and steps down faster the higher it stands.
struct Motion {
    double start;         ///< mean of the first state, points
    double climb;         ///< mean points up until it turns
    double turnHours;     ///< mean
    double downADay;      ///< points down a day at one point; times points^0.8 higher up
    int patients;         ///< shape of the gamma over patients: larger is more alike
};

/// In the order of scoredSymptoms. Assumptions, near the seed band.
constexpr std::array<Motion, symptomCount> motions{{{3.4, 0.3, 16, 0.30, 5},
                                                    {3.1, 1.5, 40, 0.27, 14},
                                                    {1.1, 2.3, 54, 0.24, 5},
                                                    {4.1, 0.3, 24, 0.21, 14},
                                                    {1.3, 0.2, 48, 0.14, 2},
                                                    {2.8, 0.0, 12, 0.19, 3}}};

class Patient {
public:
    Patient(Chance& chance, Kind kind, const Onset& onset, const Strength& strength)
        : m_chance(chance), m_kind(kind), m_onset(onset)
    {
        const double frailty = chance.gamma(10, 1);
        const double pace = chance.gamma(25, 1);
        for (std::size_t s = 0; s < symptomCount; ++s) {
            const Motion& motion = motions[s];
            const double own = frailty * chance.gamma(motion.patients, 1);
            m_down[s] = motion.downADay * pace * chance.gamma(25, 1);
            if (kind == Kind::slowRecovery && s < 4)
                m_down[s] /= 3;
            m_turnHours[s] = chance.gamma(6, motion.turnHours);
            m_upChance[s] = 2 * motion.climb * own * stepHours / m_turnHours[s];
            for (std::size_t side = 0; side < 2; ++side) {
                const double wanted = motion.start * own * chance.gamma(16, 1);
                m_halves[s][side] = std::clamp(static_cast<int>(2 * wanted + chance.uniform()), 0, mostHalves);
            }
        }
        if (kind == Kind::puckering) {
            m_floor = scaled(2 * chance.whole(3, 6), strength.size);
            m_halves[5][onset.side] = std::max(m_halves[5][onset.side], m_floor);
        }
        drawComplication(strength);
        m_manner = chance.uniform();
        m_repeats = chance.happens(0.1);
    }

    /// Moves on to an hour.
    void moveTo(double hour)
    {
        while (m_hour + stepHours <= hour) {
            m_hour += stepHours;
            for (std::size_t s = 0; s < symptomCount; ++s)
                moveSymptom(s);
        }
    }

    Sheet sheet()
    {
        Sheet sheet{};
        for (std::size_t s = 0; s < symptomCount; ++s)
            for (std::size_t side = 0; side < 2; ++side)
                sheet[s][side] = m_repeats && m_written && m_chance.happens(0.3) ? (*m_written)[s][side]
                                                                                  : written((m_halves[s][side] + 1) / 2);
        m_written = sheet;
        return sheet;
    }

private:
    /// Half points, whole.
    static int scaled(int halves, double share) { return static_cast<int>(std::floor(share * halves + 0.5)); }

    void drawComplication(const Strength& strength)
    {
        if (m_kind == Kind::infection) {
            const double upADay = m_chance.between(0.8, 1.7);
            const int gain = m_chance.whole(4, 6);
            m_complicationUp = {upADay, upADay * m_chance.between(0.6, 1), 0, upADay * 0.4, upADay * 0.2, 0};
            m_complicationGain = {2 * gain, 2 * gain, 0, gain, gain / 2, 0};
        } else if (m_kind == Kind::haematoma) {
            const int gain = m_chance.whole(3, 5);
            const double hours = m_chance.between(2, 12);
            const double upADay = 24 * gain / hours;
            m_complicationUp = {upADay * 0.7, upADay, upADay / 3, upADay * 0.5, 0, 0};
            m_complicationGain = {2 * m_chance.whole(gain - 2, gain), 2 * gain, 2 * m_chance.whole(gain - 2, gain),
                                  2 * m_chance.whole(gain / 2, gain), 0, 0};
        }
        for (std::size_t s = 0; s < symptomCount; ++s) {
            m_complicationUp[s] *= strength.pace;
            m_complicationGain[s] = scaled(m_complicationGain[s], strength.size);
        }
    }

    void moveSymptom(std::size_t s)
    {
        const double shared = m_chance.uniform();
        const double sharedUp = m_chance.uniform();
        for (std::size_t side = 0; side < 2; ++side) {
            int& halves = m_halves[s][side];
            const bool alike = m_chance.happens(together);
            const double down = alike ? shared : m_chance.uniform();
            const double up = alike ? sharedUp : m_chance.uniform();
            const bool struck = side == m_onset.side && m_hour > m_onset.hour && m_complicationUp[s] > 0;
            if (struck && m_complicationGain[s] > 0) {
                grow(s, halves);
                continue;
            }
            const bool climbing = m_hour < m_turnHours[s];
            if (up < (climbing ? m_upChance[s] : 2 * benignUpADay / stepsADay)) {
                halves = std::min(mostHalves, halves + 1);
                continue;
            }
            if (climbing || halves == 0)
                continue;
            // After it was struck a side comes down at half the pace; an infection stays.
            const double slowed = !struck ? 1.0 : m_kind == Kind::haematoma ? 0.5 : 0.0;
            const bool held = m_kind == Kind::puckering && s == 5 && side == m_onset.side && halves <= m_floor;
            if (!held && down < slowed * 2 * m_down[s] * portableExp(0.8 * portableLog(halves / 2.0)) / stepsADay)
                --halves;
        }
    }

    /// The first point is the onset itself.
    void grow(std::size_t s, int& halves)
    {
        const bool first = m_hour - stepHours <= m_onset.hour && m_complicationGain[s] > 2;
        const double chance = 2 * m_complicationUp[s] / stepsADay;
        int steps = first ? 2 : static_cast<int>(chance) + (m_chance.happens(chance - std::floor(chance)) ? 1 : 0);
        steps = std::min(steps, m_complicationGain[s]);
        halves = std::min(mostHalves, halves + steps);
        m_complicationGain[s] -= steps;
    }

    /// The answer to a state: mostly itself, often a neighbour.
    int written(int points)
    {
        const double slip = m_chance.uniform();
        int answer = points;
        if (points == 0)
            answer = slip < 0.93 ? 0 : slip < 0.99 ? 1 : 2;
        else if (slip < 0.06)
            answer = points - 1;
        else if (slip < 0.12)
            answer = points + 1;
        else if (slip < 0.13)
            answer = points + 2;
        else if (slip < 0.14)
            answer = points - 2;
        if (m_manner < 0.15)
            answer = (answer * 4 + 2) / 5;  // understates
        else if (m_manner < 0.19)
            answer = answer == 0 ? 0 : answer <= 3 ? 2 : answer <= 6 ? 5 : 8;  // little, middling, much
        return std::clamp(answer, 0, 10);
    }

    Chance& m_chance;
    Kind m_kind;
    Onset m_onset;
    std::array<std::array<int, 2>, symptomCount> m_halves{};
    double m_hour = 0;
    std::array<double, symptomCount> m_down{}, m_turnHours{}, m_upChance{}, m_complicationUp{};
    std::array<int, symptomCount> m_complicationGain{};
    int m_floor = 0;
    double m_manner = 1;
    bool m_repeats = false;
    std::optional<Sheet> m_written;
};

}  // namespace

std::vector<Sheet> scoresBySteps(Chance& chance, Kind kind, const Onset& onset, const Strength& strength,
                                 const std::vector<double>& hours)
{
    Patient patient(chance, kind, onset, strength);
    std::vector<Sheet> sheets;
    sheets.reserve(hours.size());
    for (const double hour : hours) {
        patient.moveTo(hour);
        sheets.push_back(patient.sheet());
    }
    return sheets;
}

}  // namespace ebbline::rehearsal
