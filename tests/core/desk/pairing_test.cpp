// Pairing through the hub: what a photograph, a typing error, a second phone and time do to it.

#include "tests/core/desk/clinic_world.h"

#include <catch2/generators/catch_generators.hpp>

#include <type_traits>
#include <utility>

using namespace ebbline;
using namespace std::chrono_literals;
using desk::Inviting;
using patient::Joining;

namespace {

struct Meeting {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat();
    patient::Diary& phone = world.newPhone();
    Inviting inviting{world.desk, world.clock, course, triggers::defaultProtocol(), world.inDays(21)};

    Meeting()
    {
        inviting.start(world.courier, [] {});
        REQUIRE(inviting.step() == Inviting::Step::shown);
    }
    void poll(Joining& joining)
    {
        joining.poll(world.courier, [] {});
        inviting.poll(world.courier, [] {});
    }
};

bool isNonce(const mailbox::Request& request) { return request.path.ends_with("/nonce"); }
bool isAnything(const mailbox::Request&) { return true; }
bool isQuestion(const mailbox::Request& request) { return request.method == "GET" && request.path.starts_with("/v1/offers/"); }

/// Keeps some answers until they are let through.
class SlowWay final : public sync::Courier {
public:
    SlowWay(test::LoopbackCourier& way, bool (*isSlow)(const mailbox::Request&)) : m_way(way), m_isSlow(isSlow) {}

    void send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer) override
    {
        m_way.send(request, [this, slow = m_isSlow(request), answer](const Result<mailbox::Response>& response) {
            if (slow)
                held.emplace_back([answer, response] { answer(response); });
            else
                answer(response);
        });
    }

    std::vector<std::function<void()>> held;

private:
    test::LoopbackCourier& m_way;
    bool (*m_isSlow)(const mailbox::Request&);
};

}  // namespace

TEST_CASE("a second phone that photographed the code is noticed and nothing is linked", "[pairing]")
{
    Meeting meeting;
    patient::Diary& thief = meeting.world.newPhone();
    Joining stolen(thief, meeting.world.clock), own(meeting.phone, meeting.world.clock);
    REQUIRE(stolen.start(meeting.inviting.qrText()));
    REQUIRE(own.start(meeting.inviting.qrText()));

    stolen.poll(meeting.world.courier, [] {});
    own.poll(meeting.world.courier, [] {});
    meeting.inviting.poll(meeting.world.courier, [] {});

    CHECK(own.step() == Joining::Step::failed);
    CHECK(own.problem()->reason == Reason::alreadyExists);
    CHECK(meeting.inviting.step() == Inviting::Step::usedTwice);
    meeting.inviting.confirm(meeting.world.courier, [] {});
    CHECK(meeting.world.desk.vault().links()->empty());
}

TEST_CASE("the thief's number is not the one on the patient's phone", "[pairing]")
{
    Meeting meeting;
    patient::Diary& thief = meeting.world.newPhone();
    Joining stolen(thief, meeting.world.clock);
    REQUIRE(stolen.start(meeting.inviting.qrText()));
    for (int i = 0; i < 3; ++i)
        meeting.poll(stolen);

    REQUIRE(meeting.inviting.step() == Inviting::Step::compare);
    const auto nonceless = pairing::confirmationNumber(meeting.phone.vault().signingKey().publicKey(),
                                                       meeting.phone.vault().boxKey().publicKey(), {});
    CHECK(meeting.inviting.confirmationNumber() == stolen.confirmationNumber());
    CHECK(meeting.inviting.confirmationNumber() != nonceless);
    meeting.inviting.refuse();
    CHECK(meeting.inviting.step() == Inviting::Step::failed);
    CHECK(meeting.world.desk.vault().links()->empty());
}

TEST_CASE("an answer that comes after the numbers were refused changes nothing of what is said", "[pairing]")
{
    const bool good = GENERATE(true, false);
    CAPTURE(good);
    test::ClinicWorld world;
    SlowWay way(world.courier, isQuestion);
    Inviting inviting(world.desk, world.clock, world.treat(), triggers::defaultProtocol(), world.inDays(21));
    inviting.start(way, [] {});
    REQUIRE(inviting.step() == Inviting::Step::shown);
    Joining joining(world.newPhone(), world.clock);
    REQUIRE(joining.start(inviting.qrText()));
    const auto letThrough = [&] {
        for (const auto& answer : std::exchange(way.held, {}))
            answer();
    };
    for (int i = 0; i < 3; ++i) {
        joining.poll(world.courier, [] {});
        inviting.poll(way, [] {});
        letThrough();
    }
    REQUIRE(inviting.step() == Inviting::Step::compare);

    if (!good)
        world.courier.refuse = [](const mailbox::Request& request) { return isQuestion(request) ? 404 : 0; };
    inviting.poll(way, [] {});
    REQUIRE(way.held.size() == 1);
    inviting.refuse();
    REQUIRE(inviting.problem().has_value());
    const Error said = *inviting.problem();
    letThrough();
    CHECK(inviting.step() == Inviting::Step::failed);
    CHECK(inviting.hasDiffered());
    REQUIRE(inviting.problem().has_value());
    CHECK(*inviting.problem() == said);
}

TEST_CASE("an offer that nobody used is over after ten minutes, on all three sides", "[pairing]")
{
    Meeting meeting;
    Joining late(meeting.phone, meeting.world.clock);
    const std::string qr = meeting.inviting.qrText();
    const std::string typed = meeting.inviting.typedCode();
    meeting.world.clock.advance(10min + 1s);

    CHECK(late.start(qr).error().reason == Reason::expired);
    REQUIRE(late.start(typed, "hub.example"));
    late.poll(meeting.world.courier, [] {});
    CHECK(late.step() == Joining::Step::failed);
    CHECK(late.problem()->reason == Reason::expired);
    meeting.inviting.poll(meeting.world.courier, [] {});
    CHECK(meeting.inviting.step() == Inviting::Step::expired);
}

TEST_CASE("a typed code of another offer finds nothing, a mistyped one is refused at once", "[pairing]")
{
    Meeting meeting;
    Joining joining(meeting.phone, meeting.world.clock);
    std::string mistyped = meeting.inviting.typedCode();
    mistyped[0] = mistyped[0] == 'A' ? 'B' : 'A';

    CHECK(joining.start(mistyped, "hub.example").error().reason == Reason::malformed);
    CHECK(joining.start(meeting.inviting.typedCode()).error().reason == Reason::malformed);
    const auto other = pairing::toText({crypto::randomArray<4>(), crypto::randomArray<9>()});
    REQUIRE(joining.start(other, "hub.example"));
    joining.poll(meeting.world.courier, [] {});
    CHECK(joining.step() == Joining::Step::failed);
}

TEST_CASE("a hub that hands out another offer for a typed code is caught", "[pairing]")
{
    Meeting meeting;
    Joining joining(meeting.phone, meeting.world.clock);
    meeting.world.courier.tamper = [](const mailbox::Request& request, mailbox::Response& response) {
        if (request.path.starts_with("/v1/bundles/"))
            response.body[40] = response.body[40] == 'A' ? 'B' : 'A';
    };
    REQUIRE(joining.start(meeting.inviting.typedCode(), "hub.example"));

    joining.poll(meeting.world.courier, [] {});

    CHECK(joining.step() == Joining::Step::failed);
    CHECK(joining.problem()->reason == Reason::forged);
}

TEST_CASE("without a network joining waits and goes on where it was", "[pairing]")
{
    Meeting meeting;
    Joining joining(meeting.phone, meeting.world.clock);
    REQUIRE(joining.start(meeting.inviting.qrText()));
    meeting.world.courier.offline = true;
    meeting.poll(joining);
    CHECK(joining.step() == Joining::Step::enrolling);
    CHECK(joining.problem()->reason == Reason::unreachable);

    meeting.world.courier.offline = false;
    for (int i = 0; i < 3; ++i)
        meeting.poll(joining);
    CHECK(joining.step() == Joining::Step::compare);
    CHECK_FALSE(joining.problem());
}

TEST_CASE("an answer that was lost on the way does not use the offer up", "[pairing]")
{
    Meeting meeting;
    Joining joining(meeting.phone, meeting.world.clock);
    REQUIRE(joining.start(meeting.inviting.qrText()));
    bool lost = false;
    meeting.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response& response) {
        if (request.path.ends_with("/enrol") && !std::exchange(lost, true))
            response.status = 503;
    };
    for (int i = 0; i < 4; ++i)
        meeting.poll(joining);

    CHECK(lost);
    CHECK(joining.step() == Joining::Step::compare);
}

TEST_CASE("a number whose arrival the hub could not confirm is put again, and desk and phone show the same digits", "[pairing]")
{
    Meeting meeting;
    Joining joining(meeting.phone, meeting.world.clock);
    REQUIRE(joining.start(meeting.inviting.qrText()));
    int lost = 0;
    std::vector<bytes::Bytes> nonces;
    meeting.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response& response) {
        if (!request.path.ends_with("/nonce"))
            return;
        nonces.push_back(request.body);
        if (lost < 2) {
            ++lost;
            response = {503, {}, 2, response.hubTime};
        }
    };
    meeting.poll(joining);
    REQUIRE(lost == 1);
    CHECK(meeting.inviting.step() == Inviting::Step::shown);
    CHECK(meeting.inviting.problem()->reason == Reason::unreachable);
    for (int i = 0; i < 3; ++i)
        meeting.poll(joining);

    CHECK(nonces == std::vector<bytes::Bytes>(3, nonces.front()));
    REQUIRE(joining.step() == Joining::Step::compare);
    REQUIRE(meeting.inviting.step() == Inviting::Step::compare);
    CHECK_FALSE(meeting.inviting.problem());
    CHECK(meeting.inviting.confirmationNumber() == joining.confirmationNumber());
}

TEST_CASE("an alarm that came while the hub was slow to answer is not replaced by digits", "[pairing]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    SlowWay slow(world.courier, isNonce);
    Inviting inviting(world.desk, world.clock, course, triggers::defaultProtocol(), world.inDays(21));
    inviting.start(slow, [] {});
    REQUIRE(inviting.step() == Inviting::Step::shown);
    Joining first(world.newPhone(), world.clock), second(world.newPhone(), world.clock);
    REQUIRE(first.start(inviting.qrText()));
    REQUIRE(second.start(inviting.qrText()));
    first.poll(slow, [] {});
    inviting.poll(slow, [] {});
    REQUIRE(slow.held.size() == 1);
    // Nothing is put twice while the first is on its way.
    inviting.poll(slow, [] {});
    CHECK(slow.held.size() == 1);
    second.poll(slow, [] {});
    inviting.poll(slow, [] {});
    REQUIRE(inviting.step() == Inviting::Step::usedTwice);

    slow.held.front()();
    CHECK(inviting.step() == Inviting::Step::usedTwice);
    CHECK(inviting.confirmationNumber().empty());
    inviting.confirm(slow, [] {});
    CHECK(world.desk.vault().links()->empty());
}

TEST_CASE("a link signed by somebody else than the clinic is refused", "[pairing]")
{
    Meeting meeting;
    Joining joining(meeting.phone, meeting.world.clock);
    REQUIRE(joining.start(meeting.inviting.qrText()));
    for (int i = 0; i < 3; ++i)
        meeting.poll(joining);
    REQUIRE(joining.step() == Joining::Step::compare);
    const auto nonce = crypto::randomArray<16>();
    meeting.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response& response) {
        if (!request.path.ends_with("/answer"))
            return;
        const auto forger = crypto::SigningKey::generate();
        const auto link = crypto::sealTo(meeting.phone.vault().boxKey().publicKey(), pairing::signPatientLink({envelope::MailboxId{crypto::randomArray<16>()},
                                                    meeting.phone.vault().signingKey().publicKey(), forger.publicKey(), "X"},
                                                   forger));
        response.body = bytes::Writer().block(nonce).block(link).bytes();
    };

    joining.poll(meeting.world.courier, [] {});

    CHECK(joining.step() == Joining::Step::failed);
    CHECK(joining.problem()->reason == Reason::forged);
    CHECK_FALSE(meeting.phone.linked());
}

TEST_CASE("desk and diary that are moved while the hub answers finish their sync where they are", "[pairing][sync]")
{
    test::ClinicWorld world;
    patient::Diary& phone = world.join(world.treat());
    SlowWay way(world.courier, isAnything);
    const auto syncAndMove = [&](auto& who) {
        std::optional<sync::Report> report;
        who.syncNow(way, [&](const sync::Report& done) { report = done; });
        REQUIRE_FALSE(report.has_value());
        auto moved = std::move(who);
        while (!report) {
            REQUIRE_FALSE(way.held.empty());
            for (const auto& answer : std::exchange(way.held, {}))
                answer();
        }
        CHECK_FALSE(report->problem);
        who = std::move(moved);
    };
    syncAndMove(phone);
    syncAndMove(world.desk);
}

TEST_CASE("what reads a pairing code is no copy of another, which would take the link for it", "[pairing]")
{
    STATIC_REQUIRE_FALSE(std::is_copy_constructible_v<sync::Enrolling>);
    STATIC_REQUIRE_FALSE(std::is_copy_constructible_v<Joining>);
    STATIC_REQUIRE_FALSE(std::is_copy_constructible_v<desk::Applying>);
}
