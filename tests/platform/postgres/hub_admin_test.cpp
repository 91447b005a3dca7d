// The operator's subcommands, over either store, while it is in use.

#include "core/bytes/text.h"
#include "tests/platform/postgres/any_store.h"

#include <cstdio>
#include <filesystem>
#include <sys/wait.h>

using namespace ebbline;
using namespace ebbline::mailbox;
using namespace ebbline::test;

namespace {

struct Outcome {
    int code = -1;
    std::string said;
};

Outcome hub(const std::string& arguments)
{
    Outcome outcome;
    // A hub that serves where it should refuse would not end by itself.
    std::FILE* pipe = ::popen(("timeout 60 " + std::string(EBBLINE_HUB) + " " + arguments + " 2>&1").c_str(), "r");
    REQUIRE(pipe);
    char chunk[512];
    while (std::fgets(chunk, sizeof chunk, pipe))
        outcome.said += chunk;
    const int status = ::pclose(pipe);
    outcome.code = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    return outcome;
}

}  // namespace

TEST_CASE("an operator admits clinics, refuses devices and counts, over either store", "[hub]")
{
    AnyStore store(GENERATE(Kind::embedded, Kind::postgres));
    const std::string at = " --store '" + store.where() + "'";
    const auto root = crypto::randomArray<32>();

    CHECK(hub("add-clinic" + at + " --root " + bytes::toHex(root) + " --hint Mole").code == 0);
    const Outcome again = hub("add-clinic" + at + " --root " + bytes::toHex(root));
    CHECK(again.code == 1);
    CHECK(again.said.find("known") != std::string::npos);
    CHECK(hub("add-clinic" + at + " --root abc").code == 2);
    const auto clinic = store->clinicOf({root});
    REQUIRE(clinic);

    const auto desk = deviceOf(*clinic, Role::desk);
    REQUIRE(store->putDevice(desk));
    CHECK(hub("revoke-device" + at + " --device " + bytes::toHex(desk.id.view())).code == 0);
    CHECK(store->device(desk.id)->revoked);
    CHECK(hub("revoke-device" + at + " --device " + bytes::toHex(crypto::randomArray<16>())).code == 1);
    CHECK(hub("revoke-device" + at + " --device 12").code == 2);

    const ClinicInStore other(*store);
    REQUIRE(store->putEnvelope(other.phone, other.mailbox, 1, bytes::viewOf("four"), noon - std::chrono::days(1000), roomy));
    const Outcome usage = hub("usage" + at);
    CHECK(usage.code == 0);
    CHECK(usage.said
          == "clinics 2\ndevices 3\nmailboxes 1\nenvelopes 1\nbytes 4\nblobs 0\nblob bytes 0\nwaiting over 30 days 1\nwaiting over 60 days 1\nwaiting over 85 days 1\nwaiting over 90 days 1\n");
}

TEST_CASE("a database that is not there is said, with its host and without a password", "[hub]")
{
    const Outcome outcome = hub("usage --store 'postgres://hub:secretword@/ebbline?host=/nonexistent&connect_timeout=1'");
    CHECK(outcome.code == 1);
    CHECK(outcome.said.find("/nonexistent") != std::string::npos);
    CHECK(outcome.said.find("secretword") == std::string::npos);
}

TEST_CASE("a mistyped folder is no new hub: who counts or refuses makes no store, who admits says that it made one", "[hub]")
{
    const Folder folder;
    const auto place = folder.path() / "hub";
    const std::string at = " --store '" + place.string() + "'";
    const std::string admit = "add-clinic" + at + " --root ";
    for (const std::string& command : {"usage" + at, "revoke-device" + at + " --device " + bytes::toHex(crypto::randomArray<16>())}) {
        CAPTURE(command);
        const Outcome outcome = hub(command);
        CHECK(outcome.code == 1);
        CHECK(outcome.said.find("no store is in this folder, and none was made") != std::string::npos);
        CHECK_FALSE(std::filesystem::exists(place));
    }
    CHECK(hub(admit + "abc").code == 2);
    CHECK_FALSE(std::filesystem::exists(place));

    const Outcome first = hub(admit + bytes::toHex(crypto::randomArray<32>()));
    CHECK(first.code == 0);
    CHECK(first.said == "a new store was made in " + place.string() + "\nclinic 1 is admitted\n");
    CHECK(hub(admit + bytes::toHex(crypto::randomArray<32>())).said == "clinic 2 is admitted\n");
    const Outcome usage = hub("usage" + at);
    CHECK(usage.code == 0);
    CHECK(usage.said.starts_with("clinics 2\n"));
}

TEST_CASE("a mistyped database is no new hub either", "[hub]")
{
    if (!Cluster::isAvailable())
        SKIP(Cluster::missing);
    const Cluster cluster;
    const std::string at = " --store '" + cluster.address() + "'";
    const auto tables = [&] { return cluster.sql("SELECT count(*) FROM pg_namespace WHERE nspname = 'ebbline'"); };
    for (const std::string& command : {"usage" + at, "revoke-device" + at + " --device " + bytes::toHex(crypto::randomArray<16>())}) {
        CAPTURE(command);
        const Outcome outcome = hub(command);
        CHECK(outcome.code == 1);
        CHECK(outcome.said.find("holds no tables of a hub, and none were made") != std::string::npos);
        CHECK(tables() == "0");
    }
    CHECK(hub("add-clinic" + at + " --root " + bytes::toHex(crypto::randomArray<32>())).code == 0);
    CHECK(tables() == "1");
    CHECK(hub("usage" + at).said.starts_with("clinics 1\n"));
}

TEST_CASE("words of a database are no folder, and a path is no database", "[hub]")
{
    CHECK(postgres::isAddress("postgres://hub@db/ebbline"));
    CHECK(postgres::isAddress("postgresql:///ebbline"));
    CHECK(postgres::isAddress("host=db dbname=ebbline"));
    CHECK(postgres::isAddress("host=/run/postgresql dbname=ebbline"));
    CHECK_FALSE(postgres::isAddress("/var/lib/ebbline"));
    CHECK_FALSE(postgres::isAddress("store"));
    CHECK_FALSE(postgres::isAddress("./clinic=1"));
}

TEST_CASE("a word that is no subcommand is named, and where those that exist are listed", "[hub]")
{
    const Outcome unknown = hub("usages --store /tmp");
    CHECK(unknown.code == 2);
    CHECK(unknown.said == "ebbline-hub: there is no subcommand 'usages'; ebbline-hub --help lists what there is\n");
    const Outcome none = hub("");
    CHECK(none.code == 2);
    CHECK(none.said.find("A subcommand is required") != std::string::npos);
    const Outcome missing = hub("usage");
    CHECK(missing.code == 2);
    CHECK(missing.said.find("--store") != std::string::npos);
    CHECK(hub("--help").code == 0);
}

TEST_CASE("a hub that cannot write its port file says so and ends, and leaves nothing beside it", "[hub]")
{
    const Folder folder;
    const std::string serve = "serve --store '" + (folder.path() / "hub").string() + "' --listen 127.0.0.1:0 --port-file ";
    std::filesystem::create_directories(folder.path() / "taken");
    for (const char* name : {"missing/port", "taken"}) {
        CAPTURE(name);
        const auto file = folder.path() / name;
        const Outcome outcome = hub(serve + "'" + file.string() + "'");
        CHECK(outcome.code == 1);
        CHECK(outcome.said.find("ebbline-hub: --port-file " + file.string() + " cannot be written; name a file in a folder") != std::string::npos);
        CHECK_FALSE(std::filesystem::exists(file.string() + ".new"));
    }
}
