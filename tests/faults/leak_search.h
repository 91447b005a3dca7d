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
    /// As it is, in UTF-16 of both orders, in hexadecimal of both cases, in Base64 at each of three places.
    const std::vector<bytes::Bytes>& forms() const { return m_forms; }

private:
    std::string m_name;
    bytes::Bytes m_value;
    std::vector<bytes::Bytes> m_forms;
};

/// Looks for all of them at once: a program's memory is gone through in one pass.
class Net {
public:
    explicit Net(const std::vector<Canary>& canaries);

    struct Catch {
        std::size_t plain = 0;  ///< as it is
        std::size_t any = 0;    ///< in any of its forms
    };
    /// Of each canary, in the order in which they were given.
    std::vector<Catch> in(bytes::View where) const;
    std::size_t longest() const { return m_longest; }

private:
    struct Form {
        std::size_t canary;
        bool plain;
        bytes::Bytes bytes;
    };
    std::size_t m_canaries;
    std::size_t m_longest = 0;
    std::vector<Form> m_forms;
    std::vector<std::vector<std::size_t>> m_byStart;  ///< places in m_forms, by their first two bytes
};

bytes::Bytes contentsOf(const std::filesystem::path& file);

/// Calls `look` with everything in the memory of a process that can be read, in pieces that overlap by `overlap` bytes.
/// \returns the bytes read; 0 if the system does not allow it.
std::size_t forEachPieceOfMemory(pid_t process, std::size_t overlap, const std::function<void(bytes::View)>& look);

}  // namespace ebbline::faults
