// Warnings: at once, without a network, never softened, and gone only when they were read.
#include "tests/app/full_disk.h"
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <catch2/generators/catch_generators_range.hpp>

#include <QDesktopServices>

using namespace ebbline;
using recovery::Sign;
using screens::DemoPatient;
using tests::FullDisk;
using Page = app::DiaryProgram::Page;

namespace {

QStringList numbersOf(const diaryapp::WarningBoard& board)
{
    QStringList numbers;
    for (const auto& call : board.calls())
        numbers << call.number;
    return numbers;
}

void restart(DemoPatient& patient, std::unique_ptr<app::DiaryProgram>& program)
{
    program.reset();
    program = patient.program(QStringLiteral("en"));
    REQUIRE(program->home().unlock(bytes::viewOf(DemoPatient::passphrase)));
}

/// Takes the place of the phone's dialler.
class Dialler : public QObject {
    Q_OBJECT

public:
    Dialler() { QDesktopServices::setUrlHandler(QStringLiteral("tel"), this, "dial"); }
    ~Dialler() override { QDesktopServices::unsetUrlHandler(QStringLiteral("tel")); }
    QString dialled;

public Q_SLOTS:
    void dial(const QUrl& url) { dialled = url.path(); }
};

}  // namespace

TEST_CASE("a warning takes the page the moment the entry is saved, with no network", "[diary][warning]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);

    DemoPatient::tellSign(*program, Sign::breathing);

    CHECK(program->page() == Page::warning);
    auto& board = *program->warning();
    CHECK(board.isEmergency());
    CHECK(board.isLoud());
    CHECK(board.title() == QLatin1String("Call the emergency number now"));
    CHECK(board.doNow().startsWith(QLatin1String("Do not wait and do not drive yourself.")));
    CHECK(board.reason() == QLatin1String("It is hard to breathe, or I can not swallow my spit."));
    CHECK(numbersOf(board) == QStringList{"112", "+00 555 0100", "+00 555 0199"});
    CHECK_FALSE(program->isBackShown());
}

TEST_CASE("a warning takes the page although nothing could be saved, and says that", "[diary][warning][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    {
        const FullDisk full;
        DemoPatient::tellSign(*program, Sign::breathing);

        REQUIRE(program->page() == Page::warning);
        auto& board = *program->warning();
        CHECK(board.isEmergency());
        CHECK(board.title() == QLatin1String("Call the emergency number now"));
        CHECK(numbersOf(board).first() == QLatin1String("112"));
        CHECK(board.unsaved().startsWith(QLatin1String("Your entry is not saved, and not with the clinic.")));
        CHECK(board.unsaved().endsWith(program->entry()->problem()));
        CHECK_FALSE(program->entry()->problem().isEmpty());
        CHECK(board.sentState().isEmpty());
        CHECK(board.readHint() == QLatin1String("Back to your entry, to save it again"));
        CHECK(program->home().diary().history().empty());

        // Until it was read, nothing else takes its place.
        program->openToday();
        CHECK(program->page() == Page::warning);
        CHECK_FALSE(board.unsaved().isEmpty());

        board.confirm();
        CHECK(program->page() == Page::entry);
    }
    // Once there is room, the same entry is saved, and warns as any other.
    program->entry()->save();
    REQUIRE(program->page() == Page::warning);
    CHECK(program->warning()->unsaved().isEmpty());
    CHECK(program->warning()->readHint() == QLatin1String("The warning stays in your diary"));
    CHECK(program->home().diary().history().size() == 1);
    program->warning()->confirm();
    CHECK(program->page() == Page::today);
}

TEST_CASE("a warning that could not be saved outlives a lock as well", "[diary][warning][safety]")
{
    DemoPatient patient;
    patient.setLocksWhenIdle(true);
    auto program = patient.joined(QStringLiteral("en"));
    auto& board = *program->warning();
    {
        const FullDisk full;
        DemoPatient::tellSign(*program, Sign::breathing);
        REQUIRE_FALSE(board.unsaved().isEmpty());
        program->lockIdle();
    }
    CHECK(program->page() == Page::call);
    CHECK(numbersOf(board).first() == QLatin1String("112"));
    REQUIRE(program->home().unlock(bytes::viewOf(DemoPatient::passphrase)));
    CHECK(program->page() == Page::warning);
    CHECK(board.isEmergency());
    CHECK_FALSE(board.unsaved().isEmpty());
    board.confirm();
    CHECK(program->page() != Page::warning);
}

TEST_CASE("a warning that was read on a full phone lets go of the page, says so, and comes at the next start", "[diary][warning][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tellSign(*program, Sign::vision);
    REQUIRE(program->page() == Page::warning);
    {
        const FullDisk full;
        program->warning()->confirm();
        CHECK(program->page() == Page::today);
        CHECK(program->notice().startsWith(QLatin1String("This phone could not note that you read the warning.")));
        program->openHistory();
        CHECK(program->page() == Page::history);
        program->back();
        CHECK(program->page() == Page::today);
    }
    CHECK_FALSE(program->home().diary().today().standing.empty());
    restart(patient, program);
    REQUIRE(program->page() == Page::warning);
    program->warning()->confirm();
    CHECK(program->page() == Page::today);
    CHECK(program->home().diary().today().standing.empty());
}

TEST_CASE("what can wait for a day is said too when it could not be saved", "[diary][warning][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    const FullDisk full;

    DemoPatient::tellSign(*program, Sign::threadLump);

    CHECK(program->page() == Page::entry);
    CHECK(program->notice().contains(QLatin1String("Your clinic should hear of this")));
    CHECK(program->notice().startsWith(program->entry()->problem()));
}

TEST_CASE("a phone whose clock is before the treatment warns as any other", "[diary][warning][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    patient.clock().turnWall(patient.clock().now() - std::chrono::hours(72));

    DemoPatient::tellSign(*program, Sign::vision);

    CHECK(program->page() == Page::warning);
    CHECK(program->warning()->isEmergency());
    CHECK(program->entry()->problem().isEmpty());
}

TEST_CASE("each sign that is loud takes the page, each other one is said, and none says less than its rule", "[diary][warning]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    patient.goTo(1, 12);
    for (const Sign sign : recovery::allSigns) {
        CAPTURE(std::string(recovery::word(sign)));
        DemoPatient::tellSign(*program, sign);
        const auto entry = program->home().diary().history().front().history.current();
        const auto judged = warnings::mostUrgent(warnings::judge(entry, {program->home().diary().course().treated}));
        if (judged && *judged <= recovery::Urgency::callNow) {
            REQUIRE(program->page() == Page::warning);
            auto& board = *program->warning();
            CHECK(board.isEmergency() == (*judged == recovery::Urgency::emergency));
            CHECK_FALSE(board.title().isEmpty());
            CHECK_FALSE(board.doNow().isEmpty());
            CHECK_FALSE(board.reason().isEmpty());
            board.confirm();
        } else {
            CHECK(program->page() == Page::today);
            CHECK(program->notice().startsWith(QLatin1String("Saved on this phone.")));
            CHECK(program->notice().size() > (judged ? 40 : 10));
        }
        patient.clock().advance(std::chrono::minutes(10));
    }
}

TEST_CASE("a later good entry does not take an unread warning away", "[diary][warning]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tellSign(*program, Sign::fastSwelling);
    REQUIRE(program->page() == Page::warning);

    patient.goTo(0, 15);
    DemoPatient::tell(*program, 0);

    CHECK(program->page() == Page::warning);
    CHECK(program->warning()->title() == QLatin1String("Call your clinic now"));
    CHECK(program->warning()->reason() == QLatin1String("One side keeps getting fuller by the hour."));
}

TEST_CASE("an unread warning is there again after the phone died, and after days", "[diary][warning]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tellSign(*program, Sign::vision);

    restart(patient, program);
    CHECK(program->page() == Page::warning);
    patient.goTo(3, 9);
    program->openHistory();
    program->back();
    CHECK(program->page() == Page::warning);

    program->warning()->confirm();
    CHECK(program->page() == Page::today);
    restart(patient, program);
    CHECK(program->page() == Page::today);
}

TEST_CASE("reading one warning leaves the other standing", "[diary][warning]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tellSign(*program, Sign::fastSwelling);
    patient.goTo(0, 15);
    DemoPatient::tellSign(*program, Sign::vision);
    CHECK(program->warning()->isEmergency());

    program->warning()->confirm();

    CHECK(program->page() == Page::warning);
    CHECK_FALSE(program->warning()->isEmergency());
    CHECK(program->warning()->reason() == QLatin1String("One side keeps getting fuller by the hour."));
    program->warning()->confirm();
    CHECK(program->page() == Page::today);
}

TEST_CASE("the most urgent says what to do; the reasons name everything", "[diary][warning]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openEntry();
    auto& entry = *program->entry();
    while (entry.step() == diaryapp::EntryBoard::Step::Score)
        entry.next();
    entry.tick(static_cast<int>(Sign::threadOut), true);
    entry.tick(static_cast<int>(Sign::allergy), true);
    entry.signsDone();
    entry.save();

    auto& board = *program->warning();
    CHECK(board.isEmergency());
    CHECK(board.doNow().startsWith(QLatin1String("If you were given an adrenaline pen, use it.")));
    CHECK_FALSE(board.doNow().contains(QLatin1String("If nobody answers within 30 minutes")));
    CHECK(board.reason().contains(QLatin1String("My tongue or throat swells")));
    CHECK(board.reason().contains(QLatin1String("The end of a thread shows through the skin.")));
}

TEST_CASE("fever is said with its value, in the digits of the language", "[diary][warning]")
{
    DemoPatient patient;
    const auto [language, value] = GENERATE(std::pair("en", "38.4"), std::pair("de", "38,4"), std::pair("ar", "٣٨٫٤"));
    auto program = patient.joined(QString::fromLatin1(language));
    program->openEntry();
    auto& entry = *program->entry();
    entry.typeTemperature(QStringLiteral("38.4"));
    entry.save();

    REQUIRE(program->page() == Page::warning);
    CHECK(program->warning()->reason().contains(QString::fromUtf8(value)));
}

TEST_CASE("fever begins at 38.0", "[diary][warning]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openEntry();
    program->entry()->typeTemperature(QStringLiteral("37.9"));
    program->entry()->save();
    CHECK(program->page() == Page::today);
    patient.clock().advance(std::chrono::hours(1));
    program->openEntry();
    program->entry()->typeTemperature(QStringLiteral("38.0"));
    program->entry()->save();
    CHECK(program->page() == Page::warning);
}

TEST_CASE("a correction that makes it worse warns as a new entry would", "[diary][warning]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tell(*program, 2);
    program->undoSave();
    auto& entry = *program->entry();
    while (entry.step() == diaryapp::EntryBoard::Step::Score)
        entry.next();
    entry.tick(static_cast<int>(Sign::neckSwelling), true);
    entry.signsDone();
    entry.save();

    CHECK(program->page() == Page::warning);
    CHECK(program->warning()->isEmergency());
}

TEST_CASE("what asks for something stays in sight until it is closed", "[diary][warning]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.goTo(2, 12);
    DemoPatient::tellSign(*program, Sign::threadLump);
    CHECK(program->page() == Page::today);
    CHECK(program->notice().contains(program->history()->entries().first().warning));
    CHECK_FALSE(program->history()->entries().first().loud);
    CHECK_FALSE(program->history()->entries().first().warning.isEmpty());
}

TEST_CASE("a number is dialled as digits, whatever it looks like", "[diary][call]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    Dialler dialler;
    program->openCall();

    CHECK(program->warning()->call(QStringLiteral("+00 555\u00a00100")));
    CHECK(dialler.dialled == QLatin1String("+005550100"));
}

TEST_CASE("where nothing can dial, the number that was touched is said to be for another phone, until another page shows", "[diary][call]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openCall();
    auto& board = *program->warning();
    CHECK_FALSE(board.call(QStringLiteral("+00 555 0100")));  // the platform of these tests opens no address
    CHECK(board.undialled() == QLatin1String("+00 555 0100"));
    CHECK(board.call(QStringLiteral("112")) == false);
    CHECK(board.undialled() == QLatin1String("112"));
    program->openCall();
    CHECK(board.undialled().isEmpty());

    board.call(QStringLiteral("112"));
    Dialler dialler;
    CHECK_FALSE(board.isDialTried());
    // A computer cannot know whether a call starts: the number stays in sight.
    CHECK(board.call(QStringLiteral("112")));
    CHECK(board.undialled() == QLatin1String("112"));
    CHECK(board.isDialTried());
}

#include "warning_board_test.moc"
