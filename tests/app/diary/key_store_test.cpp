// A phone with a key store: when the diary is bound to it, and every way out when it fails.
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using Page = app::DiaryProgram::Page;

namespace {

const QString passphrase = QString::fromLatin1(screens::DemoPatient::passphrase);
const QString fresh = QStringLiteral("four grey geese rest here");

/// Her phone has a key store; the diary is made, and has a recovery code if she wants one.
struct Bound {
    screens::DemoPatient patient;
    std::unique_ptr<app::DiaryProgram> program;
    QString code;

    explicit Bound(bool withCode = true)
    {
        patient.keeper().there = true;
        program = patient.program(QStringLiteral("en"));
        program->locking()->create(passphrase, passphrase);
        REQUIRE(program->home().isOpen());
        if (withCode) {
            program->keys()->makeCode(passphrase);
            code = program->keys()->code();
            REQUIRE_FALSE(code.isEmpty());
        }
    }
    bool isBound() const { return vault::isBoundToDevice(patient.folder()); }
    bool opensWith(const QString& words)
    {
        program->lock();
        program->locking()->unlock(words);
        return program->home().isOpen();
    }
};

}  // namespace

TEST_CASE("a diary is bound to its phone at the first unlocking after its recovery code was made", "[diary][keystore]")
{
    Bound it;
    CHECK_FALSE(it.isBound());  // she may still be writing the code down
    CHECK(it.opensWith(passphrase));
    CHECK(it.isBound());
    CHECK(it.patient.keeper().made == 1);
    CHECK(it.opensWith(passphrase));
    CHECK(it.patient.keeper().made == 1);
    CHECK_FALSE(it.opensWith(fresh));
}

TEST_CASE("without a recovery code, or without a key store, the passphrase carries the diary alone", "[diary][keystore]")
{
    Bound without(false);
    CHECK(without.opensWith(passphrase));
    CHECK_FALSE(without.isBound());

    Bound absent;
    absent.patient.keeper().there = false;
    CHECK(absent.opensWith(passphrase));
    CHECK_FALSE(absent.isBound());
}

TEST_CASE("a key store that does not answer while binding keeps nobody out", "[diary][keystore]")
{
    Bound it;
    it.patient.keeper().silent = true;
    CHECK(it.opensWith(passphrase));
    CHECK_FALSE(it.isBound());
    it.patient.keeper().silent = false;
    CHECK(it.opensWith(passphrase));
    CHECK(it.isBound());
}

TEST_CASE("a phone that does not give its half is not mistaken for a wrong passphrase, and whom to call stays there", "[diary][keystore]")
{
    Bound it;
    REQUIRE(it.opensWith(passphrase));
    it.patient.keeper().silent = true;
    for (int i = 0; i < 20; ++i) {
        CHECK_FALSE(it.opensWith(passphrase));
        CHECK(it.program->locking()->problem().startsWith(QLatin1String("This phone does not give its half of the key.")));
    }
    it.program->openCall();
    CHECK(it.program->page() == Page::call);
    it.patient.keeper().silent = false;
    CHECK(it.opensWith(passphrase));
}

TEST_CASE("the page of the lock says that the passphrase needs this phone too, once it does and only then", "[diary][keystore]")
{
    Bound it;
    REQUIRE_FALSE(it.isBound());
    CHECK(it.program->keys()->phoneHalf().isEmpty());
    REQUIRE(it.opensWith(passphrase));
    REQUIRE(it.isBound());
    CHECK(it.program->keys()->phoneHalf()
          == QLatin1String("Your passphrase needs this phone too: the phone keeps the other half of the key. If the phone loses it, only the recovery code opens the diary."));
}

TEST_CASE("a secret that the phone lost is survived by the recovery code, and the diary is bound anew", "[diary][keystore]")
{
    Bound it;
    REQUIRE(it.opensWith(passphrase));
    it.patient.keeper().lose();
    CHECK_FALSE(it.opensWith(passphrase));
    CHECK(it.patient.keeper().made == 1);  // never a second secret over one that is needed
    it.program->locking()->useCode(true);
    it.program->locking()->recover(it.code, fresh, fresh);
    REQUIRE(it.program->home().isOpen());
    CHECK(it.isBound());
    CHECK(it.patient.keeper().made == 2);
    CHECK(it.opensWith(fresh));
}

TEST_CASE("a bound diary changes its passphrase and its code, and stays bound", "[diary][keystore]")
{
    Bound it;
    REQUIRE(it.opensWith(passphrase));
    it.program->keys()->change(passphrase, fresh, fresh);
    CHECK(it.isBound());
    CHECK_FALSE(it.opensWith(passphrase));
    REQUIRE(it.opensWith(fresh));
    it.program->keys()->makeCode(fresh);
    CHECK_FALSE(it.program->keys()->code().isEmpty());
    CHECK(it.isBound());
    CHECK(it.opensWith(fresh));
}

TEST_CASE("a diary that is taken off the phone takes its secret along, and a new one begins without", "[diary][keystore]")
{
    Bound it;
    REQUIRE(it.opensWith(passphrase));
    REQUIRE(it.program->home().erase());
    CHECK_FALSE(it.patient.keeper().kept.has_value());

    // A key store that outlived the program's files.
    REQUIRE(it.patient.keeper().make());
    it.program->locking()->create(fresh, fresh);
    REQUIRE(it.program->home().isOpen());
    CHECK_FALSE(it.patient.keeper().kept.has_value());
    CHECK(it.opensWith(fresh));
}

TEST_CASE("a secret that is gone without a trace is not made anew while the diary needs it, and the recovery code leads out", "[diary][keystore]")
{
    Bound it;
    REQUIRE(it.opensWith(passphrase));
    it.patient.keeper().kept.reset();  // a keyring that was emptied says only that nothing is there
    for (int i = 0; i < 5; ++i)
        CHECK_FALSE(it.opensWith(passphrase));
    CHECK(it.patient.keeper().made == 1);
    it.program->locking()->useCode(true);
    it.program->locking()->recover(it.code, fresh, fresh);
    REQUIRE(it.program->home().isOpen());
    CHECK(it.isBound());
    CHECK(it.patient.keeper().made == 2);
    CHECK(it.opensWith(fresh));
}

TEST_CASE("on a computer the lock speaks of the computer and its keyring, not of a phone", "[diary][keystore]")
{
    Bound it;
    it.patient.keeper().ofSession = true;
    REQUIRE(it.opensWith(passphrase));
    CHECK(it.program->keys()->phoneHalf().startsWith(QLatin1String("Your passphrase needs this computer too: its keyring,")));
    it.patient.keeper().silent = true;
    CHECK_FALSE(it.opensWith(passphrase));
    CHECK(it.program->locking()->problem()
          == QLatin1String("This computer does not give its half of the key. If it asks for the password of its keyring, type that first. Then try again. If that does not help, use your recovery code."));
}

TEST_CASE("a key store that does not forget is told about when a bound diary is erased, and only then", "[diary][keystore]")
{
    Bound bound;
    REQUIRE(bound.opensWith(passphrase));
    REQUIRE(bound.isBound());
    bound.patient.keeper().stubborn = true;
    CHECK_FALSE(bound.program->home().erase());

    Bound without(false);
    without.patient.keeper().stubborn = true;
    CHECK(without.program->home().erase());
}
