#pragma once
/// \file
/// Numbers as text with a point before their decimals, whatever the locale of the process says: printf, strtod and their kin
/// follow LC_NUMERIC, which a program with windows takes from the system, and under a decimal comma wrote "38,2". What is
/// written here is compared, hashed and read by others, and must be the same on every machine. Words for people are the
/// views' own matter.

#include <string>
#include <string_view>

namespace ebbline::bytes {

/// `value` with exactly `places` decimals, to the nearest, and what lies half-way as printf does in the C locale: 38.2 with one
/// is "38.2". \pre 0 <= places <= 9, and `value` is finite and less than 1e15 in size.
std::string fixedDecimal(double value, int places);

/// The number that `text` begins with, "38.2 C" as 38.2; 0 if it begins with none. It reads a point and no comma.
double leadingDecimal(std::string_view text);

}  // namespace ebbline::bytes
