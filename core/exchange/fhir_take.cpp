#include "core/exchange/fhir_take.h"

namespace ebbline::exchange::fhir {

void refuse(Reason reason, const std::string& detail)
{
    throw Refused{{reason, "bundle: " + detail}};
}

const Json& member(const Json& object, const char* name)
{
    if (!object.is_object())
        refuse(Reason::malformed, std::string("an object was expected around '") + name + "'");
    const auto found = object.find(name);
    if (found == object.end())
        refuse(Reason::malformed, std::string("'") + name + "' is missing");
    return *found;
}

const Json& arrayOf(const Json& object, const char* name)
{
    static const Json none = Json::array();
    if (!object.contains(name))
        return none;
    if (!object[name].is_array())
        refuse(Reason::malformed, std::string("'") + name + "' is no list");
    return object[name];
}

std::string textOf(const Json& object, const char* name)
{
    const Json& value = member(object, name);
    if (!value.is_string())
        refuse(Reason::malformed, std::string("'") + name + "' is no text");
    return value;
}

std::string textOrNone(const Json& object, const char* name)
{
    return object.contains(name) ? textOf(object, name) : std::string();
}

int wholeOf(const Json& value, std::string_view name)
{
    if (!value.is_number_integer())
        refuse(Reason::malformed, "'" + std::string(name) + "' is no whole number");
    if (value < -1'000'000'000 || value > 1'000'000'000)
        refuse(Reason::outOfRange, "'" + std::string(name) + "' is out of its bounds");
    return value;
}

std::string referenceOf(const Json& object, const char* name)
{
    return textOf(member(object, name), "reference");
}

int whole(const Json& resource, std::string_view name)
{
    const Json* value = extensionOf(resource, name, "valueInteger");
    if (value == nullptr)
        refuse(Reason::malformed, "the extension '" + std::string(name) + "' is missing");
    return wholeOf(*value, name);
}

double decimal(const Json& resource, std::string_view name)
{
    const Json* value = extensionOf(resource, name, "valueDecimal");
    if (value == nullptr || !value->is_number())
        refuse(Reason::malformed, "the extension '" + std::string(name) + "' is missing or no number");
    return *value;
}

bool flag(const Json& resource, std::string_view name)
{
    const Json* value = extensionOf(resource, name, "valueBoolean");
    if (value == nullptr || !value->is_boolean())
        refuse(Reason::malformed, "the extension '" + std::string(name) + "' is missing or neither true nor false");
    return *value;
}

std::string wordsOf(const Json& value, std::string_view name)
{
    if (!value.is_string())
        refuse(Reason::malformed, "the extension '" + std::string(name) + "' is no text");
    return value;
}

std::optional<clock::Moment> momentOf(const Json& resource, std::string_view name)
{
    std::optional<clock::Moment> moment;
    for (const Json& one : arrayOf(resource, "extension")) {
        if (textOf(one, "url") != ours(name))
            continue;
        if (moment)
            refuse(Reason::malformed, "the extension '" + std::string(name) + "' is there twice");
        moment = sound(need(takeMoment(one, "valueDateTime")));
    }
    return moment;
}

recovery::Stream streamOf(const std::string& link)
{
    const std::size_t first = link.find('.');
    const std::size_t second = link.find('.', first + 1);
    if (first == std::string::npos || second == std::string::npos)
        refuse(Reason::malformed, "a score names no symptom and side");
    return {need(recovery::symptomFromWord(std::string_view(link).substr(first + 1, second - first - 1))),
            need(recovery::sideFromWord(std::string_view(link).substr(second + 1)))};
}

clock::Moment sound(clock::Moment moment)
{
    constexpr std::size_t longestZone = 64;  // as records::check() has it
    if (moment.zone.size() > longestZone)
        refuse(Reason::tooLarge, "the name of a time zone is too long");
    return moment;
}

Json parsed(std::string_view json)
{
    constexpr std::size_t mostMembers = 200;
    std::vector<std::size_t> members;  // of the objects that are open, by depth
    const auto narrow = [&](int depth, Json::parse_event_t event, Json&) {
        const auto place = static_cast<std::size_t>(depth);
        if (members.size() <= place)
            members.resize(place + 1);
        if (event == Json::parse_event_t::object_start && members.size() > place + 1)
            members[place + 1] = 0;
        if (event == Json::parse_event_t::key && ++members[place] > mostMembers)
            refuse(Reason::malformed, "an object has more members than any resource has");
        return true;
    };
    return Json::parse(json, narrow, false);
}

}  // namespace ebbline::exchange::fhir
