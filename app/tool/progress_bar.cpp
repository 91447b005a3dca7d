#include "app/tool/progress_bar.h"

#include <unistd.h>

#include <algorithm>
#include <iostream>

namespace ebbline::tool {

namespace {
constexpr int width = 30;
}

ProgressBar::ProgressBar(std::string what) : m_what(std::move(what)), m_terminal(isatty(STDERR_FILENO) == 1) {}

ProgressBar::~ProgressBar()
{
    if (m_terminal && m_shown >= 0)
        std::cerr << "\r" << std::string(m_what.size() + width + 9, ' ') << "\r" << std::flush;
}

void ProgressBar::show(int done, int of)
{
    const int percent = of > 0 ? std::clamp(100 * done / of, 0, 100) : 100;
    if (!m_terminal || percent == m_shown)
        return;
    m_shown = percent;
    const int full = width * percent / 100;
    std::cerr << "\r" << m_what << " [" << std::string(static_cast<std::size_t>(full), '=')
              << std::string(static_cast<std::size_t>(width - full), ' ') << "] " << percent << " %" << std::flush;
}

}  // namespace ebbline::tool
