// The encrypted file: what it promises about keys, plaintext, transactions, versions and damage.

#include "core/store/database.h"

#include <catch2/catch_test_macros.hpp>

#include <fstream>
#include <random>

using namespace ebbline;
using namespace ebbline::store;

namespace {

constexpr std::array<Migration, 1> first{"CREATE TABLE note (id INTEGER PRIMARY KEY, text TEXT NOT NULL)"};
constexpr std::array<Migration, 2> second{first[0], "ALTER TABLE note ADD COLUMN day INTEGER NOT NULL DEFAULT 7"};

/// A folder of its own, gone afterwards.
class Folder {
public:
    Folder()
        : m_path(std::filesystem::temp_directory_path()
                 / ("ebbline-store-" + std::to_string(std::random_device{}())))
    {
        std::filesystem::create_directories(m_path);
        REQUIRE(crypto::initialise());
    }
    ~Folder() { std::filesystem::remove_all(m_path); }
    std::filesystem::path file(const char* name = "a.db") const { return m_path / name; }

private:
    std::filesystem::path m_path;
};

Database opened(const std::filesystem::path& file, const crypto::Secret& key,
                std::span<const Migration> migrations = first)
{
    auto database = Database::open(file, key, migrations);
    REQUIRE(database);
    return std::move(*database);
}

Done write(Database& database, std::string_view text)
{
    auto insert = database.prepare("INSERT INTO note (text) VALUES (?1)");
    REQUIRE(insert);
    return insert->bind(text).run();
}

std::int64_t count(Database& database)
{
    auto select = database.prepare("SELECT count(*) FROM note");
    REQUIRE(select);
    REQUIRE(select->step().value());
    return select->integer(0);
}

std::string contents(const std::filesystem::path& file)
{
    std::ifstream input(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(input), {}};
}

}  // namespace

TEST_CASE("what was written is there after reopening with the same key", "[store]")
{
    const Folder folder;
    const auto key = crypto::Secret::random();
    {
        Database database = opened(folder.file(), key);
        REQUIRE(write(database, "swollen on the left"));
    }

    Database again = opened(folder.file(), key);

    auto select = again.prepare("SELECT id, text FROM note");
    REQUIRE(select);
    REQUIRE(select->step().value());
    CHECK(select->text(1) == "swollen on the left");
    CHECK_FALSE(select->step().value());
}

TEST_CASE("another key is refused and the file is left as it was", "[store]")
{
    const Folder folder;
    const auto key = crypto::Secret::random();
    {
        Database database = opened(folder.file(), key);
        REQUIRE(write(database, "x"));
    }

    const auto refused = Database::open(folder.file(), crypto::Secret::random(), first);

    REQUIRE_FALSE(refused);
    CHECK(refused.error().reason == Reason::wrongKey);
    Database again = opened(folder.file(), key);
    CHECK(count(again) == 1);
}

TEST_CASE("nothing that was written can be read from the files", "[store]")
{
    const Folder folder;
    const std::string canary = "the-canary-sings-at-noon";
    Database database = opened(folder.file(), crypto::Secret::random());
    for (int i = 0; i < 50; ++i)
        REQUIRE(write(database, canary));

    std::size_t read = 0;
    for (const auto& entry : std::filesystem::directory_iterator(folder.file().parent_path())) {
        const std::string bytes = contents(entry.path());
        read += bytes.size();
        CAPTURE(entry.path().filename());
        CHECK(bytes.find(canary) == std::string::npos);
        CHECK_FALSE(bytes.starts_with("SQLite format 3"));
    }
    CHECK(read > 50 * canary.size());
}

TEST_CASE("a file in plain text is refused, not used", "[store]")
{
    const Folder folder;
    std::ofstream(folder.file(), std::ios::binary) << "SQLite format 3" << '\0' << std::string(4080, 'x');

    const auto refused = Database::open(folder.file(), crypto::Secret::random(), first);

    REQUIRE_FALSE(refused);
    CHECK(refused.error().reason == Reason::damaged);
}

TEST_CASE("a transaction that fails leaves nothing behind", "[store]")
{
    const Folder folder;
    Database database = opened(folder.file(), crypto::Secret::random());

    const Done failed = database.transaction([&]() -> Done {
        REQUIRE(write(database, "half"));
        return fail(Reason::refused, "no");
    });

    REQUIRE_FALSE(failed);
    CHECK(failed.error().reason == Reason::refused);
    CHECK(count(database) == 0);
    CHECK(database.transaction([&] { return write(database, "whole"); }));
    CHECK(count(database) == 1);
}

TEST_CASE("a transaction that is left by an exception leaves nothing behind, and the next one is durable", "[store]")
{
    const Folder folder;
    const crypto::Secret key = crypto::Secret::random();
    {
        Database database = opened(folder.file(), key);
        const auto broken = [&] {
            return database.transaction([&]() -> Done {
                REQUIRE(write(database, "half"));
                throw std::bad_alloc();
            });
        };
        CHECK_THROWS_AS(broken(), std::bad_alloc);
        CHECK(count(database) == 0);
        REQUIRE(database.transaction([&] { return write(database, "whole"); }));
    }
    Database again = opened(folder.file(), key);
    CHECK(count(again) == 1);
}

TEST_CASE("a full file is reported as full and keeps what it had", "[store]")
{
    const Folder folder;
    Database database = opened(folder.file(), crypto::Secret::random());
    REQUIRE(write(database, "kept"));
    REQUIRE(database.run("PRAGMA max_page_count = 4"));

    const Done full = database.transaction([&]() -> Done {
        for (int i = 0; i < 100; ++i)
            if (const Done written = write(database, std::string(1000, 'x')); !written)
                return written;
        return {};
    });

    REQUIRE_FALSE(full);
    CHECK(full.error().reason == Reason::storageFull);
    CHECK(count(database) == 1);
}

TEST_CASE("missing migrations run once, in order", "[store]")
{
    const Folder folder;
    const auto key = crypto::Secret::random();
    {
        Database old = opened(folder.file(), key, first);
        CHECK(old.version() == 1);
        REQUIRE(write(old, "before"));
    }

    Database now = opened(folder.file(), key, second);

    CHECK(now.version() == 2);
    auto select = now.prepare("SELECT day FROM note");
    REQUIRE(select);
    REQUIRE(select->step().value());
    CHECK(select->integer(0) == 7);
}

TEST_CASE("a file of a newer program is refused and left alone", "[store]")
{
    const Folder folder;
    const auto key = crypto::Secret::random();
    { const Database newer = opened(folder.file(), key, second); }

    const auto refused = Database::open(folder.file(), key, first);

    REQUIRE_FALSE(refused);
    CHECK(refused.error().reason == Reason::unsupported);
    CHECK(opened(folder.file(), key, second).version() == 2);
}

TEST_CASE("one changed byte in a page is found", "[store]")
{
    const Folder folder;
    const auto key = crypto::Secret::random();
    {
        Database database = opened(folder.file(), key);
        for (int i = 0; i < 200; ++i)
            REQUIRE(write(database, std::string(500, 'y')));
        REQUIRE(database.verify());
        REQUIRE(database.run("PRAGMA wal_checkpoint(TRUNCATE)"));
    }
    const auto size = std::filesystem::file_size(folder.file());
    REQUIRE(size > 5 * 4096);
    {
        std::fstream file(folder.file(), std::ios::binary | std::ios::in | std::ios::out);
        file.seekg(static_cast<std::streamoff>(size - 5000));
        const auto byte = static_cast<char>(file.get() ^ 1);
        file.seekp(static_cast<std::streamoff>(size - 5000));
        file.put(byte);
    }

    Database damaged = opened(folder.file(), key);
    const Done verdict = damaged.verify();

    REQUIRE_FALSE(verdict);
    CHECK(verdict.error().reason == Reason::damaged);
}

TEST_CASE("a copy under another key holds the same and is never put over a file", "[store]")
{
    const Folder folder;
    const auto key = crypto::Secret::random();
    const auto copyKey = crypto::Secret::random();
    Database database = opened(folder.file(), key);
    REQUIRE(write(database, "once"));

    REQUIRE(database.copyTo(folder.file("copy.db"), copyKey));

    Database copy = opened(folder.file("copy.db"), copyKey);
    CHECK(count(copy) == 1);
    CHECK(copy.version() == 1);
    const auto again = database.copyTo(folder.file("copy.db"), copyKey);
    REQUIRE_FALSE(again);
    CHECK(again.error().reason == Reason::alreadyExists);
}

TEST_CASE("bad statements and surplus values are errors, not crashes", "[store][errors]")
{
    const Folder folder;
    Database database = opened(folder.file(), crypto::Secret::random());

    CHECK_FALSE(database.prepare("SELEKT 1"));
    CHECK_FALSE(database.prepare(""));
    auto select = database.prepare("SELECT 1");
    REQUIRE(select);
    const auto stepped = select->bind(std::int64_t{1}).step();
    REQUIRE_FALSE(stepped);
    CHECK(stepped.error().reason == Reason::invalidState);
}

TEST_CASE("a newer file is refused before anything is written to it", "[store][errors]")
{
    const Folder folder;
    const auto key = crypto::Secret::random();
    { Database database = opened(folder.file(), key, second); }
    const std::string before = contents(folder.file());

    const auto refused = Database::open(folder.file(), key, first);

    REQUIRE_FALSE(refused);
    CHECK(refused.error().reason == Reason::unsupported);
    CHECK(contents(folder.file()) == before);
}

TEST_CASE("looking makes, migrates and changes nothing", "[store]")
{
    const Folder folder;
    const auto key = crypto::Secret::random();
    CHECK(Database::inspect(folder.file(), key).error().reason == Reason::notFound);
    CHECK_FALSE(std::filesystem::exists(folder.file()));
    { Database database = opened(folder.file(), key); }
    const std::string before = contents(folder.file());
    {
        auto looking = Database::inspect(folder.file(), key);
        REQUIRE(looking);
        CHECK(looking->version() == 1);
        CHECK(count(*looking) == 0);
        CHECK_FALSE(looking->run("INSERT INTO note (text) VALUES ('x')"));
    }
    CHECK(contents(folder.file()) == before);
}

TEST_CASE("the digest follows the rows, not the layout of the file", "[store]")
{
    const Folder folder;
    Database one = opened(folder.file("one.db"), crypto::Secret::random());
    Database two = opened(folder.file("two.db"), crypto::Secret::random());
    REQUIRE(write(one, "a"));
    REQUIRE(write(two, std::string(9000, 'b')));
    CHECK(one.digest().value() != two.digest().value());
    REQUIRE(two.run("UPDATE note SET text = 'a'; VACUUM"));

    CHECK(one.digest().value() == two.digest().value());
    REQUIRE(two.run("UPDATE note SET text = 'A'"));
    CHECK(one.digest().value() != two.digest().value());
    REQUIRE(two.run("UPDATE note SET text = 'a'; CREATE TABLE another (x INTEGER)"));
    CHECK(one.digest().value() != two.digest().value());
}

TEST_CASE("a copy is of one moment although another program writes", "[store]")
{
    const Folder folder;
    const auto key = crypto::Secret::random();
    Database writer = opened(folder.file(), key);
    for (int i = 0; i < 50; ++i)
        REQUIRE(write(writer, std::string(500, 'y')));
    auto reader = Database::inspect(folder.file(), key);
    REQUIRE(reader);
    REQUIRE(write(writer, "in the log, not in the file yet"));

    const auto digest = reader->copyTo(folder.file("copy.db"), key);

    REQUIRE(digest);
    CHECK(*digest == writer.digest().value());
    CHECK(write(writer, "later"));
    CHECK(*digest != writer.digest().value());
}
