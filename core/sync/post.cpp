#include "core/sync/post.h"

#include "core/bytes/text.h"
#include "core/pairing/statement.h"
#include "core/sync/least_version.h"
#include "core/sync/link_sync.h"

#include <algorithm>

namespace ebbline::sync {

namespace {

/// Nothing of this device is wanted.
constexpr std::uint64_t beyondAll = 0x7fff'ffff'ffff'ffff;
constexpr std::size_t longestQuestion = 2000;

std::optional<pairing::Roster> rosterOf(const vault::Vault& vault, const crypto::SigningPublicKey& root)
{
    const auto signedBytes = vault.roster(root);
    if (!signedBytes)
        return std::nullopt;
    auto statement = pairing::openStatement(*signedBytes, root);
    auto* roster = statement ? std::get_if<pairing::Roster>(&*statement) : nullptr;
    return roster ? std::optional(std::move(*roster)) : std::nullopt;
}

}  // namespace

const crypto::SigningPublicKey* Post::peer(const envelope::DeviceId& device) const
{
    const auto found = std::ranges::find(peers, device, envelope::deviceIdOf);
    return found == peers.end() ? nullptr : &*found;
}

Result<std::vector<Post>> postsOf(const vault::Vault& vault)
{
    const auto links = vault.links();
    const auto channels = vault.channels();
    if (!links || !channels)
        return fail(links ? channels.error() : links.error());
    const bool clinic = vault.owner() == vault::Vault::Owner::clinic;
    std::vector<Post> posts;
    for (const vault::Link& link : *links) {
        Post post{link.mailbox, link.course, link.clinicRoot, link.peerBox, link.epoch, {}, {}, {}, link.roster, link.hub, false,
                  isTooOld(vault, link.clinicRoot), link.ended};
        const auto roster = rosterOf(vault, link.clinicRoot);
        if (roster)
            post.revoked.assign(roster->revoked.rbegin(), roster->revoked.rend());
        if (clinic || !roster) {
            post.peers.push_back(link.peerSigning);
        } else {
            for (const pairing::Roster::Desk& desk : roster->desks)
                post.peers.push_back(desk.signing);
        }
        // The phone's own later word about its key counts more than what pairing left.
        if (clinic) {
            const auto& courses = vault.state().courses;
            const auto course = courses.find(link.course);
            if (course != courses.end())
                if (const auto key = course->second.phoneKeys.find(envelope::deviceIdOf(link.peerSigning)); key != course->second.phoneKeys.end())
                    post.sealTo.value = key->second.boxKey;
        }
        if (clinic && roster) {
            for (const pairing::Roster::Desk& desk : roster->desks)
                post.colleagues.insert(envelope::deviceIdOf(desk.signing));
            post.colleagues.erase(vault.device());
        }
        posts.push_back(std::move(post));
    }
    for (const vault::Channel& channel : *channels) {
        const auto roster = rosterOf(vault, vault.clinicRootKey());
        if (channel.ended || (roster && roster->isRevoked(envelope::deviceIdOf(channel.peerSigning))))
            continue;
        posts.push_back({channel.mailbox, {}, vault.clinicRootKey(), channel.peerBox, 0, {channel.peerSigning}, {}, {}, channel.roster,
                         channel.hub, true, isTooOld(vault, vault.clinicRootKey()), false});
    }
    return posts;
}

bool heartbeatIsDue(const vault::Vault& vault, const Post& post)
{
    const auto standing = vault.standing(post.mailbox);
    if (!standing || !standing->spokeAt || post.ended || !isOver(*standing->spokeAt, heartbeatEvery, vault.clock().now()))
        return false;
    return vault.owner() != vault::Vault::Owner::clinic || post.channel || (standing->heardAt && *standing->heardAt > *standing->spokeAt);
}

Result<bool> hasEnded(const vault::Vault& vault, const Post& post)
{
    if (post.channel) {
        const auto posts = postsOf(vault);
        if (!posts)
            return fail(posts.error());
        return std::ranges::find(*posts, post.mailbox, &Post::mailbox) == posts->end();
    }
    const auto links = vault.links();
    if (!links)
        return fail(links.error());
    const auto link = std::ranges::find(*links, post.mailbox, &vault::Link::mailbox);
    return link != links->end() && link->ended;
}

std::string mailboxPath(const envelope::MailboxId& mailbox)
{
    return "/v1/m/" + bytes::toHex(mailbox.view());
}

Result<std::string> questionFor(const vault::Vault& vault, const Post& post, const std::set<envelope::DeviceId>& leftOut)
{
    std::string after;
    const auto add = [&](const envelope::DeviceId& device, std::uint64_t sequence) {
        after += (after.empty() ? "after=" : ",") + bytes::toHex(device.view()) + ":" + std::to_string(sequence);
    };
    for (const crypto::SigningPublicKey& peer : post.peers) {
        const envelope::DeviceId device = envelope::deviceIdOf(peer);
        const Result<vault::Cursor> head = vault.peerHead(post.mailbox, device);
        if (!head)
            return fail(head.error());
        add(device, head->sequence);
    }
    for (const envelope::DeviceId& colleague : post.colleagues)
        if (after.size() < longestQuestion)
            add(colleague, beyondAll);
    for (const envelope::DeviceId& each : leftOut)
        add(each, beyondAll);
    for (const envelope::DeviceId& revoked : post.revoked)
        if (after.size() < longestQuestion)
            add(revoked, beyondAll);
    return after;
}

}  // namespace ebbline::sync
