// The photographs of a course: what the strip says of each, and two beside each other with their eyes in one place.
#include "tests/screens/demo_clinic.h"

#include "app/desk/photos/photo_rows.h"
#include "app/face/drawn_face.h"
#include "core/photos/jpeg_scan.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QLineF>
#include <QPainter>
#include <QTest>

using namespace ebbline;
using deskapp::PhotoComparison;

namespace {

constexpr QRectF frame(0, 0, 300, 400);

QList<deskapp::PhotoRow> rowsOf(app::DeskProgram& program)
{
    QList<deskapp::PhotoRow> rows;
    for (const auto& row : program.photos()->rows()->rows()) {
        rows << row.value.value<deskapp::PhotoRow>();
    }
    return rows;
}

/// The pages ask for pictures when they are painted; here the test does.
void awaitPictures(app::DeskProgram& program)
{
    auto& comparison = *program.photos()->comparison();
    REQUIRE(QTest::qWaitFor([&] {
        const bool earlier = !comparison.earlier().there || !comparison.imageOf(PhotoComparison::Earlier).isNull();
        const bool later = !comparison.later().there || !comparison.imageOf(PhotoComparison::Later).isNull();
        return earlier && later && !program.photos()->pictures()->isWorking();
    }));
}

std::unique_ptr<app::DeskProgram> comparing(screens::DemoClinic& clinic, const char* patient = "Tomas Reyl")
{
    auto program = clinic.program(QStringLiteral("en"));
    program->openCourse(deskapp::keyOf(clinic.course(patient)));
    program->openPhotos(deskapp::keyOf(clinic.course(patient)));
    REQUIRE(program->page() == app::DeskProgram::Page::photos);
    awaitPictures(*program);
    return program;
}

/// The front photographs that can be shown, oldest first.
std::vector<desk::CoursePhoto> frontsOf(app::DeskProgram& program, const recovery::CourseId& course)
{
    std::vector<desk::CoursePhoto> fronts;
    for (const auto& photo : program.workplace().desk().photos(course)) {
        if (photo.pose == photos::Pose::front && photo.isHere()) {
            fronts.push_back(photo);
        }
    }
    return fronts;
}

/// Marks the eyes of a half where they are drawn, as somebody with a mouse would.
void markByHand(screens::DemoClinic& clinic, app::DeskProgram& program, int half, const photos::PhotoId& photo)
{
    auto& comparison = *program.photos()->comparison();
    comparison.startMarking(half);
    REQUIRE(comparison.marking() == half);
    const auto picture = comparison.imageOf(half);
    const auto toFrame = comparison.toFrame(half, frame);
    REQUIRE(toFrame);
    const auto& eyes = clinic.eyesIn(photo);
    comparison.put(toFrame->map(deskapp::pointOf(eyes.right, picture.size())), frame);
    comparison.put(toFrame->map(deskapp::pointOf(eyes.left, picture.size())), frame);
    comparison.keep();
}

}  // namespace

TEST_CASE("a drawn face passes for a picture of a phone: nothing in it but the picture", "[desk][photos]")
{
    const auto view = GENERATE(recovery::ChartView::front, recovery::ChartView::leftOblique, recovery::ChartView::rightOblique);
    const auto drawn = face::drawnFace({.view = view, .marked = 0.5, .turned = 7});
    const auto jpeg = face::jpegOf(drawn.picture);

    const auto facts = photos::scanJpeg({reinterpret_cast<const std::uint8_t*>(jpeg.constData()), static_cast<std::size_t>(jpeg.size())});

    REQUIRE(facts);
    CHECK(facts->width == 480);
    CHECK(facts->height == 640);
    // The pupils are where they are said to be, and the patient's left one is on the right of the picture.
    CHECK(drawn.picture.pixelColor(drawn.leftEye.toPoint()).lightness() < 40);
    CHECK(drawn.picture.pixelColor(drawn.rightEye.toPoint()).lightness() < 40);
    CHECK(drawn.leftEye.x() > drawn.rightEye.x());
}

TEST_CASE("the strip says day, view, entry and state of each photograph, in time order", "[desk][photos]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openCourse(deskapp::keyOf(clinic.course("Tomas Reyl")));

    const auto rows = rowsOf(*program);

    REQUIRE(rows.size() == 10);
    QStringList days;
    QStringList states;
    for (const auto& row : rows) {
        days << row.day;
        states << row.state;
        CHECK(row.shown == row.state.isEmpty());
        CHECK(row.beside.startsWith(QLatin1String("Beside the entry of ")));
        for (const auto& part : {row.day, row.view, row.when, row.state}) {
            CHECK(row.spoken.contains(part));
        }
    }
    auto sorted = days;
    std::ranges::sort(sorted);
    CHECK(days == sorted);
    CHECK(rows.first().day == QLatin1String("Day 0"));
    CHECK(states.count(QString()) == 7);
    CHECK(states.filter(QStringLiteral("Taken back by the patient")).size() == 1);
    CHECK(states.count(QStringLiteral("Could not be opened")) == 1);
    CHECK(states.filter(QStringLiteral("Still arriving: 3 of 4 parts")).size() == 1);
    CHECK(program->photos()->summary() == QStringLiteral("10 photographs · 1 still arriving"));
    CHECK(std::ranges::count(rows, QStringLiteral("From the patient's left"), &deskapp::PhotoRow::view) == 3);
}

TEST_CASE("a course without photographs offers nothing to compare", "[desk][photos]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    const auto mirela = deskapp::keyOf(clinic.course("Mirela Sand"));
    program->openCourse(mirela);

    CHECK(rowsOf(*program).isEmpty());
    CHECK(program->photos()->summary().isEmpty());
    CHECK_FALSE(program->photos()->isComparable());
    program->openPhotos(mirela);
    CHECK(program->page() == app::DeskProgram::Page::course);
}

TEST_CASE("a photograph of another course is refused, by the page and by the pictures", "[desk][photos]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openCourse(deskapp::keyOf(clinic.course("Tomas Reyl")));
    const auto other = frontsOf(*program, clinic.course("Ines Varga"));
    REQUIRE(other.size() == 1);

    program->openPhotos(deskapp::keyOf(clinic.course("Tomas Reyl")), deskapp::keyOf(other[0].photo));
    CHECK(program->page() == app::DeskProgram::Page::course);
    CHECK_FALSE(program->photos()->comparison()->open(other[0].photo));

    auto& pictures = *program->photos()->pictures();
    CHECK(pictures.picture(other[0].photo, deskapp::PhotoPictures::Size::full).isNull());
    REQUIRE(QTest::qWaitFor([&] { return !pictures.isWorking(); }));
    CHECK(pictures.picture(other[0].photo, deskapp::PhotoPictures::Size::full).isNull());
    CHECK_FALSE(program->workplace().desk().markEyes(clinic.course("Tomas Reyl"), other[0].photo, clinic.eyesIn(other[0].photo)));
}

TEST_CASE("what cannot be decoded says so, and is none to compare with", "[desk][photos]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openCourse(deskapp::keyOf(clinic.course("Jonas Weir")));
    REQUIRE(rowsOf(*program).size() == 2);
    auto& pictures = *program->photos()->pictures();
    for (const auto& row : rowsOf(*program)) {
        (void)pictures.picture(deskapp::photoFromKey(row.key), deskapp::PhotoPictures::Size::thumbnail);
    }
    REQUIRE(QTest::qWaitFor([&] { return !pictures.isWorking(); }));

    QStringList states;
    for (const auto& row : rowsOf(*program)) {
        states << row.state;
    }
    CHECK(states.count(QStringLiteral("Could not be opened")) == 1);
    CHECK(states.count(QString()) == 1);
    CHECK_FALSE(program->photos()->comparison()->later().there);
}

TEST_CASE("the first and the last of a view come first, and stepping never lets them pass each other", "[desk][photos]")
{
    screens::DemoClinic clinic;
    auto program = comparing(clinic);
    auto& comparison = *program->photos()->comparison();
    CHECK(comparison.earlier().title.startsWith(QLatin1String("Earlier: Day 0")));
    CHECK(comparison.later().title.startsWith(QLatin1String("Later: Day 6")));
    CHECK_FALSE(comparison.earlier().canStepBack);
    CHECK_FALSE(comparison.later().canStepOn);

    for (int i = 0; i < 5; ++i) {
        comparison.step(PhotoComparison::Earlier, 1);
    }
    CHECK_FALSE(comparison.earlier().title == comparison.later().title);
    CHECK_FALSE(comparison.earlier().canStepOn);
    CHECK_FALSE(comparison.later().canStepBack);

    comparison.setView(1);
    CHECK(comparison.earlier().spoken.contains(QLatin1String("From the patient's left")));
    CHECK(comparison.sides() == QLatin1String("The patient's left side is towards the camera."));
}

TEST_CASE("a view with one photograph shows it alone and says so", "[desk][photos]")
{
    screens::DemoClinic clinic;
    auto program = comparing(clinic, "Ines Varga");
    auto& comparison = *program->photos()->comparison();

    CHECK(comparison.earlier().there);
    CHECK(comparison.earlier().title == QLatin1String("Day 1, 15 Mar, 20:00"));
    CHECK_FALSE(comparison.later().there);
    CHECK(comparison.later().state == QLatin1String("There is only one photograph of this view."));
    CHECK(comparison.how().isEmpty());
    comparison.setView(2);
    CHECK(comparison.earlier().state == QLatin1String("There is no photograph of this view here."));
}

TEST_CASE("without marks both are shown as they are, and the page says so", "[desk][photos]")
{
    screens::DemoClinic clinic;
    auto program = comparing(clinic);
    auto& comparison = *program->photos()->comparison();

    CHECK_FALSE(comparison.isAligned());
    CHECK(comparison.how().startsWith(QLatin1String("Shown as they were taken")));
    CHECK(comparison.toFrame(PhotoComparison::Earlier, frame) == deskapp::fitted(comparison.imageOf(PhotoComparison::Earlier).size(), frame));
    CHECK(comparison.toFrame(PhotoComparison::Later, frame) == deskapp::fitted(comparison.imageOf(PhotoComparison::Later).size(), frame));
}

TEST_CASE("eyes marked by hand are kept in her name and lay the later one over the earlier", "[desk][photos]")
{
    screens::DemoClinic clinic;
    auto program = comparing(clinic);
    auto& comparison = *program->photos()->comparison();
    const auto fronts = frontsOf(*program, clinic.course("Tomas Reyl"));
    const auto first = fronts.front().photo;
    const auto last = fronts.back().photo;

    markByHand(clinic, *program, PhotoComparison::Earlier, first);
    CHECK(comparison.marking() == -1);
    CHECK(comparison.earlier().note.contains(QLatin1String("Eyes marked by Dr Mara Lindqvist")));
    CHECK_FALSE(comparison.isAligned());
    markByHand(clinic, *program, PhotoComparison::Later, last);

    REQUIRE(comparison.isAligned());
    CHECK(comparison.how().startsWith(QLatin1String("Aligned by the eyes")));
    const auto kept = frontsOf(*program, clinic.course("Tomas Reyl")).back().eyes;
    REQUIRE(kept);
    CHECK(std::abs(kept->left.across - clinic.eyesIn(last).left.across) <= 1);
    for (const double zoom : {1.0, 3.0}) {
        comparison.whole();
        comparison.zoom(zoom, {0.5, 0.4});
        const auto earlier = comparison.toFrame(PhotoComparison::Earlier, frame);
        const auto later = comparison.toFrame(PhotoComparison::Later, frame);
        REQUIRE(earlier);
        REQUIRE(later);
        CHECK(earlier->determinant() > 0);
        CHECK(later->determinant() > 0);  // not mirrored
        for (const auto eye : {&photos::Eyes::left, &photos::Eyes::right}) {
            const auto one = earlier->map(deskapp::pointOf(clinic.eyesIn(first).*eye, comparison.imageOf(PhotoComparison::Earlier).size()));
            const auto other = later->map(deskapp::pointOf(clinic.eyesIn(last).*eye, comparison.imageOf(PhotoComparison::Later).size()));
            CHECK(QLineF(one, other).length() < 0.5 * zoom);
        }
    }
}

TEST_CASE("the pupils of both stand in one place on the screen once the eyes are marked", "[desk][photos]")
{
    screens::DemoClinic clinic;
    auto program = comparing(clinic);
    auto& comparison = *program->photos()->comparison();
    const auto fronts = frontsOf(*program, clinic.course("Tomas Reyl"));
    const auto painted = [&](int half) {
        QImage image(frame.size().toSize(), QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        deskapp::paintLaid(painter, frame, comparison.imageOf(half), *comparison.toFrame(half, frame));
        return image;
    };
    const auto place = comparison.toFrame(PhotoComparison::Earlier, frame)->map(deskapp::pointOf(clinic.eyesIn(fronts.front().photo).left, comparison.imageOf(PhotoComparison::Earlier).size())).toPoint();
    CHECK(painted(PhotoComparison::Earlier).pixelColor(place).lightness() < 80);
    CHECK(painted(PhotoComparison::Later).pixelColor(place).lightness() > 80);  // held otherwise, as it was taken

    markByHand(clinic, *program, PhotoComparison::Earlier, fronts.front().photo);
    markByHand(clinic, *program, PhotoComparison::Later, fronts.back().photo);

    CHECK(painted(PhotoComparison::Earlier).pixelColor(place).lightness() < 80);
    CHECK(painted(PhotoComparison::Later).pixelColor(place).lightness() < 80);
}

TEST_CASE("each step of marking goes back, and nothing is kept before somebody says so", "[desk][photos]")
{
    screens::DemoClinic clinic;
    auto program = comparing(clinic);
    auto& comparison = *program->photos()->comparison();
    comparison.startMarking(PhotoComparison::Earlier);
    CHECK(comparison.prompt().contains(QLatin1String("right pupil")));
    CHECK_FALSE(comparison.canUndo());

    comparison.putAtCursor();
    CHECK(comparison.prompt().contains(QLatin1String("left pupil")));
    comparison.moveCursor({0.3, 0});
    comparison.putAtCursor();
    CHECK(comparison.canKeep());
    const auto before = *comparison.draft()->left();
    comparison.moveCursor({0, 0.1});
    comparison.putAtCursor();  // the nearer one moves
    CHECK_FALSE(*comparison.draft()->left() == before);
    comparison.undo();
    CHECK(*comparison.draft()->left() == before);
    comparison.undo();
    CHECK_FALSE(comparison.canKeep());
    comparison.undo();
    CHECK_FALSE(comparison.canUndo());

    comparison.leaveMarking();
    CHECK(comparison.marking() == -1);
    CHECK_FALSE(frontsOf(*program, clinic.course("Tomas Reyl")).front().eyes);
}

TEST_CASE("marks that are too close are not kept, and marks the wrong way round are asked about", "[desk][photos]")
{
    screens::DemoClinic clinic;
    auto program = comparing(clinic);
    auto& comparison = *program->photos()->comparison();
    comparison.startMarking(PhotoComparison::Earlier);
    comparison.putAtCursor();
    comparison.moveCursor({0.01, 0});
    comparison.putAtCursor();
    comparison.keep();
    CHECK(comparison.marking() == PhotoComparison::Earlier);
    CHECK(comparison.caution().contains(QLatin1String("too close")));
    CHECK_FALSE(frontsOf(*program, clinic.course("Tomas Reyl")).front().eyes);

    comparison.undo();
    comparison.moveCursor({-0.3, 0});
    comparison.putAtCursor();
    CHECK(comparison.caution().contains(QLatin1String("swapped")));
}

TEST_CASE("both are zoomed and moved together, within the picture", "[desk][photos]")
{
    screens::DemoClinic clinic;
    auto program = comparing(clinic);
    auto& comparison = *program->photos()->comparison();
    comparison.pan({5, 5});
    CHECK(comparison.zoomText() == QLatin1String("100%"));
    CHECK(comparison.toFrame(PhotoComparison::Earlier, frame) == deskapp::fitted(comparison.imageOf(PhotoComparison::Earlier).size(), frame));

    for (int i = 0; i < 30; ++i) {
        comparison.zoomIn();
    }
    CHECK(comparison.zoomText() == QLatin1String("800%"));
    comparison.pan({-100, -100});
    for (const int half : {PhotoComparison::Earlier, PhotoComparison::Later}) {
        const auto corner = comparison.toFrame(half, frame)->map(QPointF(0, 0));
        CHECK(corner.x() >= -0.001);
        CHECK(corner.x() < 0.001);
    }
    comparison.whole();
    CHECK(comparison.zoomText() == QLatin1String("100%"));
}

TEST_CASE("locking the desk lets every picture go", "[desk][photos]")
{
    screens::DemoClinic clinic;
    auto program = comparing(clinic);
    auto& comparison = *program->photos()->comparison();
    REQUIRE_FALSE(comparison.imageOf(PhotoComparison::Earlier).isNull());

    program->lock();

    CHECK(rowsOf(*program).isEmpty());
    CHECK(comparison.imageOf(PhotoComparison::Earlier).isNull());
    CHECK_FALSE(comparison.earlier().there);
    CHECK(program->photos()->who().isEmpty());
}

TEST_CASE("photographs stand among the entries and on the line of events", "[desk][photos][course]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openCourse(deskapp::keyOf(clinic.course("Tomas Reyl")));
    QStringList spoken;
    for (const auto& row : program->course()->entries()->rows()) {
        spoken << row.value.value<deskapp::EntryRow>().spoken;
    }
    CHECK(spoken.last().contains(QLatin1String("Photographs: Front, From the patient's left")));
    CHECK(spoken.filter(QStringLiteral("Photographs: ")).size() == 5);

    int photographed = 0;
    for (const auto& event : program->course()->curves()->events()) {
        photographed += event.label == QLatin1String("photos") ? 1 : 0;
    }
    CHECK(photographed == 5);
}
