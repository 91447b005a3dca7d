#pragma once
/// \file
/// A locale with a decimal comma for as long as it lives, as a program with windows gets it from a German system. It is made
/// from the machine's own sources, beside the test's program. A machine without them cannot test what it is for.

#include <clocale>
#include <cstdlib>
#include <filesystem>
#include <string>

#include <unistd.h>

namespace ebbline::test {

class DecimalComma {
public:
    static constexpr const char* missing = "this machine cannot make a locale with a decimal comma: localedef, or the package locales, is missing";

    DecimalComma()
    {
        namespace fs = std::filesystem;
        std::error_code problem;
        const fs::path folder = fs::read_symlink("/proc/self/exe", problem).parent_path() / "locales";
        const fs::path made = folder / name;
        if (!fs::exists(made / "LC_NUMERIC", problem)) {
            // Many tests may want it at once: each makes its own, and the first one's stays.
            const fs::path own = folder / (std::to_string(getpid()) + ".UTF-8");
            fs::create_directories(folder, problem);
            const std::string command = "localedef -c -i de_DE -f UTF-8 '" + own.string() + "' >/dev/null 2>&1";
            if (std::system(command.c_str()) == 0)
                fs::rename(own, made, problem);
            fs::remove_all(own, problem);
        }
        setenv("LOCPATH", folder.c_str(), 1);
        m_there = std::setlocale(LC_ALL, name) != nullptr && std::string(std::localeconv()->decimal_point) == ",";
    }
    ~DecimalComma()
    {
        std::setlocale(LC_ALL, "C");
        unsetenv("LOCPATH");
    }
    DecimalComma(const DecimalComma&) = delete;
    DecimalComma& operator=(const DecimalComma&) = delete;

    bool isThere() const { return m_there; }

private:
    static constexpr const char* name = "de_DE.UTF-8";
    bool m_there = false;
};

}  // namespace ebbline::test
