#include "core/vault/drawn_passphrase.h"

#include "core/bytes/text.h"
#include "core/crypto/crypto.h"

#include <optional>

namespace ebbline::vault {

namespace {

constexpr std::string_view alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";  // base32, RFC 4648 section 6
constexpr std::size_t drawn = 15;
constexpr std::size_t group = 4;

/// A weighted sum modulo 31, as the ISBN-10 has one modulo 11 (ISO 2108:1972): with a prime above the highest weight
/// it notices every wrong character and every two that changed places, but for A and 7 taken for each other.
char checkOf(std::string_view letters)
{
    std::size_t sum = 0;
    for (std::size_t i = 0; i < drawn; ++i)
        sum += (i + 1) * alphabet.find(letters[i]);
    return alphabet[sum % 31];
}

void wipeText(std::string& text) { crypto::wipe({reinterpret_cast<std::uint8_t*>(text.data()), text.size()}); }

/// What other keyboards write for the same: dotted and dotless I, Arabic and Persian digits, longer dashes, full width.
std::string asAscii(std::string_view typed)
{
    std::string out;
    out.reserve(typed.size());
    const auto at = [&](std::size_t i) { return i < typed.size() ? static_cast<unsigned>(static_cast<unsigned char>(typed[i])) : 0u; };
    const auto within = [](unsigned byte, unsigned from, unsigned to) { return byte >= from && byte <= to; };
    const auto put = [&out](char first, unsigned offset) { out += static_cast<char>(first + static_cast<char>(offset)); };
    for (std::size_t i = 0; i < typed.size();) {
        const unsigned a = at(i), b = at(i + 1), c = at(i + 2);
        std::size_t taken = 2;
        if (a == 0xC4 && within(b, 0xB0, 0xB1))
            out += 'I';
        else if (a == 0xD9 && within(b, 0xA0, 0xA9))
            put('0', b - 0xA0);
        else if (a == 0xDB && within(b, 0xB0, 0xB9))
            put('0', b - 0xB0);
        else if (taken = 3; a == 0xE2 && b == 0x80 && within(c, 0x90, 0x95))
            out += '-';
        else if (a == 0xEF && b == 0xBC && within(c, 0x90, 0x99))
            put('0', c - 0x90);
        else if (a == 0xEF && b == 0xBC && within(c, 0xA1, 0xBA))
            put('A', c - 0xA1);
        else if (a == 0xEF && b == 0xBD && within(c, 0x81, 0x9A))
            put('A', c - 0x81);
        else if (taken = 1; true)
            out += typed[i];
        i += taken;
    }
    return out;
}

/// The sixteen letters of something that has the form of a drawn one. A passphrase of a person's own
/// that has dashes or spaces elsewhere keeps them, and its case.
std::optional<std::string> lettersOf(std::string_view typed)
{
    const auto blank = [](char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; };
    while (!typed.empty() && blank(typed.front()))
        typed.remove_prefix(1);
    while (!typed.empty() && blank(typed.back()))
        typed.remove_suffix(1);
    std::size_t inGroup = 0;
    for (const char c : typed) {
        if (c == '-' || c == ' ') {
            if (inGroup != group)
                return std::nullopt;
            inGroup = 0;
        } else {
            inGroup = inGroup == group ? 1 : inGroup + 1;
        }
    }
    std::string letters = bytes::fromTyped(typed, drawn + 1);
    for (char& c : letters)
        if (c >= 'a' && c <= 'z')
            c = static_cast<char>(c - 'a' + 'A');
    if (letters.size() != drawn + 1 || letters.find_first_not_of(alphabet) != std::string::npos || letters.back() != checkOf(letters)) {
        wipeText(letters);
        return std::nullopt;
    }
    return letters;
}

std::string grouped(std::string& letters)
{
    std::string text = bytes::inGroups(letters);
    wipeText(letters);
    return text;
}

}  // namespace

std::string drawPassphrase()
{
    bytes::Array<10> random{};
    crypto::randomFill(random);
    // Sixteen characters' worth of bits; fifteen of them are taken.
    std::string letters = bytes::toBase32(random);
    crypto::wipe(random);
    letters[drawn] = checkOf(letters);
    return grouped(letters);
}

std::string passphraseAsDrawn(std::string_view typed)
{
    std::string ascii = asAscii(typed);
    auto letters = lettersOf(ascii);
    wipeText(ascii);
    return letters ? grouped(*letters) : std::string(typed);
}

std::array<int, 2> groupsToAsk()
{
    // Six pairs; what is left over of a byte is drawn again, so that each is as likely.
    constexpr std::array<std::array<int, 2>, 6> pairs{{{1, 2}, {1, 3}, {1, 4}, {2, 3}, {2, 4}, {3, 4}}};
    constexpr std::size_t even = 256 / pairs.size() * pairs.size();
    std::size_t byte = even;
    while (byte >= even)
        byte = crypto::randomArray<1>()[0];
    return pairs[byte % pairs.size()];
}

bool saysGroups(std::string_view drawn, const std::array<int, 2>& groups, std::string_view typed)
{
    std::string whole = passphraseAsDrawn(typed);
    const bool all = whole == drawn;
    wipeText(whole);
    if (all)
        return true;
    std::string ascii = asAscii(typed);
    std::string letters = bytes::fromTyped(ascii, 2 * group);
    for (char& c : letters)
        if (c >= 'a' && c <= 'z')
            c = static_cast<char>(c - 'a' + 'A');
    std::string asked;
    for (const int each : groups)
        asked += drawn.substr(static_cast<std::size_t>(each - 1) * (group + 1), group);
    const bool same = letters == asked;
    for (std::string* text : {&ascii, &letters, &asked})
        wipeText(*text);
    return same;
}

}  // namespace ebbline::vault
