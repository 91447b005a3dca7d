// The bounded reader: what bytes from outside may and may not do.

#include "core/bytes/reader.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

using namespace ebbline::bytes;

TEST_CASE("numbers are big-endian and read back as written", "[bytes]")
{
    const Bytes written = Writer().u8(1).u16(0x0203).u32(0x04050607).u64(0x08090a0b0c0d0e0f).bytes();
    CHECK(written == Bytes{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15});

    Reader reader(written);
    CHECK(reader.u8() == 1);
    CHECK(reader.u16() == 0x0203);
    CHECK(reader.u32() == 0x04050607);
    CHECK(reader.u64() == 0x08090a0b0c0d0e0f);
    CHECK(reader.atEnd());
}

TEST_CASE("reading past the end fails once and for all", "[bytes]")
{
    const Bytes three{1, 2, 3};
    Reader reader(three);

    CHECK(reader.u32() == 0);
    CHECK_FALSE(reader.ok());
    CHECK(reader.u8() == 0);
    CHECK_FALSE(reader.atEnd());
}

TEST_CASE("a block that claims more than the limit is refused before it is read", "[bytes]")
{
    const Bytes honest = Writer().block(Bytes{7, 7, 7}).bytes();
    Reader within(honest);
    CHECK(within.block(3).size() == 3);
    CHECK(within.atEnd());

    Reader tight(honest);
    CHECK(tight.block(2).empty());
    CHECK_FALSE(tight.ok());

    const Bytes liar = Writer().u32(0xffffffff).u8(1).bytes();
    Reader lied(liar);
    CHECK(lied.block(0xffffffff).empty());
    CHECK_FALSE(lied.ok());
}

TEST_CASE("any input is read within its bounds", "[bytes][property]")
{
    CHECK(rc::check("never past the end", [](const Bytes& input, const std::vector<std::uint16_t>& steps) {
        Reader reader(input);
        std::size_t taken = 0;
        for (const std::uint16_t step : steps) {
            const View view = reader.take(step);
            if (!reader.ok())
                break;
            taken += view.size();
        }
        RC_ASSERT(taken <= input.size());
        RC_ASSERT(!reader.ok() || taken + reader.left() == input.size());
    }));
}
