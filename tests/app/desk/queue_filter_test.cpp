// What of the queue is shown, and that nothing urgent goes out of sight unsaid.
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using deskapp::QueueRow;

namespace {

QStringList namesOf(deskapp::QueueBoard& board)
{
    QStringList names;
    for (const auto& row : board.rows()->rows()) {
        names << row.value.value<QueueRow>().name;
    }
    return names;
}

/// The treatment anew, with another name on it.
void placedBy(app::DeskProgram& program, const recovery::CourseId& course, const std::string& name)
{
    auto& desk = program.workplace().desk();
    auto treatment = desk.course(course)->state->treatment->treatment;
    treatment.placedBy = name;
    program.workplace().settle(desk.recordTreatment(treatment));
}

int optionWith(const QStringList& options, const QString& name)
{
    for (int i = 0; i < options.size(); ++i) {
        if (options[i].contains(name)) {
            return i;
        }
    }
    return -1;
}

}  // namespace

TEST_CASE("the queue shows one operator's patients, with counts, and one touch shows all again", "[desk][queue][filter]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& queue = *program->queue();
    auto& filter = *queue.filter();
    placedBy(*program, clinic.course("Odile Brandt"), "Dr Mara Lindqvist");
    const auto all = namesOf(queue);
    REQUIRE(all.size() == 6);
    CHECK(filter.chips().isEmpty());

    const int mara = optionWith(filter.placedOptions(), QStringLiteral("Mara"));
    REQUIRE(mara > 0);
    CHECK(filter.placedOptions()[mara] == QLatin1String("Dr Mara Lindqvist: 1"));
    filter.choosePlaced(mara);

    CHECK(namesOf(queue) == QStringList{QStringLiteral("Odile Brandt")});
    REQUIRE(filter.chips().size() == 1);
    CHECK(filter.chips().front().contains(QLatin1String("Dr Mara Lindqvist: 1")));
    CHECK(filter.placed() == mara);
    filter.takeOff(0);
    CHECK(namesOf(queue) == all);
}

TEST_CASE("filters by operator, by who took the row and by day combine, and each goes alone", "[desk][queue][filter]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& queue = *program->queue();
    auto& filter = *queue.filter();
    queue.take(deskapp::keyOf(clinic.course("Odile Brandt")));
    queue.take(deskapp::keyOf(clinic.course("Ines Varga")));

    filter.chooseTaken(optionWith(filter.takenOptions(), QStringLiteral("Mara")));
    auto taken = namesOf(queue);
    taken.sort();
    CHECK(taken == QStringList{QStringLiteral("Ines Varga"), QStringLiteral("Odile Brandt")});

    filter.chooseDays(optionWith(filter.dayOptions(), QStringLiteral("8 to 14")));
    CHECK(namesOf(queue) == QStringList{QStringLiteral("Ines Varga")});
    CHECK(filter.chips().size() == 2);

    filter.takeOff(0);
    CHECK(filter.chips().size() == 1);
    for (const auto& row : queue.rows()->rows()) {
        const auto day = row.value.value<QueueRow>().day;
        CHECK((day == QLatin1String("Day 8") || day == QLatin1String("Day 9")));
    }
}

TEST_CASE("an emergency that a filter hides is said, and shown with one touch", "[desk][queue][filter][safety]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& queue = *program->queue();
    CHECK(queue.hiddenUrgent().isEmpty());
    int urgent = 0, overdueOfWorkingDays = 0;
    for (const auto& row : queue.rows()->rows()) {
        const auto words = row.value.value<QueueRow>();
        urgent += words.urgency <= 2 || !words.overdue.isEmpty() ? 1 : 0;
        overdueOfWorkingDays += words.urgency == 3 && !words.silent && !words.overdue.isEmpty() ? 1 : 0;
    }
    REQUIRE(urgent >= 2);
    REQUIRE(overdueOfWorkingDays >= 1);

    const auto said = [&](int count) { return queue.hiddenUrgent().startsWith(QString::number(count) + QLatin1String(" urgent row")); };
    queue.filter()->chooseDays(optionWith(queue.filter()->dayOptions(), QStringLiteral("After day 21")));
    CHECK(queue.rows()->rowCount() == 0);
    CHECK(said(urgent));
    queue.filter()->takeAllOff();
    CHECK(queue.hiddenUrgent().isEmpty());

    queue.setUrgencyFilter(3);
    CHECK(said(urgent - overdueOfWorkingDays));
    queue.setWhose(1);
    queue.setSearch(QStringLiteral("no such"));
    queue.filter()->chooseDays(1);
    CHECK(said(urgent));

    queue.showAll();
    CHECK(queue.hiddenUrgent().isEmpty());
    CHECK(queue.rows()->rowCount() == 6);
    CHECK(queue.search().isEmpty());
    CHECK(queue.urgencyFilter() == 0);
    CHECK(queue.whose() == 0);
    CHECK(queue.filter()->chips().isEmpty());
}

TEST_CASE("a filter holds for one sitting: not over a lock, and not for the next person", "[desk][queue][filter]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& queue = *program->queue();
    queue.filter()->chooseDays(2);
    queue.setUrgencyFilter(4);
    program->choosePerson(QStringLiteral("Ilan Osei"));
    CHECK(queue.filter()->chips().isEmpty());
    CHECK(queue.rows()->rowCount() == 6);

    queue.filter()->chooseDays(2);
    queue.filter()->setChoosing(true);
    program->lock();
    CHECK(queue.filter()->chips().isEmpty());
    CHECK_FALSE(queue.filter()->isChoosing());
    CHECK(queue.filter()->takenOptions().size() == 1);
    REQUIRE(program->workplace().unlock(bytes::viewOf(screens::DemoClinic::passphrase)));
    CHECK(queue.rows()->rowCount() == 6);
}
