#include "tests/faults/failing_memory.h"

#include <cerrno>
#include <cstddef>

extern "C" {
void* __libc_malloc(std::size_t size);
void* __libc_calloc(std::size_t count, std::size_t size);
void* __libc_realloc(void* old, std::size_t size);
void* __libc_memalign(std::size_t alignment, std::size_t size);
}

namespace ebbline::faults {

namespace {

bool armed = false;
bool stays = false;
std::uint64_t fails = 0;
std::uint64_t asked = 0;
std::uint64_t refused = 0;

bool given()
{
    if (!armed)
        return true;
    ++asked;
    if (fails == 0 || asked < fails || (asked > fails && !stays))
        return true;
    ++refused;
    errno = ENOMEM;
    return false;
}

}  // namespace

void armMemory(std::uint64_t at, bool sticky)
{
    fails = at;
    stays = sticky;
    asked = refused = 0;
    armed = true;
}

std::uint64_t disarmMemory()
{
    armed = false;
    return asked;
}

std::uint64_t refusedMemory() { return refused; }

}  // namespace ebbline::faults

extern "C" {

void* malloc(std::size_t size) { return ebbline::faults::given() ? __libc_malloc(size) : nullptr; }
void* calloc(std::size_t count, std::size_t size) { return ebbline::faults::given() ? __libc_calloc(count, size) : nullptr; }
void* realloc(void* old, std::size_t size) { return ebbline::faults::given() ? __libc_realloc(old, size) : nullptr; }
void* memalign(std::size_t alignment, std::size_t size) { return ebbline::faults::given() ? __libc_memalign(alignment, size) : nullptr; }
void* aligned_alloc(std::size_t alignment, std::size_t size) { return memalign(alignment, size); }

int posix_memalign(void** out, std::size_t alignment, std::size_t size)
{
    void* memory = memalign(alignment, size);
    if (!memory)
        return ENOMEM;
    *out = memory;
    return 0;
}
}
