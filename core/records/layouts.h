#pragma once
/// \file
/// Which fields of a body go into its bytes, in which order; inside of core/records only.
/// The order is the format (docs/formats/operations.md): fields are only ever added, with a new
/// version of the body.

#include "core/records/bodies.h"
#include "core/records/bounded_archive.h"

#include <array>
#include <cstdint>

namespace ebbline::records {

template <typename Archive>
constexpr bool saving = Archive::is_saving::value;

template <typename Archive, typename Tag>
void serialize(Archive& archive, bytes::Id<Tag>& id)
{
    archive(id.value);
}

template <typename Archive>
void field(Archive& archive, clock::Instant& instant)
{
    std::int64_t millis = instant.time_since_epoch().count();
    archive(millis);
    instant = clock::Instant{std::chrono::milliseconds{millis}};
}

template <typename Archive>
void field(Archive& archive, clock::Moment& moment)
{
    field(archive, moment.at);
    auto offset = static_cast<std::int32_t>(moment.offset.count());
    archive(offset, moment.zone);
    moment.offset = std::chrono::minutes{offset};
}

template <typename Archive>
void field(Archive& archive, recovery::Scores& scores)
{
    cereal::size_type size = scores.size();
    archive(cereal::make_size_tag(size));
    if constexpr (saving<Archive>) {
        for (const auto& [stream, score] : scores)
            archive(stream.symptom, stream.side, static_cast<std::uint8_t>(score.points()));
    } else {
        if (size > recovery::allSymptoms.size() * 3)
            throw cereal::Exception("more scores than there are");
        scores.clear();
        for (cereal::size_type i = 0; i < size; ++i) {
            recovery::Stream stream{};
            std::uint8_t points = 0;
            archive(stream.symptom, stream.side, points);
            const auto score = recovery::Score::of(points);
            if (!score || !scores.emplace(stream, *score).second)
                throw cereal::Exception("a score out of range or given twice");
        }
    }
}

template <typename Archive>
void field(Archive& archive, recovery::Signs& signs)
{
    cereal::size_type size = signs.size();
    archive(cereal::make_size_tag(size));
    if constexpr (saving<Archive>) {
        for (const recovery::Sign sign : signs)
            archive(sign);
    } else {
        if (size > recovery::Signs::highestNumber + 1)
            throw cereal::Exception("more signs than there are");
        signs.clear();
        for (cereal::size_type i = 0; i < size; ++i) {
            recovery::Sign sign{};
            archive(sign);
            if (!signs.insert(sign))
                throw cereal::Exception("a sign out of range or given twice");
        }
    }
}

template <typename Archive>
void field(Archive& archive, std::optional<recovery::Temperature>& temperature)
{
    bool present = temperature.has_value();
    double celsius = present ? temperature->celsius() : 0;
    archive(present, celsius);
    if constexpr (!saving<Archive>) {
        temperature.reset();
        if (present) {
            const auto value = recovery::Temperature::celsius(celsius);
            if (!value)
                throw cereal::Exception("a temperature out of range");
            temperature = *value;
        }
    }
}

template <typename Archive>
void serialize(Archive& archive, recovery::Entry& e)
{
    archive(e.id, e.course);
    field(archive, e.at);
    field(archive, e.recordedAt);
    field(archive, e.scores);
    field(archive, e.present);
    field(archive, e.absent);
    field(archive, e.temperature);
    archive(e.note);
}

template <typename Archive>
void serialize(Archive& archive, aftercare::Instruction& i)
{
    archive(i.id, i.kind, i.firstDay, i.lastDay, i.minutesOfDay, i.everyDays, i.clinicText, i.ignoresQuietHours);
}

inline constexpr std::uint16_t firstProtocolForm = 1;
inline constexpr std::uint16_t newestProtocolForm = 2;
inline constexpr std::uint16_t broughtBandForm = 3;  ///< of a band that came in a file; otherwise as the newest protocol form

/// Form 1 carried two statistics that are judged no longer; those which took their place keep
/// their defaults.
template <typename Archive>
void field(Archive& archive, triggers::Thresholds& t, triggers::FormerThresholds& former, bool first)
{
    archive(t.level, t.levelOverall, t.rebound);
    if (first)
        archive(former.sideRebound, t.sideDivergence, former.filling);
    else
        archive(t.sideDivergence, t.oneSideFills, t.oneSideWorsens);
    archive(t.slowRecovery, t.slowOverall, t.levelGuard, t.reboundGuard, t.reboundFirstDay, t.sideGuard, t.fillingLastDay,
            t.fillingGuard, t.slowFirstDay, t.slowPeakGuard, t.slowGuard, t.puckeringDay, t.puckeringGuard,
            t.puckeringStuckDay, t.puckeringStuckGuard, t.silentDays, t.silentDaysWhenHigh, t.falseAlertBudget,
            t.calibratedOn);
    if (!first)
        archive(t.worseningGuard, t.puckeringKeptDay, t.puckeringLateDay, t.puckeringTogether);
}

template <typename Archive>
void serialize(Archive& archive, bands::Movement& m)
{
    archive(m.noise, m.drift, m.start);
}

/// Form 1 had no movement of the sums.
template <typename Archive>
void field(Archive& archive, bands::Band& b, bool first)
{
    bands::Provenance provenance = b.provenance();
    bands::Band::Table table = b.table();
    bands::Movements movements = b.movements();
    archive(provenance.version, provenance.courses, provenance.assumption, provenance.learnedOn, provenance.hash, table,
            movements.score, movements.sides);
    if (first)
        movements.sums = bands::assumedMovements().sums;
    else
        archive(movements.sums);
    if constexpr (!saving<Archive>) {
        // Most courses carry the band that stands here already: one copy serves them all.
        if (isSameToTheBit(b, provenance, table, movements))
            return;
        if (const bands::Band* known = archive.knownBands ? archive.knownBands->find(provenance, table, movements) : nullptr) {
            b = *known;
            return;
        }
        auto band = bands::Band::create(std::move(provenance), table, movements);
        if (!band)
            throw cereal::Exception("the band is not a distribution");
        b = *band;
        if (archive.knownBands)
            archive.knownBands->add(b);
    }
}

/// The form in which a protocol came is the form in which it goes: its signature speaks of bytes.
inline std::uint16_t formOf(const triggers::Protocol& p)
{
    return p.former ? firstProtocolForm : newestProtocolForm;
}

template <typename Archive>
void field(Archive& archive, triggers::Protocol& p)
{
    bool first = formOf(p) == firstProtocolForm;
    if constexpr (!saving<Archive>)
        first = archive.bodyForm == firstProtocolForm;
    triggers::FormerThresholds former = p.former.value_or(triggers::FormerThresholds{});
    archive(p.name, p.version, p.carePlan.instructions, p.carePlan.followUpDay);
    field(archive, p.thresholds, former, first);
    field(archive, p.band, first);
    if constexpr (!saving<Archive>)
        p.former = first ? std::optional(former) : std::nullopt;
}

template <typename Archive>
void serialize(Archive& archive, Contacts& c)
{
    archive(c.clinicName, c.clinicPhone, c.onCallPhone, c.emergencyNumber);
}

template <typename Archive>
void serialize(Archive& archive, PatientRegistered& b)
{
    archive(b.patient, b.name, b.phone, b.language);
}

template <typename Archive>
void serialize(Archive& archive, CourseOpened& b)
{
    archive(b.course);
    field(archive, b.treated);
    archive(b.practitioner, b.contacts);
    field(archive, b.followUp);
    field(archive, b.baseline);
    field(archive, b.protocol);
    archive(b.protocolSignature);
}

template <typename Archive>
void serialize(Archive& archive, EntryRecorded& b)
{
    archive(b.entry);
}

template <typename Archive>
void serialize(Archive& archive, ReminderAnswered& b)
{
    archive(b.course, b.key, b.answer);
    field(archive, b.at);
    bool later = b.laterUntil.has_value();
    clock::Instant until = b.laterUntil.value_or(clock::Instant{});
    archive(later);
    field(archive, until);
    if constexpr (!saving<Archive>)
        b.laterUntil = later ? std::optional(until) : std::nullopt;
}

template <typename Archive>
void serialize(Archive& archive, WarningShown& b)
{
    archive(b.course, b.entry, b.rule, b.urgency);
    field(archive, b.at);
    archive(b.confirmed);
}

template <typename Archive>
void serialize(Archive& archive, FindingActed& b)
{
    archive(b.course, b.finding, b.act, b.outcome, b.by, b.note);
    field(archive, b.at);
}

template <typename Archive>
void serialize(Archive& archive, MessageWritten& b)
{
    archive(b.course, b.message, b.text, b.by);
    field(archive, b.at);
}

template <typename Archive>
void serialize(Archive& archive, MessageRead& b)
{
    archive(b.course, b.message);
    field(archive, b.at);
}

template <typename Archive>
void serialize(Archive& archive, FollowUpRecorded& b)
{
    archive(b.course, b.change, b.satisfaction, b.complications, b.uncomplicated, b.management, b.nextPlan, b.by);
    field(archive, b.at);
}

template <typename Archive>
void serialize(Archive& archive, ProtocolSigned& b)
{
    field(archive, b.protocol);
    archive(b.signature);
    field(archive, b.at);
}

template <typename Archive>
void serialize(Archive& archive, ClinicDescribed& b)
{
    archive(b.contacts, b.zone, b.people);
}

template <typename Archive>
void serialize(Archive& archive, PatientLinked& b)
{
    archive(b.course, b.mailbox, b.signingKey, b.boxKey);
}

template <typename Archive>
void serialize(Archive& archive, bands::Above& a)
{
    archive(a.promised, a.seen, a.low, a.high);
}

template <typename Archive>
void serialize(Archive& archive, bands::SymptomCoverage& s)
{
    archive(s.symptom, s.courses, s.readings, s.above90, s.above97, s.fit);
}

template <typename Archive>
void serialize(Archive& archive, bands::Coverage& c)
{
    archive(c.courses, c.symptoms, c.overall90);
}

template <typename Archive>
void field(Archive& archive, std::map<bands::Refusal, std::int32_t>& refused)
{
    cereal::size_type size = refused.size();
    archive(cereal::make_size_tag(size));
    if constexpr (saving<Archive>) {
        for (const auto& [refusal, count] : refused)
            archive(refusal, count);
    } else {
        refused.clear();
        for (cereal::size_type i = 0; i < size; ++i) {
            bands::Refusal refusal{};
            std::int32_t count = 0;
            archive(refusal, count);
            if (!refused.emplace(refusal, count).second)
                throw cereal::Exception("a reason given twice");
        }
    }
}

template <typename Archive>
void serialize(Archive& archive, BandLearned& b)
{
    bool first = false;
    if constexpr (!saving<Archive>)
        first = archive.bodyForm == firstProtocolForm;
    field(archive, b.learned.band, first);
    archive(b.learned.seed, b.learned.courses);
    field(archive, b.learned.refused);
    archive(b.learned.coverage, b.learned.by);
    field(archive, b.learned.at);
    triggers::FormerThresholds former{};
    field(archive, b.thresholds, former, first);
    bool brought = b.learned.brought.has_value();
    if constexpr (!saving<Archive>)
        brought = archive.bodyForm >= broughtBandForm;
    if (brought) {
        bands::Brought origin = b.learned.brought.value_or(bands::Brought{});
        archive(origin.name, origin.ofOthersAlone);
        if constexpr (!saving<Archive>)
            b.learned.brought = std::move(origin);
    }
}

template <typename Archive>
void serialize(Archive& archive, BandChosen& b)
{
    archive(b.choice.version, b.choice.back, b.choice.by, b.choice.reason);
    field(archive, b.choice.at);
}

}  // namespace ebbline::records
