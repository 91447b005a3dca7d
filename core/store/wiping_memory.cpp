// What SQLite lets go of was rows in plain text: it is overwritten before others get the memory.

#include "core/store/handle.h"

#include <sqlite3.h>

#include <cstring>

namespace ebbline::store {

namespace {

/// SQLite's own allocator; its interface is one for the whole program and hands no context on.
sqlite3_mem_methods& underneath()
{
    static sqlite3_mem_methods methods{};
    return methods;
}

void wipeAndFree(void* memory)
{
    if (memory != nullptr)
        crypto::wipe({static_cast<std::uint8_t*>(memory), static_cast<std::size_t>(underneath().xSize(memory))});
    underneath().xFree(memory);
}

void* moveAndWipe(void* memory, int size)
{
    void* fresh = underneath().xMalloc(size);
    if (fresh == nullptr)
        return nullptr;
    if (memory != nullptr)
        std::memcpy(fresh, memory, static_cast<std::size_t>(std::min(size, underneath().xSize(memory))));
    wipeAndFree(memory);
    return fresh;
}

bool install()
{
    if (sqlite3_config(SQLITE_CONFIG_GETMALLOC, &underneath()) != SQLITE_OK || underneath().xMalloc == nullptr)
        return false;
    sqlite3_mem_methods wiping = underneath();
    wiping.xFree = wipeAndFree;
    wiping.xRealloc = moveAndWipe;
    return sqlite3_config(SQLITE_CONFIG_MALLOC, &wiping) == SQLITE_OK;
}

}  // namespace

void wipeFreedMemory()
{
    // Before the library starts; once is all that it allows.
    [[maybe_unused]] static const bool installed = install();
}

}  // namespace ebbline::store
