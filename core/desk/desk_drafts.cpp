// Treatments being written, one for each patient, and the plans kept beside them, until they are recorded.

#include "core/desk/inside.h"

#include "core/bytes/text.h"
#include "core/recovery/plan.h"

namespace ebbline::desk {

namespace {

constexpr const char* formerName = "treatment-draft";  ///< of the only one, before each patient had her own
constexpr const char* draftsPrefix = "treatment-draft/";

std::string draftName(const recovery::PatientId& patient) { return draftsPrefix + bytes::toHex(patient.view()); }

std::string planName(const recovery::CourseId& course) { return "plan/" + bytes::toHex(course.view()); }

}  // namespace

Done Desk::recordTreatment(const recovery::Treatment& treatment)
{
    if (const Done may = m_inside->needsTask(records::Task::treat); !may)
        return may;
    records::TreatmentRecorded body{treatment};
    const auto kept = plan(treatment.course);
    if (kept)
        body.treatment.planned = recovery::plannedOf(kept->placements);
    if (const Done checked = recovery::check(body.treatment); !checked)
        return checked;
    if (!m_inside->vault.state().patients.contains(treatment.patient))
        return fail(Reason::notFound, "treatment: the patient is not registered");
    const auto begun = draft(treatment.patient);
    const std::string name = draftName(treatment.patient);
    const std::string keptPlan = planName(treatment.course);
    // One that cannot be read, or is of another treatment, is not what is recorded here.
    std::vector<std::string_view> finished;
    if (begun && begun->course == treatment.course)
        finished.emplace_back(name);
    if (kept)
        finished.emplace_back(keptPlan);
    return m_inside->appendNamed(records::Task::treat, treatment.course, body, finished);
}

Result<recovery::Treatment> Desk::draft(const recovery::PatientId& patient) const
{
    const auto stored = m_inside->vault.kept(draftName(patient));
    if (!stored)
        return fail(stored.error());
    auto treatment = records::decodeDraft(*stored);
    if (treatment && treatment->patient != patient)
        return fail(Reason::damaged, "draft: it names another patient");
    return treatment;
}

Result<std::vector<recovery::PatientId>> Desk::drafted() const
{
    const auto stored = m_inside->vault.keptUnder(draftsPrefix);
    if (!stored)
        return fail(stored.error());
    std::vector<recovery::PatientId> patients;
    for (const auto& [name, value] : *stored) {
        const auto raw = bytes::fromHex(std::string_view(name).substr(std::string_view(draftsPrefix).size()));
        recovery::PatientId patient;
        if (raw && raw->size() == patient.value.size()) {
            std::ranges::copy(*raw, patient.value.begin());
            patients.push_back(patient);
        }
    }
    return patients;
}

Done Desk::keepDraft(const recovery::Treatment& treatment)
{
    return m_inside->vault.keep(draftName(treatment.patient), records::encode(records::TreatmentRecorded{treatment}));
}

Done Desk::handDraft(const recovery::Treatment& treatment)
{
    return m_inside->vault.together([&]() -> Done {
        if (const Done kept = keepDraft(treatment); !kept)
            return kept;
        return discardDraft({});
    });
}

Done Desk::discardDraft(const recovery::PatientId& patient)
{
    return m_inside->vault.keep(draftName(patient), {});
}

Result<std::optional<recovery::PatientId>> Desk::adoptFormerDraft()
{
    const auto stored = m_inside->vault.kept(formerName);
    if (!stored)
        return stored.error().reason == Reason::notFound ? Result<std::optional<recovery::PatientId>>(std::nullopt) : fail(stored.error());
    const auto treatment = records::decodeDraft(*stored);
    if (!treatment)
        return fail(treatment.error());
    const auto own = draft(treatment->patient);
    if (own || own.error().reason != Reason::notFound)
        return std::nullopt;
    const Done moved = m_inside->vault.together([&]() -> Done {
        if (const Done kept = keepDraft(*treatment); !kept)
            return kept;
        return m_inside->vault.keep(formerName, {});
    });
    if (!moved)
        return fail(moved.error());
    return std::optional(treatment->patient);
}

std::optional<recovery::Treatment> Desk::plan(const recovery::CourseId& course) const
{
    const auto stored = m_inside->vault.kept(planName(course));
    if (!stored)
        return std::nullopt;
    const auto body = records::decodeDraft(*stored);
    return body ? std::optional(*body) : std::nullopt;
}

Done Desk::keepPlan(const recovery::Treatment& treatment)
{
    return m_inside->vault.keep(planName(treatment.course), records::encode(records::TreatmentRecorded{treatment}));
}

Done Desk::discardPlan(const recovery::CourseId& course)
{
    return m_inside->vault.keep(planName(course), {});
}

}  // namespace ebbline::desk
