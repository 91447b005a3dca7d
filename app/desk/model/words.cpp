#include "app/desk/model/words.h"

#include "core/rehearsal/grounds.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <array>

namespace ebbline::deskapp {

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

}  // namespace

QString urgencyName(recovery::Urgency urgency)
{
    switch (urgency) {
    case recovery::Urgency::emergency:
        return Words::tr("Emergency");
    case recovery::Urgency::callNow:
        return Words::tr("Call now");
    case recovery::Urgency::nextWorkingDay:
        return Words::tr("Next working day");
    case recovery::Urgency::atReview:
        return Words::tr("At the follow-up");
    }
    return {};
}

QString urgencyAdvice(recovery::Urgency urgency, bool shown)
{
    switch (urgency) {
    case recovery::Urgency::emergency:
        return shown ? Words::tr("The phone said to call the emergency number. Make sure that help is on its way.")
                     : Words::tr("It is not known whether the phone has shown this warning. Call now, and make sure that help is on its way.");
    case recovery::Urgency::callNow:
        return shown ? Words::tr("The phone said to call the clinic today. Call the patient if no call came.")
                     : Words::tr("It is not known whether the phone has shown this warning. Call the patient now.");
    case recovery::Urgency::nextWorkingDay:
        return Words::tr("The patient expects an answer on the next working day.");
    case recovery::Urgency::atReview:
        return Words::tr("Bring it up at the follow-up.");
    }
    return {};
}

QString signName(recovery::Sign sign)
{
    using recovery::Sign;
    switch (sign) {
    case Sign::breathing:
        return Words::tr("Hard to breathe or to swallow");
    case Sign::neckSwelling:
        return Words::tr("Neck or jaw swelling that grows fast");
    case Sign::allergy:
        return Words::tr("Throat or tongue swells, wheeze, faint or hives");
    case Sign::numbingReaction:
        return Words::tr("Metal taste, ringing ears, confusion or twitching");
    case Sign::severeIllness:
        return Words::tr("Severely ill: hard shivering, confused or mottled skin");
    case Sign::strokeSigns:
        return Words::tr("Face droops with a weak arm or slurred speech");
    case Sign::vision:
        return Words::tr("Sudden loss of sight or double vision");
    case Sign::fastSwelling:
        return Words::tr("One side swells fast");
    case Sign::paleSkin:
        return Words::tr("Skin white, grey or net-like, cold or blistering");
    case Sign::colourChange:
        return Words::tr("Colour change near an entry point");
    case Sign::warmer:
        return Words::tr("Warmer than the other side");
    case Sign::firmer:
        return Words::tr("Firm, shiny or tight");
    case Sign::moreTender:
        return Words::tr("More tender than yesterday");
    case Sign::edgeMoved:
        return Words::tr("The edge has moved");
    case Sign::thickFluid:
        return Words::tr("Thick or milky fluid");
    case Sign::threadOut:
        return Words::tr("Thread end through the skin");
    case Sign::faceWeakness:
        return Words::tr("Weakness of the face");
    case Sign::salivaSwelling:
        return Words::tr("Cheek swells on eating, or clear fluid");
    case Sign::bleeding:
        return Words::tr("Still bleeding after 15 minutes of pressure");
    case Sign::pulsatingLump:
        return Words::tr("A lump that beats");
    case Sign::threadLump:
        return Words::tr("Thread seen or felt, skin calm");
    case Sign::shivering:
        return Words::tr("Chills");
    }
    return {};
}

QString zoneName(recovery::Zone zone)
{
    switch (zone) {
    case recovery::Zone::brow:
        return Words::tr("Brow");
    case recovery::Zone::temple:
        return Words::tr("Temple");
    case recovery::Zone::midface:
        return Words::tr("Midface");
    case recovery::Zone::cheek:
        return Words::tr("Cheek");
    case recovery::Zone::nasolabial:
        return Words::tr("Nasolabial fold");
    case recovery::Zone::marionette:
        return Words::tr("Marionette fold");
    case recovery::Zone::jawline:
        return Words::tr("Jawline");
    case recovery::Zone::submental:
        return Words::tr("Under the chin");
    case recovery::Zone::neck:
        return Words::tr("Neck");
    }
    return {};
}

QString materialName(recovery::Material material)
{
    switch (material) {
    case recovery::Material::pdo:
        return Words::tr("PDO");
    case recovery::Material::plla:
        return Words::tr("PLLA");
    case recovery::Material::pcl:
        return Words::tr("PCL");
    case recovery::Material::plcl:
        return Words::tr("PLCL");
    case recovery::Material::other:
        return Words::tr("Other material");
    }
    return {};
}

QString formName(recovery::Form form)
{
    switch (form) {
    case recovery::Form::smooth:
        return Words::tr("Smooth");
    case recovery::Form::twisted:
        return Words::tr("Twisted");
    case recovery::Form::barbedOneWay:
        return Words::tr("Barbed, one way");
    case recovery::Form::barbedTwoWay:
        return Words::tr("Barbed, two ways");
    case recovery::Form::moulded:
        return Words::tr("Moulded");
    case recovery::Form::cones:
        return Words::tr("Cones");
    }
    return {};
}

QString endingName(recovery::Ending ending)
{
    return ending == recovery::Ending::pastMovingZone ? Words::tr("Past the moving zone")
                                                      : Words::tr("Short of the moving zone");
}

QString sideTitle(recovery::Side side)
{
    switch (side) {
    case recovery::Side::left:
        return Words::tr("Left");
    case recovery::Side::right:
        return Words::tr("Right");
    case recovery::Side::none:
        break;
    }
    return Words::tr("Both");
}

QString viewName(recovery::ChartView view)
{
    switch (view) {
    case recovery::ChartView::front:
        return Words::tr("Front");
    case recovery::ChartView::leftOblique:
        return Words::tr("From the patient's left");
    case recovery::ChartView::rightOblique:
        return Words::tr("From the patient's right");
    }
    return {};
}

QString drugName(recovery::Drug drug)
{
    return drug == recovery::Drug::lidocaineWithEpinephrine ? Words::tr("Lidocaine with epinephrine")
                                                            : Words::tr("Lidocaine, plain");
}

QString actName(records::Act act)
{
    switch (act) {
    case records::Act::seen:
        return Words::tr("Seen");
    case records::Act::taken:
        return Words::tr("Taken");
    case records::Act::called:
        return Words::tr("Called");
    case records::Act::visitBroughtForward:
        return Words::tr("Visit brought forward");
    case records::Act::closed:
        return Words::tr("Closed");
    case records::Act::reopened:
        return Words::tr("Reopened");
    }
    return {};
}

QString outcomeName(records::Outcome outcome)
{
    switch (outcome) {
    case records::Outcome::none:
        break;
    case records::Outcome::reassured:
        return Words::tr("Reassured: usual course, explained");
    case records::Outcome::advised:
        return Words::tr("Advised: told what to do at home");
    case records::Outcome::treatedInClinic:
        return Words::tr("Treated in the clinic");
    case records::Outcome::sentToUrgentCare:
        return Words::tr("Sent to urgent care");
    case records::Outcome::notReached:
        return Words::tr("Not reached");
    }
    return {};
}

QString changeName(records::GlobalChange change)
{
    switch (change) {
    case records::GlobalChange::veryMuchBetter:
        return Words::tr("Very much better");
    case records::GlobalChange::muchBetter:
        return Words::tr("Much better");
    case records::GlobalChange::better:
        return Words::tr("Better");
    case records::GlobalChange::unchanged:
        return Words::tr("Unchanged");
    case records::GlobalChange::worse:
        return Words::tr("Worse");
    }
    return {};
}

QStringList complicationWords()
{
    return {QStringLiteral("haematoma"),        QStringLiteral("infection"),
            QStringLiteral("thread end out"),   QStringLiteral("lasting puckering"),
            QStringLiteral("visible thread"),   QStringLiteral("nerve weakness"),
            QStringLiteral("lasting numbness"), QStringLiteral("salivary leak"),
            QStringLiteral("skin injury"),      QStringLiteral("asymmetry"),
            QStringLiteral("other")};
}

QString complicationName(const QString& word)
{
    const std::array names{Words::tr("Haematoma"),        Words::tr("Infection"),
                           Words::tr("Thread end out"),   Words::tr("Lasting puckering"),
                           Words::tr("Visible thread"),   Words::tr("Nerve weakness"),
                           Words::tr("Lasting numbness"), Words::tr("Salivary leak"),
                           Words::tr("Skin injury"),      Words::tr("Asymmetry"),
                           Words::tr("Other, see note")};
    const auto place = complicationWords().indexOf(word);
    return place < 0 ? word : names[static_cast<std::size_t>(place)];
}

QString complicationMeaning(const QString& word)
{
    const std::array meanings{
        Words::tr("Blood gathered under the skin as a lump, which was watched closely, pressed, drained or operated on; a flat bruise is none."),
        Words::tr("Pus, or redness, warmth and pain that spread, treated as an infection."),
        Words::tr("An end of a thread stands out of the skin or lies bare."),
        Words::tr("A dimple or fold along a thread that is still there at the follow-up."),
        Words::tr("A thread can be seen or felt through closed skin, and troubles the patient."),
        Words::tr("A part of the face moves less than before the treatment, after the anaesthetic has worn off."),
        Words::tr("Feeling in a part of the face is less or other than before, still at the follow-up."),
        Words::tr("Clear fluid from the cheek or swelling of it, more while eating."),
        Words::tr("Skin that blistered, died, broke open or was left with a scar or a dark mark."),
        Words::tr("The sides differ more than before the treatment, in the eyes of patient or practitioner."),
        Words::tr("Anything else that needed a visit, a medicine or an act; the note says what.")};
    const auto place = complicationWords().indexOf(word);
    return place < 0 ? QString() : meanings[static_cast<std::size_t>(place)];
}

QString cohortText(const std::string& kept)
{
    const auto grounds = rehearsal::groundsOf(kept);
    if (!grounds.courses) {
        return QString::fromStdString(kept);
    }
    return grounds.invented ? Words::tr("%Ln invented course(s)", nullptr, *grounds.courses)
                            : Words::tr("%Ln uncomplicated course(s)", nullptr, *grounds.courses);
}

QStringList diaryLanguages()
{
    return {QStringLiteral("en"),    QStringLiteral("de"), QStringLiteral("es"), QStringLiteral("fr"),
            QStringLiteral("pt_BR"), QStringLiteral("tr"), QStringLiteral("ar"), QStringLiteral("zh_CN")};
}

QString nearestLanguage(const QString& locale, const QStringList& offered)
{
    if (offered.contains(locale)) {
        return locale;
    }
    const auto same = std::ranges::find_if(offered, [&](const QString& code) {
        return code.section(u'_', 0, 0) == locale.section(u'_', 0, 0);
    });
    return same == offered.end() ? offered.value(0) : *same;
}

QString languageName(const QString& code)
{
    const QLocale locale(code);
    if (locale == QLocale::c()) {
        return {};
    }
    auto name = locale.nativeLanguageName();
    // English is named with its country in the locale data; the language alone is meant here.
    return code == QLatin1String("en") ? QStringLiteral("English") : name;
}

QString leftToRight(const std::string& text)
{
    constexpr QChar isolate(0x2066);
    constexpr QChar end(0x2069);
    return text.empty() ? QString() : isolate + QString::fromStdString(text) + end;
}

QString errorText(const Error& error)
{
    switch (error.reason) {
    case Reason::wrongKey:
        return Words::tr("That passphrase does not open this vault.");
    case Reason::tooSoon:
        return Words::tr("Too many tries. Wait a moment, then try again.");
    case Reason::damaged:
    case Reason::outOfOrder:
        return Words::tr("The vault on this computer is damaged. Nothing was changed. Restore it from a backup.");
    case Reason::storageFull:
        return Words::tr("The disk is full. Nothing was saved. Free some space and try again.");
    case Reason::storageFailed:
        return Words::tr("The disk reported an error. Nothing was saved.");
    case Reason::unreachable:
        return Words::tr("The hub cannot be reached. What you record is kept here and sent later.");
    case Reason::forged:
        return Words::tr("Something arrived that is not genuine. It was kept apart and not used.");
    case Reason::expired:
        return Words::tr("Its time is over. Start again.");
    case Reason::alreadyExists:
        return Words::tr("There is one already.");
    case Reason::notFound:
        return Words::tr("It is not there.");
    case Reason::locked:
        return Words::tr("The vault is locked. Unlock it first.");
    case Reason::refused:
        return Words::tr("It was refused.");
    case Reason::outOfRange:
    case Reason::notFinite:
    case Reason::malformed:
    case Reason::notEnough:
        return Words::tr("Something is missing or out of range: %1").arg(QString::fromStdString(error.detail));
    case Reason::unsupported:
        return Words::tr("This needs a newer version of the program.");
    case Reason::tooLarge:
        return Words::tr("That is too long.");
    case Reason::unprotected:
        return Words::tr("Without TLS others could read along: plain HTTP is for a hub on this very computer. Nothing was sent.");
    case Reason::invalidState:
        break;
    }
    return Words::tr("That is not possible now.");
}

}  // namespace ebbline::deskapp
