// Photographs that the clinic took: from the desk where they were put in to every other one.

#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "core/sync/photo_carrier.h"

#include <algorithm>

namespace ebbline::sync {

namespace {

std::string nameOf(const envelope::MailboxId& channel, const photos::PhotoId& photo)
{
    return "photo-offered/" + bytes::toHex(channel.view()) + "/" + bytes::toHex(photo.view());
}

}  // namespace

bool isHeldBy(const journal::CourseState& course, const photos::PhotoId& photo, const envelope::DeviceId& desk)
{
    const auto holders = course.photoHolders.find(photo);
    return course.photos.at(photo).operation.device == desk || (holders != course.photoHolders.end() && holders->second.contains(desk));
}

std::string PhotoCarrier::offerName() const
{
    return nameOf(m_job->mailbox, m_job->photo);
}

Result<std::optional<PhotoCarrier::Offer>> PhotoCarrier::offerOf(const std::string& name) const
{
    const auto kept = m_vault.kept(name);
    if (!kept)
        return kept.error().reason == Reason::notFound ? Result<std::optional<Offer>>(std::nullopt) : fail(kept.error());
    bytes::Reader reader(*kept);
    Offer offer;
    offer.atHub = reader.u8() == 1;
    offer.triedAt = clock::Instant{std::chrono::milliseconds{static_cast<std::int64_t>(reader.u64())}};
    return std::optional(offer);
}

Done PhotoCarrier::noteOffer(bool atHub)
{
    const clock::Instant now = m_vault.clock().now();
    if (!m_job->channel)
        return m_vault.notePhoto(m_job->photo, {atHub, false, now});
    return m_vault.keep(offerName(), bytes::Writer().u8(atHub ? 1 : 0).u64(static_cast<std::uint64_t>(now.time_since_epoch().count())).bytes());
}

Done PhotoCarrier::forgetOffer()
{
    return m_job->channel ? m_vault.keep(offerName(), {}) : m_vault.forgetPhoto(m_job->photo);
}

/// What this desk has for the other end of a channel: to put up, or, taken back or held there by now, to drop at the hub.
Done PhotoCarrier::collectOffer(const Post& post, const recovery::CourseId& id, const journal::CourseState& course, const photos::PhotoId& photo,
                                bool whole)
{
    const auto offer = offerOf(nameOf(post.mailbox, photo));
    if (!offer)
        return fail(offer.error());
    const bool arrived = std::ranges::all_of(post.peers, [&](const auto& peer) { return isHeldBy(course, photo, envelope::deviceIdOf(peer)); });
    if (course.photosRemoved.contains(photo) || arrived) {
        if (*offer)
            m_jobs.push_back({Job::What::drop, post.mailbox, id, photo, true});
        return {};
    }
    const clock::Instant now = m_vault.clock().now();
    if (!whole || m_full.contains(post.mailbox) || (*offer && (*offer)->atHub && !isOver((*offer)->triedAt, offerAgainAfter, now)))
        return {};
    m_jobs.push_back({Job::What::put, post.mailbox, id, photo, true});
    return {};
}

Done PhotoCarrier::collectOfChannel(const Post& post, const std::map<photos::PhotoId, std::size_t>& held)
{
    const auto there = m_there.find(post.mailbox);
    bool wanted = false;
    for (const auto& [id, course] : m_vault.state().courses)
        for (const auto& [photo, by] : course.clinicPhotos) {
            if (m_over.contains(photo))
                continue;
            const records::PhotoTaken& taken = course.photos.at(photo).value;
            const auto chunks = held.find(photo);
            const bool whole = chunks != held.end() && chunks->second == taken.manifest.chunkHashes.size();
            if (const Done collected = collectOffer(post, id, course, photo, whole); !collected)
                return collected;
            if (course.photosRemoved.contains(photo) || isHeldBy(course, photo, m_vault.device()))
                continue;
            const auto standing = m_vault.photoStanding(photo);
            if (!standing)
                return fail(standing.error());
            if ((*standing && (*standing)->refused) || !isRested(taken, *standing))
                continue;
            if (whole || (there != m_there.end() && there->second.contains(photo)))
                m_jobs.push_back({Job::What::fetch, post.mailbox, id, photo, true});
            else
                wanted = true;
        }
    if (wanted && there == m_there.end())
        m_jobs.push_back({Job::What::look, post.mailbox, {}, {}, true});
    return {};
}

/// What lies in none of the channels, once all were looked into, is asked about less often when it is old.
Done PhotoCarrier::restWhatIsAway()
{
    const clock::Instant now = m_vault.clock().now();
    for (const auto& [id, course] : m_vault.state().courses)
        for (const auto& [photo, by] : course.clinicPhotos) {
            if (course.photosRemoved.contains(photo) || isHeldBy(course, photo, m_vault.device())
                || !isOver(course.photos.at(photo).value.at.at, photoFreshFor, now)
                || std::ranges::any_of(m_there, [&](const auto& seen) { return seen.second.contains(photo); }))
                continue;
            const auto standing = m_vault.photoStanding(photo);
            if (!standing)
                return fail(standing.error());
            if (*standing && (*standing)->refused)
                continue;
            if (const Done noted = m_vault.notePhoto(photo, {false, false, now}); !noted)
                return noted;
        }
    return {};
}

/// What lies in this channel is fetched.
void PhotoCarrier::lookedIntoChannel()
{
    for (const auto& [id, course] : m_vault.state().courses)
        for (const auto& [photo, by] : course.clinicPhotos)
            if (m_there.at(m_job->mailbox).contains(photo) && !course.photosRemoved.contains(photo) && !isHeldBy(course, photo, m_vault.device()) && !m_over.contains(photo)) {
                const auto standing = m_vault.photoStanding(photo);
                if (!standing)
                    return failJob(standing.error());
                if (!*standing || !(*standing)->refused)
                    m_jobs.push_back({Job::What::fetch, m_job->mailbox, id, photo, true});
            }
    const bool more = std::ranges::any_of(m_jobs, [](const Job& job) { return job.channel && job.what == Job::What::look; });
    const Done rested = more ? Done{} : restWhatIsAway();
    rested ? endJob(true) : failJob(rested.error());
}

}  // namespace ebbline::sync
