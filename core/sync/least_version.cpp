#include "core/sync/least_version.h"

#include "core/bytes/text.h"

#include <algorithm>

namespace ebbline::sync {

namespace {

std::string nameOf(const crypto::SigningPublicKey& root) { return "least-version/" + bytes::toHex(root.value); }

}  // namespace

std::string toldLeastName(const envelope::MailboxId& mailbox) { return "told-least/" + bytes::toHex(mailbox.view()); }
std::string newerStatementName(const envelope::MailboxId& mailbox) { return "newer-statement/" + bytes::toHex(mailbox.view()); }

Result<std::optional<bytes::Bytes>> signedLeastVersion(const vault::Vault& vault, const crypto::SigningPublicKey& root)
{
    auto kept = vault.kept(nameOf(root));
    if (!kept)
        return kept.error().reason == Reason::notFound ? Result<std::optional<bytes::Bytes>>(std::nullopt) : fail(kept.error());
    return std::optional(std::move(*kept));
}

std::optional<pairing::LeastVersion> leastVersion(const vault::Vault& vault, const crypto::SigningPublicKey& root)
{
    const auto kept = signedLeastVersion(vault, root);
    if (!kept || !*kept)
        return std::nullopt;
    const auto statement = pairing::openStatement(**kept, root);
    const auto* least = statement ? std::get_if<pairing::LeastVersion>(&*statement) : nullptr;
    return least ? std::optional(*least) : std::nullopt;
}

Done keepLeastVersion(vault::Vault& vault, const crypto::SigningPublicKey& root, const pairing::LeastVersion& least, bytes::View signedBytes)
{
    const auto kept = signedLeastVersion(vault, root);
    if (!kept)
        return fail(kept.error());
    const auto known = leastVersion(vault, root);
    if (known && known->number == least.number && !std::ranges::equal(**kept, signedBytes))
        return fail(Reason::outOfOrder, "least version: another one has the same number");
    if (known && known->number >= least.number)
        return {};
    return vault.keep(nameOf(root), signedBytes);
}

bool isTooOld(const vault::Vault& vault, const crypto::SigningPublicKey& root)
{
    const auto least = leastVersion(vault, root);
    return least && least->protocol > pairing::ownProtocol;
}

}  // namespace ebbline::sync
