// A story empties its folder: only one that is a story's own, or empty.

#include "app/story/story_folder.h"

#include <catch2/catch_test_macros.hpp>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

using namespace ebbline;
using namespace ebbline::story;

namespace {

void put(const QString& name, const QByteArray& bytes = "kept")
{
    QFile file(name);
    REQUIRE(file.open(QIODevice::WriteOnly));
    REQUIRE(file.write(bytes) == bytes.size());
}

bool refused(const QString& folder)
{
    const Done may = mayEmpty(folder);
    const Done emptied = emptyForStory(folder);
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
    REQUIRE(emptyForStory(folder));
    CHECK(QDir(folder).entryList(QDir::Files) == QStringList{"summary.json"});

    REQUIRE(QDir(folder).mkpath("work/desk"));
    put(folder + "/work/desk/vault");
    put(folder + "/desk-queue.png");
    CHECK(mayEmpty(folder));
    REQUIRE(emptyForStory(folder));
    CHECK(QDir(folder).entryList(QDir::AllEntries | QDir::NoDotAndDotDot) == QStringList{"summary.json"});
}

TEST_CASE("a link in a story's folder goes, and what it leads to stays", "[story][files]")
{
    const QTemporaryDir place;
    const QString folder = place.path() + "/story";
    REQUIRE(emptyForStory(folder));
    REQUIRE(QDir(place.path()).mkpath("elsewhere"));
    put(place.path() + "/elsewhere/letter.txt");
    REQUIRE(QFile::link(place.path() + "/elsewhere", folder + "/link"));
    REQUIRE(emptyForStory(folder));
    CHECK_FALSE(QFile::exists(folder + "/link"));
    CHECK(QFile::exists(place.path() + "/elsewhere/letter.txt"));
}
