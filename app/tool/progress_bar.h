#pragma once
/// \file
/// A progress bar on standard error, drawn only when a person is looking: not into a file or pipe.

#include <string>

namespace ebbline::tool {

class ProgressBar {
public:
    explicit ProgressBar(std::string what);
    ~ProgressBar();
    ProgressBar(const ProgressBar&) = delete;
    ProgressBar& operator=(const ProgressBar&) = delete;

    /// Draws when the shown percentage changes.
    void show(int done, int of);

private:
    std::string m_what;
    bool m_terminal;
    int m_shown = -1;
};

}  // namespace ebbline::tool
