#include "core/sync/link_sync.h"

#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "core/sync/hub_client.h"
#include "core/sync/messages.h"

#include <memory>

namespace ebbline::sync {

namespace {

std::string mailboxPath(const envelope::MailboxId& mailbox)
{
    return "/v1/m/" + bytes::toHex(mailbox.view());
}

/// One run over all links, step by step; keeps itself alive until done.
class Run : public std::enable_shared_from_this<Run> {
public:
    Run(vault::Vault& vault, Courier& courier, std::function<void(Report)> done)
        : m_vault(vault), m_hub(std::make_shared<HubClient>(courier, vault.signingKey(), vault.clock())),
          m_done(std::move(done)), m_links(vault.links())
    {
    }

    void start()
    {
        // A clinic with many courses asks once where there is something new.
        if (m_vault.owner() == vault::Vault::Owner::clinic && m_links.size() > 1) {
            const auto self = shared_from_this();
            m_hub->signedRequest({"GET", "/v1/news", {}, {}, {}}, [self](const Result<mailbox::Response>& response) {
                if (!response)
                    return self->finish(response.error());
                self->keepNews(response->body);
                self->next();
            });
            return;
        }
        next();
    }

private:
    void keepNews(const bytes::Bytes& body)
    {
        bytes::Reader reader(body);
        std::vector<envelope::MailboxId> news;
        while (reader.left() >= 16)
            news.push_back(reader.id<envelope::MailboxTag>());
        std::erase_if(m_links, [&](const vault::Link& link) {
            const bool fresh = std::find(news.begin(), news.end(), link.mailbox) != news.end();
            const auto unsealed = m_vault.unsealed(link.mailbox);
            const auto outgoing = m_vault.outgoing(link.mailbox);
            return !fresh && unsealed && unsealed->empty() && outgoing && outgoing->empty();
        });
    }

    void next()
    {
        if (m_place == m_links.size())
            return finish();
        m_received = false;
        if (const Done sealed = seal(envelope::Kind::operations); !sealed)
            return finish(sealed.error());
        offer();
    }

    const vault::Link& link() const { return m_links[m_place]; }

    /// Puts what waits into envelopes, durably, before anything is sent.
    Done seal(envelope::Kind kind, bytes::View message = {})
    {
        std::vector<journal::Operation> waiting;
        if (kind == envelope::Kind::operations) {
            auto unsealed = m_vault.unsealed(link().mailbox);
            if (!unsealed)
                return fail(unsealed.error());
            waiting = std::move(*unsealed);
            if (waiting.empty())
                return {};
        }
        do {
            std::vector<journal::Operation> batch;
            std::vector<journal::OperationId> carried;
            std::size_t size = 0;
            while (!waiting.empty() && (batch.empty() || size + waiting.front().body.size() < maximumBatch)) {
                size += waiting.front().body.size() + 100;
                carried.push_back(waiting.front().id);
                batch.push_back(std::move(waiting.front()));
                waiting.erase(waiting.begin());
            }
            const Result<vault::Cursor> head = m_vault.ownHead(link().mailbox);
            if (!head)
                return fail(head.error());
            const envelope::Header header{kind, link().mailbox, m_vault.device(), head->sequence + 1, head->hash, link().epoch};
            const bytes::Bytes contents =
                kind == envelope::Kind::operations ? packOperations(batch) : bytes::Bytes(message.begin(), message.end());
            auto sealed = envelope::seal(header, m_vault.signingKey(), {link().peerBox}, contents);
            if (!sealed)
                return fail(sealed.error());
            if (const Done stored = m_vault.storeSealed(link().mailbox, header.sequence, *sealed, carried); !stored)
                return stored;
        } while (!waiting.empty());
        return {};
    }

    /// Offers the hub every envelope that it may not have, oldest first.
    void offer()
    {
        auto outgoing = m_vault.outgoing(link().mailbox);
        if (!outgoing)
            return finish(outgoing.error());
        std::erase_if(*outgoing, [](const vault::Outgoing& each) { return each.atHub; });
        m_outgoing = std::move(*outgoing);
        offerNext(0);
    }

    void offerNext(std::size_t place)
    {
        if (place == m_outgoing.size())
            return m_received ? nextLink() : pull();
        const vault::Outgoing& waiting = m_outgoing[place];
        mailbox::Request request{"PUT", mailboxPath(waiting.mailbox) + "/" + bytes::toHex(m_vault.device().view()) + "/"
                                            + std::to_string(waiting.sequence),
                                 {}, waiting.envelope, {}};
        const auto self = shared_from_this();
        m_hub->signedRequest(std::move(request), [self, place](const Result<mailbox::Response>& response) {
            if (!response)
                return self->problemWithLink(response.error());
            const vault::Outgoing& sent = self->m_outgoing[place];
            if (const Done marked = self->m_vault.markAtHub(sent.mailbox, sent.sequence); !marked)
                return self->finish(marked.error());
            ++self->m_report.envelopesSent;
            self->offerNext(place + 1);
        });
    }

    void pull()
    {
        const envelope::DeviceId peer = envelope::deviceIdOf(link().peerSigning);
        const Result<vault::Cursor> head = m_vault.peerHead(link().mailbox, peer);
        if (!head)
            return finish(head.error());
        mailbox::Request request{"GET", mailboxPath(link().mailbox),
                                 "after=" + bytes::toHex(peer.view()) + ":" + std::to_string(head->sequence), {}, {}};
        const auto self = shared_from_this();
        m_hub->signedRequest(std::move(request), [self](const Result<mailbox::Response>& response) {
            if (!response)
                return self->problemWithLink(response.error());
            self->take(response->body);
        });
    }

    void take(const bytes::Bytes& body)
    {
        bytes::Reader reader(body);
        bool acknowledge = false;
        while (reader.ok() && reader.left() > 0) {
            const bytes::View envelope = reader.block(envelope::maximumEnvelope);
            if (!reader.ok())
                break;
            const Result<bool> counted = takeOne(envelope);
            if (!counted)
                return finish(counted.error());
            acknowledge = acknowledge || *counted;
        }
        if (!acknowledge)
            return nextLink();
        const envelope::DeviceId peer = envelope::deviceIdOf(link().peerSigning);
        const Result<vault::Cursor> head = m_vault.peerHead(link().mailbox, peer);
        if (!head)
            return finish(head.error());
        const bytes::Bytes message = pack(Acknowledgement{peer, *head, m_vault.clock().now()});
        if (const Done sealed = seal(envelope::Kind::acknowledgement, message); !sealed)
            return finish(sealed.error());
        m_received = true;
        tellHub(peer, head->sequence);
    }

    /// Lets the hub forget what we hold; nothing depends on it.
    void tellHub(const envelope::DeviceId& peer, std::uint64_t sequence)
    {
        mailbox::Request request{"POST", mailboxPath(link().mailbox) + "/ack", {},
                                 bytes::Writer().raw(peer.view()).u64(sequence).bytes(), {}};
        const auto self = shared_from_this();
        m_hub->signedRequest(std::move(request), [self](const Result<mailbox::Response>&) { self->offer(); });
    }

    /// \returns whether the peer is to be told; an error only if our own disk failed.
    Result<bool> takeOne(bytes::View sealed)
    {
        const auto keepAside = [&](const Error& why) -> Result<bool> {
            ++m_report.quarantined;
            if (const Done kept = m_vault.quarantine(link().mailbox, sealed, why); !kept)
                return fail(kept.error());
            return false;
        };
        const auto& recipient = m_vault.owner() == vault::Vault::Owner::clinic ? m_vault.clinicEpoch() : m_vault.boxKey();
        const auto opened = envelope::open(sealed, link().peerSigning, recipient);
        if (!opened)
            return keepAside(opened.error());
        if (opened->header.mailbox != link().mailbox)
            return keepAside({Reason::forged, "envelope: of another mailbox"});

        const Result<vault::Cursor> known = m_vault.peerHead(link().mailbox, opened->header.sender);
        if (!known)
            return fail(known.error());
        const vault::Cursor& head = *known;
        if (opened->header.sequence <= head.sequence) {
            if (opened->header.sequence == head.sequence && envelope::hashOf(sealed) != head.hash) {
                m_report.forkSeen = true;
                return keepAside({Reason::outOfOrder, "envelope: another one with this number was accepted"});
            }
            return false;
        }
        if (opened->header.sequence != head.sequence + 1) {
            m_report.gapSeen = true;
            return keepAside({Reason::outOfOrder, "envelope: one before it is missing"});
        }
        if (opened->header.previous != head.hash) {
            m_report.forkSeen = true;
            return keepAside({Reason::outOfOrder, "envelope: it does not follow the one before"});
        }
        return accept(*opened, {opened->header.sequence, envelope::hashOf(sealed)}, keepAside);
    }

    template <typename KeepAside>
    Result<bool> accept(const envelope::Opened& opened, const vault::Cursor& head, const KeepAside& keepAside)
    {
        ++m_report.envelopesReceived;
        std::vector<journal::Operation> operations;
        bool tell = false;
        if (opened.header.kind == envelope::Kind::operations) {
            auto unpacked = unpackOperations(opened.plaintext);
            if (!unpacked)
                return keepAside(unpacked.error());
            for (const journal::Operation& operation : *unpacked)
                if (!isAllowed(operation, opened.header.sender))
                    return keepAside({Reason::forged, "operation: not the sender's to write"});
            operations = std::move(*unpacked);
            m_report.operationsReceived += operations.size();
            tell = true;
        } else if (opened.header.kind == envelope::Kind::acknowledgement) {
            const auto acknowledgement = unpackAcknowledgement(opened.plaintext);
            if (!acknowledgement)
                return keepAside(acknowledgement.error());
            const Result<vault::Cursor> own = m_vault.ownHead(link().mailbox);
            if (!own)
                return fail(own.error());
            if (acknowledgement->of == m_vault.device() && acknowledgement->held.sequence <= own->sequence)
                if (const Done noted = m_vault.acknowledged(link().mailbox, acknowledgement->held.sequence, acknowledgement->at);
                    !noted)
                    return fail(noted.error());
        }
        if (const Done accepted = m_vault.accept(link().mailbox, opened.header.sender, head, operations); !accepted)
            return fail(accepted.error());
        return tell;
    }

    /// A phone writes about its own course only, a clinic nothing in the patient's name.
    bool isAllowed(const journal::Operation& operation, const envelope::DeviceId& sender) const
    {
        using records::Kind;
        if (operation.id.device != sender || operation.audience != journal::Audience::patientAndClinic)
            return false;
        const auto kind = static_cast<Kind>(operation.kind);
        const bool newer = operation.kind > static_cast<std::uint16_t>(records::newestKind);
        if (m_vault.owner() == vault::Vault::Owner::clinic) {
            const bool patients = kind == Kind::entryRecorded || kind == Kind::reminderAnswered
                                  || kind == Kind::warningShown || kind == Kind::messageWritten || kind == Kind::messageRead;
            return (patients || newer) && operation.course == link().course;
        }
        return newer || kind == Kind::courseOpened || kind == Kind::entriesOpened || kind == Kind::messageWritten
               || kind == Kind::messageRead;
    }

    void problemWithLink(const Error& error)
    {
        // One mailbox that is full or refused does not stop the others; no network stops all.
        if (!m_report.problem)
            m_report.problem = error;
        if (error.reason == Reason::unreachable || error.reason == Reason::tooSoon)
            return finish();
        nextLink();
    }

    void nextLink()
    {
        ++m_place;
        next();
    }

    void finish(std::optional<Error> problem = {})
    {
        if (problem && !m_report.problem)
            m_report.problem = std::move(problem);
        m_done(m_report);
    }

    vault::Vault& m_vault;
    std::shared_ptr<HubClient> m_hub;
    std::function<void(Report)> m_done;
    std::vector<vault::Link> m_links;
    std::size_t m_place = 0;
    bool m_received = false;  ///< this link was pulled; only the acknowledgement is still to offer
    std::vector<vault::Outgoing> m_outgoing;
    Report m_report;
};

}  // namespace

void run(vault::Vault& vault, Courier& courier, std::function<void(Report)> done)
{
    std::make_shared<Run>(vault, courier, std::move(done))->start();
}

}  // namespace ebbline::sync
