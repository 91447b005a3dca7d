#include "core/recovery/treatment.h"

#include "core/recovery/utf8.h"

#include <algorithm>
#include <cmath>

namespace ebbline::recovery {

namespace {

constexpr std::size_t maximumPlacements = 60;
constexpr std::size_t maximumLot = 40;
constexpr std::size_t maximumTreatmentNote = 4000;
constexpr std::size_t maximumReason = 400;
constexpr std::size_t maximumPerson = 200;

bool within(double value, double low, double high)
{
    return std::isfinite(value) && value >= low && value <= high;
}

bool onChart(const ChartPoint& point)
{
    return within(point.x, 0, chartWidth) && within(point.y, 0, chartHeight);
}

/// `2029-06-30`: a calendar day that exists.
bool isIsoDay(std::string_view text)
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-')
        return false;
    for (const std::size_t place : {0U, 1U, 2U, 3U, 5U, 6U, 8U, 9U})
        if (text[place] < '0' || text[place] > '9')
            return false;
    const auto number = [&](std::size_t from, std::size_t length) {
        int value = 0;
        for (const char c : text.substr(from, length))
            value = value * 10 + (c - '0');
        return value;
    };
    return std::chrono::year_month_day{std::chrono::year{number(0, 4)},
                                       std::chrono::month{static_cast<unsigned>(number(5, 2))},
                                       std::chrono::day{static_cast<unsigned>(number(8, 2))}}
        .ok();
}

template <typename T>
bool between(T value, T first, T last)
{
    return value >= first && value <= last;
}

}  // namespace

Done check(const Placement& placement)
{
    if (placement.side != Side::left && placement.side != Side::right)
        return fail(Reason::outOfRange, "side: want left or right");
    if (!between(placement.zone, Zone::brow, Zone::neck))
        return fail(Reason::outOfRange, "zone: unknown");
    if (!between(placement.view, ChartView::front, ChartView::rightOblique))
        return fail(Reason::outOfRange, "view: unknown");
    if (!onChart(placement.entry) || !onChart(placement.end))
        return fail(Reason::outOfRange, "entry or end: outside the face chart");
    if (placement.entry == placement.end)
        return fail(Reason::outOfRange, "end: it lies on the entry point");
    if (!between(placement.ending, Ending::shortOfMovingZone, Ending::pastMovingZone))
        return fail(Reason::outOfRange, "ending: unknown");
    if (!between(placement.material, Material::pdo, Material::other))
        return fail(Reason::outOfRange, "material: unknown");
    if (!between(placement.form, Form::smooth, Form::cones))
        return fail(Reason::outOfRange, "form: unknown");
    if (placement.gauge < 14 || placement.gauge > 32)
        return fail(Reason::outOfRange, "gauge: want 14..32 G");
    if (placement.lengthMm < 10 || placement.lengthMm > 500)
        return fail(Reason::outOfRange, "length: want 10..500 mm");
    if (placement.lot.size() > maximumLot || !isUtf8(placement.lot))
        return fail(Reason::malformed, "lot: want UTF-8, at most 40 bytes");
    if (placement.expiry && !isIsoDay(*placement.expiry))
        return fail(Reason::malformed, "expiry: want a day like 2029-06-30");
    if (!within(placement.anaestheticMl, 0, 20))
        return fail(Reason::outOfRange, "anaesthetic: want 0..20 mL along one track");
    if (placement.redone) {
        if (!between(placement.redone->how, Redoing::replaced, Redoing::added))
            return fail(Reason::outOfRange, "redone: unknown");
        const std::string& reason = placement.redone->reason;
        if (reason.empty() || reason.size() > maximumReason || !isUtf8(reason))
            return fail(Reason::malformed, "redone: want its reason, UTF-8, at most 400 bytes");
    }
    if (placement.instrument && !between(*placement.instrument, Instrument::sharpNeedle, Instrument::bluntCannula))
        return fail(Reason::outOfRange, "instrument: unknown");
    if (placement.instrumentLengthMm && !between(*placement.instrumentLengthMm, 10, 500))
        return fail(Reason::outOfRange, "instrument length: want 10..500 mm");
    if (placement.epinephrineAt && !between(*placement.epinephrineAt, EpinephrineAt::nowhere, EpinephrineAt::both))
        return fail(Reason::outOfRange, "epinephrine: unknown place");
    if (placement.article && (placement.lot.empty() || !isArticle(*placement.article)))
        return fail(Reason::malformed, "article: want 14 digits whose last one checks the others, beside a lot");
    return {};
}

Done check(const Treatment& treatment)
{
    if (treatment.course.isNull() || treatment.patient.isNull())
        return fail(Reason::malformed, "treatment: its course or its patient is missing");
    if (treatment.placements.empty() || treatment.placements.size() > maximumPlacements)
        return fail(Reason::outOfRange, "placements: want 1..60");
    for (std::size_t i = 0; i < treatment.placements.size(); ++i)
        if (const Done checked = check(treatment.placements[i]); !checked)
            return fail(checked.error().reason,
                        "placement " + std::to_string(i + 1) + ": " + checked.error().detail);
    const Anaesthetic& anaesthetic = treatment.anaesthetic;
    if (!between(anaesthetic.drug, Drug::lidocaine, Drug::lidocaineWithEpinephrine))
        return fail(Reason::outOfRange, "drug: unknown");
    if (!within(anaesthetic.percent, 0.1, 4))
        return fail(Reason::outOfRange, "percent: want 0.1..4");
    const bool withEpinephrine = anaesthetic.drug == Drug::lidocaineWithEpinephrine;
    if (withEpinephrine ? !between(anaesthetic.epinephrineOneIn, 50'000, 1'000'000)
                        : anaesthetic.epinephrineOneIn != 0)
        return fail(Reason::outOfRange, "epinephrine: want 1 in 50,000 to 1,000,000 with it, 0 without");
    for (std::size_t i = 0; i < treatment.placements.size(); ++i)
        if (const auto& at = treatment.placements[i].epinephrineAt; !withEpinephrine && at && *at != EpinephrineAt::nowhere)
            return fail(Reason::outOfRange, "placement " + std::to_string(i + 1) + ": epinephrine: the solution holds none");
    if (!within(anaesthetic.bicarbonatePart, 0, 1))
        return fail(Reason::outOfRange, "bicarbonate: want 0..1 part");
    if (!within(anaesthetic.extraMl, 0, 100))
        return fail(Reason::outOfRange, "extra: want 0..100 mL");
    if (treatment.weightKg && !within(*treatment.weightKg, 30, 300))
        return fail(Reason::outOfRange, "weight: want 30..300 kg");
    for (const auto& [stream, score] : treatment.baseline)
        if (const Done checked = check(stream); !checked)
            return checked;
    if (treatment.note.size() > maximumTreatmentNote || !isUtf8(treatment.note))
        return fail(Reason::malformed, "note: want UTF-8, at most 4000 bytes");
    if (treatment.placedBy.size() > maximumPerson || !isUtf8(treatment.placedBy))
        return fail(Reason::malformed, "placed by: want UTF-8, at most 200 bytes");
    if (treatment.otherwiseMg && !within(*treatment.otherwiseMg, 0, maximumOtherwiseMg))
        return fail(Reason::outOfRange, "given otherwise: want 0..1000 mg");
    if (treatment.planned.size() > maximumPlacements)
        return fail(Reason::outOfRange, "planned: want at most 60");
    for (std::size_t i = 0; i < treatment.planned.size(); ++i) {
        const std::string place = "planned " + std::to_string(i + 1) + ": ";
        if (const Done checked = check(treatment.planned[i]); !checked)
            return fail(checked.error().reason, place + checked.error().detail);
        if (treatment.planned[i] != asPlanned(treatment.planned[i]))
            return fail(Reason::malformed, place + "it names a pack, an anaesthetic or a redoing");
    }
    if (const auto& corrected = treatment.corrected) {
        if (corrected->reason.empty() || corrected->reason.size() > maximumReason || !isUtf8(corrected->reason))
            return fail(Reason::malformed, "corrected: want a reason in UTF-8, 1..400 bytes");
        if (corrected->inSight == 0)
            return fail(Reason::malformed, "corrected: want the records that were in sight, 1 or more");
        if (corrected->by.size() > maximumPerson || !isUtf8(corrected->by))
            return fail(Reason::malformed, "corrected by: want UTF-8, at most 200 bytes");
    }
    return {};
}

bool isArticle(std::string_view digits)
{
    constexpr std::size_t length = 14;
    int sum = 0;
    int weight = 1;  // of the check digit itself; 3 and 1 in turn to the left of it
    for (auto digit = digits.rbegin(); digit != digits.rend(); ++digit, weight = 4 - weight) {
        if (*digit < '0' || *digit > '9')
            return false;
        sum += weight * (*digit - '0');
    }
    return digits.size() == length && sum % 10 == 0;
}

Placement asPlanned(const Placement& placement)
{
    Placement planned = placement;
    planned.lot.clear();
    planned.expiry.reset();
    planned.article.reset();
    planned.anaestheticMl = 0;
    planned.redone.reset();
    planned.epinephrineAt.reset();
    return planned;
}

Placement mirrored(const Placement& placement)
{
    Placement other = placement;
    other.side = mirrored(placement.side);
    other.redone.reset();
    other.entry.x = chartWidth - placement.entry.x;
    other.end.x = chartWidth - placement.end.x;
    if (placement.view == ChartView::leftOblique)
        other.view = ChartView::rightOblique;
    else if (placement.view == ChartView::rightOblique)
        other.view = ChartView::leftOblique;
    return other;
}

}  // namespace ebbline::recovery
