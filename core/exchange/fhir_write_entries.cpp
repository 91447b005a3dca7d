// Of a bundle: entries and what was measured in them, corrections, and photographs.
#include "core/exchange/fhir_writer.h"

#include "core/exchange/picture_digest.h"

namespace ebbline::exchange::fhir {

void Writer::diaryEntry(const recovery::Entry& entry)
{
    const std::string url = urlOf(entry.id.view());
    Json response{{"resourceType", "QuestionnaireResponse"}};
    // When the entry speaks of; `authored` is when it was typed.
    response["extension"] = Json::array({momentExtension("about", entry.at)});
    response["questionnaire"] = questionnaireCanonical();
    response["status"] = "completed";
    response["subject"] = reference(m_patient);
    putMoment(response, "authored", entry.recordedAt);
    response["author"] = reference(m_patient);
    response["source"] = reference(m_patient);
    Json items = Json::array();
    const auto item = [&items](const std::string& link, const std::string& key, Json value) {
        items.push_back({{"linkId", link}, {"answer", Json::array({{{key, std::move(value)}}})}});
    };
    for (const auto& [stream, score] : entry.scores)
        item(linkOf(stream), "valueInteger", score.points());
    // In the order of the questionnaire: R4 wants it kept.
    for (const recovery::Sign sign : recovery::allSigns)
        if (const bool yes = entry.present.contains(sign); yes || entry.absent.contains(sign))
            item(linkOf(sign), "valueBoolean", yes);
    if (entry.temperature)
        item("temperature", "valueDecimal", entry.temperature->celsius());
    if (!entry.note.empty())
        item("note", "valueString", entry.note);
    if (!items.empty())
        response["item"] = std::move(items);
    add(std::move(response), url);
    for (const auto& [stream, score] : entry.scores)
        observation(entry, url, stream, score);
    if (entry.temperature)
        temperature(entry, url);
}

Json Writer::observed(const recovery::Entry& entry, std::string_view category, Json code) const
{
    Json made{{"resourceType", "Observation"}, {"status", "final"}};
    made["category"] =
        Json::array({codeable("http://terminology.hl7.org/CodeSystem/observation-category", category, category)});
    made["code"] = std::move(code);
    made["subject"] = reference(m_patient);
    putMoment(made, "effectiveDateTime", entry.at);
    made["performer"] = Json::array({reference(m_patient)});
    return made;
}

void Writer::observation(const recovery::Entry& entry, const std::string& from, const recovery::Stream& stream, const recovery::Score& score)
{
    const std::string_view word = recovery::word(stream.symptom);
    // The scale of pain as two published guides use it; nothing published was found for the others.
    const bool pain = stream.symptom == recovery::Symptom::pain;
    Json made = observed(entry, "survey", pain ? codeable(loinc, "72514-3", "Pain, 0 to 10") : codeable(ours("symptom"), word, std::string(word) + ", 0 to 10"));
    made["valueInteger"] = score.points();
    if (stream.side != recovery::Side::none)
        made["bodySite"] = codeable(ours("side"), recovery::word(stream.side), sideText(stream.side));
    made["derivedFrom"] = Json::array({reference(from)});
    const std::string url = nextUrl();
    m_measured.emplace(Measured{entry.id, stream}, url);
    add(std::move(made), url);
}

void Writer::temperature(const recovery::Entry& entry, const std::string& from)
{
    Json made = observed(entry, "vital-signs", codeable(loinc, "8310-5", "Body temperature"));
    made["valueQuantity"] = {{"value", entry.temperature->celsius()}, {"unit", "Cel"}, {"system", ucum}, {"code", "Cel"}};
    made["derivedFrom"] = Json::array({reference(from)});
    const std::string url = nextUrl();
    m_measured.emplace(Measured{entry.id, std::nullopt}, url);
    add(std::move(made), url);
}

void Writer::correction(const Correction& correction)
{
    Json made{{"resourceType", "Provenance"}};
    made["target"] = Json::array({reference(urlOf(correction.entry.view()))});
    putMoment(made, "recorded", correction.at);
    made["activity"] = codeable(dataOperation, "UPDATE", "The entry was corrected");
    made["activity"]["coding"].push_back({{"system", ours("activity")}, {"code", "correction"}});
    made["agent"] = Json::array({{{"type", codeable(participant, "author", "written by")}, {"who", reference(m_patient)}}});
    add(std::move(made), nextUrl());
}

void Writer::picture(const CoursePicture& picture)
{
    constexpr std::array poses{"front", "left side towards the camera", "right side towards the camera"};
    Json attachment{{"contentType", "image/jpeg"}};
    if (picture.picture) {
        if (!picture.picture->file.empty())
            attachment["url"] = picture.picture->file;
        attachment["size"] = picture.picture->size;
        attachment["hash"] = toBase64(picture.picture->sha1);
    }
    attachment["title"] = poses[static_cast<std::size_t>(picture.pose) - 1];
    Json made{{"resourceType", "DocumentReference"}};
    made["extension"] = Json::array({extension("pose", "valueInteger", static_cast<int>(picture.pose))});
    made["status"] = "current";
    made["type"] = codeable(loinc, "72170-4", "Photograph");
    made["subject"] = reference(m_patient);
    putMoment(made, "date", picture.at);
    made["author"] = Json::array({reference(m_patient)});
    made["content"] = Json::array({{{"attachment", std::move(attachment)}}});
    if (!picture.entry.isNull())
        made["context"] = {{"related", Json::array({reference(urlOf(picture.entry.view()))})}};
    add(std::move(made), urlOf(picture.photo.view()));
}

}  // namespace ebbline::exchange::fhir
