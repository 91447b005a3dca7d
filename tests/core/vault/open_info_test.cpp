// What can be read while the vault is locked or damaged: whom to call.

#include "core/vault/vault.h"

#include "tests/core/records/sample_bodies.h"
#include "tests/core/vault/folder.h"

#include <fstream>

using namespace ebbline;
using namespace ebbline::vault;

TEST_CASE("whom to call is readable without any key", "[vault]")
{
    const test::Folder folder;
    const OpenInfo info{{"Practice on the Mole", "+00 555 0110", "+00 555 0119", "112"},
                        test::momentAt("2027-03-01T10:00:00+01:00")};

    REQUIRE(writeOpenInfo(folder.path(), info));

    CHECK(readOpenInfo(folder.path()).value() == info);
}

TEST_CASE("damaged contacts are called damaged, missing ones missing", "[vault][errors]")
{
    const test::Folder folder;
    CHECK(readOpenInfo(folder.path()).error().reason == Reason::notFound);
    REQUIRE(writeOpenInfo(folder.path(), {{"A", "1", "2", "112"}, test::momentAt("2027-03-01T10:00:00+01:00")}));
    {
        std::fstream file(folder.path() / "open.info", std::ios::in | std::ios::out | std::ios::binary);
        file.seekp(9);
        file.put('x');
    }

    CHECK(readOpenInfo(folder.path()).error().reason == Reason::damaged);
}
