#pragma once
/// \file
/// Reads a bundle that Writer wrote, a part of it in each source file; inside of core/exchange only. The text comes from
/// outside: nothing is taken for granted, and what refers to something is held against it when all of it was read.

#include "core/exchange/fhir_take.h"

#include <map>
#include <set>

namespace ebbline::exchange::fhir {

class Reader {
public:
    /// \throws Refused
    CourseRecord read(const Json& bundle);

private:
    // fhir_read.cpp
    void take(const Json& resource, const std::string& url);
    /// The resource speaks of the patient of this bundle, or the bundle is refused.
    void speaksOf(const Json& resource, const char* element);
    void finish();
    void finishTreatment();
    void finishReferences() const;

    // fhir_read_treatment.cpp
    void procedure(const Json& resource);
    static recovery::Placement thread(const Json& resource);
    static recovery::Placement device(const Json& resource);
    static recovery::Placement request(const Json& resource);
    void consent(const Json& resource);

    // fhir_read_entries.cpp
    void questionnaire(const Json& resource);
    void diaryEntry(const Json& resource, const bytes::Array<16>& id);
    void correction(const Json& resource);
    void picture(const Json& resource, const bytes::Array<16>& id);

    // fhir_read_care.cpp
    void carePlan(const Json& resource, const std::string& url);
    void task(const Json& resource, const std::string& url);
    void message(const Json& resource, const bytes::Array<16>& id);
    void followUp(const Json& resource);

    CourseRecord m_record;
    std::string m_patient;                               ///< its fullUrl; empty: not read yet
    std::set<std::string> m_spokenOf;                    ///< the patients that resources of ours name
    std::map<std::string, recovery::Placement> m_devices;
    std::vector<std::string> m_placed;
    std::vector<recovery::Placement> m_requests;         ///< threads of the plan
    std::set<std::string> m_consents;                    ///< words of our own system
    std::optional<std::set<std::string>> m_links;        ///< of the questionnaire; empty: there is none
    std::set<std::string> m_answered;                    ///< links that entries answered
    bool m_questionnaireNamed = false;                   ///< an entry says which questionnaire it answered
    std::string m_plan;                                  ///< fullUrl of the care plan
    std::set<std::string> m_basedOn;                     ///< plans that tasks name
    std::set<std::string> m_tasks;                       ///< their fullUrls
    std::vector<std::string> m_planned;                  ///< what the care plan names
    std::set<std::string> m_keys;                        ///< of reminders that were answered
    bool m_treated = false;
};

}  // namespace ebbline::exchange::fhir
