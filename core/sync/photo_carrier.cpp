#include "core/sync/photo_carrier.h"

#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "core/photos/manifest.h"

namespace ebbline::sync {

namespace {

/// What the hub says of a blob: docs/formats/hub.md.
struct Said {
    bool complete = false;
    std::vector<std::uint32_t> missing;
};

std::optional<Said> read(bytes::View body, std::size_t chunks)
{
    bytes::Reader reader(body);
    Said said;
    said.complete = reader.u8() == 1;
    const std::size_t count = reader.u32();
    if (!reader.ok() || count > chunks || reader.left() != count * 4)
        return std::nullopt;
    for (std::size_t i = 0; i < count; ++i)
        said.missing.push_back(reader.u32());
    if (std::ranges::any_of(said.missing, [&](std::uint32_t number) { return number >= chunks; }))
        return std::nullopt;
    return said;
}

}  // namespace

void PhotoCarrier::goOn(std::function<void()> next)
{
    m_next = std::move(next);
    if (m_turning)
        return;
    m_turning = true;
    const auto self = shared_from_this();
    while (m_next)
        std::exchange(m_next, {})();
    m_turning = false;
}

void PhotoCarrier::ask(mailbox::Request request, std::function<void(const Result<mailbox::Response>&)> take)
{
    const auto self = shared_from_this();
    m_hub->signedRequest(std::move(request), [self, take = std::move(take)](const Result<mailbox::Response>& response) {
        self->goOn([take, response] { take(response); });
    });
}

void PhotoCarrier::run(Ended ended)
{
    m_ended = std::move(ended);
    m_carried = 0;
    const auto self = shared_from_this();
    goOn([self] {
        if (const Done collected = self->collect(); !collected) {
            self->problem(collected.error());
            return self->end(false);
        }
        self->nextJob();
    });
}

void PhotoCarrier::problem(const Error& error)
{
    if (!m_report.photoProblem)
        m_report.photoProblem = error;
}

void PhotoCarrier::end(bool again)
{
    m_jobs.clear();
    m_job.reset();
    if (const auto ended = std::exchange(m_ended, {}))
        ended(again, shared_from_this());
}

bool PhotoCarrier::mustYield() const
{
    return m_carried >= photoTurn || m_vault.hasUnsealed();
}

Done PhotoCarrier::collect()
{
    const bool clinic = m_vault.owner() == vault::Vault::Owner::clinic;
    std::map<photos::PhotoId, std::size_t> held;
    if (clinic) {
        auto counted = m_vault.heldPhotoChunks();
        if (!counted)
            return fail(counted.error());
        held = std::move(*counted);
    }
    const auto links = m_vault.links();
    if (!links)
        return fail(links.error());
    for (const vault::Link& link : *links)
        if (const Done collected = clinic ? collectOfDesk(link, held) : collectOfPhone(link); !collected)
            return collected;
    const auto posts = clinic ? postsOf(m_vault) : Result<std::vector<Post>>(std::vector<Post>{});
    if (!posts)
        return fail(posts.error());
    for (const Post& post : *posts)
        if (post.channel && !post.tooOld)
            if (const Done collected = collectOfChannel(post, held); !collected)
                return collected;
    return {};
}

/// Whether it was tried long enough ago to be tried again.
bool PhotoCarrier::isRested(const records::PhotoTaken& photo, const std::optional<vault::PhotoStanding>& standing) const
{
    const clock::Instant now = m_vault.clock().now();
    return !standing || !isOver(photo.at.at, photoFreshFor, now) || isOver(standing->triedAt, offerAgainAfter, now);
}

Done PhotoCarrier::collectOfPhone(const vault::Link& link)
{
    if (link.ended)
        return {};
    const auto links = m_vault.links();
    if (!links)
        return fail(links.error());
    for (const auto& [id, course] : m_vault.state().courses) {
        // What belongs to another course goes to nobody else. The only link of an older program may not know its course.
        if (link.course.isNull() ? links->size() > 1 || m_vault.state().courses.size() > 1 : id != link.course)
            continue;
        for (const auto& [photo, version] : course.photos) {
            const bool removed = course.photosRemoved.contains(photo);
            if (version.operation.device != m_vault.device() || m_over.contains(photo)
                || (!removed && (course.photosReceived.contains(photo) || m_full.contains(link.mailbox))))
                continue;
            const auto standing = m_vault.photoStanding(photo);
            if (!standing)
                return fail(standing.error());
            // The hub never heard of it, or has it and may forget it: then it is offered again, as an envelope is.
            if (removed ? !*standing
                        : *standing && (*standing)->atHub && !isOver((*standing)->triedAt, offerAgainAfter, m_vault.clock().now()))
                continue;
            m_jobs.push_back({removed ? Job::What::drop : Job::What::put, link.mailbox, id, photo});
        }
    }
    return {};
}

Done PhotoCarrier::collectOfDesk(const vault::Link& link, const std::map<photos::PhotoId, std::size_t>& held)
{
    const auto course = m_vault.state().courses.find(link.course);
    if (course == m_vault.state().courses.end())
        return {};
    std::vector<photos::PhotoId> wanted;
    for (const auto& [photo, version] : course->second.photos) {
        if (course->second.photosRemoved.contains(photo) || course->second.clinicPhotos.contains(photo) || m_over.contains(photo))
            continue;
        const auto chunks = held.find(photo);
        const bool whole = chunks != held.end() && chunks->second == version.value.manifest.chunkHashes.size();
        if (whole && course->second.photosReceived.contains(photo))
            continue;
        const auto standing = m_vault.photoStanding(photo);
        if (!standing)
            return fail(standing.error());
        if ((*standing && (*standing)->refused) || !isRested(version.value, *standing))
            continue;
        if (whole)
            m_jobs.push_back({Job::What::fetch, link.mailbox, link.course, photo});
        else
            wanted.push_back(photo);
    }
    if (wanted.empty())
        return {};
    const auto there = m_there.find(link.mailbox);
    if (there == m_there.end()) {
        m_jobs.push_back({Job::What::look, link.mailbox, link.course, {}});
        return {};
    }
    for (const photos::PhotoId& photo : wanted)
        if (there->second.contains(photo))
            m_jobs.push_back({Job::What::fetch, link.mailbox, link.course, photo});
    return {};
}

const records::PhotoTaken* PhotoCarrier::taken() const
{
    const auto course = m_vault.state().courses.find(m_job->course);
    return course == m_vault.state().courses.end() ? nullptr : course->second.photo(m_job->photo);
}

std::string PhotoCarrier::path(const std::string& rest) const
{
    const std::string mailbox = "/v1/m/" + bytes::toHex(m_job->mailbox.view()) + "/blobs";
    return m_job->photo.isNull() ? mailbox : mailbox + "/" + bytes::toHex(m_job->photo.view()) + rest;
}

void PhotoCarrier::nextJob()
{
    if (m_jobs.empty())
        return end(false);
    m_job = m_jobs.front();
    m_jobs.pop_front();
    const auto self = shared_from_this();
    goOn([self] {
        switch (self->m_job->what) {
        case Job::What::look: return self->look();
        case Job::What::fetch: return self->fetch();
        case Job::What::put: return self->putUp();
        case Job::What::drop: return self->drop();
        }
    });
}

void PhotoCarrier::endJob(bool well)
{
    if (!well && m_job)
        m_over.insert(m_job->photo);
    if (mustYield())
        return end(true);
    nextJob();
}

void PhotoCarrier::failJob(const Error& error)
{
    problem(error);
    if (isOfNetwork(error) || error.reason == Reason::storageFailed)
        return end(false);
    endJob(false);
}

bool PhotoCarrier::isChannelOver() const
{
    const auto posts = m_job->channel ? postsOf(m_vault) : Result<std::vector<Post>>(std::vector<Post>{});
    return m_job->channel && posts && std::ranges::find(*posts, m_job->mailbox, &Post::mailbox) == posts->end();
}

void PhotoCarrier::putUp()
{
    const records::PhotoTaken* photo = taken();
    if (!photo)
        return endJob(false);
    // Another mailbox may have room for it; and nothing more is put up for a desk that was shut out meanwhile.
    if (m_full.contains(m_job->mailbox) || isChannelOver())
        return endJob(true);
    // Before the hub hears of it: what was begun there is dropped there if she takes it back.
    if (const Done noted = noteOffer(false); !noted)
        return failJob(noted.error());
    const auto chunks = static_cast<std::uint32_t>(photo->manifest.chunkHashes.size());
    const auto self = shared_from_this();
    ask({"PUT", path(), {}, bytes::Writer().u32(chunks).u64(photo->manifest.size).bytes(), {}},
        [self, chunks](const Result<mailbox::Response>& response) {
            if (!response)
                return self->putFailed(response.error());
            auto said = read(response->body, chunks);
            if (!said) {
                ++self->m_report.garbled;
                return self->endJob(false);
            }
            self->m_missing = std::move(said->missing);
            self->putNext();
        });
}

void PhotoCarrier::putNext()
{
    if (!taken() || isChannelOver())
        return endJob(true);  // taken back meanwhile, or the desk at the other end was shut out
    const auto self = shared_from_this();
    if (m_missing.empty())
        return ask({"POST", path("/done"), {}, {}, {}}, [self](const Result<mailbox::Response>& response) {
            if (!response)
                return self->putFailed(response.error());
            if (const Done noted = self->noteOffer(true); !noted)
                return self->failJob(noted.error());
            ++self->m_report.photosSent;
            self->endJob(true);
        });
    const std::uint32_t number = m_missing.front();
    auto chunk = m_vault.photoChunk(m_job->photo, number);
    if (!chunk)
        return failJob(chunk.error());
    const std::size_t size = chunk->size();
    ask({"PUT", path("/" + std::to_string(number)), {}, std::move(*chunk), {}},
        [self, size](const Result<mailbox::Response>& response) {
            if (!response)
                return self->putFailed(response.error());
            ++self->m_report.photoChunksSent;
            self->m_carried += size;
            self->m_missing.erase(self->m_missing.begin());
            if (self->mustYield())
                return self->end(true);
            self->putNext();
        });
}

void PhotoCarrier::putFailed(const Error& error)
{
    // No room, or a hub that knows no blobs yet: the others of this mailbox need not ask.
    if (error.reason == Reason::storageFull || error.reason == Reason::refused) {
        m_full.insert(m_job->mailbox);
        problem(error);
        return endJob(true);
    }
    if (error.reason != Reason::alreadyExists)
        return failJob(error);
    // Something else stands there under its name: it is cleared away, and put up whole by a later run.
    problem(error);
    const auto self = shared_from_this();
    ask({"POST", path("/drop"), {}, {}, {}}, [self](const Result<mailbox::Response>& response) {
        response ? self->endJob(false) : self->failJob(response.error());
    });
}

void PhotoCarrier::drop()
{
    const auto self = shared_from_this();
    ask({"POST", path("/drop"), {}, {}, {}}, [self](const Result<mailbox::Response>& response) {
        if (!response)
            return self->failJob(response.error());
        const Done forgotten = self->forgetOffer();
        forgotten ? self->endJob(true) : self->failJob(forgotten.error());
    });
}

}  // namespace ebbline::sync
