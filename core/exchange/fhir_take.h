#pragma once
/// \file
/// How a reader takes values out of a bundle that comes from outside: every one of these refuses what is not there or not of
/// its kind. Inside of core/exchange only.

#include "core/exchange/fhir_json.h"

namespace ebbline::exchange::fhir {

/// What went wrong inside the reader; never leaves readBundle().
struct Refused {
    Error error;
};

[[noreturn]] void refuse(Reason reason, const std::string& detail);

template <typename T>
T need(Result<T> result)
{
    if (!result)
        throw Refused{result.error()};
    return std::move(*result);
}

const Json& member(const Json& object, const char* name);
/// Empty where there is none.
const Json& arrayOf(const Json& object, const char* name);
std::string textOf(const Json& object, const char* name);
/// Empty where there is none.
std::string textOrNone(const Json& object, const char* name);
int wholeOf(const Json& value, std::string_view name);
/// What a Reference in `object` points at.
std::string referenceOf(const Json& object, const char* name);

// Of extensions of ours.
int whole(const Json& resource, std::string_view name);
double decimal(const Json& resource, std::string_view name);
bool flag(const Json& resource, std::string_view name);
std::string wordsOf(const Json& value, std::string_view name);
/// Empty where there is none; two of a name are refused.
std::optional<clock::Moment> momentOf(const Json& resource, std::string_view name);

/// A numbered word within its list; what it means is checked with the whole record.
template <typename E>
E choice(const Json& resource, std::string_view name, int lowest, int highest)
{
    const int number = whole(resource, name);
    if (number < lowest || number > highest)
        refuse(Reason::outOfRange, "the extension '" + std::string(name) + "' is out of its list");
    return static_cast<E>(number);
}

recovery::Stream streamOf(const std::string& link);

/// A time whose zone has a name as long as names of zones are.
clock::Moment sound(clock::Moment moment);

/// The library looks through all members of an object for each new one: wider objects than any resource of ours are refused
/// (throws, as refuse()). \returns a discarded value for what is no JSON
Json parsed(std::string_view json);

}  // namespace ebbline::exchange::fhir
