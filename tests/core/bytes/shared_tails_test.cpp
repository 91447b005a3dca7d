// Long strings that end alike share their end; nothing of any string is lost.

#include "core/bytes/shared_tails.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

using namespace ebbline::bytes;

namespace {

Bytes run(std::size_t length, std::uint8_t seed)
{
    Bytes bytes(length);
    for (std::size_t i = 0; i < length; ++i)
        bytes[i] = static_cast<std::uint8_t>(seed + 31 * i + i / 7);
    return bytes;
}

Bytes operator+(Bytes a, const Bytes& b)
{
    a.insert(a.end(), b.begin(), b.end());
    return a;
}

}  // namespace

TEST_CASE("the second string that ends as the first did shares its end, and so does every later one", "[bytes][tails]")
{
    const Bytes protocol = run(4000, 1);
    SharedTails tails;

    CHECK(tails.tailOf(Bytes{1, 2, 3} + protocol) == nullptr);
    const auto second = tails.tailOf(Bytes{4, 5, 6, 7} + protocol);
    REQUIRE(second);
    CHECK(*second == protocol);
    CHECK(tails.tailOf(Bytes{8} + protocol) == second);  // the same place in memory
}

TEST_CASE("what is common by chance in front of the end does not keep others from sharing it", "[bytes][tails]")
{
    const Bytes protocol = run(4000, 1);
    SharedTails tails;
    tails.tailOf(Bytes{1, 9} + protocol);

    CHECK(*tails.tailOf(Bytes{2, 9} + protocol) == Bytes{9} + protocol);
    CHECK(*tails.tailOf(Bytes{2, 8} + protocol) == protocol);
}

TEST_CASE("short strings and short ends stay whole", "[bytes][tails]")
{
    SharedTails tails;
    const Bytes shortOne = run(SharedTails::shortest - 1, 1);
    CHECK(tails.tailOf(shortOne) == nullptr);
    CHECK(tails.tailOf(shortOne) == nullptr);

    const Bytes end = run(SharedTails::shortest - 1, 1);
    CHECK(tails.tailOf(run(600, 2) + Bytes{0} + end) == nullptr);
    CHECK(tails.tailOf(run(600, 3) + Bytes{1} + end) == nullptr);
    CHECK(tails.tailOf({}) == nullptr);
}

TEST_CASE("a tail that is kept elsewhere serves from the first string on", "[bytes][tails]")
{
    const Bytes protocol = run(2000, 5);
    SharedTails tails;
    tails.add(std::make_shared<const Bytes>(protocol));

    REQUIRE(tails.tailOf(Bytes{1} + protocol));
    CHECK(*tails.tailOf(protocol) == protocol);
}

TEST_CASE("whatever is shared, own part and tail make the string again", "[bytes][tails][property]")
{
    CHECK(rc::check("joined again", [] {
        SharedTails tails;
        const auto protocols = std::vector{run(1500, 1), run(3000, 2), run(1024, 3)};
        for (int i = *rc::gen::inRange(1, 40); i > 0; --i) {
            const auto own = *rc::gen::container<Bytes>(rc::gen::arbitrary<std::uint8_t>());
            const Bytes whole = own + *rc::gen::elementOf(protocols);
            const auto tail = tails.tailOf(whole);
            RC_ASSERT((!tail || tail->size() >= SharedTails::shortest));
            const View kept = View(whole).first(whole.size() - (tail ? tail->size() : 0));
            RC_ASSERT(joined(kept, tail) == whole);
        }
    }));
}
