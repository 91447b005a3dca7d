// Desks and offers: how two devices that have never met find each other through the hub.

#include "core/mailbox/call.h"

namespace ebbline::mailbox {

namespace {

constexpr std::size_t maximumBundle = 512;
constexpr std::size_t maximumEnrolment = 1024;
constexpr std::size_t maximumLink = 1024;

std::optional<OfferId> offerIn(std::string_view text)
{
    return hexPart<8>(text);
}

}  // namespace

/// version 1 | root key 32 | desk key 32 | signature by the root over "EB-DESK-v1" and both keys.
Response Service::registerDesk(Call& call)
{
    bytes::Reader reader(call.request.body);
    const std::uint8_t version = reader.u8();
    crypto::SigningPublicKey root, desk;
    root.value = reader.array<32>();
    desk.value = reader.array<32>();
    const auto signature = reader.array<64>();
    if (!reader.atEnd() || version != 1)
        return answer(400);
    const bytes::Bytes text =
        bytes::Writer().raw(bytes::viewOf("EB-DESK-v1")).raw(root.value).raw(desk.value).bytes();
    const Result<std::int64_t> clinic = m_store.clinicOf(root);
    if (!clinic && clinic.error().reason != Reason::notFound)
        return answerFor(clinic.error());
    if (!clinic)
        return refuse(call, 401, "clinic not admitted");
    if (!crypto::verify(root, text, signature))
        return refuse(call, 401, "root signature");
    return answerFor(m_store.putDevice({envelope::deviceIdOf(desk), desk, Role::desk, *clinic, false}));
}

/// id 8 | proof 32 | locator 4 | bundle (length, bytes) | tag 32. The hub's own clock ends it.
Response Service::putOffer(Call& call, const Device& device)
{
    bytes::Reader reader(call.request.body);
    StoredOffer offer;
    offer.id = reader.array<8>();
    offer.proof = reader.array<32>();
    offer.locator = reader.array<4>();
    const bytes::View bundleBytes = reader.block(maximumBundle);
    offer.bundle.assign(bundleBytes.begin(), bundleBytes.end());
    offer.bundleTag = reader.array<32>();
    if (!reader.atEnd())
        return answer(400);
    offer.clinic = device.clinic;
    offer.expires = call.now + m_limits.offerLifetime;
    return answerFor(m_store.putOffer(offer));
}

Response Service::bundle(Call& call)
{
    if (const std::int64_t wait = m_enrolments.take(call.address, call.now); wait > 0) {
        Response limited = answer(429);
        limited.retryAfterSeconds = wait;
        return limited;
    }
    const auto locator = hexPart<4>(call.parts[1]);
    if (!locator)
        return answer(400);
    const Result<StoredOffer> offer = m_store.offerByLocator(*locator);
    if (!offer || offer->expires <= call.now)
        return noOffer(call, offer);
    return answer(200, bytes::Writer().block(offer->bundle).raw(offer->bundleTag).bytes());
}

/// One that is unknown, over or asked for by somebody else; or a store that cannot say.
Response Service::noOffer(Call& call, const Result<StoredOffer>& offer)
{
    if (!offer && offer.error().reason != Reason::notFound)
        return answerFor(offer.error());
    return refuse(call, 404, "no such offer");
}

/// proof 32 | sealed request (length, bytes). Once.
Response Service::enrol(Call& call)
{
    if (const std::int64_t wait = m_enrolments.take(call.address, call.now); wait > 0) {
        Response limited = answer(429);
        limited.retryAfterSeconds = wait;
        return limited;
    }
    const auto id = offerIn(call.parts[1]);
    bytes::Reader reader(call.request.body);
    const auto proof = reader.array<32>();
    const bytes::View sealed = reader.block(maximumEnrolment);
    if (!id || !reader.atEnd() || sealed.empty())
        return answer(400);
    const Result<StoredOffer> offer = m_store.offer(*id);
    if (!offer || offer->expires <= call.now || !crypto::equal(offer->proof, proof))
        return noOffer(call, offer);
    const Done taken = m_store.takeOffer(*id, sealed);
    if (!taken && taken.error().reason == Reason::alreadyExists)
        call.refused = "offer used before";
    return answerFor(taken);
}

Result<StoredOffer> Service::ownOffer(const Call& call, const Device& device)
{
    const auto id = offerIn(call.parts[1]);
    if (!id)
        return fail(Reason::malformed, "offer: not an id");
    Result<StoredOffer> offer = m_store.offer(*id);
    if (offer && offer->clinic != device.clinic)
        return fail(Reason::notFound, "offer: unknown");
    return offer;
}

/// used twice 1 | sealed request (length, bytes; empty while nobody came).
Response Service::enrolment(Call& call, const Device& device)
{
    const Result<StoredOffer> offer = ownOffer(call, device);
    if (!offer)
        return answerFor(offer.error());
    return answer(200, bytes::Writer().u8(offer->usedTwice ? 1 : 0).block(offer->request).bytes());
}

Response Service::answerOffer(Call& call, const Device& device)
{
    const Result<StoredOffer> offer = ownOffer(call, device);
    if (!offer)
        return answerFor(offer.error());
    // The nonce comes after the phone's keys, or the six digits would prove nothing.
    if (call.request.body.size() != 16 || offer->request.empty())
        return answer(400);
    return answerFor(m_store.answerOffer(offer->id, call.request.body));
}

/// mailbox 16 | phone key 32 | signed link (length, bytes).
Response Service::linkOffer(Call& call, const Device& device)
{
    const Result<StoredOffer> offer = ownOffer(call, device);
    if (!offer)
        return answerFor(offer.error());
    bytes::Reader reader(call.request.body);
    const auto mailbox = reader.id<envelope::MailboxTag>();
    crypto::SigningPublicKey phone;
    phone.value = reader.array<32>();
    const bytes::View link = reader.block(maximumLink);
    if (!reader.atEnd() || mailbox.isNull() || link.empty() || offer->nonce.empty())
        return answer(400);
    return answerFor(m_store.linkOffer(offer->id, link, mailbox,
                                       {envelope::deviceIdOf(phone), phone, Role::phone, device.clinic, false}));
}

/// For the phone: proof 32 in; nonce (length, bytes) | link (length, bytes) out, empty while waiting.
Response Service::offerAnswer(Call& call)
{
    const auto id = offerIn(call.parts[1]);
    bytes::Reader reader(call.request.body);
    const auto proof = reader.array<32>();
    if (!id || !reader.atEnd())
        return answer(400);
    const Result<StoredOffer> offer = m_store.offer(*id);
    if (!offer || !crypto::equal(offer->proof, proof))
        return noOffer(call, offer);
    return answer(200, bytes::Writer().block(offer->nonce).block(offer->link).bytes());
}

}  // namespace ebbline::mailbox
