#include "tests/faults/leak_search.h"

#include "core/bytes/text.h"

#include <algorithm>
#include <fcntl.h>
#include <fstream>
#include <iterator>
#include <sstream>
#include <unistd.h>

namespace ebbline::faults {

namespace {

bytes::Bytes asUtf16(bytes::View value, bool bigEndian)
{
    bytes::Bytes out;
    for (const std::uint8_t byte : value) {
        out.push_back(bigEndian ? 0 : byte);
        out.push_back(bigEndian ? byte : 0);
    }
    return out;
}

/// The middle of the Base64 text of `before` unknown bytes, the value, and what may follow: the letters that the value alone decides.
bytes::Bytes asBase64(bytes::View value, std::size_t before)
{
    constexpr std::string_view letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    bytes::Bytes padded(before, 0);
    padded.insert(padded.end(), value.begin(), value.end());
    bytes::Bytes out;
    const std::size_t first = before == 0 ? 0 : 1;  // groups of three
    for (std::size_t group = first; group * 3 + 3 <= padded.size(); ++group) {
        const std::uint32_t bits = static_cast<std::uint32_t>(padded[group * 3] << 16 | padded[group * 3 + 1] << 8 | padded[group * 3 + 2]);
        for (int shift = 18; shift >= 0; shift -= 6)
            out.push_back(static_cast<std::uint8_t>(letters[bits >> shift & 63]));
    }
    return out;
}

std::size_t count(bytes::View where, bytes::View what)
{
    std::size_t found = 0;
    for (auto at = std::search(where.begin(), where.end(), what.begin(), what.end()); at != where.end();
         at = std::search(at + 1, where.end(), what.begin(), what.end()))
        ++found;
    return found;
}

bytes::Bytes asBytes(const std::string& text)
{
    return {text.begin(), text.end()};
}

}  // namespace

Canary::Canary(std::string name, bytes::Bytes value) : m_name(std::move(name)), m_value(std::move(value))
{
    std::string hex = bytes::toHex(m_value);
    m_forms = {m_value, asUtf16(m_value, false), asUtf16(m_value, true), asBytes(hex)};
    std::ranges::transform(hex, hex.begin(), [](char c) { return c >= 'a' && c <= 'f' ? static_cast<char>(c - 'a' + 'A') : c; });
    if (asBytes(hex) != m_forms.back())
        m_forms.push_back(asBytes(hex));
    for (std::size_t before = 0; before < 3; ++before)
        m_forms.push_back(asBase64(m_value, before));
}

std::size_t Canary::countIn(bytes::View where) const
{
    std::size_t found = 0;
    for (const bytes::Bytes& form : m_forms)
        found += count(where, form);
    return found;
}

std::size_t Canary::plainIn(bytes::View where) const
{
    return count(where, m_value);
}

bytes::Bytes contentsOf(const std::filesystem::path& file)
{
    std::ifstream input(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(input), {}};
}

std::size_t forEachPieceOfMemory(pid_t process, std::size_t overlap, const std::function<void(bytes::View)>& look)
{
    const std::string at = "/proc/" + std::to_string(process);
    const int memory = ::open((at + "/mem").c_str(), O_RDONLY | O_CLOEXEC);
    if (memory < 0)
        return 0;
    constexpr std::size_t pieceSize = 4 << 20;
    bytes::Bytes piece(pieceSize);
    std::size_t read = 0;
    std::ifstream maps(at + "/maps");
    for (std::string line; std::getline(maps, line);) {
        std::istringstream fields(line);
        std::uintptr_t from = 0, to = 0;
        char dash = 0;
        std::string rights;
        fields >> std::hex >> from >> dash >> to >> rights;
        if (rights.empty() || rights[0] != 'r' || line.ends_with("[vvar]") || line.ends_with("[vsyscall]"))
            continue;
        for (std::uintptr_t begin = from; begin < to; begin += pieceSize - overlap) {
            const ssize_t got = ::pread(memory, piece.data(), std::min<std::size_t>(pieceSize, to - begin), static_cast<off_t>(begin));
            if (got <= 0)
                break;
            read += static_cast<std::size_t>(got);
            look(bytes::View(piece).first(static_cast<std::size_t>(got)));
            if (begin + static_cast<std::size_t>(got) >= to)
                break;
        }
    }
    ::close(memory);
    return read;
}

}  // namespace ebbline::faults
