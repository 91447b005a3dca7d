// What can be read while the vault is locked or damaged: whom to call.

#include "core/vault/vault.h"
#include "core/warnings/warnings.h"

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

TEST_CASE("no changed byte of the contacts passes for a telephone number", "[vault][errors]")
{
    const test::Folder folder;
    const auto file = folder.path() / "open.info";
    REQUIRE(writeOpenInfo(folder.path(), {{"Practice on the Mole", "+00 555 0110", "+00 555 0119", "112"},
                                          test::momentAt("2027-03-01T10:00:00+01:00")}));
    std::ifstream input(file, std::ios::binary);
    const std::string whole(std::istreambuf_iterator<char>(input), {});

    for (std::size_t i = 0; i < whole.size(); ++i) {
        std::string damaged = whole;
        damaged[i] = static_cast<char>(damaged[i] ^ 1);
        std::ofstream(file, std::ios::binary | std::ios::trunc) << damaged;
        CAPTURE(i);
        CHECK(readOpenInfo(folder.path()).error().reason == Reason::damaged);
    }
    for (std::size_t length = 0; length < whole.size(); ++length) {
        std::ofstream(file, std::ios::binary | std::ios::trunc) << whole.substr(0, length);
        CHECK(readOpenInfo(folder.path()).error().reason == Reason::damaged);
    }
}

TEST_CASE("whom to call stays readable while the vault is locked, waiting, scratched or gone", "[vault]")
{
    const test::Folder folder;
    const clock::ManualClock clock(test::momentAt("2027-03-02T20:00:00+01:00").at);
    const OpenInfo info{{"Practice on the Mole", "+00 555 0110", "+00 555 0119", "112"},
                        test::momentAt("2027-03-01T10:00:00+01:00")};
    { REQUIRE(Vault::create(folder.path(), Vault::Owner::patient, bytes::viewOf("three calm herons wade"), {1, 8 * 1024}, clock)); }
    REQUIRE(writeOpenInfo(folder.path(), info));
    CHECK(readOpenInfo(folder.path()).value() == info);

    for (int i = 0; i < 6; ++i)
        CHECK_FALSE(Vault::unlock(folder.path(), bytes::viewOf("wrong"), clock));
    CHECK(readOpenInfo(folder.path()).value() == info);

    std::ofstream(folder.path() / "vault.db", std::ios::trunc) << "scratched";
    CHECK(readOpenInfo(folder.path()).value() == info);
    for (const char* name : {"vault.db", "vault.keys", "vault.keys.previous", "vault.attempts"})
        std::filesystem::remove(folder.path() / name);
    CHECK(readOpenInfo(folder.path()).value() == info);

    // With it, and no vault at all, a warning is judged as ever.
    recovery::Entry entry = test::sampleEntry();
    entry.present = {recovery::Sign::breathing};
    const auto findings = warnings::judge(entry, {readOpenInfo(folder.path())->treated});
    CHECK(warnings::mostUrgent(findings) == recovery::Urgency::emergency);
}
