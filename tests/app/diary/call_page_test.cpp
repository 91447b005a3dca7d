// Whom to call without a warning: the signs of the rules, and the number of the place.
#include "app/diary/model/emergency_numbers.h"
#include "app/diary/model/words.h"
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;
using recovery::Sign;
using screens::DemoPatient;

TEST_CASE("whom to call names each sign that the rules call for, in the words of an entry", "[diary][call][safety]")
{
    DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));  // nothing joined, nothing opened
    program->openCall();
    auto& board = *program->warning();
    for (const Sign sign : recovery::allSigns) {
        CAPTURE(std::string(recovery::word(sign)));
        recovery::Entry entry;
        entry.present = {sign};
        entry.at.at += std::chrono::hours(100);
        const auto urgency = warnings::mostUrgent(warnings::judge(entry, {}));
        const QString words = diaryapp::signQuestion(sign);
        CHECK(board.emergencySigns().contains(words) == (urgency == recovery::Urgency::emergency));
        CHECK(board.callSigns().contains(words) == (urgency == recovery::Urgency::callNow));
    }
    CHECK(board.emergencySigns().size() == 7);
    CHECK(board.emergencySigns().first() == QLatin1String("It is hard to breathe, or I can not swallow my spit."));
    CHECK(board.callSigns().contains(QLatin1String("Pain is 7 of 10 or more.")));
}

TEST_CASE("before a clinic is joined, the emergency number is that of the phone's region, each with its place", "[diary][call][safety]")
{
    DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    auto& board = *program->warning();
    program->openCall();
    const auto [region, number, title] = GENERATE(std::tuple(QLocale::Germany, "112", "Emergency number (European Union)"),
                                                  std::tuple(QLocale::UnitedKingdom, "999", "Emergency number (United Kingdom)"),
                                                  std::tuple(QLocale::UnitedStates, "911", "Emergency number (United States)"),
                                                  std::tuple(QLocale::Turkey, "112", "Ambulance (Turkey)"),
                                                  std::tuple(QLocale::China, "120", "Ambulance (China)"),
                                                  std::tuple(QLocale::Brazil, "192", "Ambulance (Brazil)"),
                                                  std::tuple(QLocale::Switzerland, "144", "Ambulance (Switzerland)"));
    board.setRegion(region);
    REQUIRE(board.calls().size() == 1);
    CHECK(board.calls().first().number == QLatin1String(number));
    CHECK(board.calls().first().title == QLatin1String(title));
    CHECK_FALSE(board.callHint().isEmpty());
    CHECK_FALSE(board.isChoosingPlace());
}

TEST_CASE("in a region whose number is not known, all that are known stand there with their places", "[diary][call][safety]")
{
    const auto region = GENERATE(QLocale::AnyTerritory, QLocale::Antarctica);
    DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    program->warning()->setRegion(region);
    CHECK(program->warning()->isChoosingPlace());  // none of them is filled, as if it were hers
    const auto numbers = diaryapp::emergencyNumbersIn(region);
    CHECK(numbers.size() == 7);
    for (const auto& number : numbers)
        CHECK(number.title.contains(QLatin1Char('(')));
}

TEST_CASE("once a clinic is joined, its own emergency number stands there and no other", "[diary][call]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->warning()->setRegion(QLocale::UnitedStates);
    program->openCall();
    QStringList numbers;
    for (const auto& call : program->warning()->calls())
        numbers << call.number;
    CHECK(numbers == QStringList{"+00 555 0100", "+00 555 0199", "112"});
    CHECK(program->warning()->callHint().isEmpty());
}
