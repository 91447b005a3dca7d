#include "tests/core/exchange/strict_calendar.h"

#include "core/recovery/utf8.h"

#include <algorithm>
#include <optional>
#include <set>

namespace ebbline::test {

namespace {

using LocalSeconds = std::chrono::local_time<std::chrono::seconds>;

struct Property {
    std::string name, value;
    std::map<std::string, std::string> parameters;
};

struct Component {
    std::string name;
    std::vector<Property> properties;
    std::vector<Component> parts;

    const Property* find(std::string_view wanted) const
    {
        const auto found = std::find_if(properties.begin(), properties.end(), [&](const Property& p) { return p.name == wanted; });
        return found == properties.end() ? nullptr : &*found;
    }
};

/// What each component must have once, and may have once. RFC 5545 sections 3.6 to 3.6.6.
struct Rule {
    std::set<std::string> must, may, parts;
};
const std::map<std::string, Rule> rules{
    {"VCALENDAR", {{"VERSION", "PRODID"}, {"CALSCALE", "METHOD"}, {"VTIMEZONE", "VEVENT"}}},
    {"VTIMEZONE", {{"TZID"}, {"LAST-MODIFIED", "TZURL"}, {"STANDARD", "DAYLIGHT"}}},
    {"STANDARD", {{"DTSTART", "TZOFFSETFROM", "TZOFFSETTO"}, {"TZNAME"}, {}}},
    {"DAYLIGHT", {{"DTSTART", "TZOFFSETFROM", "TZOFFSETTO"}, {"TZNAME"}, {}}},
    {"VEVENT", {{"UID", "DTSTAMP", "DTSTART"}, {"DURATION", "SUMMARY", "CLASS", "TRANSP", "SEQUENCE"}, {"VALARM"}}},
    {"VALARM", {{"ACTION", "TRIGGER", "DESCRIPTION"}, {}, {}}},
};

std::optional<LocalSeconds> dateTime(std::string_view text)
{
    if (text.size() != 15 || text[8] != 'T')
        return {};
    std::array<int, 6> parts{};
    const std::array<std::pair<int, int>, 6> places{{{0, 4}, {4, 2}, {6, 2}, {9, 2}, {11, 2}, {13, 2}}};
    for (std::size_t i = 0; i < places.size(); ++i)
        for (int k = 0; k < places[i].second; ++k) {
            const char c = text[static_cast<std::size_t>(places[i].first + k)];
            if (c < '0' || c > '9')
                return {};
            parts[i] = parts[i] * 10 + (c - '0');
        }
    const std::chrono::year_month_day date{std::chrono::year{parts[0]}, std::chrono::month(static_cast<unsigned>(parts[1])),
                                           std::chrono::day(static_cast<unsigned>(parts[2]))};
    if (!date.ok() || parts[3] > 23 || parts[4] > 59 || parts[5] > 59)
        return {};
    return LocalSeconds{std::chrono::local_days{date}} + std::chrono::hours(parts[3]) + std::chrono::minutes(parts[4])
           + std::chrono::seconds(parts[5]);
}

std::optional<std::chrono::minutes> offset(std::string_view text)
{
    if (text.size() != 5 || (text[0] != '+' && text[0] != '-')
        || !std::all_of(text.begin() + 1, text.end(), [](char c) { return c >= '0' && c <= '9'; }))
        return {};
    const int minutes = ((text[1] - '0') * 10 + text[2] - '0') * 60 + (text[3] - '0') * 10 + text[4] - '0';
    if (text == "-0000" || minutes > 14 * 60)
        return {};
    return std::chrono::minutes(text[0] == '-' ? -minutes : minutes);
}

std::optional<std::string> unescaped(std::string_view text)
{
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == ',' || text[i] == ';')
            return {};
        if (text[i] == '\\') {
            if (++i == text.size() || (text[i] != '\\' && text[i] != ',' && text[i] != ';' && text[i] != 'n'))
                return {};
        }
        out += text[i];
    }
    return out;
}

class Reading {
public:
    explicit Reading(std::string_view file) { lines(file); }

    ReadCalendar take()
    {
        std::size_t at = 0;
        const auto whole = m_lines.empty() ? std::nullopt : component(at);
        if (!whole || at != m_lines.size() || whole->name != "VCALENDAR")
            fault("want one VCALENDAR and nothing else");
        if (whole && m_out.faults.empty())
            calendar(*whole);
        return std::move(m_out);
    }

private:
    void fault(const std::string& text) { m_out.faults.push_back(text); }

    void lines(std::string_view file)
    {
        while (!file.empty()) {
            const auto end = file.find("\r\n");
            const std::string_view line = file.substr(0, end);
            if (end == std::string_view::npos)
                return fault("a line without CRLF");
            if (line.size() > 75)
                fault("a line of more than 75 octets");
            if (line.empty())
                fault("an empty line");
            if (line.find_first_of("\r\n") != std::string_view::npos)
                fault("a bare CR or LF");
            if (!recovery::isUtf8(line))
                fault("a character that is cut in two");
            if (line.starts_with(' ') && !m_lines.empty())
                m_lines.back().append(line.substr(1));
            else
                m_lines.emplace_back(line);
            file.remove_prefix(end + 2);
        }
    }

    std::optional<Property> property(std::string_view line)
    {
        const auto colon = line.find(':');
        if (colon == std::string_view::npos) {
            fault("no colon");
            return {};
        }
        Property found;
        found.value = line.substr(colon + 1);
        std::string_view head = line.substr(0, colon);
        found.name = head.substr(0, head.find(';'));
        while (head.find(';') != std::string_view::npos) {
            head.remove_prefix(head.find(';') + 1);
            const std::string_view parameter = head.substr(0, head.find(';'));
            const auto equals = parameter.find('=');
            if (equals == std::string_view::npos || equals + 1 == parameter.size()) {
                fault("a parameter without a value");
                return {};
            }
            found.parameters.emplace(parameter.substr(0, equals), parameter.substr(equals + 1));
        }
        return found;
    }

    std::optional<Component> component(std::size_t& at)
    {
        const auto begin = property(m_lines[at++]);
        if (!begin || begin->name != "BEGIN" || !rules.contains(begin->value)) {
            fault("want a BEGIN that is known");
            return {};
        }
        Component made{begin->value, {}, {}};
        while (at < m_lines.size()) {
            const auto next = property(m_lines[at]);
            if (!next)
                return {};
            if (next->name == "BEGIN") {
                auto part = component(at);
                if (!part)
                    return {};
                made.parts.push_back(std::move(*part));
                continue;
            }
            ++at;
            if (next->name == "END") {
                if (next->value != made.name)
                    fault("END of another component");
                check(made);
                return made;
            }
            made.properties.push_back(*next);
        }
        fault("no END");
        return {};
    }

    void check(const Component& made)
    {
        const Rule& rule = rules.at(made.name);
        for (const std::string& name : rule.must)
            if (!made.find(name))
                fault(made.name + " without " + name);
        std::set<std::string> seen;
        for (const Property& property : made.properties) {
            if (!seen.insert(property.name).second)
                fault(made.name + ": " + property.name + " twice");
            if (!rule.must.contains(property.name) && !rule.may.contains(property.name))
                fault(made.name + ": unknown " + property.name);
        }
        for (const Component& part : made.parts)
            if (!rule.parts.contains(part.name))
                fault(made.name + ": no place for " + part.name);
        if (made.name == "VTIMEZONE" && made.parts.empty())
            fault("VTIMEZONE without an observance");
    }

    void calendar(const Component& whole)
    {
        if (whole.find("VERSION")->value != "2.0")
            fault("version");
        for (const Component& part : whole.parts)
            if (part.name == "VTIMEZONE")
                zone(part);
        std::set<std::string> uids;
        for (const Component& part : whole.parts)
            if (part.name == "VEVENT") {
                event(part);
                if (!m_out.events.empty() && !uids.insert(m_out.events.back().uid).second)
                    fault("a UID twice");
            }
        if (m_out.events.empty())
            fault("a calendar without an event");
    }

    void zone(const Component& part)
    {
        CalendarZone made;
        for (const Component& observance : part.parts) {
            const auto starts = dateTime(observance.find("DTSTART")->value);
            const auto before = offset(observance.find("TZOFFSETFROM")->value);
            const auto after = offset(observance.find("TZOFFSETTO")->value);
            if (!starts || !before || !after || !observance.find("DTSTART")->parameters.empty())
                return fault("an observance that cannot be read");
            made.observances.push_back({*starts, *before, *after});
        }
        if (!m_out.zones.emplace(part.find("TZID")->value, made).second)
            fault("a zone twice");
    }

    void event(const Component& part)
    {
        ReadEvent made;
        made.uid = part.find("UID")->value;
        const std::string& stamp = part.find("DTSTAMP")->value;
        if (!stamp.ends_with('Z') || !dateTime(std::string_view(stamp).substr(0, stamp.size() - 1)))
            fault("DTSTAMP is not in UTC");
        const Property& start = *part.find("DTSTART");
        made.inUtc = start.value.ends_with('Z');
        const auto local = dateTime(std::string_view(start.value).substr(0, start.value.size() - (made.inUtc ? 1 : 0)));
        if (!local)
            return fault("DTSTART cannot be read");
        const auto named = start.parameters.find("TZID");
        if (made.inUtc != (named == start.parameters.end()))
            return fault("DTSTART has both or neither of Z and TZID");
        if (made.inUtc) {
            made.at = clock::Instant{local->time_since_epoch()};
        } else {
            const auto zone = m_out.zones.find(named->second);
            if (zone == m_out.zones.end())
                return fault("a TZID without its VTIMEZONE");
            made.at = zone->second.instantOf(*local);
        }
        if (const Property* sequence = part.find("SEQUENCE")) {
            // A whole number from 0, section 3.8.7.4.
            if (sequence->value.empty() || sequence->value.size() > 9 || sequence->value.find_first_not_of("0123456789") != std::string::npos)
                fault("SEQUENCE");
            else
                made.sequence = std::stoi(sequence->value);
        }
        if (const Property* duration = part.find("DURATION"); duration && duration->value != "PT15M")
            fault("DURATION");
        if (const Property* summary = part.find("SUMMARY")) {
            const auto text = unescaped(summary->value);
            if (!text)
                fault("SUMMARY is not escaped");
            else
                made.summary = *text;
        }
        for (const Component& alarm : part.parts) {
            ++made.alarms;
            if (alarm.find("ACTION")->value != "DISPLAY" || alarm.find("TRIGGER")->value != "PT0S")
                fault("VALARM");
        }
        m_out.events.push_back(made);
    }

    std::vector<std::string> m_lines;
    ReadCalendar m_out;
};

}  // namespace

clock::Instant CalendarZone::instantOf(LocalSeconds local) const
{
    const Observance* in = nullptr;
    for (const Observance& each : observances) {
        // The clocks changed when the old clock showed `starts`; a time the change skips is read with the
        // offset before it, one that comes twice with the same: section 3.3.5.
        const auto shown = each.offset > each.before ? each.starts + (each.offset - each.before) : each.starts;
        if (shown <= local && (!in || each.starts > in->starts))
            in = &each;
    }
    const auto used = in ? in->offset : observances.front().before;
    return clock::Instant{local.time_since_epoch() - used};
}

ReadCalendar readStrictly(std::string_view file) { return Reading(file).take(); }

}  // namespace ebbline::test
