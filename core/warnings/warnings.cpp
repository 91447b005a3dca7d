#include "core/warnings/warnings.h"

#include "core/bytes/decimal.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

namespace ebbline::warnings {

namespace {

using recovery::Entry;
using recovery::Side;
using recovery::Sign;
using recovery::Stream;
using recovery::Symptom;
using recovery::Urgency;

/// Signs that are a finding by themselves. Grounds: docs/clinical/warnings.md.
struct SingleSign {
    Sign sign;
    Urgency urgency;
};

constexpr std::array singleSigns{
    SingleSign{Sign::breathing, Urgency::emergency},
    SingleSign{Sign::neckSwelling, Urgency::emergency},
    SingleSign{Sign::allergy, Urgency::emergency},
    SingleSign{Sign::numbingReaction, Urgency::emergency},
    SingleSign{Sign::severeIllness, Urgency::emergency},
    SingleSign{Sign::strokeSigns, Urgency::emergency},
    SingleSign{Sign::vision, Urgency::emergency},
    SingleSign{Sign::fastSwelling, Urgency::callNow},
    SingleSign{Sign::paleSkin, Urgency::callNow},
    SingleSign{Sign::thickFluid, Urgency::callNow},
    SingleSign{Sign::shivering, Urgency::callNow},
    SingleSign{Sign::salivaSwelling, Urgency::callNow},
    SingleSign{Sign::bleeding, Urgency::callNow},
    SingleSign{Sign::pulsatingLump, Urgency::callNow},
    SingleSign{Sign::threadLump, Urgency::nextWorkingDay},
};

/// Any two of these speak of spreading inflammation; colour is never a necessary one, because it
/// is seen late or not at all on brown and black skin (NICE guideline NG141, 2019, 1.1.3).
constexpr std::array spreadingSigns{Sign::colourChange, Sign::warmer, Sign::firmer, Sign::moreTender,
                                    Sign::edgeMoved};

constexpr int severePain = 7;         // Serlin et al., Pain 1995: severe is 7..10
constexpr int sideSwellingPoints = 3; // common practice, no source
constexpr int sidePainPoints = 2;     // Farrar et al., Pain 2001: a difference that matters
constexpr std::chrono::hours sideWindow{48};
constexpr std::chrono::hours clockGrace{1};  // our choice, no source

std::string named(Sign sign)
{
    return std::string(recovery::word(sign));
}

std::optional<int> points(const Entry& entry, Symptom symptom, Side side)
{
    const auto found = entry.scores.find(Stream{symptom, side});
    if (found == entry.scores.end())
        return std::nullopt;
    return found->second.points();
}

std::string degrees(double celsius)
{
    return "temperature " + bytes::fixedDecimal(celsius, 1) + " C";
}

/// A reason is words, with a value behind them or without: "shivering", "temperature 38.2 C".
std::string_view wordsOf(std::string_view reason)
{
    return reason.substr(0, reason.find_first_of("0123456789"));
}

double valueOf(const std::string& reason)
{
    const auto at = reason.find_first_of("0123456789");
    return at == std::string::npos ? 0 : bytes::leadingDecimal(std::string_view(reason).substr(at));
}

class Judgement {
public:
    Judgement(const Entry& entry, const Circumstances& circumstances)
        : m_entry(entry), m_circumstances(circumstances)
    {
    }

    std::vector<Finding> findings()
    {
        for (const SingleSign& rule : singleSigns)
            if (has(rule.sign))
                add(named(rule.sign), rule.urgency, {named(rule.sign)});
        fever();
        spreading();
        thread();
        weakness();
        pain();
        oneSidedSwelling();
        std::stable_sort(m_findings.begin(), m_findings.end(),
                         [](const Finding& a, const Finding& b) { return a.urgency < b.urgency; });
        return std::move(m_findings);
    }

private:
    bool has(Sign sign) const { return m_entry.present.contains(sign); }

    void add(std::string rule, Urgency urgency, std::vector<std::string> reasons, Side side = Side::none)
    {
        m_findings.push_back({std::move(rule), urgency, side, std::move(reasons)});
    }

    void fever()
    {
        if (!m_entry.temperature || m_entry.temperature->celsius() < m_circumstances.feverCelsius)
            return;
        std::vector<std::string> reasons{degrees(m_entry.temperature->celsius())};
        // With these the face may be infected: tonight, not tomorrow (NICE NG141; the screens say so).
        for (const Sign sign : {Sign::colourChange, Sign::warmer, Sign::shivering})
            if (has(sign))
                reasons.push_back(named(sign));
        const bool withInflammation = reasons.size() > 1;
        add(withInflammation ? "fever-with-inflammation" : "fever", Urgency::callNow, std::move(reasons));
    }

    void spreading()
    {
        std::vector<std::string> reasons;
        for (const Sign sign : spreadingSigns)
            if (has(sign))
                reasons.push_back(named(sign));
        if (reasons.size() >= 2 || has(Sign::edgeMoved))
            add("spreading", Urgency::callNow, std::move(reasons));
    }

    void thread()
    {
        if (!has(Sign::threadOut))
            return;
        std::vector<std::string> reasons{named(Sign::threadOut)};
        for (const Sign sign : {Sign::thickFluid, Sign::colourChange, Sign::warmer, Sign::moreTender})
            if (has(sign))
                reasons.push_back(named(sign));
        const Urgency urgency = reasons.size() > 1 ? Urgency::callNow : Urgency::nextWorkingDay;
        add(named(Sign::threadOut), urgency, std::move(reasons));
    }

    void weakness()
    {
        if (!has(Sign::faceWeakness))
            return;
        const auto since = m_entry.at.at - m_circumstances.treated.at;
        // Written before the treatment, or so says a clock that is wrong: then nothing speaks for the numbing.
        if (since >= -clockGrace && since <= std::chrono::hours(m_circumstances.weaknessGraceHours))
            add("face-weakness-early", Urgency::nextWorkingDay, {named(Sign::faceWeakness)});
        else
            add(named(Sign::faceWeakness), Urgency::callNow, {named(Sign::faceWeakness)});
    }

    /// A score without a side weighs as much as one with: a table may not tell the sides apart.
    void pain()
    {
        for (const Side side : {Side::left, Side::right, Side::none}) {
            const auto score = points(m_entry, Symptom::pain, side);
            if (score && *score >= severePain)
                add("severe-pain", Urgency::callNow, {"pain " + std::to_string(*score)}, side);
        }
    }

    /// Fullness and pain of one side in the first two days: a haematoma until somebody has looked
    /// (teaching on facelift haematoma: Thorne, textbook chapter; Niamtu, Dermatol Surg 2005). Pain
    /// without a side may be the full side's, and counts as that; swelling without a side compares nothing.
    void oneSidedSwelling()
    {
        if (m_entry.at.at - m_circumstances.treated.at > sideWindow)
            return;
        for (const Side side : recovery::bothSides) {
            const Side other = recovery::mirrored(side);
            const auto here = points(m_entry, Symptom::swelling, side);
            const auto there = points(m_entry, Symptom::swelling, other);
            // Nothing is less than any score.
            const auto painHere = std::max(points(m_entry, Symptom::pain, side), points(m_entry, Symptom::pain, Side::none));
            const auto painThere = points(m_entry, Symptom::pain, other);
            if (!here || !there || !painHere)
                continue;
            if (*here - *there >= sideSwellingPoints && *painHere - painThere.value_or(0) >= sidePainPoints)
                add("one-sided-swelling", Urgency::callNow,
                    {"swelling " + std::to_string(*here) + " against " + std::to_string(*there),
                     "pain " + std::to_string(*painHere)},
                    side);
        }
    }

    const Entry& m_entry;
    const Circumstances& m_circumstances;
    std::vector<Finding> m_findings;
};

}  // namespace

std::vector<Finding> judge(const recovery::Entry& entry, const Circumstances& circumstances)
{
    return Judgement(entry, circumstances).findings();
}

std::vector<recovery::Sign> signsRaising(recovery::Urgency urgency)
{
    std::vector<recovery::Sign> signs;
    Circumstances circumstances;
    Entry entry;
    entry.at.at = circumstances.treated.at + std::chrono::hours(circumstances.weaknessGraceHours + 1);
    for (const Sign sign : recovery::allSigns) {
        entry.present = {sign};
        if (mostUrgent(judge(entry, circumstances)) == urgency)
            signs.push_back(sign);
    }
    return signs;
}

std::optional<recovery::Urgency> mostUrgent(const std::vector<Finding>& findings)
{
    if (findings.empty())
        return std::nullopt;
    return std::min_element(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
               return a.urgency < b.urgency;
           })->urgency;
}

bool isWorse(const Finding& fresh, const Finding& known)
{
    if (fresh.urgency != known.urgency)
        return fresh.urgency < known.urgency;
    return std::any_of(fresh.reasons.begin(), fresh.reasons.end(), [&](const std::string& reason) {
        return std::none_of(known.reasons.begin(), known.reasons.end(), [&](const std::string& other) {
            return wordsOf(other) == wordsOf(reason) && valueOf(other) >= valueOf(reason);
        });
    });
}

}  // namespace ebbline::warnings
