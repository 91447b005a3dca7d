// What stands packed within bytes is found by whoever searches them for words.

#include "core/bytes/text.h"
#include "core/crypto/crypto.h"
#include "core/sync/messages.h"
#include "core/sync/packed.h"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace ebbline;

namespace {

constexpr std::string_view note = "a note that the patient wrote";

bool holds(bytes::View where, std::string_view what)
{
    const bytes::View wanted = bytes::viewOf(what);
    return std::search(where.begin(), where.end(), wanted.begin(), wanted.end()) != where.end();
}

/// Many notes, so that packing leaves none of them as it was; `note` is among the first.
bytes::Bytes packed()
{
    std::vector<journal::Operation> operations(200);
    for (std::size_t i = 0; i < operations.size(); ++i) {
        const std::string text = std::to_string(i * 7919) + " " + (i == 3 ? std::string(note) : std::string("swelling and bruising, less than yesterday"));
        operations[i].body.assign(text.begin(), text.end());
    }
    return sync::packOperations(operations);
}

}  // namespace

TEST_CASE("words that stand packed anywhere within bytes are found", "[sync][packed]")
{
    const bytes::Bytes message = packed();
    REQUIRE_FALSE(holds(message, note));  // a search for the words alone passes over them

    bytes::Bytes around(1000);
    crypto::randomFill(around);
    around.insert(around.begin() + 333, message.begin(), message.end());
    around.insert(around.begin() + 100, message.begin(), message.end());
    const auto unpacked = sync::unpackedWithin(around);
    REQUIRE(unpacked.size() == 2);
    for (const bytes::Bytes& plain : unpacked) {
        CHECK(holds(plain, note));
        CHECK(plain.size() > message.size());
    }
}

TEST_CASE("what is cut short is unpacked as far as it goes, and bytes that are no frame give nothing", "[sync][packed]")
{
    const bytes::Bytes message = packed();
    for (std::size_t length = 0; length <= message.size(); ++length)
        for (const bytes::Bytes& plain : sync::unpackedWithin(bytes::View(message).first(length)))
            REQUIRE(plain.size() <= sync::maximumUnpacked);
    CHECK(sync::unpackedWithin(message).size() == 1);
    CHECK(sync::unpackedWithin({}).empty());
    const bytes::Bytes begun{0x28, 0xb5, 0x2f, 0xfd, 0xff, 0xff, 0xff, 0xff, 0xff};
    CHECK(sync::unpackedWithin(begun).empty());
}
