#include "core/clock/iso8601.h"

#include <cstdio>
#include <cstdlib>

namespace ebbline::clock {

namespace {

using std::chrono::days;
using std::chrono::hours;
using std::chrono::milliseconds;
using std::chrono::minutes;
using std::chrono::seconds;

/// Takes exactly `width` digits off the front.
bool takeDigits(std::string_view& text, std::size_t width, int& value)
{
    if (text.size() < width)
        return false;
    value = 0;
    for (std::size_t i = 0; i < width; ++i) {
        const char c = text[i];
        if (c < '0' || c > '9')
            return false;
        value = value * 10 + (c - '0');
    }
    text.remove_prefix(width);
    return true;
}

bool take(std::string_view& text, char wanted)
{
    if (text.empty() || text.front() != wanted)
        return false;
    text.remove_prefix(1);
    return true;
}

/// Decimals of a second, one to three digits, as milliseconds.
bool takeFraction(std::string_view& text, int& value)
{
    int digits = 0;
    value = 0;
    while (!text.empty() && text.front() >= '0' && text.front() <= '9') {
        if (++digits > 3)
            return false;
        value = value * 10 + (text.front() - '0');
        text.remove_prefix(1);
    }
    for (int i = digits; i < 3; ++i)
        value *= 10;
    return digits > 0;
}

bool takeOffset(std::string_view& text, int& sign, int& offsetHours, int& offsetMinutes)
{
    sign = 1;
    offsetHours = offsetMinutes = 0;
    if (take(text, 'Z'))
        return true;
    if (take(text, '-'))
        sign = -1;
    else if (!take(text, '+'))
        return false;
    if (!takeDigits(text, 2, offsetHours))
        return false;
    (void)take(text, ':');
    return takeDigits(text, 2, offsetMinutes);
}

std::string withMillis(const char* head, long long millis)
{
    if (millis == 0)
        return head;
    char tail[24];
    std::snprintf(tail, sizeof tail, ".%03lld", millis);
    return std::string(head) + tail;
}

/// The local date and time without an offset.
std::string dateTime(std::chrono::milliseconds sinceEpoch)
{
    const std::chrono::sys_time<milliseconds> local{sinceEpoch};
    const auto day = std::chrono::floor<days>(local);
    const std::chrono::year_month_day date{day};
    const std::chrono::hh_mm_ss<milliseconds> time{local - day};
    char head[64];
    std::snprintf(head, sizeof head, "%04d-%02u-%02uT%02d:%02d:%02d", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                  static_cast<int>(time.hours().count()), static_cast<int>(time.minutes().count()),
                  static_cast<int>(time.seconds().count()));
    return withMillis(head, static_cast<long long>(time.subseconds().count()));
}

}  // namespace

Result<Moment> parseIso8601(std::string_view text)
{
    int year = 0, month = 0, day = 0, hour = 0, minute = 0, second = 0, millis = 0;
    int sign = 1, offsetHours = 0, offsetMinutes = 0;
    std::string_view rest = text;

    bool shaped = takeDigits(rest, 4, year) && take(rest, '-') && takeDigits(rest, 2, month)
                  && take(rest, '-') && takeDigits(rest, 2, day) && (take(rest, 'T') || take(rest, ' '))
                  && takeDigits(rest, 2, hour) && take(rest, ':') && takeDigits(rest, 2, minute);
    if (shaped && take(rest, ':')) {
        shaped = takeDigits(rest, 2, second);
        if (shaped && take(rest, '.'))
            shaped = takeFraction(rest, millis);
    }
    if (!shaped || !takeOffset(rest, sign, offsetHours, offsetMinutes) || !rest.empty())
        return fail(Reason::malformed, "time: want a form like 2027-03-28T14:05:00+02:00");

    const std::chrono::year_month_day date{std::chrono::year{year},
                                           std::chrono::month{static_cast<unsigned>(month)},
                                           std::chrono::day{static_cast<unsigned>(day)}};
    if (!date.ok() || hour > 23 || minute > 59 || second > 59)
        return fail(Reason::outOfRange, "time: no such date or time of day");
    if (offsetMinutes > 59 || offsetHours * 60 + offsetMinutes > 14 * 60)
        return fail(Reason::outOfRange, "time: offset beyond 14 hours");

    const minutes offset{sign * (offsetHours * 60 + offsetMinutes)};
    const auto local = std::chrono::sys_days{date} + hours{hour} + minutes{minute} + seconds{second}
                       + milliseconds{millis};
    return Moment{Instant{local} - offset, offset, {}};
}

std::string toIso8601(const Moment& moment)
{
    const long long total = moment.offset.count();
    const long long size = std::llabs(total);
    char tail[48];
    std::snprintf(tail, sizeof tail, "%c%02lld:%02lld", total < 0 ? '-' : '+', size / 60, size % 60);
    return dateTime(moment.at.time_since_epoch() + moment.offset) + tail;
}

std::string toIso8601(Instant instant)
{
    return dateTime(instant.time_since_epoch()) + "Z";
}

std::string toIso8601(LocalDay day)
{
    return dateTime(day.time_since_epoch()).substr(0, 10);
}

std::string offsetText(const Moment& moment)
{
    const long long total = moment.offset.count();
    const long long size = std::llabs(total);
    if (size == 0)
        return "UTC";
    std::string text = (total < 0 ? "UTC-" : "UTC+") + std::to_string(size / 60);
    if (size % 60 != 0)
        text += (size % 60 < 10 ? ":0" : ":") + std::to_string(size % 60);
    return text;
}

}  // namespace ebbline::clock
