// Of a bundle: the care plan, answers to reminders, messages, and the follow-up.
#include "core/exchange/fhir_reader.h"

#include "core/clock/iso8601.h"

namespace ebbline::exchange::fhir {

namespace {

constexpr std::size_t longestName = 200;  // as records::check() has it

aftercare::Instruction instructionOf(const Json& detail)
{
    aftercare::Instruction instruction{};
    const Json* id = extensionOf(detail, "instruction", "valueString");
    if (id == nullptr)
        refuse(Reason::malformed, "an instruction has no name");
    instruction.id = wordsOf(*id, "instruction");
    instruction.kind = choice<aftercare::InstructionKind>(detail, "kind", 1, 17);
    instruction.firstDay = whole(detail, "first-day");
    instruction.lastDay = whole(detail, "last-day");
    instruction.everyDays = whole(detail, "every-days");
    for (const Json& one : arrayOf(detail, "extension"))
        if (textOf(one, "url") == ours("minute-of-day"))
            instruction.minutesOfDay.push_back(wholeOf(member(one, "valueInteger"), "minute-of-day"));
    instruction.ignoresQuietHours = flag(detail, "ignores-quiet-hours");
    instruction.clinicText = textOrNone(detail, "description");
    return instruction;
}

}  // namespace

void Reader::carePlan(const Json& resource, const std::string& url)
{
    bool isOurs = false;
    for (const Json& category : arrayOf(resource, "category"))
        isOurs = isOurs || codeOf(category, ours("care-plan")) == "aftercare";
    if (!isOurs)
        return;
    if (m_record.care)
        refuse(Reason::malformed, "the care plan is there twice");
    speaksOf(resource, "subject");
    PlannedCare care;
    care.protocol = textOrNone(resource, "title");
    if (care.protocol.size() > longestName)
        refuse(Reason::tooLarge, "the protocol's name is too long");
    const auto visit = momentOf(resource, "visit");
    if (!visit)
        refuse(Reason::malformed, "the care plan does not say when the visit is");
    care.visit = *visit;
    care.plan.followUpDay = whole(resource, "follow-up-day");
    for (const Json& activity : arrayOf(resource, "activity")) {
        if (activity.contains("detail") == activity.contains("reference"))
            refuse(Reason::malformed, "an activity is not one of an instruction and a task");
        if (activity.contains("detail"))
            care.plan.instructions.push_back(instructionOf(activity["detail"]));
        else
            m_planned.push_back(referenceOf(activity, "reference"));
    }
    if (const Done sound = aftercare::check(care.plan); !sound)
        throw Refused{sound.error()};
    m_plan = url;
    m_record.care = std::move(care);
}

void Reader::task(const Json& resource, const std::string& url)
{
    speaksOf(resource, "for");
    m_tasks.insert(url);
    for (const Json& plan : arrayOf(resource, "basedOn"))
        m_basedOn.insert(textOf(plan, "reference"));
    records::ReminderAnswered made;
    made.course = m_record.course;
    made.key = textOf(resource, "description");
    const std::string status = textOf(resource, "status");
    if (status == "requested")
        return;  // nobody answered it: computed, and for people
    made.at = need(takeMoment(resource, "lastModified"));
    if (status == "completed")
        made.answer = records::ReminderAnswer::done;
    else if (status == "rejected")
        made.answer = records::ReminderAnswer::notDone;
    else if (status == "on-hold")
        made.answer = records::ReminderAnswer::later;
    else
        refuse(Reason::malformed, "a task is neither requested, completed, rejected nor on hold");
    if (const Json* until = extensionOf(resource, "later-until", "valueInstant")) {
        if (!until->is_string())
            refuse(Reason::malformed, "'later-until' is no text");
        made.laterUntil = need(clock::parseIso8601(until->get_ref<const std::string&>())).at;
    }
    if (!m_keys.insert(made.key).second)
        refuse(Reason::malformed, "a reminder is answered twice");
    m_record.answers.push_back(std::move(made));
}

void Reader::message(const Json& resource, const bytes::Array<16>& id)
{
    speaksOf(resource, "subject");
    records::MessageWritten made;
    made.course = m_record.course;
    made.message = records::MessageId{id};
    made.at = need(takeMoment(resource, "sent"));
    const Json& sender = member(resource, "sender");
    if (sender.contains("display"))
        made.by = textOf(sender, "display");
    else
        speaksOf(resource, "sender");
    const Json& payload = arrayOf(resource, "payload");
    if (payload.size() != 1)
        refuse(Reason::malformed, "a message is empty, or more than one");
    made.text = textOf(payload[0], "contentString");
    if (const auto read = momentOf(resource, "read"))
        m_record.reads.push_back({m_record.course, made.message, *read});
    m_record.messages.push_back(std::move(made));
}

void Reader::followUp(const Json& resource)
{
    if (m_record.followUp)
        refuse(Reason::malformed, "the follow-up is there twice");
    speaksOf(resource, "subject");
    records::FollowUpRecorded visit;
    visit.course = m_record.course;
    visit.change = choice<records::GlobalChange>(resource, "change", 1, 5);
    visit.uncomplicated = flag(resource, "uncomplicated");
    for (const auto& [name, place] : {std::pair{"management", &visit.management}, std::pair{"next-plan", &visit.nextPlan},
                                      std::pair{"by", &visit.by}}) {
        if (const Json* value = extensionOf(resource, name, "valueString"))
            *place = wordsOf(*value, name);
    }
    visit.at = need(takeMoment(resource, "effectiveDateTime"));
    for (const Json& component : arrayOf(resource, "component")) {
        const std::string name = textOf(member(component, "code"), "text");
        if (name == "satisfaction, 1 to 5")
            visit.satisfaction = wholeOf(member(component, "valueInteger"), name);
        else if (name == "complication")
            visit.complications.push_back(textOf(component, "valueString"));
    }
    m_record.followUp = std::move(visit);
}

}  // namespace ebbline::exchange::fhir
