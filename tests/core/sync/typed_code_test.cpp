// A typed code knows no key of the hub: what is asked of whom before and after its bundle brought one.

#include "core/bytes/text.h"
#include "core/sync/enrolment_way.h"
#include "tests/core/desk/clinic_world.h"

#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;
using patient::Joining;

namespace {

struct Sent {
    bytes::Array<32> pinned{};  ///< of the courier
    mailbox::Request request;
};

/// To a hub that shows this key, whatever the courier is pinned to.
class ShowingCourier final : public sync::Courier {
public:
    ShowingCourier(sync::Courier& hub, const bytes::Array<32>& shown, const bytes::Array<32>& pinned, std::vector<Sent>& sent)
        : m_hub(hub), m_shown(shown), m_pinned(pinned), m_sent(sent)
    {
    }
    void send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer) override
    {
        m_sent.push_back({m_pinned, request});
        m_hub.send(request, std::move(answer));
    }
    void fetchUnvouched(const std::string& path,
                        std::function<void(Result<mailbox::Response>, const bytes::Array<32>& met)> answer) override
    {
        if (status != 0)
            return answer(mailbox::Response{status, {}, 3600, {}}, m_shown);
        send({"GET", path, {}, {}, {}}, [this, answer](Result<mailbox::Response> response) { answer(std::move(response), m_shown); });
    }

    int status = 0;  ///< with which somebody answers the fetch; 0: the hub does

private:
    sync::Courier& m_hub;
    bytes::Array<32> m_shown, m_pinned;
    std::vector<Sent>& m_sent;
};

struct Typing {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat();
    bytes::Array<32> clinicsKey = crypto::randomArray<32>();
    bytes::Array<32> shown = clinicsKey;
    std::vector<Sent> sent;
    sync::EnrolmentWay way{[this](const pairing::HubAddress&, const bytes::Array<32>& key) {
        return std::make_unique<ShowingCourier>(world.courier, shown, key, sent);
    }};
    desk::Inviting inviting{world.desk, world.clock, course, triggers::defaultProtocol(), world.inDays(21)};
    Joining joining{world.newPhone(), world.clock};

    void begin(const bytes::Array<32>& named)
    {
        REQUIRE(world.desk.setHub("hub.example", true, named));
        inviting.start(world.courier, [] {});
        REQUIRE(inviting.step() == desk::Inviting::Step::shown);
        REQUIRE(joining.start(inviting.typedCode(), "hub.example"));
    }
    void poll(int times)
    {
        for (int i = 0; i < times; ++i) {
            joining.poll(*way.to({joining.hub(), joining.tls()}, joining.hubKeyHash()), [] {});
            inviting.poll(world.courier, [] {});
        }
    }
};

}  // namespace

TEST_CASE("a typed code asks whoever answers for its bundle alone, and goes on pinned to the key that the bundle names", "[pairing][typed]")
{
    Typing typing;
    typing.begin(typing.clinicsKey);

    typing.poll(4);

    REQUIRE(typing.joining.step() == Joining::Step::compare);
    const auto code = pairing::typedCodeFromText(typing.inviting.typedCode());
    REQUIRE(code);
    REQUIRE(typing.sent.size() > 1);
    const Sent& first = typing.sent.front();
    CHECK(first.pinned == bytes::Array<32>{});
    CHECK(first.request.method == "GET");
    CHECK(first.request.path == "/v1/bundles/" + bytes::toHex(code->locator));  // four bytes that the hub knows anyway
    CHECK(first.request.query.empty());
    CHECK(first.request.body.empty());
    CHECK(first.request.authorisation.empty());
    for (std::size_t i = 1; i < typing.sent.size(); ++i)
        CHECK(typing.sent[i].pinned == typing.clinicsKey);
}

TEST_CASE("a genuine bundle that came by way of another key ends as forged, and nothing is enrolled", "[pairing][typed]")
{
    Typing typing;
    typing.shown = crypto::randomArray<32>();
    typing.begin(typing.clinicsKey);

    typing.poll(3);

    CHECK(typing.joining.step() == Joining::Step::failed);
    REQUIRE(typing.joining.problem());
    CHECK(typing.joining.problem()->reason == Reason::forged);
    CHECK(typing.sent.size() == 1);
    CHECK(typing.inviting.step() == desk::Inviting::Step::shown);
}

TEST_CASE("a bundle that names no key leaves it to the authorities who is asked further", "[pairing][typed]")
{
    Typing typing;
    typing.begin({});

    typing.poll(4);

    CHECK(typing.joining.step() == Joining::Step::compare);
    for (const Sent& sent : typing.sent)
        CHECK(sent.pinned == bytes::Array<32>{});
}

TEST_CASE("whoever answers the fetch chooses no words: it is none, it is asked again, or it is forged", "[pairing][typed]")
{
    const auto [status, step, reason] = GENERATE(table<int, Joining::Step, Reason>({
        {302, Joining::Step::failed, Reason::forged}, {401, Joining::Step::failed, Reason::forged}, {409, Joining::Step::failed, Reason::forged},
        {413, Joining::Step::failed, Reason::forged}, {404, Joining::Step::failed, Reason::expired},
        {429, Joining::Step::fetching, Reason::unreachable}, {503, Joining::Step::fetching, Reason::unreachable}, {507, Joining::Step::fetching, Reason::unreachable}}));
    Typing typing;
    typing.begin(typing.clinicsKey);
    ShowingCourier anybody(typing.world.courier, typing.shown, {}, typing.sent);
    anybody.status = status;

    typing.joining.poll(anybody, [] {});

    CAPTURE(status);
    CHECK(typing.joining.step() == step);
    REQUIRE(typing.joining.problem());
    CHECK(typing.joining.problem()->reason == reason);
}
