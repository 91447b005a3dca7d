// Whom to call without a warning: the signs of the rules, and the number of the place.
#include "app/diary/model/dial.h"
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

TEST_CASE("a phone is where its time zone is, whatever language it speaks; where the zone says nothing its settings do", "[diary][call][safety]")
{
    using diaryapp::regionOf;
    CHECK(regionOf(QTimeZone("Europe/Berlin"), QLocale::UnitedStates) == QLocale::Germany);
    CHECK(regionOf(QTimeZone("America/New_York"), QLocale::Germany) == QLocale::UnitedStates);
    CHECK(regionOf(QTimeZone("Etc/UTC"), QLocale::Brazil) == QLocale::Brazil);
    CHECK(regionOf(QTimeZone(), QLocale::Turkey) == QLocale::Turkey);
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

namespace {

QStringList numbersOf(app::DiaryProgram& program)
{
    QStringList numbers;
    for (const auto& call : program.warning()->calls())
        numbers << call.number;
    return numbers;
}

}  // namespace

TEST_CASE("once a clinic is joined, its own emergency number stands there, and that another place has another", "[diary][call][safety]")
{
    // Of the same number, of none that is known, and of several.
    const auto region = GENERATE(QLocale::Germany, QLocale::Turkey, QLocale::AnyTerritory, QLocale::Antarctica);
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->warning()->setRegion(region);
    program->openCall();
    CHECK(numbersOf(*program) == QStringList{"+00 555 0100", "+00 555 0199", "112"});
    CHECK(program->warning()->callHint() == QLatin1String("You are in another place? Call the emergency number of that place."));
}

TEST_CASE("where the phone's region has another emergency number than the clinic, it stands right behind the clinic's, with its place", "[diary][call][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    auto& board = *program->warning();
    board.setRegion(QLocale::UnitedStates);
    program->openCall();
    CHECK(numbersOf(*program) == QStringList{"+00 555 0100", "+00 555 0199", "112", "911"});
    CHECK(board.calls().last().title == QLatin1String("Emergency number (United States)"));
    CHECK(board.calls().last().emergency);

    patient.setOffline(true);
    DemoPatient::tellSign(*program, Sign::breathing);
    REQUIRE(board.isEmergency());
    CHECK(numbersOf(*program) == QStringList{"112", "911", "+00 555 0100", "+00 555 0199"});
    CHECK_FALSE(board.isChoosingPlace());
    CHECK_FALSE(board.callHint().isEmpty());
}

TEST_CASE("a number is dialled as it is meant, however it is written", "[diary][call][safety]")
{
    const auto [written, dialled] = GENERATE(
        std::pair("112", "112"), std::pair("+00 555\u00a00100", "+005550100"), std::pair("(030) 12-34", "0301234"),
        std::pair("+49 (0)30 1234", "+49301234"), std::pair("(+49) ( 0 ) 30 1234", "+49301234"), std::pair("0049 (0)30 1234", "0049301234"),
        std::pair("(0)30 1234", "0301234"), std::pair("030 12+34", "0301234"),
        std::pair("030 12 / 0171 34", "03012"), std::pair("030 123456 / 57", "030123456"), std::pair("+49 30 12; +49 171 34", "+493012"),
        std::pair("030 12, 0171 34", "03012"), std::pair("day / 030 12", "03012"), std::pair("030/1234567", "0301234567"),
        std::pair("030/+49171", "030"), std::pair("+49/30/1234", "+49301234"), std::pair("0049/30/1234", "0049301234"),
        std::pair("035341/1234", "0353411234"), std::pair("٠٣٠ ١٢٣٤", "0301234"), std::pair("٠٣٠ ١٢، ٠١٧١ ٣٤", "03012"),
        std::pair("＋８６ （０）１０ １２", "+861012"), std::pair("\u2066+00 555\u2069", "+00555"), std::pair("", ""), std::pair("none", ""));
    CAPTURE(written);
    CHECK(diaryapp::dialable(QString::fromUtf8(written)).toStdString() == dialled);
}
