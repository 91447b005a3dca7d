// The messages of pairing: before a phone is known, anyone can send them.

#include "tests/fuzz/fuzz_target.h"

#include "core/pairing/handshake.h"

void ebbline::fuzz::tryInput(bytes::View input)
{
    static const auto root = crypto::SigningKey::generate();
    static const auto epoch = crypto::BoxKey::generate();
    static const pairing::Offer offer = [] {
        pairing::Offer made;
        made.id = crypto::randomArray<8>();
        made.secret = crypto::randomArray<16>();
        made.clinicRoot = root.publicKey();
        made.clinicEpoch = epoch.publicKey();
        return made;
    }();
    mustHold(!pairing::openEnrolRequest(input, offer, epoch), "nobody knows the secret of an offer made a moment ago");
    // Sealed rightly, the fields inside are reached.
    mustHold(!pairing::openEnrolRequest(crypto::sealTo(epoch.publicKey(), input), offer, epoch),
             "a sealed request needs the proof too");
    mustHold(!pairing::openPatientLink(input, root.publicKey()), "nobody signs for a root made a moment ago");
}
