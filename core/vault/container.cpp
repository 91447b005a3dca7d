#include "core/vault/container.h"

#include "core/bytes/reader.h"
#include "core/store/durable_file.h"
#include "core/vault/key_slots.h"

#include <fcntl.h>
#include <fstream>
#include <functional>
#include <unistd.h>

namespace ebbline::vault {

namespace {

constexpr std::string_view mark = "EBK";
constexpr std::uint8_t version = 1;
constexpr std::size_t headSize = 16;
constexpr std::size_t hashSize = 32;
constexpr std::size_t pieceSize = 256 * 1024;
constexpr std::size_t maximumInfo = 2048;
constexpr std::uint64_t fixedSize = headSize + KeySlots::fileSize + 4 + 8 + hashSize;

std::unexpected<Error> storageProblem(std::string_view doing)
{
    const bool full = errno == ENOSPC || errno == EDQUOT;
    return fail(full ? Reason::storageFull : Reason::storageFailed, "backup: " + std::string(doing));
}

/// A new file, written front to back and synced; never one that exists.
class Output {
public:
    explicit Output(const std::filesystem::path& file)
        : m_descriptor(::open(file.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600))
    {
    }
    ~Output()
    {
        if (m_descriptor >= 0)
            ::close(m_descriptor);
    }
    Output(const Output&) = delete;
    Output& operator=(const Output&) = delete;

    Done add(bytes::View rest)
    {
        while (!rest.empty()) {
            const ssize_t written = ::write(m_descriptor, rest.data(), rest.size());
            if (written < 0 && errno == EINTR)
                continue;
            if (written <= 0)
                return storageProblem("write");
            rest = rest.subspan(static_cast<std::size_t>(written));
        }
        return {};
    }
    Done finish()
    {
        const int descriptor = std::exchange(m_descriptor, -1);
        const bool synced = descriptor >= 0 && ::fsync(descriptor) == 0;
        if (descriptor < 0 || ::close(descriptor) != 0 || !synced)
            return storageProblem("sync");
        return {};
    }

private:
    int m_descriptor;
};

/// Hands `count` bytes of a stream on, in pieces.
Done forEachPiece(std::ifstream& input, std::uint64_t count, const std::function<Done(bytes::View)>& take)
{
    bytes::Bytes piece(pieceSize);
    while (count > 0) {
        const std::size_t wanted = static_cast<std::size_t>(std::min<std::uint64_t>(count, pieceSize));
        input.read(reinterpret_cast<char*>(piece.data()), static_cast<std::streamsize>(wanted));
        if (static_cast<std::size_t>(input.gcount()) != wanted)
            return fail(Reason::storageFailed, "backup: a file is shorter than it was");
        if (const Done taken = take(bytes::View(piece).first(wanted)); !taken)
            return taken;
        count -= wanted;
    }
    return {};
}

Result<bytes::Bytes> readPiece(std::ifstream& input, std::size_t count)
{
    bytes::Bytes out;
    const Done read = forEachPiece(input, count, [&](bytes::View piece) -> Done {
        out.insert(out.end(), piece.begin(), piece.end());
        return {};
    });
    if (!read)
        return fail(Reason::damaged, "backup: cut short");
    return out;
}

struct Head {
    clock::Instant made{};
    bytes::Bytes keys;
    bytes::Bytes info;
    std::uint64_t databaseSize = 0;
};

Result<Head> readHead(std::ifstream& input, std::uint64_t size)
{
    const auto begin = readPiece(input, headSize);
    if (!begin || !std::equal(mark.begin(), mark.end(), begin->begin()))
        return fail(Reason::malformed, "backup: not one of ours");
    bytes::Reader reader(bytes::View(*begin).subspan(mark.size()));
    if (reader.u8() != version || reader.u32() != 0)
        return fail(Reason::unsupported, "backup: made by a newer program");
    Head head;
    head.made = clock::Instant{std::chrono::milliseconds{static_cast<std::int64_t>(reader.u64())}};
    auto keys = readPiece(input, KeySlots::fileSize);
    const auto infoSize = keys ? readPiece(input, 4) : keys;
    const std::size_t infoLength = infoSize ? bytes::Reader(*infoSize).u32() : 0;
    if (!infoSize || infoLength > maximumInfo)
        return fail(Reason::damaged, "backup: its lengths do not add up");
    auto info = readPiece(input, infoLength);
    const auto databaseSize = info ? readPiece(input, 8) : info;
    if (!databaseSize)
        return fail(databaseSize.error());
    head.databaseSize = bytes::Reader(*databaseSize).u64();
    if (size < fixedSize + infoLength || head.databaseSize != size - fixedSize - infoLength)
        return fail(Reason::damaged, "backup: its lengths do not add up");
    head.keys = std::move(*keys);
    head.info = std::move(*info);
    return head;
}

Done writeFile(const std::filesystem::path& file, bytes::View contents)
{
    Output out(file);
    const Done added = out.add(contents);
    return added ? out.finish() : added;
}

}  // namespace

Result<Container> pack(const std::filesystem::path& folder, clock::Instant made, const std::filesystem::path& file)
{
    const auto keys = store::readWhole(folder / "vault.keys", KeySlots::fileSize);
    if (!keys)
        return fail(keys.error());
    auto info = store::readWhole(folder / "open.info", maximumInfo);
    if (!info && info.error().reason != Reason::notFound)
        return fail(info.error());
    std::error_code problem;
    const std::uint64_t databaseSize = std::filesystem::file_size(folder / "vault.db", problem);
    std::ifstream input(folder / "vault.db", std::ios::binary);
    if (problem || !input || keys->size() != KeySlots::fileSize)
        return fail(Reason::storageFailed, "backup: the vault cannot be read");

    bytes::Writer head;
    head.raw(bytes::viewOf(mark)).u8(version).u32(0);
    head.u64(static_cast<std::uint64_t>(made.time_since_epoch().count()));
    head.raw(*keys).block(info ? bytes::View(*info) : bytes::View()).u64(databaseSize);
    Output out(file);
    crypto::Hash256 hash;
    Container container{head.size() + databaseSize + hashSize, {}, made};
    const auto put = [&](bytes::View piece) -> Done {
        hash.add(piece);
        return out.add(piece);
    };
    if (const Done begun = put(head.bytes()); !begun)
        return fail(begun.error());
    if (const Done copied = forEachPiece(input, databaseSize, put); !copied)
        return fail(copied.error());
    container.hash = hash.take();
    if (const Done ended = out.add(container.hash); !ended)
        return fail(ended.error());
    if (const Done finished = out.finish(); !finished)
        return fail(finished.error());
    return container;
}

Result<Container> unpack(const std::filesystem::path& file, const std::filesystem::path& folder)
{
    std::error_code problem;
    const std::uint64_t size = std::filesystem::file_size(file, problem);
    std::ifstream input(file, std::ios::binary);
    if (problem || !input)
        return fail(Reason::notFound, "backup: there is no such file");
    // The whole of it first: nothing is written from a file whose hash does not hold.
    const Result<Head> head = readHead(input, size);
    if (!head)
        return fail(head.error());
    crypto::Hash256 hash;
    input.clear();
    input.seekg(0);
    const Done hashed = forEachPiece(input, size - hashSize, [&](bytes::View piece) -> Done {
        hash.add(piece);
        return {};
    });
    if (!hashed)
        return fail(hashed.error());
    const auto stored = readPiece(input, hashSize);
    Container container{size, hash.take(), head->made};
    if (!stored || !crypto::equal(*stored, container.hash))
        return fail(Reason::damaged, "backup: the hash does not hold");

    for (const char* name : {"vault.keys", "vault.keys.previous"})
        if (const Done written = writeFile(folder / name, head->keys); !written)
            return fail(written.error());
    if (!head->info.empty())
        if (const Done written = writeFile(folder / "open.info", head->info); !written)
            return fail(written.error());
    Output database(folder / "vault.db");
    input.clear();
    input.seekg(static_cast<std::streamoff>(size - hashSize - head->databaseSize));
    const Done copied = forEachPiece(input, head->databaseSize, [&](bytes::View piece) { return database.add(piece); });
    if (!copied)
        return fail(copied.error());
    if (const Done finished = database.finish(); !finished)
        return fail(finished.error());
    return container;
}

}  // namespace ebbline::vault
