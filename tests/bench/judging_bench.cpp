// The judging of courses and their smoothed curves against a second implementation in R (judging.R), written
// from the documents: which statistics each entry offers, how far apart their values are, and how long each takes
// in the same run on the same machine. Needs Rscript; without it nothing is compared, and that is said.
//
// judging_bench [courses]   of each cohort, 1000 unless said

#include "core/curves/curve.h"
#include "core/triggers/course_watch.h"
#include "core/triggers/judge.h"

#include "core/rehearsal/invented_course.h"
#include "tests/bench/full_course.h"
#include "tests/bench/odd_courses.h"

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <limits>
#include <random>
#include <string>
#include <utility>

using namespace ebbline;
using recovery::Side;
using recovery::Stream;
using recovery::Symptom;
using triggers::CourseInput;
using triggers::Statistic;

namespace {

constexpr int skipped = 77;
constexpr double nearest = 1e-8;
constexpr int manyCourses = 1000;
constexpr int fewestCourses = 20;  // R judges as many by themselves
constexpr int runsOfR = 5;
constexpr int runsOfOurs = 15;
constexpr double none = std::numeric_limits<double>::quiet_NaN();

struct Cohort {
    std::string name;
    triggers::Protocol protocol = triggers::defaultProtocol();
    std::vector<Stream> streams;
    std::vector<CourseInput> courses;
};

std::vector<Stream> streamsOf(std::initializer_list<Side> sides, Symptom last)
{
    std::vector<Stream> streams;
    for (const Symptom symptom : recovery::allSymptoms)
        if (symptom <= last)
            for (const Side side : sides)
                streams.push_back({symptom, side});
    return streams;
}

Cohort fullCohort(int courses)
{
    Cohort cohort{.name = "full", .streams = streamsOf({Side::left, Side::right}, Symptom::puckering), .courses = {}};
    for (int i = 0; i < courses; ++i)
        cohort.courses.push_back(bench::fullCourse(i));
    return cohort;
}

Cohort oddCohort(std::string name, int first, int courses, const bands::Band& band)
{
    Cohort cohort{.name = std::move(name), .streams = streamsOf({Side::left, Side::right, Side::none}, Symptom::numbness), .courses = {}};
    cohort.protocol.band = band;
    for (int i = first; i < first + courses; ++i)
        cohort.courses.push_back(bench::oddCourse(i));
    return cohort;
}

void put(std::ofstream& out, double value)
{
    std::array<char, sizeof value> bytes;
    std::memcpy(bytes.data(), &value, sizeof value);
    out.write(bytes.data(), bytes.size());
}

void putScores(std::ofstream& out, const std::vector<Stream>& streams, const recovery::Scores& scores)
{
    for (const Stream& stream : streams) {
        const auto found = scores.find(stream);
        put(out, found == scores.end() ? none : found->second.points());
    }
}

bool write(const std::filesystem::path& folder, const Cohort& cohort)
{
    std::ofstream streams(folder / "streams.txt"), band(folder / "band.txt"), movements(folder / "movements.txt");
    std::ofstream entries(folder / "entries.bin", std::ios::binary), baseline(folder / "baseline.bin", std::ios::binary);
    for (const Stream& stream : cohort.streams)
        streams << static_cast<int>(stream.symptom) << " " << static_cast<int>(stream.side) << "\n";
    band.precision(17);
    for (const auto& days : cohort.protocol.band.table())
        for (const auto& distribution : days) {
            for (const double p : distribution)
                band << p << " ";
            band << "\n";
        }
    movements.precision(17);
    const auto put3 = [&](const bands::Movement& m) { movements << m.noise << " " << m.drift << " " << m.start << "\n"; };
    for (const bands::Movement& movement : cohort.protocol.band.movements().score)
        put3(movement);
    put3(cohort.protocol.band.movements().sides);
    put3(cohort.protocol.band.movements().sums);
    double number = 0;
    for (const CourseInput& course : cohort.courses) {
        ++number;
        putScores(baseline, cohort.streams, course.baseline);
        for (const triggers::Observation& observation : course.observations) {
            put(entries, number);
            put(entries, std::chrono::duration<double, std::ratio<3600>>(observation.at.at - course.treated.at).count());
            put(entries, clock::dayOfRecovery(course.treated, observation.at));
            putScores(entries, cohort.streams, observation.scores);
        }
    }
    return streams && band && movements && entries && baseline;
}

std::vector<double> read(const std::filesystem::path& file)
{
    std::error_code error;
    const auto bytes = std::filesystem::file_size(file, error);
    std::vector<double> values(error ? 0 : bytes / sizeof(double));
    std::ifstream in(file, std::ios::binary);
    in.read(reinterpret_cast<char*>(values.data()), static_cast<std::streamsize>(values.size() * sizeof(double)));
    if (!in)
        values.clear();
    return values;
}

/// How far two sets of values lie apart, in parts of 1 or of the value if that is larger.
struct Apart {
    double worst = 0;
    std::size_t values = 0;
    std::size_t beyond = 0;  ///< of them
    std::string first = {};  ///< of those

    template <typename Where>
    void take(double ours, double theirs, Where where)
    {
        double apart = std::abs(ours - theirs) / std::max(1.0, std::abs(theirs));
        if (std::isnan(apart))
            apart = std::isnan(ours) && std::isnan(theirs) ? 0 : INFINITY;
        ++values;
        worst = std::max(worst, apart);
        if (apart > nearest && ++beyond == 1)
            first = where() + ": ours " + std::to_string(ours) + ", R's " + std::to_string(theirs);
    }
};

bool report(const std::string& what, const Apart& apart)
{
    std::printf("  %-18s %8zu values, furthest %.1e", what.c_str(), apart.values, apart.worst);
    if (apart.beyond > 0)
        std::printf(", %zu beyond 1e-8, first: %s", apart.beyond, apart.first.c_str());
    std::printf("%s\n", apart.values == 0 ? ": nothing was compared" : "");
    return apart.values > 0 && apart.beyond == 0;
}

/// R's columns: level, rebound, slow recovery of each stream; both overall; the sides of seven symptoms, left
/// positive; filling left and right, worsening left and right.
std::size_t columnOf(const Cohort& cohort, const triggers::Candidate& candidate)
{
    const std::size_t streams = cohort.streams.size();
    const auto stream = static_cast<std::size_t>(
        std::find(cohort.streams.begin(), cohort.streams.end(), candidate.stream) - cohort.streams.begin());
    const std::size_t right = candidate.stream.side == Side::right ? 1 : 0;
    switch (candidate.statistic.value_or(Statistic::level)) {
    case Statistic::level: return stream;
    case Statistic::rebound: return streams + stream;
    case Statistic::slowRecovery: return 2 * streams + stream;
    case Statistic::levelOverall: return 3 * streams;
    case Statistic::slowOverall: return 3 * streams + 1;
    case Statistic::sideDivergence: return 3 * streams + 1 + static_cast<std::size_t>(candidate.stream.symptom);
    case Statistic::oneSideFills: return 3 * streams + 9 + right;
    case Statistic::oneSideWorsens: return 3 * streams + 11 + right;
    }
    return 0;
}

/// An average of the sides that is 0 but for rounding: on which side it lies, rounding decides.
bool onNoSide(const Cohort& cohort, std::size_t column, double value)
{
    const std::size_t first = 3 * cohort.streams.size() + 2;
    return column >= first && column < first + recovery::allSymptoms.size() && std::abs(value) < nearest;
}

bool sameStatistics(const Cohort& cohort, std::vector<double> theirs)
{
    std::size_t rows = 0;
    for (const CourseInput& course : cohort.courses)
        rows += course.observations.size();
    if (theirs.size() != rows * (3 * cohort.streams.size() + 13))
        return false;
    std::array<Apart, triggers::allStatistics.size()> apart{};
    std::size_t row = 0;
    for (std::size_t number = 0; number < cohort.courses.size(); ++number) {
        const CourseInput& course = cohort.courses[number];
        triggers::CourseWatch watch(course, cohort.protocol);
        clock::Moment end = course.treated;
        end.at += std::chrono::days(1000);
        for (const triggers::Observation* observation : triggers::inOrder(course, end)) {
            const std::size_t entry = row + static_cast<std::size_t>(observation - course.observations.data());
            for (const triggers::Candidate& candidate : watch.take(*observation)) {
                if (!candidate.statistic)
                    continue;
                const std::size_t column = columnOf(cohort, candidate);
                double other = std::exchange(theirs[entry + rows * column], none);
                if (std::isnan(other) && onNoSide(cohort, column, candidate.value))
                    continue;
                if (*candidate.statistic == Statistic::sideDivergence && candidate.stream.side == Side::right)
                    other = -other;
                apart[static_cast<std::size_t>(*candidate.statistic)].take(candidate.value, other, [&] {
                    return "course " + std::to_string(number) + ", day " + std::to_string(watch.day()) + ", "
                           + std::string(recovery::word(candidate.stream.symptom)) + " "
                           + std::string(recovery::word(candidate.stream.side));
                });
            }
        }
        row += course.observations.size();
    }
    bool same = true;
    for (const Statistic statistic : triggers::allStatistics)
        same = report(std::string(word(statistic)), apart[static_cast<std::size_t>(statistic)]) && same;
    // What is left, R would have offered and we did not.
    std::size_t alone = 0;
    for (std::size_t place = 0; place < theirs.size(); ++place)
        if (!std::isnan(theirs[place]) && !onNoSide(cohort, place / rows, theirs[place]) && ++alone == 1)
            std::printf("  offered by R alone, first: entry %zu, column %zu, value %g\n", place % rows, place / rows, theirs[place]);
    if (alone > 0)
        std::printf("  offered by R alone: %zu\n", alone);
    return same && alone == 0;
}

/// The samples of each stream of each course.
using Samples = std::vector<std::vector<std::vector<curves::Sample>>>;

Samples samplesOf(const Cohort& cohort)
{
    Samples samples;
    for (const CourseInput& course : cohort.courses) {
        auto& streams = samples.emplace_back(cohort.streams.size());
        for (const triggers::Observation& observation : course.observations)
            for (std::size_t s = 0; s < cohort.streams.size(); ++s)
                if (const auto found = observation.scores.find(cohort.streams[s]); found != observation.scores.end())
                    streams[s].push_back({observation.at, found->second, false, false});
    }
    return samples;
}

bool sameCurves(const Cohort& cohort, const std::vector<double>& theirs)
{
    const Samples samples = samplesOf(cohort);
    const std::size_t series = cohort.courses.size() * cohort.streams.size();
    const std::size_t days = theirs.size() / (3 * series);
    std::array<Apart, 3> apart{};
    std::size_t drawn = 0;
    for (std::size_t i = 0; i < cohort.courses.size(); ++i)
        for (std::size_t s = 0; s < cohort.streams.size(); ++s)
            for (const curves::Smoothed& day :
                 curves::smoothedCourse(cohort.streams[s], cohort.courses[i].treated, samples[i][s], cohort.protocol.band)) {
                const std::array ours{day.points, day.low, day.high};
                const auto on = static_cast<std::size_t>(day.day);
                ++drawn;
                for (std::size_t k = 0; k < ours.size(); ++k)
                    apart[k].take(ours[k], on < days ? theirs[i + cohort.courses.size() * s + series * (on + days * k)] : none, [&] {
                        return "course " + std::to_string(i) + ", day " + std::to_string(day.day) + ", "
                               + std::string(recovery::word(cohort.streams[s].symptom));
                    });
            }
    // R draws the same days and no other.
    const auto theirDays = std::count_if(theirs.begin(), theirs.begin() + static_cast<std::ptrdiff_t>(theirs.size() / 3),
                                         [](double value) { return !std::isnan(value); });
    bool same = static_cast<std::size_t>(theirDays) == drawn;
    same = report("smoothed", apart[0]) && same;
    same = report("smoothed, low", apart[1]) && same;
    return report("smoothed, high", apart[2]) && same;
}

/// Processor time of the best of some runs: others on the machine do not count.
template <typename Work>
double milliseconds(Work work)
{
    double best = 1e9;
    for (int run = 0; run < runsOfOurs; ++run) {
        const std::clock_t start = std::clock();
        work();
        best = std::min(best, 1e3 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
    }
    return best;
}

void printTimes(const Cohort& cohort, const std::filesystem::path& folder)
{
    std::ifstream in(folder / "r_seconds.txt");
    double judgingInR = 0, smoothingInR = 0, aloneInR = 0;
    if (!(in >> judgingInR >> smoothingInR >> aloneInR))
        return;
    std::size_t findings = 0;
    const double judging = milliseconds([&] {
        for (const CourseInput& course : cohort.courses)
            findings += triggers::judge(course, cohort.protocol, rehearsal::endOf(course)).size();
    });
    const Samples samples = samplesOf(cohort);
    std::size_t days = 0;
    const double smoothing = milliseconds([&] {
        for (std::size_t i = 0; i < cohort.courses.size(); ++i)
            for (std::size_t s = 0; s < cohort.streams.size(); ++s)
                days += curves::smoothedCourse(cohort.streams[s], cohort.courses[i].treated, samples[i][s], cohort.protocol.band).size();
    });
    const auto line = [](const char* what, double ours, double theirs) {
        std::printf("  %-34s ours %8.3f ms, R %9.1f ms, ratio %.0f\n", what, ours, theirs, theirs / ours);
    };
    std::printf("%zu courses, six symptoms, two sides, 22 days (%zu findings, %zu days drawn in all runs):\n",
                cohort.courses.size(), findings, days);
    line("triggers", judging, 1e3 * judgingInR);
    line("smoother", smoothing, 1e3 * smoothingInR);
    line("both", judging + smoothing, 1e3 * (judgingInR + smoothingInR));
    line("both, a course by itself", (judging + smoothing) / static_cast<double>(cohort.courses.size()), 1e3 * aloneInR);
    std::printf("  R judges all courses side by side, without findings and silence, and smooths series by series with KalmanSmooth;\n"
                "  ours are judged and smoothed one after the other, findings and silence included; processor time of the best run\n");
}

}  // namespace

int main(int count, char** arguments)
{
    int courses = manyCourses;
    if (count > 1) {
        const std::string_view text = arguments[1];
        if (std::from_chars(text.data(), text.data() + text.size(), courses).ec != std::errc{} || courses < fewestCourses) {
            std::printf("judging_bench [courses, %d or more]\n", fewestCourses);
            return 2;
        }
    }
    if (std::system("command -v Rscript >/dev/null 2>&1") != 0) {
        std::printf("Rscript is not installed (Debian: r-base-core): nothing was compared\n");
        return skipped;
    }
    std::error_code error;
    const auto folder = std::filesystem::temp_directory_path(error) / ("judging_" + std::to_string(std::random_device()()));
    const std::array cohorts{fullCohort(courses), oddCohort("odd", 0, courses, bands::seedBand()),
                             oddCohort("odd, narrow band", courses, courses, bench::narrowBand())};
    std::string command = "Rscript --vanilla '" EBBLINE_R_SCRIPT "'";
    bool same = !error;
    for (std::size_t i = 0; i < cohorts.size(); ++i) {
        const auto own = folder / std::to_string(i);
        same = same && std::filesystem::create_directories(own, error) && write(own, cohorts[i]);
        command += " " + std::to_string(i == 0 ? runsOfR : 1) + " '" + own.string() + "'";
    }
    std::fflush(stdout);
    if (!same || std::system(command.c_str()) != 0) {
        std::printf("R did not finish: nothing was compared\n");
        same = false;
    } else {
        for (std::size_t i = 0; i < cohorts.size(); ++i) {
            const auto own = folder / std::to_string(i);
            std::printf("%s: %zu courses\n", cohorts[i].name.c_str(), cohorts[i].courses.size());
            same = sameStatistics(cohorts[i], read(own / "r_statistics.bin")) && same;
            same = sameCurves(cohorts[i], read(own / "r_smoothed.bin")) && same;
        }
        printTimes(cohorts[0], folder / "0");
        std::printf("%s\n", same ? "equal to R within 1e-8" : "NOT equal to R within 1e-8");
    }
    std::error_code ignored;
    std::filesystem::remove_all(folder, ignored);
    return same ? 0 : 1;
}
