// Findings in the practitioner's words, with the numbers behind them.
#include "app/desk/model/finding_words.h"
#include "app/desk/model/words.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators_range.hpp>

#include <QFile>
#include <QSet>

#include <set>

using namespace ebbline;
using namespace ebbline::deskapp;

namespace {

triage::Finding found(triggers::Trigger trigger, std::map<std::string, double> numbers)
{
    triggers::Finding what;
    what.trigger = trigger;
    what.urgency = recovery::Urgency::callNow;
    what.stream = {recovery::Symptom::pain, recovery::Side::left};
    what.day = 6;
    what.numbers = std::move(numbers);
    triage::Finding finding;
    finding.urgency = what.urgency;
    finding.day = 6;
    finding.what = what;
    return finding;
}

triage::Finding warned(const std::string& rule, std::vector<std::string> reasons)
{
    triage::Finding finding;
    finding.urgency = recovery::Urgency::callNow;
    finding.day = 2;
    finding.what = warnings::Finding{rule, recovery::Urgency::callNow, recovery::Side::none, std::move(reasons)};
    return finding;
}

}  // namespace

TEST_CASE("a rebound says the score, the day and the low before it", "[desk][words]")
{
    const auto finding = found(triggers::Trigger::rebound, {{"score", 5}, {"lowest", 2}, {"statistic", 5.1}, {"threshold", 4.81}});

    CHECK(findingTitle(finding) == QLatin1String("Pain, left: rising again"));
    CHECK(findingReason(finding) == QLatin1String("5 on day 6 after a low of 2."));
    CHECK(findingBasis(finding).toStdString() == "Rule “rebound”: statistic 5.10, threshold 4.81.");
    CHECK(findingTitle(found(triggers::Trigger::rebound, {{"score", 5}, {"lowest", 2}, {"neverFell", 1}})) == QLatin1String("Pain, left: rising"));
}

TEST_CASE("a finding over all symptoms does not say that one usual score were slow", "[desk][words]")
{
    auto finding = found(triggers::Trigger::slowRecovery, {{"score", 0}, {"usualHigh", 2}, {"mean", 8.0 / 3}});
    CHECK(findingReason(finding) == QLatin1String("On average 2.7 over its last three days with an answer, up to day 6; usual up to 2."));
    std::get<triggers::Finding>(finding.what).stream = {recovery::Symptom::tightness, recovery::Side::none};

    CHECK(findingTitle(finding) == QLatin1String("All symptoms together: slow to settle"));
    CHECK(findingReason(finding)
          == QLatin1String("Day 6; among them Tightness, on average 2.7 over its last three days with an answer, usual up to 2."));
    auto high = found(triggers::Trigger::level, {{"score", 4}, {"usualHigh", 2}});
    std::get<triggers::Finding>(high.what).stream = {recovery::Symptom::tightness, recovery::Side::none};
    CHECK(findingReason(high) == QLatin1String("Day 6; among them Tightness with 4, usual up to 2."));
    // One symptom that was scored without sides is that symptom alone.
    std::get<triggers::Finding>(high.what).numbers["overall"] = 0;
    CHECK(findingTitle(high) == QLatin1String("Tightness: above the usual range"));
    CHECK(findingReason(high) == QLatin1String("4 on day 6; usual up to 2."));
    std::get<triggers::Finding>(high.what).numbers["overall"] = 1;
    CHECK(findingTitle(high) == QLatin1String("All symptoms together: above the usual range"));
}

TEST_CASE("a fold that stays says what its note rests on", "[desk][words]")
{
    using Trigger = triggers::Trigger;
    CHECK(findingReason(found(Trigger::persistentPuckering, {{"score", 2}})) == QLatin1String("Still 2 on day 6. Noted because it is so late."));
    CHECK(findingReason(found(Trigger::persistentPuckering, {{"score", 3}, {"weekBefore", 3}})) == QLatin1String("Still 3 on day 6. A week before: 3."));
    CHECK(findingReason(found(Trigger::persistentPuckering, {{"score", 3}, {"together", 8}, {"beginning", 10.0 / 3}}))
          == QLatin1String("Still 3 on day 6. Over its last three days: 8 points. In its first days: 3.3."));
}

TEST_CASE("a silence over the day of the visit says that no follow-up was recorded", "[desk][words]")
{
    auto finding = found(triggers::Trigger::silence, {{"days", 4}, {"waited", 3}});
    const QString quiet = findingReason(finding);
    finding = found(triggers::Trigger::silence, {{"days", 4}, {"waited", 3}, {"visit", 5}});
    CHECK(findingReason(finding) == quiet + QLatin1String(" The visit was to be on day 5; by day 6 no follow-up was recorded."));
}

TEST_CASE("a missing number shows as a dash, never as zero", "[desk][words]")
{
    CHECK(findingReason(found(triggers::Trigger::level, {})).contains(u'–'));
}

TEST_CASE("sides that part over several symptoms say how far, and name the symptom whose numbers they show", "[desk][words]")
{
    const auto one = found(triggers::Trigger::sideDivergence, {{"left", 8}, {"right", 3}});
    CHECK(findingReason(one) == QLatin1String("Left 8, right 3 on day 6."));
    auto several = found(triggers::Trigger::sideDivergence, {{"left", 8}, {"right", 3}, {"apart", 9}});
    CHECK(findingReason(several) == QLatin1String("Left 8, right 3 on day 6. All symptoms together: 9 points apart."));
    std::get<triggers::Finding>(several.what).shown = recovery::Symptom::tightness;
    CHECK(findingTitle(several) == QLatin1String("Tightness: one side much worse"));
    CHECK(symptomOf(several) == recovery::Symptom::tightness);
}

TEST_CASE("a warning names its signs and measured values in the language of the desk", "[desk][words]")
{
    const auto finding = warned("fever-with-inflammation", {"temperature 38.4 C", "warmer"});

    CHECK(findingTitle(finding) == QLatin1String("Fever with inflammation of the face"));
    CHECK(findingReason(finding).contains(QStringLiteral("Temperature 38.4 °C")));
    CHECK(findingReason(finding).contains(QLatin1String("Warmer than the other side")));
}

TEST_CASE("what was raised before a correction says what it was raised on, and that it was corrected", "[desk][words]")
{
    auto finding = found(triggers::Trigger::sideDivergence, {{"left", 7}, {"right", 3}, {"day", 6}});
    const QString before = findingReason(finding);
    finding.changedSince = true;
    CHECK(findingReason(finding).startsWith(before));
    CHECK(findingReason(finding).contains(QLatin1String("Corrected or added to since")));
    finding.recounted = true;
    CHECK(findingReason(finding).contains(QLatin1String("Raised by a day of the treatment, or scores right after it, that were corrected since.")));
    CHECK_FALSE(findingReason(finding).contains(QLatin1String("Corrected or added to since")));
}

TEST_CASE("a rule of a newer program still shows its reasons", "[desk][words]")
{
    CHECK(findingTitle(warned("rule-of-tomorrow", {"something new"})) == QLatin1String("something new"));
    CHECK(findingTitle(warned("rule-of-tomorrow", {})) == QLatin1String("rule-of-tomorrow"));
}

TEST_CASE("every sign, zone, form, urgency, act and outcome has a word of its own", "[desk][words]")
{
    std::set<QString> words;
    for (const auto sign : recovery::allSigns) {
        CHECK_FALSE(signName(sign).isEmpty());
        CHECK(words.insert(signName(sign)).second);
    }
    for (const auto zone : recovery::allZones) {
        CHECK_FALSE(zoneName(zone).isEmpty());
    }
    for (int i = 1; i <= 6; ++i) {
        CHECK_FALSE(formName(static_cast<recovery::Form>(i)).isEmpty());
        CHECK_FALSE(actName(static_cast<records::Act>(i)).isEmpty());
    }
    for (int i = 1; i <= 4; ++i) {
        CHECK_FALSE(urgencyName(static_cast<recovery::Urgency>(i)).isEmpty());
    }
    for (int i = 1; i <= 5; ++i) {
        CHECK_FALSE(outcomeName(static_cast<records::Outcome>(i)).isEmpty());
        CHECK_FALSE(changeName(static_cast<records::GlobalChange>(i)).isEmpty());
    }
    for (const auto& word : complicationWords()) {
        CHECK_FALSE(complicationName(word).isEmpty());
    }
}

TEST_CASE("every complication says what is meant by it, in one sentence of its own, and the page of the definitions says the same", "[desk][words]")
{
    QFile page(QStringLiteral(EBBLINE_DOCS "/clinical/complications.md"));
    REQUIRE(page.open(QIODevice::ReadOnly));
    const auto written = QString::fromUtf8(page.readAll());
    QSet<QString> meanings;
    for (const auto& word : complicationWords()) {
        CAPTURE(word.toStdString());
        const auto meaning = complicationMeaning(word);
        CHECK(meaning.endsWith(u'.'));
        CHECK(written.contains(QStringLiteral("| %1 | %2 |").arg(word, meaning)));
        meanings.insert(meaning);
    }
    CHECK(meanings.size() == complicationWords().size());
    CHECK(complicationMeaning(QStringLiteral("none of them")).isEmpty());
}

TEST_CASE("every reason of failure is said in words", "[desk][words]")
{
    const int reason = GENERATE(range(1, 21));
    CHECK_FALSE(errorText(Error{static_cast<Reason>(reason), "detail"}).isEmpty());
}
