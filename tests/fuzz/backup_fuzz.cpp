// A backup file, as whoever holds it may change it. The hash at its end is set right, so that what stands before it is
// reached; the same bytes as they are find out whether the hash is looked at.

#include "tests/fuzz/fuzz_target.h"

#include "core/vault/container.h"
#include "core/vault/key_slots.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <unistd.h>

using namespace ebbline;

namespace {

const std::filesystem::path& folder()
{
    static const auto made = [] {
        auto path = std::filesystem::temp_directory_path() / ("ebbline-fuzz-backup-" + std::to_string(getpid()));
        std::filesystem::remove_all(path);
        std::filesystem::create_directories(path);
        return path;
    }();
    return made;
}

void writeFile(const std::filesystem::path& name, bytes::View first, bytes::View second = {})
{
    std::ofstream file(name, std::ios::binary | std::ios::trunc);
    file.write(reinterpret_cast<const char*>(first.data()), static_cast<std::streamsize>(first.size()));
    file.write(reinterpret_cast<const char*>(second.data()), static_cast<std::streamsize>(second.size()));
}

bytes::Bytes readFile(const std::filesystem::path& name)
{
    std::ifstream file(name, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

}  // namespace

void fuzz::tryInput(bytes::View input)
{
    const auto backup = folder() / "it.ebbline", vault = folder() / "vault", again = folder() / "again.ebbline";
    std::filesystem::remove_all(vault);
    std::filesystem::create_directories(vault);

    writeFile(backup, input);
    if (const auto raw = vault::unpack(backup, vault)) {
        mustHold(input.size() > 32 && std::ranges::equal(raw->hash, crypto::hash256(input.first(input.size() - 32))),
                 "nothing is unpacked whose hash does not hold");
        std::filesystem::remove_all(vault);
        std::filesystem::create_directories(vault);
    }
    mustHold(std::filesystem::is_empty(vault), "what is refused leaves nothing behind");

    const auto hash = crypto::hash256(input);
    writeFile(backup, input, hash);
    const auto container = vault::unpack(backup, vault);
    if (!container) {
        mustHold(std::filesystem::is_empty(vault), "what is refused leaves nothing behind");
        return;
    }
    mustHold(container->size == input.size() + 32 && container->hash == hash, "it says how large it is, and its hash");
    for (const auto& file : std::filesystem::directory_iterator(vault)) {
        const auto name = file.path().filename();
        mustHold(name == "vault.keys" || name == "vault.db" || name == "open.info", "a backup makes the files of a vault, and no other");
    }
    const auto slots = vault::KeySlots::decode(readFile(vault / "vault.keys"));
    mustHold(!slots || vault::KeySlots::decode(slots->encode()), "key slots that are read can be written");
    std::filesystem::remove(again);
    mustHold(vault::pack(vault, container->made, again).has_value(), "what was unpacked can be packed");
    const auto packed = readFile(again);
    mustHold(packed.size() == container->size && std::ranges::equal(bytes::View(packed).first(input.size()), input), "and is the same backup");
}
