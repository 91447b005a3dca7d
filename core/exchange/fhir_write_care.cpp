// Of a bundle: findings, the care plan with its reminders, messages, and the follow-up.
#include "core/exchange/fhir_writer.h"

#include "core/clock/iso8601.h"

namespace ebbline::exchange::fhir {

namespace {

/// high: an emergency, or a call now.
std::string_view severityOf(recovery::Urgency urgency)
{
    switch (urgency) {
    case recovery::Urgency::emergency:
    case recovery::Urgency::callNow: return "high";
    case recovery::Urgency::nextWorkingDay: return "moderate";
    case recovery::Urgency::atReview: break;
    }
    return "low";
}

std::string_view wordOf(records::Act act)
{
    switch (act) {
    case records::Act::seen: return "seen";
    case records::Act::taken: return "taken";
    case records::Act::called: return "called";
    case records::Act::visitBroughtForward: return "visit brought forward";
    case records::Act::closed: return "closed";
    case records::Act::reopened: break;
    }
    return "reopened";
}

/// Empty for none.
std::string_view wordOf(records::Outcome outcome)
{
    switch (outcome) {
    case records::Outcome::reassured: return "reassured";
    case records::Outcome::advised: return "advised";
    case records::Outcome::treatedInClinic: return "treated-in-clinic";
    case records::Outcome::sentToUrgentCare: return "sent-to-urgent-care";
    case records::Outcome::notReached: return "not-reached";
    case records::Outcome::none: break;
    }
    return {};
}

Json mitigationOf(const records::FindingActed& act)
{
    const std::string word(wordOf(act.act));
    std::string code = word;
    std::replace(code.begin(), code.end(), ' ', '-');
    Json done = Json::object();
    if (const std::string_view outcome = wordOf(act.outcome); !outcome.empty())
        done["extension"] = Json::array({extension("outcome", "valueString", outcome)});
    done["action"] = codeable(ours("act"), code, act.note.empty() ? word : word + ": " + act.note);
    putMoment(done, "date", act.at);
    if (!act.by.empty())
        done["author"] = {{"display", act.by}};
    return done;
}

std::string twoDigits(int number)
{
    return (number < 10 ? "0" : "") + std::to_string(number);
}

/// `day 0 to 4, every day, at 21:00 by the patient's clock`.
std::string scheduleOf(const aftercare::Instruction& instruction)
{
    std::string text = "day " + std::to_string(instruction.firstDay);
    if (instruction.lastDay > instruction.firstDay) {
        text += " to " + std::to_string(instruction.lastDay) + ", every ";
        text += instruction.everyDays == 1 ? "day" : std::to_string(instruction.everyDays) + " days";
    }
    for (std::size_t i = 0; i < instruction.minutesOfDay.size(); ++i) {
        const int minute = instruction.minutesOfDay[i];
        text += (i == 0 ? ", at " : " and ") + twoDigits(minute / 60) + ":" + twoDigits(minute % 60);
    }
    return text + (instruction.minutesOfDay.empty() ? "" : " by the patient's clock");
}

}  // namespace

void Writer::issue(const triage::Finding& finding)
{
    Json made{{"resourceType", "DetectedIssue"}};
    made["extension"] = Json::array({extension("urgency", "valueString", recovery::word(finding.urgency))});
    if (finding.changedSince)
        made["extension"].push_back(extension("changed-since", "valueBoolean", true));
    made["status"] = "final";
    const std::string rule = finding.key.substr(2, finding.key.find('/', 2) - 2);
    made["code"] = codeable(ours("finding"), rule, rule);
    made["severity"] = severityOf(finding.urgency);
    made["patient"] = reference(m_patient);
    putMoment(made, "identifiedDateTime", finding.raisedAt);
    if (finding.entry) {
        Json detail = Json::array({reference(urlOf(finding.entry->view()))});
        std::optional<recovery::Stream> stream;
        if (const auto* judged = std::get_if<triggers::Finding>(&finding.what))
            stream = judged->stream;
        // A trigger's own score; of a warning, the temperature that its reasons name.
        const auto* warned = std::get_if<warnings::Finding>(&finding.what);
        const bool byHeat = warned && std::any_of(warned->reasons.begin(), warned->reasons.end(),
                                                  [](const std::string& reason) { return reason.starts_with("temperature "); });
        if (const auto measured = m_measured.find({*finding.entry, stream}); measured != m_measured.end() && (stream || byHeat))
            detail.push_back(reference(measured->second));
        made["evidence"] = Json::array({{{"detail", std::move(detail)}}});
    }
    made["detail"] = triage::explain(finding);
    if (!finding.acts.empty())
        made["mitigation"] = Json::array();
    for (const records::FindingActed& act : finding.acts)
        made["mitigation"].push_back(mitigationOf(act));
    add(std::move(made), nextUrl());
}

/// The plan as the phone has it, and its reminders.
void Writer::carePlan()
{
    const PlannedCare& care = *m_record.care;
    Json made{{"resourceType", "CarePlan"}};
    made["extension"] = Json::array({extension("follow-up-day", "valueInteger", care.plan.followUpDay), momentExtension("visit", care.visit)});
    made["status"] = m_record.followUp ? "completed" : "active";
    made["intent"] = "plan";
    made["category"] = Json::array({codeable(ours("care-plan"), "aftercare", "Aftercare of a lift with absorbable threads")});
    if (!care.protocol.empty())
        made["title"] = care.protocol;
    made["subject"] = reference(m_patient);
    made["period"] = Json::object();
    putMoment(made["period"], "start", m_record.treated);
    Json activities = Json::array();
    for (const aftercare::Instruction& instruction : care.plan.instructions)
        activities.push_back({{"detail", activity(instruction)}});
    for (Json& one : m_activities)
        activities.push_back(std::move(one));
    if (!activities.empty())
        made["activity"] = std::move(activities);
    add(std::move(made), m_plan);
}

Json Writer::activity(const aftercare::Instruction& instruction) const
{
    Json extensions = Json::array();
    extensions.push_back(extension("instruction", "valueString", instruction.id));
    extensions.push_back(extension("kind", "valueInteger", static_cast<int>(instruction.kind)));
    extensions.push_back(extension("first-day", "valueInteger", instruction.firstDay));
    extensions.push_back(extension("last-day", "valueInteger", instruction.lastDay));
    extensions.push_back(extension("every-days", "valueInteger", instruction.everyDays));
    for (const int minute : instruction.minutesOfDay)
        extensions.push_back(extension("minute-of-day", "valueInteger", minute));
    extensions.push_back(extension("ignores-quiet-hours", "valueBoolean", instruction.ignoresQuietHours));
    const NamedInstruction name = named(instruction.kind);
    Json detail{{"extension", std::move(extensions)}};
    detail["code"] = codeable(ours("instruction"), name.code, name.text);
    detail["status"] = "scheduled";
    detail["scheduledString"] = scheduleOf(instruction);
    if (!instruction.clinicText.empty())
        detail["description"] = instruction.clinicText;
    return detail;
}

/// Answers first, then the reminders that have none.
void Writer::tasks()
{
    std::map<std::string, const DueReminder*> due;
    std::set<std::string> answered;
    for (const DueReminder& reminder : m_options.reminders)
        due.emplace(reminder.key, &reminder);
    for (const records::ReminderAnswered& answer : m_record.answers) {
        const auto found = due.find(answer.key);
        const bool fits = found != due.end() && !found->second->answerIsOlder;
        if (fits)
            answered.insert(answer.key);
        Json made = task(answer.answer == records::ReminderAnswer::done ? "completed" : answer.answer == records::ReminderAnswer::notDone ? "rejected" : "on-hold",
                         answer.key, fits ? found->second : nullptr);
        if (answer.laterUntil)
            made["extension"] = Json::array({extension("later-until", "valueInstant", clock::toIso8601(*answer.laterUntil))});
        putMoment(made, "lastModified", answer.at);
        addTask(std::move(made));
    }
    for (const DueReminder& reminder : m_options.reminders)
        if (!answered.contains(reminder.key))
            addTask(task("requested", reminder.key, &reminder));
}

Json Writer::task(std::string_view status, const std::string& key, const DueReminder* due) const
{
    Json made{{"resourceType", "Task"}};
    if (!m_plan.empty())
        made["basedOn"] = Json::array({reference(m_plan)});
    made["status"] = status;
    made["intent"] = "plan";
    made["description"] = key;
    made["for"] = reference(m_patient);
    if (due) {
        Json period = Json::object();
        putMoment(period, "start", due->due);
        made["restriction"] = {{"period", std::move(period)}};
    }
    return made;
}

void Writer::addTask(Json made)
{
    const std::string url = nextUrl();
    add(std::move(made), url);
    m_activities.push_back({{"reference", reference(url)}});
}

void Writer::communication(const records::MessageWritten& message)
{
    Json made{{"resourceType", "Communication"}};
    const auto read = std::find_if(m_record.reads.begin(), m_record.reads.end(),
                                   [&](const records::MessageRead& one) { return one.message == message.message; });
    if (read != m_record.reads.end())
        made["extension"] = Json::array({momentExtension("read", read->at)});
    made["status"] = "completed";
    made["subject"] = reference(m_patient);
    putMoment(made, "sent", message.at);
    if (message.by.empty()) {
        made["sender"] = reference(m_patient);
    } else {
        made["recipient"] = Json::array({reference(m_patient)});
        made["sender"] = {{"display", message.by}};
    }
    made["payload"] = Json::array({{{"contentString", message.text}}});
    add(std::move(made), urlOf(message.message.view()));
}

void Writer::followUp(const records::FollowUpRecorded& visit)
{
    Json extensions = Json::array();
    extensions.push_back(extension("change", "valueInteger", static_cast<int>(visit.change)));
    extensions.push_back(extension("uncomplicated", "valueBoolean", visit.uncomplicated));
    for (const auto& [name, text] : {std::pair{"management", &visit.management}, std::pair{"next-plan", &visit.nextPlan},
                                     std::pair{"by", &visit.by}}) {
        if (!text->empty())
            extensions.push_back(extension(name, "valueString", *text));
    }
    Json made{{"resourceType", "Observation"}, {"extension", std::move(extensions)}, {"status", "final"}};
    made["code"] = codeable(ours("follow-up"), "global-change", "Change since before the treatment, five named steps");
    made["subject"] = reference(m_patient);
    putMoment(made, "effectiveDateTime", visit.at);
    if (!visit.by.empty())
        made["performer"] = Json::array({{{"display", visit.by}}});
    constexpr std::array steps{"very much better", "much better", "better", "unchanged", "worse"};
    made["valueString"] = steps[static_cast<std::size_t>(visit.change) - 1];
    made["component"] = Json::array();
    made["component"].push_back({{"code", {{"text", "satisfaction, 1 to 5"}}}, {"valueInteger", visit.satisfaction}});
    for (const std::string& complication : visit.complications)
        made["component"].push_back({{"code", {{"text", "complication"}}}, {"valueString", complication}});
    add(std::move(made), nextUrl());
}

}  // namespace ebbline::exchange::fhir
