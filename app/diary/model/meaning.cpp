// What a warning can mean, in plain words beside what to do. Grounds of each: docs/clinical/warnings.md, which holds the same words.

#include "app/diary/model/words.h"

#include <QCoreApplication>

#include <map>
#include <string>

namespace ebbline::diaryapp {

namespace {

QString said(const char* text)
{
    return QCoreApplication::translate("DiaryMeaning", text);
}

/// By the rule that raised it.
const char* ofRule(const std::string& rule)
{
    static const std::map<std::string, const char*, std::less<>> meanings{
        {"breathing", QT_TRANSLATE_NOOP("DiaryMeaning", "Swelling or blood in the neck can press on the way the air takes. It can get worse fast.")},
        {"neck-swelling", QT_TRANSLATE_NOOP("DiaryMeaning", "It can be blood under the skin of the neck. It can press on the way the air takes.")},
        {"allergy", QT_TRANSLATE_NOOP("DiaryMeaning", "It can be a severe allergy. Then the throat can swell and it gets hard to breathe.")},
        {"numbing-reaction", QT_TRANSLATE_NOOP("DiaryMeaning", "The numbing drug may act on your whole body, not just on your face.")},
        {"severe-illness", QT_TRANSLATE_NOOP("DiaryMeaning", "It can be sepsis. That is when an infection starts to harm the whole body.")},
        {"stroke-signs", QT_TRANSLATE_NOOP("DiaryMeaning", "It can be a stroke. That is when a part of the brain gets too little blood.")},
        {"vision", QT_TRANSLATE_NOOP("DiaryMeaning", "The eye, or the blood flow to it, may be in danger.")},
        {"fast-swelling", QT_TRANSLATE_NOOP("DiaryMeaning", "It can be blood that gathers under the skin. It counts as that until a doctor has looked.")},
        {"one-sided-swelling", QT_TRANSLATE_NOOP("DiaryMeaning", "It can be blood that gathers under the skin. It counts as that until a doctor has looked.")},
        {"pale-skin", QT_TRANSLATE_NOOP("DiaryMeaning", "The skin there may get too little blood. Something may press on a vessel or block it.")},
        {"fever", QT_TRANSLATE_NOOP("DiaryMeaning", "A fever can mean that there is an infection.")},
        {"fever-with-inflammation", QT_TRANSLATE_NOOP("DiaryMeaning", "It can be an infection, also in the skin of your face. Near the eye or the nose it is more dangerous.")},
        {"shivering", QT_TRANSLATE_NOOP("DiaryMeaning", "Chills can come with an infection.")},
        {"spreading", QT_TRANSLATE_NOOP("DiaryMeaning", "It can be an infection that spreads in the skin.")},
        {"thick-fluid", QT_TRANSLATE_NOOP("DiaryMeaning", "It can be pus. Pus can come with an infection.")},
        {"thread-out", QT_TRANSLATE_NOOP("DiaryMeaning", "A thread works its way out. The skin there may have an infection too.")},
        {"face-weakness", QT_TRANSLATE_NOOP("DiaryMeaning", "A nerve of your face may be pressed or hurt. The numbing should have gone by now.")},
        {"severe-pain", QT_TRANSLATE_NOOP("DiaryMeaning", "Pain this strong can come from blood under the skin, or from an infection.")},
        {"saliva-swelling", QT_TRANSLATE_NOOP("DiaryMeaning", "The gland in your cheek that makes spit, or its duct, may be hurt.")},
        {"bleeding", QT_TRANSLATE_NOOP("DiaryMeaning", "A blood vessel may still be open.")},
        {"pulsating-lump", QT_TRANSLATE_NOOP("DiaryMeaning", "It can be a leak in an artery, with blood around it.")},
    };
    const auto found = meanings.find(rule);
    return found == meanings.end() ? nullptr : found->second;
}

/// Of a course that asks for a call.
const char* ofTrigger(const triggers::Finding& finding)
{
    const bool early = finding.day <= triggers::Thresholds{}.fillingLastDay;
    if (finding.trigger == triggers::Trigger::sideDivergence)
        return early ? QT_TRANSLATE_NOOP("DiaryMeaning", "It can be blood that gathers under the skin. It counts as that until a doctor has looked.")
                     : QT_TRANSLATE_NOOP("DiaryMeaning", "It can be blood under the skin, or an infection.");
    if (finding.trigger == triggers::Trigger::level && finding.stream.symptom == recovery::Symptom::pain)
        return QT_TRANSLATE_NOOP("DiaryMeaning", "Pain this strong can come from blood under the skin, or from an infection.");
    return QT_TRANSLATE_NOOP("DiaryMeaning", "Numbers alone do not say what it is. So call now.");
}

}  // namespace

QString meaningOf(const triage::Finding& finding)
{
    if (const auto* course = std::get_if<triggers::Finding>(&finding.what))
        return said(ofTrigger(*course));
    const auto* warning = std::get_if<warnings::Finding>(&finding.what);
    const char* text = warning != nullptr ? ofRule(warning->rule) : nullptr;
    return text != nullptr ? said(text) : QString();
}

QString unnamedMeaning(recovery::Urgency urgency)
{
    return urgency == recovery::Urgency::emergency
               ? said(QT_TRANSLATE_NOOP("DiaryMeaning", "It can be a danger to you right now, and it can get worse fast. That is why it can not wait."))
               : said(QT_TRANSLATE_NOOP("DiaryMeaning", "It may need care now. That is why you should call and not wait."));
}

}  // namespace ebbline::diaryapp
