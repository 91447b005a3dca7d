#include "platform/postgres/migrations.h"

#include "platform/postgres/tables.h"

namespace ebbline::postgres {

namespace {

/// Of the advisory lock that migrations take: any number, the same in every version.
constexpr const char* lock = "SELECT pg_advisory_xact_lock(4919361537)";

}  // namespace

Done checkServer(Connection& connection)
{
    if (PQserverVersion(connection.handle()) < 150'000)
        return fail(Reason::unsupported, "store: PostgreSQL 15 or newer is needed");
    const auto role = connection.ask("SELECT rolsuper OR rolbypassrls FROM pg_roles WHERE rolname = current_user");
    if (!role)
        return fail(role.error());
    if (role->count() != 1 || role->truth(0, 0))
        return fail(Reason::refused, "store: this role overrides row level security; take one that is no superuser and has no BYPASSRLS");
    const auto lasting = connection.ask("SELECT current_setting('full_page_writes')::boolean AND current_setting('fsync')::boolean"
                                        " AND current_setting('synchronous_commit') IN ('on', 'remote_apply')");
    if (!lasting)
        return fail(lasting.error());
    if (lasting->count() != 1 || !lasting->truth(0, 0))
        return fail(Reason::unsupported, "store: fsync, full_page_writes and synchronous_commit must be on, or an acknowledged envelope could be lost");
    return {};
}

Result<bool> hasTables(Connection& connection)
{
    const auto found = connection.ask("SELECT to_regclass('ebbline.version') IS NOT NULL");
    if (!found)
        return fail(found.error());
    return found->count() == 1 && found->truth(0, 0);
}

Done migrate(Connection& connection)
{
    if (const Done begun = connection.run(std::string("BEGIN; ") + lock + "; CREATE SCHEMA IF NOT EXISTS ebbline;"
                                          " CREATE TABLE IF NOT EXISTS version (number bigint NOT NULL)");
        !begun)
        return begun;
    const auto known = connection.ask("SELECT coalesce(max(number), 0) FROM version");
    if (!known)
        return fail(known.error());
    const std::int64_t from = known->integer(0, 0);
    if (const Done ended = connection.run("COMMIT"); !ended)
        return ended;
    if (from > static_cast<std::int64_t>(migrations.size()))
        return fail(Reason::unsupported, "store: the database is newer than this program");
    for (std::size_t i = static_cast<std::size_t>(from); i < migrations.size(); ++i) {
        const std::string number = std::to_string(i + 1);
        // Another hub may have been faster: its number is seen under the lock.
        const auto done = [&]() -> Result<bool> {
            if (const Done begun = connection.run(std::string("BEGIN; ") + lock); !begun)
                return fail(begun.error());
            const auto seen = connection.ask("SELECT coalesce(max(number), 0) FROM version");
            if (!seen)
                return fail(seen.error());
            if (seen->integer(0, 0) > static_cast<std::int64_t>(i))
                return true;
            if (const Done moved = connection.run(std::string(migrations[i])); !moved)
                return fail(moved.error());
            if (const Done noted = connection.run("INSERT INTO version VALUES (" + number + ")"); !noted)
                return fail(noted.error());
            return false;
        }();
        if (!done) {
            (void)connection.run("ROLLBACK");
            return fail(done.error());
        }
        if (const Done ended = connection.run("COMMIT"); !ended)
            return ended;
    }
    return {};
}

}  // namespace ebbline::postgres
