#include "core/sync/older_copy.h"

#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "core/sync/link_sync.h"
#include "core/sync/messages.h"

namespace ebbline::sync {

namespace {

std::string toldName(const envelope::MailboxId& mailbox) { return "older-told/" + bytes::toHex(mailbox.view()); }

}  // namespace

Result<std::optional<mailbox::Request>> olderCopyWord(const vault::Vault& vault, const Post& post)
{
    using Word = std::optional<mailbox::Request>;
    if (!post.channel)
        return Word();
    const auto standing = vault.standing(post.mailbox);
    if (!standing)
        return fail(standing.error());
    if (!standing->rolledBack)
        return Word();
    const auto told = vault.kept(toldName(post.mailbox));
    if (!told && told.error().reason != Reason::notFound)
        return fail(told.error());
    if (told) {
        const clock::Instant at{std::chrono::milliseconds{static_cast<std::int64_t>(bytes::Reader(*told).u64())}};
        if (!isOver(at, heartbeatEvery, vault.clock().now()))
            return Word();
    }
    const Result<vault::Cursor> own = vault.ownHead(post.mailbox);
    if (!own)
        return fail(own.error());
    const envelope::Header header{envelope::Kind::statement, post.mailbox, vault.device(), olderCopyNumber, own->hash, post.epoch};
    auto sealed = envelope::seal(header, vault.signingKey(), {post.sealTo}, pack(OlderCopy{own->sequence}));
    if (!sealed)
        return fail(sealed.error());
    return Word(mailbox::Request{"PUT",
                                 mailboxPath(post.mailbox) + "/" + bytes::toHex(vault.device().view()) + "/" + std::to_string(olderCopyNumber),
                                 {}, std::move(*sealed), {}});
}

Done noteOlderCopyTold(vault::Vault& vault, const envelope::MailboxId& mailbox)
{
    const auto now = static_cast<std::uint64_t>(vault.clock().now().time_since_epoch().count());
    return vault.keep(toldName(mailbox), bytes::Writer().u64(now).bytes());
}

}  // namespace ebbline::sync
