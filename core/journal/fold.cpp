#include "core/journal/patient_corrections.h"
#include "core/journal/state.h"
#include "core/journal/treatments.h"

#include <algorithm>
#include <utility>

namespace ebbline::journal {

namespace {

/// Applies operations one by one, in fold order. Each rule looks at the state so far only.
class Fold {
public:
    Fold(State& state, records::KnownBands& bands) : m_state(state), m_bands(bands) {}

    enum class Outcome { applied, unknown, unreadable };

    Outcome apply(const Operation& operation)
    {
        if (operation.kind > static_cast<std::uint16_t>(records::newestKind))
            return Outcome::unknown;
        auto body = records::decode(static_cast<records::Kind>(operation.kind), operation.body, &m_bands);
        if (!body)
            return body.error().reason == Reason::unsupported ? Outcome::unknown : Outcome::unreadable;
        // What says that it belongs to one course may not speak of another.
        if (records::courseOf(*body) != operation.course)
            return Outcome::unreadable;
        m_operation = &operation;
        std::visit([this](auto& value) { take(value); }, *body);
        return Outcome::applied;
    }

private:
    void take(records::PatientRegistered& body)
    {
        const auto [place, fresh] = m_state.patients.try_emplace(body.patient, body);
        if (fresh)
            return;
        records::PatientRegistered& holds = place->second;
        auto& corrections = m_state.patientCorrections[body.patient];
        PatientCorrection correction = correctionOf(*m_operation, body, holds, corrections);
        const auto who = m_state.namedBefore.find(m_operation->id.device);
        if (who != m_state.namedBefore.end() && who->second.number + 1 == m_operation->id.number)
            correction.by = who->second.by;
        holds = correction.after;
        corrections.push_back(std::move(correction));
    }

    void take(records::TreatmentRecorded& body)
    {
        takeTreatment(m_state.courses[body.treatment.course], body, *m_operation);
    }

    void take(records::CourseOpened& body)
    {
        takeOpening(m_state.courses[body.course], body, *m_operation);
    }

    /// A correction goes to the history of the entry that it replaces; one whose original has not
    /// arrived stands by itself under its own id.
    void take(records::EntryRecorded& body)
    {
        EntryHistory& history = m_state.courses[body.entry.course].entries[body.entry.id];
        if (!history.first && !m_operation->supersedes)
            history.first = m_operation->id;
        history.versions.push_back({std::move(body.entry), m_operation->id, m_operation->entered, m_operation->stamp});
    }

    void take(records::ReminderAnswered& body)
    {
        CourseState& course = m_state.courses[body.course];
        const std::string key = body.key;
        course.reminders.insert_or_assign(key, std::move(body));
    }

    void take(records::WarningShown& body) { m_state.courses[body.course].warnings.push_back(std::move(body)); }

    void take(records::FindingActed& body)
    {
        CourseState& course = m_state.courses[body.course];
        course.acts.push_back(std::move(body));
        course.actOperations.push_back(m_operation->id);
        course.actStamps.push_back(m_operation->stamp);
    }

    void take(records::ActTakenBack& body)
    {
        const OperationId act{body.act.device, body.act.number};
        m_state.courses[body.course].actsTakenBack.try_emplace(act, std::move(body));
    }

    void take(records::CallNoted& body) { m_state.courses[body.course].calls.push_back({body, m_operation->id, m_operation->entered}); }

    void take(records::WordHandedOver& body) { m_state.words.insert_or_assign(m_operation->id, std::move(body)); }

    void take(records::EntriesOpened& body)
    {
        CourseState& course = m_state.courses[body.course];
        for (const recovery::EntryId& entry : body.entries)
            course.openings.try_emplace(entry, Opening{body.by, body.at});
    }

    void take(records::VersionsOpened& body)
    {
        CourseState& course = m_state.courses[body.course];
        for (const records::EntryVersion& version : body.versions)
            course.versionOpenings.try_emplace({version.device, version.number}, Opening{body.by, body.at});
    }

    void take(records::MessageWritten& body) { m_state.courses[body.course].messages.push_back(std::move(body)); }

    void take(records::MessageRead& body)
    {
        m_state.courses[body.course].reads.try_emplace(body.message, body);
    }

    void take(records::FollowUpRecorded& body)
    {
        const auto course = body.course;
        m_state.courses[course].followUp = std::move(body);
    }

    void take(records::ProtocolSigned& body)
    {
        const std::string name = body.protocol.name;
        m_state.protocolVersions[name].push_back(body);
        m_state.protocols.insert_or_assign(name, std::move(body));
    }

    void take(records::ClinicDescribed& body)
    {
        m_state.people.push_back({body.people, m_operation->id, m_operation->entered, m_operation->stamp});
        m_state.clinic = std::move(body);
    }

    void take(records::DoseLimited& body) { m_state.doseLimited = std::move(body); }

    void take(records::PatientLinked& body)
    {
        CourseState& course = m_state.courses[body.course];
        // Linked anew, it is sealed to as the link says.
        course.phoneKeys.erase(envelope::deviceIdOf({body.signingKey}));
        course.link = std::move(body);
    }

    /// Both stand in the journal for whoever asks who did it. Of a backup follows how old a desk's last one is.
    void take(const records::StepTaken& body)
    {
        if (body.step != records::Step::backupMade)
            return;
        m_state.backups[m_operation->id.device].push_back(body.at);
    }
    /// One about a course stands on that course's shelf, and is not asked for here.
    void take(records::WorkDone& body)
    {
        if (body.course.isNull())
            m_state.namedBefore.insert_or_assign(m_operation->id.device, NamedBefore{m_operation->id.number, std::move(body.by)});
    }

    void take(records::RoleGiven& body)
    {
        m_state.roles.push_back({std::move(body), m_operation->id, m_operation->entered, m_operation->stamp});
    }

    /// A phone speaks of its own key alone: the operation's device is its author.
    void take(records::KeyAnnounced& body)
    {
        const auto course = body.course;
        m_state.courses[course].phoneKeys.insert_or_assign(m_operation->id.device, body);
    }

    void take(records::BandLearned& body)
    {
        const std::string version = body.learned.version();
        if (m_state.bands.add(std::move(body.learned)))
            m_state.bandThresholds.emplace(version, std::move(body.thresholds));
    }

    void take(records::BandChosen& body)
    {
        // Two desks may choose at once: whatever the rules refuse by then changes nothing.
        static_cast<void>(m_state.bands.choose(std::move(body.choice)));
    }

    void take(records::PhotoTaken& body)
    {
        CourseState& course = m_state.courses[body.course];
        const photos::PhotoId photo = body.manifest.photo;
        course.photos.try_emplace(photo, Version<records::PhotoTaken>{std::move(body), m_operation->id, m_operation->entered});
    }

    /// A phone has no say about what the clinic took.
    void take(records::PhotoRemoved& body)
    {
        CourseState& course = m_state.courses[body.course];
        if (!course.clinicPhotos.contains(body.photo))
            course.photosRemoved.try_emplace(body.photo, body);
    }

    void take(records::ClinicPhotoTaken& body)
    {
        CourseState& course = m_state.courses[body.course];
        const photos::PhotoId photo = body.manifest.photo;
        records::PhotoTaken taken{body.course, std::move(body.manifest), body.pose, {}, body.at};
        if (!course.photos.try_emplace(photo, Version<records::PhotoTaken>{std::move(taken), m_operation->id, m_operation->entered}).second)
            return;
        course.clinicPhotos.emplace(photo, std::move(body.by));
        course.photosRemoved.erase(photo);
    }

    void take(records::ClinicPhotoRemoved& body)
    {
        CourseState& course = m_state.courses[body.course];
        if (!course.clinicPhotos.contains(body.photo) || !course.photosRemoved.try_emplace(body.photo, records::PhotoRemoved{body.course, body.photo, body.at}).second)
            return;
        course.clinicPhotosRemoved.emplace(body.photo, std::move(body.by));
    }

    void take(records::PhotosReceived& body)
    {
        CourseState& course = m_state.courses[body.course];
        for (const photos::PhotoId& photo : body.photos) {
            course.photosReceived.try_emplace(photo, body.at);
            course.photoHolders[photo].insert(m_operation->id.device);
        }
    }

    void take(records::EyesMarked& body)
    {
        const auto photo = body.photo;
        m_state.courses[body.course].eyes.insert_or_assign(photo, std::move(body));
    }

    State& m_state;
    records::KnownBands& m_bands;
    const Operation* m_operation = nullptr;
};

}  // namespace

State fold(std::span<const Operation> operations)
{
    Journal journal;
    auto place = operations.begin();
    // What gives them here fails never.
    static_cast<void>(journal.addAll([&]() -> Result<std::optional<Operation>> {
        return place == operations.end() ? std::nullopt : std::optional(*place++);
    }));
    return journal.state();
}

void Journal::add(Operation operation)
{
    if (const auto known = m_known.find(operation.id); known != m_known.end()) {
        if (!replaces(operation, find(operation.id, known->second)))
            return;
        remove(operation.id);
    }
    m_known.insert_or_assign(operation.id, operation.course);
    ++m_state.operations;

    const recovery::CourseId course = operation.course;
    Shelf& shelf = m_shelves[course];
    const auto place = std::ranges::lower_bound(shelf.operations, operation, before, &Kept::operation);
    if (place != shelf.operations.end()) {
        shelf.operations.insert(place, cut(std::move(operation)));
        refold(course, shelf);
        return;
    }
    const Fold::Outcome outcome = Fold(m_state, m_bands).apply(operation);
    shelf.operations.push_back(cut(std::move(operation)));
    switch (outcome) {
    case Fold::Outcome::applied: noteChange(course); return;
    case Fold::Outcome::unknown:
        ++shelf.unknown;
        ++m_state.unknown;
        noteNotUnderstood(course, shelf);
        return;
    case Fold::Outcome::unreadable:
        ++shelf.unreadable;
        ++m_state.unreadable;
        noteNotUnderstood(course, shelf);
        return;
    }
}

Done Journal::addAll(const std::function<Result<std::optional<Operation>>()>& next)
{
    std::vector<Operation> again;  // under a name that is taken: one of the two is dropped, which add() decides
    std::pair<recovery::CourseId, Shelf*> last{};
    Done done;
    for (;;) {
        Result<std::optional<Operation>> operation = next();
        if (!operation)
            done = fail(operation.error());
        if (!operation || !*operation)
            break;
        const std::size_t known = m_known.size();
        // They are kept in order of their names: the hint is right whenever this one comes after all.
        m_known.try_emplace(m_known.end(), (*operation)->id, (*operation)->course);
        if (m_known.size() == known) {
            again.push_back(std::move(**operation));
            continue;
        }
        ++m_state.operations;
        if (last.second == nullptr || last.first != (*operation)->course)
            last = {(*operation)->course, &m_shelves[(*operation)->course]};
        last.second->operations.push_back(cut(std::move(**operation)));
        last.second->laid = true;
    }
    for (auto& [course, shelf] : m_shelves) {
        if (!std::exchange(shelf.laid, false))
            continue;
        if (!std::ranges::is_sorted(shelf.operations, before, &Kept::operation))
            std::ranges::sort(shelf.operations, before, &Kept::operation);
        refold(course, shelf);
    }
    for (Operation& operation : again)
        add(std::move(operation));
    return done;
}

void Journal::noteChange(const recovery::CourseId& course)
{
    ++m_changes;
    if (const auto changed = m_state.courses.find(course); changed != m_state.courses.end())
        changed->second.revision = m_changes;
}

void Journal::refold(const recovery::CourseId& course, Shelf& shelf)
{
    if (course.isNull()) {
        static_cast<ClinicState&>(m_state) = {};
    } else {
        m_state.courses.erase(course);
    }
    m_state.unknown -= shelf.unknown;
    m_state.unreadable -= shelf.unreadable;
    shelf.unknown = shelf.unreadable = 0;
    Fold fold(m_state, m_bands);
    for (const Kept& kept : shelf.operations) {
        const Fold::Outcome outcome = kept.tail ? fold.apply(whole(kept)) : fold.apply(kept.operation);
        shelf.unknown += outcome == Fold::Outcome::unknown ? 1 : 0;
        shelf.unreadable += outcome == Fold::Outcome::unreadable ? 1 : 0;
    }
    m_state.unknown += shelf.unknown;
    m_state.unreadable += shelf.unreadable;
    noteNotUnderstood(course, shelf);
    noteChange(course);
}

void Journal::noteNotUnderstood(const recovery::CourseId& course, const Shelf& shelf)
{
    if (const std::size_t count = shelf.unknown + shelf.unreadable; count > 0)
        m_state.notUnderstood.insert_or_assign(course, count);
    else
        m_state.notUnderstood.erase(course);
}

}  // namespace ebbline::journal
