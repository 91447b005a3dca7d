#pragma once
/// \file
/// The fields of a treatment; inside of core/records only. See layouts.h.

#include "core/records/layouts.h"

#include <algorithm>

namespace ebbline::records {

template <typename Archive>
void serialize(Archive& archive, recovery::ChartPoint& point)
{
    archive(point.x, point.y);
}

template <typename Archive>
void serialize(Archive& archive, recovery::Placement& p)
{
    archive(p.side, p.zone, p.view, p.entry, p.end, p.ending, p.material, p.form, p.gauge, p.lengthMm, p.lot, p.expiry,
            p.anaestheticMl);
}

template <typename Archive>
void serialize(Archive& archive, recovery::Anaesthetic& a)
{
    archive(a.drug, a.percent, a.epinephrineOneIn, a.bicarbonatePart, a.extraMl);
}

template <typename Archive>
void serialize(Archive& archive, recovery::Correction& c)
{
    archive(c.reason, c.by, c.inSight);
}

template <typename Archive>
void serialize(Archive& archive, recovery::Treatment& t)
{
    archive(t.course, t.patient);
    field(archive, t.at);
    archive(t.placements, t.anaesthetic, t.weightKg, t.dressings, t.cautionsGiven, t.consentGiven, t.learningConsent);
    field(archive, t.baseline);
    archive(t.note);
}

inline constexpr std::uint16_t newestTreatmentForm = 4;

/// The oldest form that has what a treatment says, so that older programs read what they can.
inline std::uint16_t formOf(const recovery::Treatment& t)
{
    const auto redone = [](const recovery::Placement& placement) { return placement.redone.has_value(); };
    const auto brought = [](const recovery::Placement& placement) {
        return placement.instrument || placement.instrumentLengthMm || placement.epinephrineAt || placement.article;
    };
    if (t.corrected || !t.planned.empty() || std::ranges::any_of(t.placements, brought))
        return newestTreatmentForm;
    if (t.otherwiseMg)
        return 3;
    return t.placedBy.empty() && std::ranges::none_of(t.placements, redone) ? 1 : 2;
}

/// The places of the threads that were redone, each with how and why.
template <typename Archive>
void redoneField(Archive& archive, recovery::Treatment& t)
{
    std::vector<std::uint8_t> places;
    for (std::size_t i = 0; i < t.placements.size(); ++i)
        if (t.placements[i].redone)
            places.push_back(static_cast<std::uint8_t>(i));
    archive(places);
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (places[i] >= t.placements.size() || (i > 0 && places[i] <= places[i - 1]))
            throw cereal::Exception("a thread that was redone is none of the treatment, or stands twice");
        auto& redone = t.placements[places[i]].redone;
        if (!redone)
            redone.emplace();
        archive(redone->how, redone->reason);
    }
}

/// Form 2: who placed the threads, and those that were redone. Form 3: the lidocaine given otherwise, always. Form 4: the
/// same where it is written down, of each thread the instrument, where it had epinephrine and which product its lot is of,
/// the threads of the plan, each with its instrument, and why and by whom an earlier record was corrected.
template <typename Archive>
void field(Archive& archive, recovery::Treatment& t, std::uint16_t form)
{
    if (form >= 2) {
        archive(t.placedBy);
        redoneField(archive, t);
    }
    if (form == 3) {
        double milligrams = t.otherwiseMg.value_or(0);
        archive(milligrams);
        t.otherwiseMg = milligrams;
    }
    if (form >= 4) {
        archive(t.otherwiseMg);
        for (recovery::Placement& p : t.placements)
            archive(p.instrument, p.instrumentLengthMm, p.epinephrineAt, p.article);
        archive(t.planned);
        for (recovery::Placement& p : t.planned)
            archive(p.instrument, p.instrumentLengthMm);
        archive(t.corrected);
    }
    // One body, one form: what comes back from it is signed and hashed.
    if constexpr (!saving<Archive>)
        if (formOf(t) != form)
            throw cereal::Exception("a treatment says nothing of what its form added");
}

template <typename Archive>
void serialize(Archive& archive, TreatmentRecorded& b)
{
    archive(b.treatment);
    std::uint16_t form = formOf(b.treatment);
    if constexpr (!saving<Archive>)
        form = archive.bodyForm;
    field(archive, b.treatment, form);
}

}  // namespace ebbline::records
