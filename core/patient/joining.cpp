#include "core/patient/diary.h"

#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "core/sync/hub_client.h"

namespace ebbline::patient {

struct Joining::Inside {
    std::optional<pairing::TypedCode> typed;
    std::string hubForTyped;
    std::optional<pairing::Offer> offer;
    bytes::Bytes sealed;  ///< made once: a repeated attempt must be the same request
    std::optional<bytes::Array<16>> nonce;
    std::string number;
    std::string clinicName;
    bool asking = false;
};

Done Joining::start(std::string_view codeText, const std::string& hubForTypedCode)
{
    m_inside = std::make_shared<Inside>();
    m_problem.reset();
    m_step = Step::idle;
    if (codeText.starts_with("EBP1:")) {
        auto offer = pairing::fromQrText(codeText, m_clock.now());
        if (!offer)
            return fail(offer.error());
        m_inside->offer = std::move(*offer);
        m_step = Step::enrolling;
        return {};
    }
    auto typed = pairing::typedCodeFromText(codeText);
    if (!typed)
        return fail(typed.error());
    if (hubForTypedCode.empty())
        return fail(Reason::malformed, "hub: a typed code needs its address");
    m_inside->typed = *typed;
    m_inside->hubForTyped = hubForTypedCode;
    m_step = Step::fetching;
    return {};
}

std::string Joining::hub() const
{
    if (!m_inside)
        return {};
    return m_inside->offer ? m_inside->offer->hub : m_inside->hubForTyped;
}

bool Joining::tls() const { return !m_inside || !m_inside->offer || m_inside->offer->tls; }

bytes::Array<32> Joining::hubKeyHash() const
{
    return m_inside && m_inside->offer ? m_inside->offer->hubKeyHash : bytes::Array<32>{};
}

std::string Joining::confirmationNumber() const { return m_inside ? m_inside->number : std::string(); }
std::string Joining::clinicName() const { return m_inside ? m_inside->clinicName : std::string(); }

void Joining::failWith(const Error& error)
{
    m_problem = error;
    // Without a network nothing is lost: the next poll tries again.
    if (error.reason != Reason::unreachable && error.reason != Reason::tooSoon)
        m_step = Step::failed;
}

void Joining::poll(sync::Courier& courier, std::function<void()> changed)
{
    if (!m_inside || m_inside->asking)
        return;
    mailbox::Request request;
    switch (m_step) {
    case Step::fetching:
        request = {"GET", "/v1/bundles/" + bytes::toHex(m_inside->typed->locator), {}, {}, {}};
        break;
    case Step::enrolling: request = enrolRequest(); break;
    case Step::waitingForClinic:
    case Step::compare:
        request = {"POST", "/v1/offers/" + bytes::toHex(m_inside->offer->id) + "/answer", {},
                   bytes::Bytes(), {}};
        {
            const auto proof = pairing::offerProof(m_inside->offer->secret);
            request.body.assign(proof.begin(), proof.end());
        }
        break;
    default: return;
    }
    m_inside->asking = true;
    const std::weak_ptr<Inside> alive = m_inside;
    sync::HubClient::plainRequest(courier, request, [this, alive, changed = std::move(changed)](const auto& response) {
        const auto inside = alive.lock();
        if (!inside || inside != m_inside)
            return;
        inside->asking = false;
        if (!response)
            failWith(response.error().reason == Reason::refused
                         ? Error{Reason::expired, "offer: unknown to the hub, or over"}
                         : response.error());
        else
            take(response->body);
        changed();
    });
}

mailbox::Request Joining::enrolRequest()
{
    const pairing::Offer& offer = *m_inside->offer;
    if (m_inside->sealed.empty()) {
        vault::Vault& vault = m_diary.vault();
        m_inside->sealed = pairing::sealEnrolRequest(
            {offer.id, vault.signingKey().publicKey(), vault.boxKey().publicKey()}, offer.secret, vault.signingKey(),
            offer.clinicEpoch);
    }
    return {"POST", "/v1/offers/" + bytes::toHex(offer.id) + "/enrol", {},
            bytes::Writer().raw(pairing::offerProof(offer.secret)).block(m_inside->sealed).bytes(), {}};
}

void Joining::take(const bytes::Bytes& body)
{
    m_problem.reset();
    switch (m_step) {
    case Step::fetching: return takeBundle(body);
    case Step::enrolling: m_step = Step::waitingForClinic; return;
    default: return takeAnswer(body);
    }
}

void Joining::takeBundle(const bytes::Bytes& body)
{
    bytes::Reader reader(body);
    const bytes::View bundle = reader.block(512);
    const auto tag = reader.array<32>();
    const auto secrets = pairing::secretsOf(*m_inside->typed);
    if (!reader.atEnd() || !secrets || !crypto::equal(tag, pairing::bundleTag(*secrets, bundle)))
        return failWith({Reason::forged, "bundle: it does not belong to this code"});
    auto offer = pairing::fromQrText(std::string(bundle.begin(), bundle.end()), m_clock.now());
    if (!offer)
        return failWith(offer.error());
    offer->secret = secrets->offerSecret;
    m_inside->offer = std::move(*offer);
    m_step = Step::enrolling;
}

void Joining::takeAnswer(const bytes::Bytes& body)
{
    bytes::Reader reader(body);
    const bytes::View nonce = reader.block(16);
    const bytes::View link = reader.block(1024);
    if (!reader.atEnd() || (!nonce.empty() && nonce.size() != 16))
        return failWith({Reason::malformed, "answer: lengths do not add up"});
    const vault::Vault& vault = m_diary.vault();
    if (!nonce.empty() && !m_inside->nonce) {
        bytes::Array<16> value;
        std::copy(nonce.begin(), nonce.end(), value.begin());
        m_inside->nonce = value;
        m_inside->number =
            pairing::confirmationNumber(vault.signingKey().publicKey(), vault.boxKey().publicKey(), value);
        m_step = Step::compare;
    }
    if (link.empty() || !m_inside->nonce)
        return;
    const pairing::Offer& offer = *m_inside->offer;
    const auto unsealed = crypto::openSealed(vault.boxKey(), link);
    if (!unsealed)
        return failWith(unsealed.error());
    const auto opened = pairing::openPatientLink(*unsealed, offer.clinicRoot);
    if (!opened)
        return failWith(opened.error());
    if (opened->phone != vault.signingKey().publicKey())
        return failWith({Reason::forged, "link: it is for another phone"});
    m_inside->clinicName = opened->clinicName;
    const std::string address = (offer.tls ? "https://" : "http://") + offer.hub;
    const Done stored = m_diary.vault().putLink({opened->mailbox, {}, opened->desk, offer.clinicEpoch, offer.clinicRoot,
                                                 offer.epoch, address, offer.hubKeyHash});
    if (!stored)
        return failWith(stored.error());
    m_step = Step::linked;
}

}  // namespace ebbline::patient
