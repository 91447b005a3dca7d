// Vaults of every released format open; a newer one is refused and left as it is. The fixtures are
// vaults as the program of their time wrote them: `vault_test "[.fixture]"` writes one of the present
// format into the folder named by EBBLINE_FIXTURE.

#include "core/photos/sealed_photo.h"
#include "core/vault/inspection.h"
#include "core/vault/vault.h"

#include "core/bytes/text.h"
#include "tests/core/photos/sample_jpeg.h"
#include "tests/core/records/sample_bodies.h"
#include "tests/core/vault/folder.h"

#include <cstdlib>
#include <fstream>

using namespace ebbline;
using namespace ebbline::vault;

namespace {

const bytes::View passphrase = bytes::viewOf("three calm herons wade");
const auto evening = test::momentAt("2027-03-02T20:00:00+01:00");
const auto mailbox = test::idOf<envelope::MailboxTag>(8);

const bytes::Bytes picture = test::sampleJpegOf(70'000);

/// What every fixture holds: one of each kind of body that there was, an outbox, a link, a draft; since version 4 a photograph, since
/// version 5 courses with one protocol.
Done fill(Vault& vault)
{
    for (const records::Body& body : test::sampleBodies())
        if (const auto done = vault.append({body}, evening); !done)
            return fail(done.error());
    for (const auto number : {std::uint8_t{71}, std::uint8_t{72}})
        if (const auto done = vault.append({test::openedCourse(number)}, evening); !done)
            return fail(done.error());
    const auto entered = vault.append({records::EntryRecorded{test::sampleEntry(10)}}, evening, mailbox);
    if (!entered)
        return fail(entered.error());
    if (const Done done = vault.storeSealed(mailbox, 1, bytes::viewOf("sealed"), *entered); !done)
        return done;
    const auto sealed = photos::seal(picture);
    if (!sealed)
        return fail(sealed.error());
    if (const auto photo = vault.appendPhoto({test::sampleCourse, sealed->manifest, photos::Pose::front, {}, evening}, sealed->chunks,
                                             evening, {});
        !photo)
        return fail(photo.error());
    Link link;
    link.mailbox = mailbox;
    link.course = test::sampleCourse;
    link.hub = "https://hub.example:8443";
    if (const Done done = vault.putLink(link); !done)
        return done;
    return vault.keep("draft", bytes::viewOf("half an entry"));
}

}  // namespace

TEST_CASE("a fixture of the present format is written", "[.fixture]")
{
    const char* where = std::getenv("EBBLINE_FIXTURE");
    REQUIRE(where != nullptr);
    REQUIRE(crypto::initialise());
    const clock::ManualClock clock(evening.at);
    auto vault = Vault::create(where, Vault::Owner::patient, passphrase, {1, 8 * 1024}, clock);
    REQUIRE(vault);
    REQUIRE(fill(*vault));
    REQUIRE(writeOpenInfo(where, {{"Practice on the Mole", "+00 555 0110", "+00 555 0119", "112"}, evening}));
    std::ofstream(std::filesystem::path(where) / "digest.txt") << bytes::toHex(journal::digest(vault->state())) << '\n';
}

namespace {

const std::filesystem::path fixtures = EBBLINE_FIXTURES;

/// A copy to open, because opening migrates.
void copyOf(const char* name, const std::filesystem::path& to)
{
    REQUIRE(std::filesystem::exists(fixtures / name / "vault.db"));
    std::filesystem::copy(fixtures / name, to,
                          std::filesystem::copy_options::recursive | std::filesystem::copy_options::overwrite_existing);
}

std::string contents(const std::filesystem::path& file)
{
    std::ifstream input(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(input), {}};
}

}  // namespace

TEST_CASE("a vault of every released format opens with everything in it", "[vault]")
{
    const std::map<std::string_view, std::size_t> held{{"version1", 15}, {"version2", 15}, {"version3", 17}, {"version4", 21}, {"version5", 30}};
    for (const char* name : {"version1", "version2", "version3", "version4", "version5"}) {
        const test::Folder folder;
        copyOf(name, folder.path());
        const clock::ManualClock clock(evening.at);
        CAPTURE(name);
        {
            auto vault = Vault::unlock(folder.path(), passphrase, clock);
            REQUIRE(vault);
            CHECK(bytes::toHex(journal::digest(vault->state())) + "\n" == contents(fixtures / name / "digest.txt"));
            // What the fixtures hold: one of every kind that there was.
            CHECK(vault->operations().size() == held.at(name));
            const auto& course = vault->state().courses.at(test::sampleCourse);
            const auto whole = std::ranges::count_if(course.photos, [&](const auto& photo) {
                return vault->photo(photo.second.value.manifest) == picture;
            });
            CHECK(whole == (std::string_view(name) < "version4" ? 0 : 1));
            CHECK(vault->kept("draft") == bytes::Bytes{'h', 'a', 'l', 'f', ' ', 'a', 'n', ' ', 'e', 'n', 't', 'r', 'y'});
            CHECK(vault->links()->size() == 1);
            CHECK(vault->outgoing(mailbox)->size() == 1);
            CHECK(vault->append({records::EntryRecorded{test::sampleEntry(11)}}, evening, mailbox));
            CHECK(vault->verify());
        }
        const auto found = inspect(folder.path(), Offered::passphrase(passphrase), clock.readings());
        REQUIRE(found);
        CHECK(found->sound());
        CHECK(found->version == 5);
        CHECK(found->waiting == 1);
        CHECK(readOpenInfo(folder.path())->contacts.clinicPhone == "+00 555 0110");
    }
}

TEST_CASE("looking at an old vault does not migrate it", "[vault]")
{
    const test::Folder folder;
    copyOf("version1", folder.path());
    const clock::ManualClock clock(evening.at);

    const auto found = inspect(folder.path(), Offered::passphrase(passphrase), clock.readings());

    REQUIRE(found);
    CHECK(found->sound());
    CHECK(found->version == 1);
    CHECK(contents(folder.path() / "vault.db") == contents(fixtures / "version1" / "vault.db"));
}

TEST_CASE("a vault of a newer program is refused by name and left as it is", "[vault][errors]")
{
    const test::Folder folder;
    copyOf("version5", folder.path());
    const clock::ManualClock clock(evening.at);
    {
        // As the next program would leave it.
        const auto dataKey = openDataKey(folder.path(), Offered::passphrase(passphrase), clock.readings());
        REQUIRE(dataKey);
        const std::array<store::Migration, 6> newer{"", "", "", "", "", "CREATE TABLE later (x INTEGER)"};
        REQUIRE(store::Database::open(folder.path() / "vault.db", crypto::derive(*dataKey, 1, "eb-vault"), newer));
    }
    const std::string before = contents(folder.path() / "vault.db");
    std::size_t files = 0;
    for ([[maybe_unused]] const auto& file : std::filesystem::directory_iterator(folder.path()))
        ++files;

    const auto refused = Vault::unlock(folder.path(), passphrase, clock);

    REQUIRE_FALSE(refused);
    CHECK(refused.error() == Error{Reason::unsupported, "store: the file was written by a newer program"});
    CHECK(contents(folder.path() / "vault.db") == before);
    for ([[maybe_unused]] const auto& file : std::filesystem::directory_iterator(folder.path()))
        --files;
    CHECK(files == 0);
    // Whom to call stays readable.
    CHECK(readOpenInfo(folder.path()));
}
