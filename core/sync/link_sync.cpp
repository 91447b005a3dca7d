#include "core/sync/link_sync.h"

#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "core/mailbox/service.h"
#include "core/sync/hub_client.h"
#include "core/sync/hub_time.h"
#include "core/sync/inbox.h"
#include "core/sync/key_change.h"
#include "core/sync/looking_back.h"
#include "core/sync/older_copy.h"
#include "core/sync/outbox.h"
#include "core/sync/photo_carrier.h"
#include "core/sync/refusals.h"

#include <memory>

namespace ebbline::sync {

namespace {

/// An answer of at least this size was cut off by the hub's bound: there may be more.
constexpr std::size_t fullAnswer = mailbox::maximumAnswer / 2;
constexpr std::size_t mostStuck = 8;
/// Under this name a desk keeps the mailbox at which a hub's limit ended its last run.
constexpr std::string_view stoppedName = "sync-stopped";

/// One run over all links, step by step; keeps itself alive until done.
class Run : public std::enable_shared_from_this<Run> {
public:
    Run(vault::Vault& vault, Courier& courier, std::function<void(Report)> done)
        : m_vault(vault), m_hub(std::make_shared<HubClient>(courier, vault.signingKey(), vault.clock())),
          m_done(std::move(done))
    {
    }

    void start()
    {
        auto posts = postsOf(m_vault);
        if (!posts)
            return finish(posts.error());
        m_posts = std::move(*posts);
        // A clinic with many courses asks once where there is something new.
        if (isClinic() && m_posts.size() > 1) {
            const auto self = shared_from_this();
            m_hub->signedRequest({"GET", "/v1/news", {}, {}, {}}, [self](const Result<mailbox::Response>& response) {
                if (!response) {
                    self->m_report.retryAfter = self->m_hub->retryAfter();
                    if (refusedBecause(response.error()) == Refusal::Why::unknownThere)
                        if (const Done noted = noteUnknownThere(self->m_vault, self->m_posts); !noted)
                            return self->finish(noted.error());
                    return self->finish(response.error());
                }
                self->m_report.reached = true;
                self->keepNews(response->body);
                self->beginWhereStopped();
                self->next();
            });
            return;
        }
        next();
    }

private:
    bool isClinic() const { return m_vault.owner() == vault::Vault::Owner::clinic; }
    clock::Instant now() const { return m_vault.clock().now(); }

    void keepNews(const bytes::Bytes& body)
    {
        bytes::Reader reader(body);
        std::vector<envelope::MailboxId> news;
        while (reader.left() >= 16)
            news.push_back(reader.id<envelope::MailboxTag>());
        m_report.garbled += reader.atEnd() ? 0 : 1;
        std::erase_if(m_posts, [&](const Post& post) {
            const auto outgoing = m_vault.outgoing(post.mailbox);
            return std::ranges::find(news, post.mailbox) == news.end() && outgoing && outgoing->empty() && !Outbox(m_vault, post).hasWaiting() && !heartbeatIsDue(m_vault, post);
        });
    }

    /// A run that a hub's limit ends goes on in the next one where it stopped, or whoever comes last would never be asked for.
    void beginWhereStopped()
    {
        const auto kept = m_vault.kept(stoppedName);
        const auto place = std::ranges::find_if(m_posts, [&](const Post& post) { return kept && std::ranges::equal(*kept, post.mailbox.view()); });
        if (place != m_posts.end())
            std::ranges::rotate(m_posts, place);
    }

    /// Whatever else went wrong before, it is the limit that ended the run.
    Done noteWhereStopped(bool limited)
    {
        const bool stopped = limited && m_place < m_posts.size();
        return stopped || m_vault.kept(stoppedName) ? m_vault.keep(stoppedName, stopped ? post().mailbox.view() : bytes::View{}) : Done{};
    }

    void next()
    {
        if (m_place == m_posts.size())
            return carryPhotos();
        m_acknowledged = false;
        m_refusedHere.reset();
        // Somebody may be over since the run began: a desk gets and says nothing more, and nothing is sealed for a phone.
        const auto over = post().channel || Outbox(m_vault, post()).hasWaiting() ? hasEnded(m_vault, post()) : Result<bool>(post().ended);
        if (!over || (*over && post().channel))
            return over ? nextLink() : finish(over.error());
        m_posts[m_place].ended = *over;
        // Who was away may not know whom to seal to.
        m_hearing = hasToHearFirst();
        return m_hearing ? startPulling() : sealAndOffer();
    }

    bool hasToHearFirst() const
    {
        const auto standing = m_vault.standing(post().mailbox);
        return standing && standing->heardAt && isOver(*standing->heardAt, hearFirstAfter, now()) && Outbox(m_vault, post()).hasWaiting();
    }

    /// A newer key may have come with what was pulled.
    Done readPostAgain()
    {
        auto posts = postsOf(m_vault);
        for (Post& each : posts ? *posts : std::vector<Post>{})
            if (each.mailbox == post().mailbox)
                m_posts[m_place] = std::move(each);
        return posts ? Done{} : Done(fail(posts.error()));
    }

    /// The one place where anything new is sealed: whoever is over by now gets nothing of it, whichever way led here.
    Done sealAll()
    {
        const bool saysMore = post().channel || Outbox(m_vault, post()).hasWaiting();
        const auto over = saysMore ? hasEnded(m_vault, post()) : Result<bool>(post().ended);
        if (!over)
            return fail(over.error());
        m_posts[m_place].ended = *over;
        if (*over && post().channel)
            return {};
        Outbox outbox(m_vault, post());
        if (const Done sealed = outbox.sealWaiting(); !sealed)
            return sealed;
        if (heartbeatIsDue(m_vault, post()))
            for (const crypto::SigningPublicKey& peer : post().peers)
                if (const Done sealed = outbox.sealHeld(envelope::Kind::heartbeat, envelope::deviceIdOf(peer)); !sealed)
                    return sealed;
        return {};
    }

    void sealAndOffer()
    {
        if (const Done sealed = sealAll(); !sealed)
            return finish(sealed.error());
        post().ended && post().channel ? nextLink() : offer();
    }

    const Post& post() const { return m_posts[m_place]; }

    /// Offers the hub every envelope that it may not have, oldest first.
    void offer()
    {
        auto outgoing = m_vault.outgoing(post().mailbox);
        if (!outgoing)
            return finish(outgoing.error());
        std::erase_if(*outgoing, [&](const vault::Outgoing& each) {
            return each.atHub && (post().ended || !isOver(each.offeredAt, offerAgainAfter, now()));
        });
        m_outgoing = std::move(*outgoing);
        const auto refusal = refusalOf(m_vault, post().mailbox);
        if (!refusal)
            return finish(refusal.error());
        m_refusal = *refusal;
        offerNext(0);
    }

    /// Those behind one that is refused wait with it: nothing is passed over. Once a run is enough, and less often after a while.
    bool isLeftAlone(const vault::Outgoing& waiting) const
    {
        return m_refusedHere == waiting.sequence || (m_refusal && m_refusal->sequence == waiting.sequence && rests(*m_refusal, now()));
    }

    void offerNext(std::size_t place)
    {
        if (place == m_outgoing.size() || isLeftAlone(m_outgoing[place]))
            return m_acknowledged ? nextLink() : startPulling();
        const vault::Outgoing& waiting = m_outgoing[place];
        mailbox::Request request{"PUT", mailboxPath(waiting.mailbox) + "/" + bytes::toHex(m_vault.device().view()) + "/"
                                            + std::to_string(waiting.sequence),
                                 {}, waiting.envelope, {}};
        const auto self = shared_from_this();
        m_hub->signedRequest(std::move(request), [self, place](const Result<mailbox::Response>& response) {
            const vault::Outgoing& sent = self->m_outgoing[place];
            if (!response)
                return self->offerFailed(sent, response.error());
            if (const Done marked = self->m_vault.markAtHub(sent.mailbox, sent.sequence); !marked)
                return self->finish(marked.error());
            if (self->m_refusal && self->m_refusal->sequence == sent.sequence)
                if (const Done taken = forgetRefusal(self->m_vault, sent.mailbox); !taken)
                    return self->finish(taken.error());
            ++self->m_report.envelopesSent;
            self->offerNext(place + 1);
        });
    }

    /// A mailbox that takes nothing may still hold what says why, above all the peer's acknowledgement.
    void offerFailed(const vault::Outgoing& refused, const Error& error)
    {
        if (const auto why = refusedBecause(error)) {
            m_refusedHere = refused.sequence;
            if (const Done noted = noteRefused(m_vault, refused.mailbox, refused.sequence, *why); !noted)
                return finish(noted.error());
        }
        if (m_acknowledged || error.reason == Reason::unreachable || error.reason == Reason::tooSoon)
            return problemWithLink(error);
        if (!m_report.problem)
            m_report.problem = error;
        startPulling();
    }

    void startPulling()
    {
        m_stuck.clear();
        m_inbox.emplace(m_vault, post(), m_report);
        pull();
    }

    void pull()
    {
        const Result<std::string> question = questionFor(m_vault, post(), m_stuck);
        if (!question)
            return finish(question.error());
        mailbox::Request request{"GET", mailboxPath(post().mailbox), *question, {}, {}};
        const auto self = shared_from_this();
        m_hub->signedRequest(std::move(request), [self](const Result<mailbox::Response>& response) {
            if (!response)
                return self->problemWithLink(response.error());
            self->m_report.reached = true;
            self->take(response->body);
        });
    }

    void take(const bytes::Bytes& body)
    {
        if (const auto over = post().channel ? hasEnded(m_vault, post()) : Result<bool>(false); !over || *over)
            return over ? nextLink() : finish(over.error());
        const Result<std::size_t> fresh = m_inbox->take(body);
        if (!fresh)
            return finish(fresh.error());
        // Each further question needs something new in the last answer, so a hub cannot keep us asking.
        if (*fresh > 0 && body.size() >= fullAnswer)
            return pull();
        if (body.size() >= fullAnswer && leaveOutStuck())
            return pull();
        const bool heard = std::exchange(m_hearing, false);
        if (const Done read = heard ? readPostAgain() : Done{}; !read)
            return finish(read.error());
        // Before the acknowledgements: they would stand among what it passes over.
        const auto owed = Outbox(m_vault, post()).sealOwed();
        if (!owed)
            return finish(owed.error());
        for (const envelope::DeviceId& sender : m_inbox->toAcknowledge())
            if (const Done sealed = Outbox(m_vault, post()).sealHeld(envelope::Kind::acknowledgement, sender); !sealed)
                return finish(sealed.error());
        for (const envelope::DeviceId& sender : m_inbox->toAsk())
            if (const Done sealed = Outbox(m_vault, post()).sealAsk(sender); !sealed)
                return finish(sealed.error());
        if (const Done sealed = heard ? sealAll() : Done{}; !sealed)
            return finish(sealed.error());
        m_answers = heard || *owed || !m_inbox->toAcknowledge().empty() || !m_inbox->toAsk().empty();
        // A sign of life that came is answered by one, if nothing else says that we are here.
        if (!m_answers && !m_inbox->advanced().empty() && heartbeatIsDue(m_vault, post())) {
            m_answers = true;
            for (const envelope::DeviceId& sender : m_inbox->advanced())
                if (const Done sealed = Outbox(m_vault, post()).sealHeld(envelope::Kind::heartbeat, sender); !sealed)
                    return finish(sealed.error());
        }
        m_acknowledged = true;
        m_tell.assign(m_inbox->advanced().begin(), m_inbox->advanced().end());
        tellOlder();
    }

    /// Whoever cannot go on with its own chain says why, beside it.
    void tellOlder()
    {
        auto word = olderCopyWord(m_vault, post());
        if (!word)
            return finish(word.error());
        if (!*word)
            return tellHub();
        const auto self = shared_from_this();
        m_hub->signedRequest(std::move(**word), [self](const Result<mailbox::Response>& response) {
            if (response || response.error().reason == Reason::alreadyExists)
                if (const Done told = noteOlderCopyTold(self->m_vault, self->post().mailbox); !told)
                    return self->finish(told.error());
            self->tellHub();
        });
    }

    /// Who fills answers without bringing anything on is left out for the rest of this run, so that one sender,
    /// lost or broken, does not stand before the others. \returns whether there is anybody new to leave out.
    bool leaveOutStuck()
    {
        const std::size_t before = m_stuck.size();
        for (const envelope::DeviceId& sender : m_inbox->seen())
            if (!m_inbox->advanced().contains(sender) && m_stuck.size() < mostStuck)
                m_stuck.insert(sender);
        return m_stuck.size() > before;
    }

    /// Lets the hub forget what we hold; nothing depends on it.
    void tellHub()
    {
        if (m_tell.empty())
            return m_answers ? offer() : nextLink();
        const envelope::DeviceId of = m_tell.back();
        m_tell.pop_back();
        const Result<vault::Cursor> head = m_vault.peerHead(post().mailbox, of);
        if (!head)
            return finish(head.error());
        mailbox::Request request{"POST", mailboxPath(post().mailbox) + "/ack", {},
                                 bytes::Writer().raw(of.view()).u64(head->sequence).bytes(), {}};
        const auto self = shared_from_this();
        m_hub->signedRequest(std::move(request), [self](const Result<mailbox::Response>&) { self->tellHub(); });
    }

    void problemWithLink(const Error& error)
    {
        // One mailbox that is full or refused does not stop the others; no network stops all.
        if (!m_report.problem)
            m_report.problem = error;
        m_limited = error.reason == Reason::tooSoon;
        if (error.reason == Reason::unreachable || m_limited) {
            m_report.retryAfter = m_hub->retryAfter();
            return finish();
        }
        // Nothing could be heard here: what waits goes out all the same.
        if (std::exchange(m_hearing, false))
            return sealAndOffer();
        nextLink();
    }

    void nextLink()
    {
        ++m_place;
        next();
    }

    /// Once everybody had a turn; and everybody has one again before more of them are carried.
    void carryPhotos()
    {
        const auto carrier = m_photos ? std::exchange(m_photos, {}) : std::make_shared<PhotoCarrier>(m_vault, m_hub, m_report);
        const auto self = shared_from_this();
        carrier->run([self](bool again, std::shared_ptr<PhotoCarrier> same) {
            if (!again)
                return self->finish();
            self->m_photos = std::move(same);
            self->m_place = 0;
            self->start();
        });
    }

    void finish(std::optional<Error> problem = {})
    {
        if (problem && !m_report.problem)
            m_report.problem = std::move(problem);
        if (const Done noted = noteWhereStopped(m_limited); !noted && !m_report.problem)
            m_report.problem = noted.error();
        if (const auto ahead = m_hub->clockAhead())
            if (const Done noted = noteClockAhead(m_vault, *ahead); !noted && !m_report.problem)
                m_report.problem = noted.error();
        lookBack(m_vault, m_report);
        m_done(m_report);
    }

    vault::Vault& m_vault;
    std::shared_ptr<HubClient> m_hub;
    std::function<void(Report)> m_done;
    std::vector<Post> m_posts;
    std::size_t m_place = 0;
    bool m_limited = false;       ///< the hub's limit ended the run
    bool m_acknowledged = false;  ///< this link was pulled; only acknowledgements are still to offer
    bool m_hearing = false;       ///< this link is pulled before anything is sealed for it
    bool m_answers = false;       ///< something was sealed in answer to what was pulled
    std::optional<Inbox> m_inbox;
    std::set<envelope::DeviceId> m_stuck;  ///< senders of this mailbox that are left out
    std::vector<envelope::DeviceId> m_tell;
    std::vector<vault::Outgoing> m_outgoing;
    std::optional<Refusal> m_refusal;             ///< of this mailbox, before it was offered anything
    std::optional<std::uint64_t> m_refusedHere;  ///< in this run
    Report m_report;
    std::shared_ptr<PhotoCarrier> m_photos;  ///< between its turns
};

}  // namespace

void run(vault::Vault& vault, Courier& courier, std::function<void(Report)> done)
{
    std::make_shared<Run>(vault, courier, std::move(done))->start();
}

}  // namespace ebbline::sync
