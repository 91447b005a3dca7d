// Of a bundle: the treatment, its threads, and what was agreed to.
#include "core/exchange/fhir_writer.h"

namespace ebbline::exchange::fhir {

namespace {

Json siteOf(const recovery::Placement& placement)
{
    const std::string zone(recovery::word(placement.zone));
    if (placement.side == recovery::Side::none)
        return codeable(ours("site"), zone, zone);
    return codeable(ours("site"), zone + "-" + std::string(recovery::word(placement.side)), zone + ", " + std::string(sideText(placement.side)));
}

/// Where a thread lies, or was to lie, and which one it is.
Json threadOf(const recovery::Placement& placement)
{
    Json said = Json::array({
        extension("side", "valueInteger", static_cast<int>(placement.side)),
        extension("zone", "valueInteger", static_cast<int>(placement.zone)),
        extension("view", "valueInteger", static_cast<int>(placement.view)),
        extension("entry-x", "valueDecimal", placement.entry.x),
        extension("entry-y", "valueDecimal", placement.entry.y),
        extension("end-x", "valueDecimal", placement.end.x),
        extension("end-y", "valueDecimal", placement.end.y),
        extension("ending", "valueInteger", static_cast<int>(placement.ending)),
        extension("material", "valueInteger", static_cast<int>(placement.material)),
        extension("form", "valueInteger", static_cast<int>(placement.form)),
    });
    if (placement.instrument)
        said.push_back(extension("instrument", "valueInteger", static_cast<int>(*placement.instrument)));
    return said;
}

Json typeOf(const recovery::Placement& placement)
{
    return codeable(ours("thread"), recovery::word(placement.material),
                    std::string(recovery::word(placement.material)) + " thread, " + std::string(recovery::word(placement.form)));
}

}  // namespace

void Writer::procedure()
{
    // Kept apart until it is whole: a member that is added moves those that are there.
    Json extensions = Json::array();
    Json procedure{{"resourceType", "Procedure"}, {"status", "completed"}};
    procedure["code"] = codeable(ours("procedure"), "thread-lift", "Lift with absorbable threads");
    procedure["subject"] = reference(m_patient);
    putMoment(procedure, "performedDateTime", m_record.treated);
    for (const auto& [stream, score] : m_record.baseline)
        extensions.push_back(extension("baseline." + linkOf(stream), "valueInteger", score.points()));
    if (m_record.treatment)
        recorded(*m_record.treatment, procedure, extensions);
    if (!extensions.empty())
        procedure["extension"] = std::move(extensions);
    add(std::move(procedure), ownUrl(m_record.course.view()));
    if (m_record.treatment) {
        for (const recovery::Placement& planned : m_record.treatment->planned)
            request(planned);
        consents(*m_record.treatment);
    }
}

/// The clinic's own record of what was done.
void Writer::recorded(const recovery::Treatment& treatment, Json& procedure, Json& extensions)
{
    const recovery::Anaesthetic& given = treatment.anaesthetic;
    extensions.push_back(extension("drug", "valueInteger", static_cast<int>(given.drug)));
    extensions.push_back(extension("percent", "valueDecimal", given.percent));
    extensions.push_back(extension("epinephrine-one-in", "valueInteger", given.epinephrineOneIn));
    extensions.push_back(extension("bicarbonate-part", "valueDecimal", given.bicarbonatePart));
    extensions.push_back(extension("extra-ml", "valueDecimal", given.extraMl));
    if (treatment.otherwiseMg)
        extensions.push_back(extension("otherwise-mg", "valueDecimal", *treatment.otherwiseMg));
    if (treatment.weightKg)
        extensions.push_back(extension("weight-kg", "valueDecimal", *treatment.weightKg));
    extensions.push_back(extension("dressings", "valueBoolean", treatment.dressings));
    extensions.push_back(extension("cautions-given", "valueBoolean", treatment.cautionsGiven));
    extensions.push_back(extension("consent-given", "valueBoolean", treatment.consentGiven));
    extensions.push_back(extension("learning-consent", "valueBoolean", treatment.learningConsent));
    if (!treatment.placedBy.empty()) {
        extensions.push_back(extension("placed-by", "valueString", treatment.placedBy));
        procedure["performer"] = Json::array({{{"actor", {{"display", treatment.placedBy}}}}});
    }
    Json sites = Json::array();
    Json devices = Json::array();
    for (const recovery::Placement& placement : treatment.placements) {
        const Json coded = siteOf(placement);
        if (std::find(sites.begin(), sites.end(), coded) == sites.end())
            sites.push_back(coded);
        devices.push_back({{"manipulated", reference(device(placement))}});
    }
    if (!sites.empty()) {
        procedure["bodySite"] = std::move(sites);
        procedure["focalDevice"] = std::move(devices);
    }
    if (!treatment.note.empty())
        procedure["note"] = Json::array({{{"text", treatment.note}}});
}

std::string Writer::device(const recovery::Placement& placement)
{
    Json device{{"resourceType", "Device"}};
    device["extension"] = threadOf(placement);
    device["extension"].push_back(extension("anaesthetic-ml", "valueDecimal", placement.anaestheticMl));
    if (placement.redone) {
        device["extension"].push_back(extension("redone", "valueInteger", static_cast<int>(placement.redone->how)));
        device["extension"].push_back(extension("redone-reason", "valueString", placement.redone->reason));
    }
    if (placement.epinephrineAt)
        device["extension"].push_back(extension("epinephrine-at", "valueInteger", static_cast<int>(*placement.epinephrineAt)));
    if (placement.expiry)
        device["expirationDate"] = *placement.expiry;
    if (!placement.lot.empty())
        device["lotNumber"] = placement.lot;
    if (placement.article)
        device["udiCarrier"] = Json::array({{{"deviceIdentifier", *placement.article}, {"issuer", gs1}}});
    device["type"] = typeOf(placement);
    device["patient"] = reference(m_patient);
    device["property"] = Json::array(
        {{{"type", {{"text", "length"}}},
          {"valueQuantity", Json::array({{{"value", placement.lengthMm}, {"unit", "mm"}, {"system", ucum}, {"code", "mm"}}})}},
         {{"type", {{"text", "needle or cannula gauge"}}},
          {"valueQuantity", Json::array({{{"value", placement.gauge}, {"unit", "G"}}})}}});
    if (placement.instrumentLengthMm)
        device["property"].push_back(
            {{"type", {{"text", "needle or cannula length"}}},
             {"valueQuantity", Json::array({{{"value", *placement.instrumentLengthMm}, {"unit", "mm"}, {"system", ucum}, {"code", "mm"}}})}});
    const std::string url = nextUrl();
    add(std::move(device), url);
    // Which thread lies where: the procedure lists sites and threads, and not which belongs to which.
    Json use{{"resourceType", "DeviceUseStatement"}, {"status", "active"}};
    use["subject"] = reference(m_patient);
    putMoment(use, "timingDateTime", m_record.treated);
    use["device"] = reference(url);
    use["bodySite"] = siteOf(placement);
    add(std::move(use), nextUrl());
    return url;
}

/// A thread of the plan: in the order of the plan, and of no pack yet.
void Writer::request(const recovery::Placement& planned)
{
    Json request{{"resourceType", "DeviceRequest"}, {"status", "completed"}, {"intent", "plan"}};
    request["extension"] = threadOf(planned);
    request["extension"].push_back(extension("length-mm", "valueInteger", planned.lengthMm));
    request["extension"].push_back(extension("gauge", "valueInteger", planned.gauge));
    if (planned.instrumentLengthMm)
        request["extension"].push_back(extension("instrument-length-mm", "valueInteger", *planned.instrumentLengthMm));
    request["codeCodeableConcept"] = typeOf(planned);
    request["subject"] = reference(m_patient);
    add(std::move(request), nextUrl());
}

/// Only what was agreed to: where the record does not say so, nobody knows that it was refused.
void Writer::consents(const recovery::Treatment& treatment)
{
    if (treatment.consentGiven)
        consent(codeable(consentScope, "treatment", "Treatment"), "treatment", "Agreed to the treatment");
    if (treatment.learningConsent)
        consent(codeable(ours("consent"), "learning", "Learning"), "learning", "Agreed that the course may teach the clinic's expected range");
}

void Writer::consent(Json scope, std::string_view what, std::string_view text)
{
    Json made{{"resourceType", "Consent"}, {"status", "active"}, {"scope", std::move(scope)}};
    made["category"] = Json::array({codeable(ours("consent"), what, text), codeable(loinc, "59284-0", "Patient Consent")});
    made["patient"] = reference(m_patient);
    // The record of the treatment says that it was given, and not at which moment before.
    putMoment(made, "dateTime", m_record.treated);
    made["policyRule"] = {{"text", "As the clinic recorded it with the treatment"}};
    add(std::move(made), nextUrl());
}

}  // namespace ebbline::exchange::fhir
