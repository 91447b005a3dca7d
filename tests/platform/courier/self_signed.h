#pragma once
/// \file
/// A fresh self-signed certificate for 127.0.0.1, as a clinic with its own hub would make one.

#include "core/bytes/bytes.h"

#include <filesystem>

namespace ebbline::test {

struct SelfSigned {
    std::filesystem::path certificate;  ///< PEM
    std::filesystem::path key;          ///< PEM
    bytes::Array<32> keyHash{};         ///< SHA-256 of the subject public key info

    /// Writes both files into the folder, ECDSA on P-256, valid for one day.
    static SelfSigned in(const std::filesystem::path& folder);
};

}  // namespace ebbline::test
