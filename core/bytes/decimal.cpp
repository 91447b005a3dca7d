#include "core/bytes/decimal.h"

#include <array>
#include <charconv>

namespace ebbline::bytes {

std::string fixedDecimal(double value, int places)
{
    std::array<char, 32> text{};  // a sign, 15 digits, a point and 9 decimals
    const auto written = std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed, places);
    return {text.data(), written.ptr};
}

double leadingDecimal(std::string_view text)
{
    double value = 0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

}  // namespace ebbline::bytes
