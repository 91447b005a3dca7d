// Pairing: who may enrol, what both people compare, and what a photograph of the code is worth.

#include "core/pairing/handshake.h"

#include <catch2/catch_test_macros.hpp>

#include <set>

using namespace ebbline;
using namespace ebbline::pairing;

namespace {

struct Meeting {
    bool ready = crypto::initialise().has_value();
    crypto::SigningKey root = crypto::SigningKey::generate();
    crypto::BoxKey epoch = crypto::BoxKey::generate();
    crypto::SigningKey phone = crypto::SigningKey::generate();
    crypto::BoxKey phoneBox = crypto::BoxKey::generate();
    Offer offer;
    EnrolRequest request;

    Meeting()
    {
        offer.id = crypto::randomArray<8>();
        offer.secret = crypto::randomArray<16>();
        offer.clinicRoot = root.publicKey();
        offer.clinicEpoch = epoch.publicKey();
        request = {offer.id, phone.publicKey(), phoneBox.publicKey()};
    }
};

}  // namespace

TEST_CASE("the clinic opens an enrolment that knows the offer", "[pairing]")
{
    const Meeting meeting;
    const auto sealed = sealEnrolRequest(meeting.request, meeting.offer.secret, meeting.phone, meeting.epoch.publicKey());

    CHECK(openEnrolRequest(sealed, meeting.offer, meeting.epoch).value() == meeting.request);
}

TEST_CASE("without the offer's secret nobody enrols", "[pairing]")
{
    const Meeting meeting;
    const auto sealed =
        sealEnrolRequest(meeting.request, crypto::randomArray<16>(), meeting.phone, meeting.epoch.publicKey());

    CHECK(openEnrolRequest(sealed, meeting.offer, meeting.epoch).error().reason == Reason::forged);
}

TEST_CASE("keys that the sender does not hold are refused", "[pairing]")
{
    const Meeting meeting;
    const auto sealed = sealEnrolRequest(meeting.request, meeting.offer.secret, crypto::SigningKey::generate(),
                                         meeting.epoch.publicKey());

    CHECK(openEnrolRequest(sealed, meeting.offer, meeting.epoch).error().reason == Reason::forged);
}

TEST_CASE("an enrolment for another offer or clinic is refused", "[pairing]")
{
    const Meeting meeting;
    const Meeting other;
    const auto sealed = sealEnrolRequest(meeting.request, meeting.offer.secret, meeting.phone, meeting.epoch.publicKey());

    Offer changed = meeting.offer;
    changed.id[0] ^= 1;
    CHECK(openEnrolRequest(sealed, changed, meeting.epoch).error().reason == Reason::forged);
    CHECK(openEnrolRequest(sealed, meeting.offer, other.epoch).error().reason == Reason::wrongKey);
}

TEST_CASE("both sides compute the same six digits, and other keys give others", "[pairing]")
{
    const Meeting meeting;
    const auto nonce = crypto::randomArray<16>();
    const std::string number =
        confirmationNumber(meeting.phone.publicKey(), meeting.phoneBox.publicKey(), nonce);

    CHECK(number.size() == 6);
    CHECK(number.find_first_not_of("0123456789") == std::string::npos);
    CHECK(confirmationNumber(meeting.phone.publicKey(), meeting.phoneBox.publicKey(), nonce) == number);

    std::set<std::string> numbers;
    for (int i = 0; i < 200; ++i)
        numbers.insert(confirmationNumber(crypto::SigningKey::generate().publicKey(),
                                          meeting.phoneBox.publicKey(), nonce));
    CHECK(numbers.size() > 195);  // 200 of a million: a collision is rare, ten would be a fault
}

TEST_CASE("the signed link is read by whoever knows the clinic's root, and by nobody else", "[pairing]")
{
    const Meeting meeting;
    const PatientLink link{envelope::MailboxId{crypto::randomArray<16>()}, meeting.phone.publicKey(),
                           crypto::SigningKey::generate().publicKey(), "Practice on the Mole"};
    const auto text = signPatientLink(link, meeting.root);

    CHECK(openPatientLink(text, meeting.root.publicKey()).value() == link);
    CHECK(openPatientLink(text, meeting.phone.publicKey()).error().reason == Reason::forged);
    for (std::size_t i = 0; i < text.size(); ++i) {
        auto changed = text;
        changed[i] ^= 1;
        CAPTURE(i);
        REQUIRE_FALSE(openPatientLink(changed, meeting.root.publicKey()));
    }
    CHECK_FALSE(openPatientLink(bytes::View(text).first(10), meeting.root.publicKey()));
}
