// Laws of the open tables: what is written is what is read, and another program's reader and
// writer of CSV, Python's, agrees with ours.

#include "core/exchange/tables.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <unistd.h>

using namespace ebbline;
using namespace ebbline::exchange;
using recovery::Side;

namespace {

std::string generatedName()
{
    return *rc::gen::nonEmpty(rc::gen::resize(
        30, rc::gen::container<std::string>(rc::gen::element('a', 'Z', '7', ',', '"', ' ', '=', '-', '\'', '@', ';'))));
}

clock::Moment generatedMoment(long long from, long long to)
{
    return {clock::Instant{std::chrono::milliseconds{*rc::gen::inRange<long long>(from, to)}},
            std::chrono::minutes{*rc::gen::inRange(-14 * 60, 14 * 60 + 1)},
            {}};
}

constexpr long long year2027 = 1'798'761'600'000;  // 2027-01-01T00:00:00Z, ms
constexpr long long oneDay = 86'400'000;

/// A course's name and treatment, several moments after it.
template <typename MakeRow>
auto generatedRows(MakeRow makeRow)
{
    std::vector<decltype(makeRow(std::string(), clock::Moment(), clock::Moment()))> rows;
    const int courses = *rc::gen::inRange(0, 4);
    for (int course = 0; course < courses; ++course) {
        const std::string name = std::to_string(course) + generatedName();
        const clock::Moment treated = generatedMoment(year2027, year2027 + 300 * oneDay);
        const int entries = *rc::gen::inRange(1, 6);
        for (int entry = 0; entry < entries; ++entry) {
            // Distinct moments, so that no stream is answered twice at once.
            const long long start = treated.at.time_since_epoch().count() + entry * oneDay;
            rows.push_back(makeRow(name, treated, generatedMoment(start, start + oneDay)));
        }
    }
    return rows;
}

std::string outputOf(const std::string& command)
{
    FILE* pipe = popen(command.c_str(), "r");
    REQUIRE(pipe != nullptr);
    std::string out;
    char buffer[4096];
    while (const std::size_t count = fread(buffer, 1, sizeof buffer, pipe))
        out.append(buffer, count);
    REQUIRE(pclose(pipe) == 0);
    return out;
}

bool havePython()
{
    return std::system("python3 -c 'import csv' >/dev/null 2>&1") == 0;
}

/// A folder of this process, gone at the end.
class Folder {
public:
    Folder() : m_path(std::filesystem::temp_directory_path() / ("ebbline-tables-" + std::to_string(getpid())))
    {
        std::filesystem::create_directories(m_path);
    }
    ~Folder() { std::filesystem::remove_all(m_path); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    std::string write(const char* name, const std::string& contents) const
    {
        std::ofstream(m_path / name, std::ios::binary) << contents;
        return (m_path / name).string();
    }

private:
    std::filesystem::path m_path;
};

const std::vector<FindingRow> awkwardFindings{
    {"plain", {clock::Instant{std::chrono::milliseconds{year2027}}, std::chrono::minutes(90), {}}, "level",
     recovery::Urgency::nextWorkingDay, recovery::Symptom::swelling, Side::right, "6 on day 9, \"usual\" up to 3"},
    {"Zoë, Łucja; שלום", {clock::Instant{std::chrono::milliseconds{year2027 + 7}}, std::chrono::minutes(-150), {}},
     "rebound", recovery::Urgency::callNow, recovery::Symptom::pain, Side::left, "two\r\nlines\nand\ttab"},
    {"=SUM(A1)", {clock::Instant{std::chrono::milliseconds{year2027}}, std::chrono::minutes(0), {}}, "fever",
     recovery::Urgency::emergency, std::nullopt, Side::none, "-1"},
    {" spaced ", {clock::Instant{std::chrono::milliseconds{year2027}}, std::chrono::minutes(0), {}}, "silence",
     recovery::Urgency::atReview, std::nullopt, Side::none, ""}};

}  // namespace

TEST_CASE("scores written are the scores read", "[exchange][tables][property]")
{
    CHECK(rc::check("scores", [] {
        const auto rows = generatedRows([](std::string name, clock::Moment treated, clock::Moment entered) {
            return ScoreRow{std::move(name), std::move(treated), std::move(entered),
                            *rc::gen::elementOf(recovery::allSymptoms),
                            *rc::gen::element(Side::none, Side::left, Side::right),
                            *recovery::Score::of(*rc::gen::inRange(0, 11))};
        });
        const auto read = readScores(writeScores(rows));
        RC_ASSERT(read.has_value());
        RC_ASSERT(*read == rows);
    }));
}

TEST_CASE("signs written are the signs read", "[exchange][tables][property]")
{
    CHECK(rc::check("signs", [] {
        const auto rows = generatedRows([](std::string name, clock::Moment treated, clock::Moment entered) {
            return SignRow{std::move(name), std::move(treated), std::move(entered),
                           *rc::gen::elementOf(recovery::allSigns), *rc::gen::arbitrary<bool>()};
        });
        const auto read = readSigns(writeSigns(rows));
        RC_ASSERT(read.has_value());
        RC_ASSERT(*read == rows);
    }));
}

TEST_CASE("temperatures written are the temperatures read", "[exchange][tables][property]")
{
    CHECK(rc::check("temperatures", [] {
        const auto rows = generatedRows([](std::string name, clock::Moment treated, clock::Moment entered) {
            return TemperatureRow{std::move(name), std::move(treated), std::move(entered),
                                  *recovery::Temperature::celsius(*rc::gen::inRange(30'000, 45'001) / 1000.0)};
        });
        const auto read = readTemperatures(writeTemperatures(rows));
        RC_ASSERT(read.has_value());
        RC_ASSERT(*read == rows);
    }));
}

TEST_CASE("truth written is the truth read", "[exchange][tables][property]")
{
    CHECK(rc::check("truth", [] {
        std::vector<TruthRow> rows;
        const int courses = *rc::gen::inRange(0, 6);
        for (int course = 0; course < courses; ++course) {
            TruthRow row{std::to_string(course) + generatedName(), *rc::gen::element<std::string>("plain", "slow", "infection"),
                         {}, *rc::gen::element(Side::none, Side::left, Side::right)};
            if (row.kind != plainKind && *rc::gen::arbitrary<bool>())
                row.onsetAt = generatedMoment(year2027, year2027 + oneDay);
            rows.push_back(row);
        }
        const auto read = readTruth(writeTruth(rows));
        RC_ASSERT(read.has_value());
        RC_ASSERT(*read == rows);
    }));
}

TEST_CASE("any bytes after a good header are read or refused, never more", "[exchange][tables][property]")
{
    CHECK(rc::check("noise", [] {
        const auto noise = *rc::gen::container<std::string>(
            rc::gen::oneOf(rc::gen::element(',', '"', '\n', 'L', '3', '-'), rc::gen::arbitrary<char>()));
        const auto read = readScores("course,treated_at,entered_at,symptom,side,score\n" + noise);
        RC_ASSERT(read.has_value() || (read.error().count > 0 && !read.error().listed.empty()));
    }));
}

TEST_CASE("Python's csv module reads what we write, cell by cell", "[exchange][tables][interoperation]")
{
    if (!havePython())
        SKIP("python3 is not installed");
    const Folder folder;
    const std::string file = folder.write("findings.csv", writeFindings(awkwardFindings));

    // Prints every cell's bytes in hex, one record a line.
    const std::string seen = outputOf(
        "python3 -c \"import csv,sys\n"
        "for row in csv.reader(open(sys.argv[1], newline='', encoding='utf-8'), strict=True):\n"
        "    print(' '.join(cell.encode().hex() or '.' for cell in row))\" '" + file + "'");

    std::string expected;
    const std::string table = writeFindings(awkwardFindings);
    CsvReader reader(table);
    while (reader.next() == CsvReader::Step::record) {
        std::string line;
        for (const std::string& cell : reader.cells()) {
            if (!line.empty())
                line += ' ';
            if (cell.empty())
                line += '.';
            for (const char c : cell) {
                char hex[3];
                std::snprintf(hex, sizeof hex, "%02x", static_cast<unsigned>(static_cast<unsigned char>(c)));
                line += hex;
            }
        }
        expected += line + "\n";
    }
    CHECK(seen == expected);
    const auto read = readFindings(writeFindings(awkwardFindings));
    REQUIRE(read);
    CHECK(*read == awkwardFindings);
}

TEST_CASE("we read what Python's csv module writes", "[exchange][tables][interoperation]")
{
    if (!havePython())
        SKIP("python3 is not installed");

    const std::string table = outputOf(
        "python3 -c \"import csv,sys,io\n"
        "out = io.StringIO(newline='')\n"
        "rows = [['course','treated_at','entered_at','symptom','side','score'],\n"
        "        ['a,b \\\\u00e9 \\\"q\\\"','2027-03-01T10:00:00+01:00','2027-03-02T10:00:00+01:00','pain','L',7],\n"
        "        [' x ','2027-03-01T10:00:00+01:00','2027-03-02T10:00:00+01:00','numbness','-',0]]\n"
        "csv.writer(out, quoting=csv.QUOTE_NONNUMERIC).writerows(rows)\n"
        "sys.stdout.buffer.write(out.getvalue().encode())\"");

    const auto read = readScores(table);

    REQUIRE(read);
    REQUIRE(read->size() == 2);
    CHECK(read->at(0).course == "a,b é \"q\"");
    CHECK(read->at(0).score.points() == 7);
    CHECK(read->at(1).course == " x ");
}
