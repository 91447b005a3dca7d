// Writes a course as a bundle.
#include "core/exchange/fhir_json.h"

#include "core/bytes/text.h"
#include "core/clock/iso8601.h"

namespace ebbline::exchange {

namespace {

using namespace fhir;

std::string sided(std::string_view word, recovery::Side side)
{
    return std::string(word) + (side == recovery::Side::none ? "" : "-" + std::string(recovery::word(side)));
}

std::string linkOf(const recovery::Stream& stream)
{
    return "score." + std::string(recovery::word(stream.symptom)) + "." + std::string(recovery::word(stream.side));
}

/// high: an emergency, or a call now.
std::string_view severityOf(recovery::Urgency urgency)
{
    switch (urgency) {
    case recovery::Urgency::emergency:
    case recovery::Urgency::callNow: return "high";
    case recovery::Urgency::nextWorkingDay: return "moderate";
    case recovery::Urgency::atReview: break;
    }
    return "low";
}

std::string_view wordOf(records::Act act)
{
    switch (act) {
    case records::Act::seen: return "seen";
    case records::Act::taken: return "taken";
    case records::Act::called: return "called";
    case records::Act::visitBroughtForward: return "visit brought forward";
    case records::Act::closed: return "closed";
    case records::Act::reopened: break;
    }
    return "reopened";
}

class Writer {
public:
    Writer(const CourseRecord& record, const BundleOptions& options) : m_record(record), m_options(options)
    {
        m_patient = urlOf(record.treatment ? record.treatment->patient.view() : record.course.view());
        m_bundle = {{"resourceType", "Bundle"},
                    {"identifier", {{"system", ours("course")}, {"value", bytes::toHex(record.course.view())}}},
                    {"type", "collection"}};
        putMoment(m_bundle, "timestamp", options.written);
        m_bundle["entry"] = Json::array();
    }

    std::string write(std::span<const triage::Finding> findings)
    {
        patient();
        procedure();
        for (const recovery::Entry& entry : m_record.entries)
            diaryEntry(entry);
        for (const triage::Finding& finding : findings)
            issue(finding);
        for (const records::ReminderAnswered& answer : m_record.answers)
            task(answer);
        for (const records::MessageWritten& message : m_record.messages)
            communication(message);
        if (m_record.followUp)
            followUp(*m_record.followUp);
        if (!m_options.program.empty())
            provenance();
        return m_bundle.dump(2) + "\n";
    }

private:
    void add(Json resource, const std::string& url)
    {
        m_bundle["entry"].push_back({{"fullUrl", url}, {"resource", std::move(resource)}});
    }

    /// A resource that has no id of ours gets one that depends on the course and its place.
    std::string nextUrl()
    {
        bytes::Array<16> id = m_record.course.value;
        const std::uint32_t number = ++m_count;
        for (std::size_t i = 0; i < 4; ++i)
            id[i] = static_cast<std::uint8_t>(id[i] ^ (number >> (8 * i)));
        return urlOf(id);
    }

    void patient()
    {
        Json patient{{"resourceType", "Patient"},
                     {"identifier", Json::array({{{"system", ours("patient")}, {"value", m_patient.substr(9)}}})}};
        if (!m_options.patientName.empty())
            patient["name"] = Json::array({{{"text", m_options.patientName}}});
        add(std::move(patient), m_patient);
    }

    void procedure()
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
        add(std::move(procedure), urlOf(m_record.course.view()) == m_patient ? nextUrl() : urlOf(m_record.course.view()));
    }

    /// The clinic's own record of what was done.
    void recorded(const recovery::Treatment& treatment, Json& procedure, Json& extensions)
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
        if (!treatment.placedBy.empty())
            extensions.push_back(extension("placed-by", "valueString", treatment.placedBy));
        Json sites = Json::array();
        Json devices = Json::array();
        for (const recovery::Placement& placement : treatment.placements) {
            const std::string site = sided(recovery::word(placement.zone), placement.side);
            const Json coded = codeable(ours("site"), site, site);
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

    std::string device(const recovery::Placement& placement)
    {
        Json device{{"resourceType", "Device"}};
        device["extension"] = Json::array({
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
            extension("anaesthetic-ml", "valueDecimal", placement.anaestheticMl),
        });
        if (placement.redone) {
            device["extension"].push_back(extension("redone", "valueInteger", static_cast<int>(placement.redone->how)));
            device["extension"].push_back(extension("redone-reason", "valueString", placement.redone->reason));
        }
        if (placement.expiry)
            device["expirationDate"] = *placement.expiry;
        if (!placement.lot.empty())
            device["lotNumber"] = placement.lot;
        device["type"] = codeable(ours("thread"), recovery::word(placement.material),
                                  std::string(recovery::word(placement.material)) + " thread, " + std::string(recovery::word(placement.form)));
        device["patient"] = reference(m_patient);
        device["property"] = Json::array(
            {{{"type", {{"text", "length"}}},
              {"valueQuantity", Json::array({{{"value", placement.lengthMm}, {"unit", "mm"}, {"system", ucum}, {"code", "mm"}}})}},
             {{"type", {{"text", "needle or cannula gauge"}}},
              {"valueQuantity", Json::array({{{"value", placement.gauge}, {"unit", "G"}}})}}});
        const std::string url = nextUrl();
        add(std::move(device), url);
        return url;
    }

    void diaryEntry(const recovery::Entry& entry)
    {
        const std::string url = urlOf(entry.id.view());
        Json response{{"resourceType", "QuestionnaireResponse"}, {"extension", Json::array()}, {"status", "completed"}};
        // When the entry speaks of; `authored` is when it was typed.
        Json moment;
        putMoment(moment, "valueDateTime", entry.at);
        moment["url"] = ours("about");
        response["extension"].push_back(std::move(moment));
        response["subject"] = reference(m_patient);
        putMoment(response, "authored", entry.recordedAt);
        Json items = Json::array();
        const auto item = [&items](const std::string& link, const std::string& key, Json value) {
            items.push_back({{"linkId", link}, {"answer", Json::array({{{key, std::move(value)}}})}});
        };
        for (const auto& [stream, score] : entry.scores)
            item(linkOf(stream), "valueInteger", score.points());
        for (const recovery::Sign sign : entry.present)
            item("sign." + std::string(recovery::word(sign)), "valueBoolean", true);
        for (const recovery::Sign sign : entry.absent)
            item("sign." + std::string(recovery::word(sign)), "valueBoolean", false);
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

    Json observed(const recovery::Entry& entry, std::string_view category, Json code) const
    {
        Json made{{"resourceType", "Observation"}, {"status", "final"}};
        made["category"] =
            Json::array({codeable("http://terminology.hl7.org/CodeSystem/observation-category", category, category)});
        made["code"] = std::move(code);
        made["subject"] = reference(m_patient);
        putMoment(made, "effectiveDateTime", entry.at);
        return made;
    }

    void observation(const recovery::Entry& entry, const std::string& from, const recovery::Stream& stream, const recovery::Score& score)
    {
        const std::string_view word = recovery::word(stream.symptom);
        // The scale of pain as two published guides use it; nothing published was found for the others.
        const bool pain = stream.symptom == recovery::Symptom::pain;
        Json made = observed(entry, "survey", pain ? codeable(loinc, "72514-3", "Pain, 0 to 10") : codeable(ours("symptom"), word, std::string(word) + ", 0 to 10"));
        made["valueInteger"] = score.points();
        if (stream.side != recovery::Side::none)
            made["bodySite"] = codeable(ours("side"), recovery::word(stream.side), recovery::word(stream.side));
        made["derivedFrom"] = Json::array({reference(from)});
        add(std::move(made), nextUrl());
    }

    void temperature(const recovery::Entry& entry, const std::string& from)
    {
        Json made = observed(entry, "vital-signs", codeable(loinc, "8310-5", "Body temperature"));
        made["valueQuantity"] = {{"value", entry.temperature->celsius()}, {"unit", "Cel"}, {"system", ucum}, {"code", "Cel"}};
        made["derivedFrom"] = Json::array({reference(from)});
        add(std::move(made), nextUrl());
    }

    void issue(const triage::Finding& finding)
    {
        Json made{{"resourceType", "DetectedIssue"}, {"status", "final"}};
        made["extension"] = Json::array({extension("urgency", "valueString", recovery::word(finding.urgency))});
        const std::string rule = finding.key.substr(2, finding.key.find('/', 2) - 2);
        made["code"] = codeable(ours("finding"), rule, rule);
        made["severity"] = severityOf(finding.urgency);
        made["patient"] = reference(m_patient);
        putMoment(made, "identifiedDateTime", finding.raisedAt);
        if (finding.entry)
            made["evidence"] = Json::array({{{"detail", Json::array({reference(urlOf(finding.entry->view()))})}}});
        made["detail"] = triage::explain(finding);
        if (!finding.acts.empty())
            made["mitigation"] = Json::array();
        for (const records::FindingActed& act : finding.acts) {
            Json done{{"action", {{"text", act.note.empty() ? std::string(wordOf(act.act)) : std::string(wordOf(act.act)) + ": " + act.note}}}};
            putMoment(done, "date", act.at);
            if (!act.by.empty())
                done["author"] = {{"display", act.by}};
            made["mitigation"].push_back(std::move(done));
        }
        add(std::move(made), nextUrl());
    }

    void task(const records::ReminderAnswered& answer)
    {
        Json made{{"resourceType", "Task"}};
        if (answer.laterUntil)
            made["extension"] = Json::array(
                {extension("later-until", "valueInstant", clock::toIso8601(*answer.laterUntil))});
        made["status"] = answer.answer == records::ReminderAnswer::done ? "completed" : answer.answer == records::ReminderAnswer::notDone ? "rejected" : "on-hold";
        made["intent"] = "plan";
        made["description"] = answer.key;
        made["for"] = reference(m_patient);
        putMoment(made, "lastModified", answer.at);
        add(std::move(made), nextUrl());
    }

    void communication(const records::MessageWritten& message)
    {
        Json made{{"resourceType", "Communication"}, {"status", "completed"}};
        made["subject"] = reference(m_patient);
        putMoment(made, "sent", message.at);
        if (message.by.empty())
            made["sender"] = reference(m_patient);
        else
            made["sender"] = {{"display", message.by}};
        made["payload"] = Json::array({{{"contentString", message.text}}});
        add(std::move(made), urlOf(message.message.view()));
    }

    void followUp(const records::FollowUpRecorded& visit)
    {
        Json extensions = Json::array();
        extensions.push_back(extension("change", "valueInteger", static_cast<int>(visit.change)));
        extensions.push_back(extension("uncomplicated", "valueBoolean", visit.uncomplicated));
        for (const auto& [name, text] : {std::pair{"management", &visit.management}, std::pair{"next-plan", &visit.nextPlan},
                                         std::pair{"by", &visit.by}}) {
            if (!text->empty())
                extensions.push_back(extension(name, "valueString", *text));
        }
        Json made{{"resourceType", "Observation"}, {"extension", std::move(extensions)}, {"status", "final"}};
        made["code"] = codeable(ours("follow-up"), "global-change", "Change since before the treatment, five named steps");
        made["subject"] = reference(m_patient);
        putMoment(made, "effectiveDateTime", visit.at);
        constexpr std::array steps{"very much better", "much better", "better", "unchanged", "worse"};
        made["valueString"] = steps[static_cast<std::size_t>(visit.change) - 1];
        made["component"] = Json::array();
        made["component"].push_back({{"code", {{"text", "satisfaction, 1 to 5"}}}, {"valueInteger", visit.satisfaction}});
        for (const std::string& complication : visit.complications)
            made["component"].push_back({{"code", {{"text", "complication"}}}, {"valueString", complication}});
        add(std::move(made), nextUrl());
    }

    /// Which program put the bundle together, and when: R4 gives a collection no element for it, and a Provenance speaks of
    /// what it names, here the bundle by its identifier.
    void provenance()
    {
        const std::string& program = m_options.program;
        const std::size_t end = program.rfind(' ');
        Json device{{"resourceType", "Device"}, {"id", "program"}};
        device["deviceName"] = Json::array({{{"name", program.substr(0, end)}, {"type", "user-friendly-name"}}});
        if (end != std::string::npos)
            device["version"] = Json::array({{{"value", program.substr(end + 1)}}});
        Json made{{"resourceType", "Provenance"}, {"contained", Json::array({std::move(device)})}};
        made["target"] = Json::array({{{"type", "Bundle"}, {"identifier", m_bundle["identifier"]}}});
        putMoment(made, "recorded", m_options.written);
        made["agent"] = Json::array({{{"type", codeable("http://terminology.hl7.org/CodeSystem/provenance-participant-type", "assembler", "put together by")},
                                      {"who", reference("#program")}}});
        add(std::move(made), nextUrl());
    }

    const CourseRecord& m_record;
    const BundleOptions& m_options;
    std::string m_patient;
    Json m_bundle;
    std::uint32_t m_count = 0;
};

}  // namespace

Result<CourseRecord> recordOf(const recovery::CourseId& id, const journal::CourseState& course)
{
    CourseRecord record;
    record.course = id;
    if (course.treatment) {
        record.treatment = course.treatment->treatment;
        record.treated = record.treatment->at;
        record.baseline = record.treatment->baseline;
    } else if (course.opened) {
        record.treated = course.opened->treated;
        record.baseline = course.opened->baseline;
    } else {
        return fail(Reason::notFound, "export: this course has no treatment");
    }
    for (const auto& [entry, history] : course.entries)
        record.entries.push_back(history.current());
    for (const auto& [key, answer] : course.reminders)
        record.answers.push_back(answer);
    record.messages = course.messages;
    record.followUp = course.followUp;
    return record;
}

std::string writeBundle(const CourseRecord& record, std::span<const triage::Finding> findings, const BundleOptions& options)
{
    return Writer(record, options).write(findings);
}

}  // namespace ebbline::exchange
