#include "core/exchange/gs1.h"

#include "core/recovery/treatment.h"

#include <algorithm>

namespace ebbline::exchange {

namespace {

constexpr char separator = '\x1d';
constexpr std::size_t longestValue = 20;
constexpr std::size_t articleDigits = 14;
constexpr std::size_t dateDigits = 6;

bool isDigit(char c) { return c >= '0' && c <= '9'; }

/// Printable ASCII without the space, and without brackets, which would be ambiguous in the printed form.
bool isValue(char c) { return c > ' ' && c <= '~' && c != '(' && c != ')'; }

bool allDigits(std::string_view text) { return std::all_of(text.begin(), text.end(), isDigit); }

int number(std::string_view digits)
{
    int value = 0;
    for (const char c : digits)
        value = 10 * value + (c - '0');
    return value;
}

Result<std::chrono::year_month_day> dateOf(std::string_view digits, std::chrono::year thisYear)
{
    using namespace std::chrono;
    const int now = static_cast<int>(thisYear);
    int full = now - now % 100 + number(digits.substr(0, 2));
    if (full - now > 50)
        full -= 100;
    else if (full - now < -49)
        full += 100;
    const year_month of = year{full} / month{static_cast<unsigned>(number(digits.substr(2, 2)))};
    const auto day = static_cast<unsigned>(number(digits.substr(4, 2)));
    const year_month_day date = day == 0 && of.month().ok() ? year_month_day{of / last} : of / std::chrono::day{day};
    if (!date.ok())
        return fail(Reason::malformed, "pack code: a day that does not exist");
    return date;
}

Done take(PackCode& code, std::string_view identifier, std::string_view value, std::chrono::year thisYear)
{
    const auto once = [&](auto& field, auto content) -> Done {
        if (field)
            return fail(Reason::malformed, "pack code: " + std::string(identifier) + " is given twice");
        field = std::move(content);
        return {};
    };
    if (identifier == "01") {
        if (value.size() != articleDigits || !allDigits(value))
            return fail(Reason::malformed, "pack code: 01 wants 14 digits");
        if (!recovery::isArticle(value))
            return fail(Reason::malformed, "pack code: the check digit of 01 is wrong");
        return once(code.article, std::string(value));
    }
    if (identifier == "17" || identifier == "11") {
        if (value.size() != dateDigits || !allDigits(value))
            return fail(Reason::malformed, "pack code: " + std::string(identifier) + " wants a date of 6 digits");
        const auto date = dateOf(value, thisYear);
        if (!date)
            return fail(date.error());
        return once(identifier == "17" ? code.expiry : code.produced, *date);
    }
    if (identifier == "10" || identifier == "21") {
        if (value.empty() || value.size() > longestValue || !std::all_of(value.begin(), value.end(), isValue))
            return fail(Reason::malformed, "pack code: " + std::string(identifier) + " wants 1 to 20 printable characters");
        return once(identifier == "10" ? code.lot : code.serial, std::string(value));
    }
    return fail(Reason::unsupported, "pack code: an identifier that is not known");
}

/// Takes one element off the front of the printed form: (01)0950...
Result<std::pair<std::string_view, std::string_view>> printedElement(std::string_view& rest)
{
    if (rest.size() < 4 || rest[0] != '(' || rest[3] != ')' || !allDigits(rest.substr(1, 2)))
        return fail(Reason::malformed, "pack code: want an identifier in brackets");
    const std::string_view identifier = rest.substr(1, 2);
    rest.remove_prefix(4);
    const std::string_view value = rest.substr(0, rest.find('('));
    rest.remove_prefix(value.size());
    return std::pair(identifier, value);
}

/// The same off what a scanner gives: fixed lengths run on, the others end with a separator.
Result<std::pair<std::string_view, std::string_view>> scannedElement(std::string_view& rest)
{
    if (rest.size() < 2 || !allDigits(rest.substr(0, 2)))
        return fail(Reason::malformed, "pack code: want an identifier of two digits");
    const std::string_view identifier = rest.substr(0, 2);
    rest.remove_prefix(2);
    const bool fixed = identifier == "01" || identifier == "11" || identifier == "17";
    const std::size_t length = fixed ? (identifier == "01" ? articleDigits : dateDigits) : std::min(rest.find(separator), rest.size());
    if (rest.size() < length)
        return fail(Reason::malformed, "pack code: it ends too early");
    const std::string_view value = rest.substr(0, length);
    rest.remove_prefix(length);
    if (rest.starts_with(separator)) {
        rest.remove_prefix(1);
        if (rest.empty())
            return fail(Reason::malformed, "pack code: nothing follows the separator");
    }
    return std::pair(identifier, value);
}

/// Which symbol it was read from, if the scanner tells: Data Matrix, QR, Code 128, DataBar.
std::string_view withoutSymbology(std::string_view text)
{
    for (const std::string_view symbology : {"]d2", "]Q3", "]C1", "]e0"})
        if (text.starts_with(symbology))
            return text.substr(symbology.size());
    return text;
}

}  // namespace

Result<PackCode> parsePackCode(std::string_view text, std::chrono::year thisYear)
{
    if (text.size() > longestPackCode)
        return fail(Reason::tooLarge, "pack code: longer than 120 characters");
    text = withoutSymbology(text);
    const bool printed = text.starts_with('(');
    PackCode code;
    while (!text.empty()) {
        const auto element = printed ? printedElement(text) : scannedElement(text);
        if (!element)
            return fail(element.error());
        if (const Done taken = take(code, element->first, element->second, thisYear); !taken)
            return fail(taken.error());
    }
    if (!code.article && !code.lot && !code.expiry)
        return fail(Reason::notEnough, "pack code: neither article nor lot nor expiry");
    return code;
}

Result<std::vector<PackCode>> readingsOf(std::string_view text, std::chrono::year thisYear)
{
    const auto plain = parsePackCode(text, thisYear);
    std::vector<PackCode> readings;
    if (plain)
        readings.push_back(*plain);
    const auto elements = withoutSymbology(text);
    if (text.size() > longestPackCode || elements.starts_with('(') || elements.find(separator) != std::string_view::npos)
        return plain ? Result<std::vector<PackCode>>(readings) : fail(plain.error());
    // Without a separator the first element of no fixed length takes all that follows: put one wherever it may be missing.
    auto rest = elements;
    std::string_view open;
    while (!rest.empty()) {
        const auto element = scannedElement(rest);
        if (!element)
            break;
        if (rest.empty() && (element->first == "10" || element->first == "21"))
            open = element->second;
    }
    for (std::size_t length = 1; length < open.size(); ++length) {
        auto parted = std::string(elements);
        parted.insert(parted.size() - open.size() + length, 1, separator);
        const auto other = parsePackCode(parted, thisYear);
        if (other && std::none_of(readings.begin(), readings.end(), [&](const PackCode& known) {
                return known.lot == other->lot && known.expiry == other->expiry; }))
            readings.push_back(*other);
    }
    return readings.empty() ? fail(plain.error()) : Result<std::vector<PackCode>>(readings);
}

}  // namespace ebbline::exchange
