// What happens to a simulated clinic now and then: desks that come and go, fresh keys, phones that are lost or replaced, and
// devices that are put back to a backup.

#include "tests/simulation/world.h"

#include "core/desk/inviting.h"
#include "core/patient/joining.h"
#include "core/vault/backup.h"

#include <algorithm>

namespace ebbline::simulation {

namespace {

std::uint64_t highestOwn(vault::Vault& vault)
{
    std::uint64_t highest = 0;
    for (const journal::Operation& operation : vault.operations())
        if (operation.id.device == vault.device())
            highest = std::max(highest, operation.id.number);
    return highest;
}

std::uint64_t sealedIn(vault::Vault& vault, const envelope::MailboxId& mailbox)
{
    const auto head = vault.ownHead(mailbox);
    must(head.has_value(), "a chain can be read");
    return head->sequence;
}

std::map<envelope::MailboxId, std::uint64_t> headsOf(vault::Vault& vault)
{
    std::map<envelope::MailboxId, std::uint64_t> heads;
    const auto links = vault.links();
    const auto channels = vault.channels();
    must(links && channels, "links and channels can be read");
    for (const vault::Link& link : *links)
        heads.emplace(link.mailbox, sealedIn(vault, link.mailbox));
    for (const vault::Channel& channel : *channels)
        heads.emplace(channel.mailbox, sealedIn(vault, channel.mailbox));
    return heads;
}

/// Between this desk and that one; null if there is none.
envelope::MailboxId channelWith(vault::Vault& vault, const envelope::DeviceId& other)
{
    const auto channels = vault.channels();
    must(channels.has_value(), "channels can be read");
    const auto found = std::ranges::find(*channels, other, [](const vault::Channel& each) { return envelope::deviceIdOf(each.peerSigning); });
    return found == channels->end() ? envelope::MailboxId{} : found->mailbox;
}

/// Both sides, until there is a number to compare, and then to the end.
void pairUp(desk::Inviting& inviting, auto& joining, sync::Courier& courier)
{
    inviting.start(courier, [] {});
    must(joining.start(inviting.qrText()).has_value(), "the code is read");
    for (int i = 0; i < 4; ++i) {
        joining.poll(courier, [] {});
        inviting.poll(courier, [] {});
    }
    must(inviting.step() == desk::Inviting::Step::compare && joining.confirmationNumber() == inviting.confirmationNumber(),
         "both show one number");
    inviting.confirm(courier, [] {});
    joining.poll(courier, [] {});
    must(joining.step() == sync::Enrolling::Step::linked, "the device is linked");
}

}  // namespace

/// A code is good for ten minutes: nobody pairs anything with a clock that is hours off.
void World::setClocksRight(Device& one, Device& other)
{
    one.clock.set(std::chrono::milliseconds{0});
    other.clock.set(std::chrono::milliseconds{0});
}

/// After a grave step or a pairing a clinic makes a backup: one from before would know neither keys nor devices.
void World::renewBackup()
{
    if (desk().backup)
        backUp(desk());
}

World::Device& World::joinDesk(const std::string& person)
{
    Device& device = add("desk-" + std::to_string(++m_made), true, {}, {});
    setClocksRight(desk(), device);
    auto made = desk::Desk::create(device.folder, passphrase, cheap, device.clock, zone());
    must(made.has_value(), "another desk is made");
    device.desk.emplace(std::move(*made));
    device.person = person;
    device.desk->setPerson(person);
    must(desk().desk->allowStep(passphrase).has_value(), "the passphrase is given once more");
    DirectCourier courier(*m_service, timeline.clock());
    desk::Inviting inviting(*desk().desk, desk().clock, desk::Inviting::NewDesk::plain);
    desk::Applying applying(*device.desk, device.clock);
    pairUp(inviting, applying, courier);
    ++counters.desksJoined;
    m_hubCopy = false;
    trace.line(timeline.now(), device.name + " joins");
    renewBackup();
    return device;
}

void World::shutOut(Device& device)
{
    noteLedger();
    const envelope::DeviceId id = device.vault().device();
    const envelope::MailboxId channel = channelWith(desk().vault(), id);
    const bool underWay = somethingIsUnderWay(desk());
    must(desk().desk->allowStep(passphrase).has_value(), "the passphrase is given once more");
    const Done done = desk().desk->revokeDesk(id);
    must(done.has_value(), "a desk is shut out: " + (done ? "" : done.error().detail));
    device.ended = true;
    endings.push_back({id, true, highestOwn(device.vault()), desk().vault().epochNumber(), channel, sealedIn(desk().vault(), channel)});
    noteKeys(desk(), underWay);
    ++counters.desksShutOut;
    trace.line(timeline.now(), device.name + " is shut out");
    renewBackup();
}

void World::beginEpoch()
{
    const bool underWay = somethingIsUnderWay(desk());
    must(desk().desk->allowStep(passphrase).has_value(), "the passphrase is given once more");
    must(desk().desk->beginEpoch().has_value(), "an epoch begins");
    noteKeys(desk(), underWay);
    renewBackup();
}

void World::endAt(Device& device)
{
    device.ended = true;
    endings.push_back({device.vault().device(), false, highestOwn(device.vault()), 0, device.mailbox, sealedIn(desk().vault(), device.mailbox)});
}

void World::losePhone(std::size_t i)
{
    must(desk().desk->allowStep(passphrase).has_value(), "the passphrase is given once more");
    must(desk().desk->endPhone(phone(i).course).has_value(), "a lost phone is ended");
    endAt(phone(i));
    ++counters.phonesLost;
    trace.line(timeline.now(), phone(i).name + " is lost");
    renewBackup();
}

World::Device& World::replacePhone(std::size_t i)
{
    Device& before = phone(i);
    Device& fresh = add("phone-" + std::to_string(++m_made), false, before.course, {});
    setClocksRight(desk(), fresh);
    auto made = patient::Diary::create(fresh.folder, passphrase, cheap, fresh.clock, zone());
    must(made.has_value(), "another diary is made");
    fresh.diary.emplace(std::move(*made));
    const auto course = desk().desk->course(before.course);
    must(course && course->state->opened, "the desk knows the course");
    const auto old = before.ended ? desk::Inviting::OldPhone::lost : desk::Inviting::OldPhone::atHand;
    DirectCourier courier(*m_service, timeline.clock());
    desk::Inviting inviting(*desk().desk, desk().clock, before.course, triggers::defaultProtocol(), course->state->opened->followUp, old);
    patient::Joining joining(*fresh.diary, fresh.clock);
    pairUp(inviting, joining, courier);
    if (!before.ended) {
        endAt(before);
        ++counters.phonesReplacedAtHand;
    }
    fresh.mailbox = fresh.diary->link()->mailbox;
    fresh.keyNumber = fresh.vault().epochNumber();
    m_current[i] = &fresh;
    m_hubCopy = false;
    trace.line(timeline.now(), fresh.name + " takes the place of " + before.name);
    renewBackup();
    return fresh;
}

void World::backUp(Device& device)
{
    const auto file = m_folder / (device.name + ".backup");
    std::filesystem::remove(file);
    const auto made = vault::backup(device.folder, vault::Offered::passphrase(passphrase), device.clock.readings(), file);
    must(made.has_value(), device.name + " is backed up: " + (made ? "" : made.error().detail));
    device.backup = Backup{file, headsOf(device.vault()), device.kept, device.pictures};
    trace.line(timeline.now(), device.name + " is backed up");
}

void World::restore(Device& device)
{
    noteLedger();
    // What no hub took, nobody can miss.
    std::map<envelope::MailboxId, std::uint64_t> taken;
    for (const auto& [name, sealed] : m_envelopes)
        if (std::get<1>(name) == device.vault().device())
            taken[std::get<0>(name)] = std::max(taken[std::get<0>(name)], std::get<2>(name));
    close(device);
    std::filesystem::remove_all(device.folder);
    const auto back = vault::restore(device.backup->file, vault::Offered::passphrase(passphrase), device.clock.readings(), device.folder);
    must(back.has_value(), device.name + " is restored: " + (back ? "" : back.error().detail));
    open(device);
    device.restored = true;
    device.kept = device.backup->kept;
    device.pictures = device.backup->pictures;
    device.acts.clear();
    device.keyNumber = device.vault().epochNumber();
    for (const auto& [mailbox, sealed] : taken)
        if (const auto then = device.backup->heads.find(mailbox); then == device.backup->heads.end() || then->second < sealed)
            device.sentSinceBackup.insert(mailbox);
    ++(device.isDesk ? counters.desksRestored : counters.phonesRestored);
    trace.line(timeline.now(), device.name + " is restored from its backup");
}

bool World::twoStories(const envelope::MailboxId& mailbox)
{
    return std::ranges::any_of(devices, [&](const auto& device) {
        const auto standing = device->vault().standing(mailbox);
        return standing && (standing->fork || standing->rolledBack || standing->gap);
    });
}

bool World::setUpAnew(std::vector<std::string>& wrong)
{
    // What the old vault sent is proof that the restored one is older: whoever got it has to say so.
    const auto noticed = [&](Device& device, const envelope::MailboxId& mailbox) {
        if (!device.sentSinceBackup.contains(mailbox))
            return false;
        if (!twoStories(mailbox))
            wrong.push_back("nobody noticed that " + device.name + " goes on from an older copy");
        ++(device.isDesk ? counters.desksRestoredKnew : counters.phonesRestoredKnew);
        return true;
    };
    bool anything = false;
    for (Device* each : desks()) {
        if (each == &desk())
            continue;
        const envelope::MailboxId channel = channelWith(desk().vault(), each->vault().device());
        bool older = noticed(desk(), channel) || noticed(*each, channel);
        for (std::size_t i = 0; i < phones(); ++i)
            older = noticed(*each, phone(i).mailbox) || older;
        if (!older)
            continue;
        shutOut(*each);
        (void)joinDesk("Dr. Mira Holm");
        ++counters.setUpAnew;
        anything = true;
    }
    for (std::size_t i = 0; i < phones(); ++i) {
        Device& each = phone(i);
        const bool lost = each.ended;
        const bool older = !lost && (noticed(desk(), each.mailbox) || noticed(each, each.mailbox));
        if (!lost && !older)
            continue;
        (void)replacePhone(i);
        counters.setUpAnew += older ? 1 : 0;
        anything = true;
    }
    for (const auto& device : devices)
        device->sentSinceBackup.clear();
    return anything;
}

}  // namespace ebbline::simulation
