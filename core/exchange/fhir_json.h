#pragma once
/// \file
/// The pieces that a bundle's writer and reader share; inside of core/exchange only.

#include "core/exchange/fhir_bundle.h"

#include <nlohmann/json.hpp>

namespace ebbline::exchange::fhir {

using Json = nlohmann::ordered_json;

inline constexpr std::string_view loinc = "http://loinc.org";
inline constexpr std::string_view ucum = "http://unitsofmeasure.org";
inline constexpr std::string_view gs1 = "http://hl7.org/fhir/NamingSystem/gs1-di";
inline constexpr std::string_view consentScope = "http://terminology.hl7.org/CodeSystem/consentscope";
inline constexpr std::string_view dataOperation = "http://terminology.hl7.org/CodeSystem/v3-DataOperation";
inline constexpr std::string_view participant = "http://terminology.hl7.org/CodeSystem/provenance-participant-type";
inline constexpr std::string_view zoneExtension = "http://hl7.org/fhir/StructureDefinition/tz-code";

/// `urn:ebbline:` and a name.
std::string ours(std::string_view name);

/// An id as FHIR wants it in `fullUrl`: urn:uuid:8-4-4-4-12 hexadecimal digits.
std::string urlOf(bytes::View id);
/// \returns Reason::malformed.
Result<bytes::Array<16>> idFromUrl(const std::string& url);

/// `resource[name]` and, if the zone is known, the extension beside it.
void putMoment(Json& resource, const std::string& name, const clock::Moment& moment);
/// \returns Reason::malformed, naming the element.
Result<clock::Moment> takeMoment(const Json& resource, const std::string& name);

Json codeable(std::string_view system, std::string_view code, std::string_view text);
Json reference(std::string_view url);

/// A side in words that nobody takes for the reader's own: "the patient's left". \pre not Side::none.
std::string_view sideText(recovery::Side side);

/// An extension of ours with one value: key is valueInteger, valueDecimal, valueString, valueBoolean.
Json extension(std::string_view name, const std::string& key, Json value);
/// The same with a moment and its zone.
Json momentExtension(std::string_view name, const clock::Moment& moment);
/// The value of an extension of ours; null if it is not there.
const Json* extensionOf(const Json& resource, std::string_view name, const std::string& key);

/// The code that a CodeableConcept has in a system; empty: none.
std::string codeOf(const Json& given, std::string_view system);

/// The parser recurses; a document of brackets alone must not exhaust the stack.
bool tooDeep(std::string_view json);

}  // namespace ebbline::exchange::fhir
