// What must hold in a simulated clinic: at any moment, and once everything was healed.

#include "tests/simulation/world.h"

namespace ebbline::simulation {

namespace {

using Operations = std::map<journal::OperationId, bytes::Bytes>;

Operations operationsOf(vault::Vault& vault)
{
    Operations all;
    for (const journal::Operation& operation : vault.operations())
        all.emplace(operation.id, journal::encode(operation));
    return all;
}

}  // namespace

std::string World::shared(vault::Vault& vault, const recovery::CourseId& course)
{
    std::vector<journal::Operation> both;
    for (journal::Operation& operation : vault.operations())
        if (operation.course == course && operation.audience == journal::Audience::patientAndClinic)
            both.push_back(std::move(operation));
    return journal::dump(journal::fold(both));
}

/// Nobody says that a photograph is with the clinic that is not; nobody shows another picture than was taken.
void World::checkPhotos(Device& device, bool settled, std::vector<std::string>& wrong)
{
    std::size_t shown = 0;
    for (const patient::PhotoView& view : device.diary->photos()) {
        const auto picture = device.pictures.find(view.photo);
        if (picture == device.pictures.end())
            continue;  // what became of it the power cut left open
        ++shown;
        const auto atDesk = desk().desk->photo(device.course, view.photo);
        if (atDesk && *atDesk != picture->second)
            wrong.push_back("the desk shows another picture than " + device.name + " took");
        if (view.received && !atDesk)
            wrong.push_back(device.name + " says that the clinic has a photograph that it has not");
        if (settled && (!view.received || !atDesk))
            wrong.push_back(device.name + ": a photograph did not arrive");
    }
    if (shown != device.pictures.size())
        wrong.push_back(device.name + " lost a photograph that it kept");
    if (!settled)
        return;
    const auto& course = desk().vault().state().courses.at(device.course);
    for (const auto& [photo, removed] : course.photosRemoved)
        if (desk().desk->photo(device.course, photo) || desk().vault().photoChunk(photo, 0))
            wrong.push_back("the desk still holds a photograph that was taken back");
}

void World::checkClaims(std::vector<std::string>& wrong)
{
    const Operations atDesk = operationsOf(desk().vault());
    for (std::size_t i = 0; i < phones(); ++i) {
        Device& device = phone(i);
        const Operations here = operationsOf(device.vault());
        for (const auto& [id, encoded] : here) {
            const auto there = atDesk.find(id);
            if (id.device == desk().vault().device()) {
                if (there == atDesk.end() || there->second != encoded)
                    wrong.push_back(device.name + " holds what the desk never wrote");
                continue;
            }
            if (there != atDesk.end() && there->second != encoded)
                wrong.push_back("the desk holds another operation than " + device.name + " wrote");
        }
        for (const auto& [id, encoded] : atDesk)
            if (id.device == device.vault().device() && !here.contains(id))
                wrong.push_back("the desk holds what " + device.name + " never wrote");
        checkPhotos(device, false, wrong);
        if (const auto held = desk().vault().state().courses.find(device.course); held != desk().vault().state().courses.end())
            for (const auto& [id, history] : held->second.entries)
                if (held->second.opening(history) && !seen.contains(history.versions.back().operation))
                    wrong.push_back("the desk says that a version was opened that nobody saw");
        const auto& courses = desk().vault().state().courses;
        const auto course = courses.find(device.course);
        for (const patient::EntryView& view : device.diary->history()) {
            const recovery::EntryId id = view.history.current().id;
            const bool known = course != courses.end() && course->second.entries.contains(id)
                               && course->second.entries.at(id).versions.size() >= view.history.versions.size();
            if (view.state.place != patient::EntryState::Place::savedHere && !known)
                wrong.push_back(device.name + " says that the clinic has an entry that it has not");
            const journal::OperationId& newest = view.history.versions.back().operation;
            if (view.state.place == patient::EntryState::Place::opened && (!known || !seen.contains(newest)))
                wrong.push_back(device.name + " says that an entry was opened that nobody opened");
            if (view.state.openedBefore && std::ranges::none_of(view.history.versions, [&](const auto& version) {
                    return version.operation != newest && seen.contains(version.operation);
                }))
                wrong.push_back(device.name + " says that an earlier version was opened that nobody opened");
        }
    }
}

void World::checkConvergence(std::vector<std::string>& wrong)
{
    checkClaims(wrong);
    for (const auto& device : devices) {
        const auto operations = device->vault().operations();
        if (journal::dump(journal::fold(operations)) != journal::dump(device->vault().state()))
            wrong.push_back(device->name + ": folding anew gives other bytes");
        if (const Done sound = device->vault().verify(); !sound)
            wrong.push_back(device->name + ": " + sound.error().detail);
    }
    for (std::size_t i = 0; i < phones(); ++i) {
        Device& device = phone(i);
        if (shared(device.vault(), device.course) != shared(desk().vault(), device.course))
            wrong.push_back(device.name + " and the desk show different courses");
        std::set<recovery::EntryId> shown;
        for (const patient::EntryView& view : device.diary->history()) {
            shown.insert(view.history.current().id);
            if (view.state.place == patient::EntryState::Place::savedHere)
                wrong.push_back(device.name + " still waits for an acknowledgement");
        }
        for (const recovery::EntryId& id : device.kept)
            if (!shown.contains(id))
                wrong.push_back(device.name + " lost an entry that it had recorded");
        checkPhotos(device, true, wrong);
        const auto standing = device.vault().standing(device.mailbox);
        const auto atDesk = desk().vault().standing(device.mailbox);
        if (!standing || !atDesk || standing->gap || atDesk->gap)
            wrong.push_back(device.name + ": a gap is left");
    }
}

}  // namespace ebbline::simulation
