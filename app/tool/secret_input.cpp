#include "app/tool/secret_input.h"

#include "core/crypto/crypto.h"

#include <iostream>
#include <termios.h>
#include <unistd.h>

namespace ebbline::tool {

namespace {

/// Keeps the terminal from showing what is typed.
class Silence {
public:
    Silence()
    {
        m_changed = ::tcgetattr(STDIN_FILENO, &m_before) == 0;
        if (!m_changed)
            return;
        termios silent = m_before;
        silent.c_lflag &= ~static_cast<tcflag_t>(ECHO);
        ::tcsetattr(STDIN_FILENO, TCSAFLUSH, &silent);
    }
    ~Silence()
    {
        if (m_changed)
            ::tcsetattr(STDIN_FILENO, TCSAFLUSH, &m_before);
    }
    Silence(const Silence&) = delete;
    Silence& operator=(const Silence&) = delete;

private:
    termios m_before{};
    bool m_changed = false;
};

}  // namespace

SecretLine::~SecretLine()
{
    crypto::wipe({reinterpret_cast<std::uint8_t*>(m_text.data()), m_text.size()});
}

Done SecretLine::read(const std::string& question)
{
    const bool asked = ::isatty(STDIN_FILENO) == 1;
    if (asked)
        std::cerr << question << ": " << std::flush;
    const Silence silence;
    char c = 0;
    bool any = false;
    // Byte by byte: what stands behind the line is left for others, and no buffer keeps a copy.
    while (::read(STDIN_FILENO, &c, 1) == 1 && c != '\n') {
        any = true;
        if (m_text.size() == longest)
            return fail(Reason::tooLarge, "the line is longer than 1024 bytes");
        if (c != '\r')
            m_text.push_back(c);
    }
    if (asked)
        std::cerr << '\n';
    if (!any || m_text.empty())
        return fail(Reason::notFound, "no passphrase was given");
    return {};
}

}  // namespace ebbline::tool
