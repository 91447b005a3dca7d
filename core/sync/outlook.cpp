#include "core/sync/outlook.h"

#include "core/sync/post.h"

namespace ebbline::sync {

namespace {

/// Reached, not only passed: the line between "of today" and "of yesterday" belongs to those who wait. A time ahead of
/// us means that somebody set the clock, and tells nothing good.
bool isReached(clock::Instant since, std::chrono::milliseconds limit, clock::Instant now)
{
    return now - since >= limit || since - now >= limit;
}

/// What was sealed waits since then. What no envelope carries yet waits since it was written, and not since before the
/// last sealing, which would have taken it.
std::optional<clock::Instant> oldestWaiting(const vault::Standing& standing, const std::vector<journal::Operation>& unsealed)
{
    std::optional<clock::Instant> oldest = standing.unprovedSince;
    for (const journal::Operation& operation : unsealed) {
        const clock::Instant since = std::max(operation.entered.at, standing.spokeAt.value_or(operation.entered.at));
        oldest = std::min(oldest.value_or(since), since);
    }
    return oldest;
}

Outlook::State gravest(const vault::Standing& standing, const Outlook& outlook)
{
    if (standing.rolledBack)
        return Outlook::State::olderHere;
    if (standing.fork)
        return Outlook::State::forked;
    if (standing.gap)
        return Outlook::State::withheld;
    if (outlook.refusal)
        return Outlook::State::refused;
    if (outlook.unheard)
        return Outlook::State::unheard;
    return outlook.waitingSince ? Outlook::State::waiting : Outlook::State::delivered;
}

}  // namespace

int overdueOf(const Outlook& outlook, clock::Instant now)
{
    int reached = 0;
    for (const int days : overdueDays)
        if (outlook.waitingSince && now - *outlook.waitingSince >= std::chrono::days(days))
            reached = days;
    return reached;
}

Result<Outlook> outlookOf(const vault::Vault& vault, const envelope::MailboxId& mailbox)
{
    const auto standing = vault.standing(mailbox);
    if (!standing)
        return fail(standing.error());
    const auto unsealed = vault.unsealed(mailbox);
    if (!unsealed)
        return fail(unsealed.error());
    const auto refusal = refusalOf(vault, mailbox);
    if (!refusal)
        return fail(refusal.error());
    Outlook outlook;
    outlook.refusal = *refusal;
    outlook.waitingSince = oldestWaiting(*standing, *unsealed);
    outlook.heardAt = standing->heardAt;
    // Before anything came, the silence is counted from when we spoke.
    const auto last = standing->heardAt ? standing->heardAt : standing->spokeAt;
    outlook.unheard = last && isReached(*last, longestSilence, vault.clock().now());
    outlook.missing = standing->fork || standing->gap;
    outlook.state = gravest(*standing, outlook);
    return outlook;
}

Result<OtherDesks> otherDesksOf(const vault::Vault& vault)
{
    const auto posts = postsOf(vault);
    if (!posts)
        return fail(posts.error());
    OtherDesks desks;
    for (const Post& post : *posts) {
        if (!post.channel)
            continue;
        const auto standing = vault.standing(post.mailbox);
        if (!standing)
            return fail(standing.error());
        desks.forked += standing->fork ? 1 : 0;
        desks.withheld += standing->gap ? 1 : 0;
        desks.older += standing->peerOlder ? 1 : 0;
        desks.olderHere += standing->rolledBack ? 1 : 0;
    }
    return desks;
}

}  // namespace ebbline::sync
