#pragma once
/// \file
/// What a hub's folder holds, read as somebody reads it who has the folder and its key: every cell of every table of the
/// database, decrypted and unpacked, and the log as it is. Searching the encrypted file itself could find nothing.

#include "core/bytes/bytes.h"
#include "core/store/database.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace ebbline::story {

/// What is looked for: words, and whole bodies of operations, scores and all, which no word would give away.
struct Sought {
    QStringList words;
    std::vector<bytes::Bytes> bodies = {};  ///< none of them empty
};

/// Words that stand in these bytes as they are, or packed as a batch of operations is before it is sealed.
QStringList readableIn(bytes::View where, const QStringList& words);

class HubSearch {
public:
    /// \pre nobody serves from the folder any more. \returns as store::Database::inspect(), and what reading says.
    static Result<HubSearch> open(const QString& folder);

    struct Found {
        QStringList words;
        std::size_t bodies = 0;  ///< how many of those sought
        std::size_t rows = 0;    ///< of all tables
        std::size_t cells = 0;
    };
    Result<Found> search(const Sought& sought);
    /// The same search after `unsealed` was put among the envelopes as if a phone had sent it so; it is taken out again.
    Result<Found> searchWith(bytes::View unsealed, const Sought& sought);

    /// Words found in the log, which holds none of the database.
    QStringList wordsInLog(const QStringList& words) const;
    /// Of the database alone: neither the log nor the key.
    qint64 databaseBytes() const;

private:
    HubSearch(QString folder, store::Database database) : m_folder(std::move(folder)), m_database(std::move(database)) {}
    QString m_folder;
    store::Database m_database;
};

}  // namespace ebbline::story
