// Setting up, unlocking, and describing the clinic.
#include "core/bytes/text.h"
#include "core/vault/ways_in.h"
#include "tests/app/held_measure.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QClipboard>
#include <QGuiApplication>
#include <QTemporaryDir>

using namespace ebbline;

TEST_CASE("a vault is set up with a long passphrase given twice, and the clinic comes next", "[desk][door]")
{
    screens::DemoClinic clinic;
    auto program = clinic.freshProgram(QStringLiteral("en"));
    auto& door = *program->unlocking();
    CHECK_FALSE(door.vaultExists());

    CHECK_FALSE(door.create(QStringLiteral("short"), QStringLiteral("short")));
    CHECK_FALSE(door.create(QStringLiteral("long enough for it"), QStringLiteral("long enough for me")));
    CHECK(program->page() == app::DeskProgram::Page::unlock);
    REQUIRE(door.create(QStringLiteral("long enough for it"), QStringLiteral("long enough for it")));

    CHECK(program->page() == app::DeskProgram::Page::clinic);
}

TEST_CASE("the door answers while the cost of a passphrase is measured: set up once, whatever is touched meanwhile", "[desk][door]")
{
    screens::DemoClinic clinic;
    QTemporaryDir place;
    tests::HeldMeasure held;
    deskapp::Workplace workplace(std::filesystem::path(place.path().toStdString()) / "vault", clinic.clock(), clinic.zone());
    deskapp::UnlockBoard door(workplace, std::nullopt, nullptr, held.measure());
    const QString words = QStringLiteral("long enough for it");
    CHECK(door.doing().isEmpty());

    CHECK_FALSE(door.create(words, words));
    REQUIRE(door.isWorking());
    CHECK_FALSE(workplace.vaultExists());
    CHECK(door.doing().startsWith(QLatin1String("One moment.")));
    CHECK(door.problem().isEmpty());
    CHECK_FALSE(door.create(QStringLiteral("another one altogether"), QStringLiteral("another one altogether")));
    REQUIRE(tests::HeldMeasure::waitFor([&] { return held.begun() == 1; }));
    held.letEnd();
    REQUIRE(tests::HeldMeasure::waitFor([&] { return workplace.isOpen(); }));
    CHECK(held.wasAside());
    CHECK(held.begun() == 1);
    CHECK_FALSE(door.isWorking());
    CHECK(door.doing().isEmpty());
    workplace.lock();
    CHECK(door.unlock(words));  // the one that was typed first
}

TEST_CASE("a set-up that is stopped while it measures writes nothing, and the next one goes on with the same measurement", "[desk][door]")
{
    screens::DemoClinic clinic;
    QTemporaryDir place;
    tests::HeldMeasure held;
    deskapp::Workplace workplace(std::filesystem::path(place.path().toStdString()) / "vault", clinic.clock(), clinic.zone());
    deskapp::UnlockBoard door(workplace, std::nullopt, nullptr, held.measure());
    const QString given = QStringLiteral("long enough for it");
    const QString wanted = QStringLiteral("what was meant all along");
    door.create(given, given);
    REQUIRE(door.isWorking());
    door.stop();
    CHECK_FALSE(door.isWorking());
    CHECK(door.doing().isEmpty());
    CHECK_FALSE(workplace.vaultExists());

    door.create(wanted, wanted);
    REQUIRE(door.isWorking());
    REQUIRE(tests::HeldMeasure::waitFor([&] { return held.begun() == 1; }));
    held.letEnd();
    REQUIRE(tests::HeldMeasure::waitFor([&] { return workplace.isOpen(); }));
    CHECK(held.begun() == 1);
    workplace.lock();
    CHECK_FALSE(door.unlock(given));
    clinic.clock().advance(std::chrono::minutes(1));
    CHECK(door.unlock(wanted));
}

TEST_CASE("a look at the invented clinic gives up a set-up that still measures", "[desk][door]")
{
    screens::DemoClinic clinic;
    QTemporaryDir place;
    tests::HeldMeasure held;
    deskapp::Workplace workplace(std::filesystem::path(place.path().toStdString()) / "vault", clinic.clock(), clinic.zone());
    deskapp::UnlockBoard door(workplace, std::nullopt, nullptr, held.measure());
    const QString words = QStringLiteral("long enough for it");
    door.create(words, words);
    REQUIRE(door.isWorking());
    REQUIRE(door.openDemo());
    CHECK_FALSE(door.isWorking());
    held.letEnd();
    // Whoever asks next is answered after the measurement that was under way has arrived.
    workplace.lock();
    door.create(words, words);
    REQUIRE(tests::HeldMeasure::waitFor([&] { return workplace.isOpen(); }));
    CHECK_FALSE(workplace.isDemo());
    CHECK(held.begun() == 1);
}

TEST_CASE("the recovery code sets a new passphrase after the cost was measured beside the interface", "[desk][door]")
{
    screens::DemoClinic clinic;
    const QString fresh = QStringLiteral("lanterns over the harbour");
    const auto code = vault::renewRecoveryCode(clinic.folder(), vault::Offered::passphrase(bytes::viewOf(screens::DemoClinic::passphrase)),
                                               tests::HeldMeasure::cost, clinic.clock().readings());
    REQUIRE(code);
    tests::HeldMeasure held;
    deskapp::Workplace workplace(clinic.folder(), clinic.clock(), clinic.zone());
    deskapp::UnlockBoard door(workplace, std::nullopt, nullptr, held.measure());
    const QString paper = QString::fromStdString(code->text());
    door.useCode(true);
    CHECK_FALSE(door.recover(paper, fresh, fresh));
    REQUIRE(door.isWorking());
    CHECK_FALSE(workplace.isOpen());
    door.useCode(false);  // she remembers it after all
    CHECK_FALSE(door.isWorking());
    CHECK(door.unlock(QString::fromLatin1(screens::DemoClinic::passphrase)));
    workplace.lock();

    door.useCode(true);
    door.recover(paper, fresh, fresh);
    held.letEnd();
    REQUIRE(tests::HeldMeasure::waitFor([&] { return workplace.isOpen(); }));
    CHECK(held.wasAside());
    workplace.lock();
    CHECK(door.unlock(fresh));
}

TEST_CASE("a wrong passphrase opens nothing and says so", "[desk][door]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->lock();

    CHECK_FALSE(program->unlocking()->unlock(QStringLiteral("waterline at high tide")));
    CHECK_FALSE(program->unlocking()->problem().isEmpty());
    CHECK(program->page() == app::DeskProgram::Page::unlock);
    program->openQueue();
    CHECK(program->page() == app::DeskProgram::Page::unlock);
}

TEST_CASE("after unlocking the desk asks who is there before it shows the queue", "[desk][door]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->lock();

    REQUIRE(program->workplace().unlock(bytes::viewOf(screens::DemoClinic::passphrase)));
    CHECK(program->page() == app::DeskProgram::Page::person);
    program->choosePerson(QStringLiteral("Ilan Osei"));
    CHECK(program->page() == app::DeskProgram::Page::queue);
    CHECK(program->workplace().desk().person() == "Ilan Osei");
}

TEST_CASE("the clinic is saved only with a name, a phone, an emergency number and a person", "[desk][clinic]")
{
    screens::DemoClinic clinic;
    auto program = clinic.freshProgram(QStringLiteral("en"));
    REQUIRE(program->unlocking()->create(QStringLiteral("long enough for it"), QStringLiteral("long enough for it")));
    auto& editor = *program->clinic();
    CHECK(editor.missing().size() == 4);
    CHECK_FALSE(editor.save());

    editor.setProperty("clinicName", QStringLiteral("Practice at the Quay"));
    editor.setProperty("clinicPhone", QStringLiteral("+00 555 0100"));
    editor.setProperty("emergencyNumber", QStringLiteral("one one two"));
    editor.setProperty("people", QStringLiteral("Dr Mara Lindqvist\n\nIlan Osei\nIlan Osei\n"));
    CHECK(editor.missing().size() == 1);
    editor.setProperty("emergencyNumber", QStringLiteral("112"));
    REQUIRE(editor.save());

    const auto described = program->workplace().desk().clinic();
    REQUIRE(described);
    CHECK(described->people == std::vector<std::string>{"Dr Mara Lindqvist", "Ilan Osei"});
    CHECK(described->contacts.emergencyNumber == "112");
    CHECK(program->clinic()->person() == QLatin1String("Dr Mara Lindqvist"));
}

TEST_CASE("a phone number of the clinic that no phone can dial as it stands is refused, with how to write it", "[desk][clinic][safety]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openClinic();
    auto& editor = *program->clinic();
    REQUIRE(editor.missing().isEmpty());
    const auto before = program->workplace().desk().clinic()->contacts;
    const auto* field = GENERATE("clinicPhone", "onCallPhone");
    for (const auto* wrong : {"+49 (0)30 1234", "+49 ( ０ ) 30 1234", "030 12 / 0171 34", "030 12; 0171 34", "030 12, 0171 34", "ask Ilan", "030 12 ext 3", "+ -"}) {
        CAPTURE(field, wrong);
        editor.setProperty(field, QString::fromUtf8(wrong));
        REQUIRE(editor.missing().size() == 1);
        CHECK(editor.missing().front().endsWith(QStringLiteral("number, without letters, “/”, “,”, “;” or “(0)”, for example +00 555 0100.")));
        CHECK_FALSE(editor.save(QString::fromLatin1(screens::DemoClinic::passphrase)));
    }
    CHECK(program->workplace().desk().clinic()->contacts == before);
    for (const auto* right : {"+00 555 0100", "(030) 12-34", "٠٣٠ ١٢٣٤"}) {
        CAPTURE(field, right);
        editor.setProperty(field, QString::fromUtf8(right));
        CHECK(editor.missing().isEmpty());
    }
}

TEST_CASE("a limit that the clinic lowered holds at the desk, is named apart from the label's, and cannot be above it", "[desk][clinic][dose]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->workplace().desk().setPerson("Ilan Osei");
    program->openClinic();
    auto& limits = *program->doseLimits();
    CHECK(limits.hints() == QStringList{QStringLiteral("4.5"), QStringLiteral("300"), QStringLiteral("7"), QStringLiteral("500")});
    CHECK(limits.texts() == QStringList(4));
    CHECK_FALSE(limits.isReady());

    for (const auto* wrong : {"4.6", "0", "-1", "some"}) {
        CAPTURE(wrong);
        limits.write(0, QLatin1String(wrong));
        CHECK(limits.problems().front().contains(QLatin1String("up to 4.5, the label's")));
        CHECK_FALSE(limits.isReady());
        CHECK_FALSE(limits.save());
    }
    limits.write(0, QStringLiteral("4"));
    program->openClinic();
    CHECK(limits.texts().front() == QLatin1String("4"));  // what was begun stays
    REQUIRE(limits.save());
    CHECK_FALSE(limits.isReady());
    CHECK(limits.state().contains(QLatin1String("Lowered by Ilan Osei")));
    CHECK(program->begun()->words(QStringLiteral("doseLimits")).isEmpty());

    program.reset();
    auto again = clinic.program(QStringLiteral("en"));
    again->workplace().desk().setPerson("Ilan Osei");
    CHECK(again->workplace().desk().doseLimits() == anaesthesia::Limits{.plainMgPerKg = 4});
    again->openTreatment();
    again->treatment()->setDrug(1);
    again->treatment()->setWeight(QStringLiteral("60"));
    CHECK(again->treatment()->doseClinic().contains(QLatin1String("Your clinic's limit, plain: 4 mg/kg")));
    CHECK(again->treatment()->doseMaximum().contains(QLatin1String("At most 240 mg")));

    // The label's again.
    again->openClinic();
    again->doseLimits()->write(0, {});
    REQUIRE(again->doseLimits()->save());
    CHECK(again->workplace().desk().doseLimits() == anaesthesia::Limits{});
    CHECK(again->doseLimits()->state() == QLatin1String("The label's limits hold."));
    CHECK_FALSE(again->workplace().desk().limitDose({.plainCapMg = 301}));
}

TEST_CASE("a hub on another machine needs the fingerprint of its key", "[desk][clinic][hub]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& editor = *program->clinic();
    editor.open();

    editor.setProperty("hub", QStringLiteral("hub.example:8443"));
    CHECK(editor.isHubKeyAsked());
    CHECK_FALSE(editor.save());
    editor.setProperty("hubKey", QString(64, QLatin1Char('a')));
    REQUIRE(editor.save());

    const auto hub = program->workplace().desk().hub();
    REQUIRE(hub);
    CHECK(hub->tls);
    CHECK(hub->keyHash[0] == 0xaa);
}

TEST_CASE("settings outlive the program and hold nothing of a patient", "[desk][settings]")
{
    screens::DemoClinic clinic;
    {
        auto program = clinic.program(QStringLiteral("de"));
        program->settings()->setTextPercent(150);
        program->settings()->setLook(1);
        program->settings()->setSingleKeys(false);
    }
    auto program = clinic.program({});

    CHECK(program->settings()->language() == QLatin1String("de"));
    CHECK(program->settings()->textPercent() == 150);
    CHECK(program->settings()->look() == 1);
    CHECK_FALSE(program->settings()->hasSingleKeys());
    program->settings()->setLanguage(QStringLiteral("xx"));
    CHECK(program->settings()->language() == QLatin1String("de"));
    program->settings()->setLanguage(QStringLiteral("en"));
}

TEST_CASE("the desk shows the key that a hub admits the clinic by, and nothing of it while locked", "[desk][clinic]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    const QString key = program->clinic()->clinicKey();
    CHECK(key.size() == 64);
    CHECK(key.toStdString() == bytes::toHex(program->workplace().desk().vault().clinicRoot().publicKey().value));

    program->clinic()->copyClinicKey();
    CHECK(QGuiApplication::clipboard()->text() == key);
    CHECK_FALSE(program->clinic()->saved().isEmpty());

    program->lock();
    CHECK(program->clinic()->clinicKey().isEmpty());
}

TEST_CASE("a number to call is changed with the passphrase, and with nothing less", "[desk][clinic]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openClinic();
    const auto before = program->workplace().desk().clinic()->contacts;
    program->clinic()->setProperty("onCallPhone", QStringLiteral("+00 555 01"));
    CHECK(program->clinic()->areNumbersChanged());
    CHECK_FALSE(program->clinic()->save());
    CHECK_FALSE(program->clinic()->stepProblem().isEmpty());
    CHECK_FALSE(program->clinic()->save(QStringLiteral("another sea altogether")));
    CHECK(program->workplace().desk().clinic()->contacts == before);
    REQUIRE(program->clinic()->save(QString::fromLatin1(screens::DemoClinic::passphrase)));
    CHECK_FALSE(program->clinic()->areNumbersChanged());
    CHECK(program->workplace().desk().clinic()->contacts.onCallPhone == "+00 555 01");
}
