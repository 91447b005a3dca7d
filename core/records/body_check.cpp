#include "core/records/bodies.h"

#include "core/recovery/utf8.h"

#include <algorithm>
#include <cmath>

namespace ebbline::records {

namespace {

constexpr std::size_t maximumName = 200;
constexpr std::size_t maximumText = 2000;
constexpr std::size_t maximumWord = 4000;
constexpr std::size_t maximumItems = 400;
constexpr std::size_t maximumSignature = 64;

/// Collects the first fault of a body; a chain of checks reads as a list.
class Check {
public:
    Check& text(const char* name, const std::string& value, std::size_t limit = maximumName)
    {
        if (value.size() > limit)
            note(Reason::tooLarge, name, "too long");
        else if (!recovery::isUtf8(value))
            note(Reason::malformed, name, "not UTF-8");
        return *this;
    }
    Check& moment(const char* name, const clock::Moment& value)
    {
        if (std::abs(value.offset.count()) > 14 * 60)
            note(Reason::outOfRange, name, "offset beyond 14 hours");
        return text(name, value.zone, 64);
    }
    template <typename Tag>
    Check& id(const char* name, const bytes::Id<Tag>& value)
    {
        if (value.isNull())
            note(Reason::malformed, name, "missing");
        return *this;
    }
    template <typename T>
    Check& within(const char* name, T value, T low, T high)
    {
        if (value < low || value > high)
            note(Reason::outOfRange, name, "unknown or out of range");
        return *this;
    }
    Check& that(const char* name, const Done& done)
    {
        if (!done)
            note(done.error().reason, name, done.error().detail.c_str());
        return *this;
    }
    Done done() const
    {
        return m_fault ? Done(fail(*m_fault)) : Done{};
    }

private:
    void note(Reason reason, const char* name, const char* what)
    {
        if (!m_fault)
            m_fault = Error{reason, std::string(name) + ": " + what};
    }
    std::optional<Error> m_fault;
};

Check& contacts(Check& check, const Contacts& value)
{
    return check.text("clinic name", value.clinicName)
        .text("clinic phone", value.clinicPhone, 40)
        .text("on-call phone", value.onCallPhone, 40)
        .text("emergency number", value.emergencyNumber, 40);
}

Done scoresCheck(const recovery::Scores& scores)
{
    for (const auto& [stream, score] : scores)
        if (const Done checked = recovery::check(stream); !checked)
            return checked;
    return {};
}

Check& thresholds(Check& check, const triggers::Thresholds& t)
{
    return check.that("threshold", triggers::check(t))
        .text("calibrated on", t.calibratedOn)
        .within("silent days", t.silentDays, 1, 60)
        .within("silent days when high", t.silentDaysWhenHigh, 1, 60);
}

Check& protocol(Check& check, const triggers::Protocol& value)
{
    check.text("protocol name", value.name);
    if (value.former)
        check.that("threshold", std::isfinite(value.former->sideRebound) && std::isfinite(value.former->filling)
                                    ? Done{}
                                    : fail(Reason::notFinite, "want a number"));
    return thresholds(check, value.thresholds).that("care plan", aftercare::check(value.carePlan));
}

Check& above(Check& check, const bands::Above& value)
{
    for (const double share : {value.promised, value.seen, value.low, value.high})
        check.that("share", share >= 0 && share <= 1 ? Done{} : fail(Reason::outOfRange, "want 0..1"));
    return check;
}

struct BodyCheck {
    Check check;

    void operation(const char* name, const OperationName& value)
    {
        check.id(name, value.device).that(name, value.number > 0 ? Done{} : fail(Reason::outOfRange, "want a number from 1"));
    }
    void operator()(const PatientRegistered& b)
    {
        check.id("patient", b.patient).text("name", b.name).text("phone", b.phone, 40).text("language", b.language, 35);
    }
    void operator()(const TreatmentRecorded& b)
    {
        check.that("treatment", recovery::check(b.treatment)).moment("at", b.treatment.at);
    }
    void operator()(const CourseOpened& b)
    {
        check.id("course", b.course).moment("treated", b.treated).moment("follow-up", b.followUp);
        check.text("practitioner", b.practitioner).that("baseline", scoresCheck(b.baseline));
        contacts(check, b.contacts);
        protocol(check, b.protocol);
    }
    void operator()(const EntryRecorded& b)
    {
        check.that("entry", recovery::check(b.entry)).moment("at", b.entry.at).moment("recorded", b.entry.recordedAt);
    }
    void operator()(const ReminderAnswered& b)
    {
        check.id("course", b.course).text("key", b.key, 80).moment("at", b.at);
        check.within("answer", b.answer, ReminderAnswer::done, ReminderAnswer::later);
    }
    void operator()(const WarningShown& b)
    {
        check.id("course", b.course).id("entry", b.entry).text("rule", b.rule, 160).moment("at", b.at);
        check.within("urgency", b.urgency, recovery::Urgency::emergency, recovery::Urgency::atReview);
    }
    void operator()(const FindingActed& b)
    {
        check.id("course", b.course).text("finding", b.finding, 160).text("by", b.by).text("note", b.note, maximumText);
        check.moment("at", b.at).within("act", b.act, Act::seen, Act::reopened);
        check.within("outcome", b.outcome, Outcome::none, Outcome::notReached);
    }
    void operator()(const EntriesOpened& b)
    {
        check.id("course", b.course).text("by", b.by).moment("at", b.at);
        check.within("entries", b.entries.size(), std::size_t{1}, maximumItems);
    }
    void operator()(const VersionsOpened& b)
    {
        check.id("course", b.course).text("by", b.by).moment("at", b.at);
        check.within("versions", b.versions.size(), std::size_t{1}, maximumItems);
        for (const EntryVersion& version : b.versions)
            check.id("device", version.device).that("number", version.number > 0 ? Done{} : fail(Reason::outOfRange, "want 1 or more"));
    }
    void operator()(const MessageWritten& b)
    {
        check.id("course", b.course).id("message", b.message).text("text", b.text, maximumText).text("by", b.by);
        check.moment("at", b.at);
    }
    void operator()(const MessageRead& b)
    {
        check.id("course", b.course).id("message", b.message).moment("at", b.at);
    }
    void operator()(const FollowUpRecorded& b)
    {
        check.id("course", b.course).within("change", b.change, GlobalChange::veryMuchBetter, GlobalChange::worse);
        check.within("satisfaction", b.satisfaction, 1, 5);
        check.within("complications", b.complications.size(), std::size_t{0}, std::size_t{40});
        for (const std::string& complication : b.complications)
            check.text("complication", complication, 60);
        check.text("management", b.management, maximumText).text("next plan", b.nextPlan, maximumText);
        check.text("by", b.by).moment("at", b.at);
    }
    void operator()(const ProtocolSigned& b)
    {
        check.moment("at", b.at).within("signature", b.signature.size(), std::size_t{0}, maximumSignature);
        protocol(check, b.protocol);
    }
    void operator()(const ClinicDescribed& b)
    {
        check.text("zone", b.zone, 64).within("people", b.people.size(), std::size_t{0}, maximumItems);
        for (const std::string& person : b.people)
            check.text("person", person);
        contacts(check, b.contacts);
    }
    void operator()(const StepTaken& b)
    {
        check.within("step", b.step, Step::deskAdded, newestStep).text("by", b.by).text("with", b.with).moment("at", b.at);
    }
    void operator()(const KeyAnnounced& b)
    {
        check.id("course", b.course).that("number", b.number > 0 ? Done{} : fail(Reason::outOfRange, "want 1 or more"));
        check.that("key", b.boxKey != bytes::Array<32>{} ? Done{} : fail(Reason::malformed, "missing"));
    }
    void operator()(const PatientLinked& b) { check.id("course", b.course).id("mailbox", b.mailbox); }
    void operator()(const BandLearned& b)
    {
        const bands::Learned& learned = b.learned;
        const bands::Provenance& provenance = learned.band.provenance();
        check.text("version", provenance.version, 64).text("learned on", provenance.learnedOn, 10);
        check.text("hash", provenance.hash, 64).text("seed", learned.seed, 64).text("by", learned.by);
        check.moment("at", learned.at).within("courses", learned.courses.size(), std::size_t{learned.brought ? 0U : 1U}, bands::mostCourses);
        if (learned.brought)
            check.text("name in the file", learned.brought->name, 64);
        check.that("courses", std::is_sorted(learned.courses.begin(), learned.courses.end())
                                  ? Done{}
                                  : fail(Reason::malformed, "not in the order of their ids"));
        for (const auto& [refusal, count] : learned.refused)
            check.within("refusal", refusal, bands::Refusal::noConsent, bands::Refusal::tooFewDays)
                .within("refused", count, 1, 1'000'000);
        for (const bands::SymptomCoverage& of : learned.coverage.symptoms) {
            check.within("fit", of.fit, bands::Fit::notEnough, bands::Fit::tooWide);
            check.within("symptom", of.symptom, recovery::Symptom::pain, recovery::Symptom::numbness);
            check.within("readings", of.readings, 0, 100'000'000);
            above(above(check, of.above90), of.above97);
        }
        above(check, learned.coverage.overall90);
        check.within("checked courses", learned.coverage.courses, static_cast<std::int32_t>(learned.courses.size()),
                     static_cast<std::int32_t>(learned.courses.size()));
        thresholds(check, b.thresholds);
    }
    void operator()(const PhotoTaken& b)
    {
        check.id("course", b.course).that("manifest", photos::check(b.manifest)).moment("at", b.at);
        check.within("pose", b.pose, photos::Pose::front, photos::Pose::rightOblique);
    }
    void operator()(const PhotoRemoved& b) { check.id("course", b.course).id("photo", b.photo).moment("at", b.at); }
    void operator()(const ClinicPhotoTaken& b)
    {
        check.id("course", b.course).that("manifest", photos::check(b.manifest)).text("by", b.by).moment("at", b.at);
        check.within("pose", b.pose, photos::Pose::front, photos::Pose::rightOblique);
    }
    void operator()(const ClinicPhotoRemoved& b)
    {
        check.id("course", b.course).id("photo", b.photo).text("by", b.by).moment("at", b.at);
    }
    void operator()(const PhotosReceived& b)
    {
        check.id("course", b.course).moment("at", b.at).within("photos", b.photos.size(), std::size_t{1}, maximumItems);
        for (const photos::PhotoId& photo : b.photos)
            check.id("photo", photo);
    }
    void operator()(const EyesMarked& b)
    {
        check.id("course", b.course).id("photo", b.photo).that("eyes", photos::check(b.eyes)).text("by", b.by).moment("at", b.at);
    }
    void operator()(const ActTakenBack& b)
    {
        check.id("course", b.course).text("by", b.by).moment("at", b.at);
        operation("act", b.act);
    }
    void operator()(const CallNoted& b)
    {
        check.id("course", b.course).within("contact", b.contact, Contact::spoken, Contact::visitBroughtForward);
        check.text("text", b.text, maximumText).text("by", b.by).moment("at", b.at);
    }
    void operator()(const WordHandedOver& b)
    {
        check.text("word", b.text, maximumWord).text("by", b.by).moment("at", b.at);
        check.within("replaces", b.replaces.size(), std::size_t{0}, maximumItems);
        for (const OperationName& word : b.replaces)
            operation("replaces", word);
    }
    void operator()(const DoseLimited& b)
    {
        check.that("limit", anaesthesia::check(b.limits)).text("by", b.by).moment("at", b.at);
    }
    void operator()(const RoleGiven& b)
    {
        check.text("person", b.person).that("person", b.person.empty() ? fail(Reason::notEnough, "missing") : Done{});
        check.within("role", b.role, Role::inCharge, newestRole).text("by", b.by).moment("at", b.at);
    }
    void operator()(const WorkDone& b)
    {
        check.within("task", b.task, Task::treat, newestTask).text("by", b.by).moment("at", b.at);
    }
    void operator()(const BandChosen& b)
    {
        check.text("version", b.choice.version, 64).text("by", b.choice.by).text("reason", b.choice.reason, maximumText);
        check.moment("at", b.choice.at);
    }
};

}  // namespace

Done check(const Body& body)
{
    BodyCheck visitor;
    std::visit(visitor, body);
    return visitor.check.done();
}

}  // namespace ebbline::records
