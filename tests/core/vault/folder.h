#pragma once
/// \file
/// A folder of a test's own, gone afterwards; starts the cryptographic library.

#include "core/crypto/crypto.h"

#include <catch2/catch_test_macros.hpp>

#include <filesystem>

namespace ebbline::test {

class Folder {
public:
    Folder()
    {
        REQUIRE(crypto::initialise());
        m_path = std::filesystem::temp_directory_path()
                 / ("ebbline-" + std::to_string(crypto::randomArray<8>()[0]) + "-"
                    + std::to_string(reinterpret_cast<std::uintptr_t>(this)) + "-"
                    + std::to_string(crypto::randomArray<2>()[0] * 256 + crypto::randomArray<2>()[1]));
        std::filesystem::create_directories(m_path);
    }
    ~Folder()
    {
        std::error_code ignored;
        std::filesystem::remove_all(m_path, ignored);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    const std::filesystem::path& path() const { return m_path; }

private:
    std::filesystem::path m_path;
};

}  // namespace ebbline::test
