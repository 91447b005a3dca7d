// What is written never replaces what is read.

#include "app/tool/file_guard.h"

#include <catch2/catch_test_macros.hpp>

#include <filesystem>
#include <fstream>

#include <unistd.h>

using namespace ebbline;
using namespace ebbline::tool;

namespace fs = std::filesystem;

namespace {

/// A folder of its own, with a table in it; gone at the end.
struct Folder {
    fs::path path = fs::temp_directory_path() / ("ebbline-file-guard-" + std::to_string(::getpid()));
    std::string table = (path / "scores.csv").string();

    Folder()
    {
        fs::remove_all(path);
        fs::create_directories(path / "deeper");
        std::ofstream(table) << "course\n";
    }
    ~Folder() { fs::remove_all(path); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    std::string operator/(const char* name) const { return (path / name).string(); }
};

bool refused(const std::string& input, const std::string& output)
{
    const Done kept = keepsInputs({{"--scores", input}}, {{"--out", output}});
    return !kept && kept.error().reason == Reason::refused;
}

}  // namespace

TEST_CASE("an output that is an input by any of its names is refused, and both options are named", "[tool][files]")
{
    const Folder folder;
    fs::create_symlink(folder.table, folder / "link.csv");
    fs::create_hard_link(folder.table, folder / "second.csv");
    fs::create_directory_symlink(folder.path, folder / "deeper/up");

    CHECK(refused(folder.table, folder.table));
    CHECK(refused(folder.table, folder / "deeper/../scores.csv"));
    CHECK(refused(folder.table, fs::relative(folder.table).string()));
    CHECK(refused(folder.table, folder / "link.csv"));
    CHECK(refused(folder / "link.csv", folder.table));
    CHECK(refused(folder.table, folder / "second.csv"));
    CHECK(refused(folder.table, folder / "deeper/up/scores.csv"));
    const Done kept = keepsInputs({{"--signs", ""}, {"--scores", folder.table}}, {{"--out", folder.table}});
    REQUIRE_FALSE(kept);
    CHECK(kept.error().detail.starts_with("--out would replace what --scores names: "));
}

TEST_CASE("the file that is written beside an output is no input either", "[tool][files]")
{
    const Folder folder;
    std::ofstream(folder / "new.csv.part") << "course\n";
    CHECK(refused(folder / "new.csv.part", folder / "new.csv"));
}

TEST_CASE("nothing is written into a folder that is read", "[tool][files]")
{
    const Folder folder;
    for (const std::string& output : {folder.table, folder / "deeper/new.json"}) {
        const Done kept = keepsInputs({{"folder", folder.path.string(), true}}, {{"--out", output}});
        REQUIRE_FALSE(kept);
        CHECK(kept.error().reason == Reason::refused);
    }
    CHECK(keepsInputs({{"folder", folder / "deeper", true}}, {{"--out", folder / "deeper.json"}}));
}

TEST_CASE("a folder in place of a table is said to be one, wherever the output goes", "[tool][files]")
{
    const Folder folder;
    for (const std::string& output : {folder / "new.csv", folder / "deeper/new.csv", folder.table}) {
        const Done kept = keepsInputs({{"--signs", ""}, {"--scores", folder / "deeper"}}, {{"--out", output}});
        REQUIRE_FALSE(kept);
        CHECK(kept.error().reason == Reason::malformed);
        CHECK(kept.error().detail == "--scores: want a file, and this is a folder: " + folder / "deeper");
    }
}

TEST_CASE("two outputs are two files, new or old", "[tool][files]")
{
    const Folder folder;
    const auto both = [](const std::string& first, const std::string& second) {
        return keepsInputs({}, {{"--out-scores", first}, {"--out-truth", second}});
    };
    CHECK_FALSE(both(folder / "new.csv", folder / "new.csv"));
    CHECK_FALSE(both(folder / "new.csv", folder / "deeper/../new.csv"));
    CHECK_FALSE(both(folder / "new.csv", folder / "new.csv.part"));
    CHECK_FALSE(both(folder.table, folder.table));
    CHECK(both(folder / "new.csv", folder / "other.csv"));
    // Where bytes go to nothing, two may.
    CHECK(both("/dev/null", "/dev/null"));
}

TEST_CASE("an output needs a name", "[tool][files]")
{
    const Done kept = keepsInputs({}, {{"--out", ""}});
    REQUIRE_FALSE(kept);
    CHECK(kept.error().reason == Reason::malformed);
}

TEST_CASE("a file beside the input is taken, there or not", "[tool][files]")
{
    const Folder folder;
    std::ofstream(folder / "old.csv") << "findings\n";
    CHECK(keepsInputs({{"--scores", folder.table}, {"--signs", ""}}, {{"--out", folder / "old.csv"}}));
    CHECK(keepsInputs({{"--scores", folder.table}}, {{"--out", folder / "new.csv"}}));
    CHECK(keepsInputs({{"--scores", folder / "missing.csv"}}, {{"--out", folder / "new.csv"}}));
}
