// Writes a course as a bundle: what holds the resources together.
#include "core/exchange/fhir_writer.h"

#include "core/bytes/text.h"

namespace ebbline::exchange {

namespace fhir {

Writer::Writer(const CourseRecord& record, const BundleOptions& options) : m_record(record), m_options(options)
{
    for (const recovery::Entry& entry : record.entries)
        m_taken.insert(urlOf(entry.id.view()));
    for (const records::MessageWritten& message : record.messages)
        m_taken.insert(urlOf(message.message.view()));
    for (const CoursePicture& picture : record.pictures)
        m_taken.insert(urlOf(picture.photo.view()));
    m_patient = record.treatment ? urlOf(record.treatment->patient.view()) : ownUrl(record.course.view());
    m_taken.insert(m_patient);
    m_bundle = {{"resourceType", "Bundle"},
                {"identifier", {{"system", ours("course")}, {"value", bytes::toHex(record.course.view())}}},
                {"type", "collection"}};
    putMoment(m_bundle, "timestamp", options.written);
    m_bundle["entry"] = Json::array();
}

std::string Writer::write(std::span<const triage::Finding> findings)
{
    patient();
    procedure();
    add(entryQuestionnaire(), nextUrl());
    for (const recovery::Entry& entry : m_record.entries)
        diaryEntry(entry);
    for (const Correction& one : m_record.corrections)
        correction(one);
    for (const CoursePicture& one : m_record.pictures)
        picture(one);
    for (const triage::Finding& finding : findings)
        issue(finding);
    if (m_record.care)
        m_plan = nextUrl();
    tasks();
    if (m_record.care)
        carePlan();
    for (const records::MessageWritten& message : m_record.messages)
        communication(message);
    if (m_record.followUp)
        followUp(*m_record.followUp);
    if (!m_options.program.empty())
        program();
    // A clinic's own words were never asked whether they are UTF-8.
    return m_bundle.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

void Writer::add(Json resource, const std::string& url)
{
    m_bundle["entry"].push_back({{"fullUrl", url}, {"resource", std::move(resource)}});
}

std::string Writer::nextUrl()
{
    for (;;) {
        bytes::Array<16> id = m_record.course.value;
        const std::uint32_t number = ++m_count;
        for (std::size_t i = 0; i < 4; ++i)
            id[i] = static_cast<std::uint8_t>(id[i] ^ (number >> (8 * i)));
        if (const std::string url = urlOf(id); m_taken.insert(url).second)
            return url;
    }
}

std::string Writer::ownUrl(bytes::View id)
{
    const std::string url = urlOf(id);
    return m_taken.insert(url).second ? url : nextUrl();
}

void Writer::patient()
{
    Json patient{{"resourceType", "Patient"},
                 {"identifier", Json::array({{{"system", ours("patient")}, {"value", m_patient.substr(9)}}})}};
    if (!m_options.patientName.empty())
        patient["name"] = Json::array({{{"text", m_options.patientName}}});
    add(std::move(patient), m_patient);
}

/// Which program put the bundle together, and when: R4 gives a collection no element for it, and a Provenance speaks of
/// what it names, here the bundle by its identifier.
void Writer::program()
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
    made["agent"] = Json::array({{{"type", codeable(participant, "assembler", "put together by")}, {"who", reference("#program")}}});
    add(std::move(made), nextUrl());
}

}  // namespace fhir

std::string writeBundle(const CourseRecord& record, std::span<const triage::Finding> findings, const BundleOptions& options)
{
    return fhir::Writer(record, options).write(findings);
}

}  // namespace ebbline::exchange
