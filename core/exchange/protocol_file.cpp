#include "core/exchange/protocol_file.h"

#include "core/clock/iso8601.h"

#include <nlohmann/json.hpp>

#include <cmath>
#include <utility>

namespace ebbline::exchange {

namespace {

using Json = nlohmann::ordered_json;
// Our own choice, far above what a protocol has: the library looks through all members of an object for each new one.
constexpr int deepest = 16;
constexpr int mostMembers = 4096;
using triggers::Thresholds;

constexpr std::string_view formatName = "ebbline-protocol";
constexpr int formatVersion = 3;
constexpr int firstFormat = 1;   ///< still read
constexpr int secondFormat = 2;  ///< still read: it does not say who wrote it, and when

constexpr std::array<std::pair<const char*, double Thresholds::*>, 7> numbers{
    {{"level", &Thresholds::level},
     {"levelOverall", &Thresholds::levelOverall},
     {"rebound", &Thresholds::rebound},
     {"sideDivergence", &Thresholds::sideDivergence},
     {"slowRecovery", &Thresholds::slowRecovery},
     {"slowOverall", &Thresholds::slowOverall},
     {"falseAlertBudget", &Thresholds::falseAlertBudget}}};
constexpr std::array<std::pair<const char*, double Thresholds::*>, 2> numbersSinceSecond{
    {{"oneSideFills", &Thresholds::oneSideFills}, {"oneSideWorsens", &Thresholds::oneSideWorsens}}};
/// Of statistics that are judged no longer.
constexpr std::array<const char*, 2> numbersOfFirst{"sideRebound", "filling"};

struct Whole {
    const char* name;
    int Thresholds::*field;
    int least;
    int most;
};
constexpr std::array<Whole, 15> wholes{{{"levelGuard", &Thresholds::levelGuard, 0, 10},
                                        {"reboundGuard", &Thresholds::reboundGuard, 1, 10},
                                        {"reboundFirstDay", &Thresholds::reboundFirstDay, 0, 28},
                                        {"sideGuard", &Thresholds::sideGuard, 1, 10},
                                        {"fillingLastDay", &Thresholds::fillingLastDay, 0, 28},
                                        {"fillingGuard", &Thresholds::fillingGuard, 0, 40},
                                        {"slowFirstDay", &Thresholds::slowFirstDay, 0, 28},
                                        {"slowPeakGuard", &Thresholds::slowPeakGuard, 0, 10},
                                        {"slowGuard", &Thresholds::slowGuard, 0, 10},
                                        {"puckeringDay", &Thresholds::puckeringDay, 0, 60},
                                        {"puckeringGuard", &Thresholds::puckeringGuard, 0, 10},
                                        {"puckeringStuckDay", &Thresholds::puckeringStuckDay, 0, 60},
                                        {"puckeringStuckGuard", &Thresholds::puckeringStuckGuard, 0, 10},
                                        {"silentDays", &Thresholds::silentDays, 1, 60},
                                        {"silentDaysWhenHigh", &Thresholds::silentDaysWhenHigh, 1, 60}}};
constexpr std::array<Whole, 4> wholesSinceSecond{{{"worseningGuard", &Thresholds::worseningGuard, 0, 30},
                                                  {"puckeringKeptDay", &Thresholds::puckeringKeptDay, 0, 60},
                                                  {"puckeringLateDay", &Thresholds::puckeringLateDay, 0, 60},
                                                  {"puckeringTogether", &Thresholds::puckeringTogether, 0, 30}}};

/// Thrown and caught in this file alone, beside the library's own.
struct Refusal {
    Error error;
};

[[noreturn]] void refuse(Reason reason, const std::string& detail)
{
    throw Refusal{{reason, "protocol: " + detail}};
}

/// A JSON object whose every member must be asked for exactly once.
class Object {
public:
    Object(const Json& json, std::string name) : m_json(json), m_name(std::move(name))
    {
        if (!json.is_object())
            refuse(Reason::malformed, m_name + ": want an object");
    }

    const Json& member(const std::string& key)
    {
        const auto found = m_json.find(key);
        if (found == m_json.end())
            refuse(Reason::malformed, path(key) + " is missing");
        ++m_read;
        return *found;
    }
    double number(const std::string& key)
    {
        const Json& value = member(key);
        if (!value.is_number() || !std::isfinite(value.get<double>()))
            refuse(Reason::malformed, path(key) + ": want a number");
        return value.get<double>();
    }
    int whole(const std::string& key, int least, int most)
    {
        const Json& value = member(key);
        if (!value.is_number_integer() || value.get<long long>() < least || value.get<long long>() > most)
            refuse(Reason::outOfRange, path(key) + ": want a whole number " + std::to_string(least) + ".."
                                           + std::to_string(most));
        return value.get<int>();
    }
    bool truth(const std::string& key)
    {
        const Json& value = member(key);
        if (!value.is_boolean())
            refuse(Reason::malformed, path(key) + ": want true or false");
        return value.get<bool>();
    }
    std::string text(const std::string& key)
    {
        const Json& value = member(key);
        if (!value.is_string() || value.get_ref<const std::string&>().size() > 400)
            refuse(Reason::malformed, path(key) + ": want a text of at most 400 bytes");
        return value.get<std::string>();
    }
    void finish() const
    {
        if (m_read != m_json.size())
            refuse(Reason::malformed, m_name + ": has a member that is not one of ours");
    }

private:
    std::string path(const std::string& key) const { return m_name.empty() ? key : m_name + "." + key; }
    const Json& m_json;
    std::string m_name;
    std::size_t m_read = 0;
};

Json jsonOf(const aftercare::CarePlan& plan)
{
    Json instructions = Json::array();
    for (const aftercare::Instruction& i : plan.instructions)
        instructions.push_back({{"id", i.id},
                                {"kind", static_cast<int>(i.kind)},
                                {"firstDay", i.firstDay},
                                {"lastDay", i.lastDay},
                                {"minutesOfDay", i.minutesOfDay},
                                {"everyDays", i.everyDays},
                                {"clinicText", i.clinicText},
                                {"ignoresQuietHours", i.ignoresQuietHours}});
    return {{"followUpDay", plan.followUpDay}, {"instructions", std::move(instructions)}};
}

aftercare::CarePlan planFrom(const Json& json)
{
    aftercare::CarePlan plan;
    Object object(json, "carePlan");
    plan.followUpDay = object.whole("followUpDay", 1, 60);
    const Json& instructions = object.member("instructions");
    if (!instructions.is_array())
        refuse(Reason::malformed, "carePlan.instructions: want a list");
    for (const Json& each : instructions) {
        Object member(each, "carePlan.instructions[" + std::to_string(plan.instructions.size()) + "]");
        aftercare::Instruction instruction;
        instruction.id = member.text("id");
        instruction.kind = static_cast<aftercare::InstructionKind>(
            member.whole("kind", 1, static_cast<int>(aftercare::InstructionKind::custom)));
        instruction.firstDay = member.whole("firstDay", 0, 60);
        instruction.lastDay = member.whole("lastDay", 0, 60);
        const Json& minutes = member.member("minutesOfDay");
        if (!minutes.is_array())
            refuse(Reason::malformed, "minutesOfDay: want a list");
        for (const Json& minute : minutes) {
            if (!minute.is_number_integer() || minute.get<long long>() < 0 || minute.get<long long>() > 1439)
                refuse(Reason::outOfRange, "minutesOfDay: want whole numbers 0..1439");
            instruction.minutesOfDay.push_back(minute.get<int>());
        }
        instruction.everyDays = member.whole("everyDays", 1, 60);
        instruction.clinicText = member.text("clinicText");
        instruction.ignoresQuietHours = member.truth("ignoresQuietHours");
        member.finish();
        plan.instructions.push_back(std::move(instruction));
    }
    object.finish();
    if (const Done checked = aftercare::check(plan); !checked)
        refuse(checked.error().reason, checked.error().detail);
    return plan;
}

Json jsonOf(const bands::Movement& m)
{
    return {{"noise", m.noise}, {"drift", m.drift}, {"start", m.start}};
}

bands::Movement movementFrom(const Json& json, const std::string& name)
{
    Object object(json, "band.movements." + name);
    const bands::Movement movement{object.number("noise"), object.number("drift"), object.number("start")};
    object.finish();
    return movement;
}

Json jsonOf(const bands::Band& band)
{
    const bands::Provenance& p = band.provenance();
    Json days;
    Json movements;
    for (std::size_t row = 0; row < recovery::allSymptoms.size(); ++row) {
        const std::string name(recovery::word(recovery::allSymptoms[row]));
        days[name] = band.table()[row];
        movements[name] = jsonOf(band.movements().score[row]);
    }
    movements["sides"] = jsonOf(band.movements().sides);
    movements["sums"] = jsonOf(band.movements().sums);
    return {{"version", p.version},       {"courses", p.courses}, {"assumption", p.assumption},
            {"learnedOn", p.learnedOn},   {"hash", p.hash},       {"movements", std::move(movements)},
            {"distributions", std::move(days)}};
}

bands::Band bandFrom(const Json& json, bool first)
{
    Object object(json, "band");
    bands::Provenance provenance;
    provenance.version = object.text("version");
    provenance.courses = object.whole("courses", 0, 1'000'000'000);
    provenance.assumption = object.truth("assumption");
    provenance.learnedOn = object.text("learnedOn");
    provenance.hash = object.text("hash");
    Object movementList(object.member("movements"), "band.movements");
    Object dayList(object.member("distributions"), "band.distributions");
    bands::Movements movements = bands::assumedMovements();
    bands::Band::Table table{};
    for (std::size_t row = 0; row < recovery::allSymptoms.size(); ++row) {
        const std::string name(recovery::word(recovery::allSymptoms[row]));
        movements.score[row] = movementFrom(movementList.member(name), name);
        const Json& days = dayList.member(name);
        if (!days.is_array() || days.size() != table[row].size())
            refuse(Reason::malformed, "band.distributions." + name + ": want " + std::to_string(table[row].size()) + " days");
        for (std::size_t day = 0; day < days.size(); ++day) {
            if (!days[day].is_array() || days[day].size() != table[row][day].size())
                refuse(Reason::malformed, "band.distributions." + name + ": want 11 probabilities on day " + std::to_string(day));
            for (std::size_t k = 0; k < days[day].size(); ++k) {
                if (!days[day][k].is_number())
                    refuse(Reason::malformed, "band.distributions." + name + ": want numbers");
                table[row][day][k] = days[day][k].get<double>();
            }
        }
    }
    movements.sides = movementFrom(movementList.member("sides"), "sides");
    if (!first)
        movements.sums = movementFrom(movementList.member("sums"), "sums");
    movementList.finish();
    dayList.finish();
    object.finish();
    Result<bands::Band> band = bands::Band::create(std::move(provenance), table, movements);
    if (!band)
        refuse(band.error().reason, band.error().detail);
    return *band;
}

Thresholds thresholdsFrom(const Json& json, bool first)
{
    Thresholds thresholds;
    Object object(json, "thresholds");
    for (const auto& [name, field] : numbers)
        thresholds.*field = object.number(name);
    for (const Whole& whole : wholes)
        thresholds.*whole.field = object.whole(whole.name, whole.least, whole.most);
    if (first) {
        for (const char* name : numbersOfFirst)
            object.number(name);
    } else {
        for (const auto& [name, field] : numbersSinceSecond)
            thresholds.*field = object.number(name);
        for (const Whole& whole : wholesSinceSecond)
            thresholds.*whole.field = object.whole(whole.name, whole.least, whole.most);
    }
    thresholds.calibratedOn = object.text("calibratedOn");
    object.finish();
    if (const Done possible = triggers::check(thresholds); !possible)
        refuse(possible.error().reason, "thresholds." + possible.error().detail);
    return thresholds;
}

/// Who wrote it, and when.
void madeFrom(const Json& json, ProtocolFile& file)
{
    Object object(json, "made");
    file.program = object.text("program");
    const auto written = clock::parseIso8601(object.text("at"));
    object.finish();
    if (!written)
        refuse(written.error().reason, "made.at: want a moment such as 2027-05-01T18:00:00+02:00");
    file.written = *written;
}

}  // namespace

std::string protocolText(const ProtocolFile& file)
{
    const triggers::Protocol& protocol = file.protocol;
    Json thresholds;
    for (const auto& [name, field] : numbers)
        thresholds[name] = protocol.thresholds.*field;
    for (const Whole& whole : wholes)
        thresholds[whole.name] = protocol.thresholds.*whole.field;
    for (const auto& [name, field] : numbersSinceSecond)
        thresholds[name] = protocol.thresholds.*field;
    for (const Whole& whole : wholesSinceSecond)
        thresholds[whole.name] = protocol.thresholds.*whole.field;
    thresholds["calibratedOn"] = protocol.thresholds.calibratedOn;
    const Json json{{"format", formatName},
                    {"formatVersion", formatVersion},
                    {"made", {{"program", file.program}, {"at", clock::toIso8601(file.written.value_or(clock::Moment{}))}}},
                    {"name", protocol.name},
                    {"version", protocol.version},
                    {"thresholds", std::move(thresholds)},
                    {"carePlan", jsonOf(protocol.carePlan)},
                    {"band", jsonOf(protocol.band)}};
    return json.dump(1, ' ', false, Json::error_handler_t::replace) + "\n";
}

Result<ProtocolFile> protocolFromText(std::string_view text)
{
    if (text.size() > maximumProtocolBytes)
        return fail(Reason::tooLarge, "protocol: more than 4 MiB");
    try {
        const Json json = Json::parse(text, [members = 0](int depth, Json::parse_event_t event, Json&) mutable {
            if (depth > deepest || (event == Json::parse_event_t::key && ++members > mostMembers))
                refuse(Reason::malformed, "more levels or members than a protocol has");
            return true;
        });
        Object object(json, "");
        if (object.text("format") != formatName)
            return fail(Reason::malformed, "protocol: this is not a protocol file");
        const int format = object.whole("formatVersion", 0, 1'000'000);
        if (format < firstFormat || format > formatVersion)
            return fail(Reason::unsupported, "protocol: another version of the format");
        const bool first = format == firstFormat;
        ProtocolFile file;
        if (format > secondFormat)
            madeFrom(object.member("made"), file);
        file.protocol = {.name = object.text("name"),
                         .version = object.whole("version", 1, 1'000'000),
                         .carePlan = planFrom(object.member("carePlan")),
                         .thresholds = thresholdsFrom(object.member("thresholds"), first),
                         .band = bandFrom(object.member("band"), first)};
        object.finish();
        return file;
    } catch (const Refusal& refusal) {
        return fail(refusal.error);
    } catch (const Json::parse_error& problem) {
        // What the library says repeats what stands there: bytes of anybody's.
        return fail(Reason::malformed, "protocol: no JSON at byte " + std::to_string(problem.byte));
    } catch (const Json::exception&) {
        return fail(Reason::malformed, "protocol: a value that cannot be read");
    }
}

}  // namespace ebbline::exchange
