#include "tests/faults/hub_process.h"

#include <csignal>
#include <fcntl.h>
#include <fstream>
#include <stdexcept>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace ebbline::faults {

HubProcess::HubProcess(std::string store, std::vector<std::string> more) : m_store(std::move(store)), m_more(std::move(more))
{
    std::string pattern = std::filesystem::temp_directory_path() / ("ebbline-hub-" + std::string(6, 'X'));
    if (!::mkdtemp(pattern.data()))
        throw std::runtime_error("hub: no folder");
    m_folder = pattern;
}

HubProcess::~HubProcess()
{
    kill();
    std::error_code ignored;
    std::filesystem::remove_all(m_folder, ignored);
}

void HubProcess::start(int patience)
{
    const std::filesystem::path portFile = m_folder / "port";
    std::filesystem::remove(portFile);
    std::vector<std::string> command{EBBLINE_HUB, "serve", "--store", m_store, "--listen", "127.0.0.1:" + std::to_string(m_port),
                                     "--port-file", portFile, "--device-requests", "1000000", "--address-requests", "1000000",
                                     "--enrolments", "1000000"};
    command.insert(command.end(), m_more.begin(), m_more.end());
    std::vector<char*> arguments;
    for (std::string& each : command)
        arguments.push_back(each.data());
    arguments.push_back(nullptr);
    const std::string log = m_folder / "log";
    m_process = ::fork();
    if (m_process == 0) {
        ::prctl(PR_SET_PDEATHSIG, SIGKILL);
        const int out = ::open(log.c_str(), O_WRONLY | O_CREAT | O_APPEND, 0644);
        ::dup2(out, 1);
        ::dup2(out, 2);
        ::execv(arguments[0], arguments.data());
        ::_exit(127);
    }
    for (int i = 0; i < patience * 200; ++i) {
        if (std::ifstream(portFile) >> m_port)
            return;
        if (::waitpid(m_process, nullptr, WNOHANG) != 0)
            break;
        std::this_thread::sleep_for(std::chrono::milliseconds(5));
    }
    std::ifstream said(log);
    throw std::runtime_error("hub: it does not start\n" + std::string(std::istreambuf_iterator<char>(said), {}));
}

void HubProcess::kill()
{
    if (m_process <= 0)
        return;
    ::kill(m_process, SIGKILL);
    ::waitpid(m_process, nullptr, 0);
    m_process = -1;
}

int HubProcess::end()
{
    if (m_process <= 0)
        return -1;
    int status = 0;
    ::kill(m_process, SIGTERM);
    ::waitpid(m_process, &status, 0);
    m_process = -1;
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

std::string HubProcess::log() const
{
    std::ifstream said(m_folder / "log", std::ios::binary);
    return {std::istreambuf_iterator<char>(said), {}};
}

bool HubProcess::runs() const
{
    return m_process > 0 && ::waitpid(m_process, nullptr, WNOHANG) == 0;
}

std::size_t HubProcess::residentBytes() const
{
    std::ifstream file("/proc/" + std::to_string(m_process) + "/statm");
    std::size_t all = 0, resident = 0;
    file >> all >> resident;
    return resident * static_cast<std::size_t>(::sysconf(_SC_PAGESIZE));
}

}  // namespace ebbline::faults
