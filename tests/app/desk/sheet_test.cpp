// The follow-up record and its sheet: complete, on either paper, without colour.
#include "app/desk/model/course_look.h"
#include "app/desk/model/words.h"
#include "core/clock/iso8601.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QFile>
#include <QImage>
#include <QPageSize>
#include <QPainter>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include <functional>
#include <set>
#include <string>

using namespace ebbline;

namespace {

/// How the properties of a PDF that Qt writes hold a text: UTF-16, high byte first (ISO 32000-1, 7.9.2.2).
QByteArray inProperties(const QString& text)
{
    QByteArray raw;
    for (const QChar letter : text) {
        raw += static_cast<char>(letter.unicode() >> 8);
        raw += static_cast<char>(letter.unicode() & 0xff);
    }
    return raw;
}

/// Width and height of every page, in whole points.
QList<QSize> pageSizes(const QByteArray& raw)
{
    static const QRegularExpression box(QStringLiteral(R"(/MediaBox\s*\[\s*0\s+0\s+(\d+)(?:\.\d+)?\s+(\d+)(?:\.\d+)?\s*\])"));
    QList<QSize> sizes;
    auto found = box.globalMatch(QString::fromLatin1(raw));
    while (found.hasNext()) {
        const auto match = found.next();
        sizes << QSize(match.captured(1).toInt(), match.captured(2).toInt());
    }
    return sizes;
}

/// The offset of the clinic's clock, as it stands beside a time.
QString zoneOf(screens::DemoClinic& clinic)
{
    return deskapp::leftToRight(clock::offsetText(clinic.zone().moment(clinic.clock().now())));
}

}  // namespace

TEST_CASE("the sheet holds map, placements, dose, curves, findings, acts and open questions", "[desk][sheet]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openSheet(deskapp::keyOf(clinic.course("Tomas Reyl")));
    const auto content = deskapp::sheetOf(program->workplace(), clinic.course("Tomas Reyl"));
    REQUIRE(content);

    CHECK(content->tracks.size() == 8);
    CHECK(content->placements.size() == 8);
    CHECK(content->curves.size() == 7);
    CHECK(content->findings.size() > 2);
    CHECK(content->openQuestions.size() > 2);
    CHECK(content->followUp.size() == 6);
    CHECK_FALSE(content->followUpRecorded);
    const auto text = program->sheet()->text();
    for (const auto* part : {"Tomas Reyl", "TH-4417", "Limit by US label", "an assumption", "Called by Ilan Osei",
                             "No answer, left a message", "reminders answered"}) {
        CHECK(text.contains(QLatin1String(part)));
    }
}

TEST_CASE("every field of a treatment can be read again, on the sheet and on the page of the course", "[desk][sheet][course]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    const auto course = clinic.course("Petra Halden");
    const auto before = program->workplace().state().courses.at(course).treatment->treatment;
    // Written out, so that a field that is added one day is seen here.
    const auto& [id, patient, at, placements, anaesthetic, weight, dressings, cautions, consent, learning, baseline, note, placedBy, otherwise, planned, corrected] = before;
    REQUIRE_FALSE(placements.empty());
    const auto& [side, zone, view, entry, end, ending, material, form, gauge, length, lot, expiry, volume, redone, instrument, instrumentLength, epinephrineAt, article] = placements.front();
    const auto& [drug, percent, epinephrine, bicarbonate, extra] = anaesthetic;
    using Change = std::function<void(recovery::Treatment&)>;
    const std::vector<std::pair<const char*, Change>> changes{
        {"time", [&](auto& t) { t.at.at -= std::chrono::minutes(7); }},
        {"side", [&](auto& t) { t.placements[0].side = side == recovery::Side::left ? recovery::Side::right : recovery::Side::left; }},
        {"zone", [&](auto& t) { t.placements[0].zone = zone == recovery::Zone::neck ? recovery::Zone::brow : recovery::Zone::neck; }},
        {"view", [&](auto& t) { t.placements[0].view = view == recovery::ChartView::front ? recovery::ChartView::leftOblique : recovery::ChartView::front; }},
        {"entry", [&](auto& t) { t.placements[0].entry.x = entry.x + 1; }},
        {"end", [&](auto& t) { t.placements[0].end.y = end.y + 1; }},
        {"ending", [&](auto& t) { t.placements[0].ending = ending == recovery::Ending::pastMovingZone ? recovery::Ending::shortOfMovingZone : recovery::Ending::pastMovingZone; }},
        {"material", [&](auto& t) { t.placements[0].material = material == recovery::Material::pcl ? recovery::Material::pdo : recovery::Material::pcl; }},
        {"form", [&](auto& t) { t.placements[0].form = form == recovery::Form::cones ? recovery::Form::smooth : recovery::Form::cones; }},
        {"gauge", [&](auto& t) { t.placements[0].gauge = gauge + 1; }},
        {"length", [&](auto& t) { t.placements[0].lengthMm = length + 10; }},
        {"lot", [&](auto& t) { t.placements[0].lot = lot + "-B"; }},
        {"expiry", [&](auto& t) { t.placements[0].expiry = expiry == "2031-08-30" ? "2031-08-31" : "2031-08-30"; }},
        {"volume", [&](auto& t) { t.placements[0].anaestheticMl = volume + 0.3; }},
        {"instrument", [](auto& t) { t.placements[0].instrument = recovery::Instrument::bluntCannula; }},
        {"instrument's length", [](auto& t) { t.placements[0].instrumentLengthMm = 90; }},
        {"epinephrine", [](auto& t) { t.placements[0].epinephrineAt = recovery::EpinephrineAt::nowhere; }},
        {"product", [](auto& t) { t.placements[0].lot = "TH-9"; t.placements[0].article = "09506000134352"; }},
        {"another product", [](auto& t) { t.placements[0].lot = "TH-9"; t.placements[0].article = "09506000134369"; }},
        {"plan", [](auto& t) { t.planned = {recovery::asPlanned(t.placements[0])}; }},
        {"drug", [&](auto& t) { t.anaesthetic.drug = drug == recovery::Drug::lidocaine ? recovery::Drug::lidocaineWithEpinephrine : recovery::Drug::lidocaine;
                                t.anaesthetic.epinephrineOneIn = epinephrine == 0 ? 200'000 : 0; }},
        {"percent", [&](auto& t) { t.anaesthetic.percent = percent + 0.5; }},
        {"dilution", [&](auto& t) { t.anaesthetic.drug = recovery::Drug::lidocaineWithEpinephrine;
                                    t.anaesthetic.epinephrineOneIn = epinephrine == 100'000 ? 400'000 : 100'000; }},
        {"buffer", [&](auto& t) { t.anaesthetic.bicarbonatePart = bicarbonate > 0 ? 0 : 0.1; }},
        {"outside the tracks", [&](auto& t) { t.anaesthetic.extraMl = extra + 1.5; }},
        {"given otherwise", [](auto& t) { t.otherwiseMg = 0; }},  // none is another thing than not written down
        {"weight", [&](auto& t) { t.weightKg = weight.value_or(60) + 2.5; }},
        {"dressings", [&](auto& t) { t.dressings = !dressings; }},
        {"cautions", [&](auto& t) { t.cautionsGiven = !cautions; }},
        {"consent", [&](auto& t) { t.consentGiven = !consent; }},
        {"learning", [&](auto& t) { t.learningConsent = !learning; }},
        {"baseline", [&](auto& t) { t.baseline.insert_or_assign({recovery::Symptom::swelling, recovery::Side::left},
                                                                *recovery::Score::of(baseline.empty() ? 7 : 10)); }},
        {"placed by", [](auto& t) { t.placedBy = "Dr Ilan Osei"; }},
        {"redone", [](auto& t) { t.placements[0].redone = recovery::Redone{recovery::Redoing::replaced, "it stood under the skin"}; }},
        {"note", [&](auto& t) { t.note = note + " Both brows lower than before."; }}};
    CHECK(id == course);
    CHECK(placedBy != "Dr Ilan Osei");
    CHECK_FALSE(redone);
    CHECK_FALSE(instrument);
    CHECK_FALSE(instrumentLength);
    CHECK_FALSE(epinephrineAt);
    CHECK_FALSE(article);
    CHECK(planned.empty());
    CHECK_FALSE(otherwise);
    CHECK_FALSE(corrected);
    CHECK_FALSE(patient.isNull());
    CHECK(at == before.at);

    const auto shown = [&](const recovery::Treatment& treatment) {
        REQUIRE(program->workplace().settle(program->workplace().desk().recordTreatment(treatment)));
        program->openCourse(deskapp::keyOf(course));
        const auto& board = *program->course();
        auto content = deskapp::sheetOf(program->workplace(), course);
        REQUIRE(content);
        content->corrections.clear();  // they tell every change: each field is to stand on the sheet by itself
        QStringList points;
        for (const auto& track : content->tracks)
            points << QStringLiteral("%1 %2,%3 %4,%5").arg(track.view).arg(track.entry.x()).arg(track.entry.y()).arg(track.end.x()).arg(track.end.y());
        return std::pair(content->asText() + points.join(u'\n'), (board.threads() + board.care()).join(u'\n'));
    };
    const auto [sheet, page] = shown(before);
    for (const auto& [field, change] : changes) {
        CAPTURE(field);
        auto changed = before;
        change(changed);
        REQUIRE(recovery::check(changed));
        const auto [sheetNow, pageNow] = shown(changed);
        CHECK(sheetNow != sheet);
        // What only the picture of the face shows, and the day, stand elsewhere on the page.
        if (!std::set<std::string>{"time", "view", "entry", "end"}.contains(field))
            CHECK(pageNow != page);
    }
    auto told = before;
    told.corrected = recovery::Correction{"the lot was read wrongly", "Dr Ilan Osei", 1};
    shown(told);
    const auto withCorrections = deskapp::sheetOf(program->workplace(), course);
    REQUIRE(withCorrections);
    for (const auto& corrections : {withCorrections->asText(), program->course()->recordCorrections().join(u'\n')}) {
        CHECK(corrections.contains(QLatin1String("Dr Ilan Osei")));
        CHECK(corrections.contains(QLatin1String("the lot was read wrongly")));
    }
    auto marked = before;
    marked.placements[0].expiry = "2031-08-30";
    marked.weightKg = 62.5;
    marked.otherwiseMg = 37.5;
    marked.placements[0].instrument = recovery::Instrument::bluntCannula;
    marked.placements[0].instrumentLengthMm = 90;
    marked.anaesthetic.drug = recovery::Drug::lidocaineWithEpinephrine;
    marked.anaesthetic.epinephrineOneIn = 200'000;
    marked.placements[0].epinephrineAt = recovery::EpinephrineAt::entryPoint;
    const auto [sheetMarked, pageMarked] = shown(marked);
    for (const auto& text : {sheetMarked, pageMarked}) {
        CHECK(text.contains(QLatin1String("2031-08-30")));
        CHECK(text.contains(QLatin1String("62.5 kg")));
        CHECK(text.contains(QLatin1String("Lidocaine given otherwise: 37.5 mg")));
        CHECK(text.contains(QLatin1String("Blunt cannula, 90 mm")));
        CHECK(text.contains(QLatin1String("epinephrine at the entry point")));
    }
    CHECK(sheetMarked.contains(QLatin1String("as not all of it had epinephrine")));
}

TEST_CASE("times on paper carry their date and zone: today would be wrong tomorrow", "[desk][sheet]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    const auto content = deskapp::sheetOf(program->workplace(), clinic.course("Tomas Reyl"));
    REQUIRE(content);

    CHECK_FALSE(content->asText().contains(QLatin1String("Today")));
    CHECK_FALSE(content->asText().contains(QLatin1String("Yesterday")));
    const auto zone = zoneOf(clinic);
    CHECK(content->asText().contains(QStringLiteral("22 Mar 2027, 11:00 ") + zone));
    CHECK(content->printed.contains(zone));
    CHECK(content->facts.first().value.endsWith(zone));
}

TEST_CASE("a course on paper names year and zone at every time, in findings, entries and messages alike", "[desk][course][files]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    const auto course = clinic.course("Tomas Reyl");
    REQUIRE(program->workplace().settle(program->workplace().desk().writeMessage(course, "Please cool it today.")));
    const auto paper = deskapp::coursePaper(program->workplace(), course);
    const auto text = paper.asText();
    const auto zone = zoneOf(clinic);

    CHECK(paper.stamp.endsWith(zone));
    CHECK_FALSE(text.contains(QLatin1String("Today")));
    CHECK_FALSE(text.contains(QLatin1String("Yesterday")));
    REQUIRE(paper.parts.size() == 4);
    for (const auto& row : paper.parts[1].rows) {
        CHECK(row[2].endsWith(zone));
    }
    for (const auto& row : paper.parts[2].rows) {
        CHECK(row[0].contains(QLatin1String(" 2027, ")));
        CHECK(row[0].endsWith(zone));
    }
    for (const auto& line : paper.parts[3].lines) {
        CHECK(line.contains(zone));
    }
}

TEST_CASE("every page is black, white and grey", "[desk][sheet]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    const auto content = deskapp::sheetOf(program->workplace(), clinic.course("Tomas Reyl"));
    REQUIRE(content);
    const deskapp::SheetLayout layout(*content, QSizeF(794, 1123), false);
    REQUIRE(layout.pageCount() == 3);  // as docs/guides say

    for (int page = 0; page < layout.pageCount(); ++page) {
        QImage picture(794, 1123, QImage::Format_RGB32);
        QPainter painter(&picture);
        layout.paint(painter, page);
        painter.end();
        int coloured = 0;
        int dark = 0;
        for (int y = 0; y < picture.height(); ++y) {
            for (int x = 0; x < picture.width(); ++x) {
                const QColor pixel = picture.pixelColor(x, y);
                coloured += pixel.red() != pixel.green() || pixel.green() != pixel.blue() ? 1 : 0;
                dark += pixel.lightness() < 100 ? 1 : 0;
            }
        }
        CHECK(coloured == 0);
        CHECK(dark > 500);
    }
}

TEST_CASE("the file is a PDF of the paper asked for, with its fonts inside and no name in its properties", "[desk][sheet]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    const auto letter = GENERATE(false, true);
    program->openSheet(deskapp::keyOf(clinic.course("Tomas Reyl")));
    program->sheet()->setLetter(letter);
    QTemporaryDir folder;
    const auto path = folder.filePath(QStringLiteral("sheet.pdf"));

    REQUIRE(program->sheet()->write(path));

    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    const auto raw = file.readAll();
    CHECK(raw.startsWith("%PDF"));
    const auto sizes = pageSizes(raw);
    REQUIRE(sizes.size() >= 2);
    for (const QSize& size : sizes) {
        CHECK(size == (letter ? QSize(612, 792) : QSize(595, 842)));  // points
    }
    CHECK(raw.contains("FontFile2"));
    // The search finds what is in the properties, so it would find her name.
    CHECK(raw.contains(inProperties(QStringLiteral("Follow-up"))));
    for (const auto& part : {QStringLiteral("Tomas"), QStringLiteral("Reyl")}) {
        CHECK_FALSE(raw.contains(inProperties(part)));
        CHECK_FALSE(raw.contains(part.toUtf8()));
    }
    CHECK_FALSE(program->sheet()->suggestedFile().contains(QLatin1String("Tomas")));
    CHECK(program->sheet()->outcome().contains(QLatin1String("not encrypted")));
}

TEST_CASE("a sheet that cannot be written says so", "[desk][sheet]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openSheet(deskapp::keyOf(clinic.course("Tomas Reyl")));

    CHECK_FALSE(program->sheet()->write(QStringLiteral("/no/such/folder/sheet.pdf")));
    CHECK_FALSE(program->sheet()->outcome().contains(QLatin1String("Saved as")));
}

TEST_CASE("recording the follow-up closes the course and shows on the sheet", "[desk][followup]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    const auto mirela = clinic.course("Mirela Sand");
    program->openFollowUp(deskapp::keyOf(mirela));
    auto& editor = *program->followUp();
    CHECK(editor.missing().size() == 3);
    editor.setChange(static_cast<int>(records::GlobalChange::muchBetter));
    editor.setSatisfaction(4);
    editor.tick(QStringLiteral("lasting puckering"), true);
    editor.tick(QStringLiteral("a word of nobody's"), true);
    editor.setManagement(QStringLiteral("Massage shown."));

    CHECK(editor.uncomplicated() == 2);
    editor.save();

    const auto view = program->workplace().desk().course(mirela);
    REQUIRE(view);
    CHECK(view->summary.closed);
    REQUIRE(view->state->followUp);
    CHECK(view->state->followUp->change == records::GlobalChange::muchBetter);
    CHECK(view->state->followUp->complications == std::vector<std::string>{"lasting puckering"});
    CHECK_FALSE(view->state->followUp->uncomplicated);
    CHECK(view->state->followUp->by == "Dr Mara Lindqvist");
    const auto content = deskapp::sheetOf(program->workplace(), mirela);
    REQUIRE(content);
    CHECK(content->followUpRecorded);
    CHECK(content->asText().contains(QLatin1String("Massage shown.")));
}
