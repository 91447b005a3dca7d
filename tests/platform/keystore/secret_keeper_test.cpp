// Key stores: what the interface promises, and a device without one.
#include "tests/platform/keystore/fake_keeper.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;

TEST_CASE("a device without a key store says so and keeps nothing", "[keystore]")
{
    REQUIRE(crypto::initialise());
    keystore::NoKeeper keeper;
    CHECK_FALSE(keeper.isThere());
    CHECK(keeper.fetch().error().reason == Reason::unsupported);
    CHECK(keeper.make().error().reason == Reason::unsupported);
    CHECK(keeper.forget());
}

TEST_CASE("a secret is made once, given out again, and never over one that may be needed", "[keystore]")
{
    REQUIRE(crypto::initialise());
    test::FakeKeeper keeper;
    CHECK(keeper.fetch().error().reason == Reason::notFound);
    const auto made = keeper.make();
    REQUIRE(made);
    CHECK(crypto::equal(keeper.fetch()->view(), made->view()));
    CHECK(keeper.make().error().reason == Reason::alreadyExists);
    keeper.lose();
    CHECK(keeper.fetch().error().reason == Reason::damaged);
    CHECK(keeper.make().error().reason == Reason::alreadyExists);
    REQUIRE(keeper.forget());
    CHECK(keeper.fetch().error().reason == Reason::notFound);
    CHECK_FALSE(crypto::equal(keeper.make()->view(), made->view()));
}
