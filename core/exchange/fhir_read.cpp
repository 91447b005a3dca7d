// Reads a bundle that fhir_write.cpp wrote. The text comes from outside: nothing is taken for granted.
#include "core/exchange/fhir_json.h"

#include "core/bytes/text.h"
#include "core/clock/iso8601.h"

#include <cmath>

namespace ebbline::exchange {

namespace {

using namespace fhir;

/// What went wrong inside the reader; never leaves readBundle().
struct Refused {
    Error error;
};

[[noreturn]] void refuse(Reason reason, const std::string& detail)
{
    throw Refused{{reason, "bundle: " + detail}};
}

template <typename T>
T need(Result<T> result)
{
    if (!result)
        throw Refused{result.error()};
    return std::move(*result);
}

const Json& member(const Json& object, const char* name)
{
    if (!object.is_object())
        refuse(Reason::malformed, std::string("an object was expected around '") + name + "'");
    const auto found = object.find(name);
    if (found == object.end())
        refuse(Reason::malformed, std::string("'") + name + "' is missing");
    return *found;
}

const Json& arrayOf(const Json& object, const char* name)
{
    static const Json none = Json::array();
    if (!object.contains(name))
        return none;
    if (!object[name].is_array())
        refuse(Reason::malformed, std::string("'") + name + "' is no list");
    return object[name];
}

std::string textOf(const Json& object, const char* name)
{
    const Json& value = member(object, name);
    if (!value.is_string())
        refuse(Reason::malformed, std::string("'") + name + "' is no text");
    return value;
}

int wholeOf(const Json& value, std::string_view name)
{
    if (!value.is_number_integer())
        refuse(Reason::malformed, "'" + std::string(name) + "' is no whole number");
    if (value < -1'000'000'000 || value > 1'000'000'000)
        refuse(Reason::outOfRange, "'" + std::string(name) + "' is out of its bounds");
    return value;
}

int whole(const Json& resource, std::string_view name)
{
    const Json* value = extensionOf(resource, name, "valueInteger");
    if (value == nullptr)
        refuse(Reason::malformed, "the extension '" + std::string(name) + "' is missing");
    return wholeOf(*value, name);
}

double decimal(const Json& resource, std::string_view name)
{
    const Json* value = extensionOf(resource, name, "valueDecimal");
    if (value == nullptr || !value->is_number())
        refuse(Reason::malformed, "the extension '" + std::string(name) + "' is missing or no number");
    return *value;
}

bool flag(const Json& resource, std::string_view name)
{
    const Json* value = extensionOf(resource, name, "valueBoolean");
    if (value == nullptr || !value->is_boolean())
        refuse(Reason::malformed, "the extension '" + std::string(name) + "' is missing or neither true nor false");
    return *value;
}

std::string wordsOf(const Json& value, std::string_view name)
{
    if (!value.is_string())
        refuse(Reason::malformed, "the extension '" + std::string(name) + "' is no text");
    return value;
}

/// A numbered word within its list; what it means is checked with the whole record.
template <typename E>
E choice(const Json& resource, std::string_view name, int lowest, int highest)
{
    const int number = whole(resource, name);
    if (number < lowest || number > highest)
        refuse(Reason::outOfRange, "the extension '" + std::string(name) + "' is out of its list");
    return static_cast<E>(number);
}

recovery::Stream streamOf(const std::string& link)
{
    const std::size_t first = link.find('.');
    const std::size_t second = link.find('.', first + 1);
    if (first == std::string::npos || second == std::string::npos)
        refuse(Reason::malformed, "a score names no symptom and side");
    return {need(recovery::symptomFromWord(std::string_view(link).substr(first + 1, second - first - 1))),
            need(recovery::sideFromWord(std::string_view(link).substr(second + 1)))};
}

class Reader {
public:
    CourseRecord read(const Json& bundle)
    {
        if (textOf(bundle, "resourceType") != "Bundle" || textOf(bundle, "type") != "collection")
            refuse(Reason::malformed, "this is not a collection of resources");
        const Json& identifier = member(bundle, "identifier");
        if (textOf(identifier, "system") != ours("course"))
            refuse(Reason::malformed, "this bundle was not written by Ebbline");
        const auto course = bytes::fromHex(textOf(identifier, "value"));
        if (!course || course->size() != 16)
            refuse(Reason::malformed, "the course's number cannot be read");
        m_record.course = recovery::CourseId::from(*course);
        for (const Json& entry : arrayOf(bundle, "entry")) {
            const Json& resource = member(entry, "resource");
            const std::string url = textOf(entry, "fullUrl");
            const std::string type = textOf(resource, "resourceType");
            if (type == "Patient")
                m_patient = need(idFromUrl(url));
            else if (type == "Procedure")
                procedure(resource);
            else if (type == "Device")
                m_devices[url] = device(resource);
            else if (type == "QuestionnaireResponse")
                m_record.entries.push_back(diaryEntry(resource, need(idFromUrl(url))));
            else if (type == "Task")
                m_record.answers.push_back(answer(resource));
            else if (type == "Communication")
                m_record.messages.push_back(message(resource, need(idFromUrl(url))));
            else if (type == "Observation" && extensionOf(resource, "change", "valueInteger") != nullptr)
                m_record.followUp = followUp(resource);
        }
        if (!m_treated)
            refuse(Reason::malformed, "there is no treatment in it");
        finish();
        return std::move(m_record);
    }

private:
    void procedure(const Json& resource)
    {
        m_record.treated = need(takeMoment(resource, "performedDateTime"));
        m_treated = true;
        for (const Json& one : arrayOf(resource, "extension")) {
            const std::string url = textOf(one, "url");
            const std::string start = ours("baseline.");
            if (url.starts_with(start))
                m_record.baseline.insert_or_assign(streamOf(url.substr(start.size())),
                                                   need(recovery::Score::of(wholeOf(member(one, "valueInteger"), "baseline"))));
        }
        if (extensionOf(resource, "drug", "valueInteger") == nullptr)
            return;
        recovery::Treatment treatment;
        treatment.course = m_record.course;
        treatment.at = m_record.treated;
        treatment.anaesthetic.drug = choice<recovery::Drug>(resource, "drug", 1, 2);
        treatment.anaesthetic.percent = decimal(resource, "percent");
        treatment.anaesthetic.epinephrineOneIn = whole(resource, "epinephrine-one-in");
        treatment.anaesthetic.bicarbonatePart = decimal(resource, "bicarbonate-part");
        treatment.anaesthetic.extraMl = decimal(resource, "extra-ml");
        for (const auto& [name, value] : {std::pair{"otherwise-mg", &treatment.otherwiseMg}, std::pair{"weight-kg", &treatment.weightKg}})
            if (extensionOf(resource, name, "valueDecimal") != nullptr)
                *value = decimal(resource, name);
        treatment.dressings = flag(resource, "dressings");
        treatment.cautionsGiven = flag(resource, "cautions-given");
        treatment.consentGiven = flag(resource, "consent-given");
        treatment.learningConsent = flag(resource, "learning-consent");
        if (const Json* name = extensionOf(resource, "placed-by", "valueString"))
            treatment.placedBy = wordsOf(*name, "placed-by");
        for (const Json& one : arrayOf(resource, "focalDevice"))
            m_placed.push_back(textOf(member(one, "manipulated"), "reference"));
        for (const Json& note : arrayOf(resource, "note"))
            treatment.note += textOf(note, "text");
        m_record.treatment = std::move(treatment);
    }

    static recovery::Placement device(const Json& resource)
    {
        recovery::Placement placement;
        placement.side = choice<recovery::Side>(resource, "side", 0, 2);
        placement.zone = choice<recovery::Zone>(resource, "zone", 1, 9);
        placement.view = choice<recovery::ChartView>(resource, "view", 1, 3);
        placement.entry = {decimal(resource, "entry-x"), decimal(resource, "entry-y")};
        placement.end = {decimal(resource, "end-x"), decimal(resource, "end-y")};
        placement.ending = choice<recovery::Ending>(resource, "ending", 1, 2);
        placement.material = choice<recovery::Material>(resource, "material", 1, 5);
        placement.form = choice<recovery::Form>(resource, "form", 1, 6);
        placement.anaestheticMl = decimal(resource, "anaesthetic-ml");
        const Json* how = extensionOf(resource, "redone", "valueInteger");
        const Json* why = extensionOf(resource, "redone-reason", "valueString");
        if ((how == nullptr) != (why == nullptr))
            refuse(Reason::malformed, "a thread that was redone lacks how or why");
        if (why != nullptr)
            placement.redone = recovery::Redone{choice<recovery::Redoing>(resource, "redone", 1, 2), wordsOf(*why, "redone-reason")};
        if (resource.contains("lotNumber"))
            placement.lot = textOf(resource, "lotNumber");
        if (resource.contains("expirationDate"))
            placement.expiry = textOf(resource, "expirationDate");
        for (const Json& property : arrayOf(resource, "property")) {
            const std::string name = textOf(member(property, "type"), "text");
            const Json& values = arrayOf(property, "valueQuantity");
            if (values.empty())
                refuse(Reason::malformed, "a property of a thread has no value");
            const int value = wholeOf(member(values[0], "value"), name);
            if (name == "length")
                placement.lengthMm = value;
            else if (name == "needle or cannula gauge")
                placement.gauge = value;
        }
        return placement;
    }

    recovery::Entry diaryEntry(const Json& resource, const bytes::Array<16>& id) const
    {
        recovery::Entry entry;
        entry.id = recovery::EntryId{id};
        entry.course = m_record.course;
        entry.recordedAt = need(takeMoment(resource, "authored"));
        bool placed = false;
        for (const Json& one : arrayOf(resource, "extension")) {
            if (textOf(one, "url") == ours("about")) {
                entry.at = need(takeMoment(one, "valueDateTime"));
                placed = true;
            }
        }
        if (!placed)
            refuse(Reason::malformed, "an entry does not say which moment it speaks of");
        for (const Json& item : arrayOf(resource, "item")) {
            const std::string link = textOf(item, "linkId");
            const Json& answers = arrayOf(item, "answer");
            if (answers.empty())
                refuse(Reason::malformed, "'" + link + "' has no answer");
            answered(entry, link, answers[0]);
        }
        return entry;
    }

    static void answered(recovery::Entry& entry, const std::string& link, const Json& answer)
    {
        if (link.starts_with("score.")) {
            entry.scores.insert_or_assign(streamOf(link), need(recovery::Score::of(wholeOf(member(answer, "valueInteger"), link))));
        } else if (link.starts_with("sign.")) {
            const recovery::Sign sign = need(recovery::signFromWord(std::string_view(link).substr(5)));
            const Json& value = member(answer, "valueBoolean");
            if (!value.is_boolean())
                refuse(Reason::malformed, "'" + link + "' is neither true nor false");
            (value.get<bool>() ? entry.present : entry.absent).insert(sign);
        } else if (link == "temperature") {
            const Json& value = member(answer, "valueDecimal");
            if (!value.is_number())
                refuse(Reason::malformed, "the temperature is no number");
            entry.temperature = need(recovery::Temperature::celsius(value));
        } else if (link == "note") {
            entry.note = textOf(answer, "valueString");
        }
    }

    records::ReminderAnswered answer(const Json& resource) const
    {
        records::ReminderAnswered made;
        made.course = m_record.course;
        made.key = textOf(resource, "description");
        made.at = need(takeMoment(resource, "lastModified"));
        const std::string status = textOf(resource, "status");
        if (status == "completed")
            made.answer = records::ReminderAnswer::done;
        else if (status == "rejected")
            made.answer = records::ReminderAnswer::notDone;
        else if (status == "on-hold")
            made.answer = records::ReminderAnswer::later;
        else
            refuse(Reason::malformed, "a task is neither completed, rejected nor on hold");
        if (const Json* until = extensionOf(resource, "later-until", "valueInstant")) {
            if (!until->is_string())
                refuse(Reason::malformed, "'later-until' is no text");
            made.laterUntil = need(clock::parseIso8601(until->get_ref<const std::string&>())).at;
        }
        return made;
    }

    records::MessageWritten message(const Json& resource, const bytes::Array<16>& id) const
    {
        records::MessageWritten made;
        made.course = m_record.course;
        made.message = records::MessageId{id};
        made.at = need(takeMoment(resource, "sent"));
        const Json& sender = member(resource, "sender");
        if (sender.contains("display"))
            made.by = textOf(sender, "display");
        const Json& payload = arrayOf(resource, "payload");
        if (payload.empty())
            refuse(Reason::malformed, "a message is empty");
        made.text = textOf(payload[0], "contentString");
        return made;
    }

    records::FollowUpRecorded followUp(const Json& resource) const
    {
        records::FollowUpRecorded visit;
        visit.course = m_record.course;
        visit.change = choice<records::GlobalChange>(resource, "change", 1, 5);
        visit.uncomplicated = flag(resource, "uncomplicated");
        for (const auto& [name, place] : {std::pair{"management", &visit.management}, std::pair{"next-plan", &visit.nextPlan},
                                          std::pair{"by", &visit.by}}) {
            const Json* value = extensionOf(resource, name, "valueString");
            if (value != nullptr && !value->is_string())
                refuse(Reason::malformed, std::string("'") + name + "' is no text");
            if (value != nullptr)
                *place = *value;
        }
        visit.at = need(takeMoment(resource, "effectiveDateTime"));
        for (const Json& component : arrayOf(resource, "component")) {
            const std::string name = textOf(member(component, "code"), "text");
            if (name == "satisfaction, 1 to 5")
                visit.satisfaction = wholeOf(member(component, "valueInteger"), name);
            else if (name == "complication")
                visit.complications.push_back(textOf(component, "valueString"));
        }
        return visit;
    }

    /// What refers to what, and every bound.
    void finish()
    {
        if (m_record.treatment) {
            recovery::Treatment& treatment = *m_record.treatment;
            treatment.patient = recovery::PatientId{m_patient};
            treatment.baseline = m_record.baseline;
            for (const std::string& url : m_placed) {
                const auto device = m_devices.find(url);
                if (device == m_devices.end())
                    refuse(Reason::malformed, "the treatment names a thread that is not in the bundle");
                treatment.placements.push_back(device->second);
            }
            check(records::TreatmentRecorded{treatment});
        }
        for (const recovery::Entry& entry : m_record.entries)
            check(records::EntryRecorded{entry});
        for (const records::ReminderAnswered& answer : m_record.answers)
            check(answer);
        for (const records::MessageWritten& message : m_record.messages)
            check(message);
        if (m_record.followUp)
            check(*m_record.followUp);
    }

    static void check(const records::Body& body)
    {
        if (const Done sound = records::check(body); !sound)
            throw Refused{sound.error()};
    }

    CourseRecord m_record;
    bytes::Array<16> m_patient{};
    std::map<std::string, recovery::Placement> m_devices;
    std::vector<std::string> m_placed;
    bool m_treated = false;
};

}  // namespace

Result<CourseRecord> readBundle(std::string_view json)
{
    if (json.size() > maximumBundleBytes)
        return fail(Reason::tooLarge, "bundle: more than 16 MiB");
    if (tooDeep(json))
        return fail(Reason::malformed, "bundle: nested deeper than any bundle is");
    const Json bundle = Json::parse(json, nullptr, false);
    if (bundle.is_discarded())
        return fail(Reason::malformed, "bundle: this is no JSON");
    try {
        return Reader().read(bundle);
    } catch (const Refused& refused) {
        return fail(refused.error);
    } catch (const Json::exception&) {
        return fail(Reason::malformed, "bundle: a value is not of the form that belongs there");
    }
}

}  // namespace ebbline::exchange
