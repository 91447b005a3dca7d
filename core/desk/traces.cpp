#include "core/desk/traces.h"

#include <algorithm>
#include <ranges>
#include <set>

namespace ebbline::desk {

namespace {

using records::Kind;

/// Phones that were ever linked: what they write is their patients'.
std::set<envelope::DeviceId> phonesIn(const std::vector<journal::Operation>& operations)
{
    std::set<envelope::DeviceId> phones;
    for (const journal::Operation& operation : operations)
        if (operation.kind == static_cast<std::uint16_t>(Kind::patientLinked))
            if (const auto body = records::decode(Kind::patientLinked, operation.body))
                phones.insert(envelope::deviceIdOf({std::get<records::PatientLinked>(*body).signingKey}));
    return phones;
}

std::string nameIn(const journal::State& state, const recovery::PatientId& patient)
{
    const auto found = state.patients.find(patient);
    return found == state.patients.end() ? std::string() : found->second.name;
}

std::string patientOf(const journal::State& state, const recovery::CourseId& course)
{
    const auto found = state.courses.find(course);
    return found == state.courses.end() || !found->second.treatment ? std::string()
                                                                    : nameIn(state, found->second.treatment->treatment.patient);
}

/// What a body says of its person; the other fields stay as they are.
struct Describe {
    Trace& trace;
    const journal::State& state;

    void operator()(const records::PatientRegistered& body) const { trace.patient = body.name; }
    void operator()(const records::CourseOpened& body) const { trace.by = body.practitioner; }
    void operator()(const records::FindingActed& body) const
    {
        trace.by = body.by;
        trace.act = body.act;
    }
    void operator()(const records::ActTakenBack& body) const { trace.by = body.by; }
    void operator()(const records::WordHandedOver& body) const { trace.by = body.by; }
    void operator()(const records::EntriesOpened& body) const
    {
        trace.by = body.by;
        trace.entries = body.entries.size();
    }
    void operator()(const records::VersionsOpened& body) const
    {
        trace.by = body.by;
        trace.entries = body.versions.size();
    }
    void operator()(const records::MessageWritten& body) const { trace.by = body.by; }
    void operator()(const records::StepTaken& body) const
    {
        trace.by = body.by;
        trace.with = body.with;
        trace.step = body.step;
    }
    void operator()(const records::DoseLimited& body) const { trace.by = body.by; }
    void operator()(const records::FollowUpRecorded& body) const { trace.by = body.by; }
    void operator()(const records::EyesMarked& body) const { trace.by = body.by; }
    void operator()(const records::BandLearned& body) const
    {
        trace.by = body.learned.by;
        trace.brought = body.learned.brought.has_value();
    }
    void operator()(const records::BandChosen& body) const { trace.by = body.choice.by; }
    void operator()(const auto&) const {}
};

bool isPatients(Kind kind)
{
    return kind == Kind::entryRecorded || kind == Kind::reminderAnswered || kind == Kind::warningShown || kind == Kind::photoTaken
           || kind == Kind::photoRemoved || kind == Kind::photosReceived || kind == Kind::keyAnnounced;
}

}  // namespace

std::vector<Trace> traces(const journal::State& state, const std::vector<journal::Operation>& operations)
{
    const std::set<envelope::DeviceId> phones = phonesIn(operations);
    std::vector<Trace> found;
    for (const journal::Operation& operation : std::views::reverse(operations)) {
        const Kind kind{operation.kind};
        if (kind > records::newestKind || isPatients(kind) || phones.contains(operation.id.device))
            continue;
        const auto body = records::decode(kind, operation.body);
        if (!body)
            continue;
        Trace trace{.id = operation.id, .at = operation.entered, .kind = kind, .by = {}, .course = operation.course,
                    .patient = patientOf(state, operation.course), .act = {}};
        std::visit(Describe{trace, state}, *body);
        found.push_back(std::move(trace));
    }
    return found;
}

}  // namespace ebbline::desk
