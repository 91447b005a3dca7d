// A phone with a key store: when the diary is bound to it, and every way out when it fails.
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using Page = app::DiaryProgram::Page;

namespace {

const QString passphrase = QString::fromLatin1(screens::DemoPatient::passphrase);
const QString fresh = QStringLiteral("four grey geese rest here");

enum class Code { none, unread, onPaper };

/// Her phone has a key store; the diary is made, and has a recovery code if she wants one, which she reads back from its paper or not.
struct Bound {
    screens::DemoPatient patient;
    std::unique_ptr<app::DiaryProgram> program;
    QString code;

    explicit Bound(Code wanted = Code::onPaper)
    {
        patient.keeper().there = true;
        program = patient.program(QStringLiteral("en"));
        program->locking()->create(passphrase, passphrase);
        REQUIRE(program->home().isOpen());
        if (wanted != Code::none)
            makeCode();
        if (wanted == Code::onPaper)
            readBack();
    }
    void makeCode(const QString& words = passphrase)
    {
        program->keys()->makeCode(words);
        code = program->keys()->code();
        REQUIRE_FALSE(code.isEmpty());
    }
    void readBack()
    {
        program->keys()->askBack();
        program->keys()->readBack(code.section(QLatin1Char('-'), program->keys()->askedGroup() - 1, program->keys()->askedGroup() - 1));
        REQUIRE(program->keys()->code().isEmpty());
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

TEST_CASE("a diary is bound to its phone at the first unlocking after its recovery code was read back from the paper", "[diary][keystore]")
{
    Bound it;
    CHECK_FALSE(it.isBound());
    CHECK(it.program->keys()->codeUnread().isEmpty());
    CHECK(it.opensWith(passphrase));
    CHECK(it.isBound());
    CHECK(it.patient.keeper().made == 1);
    CHECK(it.opensWith(passphrase));
    CHECK(it.patient.keeper().made == 1);
    CHECK_FALSE(it.opensWith(fresh));
}

TEST_CASE("without a recovery code, or without a key store, the passphrase carries the diary alone", "[diary][keystore]")
{
    Bound without(Code::none);
    CHECK(without.opensWith(passphrase));
    CHECK_FALSE(without.isBound());

    Bound absent;
    absent.patient.keeper().there = false;
    CHECK(absent.opensWith(passphrase));
    CHECK_FALSE(absent.isBound());
}

TEST_CASE("a recovery code that was made and never read back binds nothing, and the page says what waits for it", "[diary][keystore][safety]")
{
    Bound it(Code::unread);
    for (int i = 0; i < 3; ++i) {
        CHECK(it.opensWith(passphrase));
        CHECK_FALSE(it.isBound());
        CHECK(it.patient.keeper().made == 0);
        CHECK(it.program->keys()->codeUnread()
              == QLatin1String("This device could keep half of your key. It waits until a code was read back from your paper. For that, make a new code."));
    }
    // What a phone loses then, nobody needs: the passphrase opens the diary alone.
    it.patient.keeper().lose();
    CHECK(it.opensWith(passphrase));

    it.makeCode();
    it.program->keys()->askBack();
    it.program->keys()->readBack(QStringLiteral("2222"));
    CHECK(it.opensWith(passphrase));
    CHECK_FALSE(it.isBound());
    it.makeCode();
    it.readBack();
    CHECK(it.opensWith(passphrase));
    CHECK(it.isBound());

    Bound absent(Code::unread);
    absent.patient.keeper().there = false;
    CHECK(absent.opensWith(passphrase));
    CHECK(absent.program->keys()->codeUnread().isEmpty());  // nothing waits for it there
}

TEST_CASE("a diary of before whose code nobody read back stays bound if it is, and waits if it is not", "[diary][keystore][safety]")
{
    Bound it(Code::unread);
    REQUIRE(it.patient.keeper().make());
    const auto words = passphrase.toStdString();
    REQUIRE(vault::changePassphrase(it.patient.folder(), vault::Offered::passphrase(bytes::viewOf(words)), bytes::viewOf(words),
                                    crypto::stretchFloor, it.patient.clock().readings(), it.patient.keeper().kept->view()));
    REQUIRE(it.isBound());
    CHECK(it.opensWith(passphrase));
    CHECK(it.isBound());
    CHECK(it.program->keys()->codeUnread().startsWith(QLatin1String("Your newest code was not read back from your paper.")));

    // Whoever types all of the code has it on paper.
    it.patient.keeper().lose();
    CHECK_FALSE(it.opensWith(passphrase));
    it.program->locking()->useCode(true);
    it.program->locking()->recover(it.code, fresh, fresh);
    REQUIRE(it.program->home().isOpen());
    CHECK(it.isBound());
    CHECK(it.program->keys()->codeUnread().isEmpty());
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
    it.makeCode(fresh);
    CHECK(it.isBound());
    CHECK(it.opensWith(fresh));
    CHECK(it.isBound());
    // The paper of before opens nothing any more, and the new one is unproved: that is said while the diary needs it.
    CHECK(it.program->keys()->codeUnread().startsWith(QLatin1String("Your newest code was not read back from your paper.")));
    it.makeCode(fresh);
    CHECK(it.program->keys()->codeUnread().isEmpty());  // it is in sight
    it.readBack();
    CHECK(it.program->keys()->codeUnread().isEmpty());
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

    Bound without(Code::none);
    without.patient.keeper().stubborn = true;
    CHECK(without.program->home().erase());
}
