#include "core/vault/recovery_code.h"

#include "core/bytes/text.h"

#include <utility>

namespace ebbline::vault {

namespace {

constexpr std::size_t ownCharacters = 32;

/// Twenty bits: the CRC-16, which notices every single character and every two neighbours, and
/// four bits of a hash, which make a chance fit sixteen times rarer.
std::string checkOf(bytes::View code)
{
    bytes::Bytes message(bytes::viewOf("EB-recovery-v1").begin(), bytes::viewOf("EB-recovery-v1").end());
    message.insert(message.end(), code.begin(), code.end());
    const std::uint16_t crc = bytes::crc16(code);
    const auto hash = crypto::hash128(message);
    crypto::wipe(message);
    const bytes::Array<3> bits{static_cast<std::uint8_t>(crc >> 8), static_cast<std::uint8_t>(crc & 0xff),
                               static_cast<std::uint8_t>(hash[0] & 0xf0)};
    return bytes::toBase32(bits).substr(0, RecoveryCode::characters - ownCharacters);
}

void wipeText(std::string& text)
{
    crypto::wipe({reinterpret_cast<std::uint8_t*>(text.data()), text.size()});
}

/// What was typed, without what separates it, as capitals.
std::string lettersOf(std::string_view typed)
{
    std::string letters = bytes::fromTyped(typed, RecoveryCode::characters);
    for (char& c : letters)
        if (c >= 'a' && c <= 'z')
            c = static_cast<char>(c - 'a' + 'A');
    return letters;
}

}  // namespace

RecoveryCode::RecoveryCode(RecoveryCode&& other) noexcept : m_bytes(other.m_bytes)
{
    crypto::wipe(other.m_bytes);
}

RecoveryCode& RecoveryCode::operator=(RecoveryCode&& other) noexcept
{
    if (this != &other) {
        m_bytes = other.m_bytes;
        crypto::wipe(other.m_bytes);
    }
    return *this;
}

RecoveryCode::~RecoveryCode()
{
    crypto::wipe(m_bytes);
}

RecoveryCode RecoveryCode::random()
{
    RecoveryCode code;
    crypto::randomFill(code.m_bytes);
    return code;
}

std::string RecoveryCode::text() const
{
    std::string letters = bytes::toBase32(m_bytes);
    letters += checkOf(m_bytes);
    std::string grouped = bytes::inGroups(letters);
    wipeText(letters);
    return grouped;
}

Result<RecoveryCode> RecoveryCode::fromText(std::string_view text)
{
    std::string letters = lettersOf(text);
    const bool known = letters.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZ234567") == std::string::npos;
    const std::size_t length = letters.size();
    RecoveryCode code;
    bool fits = false;
    if (known && length == characters) {
        Result<bytes::Bytes> decoded = bytes::fromBase32(std::string_view(letters).substr(0, ownCharacters));
        if (decoded && decoded->size() == size) {
            std::copy(decoded->begin(), decoded->end(), code.m_bytes.begin());
            crypto::wipe(*decoded);
            fits = crypto::equal(bytes::viewOf(checkOf(code.m_bytes)),
                                 bytes::viewOf(std::string_view(letters).substr(ownCharacters)));
        }
    }
    wipeText(letters);
    if (!known)
        return fail(Reason::malformed, "recovery code: a character that no code has");
    if (length < characters)
        return fail(Reason::notEnough, "recovery code: fewer than 36 characters");
    if (length > characters)
        return fail(Reason::tooLarge, "recovery code: more than 36 characters");
    if (!fits)
        return fail(Reason::damaged, "recovery code: a character is wrong, or two changed places");
    return code;
}

int groupToAsk()
{
    constexpr int groups = RecoveryCode::characters / 4;
    // What is left over of a byte is drawn again, so that each is as likely.
    bytes::Array<1> drawn{};
    do {
        crypto::randomFill(drawn);
    } while (drawn[0] >= 256 / groups * groups);
    return 1 + drawn[0] % groups;
}

bool saysGroup(std::string_view code, int group, std::string_view typed)
{
    std::string whole = lettersOf(code);
    std::string said = lettersOf(typed);
    const std::string_view asked = std::string_view(whole).substr(4 * static_cast<std::size_t>(group - 1), 4);
    const bool says = said.size() == 4 ? crypto::equal(bytes::viewOf(said), bytes::viewOf(asked))
                                       : said.size() == whole.size() && crypto::equal(bytes::viewOf(said), bytes::viewOf(whole));
    wipeText(whole);
    wipeText(said);
    return says;
}

}  // namespace ebbline::vault
