// Of a bundle: the treatment, its threads, and what was agreed to.
#include "core/exchange/fhir_reader.h"

namespace ebbline::exchange::fhir {

void Reader::procedure(const Json& resource)
{
    if (m_treated)
        refuse(Reason::malformed, "there are two treatments in it");
    speaksOf(resource, "subject");
    m_record.treated = sound(need(takeMoment(resource, "performedDateTime")));
    m_treated = true;
    for (const Json& one : arrayOf(resource, "extension")) {
        const std::string url = textOf(one, "url");
        const std::string start = ours("baseline.");
        if (url.starts_with(start))
            m_record.baseline.insert_or_assign(streamOf(url.substr(start.size())),
                                               need(recovery::Score::of(wholeOf(member(one, "valueInteger"), "baseline"))));
    }
    if (extensionOf(resource, "drug", "valueInteger") == nullptr)
        return;
    recovery::Treatment treatment;
    treatment.course = m_record.course;
    treatment.at = m_record.treated;
    treatment.anaesthetic.drug = choice<recovery::Drug>(resource, "drug", 1, 2);
    treatment.anaesthetic.percent = decimal(resource, "percent");
    treatment.anaesthetic.epinephrineOneIn = whole(resource, "epinephrine-one-in");
    treatment.anaesthetic.bicarbonatePart = decimal(resource, "bicarbonate-part");
    treatment.anaesthetic.extraMl = decimal(resource, "extra-ml");
    for (const auto& [name, value] : {std::pair{"otherwise-mg", &treatment.otherwiseMg}, std::pair{"weight-kg", &treatment.weightKg}})
        if (extensionOf(resource, name, "valueDecimal") != nullptr)
            *value = decimal(resource, name);
    treatment.dressings = flag(resource, "dressings");
    treatment.cautionsGiven = flag(resource, "cautions-given");
    treatment.consentGiven = flag(resource, "consent-given");
    treatment.learningConsent = flag(resource, "learning-consent");
    if (const Json* name = extensionOf(resource, "placed-by", "valueString"))
        treatment.placedBy = wordsOf(*name, "placed-by");
    for (const Json& one : arrayOf(resource, "focalDevice"))
        m_placed.push_back(referenceOf(one, "manipulated"));
    for (const Json& note : arrayOf(resource, "note"))
        treatment.note += textOf(note, "text");
    m_record.treatment = std::move(treatment);
}

/// What a thread of the plan says as well.
recovery::Placement Reader::thread(const Json& resource)
{
    recovery::Placement placement;
    placement.side = choice<recovery::Side>(resource, "side", 0, 2);
    placement.zone = choice<recovery::Zone>(resource, "zone", 1, 9);
    placement.view = choice<recovery::ChartView>(resource, "view", 1, 3);
    placement.entry = {decimal(resource, "entry-x"), decimal(resource, "entry-y")};
    placement.end = {decimal(resource, "end-x"), decimal(resource, "end-y")};
    placement.ending = choice<recovery::Ending>(resource, "ending", 1, 2);
    placement.material = choice<recovery::Material>(resource, "material", 1, 5);
    placement.form = choice<recovery::Form>(resource, "form", 1, 6);
    if (extensionOf(resource, "instrument", "valueInteger") != nullptr)
        placement.instrument = choice<recovery::Instrument>(resource, "instrument", 1, 2);
    return placement;
}

recovery::Placement Reader::request(const Json& resource)
{
    recovery::Placement planned = thread(resource);
    planned.lengthMm = whole(resource, "length-mm");
    planned.gauge = whole(resource, "gauge");
    if (extensionOf(resource, "instrument-length-mm", "valueInteger") != nullptr)
        planned.instrumentLengthMm = whole(resource, "instrument-length-mm");
    return planned;
}

recovery::Placement Reader::device(const Json& resource)
{
    recovery::Placement placement = thread(resource);
    placement.anaestheticMl = decimal(resource, "anaesthetic-ml");
    const Json* how = extensionOf(resource, "redone", "valueInteger");
    const Json* why = extensionOf(resource, "redone-reason", "valueString");
    if ((how == nullptr) != (why == nullptr))
        refuse(Reason::malformed, "a thread that was redone lacks how or why");
    if (why != nullptr)
        placement.redone = recovery::Redone{choice<recovery::Redoing>(resource, "redone", 1, 2), wordsOf(*why, "redone-reason")};
    if (extensionOf(resource, "epinephrine-at", "valueInteger") != nullptr)
        placement.epinephrineAt = choice<recovery::EpinephrineAt>(resource, "epinephrine-at", 1, 4);
    placement.lot = textOrNone(resource, "lotNumber");
    for (const Json& carrier : arrayOf(resource, "udiCarrier")) {
        if (placement.article || textOf(carrier, "issuer") != gs1)
            refuse(Reason::malformed, "a thread is of two products, or its product has no number of the kind that is read");
        placement.article = textOf(carrier, "deviceIdentifier");
    }
    if (resource.contains("expirationDate"))
        placement.expiry = textOf(resource, "expirationDate");
    for (const Json& property : arrayOf(resource, "property")) {
        const std::string name = textOf(member(property, "type"), "text");
        const Json& values = arrayOf(property, "valueQuantity");
        if (values.empty())
            refuse(Reason::malformed, "a property of a thread has no value");
        const int value = wholeOf(member(values[0], "value"), name);
        if (name == "length")
            placement.lengthMm = value;
        else if (name == "needle or cannula gauge")
            placement.gauge = value;
        else if (name == "needle or cannula length")
            placement.instrumentLengthMm = value;
    }
    return placement;
}

/// It says what the treatment says as well, so it is held against that and not read.
void Reader::consent(const Json& resource)
{
    for (const Json& category : arrayOf(resource, "category")) {
        const std::string what = codeOf(category, ours("consent"));
        if (what != "treatment" && what != "learning")
            continue;
        speaksOf(resource, "patient");
        if (textOf(resource, "status") != "active")
            refuse(Reason::malformed, "a consent is not one that stands");
        if (!m_consents.insert(what).second)
            refuse(Reason::malformed, "a consent is there twice");
    }
}

}  // namespace ebbline::exchange::fhir
