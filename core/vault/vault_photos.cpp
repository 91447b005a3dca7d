// The sealed bytes of photographs.

#include "core/photos/sealed_photo.h"
#include "core/vault/inside.h"
#include "core/vault/rows.h"

namespace ebbline::vault {

Done Vault::Inside::insertPhotoChunk(const photos::PhotoId& photo, std::uint32_t number, bytes::View chunk)
{
    auto put = database.prepare("INSERT INTO photo_chunk (photo, number, body) VALUES (?1, ?2, ?3)"
                                " ON CONFLICT (photo, number) DO NOTHING");
    if (!put)
        return fail(put.error());
    return put->bind(photo.view()).bind(std::int64_t{number}).bind(chunk).run();
}

/// Whoever removes a photograph of another course has no say: the name must be one of its own course. A phone has none
/// about the clinic's own photographs, nor a desk about the patient's.
Done Vault::Inside::dropRemoved(const journal::Operation& operation)
{
    const records::Kind kind{operation.kind};
    if (kind != records::Kind::photoRemoved && kind != records::Kind::clinicPhotoRemoved)
        return {};
    const auto body = records::decode(kind, operation.body);
    const auto& courses = journal.state().courses;
    const auto course = courses.find(operation.course);
    if (!body || course == courses.end())
        return {};
    const auto* clinics = std::get_if<records::ClinicPhotoRemoved>(&*body);
    const photos::PhotoId& photo = clinics ? clinics->photo : std::get<records::PhotoRemoved>(*body).photo;
    if (!course->second.photos.contains(photo) || course->second.clinicPhotos.contains(photo) != (clinics != nullptr))
        return {};
    auto drop = database.prepare("DELETE FROM photo_chunk WHERE photo = ?1");
    return drop ? drop->bind(photo.view()).run() : Done(fail(drop.error()));
}

Result<journal::OperationId> Vault::appendPhoto(const records::PhotoTaken& photo, const std::vector<bytes::Bytes>& chunks,
                                                const clock::Moment& entered, std::optional<envelope::MailboxId> mailbox)
{
    return appendSealed(photo, photo.manifest, chunks, entered, mailbox);
}

Result<journal::OperationId> Vault::appendPhoto(const records::ClinicPhotoTaken& photo, const std::vector<bytes::Bytes>& chunks,
                                                const clock::Moment& entered)
{
    return appendSealed(photo, photo.manifest, chunks, entered, {});
}

Result<journal::OperationId> Vault::appendSealed(const records::Body& body, const photos::Manifest& manifest, const std::vector<bytes::Bytes>& chunks,
                                                 const clock::Moment& entered, const std::optional<envelope::MailboxId>& mailbox)
{
    if (chunks.size() != manifest.chunkHashes.size())
        return fail(Reason::notEnough, "photo: chunks are missing");
    for (std::uint32_t number = 0; number < chunks.size(); ++number)
        if (const Done same = photos::checkChunk(manifest, number, chunks[number]); !same)
            return fail(same.error());
    const auto appended = appendWith({body}, entered, mailbox, {}, [&]() -> Done {
        for (std::uint32_t number = 0; number < chunks.size(); ++number)
            if (const Done put = m_inside->insertPhotoChunk(manifest.photo, number, chunks[number]); !put)
                return put;
        return {};
    });
    if (!appended)
        return fail(appended.error());
    return appended->front();
}

Done Vault::putPhotoChunk(const records::PhotoTaken& photo, std::uint32_t number, bytes::View chunk)
{
    const auto& courses = state().courses;
    const auto course = courses.find(photo.course);
    const records::PhotoTaken* known = course == courses.end() ? nullptr : course->second.photo(photo.manifest.photo);
    if (!known || known->manifest != photo.manifest)
        return fail(Reason::notFound, "photo: it is not in the journal");
    if (const Done same = photos::checkChunk(photo.manifest, number, chunk); !same)
        return same;
    return m_inside->insertPhotoChunk(photo.manifest.photo, number, chunk);
}

Result<std::vector<std::uint32_t>> Vault::missingPhotoChunks(const photos::Manifest& manifest) const
{
    std::vector<bool> here(manifest.chunkHashes.size());
    auto rows = m_inside->database.prepare("SELECT number FROM photo_chunk WHERE photo = ?1");
    if (rows)
        rows->bind(manifest.photo.view());
    const Done read = forEachRow(rows, [&](store::Statement& row) -> Done {
        const auto number = static_cast<std::size_t>(row.integer(0));
        if (number < here.size())
            here[number] = true;
        return {};
    });
    if (!read)
        return fail(read.error());
    std::vector<std::uint32_t> missing;
    for (std::uint32_t number = 0; number < here.size(); ++number)
        if (!here[number])
            missing.push_back(number);
    return missing;
}

Result<std::map<photos::PhotoId, std::size_t>> Vault::heldPhotoChunks() const
{
    std::map<photos::PhotoId, std::size_t> held;
    auto rows = m_inside->database.prepare("SELECT photo, count(*) FROM photo_chunk GROUP BY photo");
    const Done read = forEachRow(rows, [&](store::Statement& row) -> Done {
        held.emplace(photos::PhotoId{arrayOf<16>(row.blob(0))}, static_cast<std::size_t>(row.integer(1)));
        return {};
    });
    if (!read)
        return fail(read.error());
    return held;
}

Result<bytes::Bytes> Vault::photoChunk(const photos::PhotoId& photo, std::uint32_t number) const
{
    auto statement = m_inside->database.prepare("SELECT body FROM photo_chunk WHERE photo = ?1 AND number = ?2");
    if (!statement)
        return fail(statement.error());
    const Result<bool> row = statement->bind(photo.view()).bind(std::int64_t{number}).step();
    if (!row)
        return fail(row.error());
    if (!*row)
        return fail(Reason::notFound, "photo: a chunk is not here");
    return statement->blob(0);
}

Result<bytes::Bytes> Vault::photo(const photos::Manifest& manifest) const
{
    std::vector<bytes::Bytes> chunks;
    for (std::uint32_t number = 0; number < manifest.chunkHashes.size(); ++number) {
        auto chunk = photoChunk(manifest.photo, number);
        if (!chunk && chunk.error().reason == Reason::notFound)
            return fail(Reason::notEnough, "photo: chunks are missing");
        if (!chunk)
            return fail(chunk.error());
        chunks.push_back(std::move(*chunk));
    }
    return photos::open(manifest, chunks);
}

Done Vault::dropPhotoChunks(const photos::PhotoId& photo)
{
    auto drop = m_inside->database.prepare("DELETE FROM photo_chunk WHERE photo = ?1");
    return drop ? drop->bind(photo.view()).run() : Done(fail(drop.error()));
}

Result<std::optional<PhotoStanding>> Vault::photoStanding(const photos::PhotoId& photo) const
{
    auto statement = m_inside->database.prepare("SELECT at_hub, refused, tried_at FROM photo_standing WHERE photo = ?1");
    if (!statement)
        return fail(statement.error());
    const Result<bool> row = statement->bind(photo.view()).step();
    if (!row)
        return fail(row.error());
    if (!*row)
        return std::optional<PhotoStanding>{};
    return std::optional(PhotoStanding{statement->integer(0) != 0, statement->integer(1) != 0, instantOf(statement->integer(2))});
}

Done Vault::notePhoto(const photos::PhotoId& photo, const PhotoStanding& standing)
{
    auto put = m_inside->database.prepare("INSERT INTO photo_standing (photo, at_hub, refused, tried_at) VALUES (?1, ?2, ?3, ?4)"
                                          " ON CONFLICT (photo) DO UPDATE SET at_hub = excluded.at_hub,"
                                          " refused = excluded.refused, tried_at = excluded.tried_at");
    if (!put)
        return fail(put.error());
    return put->bind(photo.view())
        .bind(std::int64_t{standing.atHub ? 1 : 0})
        .bind(std::int64_t{standing.refused ? 1 : 0})
        .bind(millisOf(standing.triedAt))
        .run();
}

Done Vault::forgetPhoto(const photos::PhotoId& photo)
{
    auto drop = m_inside->database.prepare("DELETE FROM photo_standing WHERE photo = ?1");
    return drop ? drop->bind(photo.view()).run() : Done(fail(drop.error()));
}

}  // namespace ebbline::vault
