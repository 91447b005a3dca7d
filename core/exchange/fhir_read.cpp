// Reads a bundle: what holds the resources together.
#include "core/exchange/fhir_reader.h"

#include "core/bytes/text.h"

#include <algorithm>

namespace ebbline::exchange {

namespace fhir {

namespace {

/// An id in capitals is the same id.
std::string inSmallLetters(std::string url)
{
    std::transform(url.begin(), url.end(), url.begin(), [](char letter) { return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter; });
    return url;
}

void mustBeSound(const records::Body& body)
{
    if (const Done sound = records::check(body); !sound)
        throw Refused{sound.error()};
}

}  // namespace

CourseRecord Reader::read(const Json& bundle)
{
    if (textOf(bundle, "resourceType") != "Bundle" || textOf(bundle, "type") != "collection")
        refuse(Reason::malformed, "this is not a collection of resources");
    const Json& identifier = member(bundle, "identifier");
    if (textOf(identifier, "system") != ours("course"))
        refuse(Reason::malformed, "this bundle was not written by Ebbline");
    const auto course = bytes::fromHex(textOf(identifier, "value"));
    if (!course || course->size() != 16)
        refuse(Reason::malformed, "the course's number cannot be read");
    m_record.course = recovery::CourseId::from(*course);
    const Json& entries = arrayOf(bundle, "entry");
    if (entries.size() > maximumBundleResources)
        refuse(Reason::tooLarge, "more than 100,000 resources");
    std::set<std::string> urls;
    for (const Json& entry : entries) {
        const std::string url = textOf(entry, "fullUrl");
        if (!urls.insert(inSmallLetters(url)).second)
            refuse(Reason::malformed, "two resources have one fullUrl");
        take(member(entry, "resource"), url);
    }
    if (!m_treated)
        refuse(Reason::malformed, "there is no treatment in it");
    finish();
    return std::move(m_record);
}

void Reader::take(const Json& resource, const std::string& url)
{
    const std::string type = textOf(resource, "resourceType");
    if (type == "Patient") {
        if (!m_patient.empty())
            refuse(Reason::malformed, "there are two patients in it");
        need(idFromUrl(url));
        m_patient = url;
    } else if (type == "Procedure") {
        procedure(resource);
    } else if (type == "Device") {
        speaksOf(resource, "patient");
        m_devices[url] = device(resource);
    } else if (type == "DeviceRequest" && extensionOf(resource, "entry-x", "valueDecimal") != nullptr) {
        speaksOf(resource, "subject");
        m_requests.push_back(request(resource));
    } else if (type == "Consent") {
        consent(resource);
    } else if (type == "Questionnaire") {
        questionnaire(resource);
    } else if (type == "QuestionnaireResponse") {
        diaryEntry(resource, need(idFromUrl(url)));
    } else if (type == "Provenance") {
        correction(resource);
    } else if (type == "DocumentReference" && extensionOf(resource, "pose", "valueInteger") != nullptr) {
        picture(resource, need(idFromUrl(url)));
    } else if (type == "CarePlan") {
        carePlan(resource, url);
    } else if (type == "Task") {
        task(resource, url);
    } else if (type == "Communication") {
        message(resource, need(idFromUrl(url)));
    } else if (type == "Observation" && extensionOf(resource, "change", "valueInteger") != nullptr) {
        followUp(resource);
    }
}

void Reader::speaksOf(const Json& resource, const char* element)
{
    m_spokenOf.insert(referenceOf(resource, element));
}

/// What refers to what, and every bound.
void Reader::finish()
{
    if (m_patient.empty())
        refuse(Reason::malformed, "there is no patient in it");
    for (const std::string& patient : m_spokenOf)
        if (patient != m_patient)
            refuse(Reason::malformed, "a resource speaks of another patient");
    finishTreatment();
    finishReferences();
    for (const recovery::Entry& entry : m_record.entries)
        mustBeSound(records::EntryRecorded{entry});
    for (const records::ReminderAnswered& answer : m_record.answers)
        mustBeSound(answer);
    for (const records::MessageWritten& message : m_record.messages)
        mustBeSound(message);
    for (const records::MessageRead& read : m_record.reads)
        mustBeSound(read);
    if (m_record.followUp)
        mustBeSound(*m_record.followUp);
}

void Reader::finishTreatment()
{
    if (m_record.treatment) {
        recovery::Treatment& treatment = *m_record.treatment;
        treatment.patient = recovery::PatientId{need(idFromUrl(m_patient))};
        treatment.baseline = m_record.baseline;
        for (const std::string& url : m_placed) {
            const auto device = m_devices.find(url);
            if (device == m_devices.end())
                refuse(Reason::malformed, "the treatment names a thread that is not in the bundle");
            treatment.placements.push_back(device->second);
        }
        treatment.planned = std::move(m_requests);
        mustBeSound(records::TreatmentRecorded{treatment});
    } else if (!m_requests.empty()) {
        refuse(Reason::malformed, "a plan is in it, and no record of the treatment that it was for");
    }
    if (std::set(m_placed.begin(), m_placed.end()).size() != m_placed.size() || m_placed.size() != m_devices.size())
        refuse(Reason::malformed, "the treatment does not name every thread of the bundle once");
    for (const std::string& what : m_consents) {
        const bool given = m_record.treatment
                           && (what == "treatment" ? m_record.treatment->consentGiven : m_record.treatment->learningConsent);
        if (!given)
            refuse(Reason::malformed, "a consent is in it that the treatment does not record");
    }
}

void Reader::finishReferences() const
{
    if (m_questionnaireNamed && !m_links)
        refuse(Reason::malformed, "an entry answers a questionnaire that is not in the bundle");
    if (m_links && !std::includes(m_links->begin(), m_links->end(), m_answered.begin(), m_answered.end()))
        refuse(Reason::malformed, "an entry answers a question that its questionnaire does not ask");
    std::set<recovery::EntryId> entries;
    for (const recovery::Entry& entry : m_record.entries)
        entries.insert(entry.id);
    for (const Correction& one : m_record.corrections)
        if (!entries.contains(one.entry))
            refuse(Reason::malformed, "a correction names an entry that is not in the bundle");
    for (const CoursePicture& one : m_record.pictures)
        if (!one.entry.isNull() && !entries.contains(one.entry))
            refuse(Reason::malformed, "a photograph names an entry that is not in the bundle");
    for (const std::string& plan : m_basedOn)
        if (plan != m_plan)
            refuse(Reason::malformed, "a task names a care plan that is not in the bundle");
    for (const std::string& task : m_planned)
        if (!m_tasks.contains(task))
            refuse(Reason::malformed, "the care plan names a task that is not in the bundle");
}

}  // namespace fhir

Result<CourseRecord> readBundle(std::string_view json)
{
    if (json.size() > maximumBundleBytes)
        return fail(Reason::tooLarge, "bundle: more than 16 MiB");
    if (fhir::tooDeep(json))
        return fail(Reason::malformed, "bundle: nested deeper than any bundle is");
    try {
        const fhir::Json bundle = fhir::parsed(json);
        if (bundle.is_discarded())
            return fail(Reason::malformed, "bundle: this is no JSON");
        return fhir::Reader().read(bundle);
    } catch (const fhir::Refused& refused) {
        return fail(refused.error);
    } catch (const fhir::Json::exception&) {
        return fail(Reason::malformed, "bundle: a value is not of the form that belongs there");
    }
}

}  // namespace ebbline::exchange
