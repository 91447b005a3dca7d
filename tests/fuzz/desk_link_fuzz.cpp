// What makes a new desk one of the clinic's, as it comes out of its seal.

#include "tests/fuzz/fuzz_target.h"

#include "core/bytes/reader.h"
#include "core/pairing/handshake.h"
#include "core/pairing/statement.h"

using namespace ebbline;

void fuzz::tryInput(bytes::View input)
{
    static const auto root = crypto::SigningKey::generate();
    mustHold(!pairing::openDeskLink(input, root.publicKey()), "nobody signs for a root made a moment ago");

    const auto signature = root.sign(pairing::statementText(input));
    const bytes::Bytes signedLink = bytes::Writer().raw(input).raw(signature).bytes();
    mustHold(!pairing::openPatientLink(signedLink, root.publicKey()) || !pairing::openDeskLink(signedLink, root.publicKey()),
             "what links a phone links no desk");
    const auto link = pairing::openDeskLink(signedLink, root.publicKey());
    if (!link)
        return;
    mustHold(link->epoch > 0, "epochs begin at 1");
    mustHold(link->rootSeed.empty() || link->rootSeed.size() == 32, "a seed is whole or not there");
    mustHold(pairing::signDeskLink(*link, root) == signedLink, "a link has one form only");
}
