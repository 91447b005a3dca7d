#include "core/recovery/treatment.h"

#include <utility>

namespace ebbline::recovery {

namespace {

template <typename T>
using Word = std::pair<T, std::string_view>;

constexpr std::array<Word<Symptom>, 7> symptomWords{{{Symptom::pain, "pain"},
                                                     {Symptom::swelling, "swelling"},
                                                     {Symptom::bruising, "bruising"},
                                                     {Symptom::tightness, "tightness"},
                                                     {Symptom::twinges, "twinges"},
                                                     {Symptom::puckering, "puckering"},
                                                     {Symptom::numbness, "numbness"}}};

constexpr std::array<Word<Side>, 3> sideWords{{{Side::none, "-"}, {Side::left, "L"}, {Side::right, "R"}}};

constexpr std::array<Word<Sign>, 22> signWords{{{Sign::breathing, "breathing"},
                                                {Sign::neckSwelling, "neck-swelling"},
                                                {Sign::allergy, "allergy"},
                                                {Sign::numbingReaction, "numbing-reaction"},
                                                {Sign::severeIllness, "severe-illness"},
                                                {Sign::strokeSigns, "stroke-signs"},
                                                {Sign::vision, "vision"},
                                                {Sign::fastSwelling, "fast-swelling"},
                                                {Sign::paleSkin, "pale-skin"},
                                                {Sign::colourChange, "colour-change"},
                                                {Sign::warmer, "warmer"},
                                                {Sign::firmer, "firmer"},
                                                {Sign::moreTender, "more-tender"},
                                                {Sign::edgeMoved, "edge-moved"},
                                                {Sign::thickFluid, "thick-fluid"},
                                                {Sign::threadOut, "thread-out"},
                                                {Sign::faceWeakness, "face-weakness"},
                                                {Sign::salivaSwelling, "saliva-swelling"},
                                                {Sign::bleeding, "bleeding"},
                                                {Sign::pulsatingLump, "pulsating-lump"},
                                                {Sign::threadLump, "thread-lump"},
                                                {Sign::shivering, "shivering"}}};

constexpr std::array<Word<Urgency>, 4> urgencyWords{{{Urgency::emergency, "emergency"},
                                                     {Urgency::callNow, "call-now"},
                                                     {Urgency::nextWorkingDay, "next-working-day"},
                                                     {Urgency::atReview, "at-review"}}};

constexpr std::array<Word<Zone>, 9> zoneWords{{{Zone::brow, "brow"},
                                               {Zone::temple, "temple"},
                                               {Zone::midface, "midface"},
                                               {Zone::cheek, "cheek"},
                                               {Zone::nasolabial, "nasolabial"},
                                               {Zone::marionette, "marionette"},
                                               {Zone::jawline, "jawline"},
                                               {Zone::submental, "submental"},
                                               {Zone::neck, "neck"}}};

constexpr std::array<Word<Material>, 5> materialWords{{{Material::pdo, "PDO"},
                                                       {Material::plla, "PLLA"},
                                                       {Material::pcl, "PCL"},
                                                       {Material::plcl, "PLCL"},
                                                       {Material::other, "other"}}};

constexpr std::array<Word<Form>, 6> formWords{{{Form::smooth, "smooth"},
                                               {Form::twisted, "twisted"},
                                               {Form::barbedOneWay, "barbed-one-way"},
                                               {Form::barbedTwoWay, "barbed-two-way"},
                                               {Form::moulded, "moulded"},
                                               {Form::cones, "cones"}}};

constexpr std::array<Word<Ending>, 2> endingWords{
    {{Ending::shortOfMovingZone, "short-of-moving-zone"}, {Ending::pastMovingZone, "past-moving-zone"}}};

template <typename T, std::size_t N>
std::string_view find(const std::array<Word<T>, N>& words, T value)
{
    for (const auto& [candidate, text] : words)
        if (candidate == value)
            return text;
    return "unknown";
}

template <typename T, std::size_t N>
Result<T> parse(const std::array<Word<T>, N>& words, std::string_view text, std::string_view what)
{
    for (const auto& [value, word] : words)
        if (word == text)
            return value;
    return fail(Reason::malformed, std::string(what) + ": '" + std::string(text.substr(0, 40)) + "' is not one of ours");
}

}  // namespace

std::string_view word(Symptom symptom) { return find(symptomWords, symptom); }
std::string_view word(Side side) { return find(sideWords, side); }
std::string_view word(Sign sign) { return find(signWords, sign); }
std::string_view word(Urgency urgency) { return find(urgencyWords, urgency); }
std::string_view word(Zone zone) { return find(zoneWords, zone); }
std::string_view word(Material material) { return find(materialWords, material); }
std::string_view word(Form form) { return find(formWords, form); }
std::string_view word(Ending ending) { return find(endingWords, ending); }

Result<Symptom> symptomFromWord(std::string_view text) { return parse(symptomWords, text, "symptom"); }
Result<Side> sideFromWord(std::string_view text) { return parse(sideWords, text, "side"); }
Result<Sign> signFromWord(std::string_view text) { return parse(signWords, text, "sign"); }
Result<Urgency> urgencyFromWord(std::string_view text) { return parse(urgencyWords, text, "urgency"); }

}  // namespace ebbline::recovery
