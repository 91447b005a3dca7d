#include "core/vault/backup.h"

#include "core/vault/container.h"
#include "core/store/durable_file.h"
#include "core/vault/inside.h"

namespace ebbline::vault {

namespace {

/// `a/b/` is `a/b`.
std::filesystem::path withoutSlash(const std::filesystem::path& path)
{
    const std::filesystem::path normal = path.lexically_normal();
    return normal.has_filename() ? normal : normal.parent_path();
}

/// A folder to work in beside what is to appear; removed with everything in it. One that was left
/// behind by a killed run is removed first, if it holds nothing but what such a run leaves.
class Workplace {
public:
    explicit Workplace(const std::filesystem::path& target) : m_path(withoutSlash(target))
    {
        m_path += ".part";
        std::error_code problem;
        if (std::filesystem::exists(m_path, problem))
            removeOurs();
        m_made = std::filesystem::create_directory(m_path, problem) && !problem;
        std::filesystem::permissions(m_path, std::filesystem::perms::owner_all, problem);
    }
    ~Workplace()
    {
        if (m_made)
            removeOurs();
    }
    Workplace(const Workplace&) = delete;
    Workplace& operator=(const Workplace&) = delete;

    bool made() const { return m_made; }
    const std::filesystem::path& path() const { return m_path; }
    /// It became what it was for.
    void keep() { m_made = false; }

private:
    void removeOurs() const
    {
        std::error_code ignored;
        for (const char* inner : {"copy", "test", "."}) {
            const std::filesystem::path folder = m_path / inner;
            for (const char* name : {"vault.db", "vault.db-wal", "vault.db-shm", "vault.db-journal", "vault.keys",
                                     "vault.keys.previous", "open.info", "packed"})
                std::filesystem::remove(folder / name, ignored);
            if (std::string_view(inner) != ".")
                std::filesystem::remove(folder, ignored);
        }
        std::filesystem::remove(m_path, ignored);
    }

    std::filesystem::path m_path;
    bool m_made = false;
};

/// The folder that something is to appear in must be there: a mistyped path makes no folders.
bool hasPlace(const std::filesystem::path& target)
{
    std::error_code problem;
    const std::filesystem::path parent = withoutSlash(target).parent_path();
    return parent.empty() || std::filesystem::is_directory(parent, problem);
}

std::unexpected<Error> damagedBy(std::string_view what, const Inspection& inspection)
{
    return fail(Reason::damaged, "backup: " + std::string(what) + ": " + inspection.faults.front().detail);
}

/// The digest of a vault's rows, whatever its layout.
Result<bytes::Array<32>> digestOf(const std::filesystem::path& folder, const crypto::Secret& dataKey)
{
    auto database = store::Database::inspect(folder / databaseFile, databaseKey(dataKey));
    return database ? database->digest() : fail(database.error());
}

struct Proved {
    BackupReport report;
    crypto::Secret dataKey;
};

/// Unpacks into an empty folder and opens it as somebody would who has nothing but the backup.
Result<Proved> prove(const std::filesystem::path& packed, const Offered& offered,
                           const std::filesystem::path& folder, std::optional<bytes::Array<32>> wanted)
{
    const Result<Container> container = unpack(packed, folder);
    if (!container)
        return fail(container.error());
    auto slots = KeySlots::generations(folder);
    if (!slots)
        return fail(Reason::damaged, "backup: its key file cannot be read");
    auto dataKey = unlockSlot(slots->front(), offered);
    if (!dataKey)
        return fail(dataKey.error());
    Inspection inspection = inspect(folder, *dataKey);
    if (!inspection.sound())
        return damagedBy("what it holds is not sound", inspection);
    if (wanted) {
        const auto found = digestOf(folder, *dataKey);
        if (!found || *found != *wanted)
            return fail(Reason::damaged, "backup: it does not hold what the vault holds");
    }
    return Proved{{container->size, container->hash, container->made, std::move(inspection)}, std::move(*dataKey)};
}

}  // namespace

Result<BackupReport> backup(const std::filesystem::path& folder, const Offered& offered, const clock::Readings& now,
                            const std::filesystem::path& file)
{
    std::error_code problem;
    if (std::filesystem::exists(std::filesystem::symlink_status(file, problem)))
        return fail(Reason::alreadyExists, "backup: there is a file of this name");
    if (!hasPlace(file))
        return fail(Reason::notFound, "backup: there is no folder for it");
    const Result<crypto::Secret> dataKey = openDataKey(folder, offered, now);
    if (!dataKey)
        return fail(dataKey.error());
    if (const Inspection source = inspect(folder, *dataKey); !source.sound())
        return damagedBy("the vault is not sound", source);

    const Workplace work(file);
    const std::filesystem::path copy = work.path() / "copy";
    const std::filesystem::path test = work.path() / "test";
    if (!work.made() || !std::filesystem::create_directory(copy, problem) || !std::filesystem::create_directory(test, problem))
        return fail(Reason::storageFailed, "backup: its folder cannot be made");
    // The copy is of one moment, whatever others write meanwhile.
    auto database = store::Database::inspect(folder / databaseFile, databaseKey(*dataKey));
    if (!database)
        return fail(database.error());
    const auto digest = database->copyTo(copy / databaseFile, databaseKey(*dataKey));
    if (!digest)
        return fail(digest.error());
    for (const char* name : {"vault.keys", "open.info"})
        if (!std::filesystem::copy_file(folder / name, copy / name, problem) && std::string_view(name) == "vault.keys")
            return fail(Reason::storageFailed, "backup: the key file cannot be copied");
    const std::filesystem::path packed = work.path() / "packed";
    if (const auto container = pack(copy, now.wall, packed); !container)
        return fail(container.error());
    Result<Proved> proved = prove(packed, offered, test, *digest);
    if (!proved)
        return fail(proved.error());
    if (const Done named = store::renameToNew(packed, file); !named)
        return fail(named.error());
    return std::move(proved->report);
}

Result<BackupReport> restore(const std::filesystem::path& file, const Offered& offered, const clock::Readings& now,
                             const std::filesystem::path& folder)
{
    std::error_code problem;
    if (std::filesystem::exists(std::filesystem::symlink_status(folder, problem))
        && (!std::filesystem::is_directory(folder, problem) || !std::filesystem::is_empty(folder, problem)))
        return fail(Reason::alreadyExists, "restore: the folder is not empty");
    if (!hasPlace(folder))
        return fail(Reason::notFound, "restore: there is no folder for it");
    Workplace work(folder);
    if (!work.made())
        return fail(Reason::storageFailed, "restore: the folder cannot be made");
    Result<Proved> proved = prove(file, offered, work.path(), {});
    if (!proved)
        return fail(proved.error());
    if (const Done begun = beginRun(work.path() / databaseFile, proved->dataKey, now.wall); !begun)
        return fail(begun.error());
    // Over nothing or an empty folder; one that was filled meanwhile is refused by the system.
    if (const Done moved = store::renameFolder(work.path(), withoutSlash(folder)); !moved)
        return fail(moved.error());
    work.keep();
    return std::move(proved->report);
}

}  // namespace ebbline::vault
