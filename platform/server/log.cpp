#include "platform/server/log.h"

#include "core/clock/iso8601.h"

#include <ostream>

namespace ebbline::server {

void Log::line(std::string_view event, const std::vector<std::pair<std::string_view, std::int64_t>>& numbers)
{
    write(event, {}, numbers);
}

void Log::request(const Answered& answered)
{
    const bool refused = !answered.refused.empty();
    const bool failed = answered.status >= 500;
    if (m_level == Level::events || (m_level == Level::refusals && !refused && !failed))
        return;
    Words words{{"route", answered.route}};
    if (refused)
        words.emplace_back("why", answered.refused);
    write(refused ? "refused" : failed ? "failed" : "request", words,
          {{"status", answered.status},
           {"ms", answered.took.count()},
           {"bytes_in", static_cast<std::int64_t>(answered.bytesIn)},
           {"bytes_out", static_cast<std::int64_t>(answered.bytesOut)}});
}

/// Words are the program's own and need no escape.
void Log::write(std::string_view event, const Words& words, const std::vector<std::pair<std::string_view, std::int64_t>>& numbers)
{
    const std::scoped_lock lock(m_mutex);
    m_out << "{\"at\":\"" << clock::toIso8601(m_clock.now()) << "\",\"event\":\"" << event << '"';
    for (const auto& [name, word] : words)
        m_out << ",\"" << name << "\":\"" << word << '"';
    for (const auto& [name, value] : numbers)
        m_out << ",\"" << name << "\":" << value;
    m_out << "}\n";
    m_out.flush();
}

}  // namespace ebbline::server
