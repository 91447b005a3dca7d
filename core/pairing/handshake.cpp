#include "core/pairing/handshake.h"

#include "core/bytes/reader.h"
#include "core/pairing/statement.h"

#include <cstdio>

namespace ebbline::pairing {

namespace {

constexpr std::size_t maximumClinicName = 120;

bytes::Bytes transcript(const EnrolRequest& request)
{
    return bytes::Writer()
        .raw(bytes::viewOf("EB-enrol-v1"))
        .raw(request.offer)
        .raw(request.signing.value)
        .raw(request.box.value)
        .bytes();
}

}  // namespace

bytes::Bytes sealEnrolRequest(const EnrolRequest& request, const bytes::Array<16>& secret,
                              const crypto::SigningKey& key, const crypto::BoxPublicKey& clinicEpoch)
{
    const bytes::Bytes text = transcript(request);
    const auto proof = crypto::keyedHash256(secret, text);
    bytes::Writer body;
    body.u8(1).raw(request.offer).raw(request.signing.value).raw(request.box.value).raw(proof);
    body.raw(key.sign(text));
    return crypto::sealTo(clinicEpoch, body.bytes());
}

Result<EnrolRequest> openEnrolRequest(bytes::View sealed, const Offer& offer, const crypto::BoxKey& clinicEpoch)
{
    const Result<bytes::Bytes> body = crypto::openSealed(clinicEpoch, sealed);
    if (!body)
        return fail(Reason::wrongKey, "enrolment: not sealed to this clinic");
    bytes::Reader reader(*body);
    if (reader.u8() != 1)
        return fail(Reason::unsupported, "enrolment: made by a newer program");
    EnrolRequest request;
    request.offer = reader.array<8>();
    request.signing.value = reader.array<32>();
    request.box.value = reader.array<32>();
    const auto proof = reader.array<32>();
    const auto signature = reader.array<64>();
    if (!reader.atEnd())
        return fail(Reason::malformed, "enrolment: lengths do not add up");
    const bytes::Bytes text = transcript(request);
    if (request.offer != offer.id || !crypto::equal(proof, crypto::keyedHash256(offer.secret, text)))
        return fail(Reason::forged, "enrolment: it does not prove to know the offer");
    if (!crypto::verify(request.signing, text, signature))
        return fail(Reason::forged, "enrolment: the signature does not hold");
    return request;
}

bytes::Array<32> offerProof(const bytes::Array<16>& secret)
{
    return crypto::hash256(bytes::Writer().raw(bytes::viewOf("EB-offer")).raw(secret).bytes());
}

std::string confirmationNumber(const crypto::SigningPublicKey& signing, const crypto::BoxPublicKey& box,
                               const bytes::Array<16>& nonce)
{
    const auto hash = crypto::hash256(
        bytes::Writer().raw(bytes::viewOf("EB-sas-v1")).raw(signing.value).raw(box.value).raw(nonce).bytes());
    bytes::Reader reader(hash);
    char digits[8];
    std::snprintf(digits, sizeof digits, "%06u", static_cast<unsigned>(reader.u64() % 1'000'000));
    return digits;
}

bytes::Bytes signPatientLink(const PatientLink& link, const crypto::SigningKey& root)
{
    bytes::Writer body;
    body.raw(bytes::viewOf("EBL1")).raw(link.mailbox.view()).raw(link.phone.value).raw(link.desk.value);
    body.block(bytes::viewOf(link.clinicName));
    const auto signature = root.sign(statementText(body.bytes()));
    return std::move(body.raw(signature)).bytes();
}

Result<PatientLink> openPatientLink(bytes::View signedLink, const crypto::SigningPublicKey& root)
{
    if (signedLink.size() < 64)
        return fail(Reason::malformed, "link: cut short");
    const bytes::View body = signedLink.first(signedLink.size() - 64);
    bytes::Reader tail(signedLink.last(64));
    if (!crypto::verify(root, statementText(body), tail.array<64>()))
        return fail(Reason::forged, "link: not signed by this clinic");

    bytes::Reader reader(body);
    const bytes::View mark = reader.take(4);
    PatientLink link;
    link.mailbox = reader.id<envelope::MailboxTag>();
    link.phone.value = reader.array<32>();
    link.desk.value = reader.array<32>();
    const bytes::View name = reader.block(maximumClinicName);
    link.clinicName.assign(name.begin(), name.end());
    constexpr std::string_view wanted = "EBL1";
    if (!reader.atEnd() || !std::equal(mark.begin(), mark.end(), wanted.begin(), wanted.end()))
        return fail(Reason::malformed, "link: lengths do not add up");
    return link;
}

bytes::Bytes signDeskLink(const DeskLink& link, const crypto::SigningKey& root)
{
    bytes::Writer body;
    body.raw(bytes::viewOf("EBD1")).raw(link.mailbox.view()).raw(link.newDesk.value).raw(link.desk.value);
    body.raw(link.box.value).u32(link.epoch).raw(link.epochKey.secret()).block(link.rootSeed);
    const auto signature = root.sign(statementText(body.bytes()));
    return std::move(body.raw(signature)).bytes();
}

Result<DeskLink> openDeskLink(bytes::View signedLink, const crypto::SigningPublicKey& root)
{
    if (signedLink.size() < 64)
        return fail(Reason::malformed, "desk link: cut short");
    const bytes::View body = signedLink.first(signedLink.size() - 64);
    bytes::Reader tail(signedLink.last(64));
    if (!crypto::verify(root, statementText(body), tail.array<64>()))
        return fail(Reason::forged, "desk link: not signed by this clinic");
    bytes::Reader reader(body);
    const bytes::View mark = reader.take(4);
    const auto mailbox = reader.id<envelope::MailboxTag>();
    const crypto::SigningPublicKey newDesk{reader.array<32>()};
    const crypto::SigningPublicKey desk{reader.array<32>()};
    const crypto::BoxPublicKey box{reader.array<32>()};
    const std::uint32_t epoch = reader.u32();
    const bytes::View secret = reader.take(32);
    const bytes::View seed = reader.block(32);
    constexpr std::string_view wanted = "EBD1";
    if (!reader.atEnd() || epoch == 0 || (!seed.empty() && seed.size() != 32)
        || !std::equal(mark.begin(), mark.end(), wanted.begin(), wanted.end()))
        return fail(Reason::malformed, "desk link: lengths do not add up");
    return DeskLink{mailbox, newDesk, desk, box, epoch, crypto::BoxKey::fromSecret(secret), {seed.begin(), seed.end()}};
}

}  // namespace ebbline::pairing
