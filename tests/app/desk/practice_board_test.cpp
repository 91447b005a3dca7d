// The practice page: figures worked out beside the interface, files, lots, and the usual range.
#include "app/desk/practice/figure_files.h"
#include "app/desk/practice/figures.h"
#include "core/clock/iso8601.h"
#include "core/exchange/csv.h"
#include "tests/screens/desk_pages.h"

#include <catch2/catch_test_macros.hpp>

#include <QFile>
#include <QImage>
#include <QTemporaryDir>
#include <QXmlStreamReader>

#include <array>
#include <vector>

using namespace ebbline;
using deskapp::PracticeBoard;
using deskapp::PracticeFigure;

namespace {

struct Practice {
    screens::DemoClinic clinic{screens::pastCourses};
    std::unique_ptr<app::DeskProgram> program = clinic.program(QStringLiteral("en"));
    PracticeBoard& board = *program->practice();
    QTemporaryDir files;

    Practice()
    {
        program->openPractice();
        screens::await(*program);
    }
    const PracticeFigure figure(PracticeBoard::Part part, int index = 0)
    {
        board.setPart(part);
        REQUIRE(board.figures().size() > index);
        return board.figures()[index];
    }
};

QByteArray contentOf(const QString& path)
{
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

}  // namespace

TEST_CASE("every part of the practice page says something, names its method, and has its table", "[desk][practice]")
{
    Practice practice;
    CHECK(practice.board.summary().contains(QLatin1String("64 courses")));
    for (const auto part : {PracticeBoard::Complications, PracticeBoard::Settling, PracticeBoard::Comparison, PracticeBoard::OverTime,
                            PracticeBoard::Alerts, PracticeBoard::Adherence}) {
        practice.board.setPart(part);
        REQUIRE_FALSE(practice.board.figures().isEmpty());
        for (const auto& figure : practice.board.figures()) {
            CAPTURE(figure.key.toStdString());
            CHECK_FALSE(figure.title.isEmpty());
            CHECK_FALSE(figure.says.isEmpty());
            CHECK_FALSE(figure.method.isEmpty());
            CHECK(figure.csv.size() > 1);
            for (const auto& row : figure.table) {
                CHECK(row.toStringList().size() == figure.header.size());
            }
            for (const auto& row : figure.csv) {
                CHECK(row.size() == figure.csv.first().size());
            }
        }
    }
}

TEST_CASE("the shares on the page are those of core, with their limits", "[desk][practice]")
{
    Practice practice;
    const auto* known = practice.board.known();
    REQUIRE(known != nullptr);
    REQUIRE(known->all.share);
    const auto figure = practice.figure(PracticeBoard::Complications);
    REQUIRE(figure.picture.rows.size() == 1);
    CHECK(figure.picture.rows.first().value == known->all.share->share);
    CHECK(figure.picture.rows.first().low == known->all.share->limits.low);
    CHECK(figure.csv[1][1].toLong() == known->all.complicated);
    CHECK(figure.csv[1][4].toDouble() == known->all.share->share);
    CHECK(figure.says.contains(QString::number(known->all.complicated)));
    CHECK(figure.caution.contains(QLatin1String("not counted")));
}

TEST_CASE("the line over time is named as what it is: one risk for every course, adjusted to nobody", "[desk][practice]")
{
    Practice practice;
    practice.board.setPart(PracticeBoard::OverTime);
    screens::await(*practice.program);
    const auto figure = practice.figure(PracticeBoard::OverTime);
    CHECK(figure.method.contains(QLatin1String("one risk for every course")));
    REQUIRE(figure.csv.size() > 2);
    const auto risk = figure.csv.first().indexOf(QStringLiteral("risk"));
    for (qsizetype row = 1; row < figure.csv.size(); ++row) {
        CHECK(figure.csv[row][risk] == figure.csv[1][risk]);
        CHECK(figure.csv[row].last() == QLatin1String("CUSUM, one risk for every course"));
    }
}

TEST_CASE("a comparison says that it is no proof, what it could have found, and says so in its files too", "[desk][practice]")
{
    Practice practice;
    practice.board.setPart(PracticeBoard::Comparison);
    CHECK(practice.board.wayCautionText().startsWith(QLatin1String("Comparison, not proof")));
    practice.board.setWay(static_cast<int>(learning::Way::area));
    screens::await(*practice.program);
    const auto figure = practice.figure(PracticeBoard::Comparison);
    CHECK(figure.caution.contains(QLatin1String("doubling")));
    CHECK(figure.header.size() == 5);

    const auto path = practice.files.filePath(QStringLiteral("c.csv"));
    REQUIRE(practice.board.write(figure.key, path));
    CHECK(contentOf(path).contains("comparison, not proof"));
    // The other way round, the difference changes its sign.
    const auto before = figure.csv[3][4].toDouble();
    practice.board.compare(practice.board.second(), practice.board.first());
    screens::await(*practice.program);
    CHECK(practice.board.figures().first().csv[3][4].toDouble() == -before);
}

TEST_CASE("a figure is written as a table that reads back, as a picture, and as vectors", "[desk][practice][files]")
{
    Practice practice;
    const auto figure = practice.figure(PracticeBoard::Settling);
    const auto csv = practice.files.filePath(QStringLiteral("f.csv"));
    REQUIRE(practice.board.write(figure.key, csv));
    const auto text = contentOf(csv).toStdString();
    exchange::CsvReader reader(text);
    std::size_t records = 0;
    while (reader.next() == exchange::CsvReader::Step::record) {
        CHECK(reader.cells().size() == static_cast<std::size_t>(figure.csv.first().size()));
        ++records;
    }
    CHECK(records == static_cast<std::size_t>(figure.csv.size()));
    CHECK(practice.board.outcome().contains(csv));

    const auto png = practice.files.filePath(QStringLiteral("f.png"));
    REQUIRE(practice.board.write(figure.key, png));
    const QImage image(png);
    CHECK(image.width() == 1800);
    CHECK(image.height() > 400);
    CHECK(image.pixelColor(0, 0) == QColor(Qt::white));

    const auto svg = practice.files.filePath(QStringLiteral("f.svg"));
    REQUIRE(practice.board.write(figure.key, svg));
    QXmlStreamReader xml(contentOf(svg));
    bool drawn = false;
    while (!xml.atEnd()) {
        const bool starts = xml.readNext() == QXmlStreamReader::StartElement;
        drawn = drawn || (starts && xml.name() == u"polyline");
    }
    CHECK_FALSE(xml.hasError());
    CHECK(drawn);

    CHECK_FALSE(practice.board.write(figure.key, practice.files.filePath(QStringLiteral("f.doc"))));
    CHECK_FALSE(practice.board.write(QStringLiteral("nothing"), csv));
    CHECK_FALSE(practice.board.write(figure.key, QStringLiteral("/nowhere/f.csv")));
}

TEST_CASE("opening the page again works nothing out anew, and an act does", "[desk][practice]")
{
    Practice practice;
    const auto* before = practice.board.known();
    practice.program->openPractice();
    CHECK_FALSE(practice.board.isWorking());
    CHECK(practice.board.known() == before);

    const auto alerts = practice.board.burden()->alerts;
    auto& queue = *practice.program->queue();
    queue.take(queue.rows()->keyAt(0));
    practice.program->openPractice();
    CHECK(practice.board.isWorking());
    screens::await(*practice.program);
    CHECK(practice.board.burden()->alerts == alerts);
    CHECK(practice.board.progress() == 1);
}

TEST_CASE("a young clinic is told what is lacking, not a number", "[desk][practice]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openPractice();
    screens::await(*program);
    auto& board = *program->practice();
    board.setPart(PracticeBoard::Complications);
    CHECK(board.figures().first().says.startsWith(QLatin1String("Not enough to say")));
    CHECK_FALSE(board.figures().first().enough);
    board.setPart(PracticeBoard::OverTime);
    CHECK(board.figures().first().says.contains(QLatin1String("No course has a known outcome")));
    board.setPart(PracticeBoard::Comparison);
    CHECK(board.figures().first().says.startsWith(QLatin1String("Not enough to say")));
    // None of its threads says where it had epinephrine.
    board.setWay(static_cast<int>(learning::Way::epinephrine));
    screens::await(*program);
    CHECK(board.groups().isEmpty());
    CHECK(board.figures().first().says.endsWith(QLatin1String("no course says to which it belongs.")));
    CHECK(board.wayCautionText().contains(QLatin1String("do not all say where they had it")));
}

TEST_CASE("locking takes every figure away", "[desk][practice][privacy]")
{
    Practice practice;
    practice.program->lots()->choose(QStringLiteral("QN2208"));
    REQUIRE(practice.program->lots()->calls()->rowCount() > 0);
    practice.program->lock();
    CHECK(practice.board.known() == nullptr);
    CHECK(practice.board.figures().isEmpty());
    CHECK(practice.program->lots()->calls()->rowCount() == 0);
    CHECK(practice.program->bands()->versions()->rowCount() == 0);
}

TEST_CASE("a number that is corrected while a lot's list is called through stands in the list", "[desk][practice][lots]")
{
    Practice practice;
    auto& lots = *practice.program->lots();
    lots.choose(QStringLiteral("QN2208"));
    REQUIRE(lots.calls()->rowCount() > 0);
    const auto course = lots.calls()->rows().first().value.value<deskapp::CallRow>().course;
    practice.program->openCourse(course);
    auto& editor = *practice.program->patient();
    editor.open(practice.program->course()->patientKey());
    editor.setPhone(QStringLiteral("+00 555 0199"));
    REQUIRE(editor.save());
    CHECK(lots.calls()->rows().first().value.value<deskapp::CallRow>().phone.contains(QStringLiteral("+00 555 0199")));
}

TEST_CASE("a lot is found however it was written, with everybody to call", "[desk][practice][lots]")
{
    Practice practice;
    auto& lots = *practice.program->lots();
    lots.setSearch(QStringLiteral("qn-22"));
    REQUIRE(lots.lots()->rowCount() == 1);
    lots.choose(QStringLiteral("QN2208"));
    const auto calls = lots.calls()->rows();
    REQUIRE(calls.size() > 10);
    QSet<QString> written;
    for (const auto& row : calls) {
        const auto call = row.value.value<deskapp::CallRow>();
        CHECK_FALSE(call.name.isEmpty());
        CHECK(call.phone.contains(QLatin1String("+00 555")));
        written << call.printed;
    }
    CHECK(written.size() == 2);

    const auto csv = practice.files.filePath(QStringLiteral("calls.csv"));
    REQUIRE(lots.write(csv));
    CHECK(contentOf(csv).count('\n') == calls.size() + 1);
    CHECK(contentOf(csv).contains("'+00 555"));
    const auto table = contentOf(csv).toStdString();
    exchange::CsvReader reader(table);
    REQUIRE(reader.next() == exchange::CsvReader::Step::record);
    REQUIRE(reader.cells()[3] == "treated");
    while (reader.next() == exchange::CsvReader::Step::record) {
        CHECK(clock::parseIso8601(reader.cells()[3]));  // a day alone, or one with no offset, is refused
    }
    const auto text = practice.files.filePath(QStringLiteral("calls.txt"));
    REQUIRE(lots.write(text));
    CHECK(QString::fromUtf8(contentOf(text)).contains(calls.first().value.value<deskapp::CallRow>().name));
    const auto pdf = practice.files.filePath(QStringLiteral("calls.pdf"));
    REQUIRE(lots.write(pdf));
    CHECK(contentOf(pdf).startsWith("%PDF"));
    CHECK_FALSE(lots.write(QStringLiteral("/nowhere/calls.pdf")));
}

TEST_CASE("one lot of two products is two lists, and who may have either stands in both, marked", "[desk][practice][lots]")
{
    screens::DemoClinic clinic{screens::pastCourses};
    auto program = clinic.program(QStringLiteral("en"));
    const std::array<const char*, 3> articles{"09506000134352", "09506000134369", ""};
    std::vector<recovery::Treatment> treatments;
    for (const auto& [id, course] : program->workplace().state().courses) {
        if (treatments.size() < articles.size() && course.treatment) {
            treatments.push_back(course.treatment->treatment);
        }
    }
    REQUIRE(treatments.size() == articles.size());
    for (std::size_t place = 0; place < articles.size(); ++place) {
        auto treatment = treatments[place];
        for (auto& placement : treatment.placements) {
            placement.lot = "ZZ-1";
            placement.article.reset();
            if (*articles[place] != 0) {
                placement.article = articles[place];
            }
        }
        REQUIRE(program->workplace().desk().recordTreatment(treatment));
    }
    program->openPractice();
    screens::await(*program);
    auto& lots = *program->lots();
    lots.setSearch(QStringLiteral("zz1"));
    REQUIRE(lots.lots()->rowCount() == 3);
    QStringList names;
    for (const auto& row : lots.lots()->rows())
        names << row.value.value<deskapp::LotRow>().lot;
    CHECK(names[0].contains(QLatin1String("09506000134352")));
    CHECK(names[1].contains(QLatin1String("09506000134369")));
    CHECK(names[2].contains(QLatin1String("product not known")));

    for (const auto* article : {articles[0], articles[1]}) {
        CAPTURE(article);
        lots.choose(QLatin1String("ZZ1 ") + QLatin1String(article));
        REQUIRE(lots.calls()->rowCount() == 2);
        CHECK(lots.says().contains(QLatin1String("Product not known: 1 of them.")));
        int marked = 0;
        for (const auto& row : lots.calls()->rows()) {
            const auto call = row.value.value<deskapp::CallRow>();
            const bool unsure = call.article.isEmpty();
            marked += unsure ? 1 : 0;
            CHECK(call.printed.contains(QLatin1String("product not known")) == unsure);
            CHECK(call.spoken.contains(QLatin1String("product not known")) == unsure);
        }
        CHECK(marked == 1);
        QTemporaryDir files;
        const auto csv = files.filePath(QStringLiteral("calls.csv"));
        REQUIRE(lots.write(csv));
        const auto table = contentOf(csv);
        CHECK(table.startsWith("lot,patient,phone,treated,printed,outcome,lot_article,article"));
        CHECK(table.count(article) == 3);  // in both rows whose list it is, and once as what a record says
    }
    lots.choose(QStringLiteral("ZZ1"));
    CHECK(lots.calls()->rowCount() == 1);
    CHECK_FALSE(lots.says().contains(QLatin1String("of them")));
}

TEST_CASE("a range is learned beside the interface, used with a reason, and gone back from", "[desk][practice][band]")
{
    Practice practice;
    auto& bands = *practice.program->bands();
    CHECK(bands.inUse().contains(QLatin1String("assumption"), Qt::CaseInsensitive));
    REQUIRE(bands.mayLearn());
    CHECK_FALSE(bands.refusals().isEmpty());
    bands.learn();
    CHECK(bands.isLearning());
    screens::await(*practice.program);
    REQUIRE(bands.versions()->rowCount() == 2);
    const auto learned = bands.versions()->rows().first().value.value<deskapp::BandRow>();
    CHECK(learned.coverage.size() == static_cast<qsizetype>(recovery::allSymptoms.size()));
    CHECK_FALSE(learned.check.isEmpty());
    CHECK_FALSE(learned.inUse);
    CHECK(bands.inUse().contains(QLatin1String("assumption"), Qt::CaseInsensitive));

    bands.learn();
    screens::await(*practice.program);
    CHECK(bands.outcome().contains(QLatin1String("Nothing has changed")));
    CHECK(bands.versions()->rowCount() == 2);

    if (learned.usable) {
        bands.startChoosing(learned.version);
        bands.choose(QStringLiteral("  "));
        CHECK(bands.choosing() == learned.version);
        bands.choose(QStringLiteral("Fits our patients"));
        CHECK(bands.versions()->rows().first().value.value<deskapp::BandRow>().inUse);
        bands.startChoosing(bands.versions()->keyAt(1));
        bands.choose(QStringLiteral("Too early"));
        CHECK(bands.choices().size() == 2);
    }
    CHECK(bands.versions()->rows().last().value.value<deskapp::BandRow>().inUse);
}
