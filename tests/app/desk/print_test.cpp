// What goes onto paper: numbered pages for the paper that a printer has, and a word where there is no printer.
#include "app/desk/model/course_look.h"
#include "app/desk/sheet/paper_printer.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

#include <QBuffer>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QRegularExpression>
#include <QtSvg/QSvgGenerator>

using namespace ebbline;

TEST_CASE("every page of the sheet has its number and the day it was made", "[desk][sheet]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    const auto content = deskapp::sheetOf(program->workplace(), clinic.course("Tomas Reyl"));
    REQUIRE(content);
    const deskapp::SheetLayout layout(*content, QSizeF(794, 1123), false);
    REQUIRE(layout.pageCount() == 3);
    for (int page = 0; page < layout.pageCount(); ++page) {
        QBuffer drawn;
        QSvgGenerator vectors;  // keeps words as words
        vectors.setOutputDevice(&drawn);
        QPainter painter(&vectors);
        layout.paint(painter, page);
        painter.end();
        const auto words = QString::fromUtf8(drawn.data());
        CHECK(words.contains(QStringLiteral("Page %1 of 3").arg(page + 1)));
        // What keeps the offset's own order is no word, and parts the others.
        static const QRegularExpression marks(QStringLiteral("[\\x{200e}\\x{2066}-\\x{2069}]"));
        for (const auto& part : content->printed.split(marks, Qt::SkipEmptyParts))
            CHECK(words.contains(part.trimmed().toHtmlEscaped()));
        CHECK(content->printed.contains(QLatin1String("2027")));
    }
}

TEST_CASE("sheet, course and hand-over are laid out for the paper that a printer has, without a file", "[desk][sheet][print]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openHandOver();
    const auto sheet = deskapp::sheetOf(program->workplace(), clinic.course("Tomas Reyl"));
    REQUIRE(sheet);
    const auto course = deskapp::coursePaper(program->workplace(), clinic.course("Tomas Reyl"));
    const auto note = program->handOver()->paper();
    const std::vector<deskapp::LayOut> kinds{
        [&](const QSizeF& paper) { return std::make_unique<deskapp::SheetLayout>(*sheet, paper, false); },
        [&](const QSizeF& paper) { return deskapp::pagesOf(course, paper, false); },
        [&](const QSizeF& paper) { return deskapp::pagesOf(note, paper, true); },
    };
    for (const auto& layOut : kinds) {
        QBuffer printer;
        REQUIRE(printer.open(QIODevice::WriteOnly));
        QPdfWriter device(&printer);  // pages as a printer has them
        device.setPageSize(QPageSize(QPageSize::Letter));
        REQUIRE(deskapp::paintPages(device, layOut));
        const auto pages = layOut(QPageSize(QPageSize::Letter).size(QPageSize::Inch) * deskapp::unitsPerInch)->pageCount();
        CHECK(pages >= 1);
        CHECK(printer.data().count("/MediaBox [0 0 612") == pages);
    }
}

TEST_CASE("without a printer printing says so, and what to do instead", "[desk][sheet][print]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    QString said;
    deskapp::PaperPrinter printer(program->workplace());
    printer.print(
        QStringLiteral("Hand-over"), QPageSize::A4, [](const QSizeF&) { return std::unique_ptr<deskapp::Pages>(); },
        [&](const QString& sentence) { said = sentence; }, false);
    CHECK(said == QLatin1String("No printer is set up on this computer. Set one up, or save the pages as a file."));

    if (!deskapp::PaperPrinter::anyPrinter()) {
        program->openSheet(deskapp::keyOf(clinic.course("Tomas Reyl")));
        program->sheet()->print();
        CHECK(program->sheet()->outcome() == said);
        program->openCourse(deskapp::keyOf(clinic.course("Tomas Reyl")));
        program->course()->print();
        CHECK(program->course()->outcome() == said);
        program->openHandOver();
        program->handOver()->print();
        CHECK(program->handOver()->outcome() == said);
    }
}
