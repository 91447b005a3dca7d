#include "core/vault/inspection.h"

#include "core/photos/sealed_photo.h"
#include "core/vault/inside.h"
#include "core/vault/rows.h"
#include "core/vault/tables.h"

namespace ebbline::vault {

namespace {

using Kind = Fault::Kind;

constexpr std::size_t faultsAtMost = 50;  ///< of one kind

/// What is wrong so far, not more of one kind than anybody reads.
class Faults {
public:
    explicit Faults(std::vector<Fault>& faults) : m_faults(faults) {}
    void add(Kind kind, const std::string& detail)
    {
        const auto same = std::ranges::count(m_faults, kind, &Fault::kind);
        if (static_cast<std::size_t>(same) < faultsAtMost)
            m_faults.push_back({kind, detail});
    }

private:
    std::vector<Fault>& m_faults;
};

/// Calls `take` for each row; a statement that breaks off is damage of the structure.
void forEachRow(store::Database& database, Faults& faults, std::string_view sql,
                const std::function<void(store::Statement&)>& take)
{
    auto rows = database.prepare(sql);
    Result<bool> row = rows ? rows->step() : fail(rows.error());
    while (row && *row) {
        take(*rows);
        row = rows->step();
    }
    if (!row)
        faults.add(Kind::structure, row.error().detail);
}

std::size_t count(store::Database& database, Faults& faults, std::string_view sql)
{
    std::size_t number = 0;
    forEachRow(database, faults, sql, [&](store::Statement& row) { number = static_cast<std::size_t>(row.integer(0)); });
    return number;
}

std::optional<bytes::Bytes> factOf(store::Database& database, Faults& faults, std::string_view name)
{
    std::optional<bytes::Bytes> value;
    forEachRow(database, faults, "SELECT name, value FROM fact", [&](store::Statement& row) {
        if (row.text(0) == name)
            value = row.blob(1);
    });
    return value;
}

/// Said by the vault itself, and others followed it.
bool isFirstDestroyed(store::Database& database, Faults& faults)
{
    return count(database, faults, "SELECT count(*) FROM kept WHERE name = 'key-gone/1'") > 0
           && count(database, faults, "SELECT count(*) FROM epoch") > 0;
}

/// This device's number, from its own signing key; empty, with a fault, if its keys are missing.
std::optional<envelope::DeviceId> ownDevice(store::Database& database, Faults& faults)
{
    const auto owner = factOf(database, faults, "owner");
    std::vector<std::string_view> wanted{"signing", "box"};
    const bool clinic = owner && *owner == bytes::Bytes{static_cast<std::uint8_t>(Vault::Owner::clinic)};
    if (clinic) {
        // A desk that joined another's clinic may hold only the public half of the root.
        const bool joined = factOf(database, faults, "root-public").has_value();
        wanted.insert(wanted.end(), {joined ? "root-public" : "root", "epoch"});
    }
    std::optional<envelope::DeviceId> device;
    for (const std::string_view name : wanted) {
        auto key = factOf(database, faults, name);
        // The first of keys that are replaced is destroyed in time.
        const bool first = name == "epoch" || (name == "box" && !clinic);
        if (first && !key && isFirstDestroyed(database, faults))
            continue;
        if (!key || key->size() != crypto::Secret::size)
            faults.add(Kind::deviceKeys, std::string(name));
        else if (name == "signing")
            device = envelope::deviceIdOf(crypto::SigningKey::fromSeed(*key).publicKey());
        if (key)
            crypto::wipe(*key);
    }
    if (!owner || owner->size() != 1)
        faults.add(Kind::deviceKeys, "owner");
    return device;
}

/// The first number of the run that a number belongs to.
std::int64_t runOf(const std::set<std::uint64_t>& runs, std::int64_t number)
{
    const auto next = runs.upper_bound(static_cast<std::uint64_t>(number));
    return next == runs.begin() ? 1 : static_cast<std::int64_t>(*std::prev(next));
}

/// How many chunks of each photograph are what its manifest says; the others are faults.
std::map<photos::PhotoId, std::size_t> soundChunks(store::Database& database, Faults& faults,
                                                   const std::map<photos::PhotoId, const records::PhotoTaken*>& known)
{
    std::map<photos::PhotoId, std::size_t> sound;
    forEachRow(database, faults, "SELECT photo, number, body FROM photo_chunk ORDER BY id", [&](store::Statement& row) {
        photos::PhotoId photo;
        photo.value = arrayOf<16>(row.blob(0));
        const std::int64_t number = row.integer(1);
        const auto taken = known.find(photo);
        if (taken == known.end() || number < 0 || number > std::int64_t{photos::mostChunks}
            || !photos::checkChunk(taken->second->manifest, static_cast<std::uint32_t>(number), row.blob(2)))
            faults.add(Kind::photo, "chunk " + std::to_string(number));
        else
            ++sound[photo];
    });
    return sound;
}

/// What the clinic did not confirm is the only copy: it must be whole on the phone that took it.
void inspectPhotos(store::Database& database, Faults& faults, const journal::State& state,
                   const std::optional<envelope::DeviceId>& device, Inspection& found)
{
    std::map<photos::PhotoId, const records::PhotoTaken*> known;
    for (const auto& [id, course] : state.courses)
        for (const auto& [photo, version] : course.photos)
            if (!course.photosRemoved.contains(photo))
                known.emplace(photo, &version.value);
    const auto sound = soundChunks(database, faults, known);
    for (const auto& [id, course] : state.courses)
        for (const auto& [photo, version] : course.photos) {
            const auto held = sound.find(photo);
            const bool whole = held != sound.end() && held->second == version.value.manifest.chunkHashes.size();
            found.photos += whole ? 1 : 0;
            if (!whole && known.contains(photo) && version.operation.device == device && !course.photosReceived.contains(photo))
                faults.add(Kind::photo, "operation " + std::to_string(version.operation.number));
        }
}

void inspectOperations(store::Database& database, Faults& faults, Inspection& found)
{
    const std::optional<envelope::DeviceId> device = ownDevice(database, faults);
    std::vector<journal::Operation> operations;
    bytes::Array<32> chain{};
    std::int64_t wanted = 1;
    const Result<std::set<std::uint64_t>> starts = runsOf(database);
    if (!starts)
        faults.add(Kind::structure, starts.error().detail);
    const std::set<std::uint64_t> runs = starts.value_or(std::set<std::uint64_t>{});
    bool chainHolds = true;
    const char* const all = found.version >= tailsSince
                                ? "SELECT o.device, o.number, o.bytes, o.chain, t.bytes FROM operation o"
                                  " LEFT JOIN tail t ON t.hash = o.tail ORDER BY o.device, o.number"
                                : "SELECT device, number, bytes, chain, NULL FROM operation ORDER BY device, number";
    forEachRow(database, faults, all, [&](store::Statement& row) {
        const bytes::Bytes whole = wholeOf(row, 2, 4);
        const bytes::Bytes who = row.blob(0);
        const std::int64_t number = row.integer(1);
        const std::string place = "operation " + std::to_string(number);
        const bool own = device && std::ranges::equal(who, device->view());
        if (own) {
            ++found.own;
            wanted = std::max(wanted, runOf(runs, number));
            wanted = std::max(wanted, number - static_cast<std::int64_t>(faultsAtMost));
            for (; wanted < number; ++wanted)
                faults.add(Kind::gap, "operation " + std::to_string(wanted));
            wanted = number + 1;
            chain = chained(chain, whole);
            if (!crypto::equal(chain, row.blob(3)) && std::exchange(chainHolds, false))
                faults.add(Kind::chain, place);
        }
        auto operation = journal::decode(whole);
        if (!operation || !std::ranges::equal(operation->id.device.view(), who)
            || operation->id.number != static_cast<std::uint64_t>(number)) {
            faults.add(Kind::operation, own ? place : place + " of another device");
            return;
        }
        operations.push_back(std::move(*operation));
    });
    std::ranges::sort(operations, journal::before);
    journal::Journal journal;
    for (const journal::Operation& operation : operations) {
        const std::size_t before = journal.state().unreadable;
        journal.add(operation);
        if (device && operation.id.device == *device && journal.state().unreadable > before)
            faults.add(Kind::contents, "operation " + std::to_string(operation.id.number));
    }
    if (found.version >= tailsSince)
        forEachRow(database, faults, "SELECT hash, bytes FROM tail", [&](store::Statement& row) {
            if (!crypto::equal(crypto::hash256(row.blob(1)), row.blob(0)))
                faults.add(Kind::operation, "what operations have in common");
        });
    found.operations = operations.size();
    found.courses = journal.state().courses.size();
    found.folded = journal::digest(journal.state());
    if (found.version >= photosSince)
        inspectPhotos(database, faults, journal.state(), device, found);
    if (journal::digest(journal::fold(operations)) != found.folded)
        faults.add(Kind::fold, "folding all at once differs from adding one by one");
    if (device)
        forEachRow(database, faults,
                   "SELECT mailbox, max(sequence) FROM outgoing GROUP BY mailbox"
                   " HAVING max(sequence) - min(sequence) + 1 <> count(*)",
                   [&](store::Statement& row) {
            faults.add(Kind::outbox, "a gap before envelope " + std::to_string(row.integer(1)));
        });
    if (device) {
        auto heads = database.prepare("SELECT outgoing.sequence, outgoing.envelope, head.sequence, head.hash FROM outgoing"
                                      " LEFT JOIN head ON head.mailbox = outgoing.mailbox AND head.device = ?1"
                                      " WHERE outgoing.sequence >= ifnull(head.sequence, 0)");
        if (heads)
            heads->bind(device->view());
        Result<bool> row = heads ? heads->step() : fail(heads.error());
        for (; row && *row; row = heads->step())
            if (heads->integer(0) != heads->integer(2) || !crypto::equal(envelope::hashOf(heads->blob(1)), heads->blob(3)))
                faults.add(Kind::outbox, "envelope " + std::to_string(heads->integer(0)));
        if (!row)
            faults.add(Kind::structure, row.error().detail);
    }
}

void inspectDatabase(store::Database& database, Inspection& found)
{
    Faults faults(found.faults);
    for (const store::Database::Damage& damage : database.damage())
        faults.add(damage.where == store::Database::Damage::Where::page ? Kind::page : Kind::structure, damage.detail);
    found.version = database.version();
    inspectOperations(database, faults, found);
    found.waiting = count(database, faults, "SELECT count(*) FROM operation WHERE mailbox IS NOT NULL AND carried = 0");
    found.unacknowledged = count(database, faults, "SELECT count(*) FROM outgoing");
    found.quarantined = count(database, faults, "SELECT count(*) FROM quarantine");
    if (found.version >= versionTableSince) {
        const std::size_t noted = count(database, faults, "SELECT ifnull(max(version), 0) FROM schema");
        if (noted != static_cast<std::size_t>(found.version))
            faults.add(Kind::version, "the file says " + std::to_string(found.version) + ", its table " + std::to_string(noted));
    }
}

}  // namespace

Inspection inspect(const std::filesystem::path& folder, const crypto::Secret& dataKey)
{
    Inspection found;
    Faults faults(found.faults);
    for (const bool newest : {true, false})
        if (!KeySlots::isFileSound(folder, newest))
            faults.add(newest ? Kind::keyFile : Kind::keyFileBefore, newest ? "vault.keys" : "vault.keys.previous");
    if (const auto info = readOpenInfo(folder); !info && info.error().reason != Reason::notFound)
        faults.add(Kind::openInfo, "open.info");
    auto database = store::Database::inspect(folder / databaseFile, databaseKey(dataKey));
    if (database)
        inspectDatabase(*database, found);
    else
        faults.add(Kind::unreadable, database.error().detail);
    return found;
}

Result<Inspection> inspect(const std::filesystem::path& folder, const Offered& offered, const clock::Readings& now)
{
    // Before the key is asked: opening mends a damaged key file, and what was damaged must be told.
    const bool newestSound = KeySlots::isFileSound(folder, true);
    const bool previousSound = KeySlots::isFileSound(folder, false);
    const Result<crypto::Secret> dataKey = openDataKey(folder, offered, now);
    if (!dataKey)
        return fail(dataKey.error());
    Inspection found = inspect(folder, *dataKey);
    if (!newestSound && KeySlots::isFileSound(folder, true))
        found.faults.insert(found.faults.begin(), {Kind::keyFile, "vault.keys, mended from the generation before"});
    if (!previousSound && KeySlots::isFileSound(folder, false))
        found.faults.insert(found.faults.begin(), {Kind::keyFileBefore, "vault.keys.previous, mended from the newest generation"});
    return found;
}

Done Vault::verify()
{
    Inspection found;
    inspectDatabase(m_inside->database, found);
    Faults faults(found.faults);
    if (found.folded != journal::digest(state()))
        faults.add(Kind::fold, "what is shown differs from what the journal says");
    if (!found.sound())
        return fail(Reason::damaged, "vault: " + found.faults.front().detail);
    return {};
}

}  // namespace ebbline::vault
