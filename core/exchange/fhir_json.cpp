#include "core/exchange/fhir_json.h"

#include "core/bytes/text.h"
#include "core/clock/iso8601.h"

namespace ebbline::exchange::fhir {

std::string ours(std::string_view name)
{
    return "urn:ebbline:" + std::string(name);
}

std::string urlOf(bytes::View id)
{
    std::string hex = bytes::toHex(id);
    for (const std::size_t dash : {20u, 16u, 12u, 8u})
        hex.insert(dash, 1, '-');
    return "urn:uuid:" + hex;
}

Result<bytes::Array<16>> idFromUrl(const std::string& url)
{
    constexpr std::string_view start = "urn:uuid:";
    if (!url.starts_with(start) || url.size() != start.size() + 36)
        return fail(Reason::malformed, "bundle: a fullUrl is not urn:uuid: and a UUID");
    std::string hex = url.substr(start.size());
    for (const std::size_t dash : {23u, 18u, 13u, 8u}) {
        if (hex[dash] != '-')
            return fail(Reason::malformed, "bundle: a fullUrl is not urn:uuid: and a UUID");
        hex.erase(dash, 1);
    }
    const auto decoded = bytes::fromHex(hex);
    if (!decoded || decoded->size() != 16)
        return fail(Reason::malformed, "bundle: a fullUrl is not urn:uuid: and a UUID");
    bytes::Array<16> id{};
    std::copy(decoded->begin(), decoded->end(), id.begin());
    return id;
}

void putMoment(Json& resource, const std::string& name, const clock::Moment& moment)
{
    resource[name] = clock::toIso8601(moment);
    if (!moment.zone.empty())
        resource["_" + name] = {{"extension", Json::array({{{"url", zoneExtension}, {"valueCode", moment.zone}}})}};
}

Result<clock::Moment> takeMoment(const Json& resource, const std::string& name)
{
    const auto found = resource.find(name);
    if (found == resource.end() || !found->is_string())
        return fail(Reason::malformed, "bundle: '" + name + "' is missing or no text");
    auto moment = clock::parseIso8601(found->get_ref<const std::string&>());
    if (!moment)
        return fail(moment.error().reason, "bundle: '" + name + "': " + moment.error().detail);
    const auto beside = resource.find("_" + name);
    if (beside == resource.end() || !beside->is_object())
        return moment;
    const auto extensions = beside->find("extension");
    if (extensions == beside->end() || !extensions->is_array())
        return moment;
    for (const Json& one : *extensions) {
        if (one.is_object() && one.value("url", Json()) == zoneExtension && one.contains("valueCode") && one["valueCode"].is_string())
            moment->zone = one["valueCode"];
    }
    return moment;
}

Json codeable(std::string_view system, std::string_view code, std::string_view text)
{
    return {{"coding", Json::array({{{"system", system}, {"code", code}}})}, {"text", text}};
}

std::string_view sideText(recovery::Side side)
{
    return side == recovery::Side::left ? "the patient's left" : "the patient's right";
}

Json reference(std::string_view url)
{
    return {{"reference", url}};
}

Json extension(std::string_view name, const std::string& key, Json value)
{
    return {{"url", ours(name)}, {key, std::move(value)}};
}

const Json* extensionOf(const Json& resource, std::string_view name, const std::string& key)
{
    const auto extensions = resource.find("extension");
    if (extensions == resource.end() || !extensions->is_array())
        return nullptr;
    for (const Json& one : *extensions) {
        if (!one.is_object() || one.value("url", Json()) != ours(name))
            continue;
        const auto value = one.find(key);
        return value == one.end() ? nullptr : &*value;
    }
    return nullptr;
}

Json momentExtension(std::string_view name, const clock::Moment& moment)
{
    Json made;
    putMoment(made, "valueDateTime", moment);
    made["url"] = ours(name);
    return made;
}

std::string codeOf(const Json& given, std::string_view system)
{
    if (!given.is_object() || !given.contains("coding") || !given["coding"].is_array())
        return {};
    for (const Json& coding : given["coding"]) {
        if (coding.is_object() && coding.value("system", Json()) == system && coding.contains("code") && coding["code"].is_string())
            return coding["code"];
    }
    return {};
}

bool tooDeep(std::string_view json)
{
    int depth = 0;
    bool inText = false;
    for (std::size_t i = 0; i < json.size(); ++i) {
        if (json[i] == '"')
            inText = !inText;
        else if (inText && json[i] == '\\')
            ++i;
        else if (!inText)
            depth += json[i] == '{' || json[i] == '[' ? 1 : json[i] == '}' || json[i] == ']' ? -1 : 0;
        if (depth > 200)
            return true;
    }
    return false;
}

}  // namespace ebbline::exchange::fhir
