// The patient's own record on paper, as poppler reads it.
#include "core/clock/iso8601.h"
#include "tests/app/pdf_reader.h"
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QLocale>
#include <QTemporaryDir>

using namespace ebbline;
using screens::DemoPatient;

TEST_CASE("a reader of PDF finds what the patient wrote, with year and zone, and every font inside", "[diary][mine][pdf]")
{
    const QString language = GENERATE(QStringLiteral("en"), QStringLiteral("ar"), QStringLiteral("zh_CN"));
    CAPTURE(language.toStdString());
    DemoPatient patient;
    auto program = patient.joined(language);
    DemoPatient::tell(*program, 4);
    program->amend(program->history()->entries().first().key);
    program->entry()->answer(1, 6);
    program->entry()->writeNote(QStringLiteral("Hard at the left temple."));
    program->entry()->save();
    program->history()->writeNote(QStringLiteral("May I sleep flat?"));
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("diary.pdf"));

    REQUIRE(diaryapp::writeRecordPdf(program->home().diary(), false, path));

    const QString text = tests::pdfText(path);
    CAPTURE(text.toStdString());
    // Where text runs from the right, the sign at the end of an English sentence stands at its left.
    CHECK(text.contains(QLatin1String("Hard at the left temple")));
    CHECK(text.contains(QLatin1String("May I sleep flat")));
    CHECK(text.contains(QString::fromStdString(clock::offsetText(program->home().now()))));
    CHECK(text.contains(QLocale().toString(2027).remove(QLocale().groupSeparator())));
    if (language == QLatin1String("en")) {
        for (const auto* words : {"My diary", "Swelling: right 4, left 6", "Before it was corrected:", "Swelling: right 4, left 4"})
            CHECK(text.contains(QLatin1String(words)));
    }
    const auto fonts = tests::pdfFonts(path);
    REQUIRE_FALSE(fonts.isEmpty());
    for (const tests::PdfFont& font : fonts) {
        CAPTURE(font.name.toStdString());
        CHECK(font.embedded);
        CHECK(font.unicode);
    }
    CHECK(tests::pdfProperty(path, QStringLiteral("Tagged")) == QLatin1String("no"));
}
