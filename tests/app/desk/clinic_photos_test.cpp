// Photographs that the clinic took right after the treatment: chosen at the desk, looked at, kept, shown first, taken back.
#include "app/desk/photos/photo_rows.h"
#include "tests/platform/camera/marked_pictures.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

using namespace ebbline;
using deskapp::ClinicPhotos;
using deskapp::PhotoComparison;

namespace {

struct Intake {
    screens::DemoClinic clinic;
    QTemporaryDir folder;
    recovery::CourseId tomas = clinic.course("Tomas Reyl");
    std::unique_ptr<app::DeskProgram> program = clinic.program(QStringLiteral("en"));

    Intake() { program->openCourse(deskapp::keyOf(tomas)); }
    ClinicPhotos& form() { return *program->photos()->intake(); }
    QUrl file(const QString& name, const QByteArray& bytes) const
    {
        QFile written(folder.filePath(name));
        REQUIRE(written.open(QIODevice::WriteOnly));
        REQUIRE(written.write(bytes) == bytes.size());
        return QUrl::fromLocalFile(written.fileName());
    }
    QUrl picture() const { return file(QStringLiteral("picture.jpg"), test::phoneJpeg(test::quarters(900, 1200), 1)); }
    void use(const QUrl& url)
    {
        form().useFile(url);
        REQUIRE(QTest::qWaitFor([&] { return !form().isWorking(); }));
    }
    void keepOne()
    {
        form().begin();
        use(picture());
        REQUIRE(form().stage() == ClinicPhotos::Stage::Look);
        form().keep();
    }
    QList<deskapp::PhotoRow> rows() const
    {
        QList<deskapp::PhotoRow> all;
        for (const auto& row : program->photos()->rows()->rows()) {
            all << row.value.value<deskapp::PhotoRow>();
        }
        return all;
    }
};

}  // namespace

TEST_CASE("a photograph of the clinic's own is looked at before it is kept, and stands first in the strip", "[desk][photos]")
{
    Intake desk;
    const auto before = desk.rows().size();
    CHECK(desk.form().stage() == ClinicPhotos::Stage::Away);
    desk.form().begin();
    CHECK(desk.form().stage() == ClinicPhotos::Stage::Choose);
    CHECK(desk.form().view() == 0);
    desk.use(desk.picture());
    REQUIRE(desk.form().stage() == ClinicPhotos::Stage::Look);
    CHECK_FALSE(desk.form().previewOnPage().value<QImage>().isNull());
    CHECK(desk.rows().size() == before);  // nothing is kept yet

    desk.form().keep();

    CHECK(desk.form().stage() == ClinicPhotos::Stage::Choose);
    CHECK(desk.form().view() == 1);  // the next view
    const auto rows = desk.rows();
    REQUIRE(rows.size() == before + 1);
    CHECK(rows.first().day == QLatin1String("Day 0"));
    CHECK(rows.first().view == QLatin1String("Front"));
    CHECK(rows.first().when == QLatin1String("right after the treatment"));
    CHECK(rows.first().beside == QLatin1String("Put in by Dr Mara Lindqvist"));
    CHECK(rows.first().shown);
    CHECK(rows.first().spoken.contains(QLatin1String("right after the treatment")));
    // Nothing of the file but the picture.
    const auto kept = desk.program->workplace().desk().photo(desk.tomas, deskapp::photoFromKey(rows.first().key));
    REQUIRE(kept);
    const QByteArray bytes(reinterpret_cast<const char*>(kept->data()), static_cast<qsizetype>(kept->size()));
    CHECK_FALSE(bytes.contains(test::deviceName));
    CHECK_FALSE(bytes.contains(test::placeName));
}

TEST_CASE("what the clinic took stands beside the patient's later ones, on the page and on the sheet", "[desk][photos][sheet]")
{
    Intake desk;
    desk.keepOne();
    desk.program->openPhotos(deskapp::keyOf(desk.tomas));
    REQUIRE(desk.program->page() == app::DeskProgram::Page::photos);
    auto& comparison = *desk.program->photos()->comparison();
    CHECK(comparison.earlier().title == QLatin1String("Earlier: Day 0, right after the treatment"));
    CHECK(comparison.earlier().note.contains(QLatin1String("Put in by Dr Mara Lindqvist")));
    CHECK(comparison.earlier().own);
    CHECK(comparison.later().title.startsWith(QLatin1String("Later: Day 6")));
    CHECK_FALSE(comparison.later().own);

    desk.program->openSheet(deskapp::keyOf(desk.tomas));
    auto& sheet = *desk.program->sheet();
    sheet.setPhotos(true);
    REQUIRE(QTest::qWaitFor([&] { return !sheet.isWorking(); }));
    CHECK(sheet.text().contains(QLatin1String("Photographs, Front: Day 0, right after the treatment, and Day 6, 22 Mar 2027, 11:00")));
}

TEST_CASE("what was kept last is undone, and stays on record as taken back", "[desk][photos]")
{
    Intake desk;
    desk.keepOne();
    CHECK(desk.form().undoText() == QLatin1String("Kept: Front, right after the treatment."));
    desk.form().undo();
    CHECK(desk.form().undoText().isEmpty());
    CHECK_FALSE(desk.rows().first().shown);
    CHECK(desk.rows().first().state.startsWith(QLatin1String("Taken back by Dr Mara Lindqvist, ")));
    desk.form().undo();  // nothing more to undo
    CHECK(desk.program->notice().isEmpty());
}

TEST_CASE("a photograph of the clinic's is taken back only after it was asked, and a patient's never", "[desk][photos]")
{
    Intake desk;
    desk.keepOne();
    desk.program->openPhotos(deskapp::keyOf(desk.tomas));
    auto& comparison = *desk.program->photos()->comparison();
    comparison.askTakeBack(PhotoComparison::Later);
    CHECK(comparison.takeBackQuestion().isEmpty());
    comparison.takeBack();
    REQUIRE(comparison.earlier().own);

    comparison.askTakeBack(PhotoComparison::Earlier);
    CHECK(comparison.takeBackQuestion().startsWith(QLatin1String("Take this photograph back: Front, ")));
    comparison.leaveTakingBack();
    CHECK(comparison.takeBackQuestion().isEmpty());
    comparison.takeBack();
    REQUIRE(comparison.earlier().own);

    comparison.askTakeBack(PhotoComparison::Earlier);
    comparison.takeBack();
    CHECK(comparison.takeBackQuestion().isEmpty());
    CHECK_FALSE(comparison.earlier().own);
    CHECK(comparison.earlier().title.startsWith(QLatin1String("Earlier: Day 0, ")));
}

TEST_CASE("what is no picture is refused in words, and nothing is kept", "[desk][photos][errors]")
{
    Intake desk;
    const auto before = desk.rows().size();
    desk.form().begin();
    desk.use(desk.file(QStringLiteral("words.jpg"), "no picture at all"));
    CHECK(desk.form().stage() == ClinicPhotos::Stage::Choose);
    CHECK(desk.form().problem() == QLatin1String("The desk reads JPEG and PNG pictures. Choose one of these."));
    desk.use(QUrl::fromLocalFile(desk.folder.filePath(QStringLiteral("missing.jpg"))));
    CHECK(desk.form().problem() == QLatin1String("This picture does not open. Choose another."));
    desk.form().keep();
    CHECK(desk.rows().size() == before);
    desk.use(desk.picture());
    CHECK(desk.form().problem().isEmpty());
    desk.form().again();
    desk.form().keep();
    CHECK(desk.rows().size() == before);
}

TEST_CASE("another course and the lock end what was begun, and no picture goes to the wrong course", "[desk][photos][errors]")
{
    Intake desk;
    desk.form().begin();
    desk.form().useFile(desk.picture());
    desk.program->openCourse(deskapp::keyOf(desk.clinic.course("Ines Varga")));
    CHECK(desk.form().stage() == ClinicPhotos::Stage::Away);
    QTest::qWait(200);  // what was being decoded is dropped
    CHECK(desk.form().stage() == ClinicPhotos::Stage::Away);

    desk.form().begin();
    desk.use(desk.picture());
    REQUIRE(desk.form().stage() == ClinicPhotos::Stage::Look);
    desk.program->lock();
    CHECK(desk.form().stage() == ClinicPhotos::Stage::Away);
    CHECK(desk.form().previewOnPage().value<QImage>().isNull());
}

TEST_CASE("who looks around in the invented clinic finds its own photographs in front of the patient's", "[desk][photos]")
{
    screens::DemoClinic clinic;
    auto program = clinic.freshProgram(QStringLiteral("en"));
    REQUIRE(program->workplace().openDemo());
    auto& desk = program->workplace().desk();
    int courses = 0;
    for (const auto& summary : desk.courses()) {
        const auto photos = desk.photos(summary.course);
        if (photos.empty() || !photos.front().putInBy) {
            continue;
        }
        ++courses;
        CHECK(photos.front().day == 0);
        CHECK(photos.front().isHere());
        CHECK(photos.front().eyes);
        CHECK_FALSE(photos.back().putInBy);
    }
    CHECK(courses == 1);
}
