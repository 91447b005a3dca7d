// Ways to the clinic's code: a picture, the camera, an address; and what is said where one does not lead there.
#include "tests/screens/demo_patient.h"

#include "app/diary/model/camera_view.h"
#include "app/diary/model/photo_camera.h"
#include "core/pairing/code.h"
#include "tests/platform/camera/drawn_code.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QCoreApplication>
#include <QDir>
#include <QGuiApplication>

using namespace ebbline;
using diaryapp::JoinBoard;

namespace {

const QString foreign = QStringLiteral("This is not a code of a clinic. Use the code that your clinic shows on its screen.");

struct Room {
    screens::DemoPatient patient;
    std::unique_ptr<app::DiaryProgram> program = patient.program(QStringLiteral("en"));
    JoinBoard& board = *program->joining();
    QTemporaryDir pictures;
    int said = 0;  ///< how often the page was told of a change

    Room()
    {
        program->locking()->create(QString::fromLatin1(screens::DemoPatient::passphrase), QString::fromLatin1(screens::DemoPatient::passphrase));
        QObject::connect(&board, &JoinBoard::changed, program.get(), [this] { ++said; });
    }
    QString saved(const QImage& picture, const QString& name = QStringLiteral("code.png"))
    {
        const QString path = pictures.filePath(name);
        REQUIRE(picture.save(path));
        return path;
    }
    /// Of a clinic that the hub has not heard of.
    std::string offer(bool tls, const std::string& hub, std::chrono::minutes lasts = pairing::offerLifetime)
    {
        pairing::Offer made;
        made.tls = tls;
        made.hub = hub;
        made.id = crypto::randomArray<8>();
        made.secret = crypto::randomArray<16>();
        made.clinicRoot = crypto::SigningKey::generate().publicKey();
        made.clinicEpoch = crypto::BoxKey::generate().publicKey();
        made.expires = patient.clock().now() + lasts;
        return pairing::toQrText(made);
    }
};

}  // namespace

TEST_CASE("a picture of the clinic's code asks where she is, and leads on once she is there", "[diary][join][picture]")
{
    Room room;
    const QString path = room.saved(test::drawnCode(room.patient.showsQr()));

    SECTION("by its path")
    {
        room.board.usePicture(QUrl::fromLocalFile(path));
    }
    SECTION("by an address that is no path, as phones name what a person chose")
    {
        QDir::addSearchPath(QStringLiteral("content"), room.pictures.path());  // what a phone's files do for Qt
        room.board.usePicture(QUrl(QStringLiteral("content://code.png")));
        QDir::setSearchPaths(QStringLiteral("content"), {});
    }

    CHECK(room.board.problem().toStdString() == "");
    REQUIRE(room.board.stage() == JoinBoard::Stage::Place);
    room.board.answerPlace(true);
    CHECK(room.board.problem().toStdString() == "");
    CHECK(room.board.stage() == JoinBoard::Stage::Waiting);
    room.patient.looks();
    room.board.poll();
    CHECK(room.board.stage() == JoinBoard::Stage::Compare);
    CHECK(room.board.number().remove(QLatin1Char(' ')) == room.patient.number());
}

TEST_CASE("nothing of a picture's code is used before she says that she is at her clinic", "[diary][join][picture]")
{
    Room room;
    const auto code = test::drawnCode(room.patient.showsQr());
    room.board.usePicture(QUrl::fromLocalFile(room.saved(code)));
    REQUIRE(room.board.stage() == JoinBoard::Stage::Place);

    // However long it stands, and whatever else she looks at: the clinic sees no phone.
    room.board.poll();
    room.board.useFrame(code);
    room.program->openCall();
    room.program->back();
    room.program->openSettings();
    room.program->back();
    room.board.poll();
    room.patient.looks();
    CHECK(room.program->page() == app::DiaryProgram::Page::join);
    CHECK(room.board.stage() == JoinBoard::Stage::Place);
    CHECK(room.board.number().isEmpty());
    CHECK(room.patient.number().isEmpty());
}

TEST_CASE("who is not at her clinic joins nothing, is told what to do, and can begin again", "[diary][join][picture]")
{
    Room room;
    const QUrl picture = room.patient.showsPicture();
    room.board.usePicture(picture);
    REQUIRE(room.board.stage() == JoinBoard::Stage::Place);
    room.board.answerPlace(false);

    CHECK(room.board.stage() == JoinBoard::Stage::Code);
    CHECK(room.board.problem().toStdString() == "");
    CHECK(room.board.outcome() == QLatin1String("Nothing was joined. Ask your clinic for a code when you are there."));
    room.board.poll();
    room.patient.looks();
    CHECK(room.patient.number().isEmpty());
    CHECK_FALSE(room.program->home().diary().linked());
    room.board.answerPlace(true);  // nothing is asked any more
    CHECK(room.board.stage() == JoinBoard::Stage::Code);

    // Once she is there, the same picture asks again; what was said before is gone.
    room.board.usePicture(picture);
    CHECK(room.board.outcome().isEmpty());
    room.board.answerPlace(true);
    CHECK(room.board.stage() == JoinBoard::Stage::Waiting);
}

TEST_CASE("the way back from the question of a picture leaves everything as it was", "[diary][join][picture]")
{
    Room room;
    int told = 0;
    QObject::connect(room.program.get(), &app::DiaryProgram::backChanged, room.program.get(), [&] { ++told; });
    CHECK_FALSE(room.program->isBackShown());
    room.board.usePicture(room.patient.showsPicture());
    CHECK(room.program->isBackShown());
    CHECK(told > 0);

    room.program->back();
    CHECK(room.program->page() == app::DiaryProgram::Page::join);
    CHECK(room.board.stage() == JoinBoard::Stage::Code);
    CHECK(room.board.problem().isEmpty());
    CHECK(room.board.outcome().isEmpty());
    CHECK_FALSE(room.program->isBackShown());
    room.board.answerPlace(true);
    CHECK(room.board.stage() == JoinBoard::Stage::Code);
}

TEST_CASE("a diary that locks or ends in the question of a picture has forgotten the code", "[diary][join][picture]")
{
    Room room;
    room.board.usePicture(room.patient.showsPicture());
    REQUIRE(room.board.stage() == JoinBoard::Stage::Place);
    const bool ends = GENERATE(false, true);
    if (ends)
        room.program.reset();
    else
        room.program->lock();
    auto program = ends ? room.patient.program(QStringLiteral("en")) : std::move(room.program);
    program->locking()->unlock(QString::fromLatin1(screens::DemoPatient::passphrase));
    auto& board = *program->joining();
    CHECK(program->page() == app::DiaryProgram::Page::join);
    CHECK(board.stage() == JoinBoard::Stage::Code);
    board.answerPlace(true);
    board.poll();
    room.patient.looks();
    CHECK(board.stage() == JoinBoard::Stage::Code);
    CHECK(room.patient.number().isEmpty());
    CHECK_FALSE(program->home().diary().linked());
}

TEST_CASE("a code in a picture that would not do is refused without a question, and so is one that ran out in it", "[diary][join][picture]")
{
    Room room;
    const auto use = [&](const std::string& text) { room.board.usePicture(QUrl::fromLocalFile(room.saved(test::drawnCode(text)))); };
    const auto over = QLatin1String("This code is over. Ask your clinic for a new one.");

    use(room.offer(true, "hub.example", std::chrono::minutes(-1)));
    CHECK(room.board.problem() == over);
    CHECK(room.board.stage() == JoinBoard::Stage::Code);
    use(room.offer(false, "hub.example"));
    CHECK(room.board.problem().startsWith(QLatin1String("The way to this clinic is not locked")));
    CHECK(room.board.stage() == JoinBoard::Stage::Code);

    room.board.usePicture(room.patient.showsPicture());
    REQUIRE(room.board.stage() == JoinBoard::Stage::Place);
    room.patient.clock().advance(std::chrono::minutes(11));
    room.board.answerPlace(true);
    CHECK(room.board.problem() == over);
    CHECK(room.board.stage() == JoinBoard::Stage::Code);
}

TEST_CASE("neither the camera nor a typed code asks where she is, and a picture chosen meanwhile changes nothing", "[diary][join][picture][camera]")
{
    Room room;
    if (GENERATE(true, false))
        room.board.useFrame(test::drawnCode(room.patient.showsQr()));
    else
        room.board.useText(room.patient.showsCode(), QString::fromLatin1(screens::DemoPatient::hub));
    REQUIRE(room.board.stage() == JoinBoard::Stage::Waiting);

    const int said = room.said;
    room.board.usePicture(QUrl::fromLocalFile(room.saved(test::drawnCode(room.offer(true, "hub.example")))));
    room.board.answerPlace(false);
    CHECK(room.said == said);
    CHECK(room.board.stage() == JoinBoard::Stage::Waiting);
}

TEST_CASE("what is wrong with a picture is said, each in its own words", "[diary][join][picture]")
{
    Room room;
    QImage empty(200, 200, QImage::Format_RGB32);
    empty.fill(Qt::gray);

    room.board.usePicture(QUrl::fromLocalFile(room.saved(empty)));
    CHECK(room.board.problem() == QLatin1String("There is no code in this picture. Try another, or type the code."));
    room.board.usePicture(QUrl::fromLocalFile(room.pictures.filePath(QStringLiteral("gone.png"))));
    CHECK(room.board.problem() == QLatin1String("This picture does not open. Choose another, or type the code."));
    room.board.usePicture(QUrl(QStringLiteral("content://nobody.example/7")));
    CHECK(room.board.problem() == QLatin1String("This picture does not open. Choose another, or type the code."));
    room.board.usePicture(QUrl::fromLocalFile(room.saved(test::drawnCode("https://menu.example/lunch"))));
    CHECK(room.board.problem() == foreign);
    CHECK(room.board.stage() == JoinBoard::Stage::Code);
}

TEST_CASE("the camera reads the clinic's code, and frames without one change nothing", "[diary][join][camera]")
{
    Room room;
    QImage empty(200, 200, QImage::Format_RGB32);
    empty.fill(Qt::gray);
    room.board.useFrame(empty);
    CHECK(room.said == 0);

    room.board.useFrame(test::drawnCode(room.patient.showsQr()));
    CHECK(room.board.stage() == JoinBoard::Stage::Waiting);
}

TEST_CASE("a code that fails is tried once while it stays under the camera, so what is said stays", "[diary][join][camera]")
{
    Room room;
    const auto expired = test::drawnCode(room.offer(true, "hub.example", std::chrono::minutes(-1)));
    room.board.useFrame(expired);
    REQUIRE(room.board.problem() == QLatin1String("This code is over. Ask your clinic for a new one."));

    const int said = room.said;
    for (int i = 0; i < 5; ++i)
        room.board.useFrame(expired);
    CHECK(room.said == said);

    // A foreign code says so, once; the right one works at once.
    const auto menu = test::drawnCode("https://menu.example/lunch");
    room.board.useFrame(menu);
    CHECK(room.board.problem() == foreign);
    const int before = room.said;
    room.board.useFrame(menu);
    CHECK(room.said == before);
    room.board.useFrame(test::drawnCode(room.patient.showsQr()));
    CHECK(room.board.stage() == JoinBoard::Stage::Waiting);
}

TEST_CASE("a code that the hub refused is not begun again while it stays in sight", "[diary][join][camera]")
{
    Room room;
    const auto unknown = test::drawnCode(room.offer(true, "hub.example"));
    const auto show = [&] {
        room.board.useFrame(unknown);
        for (int i = 0; i < 4 && room.board.stage() == JoinBoard::Stage::Waiting; ++i)
            room.board.poll();
    };
    show();
    REQUIRE(room.board.stage() == JoinBoard::Stage::Code);
    const QString problem = room.board.problem();
    REQUIRE_FALSE(problem.isEmpty());

    const int said = room.said;
    show();
    CHECK(room.said == said);
    CHECK(room.board.problem() == problem);

    // Who starts over wants it tried.
    room.board.startOver();
    REQUIRE(room.board.problem().isEmpty());
    show();
    CHECK(room.board.problem() == problem);
}

TEST_CASE("plain HTTP to another machine is refused with a reason, however the code came; on this machine it leads on", "[diary][join]")
{
    Room room;
    const auto refused = QLatin1String("The way to this clinic is not locked: others could read along. Nothing was sent. Tell your clinic.");

    room.board.useFrame(test::drawnCode(room.offer(false, "hub.example")));
    CHECK(room.board.problem() == refused);
    CHECK(room.board.stage() == JoinBoard::Stage::Code);
    room.board.useText(room.patient.showsCode(), QStringLiteral("http://hub.example"));
    CHECK(room.board.problem() == refused);
    room.board.useText(room.patient.showsCode(), QStringLiteral("HTTP://192.168.1.4:8080"));
    CHECK(room.board.problem() == refused);
    CHECK(room.board.stage() == JoinBoard::Stage::Code);

    room.board.useText(room.patient.showsCode(), QStringLiteral("http://127.0.0.1:8080"));
    CHECK(room.board.problem().toStdString() == "");
    CHECK(room.board.stage() == JoinBoard::Stage::Waiting);
}

TEST_CASE("a diary that holds a treatment joins no other one, and says what to do", "[diary][join]")
{
    screens::DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    auto& board = *program->joining();
    const auto mailbox = program->home().diary().link()->mailbox;
    const auto stage = board.stage();
    board.useText(QStringLiteral("EBP1:ANYTHING"), {});
    CHECK(board.problem()
          == QLatin1String("This diary holds a treatment, and it can hold just one. Open My data in the settings. Save your data there and delete the diary. "
                           "Then join again."));
    CHECK(board.stage() == stage);
    CHECK(program->home().diary().link()->mailbox == mailbox);
}

TEST_CASE("an address that does not answer is said to be checked where it was typed, and only there", "[diary][join]")
{
    Room room;
    const bool typed = GENERATE(true, false);
    room.patient.setOffline(true);
    if (typed)
        room.board.useText(room.patient.showsCode(), QStringLiteral("hub.exmaple"));
    else
        room.board.useFrame(test::drawnCode(room.patient.showsQr()));

    CHECK(room.board.stage() == JoinBoard::Stage::Waiting);
    CHECK(room.board.problem().contains(QLatin1String("Check that you typed the address under the code right")) == typed);
    CHECK(room.board.problem().endsWith(QLatin1String("The diary keeps trying.")));
}

TEST_CASE("a camera that may not be used, or is in use, gives way to words that say what to do", "[diary][join][camera]")
{
    Room room;
    diaryapp::CameraView view;
    view.setProperty("board", QVariant::fromValue(&room.board));
    auto* camera = view.findChild<QCamera*>();
    REQUIRE(camera);

    view.allow(false);
    QCoreApplication::processEvents();
    CHECK_FALSE(room.board.isCameraShown());
    CHECK(room.board.cameraSays().startsWith(QLatin1String("The diary may not use the camera. Choose a picture of the code, or type it.")));

    // Back from the settings it is tried anew.
    Q_EMIT qGuiApp->applicationStateChanged(Qt::ApplicationActive);
    CHECK_FALSE(room.board.cameraSays().startsWith(QLatin1String("The diary may not")));

    Q_EMIT camera->errorOccurred(QCamera::CameraError, QStringLiteral("in use"));
    QCoreApplication::processEvents();
    CHECK_FALSE(room.board.isCameraShown());
    CHECK(room.board.cameraSays() == QLatin1String("The camera does not work right now. It may be in use. Choose a picture of the code, or type it."));
}

TEST_CASE("a camera that only says that nothing is wrong stays, and lets go of a page that went before it", "[diary][join][camera]")
{
    Room room;
    diaryapp::CameraView view;
    view.setBoard(&room.board);
    const bool shown = room.board.isCameraShown();
    const auto says = room.board.cameraSays();
    auto* camera = view.findChild<QCamera*>();
    REQUIRE(camera);
    Q_EMIT camera->errorOccurred(QCamera::NoError, {});
    QCoreApplication::processEvents();
    CHECK(room.board.isCameraShown() == shown);
    CHECK(room.board.cameraSays() == says);

    diaryapp::PhotoCamera photo;
    {
        QVideoSink sink, other;
        view.setSink(&sink);
        photo.setSink(&other);
    }
    CHECK(view.sink() == nullptr);
    CHECK(photo.sink() == nullptr);
    CHECK_FALSE(camera->isActive());
    // What answers only now finds no page.
    view.allow(true);
    CHECK_FALSE(camera->isActive());
    QVideoSink next;
    view.setSink(&next);
    CHECK(view.sink() == &next);
    view.setSink(nullptr);

    view.setBoard(nullptr);
    Q_EMIT camera->errorOccurred(QCamera::CameraError, QStringLiteral("in use"));
    QCoreApplication::processEvents();
    CHECK(room.board.isCameraShown() == shown);
}
