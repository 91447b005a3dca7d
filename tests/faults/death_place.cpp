#include "tests/faults/death_place.h"

#include <array>
#include <csignal>
#include <fstream>
#include <vector>

#include <elf.h>
#include <execinfo.h>
#include <link.h>
#include <ucontext.h>

namespace ebbline::faults {

namespace {

void (*teller)(const Frames&) = nullptr;

std::uintptr_t placeIn(const void* context)
{
    const auto& machine = static_cast<const ucontext_t*>(context)->uc_mcontext;
#if defined(__x86_64__)
    return static_cast<std::uintptr_t>(machine.gregs[REG_RIP]);
#elif defined(__aarch64__)
    return static_cast<std::uintptr_t>(machine.pc);
#else
    (void)machine;
    return 0;
#endif
}

/// The old action is back by then, so that the same instruction, done again, kills.
void onDeath(int, siginfo_t*, void* context)
{
    std::array<void*, 32> found{};
    const int count = backtrace(found.data(), static_cast<int>(found.size()));
    Frames frames{placeIn(context)};
    // The handler's own frames stand before it.
    std::size_t next = 0;
    for (int i = 0; i < count && next < frames.size(); ++i) {
        const auto address = reinterpret_cast<std::uintptr_t>(found[static_cast<std::size_t>(i)]);
        if (next > 0 || address == frames[0])
            frames[next++] = address;
    }
    teller(frames);
}

template <typename Row>
std::vector<Row> rowsAt(std::ifstream& file, std::uint64_t offset, std::uint64_t bytes)
{
    std::vector<Row> rows(bytes / sizeof(Row));
    file.seekg(static_cast<std::streamoff>(offset));
    file.read(reinterpret_cast<char*>(rows.data()), static_cast<std::streamsize>(rows.size() * sizeof(Row)));
    return file ? rows : std::vector<Row>{};
}

/// How far this program was moved when it was loaded.
std::uintptr_t shift()
{
    std::uintptr_t found = 0;
    dl_iterate_phdr(
        [](dl_phdr_info* info, std::size_t, void* out) {
            *static_cast<std::uintptr_t*>(out) = info->dlpi_addr;
            return 1;  // the first is the program itself
        },
        &found);
    return found;
}

}  // namespace

void tellDeath(void (*tell)(const Frames& frames))
{
    teller = tell;
    // The unwinder is loaded now, while there is memory.
    std::array<void*, 4> first{};
    (void)backtrace(first.data(), static_cast<int>(first.size()));
    static std::array<char, 64 * 1024> room;
    stack_t own{};
    own.ss_sp = room.data();
    own.ss_size = room.size();
    sigaltstack(&own, nullptr);
    struct sigaction action{};
    action.sa_sigaction = onDeath;
    action.sa_flags = SA_SIGINFO | SA_ONSTACK | static_cast<int>(SA_RESETHAND);
    for (const int signal : {SIGSEGV, SIGBUS, SIGFPE, SIGILL, SIGABRT})
        sigaction(signal, &action, nullptr);
}

std::vector<std::string> functionsIn(const Frames& frames)
{
    std::vector<std::string> functions;
    std::ifstream file("/proc/self/exe", std::ios::binary);
    const auto head = rowsAt<Elf64_Ehdr>(file, 0, sizeof(Elf64_Ehdr));
    if (head.empty())
        return {};
    const auto sections = rowsAt<Elf64_Shdr>(file, head[0].e_shoff, std::uint64_t{head[0].e_shnum} * sizeof(Elf64_Shdr));
    for (const Elf64_Shdr& section : sections) {
        if (section.sh_type != SHT_SYMTAB || section.sh_link >= sections.size())
            continue;
        const Elf64_Shdr& words = sections[section.sh_link];
        const auto names = rowsAt<char>(file, words.sh_offset, words.sh_size);
        const auto symbols = rowsAt<Elf64_Sym>(file, section.sh_offset, section.sh_size);
        for (std::size_t i = 0; i < frames.size() && frames[i] != 0; ++i) {
            // A caller's address is the one after its call.
            const std::uintptr_t place = frames[i] - shift() - (i > 0 ? 1 : 0);
            for (const Elf64_Sym& symbol : symbols)
                if (ELF64_ST_TYPE(symbol.st_info) == STT_FUNC && place >= symbol.st_value && place < symbol.st_value + symbol.st_size
                    && symbol.st_name < names.size())
                    functions.emplace_back(names.data() + symbol.st_name);
        }
    }
    return functions;
}

}  // namespace ebbline::faults
