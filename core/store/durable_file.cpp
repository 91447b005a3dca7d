#include "core/store/durable_file.h"

#include <cerrno>
#include <fcntl.h>
#include <unistd.h>

namespace ebbline::store {

namespace {

/// A descriptor that closes itself.
class Descriptor {
public:
    explicit Descriptor(int number) : m_number(number) {}
    ~Descriptor() { (void)close(); }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;

    bool isOpen() const { return m_number >= 0; }
    int number() const { return m_number; }
    bool close()
    {
        const int number = std::exchange(m_number, -1);
        return number < 0 || ::close(number) == 0;
    }

private:
    int m_number;
};

std::unexpected<Error> failedBecause(std::string_view doing)
{
    const Reason reason = errno == ENOSPC || errno == EDQUOT ? Reason::storageFull : Reason::storageFailed;
    return fail(reason, std::string("file: ") + std::string(doing) + ": error " + std::to_string(errno));
}

}  // namespace

Done syncFolder(const std::filesystem::path& path)
{
    const Descriptor folder(::open(path.empty() ? "." : path.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (!folder.isOpen() || ::fsync(folder.number()) != 0)
        return failedBecause("sync of the folder");
    return {};
}

Done writeDurably(const std::filesystem::path& file, bytes::View contents)
{
    std::filesystem::path temporary = file;
    temporary += ".new";
    {
        Descriptor out(::open(temporary.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0600));
        if (!out.isOpen())
            return failedBecause("open");
        for (bytes::View rest = contents; !rest.empty();) {
            const ssize_t written = ::write(out.number(), rest.data(), rest.size());
            if (written < 0 && errno == EINTR)
                continue;
            if (written <= 0)
                return failedBecause("write");
            rest = rest.subspan(static_cast<std::size_t>(written));
        }
        if (::fsync(out.number()) != 0 || !out.close())
            return failedBecause("sync");
    }
    if (::rename(temporary.c_str(), file.c_str()) != 0)
        return failedBecause("rename");
    return syncFolder(file.parent_path());
}

Done overwrite(const std::filesystem::path& file)
{
    Descriptor out(::open(file.c_str(), O_WRONLY | O_CLOEXEC));
    if (!out.isOpen())
        return errno == ENOENT || errno == ENOTDIR ? fail(Reason::notFound, "file: not there") : failedBecause("open");
    const off_t size = ::lseek(out.number(), 0, SEEK_END);
    if (size < 0 || ::lseek(out.number(), 0, SEEK_SET) != 0)
        return failedBecause("length");
    constexpr bytes::Array<4096> zeros{};
    for (off_t left = size; left > 0;) {
        const ssize_t written = ::write(out.number(), zeros.data(), static_cast<std::size_t>(std::min<off_t>(left, zeros.size())));
        if (written < 0 && errno == EINTR)
            continue;
        if (written <= 0)
            return failedBecause("write");
        left -= written;
    }
    if (::fsync(out.number()) != 0 || !out.close())
        return failedBecause("sync");
    return {};
}

Result<bytes::Bytes> readWhole(const std::filesystem::path& file, std::size_t limit)
{
    const Descriptor in(::open(file.c_str(), O_RDONLY | O_CLOEXEC));
    if (!in.isOpen()) {
        if (errno == ENOENT || errno == ENOTDIR)
            return fail(Reason::notFound, "file: not there");
        return failedBecause("open");
    }
    bytes::Bytes contents;
    bytes::Array<4096> chunk;
    for (;;) {
        const ssize_t got = ::read(in.number(), chunk.data(), chunk.size());
        if (got < 0 && errno == EINTR)
            continue;
        if (got < 0)
            return failedBecause("read");
        if (got == 0)
            return contents;
        contents.insert(contents.end(), chunk.begin(), chunk.begin() + got);
        if (contents.size() > limit)
            return fail(Reason::tooLarge, "file: longer than it may be");
    }
}

Done renameToNew(const std::filesystem::path& from, const std::filesystem::path& to)
{
    // A second name, then the first one goes: unlike renaming, this never replaces. Where a file
    // system knows no second names, the new name is taken by an empty file first.
    if (::link(from.c_str(), to.c_str()) == 0) {
        (void)::unlink(from.c_str());
        return syncFolder(to.parent_path());
    }
    if (errno == EEXIST)
        return fail(Reason::alreadyExists, "file: there is one of this name");
    const Descriptor taken(::open(to.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600));
    if (!taken.isOpen())
        return errno == EEXIST ? fail(Reason::alreadyExists, "file: there is one of this name") : failedBecause("open");
    if (::rename(from.c_str(), to.c_str()) != 0)
        return failedBecause("rename");
    return syncFolder(to.parent_path());
}

Done renameFolder(const std::filesystem::path& from, const std::filesystem::path& to)
{
    if (const Done synced = syncFolder(from); !synced)
        return synced;
    if (::rename(from.c_str(), to.c_str()) != 0)
        return errno == ENOTEMPTY || errno == EEXIST ? fail(Reason::alreadyExists, "file: the folder is not empty")
                                                     : failedBecause("rename");
    return syncFolder(to.parent_path());
}

}  // namespace ebbline::store
