#include "core/vault/inside.h"
#include "core/vault/rows.h"

namespace ebbline::vault {

Result<Tails> Vault::Inside::loadTails()
{
    Tails ends;
    auto rows = database.prepare("SELECT hash, bytes FROM tail ORDER BY rowid");
    const Done read = forEachRow(rows, [&](store::Statement& row) -> Done {
        const auto tail = std::make_shared<const bytes::Bytes>(row.blob(1));
        ends.emplace(row.blob(0), tail);
        tails.add(tail);
        return {};
    });
    return read ? Result<Tails>(std::move(ends)) : fail(read.error());
}

Result<std::optional<Cut>> Vault::Inside::putTail(bytes::View operation)
{
    const auto tail = tails.tailOf(operation);
    if (!tail)
        return std::nullopt;
    // Each time: the transaction that wrote it first may have been taken back.
    auto put = database.prepare("INSERT INTO tail (hash, bytes) VALUES (?1, ?2) ON CONFLICT (hash) DO NOTHING");
    if (!put)
        return fail(put.error());
    const Cut cut{crypto::hash256(*tail), tail->size()};
    if (const Done done = put->bind(bytes::View(cut.tail)).bind(bytes::View(*tail)).run(); !done)
        return fail(done.error());
    return cut;
}

}  // namespace ebbline::vault
