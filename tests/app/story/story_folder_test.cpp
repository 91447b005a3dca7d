// A story empties its folder: only one that is a story's own, or empty, and that nobody holds.

#include "app/story/story_folder.h"
#include "tests/app/full_disk.h"

#include <catch2/catch_test_macros.hpp>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <optional>

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

using namespace ebbline;
using namespace ebbline::story;

namespace {

void put(const QString& name, const QByteArray& bytes = "kept")
{
    QFile file(name);
    REQUIRE(file.open(QIODevice::WriteOnly));
    REQUIRE(file.write(bytes) == bytes.size());
}

/// Of what stood in an emptied folder.
const QStringList left{"open.lock", "summary.json"};

QByteArray contentsOf(const QString& name)
{
    QFile file(name);
    REQUIRE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

bool isInUse(const QString& folder)
{
    const auto emptied = emptyForStory(folder);
    return !emptied && emptied.error().reason == Reason::refused && emptied.error().detail.contains("is in use");
}

bool refused(const QString& folder)
{
    const Done may = mayEmpty(folder);
    const auto emptied = emptyForStory(folder);
    return !may && !emptied && may.error().reason == Reason::refused && emptied.error() == may.error();
}

}  // namespace

TEST_CASE("a folder with anything else in it is left as it is", "[story][files]")
{
    const QTemporaryDir place;
    const QString folder = place.path();
    put(folder + "/letter.txt");
    CHECK(refused(folder));
    CHECK(QFile::exists(folder + "/letter.txt"));

    // A summary of somebody else's makes it no story.
    put(folder + "/summary.json", R"({"result": "fine", "total": 3})");
    CHECK(refused(folder));
    put(folder + "/summary.json", "no JSON");
    CHECK(refused(folder));
    CHECK(QFile::exists(folder + "/letter.txt"));
}

TEST_CASE("a folder of hidden files alone is not empty", "[story][files]")
{
    const QTemporaryDir place;
    put(place.path() + "/.profile");
    CHECK(refused(place.path()));
    CHECK(QFile::exists(place.path() + "/.profile"));
}

TEST_CASE("no name, and the name of a file, are refused", "[story][files]")
{
    const QTemporaryDir place;
    put(place.path() + "/file");
    CHECK(refused(QString()));
    CHECK(refused(QStringLiteral(" ")));
    CHECK(refused(place.path() + "/file"));
    CHECK(QFile::exists(place.path() + "/file"));
}

TEST_CASE("a new folder is made, and the story's own is emptied again, even after a story that stopped", "[story][files]")
{
    const QTemporaryDir place;
    const QString folder = place.path() + "/deeper/story";
    REQUIRE(emptyForStory(folder).has_value());
    CHECK(QDir(folder).entryList(QDir::Files) == left);

    REQUIRE(QDir(folder).mkpath("work/desk"));
    put(folder + "/work/desk/vault");
    put(folder + "/desk-queue.png");
    CHECK(mayEmpty(folder));
    REQUIRE(emptyForStory(folder).has_value());
    CHECK(QDir(folder).entryList(QDir::AllEntries | QDir::NoDotAndDotDot) == left);
}

TEST_CASE("a link in a story's folder goes, and what it leads to stays", "[story][files]")
{
    const QTemporaryDir place;
    const QString folder = place.path() + "/story";
    REQUIRE(emptyForStory(folder).has_value());
    REQUIRE(QDir(place.path()).mkpath("elsewhere"));
    put(place.path() + "/elsewhere/letter.txt");
    REQUIRE(QFile::link(place.path() + "/elsewhere", folder + "/link"));
    REQUIRE(emptyForStory(folder).has_value());
    CHECK_FALSE(QFile::exists(folder + "/link"));
    CHECK(QFile::exists(place.path() + "/elsewhere/letter.txt"));
}

TEST_CASE("two stories at once do not empty each other's folder, nor a demo that is open", "[story][files]")
{
    const QTemporaryDir place;
    const QString folder = place.path() + "/story";
    {
        const auto held = emptyForStory(folder);
        REQUIRE(held.has_value());
        put(folder + "/desk-queue.png");
        CHECK(isInUse(folder));
        CHECK(QFile::exists(folder + "/desk-queue.png"));
    }
    CHECK(emptyForStory(folder).has_value());

    // As platform/open_demo.sh holds it.
    put(folder + "/passphrase.txt");
    const int opened = ::open((folder + "/open.lock").toUtf8().constData(), O_WRONLY);
    REQUIRE(opened >= 0);
    REQUIRE(::flock(opened, LOCK_EX | LOCK_NB) == 0);
    CHECK(isInUse(folder));
    CHECK(QFile::exists(folder + "/passphrase.txt"));
    ::close(opened);
    CHECK(emptyForStory(folder).has_value());
}

TEST_CASE("on a full disk no story begins, and its folder can be taken once there is room again", "[story][files]")
{
    const QTemporaryDir place;
    const QString played = place.path() + "/played", fresh = place.path() + "/fresh";
    REQUIRE(emptyForStory(played).has_value());
    for (const QString& folder : {played, fresh}) {
        CAPTURE(folder.toStdString());
        std::optional<Error> said;
        {
            const tests::FullDisk full;
            if (const auto emptied = emptyForStory(folder); !emptied)
                said = emptied.error();
        }
        REQUIRE(said.has_value());
        CHECK(said->reason == Reason::storageFailed);
        CHECK(said->detail.contains("is the disk full?"));
        CHECK(mayEmpty(folder));
        CHECK(emptyForStory(folder).has_value());
    }
}

TEST_CASE("a file that cannot be written to its end stays as it was", "[story][files]")
{
    const QTemporaryDir place;
    const QString file = place.path() + "/summary.json";
    REQUIRE(writeWhole(file, "before"));
    bool written = true;
    {
        const tests::FullDisk full;
        written = writeWhole(file, "after").has_value();
    }
    CHECK_FALSE(written);
    CHECK(contentsOf(file) == "before");
    CHECK(writeWhole(file, "after"));
    CHECK(contentsOf(file) == "after");
}
