// The visit that a call brings forward: which days can be chosen, and what is noted of it where.
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace ebbline;

namespace {

struct Visits {
    screens::DemoClinic clinic;
    std::unique_ptr<app::DeskProgram> program = clinic.program(QStringLiteral("en"));

    deskapp::CallBoard& call() { return *program->call(); }
    QString key(const char* patient) { return deskapp::keyOf(clinic.course(patient)); }
    desk::CourseView course(const char* patient)
    {
        const auto view = program->workplace().desk().course(clinic.course(patient));
        REQUIRE(view);
        return *view;
    }
    /// Whether the day, and the time if there is one, was taken.
    bool move(const char* patient, const char* day, const char* time = "")
    {
        call().startVisit(key(patient));
        call().setVisitDay(QString::fromLatin1(day));
        call().setVisitTime(QString::fromLatin1(time));
        call().broughtForward();
        return !call().isShown();
    }
};

}  // namespace

TEST_CASE("a day that was typed wrong is put right by a later one, up to the latest that was ever agreed", "[desk][call][follow-up]")
{
    Visits at;
    const auto visit = [&] { return deskapp::dateOf(at.course("Tomas Reyl").state->opened->followUp); };
    REQUIRE(visit() == QDate(2027, 4, 6));
    REQUIRE(at.move("Tomas Reyl", "2027-03-23"));  // meant was the 30th
    CHECK_FALSE(at.move("Tomas Reyl", "2027-04-07"));
    CHECK(at.call().visitProblem().contains(QLatin1String("6 April 2027")));
    CHECK(at.move("Tomas Reyl", "2027-03-30"));
    CHECK(visit() == QDate(2027, 3, 30));
    CHECK(at.move("Tomas Reyl", "2027-04-06"));
}

TEST_CASE("where no phone has the course nothing is noted before somebody says so, and the panel says that no phone shows it", "[desk][call][follow-up]")
{
    Visits at;
    constexpr auto petra = "Petra Halden";  // without a phone
    const auto operations = [&] { return at.program->workplace().state().operations; };
    at.call().start(at.key(petra));
    at.call().setNote(QStringLiteral("Not to be noted"));
    at.call().leave();
    const auto before = operations();

    at.call().startVisit(at.key(petra));
    CHECK(at.call().isShown());
    CHECK_FALSE(at.call().asksVisit());
    CHECK(at.call().note() == QLatin1String("Not to be noted"));
    CHECK(at.call().visitUntold().contains(QLatin1String("no phone shows it")));
    CHECK(operations() == before);

    at.call().broughtForward();
    CHECK_FALSE(at.call().isShown());
    at.call().startVisit(at.key("Tomas Reyl"));
    CHECK(at.call().asksVisit());
    CHECK(at.call().visitUntold().toStdString() == "");
}

TEST_CASE("a visit that is brought forward beside one finding answers that one, and no other is touched by it", "[desk][call][follow-up][safety]")
{
    Visits at;
    constexpr auto tomas = "Tomas Reyl";
    std::vector<std::string> open;
    for (const auto& finding : at.course(tomas).findings) {
        if (finding.open) {
            open.push_back(finding.key);
        }
    }
    REQUIRE(open.size() > 1);
    const auto answered = [&] {
        std::vector<std::string> found;
        for (const auto& act : at.course(tomas).state->acts) {
            if (act.act == records::Act::visitBroughtForward) {
                found.push_back(act.finding);
            }
        }
        return found;
    };
    REQUIRE(answered().empty());

    at.call().startVisit(at.key(tomas), QStringLiteral("no/such finding"));
    CHECK_FALSE(at.call().isShown());
    at.call().startVisit(at.key(tomas), QString::fromStdString(open.back()));
    at.call().setVisitDay(QStringLiteral("2027-03-24"));
    at.call().broughtForward();
    CHECK(answered() == std::vector{open.back()});

    REQUIRE(at.move(tomas, "2027-03-25"));  // from the row: all of them
    CHECK(answered().size() == 1 + open.size());
}

TEST_CASE("midnight is no time that is agreed, and the panel says so rather than blame the day", "[desk][call][follow-up]")
{
    Visits at;
    for (const auto* midnight : {"00:00", "0:00"}) {
        CHECK_FALSE(at.move("Tomas Reyl", "2027-03-24", midnight));
        CHECK(at.call().visitProblem().startsWith(QLatin1String("Midnight stands for a day without a time.")));
    }
    CHECK(at.move("Tomas Reyl", "2027-03-24", "0:01"));
}

TEST_CASE("on the last day that a visit may have it can be moved to that one, and later it is too late", "[desk][call][follow-up]")
{
    Visits at;
    at.clinic.clock().advance(std::chrono::days(60 - 6));  // six days after the treatment until now
    at.call().startVisit(at.key("Tomas Reyl"));
    CHECK(at.call().isVisitMovable());
    CHECK(at.call().visitTooLate().toStdString() == "");

    at.clinic.clock().advance(std::chrono::days(1));
    for (const auto* day : {"", "2027-05-15", "2027-05-16", "2027-05-17"}) {
        CHECK_FALSE(at.move("Tomas Reyl", day));
        CHECK_FALSE(at.call().isVisitMovable());
        CHECK(at.call().visitTooLate().contains(QLatin1String("day 60 after the treatment")));
        CHECK(at.call().visitProblem().toStdString() == "");
        CHECK(at.call().visitShows().toStdString() == "");
    }
}
