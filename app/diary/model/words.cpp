#include "app/diary/model/words.h"

#include <QCoreApplication>
#include <QLocale>

namespace ebbline::diaryapp {

namespace {

QString said(const char* text)
{
    return QCoreApplication::translate("DiaryWords", text);
}

}  // namespace

QString digits(int number)
{
    return QLocale().toString(number);
}

QString symptomName(recovery::Symptom symptom)
{
    using enum recovery::Symptom;
    switch (symptom) {
    case pain: return said(QT_TRANSLATE_NOOP("DiaryWords", "Pain"));
    case swelling: return said(QT_TRANSLATE_NOOP("DiaryWords", "Swelling"));
    case bruising: return said(QT_TRANSLATE_NOOP("DiaryWords", "Bruising"));
    case tightness: return said(QT_TRANSLATE_NOOP("DiaryWords", "Tightness"));
    case twinges: return said(QT_TRANSLATE_NOOP("DiaryWords", "Twinges"));
    case puckering: return said(QT_TRANSLATE_NOOP("DiaryWords", "Puckering"));
    case numbness: return said(QT_TRANSLATE_NOOP("DiaryWords", "Numbness"));
    }
    return {};
}

QString symptomQuestion(recovery::Symptom symptom)
{
    using enum recovery::Symptom;
    switch (symptom) {
    case pain: return said(QT_TRANSLATE_NOOP("DiaryWords", "How much does it hurt?"));
    case swelling: return said(QT_TRANSLATE_NOOP("DiaryWords", "How swollen is it?"));
    case bruising: return said(QT_TRANSLATE_NOOP("DiaryWords", "How much bruise is there?"));
    case tightness: return said(QT_TRANSLATE_NOOP("DiaryWords", "How tight does it feel?"));
    case twinges: return said(QT_TRANSLATE_NOOP("DiaryWords", "How much do you feel sharp stabs?"));
    case puckering: return said(QT_TRANSLATE_NOOP("DiaryWords", "How deep is a dimple or fold?"));
    case numbness: return said(QT_TRANSLATE_NOOP("DiaryWords", "How numb is the skin?"));
    }
    return {};
}

QString lowestWord(recovery::Symptom)
{
    return said(QT_TRANSLATE_NOOP("DiaryWords", "0 is none"));
}

QString highestWord(recovery::Symptom)
{
    return said(QT_TRANSLATE_NOOP("DiaryWords", "10 is the worst you can think of"));
}

QString sideName(recovery::Side side)
{
    switch (side) {
    case recovery::Side::left: return said(QT_TRANSLATE_NOOP("DiaryWords", "Your left"));
    case recovery::Side::right: return said(QT_TRANSLATE_NOOP("DiaryWords", "Your right"));
    case recovery::Side::none: break;
    }
    return {};
}

QString sideInSentence(recovery::Side side)
{
    switch (side) {
    case recovery::Side::left: return said(QT_TRANSLATE_NOOP("DiaryWords", "your left"));
    case recovery::Side::right: return said(QT_TRANSLATE_NOOP("DiaryWords", "your right"));
    case recovery::Side::none: break;
    }
    return {};
}

QString signQuestion(recovery::Sign sign)
{
    using enum recovery::Sign;
    switch (sign) {
    case breathing: return said(QT_TRANSLATE_NOOP("DiaryWords", "It is hard to breathe, or I can not swallow my spit."));
    case neckSwelling: return said(QT_TRANSLATE_NOOP("DiaryWords", "My neck, or under my jaw, swells up fast."));
    case allergy: return said(QT_TRANSLATE_NOOP("DiaryWords", "My tongue or throat swells, I wheeze, or I feel faint."));
    case numbingReaction: return said(QT_TRANSLATE_NOOP("DiaryWords", "Metal taste, ringing ears, twitching, or I feel mixed up."));
    case severeIllness: return said(QT_TRANSLATE_NOOP("DiaryWords", "I shake hard, feel mixed up, or pass no urine all day."));
    case strokeSigns: return said(QT_TRANSLATE_NOOP("DiaryWords", "My face droops and an arm is weak or my speech is slurred."));
    case vision: return said(QT_TRANSLATE_NOOP("DiaryWords", "I suddenly see less, or I see double."));
    case fastSwelling: return said(QT_TRANSLATE_NOOP("DiaryWords", "One side keeps getting fuller by the hour."));
    case paleSkin: return said(QT_TRANSLATE_NOOP("DiaryWords", "Skin turned white, grey or like a net, is cold, or has blisters."));
    case colourChange: return said(QT_TRANSLATE_NOOP("DiaryWords", "Near an entry point, the skin is more red, purple, grey or dark than on the other side."));
    case warmer: return said(QT_TRANSLATE_NOOP("DiaryWords", "It feels warmer to the back of my hand than the other side."));
    case firmer: return said(QT_TRANSLATE_NOOP("DiaryWords", "It is firm, shiny or tight."));
    case moreTender: return said(QT_TRANSLATE_NOOP("DiaryWords", "It is more sore to touch than yesterday."));
    case edgeMoved: return said(QT_TRANSLATE_NOOP("DiaryWords", "The edge has spread past where it was."));
    case thickFluid: return said(QT_TRANSLATE_NOOP("DiaryWords", "Thick yellow, green or milky fluid comes out."));
    case threadOut: return said(QT_TRANSLATE_NOOP("DiaryWords", "The end of a thread shows through the skin."));
    case faceWeakness: return said(QT_TRANSLATE_NOOP("DiaryWords", "I can not close an eye or lift a brow, or my smile is crooked."));
    case salivaSwelling: return said(QT_TRANSLATE_NOOP("DiaryWords", "My cheek swells when I eat, or clear fluid runs."));
    case bleeding: return said(QT_TRANSLATE_NOOP("DiaryWords", "It still bleeds after 15 minutes of firm pressing."));
    case pulsatingLump: return said(QT_TRANSLATE_NOOP("DiaryWords", "There is a lump that beats like a pulse."));
    case threadLump: return said(QT_TRANSLATE_NOOP("DiaryWords", "I can see or feel a thread. The skin is calm."));
    case shivering: return said(QT_TRANSLATE_NOOP("DiaryWords", "I have chills."));
    }
    return {};
}

QString instructionTitle(aftercare::InstructionKind kind)
{
    using enum aftercare::InstructionKind;
    switch (kind) {
    case dressingsOff: return said(QT_TRANSLATE_NOOP("DiaryWords", "Dressings off"));
    case cleanEntryPoints: return said(QT_TRANSLATE_NOOP("DiaryWords", "Entry points clean and dry"));
    case sleepOnBack: return said(QT_TRANSLATE_NOOP("DiaryWords", "Sleep on your back"));
    case spareFace: return said(QT_TRANSLATE_NOOP("DiaryWords", "Spare your face"));
    case coldPack: return said(QT_TRANSLATE_NOOP("DiaryWords", "Cold pack"));
    case noMakeUp: return said(QT_TRANSLATE_NOOP("DiaryWords", "No make-up yet"));
    case noMassage: return said(QT_TRANSLATE_NOOP("DiaryWords", "No face massage"));
    case noDentist: return said(QT_TRANSLATE_NOOP("DiaryWords", "No dentist if it can wait"));
    case noExercise: return said(QT_TRANSLATE_NOOP("DiaryWords", "Walk, but no sport"));
    case noHeat: return said(QT_TRANSLATE_NOOP("DiaryWords", "No sauna, hot bath or pool"));
    case noSun: return said(QT_TRANSLATE_NOOP("DiaryWords", "Stay out of the sun"));
    case noAlcohol: return said(QT_TRANSLATE_NOOP("DiaryWords", "No alcohol"));
    case noSmoking: return said(QT_TRANSLATE_NOOP("DiaryWords", "No smoking"));
    case noShaving: return said(QT_TRANSLATE_NOOP("DiaryWords", "No shaving"));
    case diaryEntry: return said(QT_TRANSLATE_NOOP("DiaryWords", "Write down how it is"));
    case followUp: return said(QT_TRANSLATE_NOOP("DiaryWords", "Your follow-up visit"));
    case custom: return said(QT_TRANSLATE_NOOP("DiaryWords", "From your clinic"));
    }
    return {};
}

QString instructionText(aftercare::InstructionKind kind)
{
    using enum aftercare::InstructionKind;
    switch (kind) {
    case dressingsOff: return said(QT_TRANSLATE_NOOP("DiaryWords", "Leave them on until you are home this evening. They keep the entry points clean."));
    case cleanEntryPoints: return said(QT_TRANSLATE_NOOP("DiaryWords", "Wash with care and do not rub. The small holes need time to close."));
    case sleepOnBack: return said(QT_TRANSLATE_NOOP("DiaryWords", "Raise your head a little. Lying on your face can move a thread."));
    case spareFace: return said(QT_TRANSLATE_NOOP("DiaryWords", "Small bites, no wide yawns or big laughs. The threads need calm to settle."));
    case coldPack: return said(QT_TRANSLATE_NOOP("DiaryWords", "Ten minutes, with a cloth between. It can ease swelling."));
    case noMakeUp: return said(QT_TRANSLATE_NOOP("DiaryWords", "Keep it off the entry points until they have closed."));
    case noMassage: return said(QT_TRANSLATE_NOOP("DiaryWords", "Pressing on your face can move a thread."));
    case noDentist: return said(QT_TRANSLATE_NOOP("DiaryWords", "A wide open mouth pulls on the threads. If it hurts, call the clinic first."));
    case noExercise: return said(QT_TRANSLATE_NOOP("DiaryWords", "Sport raises the blood flow and can add swelling."));
    case noHeat: return said(QT_TRANSLATE_NOOP("DiaryWords", "Heat can add swelling, and pools can carry germs."));
    case noSun: return said(QT_TRANSLATE_NOOP("DiaryWords", "Sun can darken a bruise for a long time."));
    case noAlcohol: return said(QT_TRANSLATE_NOOP("DiaryWords", "It can add bruising and swelling."));
    case noSmoking: return said(QT_TRANSLATE_NOOP("DiaryWords", "Smoke slows healing. As long as you can is best."));
    case noShaving: return said(QT_TRANSLATE_NOOP("DiaryWords", "A blade can open the entry points."));
    case diaryEntry: return said(QT_TRANSLATE_NOOP("DiaryWords", "It is short. It can show early that something is off."));
    case followUp: return said(QT_TRANSLATE_NOOP("DiaryWords", "Your clinic will look at how it went."));
    case custom: return {};
    }
    return {};
}

QString errorText(const Error& error)
{
    switch (error.reason) {
    case Reason::wrongKey: return said(QT_TRANSLATE_NOOP("DiaryWords", "That passphrase does not open the diary. Try again."));
    case Reason::tooSoon: return said(QT_TRANSLATE_NOOP("DiaryWords", "Too many tries. Please wait %1 seconds.")).arg(QString::fromStdString(error.detail));
    case Reason::damaged: return said(QT_TRANSLATE_NOOP("DiaryWords", "The diary's file is damaged. Nothing was deleted. Call your clinic."));
    case Reason::storageFull: return said(QT_TRANSLATE_NOOP("DiaryWords", "This phone is full. What you typed is still here. Free some space, then save again."));
    case Reason::storageFailed: return said(QT_TRANSLATE_NOOP("DiaryWords", "This phone could not save. What you typed is still here. Try again."));
    case Reason::unreachable: return said(QT_TRANSLATE_NOOP("DiaryWords", "No network right now. It will be sent later."));
    case Reason::expired: return said(QT_TRANSLATE_NOOP("DiaryWords", "This code is over. Ask your clinic for a new one."));
    case Reason::alreadyExists: return said(QT_TRANSLATE_NOOP("DiaryWords", "This code was used before. Tell your clinic now and ask for a new one."));
    case Reason::malformed: return said(QT_TRANSLATE_NOOP("DiaryWords", "This code can not be read. Check each letter."));
    case Reason::forged: return said(QT_TRANSLATE_NOOP("DiaryWords", "This is not from your clinic. Nothing was joined. Tell your clinic."));
    case Reason::unprotected: return said(QT_TRANSLATE_NOOP("DiaryWords", "The way to this clinic is not locked: others could read along. Nothing was sent. Tell your clinic."));
    case Reason::notEnough: return said(QT_TRANSLATE_NOOP("DiaryWords", "Nothing is answered yet."));
    case Reason::outOfRange: return said(QT_TRANSLATE_NOOP("DiaryWords", "A value is out of range. Please check it."));
    default: return said(QT_TRANSLATE_NOOP("DiaryWords", "That did not work. Try again, or call your clinic."));
    }
}

}  // namespace ebbline::diaryapp
