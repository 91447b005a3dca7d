#include "tests/simulation/world.h"

#include "tests/core/photos/sample_jpeg.h"

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
    const auto add = [&](const std::string& name, const recovery::CourseId& course, const envelope::MailboxId& mailbox) {
        devices.push_back(std::make_unique<Device>(Device{name, folder / name, SkewedClock(timeline.clock()), {}, {}, {},
                                                          course, mailbox, false, 0, {}, {}}));
        Device& device = *devices.back();
        device.line = std::make_unique<Line>(network, name, [this, &device](const std::function<void()>& what) { act(device, what); });
        open(device);
    };
    add("desk", {}, {});
    for (const ClinicTemplate::Phone& phone : from.phones)
        add(phone.folder, phone.course, phone.mailbox);
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
    return m_service->handle(request, "127.0.0.1", timeline.now());
}

void World::open(Device& device)
{
    ++device.life;
    device.busy = false;
    if (device.name == "desk") {
        auto opened = desk::Desk::unlock(device.folder, passphrase, device.clock, zone());
        must(opened.has_value(), "the desk opens again");
        device.desk.emplace(std::move(*opened));
        device.desk->setPerson("Dr. Ada Lund");
        return;
    }
    auto opened = patient::Diary::unlock(device.folder, passphrase, device.clock, zone());
    must(opened.has_value(), device.name + " opens again: " + (opened ? "" : opened.error().detail));
    device.diary.emplace(std::move(*opened));
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

void World::writeEntry(Device& phone)
{
    patient::Diary& diary = *phone.diary;
    const auto history = diary.history();
    auto entry = diary.blankEntry();
    entry.at.at = std::max(entry.at.at, diary.course().treated.at);
    const auto score = [&] { return *recovery::Score::of(static_cast<int>(random() % 8)); };
    entry.scores = {{{recovery::Symptom::swelling, recovery::Side::left}, score()},
                    {{recovery::Symptom::pain, recovery::Side::right}, score()}};
    if (random() % 6 == 0)
        entry.present = {recovery::Sign::warmer};
    entry.note = std::string(random() % 60, 'n');
    const bool amend = !history.empty() && random() % 5 == 0;
    const recovery::EntryId old = amend ? history[random() % history.size()].history.current().id : recovery::EntryId{};
    const auto saved = amend ? diary.amend(old, entry) : diary.record(entry);
    counters.refused += saved ? 0 : 1;
    if (!saved)
        return;
    counters.entries += amend ? 0 : 1;
    counters.amended += amend ? 1 : 0;
    phone.kept.insert(saved->entry);
    trace.line(timeline.now(), phone.name + " records " + bytes::toHex(saved->entry.view()));
}

void World::writeMessage(Device& device)
{
    const std::string text = "message " + std::to_string(random() % 100'000);
    const Done done = device.diary ? device.diary->writeMessage(text)
                                   : device.desk->writeMessage(phone(random() % phones()).course, text);
    counters.messages += done ? 1 : 0;
    trace.line(timeline.now(), device.name + " writes " + (done ? text : done.error().detail));
}

void World::takePhoto(Device& phone)
{
    const bytes::Bytes picture = test::sampleJpegOf(1000 + random() % 250'000, static_cast<unsigned>(random()));
    const auto pose = static_cast<photos::Pose>(1 + random() % 3);
    const auto photo = phone.diary->addPhoto(picture, pose, {}, phone.diary->today().now);
    counters.refused += photo ? 0 : 1;
    if (!photo)
        return;
    ++counters.photos;
    phone.pictures.emplace(*photo, picture);
    trace.line(timeline.now(), phone.name + " photographs " + bytes::toHex(photo->view()));
}

void World::takePhotoBack(Device& phone)
{
    if (phone.pictures.empty())
        return;
    const auto picture = std::next(phone.pictures.begin(), static_cast<std::ptrdiff_t>(random() % phone.pictures.size()));
    const Done removed = phone.diary->removePhoto(picture->first);
    trace.line(timeline.now(), phone.name + " takes back " + bytes::toHex(picture->first.view()));
    counters.photosTakenBack += removed ? 1 : 0;
    if (removed)
        phone.pictures.erase(picture);
}

void World::openEntries()
{
    const Device& about = phone(random() % phones());
    if (const auto course = desk().desk->course(about.course))
        for (const auto& [id, history] : course->state->entries)
            seen.insert(history.versions.back().operation);
    const Done done = desk().desk->openEntries(about.course);
    counters.openings += done ? 1 : 0;
    trace.line(timeline.now(), "desk opens entries of " + about.name);
}

void World::note(Device& device, const sync::Report& report)
{
    device.busy = false;
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
    const auto done = [this, &device, life](const sync::Report& report) {
        if (life == device.life)
            note(device, report);
    };
    if (device.diary)
        device.diary->syncNow(*device.line, done);
    else
        device.desk->syncNow(*device.line, done);
}

void World::settle()
{
    while (timeline.step()) {
    }
}

int World::heal(int atMost)
{
    network.set({});
    lying = {};
    setCuts(0);
    for (const auto& device : devices)
        device->line->cut(false);
    settle();
    // What was lost on the way is offered again only hours later: several quiet rounds, not one, are the end.
    constexpr int quietEnough = 3;
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
