#include "app/story/progress.h"

#include <unistd.h>

#include <algorithm>
#include <cstdio>

namespace ebbline::story {

namespace {

constexpr std::size_t longCount = 40;  // more than the days of a story

}  // namespace

Progress::Progress() : m_terminal(isatty(STDERR_FILENO) == 1)
{
}

Progress::~Progress()
{
    if (m_width > 0)
        std::fputc('\n', stderr);
}

void Progress::say(const char* what, std::size_t at, std::size_t of)
{
    std::string line = "ebbline story: " + std::string(what) + ' ' + std::to_string(at) + " of " + std::to_string(of);
    if (m_terminal) {
        const std::size_t width = line.size();
        // What a longer line left behind it is written over.
        line.resize(std::max(width, m_width), ' ');
        m_width = width;
        std::fprintf(stderr, "\r%s", line.c_str());
    } else if (of < longCount || at == 1 || at == of || at % 10 == 0) {
        std::fprintf(stderr, "%s\n", line.c_str());
    }
}

}  // namespace ebbline::story
