// What the reader of comma-separated text accepts, and where it says that a text is wrong.
//
// Source: RFC 4180, Y. Shafranovich, "Common Format and MIME Type for Comma-Separated Values
// (CSV) Files", 2005, section 2, rules 1 to 7. The guard against formulas follows the OWASP page
// "CSV Injection" (from memory).

#include "core/exchange/csv.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <rapidcheck.h>

using namespace ebbline::exchange;

namespace {

using Rows = std::vector<std::vector<std::string>>;

struct Outcome {
    Rows rows;
    std::vector<Problem> problems;
};

Outcome all(std::string_view csv)
{
    Outcome outcome;
    CsvReader reader(csv);
    for (;;) {
        const auto step = reader.next();
        if (step == CsvReader::Step::end)
            return outcome;
        if (step == CsvReader::Step::record)
            outcome.rows.push_back(reader.cells());
        else
            outcome.problems.push_back(reader.problem());
    }
}

}  // namespace

TEST_CASE("lines end with CRLF or LF, and the last one need not end at all", "[exchange][csv]")
{
    const std::string csv = GENERATE("aaa,bbb\r\nzzz,yyy\r\n", "aaa,bbb\r\nzzz,yyy", "aaa,bbb\nzzz,yyy\n",
                                     "\xef\xbb\xbf" "aaa,bbb\nzzz,yyy\n\n\r\n");

    const Outcome outcome = all(csv);

    CHECK(outcome.problems.empty());
    CHECK(outcome.rows == Rows{{"aaa", "bbb"}, {"zzz", "yyy"}});
}

TEST_CASE("a quoted cell keeps commas, line breaks and doubled quotes", "[exchange][csv]")
{
    const Outcome outcome = all("\"aaa\",\"b\r\nbb\",\"c\"\"c,\"\r\nzzz,\"\",\r\n");

    CHECK(outcome.problems.empty());
    CHECK(outcome.rows == Rows{{"aaa", "b\r\nbb", "c\"c,"}, {"zzz", "", ""}});
}

TEST_CASE("spaces belong to the cell", "[exchange][csv]")
{
    CHECK(all(" a , b\n").rows == Rows{{" a ", " b"}});
}

TEST_CASE("nothing is no record, and an empty first line is named", "[exchange][csv]")
{
    CHECK(all("").rows.empty());
    CHECK(all("\n\n").problems.empty());
    const Outcome outcome = all("\na\n");
    REQUIRE(outcome.problems.size() == 1);
    CHECK(outcome.problems[0].line == 1);
    CHECK(outcome.rows == Rows{{"a"}});
}

TEST_CASE("what is not RFC 4180 is refused with its line and column", "[exchange][csv][errors]")
{
    struct Row {
        std::string csv;
        std::size_t line, column;
        std::string reason;
    };
    const auto row = GENERATE(
        Row{"a,b\nc,d\"e\n", 2, 2, "a quote inside a cell"},
        Row{"a,b\n\"c\"x,d\n", 2, 1, "characters after the quote"},
        Row{"a,b\nc,\"d\ne\n", 2, 2, "never closed"},
        Row{"a,b\rc,d\n", 1, 2, "carriage return without a line feed"},
        Row{"\"a\"\rb\n", 1, 1, "carriage return without a line feed"},
        Row{"a,b\n\nc,d\n", 2, 0, "empty line"},
        Row{"a,b\nc,\xff\n", 2, 2, "not UTF-8"},
        Row{"a,b\nc,\xc0\xaf\n", 2, 2, "not UTF-8"},
        Row{std::string("a,b\nc,d\0e\n", 10), 2, 2, "not UTF-8"},
        Row{"a,b\n\"c\nc\",d\n\"e,f\n", 4, 1, "never closed"},
        Row{"a\n" + std::string(maximumCellBytes + 1, 'x') + "\n", 2, 1, "longer than"},
        Row{"a\n" + std::string(maximumColumns, ',') + "\n", 2, 64, "more than 64 cells"});

    const Outcome outcome = all(row.csv);

    CAPTURE(row.csv.substr(0, 60));
    REQUIRE(outcome.problems.size() == 1);
    CHECK(outcome.problems[0].line == row.line);
    CHECK(outcome.problems[0].column == row.column);
    CHECK(outcome.problems[0].reason.find(row.reason) != std::string::npos);
}

TEST_CASE("after a wrong line the next ones are read", "[exchange][csv][errors]")
{
    const Outcome outcome = all("a,b\n\"c\"x,d\ne,f\ng,h\"\ni,j\n");

    CHECK(outcome.problems.size() == 2);
    CHECK(outcome.rows == Rows{{"a", "b"}, {"e", "f"}, {"i", "j"}});
}

TEST_CASE("a message names line, column and header word", "[exchange][csv]")
{
    CHECK(text(Problem{7, 6, "score", "want 0..10"}) == "line 7, column 6 (score): want 0..10");
    CHECK(text(Problem{7, 6, "", "an odd cell"}) == "line 7, column 6: an odd cell");
    CHECK(text(Problem{1, 0, "", "no header"}) == "line 1: no header");
}

TEST_CASE("a cell in a message is short, on one line and whole characters only", "[exchange][csv]")
{
    CHECK(quotedCell("x") == "'x'");
    CHECK(quotedCell("a\x1b[2J\nb") == "'a?[2J?b'");
    CHECK(quotedCell(std::string(50, 'x')) == "'" + std::string(40, 'x') + "...'");
    CHECK(quotedCell(std::string(39, 'x') + "\xc3\xa9y") == "'" + std::string(39, 'x') + "...'");
}

TEST_CASE("text that a spreadsheet would run gets an apostrophe in front", "[exchange][csv][injection]")
{
    CHECK(guarded("=1+1") == "'=1+1");
    CHECK(guarded("+4930") == "'+4930");
    CHECK(guarded("-2") == "'-2");
    CHECK(guarded("@x") == "'@x");
    CHECK(guarded("\tx") == "'\tx");
    CHECK(guarded("\rx") == "'\rx");
    CHECK(guarded("'=x") == "''=x");
    CHECK(guarded("a=1") == "a=1");
    CHECK(guarded("'tis") == "'tis");
    CHECK(guarded("") == "");
    CHECK(unguarded("'tis") == "'tis");
    CHECK(unguarded("'") == "'");
}

TEST_CASE("every guarded text comes back as it was and starts no formula", "[exchange][csv][property]")
{
    CHECK(rc::check("guard and back", [] {
        const auto text = *rc::gen::container<std::string>(rc::gen::element('=', '+', '-', '@', '\t', '\'', 'a', ' '));
        const std::string cell = guarded(text);
        RC_ASSERT(unguarded(cell) == text);
        RC_ASSERT(cell.empty() || std::string_view("=+-@\t\r\n").find(cell.front()) == std::string_view::npos);
    }));
}

TEST_CASE("cells written are the cells read", "[exchange][csv][property]")
{
    CHECK(rc::check("write and read", [] {
        const auto cell = rc::gen::container<std::string>(
            rc::gen::element('a', 'z', ',', '"', '\r', '\n', ' ', '0', '\'', ';'));
        const auto [first, second, third] = *rc::gen::tuple(cell, cell, cell);
        CsvWriter writer;
        writer.row({first, second, third}).row({third, "end", first});

        const Outcome outcome = all(std::move(writer).take());

        RC_ASSERT(outcome.problems.empty());
        RC_ASSERT((outcome.rows == Rows{{first, second, third}, {third, "end", first}}));
    }));
}

TEST_CASE("any bytes end the reader without a fault of its own", "[exchange][csv][property]")
{
    CHECK(rc::check("arbitrary bytes", [] {
        const auto noise = *rc::gen::container<std::string>(
            rc::gen::oneOf(rc::gen::element(',', '"', '\r', '\n'), rc::gen::arbitrary<char>()));
        const Outcome outcome = all(noise);
        RC_ASSERT(outcome.rows.size() + outcome.problems.size() <= noise.size());
        for (const Problem& problem : outcome.problems)
            RC_ASSERT(problem.line >= 1 && !problem.reason.empty());
    }));
}
