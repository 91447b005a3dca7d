// What the desk puts on paper, as poppler reads it: the words are there as text, and every font is inside.
#include "app/desk/model/words.h"
#include "core/clock/iso8601.h"
#include "tests/app/pdf_reader.h"
#include "tests/screens/desk_pages.h"

#include <catch2/catch_test_macros.hpp>

#include <QTemporaryDir>

using namespace ebbline;

namespace {

/// Every font of the file is in it, and says which letters its glyphs stand for.
void checkFonts(const QString& path)
{
    const auto fonts = tests::pdfFonts(path);
    REQUIRE_FALSE(fonts.isEmpty());
    for (const auto& font : fonts) {
        CAPTURE(font.name.toStdString());
        CHECK(font.name.contains(QLatin1String("Noto")));
        CHECK(font.embedded);
        CHECK(font.unicode);
    }
    // docs/formats/paper.md says so; a file with tags would be a better one, and another sentence.
    CHECK(tests::pdfProperty(path, QStringLiteral("Tagged")) == QLatin1String("no"));
}

void checkWords(const QString& path, const QStringList& words)
{
    const auto text = tests::pdfText(path);
    CAPTURE(text.toStdString());
    for (const auto& word : words) {
        CAPTURE(word.toStdString());
        CHECK(text.contains(word));
    }
}

}  // namespace

TEST_CASE("a reader of PDF finds the words of the follow-up sheet, its times with their zone, and its fonts inside", "[desk][sheet][pdf]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openSheet(deskapp::keyOf(clinic.course("Tomas Reyl")));
    const QTemporaryDir folder;
    const auto path = folder.filePath(QStringLiteral("sheet.pdf"));
    REQUIRE(program->sheet()->write(path));

    const auto zone = QString::fromStdString(clock::offsetText(program->workplace().now()));
    checkWords(path, {QStringLiteral("Follow-up sheet"), QStringLiteral("Tomas Reyl"), QStringLiteral("TH-4417"), QStringLiteral("Treatment map"),
                      QStringLiteral("Open questions"), QStringLiteral("Called by Ilan Osei"), QStringLiteral("Page 3 of 3"), QStringLiteral(" ") + zone});
    checkFonts(path);
    CHECK(tests::pdfProperty(path, QStringLiteral("Title")) == QLatin1String("Follow-up sheet"));
}

TEST_CASE("a reader of PDF finds everybody on a call list with the number to call", "[desk][lots][pdf]")
{
    screens::DemoClinic clinic{screens::pastCourses};
    auto program = clinic.program(QStringLiteral("en"));
    program->openPractice();
    screens::await(*program);
    auto& lots = *program->lots();
    lots.choose(QStringLiteral("QN2208"));
    const QTemporaryDir folder;
    const auto path = folder.filePath(QStringLiteral("calls.pdf"));
    REQUIRE(lots.write(path));

    QStringList words{QStringLiteral("Call list for lot QN2208"), QString::fromStdString(clock::offsetText(program->workplace().now()))};
    for (const auto& row : lots.calls()->rows()) {
        const auto call = row.value.value<deskapp::CallRow>();
        words << call.name << QString(call.phone).remove(QChar(0x2066)).remove(QChar(0x2069));
    }
    REQUIRE(words.size() > 20);
    checkWords(path, words);
    checkFonts(path);
}

TEST_CASE("a reader of PDF finds who waits on a hand-over note, and the word that was left", "[desk][handover][pdf]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& note = *program->handOver();
    program->openHandOver();
    note.setWord(QStringLiteral("Call Odile again at six."));
    note.pin();
    const QTemporaryDir folder;
    const auto path = folder.filePath(QStringLiteral("note.pdf"));
    REQUIRE(note.write(path));

    checkWords(path, {QStringLiteral("Hand-over"), QStringLiteral("Who waits"), QStringLiteral("Call Odile again at six."), QStringLiteral("Noor Castellan"),
                      QStringLiteral("Odile Brandt"), QString::fromStdString(clock::offsetText(program->workplace().now()))});
    checkFonts(path);
}
