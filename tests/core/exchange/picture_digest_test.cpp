// SHA-1 and base64 as an Attachment of FHIR R4 wants them.
#include "core/bytes/text.h"
#include "core/exchange/picture_digest.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

#include <initializer_list>

using namespace ebbline;

namespace {

std::string digestOf(const std::string& text)
{
    return bytes::toHex(exchange::sha1(bytes::viewOf(text)));
}

}  // namespace

TEST_CASE("SHA-1 gives the published digests", "[exchange][digest]")
{
    // RFC 3174 (Eastlake and Jones, "US Secure Hash Algorithm 1 (SHA1)", 2001), section 7.3, TEST1, TEST2 and TEST3.
    CHECK(digestOf("abc") == "a9993e364706816aba3e25717850c26c9cd0d89d");
    CHECK(digestOf("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq") == "84983e441c3bd26ebaae4aa1f95129e5e54670f1");
    CHECK(digestOf(std::string(1'000'000, 'a')) == "34aa973cd4c4daa4f61eeb2bdbad27316534016f");
}

TEST_CASE("SHA-1 pads as another program does around the end of a block", "[exchange][digest]")
{
    // Computed with Python's hashlib.
    CHECK(digestOf("") == "da39a3ee5e6b4b0d3255bfef95601890afd80709");
    CHECK(digestOf(std::string(55, 'a')) == "c1c8bbdc22796e28c0e15163d20899b65621d65a");
    CHECK(digestOf(std::string(56, 'a')) == "c2db330f6083854c99d4b5bfb6e8f29f201be699");
    CHECK(digestOf(std::string(63, 'a')) == "03f09f5b158a7a8cdad920bddc29b81c18a551f5");
    CHECK(digestOf(std::string(64, 'a')) == "0098ba824b5c16427bd7a1122a5a442a25ec644d");
    CHECK(digestOf(std::string(65, 'a')) == "11655326c708d70319be2610e8a57d9a5b959d3b");
    CHECK(digestOf(std::string(119, 'a')) == "ee971065aaa017e0632a8ca6c77bb3bf8b1dfc56");
    CHECK(digestOf(std::string(120, 'a')) == "f34c1488385346a55709ba056ddd08280dd4c6d6");
}

TEST_CASE("base64 gives the published texts, and reads them back", "[exchange][digest]")
{
    // RFC 4648 (Josefsson, "The Base16, Base32, and Base64 Data Encodings", 2006), section 10.
    for (const auto& [plain, text] : std::initializer_list<std::pair<const char*, const char*>>{
             {"", ""}, {"f", "Zg=="}, {"fo", "Zm8="}, {"foo", "Zm9v"}, {"foob", "Zm9vYg=="}, {"fooba", "Zm9vYmE="}, {"foobar", "Zm9vYmFy"}}) {
        const bytes::View input = bytes::viewOf(plain);
        CHECK(exchange::toBase64(input) == text);
        CHECK(exchange::fromBase64(text).value() == bytes::Bytes(input.begin(), input.end()));
    }
}

TEST_CASE("base64 takes nothing that no encoder writes", "[exchange][digest][errors]")
{
    for (const char* text : {"Zg", "Zg=", "Zh==", "Z===", "Zm9v=", "Zm 9v", "Zm9-", "=", "Zg==Zg=="}) {
        CAPTURE(text);
        const auto read = exchange::fromBase64(text);
        REQUIRE_FALSE(read);
        CHECK(read.error().reason == Reason::malformed);
    }
}

TEST_CASE("any bytes come back from base64", "[exchange][digest][property]")
{
    const bool held = rc::check([](const std::vector<std::uint8_t>& any) { RC_ASSERT(exchange::fromBase64(exchange::toBase64(any)).value() == any); });
    CHECK(held);
}
