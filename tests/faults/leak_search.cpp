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

Net::Net(const std::vector<Canary>& canaries) : m_canaries(canaries.size()), m_byStart(std::size_t{1} << 16)
{
    for (std::size_t i = 0; i < canaries.size(); ++i)
        for (const bytes::Bytes& form : canaries[i].forms()) {
            m_byStart[static_cast<std::size_t>(form[0]) << 8 | form[1]].push_back(m_forms.size());
            m_longest = std::max(m_longest, form.size());
            m_forms.push_back({i, form == canaries[i].value(), form});
        }
}

std::vector<Net::Catch> Net::in(bytes::View where) const
{
    std::vector<Catch> caught(m_canaries);
    for (std::size_t at = 0; at + 1 < where.size(); ++at)
        for (const std::size_t place : m_byStart[static_cast<std::size_t>(where[at]) << 8 | where[at + 1]]) {
            const Form& form = m_forms[place];
            if (where.size() - at < form.bytes.size()
                || !std::equal(form.bytes.begin(), form.bytes.end(), where.begin() + static_cast<std::ptrdiff_t>(at)))
                continue;
            ++caught[form.canary].any;
            caught[form.canary].plain += form.plain ? 1 : 0;
        }
    return caught;
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
