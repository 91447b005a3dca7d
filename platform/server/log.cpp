#include "platform/server/log.h"

#include "core/clock/iso8601.h"

#include <ostream>

namespace ebbline::server {

void Log::line(std::string_view event, const std::vector<std::pair<std::string_view, std::int64_t>>& numbers)
{
    m_out << "{\"at\":\"" << clock::toIso8601(m_clock.now()) << "\",\"event\":\"" << event << '"';
    for (const auto& [name, value] : numbers)
        m_out << ",\"" << name << "\":" << value;
    m_out << "}\n";
    m_out.flush();
}

}  // namespace ebbline::server
