// Practice figures over invented courses, and what each costs; then how often a band learned from so many
// courses passes its check. Prints and judges nothing.

#include "app/tool/learn_report.h"

#include "core/bands/versions.h"
#include "core/rehearsal/chance.h"
#include "core/rehearsal/invented_course.h"
#include "core/rehearsal/taught.h"

#include <chrono>
#include <cstdio>
#include <iostream>

using namespace ebbline;

namespace {

template <typename Work>
void timed(const char* what, Work work)
{
    const auto start = std::chrono::steady_clock::now();
    work();
    const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - start;
    std::printf("%-58s %8.1f ms\n", what, took.count());
}

/// By chance 90 % plain, 3 % infections, 2 % haematomas, 2 % lasting folds, 3 % silent; eight clinics that do
/// not differ, two techniques whose patients do not, fifty treatments a lot.
std::vector<learning::PastCourse> practice(int count)
{
    using rehearsal::Kind;
    std::vector<learning::PastCourse> courses;
    for (int i = 0; i < count; ++i) {
        rehearsal::Chance chance(31, static_cast<std::uint64_t>(i));
        const double place = chance.uniform();
        const Kind kind = place < 0.90   ? Kind::plain
                          : place < 0.93 ? Kind::infection
                          : place < 0.95 ? Kind::haematoma
                          : place < 0.97 ? Kind::puckering
                                         : Kind::silent;
        const auto known = rehearsal::invent({rehearsal::Model::decay, rehearsal::Rhythm::mixed, 31}, kind, i);
        learning::PastCourse course;
        course.name = std::to_string(100'000 + i);
        course.treated.at = clock::Instant{std::chrono::hours(3 * i)};
        course.days = rehearsal::taughtBy(known.input);
        course.clinic = "clinic " + std::to_string(i / 3 % 8);
        course.technique = i / 7 % 2 == 0 ? "long barbs" : "cones";
        course.zones = i % 3 == 0 ? std::vector<std::string>{"cheek", "jawline"} : std::vector<std::string>{"midface"};
        course.lots = {learning::PackLot{"TH-" + std::to_string(i / 50)}};
        if (kind == Kind::plain)
            course.outcome = learning::Outcome{};
        else if (kind != Kind::silent)
            course.outcome = learning::Outcome{true, {std::string(rehearsal::word(kind))}};
        courses.push_back(std::move(course));
    }
    return courses;
}

void printBands()
{
    std::printf("\nBands of so many plain courses that pass their check, of 20 tries with other courses each\n");
    std::printf("%8s %8s %8s %12s %12s\n", "courses", "decay", "steps", "too narrow", "too wide");
    for (const int count : {30, 60, 120, 300, 1000}) {
        std::array<int, 2> passed{};
        int narrow = 0;
        int wide = 0;
        for (const auto model : {rehearsal::Model::decay, rehearsal::Model::steps})
            for (int attempt = 0; attempt < 20; ++attempt) {
                std::vector<bands::Taught> courses;
                for (int i = 0; i < count; ++i) {
                    const int number = attempt * count + i;
                    const auto known = rehearsal::invent({model, rehearsal::Rhythm::mixed, 57}, rehearsal::Kind::plain, number);
                    bands::Taught course = rehearsal::taughtAs({}, known.input);
                    for (std::size_t k = 0; k < 4; ++k)
                        course.course.value[k] = static_cast<std::uint8_t>(number >> (24 - 8 * k));
                    courses.push_back(std::move(course));
                }
                const auto coverage = bands::crossValidate(courses, bands::seedBand());
                if (!coverage)
                    continue;
                passed[model == rehearsal::Model::decay ? 0 : 1] += bands::objection(*coverage) ? 0 : 1;
                for (const auto& symptom : coverage->symptoms) {
                    narrow += symptom.fit == bands::Fit::tooNarrow ? 1 : 0;
                    wide += symptom.fit == bands::Fit::tooWide ? 1 : 0;
                }
            }
        std::printf("%8d %5d/20 %5d/20 %12d %12d\n", count, passed[0], passed[1], narrow, wide);
    }
}

}  // namespace

int main()
{
    const auto courses = practice(10'000);
    timed("shares by technique, zone and kind", [&] {
        for (const auto by : {learning::By::technique, learning::By::zone})
            learning::complicationShares(courses, by);
        learning::complicationKinds(courses);
    });
    timed("days until gone, seven symptoms", [&] {
        for (const auto symptom : recovery::allSymptoms)
            learning::resolutionOf(courses, symptom);
    });
    timed("two techniques, shares and seven symptoms", [&] { learning::compareTechniques(courses, "long barbs", "cones"); });
    timed("practice over time", [&] { static_cast<void>(learning::watchPractice(courses)); });
    timed("trace of every lot", [&] { learning::traceLots(courses); });
    timed("eight clinics pooled", [&] { static_cast<void>(learning::poolClinics(learning::countsByClinic(courses))); });

    auto report = tool::learnReport(courses, {});
    if (!report)
        return 1;
    report->comparison = learning::compareTechniques(courses, "long barbs", "cones");
    std::printf("\n");
    std::fflush(stdout);
    tool::printText(*report, std::cout);
    std::cout.flush();
    printBands();
    return 0;
}
