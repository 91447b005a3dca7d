#pragma once
/// \file
/// A PostgreSQL server of a test's own: a folder under the temporary one, a Unix socket in it, no
/// port, gone afterwards. PostgreSQL refuses to run as root; as root it runs as nobody.

#include <filesystem>
#include <string>
#include <vector>

#include <sys/types.h>

namespace ebbline::test {

class Cluster {
public:
    /// Whether the server's programs are there (Debian: postgresql).
    static bool isAvailable();
    static constexpr const char* missing = "PostgreSQL's programs are not installed: platform/debian/install.sh --tests";

    /// Makes and starts one, with a role `hub` that owns a database `ebbline`. `settings` are `name=value`.
    explicit Cluster(std::vector<std::string> settings = {});
    /// A hot standby of another one, from a base backup; it streams under the name `standby`.
    static Cluster standbyOf(const Cluster& primary, std::vector<std::string> settings = {});
    /// One that is down forgets everything and comes back as a hot standby, at its old address.
    void becomeStandbyOf(const Cluster& primary);
    ~Cluster();
    Cluster(Cluster&& other) noexcept;
    Cluster& operator=(Cluster&&) = delete;

    /// For the role hub. `others` stand behind in the same address.
    std::string address(const std::vector<const Cluster*>& others = {}, const std::string& database = "ebbline") const;
    std::string adminAddress(const std::string& database = "ebbline") const;
    /// Runs statements as the superuser. \returns the first value of the last, as text. Throws.
    std::string sql(const std::string& statements, const std::string& database = "ebbline") const;

    /// Signal 9 to all of its processes at once, as when the machine dies.
    void kill();
    /// The server ends with the thread that calls this.
    void start();
    void stop();
    /// A standby becomes a primary; returns once it takes writes.
    void promote();

private:
    struct Nothing {};
    explicit Cluster(Nothing, std::vector<std::string> settings);
    int run(const std::vector<std::string>& command) const;
    void waitUntilReady() const;

    std::filesystem::path m_folder;
    std::vector<std::string> m_settings;
    pid_t m_server = -1;
};

}  // namespace ebbline::test
