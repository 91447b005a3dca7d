#include "tests/faults/fault_disk.h"

#include <sqlite3.h>

#include <cstring>
#include <fstream>
#include <new>

namespace ebbline::faults {

namespace {

constexpr std::size_t sector = 512;

/// Stands in front of a file of the real VFS, which lies behind it in the same memory.
struct File {
    sqlite3_file base;
    FaultDisk* disk;
    FaultDisk::Image* image;  ///< empty for what a power cut does not concern
    sqlite3_file* behind() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};

File* fileOf(sqlite3_file* file) { return reinterpret_cast<File*>(file); }
FaultDisk* diskOf(sqlite3_vfs* vfs) { return static_cast<FaultDisk*>(vfs->pAppData); }

int closeFile(sqlite3_file* file)
{
    sqlite3_file* behind = fileOf(file)->behind();
    return behind->pMethods ? behind->pMethods->xClose(behind) : SQLITE_OK;
}

int readFile(sqlite3_file* file, void* out, int count, sqlite3_int64 offset)
{
    if (fileOf(file)->disk->strikes())
        return SQLITE_IOERR_READ;
    sqlite3_file* behind = fileOf(file)->behind();
    return behind->pMethods->xRead(behind, out, count, offset);
}

int writeFile(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 offset)
{
    File* own = fileOf(file);
    sqlite3_file* behind = own->behind();
    if (own->disk->strikes(true)) {
        if (own->disk->tearsThisWrite() && count > 1)
            (void)behind->pMethods->xWrite(behind, bytes, count / 2, offset);
        return own->disk->fillsThisWrite() ? SQLITE_FULL : SQLITE_IOERR_WRITE;
    }
    const int code = behind->pMethods->xWrite(behind, bytes, count, offset);
    if (code == SQLITE_OK && own->image)
        own->image->pending.push_back({static_cast<std::uint64_t>(offset),
                                       std::string(static_cast<const char*>(bytes), static_cast<std::size_t>(count)), false});
    return code;
}

int truncateFile(sqlite3_file* file, sqlite3_int64 size)
{
    File* own = fileOf(file);
    if (own->disk->strikes())
        return SQLITE_IOERR_TRUNCATE;
    const int code = own->behind()->pMethods->xTruncate(own->behind(), size);
    if (code == SQLITE_OK && own->image)
        own->image->pending.push_back({static_cast<std::uint64_t>(size), {}, true});
    return code;
}

void apply(std::string& image, const FaultDisk::Change& change)
{
    if (change.truncate) {
        image.resize(std::min<std::size_t>(image.size(), change.offset));
        return;
    }
    if (image.size() < change.offset + change.bytes.size())
        image.resize(change.offset + change.bytes.size(), '\0');
    std::copy(change.bytes.begin(), change.bytes.end(), image.begin() + static_cast<std::ptrdiff_t>(change.offset));
}

int syncFile(sqlite3_file* file, int flags)
{
    File* own = fileOf(file);
    if (own->disk->strikes())
        return SQLITE_IOERR_FSYNC;
    const int code = own->behind()->pMethods->xSync(own->behind(), flags);
    if (code == SQLITE_OK && own->image) {
        for (const FaultDisk::Change& change : own->image->pending)
            apply(own->image->durable, change);
        own->image->pending.clear();
        own->image->exists = true;
    }
    return code;
}

int sizeOfFile(sqlite3_file* file, sqlite3_int64* size)
{
    if (fileOf(file)->disk->strikes())
        return SQLITE_IOERR_FSTAT;
    sqlite3_file* behind = fileOf(file)->behind();
    return behind->pMethods->xFileSize(behind, size);
}

int mapShared(sqlite3_file* file, int page, int size, int extend, void volatile** out)
{
    if (fileOf(file)->disk->strikes())
        return SQLITE_IOERR_SHMMAP;
    sqlite3_file* behind = fileOf(file)->behind();
    return behind->pMethods->xShmMap(behind, page, size, extend, out);
}

// What passes through: locks are no traffic with the disk.
int lockFile(sqlite3_file* f, int level) { return fileOf(f)->behind()->pMethods->xLock(fileOf(f)->behind(), level); }
int unlockFile(sqlite3_file* f, int level) { return fileOf(f)->behind()->pMethods->xUnlock(fileOf(f)->behind(), level); }
int isReserved(sqlite3_file* f, int* out) { return fileOf(f)->behind()->pMethods->xCheckReservedLock(fileOf(f)->behind(), out); }
int control(sqlite3_file* f, int op, void* arg) { return fileOf(f)->behind()->pMethods->xFileControl(fileOf(f)->behind(), op, arg); }
int sectorSize(sqlite3_file* f) { return fileOf(f)->behind()->pMethods->xSectorSize(fileOf(f)->behind()); }
int traits(sqlite3_file* f) { return fileOf(f)->behind()->pMethods->xDeviceCharacteristics(fileOf(f)->behind()); }
int lockShared(sqlite3_file* f, int at, int n, int flags) { return fileOf(f)->behind()->pMethods->xShmLock(fileOf(f)->behind(), at, n, flags); }
void barrier(sqlite3_file* f) { fileOf(f)->behind()->pMethods->xShmBarrier(fileOf(f)->behind()); }
int unmapShared(sqlite3_file* f, int del) { return fileOf(f)->behind()->pMethods->xShmUnmap(fileOf(f)->behind(), del); }

constexpr sqlite3_io_methods methods{
    2,         closeFile,  readFile,   writeFile, truncateFile, syncFile,  sizeOfFile, lockFile, unlockFile, isReserved,
    control,   sectorSize, traits,     mapShared, lockShared,   barrier,   unmapShared, nullptr, nullptr};

int openFile(sqlite3_vfs* vfs, const char* name, sqlite3_file* file, int flags, int* outFlags)
{
    FaultDisk* disk = diskOf(vfs);
    file->pMethods = nullptr;
    if (disk->strikes())
        return SQLITE_CANTOPEN;
    File* own = new (file) File{{nullptr}, disk, nullptr};
    const int code = disk->real()->xOpen(disk->real(), name, own->behind(), flags, outFlags);
    if (code != SQLITE_OK)
        return code;
    own->base.pMethods = &methods;
    if (name && (flags & (SQLITE_OPEN_MAIN_DB | SQLITE_OPEN_WAL | SQLITE_OPEN_MAIN_JOURNAL)) != 0)
        own->image = disk->imageOf(name);
    return code;
}

int deleteFile(sqlite3_vfs* vfs, const char* name, int syncFolder)
{
    FaultDisk* disk = diskOf(vfs);
    if (disk->strikes())
        return SQLITE_IOERR_DELETE;
    const int code = disk->real()->xDelete(disk->real(), name, syncFolder);
    if (code == SQLITE_OK)
        disk->forget(name, syncFolder != 0);
    return code;
}

int accessFile(sqlite3_vfs* vfs, const char* name, int flags, int* out)
{
    if (diskOf(vfs)->strikes())
        return SQLITE_IOERR_ACCESS;
    return diskOf(vfs)->real()->xAccess(diskOf(vfs)->real(), name, flags, out);
}

int fullPath(sqlite3_vfs* vfs, const char* name, int size, char* out)
{
    return diskOf(vfs)->real()->xFullPathname(diskOf(vfs)->real(), name, size, out);
}

std::string contentsOf(const std::string& path)
{
    std::ifstream input(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(input), {}};
}

}  // namespace

FaultDisk::FaultDisk() : m_real(sqlite3_vfs_find(nullptr)), m_own(std::make_unique<sqlite3_vfs>(*m_real))
{
    m_own->zName = "ebbline-faults";
    m_own->pNext = nullptr;
    m_own->szOsFile = static_cast<int>(sizeof(File)) + m_real->szOsFile;
    m_own->pAppData = this;
    m_own->xOpen = openFile;
    m_own->xDelete = deleteFile;
    m_own->xAccess = accessFile;
    m_own->xFullPathname = fullPath;
    sqlite3_vfs_register(m_own.get(), 1);
}

FaultDisk::~FaultDisk()
{
    sqlite3_vfs_unregister(m_own.get());
    sqlite3_vfs_register(m_real, 1);
}

void FaultDisk::arm(Fault fault, std::uint64_t at)
{
    m_fault = fault;
    m_at = at;
    m_calls = 0;
    m_injected = 0;
    m_off = false;
    m_filled = false;
    // Images are referred to by open files: they are emptied, never thrown away.
    for (auto& [path, image] : m_images) {
        image.pending.clear();
        image.deleted = false;
        image.exists = std::filesystem::exists(path);
        image.durable = image.exists ? contentsOf(path) : std::string();
    }
}

bool FaultDisk::strikes(bool isWrite)
{
    ++m_calls;
    bool hit = false;
    switch (m_fault) {
    case Fault::none: break;
    case Fault::once: hit = m_calls == m_at; break;
    case Fault::fromThenOn: hit = m_calls >= m_at; break;
    case Fault::full: hit = isWrite && m_calls >= m_at && !m_filled; break;
    case Fault::shortWrite: hit = m_calls == m_at; break;
    case Fault::powerCut: hit = m_calls >= m_at; break;
    }
    if (hit) {
        ++m_injected;
        m_filled = m_fault == Fault::full;
        m_off = m_fault == Fault::powerCut;
    }
    return hit;
}

FaultDisk::Image* FaultDisk::imageOf(const std::string& path)
{
    const auto [found, fresh] = m_images.try_emplace(path);
    Image& image = found->second;
    if (fresh) {
        image.durable = contentsOf(path);
        image.exists = !image.durable.empty();
    } else if (image.deleted) {
        // A new file of the old name: the old one can only come back if nothing was written since.
        image.durable.clear();
        image.exists = false;
        image.deleted = false;
        image.pending.clear();
    }
    return &image;
}

void FaultDisk::forget(const std::string& path, bool durably)
{
    const auto found = m_images.find(path);
    if (found == m_images.end())
        return;
    found->second.deleted = true;
    if (durably)
        found->second.exists = false;
}

FaultDisk::Loss FaultDisk::powerReturns(std::mt19937_64& random)
{
    Loss loss;
    const auto chance = [&](std::uint64_t outOf) { return random() % outOf == 0; };
    for (auto& [path, image] : m_images) {
        std::error_code ignored;
        std::filesystem::remove(path + "-shm", ignored);
        if (image.deleted && (!image.exists || chance(2))) {
            std::filesystem::remove(path, ignored);
            continue;
        }
        loss.revived += image.deleted ? 1 : 0;
        std::string left = image.durable;
        // Of what was never synced: nothing, everything, or a part of each write.
        const std::uint64_t luck = random() % 4;
        for (const Change& change : image.pending) {
            if (luck == 0 || (luck > 1 && chance(3))) {
                ++loss.dropped;
            } else if (luck == 1 || change.truncate || chance(2)) {
                apply(left, change);
                ++loss.kept;
            } else {
                for (std::size_t at = 0; at < change.bytes.size(); at += sector)
                    if (chance(2))
                        apply(left, {change.offset + at, change.bytes.substr(at, sector), false});
                ++loss.torn;
            }
        }
        if (!image.exists && left.empty())
            std::filesystem::remove(path, ignored);
        else
            std::ofstream(path, std::ios::binary | std::ios::trunc) << left;
    }
    m_images.clear();
    m_fault = Fault::none;
    m_off = false;
    return loss;
}

}  // namespace ebbline::faults
