#include "core/rehearsal/invented_scores.h"

#include <algorithm>
#include <cmath>

namespace ebbline::rehearsal {

namespace {

constexpr double ln2 = 0.6931471805599453;

/// The typical latent curve of a symptom: from `start` of its peak up to the peak, then halving.
struct Shape {
    double peak;           ///< median of the patients, points
    double start;          ///< share of the peak right after the treatment
    double peakHour;
    double halfLifeDays;
    double patientSpread;  ///< of the logarithm of the peak, own part of this symptom
    double sideSpread;     ///< of the logarithm of left over right, own part
    double bump;           ///< share of a benign bad day that shows here
};

/// In the order of scoredSymptoms. Assumptions, near the seed band.
constexpr std::array<Shape, symptomCount> shapes{{{3.2, 0.90, 18, 3.0, 0.40, 0.20, 1.0},
                                                  {4.1, 0.65, 40, 3.5, 0.18, 0.20, 0.6},
                                                  {3.3, 0.30, 54, 4.5, 0.45, 0.30, 0.0},
                                                  {4.0, 0.90, 30, 5.0, 0.18, 0.18, 0.7},
                                                  {1.3, 0.80, 48, 7.0, 0.65, 0.35, 0.5},
                                                  {2.6, 1.00, 12, 5.5, 0.45, 0.45, 0.0}}};

constexpr double sharedPatientSpread = 0.25;
constexpr double sharedSideSpread = 0.15;
constexpr double halfLifeSpread = 0.20;     // shared, and again for each symptom
constexpr double noiseAtZero = 0.30;        // points
constexpr double noisePerPoint = 0.09;
constexpr double moodShare = 0.45;          // of the noise, common to the whole sheet
constexpr double noiseMemoryHours = 35;     // correlation falls to 1/e: 0.5 from day to day
constexpr double bumpProbability = 0.25;

/// What a complication adds to one stream.
struct Addition {
    std::array<double, symptomCount> share{};  ///< of its size, by symptom
    double size = 0;                           ///< points
    double growHours = 1;
    double halfLifeDays = 0;                   ///< 0: it stays
    double otherSide = 0;                      ///< share that the other side has as well
};

class Patient {
public:
    Patient(Chance& chance, Kind kind, const Onset& onset, const Strength& strength)
        : m_chance(chance), m_kind(kind), m_onset(onset)
    {
        const double shared = chance.normal(0, sharedPatientSpread);
        const double sharedSide = chance.normal(0, sharedSideSpread);
        const double pace = chance.normal(0, halfLifeSpread);
        for (std::size_t s = 0; s < symptomCount; ++s) {
            const Shape& shape = shapes[s];
            m_peak[s] = shape.peak * portableExp(shared + chance.normal(0, shape.patientSpread));
            m_lean[s] = (sharedSide + chance.normal(0, shape.sideSpread)) / 2;
            m_halfLife[s] = shape.halfLifeDays * portableExp(pace + chance.normal(0, halfLifeSpread));
            m_peakHour[s] = shape.peakHour * chance.logNormal(1, 0.25);
            if (kind == Kind::slowRecovery && s < 4)
                m_halfLife[s] *= 3;
        }
        drawHabits();
        drawBump();
        if (chance.happens(0.2)) {
            // The bruise sinks towards the jaw and shows there too.
            m_sinkHour = chance.between(72, 144);
            m_sinkSize = chance.between(0.5, 1.5);
        }
        drawAddition(strength);
    }

    Sheet sheet(double hour)
    {
        const double keep = m_first ? 0 : portableExp(-(hour - m_lastHour) / noiseMemoryHours);
        const double fresh = std::sqrt(1 - keep * keep);
        m_first = false;
        m_lastHour = hour;
        m_mood = keep * m_mood + fresh * m_chance.normal(0, 1);
        Sheet sheet{};
        for (std::size_t s = 0; s < symptomCount; ++s)
            for (std::size_t side = 0; side < 2; ++side) {
                double& noise = m_noise[s][side];
                noise = keep * noise + fresh * m_chance.normal(0, 1);
                const double usual = latent(s, side, hour);
                const double more = added(s, side, hour);  // in points as written, whatever her habit
                const double spread = noiseAtZero + noisePerPoint * (usual + more);
                const double felt =
                    usual + spread * (moodShare * m_mood + std::sqrt(1 - moodShare * moodShare) * noise);
                sheet[s][side] = written(m_scale * felt + (felt > 0.5 ? m_shift : 0) + more);
            }
        return sheet;
    }

private:
    void drawHabits()
    {
        const double habit = m_chance.uniform();
        if (habit < 0.15) {  // stoic
            m_scale = 0.75;
        } else if (habit < 0.30) {  // anxious
            m_scale = 1.2;
            m_shift = 0.3;
        }
        m_evenDigits = m_chance.happens(0.06);
    }

    void drawBump()
    {
        m_bumpHour = m_chance.happens(bumpProbability) ? 24 * m_chance.between(3, 18) : -1000;
        m_bumpSize = m_chance.between(1, 2.5);
        m_bumpSide = m_chance.happens(0.25) ? m_chance.whole(0, 1) : -1;
    }

    void drawAddition(const Strength& strength)
    {
        if (m_kind == Kind::infection) {
            m_addition.size = strength.size * m_chance.between(4, 6);
            m_addition.growHours = 24 * m_addition.size / (strength.pace * m_chance.between(0.8, 1.6));
            m_addition.share = {1, m_chance.between(0.7, 1), 0, 0.5, 0.3, 0};
            m_addition.otherSide = 0.15;
        } else if (m_kind == Kind::haematoma) {
            m_addition.size = strength.size * m_chance.between(3, 5);
            m_addition.growHours = strength.size / strength.pace * m_chance.between(3, 12);
            m_addition.halfLifeDays = 5;
            m_addition.share = {m_chance.between(0.6, 1), 1, m_chance.between(0.5, 0.9), m_chance.between(0.5, 0.9), 0, 0};
        } else if (m_kind == Kind::puckering) {
            m_addition.size = strength.size * m_chance.between(3, 6);
        }
    }

    double added(std::size_t s, std::size_t side, double hour) const
    {
        // Blood takes half a day longer to show as a bruise, and comes up over a day.
        const bool bruise = m_kind == Kind::haematoma && s == 2;
        // At the onset it has reached one point: the first that a score can show.
        const double lead = m_addition.growHours / m_addition.size;
        const double since = hour - m_onset.hour + lead - (bruise ? 12 : 0);
        if (since <= 0 || m_addition.share[s] <= 0)
            return 0;
        double size = m_addition.size * m_addition.share[s] * std::min(1.0, since / (bruise ? 24 : m_addition.growHours));
        if (m_addition.halfLifeDays > 0 && since > m_addition.growHours)
            size *= portableExp(-ln2 * (since - m_addition.growHours) / (24 * m_addition.halfLifeDays));
        return side == m_onset.side ? size : m_addition.otherSide * size;
    }

    double latent(std::size_t s, std::size_t side, double hour) const
    {
        if (m_kind == Kind::puckering && s == 5 && side == m_onset.side)
            return m_addition.size;
        const double lean = portableExp(side == 0 ? m_lean[s] : -m_lean[s]);
        const double start = shapes[s].start;
        const double share = hour < m_peakHour[s]
                                 ? start + (1 - start) * hour / m_peakHour[s]
                                 : portableExp(-ln2 * (hour - m_peakHour[s]) / (24 * m_halfLife[s]));
        double level = m_peak[s] * lean * share;
        if (s == 2 && m_sinkSize > 0 && hour > m_sinkHour)
            level += m_sinkSize * portableExp(-ln2 * (hour - m_sinkHour) / 72);
        const double sinceBump = hour - m_bumpHour;
        if (sinceBump >= 0 && sinceBump < 36 && (m_bumpSide < 0 || static_cast<std::size_t>(m_bumpSide) == side))
            level += m_bumpSize * shapes[s].bump * (sinceBump < 20 ? 1 : 0.4);
        // Swollen from lying, sore from the day.
        const double clock = std::fmod(hour, 24);
        if (s == 1 && clock > 14 && clock < 24)
            level *= 1.05;
        return level;
    }

    int written(double felt) const
    {
        const double bounded = std::clamp(felt, 0.0, 10.0);
        if (m_evenDigits)
            return 2 * static_cast<int>(std::floor(bounded / 2 + 0.5));
        return static_cast<int>(std::floor(bounded + 0.5));
    }

    Chance& m_chance;
    Kind m_kind;
    Onset m_onset;
    std::array<double, symptomCount> m_peak{}, m_lean{}, m_halfLife{}, m_peakHour{};
    std::array<std::array<double, 2>, symptomCount> m_noise{};
    double m_mood = 0;
    bool m_first = true;
    double m_lastHour = 0;
    double m_scale = 1, m_shift = 0;
    bool m_evenDigits = false;
    double m_bumpHour = -1000, m_bumpSize = 0;
    int m_bumpSide = -1;
    double m_sinkHour = 0, m_sinkSize = 0;
    Addition m_addition;
};

}  // namespace

std::vector<Sheet> scoresByDecay(Chance& chance, Kind kind, const Onset& onset, const Strength& strength,
                                 const std::vector<double>& hours)
{
    Patient patient(chance, kind, onset, strength);
    std::vector<Sheet> sheets;
    sheets.reserve(hours.size());
    for (const double hour : hours)
        sheets.push_back(patient.sheet(hour));
    return sheets;
}

}  // namespace ebbline::rehearsal
