#include "tests/platform/postgres/cluster.h"

#include <libpq-fe.h>

#include <csignal>
#include <fcntl.h>
#include <fstream>
#include <grp.h>
#include <memory>
#include <pwd.h>
#include <stdexcept>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>
#include <utility>

namespace ebbline::test {

namespace {

std::filesystem::path binaries()
{
    std::filesystem::path newest;
    std::error_code ignored;
    for (const auto& version : std::filesystem::directory_iterator("/usr/lib/postgresql", ignored))
        if (std::filesystem::exists(version.path() / "bin/initdb") && std::filesystem::exists(version.path() / "bin/postgres"))
            newest = std::max(newest, version.path() / "bin");
    return newest;
}

struct Who {
    uid_t user = ::getuid();
    gid_t group = ::getgid();
};

/// Who runs the server.
Who who()
{
    Who who;
    if (who.user == 0)
        if (const passwd* nobody = ::getpwnam("nobody"))
            who = {nobody->pw_uid, nobody->pw_gid};
    return who;
}

pid_t spawn(const std::vector<std::string>& command, const std::filesystem::path& folder, bool endsWithUs)
{
    const Who as = who();
    const std::string log = folder / "log", home = folder;
    std::vector<char*> arguments;
    for (const std::string& each : command)
        arguments.push_back(const_cast<char*>(each.c_str()));
    arguments.push_back(nullptr);
    const pid_t child = ::fork();
    if (child != 0)
        return child;
    const int out = ::open(log.c_str(), O_WRONLY | O_CREAT | O_APPEND, 0644);
    ::dup2(out, 1);
    ::dup2(out, 2);
    if (::getuid() == 0 && (::setgroups(0, nullptr) != 0 || ::setgid(as.group) != 0 || ::setuid(as.user) != 0))
        ::_exit(126);
    if (endsWithUs)
        ::prctl(PR_SET_PDEATHSIG, SIGQUIT);
    sigset_t none;
    sigemptyset(&none);
    ::pthread_sigmask(SIG_SETMASK, &none, nullptr);
    if (::chdir(home.c_str()) != 0)
        ::_exit(126);
    ::execv(arguments[0], arguments.data());
    ::_exit(127);
}

void mustBe(bool fact, const std::string& what, const std::filesystem::path& folder)
{
    if (fact)
        return;
    std::ifstream log(folder / "log");
    const std::string said(std::istreambuf_iterator<char>(log), {});
    throw std::runtime_error("cluster: " + what + "\n" + said.substr(said.size() > 2000 ? said.size() - 2000 : 0));
}

}  // namespace

bool Cluster::isAvailable() { return !binaries().empty(); }

Cluster::Cluster(Nothing, std::vector<std::string> settings) : m_settings(std::move(settings))
{
    std::string pattern = std::filesystem::temp_directory_path() / ("ebbline-pg-" + std::string(6, 'X'));
    if (!::mkdtemp(pattern.data()))
        throw std::runtime_error("cluster: no folder");
    m_folder = pattern;
    const Who as = who();
    if (::getuid() == 0 && ::chown(m_folder.c_str(), as.user, as.group) != 0)
        throw std::runtime_error("cluster: the folder cannot be given away");
    // A folder of the user's own would be closed to the server.
    std::filesystem::permissions(m_folder, std::filesystem::perms::owner_all | std::filesystem::perms::group_exec
                                               | std::filesystem::perms::others_exec);
}

Cluster::Cluster(std::vector<std::string> settings) : Cluster(Nothing{}, std::move(settings))
{
    mustBe(run({binaries() / "initdb", "-D", m_folder / "data", "-A", "trust", "-U", "postgres", "--no-sync", "-E", "UTF8",
                "--locale=C.UTF-8"}) == 0,
           "initdb failed", m_folder);
    start();
    (void)sql("CREATE ROLE hub LOGIN", "postgres");
    (void)sql("CREATE DATABASE ebbline OWNER hub", "postgres");
}

Cluster Cluster::standbyOf(const Cluster& primary, std::vector<std::string> settings)
{
    Cluster standby(Nothing{}, std::move(settings));
    standby.becomeStandbyOf(primary);
    return standby;
}

void Cluster::becomeStandbyOf(const Cluster& primary)
{
    std::filesystem::remove_all(m_folder / "data");
    mustBe(run({binaries() / "pg_basebackup", "-d", primary.adminAddress("postgres") + "&application_name=standby", "-D",
                m_folder / "data", "-R", "-X", "stream", "-c", "fast", "--no-sync"})
               == 0,
           "pg_basebackup failed", m_folder);
    start();
}

Cluster::Cluster(Cluster&& other) noexcept
    : m_folder(std::move(other.m_folder)), m_settings(std::move(other.m_settings)), m_server(std::exchange(other.m_server, -1))
{
    other.m_folder.clear();
}

Cluster::~Cluster()
{
    if (m_folder.empty())
        return;
    kill();
    std::error_code ignored;
    std::filesystem::remove_all(m_folder, ignored);
}

std::string Cluster::address(const std::vector<const Cluster*>& others, const std::string& database) const
{
    std::string hosts = m_folder;
    for (const Cluster* other : others)
        hosts += "," + other->m_folder.string();
    return "postgres://hub@/" + database + "?host=" + hosts;
}

std::string Cluster::adminAddress(const std::string& database) const
{
    return "postgres://postgres@/" + database + "?host=" + m_folder.string();
}

std::string Cluster::sql(const std::string& statements, const std::string& database) const
{
    const std::unique_ptr<PGconn, void (*)(PGconn*)> connection(PQconnectdb(adminAddress(database).c_str()), &PQfinish);
    const std::unique_ptr<PGresult, void (*)(PGresult*)> result(PQexec(connection.get(), statements.c_str()), &PQclear);
    const auto status = PQresultStatus(result.get());
    mustBe(status == PGRES_TUPLES_OK || status == PGRES_COMMAND_OK, PQerrorMessage(connection.get()), m_folder);
    return PQntuples(result.get()) > 0 && PQnfields(result.get()) > 0 ? PQgetvalue(result.get(), 0, 0) : std::string();
}

int Cluster::run(const std::vector<std::string>& command) const
{
    int status = 0;
    const pid_t child = spawn(command, m_folder, false);
    if (::waitpid(child, &status, 0) != child)
        return -1;
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

void Cluster::start()
{
    std::vector<std::string> command{binaries() / "postgres", "-D", m_folder / "data", "-c", "listen_addresses=", "-c",
                                     "unix_socket_directories=" + m_folder.string(), "-c", "log_min_messages=warning"};
    for (const std::string& setting : m_settings) {
        command.emplace_back("-c");
        command.push_back(setting);
    }
    m_server = spawn(command, m_folder, true);
    waitUntilReady();
}

void Cluster::waitUntilReady() const
{
    const std::string address = adminAddress("postgres");
    for (int i = 0; i < 1200; ++i) {
        if (PQping(address.c_str()) == PQPING_OK)
            return;
        mustBe(::waitpid(m_server, nullptr, WNOHANG) == 0, "the server ended", m_folder);
        std::this_thread::sleep_for(std::chrono::milliseconds(25));
    }
    mustBe(false, "the server does not answer", m_folder);
}

void Cluster::kill()
{
    if (m_server <= 0)
        return;
    // Stopped first, so that no new process begins while the others are counted.
    ::kill(m_server, SIGSTOP);
    const std::string id = std::to_string(m_server);
    std::ifstream children("/proc/" + id + "/task/" + id + "/children");
    for (pid_t child = 0; children >> child;)
        ::kill(child, SIGKILL);
    ::kill(m_server, SIGKILL);
    ::waitpid(m_server, nullptr, 0);
    m_server = -1;
}

void Cluster::stop()
{
    if (m_server <= 0)
        return;
    ::kill(m_server, SIGINT);
    ::waitpid(m_server, nullptr, 0);
    m_server = -1;
}

void Cluster::promote()
{
    mustBe(sql("SELECT pg_promote(true, 30)", "postgres") == "t", "not promoted", m_folder);
}

}  // namespace ebbline::test
