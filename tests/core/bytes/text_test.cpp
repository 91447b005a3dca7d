// Bytes as text, against the published examples.

#include "core/bytes/text.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <rapidcheck.h>

using namespace ebbline;
using namespace ebbline::bytes;

TEST_CASE("base32 follows the test vectors of RFC 4648", "[bytes][published]")
{
    // S. Josefsson, "The Base16, Base32, and Base64 Data Encodings", RFC 4648, 2006, section 10.
    // We write no padding; with padding it is read as well.
    struct Row { const char* plain; const char* encoded; const char* padded; };
    const auto row = GENERATE(Row{"", "", ""}, Row{"f", "MY", "MY======"}, Row{"fo", "MZXQ", "MZXQ===="},
                              Row{"foo", "MZXW6", "MZXW6==="}, Row{"foob", "MZXW6YQ", "MZXW6YQ="},
                              Row{"fooba", "MZXW6YTB", "MZXW6YTB"},
                              Row{"foobar", "MZXW6YTBOI", "MZXW6YTBOI======"});

    CHECK(toBase32(viewOf(row.plain)) == row.encoded);
    for (const char* text : {row.encoded, row.padded}) {
        const auto decoded = fromBase32(text);
        REQUIRE(decoded);
        CHECK(std::string(decoded->begin(), decoded->end()) == row.plain);
    }
}

TEST_CASE("text that no base32 encoder writes is refused", "[bytes][errors]")
{
    const auto* text = GENERATE("M", "MZX", "MZXW6Y", "MZ1Q", "M Y", "MZ", "MY=A");

    const auto decoded = fromBase32(text);

    CAPTURE(text);
    REQUIRE_FALSE(decoded);
    CHECK(decoded.error().reason == Reason::malformed);
}

TEST_CASE("the checksum is CRC-16/CCITT-FALSE", "[bytes][published]")
{
    // Check value of the parameter set in the catalogue of parametrised CRC algorithms
    // (G. Cook), under its other name CRC-16/IBM-3740.
    CHECK(crc16(viewOf("123456789")) == 0x29b1);
}

TEST_CASE("hex refuses odd lengths and other characters", "[bytes][errors]")
{
    CHECK(toHex(Bytes{0x00, 0xff, 0x10}) == "00ff10");
    CHECK(fromHex("00FF10").value() == Bytes{0x00, 0xff, 0x10});
    CHECK_FALSE(fromHex("0"));
    CHECK_FALSE(fromHex("0g"));
}

TEST_CASE("hex and base32 read back what they wrote", "[bytes][property]")
{
    CHECK(rc::check("hex", [](const Bytes& input) { RC_ASSERT(fromHex(toHex(input)).value() == input); }));
    CHECK(rc::check("base32", [](const Bytes& input) { RC_ASSERT(fromBase32(toBase32(input)).value() == input); }));
}

TEST_CASE("a typed code loses what people add and gains what they confuse", "[bytes]")
{
    CHECK(inGroups("ABCDEFGHIJ") == "ABCD-EFGH-IJ");
    CHECK(inGroups("ABCD") == "ABCD");
    CHECK(inGroups("").empty());
    CHECK(fromTyped(" ab-c0\t1\r\n8 ", 20) == "abcOIB");
    CHECK(fromTyped("ABCDEFGH", 4) == "ABCDE");
}
