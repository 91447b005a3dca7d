#include "core/exchange/picture_digest.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cstdint>

namespace ebbline::exchange {

namespace {

constexpr std::size_t blockBytes = 64;
constexpr std::string_view digits = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

using State = std::array<std::uint32_t, 5>;

/// One block of 64 bytes (FIPS 180-4, section 6.1.2).
void take(State& state, const std::uint8_t* block)
{
    std::array<std::uint32_t, 80> words{};
    for (std::size_t t = 0; t < 16; ++t) {
        for (std::size_t k = 0; k < 4; ++k)
            words[t] = (words[t] << 8) | block[4 * t + k];
    }
    for (std::size_t t = 16; t < words.size(); ++t)
        words[t] = std::rotl(words[t - 3] ^ words[t - 8] ^ words[t - 14] ^ words[t - 16], 1);
    auto [a, b, c, d, e] = state;
    for (std::size_t t = 0; t < words.size(); ++t) {
        const std::uint32_t mixed = t < 20 ? (b & c) ^ (~b & d) : t < 40 || t >= 60 ? b ^ c ^ d : (b & c) ^ (b & d) ^ (c & d);
        constexpr std::array<std::uint32_t, 4> constants{0x5a827999, 0x6ed9eba1, 0x8f1bbcdc, 0xca62c1d6};
        const std::uint32_t next = std::rotl(a, 5) + mixed + e + constants[t / 20] + words[t];
        e = d;
        d = c;
        c = std::rotl(b, 30);
        b = a;
        a = next;
    }
    state = {state[0] + a, state[1] + b, state[2] + c, state[3] + d, state[4] + e};
}

}  // namespace

bytes::Array<20> sha1(bytes::View input)
{
    State state{0x67452301, 0xefcdab89, 0x98badcfe, 0x10325476, 0xc3d2e1f0};
    std::size_t done = 0;
    for (; input.size() - done >= blockBytes; done += blockBytes)
        take(state, input.data() + done);
    // The rest, one bit, zeros, and the length in bits: one block or two.
    std::array<std::uint8_t, 2 * blockBytes> last{};
    const std::size_t rest = input.size() - done;
    std::copy(input.begin() + static_cast<std::ptrdiff_t>(done), input.end(), last.begin());
    last[rest] = 0x80;
    const std::size_t end = rest + 9 > blockBytes ? 2 * blockBytes : blockBytes;
    const std::uint64_t bits = std::uint64_t{input.size()} * 8;
    for (std::size_t k = 0; k < 8; ++k)
        last[end - 1 - k] = static_cast<std::uint8_t>(bits >> (8 * k));
    for (std::size_t at = 0; at < end; at += blockBytes)
        take(state, last.data() + at);
    bytes::Array<20> digest{};
    for (std::size_t i = 0; i < digest.size(); ++i)
        digest[i] = static_cast<std::uint8_t>(state[i / 4] >> (24 - 8 * (i % 4)));
    return digest;
}

std::string toBase64(bytes::View input)
{
    std::string text;
    for (std::size_t at = 0; at < input.size(); at += 3) {
        const std::size_t here = std::min<std::size_t>(3, input.size() - at);
        std::uint32_t three = 0;
        for (std::size_t k = 0; k < 3; ++k)
            three = (three << 8) | (k < here ? input[at + k] : 0u);
        for (std::size_t k = 0; k < 4; ++k)
            text += k <= here ? digits[(three >> (18 - 6 * k)) & 63] : '=';
    }
    return text;
}

Result<bytes::Bytes> fromBase64(std::string_view text)
{
    bytes::Bytes read;
    std::uint32_t kept = 0;
    unsigned bits = 0;
    for (const char letter : text.substr(0, text.find('='))) {
        const std::size_t value = digits.find(letter);
        if (value == std::string_view::npos)
            return fail(Reason::malformed, "base64: a character that is none of its");
        kept = (kept << 6) | static_cast<std::uint32_t>(value);
        bits += 6;
        if (bits >= 8) {
            bits -= 8;
            read.push_back(static_cast<std::uint8_t>(kept >> bits));
            kept &= (std::uint32_t{1} << bits) - 1;
        }
    }
    // The padding, and bits that no encoder sets.
    if (toBase64(read) != text)
        return fail(Reason::malformed, "base64: not as an encoder writes it");
    return read;
}

}  // namespace ebbline::exchange
