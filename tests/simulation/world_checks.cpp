// What must hold in a simulated clinic: at any moment, and once everything was healed.

#include "tests/simulation/world.h"

#include <algorithm>

namespace ebbline::simulation {

/// Everything that each vault holds, beside what its author wrote: nothing that nobody wrote, and one thing under one number,
/// also where the author went on from a backup.
void World::noteLedger()
{
    std::vector<std::pair<Device*, journal::Operation>> fresh;
    for (const auto& device : devices)
        for (journal::Operation& operation : device->vault().operations())
            if (device->looked.insert(operation.id).second)
                fresh.emplace_back(device.get(), std::move(operation));
    const auto hashOf = [](const journal::Operation& operation) { return crypto::hash256(journal::encode(operation)); };
    for (const auto& [device, operation] : fresh)
        if (operation.id.device == device->vault().device())
            if (const auto [known, added] = ledger.written.try_emplace(operation.id, hashOf(operation)); !added && known->second != hashOf(operation))
                m_wrong.push_back(device->name + " used a number a second time");
    for (const auto& [device, operation] : fresh) {
        const auto known = ledger.written.find(operation.id);
        if (known == ledger.written.end())
            m_wrong.push_back(device->name + " holds what nobody wrote");
        else if (known->second != hashOf(operation))
            m_wrong.push_back(device->name + " holds something else than was written");
        if (device->isDesk)
            ledger.held.insert(operation.id);
        if (device->isDesk && !device->ended)
            ledger.heldInUse[operation.id].insert(device->vault().device());
    }
    for (const auto& device : devices) {
        if (!device->isDesk)
            continue;
        for (const auto& [id, course] : device->vault().state().courses)
            for (const auto& [photo, taken] : course.photos)
                if (!ledger.pictures.contains(photo) && device->desk->photo(id, photo))
                    ledger.pictures.insert(photo);
    }
}

/// Nobody says that a photograph is with the clinic that is not; nobody shows another picture than was taken.
void World::checkPhotos(Device& device, bool settled, std::vector<std::string>& wrong)
{
    std::size_t shown = 0;
    // A desk that is gone or put back may have been the only one that had it.
    const bool lossy = std::ranges::any_of(devices, [](const auto& each) { return each->isDesk && (each->ended || each->restored); });
    for (const patient::PhotoView& view : device.diary->photos()) {
        const auto picture = device.pictures.find(view.photo);
        if (picture == device.pictures.end())
            continue;  // of the phone before this one, or what became of it the power cut left open
        ++shown;
        bool atDesk = false;
        for (Device* each : desks()) {
            const auto there = each->desk->photo(device.course, view.photo);
            atDesk = atDesk || there;
            if (there && *there != picture->second)
                wrong.push_back(each->name + " shows another picture than " + device.name + " took");
        }
        if (view.received && !atDesk && !ledger.pictures.contains(view.photo))
            wrong.push_back(device.name + " says that the clinic has a photograph that it has not");
        if (settled && (!view.received || (!atDesk && !lossy)))
            wrong.push_back(device.name + ": a photograph did not arrive");
    }
    if (shown != device.pictures.size())
        wrong.push_back(device.name + " lost a photograph that it kept");
    if (!settled)
        return;
    for (Device* each : desks()) {
        const auto& courses = each->vault().state().courses;
        const auto course = courses.find(device.course);
        if (course == courses.end())
            continue;
        for (const auto& [photo, removed] : course->second.photosRemoved)
            if (each->desk->photo(device.course, photo) || each->vault().photoChunk(photo, 0))
                wrong.push_back(each->name + " still holds a photograph that was taken back");
    }
}

/// Whom a screen names for a version must have had it before him.
void World::checkEntries(Device& device, std::vector<std::string>& wrong)
{
    const auto opened = [&](const journal::OperationId& version, const std::string& by) {
        const auto found = ledger.opened.find(version);
        return found != ledger.opened.end() && found->second.contains(by);
    };
    for (const patient::EntryView& view : device.diary->history()) {
        const journal::OperationId& newest = view.history.versions.back().operation;
        if (view.state.place != patient::EntryState::Place::savedHere) {
            if (!ledger.held.contains(newest))
                wrong.push_back(device.name + " says that the clinic has an entry that it has not");
            ledger.acknowledged.insert(newest);
        }
        if (view.state.place == patient::EntryState::Place::opened && !opened(newest, view.state.openedBy))
            wrong.push_back(device.name + " says that an entry was opened that nobody opened");
        if (view.state.openedBefore && std::ranges::none_of(view.history.versions, [&](const auto& version) {
                return version.operation != newest && opened(version.operation, view.state.openedBefore->by);
            }))
            wrong.push_back(device.name + " says that an earlier version was opened that nobody opened");
    }
}

void World::checkOpenings(Device& device, std::vector<std::string>& wrong)
{
    for (const auto& [id, course] : device.vault().state().courses)
        for (const auto& [entry, history] : course.entries) {
            const journal::Opening* opening = course.opening(history);
            if (opening && !ledger.opened[history.versions.back().operation].contains(opening->by))
                wrong.push_back(device.name + " says that a version was opened that nobody saw");
        }
}

void World::checkClaims(std::vector<std::string>& wrong)
{
    noteLedger();
    wrong.insert(wrong.end(), m_wrong.begin(), m_wrong.end());
    m_wrong.clear();
    for (const auto& device : devices) {
        if (device->isDesk) {
            checkOpenings(*device, wrong);
            continue;
        }
        checkEntries(*device, wrong);
        checkPhotos(*device, false, wrong);
    }
}

std::string World::shared(Device& device, Device& phone, const std::set<journal::OperationId>& atDesk)
{
    const envelope::DeviceId own = phone.vault().device();
    std::vector<journal::Operation> both;
    for (journal::Operation& operation : device.vault().operations()) {
        if (operation.course != phone.course || operation.audience != journal::Audience::patientAndClinic)
            continue;
        // The keys of a former phone are of no use to the one that came after.
        if (operation.kind == static_cast<std::uint16_t>(records::Kind::keyAnnounced) && operation.id.device != own)
            continue;
        // What a desk that is gone told a phone and no colleague is there and nowhere else.
        const Device* author = deviceOf(operation.id.device);
        if (!device.isDesk && author && author->isDesk && (author->ended || author->restored) && !atDesk.contains(operation.id)) {
            ++counters.onlyOnPhones;
            continue;
        }
        both.push_back(std::move(operation));
    }
    return journal::dump(journal::fold(both));
}

void World::checkPhone(Device& device, const std::set<journal::OperationId>& atDesk, std::vector<std::string>& wrong)
{
    if (shared(device, device, atDesk) != shared(desk(), device, atDesk))
        wrong.push_back(device.name + " and the desk show different courses");
    for (const patient::EntryView& view : device.diary->history())
        if (view.state.place == patient::EntryState::Place::savedHere)
            wrong.push_back(device.name + " still waits for an acknowledgement");
    checkPhotos(device, true, wrong);
    const auto standing = device.vault().standing(device.mailbox);
    const auto there = desk().vault().standing(device.mailbox);
    if (!standing || !there || standing->gap || there->gap)
        wrong.push_back(device.name + ": a gap is left");
}

bool World::wentWithADesk(const journal::OperationId& entry)
{
    const auto held = ledger.heldInUse.find(entry);
    return held != ledger.heldInUse.end() && std::ranges::all_of(held->second, [&](const envelope::DeviceId& desk) {
        return std::ranges::any_of(endings, [&](const Ending& ending) { return ending.isDesk && ending.device == desk; });
    });
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
        if (!device->diary)
            continue;
        std::set<recovery::EntryId> shown;
        for (const patient::EntryView& view : device->diary->history())
            shown.insert(view.history.current().id);
        if (!std::ranges::includes(shown, device->kept))
            wrong.push_back(device->name + " lost an entry that it had recorded");
    }
    const std::string whole = journal::dump(desk().vault().state());
    for (Device* each : desks())
        if (journal::dump(each->vault().state()) != whole)
            wrong.push_back(each->name + " and the first desk show different journals");
    std::set<journal::OperationId> atDesk;
    for (const journal::Operation& operation : desk().vault().operations())
        atDesk.insert(operation.id);
    for (const journal::OperationId& entry : ledger.acknowledged) {
        if (atDesk.contains(entry))
            continue;
        if (wentWithADesk(entry))
            ++counters.goneWithADesk;
        else
            wrong.push_back("an entry that the clinic had acknowledged is not with it");
    }
    counters.acknowledgedEntries = ledger.acknowledged.size();
    for (std::size_t i = 0; i < phones(); ++i)
        checkPhone(phone(i), atDesk, wrong);
}

bool World::opens(Device& device, const bytes::Bytes& sealed, const envelope::DeviceId& sender)
{
    const auto key = deviceOf(sender)->vault().signingKey().publicKey();
    std::vector<const crypto::BoxKey*> keys{&device.vault().boxKey()};
    if (device.diary)
        keys = device.vault().boxKeys();
    else
        for (std::uint32_t number = 1; number <= device.vault().epochNumber(); ++number)
            if (const crypto::BoxKey* epoch = device.vault().epochKey(number))
                keys.push_back(epoch);
    return std::ranges::any_of(keys, [&](const crypto::BoxKey* each) { return envelope::open(sealed, key, *each).has_value(); });
}

/// Of a desk: what phones sealed to an epoch that begins with its ending, and what the first desk sealed to it since. Of a
/// phone: operations that the first desk sealed for its mailbox since, and all that any desk sealed for the course's other phones.
void World::checkEnvelopes(const Ending& ending, std::vector<std::string>& wrong)
{
    Device& device = *deviceOf(ending.device);
    std::set<envelope::MailboxId> later;
    for (const auto& each : devices)
        if (!device.isDesk && each->diary && each.get() != &device && each->course == device.course)
            later.insert(each->mailbox);
    for (const auto& [name, sealed] : m_envelopes) {
        const auto header = envelope::peek(sealed);
        const Device* from = header ? deviceOf(header->sender) : nullptr;
        must(from != nullptr, "every envelope is of a known device");
        const bool first = from == &desk(), here = header->mailbox == ending.mailbox;
        if (ending.isDesk && first && here && header->sequence > ending.sealed)
            wrong.push_back("something was sealed to " + device.name + " after it was shut out");
        const bool past = ending.isDesk ? from->diary && header->recipientEpoch >= ending.epoch
                                        : (first && here && header->sequence > ending.sealed && header->kind == envelope::Kind::operations)
                                              || (from->isDesk && later.contains(header->mailbox));
        if (!past)
            continue;
        ++counters.keptFromTheEnded;
        if (opens(device, sealed, header->sender))
            wrong.push_back(device.name + " opens what was sealed after its end");
    }
}

void World::checkEndings(std::vector<std::string>& wrong)
{
    const auto known = desk().desk->endedDevices();
    for (const Ending& ending : endings) {
        Device& device = *deviceOf(ending.device);
        checkEnvelopes(ending, wrong);
        if (ending.isDesk)
            for (const journal::Operation& operation : desk().vault().operations())
                if (operation.id.device == ending.device && operation.id.number > ending.written)
                    wrong.push_back("the clinic took what " + device.name + " wrote after it was shut out");
        const auto told = std::ranges::find(known, ending.device, &desk::EndedDevice::device);
        if (told == known.end())
            wrong.push_back("the first desk does not know that " + device.name + " is over");
        if (told == known.end() || !told->toldAt)
            continue;
        settle();
        syncOnce(device);
        settle();
        if (!device.lastRun.problem || device.lastRun.operationsReceived > 0)
            wrong.push_back("the hub lets " + device.name + " in, which is over");
        else
            ++counters.refusedByHub;
    }
}

}  // namespace ebbline::simulation
