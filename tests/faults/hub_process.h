#pragma once
/// \file
/// The hub's program as a process of its own, to be killed and started again at the same port.

#include <filesystem>
#include <string>
#include <vector>

#include <sys/types.h>

namespace ebbline::faults {

class HubProcess {
public:
    /// `store` as for --store; limits of rate are taken away. `more` are further options.
    HubProcess(std::string store, std::vector<std::string> more = {});
    ~HubProcess();
    HubProcess(HubProcess&&) = delete;

    std::uint16_t port() const { return m_port; }
    /// Returns once it listens. Throws if it does not within `patience` seconds.
    void start(int patience = 30);
    void kill();  ///< signal 9
    /// SIGTERM. \returns its exit code.
    int end();
    bool runs() const;
    std::size_t residentBytes() const;
    pid_t process() const { return m_process; }
    /// Everything that it printed so far.
    std::string log() const;

private:
    std::string m_store;
    std::vector<std::string> m_more;
    std::filesystem::path m_folder;
    std::uint16_t m_port = 0;
    pid_t m_process = -1;
};

}  // namespace ebbline::faults
