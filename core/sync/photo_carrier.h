#pragma once
/// \file
/// Carries the ciphertexts of photographs, after everything else and in pieces: whatever of more weight comes up
/// goes first, and what was cut goes on where it was cut; inside of core/sync only.
///
/// A phone puts up what no desk has confirmed, and what it took back it lets the hub drop. A desk fetches what the
/// journal names, opens and checks it, and only then tells the phone that it holds it. What the clinic took goes through
/// the channels between its desks alone: whoever put it in offers it to every other one until that one said that it holds it.

#include "core/sync/hub_client.h"
#include "core/sync/link_sync.h"
#include "core/sync/post.h"

#include <deque>
#include <set>

namespace ebbline::sync {

/// So many bytes are carried before envelopes have their turn again. Our own choice.
inline constexpr std::size_t photoTurn = 2u * 1024 * 1024;
/// A photograph that does not come is asked about at every run for so long, and every few hours afterwards.
inline constexpr std::chrono::hours photoFreshFor{24};

/// Whether asking anything else would fail as well.
bool isOfNetwork(const Error& error);

/// Whether a desk put a photograph in, or said that it holds it. \pre the course has it
bool isHeldBy(const journal::CourseState& course, const photos::PhotoId& photo, const envelope::DeviceId& desk);

class PhotoCarrier : public std::enable_shared_from_this<PhotoCarrier> {
public:
    /// All three outlive it.
    PhotoCarrier(vault::Vault& vault, std::shared_ptr<HubClient> hub, Report& report)
        : m_vault(vault), m_hub(std::move(hub)), m_report(report)
    {
    }

    /// Called once, with whether to come again once the envelopes have had their turn, and with the carrier itself,
    /// which remembers what it tried: while it works it belongs to nobody but the answers that it waits for.
    using Ended = std::function<void(bool again, std::shared_ptr<PhotoCarrier> carrier)>;
    /// Works until its turn is over or nothing is left that can be done now.
    void run(Ended ended);

private:
    struct Job {
        enum class What : std::uint8_t { look, fetch, put, drop } what;
        envelope::MailboxId mailbox;
        recovery::CourseId course;  ///< null for a look into a channel
        photos::PhotoId photo;      ///< null for look
        bool channel = false;       ///< between desks: a photograph that the clinic took
    };
    /// What this device tried to put into a channel, and when.
    struct Offer {
        bool atHub = false;
        clock::Instant triedAt;
    };

    Done collect();
    Done collectOfPhone(const vault::Link& link);
    Done collectOfDesk(const vault::Link& link, const std::map<photos::PhotoId, std::size_t>& held);
    Done collectOfChannel(const Post& post, const std::map<photos::PhotoId, std::size_t>& held);
    Done collectOffer(const Post& post, const recovery::CourseId& id, const journal::CourseState& course, const photos::PhotoId& photo, bool whole);
    bool isRested(const records::PhotoTaken& photo, const std::optional<vault::PhotoStanding>& standing) const;
    const records::PhotoTaken* taken() const;
    std::string path(const std::string& rest = {}) const;

    std::string offerName() const;
    Result<std::optional<Offer>> offerOf(const std::string& name) const;
    /// That the current job's photograph is put up, before it is and once it is.
    Done noteOffer(bool atHub);
    Done forgetOffer();

    void nextJob();
    void look();
    void lookedIntoChannel();
    Done restWhatIsAway();
    void putUp();
    void putNext();
    void putFailed(const Error& error);
    void drop();
    void fetch();
    void fetchNext();
    void fetchForged(const Error& error);
    void arrived();
    /// Lets the hub forget in time what is here; nothing depends on it.
    void letForget();

    /// The current job is over; it is not tried again in this run unless it went well.
    void endJob(bool well);
    void failJob(const Error& error);
    /// Whether something of more weight waits, or the turn is over.
    bool mustYield() const;
    bool isChannelOver() const;  ///< the job's mailbox led to a desk that was shut out meanwhile
    void end(bool again);
    void problem(const Error& error);

    void ask(mailbox::Request request, std::function<void(const Result<mailbox::Response>&)> take);
    /// Runs one step after the other without nesting them, even where answers come at once.
    void goOn(std::function<void()> next);

    vault::Vault& m_vault;
    std::shared_ptr<HubClient> m_hub;
    Report& m_report;
    Ended m_ended;
    std::function<void()> m_next;
    bool m_turning = false;

    std::deque<Job> m_jobs;
    std::optional<Job> m_job;
    std::vector<std::uint32_t> m_missing;  ///< of the current job, still to do
    std::size_t m_carried = 0;             ///< bytes in this turn
    std::set<photos::PhotoId> m_over;      ///< tried in this run, and not again
    std::map<envelope::MailboxId, std::set<photos::PhotoId>> m_there;  ///< what the hub said that it holds, in this run
    std::set<envelope::MailboxId> m_full;  ///< mailboxes that take none, in this run
};

}  // namespace ebbline::sync
