// What the story shows of itself: a picture counts for a page only if the page was there, a file only if it was written.

#include "app/story/album.h"
#include "app/story/summary.h"
#include "tests/app/full_disk.h"
#include "tests/screens/demo_clinic.h"
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>

#include <QFile>
#include <QJsonDocument>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>

using namespace ebbline;
using namespace ebbline::story;

namespace {

/// In place of the page that the window shows: one that no engine can read.
void breakPage(QQuickWindow& window, const QTemporaryDir& place)
{
    const QString name = place.filePath(QStringLiteral("BrokenPage.qml"));
    QFile page(name);
    REQUIRE(page.open(QIODevice::WriteOnly));
    REQUIRE(page.write("import QtQuick\nItem { width: }\n") > 0);
    page.close();
    auto* loader = window.findChild<QQuickItem*>(QStringLiteral("page"));
    REQUIRE(loader != nullptr);
    loader->setProperty("source", QUrl::fromLocalFile(name));
}

}  // namespace

TEST_CASE("a page of the phone that does not load is not counted, and is named", "[story][pages]")
{
    const QTemporaryDir place;
    Album album(place.path(), true);
    screens::DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    REQUIRE(program->show(QSize(390, 844)));
    breakPage(*program->window(), place);
    album.phone(*program, QStringLiteral("lock-en"));
    CHECK(album.pictures() == 0);
    CHECK(album.missing().contains(QStringLiteral("phone lock")));
    CHECK(album.missing().contains(QStringLiteral("phone-lock-en (its page does not load)")));
    CHECK_FALSE(QFile::exists(place.filePath(QStringLiteral("phone-lock-en.png"))));

    // A sound one afterwards shows the page, and what failed stays said.
    auto sound = patient.program(QStringLiteral("de"));
    album.phone(*sound, QStringLiteral("lock-de"));
    CHECK(album.pictures() == 1);
    CHECK_FALSE(album.missing().contains(QStringLiteral("phone lock")));
    CHECK(album.missing().contains(QStringLiteral("phone-lock-en (its page does not load)")));
    CHECK(QFile::exists(place.filePath(QStringLiteral("phone-lock-de.png"))));
}

TEST_CASE("a page of the desk that does not load is not counted, and is named", "[story][pages]")
{
    const QTemporaryDir place;
    Album album(place.path(), true);
    screens::DemoClinic clinic;
    auto program = clinic.freshProgram(QStringLiteral("en"), clinic.hub());
    REQUIRE(program->show(QSize(1280, 800)));
    album.desk(*program, QStringLiteral("unlock-en"));
    CHECK(album.pictures() == 1);
    CHECK_FALSE(album.missing().contains(QStringLiteral("desk unlock")));

    Album another(place.path(), true);
    breakPage(*program->window(), place);
    another.desk(*program, QStringLiteral("unlock-en"));
    CHECK(another.pictures() == 0);
    CHECK(another.missing().contains(QStringLiteral("desk unlock")));
    CHECK(another.missing().contains(QStringLiteral("desk-unlock-en (its page does not load)")));
}

TEST_CASE("a page that is several to the eye counts in the states that were pictured, and the others are named", "[story][pages]")
{
    const QTemporaryDir place;
    Album album(place.path(), true);
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"), clinic.hub());
    REQUIRE(program->show(QSize(1280, 800)));
    const auto misses = [&](const char* state) { return album.missing().contains(QStringLiteral("desk ") + QLatin1String(state)); };

    program->openTreatment();
    program->treatment()->setStep(1);
    album.desk(*program, QStringLiteral("treatment-blank"));
    CHECK(misses("treatment threads"));
    program->treatment()->draw({296, 170}, {252, 262});
    program->treatment()->setLot(QStringLiteral("TH-4417"));
    album.desk(*program, QStringLiteral("treatment-threads"));
    CHECK_FALSE(misses("treatment threads"));
    program->treatment()->setTrackMl(0.6);
    program->treatment()->setStep(2);
    album.desk(*program, QStringLiteral("treatment-unweighed"));
    CHECK(misses("treatment anaesthetic"));
    program->treatment()->setWeight(QStringLiteral("61"));
    album.desk(*program, QStringLiteral("treatment-anaesthetic"));
    CHECK_FALSE(misses("treatment anaesthetic"));

    program->openPairing(deskapp::keyOf(clinic.course("Petra Halden")));
    program->pairing()->start();
    album.desk(*program, QStringLiteral("pairing-code"));
    CHECK_FALSE(misses("pairing code"));
    CHECK(misses("pairing digits"));
    clinic.bringPhone(*program);
    album.desk(*program, QStringLiteral("pairing-digits"));
    CHECK_FALSE(misses("pairing digits"));
    CHECK(misses("pairing linked"));
}

TEST_CASE("a picture of what lies further down shows it, and says so if the page has no such words", "[story][pages]")
{
    const QTemporaryDir place;
    Album album(place.path(), true);
    screens::DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    REQUIRE(program->show(QSize(390, 844)));
    const QString words = QStringLiteral("No page says this.");
    album.phone(*program, QStringLiteral("lock-en"), words);
    CHECK(album.missing().contains(QStringLiteral("phone-lock-en (its page does not say \"%1\")").arg(words)));
    CHECK(album.pictures() == 0);
}

TEST_CASE("a picture that the disk does not take is not counted, and is named", "[story][files]")
{
    const QTemporaryDir place;
    Album album(place.path(), true);
    screens::DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    REQUIRE(program->show(QSize(390, 844)));
    {
        const tests::FullDisk full;
        album.phone(*program, QStringLiteral("lock-en"));
    }
    CHECK(album.pictures() == 0);
    CHECK(album.missing().contains(QStringLiteral("phone lock")));
    CHECK(album.missing().contains(QStringLiteral("phone-lock-en.png (cannot be written)")));
    CHECK_FALSE(QFile::exists(place.filePath(QStringLiteral("phone-lock-en.png"))));
}

TEST_CASE("a summary that the disk does not take is an error, and the one before stays", "[story][files]")
{
    const QTemporaryDir place;
    const QString file = place.filePath(QStringLiteral("summary.json"));
    const Scenario scenario = inventedScenario();
    const Summary summary(scenario);
    REQUIRE(summary.write(file, fail(Reason::unreachable, "no hub")));
    std::optional<Reason> said;
    {
        const tests::FullDisk full;
        if (const Done written = summary.write(file, Done{}); !written)
            said = written.error().reason;
    }
    CHECK(said == Reason::storageFailed);
    QFile kept(file);
    REQUIRE(kept.open(QIODevice::ReadOnly));
    CHECK(QJsonDocument::fromJson(kept.readAll()).object()["result"].toString() == QStringLiteral("stopped: no hub"));
    CHECK(summary.write(file, Done{}));
}
