// What a finding says of what it rests on.

#include "tests/core/triggers/evenings.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using namespace ebbline::triggers;
using namespace ebbline::triggers::evenings;

TEST_CASE("slow recovery says the three days that it rests on, also where today's answer is a 0", "[triggers]")
{
    Protocol protocol = defaultProtocol();
    protocol.thresholds.slowRecovery = 0.5;
    protocol.thresholds.slowFirstDay = 9;
    const auto findings = judged(series(Symptom::swelling, Side::left, {6, 6, 6, 6, 6, 6, 6, 6, 6, 0}), 9, protocol);

    const Finding* slow = find(findings, Trigger::slowRecovery);
    REQUIRE(slow);
    CHECK(slow->numbers.at("score") == 0);
    CHECK(slow->numbers.at("mean") == 4);
    CHECK(explain(*slow).starts_with("swelling on the left is slow to go: 4 of 10 on average over its last three days with an answer up to day 9"));
}

TEST_CASE("a fold that stays says what its note rests on", "[triggers]")
{
    const auto noted = [](const std::vector<int>& scores) {
        const auto findings = judged(series(Symptom::puckering, Side::left, scores), static_cast<int>(scores.size()) - 1);
        const Finding* fold = find(findings, Trigger::persistentPuckering);
        return fold ? explain(*fold) : "nothing";
    };
    CHECK(noted(std::vector<int>(9, 3))
          == "puckering on the left is still there: 3 of 10 on day 8, 9 points over its last three days, 3 in its first days");
    CHECK(noted({8, 8, 8, 8, 8, 3, 3, 3, 3, 3, 3, 3}) == "puckering on the left is still there: 3 of 10 on day 11, 3 a week before");
    CHECK(noted({8, 8, 8, 8, 8, 4, 4, 4, 3, 3, 3, 2, 3}) == "puckering on the left is still there: 3 of 10 on day 12, 8 points over its last three days");
    CHECK(noted(std::vector<int>(22, 2)) == "puckering on the left is still there: 2 of 10 on day 21, noted because it is so late");
}

TEST_CASE("what never came down is told as rising, and not as rising again", "[triggers]")
{
    Protocol protocol = defaultProtocol();
    protocol.thresholds.rebound = 0.5;
    const auto told = [&](const std::vector<int>& scores) {
        const auto findings = judged(series(Symptom::pain, Side::left, scores), static_cast<int>(scores.size()) - 1, protocol);
        const Finding* rebound = find(findings, Trigger::rebound);
        return rebound ? explain(*rebound) : "nothing";
    };
    CHECK(told({2, 2, 2, 2, 2, 2, 2, 2, 8, 8}) == "pain on the left rises: 8 of 10 on day 8, the lowest so far was 2");
    CHECK(told({5, 2, 2, 2, 2, 2, 2, 2, 8, 8}) == "pain on the left rises again: 8 of 10 on day 8 after it had come down to 2");
    CHECK(told({2, 5, 4, 2, 2, 2, 2, 2, 8, 8}) == "pain on the left rises again: 8 of 10 on day 8 after it had come down to 2");
}
