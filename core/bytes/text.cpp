#include "core/bytes/text.h"

namespace ebbline::bytes {

namespace {

constexpr std::string_view base32Alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";

int hexDigit(char c)
{
    if (c >= '0' && c <= '9')
        return c - '0';
    if (c >= 'a' && c <= 'f')
        return c - 'a' + 10;
    if (c >= 'A' && c <= 'F')
        return c - 'A' + 10;
    return -1;
}

int base32Digit(char c)
{
    if (c >= 'a' && c <= 'z')
        c = static_cast<char>(c - 'a' + 'A');
    const auto found = base32Alphabet.find(c);
    return found == std::string_view::npos ? -1 : static_cast<int>(found);
}

}  // namespace

std::string toHex(View input)
{
    constexpr std::string_view digits = "0123456789abcdef";
    std::string out;
    out.reserve(input.size() * 2);
    for (const std::uint8_t byte : input) {
        out.push_back(digits[byte >> 4]);
        out.push_back(digits[byte & 15]);
    }
    return out;
}

Result<Bytes> fromHex(std::string_view text)
{
    if (text.size() % 2 != 0)
        return fail(Reason::malformed, "hex: odd number of digits");
    Bytes out;
    out.reserve(text.size() / 2);
    for (std::size_t i = 0; i < text.size(); i += 2) {
        const int high = hexDigit(text[i]);
        const int low = hexDigit(text[i + 1]);
        if (high < 0 || low < 0)
            return fail(Reason::malformed, "hex: not a hexadecimal digit");
        out.push_back(static_cast<std::uint8_t>(high * 16 + low));
    }
    return out;
}

std::string toBase32(View input)
{
    std::string out;
    std::uint32_t pending = 0;
    int bits = 0;
    for (const std::uint8_t byte : input) {
        pending = (pending << 8) | byte;
        bits += 8;
        while (bits >= 5) {
            bits -= 5;
            out.push_back(base32Alphabet[(pending >> bits) & 31]);
        }
        pending &= (1U << bits) - 1;
    }
    if (bits > 0)
        out.push_back(base32Alphabet[(pending << (5 - bits)) & 31]);
    return out;
}

Result<Bytes> fromBase32(std::string_view text)
{
    while (!text.empty() && text.back() == '=')
        text.remove_suffix(1);
    const std::size_t odd = text.size() % 8;
    if (odd == 1 || odd == 3 || odd == 6)
        return fail(Reason::malformed, "base32: impossible length");
    Bytes out;
    out.reserve(text.size() * 5 / 8);
    std::uint32_t pending = 0;
    int bits = 0;
    for (const char c : text) {
        const int digit = base32Digit(c);
        if (digit < 0)
            return fail(Reason::malformed, "base32: not a letter A-Z or a digit 2-7");
        pending = (pending << 5) | static_cast<std::uint32_t>(digit);
        bits += 5;
        if (bits >= 8) {
            bits -= 8;
            out.push_back(static_cast<std::uint8_t>(pending >> bits));
            pending &= (1U << bits) - 1;
        }
    }
    if (pending != 0)
        return fail(Reason::malformed, "base32: bits left over at the end");
    return out;
}

std::string inGroups(std::string_view letters)
{
    std::string grouped;
    for (std::size_t i = 0; i < letters.size(); ++i) {
        if (i > 0 && i % 4 == 0)
            grouped.push_back('-');
        grouped.push_back(letters[i]);
    }
    return grouped;
}

std::string fromTyped(std::string_view text, std::size_t atMost)
{
    std::string letters;
    for (const char c : text) {
        if (c == ' ' || c == '-' || c == '\t' || c == '\n' || c == '\r')
            continue;
        letters.push_back(c == '0' ? 'O' : c == '1' ? 'I' : c == '8' ? 'B' : c);
        if (letters.size() > atMost)
            break;
    }
    return letters;
}

std::uint16_t crc16(View input)
{
    std::uint16_t crc = 0xffff;
    for (const std::uint8_t byte : input) {
        crc = static_cast<std::uint16_t>(crc ^ (byte << 8));
        for (int bit = 0; bit < 8; ++bit)
            crc = static_cast<std::uint16_t>((crc & 0x8000) ? (crc << 1) ^ 0x1021 : crc << 1);
    }
    return crc;
}

}  // namespace ebbline::bytes
