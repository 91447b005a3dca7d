#pragma once
/// \file
/// The hub's log: one JSON object a line, in UTC. Takes words and numbers of the program only:
/// no identifier of a person or a device, no address, no body. Any thread may write.

#include "core/clock/instant.h"
#include "platform/server/http_server.h"

#include <iosfwd>
#include <mutex>
#include <string_view>
#include <utility>
#include <vector>

namespace ebbline::server {

class Log {
public:
    /// How much is said of requests, in this order: nothing; who was not let in, and what failed; each of them.
    enum class Level : std::uint8_t { events, refusals, requests };

    Log(std::ostream& out, const clock::Clock& clock, Level level = Level::events) : m_out(out), m_clock(clock), m_level(level) {}
    void line(std::string_view event, const std::vector<std::pair<std::string_view, std::int64_t>>& numbers = {});

    /// A line of its own, if the level asks for it: "refused" where somebody was not let in, "failed" for a status of 500 and above,
    /// else "request".
    void request(const Answered& answered);

private:
    using Words = std::vector<std::pair<std::string_view, std::string_view>>;
    void write(std::string_view event, const Words& words, const std::vector<std::pair<std::string_view, std::int64_t>>& numbers);

    std::ostream& m_out;
    const clock::Clock& m_clock;
    Level m_level;
    std::mutex m_mutex;
};

}  // namespace ebbline::server
