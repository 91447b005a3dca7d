#pragma once
/// \file
/// The hub's log: one JSON object a line, in UTC. Takes words and numbers of the program only:
/// no identifier of a person or a device, no address, no body.

#include "core/clock/instant.h"

#include <iosfwd>
#include <string_view>
#include <utility>
#include <vector>

namespace ebbline::server {

class Log {
public:
    Log(std::ostream& out, const clock::Clock& clock) : m_out(out), m_clock(clock) {}
    void line(std::string_view event, const std::vector<std::pair<std::string_view, std::int64_t>>& numbers = {});

private:
    std::ostream& m_out;
    const clock::Clock& m_clock;
};

}  // namespace ebbline::server
