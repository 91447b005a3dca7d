// The clinic's band at the desk: who teaches it, learning a version, using it, going back.

#include "core/desk/inside.h"

#include "core/bytes/text.h"
#include "core/clock/iso8601.h"
#include "core/rehearsal/calibrate.h"
#include "core/rehearsal/grounds.h"
#include "core/rehearsal/taught.h"
#include "core/triage/course_curve.h"

#include <algorithm>
#include <iterator>

namespace ebbline::desk {

namespace {

bands::CourseFacts factsOf(const journal::CourseState& course, const triggers::CourseInput& input)
{
    bands::CourseFacts facts;
    facts.consented = course.treatment && course.treatment->treatment.learningConsent;
    facts.closed = course.followUp.has_value();
    facts.uncomplicated = course.followUp && course.followUp->uncomplicated && course.followUp->complications.empty();
    facts.treated = std::any_of(course.acts.begin(), course.acts.end(), [](const records::FindingActed& act) {
        return act.outcome == records::Outcome::treatedInClinic || act.outcome == records::Outcome::sentToUrgentCare;
    });
    facts.observedDays = rehearsal::observedDays(input);
    return facts;
}

/// The thresholds of the statistics; guards and rules in points stay the protocol's own.
void takeStatistics(triggers::Thresholds& into, const triggers::Thresholds& from)
{
    for (const triggers::Statistic statistic : triggers::allStatistics)
        triggers::thresholdOf(into, statistic) = triggers::thresholdOf(from, statistic);
    into.falseAlertBudget = from.falseAlertBudget;
    // They were calibrated beside the rules that they came with.
    into.calibratedOn = rehearsal::sameRules(into, from) ? from.calibratedOn : rehearsal::withChange(from.calibratedOn);
}

/// Below rehearsal::fewestToCalibrate courses: the thresholds of the protocol as they are.
Result<triggers::Thresholds> calibrated(const std::vector<Teaching::Course>& courses, triggers::Protocol start,
                                        const bands::Band& band)
{
    std::vector<rehearsal::KnownCourse> known;
    known.reserve(courses.size());
    for (const Teaching::Course& course : courses)
        known.push_back({bytes::toHex(course.taught.course.view()), course.input, {}});
    rehearsal::CalibrationSettings settings;
    settings.budget = start.thresholds.falseAlertBudget;
    settings.learnBand = false;
    start.band = band;
    const auto done = rehearsal::calibrate(known, start, settings);
    if (!done && done.error().reason == Reason::notEnough)
        return start.thresholds;
    if (!done)
        return fail(done.error());
    return done->protocol.thresholds;
}

/// False if it cannot be told.
bool isAfter(const clock::Moment& treated, const std::string& isoDay)
{
    const auto day = clock::parseIso8601(isoDay + "T00:00:00Z");
    return day && treated.day() > day->day();
}

}  // namespace

Teaching Desk::teaching() const
{
    Teaching teaching;
    for (const auto& [id, course] : m_inside->vault.state().courses) {
        triggers::CourseInput input = triage::courseInput(course);
        if (const auto refusal = bands::refusalOf(factsOf(course, input)))
            teaching.refused.emplace_back(id, *refusal);
        else
            teaching.courses.push_back({rehearsal::taughtAs(id, input), std::move(input)});
    }
    std::stable_sort(teaching.courses.begin(), teaching.courses.end(),
                     [](const auto& a, const auto& b) { return a.input.treated.at > b.input.treated.at; });
    if (teaching.courses.size() > bands::mostCourses)
        teaching.courses.erase(teaching.courses.begin() + bands::mostCourses, teaching.courses.end());
    return teaching;
}

const bands::History& Desk::bandHistory() const
{
    return m_inside->vault.state().bands;
}

BandLesson Desk::bandLesson() const
{
    return {teaching(), protocols().front(), m_inside->person, m_inside->now()};
}

Result<records::BandLearned> learnFrom(BandLesson lesson)
{
    Teaching& teaching = lesson.teaching;
    // In the order of their ids, so that the same courses give the same version to the last bit.
    std::sort(teaching.courses.begin(), teaching.courses.end(),
              [](const auto& a, const auto& b) { return a.taught.course < b.taught.course; });
    std::map<bands::Refusal, std::int32_t> refused;
    for (const auto& [course, refusal] : teaching.refused)
        ++refused[refusal];
    std::vector<bands::Taught> taught;
    std::vector<const triggers::CourseInput*> inputs;
    for (const Teaching::Course& course : teaching.courses) {
        taught.push_back(course.taught);
        inputs.push_back(&course.input);
    }
    const bands::Band& seed = bands::seedBand();
    auto learned = bands::learnVersion(std::move(taught), std::move(refused), seed,
                                       rehearsal::sidesMovement(inputs, seed), lesson.by, lesson.at);
    if (!learned)
        return fail(learned.error());
    auto whole = rehearsal::withSums(learned->band, inputs);
    if (!whole)
        return fail(whole.error());
    learned->band = *whole;
    auto thresholds = calibrated(teaching.courses, lesson.protocol, learned->band);
    if (!thresholds)
        return fail(thresholds.error());
    return records::BandLearned{std::move(*learned), std::move(*thresholds)};
}

Result<std::string> Desk::keepBand(const records::BandLearned& learned)
{
    if (m_inside->person.empty())
        return fail(Reason::invalidState, "band: nobody is named at the desk");
    // Of who began it: learning takes minutes, and another person may be at the desk when it ends.
    if (const journal::State& state = m_inside->vault.state();
        !state.roles.empty() && !state.mayDo(learned.learned.by, records::Task::protocol))
        return fail(Reason::refused, "role: it is not for who learned it");
    const bands::History& history = bandHistory();
    const bool known = std::any_of(history.versions().begin(), history.versions().end(), [&](const auto& each) {
        return learned.learned.brought ? each.version() == learned.learned.version()
                                       : !each.brought && each.band.provenance().hash == learned.learned.band.provenance().hash;
    });
    if (known)
        return fail(Reason::alreadyExists, "band: nothing has changed since a version was learned");
    if (const Done done = m_inside->append(learned); !done)
        return fail(done.error());
    return learned.learned.version();
}

Result<std::string> Desk::learnBand()
{
    if (m_inside->person.empty())
        return fail(Reason::invalidState, "band: nobody is named at the desk");
    const auto learned = learnFrom(bandLesson());
    return learned ? keepBand(*learned) : fail(learned.error());
}

Result<records::BandLearned> Desk::checkBrought(const triggers::Protocol& protocol, bool ofOthersAlone) const
{
    std::vector<bands::Taught> unseen;
    Teaching own = teaching();
    for (Teaching::Course& course : own.courses)
        if (ofOthersAlone || isAfter(course.input.treated, protocol.band.provenance().learnedOn))
            unseen.push_back(std::move(course.taught));
    auto brought = bands::broughtVersion(protocol.band, ofOthersAlone, std::move(unseen), m_inside->person, m_inside->now());
    if (!brought)
        return fail(brought.error());
    records::BandLearned body{std::move(*brought), protocol.thresholds};
    body.thresholds.calibratedOn = rehearsal::withFile(body.thresholds.calibratedOn);
    const Done sound = records::check(body);
    return sound ? Result<records::BandLearned>(std::move(body)) : fail(sound.error());
}

Done Desk::changeBand(bands::Choice choice, const triggers::Protocol* changed)
{
    if (m_inside->person.empty())
        return fail(Reason::invalidState, "band: nobody is named at the desk");
    if (const Done may = m_inside->needsTask(records::Task::protocol); !may)
        return may;
    if (choice.reason.empty())
        return fail(Reason::notEnough, "band: a change needs its reason");
    if (const Done may = m_inside->needsRoot(); !may)
        return may;
    choice.by = m_inside->person;
    choice.at = m_inside->now();
    const journal::State& state = m_inside->vault.state();
    if (const Done allowed = state.bands.allows(choice); !allowed)
        return allowed;
    const bands::Learned* learned = state.bands.find(choice.version);
    const auto thresholds = state.bandThresholds.find(choice.version);
    const triggers::Thresholds statistics =
        thresholds == state.bandThresholds.end() ? triggers::Thresholds{} : thresholds->second;

    const bands::Band& band = learned ? learned->band : bands::seedBand();
    if (changed && !(changed->band == band))
        return fail(Reason::refused, "band: it is not what the version says");

    std::vector<records::Body> bodies{records::BandChosen{choice}};
    bool met = false;
    for (triggers::Protocol protocol : protocols()) {
        if (changed && changed->name == protocol.name) {
            met = true;
            protocol = *changed;
        } else {
            ++protocol.version;
            protocol.band = band;
            takeStatistics(protocol.thresholds, statistics);
        }
        protocol.former.reset();
        const auto signature = m_inside->vault.clinicRoot().sign(records::encodeProtocol(protocol));
        const records::ProtocolSigned made{std::move(protocol), bytes::Bytes(signature.begin(), signature.end()), m_inside->now()};
        std::ranges::copy(m_inside->named(records::Task::protocol, {}, made), std::back_inserter(bodies));
    }
    if (changed && !met)
        return fail(Reason::notFound, "protocol: there is none of that name");
    const std::vector<std::string_view> finished = changed && protocolDraft() ? std::vector<std::string_view>{protocolDraftName} : std::vector<std::string_view>{};
    const auto appended = m_inside->vault.append(bodies, m_inside->now(), {}, {}, finished);
    return appended ? Done{} : Done(fail(appended.error()));
}

Done Desk::useBand(const std::string& version, const std::string& reason)
{
    return changeBand({version, false, {}, reason, {}});
}

Done Desk::returnToBand(const std::string& version, const std::string& reason)
{
    return changeBand({version, true, {}, reason, {}});
}

Done Desk::signWithBand(const triggers::Protocol& protocol, const std::string& reason)
{
    const std::string& version = protocol.band.provenance().version;
    return changeBand({version, bandHistory().previous() == version, {}, reason, {}}, &protocol);
}

}  // namespace ebbline::desk
