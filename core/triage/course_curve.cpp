#include "core/triage/course_curve.h"

#include <algorithm>
#include <span>
#include <tuple>

namespace ebbline::triage {

namespace {

std::vector<curves::Sample> samplesOf(const journal::CourseState& course, const recovery::Stream& stream)
{
    std::vector<curves::Sample> samples;
    for (const auto& [id, history] : course.entries) {
        const recovery::Entry& entry = history.current();
        if (const auto found = entry.scores.find(stream); found != entry.scores.end())
            samples.push_back({entry.at, found->second, entry.isLate(), history.amended()});
    }
    return samples;
}

/// What the treatment itself gives, with no entry.
triggers::CourseInput bareInput(const journal::CourseState& course)
{
    triggers::CourseInput input{treatedAt(course), {}, {}};
    if (course.opened)
        input.baseline = course.opened->baseline;
    else if (course.treatment)
        input.baseline = course.treatment->treatment.baseline;
    return input;
}

using Known = const journal::Version<recovery::Entry>*;

/// What stood before each version that took something back, counted as `input` is; the input holds what stands in the end.
void addEarlier(std::vector<triggers::CourseInput>& inputs, triggers::CourseInput& input, std::span<const Known> known)
{
    std::map<recovery::EntryId, const recovery::Entry*> standing;
    clock::Instant newest = clock::Instant::min();
    const auto stands = [&] {
        input.observations.clear();
        for (const auto& [id, entry] : standing)
            if (entry)
                input.observations.push_back({entry->at, entry->scores});
    };
    for (const Known version : known) {
        const recovery::Entry& entry = version->value;
        const recovery::Entry*& before = standing[entry.id];
        const bool corrects = before && (before->at != entry.at || before->scores != entry.scores);
        if (corrects || (!before && entry.at.at < newest)) {
            stands();
            inputs.push_back(input);
        }
        before = &entry;
        newest = std::max(newest, entry.at.at);
    }
    stands();
}

}  // namespace

bool mayHaveCounted(const journal::CourseState& course, const journal::FormerCount& count, const journal::Version<recovery::Entry>& version)
{
    if (!(count.until < version.stamp))
        return true;
    if (std::ranges::any_of(course.warnings, [&](const records::WarningShown& shown) { return shown.entry == version.value.id; }))
        return true;
    const auto opened = course.versionOpenings.find(version.operation);
    return opened != course.versionOpenings.end() && opened->second.at.at <= count.until.wall();
}

clock::Moment treatedAt(const journal::CourseState& course)
{
    if (course.opened)
        return course.opened->treated;
    return course.treatment ? course.treatment->treatment.at : clock::Moment{};
}

triggers::CourseInput courseInput(const journal::CourseState& course)
{
    triggers::CourseInput input = bareInput(course);
    for (const auto& [id, history] : course.entries)
        input.observations.push_back({history.current().at, history.current().scores});
    return input;
}

std::vector<triggers::CourseInput> earlierInputs(const journal::CourseState& course)
{
    std::vector<Known> known;
    for (const auto& [id, history] : course.entries)
        for (const auto& version : history.versions)
            known.push_back(&version);
    std::stable_sort(known.begin(), known.end(), [](const auto* a, const auto* b) {
        return std::tie(a->stamp, a->operation) < std::tie(b->stamp, b->operation);
    });
    std::vector<triggers::CourseInput> inputs;
    triggers::CourseInput holds = bareInput(course);
    addEarlier(inputs, holds, known);
    for (const journal::FormerCount& count : course.formerCounts) {
        const auto until = std::ranges::find_if(known.rbegin(), known.rend(), [&](const auto* version) { return mayHaveCounted(course, count, *version); });
        triggers::CourseInput bare{count.treated, count.baseline, {}};
        addEarlier(inputs, bare, std::span(known.begin(), until.base()));
        inputs.push_back(std::move(bare));
    }
    return inputs;
}

curves::Curve courseCurve(const journal::CourseState& course, const recovery::Stream& stream)
{
    const std::vector<curves::Sample> samples = samplesOf(course, stream);
    const clock::Moment treated = treatedAt(course);
    if (!course.opened)
        return curves::curveOf(stream, treated, samples, bands::seedBand(), 21);
    return curves::curveOf(stream, treated, samples, course.opened->protocol.band,
                           clock::dayOfRecovery(treated, course.opened->followUp));
}

std::optional<curves::Asymmetry> courseAsymmetry(const journal::CourseState& course, recovery::Symptom symptom)
{
    return curves::asymmetryOf(samplesOf(course, {symptom, recovery::Side::left}),
                               samplesOf(course, {symptom, recovery::Side::right}), treatedAt(course));
}

}  // namespace ebbline::triage
