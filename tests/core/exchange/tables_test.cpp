// What the open tables accept, and how they say what is wrong. Formats: docs/formats/tables.md.

#include "core/exchange/tables.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <fstream>
#include <iterator>

using namespace ebbline;
using namespace ebbline::exchange;
using recovery::Side;
using recovery::Symptom;
using std::chrono::minutes;

namespace {

const std::string scoreHeader = "course,treated_at,entered_at,symptom,side,score\n";

/// One row of scores with one cell replaced.
std::string scoreRow(std::size_t column, const std::string& cell)
{
    std::vector<std::string> cells{"A7", "2027-03-01T10:00:00+01:00", "2027-03-02T20:00:00+01:00", "pain", "L", "3"};
    cells[column] = cell;
    std::string row;
    for (const auto& one : cells)
        row += one + ",";
    row.back() = '\n';
    return row;
}

template <typename Row>
std::string firstProblem(const Read<Row>& read)
{
    return read ? "none" : text(read.error().listed.front());
}

}  // namespace

TEST_CASE("the page on tables lists the word of every sign", "[exchange][tables][docs]")
{
    std::ifstream file(EBBLINE_TABLES_PAGE);
    const std::string page{std::istreambuf_iterator<char>(file), {}};
    const auto listed = page.substr(std::min(page.size(), page.find("## Words of signs")));
    std::size_t rows = 0;
    for (std::size_t at = listed.find("\n| `"); at != std::string::npos; at = listed.find("\n| `", at + 1))
        ++rows;
    CHECK(rows == recovery::allSigns.size());
    for (const recovery::Sign sign : recovery::allSigns) {
        CAPTURE(recovery::word(sign));
        CHECK(listed.find("\n| `" + std::string(recovery::word(sign)) + "` | ") != std::string::npos);
    }
}

TEST_CASE("a row of scores is read with its two moments as they were written", "[exchange][tables]")
{
    const auto read = readScores(scoreHeader
                                 + "A7,2027-03-01T10:00:00+01:00,2027-03-28T20:15:00+02:00,twinges,R,10\r\n"
                                   "A7,2027-03-01T10:00:00+01:00,2027-03-28T20:15:00+02:00,pain,-,0\r\n");

    REQUIRE(read);
    REQUIRE(read->size() == 2);
    CHECK(read->front().course == "A7");
    CHECK(read->front().treatedAt.offset == minutes(60));
    CHECK(read->front().enteredAt.offset == minutes(120));
    CHECK(clock::dayOfRecovery(read->front().treatedAt, read->front().enteredAt) == 27);
    CHECK(read->front().symptom == Symptom::twinges);
    CHECK(read->front().side == Side::right);
    CHECK(read->front().score.points() == 10);
    CHECK(read->back().side == Side::none);
}

TEST_CASE("columns may stand in any order", "[exchange][tables]")
{
    const auto read = readScores("score,side,symptom,course,entered_at,treated_at\n"
                                 "4,L,swelling,x,2027-03-02T20:00Z,2027-03-01T10:00Z\n");

    REQUIRE(read);
    CHECK(read->front().score.points() == 4);
    CHECK(read->front().symptom == Symptom::swelling);
    CHECK(read->front().treatedAt.at < read->front().enteredAt.at);
}

TEST_CASE("a header alone is an empty table", "[exchange][tables]")
{
    const auto read = readScores(scoreHeader);
    REQUIRE(read);
    CHECK(read->empty());
}

TEST_CASE("a header that is not the table's own is refused", "[exchange][tables][errors]")
{
    struct Row {
        std::string header, message;
    };
    const auto row = GENERATE(
        Row{"", "line 1: the header row is missing"},
        Row{"course,treated_at,entered_at,symptom,side\n", "line 1: the column 'score' is missing"},
        Row{"course,treated_at,entered_at,symptom,side,score,mood\n", "line 1, column 7: the column 'mood' is unknown"},
        Row{"course,treated_at,entered_at,symptom,side,score,side\n", "line 1, column 7: the column 'side' stands here twice"},
        Row{"Course,treated_at,entered_at,symptom,side,score\n", "line 1, column 1: the column 'Course' is unknown"},
        Row{"course;treated_at;entered_at;symptom;side;score\n", "line 1, column 1: the column 'course;"});

    const auto read = readScores(row.header);

    CAPTURE(row.header);
    CHECK(firstProblem(read).starts_with(row.message));
}

TEST_CASE("a wrong cell is named by line, column, header word and what was wanted", "[exchange][tables][errors]")
{
    struct Row {
        std::size_t column;
        std::string cell, message;
    };
    const auto row = GENERATE(
        Row{5, "11", "line 2, column 6 (score): want a whole number 0..10, found '11'"},
        Row{5, "-1", "line 2, column 6 (score): want a whole number 0..10, found '-1'"},
        Row{5, "3.5", "line 2, column 6 (score): want a whole number 0..10, found '3.5'"},
        Row{5, "", "line 2, column 6 (score): want a whole number 0..10, found ''"},
        Row{5, " 3", "line 2, column 6 (score): want a whole number 0..10, found ' 3'"},
        Row{5, "99999999999", "line 2, column 6 (score): want a whole number 0..10, found '99999999999'"},
        Row{3, "ache", "line 2, column 4 (symptom): want one of pain swelling bruising tightness twinges puckering numbness, found 'ache'"},
        Row{4, "left", "line 2, column 5 (side): want L, R or -, found 'left'"},
        Row{4, "", "line 2, column 5 (side): want L, R or -, found ''"},
        Row{1, "2027-03-01T10:00:00", "line 2, column 2 (treated_at): want a time like 2027-03-28T14:05:00+02:00, found '2027-03-01T10:00:00'"},
        Row{2, "2027-02-30T10:00:00Z", "line 2, column 3 (entered_at): want a date and time that exist, found '2027-02-30T10:00:00Z'"},
        Row{2, "2027-03-01T09:59:59+01:00", "line 2, column 3 (entered_at): before the treatment of 2027-03-01T10:00:00+01:00"},
        Row{0, "", "line 2, column 1 (course): want a name of 1 to 100 bytes"});

    const auto read = readScores(scoreHeader + scoreRow(row.column, row.cell));

    REQUIRE_FALSE(read);
    CAPTURE(firstProblem(read));
    CHECK(read.error().count == 1);
    CHECK(firstProblem(read).starts_with(row.message));
}

TEST_CASE("an entry at the very moment of the treatment is accepted", "[exchange][tables][boundary]")
{
    CHECK(readScores(scoreHeader + scoreRow(2, "2027-03-01T09:00:00Z")));
}

TEST_CASE("a row with a cell too few or too many is named", "[exchange][tables][errors]")
{
    CHECK(firstProblem(readScores(scoreHeader + "A7,2027-03-01T10:00:00Z\n"))
          == "line 2, column 3: the header has 6 columns, this row 2");
    CHECK(firstProblem(readScores(scoreHeader + scoreRow(5, "3,4")))
          == "line 2, column 7: the header has 6 columns, this row 7");
}

TEST_CASE("a course has one treatment", "[exchange][tables][errors]")
{
    const auto read = readScores(scoreHeader + scoreRow(5, "3") + scoreRow(1, "2027-03-01T10:00:00+02:00"));

    CHECK(firstProblem(read) == "line 3, column 2 (treated_at): differs from line 2, the first row of this course");
}

TEST_CASE("the same treatment told by another clock is no other treatment, and the first row says which day it was", "[exchange][tables]")
{
    const auto read = readScores(scoreHeader + "A7,2027-03-01T00:30:00+01:00,2027-03-02T20:00:00+01:00,pain,L,3\n"
                                 + "A7,2027-02-28T23:30:00Z,2027-03-03T20:00:00+01:00,pain,L,4\n");

    REQUIRE(read);
    CHECK(read->at(1).treatedAt == read->at(0).treatedAt);
    CHECK(clock::dayOfRecovery(read->at(1).treatedAt, read->at(1).enteredAt) == 2);
}

TEST_CASE("a row knows where it was read, wherever its columns stand, and is the same row elsewhere", "[exchange][tables]")
{
    const auto read = readScores("score,course,side,symptom,entered_at,treated_at\n3,A7,L,pain,2027-03-02T20:00:00Z,2027-03-01T10:00:00Z\n"
                                 "3,A8,L,pain,2027-03-02T20:00:00Z,2027-03-01T10:00:00Z\n");
    const auto truth = readTruth("side,kind,course,onset_at\n-,plain,A7,\n");

    REQUIRE(read);
    REQUIRE(truth);
    CHECK(read->at(1).place.line == 3);
    CHECK(read->at(1).place.column == 6);
    CHECK(truth->front().place.line == 2);
    CHECK(truth->front().place.column == 2);
    ScoreRow elsewhere = read->at(1);
    elsewhere.place = {};
    CHECK(elsewhere == read->at(1));
}

TEST_CASE("one stream has one score at one moment, whatever clock it was read from", "[exchange][tables][errors]")
{
    const std::string sameMoment = "A7,2027-03-01T10:00:00+01:00,2027-03-02T19:00:00Z,pain,L,";

    CHECK(readScores(scoreHeader + scoreRow(5, "3") + sameMoment + "3\n"));
    CHECK(firstProblem(readScores(scoreHeader + scoreRow(5, "3") + sameMoment + "4\n"))
          == "line 3, column 6 (score): the same was answered differently for the same moment in line 2");
}

TEST_CASE("all problems are counted and the first twenty listed", "[exchange][tables][errors]")
{
    std::string table = scoreHeader;
    for (int i = 0; i < 25; ++i)
        table += scoreRow(5, "12");

    const auto read = readScores(table);

    REQUIRE_FALSE(read);
    CHECK(read.error().count == 25);
    CHECK(read.error().listed.size() == 20);
    CHECK(text(read.error()).ends_with("and 5 more\n"));
}

TEST_CASE("two faults of one row are both named", "[exchange][tables][errors]")
{
    const auto read = readScores(scoreHeader + "A7,soon,2027-03-02T20:00:00Z,ache,L,3\n");

    REQUIRE_FALSE(read);
    CHECK(read.error().count == 2);
}

TEST_CASE("a sign is answered yes or no, as people and spreadsheets write it", "[exchange][tables]")
{
    const std::string head = "course,treated_at,entered_at,sign,present\nA,2027-03-01T10:00Z,2027-03-02T10:00Z,thick-fluid,";
    const std::string yes = GENERATE("yes", "true", "TRUE", "1", "Yes");
    const std::string no = GENERATE("no", "false", "FALSE", "0");

    const auto present = readSigns(head + yes + "\n");
    const auto absent = readSigns(head + no + "\n");

    REQUIRE(present);
    REQUIRE(absent);
    CHECK(present->front().sign == recovery::Sign::thickFluid);
    CHECK(present->front().present);
    CHECK_FALSE(absent->front().present);
}

TEST_CASE("a sign that is unknown, unanswered or answered both ways is refused", "[exchange][tables][errors]")
{
    const std::string head = "course,treated_at,entered_at,sign,present\n";
    const std::string row = "A,2027-03-01T10:00Z,2027-03-02T10:00Z,";

    CHECK(firstProblem(readSigns(head + row + "pus,yes\n")).starts_with("line 2, column 4 (sign): want one of breathing"));
    CHECK(firstProblem(readSigns(head + row + "vision,\n")) == "line 2, column 5 (present): want yes or no, found ''");
    CHECK(firstProblem(readSigns(head + row + "vision,yes\n" + row + "vision,no\n"))
          == "line 3, column 5 (present): the same was answered differently for the same moment in line 2");
}

TEST_CASE("a temperature is degrees Celsius with a decimal point, and what no thermometer shows is refused", "[exchange][tables][boundary]")
{
    const std::string head = "course,treated_at,entered_at,celsius\n";
    const std::string row = "A,2027-03-01T10:00Z,2027-03-02T10:00Z,";
    const auto read = readTemperatures(head + row + "38.0\n");
    REQUIRE(read);
    REQUIRE(read->size() == 1);
    CHECK(read->front().temperature.celsius() == 38.0);
    CHECK(readTemperatures(head + row + "30\n"));
    CHECK(readTemperatures(head + row + "45\n"));
    for (const char* cell : {"29.9", "45.1", "100.4", "38 C", "3.8e1", "nan", "", "-38"}) {
        CAPTURE(cell);
        CHECK(firstProblem(readTemperatures(head + row + cell + "\n"))
              == "line 2, column 4 (celsius): want degrees Celsius from 30 to 45, such as 38.2, found '" + std::string(cell) + "'");
    }
    CHECK(readTemperatures(head + row + "38.2\n" + row + "38.2\n"));
    CHECK(firstProblem(readTemperatures(head + row + "38.2\n" + row + "37.2\n"))
          == "line 3, column 4 (celsius): the same was answered differently for the same moment in line 2");
}

TEST_CASE("truth tells plain courses and complications with their onset and side", "[exchange][tables]")
{
    const auto read = readTruth("course,kind,onset_at,side\nA,plain,,-\nB,haematoma,2027-03-01T18:00:00+01:00,L\n"
                                "B,infection,2027-03-06T08:00:00+01:00,R\nC,slow,,\n");

    REQUIRE(read);
    REQUIRE(read->size() == 4);
    CHECK(read->at(0).kind == plainKind);
    CHECK_FALSE(read->at(0).onsetAt);
    CHECK(read->at(1).side == Side::left);
    CHECK(read->at(1).onsetAt);
    CHECK(read->at(3).side == Side::none);
}

TEST_CASE("truth that contradicts itself is refused", "[exchange][tables][errors]")
{
    struct Row {
        std::string rows, message;
    };
    const auto row = GENERATE(
        Row{"A,plain,2027-03-01T18:00:00Z,-\n", "line 2, column 3 (onset_at): an uncomplicated course has no onset"},
        Row{"A,plain,,-\nA,slow,,-\n", "line 3, column 2 (kind): this course was told in line 2 already"},
        Row{"A,slow,,-\nA,plain,,-\n", "line 3, column 2 (kind): this course was told in line 2 already"},
        Row{"A,plain,,-\nA,plain,,-\n", "line 3, column 2 (kind): this course was told in line 2 already"},
        Row{"A,Slow,,-\n", "line 2, column 2 (kind): want a lower-case word, found 'Slow'"},
        Row{"A,slow,soon,-\n", "line 2, column 3 (onset_at): want a time like"},
        Row{"A,slow,,both\n", "line 2, column 4 (side): want L, R or -, found 'both'"});

    CHECK(firstProblem(readTruth("course,kind,onset_at,side\n" + row.rows)).starts_with(row.message));
}

TEST_CASE("risks known beforehand stand by course, and what is no risk is named with its place", "[exchange][tables][errors]")
{
    const auto read = readRisks("risk,course\n0.02,A7\n0.999,\"B, 8\"\n");
    REQUIRE(read);
    CHECK(*read == std::vector<RiskRow>{{"A7", 0.02}, {"B, 8", 0.999}});

    for (const char* cell : {"0", "1", "5", "-0.1", "", "5 %", "0,05", "nan", "inf", "1e-3"}) {
        CAPTURE(cell);
        CHECK(firstProblem(readRisks("course,risk\nA,\"" + std::string(cell) + "\"\n"))
              == "line 2, column 2 (risk): want a risk above 0 and below 1, such as 0.05, found '" + std::string(cell) + "'");
    }
    CHECK(firstProblem(readRisks("course,risk\nA,0.1\nA,0.1\n")) == "line 3, column 1 (course): this course was told in line 2 already");
    CHECK_FALSE(readRisks("course,risk,kind\nA,0.1,plain\n"));
    CHECK_FALSE(readRisks(""));
}

TEST_CASE("a finding is read back with its urgency, symptom and reason", "[exchange][tables]")
{
    const std::vector<FindingRow> rows{
        {"A", {clock::Instant{}, minutes(-570), {}}, "rebound", recovery::Urgency::callNow, Symptom::pain, Side::left,
         "Pain rises again: 6 on day 5, after 2."},
        {"A", {clock::Instant{}, minutes(0), {}}, "fever", recovery::Urgency::emergency, std::nullopt, Side::none,
         "=temperature, \"38.2\" C"}};

    const std::string table = writeFindings(rows);
    const auto read = readFindings(table);

    CHECK(table.find(",'=temperature") == std::string::npos);
    CHECK(table.find("\"'=temperature, \"\"38.2\"\" C\"") != std::string::npos);
    REQUIRE(read);
    CHECK(*read == rows);
}
