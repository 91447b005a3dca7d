#include "core/exchange/calendar.h"

#include "core/aftercare/zone_spans.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>

namespace ebbline::exchange {

namespace {

constexpr std::size_t longestLine = 75;  // octets, RFC 5545 section 3.1
constexpr std::chrono::hours spare{24};  // the zone is described a little further than needed

/// Adds content lines, folded between characters.
class Lines {
public:
    void add(std::string_view line)
    {
        std::size_t room = longestLine;
        while (line.size() > room) {
            std::size_t cut = room;
            while (cut > 1 && (static_cast<unsigned char>(line[cut]) & 0xc0) == 0x80)
                --cut;
            m_out.append(line.substr(0, cut)).append("\r\n ");
            line.remove_prefix(cut);
            room = longestLine - 1;
        }
        m_out.append(line).append("\r\n");
    }
    std::string take() && { return std::move(m_out); }

private:
    std::string m_out;
};

/// A text value, RFC 5545 section 3.3.11.
std::string escaped(std::string_view text)
{
    std::string out;
    for (const char c : text) {
        if (c == '\\' || c == ';' || c == ',')
            out += '\\';
        out += c;
    }
    return out;
}

std::string digits(std::chrono::milliseconds sinceEpoch)
{
    const auto seconds = std::chrono::floor<std::chrono::seconds>(sinceEpoch);
    const auto day = std::chrono::floor<std::chrono::days>(seconds);
    const std::chrono::year_month_day date{std::chrono::sys_days{day}};
    const std::chrono::hh_mm_ss time{seconds - day};
    char text[32];
    std::snprintf(text, sizeof text, "%04d%02u%02uT%02d%02d%02d", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                  static_cast<int>(time.hours().count()), static_cast<int>(time.minutes().count()),
                  static_cast<int>(time.seconds().count()));
    return text;
}

std::string utc(clock::Instant at) { return digits(at.time_since_epoch()) + "Z"; }

std::string offsetText(std::chrono::minutes offset)
{
    const auto minutes = std::abs(offset.count());
    char text[16];
    std::snprintf(text, sizeof text, "%c%02d%02d", offset.count() < 0 ? '-' : '+', static_cast<int>(minutes / 60),
                  static_cast<int>(minutes % 60));
    return text;
}

void addZone(Lines& lines, const aftercare::Zone& zone, clock::Instant from, clock::Instant to)
{
    lines.add("BEGIN:VTIMEZONE");
    lines.add("TZID:" + zone.name());
    for (const aftercare::ZoneSpan& span : aftercare::spansOf(zone, from - spare, to + spare)) {
        const char* kind = span.summer ? "DAYLIGHT" : "STANDARD";
        lines.add(std::string("BEGIN:") + kind);
        // The wall clock as it stood when it was changed, section 3.6.5.
        lines.add("DTSTART:" + digits(span.from.time_since_epoch() + span.before));
        lines.add("TZOFFSETFROM:" + offsetText(span.before));
        lines.add("TZOFFSETTO:" + offsetText(span.offset));
        lines.add("TZNAME:" + escaped(span.name));
        lines.add(std::string("END:") + kind);
    }
    lines.add("END:VTIMEZONE");
}

bool isShownTwice(const aftercare::Zone& zone, clock::Instant at)
{
    const auto local = at.time_since_epoch() + zone.moment(at).offset;
    for (const auto beside : {-spare, spare}) {
        const auto offset = zone.moment(at + beside).offset;
        const clock::Instant other{local - offset};
        if (other != at && zone.moment(other).offset == offset)
            return true;
    }
    return false;
}

/// Local time with its zone, so that a calendar keeps the wall clock; in UTC where the wall clock shows that
/// time twice: section 3.3.5 means the first of the two, and readers take the second.
std::string startOf(const aftercare::Zone& zone, clock::Instant at)
{
    return isShownTwice(zone, at) ? "DTSTART:" + utc(at)
                                  : "DTSTART;TZID=" + zone.name() + ":" + digits(at.time_since_epoch() + zone.moment(at).offset);
}

bool isUid(const std::string& uid)
{
    return uid.size() >= 8 && uid.size() <= 64
           && uid.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == std::string::npos;
}

bool isPlain(std::string_view text)
{
    return !text.empty() && std::none_of(text.begin(), text.end(), [](char c) {
        return static_cast<unsigned char>(c) < 0x20 || c == 0x7f;
    });
}

}  // namespace

Result<std::string> writeCalendar(const std::vector<CalendarEvent>& events, const aftercare::Zone& zone,
                                  const CalendarWords& words, clock::Instant stamp, std::size_t changes)
{
    if (events.empty())
        return fail(Reason::notEnough, "calendar: there is no event");
    if (!isPlain(words.summary) || !isPlain(words.language))
        return fail(Reason::malformed, "calendar: words without control characters are wanted");
    clock::Instant first = events.front().at;
    clock::Instant last = first;
    for (const CalendarEvent& event : events) {
        if (!isUid(event.uid))
            return fail(Reason::malformed, "calendar: want a uid of 8..64 letters, digits and dashes");
        first = std::min(first, event.at);
        last = std::max(last, event.at);
    }
    Lines lines;
    lines.add("BEGIN:VCALENDAR");
    lines.add("VERSION:2.0");
    lines.add("PRODID:-//Ebbline//Diary//EN");
    lines.add("CALSCALE:GREGORIAN");
    addZone(lines, zone, first, last);
    for (const CalendarEvent& event : events) {
        lines.add("BEGIN:VEVENT");
        lines.add("UID:" + event.uid);
        lines.add("DTSTAMP:" + utc(stamp));
        lines.add(startOf(zone, event.at));
        lines.add("SEQUENCE:" + std::to_string(changes));
        lines.add("DURATION:PT15M");
        lines.add("SUMMARY;LANGUAGE=" + words.language + ":" + escaped(words.summary));
        lines.add("CLASS:PRIVATE");
        lines.add("TRANSP:TRANSPARENT");
        lines.add("BEGIN:VALARM");
        lines.add("ACTION:DISPLAY");
        lines.add("TRIGGER:PT0S");
        lines.add("DESCRIPTION;LANGUAGE=" + words.language + ":" + escaped(words.summary));
        lines.add("END:VALARM");
        lines.add("END:VEVENT");
    }
    lines.add("END:VCALENDAR");
    return std::move(lines).take();
}

}  // namespace ebbline::exchange
