#include "app/desk/queue/call_script.h"

#include <QCoreApplication>

#include <set>

namespace ebbline::deskapp {

namespace {

class CallScript {
    Q_DECLARE_TR_FUNCTIONS(CallScript)
};

constexpr qsizetype most = 7;

enum class Worry { airway, sight, bleeding, infection, pain, thread, settling, silence };

Worry worryOf(const warnings::Finding& warning)
{
    static const std::set<std::string> airway{"breathing", "neck-swelling", "allergy"};
    static const std::set<std::string> sight{"vision", "stroke-signs", "face-weakness", "face-weakness-early"};
    static const std::set<std::string> bleeding{"fast-swelling", "one-sided-swelling", "bleeding", "pulsating-lump"};
    static const std::set<std::string> thread{"thread-out", "thread-lump"};
    static const std::set<std::string> pain{"severe-pain", "pale-skin"};
    if (airway.contains(warning.rule)) {
        return Worry::airway;
    }
    if (sight.contains(warning.rule)) {
        return Worry::sight;
    }
    if (bleeding.contains(warning.rule)) {
        return Worry::bleeding;
    }
    if (thread.contains(warning.rule)) {
        return Worry::thread;
    }
    if (pain.contains(warning.rule)) {
        return Worry::pain;
    }
    return warning.urgency == recovery::Urgency::emergency ? Worry::airway : Worry::infection;
}

Worry worryOf(const triggers::Finding& finding)
{
    switch (finding.trigger) {
    case triggers::Trigger::silence:
        return Worry::silence;
    case triggers::Trigger::sideDivergence:
        return Worry::bleeding;
    case triggers::Trigger::rebound:
        return Worry::infection;
    case triggers::Trigger::persistentPuckering:
        return Worry::thread;
    case triggers::Trigger::level:
        return finding.stream.symptom == recovery::Symptom::pain ? Worry::pain : Worry::settling;
    case triggers::Trigger::slowRecovery:
        break;
    }
    return Worry::settling;
}

QStringList questionsOf(Worry worry)
{
    switch (worry) {
    case Worry::airway:
        return {CallScript::tr("Can you breathe, swallow your saliva and speak a whole sentence? If not: emergency number, now, and stay on the line."),
                CallScript::tr("Is the swelling growing from hour to hour, or is the neck hard?"), CallScript::tr("Is somebody with you?")};
    case Worry::sight:
        return {CallScript::tr("Do you see as before with each eye? If not: emergency number, now."),
                CallScript::tr("Smile, close both eyes, lift your brows: is one side weaker? Since when?")};
    case Worry::bleeding:
        return {CallScript::tr("Is one side growing? Compared with this morning: much more, a little, the same?"),
                CallScript::tr("Does it feel hard and tense, or soft?"), CallScript::tr("Do you take anything that thins the blood, or aspirin or ibuprofen?")};
    case Worry::infection:
        return {CallScript::tr("What is your temperature now? Did you have chills?"),
                CallScript::tr("Is an entry point red, warm, or is anything coming out of it?"), CallScript::tr("Is the red or the pain spreading?")};
    case Worry::pain:
        return {CallScript::tr("Pain from 0 to 10 now, and at its worst since yesterday?"), CallScript::tr("What have you taken against it, and did it help?"),
                CallScript::tr("Is the skin there pale, blue, or does it feel cold?")};
    case Worry::thread:
        return {CallScript::tr("Can you see or feel an end of a thread? Do not pull or cut it."), CallScript::tr("Is the skin over it open, red or wet?"),
                CallScript::tr("Please send a photo from the diary, from the front and from that side.")};
    case Worry::settling:
        return {CallScript::tr("Compared with yesterday: better, the same, worse?"), CallScript::tr("Anything new: fever, one side worse, something coming out?")};
    case Worry::silence:
        return {CallScript::tr("How are you? The diary has heard nothing for some days."), CallScript::tr("Does the diary work, and is the phone online?"),
                CallScript::tr("Fever, one side worse, anything coming out of an entry point?")};
    }
    return {};
}

}  // namespace

QStringList callScript(const std::vector<triage::Finding>& findings)
{
    QStringList script;
    if (findings.empty()) {
        script << questionsOf(Worry::airway).first() << questionsOf(Worry::settling);
    }
    for (const auto& finding : findings) {
        const auto worry = std::visit([](const auto& what) { return worryOf(what); }, finding.what);
        for (const auto& question : questionsOf(worry)) {
            if (!script.contains(question) && script.size() < most - 1) {
                script << question;
            }
        }
    }
    script << CallScript::tr("Last: what are you most worried about?");
    return script;
}

}  // namespace ebbline::deskapp
