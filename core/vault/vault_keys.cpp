// Keys that are replaced now and then, and what this device remembers of them.

#include "core/vault/inside.h"
#include "core/vault/rows.h"

namespace ebbline::vault {

Result<std::vector<std::pair<std::string, bytes::Bytes>>> Vault::keptUnder(std::string_view prefix) const
{
    std::vector<std::pair<std::string, bytes::Bytes>> found;
    auto rows = m_inside->database.prepare("SELECT name, value FROM kept WHERE name > ?1 AND name < ?1 || '~' ORDER BY name");
    if (rows)
        rows->bind(prefix);
    const Done read = forEachRow(rows, [&](store::Statement& row) -> Done {
        found.emplace_back(row.text(0), row.blob(1));
        return {};
    });
    if (!read)
        return fail(read.error());
    return found;
}

}  // namespace ebbline::vault
