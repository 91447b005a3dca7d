#pragma once
/// \file
/// A disk that takes nothing more.

#include <csignal>
#include <sys/resource.h>

namespace ebbline::tests {

/// While it lives, no file of this process takes another byte.
class FullDisk {
public:
    FullDisk()
    {
        m_before = std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &m_limit);
        const rlimit none{0, m_limit.rlim_max};
        setrlimit(RLIMIT_FSIZE, &none);
    }
    ~FullDisk()
    {
        setrlimit(RLIMIT_FSIZE, &m_limit);
        std::signal(SIGXFSZ, m_before);
    }
    FullDisk(const FullDisk&) = delete;
    FullDisk& operator=(const FullDisk&) = delete;

private:
    rlimit m_limit{};
    void (*m_before)(int) = nullptr;
};

}  // namespace ebbline::tests
