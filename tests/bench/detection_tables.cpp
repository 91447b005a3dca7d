#include "tests/bench/detection_tables.h"

#include <cstdio>

namespace ebbline::bench {

using namespace ebbline::rehearsal;

const char* nameOf(Model model)
{
    return model == Model::decay ? "decay" : "steps";
}

const char* nameOf(Rhythm rhythm)
{
    switch (rhythm) {
    case Rhythm::mixed: return "mixed";
    case Rhythm::daily: return "daily";
    case Rhythm::twice: return "twice";
    case Rhythm::plan: return "plan";
    }
    return "?";
}

std::string text(long part, long whole)
{
    const auto interval = share(part, whole);
    if (!interval)
        return "none";
    char buffer[48];
    std::snprintf(buffer, sizeof buffer, "%.3f (%.3f-%.3f)", static_cast<double>(part) / static_cast<double>(whole),
                  interval->low, interval->high);
    return buffer;
}

std::vector<KnownCourse> cohort(const Invention& invention, Kind kind, int count)
{
    std::vector<KnownCourse> courses;
    courses.reserve(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i)
        courses.push_back(invent(invention, kind, i));
    return courses;
}

Cohorts freshCohorts(const Invention& invention, const Sizes& sizes)
{
    Cohorts cohorts;
    for (const Kind kind : allKinds)
        cohorts.push_back(cohort(invention, kind, kind == Kind::plain ? sizes.plain : sizes.each));
    return cohorts;
}

Figures figuresUnder(const Cohorts& cohorts, const triggers::Protocol& protocol)
{
    Figures figures;
    for (const auto& courses : cohorts) {
        std::vector<CourseVerdict> verdicts;
        verdicts.reserve(courses.size());
        for (const KnownCourse& course : courses)
            verdicts.push_back(verdictOn(course, protocol));
        for (const KindFigures& row : figuresOf(verdicts))
            figures[row.kind] = row;
    }
    return figures;
}

void printMainHeader(const std::string& title)
{
    std::printf("### %s\n\n| model, entries | alert in plain | call now | infection | ... 72 h | haematoma | ... 24 h | slow recovery "
                "| puckering | silent in 72 h | silent at all |\n|---|---|---|---|---|---|---|---|---|---|---|\n", title.c_str());
}

void printMainRow(const std::string& name, const Figures& f)
{
    const KindFigures& plain = f.at("plain");
    std::printf("| %s | %s | %s |", name.c_str(), text(plain.flagged, plain.courses).c_str(), text(plain.callNow, plain.courses).c_str());
    for (const auto& [kind, part] : {std::pair{"infection", &KindFigures::flagged},
                                     {"infection", &KindFigures::withinThreeDays},
                                     {"haematoma", &KindFigures::flagged},
                                     {"haematoma", &KindFigures::withinDay},
                                     {"slow-recovery", &KindFigures::flagged},
                                     {"puckering", &KindFigures::flagged},
                                     {"silent", &KindFigures::withinThreeDays},
                                     {"silent", &KindFigures::flagged}})
        std::printf(" %s |", text(f.at(kind).*part, f.at(kind).courses).c_str());
    std::printf("\n");
}

namespace {

constexpr std::array sided{"infection", "haematoma", "puckering"};
constexpr std::array timed{"infection", "haematoma", "slow-recovery", "silent"};

}  // namespace

void printDelayHeader(const std::string& title)
{
    std::printf("### %s\n\n| model, entries |", title.c_str());
    for (const char* kind : timed)
        std::printf(" %s: median delay |", kind);
    for (const char* kind : sided)
        std::printf(" %s: right side |", kind);
    std::printf("\n|---|---|---|---|---|---|---|---|\n");
}

void printDelayRow(const std::string& name, const Figures& f)
{
    std::printf("| %s |", name.c_str());
    for (const char* kind : timed)
        if (const auto& delay = f.at(kind).medianDelayHours)
            std::printf(" %.0f h |", *delay);
        else
            std::printf(" none |");
    for (const char* kind : sided)
        std::printf(" %s |", text(f.at(kind).rightSide, f.at(kind).sided).c_str());
    std::printf("\n");
}

}  // namespace ebbline::bench
