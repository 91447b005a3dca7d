#include "core/desk/traces.h"

#include <algorithm>
#include <map>
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

records::Task taskOf(records::Step step)
{
    using records::Step;
    switch (step) {
    case Step::phoneEnded:
    case Step::phoneReplaced: return records::Task::phones;
    case Step::numbersChanged: return records::Task::numbers;
    case Step::backupMade:
    case Step::passphraseChanged:
    case Step::recoveryCodeMade: return records::Task::keep;
    case Step::deskAdded:
    case Step::deskShutOut:
    case Step::freshKey:
    case Step::leastVersion: break;
    }
    return records::Task::desks;
}

/// Who did what the next operation of a device says.
std::map<journal::OperationId, records::WorkDone> namesIn(const std::vector<journal::Operation>& operations)
{
    std::map<journal::OperationId, records::WorkDone> names;
    for (const journal::Operation& operation : operations)
        if (operation.kind == static_cast<std::uint16_t>(Kind::workDone))
            if (const auto body = records::decode(Kind::workDone, operation.body))
                names.emplace(journal::OperationId{operation.id.device, operation.id.number + 1}, std::get<records::WorkDone>(*body));
    return names;
}

/// What a body says of its person; the other fields stay as they are.
struct Describe {
    Trace& trace;
    const journal::State& state;

    void operator()(const records::PatientRegistered& body) const
    {
        trace.patient = body.name;
        const auto corrected = state.patientCorrections.find(body.patient);
        trace.corrected = corrected != state.patientCorrections.end()
                          && std::ranges::find(corrected->second, trace.id, &journal::PatientCorrection::operation) != corrected->second.end();
    }
    void operator()(const records::TreatmentRecorded& body) const
    {
        trace.corrected = body.treatment.corrected.has_value();
        if (trace.corrected)
            by(body.treatment.corrected->by, records::Task::treat);
    }
    void operator()(const records::CourseOpened& body) const { trace.by = body.practitioner; }
    void operator()(const records::FindingActed& body) const
    {
        trace.by = body.by;
        trace.act = body.act;
        if (body.act == records::Act::closed)
            trace.task = records::Task::close;
    }
    void operator()(const records::ActTakenBack& body) const { trace.by = body.by; }
    void operator()(const records::CallNoted& body) const { trace.by = body.by; }
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
        trace.task = taskOf(body.step);
    }
    void operator()(const records::RoleGiven& body) const
    {
        by(body.by, records::Task::people);
        trace.person = body.person;
        trace.role = body.role;
    }
    void operator()(const records::DoseLimited& body) const { by(body.by, records::Task::protocol); }
    void operator()(const records::FollowUpRecorded& body) const { by(body.by, records::Task::treat); }
    void operator()(const records::EyesMarked& body) const { trace.by = body.by; }
    void operator()(const records::ClinicPhotoTaken& body) const { trace.by = body.by; }
    void operator()(const records::ClinicPhotoRemoved& body) const { trace.by = body.by; }
    void operator()(const records::BandLearned& body) const
    {
        by(body.learned.by, records::Task::protocol);
        trace.brought = body.learned.brought.has_value();
    }
    void operator()(const records::BandChosen& body) const { by(body.choice.by, records::Task::protocol); }
    void operator()(const auto&) const {}

    void by(const std::string& person, records::Task task) const
    {
        trace.by = person;
        trace.task = task;
    }
};

bool isPatients(Kind kind)
{
    return kind == Kind::entryRecorded || kind == Kind::reminderAnswered || kind == Kind::warningShown || kind == Kind::photoTaken
           || kind == Kind::photoRemoved || kind == Kind::photosReceived || kind == Kind::keyAnnounced;
}

/// Kinds that carry no name of their own, and are work that a role is asked for.
bool isNamedBefore(Kind kind)
{
    return kind == Kind::treatmentRecorded || kind == Kind::protocolSigned || kind == Kind::clinicDescribed || kind == Kind::patientLinked;
}

}  // namespace

std::vector<Trace> traces(const journal::State& state, const std::vector<journal::Operation>& operations)
{
    const std::set<envelope::DeviceId> phones = phonesIn(operations);
    const auto names = namesIn(operations);
    std::vector<Trace> found;
    for (const journal::Operation& operation : std::views::reverse(operations)) {
        const Kind kind{operation.kind};
        if (kind > records::newestKind || kind == Kind::workDone || isPatients(kind) || phones.contains(operation.id.device))
            continue;
        const auto body = records::decode(kind, operation.body);
        if (!body)
            continue;
        Trace trace{.id = operation.id, .at = operation.entered, .kind = kind, .by = {}, .course = operation.course,
                    .patient = patientOf(state, operation.course), .act = {}};
        const Describe describe{trace, state};
        std::visit(describe, *body);
        if (const auto name = names.find(operation.id); name != names.end() && isNamedBefore(kind))
            describe.by(name->second.by, name->second.task);
        // Open to everyone: its name is no matter of a role.
        else if (name != names.end() && kind == Kind::patientRegistered)
            trace.by = name->second.by;
        trace.beyondRole = trace.task && !trace.by.empty() && !state.couldDo(trace.by, *trace.task, trace.id, operation.stamp);
        found.push_back(std::move(trace));
    }
    return found;
}

}  // namespace ebbline::desk
