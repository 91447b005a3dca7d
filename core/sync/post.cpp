#include "core/sync/post.h"

#include "core/pairing/statement.h"
#include "core/sync/least_version.h"

#include <algorithm>

namespace ebbline::sync {

namespace {

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

}  // namespace ebbline::sync
