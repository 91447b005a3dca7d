#pragma once
/// \file
/// Says on stderr how far the story is: on a terminal in one line that is written over, else, where a line stays, in lines of
/// their own, of which a log gets every tenth of a long count.

#include <cstddef>
#include <string>

namespace ebbline::story {

class Progress {
public:
    Progress();
    /// Ends the line that is written over.
    ~Progress();
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;

    /// "day 3 of 24": `at` counts from 1.
    void say(const char* what, std::size_t at, std::size_t of);

private:
    bool m_terminal;
    std::size_t m_width = 0;  ///< of the line that stands there
};

}  // namespace ebbline::story
