// A sealed message as a hub hands it over: header, signature, recipients, ciphertext.

#include "tests/fuzz/fuzz_target.h"

#include "core/envelope/envelope.h"

void ebbline::fuzz::tryInput(bytes::View input)
{
    static const auto sender = crypto::SigningKey::generate();
    static const auto recipient = crypto::BoxKey::generate();
    const auto header = envelope::peek(input);
    const auto verified = envelope::verify(input, sender.publicKey());
    const auto opened = envelope::open(input, sender.publicKey(), recipient);
    mustHold(!verified || header, "a signature holds only over a header that can be read");
    mustHold(!opened || verified, "only what is signed is opened");
    mustHold(!opened, "nobody signs for a key made a moment ago");
}
