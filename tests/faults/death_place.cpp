#include "tests/faults/death_place.h"

#include <array>
#include <csignal>
#include <fstream>
#include <vector>

#include <elf.h>
#include <link.h>
#include <ucontext.h>

namespace ebbline::faults {

namespace {

void (*teller)(std::uintptr_t) = nullptr;

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
    teller(placeIn(context));
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

void tellDeath(void (*tell)(std::uintptr_t address))
{
    teller = tell;
    static std::array<char, 64 * 1024> room;
    stack_t own{};
    own.ss_sp = room.data();
    own.ss_size = room.size();
    sigaltstack(&own, nullptr);
    struct sigaction action{};
    action.sa_sigaction = onDeath;
    action.sa_flags = SA_SIGINFO | SA_ONSTACK | static_cast<int>(SA_RESETHAND);
    for (const int signal : {SIGSEGV, SIGBUS, SIGFPE, SIGILL})
        sigaction(signal, &action, nullptr);
}

std::string functionAt(std::uintptr_t address)
{
    std::ifstream file("/proc/self/exe", std::ios::binary);
    const auto head = rowsAt<Elf64_Ehdr>(file, 0, sizeof(Elf64_Ehdr));
    if (head.empty())
        return {};
    const auto sections = rowsAt<Elf64_Shdr>(file, head[0].e_shoff, std::uint64_t{head[0].e_shnum} * sizeof(Elf64_Shdr));
    const std::uintptr_t place = address - shift();
    for (const Elf64_Shdr& section : sections) {
        if (section.sh_type != SHT_SYMTAB || section.sh_link >= sections.size())
            continue;
        const Elf64_Shdr& words = sections[section.sh_link];
        const auto names = rowsAt<char>(file, words.sh_offset, words.sh_size);
        for (const Elf64_Sym& symbol : rowsAt<Elf64_Sym>(file, section.sh_offset, section.sh_size))
            if (ELF64_ST_TYPE(symbol.st_info) == STT_FUNC && place >= symbol.st_value && place < symbol.st_value + symbol.st_size
                && symbol.st_name < names.size())
                return std::string(names.data() + symbol.st_name);
    }
    return {};
}

}  // namespace ebbline::faults
