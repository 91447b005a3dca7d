// The way to a hub: encrypted, or within one machine.

#include "core/pairing/hub_address.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using namespace ebbline::pairing;

TEST_CASE("an address is read with and without what stands in front, and means TLS unless it says otherwise", "[pairing][hub]")
{
    CHECK(hubAddressFromText("hub.example:8443") == HubAddress{"hub.example:8443", true});
    CHECK(hubAddressFromText(" https://hub.example/ ") == HubAddress{"hub.example", true});
    CHECK(hubAddressFromText("HTTP://127.0.0.1:8080") == HubAddress{"127.0.0.1:8080", false});
    CHECK(hubAddressFromText("  ") == HubAddress{"", true});
    CHECK(hubAddressFromText("") == HubAddress{"", true});
}

TEST_CASE("this machine is what cannot be another one", "[pairing][hub]")
{
    for (const char* host : {"localhost", "LOCALHOST:80", "127.0.0.1", "127.255.3.4:8443", "[::1]", "[::1]:9"}) {
        CAPTURE(host);
        CHECK(isThisMachine(host));
    }
    for (const char* host : {"", "hub.example", "localhost.example", "notlocalhost", "127.0.0.1.example", "127.0.0.1:80.example",
                             "127.0.0", "127.0.0.1.5", "127.0.0.256", "127.1", "128.0.0.1", "0.0.0.0", "10.0.2.2", "192.168.1.4:8080",
                             "[::1", "[::1]x", "[::2]", "[fe80::1]", "::1", "localhost:", "localhost:x", "127.0.0.1@hub.example"}) {
        CAPTURE(host);
        CHECK_FALSE(isThisMachine(host));
    }
}

TEST_CASE("plain HTTP to another machine is refused, TLS to any is not", "[pairing][hub]")
{
    CHECK(checkWay({"hub.example", true}));
    CHECK(checkWay({"127.0.0.1:8080", false}));
    CHECK(checkWay({"hub.example", false}).error().reason == Reason::unprotected);
    CHECK(checkWay({"192.168.1.4:8080", false}).error().reason == Reason::unprotected);
}
