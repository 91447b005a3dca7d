// A record of a treatment is corrected: written anew beside the former one, and told to the phone where it counts by it.

#include "core/desk/inside.h"

#include "core/bytes/reader.h"
#include "core/bytes/text.h"

#include <algorithm>

namespace ebbline::desk {

namespace {

std::string correctionName(const recovery::CourseId& course) { return "treatment-correction/" + bytes::toHex(course.view()); }

}  // namespace

Result<TreatmentCorrection> Desk::beginCorrection(const recovery::CourseId& course) const
{
    const journal::CourseState* found = m_inside->course(course);
    if (!found || found->treatmentVersions.empty())
        return fail(Reason::notFound, "course: no treatment is recorded");
    const auto& newest = found->treatmentVersions.back();
    TreatmentCorrection begun{newest.value.treatment, newest.operation};
    begun.treatment.corrected = recovery::Correction{{}, {}, static_cast<std::uint32_t>(found->treatmentVersions.size())};
    return begun;
}

Result<TreatmentCorrection> Desk::correction(const recovery::CourseId& course) const
{
    const auto stored = m_inside->vault.kept(correctionName(course));
    if (!stored)
        return fail(stored.error());
    bytes::Reader reader(*stored);
    TreatmentCorrection kept;
    kept.seen.device = reader.id<envelope::DeviceTag>();
    kept.seen.number = reader.u64();
    const bytes::View rest = reader.block(records::maximumBody);
    if (!reader.atEnd())
        return fail(Reason::malformed, "correction: its draft cannot be read");
    auto treatment = records::decodeDraft(rest);
    if (!treatment)
        return fail(treatment.error());
    if (treatment->course != course || !treatment->corrected)
        return fail(Reason::damaged, "correction: its draft is of another course");
    kept.treatment = std::move(*treatment);
    return kept;
}

Done Desk::keepCorrection(const TreatmentCorrection& correction)
{
    bytes::Writer writer;
    writer.raw(correction.seen.device.view()).u64(correction.seen.number);
    writer.block(records::encode(records::TreatmentRecorded{correction.treatment}));
    return m_inside->vault.keep(correctionName(correction.treatment.course), writer.bytes());
}

Done Desk::discardCorrection(const recovery::CourseId& course)
{
    return m_inside->vault.keep(correctionName(course), {});
}

Done Desk::correctTreatment(const TreatmentCorrection& correction)
{
    if (const Done may = m_inside->needsTask(records::Task::treat); !may)
        return may;
    if (m_inside->person.empty())
        return fail(Reason::invalidState, "treatment: nobody is named at the desk");
    const recovery::CourseId id = correction.treatment.course;
    const auto holds = beginCorrection(id);
    if (!holds)
        return fail(holds.error());
    records::TreatmentRecorded body{correction.treatment};
    recovery::Treatment& treatment = body.treatment;
    if (!treatment.corrected || treatment.corrected->reason.empty())
        return fail(Reason::notEnough, "treatment: a correction needs a reason");
    if (treatment.patient != holds->treatment.patient)
        return fail(Reason::refused, "treatment: whose it is cannot be corrected");
    recovery::Treatment written = treatment;
    written.corrected = holds->treatment.corrected;
    const journal::CourseState& course = *m_inside->course(id);
    // Where the course is counted by something else than the record says, recording it again sets that right.
    if (written == holds->treatment && !course.isCountedOtherwise())
        return fail(Reason::alreadyExists, "treatment: that is what is on record");
    treatment.corrected->by = m_inside->person;
    treatment.corrected->inSight = std::min(treatment.corrected->inSight, static_cast<std::uint32_t>(course.treatmentVersions.size()));
    if (const Done checked = recovery::check(treatment); !checked)
        return checked;

    std::vector<records::Body> bodies = m_inside->named(records::Task::treat, id, body);
    if (course.opened && (course.opened->treated != treatment.at || course.opened->baseline != treatment.baseline)) {
        records::CourseOpened told = *course.opened;
        told.treated = treatment.at;
        told.baseline = treatment.baseline;
        told.practitioner = m_inside->person;
        bodies.push_back(told);
    }
    const std::string draft = correctionName(id);
    // One that cannot be read is not what is recorded here.
    std::vector<std::string_view> finished;
    if (this->correction(id))
        finished.emplace_back(draft);
    // In place of what holds here, seen or not: a colleague's that came meanwhile, by a clock that runs ahead, does not hold over it.
    const auto holding = course.treatmentVersions.back().operation;
    const auto appended = m_inside->vault.append(bodies, m_inside->now(), m_inside->mailboxOf(id), holding, finished);
    return appended ? Done{} : Done(fail(appended.error()));
}

}  // namespace ebbline::desk
