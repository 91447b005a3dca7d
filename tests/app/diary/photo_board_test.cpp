// Photographs of the patient: taken, looked at, kept beside an entry or by themselves, shown with their true state, taken back.
// They hold up nothing, and nothing opened of them is written to the disk.
#include "app/diary/model/photo_camera.h"
#include "app/diary/model/photo_lines.h"
#include "app/face/portrait.h"
#include "core/bytes/text.h"
#include "tests/core/photos/sample_jpeg.h"
#include "tests/platform/camera/marked_pictures.h"
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QCryptographicHash>
#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QTemporaryDir>
#include <QVideoFrame>

using namespace ebbline;
using diaryapp::PhotoBoard;
using diaryapp::PhotoShelf;
using photos::Pose;
using screens::DemoPatient;
using Page = app::DiaryProgram::Page;

namespace {

/// A file of these bytes, gone with the folder.
struct Folder {
    QTemporaryDir folder;
    QUrl put(const QString& name, const QByteArray& contents) const
    {
        QFile file(folder.filePath(name));
        REQUIRE(file.open(QIODevice::WriteOnly));
        REQUIRE(file.write(contents) == contents.size());
        return QUrl::fromLocalFile(file.fileName());
    }
};

void choose(PhotoBoard& photo, const QUrl& file)
{
    photo.useFile(file);
    REQUIRE(DemoPatient::waits([&] { return photo.stage() != PhotoBoard::Stage::Working; }));
}

/// Takes one from the front that stands by itself.
photos::PhotoId takesOne(app::DiaryProgram& program)
{
    program.openPhoto();
    DemoPatient::aims(program);
    program.photo()->keep();
    return program.home().diary().photos().back().photo;
}

void toTheEnd(app::DiaryProgram& program)
{
    program.openEntry();
    program.entry()->answer(1, 3);
    while (program.entry()->step() != diaryapp::EntryBoard::Step::Rest)
        program.entry()->next();
}

QByteArray asBytes(const bytes::Bytes& jpeg)
{
    return {reinterpret_cast<const char*>(jpeg.data()), static_cast<qsizetype>(jpeg.size())};
}

}  // namespace

TEST_CASE("from the end of an entry the three views are taken one by one and stand beside it", "[diary][photo]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    patient.goTo(2, 9);
    toTheEnd(*program);
    program->saveThenPhoto();
    REQUIRE(program->page() == Page::photo);
    auto& photo = *program->photo();
    CHECK(photo.views() == QStringList{"From the front", "Your left side", "Your right side"});
    for (const int view : {0, 1, 2}) {
        CHECK(photo.view() == view);
        DemoPatient::aims(*program);
        REQUIRE(photo.stage() == PhotoBoard::Stage::Look);
        CHECK_FALSE(photo.preview().isNull());
        CHECK(photo.standsUnder() == QLatin1String("It will stand under Day 2, today 9:00 AM."));
        photo.keep();
    }
    CHECK(program->page() == Page::history);
    const auto line = program->history()->entries().first();
    CHECK_FALSE(line.bare);
    REQUIRE(line.photos.size() == 3);
    CHECK(line.photos[1].title == QLatin1String("Your left side. Day 2, today 9:00 AM"));
    CHECK(line.photos[1].state == QLatin1String("Saved on this phone"));
    CHECK(line.photosState == QLatin1String("Photographs: saved on this phone"));
    const auto kept = program->home().diary().photos();
    CHECK(kept[1].pose == Pose::leftOblique);
    CHECK(kept[1].entry == program->home().diary().history().front().history.current().id);
}

TEST_CASE("photographs stay with an entry that is corrected", "[diary][photo]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    toTheEnd(*program);
    program->saveThenPhoto();
    DemoPatient::aims(*program);
    program->photo()->keep();
    program->amend(program->history()->entries().first().key);
    program->entry()->answer(1, 5);
    program->entry()->save();
    REQUIRE(program->history()->entries().size() == 1);
    CHECK(program->history()->entries().first().photos.size() == 1);
}

TEST_CASE("the entry is saved first, and a warning comes before any photograph", "[diary][photo]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    toTheEnd(*program);
    program->entry()->writeTemperature(QStringLiteral("12"));
    program->saveThenPhoto();
    CHECK(program->page() == Page::entry);  // what is no temperature is said
    program->entry()->writeTemperature({});
    program->entry()->back();
    program->entry()->tick(static_cast<int>(recovery::Sign::breathing), true);
    program->entry()->signsDone();
    program->saveThenPhoto();
    CHECK(program->page() == Page::warning);
    CHECK(program->home().diary().history().size() == 1);
    CHECK(program->home().diary().photos().empty());
}

TEST_CASE("photographs without an entry stand under their day, among the entries", "[diary][photo]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    patient.goTo(1, 9);
    DemoPatient::tell(*program, 4);
    patient.goTo(2, 9);
    takesOne(*program);
    patient.goTo(2, 10);
    takesOne(*program);
    patient.goTo(3, 9);
    DemoPatient::tell(*program, 3);
    const auto lines = program->history()->entries();
    REQUIRE(lines.size() == 3);
    CHECK(lines[0].photos.isEmpty());
    CHECK(lines[0].photosState.isEmpty());
    CHECK(lines[1].bare);
    CHECK(lines[1].photos.size() == 2);
    CHECK(lines[1].title.startsWith(QLatin1String("Day 2, yesterday")));
    CHECK_FALSE(lines[2].bare);
    CHECK_FALSE(program->history()->entryOf(lines[1].key));
}

TEST_CASE("a picture from a file is kept upright and without place, time or device", "[diary][photo]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    const Folder folder;
    const QImage scene = test::quarters(400, 300);
    struct Source {
        const char* name;
        QByteArray contents;
        QSize kept;
    };
    const Source source = GENERATE_COPY(Source{"me.jpg", test::phoneJpeg(scene, 6), {300, 400}},
                                        Source{"me.png", test::encoded(scene, "png"), {400, 300}});
    program->openPhoto();
    choose(*program->photo(), folder.put(QString::fromLatin1(source.name), source.contents));
    REQUIRE(program->photo()->stage() == PhotoBoard::Stage::Look);
    CHECK(program->photo()->preview().size() == source.kept);
    program->photo()->keep();
    const auto kept = program->home().diary().photos();
    REQUIRE(kept.size() == 1);
    const auto jpeg = program->home().diary().photo(kept.front().photo);
    REQUIRE(jpeg);
    for (const char* trace : {test::deviceName, test::placeName, "Exif", "ICC_PROFILE"})
        CHECK_FALSE(asBytes(*jpeg).contains(trace));
}

TEST_CASE("what is no picture is refused in words that say what to do, and nothing is kept", "[diary][photo]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    const Folder folder;
    auto& photo = *program->photo();
    program->openPhoto();
    const auto saysOf = [&](const QUrl& file) {
        choose(photo, file);
        CHECK(photo.stage() == PhotoBoard::Stage::Aim);
        return photo.problem().toStdString();
    };
    CHECK(saysOf(folder.put(QStringLiteral("a.jpg"), "no picture at all")) == "The diary reads JPEG and PNG pictures. Choose one of these.");
    CHECK(saysOf(folder.put(QStringLiteral("b.jpg"), test::phoneJpeg(test::quarters(64, 64), 1).left(50)))
          == "This picture is damaged. Choose another, or take a new one.");
    CHECK(saysOf(folder.put(QStringLiteral("c.png"), test::encoded(test::quarters(8, 8), "png"))) == "This picture is too small. Choose a larger one.");
    CHECK(saysOf(QUrl::fromLocalFile(folder.folder.filePath(QStringLiteral("gone.jpg")))) == "This picture does not open. Choose another.");
    photo.keep();
    CHECK(program->home().diary().photos().empty());
    photo.choose(2);
    CHECK(photo.problem().isEmpty());
    CHECK(photo.view() == 2);
}

TEST_CASE("what was looked at and not kept is gone, and back leads out step by step", "[diary][photo]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    auto& photo = *program->photo();
    program->openPhoto();
    photo.choose(1);
    DemoPatient::aims(*program);
    REQUIRE(photo.stage() == PhotoBoard::Stage::Look);
    program->back();
    CHECK(program->page() == Page::photo);
    CHECK(photo.stage() == PhotoBoard::Stage::Aim);
    CHECK(photo.view() == 1);
    CHECK(photo.preview().isNull());
    program->back();
    CHECK(program->page() == Page::history);
    CHECK(program->home().diary().photos().empty());
}

TEST_CASE("a photograph is said to be with the clinic once its desk says so, and not before", "[diary][photo]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    const QString key = QString::fromStdString(bytes::toHex(takesOne(*program).view()));
    program->openPicture(key);
    REQUIRE(program->page() == Page::picture);
    const auto state = [&] { return program->picture()->line().state.toStdString(); };
    program->syncNow();
    CHECK(state() == "Saved on this phone");  // the hub has it; that proves nothing
    patient.sends();
    CHECK(state() == "Saved on this phone");
    program->syncNow();
    CHECK(state() == "On the clinic's computer since today 11:15 AM");
    CHECK(program->picture()->isArrived());
    CHECK(program->history()->entries().first().photosState == QLatin1String("Photographs: 1 of 1 on the clinic's computer"));
}

TEST_CASE("a photograph is taken back only after it was asked, and leaves nothing to see", "[diary][photo]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    const auto id = takesOne(*program);
    const QString key = QString::fromStdString(bytes::toHex(id.view()));
    program->openHistory();
    REQUIRE(DemoPatient::seesPhotos(*program));
    program->openPicture(key);
    program->picture()->remove();
    CHECK(program->home().diary().photos().size() == 1);
    program->picture()->askRemove();
    program->picture()->keep();
    program->picture()->remove();
    CHECK(program->home().diary().photos().size() == 1);

    program->picture()->askRemove();
    program->picture()->remove();
    CHECK(program->page() == Page::history);
    CHECK(program->notice() == QLatin1String("Taken back. It is no longer on this phone."));
    CHECK(program->history()->entries().isEmpty());
    CHECK(program->home().diary().photo(id).error().reason == Reason::notFound);
    CHECK(program->history()->shelf()->picture(key, PhotoShelf::Size::Small).isNull());
    program->openPicture(key);
    CHECK(program->page() == Page::history);
}

TEST_CASE("the most photographs of a course is said, and one that is taken back makes room", "[diary][photo]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    auto& diary = program->home().diary();
    const bytes::Bytes small = test::sampleJpegOf(40);
    program->openPhoto();
    DemoPatient::aims(*program);
    for (std::size_t i = 0; i < patient::Diary::mostPhotos; ++i)
        REQUIRE(diary.addPhoto(small, Pose::front, {}, program->home().now()));
    const QString full = QStringLiteral("You have 300 photographs. That is the most. Take one back to add another.");
    CHECK(program->photo()->full() == full);
    program->photo()->keep();
    CHECK(program->photo()->problem() == full);
    CHECK(program->photo()->stage() == PhotoBoard::Stage::Look);  // still there to be kept

    REQUIRE(diary.removePhoto(diary.photos().front().photo));
    CHECK(program->photo()->full().isEmpty());
    program->photo()->keep();
    CHECK(program->photo()->problem().isEmpty());
    CHECK(diary.photos().size() == patient::Diary::mostPhotos);
}

TEST_CASE("locking drops every picture from the pages", "[diary][photo]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    const QString key = QString::fromStdString(bytes::toHex(takesOne(*program).view()));
    REQUIRE(DemoPatient::seesPhotos(*program));
    CHECK_FALSE(program->history()->shelf()->picture(key, PhotoShelf::Size::Small).isNull());
    program->openPhoto();
    const bool ready = GENERATE(false, true);
    program->photo()->useFrame(face::portrait(recovery::ChartView::front, 90));
    if (ready)
        REQUIRE(DemoPatient::waits([&] { return program->photo()->stage() == PhotoBoard::Stage::Look; }));
    program->lock();
    // What was being made ready when the lock came does not arrive behind it.
    int turns = 0;
    REQUIRE(DemoPatient::waits([&] { return ++turns > 20; }));
    CHECK(program->photo()->preview().isNull());
    CHECK(program->photo()->stage() == PhotoBoard::Stage::Aim);
    CHECK(program->history()->shelf()->picture(key, PhotoShelf::Size::Small).isNull());
    program->photo()->keep();
    program->openPicture(key);
    CHECK(program->page() == Page::lock);
}

TEST_CASE("no picture that was opened lies on the disk", "[diary][photo]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    const auto id = takesOne(*program);
    REQUIRE(DemoPatient::seesPhotos(*program));
    const auto jpeg = program->home().diary().photo(id);
    REQUIRE(jpeg);
    const QByteArray piece = asBytes(*jpeg).mid(static_cast<qsizetype>(jpeg->size() / 2), 24);
    int files = 0;
    for (QDirIterator all(QString::fromStdString(patient.folder().string()), QDir::Files, QDirIterator::Subdirectories); all.hasNext(); ++files) {
        QFile file(all.next());
        REQUIRE(file.open(QIODevice::ReadOnly));
        CHECK_FALSE(file.readAll().contains(piece));
    }
    CHECK(files > 0);
}

TEST_CASE("photographs are taken along with the rest of the diary, and deleting says which would be lost", "[diary][photo]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    takesOne(*program);
    const auto jpeg = program->home().diary().photo(program->home().diary().photos().front().photo);
    QTemporaryDir folder;
    REQUIRE(program->mine()->allowTaking(QString::fromLatin1(DemoPatient::passphrase)));
    program->mine()->takeAlong(QUrl::fromLocalFile(folder.path()));
    QFile file(folder.filePath(QStringLiteral("diary-2027-03-01/photo-001-day-0-front.jpg")));
    REQUIRE(file.open(QIODevice::ReadOnly));
    const QByteArray taken = file.readAll();
    CHECK(taken == asBytes(*jpeg));
    // The bundle beside it names it, by what Qt finds of the file.
    QFile bundle(folder.filePath(QStringLiteral("diary-2027-03-01/diary.fhir.json")));
    REQUIRE(bundle.open(QIODevice::ReadOnly));
    const QByteArray text = bundle.readAll();
    CHECK(text.contains("\"url\": \"photo-001-day-0-front.jpg\""));
    CHECK(text.contains("\"hash\": \"" + QCryptographicHash::hash(taken, QCryptographicHash::Sha1).toBase64() + '"'));
    CHECK(text.contains("\"size\": " + QByteArray::number(taken.size())));
    CHECK(program->mine()->loss()
          == QLatin1String("All your entries are on the clinic's computer too. 1 photograph is only on this phone and would be lost."));
}

TEST_CASE("a camera that mirrors for its own screen gives the face as others see it", "[diary][photo]")
{
    const bool mirrors = GENERATE(false, true);
    const QImage scene = test::quarters(64, 48).convertToFormat(QImage::Format_ARGB32);
    QVideoFrame frame(QVideoFrameFormat(scene.size(), QVideoFrameFormat::pixelFormatFromImageFormat(scene.format())));
    REQUIRE(frame.map(QVideoFrame::WriteOnly));
    for (int y = 0; y < scene.height(); ++y)
        std::copy_n(scene.constScanLine(y), scene.width() * 4, frame.bits(0) + y * frame.bytesPerLine(0));
    frame.unmap();
    frame.setMirrored(mirrors);

    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openPhoto();
    QVideoSink sink;
    diaryapp::PhotoCamera camera;
    camera.setBoard(program->photo());
    camera.setSink(&sink);
    CHECK_FALSE(camera.isLive());
    CHECK_FALSE(program->photo()->isLive());
    program->photo()->shoot();
    CHECK(program->photo()->stage() == PhotoBoard::Stage::Aim);
    sink.setVideoFrame(frame);
    REQUIRE(program->photo()->isLive());
    CHECK(camera.isMirrored());  // who sits before it sees herself as in a mirror
    CHECK(camera.isFlipped() == !mirrors);
    program->photo()->shoot();
    REQUIRE(DemoPatient::waits([&] { return program->photo()->stage() == PhotoBoard::Stage::Look; }));
    CHECK(program->photo()->preview().pixelColor(8, 8).red() > 150);   // red stands on the left in the scene
    CHECK(program->photo()->preview().pixelColor(56, 8).red() < 100);
}
