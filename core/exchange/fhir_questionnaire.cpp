#include "core/exchange/fhir_questionnaire.h"

namespace ebbline::exchange::fhir {

namespace {

constexpr std::string_view standardExtensions = "http://hl7.org/fhir/StructureDefinition/";

std::string_view questionOf(recovery::Symptom symptom)
{
    using enum recovery::Symptom;
    switch (symptom) {
    case pain: return "How much does it hurt?";
    case swelling: return "How swollen is it?";
    case bruising: return "How much bruise is there?";
    case tightness: return "How tight does it feel?";
    case twinges: return "How much do you feel sharp stabs?";
    case puckering: return "How deep is a dimple or fold?";
    case numbness: break;
    }
    return "How numb is the skin?";
}

/// As docs/formats/tables.md has it.
std::string_view questionOf(recovery::Sign sign)
{
    using enum recovery::Sign;
    switch (sign) {
    case breathing: return "hard to breathe, noisy breathing, cannot swallow saliva";
    case neckSwelling: return "swelling of the neck or under the jaw that grows fast";
    case allergy: return "throat or tongue swells, wheeze, faint, or hives with any of these";
    case numbingReaction: return "soon after the injection: metal taste, ringing ears, confusion, twitching";
    case severeIllness: return "shivering hard, confused, mottled skin, no urine for a day";
    case strokeSigns: return "face droops with a weak arm or slurred speech";
    case vision: return "sudden loss of sight or double vision";
    case fastSwelling: return "one side swells visibly within an hour, or keeps growing";
    case paleSkin: return "skin turns white, grey or net-like, cold, or blisters";
    case colourChange: return "near an entry point redder, purpler, greyer or darker than the other side";
    case warmer: return "warmer to the back of the hand than the other side";
    case firmer: return "firm, shiny or tight";
    case moreTender: return "more tender than yesterday";
    case edgeMoved: return "the edge has moved past where it was";
    case thickFluid: return "thick yellow, green or milky fluid";
    case threadOut: return "a thread end shows through the skin";
    case faceWeakness: return "cannot close an eye, raise a brow, or the smile is crooked";
    case salivaSwelling: return "cheek swells on eating, or clear fluid runs";
    case bleeding: return "an entry point bleeds after 15 minutes of firm pressure";
    case pulsatingLump: return "a lump that beats";
    case threadLump: return "a thread can be seen or felt, calm skin";
    case shivering: break;
    }
    return "chills, with or without a measured temperature";
}

Json item(const std::string& link, const std::string& text, std::string_view type)
{
    return {{"linkId", link}, {"text", text}, {"type", type}};
}

Json scoreItem(const recovery::Stream& stream)
{
    const std::string side = stream.side == recovery::Side::left ? "your left" : "your right";
    Json made = item(linkOf(stream), std::string(questionOf(stream.symptom)) + " On " + side + ": 0 is none, 10 is the worst you can think of.", "choice");
    made["answerOption"] = Json::array();
    for (int points = recovery::Score::lowest; points <= recovery::Score::highest; ++points)
        made["answerOption"].push_back({{"valueInteger", points}});
    return made;
}

Json temperatureItem()
{
    Json made = item("temperature", "Temperature, degrees Celsius", "decimal");
    const auto bound = [](const char* name, double value) {
        return Json{{"url", std::string(standardExtensions) + name}, {"valueDecimal", value}};
    };
    const Json unit{{"url", std::string(standardExtensions) + "questionnaire-unit"}, {"valueCoding", {{"system", ucum}, {"code", "Cel"}}}};
    made["extension"] = Json::array(
        {unit, bound("minValue", recovery::Temperature::lowestCelsius), bound("maxValue", recovery::Temperature::highestCelsius)});
    return made;
}

}  // namespace

std::string questionnaireUrl() { return ours("questionnaire:entry"); }

std::string questionnaireCanonical() { return questionnaireUrl() + "|" + std::string(questionnaireVersion); }

std::string linkOf(const recovery::Stream& stream)
{
    return "score." + std::string(recovery::word(stream.symptom)) + "." + std::string(recovery::word(stream.side));
}

std::string linkOf(recovery::Sign sign) { return "sign." + std::string(recovery::word(sign)); }

NamedInstruction named(aftercare::InstructionKind kind)
{
    using enum aftercare::InstructionKind;
    switch (kind) {
    case dressingsOff: return {"dressings-off", "Take the dressings off"};
    case cleanEntryPoints: return {"clean-entry-points", "Keep the entry points clean and dry"};
    case sleepOnBack: return {"sleep-on-back", "Sleep on the back, the head a little raised"};
    case spareFace: return {"spare-face", "Spare the face: no wide yawns or laughs, small bites, little talking"};
    case coldPack: return {"cold-pack", "Cool the face"};
    case noMakeUp: return {"no-make-up", "No make-up"};
    case noMassage: return {"no-massage", "No massage of the face"};
    case noDentist: return {"no-dentist", "No dentist if it can wait"};
    case noExercise: return {"no-exercise", "Walk, but no sport"};
    case noHeat: return {"no-heat", "No sauna, hammam, hot bath or pool"};
    case noSun: return {"no-sun", "No sun on the face"};
    case noAlcohol: return {"no-alcohol", "No alcohol"};
    case noSmoking: return {"no-smoking", "No smoking"};
    case noShaving: return {"no-shaving", "No shaving"};
    case diaryEntry: return {"diary-entry", "Write down how it is"};
    case followUp: return {"follow-up", "Come to the follow-up"};
    case custom: break;
    }
    return {"custom", "As the clinic wrote"};
}

Json entryQuestionnaire()
{
    Json questionnaire{{"resourceType", "Questionnaire"},
              {"url", questionnaireUrl()},
              {"version", questionnaireVersion},
              {"name", "DiaryEntry"},
              {"title", "How it is: one entry of a recovery diary"},
              {"status", "active"},
              {"subjectType", Json::array({"Patient"})},
              {"description", "What the phone asks, in English; it asks in the patient's language. A question without an answer was skipped or not shown."}};
    questionnaire["item"] = Json::array();
    for (const recovery::Symptom symptom : recovery::allSymptoms)
        for (const recovery::Side side : recovery::bothSides)
            questionnaire["item"].push_back(scoreItem({symptom, side}));
    for (const recovery::Sign sign : recovery::allSigns)
        questionnaire["item"].push_back(item(linkOf(sign), std::string(questionOf(sign)), "boolean"));
    questionnaire["item"].push_back(temperatureItem());
    questionnaire["item"].push_back(item("note", "Anything else, in your own words", "text"));
    return questionnaire;
}

}  // namespace ebbline::exchange::fhir
