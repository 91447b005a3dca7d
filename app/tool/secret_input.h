#pragma once
/// \file
/// A passphrase or recovery code from whoever runs the tool: never an argument, never the environment,
/// where other programs could read it.

#include "core/result/result.h"

#include <string>

namespace ebbline::tool {

/// A line of text that is overwritten when let go.
class SecretLine {
public:
    SecretLine() { m_text.reserve(longest + 1); }
    ~SecretLine();
    SecretLine(const SecretLine&) = delete;
    SecretLine& operator=(const SecretLine&) = delete;

    /// Asks on the terminal, without echo; where standard input is not a terminal, its first line.
    /// \returns Reason::notFound if there is none, Reason::tooLarge above 1024 bytes.
    Done read(const std::string& question);
    const std::string& text() const { return m_text; }

private:
    static constexpr std::size_t longest = 1024;
    std::string m_text;
};

}  // namespace ebbline::tool
