#pragma once
/// \file
/// The code on a pack of threads: GS1 element strings as a scanner types them or as they are printed, read
/// strictly, because they come from outside. Source: GS1 General Specifications, section 3 (application
/// identifiers) and 7.9 (check digit), from memory.
///
///     ]d201095060001343521729063010TH-4417<GS>21A17     with or without the symbology identifier
///     (01)09506000134352(17)290630(10)TH-4417(21)A17
///
/// Known identifiers: 01 (article, 14 digits, check digit), 17 (expiry, YYMMDD), 11 (production, YYMMDD),
/// 10 (lot, up to 20 characters), 21 (serial, up to 20). Each at most once. Anything else is refused.

#include "core/clock/instant.h"
#include "core/result/result.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ebbline::exchange {

struct PackCode {
    std::optional<std::string> article;  ///< GTIN, 14 digits
    std::optional<std::string> lot;
    std::optional<std::string> serial;
    std::optional<std::chrono::year_month_day> expiry;  ///< day 00 means the last day of the month
    std::optional<std::chrono::year_month_day> produced;
    bool operator==(const PackCode&) const = default;
};

inline constexpr std::size_t longestPackCode = 120;  ///< bytes

/// `thisYear` settles the century: a year at most 50 ahead or 49 behind (section 7.12).
/// \returns Reason::malformed for what is no such code, a check digit that is wrong, a day that does not
///          exist or an identifier given twice; Reason::unsupported for an identifier that is not known;
///          Reason::tooLarge over longestPackCode; Reason::notEnough without lot and expiry and article.
Result<PackCode> parsePackCode(std::string_view text, std::chrono::year thisYear);

/// Every way to read a code, for a scanner or keyboard may swallow the separator, and then a lot runs on into what
/// follows it: `10TH-4421A17` may be the lot TH-4421A17, or the lot TH-44 with the serial A17. One reading if the code
/// has brackets or a separator, or can mean one thing only; else as it stands first, to be asked about.
/// \returns at least one reading, or the error of parsePackCode.
Result<std::vector<PackCode>> readingsOf(std::string_view text, std::chrono::year thisYear);

}  // namespace ebbline::exchange
