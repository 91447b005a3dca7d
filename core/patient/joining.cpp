#include "core/patient/joining.h"

namespace ebbline::patient {

Joining::Joining(Diary& diary, const clock::Clock& clock)
    : Enrolling(diary.vault(), clock, pairing::Purpose::phone,
                [this](const pairing::Offer& offer, bytes::View link) { return takeLink(offer, link); }),
      m_diary(diary)
{
}

Done Joining::takeLink(const pairing::Offer& offer, bytes::View link)
{
    const auto opened = pairing::openPatientLink(link, offer.clinicRoot);
    if (!opened)
        return fail(opened.error());
    if (opened->phone != m_diary.vault().signingKey().publicKey())
        return fail(Reason::forged, "link: it is for another phone");
    m_clinicName = opened->clinicName;
    const std::string address = (offer.tls ? "https://" : "http://") + offer.hub;
    vault::Link made;
    made.mailbox = opened->mailbox;
    made.peerSigning = opened->desk;
    made.peerBox = offer.clinicEpoch;
    made.clinicRoot = offer.clinicRoot;
    made.epoch = offer.epoch;
    made.hub = address;
    made.hubKeyHash = offer.hubKeyHash;
    return m_diary.vault().putOnlyLink(made);
}

}  // namespace ebbline::patient
