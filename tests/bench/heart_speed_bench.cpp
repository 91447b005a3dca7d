// How long the statistics take on one core. Prints, asserts nothing.

#include "core/curves/curve.h"
#include "core/rehearsal/calibrate.h"
#include "core/rehearsal/rehearse.h"

#include "tests/bench/full_course.h"

#include <algorithm>
#include <chrono>
#include <cstdio>

using namespace ebbline;
using namespace ebbline::rehearsal;
using ebbline::bench::fullCourse;

namespace {

/// The best of some runs: what the work takes when nobody else has the core.
template <typename Work>
double milliseconds(Work work, int runs = 5)
{
    double best = 1e9;
    for (int run = 0; run < runs; ++run) {
        const auto start = std::chrono::steady_clock::now();
        work();
        best = std::min(best, std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
    }
    return best;
}

}  // namespace

int main()
{
    const triggers::Protocol protocol = triggers::defaultProtocol();
    constexpr int many = 1000;
    std::vector<triggers::CourseInput> courses;
    std::vector<std::vector<std::vector<curves::Sample>>> samples(many);
    for (int i = 0; i < many; ++i) {
        courses.push_back(fullCourse(i));
        std::map<recovery::Stream, std::vector<curves::Sample>> streams;
        for (const auto& observation : courses.back().observations)
            for (const auto& [stream, score] : observation.scores)
                streams[stream].push_back({observation.at, score, false, false});
        for (auto& [stream, values] : streams)
            samples[static_cast<std::size_t>(i)].push_back(std::move(values));
    }

    std::size_t findings = 0;
    const double judging = milliseconds([&] {
        for (const auto& course : courses)
            findings += triggers::judge(course, protocol, endOf(course)).size();
    });
    std::printf("triggers, 1000 courses x 6 symptoms x 2 sides x 22 days: %.1f ms (%zu findings)\n", judging, findings);

    double sum = 0;
    const double smoothing = milliseconds([&] {
        for (std::size_t i = 0; i < samples.size(); ++i) {
            std::size_t place = 0;
            for (const recovery::Symptom symptom : recovery::allSymptoms)
                for (const recovery::Side side : recovery::bothSides)
                    if (place < samples[i].size()) {
                        const auto smoothed = curves::smoothedCourse({symptom, side}, courses[i].treated,
                                                                     samples[i][place++], protocol.band);
                        sum += smoothed.empty() ? 0 : smoothed.back().points;
                    }
        }
    });
    std::printf("smoother, the same: %.1f ms (sum %.1f)\n", smoothing, sum);
    if (findings == 0)
        return 1;
    std::printf("both together: %.1f ms (wanted: at most 50)\n", judging + smoothing);

    const double one = milliseconds([&] {
        for (int i = 0; i < 100; ++i)
            findings += triggers::judge(courses[static_cast<std::size_t>(i)], protocol, endOf(courses[static_cast<std::size_t>(i)])).size();
    });
    std::printf("one new entry on day 21, the whole course judged again: %.3f ms (wanted: at most 1)\n", one / 100);

    std::vector<KnownCourse> cohort;
    for (int i = 0; i < 4000; ++i)
        cohort.push_back(invent({Model::decay, Rhythm::mixed, 5}, Kind::plain, i));
    const double calibrating = milliseconds([&] { findings += calibrate(cohort, protocol, {}).has_value(); });
    std::printf("calibration on 4000 courses: %.0f ms (wanted: at most 2000)\n", calibrating);

    for (int i = 4000; i < 10'000; ++i)
        cohort.push_back(invent({Model::decay, Rhythm::mixed, 5}, Kind::plain, i));
    const double rehearsing = milliseconds([&] {
        for (const KnownCourse& course : cohort)
            findings += static_cast<std::size_t>(verdictOn(course, protocol).alerts);
    });
    std::printf("rehearsal of 10000 courses under one protocol: %.0f ms\n", rehearsing);

    triggers::Protocol keener = protocol;
    keener.thresholds.rebound *= 0.5;
    std::size_t differing = 0;
    const double comparing = milliseconds([&] {
        if (const auto done = rehearse(cohort, protocol, keener))
            differing = done->differences.size();
    });
    std::printf("rehearsal of 10000 courses under two protocols, with the differences: %.0f ms (wanted: at most 1000; %zu courses differ)\n",
                comparing, differing);
    return 0;
}
