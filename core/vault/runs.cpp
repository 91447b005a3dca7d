// The numbers of this device's own operations: one run after another, a new one for each restoring.

#include "core/vault/inside.h"
#include "core/vault/rows.h"
#include "core/vault/tables.h"

#include "core/bytes/reader.h"

namespace ebbline::vault {

namespace {

constexpr const char* factName = "runs";
constexpr int chanceBits = 20;  ///< two copies that are restored in the same millisecond differ in them

}  // namespace

Result<std::set<std::uint64_t>> runsOf(store::Database& database)
{
    std::set<std::uint64_t> starts;
    auto rows = database.prepare("SELECT value FROM fact WHERE name = ?1");
    if (rows)
        rows->bind(std::string_view(factName));
    const Done read = forEachRow(rows, [&](store::Statement& row) -> Done {
        const bytes::Bytes kept = row.blob(0);
        bytes::Reader reader(kept);
        while (reader.left() > 0)
            starts.insert(reader.u64());
        return reader.atEnd() ? Done{} : Done(fail(Reason::damaged, "vault: its runs of numbers cannot be read"));
    });
    return read ? Result<std::set<std::uint64_t>>(starts) : fail(read.error());
}

Done beginRun(const std::filesystem::path& file, const crypto::Secret& dataKey, clock::Instant now)
{
    auto database = store::Database::open(file, databaseKey(dataKey), vaultMigrations);
    if (!database)
        return fail(database.error());
    return database->transaction([&]() -> Done {
        auto starts = runsOf(*database);
        if (!starts)
            return fail(starts.error());
        // Of any device: none of its own is higher.
        std::uint64_t last = starts->empty() ? 0 : *starts->rbegin();
        auto rows = database->prepare("SELECT ifnull(max(number), 0) FROM operation");
        if (const Done read = forEachRow(rows, [&](store::Statement& row) -> Done {
                last = std::max(last, static_cast<std::uint64_t>(row.integer(0)));
                return {};
            });
            !read)
            return read;
        // By the time, so that whoever remembers the highest number that it was told is told these, too; and after
        // all that is here, should the clock have been set back.
        const std::uint64_t steps = std::max(static_cast<std::uint64_t>(std::max<std::int64_t>(0, millisOf(now))), (last >> chanceBits) + 1);
        const auto chance = crypto::randomArray<4>();
        bytes::Reader reader{bytes::View(chance)};
        starts->insert((steps << chanceBits) | (reader.u32() >> (32 - chanceBits)));
        bytes::Writer kept;
        for (const std::uint64_t start : *starts)
            kept.u64(start);
        auto put = database->prepare("INSERT INTO fact (name, value) VALUES (?1, ?2)"
                                     " ON CONFLICT (name) DO UPDATE SET value = excluded.value");
        if (!put)
            return fail(put.error());
        return put->bind(std::string_view(factName)).bind(bytes::View(kept.bytes())).run();
    });
}

}  // namespace ebbline::vault
