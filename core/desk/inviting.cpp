#include "core/desk/inviting_inside.h"

#include "core/aftercare/visit.h"
#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "core/sync/hub_client.h"

namespace ebbline::desk {

namespace {

/// A desk's key under the root's signature, as a hub wants it.
mailbox::Request announcement(const vault::Vault& vault, const crypto::SigningPublicKey& desk)
{
    const auto& root = vault.clinicRoot();
    const bytes::Bytes text =
        bytes::Writer().raw(bytes::viewOf("EB-DESK-v1")).raw(root.publicKey().value).raw(desk.value).bytes();
    return {"POST", "/v1/desks", {},
            bytes::Writer().u8(1).raw(root.publicKey().value).raw(desk.value).raw(root.sign(text)).bytes(), {}};
}

}  // namespace

Inviting::Inviting(Desk& desk, const clock::Clock& clock, const recovery::CourseId& course,
                   const triggers::Protocol& protocol, const clock::Moment& followUp, OldPhone old)
    : m_desk(desk), m_clock(clock), m_inside(std::make_shared<Inside>())
{
    m_inside->course = course;
    m_inside->protocol = protocol;
    m_inside->followUp = followUp;
    m_inside->old = old;
}

Inviting::Inviting(Desk& desk, const clock::Clock& clock, NewDesk kind)
    : m_desk(desk), m_clock(clock), m_inside(std::make_shared<Inside>())
{
    m_inside->newDesk = kind;
}

void Inviting::failWith(const Error& error)
{
    m_problem = error;
    if (error.reason != Reason::unreachable && error.reason != Reason::tooSoon)
        m_step = Step::failed;
}

std::string Inviting::qrText() const { return m_step == Step::idle ? std::string() : pairing::toQrText(m_inside->offer); }
std::string Inviting::typedCode() const { return m_step == Step::idle ? std::string() : pairing::toText(m_inside->typed); }
std::string Inviting::confirmationNumber() const { return m_inside->number; }

std::int64_t Inviting::secondsLeft() const
{
    const auto left = std::chrono::duration_cast<std::chrono::seconds>(m_inside->offer.expires - m_clock.now()).count();
    return std::max<std::int64_t>(0, left);
}

void Inviting::start(sync::Courier& courier, std::function<void()> changed)
{
    const auto hub = m_desk.hub();
    if (!hub) {
        failWith({Reason::invalidState, "hub: none is set"});
        return changed();
    }
    if (const Done may = m_desk.m_inside->needsRoot(); !may) {
        failWith(may.error());
        return changed();
    }
    if (const Done may = mayInvite(); !may) {
        failWith(may.error());
        return changed();
    }
    if (const auto summary = m_desk.summary(m_inside->course); summary) {
        if (const Done when = aftercare::check(aftercare::visitOf(m_inside->followUp), summary->treated); !when) {
            failWith(when.error());
            return changed();
        }
    }
    vault::Vault& vault = m_desk.vault();
    Inside& inside = *m_inside;
    inside.hub = std::make_shared<sync::HubClient>(courier, vault.signingKey(), m_clock);
    inside.typed = {crypto::randomArray<4>(), crypto::randomArray<9>()};
    const auto secrets = pairing::secretsOf(inside.typed);
    if (!secrets) {
        failWith(secrets.error());
        return changed();
    }
    inside.offer.tls = hub->tls;
    inside.offer.purpose = inside.newDesk ? pairing::Purpose::desk : pairing::Purpose::phone;
    inside.offer.epoch = vault.epochNumber();
    inside.offer.expires = std::chrono::floor<std::chrono::seconds>(m_clock.now()) + pairing::offerLifetime;
    inside.offer.id = crypto::randomArray<8>();
    inside.offer.secret = secrets->offerSecret;
    inside.offer.clinicRoot = vault.clinicRoot().publicKey();
    inside.offer.clinicEpoch = vault.clinicEpoch().publicKey();
    inside.offer.hubKeyHash = hub->keyHash;
    inside.offer.hub = hub->host;
    m_step = Step::publishing;

    // The desk makes itself known first; the hub takes it as often as it comes.
    const mailbox::Request known = announcement(vault, vault.signingKey().publicKey());
    const std::weak_ptr<Inside> alive = m_inside;
    inside.courier = &courier;
    sync::HubClient::plainRequest(courier, known,
                                  [this, alive, changed = std::move(changed)](const auto& response) {
                                      if (alive.expired() || isOver())
                                          return;
                                      if (!response) {
                                          m_clinicUnknown = sync::isUnknownThere(response.error());
                                          failWith(response.error());
                                          changed();
                                          return;
                                      }
                                      publish(changed);
                                  });
}

void Inviting::publish(std::function<void()> changed)
{
    Inside& inside = *m_inside;
    pairing::Offer open = inside.offer;
    open.secret = {};
    const std::string bundle = pairing::toQrText(open);
    const auto secrets = pairing::secretsOf(inside.typed);
    if (!secrets) {
        failWith(secrets.error());
        return changed();
    }
    const bytes::Bytes body = bytes::Writer()
                                  .raw(inside.offer.id)
                                  .raw(pairing::offerProof(inside.offer.secret))
                                  .raw(inside.typed.locator)
                                  .block(bytes::viewOf(bundle))
                                  .raw(pairing::bundleTag(*secrets, bytes::viewOf(bundle)))
                                  .bytes();
    const std::weak_ptr<Inside> alive = m_inside;
    inside.hub->signedRequest({"POST", "/v1/offers", {}, body, {}},
                              [this, alive, changed = std::move(changed)](const auto& response) {
                                  if (alive.expired() || isOver())
                                      return;
                                  if (response)
                                      m_step = Step::shown;
                                  else
                                      failWith(response.error());
                                  changed();
                              });
}

void Inviting::poll(sync::Courier& courier, std::function<void()> changed)
{
    Inside& inside = *m_inside;
    inside.courier = &courier;
    if (inside.asking || !inside.hub)
        return;
    if (m_step == Step::linking)
        return sendLink(std::move(changed));
    if (m_step != Step::shown && m_step != Step::compare)
        return;
    if (m_step == Step::shown && secondsLeft() == 0) {
        m_step = Step::expired;
        return changed();
    }
    inside.asking = true;
    const std::weak_ptr<Inside> alive = m_inside;
    inside.hub->signedRequest({"GET", "/v1/offers/" + bytes::toHex(inside.offer.id), {}, {}, {}},
                              [this, alive, changed = std::move(changed)](const auto& response) {
                                  if (alive.expired())
                                      return;
                                  m_inside->asking = false;
                                  // What ended it meanwhile is said on: nothing that was asked before changes it.
                                  if (isOver())
                                      return changed();
                                  if (!response) {
                                      failWith(response.error());
                                      return changed();
                                  }
                                  takeEnrolment(response->body, changed);
                              });
}

void Inviting::takeEnrolment(const bytes::Bytes& body, std::function<void()> changed)
{
    m_problem.reset();
    bytes::Reader reader(body);
    const bool twice = reader.u8() != 0;
    const bytes::View sealed = reader.block(1024);
    if (!reader.atEnd()) {
        failWith({Reason::malformed, "offer: the answer cannot be read"});
        return changed();
    }
    if (twice) {
        // Somebody else used the code as well: a photograph, perhaps. Nothing is linked.
        m_step = Step::usedTwice;
        return changed();
    }
    if (sealed.empty() || m_step != Step::shown)
        return changed();
    if (!m_inside->request) {
        auto request = pairing::openEnrolRequest(sealed, m_inside->offer, m_desk.vault().clinicEpoch());
        if (!request) {
            failWith(request.error());
            return changed();
        }
        const Result<bool> ended = m_desk.m_inside->isEnded(envelope::deviceIdOf(request->signing));
        if (!ended || *ended) {
            failWith(ended ? Error{Reason::refused, "pairing: this device was shut out; its program must be set up anew"} : ended.error());
            return changed();
        }
        m_inside->request = *request;
        m_inside->nonce = crypto::randomArray<16>();
    }
    sendNonce(std::move(changed));
}

/// The hub keeps the first nonce, and the phone may have read it although its answer was lost: it is never drawn anew.
void Inviting::sendNonce(std::function<void()> changed)
{
    if (m_inside->answering)
        return changed();
    m_inside->answering = true;
    const std::weak_ptr<Inside> alive = m_inside;
    m_inside->hub->signedRequest(
        {"PUT", "/v1/offers/" + bytes::toHex(m_inside->offer.id) + "/nonce", {},
         bytes::Bytes(m_inside->nonce.begin(), m_inside->nonce.end()), {}},
        [this, alive, changed = std::move(changed)](const auto& response) {
            if (alive.expired())
                return;
            m_inside->answering = false;
            // Meanwhile it may have shown that somebody else used the code as well.
            if (m_step != Step::shown)
                return changed();
            if (!response) {
                failWith(response.error());
                return changed();
            }
            m_inside->number = pairing::confirmationNumber(m_inside->request->signing, m_inside->request->box, m_inside->nonce);
            m_step = Step::compare;
            changed();
        });
}

void Inviting::confirm(sync::Courier& courier, std::function<void()> changed)
{
    m_inside->courier = &courier;
    if (m_step != Step::compare)
        return;
    // Here first: if the hub cannot be told now, it is told at the next poll.
    if (const Done linked = linkHere(); !linked) {
        failWith(linked.error());
        return changed();
    }
    m_step = Step::linking;
    sendLink(std::move(changed));
}

void Inviting::announceDesk(std::function<void()> changed)
{
    Inside& inside = *m_inside;
    inside.asking = true;
    const std::weak_ptr<Inside> alive = m_inside;
    sync::HubClient::plainRequest(*inside.courier, announcement(m_desk.vault(), inside.request->signing),
                                  [this, alive, changed = std::move(changed)](const auto& response) {
                                      if (alive.expired())
                                          return;
                                      m_inside->asking = false;
                                      if (response) {
                                          m_inside->announced = true;
                                          return sendLink(changed);
                                      }
                                      failWith(response.error());
                                      changed();
                                  });
}

void Inviting::sendLink(std::function<void()> changed)
{
    Inside& inside = *m_inside;
    const vault::Vault& vault = m_desk.vault();
    // The hub must know the new desk as a desk before it is let into a mailbox.
    if (inside.newDesk && !inside.announced)
        return announceDesk(std::move(changed));
    const auto clinic = m_desk.clinic();
    bytes::Bytes signedLink;
    if (inside.newDesk) {
        const bool owner = *inside.newDesk == NewDesk::owner;
        const bytes::View seed = vault.clinicRoot().seed();
        signedLink = pairing::signDeskLink({inside.mailbox, inside.request->signing, vault.signingKey().publicKey(),
                                            vault.boxKey().publicKey(), vault.epochNumber(), vault.clinicEpoch().clone(),
                                            owner ? bytes::Bytes(seed.begin(), seed.end()) : bytes::Bytes()},
                                           vault.clinicRoot());
    } else {
        signedLink = pairing::signPatientLink({inside.mailbox, inside.request->signing, vault.signingKey().publicKey(),
                                               clinic ? clinic->contacts.clinicName : std::string()},
                                              vault.clinicRoot());
    }
    // Sealed to the new device: the hub does not learn the clinic's name, or a desk's keys, from it.
    const bytes::Bytes link = crypto::sealTo(inside.request->box, signedLink);
    crypto::wipe(signedLink);
    const bytes::Bytes body =
        bytes::Writer().raw(inside.mailbox.view()).raw(inside.request->signing.value).block(link).bytes();
    inside.asking = true;
    const std::weak_ptr<Inside> alive = m_inside;
    inside.hub->signedRequest({"PUT", "/v1/offers/" + bytes::toHex(inside.offer.id) + "/link", {}, body, {}},
                              [this, alive, changed = std::move(changed)](const auto& response) {
                                  if (alive.expired())
                                      return;
                                  m_inside->asking = false;
                                  if (response)
                                      m_step = Step::linked;
                                  else
                                      failWith(response.error());
                                  changed();
                              });
}

bool Inviting::isOver() const { return m_step == Step::failed || m_step == Step::usedTwice || m_step == Step::expired; }

void Inviting::refuse()
{
    m_differed = m_step == Step::compare;
    m_step = Step::failed;
    m_problem = Error{Reason::refused, m_differed ? "pairing: the numbers were not the same" : "pairing: it was called off"};
}

}  // namespace ebbline::desk
