#include "app/story/hub_search.h"

#include "core/store/durable_file.h"
#include "core/sync/packed.h"

#include <QDir>
#include <QFile>

#include <algorithm>

namespace ebbline::story {

namespace {

Result<std::vector<std::string>> texts(store::Database& database, const std::string& sql)
{
    auto statement = database.prepare(sql);
    if (!statement)
        return fail(statement.error());
    std::vector<std::string> found;
    for (;;) {
        const auto row = statement->step();
        if (!row)
            return fail(row.error());
        if (!*row)
            return found;
        found.push_back(statement->text(0));
    }
}

bool contains(bytes::View where, bytes::View what)
{
    return std::search(where.begin(), where.end(), what.begin(), what.end()) != where.end();
}

void addFound(QStringList& found, bytes::View cell, const QStringList& words)
{
    for (const QString& word : words) {
        const std::string text = word.toStdString();
        if (!found.contains(word) && contains(cell, bytes::viewOf(text)))
            found << word;
    }
}

/// Marks in `found` the bodies that stand in the cell as they are, or packed.
void markFound(std::vector<bool>& found, bytes::View cell, const std::vector<bytes::Bytes>& bodies)
{
    if (bodies.empty())
        return;
    const std::vector<bytes::Bytes> unpacked = sync::unpackedWithin(cell);
    for (std::size_t i = 0; i < bodies.size(); ++i)
        if (!found[i])
            found[i] = contains(cell, bodies[i]) || std::ranges::any_of(unpacked, [&](const bytes::Bytes& plain) { return contains(plain, bodies[i]); });
}

}  // namespace

QStringList readableIn(bytes::View where, const QStringList& words)
{
    QStringList found;
    addFound(found, where, words);
    for (const bytes::Bytes& plain : sync::unpackedWithin(where))
        addFound(found, plain, words);
    return found;
}

Result<HubSearch> HubSearch::open(const QString& folder)
{
    const std::filesystem::path place = folder.toStdString();
    auto bytes = store::readWhole(place / "hub.key", crypto::Secret::size);
    if (!bytes || bytes->size() != crypto::Secret::size)
        return bytes ? fail(Reason::malformed, "hub: the key file must hold 32 bytes") : fail(bytes.error());
    const crypto::Secret key = crypto::Secret::from(*bytes);
    crypto::wipe(*bytes);
    auto database = store::Database::inspect(place / "hub.db", key);
    if (!database)
        return fail(database.error());
    return HubSearch(folder, std::move(*database));
}

Result<HubSearch::Found> HubSearch::search(const Sought& sought)
{
    Found found;
    std::vector<bool> bodies(sought.bodies.size());
    const auto tables = texts(m_database, "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name");
    if (!tables)
        return fail(tables.error());
    for (const std::string& table : *tables) {
        const auto columns = texts(m_database, "SELECT name FROM pragma_table_info('" + table + "')");
        if (!columns)
            return fail(columns.error());
        for (std::size_t i = 0; i < columns->size(); ++i) {
            auto cells = m_database.prepare("SELECT CAST(\"" + (*columns)[i] + "\" AS BLOB) FROM \"" + table + "\"");
            if (!cells)
                return fail(cells.error());
            for (;;) {
                const auto row = cells->step();
                if (!row)
                    return fail(row.error());
                if (!*row)
                    break;
                found.rows += i == 0 ? 1 : 0;
                ++found.cells;
                found.words += readableIn(cells->blob(0), sought.words);
                markFound(bodies, cells->blob(0), sought.bodies);
            }
        }
    }
    found.words.removeDuplicates();
    found.bodies = static_cast<std::size_t>(std::ranges::count(bodies, true));
    return found;
}

Result<HubSearch::Found> HubSearch::searchWith(bytes::View unsealed, const Sought& sought)
{
    if (const Done begun = m_database.run("PRAGMA query_only = OFF; BEGIN"); !begun)
        return fail(begun.error());
    Result<Found> found = fail(Reason::storageFailed, "hub: nothing could be put in");
    {
        auto put = m_database.prepare("INSERT INTO envelope (mailbox, device, sequence, received, body) VALUES (x'00', x'00', 0, 0, ?1)");
        if (put && put->bind(unsealed).run())
            found = search(sought);
    }
    if (const Done undone = m_database.run("ROLLBACK; PRAGMA query_only = ON"); !undone)
        return fail(undone.error());
    return found;
}

QStringList HubSearch::wordsInLog(const QStringList& words) const
{
    QStringList found;
    QFile log(m_folder + QStringLiteral("/hub.log"));
    if (log.open(QIODevice::ReadOnly)) {
        const QByteArray contents = log.readAll();
        addFound(found, {reinterpret_cast<const std::uint8_t*>(contents.constData()), static_cast<std::size_t>(contents.size())}, words);
    }
    return found;
}

qint64 HubSearch::databaseBytes() const
{
    qint64 size = 0;
    for (const QFileInfo& file : QDir(m_folder).entryInfoList({QStringLiteral("hub.db"), QStringLiteral("hub.db-wal")}, QDir::Files))
        size += file.size();
    return size;
}

}  // namespace ebbline::story
