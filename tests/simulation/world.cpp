#include "tests/simulation/world.h"

#include <algorithm>

namespace ebbline::simulation {

World::World(const ClinicTemplate& from, const std::filesystem::path& folder, std::uint64_t seed, Trace& use, bool failingDisk)
    : timeline(from.ends + std::chrono::minutes(1)), random(seed), trace(use),
      network(timeline,
              [this](const mailbox::Request& request, const std::string& device) {
                  return lying ? lying(request, device) : honest(request);
              },
              random, use),
      m_from(from), m_folder(folder)
{
    std::filesystem::remove_all(folder);
    std::filesystem::copy(from.home, folder, std::filesystem::copy_options::recursive);
    if (failingDisk)
        m_disk = std::make_unique<faults::FaultDisk>();
    openHub();
    add("desk", true, {}, {}).person = "Dr. Ada Lund";
    desk().desk->setPerson(desk().person);
    for (const ClinicTemplate::Phone& phone : from.phones)
        m_current.push_back(&add(phone.folder, false, phone.course, phone.mailbox));
}

World::Device& World::add(const std::string& name, bool isDesk, const recovery::CourseId& course, const envelope::MailboxId& mailbox)
{
    devices.push_back(std::make_unique<Device>(name, m_folder / name, timeline.clock()));
    Device& device = *devices.back();
    device.isDesk = isDesk;
    device.course = course;
    device.mailbox = mailbox;
    device.line = std::make_unique<Line>(network, name, [this, &device](const std::function<void()>& what) { act(device, what); });
    if (vault::Vault::exists(device.folder))
        open(device);
    return device;
}

std::vector<World::Device*> World::desks()
{
    std::vector<Device*> all;
    for (const auto& device : devices)
        if (device->isDesk && !device->ended)
            all.push_back(device.get());
    return all;
}

World::Device* World::deviceOf(const envelope::DeviceId& id)
{
    const auto found = std::ranges::find_if(devices, [&](const auto& device) { return device->vault().device() == id; });
    return found == devices.end() ? nullptr : found->get();
}

World::~World()
{
    for (const auto& device : devices)
        close(*device);
    m_service.reset();
    m_store.reset();
    m_disk.reset();
    std::error_code ignored;
    std::filesystem::remove_all(m_folder, ignored);
}

mailbox::Response World::honest(const mailbox::Request& request)
{
    const mailbox::Response response = m_service->handle(request, "127.0.0.1", timeline.now());
    if (request.method == "PUT" && response.status / 100 == 2)
        noteEnvelope(request);
    return response;
}

/// What it saw of envelopes, whoever may open them; and whether one was sealed to a key that the clinic has replaced since.
void World::noteEnvelope(const mailbox::Request& request)
{
    const auto header = envelope::peek(request.body);
    if (!header || !m_envelopes.try_emplace({header->mailbox, header->sender, header->sequence}, request.body).second)
        return;
    Device* sender = deviceOf(header->sender);
    counters.sealedToEarlierEpochs += sender && sender->diary && header->recipientEpoch < desk().vault().epochNumber() ? 1 : 0;
}

void World::open(Device& device)
{
    ++device.life;
    device.busy = false;
    device.looked.clear();
    if (device.isDesk) {
        auto opened = desk::Desk::unlock(device.folder, passphrase, device.clock, zone());
        must(opened.has_value(), device.name + " opens again: " + (opened ? "" : opened.error().detail));
        device.desk.emplace(std::move(*opened));
        device.desk->setPerson(device.person);
        device.keyNumber = std::max(device.keyNumber, device.vault().epochNumber());
        return;
    }
    auto opened = patient::Diary::unlock(device.folder, passphrase, device.clock, zone());
    must(opened.has_value(), device.name + " opens again: " + (opened ? "" : opened.error().detail));
    device.diary.emplace(std::move(*opened));
    device.keyNumber = std::max(device.keyNumber, device.vault().epochNumber());
}

void World::close(Device& device)
{
    device.line->forget();
    device.diary.reset();
    device.desk.reset();
}

void World::restart(Device& device)
{
    ++counters.restarts;
    trace.line(timeline.now(), device.name + " starts again");
    close(device);
    open(device);
}

void World::copyAside(Device& device)
{
    close(device);
    const auto aside = m_folder / (device.name + "-aside");
    std::filesystem::remove_all(aside);
    std::filesystem::copy(device.folder, aside, std::filesystem::copy_options::recursive);
    open(device);
}

void World::putCopyBack(Device& device)
{
    trace.line(timeline.now(), device.name + " is put back to an older copy");
    close(device);
    std::filesystem::remove_all(device.folder);
    std::filesystem::copy(m_folder / (device.name + "-aside"), device.folder, std::filesystem::copy_options::recursive);
    open(device);
}

void World::copyHubAside()
{
    m_service.reset();
    m_store.reset();
    std::filesystem::remove_all(m_folder / "hub-aside");
    std::filesystem::copy(m_folder / "hub", m_folder / "hub-aside", std::filesystem::copy_options::recursive);
    openHub();
    m_hubCopy = true;
}

void World::restartHub()
{
    trace.line(timeline.now(), "the hub starts again");
    m_service.reset();
    m_store.reset();
    openHub();
}

void World::rollHubBack()
{
    trace.line(timeline.now(), "the hub is put back to an older copy");
    m_service.reset();
    m_store.reset();
    std::filesystem::remove_all(m_folder / "hub");
    std::filesystem::copy(m_folder / "hub-aside", m_folder / "hub", std::filesystem::copy_options::recursive);
    openHub();
}

void World::tidyHub(std::chrono::hours later)
{
    must(m_service->tidy(timeline.now() + later).has_value(), "the hub tidies");
    ++counters.hubsTidied;
}

void World::openHub()
{
    auto store = mailbox::openEmbeddedStore(m_folder / "hub");
    must(store.has_value(), "the hub's store opens");
    m_store = std::move(*store);
    m_service.emplace(*m_store, limits());
}

/// All lose their power with the one that was at work: the others are idle, and what they stored is synced.
void World::powerCut(Device& device)
{
    ++counters.cuts;
    trace.line(timeline.now(), device.name + " loses its power");
    for (const auto& each : devices)
        close(*each);
    m_service.reset();
    m_store.reset();
    (void)m_disk->powerReturns(random);
    openHub();
    for (const auto& each : devices)
        open(*each);
}

void World::act(Device& device, const std::function<void()>& what)
{
    if (!m_disk || random() % 1000 >= m_cuts)
        return what();
    m_disk->arm(faults::Fault::powerCut, 1 + random() % 25);
    what();
    if (m_disk->isOff())
        powerCut(device);
    else
        m_disk->disarm();
}

void World::note(Device& device, const sync::Report& report)
{
    device.busy = false;
    device.lastRun = report;
    counters.operationsReceived += report.operationsReceived;
    counters.envelopesReceived += report.envelopesReceived;
    counters.envelopesSent += report.envelopesSent;
    counters.gaps += report.gapSeen ? 1 : 0;
    counters.forks += report.forkSeen ? 1 : 0;
    counters.rolledBack += report.rolledBack ? 1 : 0;
    counters.quarantined += report.quarantined;
    counters.garbled += report.garbled;
    counters.silent += report.silent > 0 ? 1 : 0;
    counters.unproved += report.unproved > 0 ? 1 : 0;
    counters.problems += report.problem ? 1 : 0;
    counters.photosArrived += report.photosReceived;
    counters.photosRefused += report.photosRefused;
    counters.chunksSent += report.photoChunksSent;
    counters.chunksReceived += report.photoChunksReceived;
    trace.line(timeline.now(), device.name + " ran: sent " + std::to_string(report.envelopesSent) + ", came "
                                   + std::to_string(report.operationsReceived) + ", "
                                   + (report.problem ? report.problem->detail : "well"));
}

void World::syncOnce(Device& device)
{
    if (device.busy)
        return;
    device.busy = true;
    ++counters.runs;
    const std::uint64_t life = device.life;
    const bool underWay = somethingIsUnderWay(device);
    const auto done = [this, &device, life, underWay](const sync::Report& report) {
        if (life != device.life)
            return;
        noteKeys(device, underWay);
        note(device, report);
    };
    if (device.diary)
        device.diary->syncNow(*device.line, done);
    else
        device.desk->syncNow(*device.line, done);
}

/// A desk begins an epoch after its run, a phone its key before; either may have had something on its way to it.
void World::noteKeys(Device& device, bool underWay)
{
    const std::uint32_t newest = device.vault().epochNumber();
    // What a further desk learns, the first one began.
    if (newest > device.keyNumber && (device.diary || &device == &desk())) {
        const std::uint64_t sealed = underWay || somethingIsUnderWay(device) ? 1 : 0;
        ++(device.diary ? counters.phoneKeysBegun : counters.epochsBegun);
        (device.diary ? counters.phoneKeysBegunUnderWay : counters.epochsBegunUnderWay) += sealed;
        trace.line(timeline.now(), device.name + " has a fresh key, " + std::to_string(newest));
    }
    device.keyNumber = std::max(device.keyNumber, newest);
}

/// Sealed to one of its keys, and not acknowledged yet.
bool World::somethingIsUnderWay(Device& to)
{
    return std::ranges::any_of(devices, [&](const auto& from) {
        const auto links = from->vault().links();
        return links && from->isDesk != to.isDesk && std::ranges::any_of(*links, [&](const vault::Link& link) {
            const auto waiting = from->vault().outgoing(link.mailbox);
            return waiting && !waiting->empty() && (to.isDesk || link.mailbox == to.mailbox);
        });
    });
}

void World::settle()
{
    while (timeline.step()) {
    }
}

int World::heal(int atMost, int quietEnough)
{
    network.set({});
    lying = {};
    setCuts(0);
    for (const auto& device : devices)
        device->line->cut(false);
    settle();
    // What was lost on the way is offered again only hours later: several quiet rounds, not one, are the end.
    int quiet = 0;
    std::string before;
    for (int round = 1; round <= atMost; ++round) {
        for (const auto& device : devices) {
            syncOnce(*device);
            settle();
        }
        std::string now;
        for (const auto& device : devices)
            now += bytes::toHex(journal::digest(device->vault().state()));
        quiet = now == before ? quiet + 1 : 0;
        if (quiet == quietEnough)
            return round;
        before = now;
        timeline.pass(std::chrono::hours(7));
    }
    return atMost;
}

}  // namespace ebbline::simulation
