// The desk's half of carrying photographs: looking, fetching, and telling the phone.

#include "core/bytes/reader.h"
#include "core/sync/photo_carrier.h"

namespace ebbline::sync {

bool isOfNetwork(const Error& error)
{
    return error.reason == Reason::unreachable || error.reason == Reason::tooSoon;
}

/// Which photographs the hub holds for a mailbox; then what is wanted of them.
void PhotoCarrier::look()
{
    const auto self = shared_from_this();
    ask({"GET", path(), {}, {}, {}}, [self](const Result<mailbox::Response>& response) {
        std::set<photos::PhotoId>& there = self->m_there[self->m_job->mailbox];
        if (!response)
            return self->failJob(response.error());
        bytes::Reader reader(response->body);
        while (reader.left() >= 16)
            there.insert(reader.id<photos::PhotoTag>());
        self->m_report.garbled += reader.atEnd() ? 0 : 1;
        if (self->m_job->channel)
            return self->lookedIntoChannel();
        const auto& courses = self->m_vault.state().courses;
        const clock::Instant now = self->m_vault.clock().now();
        if (const auto course = courses.find(self->m_job->course); course != courses.end())
            for (const auto& [photo, version] : course->second.photos)
                // What stays away for long is asked about less often.
                if (!there.contains(photo) && !course->second.clinicPhotos.contains(photo) && isOver(version.value.at.at, photoFreshFor, now))
                    if (const auto standing = self->m_vault.photoStanding(photo); standing && (!*standing || !(*standing)->refused))
                        if (const Done noted = self->m_vault.notePhoto(photo, {false, false, now}); !noted)
                            return self->failJob(noted.error());
        const auto links = self->m_vault.links();
        if (!links)
            return self->failJob(links.error());
        for (const vault::Link& link : *links)
            if (link.mailbox == self->m_job->mailbox)
                if (const auto held = self->m_vault.heldPhotoChunks())
                    if (const Done collected = self->collectOfDesk(link, *held); !collected)
                        return self->failJob(collected.error());
        self->endJob(true);
    });
}

void PhotoCarrier::fetch()
{
    const records::PhotoTaken* photo = taken();
    if (!photo)
        return endJob(false);
    // Another desk's channel may have brought it meanwhile.
    if (m_job->channel && isHeldBy(m_vault.state().courses.at(m_job->course), m_job->photo, m_vault.device()))
        return letForget();
    auto missing = m_vault.missingPhotoChunks(photo->manifest);
    if (!missing)
        return failJob(missing.error());
    m_missing = std::move(*missing);
    fetchNext();
}

void PhotoCarrier::fetchNext()
{
    if (m_missing.empty())
        return arrived();
    const std::uint32_t number = m_missing.front();
    const auto self = shared_from_this();
    ask({"GET", path("/" + std::to_string(number)), {}, {}, {}}, [self, number](const Result<mailbox::Response>& response) {
        if (!response)
            return self->failJob(response.error());
        const records::PhotoTaken* photo = self->taken();
        if (!photo)
            return self->endJob(false);
        const Done put = self->m_vault.putPhotoChunk(*photo, number, response->body);
        if (!put && put.error().reason == Reason::forged)
            return self->fetchForged(put.error());
        if (!put)
            return self->failJob(put.error());
        ++self->m_report.photoChunksReceived;
        self->m_carried += response->body.size();
        self->m_missing.erase(self->m_missing.begin());
        if (self->mustYield())
            return self->end(true);
        self->fetchNext();
    });
}

/// Once may be the way; twice, it lies wrong at the hub: dropped there, it is put up anew by the phone, which offers
/// again what no desk has confirmed.
void PhotoCarrier::fetchForged(const Error& error)
{
    ++m_report.garbled;
    const auto before = m_vault.photoStanding(m_job->photo);
    if (!before)
        return failJob(before.error());
    if (!*before) {
        const Done noted = m_vault.notePhoto(m_job->photo, {false, false, m_vault.clock().now()});
        return failJob(noted ? error : noted.error());
    }
    const auto self = shared_from_this();
    ask({"POST", path("/drop"), {}, {}, {}}, [self, error](const Result<mailbox::Response>& response) {
        if (!response)
            return self->failJob(response.error());
        const Done forgotten = self->m_vault.forgetPhoto(self->m_job->photo);
        self->failJob(forgotten ? error : forgotten.error());
    });
}

/// Every chunk is here and is what the manifest says. Whether it is a picture that may be shown is tried before
/// anybody is told that it is held.
void PhotoCarrier::arrived()
{
    const records::PhotoTaken* photo = taken();
    const auto picture = photo ? m_vault.photo(photo->manifest) : fail(Reason::notFound, "photo: taken back");
    if (!photo || (!picture && picture.error().reason == Reason::storageFailed))
        return photo ? failJob(picture.error()) : endJob(false);
    if (!picture) {
        ++m_report.photosRefused;
        if (const Done noted = m_vault.notePhoto(m_job->photo, {false, true, m_vault.clock().now()}); !noted)
            return failJob(noted.error());
        if (const Done dropped = m_vault.dropPhotoChunks(m_job->photo); !dropped)
            return failJob(dropped.error());
        return endJob(false);
    }
    const auto& course = m_vault.state().courses.at(m_job->course);
    if (m_job->channel) {
        // To the other desks: each says for itself that it holds it.
        const clock::Moment now{m_vault.clock().now(), {}, {}};
        const auto told = m_vault.append({records::PhotosReceived{m_job->course, {m_job->photo}, now}}, now);
        if (!told)
            return failJob(told.error());
    } else if (!course.photosReceived.contains(m_job->photo)) {
        // To the phone that the course has now; the one that took it may have been replaced.
        const auto links = m_vault.links();
        if (!links)
            return failJob(links.error());
        std::optional<envelope::MailboxId> mailbox;
        for (const vault::Link& link : *links)
            if (link.course == m_job->course && !link.ended)
                mailbox = link.mailbox;
        const clock::Moment now{m_vault.clock().now(), {}, {}};
        const auto told = m_vault.append({records::PhotosReceived{m_job->course, {m_job->photo}, now}}, now, mailbox);
        if (!told)
            return failJob(told.error());
    }
    ++m_report.photosReceived;
    letForget();
}

void PhotoCarrier::letForget()
{
    const auto self = shared_from_this();
    ask({"POST", path("/ack"), {}, {}, {}}, [self](const Result<mailbox::Response>& response) {
        !response && isOfNetwork(response.error()) ? self->end(false) : self->endJob(true);
    });
}

}  // namespace ebbline::sync
