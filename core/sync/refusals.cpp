#include "core/sync/refusals.h"

#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "core/sync/hub_client.h"
#include "core/sync/post.h"

#include <algorithm>

namespace ebbline::sync {

namespace {

constexpr std::string_view prefix = "refused/";
constexpr std::size_t packedSize = 1 + 8 + 4 + 8 + 8;

std::string nameOf(const envelope::MailboxId& mailbox)
{
    return std::string(prefix) + bytes::toHex(mailbox.view());
}

std::uint64_t packed(clock::Instant instant)
{
    return static_cast<std::uint64_t>(instant.time_since_epoch().count());
}

clock::Instant instantIn(bytes::Reader& reader)
{
    return clock::Instant{std::chrono::milliseconds{static_cast<std::int64_t>(reader.u64())}};
}

/// Empty for what is none: a kept value of another form says nothing.
std::optional<Refusal> read(bytes::View value)
{
    bytes::Reader reader(value);
    Refusal refusal;
    const std::uint8_t why = reader.u8();
    refusal.why = static_cast<Refusal::Why>(why);
    refusal.sequence = reader.u64();
    refusal.times = reader.u32();
    refusal.since = instantIn(reader);
    refusal.triedAt = instantIn(reader);
    const bool good = reader.atEnd() && value.size() == packedSize && why >= 1 && why <= 4 && refusal.times > 0;
    return good ? std::optional(refusal) : std::nullopt;
}

}  // namespace

std::optional<Refusal::Why> refusedBecause(const Error& error)
{
    switch (statusOf(error)) {
    case 401:
    case 404: return Refusal::Why::unknownThere;
    case 409: return Refusal::Why::taken;
    case 507: return Refusal::Why::full;
    case 400:
    case 413: return Refusal::Why::unreadable;
    default: return std::nullopt;
    }
}

Result<std::optional<Refusal>> refusalOf(const vault::Vault& vault, const envelope::MailboxId& mailbox)
{
    const auto kept = vault.kept(nameOf(mailbox));
    if (!kept)
        return kept.error().reason == Reason::notFound ? Result<std::optional<Refusal>>(std::nullopt) : fail(kept.error());
    const auto refusal = read(*kept);
    return refusal && refusal->sequence > vault.delivered(mailbox).sequence ? refusal : std::nullopt;
}

Result<std::vector<Refusal>> refusals(const vault::Vault& vault)
{
    // Mostly there is none, and no roster has to be verified to say so.
    const auto kept = vault.keptUnder(prefix);
    if (!kept)
        return fail(kept.error());
    if (kept->empty())
        return std::vector<Refusal>{};
    const auto posts = postsOf(vault);
    if (!posts)
        return fail(posts.error());
    std::vector<Refusal> found;
    for (const Post& post : *posts) {
        const auto refusal = refusalOf(vault, post.mailbox);
        if (!refusal)
            return fail(refusal.error());
        if (*refusal && !post.ended)
            found.push_back(**refusal);
    }
    return found;
}

bool rests(const Refusal& refusal, clock::Instant now)
{
    if (refusal.times < refusalsBeforeRest || now < refusal.triedAt)
        return false;
    const std::uint32_t doubled = std::min<std::uint32_t>(refusal.times - refusalsBeforeRest, 6);
    const auto rest = std::min(longestRest, std::chrono::minutes(1U << doubled));
    return now - refusal.triedAt < rest;
}

Done noteRefused(vault::Vault& vault, const envelope::MailboxId& mailbox, std::uint64_t sequence, Refusal::Why why)
{
    const auto before = refusalOf(vault, mailbox);
    if (!before)
        return fail(before.error());
    const clock::Instant now = vault.clock().now();
    const bool same = *before && (*before)->sequence == sequence;
    const std::uint32_t times = same ? std::min<std::uint32_t>((*before)->times, 1'000'000) + 1 : 1;
    return vault.keep(nameOf(mailbox), bytes::Writer()
                                           .u8(static_cast<std::uint8_t>(why))
                                           .u64(sequence)
                                           .u32(times)
                                           .u64(packed(same ? (*before)->since : now))
                                           .u64(packed(now))
                                           .bytes());
}

Done noteUnknownThere(vault::Vault& vault, const std::vector<Post>& posts)
{
    for (const Post& post : posts) {
        const auto waiting = vault.outgoing(post.mailbox);
        if (!waiting)
            return fail(waiting.error());
        if (waiting->empty())
            continue;
        if (const Done noted = noteRefused(vault, post.mailbox, waiting->front().sequence, Refusal::Why::unknownThere); !noted)
            return noted;
    }
    return {};
}

Done forgetRefusal(vault::Vault& vault, const envelope::MailboxId& mailbox)
{
    return vault.keep(nameOf(mailbox), {});
}

}  // namespace ebbline::sync
