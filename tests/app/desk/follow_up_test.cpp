// What the page of the follow-up asks before it closes a course.
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using deskapp::AnswerRow;

namespace {

struct FollowUp {
    screens::DemoClinic clinic;
    std::unique_ptr<app::DeskProgram> program = clinic.program(QStringLiteral("en"));
    deskapp::FollowUpEditor& editor = *program->followUp();

    explicit FollowUp(const char* patient)
    {
        program->openFollowUp(deskapp::keyOf(clinic.course(patient)));
        editor.setChange(static_cast<int>(records::GlobalChange::better));
        editor.setSatisfaction(4);
    }
    auto state(const char* patient) { return program->workplace().desk().course(clinic.course(patient)); }
};

}  // namespace

TEST_CASE("whether a course was uncomplicated is said by a person, or it is not recorded", "[desk][followup]")
{
    FollowUp it("Aiko Brandvold");
    CHECK(it.editor.uncomplicated() == 0);
    CHECK(it.editor.missing() == QStringList{QStringLiteral("Say whether the course was uncomplicated.")});
    it.editor.save();
    CHECK_FALSE(it.state("Aiko Brandvold")->state->followUp);

    it.editor.setUncomplicated(1);
    CHECK(it.editor.missing().isEmpty());
    it.editor.save();
    REQUIRE(it.state("Aiko Brandvold")->state->followUp);
    CHECK(it.state("Aiko Brandvold")->state->followUp->uncomplicated);
}

TEST_CASE("a complication that is ticked answers whether the course was uncomplicated", "[desk][followup]")
{
    FollowUp it("Aiko Brandvold");
    it.editor.tick(it.editor.complications()->keyAt(0), true);
    CHECK(it.editor.uncomplicated() == 2);
    CHECK(it.editor.missing().isEmpty());
    it.editor.tick(it.editor.complications()->keyAt(0), false);
    CHECK(it.editor.uncomplicated() == 0);
}

TEST_CASE("each open finding that asked for a call wants an outcome before the course is closed, and is closed with it", "[desk][followup][safety]")
{
    FollowUp it("Tomas Reyl");
    it.editor.setUncomplicated(2);
    const auto rows = it.editor.answers()->rows();
    REQUIRE(rows.size() >= 2);
    CHECK(it.editor.missing().size() == rows.size());
    for (const auto& row : rows) {
        CHECK_FALSE(row.value.value<AnswerRow>().title.isEmpty());
    }
    it.editor.save();
    CHECK_FALSE(it.state("Tomas Reyl")->state->followUp);

    for (const auto& row : rows) {
        it.editor.answer(row.key, static_cast<int>(records::Outcome::treatedInClinic));
    }
    it.editor.answer(QStringLiteral("w/none"), 1);
    CHECK(it.editor.missing().isEmpty());
    const auto before = it.state("Tomas Reyl")->state->acts.size();
    it.editor.save();

    const auto after = it.state("Tomas Reyl");
    REQUIRE(after->state->followUp);
    CHECK(after->state->acts.size() == before + static_cast<std::size_t>(rows.size()));
    CHECK(after->state->acts.back().act == records::Act::closed);
    CHECK(after->state->acts.back().outcome == records::Outcome::treatedInClinic);
}

TEST_CASE("a finding that arrives while the page is open is asked about too", "[desk][followup][safety]")
{
    FollowUp it("Aiko Brandvold");
    it.editor.setUncomplicated(1);
    REQUIRE(it.editor.missing().isEmpty());
    recovery::Entry late;
    late.id = recovery::EntryId{crypto::randomArray<16>()};
    late.course = it.clinic.course("Aiko Brandvold");
    late.at = late.recordedAt = it.program->workplace().now();
    late.present = {recovery::Sign::thickFluid};
    REQUIRE(it.program->workplace().desk().vault().append({records::EntryRecorded{late}}, it.program->workplace().now()));

    it.editor.save();

    CHECK_FALSE(it.state("Aiko Brandvold")->state->followUp);
    CHECK(it.editor.missing().size() == 1);
}
