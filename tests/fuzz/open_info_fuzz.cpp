// The file that is read while the vault is locked: whom to call.

#include "tests/fuzz/fuzz_target.h"

#include "core/vault/vault.h"

#include <fstream>
#include <unistd.h>

namespace {

const std::filesystem::path& folder()
{
    static const auto made = [] {
        auto path = std::filesystem::temp_directory_path() / ("ebbline-fuzz-" + std::to_string(getpid()));
        std::filesystem::create_directories(path);
        return path;
    }();
    return made;
}

}  // namespace

void ebbline::fuzz::tryInput(bytes::View input)
{
    // The checksum is set right, so that the fields behind it are reached.
    const auto check = crypto::hash128(input);
    {
        std::ofstream file(folder() / "open.info", std::ios::binary);
        file.write(reinterpret_cast<const char*>(input.data()), static_cast<std::streamsize>(input.size()));
        file.write(reinterpret_cast<const char*>(check.data()), static_cast<std::streamsize>(check.size()));
    }
    const auto info = vault::readOpenInfo(folder());
    if (!info)
        return;
    mustHold(vault::writeOpenInfo(folder(), *info).has_value(), "what was read can be written");
    const auto again = vault::readOpenInfo(folder());
    mustHold(again && again->contacts == info->contacts, "and reads the same");
}
