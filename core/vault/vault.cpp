#include "core/vault/inside.h"
#include "core/vault/tables.h"

#include "core/bytes/reader.h"
#include "core/records/audience.h"
#include "core/store/durable_file.h"

namespace ebbline::vault {

namespace {

constexpr std::uintmax_t smallestDatabase = 4096;  ///< bytes: one page

SlotKind slotOf(Vault::Owner owner)
{
    return owner == Vault::Owner::clinic ? SlotKind::desk : SlotKind::passphrase;
}

/// A database without keys is what an interrupted set-up leaves, or all that is left of a vault whose keys
/// were lost: nothing opens it, but it is never written over or removed.
Done setAside(const std::filesystem::path& folder)
{
    std::error_code problem;
    if (!std::filesystem::exists(folder / databaseFile, problem))
        return {};
    std::string suffix;
    for (int i = 1; suffix.empty() || std::filesystem::exists(folder / (databaseFile + suffix), problem); ++i)
        suffix = ".without-keys-" + std::to_string(i);
    for (const char* part : {"", "-wal"}) {
        const auto from = folder / (std::string(databaseFile) + part);
        if (!std::filesystem::exists(from, problem))
            continue;
        std::filesystem::rename(from, folder / (databaseFile + suffix + part), problem);
        if (problem)
            return fail(Reason::storageFailed, "vault: a database without keys cannot be set aside");
    }
    std::filesystem::remove(folder / (std::string(databaseFile) + "-shm"), problem);
    return {};
}

Result<store::Database> openDatabase(const std::filesystem::path& folder, const crypto::Secret& dataKey)
{
    auto database = store::Database::open(folder / databaseFile, databaseKey(dataKey), vaultMigrations);
    // The key slot has proved the key: if the file does not open with it, the file is damaged.
    if (!database && (database.error().reason == Reason::wrongKey || database.error().reason == Reason::invalidState))
        return fail(Reason::damaged, "vault: the key is right, the file cannot be read");
    return database;
}

}  // namespace

crypto::Secret databaseKey(const crypto::Secret& dataKey)
{
    return crypto::derive(dataKey, 1, "eb-vault");
}

bytes::Array<32> chained(const bytes::Array<32>& before, bytes::View operation)
{
    return crypto::hash256(bytes::Writer().raw(before).raw(operation).bytes());
}

Vault::Vault(std::unique_ptr<Inside> inside) : m_inside(std::move(inside)) {}
Vault::Vault(Vault&&) noexcept = default;
Vault& Vault::operator=(Vault&&) noexcept = default;
Vault::~Vault() = default;

bool Vault::exists(const std::filesystem::path& folder)
{
    std::error_code ignored;
    return std::filesystem::exists(folder / "vault.keys", ignored)
           || std::filesystem::exists(folder / "vault.keys.previous", ignored);
}

Result<Vault> Vault::create(const std::filesystem::path& folder, Owner owner, bytes::View passphrase,
                            const crypto::StretchCost& cost, const clock::Clock& clock)
{
    if (exists(folder))
        return fail(Reason::alreadyExists, "vault: there is one in this folder");
    std::error_code problem;
    std::filesystem::create_directories(folder, problem);
    std::filesystem::permissions(folder, std::filesystem::perms::owner_all, problem);
    if (problem)
        return fail(Reason::storageFailed, "vault: the folder cannot be made");

    if (const Done aside = setAside(folder); !aside)
        return fail(aside.error());
    auto slots = KeySlots::create(slotOf(owner), passphrase, cost);
    if (!slots)
        return fail(slots.error());
    auto database = openDatabase(folder, slots->second);
    if (!database)
        return fail(database.error());
    auto inside = std::make_unique<Inside>(std::move(*database), clock);
    const Done stored = inside->database.transaction([&]() -> Done {
        const auto kind = static_cast<std::uint8_t>(owner);
        Done done = inside->putFact("owner", bytes::View(&kind, 1));
        const auto keep = [&](std::string_view name, bytes::View secret) {
            if (done)
                done = inside->putFact(name, secret);
        };
        keep("signing", crypto::SigningKey::generate().seed());
        keep("box", crypto::BoxKey::generate().secret());
        if (owner == Owner::clinic) {
            keep("root", crypto::SigningKey::generate().seed());
            keep("epoch", crypto::BoxKey::generate().secret());
        }
        return done;
    });
    if (!stored)
        return fail(stored.error());
    // Last, so that a crash before this line leaves no vault that nobody can open.
    if (const Done saved = slots->first.saveAndForget(folder); !saved)
        return fail(saved.error());
    if (const Done named = store::syncFolder(folder.has_filename() ? folder.parent_path() : folder.parent_path().parent_path()); !named)
        return fail(named.error());
    if (const Done loaded = inside->load(); !loaded)
        return fail(loaded.error());
    return Vault(std::move(inside));
}

Result<Vault> Vault::unlock(const std::filesystem::path& folder, bytes::View passphrase, const clock::Clock& clock)
{
    return unlock(folder, Offered::passphrase(passphrase), clock);
}

Result<Vault> Vault::unlock(const std::filesystem::path& folder, const Offered& offered, const clock::Clock& clock)
{
    const Result<crypto::Secret> dataKey = openDataKey(folder, offered, clock.readings());
    return dataKey ? open(folder, *dataKey, clock) : fail(dataKey.error());
}

Result<Vault> Vault::open(const std::filesystem::path& folder, const crypto::Secret& dataKey, const clock::Clock& clock)
{
    // Opening makes what is missing: a vault that lost its file must not become an empty one.
    std::error_code problem, none;
    const auto size = std::filesystem::file_size(folder / databaseFile, problem);
    const auto beside = std::filesystem::file_size(folder / (std::string(databaseFile) + "-wal"), none);
    if (problem || (size < smallestDatabase && (none || beside == 0)))
        return fail(Reason::damaged, "vault: its database is missing or cut off");
    auto database = openDatabase(folder, dataKey);
    if (!database)
        return fail(database.error());
    auto inside = std::make_unique<Inside>(std::move(*database), clock);
    if (const Done loaded = inside->load(); !loaded) {
        // The statements are ours and sound: what makes no sense to SQLite is a damaged table.
        if (loaded.error().reason == Reason::invalidState)
            return fail(Reason::damaged, loaded.error().detail);
        return fail(loaded.error());
    }
    return Vault(std::move(inside));
}

Done Vault::Inside::putFact(std::string_view name, bytes::View value)
{
    auto statement = database.prepare("INSERT INTO fact (name, value) VALUES (?1, ?2)"
                                      " ON CONFLICT (name) DO UPDATE SET value = excluded.value");
    if (!statement)
        return fail(statement.error());
    return statement->bind(name).bind(value).run();
}

Result<bytes::Bytes> Vault::Inside::fact(std::string_view name)
{
    auto statement = database.prepare("SELECT value FROM fact WHERE name = ?1");
    if (!statement)
        return fail(statement.error());
    const Result<bool> row = statement->bind(name).step();
    if (!row)
        return fail(row.error());
    if (!*row)
        return fail(Reason::notFound, "vault: a fact is missing");
    return statement->blob(0);
}

Done Vault::Inside::load()
{
    if (const Done keys = loadKeys(); !keys)
        return keys;
    return loadJournal();
}

Done Vault::Inside::loadKeys()
{
    const auto kind = fact("owner");
    auto seed = fact("signing");
    if (!kind || kind->size() != 1 || !seed || seed->size() != 32)
        return fail(Reason::damaged, "vault: the device's keys are missing");
    owner = static_cast<Owner>(kind->front());
    signing = crypto::SigningKey::fromSeed(*seed);
    device = envelope::deviceIdOf(signing->publicKey());
    crypto::wipe(*seed);
    if (owner != Owner::clinic)
        return loadNumberedKeys("box");
    auto secret = fact("box");
    if (!secret || secret->size() != 32)
        return fail(Reason::damaged, "vault: the device's keys are missing");
    box = crypto::BoxKey::fromSecret(*secret);
    crypto::wipe(*secret);
    return loadClinicKeys();
}

Done Vault::Inside::loadJournal()
{
    const auto ends = loadTails();
    if (!ends)
        return fail(ends.error());
    auto rows = database.prepare("SELECT bytes, device, chain, tail FROM operation ORDER BY device, number");
    if (!rows)
        return fail(rows.error());
    const clock::Instant now = clock.now();
    const Done read = journal.addAll([&]() -> Result<std::optional<journal::Operation>> {
        const Result<bool> row = rows->step();
        if (!row)
            return fail(row.error());
        if (!*row)
            return std::nullopt;
        const auto end = rows->isNull(3) ? ends->end() : ends->find(rows->blob(3));
        auto operation = journal::decode(end == ends->end() ? rows->blob(0) : bytes::joined(rows->blob(0), end->second));
        if (!operation)
            return fail(Reason::damaged, "vault: an operation cannot be read");
        if (operation->id.device == device) {
            hybrid = clock::HybridClock(std::max(hybrid.last(), operation->stamp));
            lastNumber = operation->id.number;
            const bytes::Bytes chain = rows->blob(2);
            if (chain.size() != lastChain.size())
                return fail(Reason::damaged, "vault: the chain is broken");
            std::copy(chain.begin(), chain.end(), lastChain.begin());
        } else {
            hybrid.observe(operation->stamp, now);
        }
        return std::move(*operation);
    });
    return read ? beginNumbers() : read;
}

Done Vault::Inside::beginNumbers()
{
    const auto starts = runsOf(database);
    if (!starts)
        return fail(starts.error());
    if (!starts->empty())
        lastNumber = std::max(lastNumber, *starts->rbegin() - 1);
    return {};
}

Vault::Owner Vault::owner() const { return m_inside->owner; }
const envelope::DeviceId& Vault::device() const { return m_inside->device; }
const crypto::SigningKey& Vault::signingKey() const { return *m_inside->signing; }
const crypto::BoxKey& Vault::boxKey() const { return m_inside->box ? *m_inside->box : m_inside->epochs.rbegin()->second; }
const clock::Clock& Vault::clock() const { return m_inside->clock; }
const journal::State& Vault::state() const { return m_inside->journal.state(); }
std::vector<journal::Operation> Vault::operations() const { return m_inside->journal.operations(); }

Done Vault::Inside::insertOwn(const journal::Operation& operation, const bytes::Array<32>& chain,
                              const std::optional<envelope::MailboxId>& mailbox)
{
    const bytes::Bytes encoded = journal::encode(operation);
    const auto cut = putTail(encoded);
    if (!cut)
        return fail(cut.error());
    auto statement = database.prepare("INSERT INTO operation (device, number, bytes, chain, mailbox, tail)"
                                      " VALUES (?1, ?2, ?3, ?4, ?5, ?6)");
    if (!statement)
        return fail(statement.error());
    statement->bind(operation.id.device.view())
        .bind(static_cast<std::int64_t>(operation.id.number))
        .bind(ownPart(encoded, *cut))
        .bind(bytes::View(chain));
    if (mailbox)
        statement->bind(mailbox->view());
    else
        statement->bindNull();
    bindTail(*statement, *cut);
    return statement->run();
}

Result<std::vector<journal::OperationId>> Vault::append(const std::vector<records::Body>& bodies,
                                                        const clock::Moment& entered,
                                                        std::optional<envelope::MailboxId> mailbox,
                                                        std::optional<journal::OperationId> supersedes,
                                                        const std::vector<std::string_view>& finished)
{
    return appendWith(bodies, entered, mailbox, supersedes, [&]() -> Done {
        for (const std::string_view name : finished)
            if (const Done gone = keep(name, {}); !gone)
                return gone;
        return {};
    });
}

Result<std::vector<journal::OperationId>> Vault::appendWith(const std::vector<records::Body>& bodies,
                                                            const clock::Moment& entered,
                                                            const std::optional<envelope::MailboxId>& mailbox,
                                                            const std::optional<journal::OperationId>& supersedes,
                                                            const std::function<Done()>& alongside)
{
    Inside& inside = *m_inside;
    clock::HybridClock hybrid = inside.hybrid;
    bytes::Array<32> chain = inside.lastChain;
    std::uint64_t number = inside.lastNumber;
    std::vector<journal::Operation> operations;
    std::vector<bytes::Array<32>> chains;
    for (const records::Body& body : bodies) {
        if (const Done checked = records::check(body); !checked)
            return fail(checked.error());
        journal::Operation operation;
        operation.id = {inside.device, ++number};
        operation.stamp = hybrid.tick(inside.clock.now());
        operation.entered = entered;
        operation.kind = static_cast<std::uint16_t>(records::kindOf(body));
        operation.audience = mailbox && records::goesBetween(records::kindOf(body)) ? journal::Audience::patientAndClinic
                                                                                    : journal::Audience::clinic;
        operation.course = records::courseOf(body);
        // Who did it corrects nothing; a course that is opened anew stands in place of the opening that held here.
        if (std::holds_alternative<records::CourseOpened>(body)) {
            const auto& courses = inside.journal.state().courses;
            if (const auto course = courses.find(operation.course); course != courses.end())
                operation.supersedes = course->second.openedOperation;
        } else if (!std::holds_alternative<records::WorkDone>(body)) {
            operation.supersedes = supersedes;
        }
        operation.body = records::encode(body);
        chain = chained(chain, journal::encode(operation));
        chains.push_back(chain);
        operations.push_back(std::move(operation));
    }
    const Done stored = inside.database.transaction([&]() -> Done {
        for (std::size_t i = 0; i < operations.size(); ++i) {
            if (const Done inserted = inside.insertOwn(operations[i], chains[i], operations[i].audience == journal::Audience::patientAndClinic ? mailbox : std::nullopt);
                !inserted)
                return inserted;
            if (const Done dropped = inside.dropRemoved(operations[i]); !dropped)
                return dropped;
        }
        return alongside();
    });
    if (!stored)
        return fail(stored.error());

    inside.hybrid = hybrid;
    inside.lastChain = chain;
    inside.lastNumber = number;
    std::vector<journal::OperationId> ids;
    for (journal::Operation& operation : operations) {
        ids.push_back(operation.id);
        inside.journal.add(std::move(operation));
    }
    return ids;
}

Done Vault::keep(std::string_view name, bytes::View value) { return m_inside->putKept(name, value); }

Done Vault::Inside::putKept(std::string_view name, bytes::View value)
{
    auto statement = database.prepare(
        value.empty() ? "DELETE FROM kept WHERE name = ?1"
                      : "INSERT INTO kept (name, value) VALUES (?1, ?2)"
                        " ON CONFLICT (name) DO UPDATE SET value = excluded.value");
    if (!statement)
        return fail(statement.error());
    statement->bind(name);
    if (!value.empty())
        statement->bind(value);
    return statement->run();
}

Result<bytes::Bytes> Vault::kept(std::string_view name) const
{
    auto value = m_inside->keptOf(name);
    if (!value)
        return fail(value.error());
    return *value ? Result<bytes::Bytes>(std::move(**value)) : fail(Reason::notFound, "kept: nothing under this name");
}

Result<std::optional<bytes::Bytes>> Vault::Inside::keptOf(std::string_view name)
{
    auto statement = database.prepare("SELECT value FROM kept WHERE name = ?1");
    if (!statement)
        return fail(statement.error());
    const Result<bool> row = statement->bind(name).step();
    if (!row)
        return fail(row.error());
    return *row ? std::optional(statement->blob(0)) : std::nullopt;
}

}  // namespace ebbline::vault
