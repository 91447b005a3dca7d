// What a clinic says under its root key. A hub or a desk that was let in may hand on anything; the fields behind the
// signature are reached by signing what came.

#include "tests/fuzz/fuzz_target.h"

#include "core/bytes/reader.h"
#include "core/pairing/statement.h"

#include <algorithm>

using namespace ebbline;

void fuzz::tryInput(bytes::View input)
{
    static const auto root = crypto::SigningKey::generate();
    mustHold(!pairing::openStatement(input, root.publicKey()), "nobody signs for a root made a moment ago");

    const auto signature = root.sign(pairing::statementText(input));
    const bytes::Bytes signedStatement = bytes::Writer().raw(input).raw(signature).bytes();
    const auto statement = pairing::openStatement(signedStatement, root.publicKey());
    if (!statement)
        return;
    mustHold(pairing::signStatement(*statement, root) == signedStatement, "a statement has one form only");
    const auto* roster = std::get_if<pairing::Roster>(&*statement);
    if (roster == nullptr)
        return;
    mustHold(!roster->desks.empty() && roster->desks.size() <= pairing::mostDesks, "a roster has desks, and not too many");
    mustHold(roster->revoked.size() <= pairing::mostRevoked, "what it revokes keeps its bounds");
    for (const pairing::Roster::Desk& desk : roster->desks)
        mustHold(!roster->isRevoked(envelope::deviceIdOf(desk.signing)), "no desk is in it and revoked");
    const auto next = pairing::following(*roster, signedStatement);
    mustHold(next.previous == crypto::hash256(signedStatement), "the next one names the one before");
}
