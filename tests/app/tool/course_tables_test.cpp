// Tables as courses and the way back.

#include "app/tool/course_tables.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <filesystem>
#include <random>

using namespace ebbline;
using namespace ebbline::tool;

namespace {

const std::string header = "course,treated_at,entered_at,symptom,side,score\n";

std::vector<exchange::ScoreRow> scores(const std::string& rows)
{
    const auto read = exchange::readScores(header + rows);
    REQUIRE(read);
    return *read;
}

}  // namespace

TEST_CASE("an invented course survives its tables", "[tool][tables]")
{
    const auto model = GENERATE(rehearsal::Model::decay, rehearsal::Model::steps);
    const auto rhythm = GENERATE(rehearsal::Rhythm::mixed, rehearsal::Rhythm::daily, rehearsal::Rhythm::twice, rehearsal::Rhythm::plan);
    std::size_t silentOnDayZero = 0;
    for (int number = 0; number < 60; ++number) {
        CAPTURE(number);
        const auto kind = rehearsal::allKinds[static_cast<std::size_t>(number) % rehearsal::allKinds.size()];
        const auto course = rehearsal::invent({model, rhythm, 4}, kind, number);

        const auto back = knownCourses(scoreRowsOf(course), {truthRowOf(course)});

        REQUIRE(back);
        REQUIRE(back->size() == 1);
        CHECK(back->front().name == course.name);
        CHECK(back->front().input.baseline == course.input.baseline);
        const auto& written = course.input.observations;
        REQUIRE(back->front().input.observations.size() == written.size());
        for (std::size_t i = 0; i < written.size(); ++i) {
            CHECK(back->front().input.observations[i].at.at == written[i].at.at);
            CHECK(back->front().input.observations[i].scores == written[i].scores);
        }
        CHECK(back->front().truth.kind == course.truth.kind);
        CHECK(back->front().truth.side == course.truth.side);
        if (!written.empty() && clock::dayOfRecovery(course.input.treated, written.front().at) > 0)
            ++silentOnDayZero;
    }
    CHECK(silentOnDayZero > 0);
}

TEST_CASE("scores entered at the moment of the treatment are the practitioner's", "[tool][tables]")
{
    const auto courses = coursesOf(scores("a,2027-03-01T10:00:00+01:00,2027-03-01T10:00:00+01:00,swelling,L,3\n"
                                          "a,2027-03-01T10:00:00+01:00,2027-03-01T20:00:00+01:00,swelling,L,4\n"));

    CHECK(courses.at("a").baseline.size() == 1);
    CHECK(courses.at("a").observations.size() == 1);
}

TEST_CASE("they are no entry, also where the patient wrote nothing on day 0", "[tool][tables]")
{
    const auto courses = coursesOf(scores("a,2027-03-01T10:00:00+01:00,2027-03-01T10:00:00+01:00,swelling,L,3\n"
                                          "a,2027-03-01T10:00:00+01:00,2027-03-02T10:00:00+01:00,swelling,L,4\n"));

    CHECK(courses.at("a").baseline.size() == 1);
    CHECK(courses.at("a").observations.size() == 1);
}

TEST_CASE("of two complications the one that began first is the truth", "[tool][tables]")
{
    const auto rows = scores("a,2027-03-01T10:00:00+01:00,2027-03-01T20:00:00+01:00,pain,L,3\n");
    const auto truth = exchange::readTruth("course,kind,onset_at,side\n"
                                           "a,infection,2027-03-07T10:00:00+01:00,L\n"
                                           "a,haematoma,2027-03-02T10:00:00+01:00,R\n");
    REQUIRE(truth);

    const auto courses = knownCourses(rows, *truth);

    REQUIRE(courses);
    CHECK(courses->front().truth.kind == "haematoma");
    CHECK(courses->front().truth.side == recovery::Side::right);
}

TEST_CASE("scores without a truth, or a truth without scores, are refused by the course's name", "[tool][tables][errors]")
{
    const auto rows = scores("a,2027-03-01T10:00:00+01:00,2027-03-01T20:00:00+01:00,pain,L,3\n");
    const auto truth = exchange::readTruth("course,kind,onset_at,side\na,plain,,-\nb,plain,,-\n");
    REQUIRE(truth);

    const auto without = knownCourses(rows, {});
    REQUIRE_FALSE(without);
    CHECK(without.error().detail.find("'a'") != std::string::npos);
    const auto extra = knownCourses(rows, *truth);
    REQUIRE_FALSE(extra);
    CHECK(extra.error().detail.find("'b'") != std::string::npos);
}

TEST_CASE("an onset of which no row can speak is refused by line and course", "[tool][tables][errors]")
{
    const auto rows = scores("a,2027-03-01T10:00:00+01:00,2027-03-01T20:00:00+01:00,pain,L,3\n"
                             "b,2027-03-01T10:00:00+01:00,2027-03-01T20:00:00+01:00,pain,L,3\n"
                             "b,2027-03-01T10:00:00+01:00,2027-04-20T20:00:00+02:00,pain,L,3\n");
    const auto told = [&](const std::string& onset) {
        const auto truth = exchange::readTruth("course,kind,onset_at,side\na,plain,,-\nb,infection," + onset + ",L\n");
        REQUIRE(truth);
        return knownCourses(rows, *truth);
    };
    for (const char* onset : {"1999-03-05T10:00:00+01:00", "2027-03-01T09:59:59+01:00", "2099-03-05T10:00:00+01:00", "2027-04-20T20:00:01+02:00"}) {
        CAPTURE(onset);
        const auto refused = told(onset);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().reason == Reason::outOfRange);
        CHECK(refused.error().detail.find("line 3") != std::string::npos);
        CHECK(refused.error().detail.find("'b'") != std::string::npos);
    }
    for (const char* onset : {"", "2027-03-01T10:00:00+01:00", "2027-04-20T20:00:00+02:00"})
        CHECK(told(onset));
    // Who stops writing and then falls ill was missed, and is no fault of the table.
    const auto missed = exchange::readTruth("course,kind,onset_at,side\na,infection,2027-03-06T10:00:00+01:00,L\nb,plain,,-\n");
    REQUIRE(missed);
    CHECK(knownCourses(rows, *missed));
}

TEST_CASE("a misspelt kind is refused by line and column with the kinds there are, and another complication has a form of its own",
          "[tool][tables][errors]")
{
    const auto rows = scores("a,2027-03-01T10:00:00+01:00,2027-03-01T20:00:00+01:00,pain,L,3\n"
                             "b,2027-03-01T10:00:00+01:00,2027-03-01T20:00:00+01:00,pain,L,3\n");
    const auto told = [&](const std::string& kind) {
        const auto truth = exchange::readTruth("course,onset_at,kind,side\na,,plain,-\nb,," + kind + ",-\n");
        REQUIRE(truth);
        return knownCourses(rows, *truth);
    };
    for (const char* kind : {"plian", "measles", "other", "other-"}) {
        CAPTURE(kind);
        const auto refused = told(kind);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().reason == Reason::malformed);
        CHECK(refused.error().detail.starts_with("table of truth, line 3, column 3 (kind): want one of plain infection haematoma "));
        CHECK(refused.error().detail.ends_with("found '" + std::string(kind) + "'"));
    }
    for (const auto kind : rehearsal::rareKinds)
        CHECK(told(std::string(rehearsal::word(kind))));
    const auto other = told("other-seroma");
    REQUIRE(other);
    CHECK(other->at(1).truth.kind == "other-seroma");
    CHECK_FALSE(other->at(1).truth.isPlain());
}

TEST_CASE("tables that belong together are replaced all or none", "[tool][tables][errors]")
{
    namespace fs = std::filesystem;
    const fs::path folder = fs::temp_directory_path() / ("ebbline-tables-" + std::to_string(std::random_device{}()));
    REQUIRE(fs::create_directory(folder));
    const std::string scores = folder / "s.csv", truth = folder / "t.csv";
    REQUIRE(writeFiles({{scores, "old scores"}, {truth, "old truth"}}));

    for (const std::string& nowhere : {std::string(folder / "none" / "t.csv"), folder.string(), std::string("/dev/full")}) {
        CAPTURE(nowhere);
        const Done done = writeFiles({{scores, "new scores"}, {nowhere, "new truth"}});
        REQUIRE_FALSE(done);
        CHECK(done.error().reason == Reason::storageFailed);
        CHECK(done.error().detail.starts_with(nowhere + ": "));
        CHECK(readFile(scores) == "old scores");
        CHECK_FALSE(fs::exists(scores + ".part"));
    }
    REQUIRE(writeFiles({{scores, "new scores"}, {truth, "new truth"}}));
    CHECK(readFile(scores) == "new scores");
    CHECK(readFile(truth) == "new truth");
    fs::remove_all(folder);
}

TEST_CASE("a table that the tool would not read again is refused with roughly how many courses fit", "[tool][tables][errors]")
{
    CHECK(checkReadable("s.csv", 0, 0, 0));
    CHECK(checkReadable("s.csv", maximumTable, exchange::maximumTableRows, 10'000));
    // One byte or one row more than fits: all the courses but for the rounding.
    constexpr std::size_t most = exchange::maximumTableRows;
    struct Row { std::uintmax_t bytes; std::size_t rows, courses; const char* fitting; };
    for (const Row& row : {Row{maximumTable + 1, 1, 10'000, "about 9900 such"}, Row{8 * maximumTable, 1, 100'000, "about 12000 such"},
                           Row{2 * maximumTable, 1, 15, "about 7 such"}, Row{maximumTable * 1000, 1, 100, "about 0 such"},
                           Row{1, most + 1, 10'000, "about 9900 such"}, Row{2 * maximumTable, 4 * most, 100'000, "about 25000 such"}}) {
        CAPTURE(row.bytes, row.rows, row.courses);
        const Done refused = checkReadable("s.csv", row.bytes, row.rows, row.courses);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().reason == Reason::tooLarge);
        CHECK(refused.error().detail.starts_with("s.csv: would be larger than the 256 MiB or have more than the 4000000 rows that ebbline reads again; "));
        CHECK(refused.error().detail.find(row.fitting) != std::string::npos);
    }
}

TEST_CASE("what the tool may write is what it reads", "[tool][tables][errors]")
{
    namespace fs = std::filesystem;
    // A file of holes: as large as it says, and on the disk hardly anything.
    const fs::path file = fs::temp_directory_path() / ("ebbline-large-" + std::to_string(std::random_device{}()));
    REQUIRE(writeFile(file.string(), "x"));
    fs::resize_file(file, maximumTable + 1);
    const auto refused = readFile(file.string());
    fs::remove(file);

    REQUIRE_FALSE(refused);
    CHECK(refused.error().reason == Reason::tooLarge);
    CHECK_FALSE(checkReadable(file.string(), maximumTable + 1, 1, 1));
}

TEST_CASE("a file that is not there is named and not thrown about", "[tool][tables][errors]")
{
    const auto read = readFile("/nowhere/at/all.csv");

    REQUIRE_FALSE(read);
    CHECK(read.error().reason == Reason::notFound);
    CHECK_FALSE(writeFile("/nowhere/at/all.csv", "x"));
}
