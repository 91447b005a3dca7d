// Whoever has one IPv6 address has 2^64 of them: limits count them as one.

#include "platform/server/counted_address.h"

#include <catch2/catch_test_macros.hpp>

using ebbline::server::countedAs;

TEST_CASE("addresses of one IPv6 network count as one, others apart", "[server]")
{
    CHECK(countedAs("2001:db8:1:2::1") == countedAs("2001:db8:1:2:ffff:ffff:ffff:ffff"));
    CHECK(countedAs("2001:db8:1:2::1") != countedAs("2001:db8:1:3::1"));
    CHECK(countedAs("fe80::1%lo") == countedAs("fe80::2"));
    CHECK(countedAs("192.0.2.1") == "192.0.2.1");
    CHECK(countedAs("192.0.2.1") != countedAs("192.0.2.2"));
    CHECK(countedAs("::ffff:192.0.2.1") == "192.0.2.1");
    CHECK(countedAs("nonsense") == "nonsense");
}
