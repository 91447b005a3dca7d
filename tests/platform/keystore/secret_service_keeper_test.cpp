// The keyring of a session, through the real QtKeychain and libsecret: what it gives, and every way in which it does not.
#include "tests/platform/keystore/keyring_stage.h"

#include <catch2/catch_test_macros.hpp>

#include <QElapsedTimer>

#include <functional>

using namespace ebbline;
using namespace std::chrono_literals;
using keyring::SecretServiceKeeper;
using keyring::Where;
using test::Keyring;

namespace {

const QString folder = QStringLiteral("/somewhere/diary");

struct Session {
    Session()
    {
        service.reset();
        REQUIRE(service.start());
    }
    ~Session() { service.reset(); }

    SecretServiceKeeper keeper(const QString& of = folder, Where where = Where::session) const
    {
        return {test::keyringStage->thread, keyring::entryFor(of), where, test::keyringStage->bus, {.answer = 6s, .person = 300ms}};
    }
    void set(const std::function<void(Keyring&)>& change) { service.with(change); }
    int made() { return service.with([](Keyring& it) { return it.made; }); }
    int asked() { return service.with([](Keyring& it) { return it.asked; }); }
    bool keeps() { return service.with([](Keyring& it) { return it.kept.has_value(); }); }

    test::SecretService& service = test::keyringStage->service;
};

/// Until what was asked for in the background is done.
bool comesTo(const std::function<bool()>& state)
{
    QElapsedTimer since;
    since.start();
    while (!state() && since.elapsed() < 10'000)
        QThread::msleep(20);
    return state();
}

}  // namespace

TEST_CASE("a session without a keyring says so and keeps nothing", "[keystore]")
{
    Session session;
    session.service.stop();
    auto keeper = session.keeper();
    CHECK_FALSE(keeper.isThere());
    CHECK(keeper.isOfSession());
    CHECK(keeper.fetch().error().reason == Reason::unsupported);
    CHECK(keeper.make().error().reason == Reason::unsupported);
    CHECK(keeper.forget().error().reason == Reason::unsupported);  // it can not know
    CHECK(session.made() == 0);
}

TEST_CASE("a session's keyring keeps a secret, gives it out again, and never has a second one made over it", "[keystore]")
{
    Session session;
    auto keeper = session.keeper();
    REQUIRE(keeper.isThere());
    CHECK(keeper.fetch().error().reason == Reason::notFound);
    CHECK(keeper.forget());  // nothing there
    const auto made = keeper.make();
    REQUIRE(made);
    CHECK(session.made() == 1);
    const auto fetched = session.keeper().fetch();
    REQUIRE(fetched);
    CHECK(crypto::equal(fetched->view(), made->view()));
    CHECK(keeper.make().error().reason == Reason::alreadyExists);
    CHECK(session.made() == 1);
    CHECK(session.asked() == 0);

    REQUIRE(keeper.forget());
    CHECK_FALSE(session.keeps());
    CHECK(keeper.fetch().error().reason == Reason::notFound);
}

TEST_CASE("each diary of a session has a secret of its own", "[keystore]")
{
    Session session;
    REQUIRE(session.keeper().make());
    auto other = session.keeper(QStringLiteral("/somewhere/else"));
    CHECK(other.fetch().error().reason == Reason::notFound);
    CHECK(other.forget());
    CHECK(session.keeps());
    CHECK(keyring::entryFor(QStringLiteral("/somewhere/else/../diary/")) == keyring::entryFor(folder));
}

TEST_CASE("a locked keyring asks, nobody waits for the person, and the secret is not called lost", "[keystore]")
{
    Session session;
    auto keeper = session.keeper();
    const auto made = keeper.make();
    REQUIRE(made);
    session.set([](Keyring& it) { it.locked = true; });

    QElapsedTimer since;
    since.start();
    CHECK(keeper.fetch().error().reason == Reason::storageFailed);
    CHECK(since.elapsed() < 5'000);
    CHECK(comesTo([&] { return session.asked() == 1; }));
    CHECK(keeper.make().error().reason == Reason::storageFailed);
    CHECK(keeper.forget().error().reason == Reason::storageFailed);
    CHECK(session.keeps());
    CHECK(session.made() == 1);
}

TEST_CASE("a keyring that the person opened gives the secret at the next try", "[keystore]")
{
    Session session;
    auto keeper = session.keeper();
    const auto made = keeper.make();
    REQUIRE(made);
    session.set([](Keyring& it) { it.locked = true; });
    CHECK(keeper.fetch().error().reason == Reason::storageFailed);
    REQUIRE(comesTo([&] { return session.asked() == 1; }));
    session.service.answer(Keyring::Person::agrees);
    const auto again = keeper.fetch();
    REQUIRE(again);
    CHECK(crypto::equal(again->view(), made->view()));
    CHECK(session.asked() == 1);
}

TEST_CASE("a keyring whose question is put away does not give, and has lost nothing", "[keystore]")
{
    Session session;
    auto keeper = session.keeper();
    REQUIRE(keeper.make());
    session.set([](Keyring& it) {
        it.locked = true;
        it.person = Keyring::Person::refuses;
    });
    CHECK(keeper.fetch().error().reason == Reason::storageFailed);
    CHECK(keeper.make().error().reason == Reason::storageFailed);
    CHECK(session.keeps());
    CHECK(session.made() == 1);
}

TEST_CASE("no window comes only to bind a diary: a closed keyring, or none, is left alone", "[keystore]")
{
    Session session;
    session.set([](Keyring& it) { it.locked = true; });
    CHECK(session.keeper().make().error().reason == Reason::storageFailed);
    session.set([](Keyring& it) {
        it.locked = false;
        it.hasUsual = false;
    });
    CHECK(session.keeper().make().error().reason == Reason::storageFailed);
    CHECK(session.asked() == 0);
    CHECK(session.made() == 0);
}

TEST_CASE("a keyring that refuses, is silent or answers something else is not taken for an empty one", "[keystore]")
{
    Session session;
    auto keeper = session.keeper();
    REQUIRE(keeper.make());
    SECTION("it refuses")
    {
        session.set([](Keyring& it) { it.refuses = true; });
    }
    SECTION("it is silent")
    {
        session.set([](Keyring& it) { it.silent = true; });
    }
    SECTION("it answers something else")
    {
        session.set([](Keyring& it) { it.rubbish = true; });
    }
    QElapsedTimer since;
    since.start();
    CHECK(keeper.fetch().error().reason == Reason::storageFailed);
    CHECK(keeper.make().error().reason == Reason::storageFailed);
    CHECK(since.elapsed() < 30'000);
    CHECK(session.made() == 1);
    CHECK(session.keeps());
}

TEST_CASE("a secret of another length is damaged, and goes before a new one is made", "[keystore]")
{
    Session session;
    auto keeper = session.keeper();
    REQUIRE(keeper.make());
    session.set([](Keyring& it) { it.kept = QByteArray(16, 'x').toBase64(); });
    CHECK(keeper.fetch().error().reason == Reason::damaged);
    CHECK(keeper.make().error().reason == Reason::alreadyExists);
    CHECK(session.made() == 1);
    REQUIRE(keeper.forget());
    CHECK(keeper.make());
    CHECK(session.made() == 2);
}

TEST_CASE("a secret that the keyring lost is not there, and asking for it makes none", "[keystore]")
{
    Session session;
    auto keeper = session.keeper();
    REQUIRE(keeper.make());
    session.set([](Keyring& it) { it.kept.reset(); });
    for (int i = 0; i < 3; ++i)
        CHECK(keeper.fetch().error().reason == Reason::notFound);
    CHECK(session.made() == 1);
}

TEST_CASE("a keyring that takes a secret and keeps none is found out before anything is bound to it", "[keystore]")
{
    Session session;
    session.set([](Keyring& it) { it.forgetful = true; });
    CHECK_FALSE(session.keeper().make());
    CHECK(session.made() == 1);
}

TEST_CASE("where the library would ask KWallet, there is no keyring that we use", "[keystore]")
{
    Session session;
    qputenv("XDG_CURRENT_DESKTOP", "KDE");
    CHECK(session.keeper().isThere());
    REQUIRE(test::keyringStage->bus.registerService(QStringLiteral("org.kde.kwalletd6")));
    CHECK_FALSE(session.keeper().isThere());
    qunsetenv("XDG_CURRENT_DESKTOP");
    CHECK(session.keeper().isThere());
    test::keyringStage->bus.unregisterService(QStringLiteral("org.kde.kwalletd6"));
}

TEST_CASE("in a sandbox the desktop's portal for secrets decides", "[keystore]")
{
    Session session;
    CHECK_FALSE(session.keeper(folder, Where::sandbox).isThere());
    session.set([](Keyring& it) { it.portal = 1; });
    CHECK(session.keeper(folder, Where::sandbox).isThere());
    session.service.stop();
    CHECK_FALSE(session.keeper(folder, Where::sandbox).isThere());
}
