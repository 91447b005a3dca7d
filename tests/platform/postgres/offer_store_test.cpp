// What every store promises of offers: the same case for the embedded one and for PostgreSQL.

#include "tests/platform/postgres/any_store.h"

using namespace ebbline;
using namespace ebbline::mailbox;
using namespace ebbline::test;
using namespace std::chrono_literals;

TEST_CASE("an offer is taken once, answered once and gone after its time", "[store]")
{
    AnyStore store(GENERATE(Kind::embedded, Kind::postgres));
    const ClinicInStore clinic(*store);
    StoredOffer offer;
    offer.id = {1, 2, 3};
    offer.clinic = clinic.clinic;
    offer.proof = crypto::randomArray<32>();
    offer.locator = {9, 9, 9, 9};
    offer.bundle = body("bundle");
    offer.bundleTag = crypto::randomArray<32>();
    offer.expires = noon + 10min;
    REQUIRE(store->putOffer(offer));
    CHECK(store->putOffer(offer));

    CHECK(store->takeOffer(offer.id, bytes::viewOf("request")));
    CHECK(store->takeOffer(offer.id, bytes::viewOf("request")));
    CHECK_FALSE(store->offer(offer.id)->usedTwice);
    CHECK(reasonOf(store->takeOffer(offer.id, bytes::viewOf("another"))) == Reason::alreadyExists);
    CHECK(reasonOf(store->takeOffer({7}, bytes::viewOf("request"))) == Reason::notFound);
    CHECK(store->answerOffer(offer.id, bytes::viewOf("first")));
    CHECK(store->answerOffer(offer.id, bytes::viewOf("first")));
    CHECK(reasonOf(store->answerOffer(offer.id, bytes::viewOf("second"))) == Reason::alreadyExists);
    CHECK(reasonOf(store->answerOffer({7}, bytes::viewOf("first"))) == Reason::notFound);

    store.reopen();
    const auto found = store->offerByLocator(offer.locator);
    REQUIRE(found);
    CHECK(found->id == offer.id);
    CHECK(found->clinic == offer.clinic);
    CHECK(found->proof == offer.proof);
    CHECK(found->bundle == offer.bundle);
    CHECK(found->bundleTag == offer.bundleTag);
    CHECK(found->expires == offer.expires);
    CHECK(found->request == body("request"));
    CHECK(found->usedTwice);
    CHECK(found->nonce == body("first"));
    CHECK(found->link.empty());
    const auto phone = deviceOf(clinic.clinic, Role::phone);
    REQUIRE(store->linkOffer(offer.id, bytes::viewOf("link"), {crypto::randomArray<16>()}, phone));
    CHECK(store->offer(offer.id)->link == body("link"));
    CHECK(store->device(phone.id));

    StoredOffer later = offer;
    later.id = {4};
    later.expires = noon + 20min;
    REQUIRE(store->putOffer(later));
    CHECK(store->offerByLocator(offer.locator)->id == later.id);
    REQUIRE(store->dropOffersBefore(noon + 15min));
    CHECK(store->offer(offer.id).error().reason == Reason::notFound);
    CHECK(store->offer(later.id));
    CHECK(store->offerByLocator({1, 1, 1, 1}).error().reason == Reason::notFound);
}
