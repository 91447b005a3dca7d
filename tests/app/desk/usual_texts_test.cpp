// Usual messages: in every language of the diary, read before they are written, and never in a warning's way.
#include "app/desk/model/usual_texts.h"
#include "app/desk/model/words.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

#include <QSet>

using namespace ebbline;
using namespace ebbline::deskapp;

namespace {

/// A patient of another language, with a course of today.
recovery::CourseId treated(app::DeskProgram& program, const std::string& language)
{
    auto& desk = program.workplace().desk();
    auto treatment = desk.blankTreatment(desk.registerPatient("Lea Fontaine", "+00 555 0150", language).value());
    recovery::Placement placement;
    placement.entry = {296, 170};
    placement.end = {252, 262};
    treatment.placements = {placement};
    program.workplace().settle(desk.recordTreatment(treatment));
    return treatment.course;
}

}  // namespace

TEST_CASE("every usual message stands in every language of the diary, and carries the clinic's number where it asks for a call", "[desk][usual]")
{
    for (const auto text : allUsualTexts) {
        QSet<QString> words;
        for (const auto& language : diaryLanguages()) {
            CAPTURE(language.toStdString(), static_cast<int>(text));
            const auto plain = usualText(text, language, {});
            CHECK_FALSE(plain.isEmpty());
            CHECK_FALSE(plain.contains(u'%'));
            CHECK(plain.toUtf8().size() < 1000);
            words << plain;
            const auto withNumber = usualText(text, language, "+00 555 0100");
            const bool calls = text == UsualText::dressings || text == UsualText::comeEarlier || text == UsualText::callUs;
            CHECK(withNumber.contains(QLatin1String("+00 555 0100")) == calls);
            CHECK(withNumber.startsWith(plain));
        }
        CHECK(words.size() == diaryLanguages().size());
        CHECK(usualText(text, QStringLiteral("it"), {}).isEmpty());
    }
    CHECK(diaryLanguageOf("pt-BR") == QLatin1String("pt_BR"));
    CHECK(diaryLanguageOf("de") == QLatin1String("de"));
    CHECK(diaryLanguageOf("it").isEmpty());
}

TEST_CASE("a usual message is read in both languages, put into the field in the patient's, and sent by nobody but a person", "[desk][usual]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& course = *program->course();
    program->openCourse(keyOf(treated(*program, "pt-BR")));
    auto& usual = *course.usual();
    CHECK(usual.languageText().contains(languageName(QStringLiteral("pt_BR"))));
    CHECK(usual.theirs().isEmpty());

    usual.choose(1);
    CHECK(usual.theirs() == usualText(UsualText::writeEntry, QStringLiteral("pt_BR"), {}));
    CHECK(usual.ours() == usualText(UsualText::writeEntry, QStringLiteral("en"), {}));
    CHECK(course.messageDraft().isEmpty());

    course.setMessageDraft(QStringLiteral("Bom dia."));
    course.takeUsual();
    CHECK(course.messageDraft() == QStringLiteral("Bom dia.\n\n") + usualText(UsualText::writeEntry, QStringLiteral("pt_BR"), {}));
    CHECK(course.messages()->rowCount() == 0);
    CHECK(usual.chosen() == -1);
}

TEST_CASE("where the patient's language is not known, somebody chooses it first", "[desk][usual]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& course = *program->course();
    program->openCourse(keyOf(treated(*program, "it")));
    auto& usual = *course.usual();
    usual.choose(0);
    CHECK(usual.language() == -1);
    CHECK(usual.languageText().contains(QLatin1String("not known")));
    course.takeUsual();
    CHECK(course.messageDraft().isEmpty());

    usual.setLanguage(static_cast<int>(diaryLanguages().indexOf(QStringLiteral("zh_CN"))));
    course.takeUsual();
    CHECK(course.messageDraft().startsWith(usualText(UsualText::dressings, QStringLiteral("zh_CN"), {})));
}

TEST_CASE("while a call is due a usual message can only ask for it, and the page says to call first", "[desk][usual][safety]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& usual = *program->course()->usual();
    program->openCourse(keyOf(clinic.course("Odile Brandt")));
    CHECK(usual.titles() == QStringList{QStringLiteral("Please call us")});
    CHECK(usual.caution().contains(QLatin1String("call first")));

    program->openCourse(keyOf(clinic.course("Petra Halden")));
    CHECK(usual.titles().contains(QLatin1String("Thank you")));
    CHECK(usual.caution().isEmpty());
}
