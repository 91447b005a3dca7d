#include "tests/faults/workload.h"

#include "core/bytes/reader.h"
#include "tests/core/photos/sample_jpeg.h"
#include "tests/core/records/sample_bodies.h"

#include <ctime>
#include <unistd.h>

namespace ebbline::faults {

namespace {

using What = Ack::What;

const auto mailbox = test::idOf<envelope::MailboxTag>(8);
const auto peer = test::idOf<envelope::DeviceTag>(77);
const auto evening = test::momentAt("2027-03-02T20:00:00+01:00");

/// An entry that nobody else makes; `note` says which part of a whole it is.
records::Body entryBody(std::mt19937_64& random, const std::string& note)
{
    auto entry = test::sampleEntry();
    for (auto& byte : entry.id.value)
        byte = static_cast<std::uint8_t>(random());
    entry.note = note;
    return records::EntryRecorded{entry};
}

bytes::Bytes randomBytes(std::mt19937_64& random, std::size_t count)
{
    bytes::Bytes out(count);
    for (auto& byte : out)
        byte = static_cast<std::uint8_t>(random());
    return out;
}

/// 0 while there is none; empty if it cannot be read.
std::optional<std::uint64_t> draftOf(const vault::Vault& vault)
{
    const auto kept = vault.kept("draft");
    if (!kept && kept.error().reason != Reason::notFound)
        return std::nullopt;
    return kept ? bytes::Reader(*kept).u64() : 0;
}

std::uint64_t peersOf(const vault::Vault& vault)
{
    const auto operations = vault.operations();
    return static_cast<std::uint64_t>(
        std::ranges::count(operations, peer, [](const journal::Operation& o) { return o.id.device; }));
}

}  // namespace

std::optional<Ack> Worker::append(std::size_t entries)
{
    std::vector<records::Body> bodies;
    for (std::size_t i = 1; i <= entries; ++i)
        bodies.push_back(entryBody(m_random, std::to_string(i) + " of " + std::to_string(entries)));
    const auto ids = m_vault.append(bodies, evening, mailbox);
    if (!ids)
        return std::nullopt;
    return Ack{What::entry, ids->back().number, crypto::hash256(records::encode(bodies.back()))};
}

std::optional<Ack> Worker::keepDraft()
{
    const auto last = draftOf(m_vault);
    if (!last)
        return std::nullopt;
    const std::uint64_t next = *last + 1;
    bytes::Bytes value = bytes::Writer().u64(next).raw(randomBytes(m_random, m_random() % 300)).bytes();
    if (!m_vault.keep("draft", value))
        return std::nullopt;
    return Ack{What::draft, next, {}};
}

std::optional<Ack> Worker::seal()
{
    const auto waiting = m_vault.unsealed(mailbox);
    if (!waiting)
        return std::nullopt;
    std::vector<journal::OperationId> carried;
    for (const journal::Operation& operation : *waiting)
        carried.push_back(operation.id);
    const auto head = m_vault.ownHead(mailbox);
    if (!head)
        return std::nullopt;
    const std::uint64_t sequence = head->sequence + 1;
    const bytes::Bytes sealed = randomBytes(m_random, 200 + m_random() % 6000);
    if (!m_vault.storeSealed(mailbox, sequence, sealed, carried))
        return std::nullopt;
    return Ack{What::sealed, sequence, envelope::hashOf(sealed)};
}

std::optional<Ack> Worker::deliver()
{
    const auto head = m_vault.ownHead(mailbox);
    if (!head || head->sequence == 0 || !m_vault.acknowledged(mailbox, head->sequence, evening.at))
        return std::nullopt;
    return Ack{What::delivered, head->sequence, {}};
}

std::optional<Ack> Worker::acceptPeer()
{
    const auto head = m_vault.peerHead(mailbox, peer);
    if (!head)
        return std::nullopt;
    const std::uint64_t had = head->sequence;
    const std::size_t count = 1 + m_random() % 3;
    std::vector<journal::Operation> operations;
    for (std::size_t i = 1; i <= count; ++i) {
        const records::Body body = entryBody(m_random, "from the peer");
        journal::Operation operation;
        operation.id = {peer, had + i};
        operation.stamp = clock::HybridTime::of(evening.at, static_cast<std::uint16_t>(i));
        operation.entered = evening;
        operation.kind = static_cast<std::uint16_t>(records::kindOf(body));
        operation.audience = journal::Audience::patientAndClinic;
        operation.course = records::courseOf(body);
        operation.body = records::encode(body);
        operations.push_back(std::move(operation));
    }
    // The cursor counts operations here, so that both can be compared afterwards.
    if (!m_vault.accept(mailbox, peer, {had + count, {}}, operations))
        return std::nullopt;
    return Ack{What::peer, had + count, {}};
}

std::optional<Ack> Worker::quarantine()
{
    if (!m_vault.quarantine(mailbox, randomBytes(m_random, 100), {Reason::outOfOrder, "a gap"}))
        return std::nullopt;
    return Ack{What::quarantined, m_vault.quarantined(mailbox), {}};
}

bool Worker::readAll()
{
    return m_vault.unsealed(mailbox).has_value() && m_vault.outgoing(mailbox).has_value() && m_vault.ownHead(mailbox).has_value()
           && draftOf(m_vault).has_value() && !m_vault.operations().empty();
}

photos::SealedPhoto somePhoto()
{
    return photos::seal(test::sampleJpegOf(70'000)).value();
}

std::optional<Ack> Worker::takePhoto(const photos::SealedPhoto& photo)
{
    const records::PhotoTaken taken{test::sampleCourse, photo.manifest, photos::Pose::front, {}, evening};
    const auto id = m_vault.appendPhoto(taken, photo.chunks, evening, mailbox);
    return id ? std::optional(Ack{What::photo, id->number, {}}) : std::nullopt;
}

std::optional<Ack> Worker::takePhotoBack()
{
    const auto course = m_vault.state().courses.find(test::sampleCourse);
    if (course == m_vault.state().courses.end())
        return std::nullopt;
    for (const auto& [photo, version] : course->second.photos) {
        if (course->second.photosRemoved.contains(photo))
            continue;
        const std::uint64_t number = version.operation.number;
        if (!m_vault.append({records::PhotoRemoved{test::sampleCourse, photo, evening}}, evening, mailbox))
            return std::nullopt;
        return Ack{What::photoBack, number, {}};
    }
    return std::nullopt;
}

std::optional<Ack> Worker::work()
{
    switch (m_random() % 12) {
    case 10: return takePhoto(somePhoto());
    case 11: return takePhotoBack();
    case 0:
    case 1:
    case 2: return append(1);
    case 3: return append(2 + m_random() % 3);
    case 4:
    case 5: return keepDraft();
    case 6: return seal();
    case 7: return deliver();
    case 8: return acceptPeer();
    default: return quarantine();
    }
}

void Ledger::add(const Ack& ack)
{
    if (ack.what == What::opened || ack.what == What::begun)
        return;
    ++m_acknowledged;
    switch (ack.what) {
    case What::entry: m_entries[ack.number] = ack.hash; break;
    case What::draft: m_draft = std::max(m_draft, ack.number); break;
    case What::sealed:
        m_sealed = std::max(m_sealed, ack.number);
        m_envelopes[ack.number] = ack.hash;
        break;
    case What::delivered: m_delivered = std::max(m_delivered, ack.number); break;
    case What::peer: m_peer = std::max(m_peer, ack.number); break;
    case What::photo: m_photos.insert(ack.number); break;
    case What::photoBack: m_photosBack.insert(ack.number); break;
    default: m_quarantined = std::max(m_quarantined, ack.number);
    }
}

std::vector<std::string> Ledger::check(const std::filesystem::path& folder, const crypto::Secret& dataKey,
                                       const clock::Clock& clock) const
{
    std::vector<std::string> wrong;
    const auto opened = vault::Vault::open(folder, dataKey, clock);
    if (!opened)
        return {"it does not open: " + opened.error().detail};
    const vault::Vault& vault = *opened;
    std::map<std::uint64_t, const journal::Operation*> own;
    const auto operations = vault.operations();
    for (const journal::Operation& operation : operations)
        if (operation.id.device == vault.device())
            own[operation.id.number] = &operation;
    for (const auto& [number, hash] : m_entries)
        if (const auto found = own.find(number); found == own.end() || crypto::hash256(found->second->body) != hash)
            wrong.push_back("entry " + std::to_string(number) + " was acknowledged and is not there");
    const auto course = vault.state().courses.find(test::sampleCourse);
    std::set<std::uint64_t> whole;
    if (course != vault.state().courses.end())
        for (const auto& [photo, version] : course->second.photos) {
            const bool back = course->second.photosRemoved.contains(photo), there = vault.photo(version.value.manifest).has_value();
            if (back == there)
                wrong.push_back(back ? "a photograph that was taken back is still there" : "a photograph is half there");
            if (there)
                whole.insert(version.operation.number);
        }
    for (const std::uint64_t number : m_photosBack)
        if (whole.contains(number))
            wrong.push_back("photograph " + std::to_string(number) + " was taken back and is there again");
    for (const std::uint64_t number : m_photos)
        if (const auto found = own.find(number); found == own.end())
            wrong.push_back("photograph " + std::to_string(number) + " was acknowledged and is not there");
    const vault::Cursor head = vault.ownHead(mailbox).value_or(vault::Cursor{});
    for (const auto& [number, operation] : own)
        if (vault.carriedBy(operation->id) > head.sequence)
            wrong.push_back("entry " + std::to_string(number) + " says that an envelope carries it that was never stored");
    // Entries written in one go: the last one here must be the last one of its go.
    const auto last = std::find_if(own.rbegin(), own.rend(), [](const auto& each) {
        return each.second->kind == static_cast<std::uint16_t>(records::Kind::entryRecorded);
    });
    if (last != own.rend())
        if (const auto body = records::decode(records::Kind::entryRecorded, last->second->body)) {
            const std::string& note = std::get<records::EntryRecorded>(*body).entry.note;
            if (note.substr(0, note.find(' ')) != note.substr(note.rfind(' ') + 1))
                wrong.push_back("half a transaction: the last entry is " + note);
        }
    if (draftOf(vault).value_or(0) < m_draft)
        wrong.push_back("an older draft came back");
    if (head.sequence < m_sealed || (m_envelopes.contains(head.sequence) && m_envelopes.at(head.sequence) != head.hash))
        wrong.push_back("a sealed envelope is gone");
    if (vault.delivered(mailbox).sequence < m_delivered)
        wrong.push_back("an acknowledgement is gone");
    const std::uint64_t cursor = vault.peerHead(mailbox, peer).value_or(vault::Cursor{}).sequence;
    if (cursor < m_peer || peersOf(vault) != cursor)
        wrong.push_back("the peer's entries and the cursor differ: " + std::to_string(peersOf(vault)) + " and "
                        + std::to_string(cursor) + ", acknowledged " + std::to_string(m_peer));
    if (vault.quarantined(mailbox) < m_quarantined)
        wrong.push_back("a quarantined envelope is gone");
    for (const vault::Fault& fault : vault::inspect(folder, dataKey).faults)
        if (fault.kind != vault::Fault::Kind::keyFileBefore)
            wrong.push_back("fault: " + fault.detail);
    return wrong;
}

Scratch::Scratch(const std::string& name)
{
    std::error_code problem;
    const std::filesystem::path memory = "/dev/shm";
    const bool here = std::filesystem::is_directory(memory, problem) && ::access(memory.c_str(), W_OK) == 0;
    m_path = (here ? memory : std::filesystem::temp_directory_path()) / ("ebbline-" + name + "-" + std::to_string(::getpid()));
    std::filesystem::remove_all(m_path, problem);
    std::filesystem::create_directories(m_path);
}

Scratch::~Scratch()
{
    std::error_code ignored;
    std::filesystem::remove_all(m_path, ignored);
}

void copyFolder(const std::filesystem::path& from, const std::filesystem::path& to)
{
    std::filesystem::remove_all(to);
    std::filesystem::copy(from, to);
}

double secondsNow()
{
    timespec now{};
    ::clock_gettime(CLOCK_MONOTONIC, &now);
    return static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) * 1e-9;
}

std::uint64_t option(int argc, char** argv, const std::string& name, std::uint64_t otherwise)
{
    for (int i = 1; i + 1 < argc; ++i)
        if (name == argv[i])
            return std::stoull(argv[i + 1]);
    return otherwise;
}

}  // namespace ebbline::faults
