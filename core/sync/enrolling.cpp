#include "core/sync/enrolling.h"

#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "core/pairing/hub_address.h"
#include "core/sync/hub_client.h"

namespace ebbline::sync {

struct Enrolling::Inside {
    Inside(const vault::Vault& own, const clock::Clock& source, pairing::Purpose why, TakeLink take)
        : vault(own), clock(source), purpose(why), takeLink(std::move(take))
    {
    }

    const vault::Vault& vault;
    const clock::Clock& clock;
    pairing::Purpose purpose;
    TakeLink takeLink;
    Step step = Step::idle;
    std::optional<Error> problem;
    std::optional<pairing::TypedCode> typed;
    pairing::HubAddress hubForTyped;
    std::optional<pairing::Offer> offer;
    bytes::Bytes sealed;  ///< made once: a repeated attempt must be the same request
    std::optional<bytes::Array<16>> nonce;
    std::string number;
    bytes::Array<32> met{};  ///< key of the hub that the bundle came from, zeros without TLS
    bool asking = false;

    void failWith(const Error& error)
    {
        problem = error;
        // Without a network nothing is lost: the next poll tries again.
        if (error.reason != Reason::unreachable && error.reason != Reason::tooSoon)
            step = Step::failed;
    }

    Done keepOffer(pairing::Offer&& read)
    {
        if (read.purpose != purpose)
            return fail(Reason::refused, "pairing code: it is for a device of another kind");
        if (const Done way = pairing::checkWay({read.hub, read.tls}); !way)
            return way;
        offer = std::move(read);
        step = Step::enrolling;
        return {};
    }

    mailbox::Request enrolRequest()
    {
        if (sealed.empty())
            sealed = pairing::sealEnrolRequest({offer->id, vault.signingKey().publicKey(), vault.boxKey().publicKey()},
                                               offer->secret, vault.signingKey(), offer->clinicEpoch);
        return {"POST", "/v1/offers/" + bytes::toHex(offer->id) + "/enrol", {},
                bytes::Writer().raw(pairing::offerProof(offer->secret)).block(sealed).bytes(), {}};
    }

    void take(const bytes::Bytes& body)
    {
        problem.reset();
        switch (step) {
        case Step::fetching: return takeBundle(body);
        case Step::enrolling: step = Step::waitingForClinic; return;
        default: return takeAnswer(body);
        }
    }

    void takeBundle(const bytes::Bytes& body)
    {
        bytes::Reader reader(body);
        const bytes::View bundle = reader.block(512);
        const auto tag = reader.array<32>();
        const auto secrets = pairing::secretsOf(*typed);
        if (!reader.atEnd() || !secrets || !crypto::equal(tag, pairing::bundleTag(*secrets, bundle)))
            return failWith({Reason::forged, "bundle: it does not belong to this code"});
        auto read = pairing::fromQrText(std::string(bundle.begin(), bundle.end()), clock.now());
        if (!read)
            return failWith(read.error());
        // Somebody between passed the bundle on: it is genuine, and the way is not.
        const bool keyIsNamed = read->hubKeyHash != bytes::Array<32>{};
        if (keyIsNamed && met != bytes::Array<32>{} && !crypto::equal(met, read->hubKeyHash))
            return failWith({Reason::forged, "hub: its key is not the one that the bundle names"});
        read->secret = secrets->offerSecret;
        if (const Done kept = keepOffer(std::move(*read)); !kept)
            failWith(kept.error());
    }

    void takeAnswer(const bytes::Bytes& body)
    {
        bytes::Reader reader(body);
        const bytes::View fresh = reader.block(16);
        const bytes::View link = reader.block(1024);
        if (!reader.atEnd() || (!fresh.empty() && fresh.size() != 16))
            return failWith({Reason::malformed, "answer: lengths do not add up"});
        if (!fresh.empty() && !nonce) {
            nonce.emplace();
            std::copy(fresh.begin(), fresh.end(), nonce->begin());
            number = pairing::confirmationNumber(vault.signingKey().publicKey(), vault.boxKey().publicKey(), *nonce);
            step = Step::compare;
        }
        if (link.empty() || !nonce)
            return;
        auto unsealed = crypto::openSealed(vault.boxKey(), link);
        if (!unsealed)
            return failWith(unsealed.error());
        const Done taken = takeLink(*offer, *unsealed);
        crypto::wipe(*unsealed);
        if (!taken)
            return failWith(taken.error());
        step = Step::linked;
    }
};

Enrolling::Enrolling(const vault::Vault& vault, const clock::Clock& clock, pairing::Purpose purpose, TakeLink takeLink)
    : m_inside(std::make_shared<Inside>(vault, clock, purpose, std::move(takeLink)))
{
}

namespace {

/// Anybody may have answered: no status of theirs chooses what the person is told, beyond that there is no such bundle or
/// that it is to be asked for again.
Result<mailbox::Response> fetched(Result<mailbox::Response> response)
{
    if (!response || response->status == 404 || (response->status >= 200 && response->status < 300))
        return judged(std::move(response));
    if (response->status == 429 || response->status >= 500)
        return fail(Reason::unreachable, "bundle: status " + std::to_string(response->status));
    return fail(Reason::forged, "bundle: status " + std::to_string(response->status));
}

}  // namespace

Done Enrolling::start(std::string_view codeText, const std::string& hubForTypedCode)
{
    // What an earlier code still asks for comes back to nobody.
    m_inside = std::make_shared<Inside>(m_inside->vault, m_inside->clock, m_inside->purpose, m_inside->takeLink);
    if (codeText.starts_with("EBP1:")) {
        auto offer = pairing::fromQrText(codeText, m_inside->clock.now());
        return offer ? m_inside->keepOffer(std::move(*offer)) : Done(fail(offer.error()));
    }
    auto typed = pairing::typedCodeFromText(codeText);
    if (!typed)
        return fail(typed.error());
    pairing::HubAddress address = pairing::hubAddressFromText(hubForTypedCode);
    if (address.host.empty())
        return fail(Reason::malformed, "hub: a typed code needs its address");
    if (const Done way = pairing::checkWay(address); !way)
        return way;
    m_inside->typed = *typed;
    m_inside->hubForTyped = std::move(address);
    m_inside->step = Step::fetching;
    return {};
}

std::string Enrolling::hub() const { return m_inside->offer ? m_inside->offer->hub : m_inside->hubForTyped.host; }
bool Enrolling::tls() const { return m_inside->offer ? m_inside->offer->tls : m_inside->hubForTyped.tls; }
bytes::Array<32> Enrolling::hubKeyHash() const { return m_inside->offer ? m_inside->offer->hubKeyHash : bytes::Array<32>{}; }
Enrolling::Step Enrolling::step() const { return m_inside->step; }
std::string Enrolling::confirmationNumber() const { return m_inside->number; }
const std::optional<Error>& Enrolling::problem() const { return m_inside->problem; }

void Enrolling::poll(Courier& courier, std::function<void()> changed)
{
    if (m_inside->asking)
        return;
    const std::weak_ptr<Inside> alive = m_inside;
    auto answered = [alive, changed = std::move(changed)](const Result<mailbox::Response>& response) {
        const auto inside = alive.lock();
        if (!inside)
            return;
        inside->asking = false;
        if (!response)
            inside->failWith(response.error().reason == Reason::refused
                                 ? Error{Reason::expired, "offer: unknown to the hub, or over"}
                                 : response.error());
        else
            inside->take(response->body);
        changed();
    };
    mailbox::Request request;
    switch (m_inside->step) {
    case Step::fetching:
        m_inside->asking = true;
        return courier.fetchUnvouched("/v1/bundles/" + bytes::toHex(m_inside->typed->locator),
                                      [alive, answered = std::move(answered)](Result<mailbox::Response> response, const bytes::Array<32>& met) {
                                          if (const auto inside = alive.lock())
                                              inside->met = met;
                                          answered(fetched(std::move(response)));
                                      });
    case Step::enrolling: request = m_inside->enrolRequest(); break;
    case Step::waitingForClinic:
    case Step::compare: {
        const auto proof = pairing::offerProof(m_inside->offer->secret);
        request = {"POST", "/v1/offers/" + bytes::toHex(m_inside->offer->id) + "/answer", {}, {proof.begin(), proof.end()}, {}};
        break;
    }
    default: return;
    }
    m_inside->asking = true;
    HubClient::plainRequest(courier, request, std::move(answered));
}

}  // namespace ebbline::sync
