#include "core/recovery/entry.h"

#include "core/recovery/utf8.h"

#include <algorithm>
#include <cmath>

namespace ebbline::recovery {

Result<Score> Score::of(int points)
{
    if (points < lowest || points > highest)
        return fail(Reason::outOfRange, "score: want 0..10");
    return Score(static_cast<std::uint8_t>(points));
}

Result<Temperature> Temperature::celsius(double degrees)
{
    if (!std::isfinite(degrees))
        return fail(Reason::notFinite, "temperature: want a number");
    if (degrees < lowestCelsius || degrees > highestCelsius)
        return fail(Reason::outOfRange, "temperature: want 30..45 degrees Celsius");
    return Temperature(degrees);
}

Result<Temperature> Temperature::fahrenheit(double degrees)
{
    return celsius((degrees - 32.0) * 5.0 / 9.0);
}

bool isUtf8(std::string_view text)
{
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    for (std::size_t i = 0; i < text.size();) {
        const unsigned first = byte(i);
        std::size_t length = 1;
        unsigned lowest = 0;
        unsigned value = first;
        if (first >= 0xf0 && first <= 0xf4) {
            length = 4;
            lowest = 0x10000;
            value = first & 0x07;
        } else if (first >= 0xe0 && first < 0xf0) {
            length = 3;
            lowest = 0x800;
            value = first & 0x0f;
        } else if (first >= 0xc2 && first < 0xe0) {
            length = 2;
            lowest = 0x80;
            value = first & 0x1f;
        } else if (first >= 0x80) {
            return false;
        }
        if (i + length > text.size())
            return false;
        for (std::size_t k = 1; k < length; ++k) {
            if ((byte(i + k) & 0xc0) != 0x80)
                return false;
            value = (value << 6) | (byte(i + k) & 0x3f);
        }
        const bool surrogate = value >= 0xd800 && value <= 0xdfff;
        if (value < lowest || value > 0x10ffff || surrogate)
            return false;
        i += length;
    }
    return true;
}

namespace {

template <typename T, std::size_t N>
bool known(const std::array<T, N>& all, T value)
{
    return std::find(all.begin(), all.end(), value) != all.end();
}

}  // namespace

Done check(const Stream& stream)
{
    if (!known(allSymptoms, stream.symptom))
        return fail(Reason::outOfRange, "symptom: unknown");
    if (stream.side != Side::left && stream.side != Side::right)
        return fail(Reason::outOfRange, "side: a score belongs to the left or the right");
    return {};
}

Done check(const Entry& entry)
{
    if (entry.id.isNull() || entry.course.isNull())
        return fail(Reason::malformed, "entry: its id or its course is missing");
    if (entry.at.at > entry.recordedAt.at + std::chrono::minutes(5))
        return fail(Reason::outOfRange, "at: it lies after the moment it was recorded");
    for (const auto& [stream, score] : entry.scores)
        if (const Done checked = check(stream); !checked)
            return checked;
    for (const auto& signs : {entry.present, entry.absent})
        for (const Sign sign : signs)
            if (!known(allSigns, sign))
                return fail(Reason::outOfRange, "sign: unknown");
    for (const Sign sign : entry.present)
        if (entry.absent.contains(sign))
            return fail(Reason::malformed, "sign: answered both yes and no");
    if (entry.note.size() > Entry::maximumNote)
        return fail(Reason::tooLarge, "note: longer than 2000 bytes");
    if (!isUtf8(entry.note))
        return fail(Reason::malformed, "note: not UTF-8");
    if (entry.scores.empty() && entry.present.empty() && entry.absent.empty() && !entry.temperature
        && entry.note.empty())
        return fail(Reason::notEnough, "entry: nothing is answered");
    return {};
}

}  // namespace ebbline::recovery
