#pragma once
/// \file
/// Looks for words and keys in bytes of any kind: as they are, and in the forms in which a program might have written them.

#include "core/bytes/bytes.h"

#include <filesystem>
#include <functional>
#include <string>
#include <vector>

#include <sys/types.h>

namespace ebbline::faults {

/// One thing that must not be found.
class Canary {
public:
    Canary(std::string name, bytes::Bytes value);

    const std::string& name() const { return m_name; }
    const bytes::Bytes& value() const { return m_value; }
    /// How often it stands there: as it is, in UTF-16 of both orders, in hexadecimal of both cases, in Base64 at each of three places.
    std::size_t countIn(bytes::View where) const;
    /// As it is, alone.
    std::size_t plainIn(bytes::View where) const;
    /// The forms that countIn() looks for.
    const std::vector<bytes::Bytes>& forms() const { return m_forms; }

private:
    std::string m_name;
    bytes::Bytes m_value;
    std::vector<bytes::Bytes> m_forms;
};

bytes::Bytes contentsOf(const std::filesystem::path& file);

/// Calls `look` with everything in the memory of a process that can be read, in pieces that overlap by `overlap` bytes.
/// \returns the bytes read; 0 if the system does not allow it.
std::size_t forEachPieceOfMemory(pid_t process, std::size_t overlap, const std::function<void(bytes::View)>& look);

}  // namespace ebbline::faults
