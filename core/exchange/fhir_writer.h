#pragma once
/// \file
/// Writes one course as a bundle, a part of it in each source file; inside of core/exchange only.

#include "core/exchange/fhir_questionnaire.h"

#include <map>
#include <set>

namespace ebbline::exchange::fhir {

class Writer {
public:
    Writer(const CourseRecord& record, const BundleOptions& options);
    std::string write(std::span<const triage::Finding> findings);

private:
    /// What a finding may have been raised by: a score of an entry, or its temperature.
    using Measured = std::pair<recovery::EntryId, std::optional<recovery::Stream>>;

    // fhir_write.cpp
    void add(Json resource, const std::string& url);
    /// A resource that has no id of ours gets one that depends on the course and its place, and is no other's.
    std::string nextUrl();
    /// This one, unless it is another's already.
    std::string ownUrl(bytes::View id);
    void patient();
    void program();

    // fhir_write_treatment.cpp
    void procedure();
    void recorded(const recovery::Treatment& treatment, Json& procedure, Json& extensions);
    std::string device(const recovery::Placement& placement);
    void request(const recovery::Placement& planned);
    void consents(const recovery::Treatment& treatment);
    void consent(Json scope, std::string_view what, std::string_view text);

    // fhir_write_entries.cpp
    void diaryEntry(const recovery::Entry& entry);
    Json observed(const recovery::Entry& entry, std::string_view category, Json code) const;
    void observation(const recovery::Entry& entry, const std::string& from, const recovery::Stream& stream, const recovery::Score& score);
    void temperature(const recovery::Entry& entry, const std::string& from);
    void correction(const Correction& correction);
    void picture(const CoursePicture& picture);

    // fhir_write_care.cpp
    void issue(const triage::Finding& finding);
    void carePlan();
    Json activity(const aftercare::Instruction& instruction) const;
    void tasks();
    Json task(std::string_view status, const std::string& key, const DueReminder* due) const;
    void addTask(Json made);
    void communication(const records::MessageWritten& message);
    void followUp(const records::FollowUpRecorded& visit);

    const CourseRecord& m_record;
    const BundleOptions& m_options;
    std::set<std::string> m_taken;              ///< every fullUrl, also those that are still to come
    std::string m_patient;
    std::string m_plan;                         ///< fullUrl of the care plan; empty: there is none
    Json m_activities = Json::array();          ///< of the care plan: its instructions, then its reminders
    std::map<Measured, std::string> m_measured; ///< fullUrl of each Observation
    Json m_bundle;
    std::uint32_t m_count = 0;
};

}  // namespace ebbline::exchange::fhir
