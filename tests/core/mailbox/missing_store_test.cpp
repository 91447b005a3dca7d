// A folder that was mistyped is no new hub: a store is made only for who wants one.

#include "core/mailbox/embedded_store.h"
#include "tests/core/vault/folder.h"

#include <catch2/catch_test_macros.hpp>

#include <fstream>

using namespace ebbline;
using namespace ebbline::mailbox;

TEST_CASE("where no store is and none shall be made, nothing is made, and that is said", "[mailbox]")
{
    const test::Folder folder;
    const auto mistyped = folder.path() / "mistyped";
    const auto refused = openEmbeddedStore(mistyped, {}, IfMissing::refuse);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().reason == Reason::notFound);
    CHECK(refused.error().detail.contains("no store is in this folder"));
    CHECK_FALSE(std::filesystem::exists(mistyped));
    CHECK(holdsEmbeddedStore(mistyped) == Result<bool>(false));

    // Another folder of somebody's stays as it is.
    std::ofstream(folder.path() / "letter.txt") << "kept";
    CHECK_FALSE(openEmbeddedStore(folder.path(), {}, IfMissing::refuse));
    CHECK(std::distance(std::filesystem::directory_iterator(folder.path()), {}) == 1);
}

TEST_CASE("a store that is there is opened by everyone", "[mailbox]")
{
    const test::Folder folder;
    REQUIRE(openEmbeddedStore(folder.path(), {}, IfMissing::make));
    CHECK(holdsEmbeddedStore(folder.path()) == Result<bool>(true));
    CHECK(openEmbeddedStore(folder.path(), {}, IfMissing::refuse));
}
