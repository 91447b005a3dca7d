#pragma once
/// \file
/// What an open desk holds; inside of core/desk only.

#include "core/desk/desk.h"

namespace ebbline::desk {

inline constexpr const char* protocolDraftName = "protocol-draft";  ///< under which it is kept

struct Desk::Inside {
    Inside(vault::Vault opened, std::filesystem::path home, const clock::Clock& source, aftercare::Zone where)
        : vault(std::move(opened)), folder(std::move(home)), clock(source), zone(std::move(where))
    {
    }

    vault::Vault vault;
    std::filesystem::path folder;
    const clock::Clock& clock;
    aftercare::Zone zone;
    triage::SettledCourses settled;
    std::string person;
    std::string second;                       ///< who stands by at the next grave step
    std::optional<clock::Instant> allowedAt;  ///< when the passphrase was given for it

    clock::Moment now() const { return zone.moment(clock.now()); }
    /// The act, on each of these findings. \returns as Desk::actOn() refuses.
    Result<std::vector<records::Body>> acts(const recovery::CourseId& id, const std::vector<std::string>& findings,
                                            records::FindingActed acted) const;
    /// `finished`: as vault::Vault::append().
    Done append(const records::Body& body, const std::optional<envelope::MailboxId>& mailbox = {},
                const std::vector<std::string_view>& finished = {});
    /// The same for what carries no name: once the clinic has given roles, who did it stands in front of it.
    Done appendNamed(records::Task task, const recovery::CourseId& about, const records::Body& body,
                     const std::vector<std::string_view>& finished = {});
    std::vector<records::Body> named(records::Task task, const recovery::CourseId& about, const records::Body& body) const;
    /// Reason::refused if the role of the person at the desk does not allow it; Reason::invalidState if nobody is named
    /// where roles are given.
    Done needsTask(records::Task task) const;
    /// Whether any of `people` may name people, were `person` given `role`.
    bool leavesSomebody(const std::vector<std::string>& people, const std::string& person, records::Role role) const;
    const journal::CourseState* course(const recovery::CourseId& id) const;
    std::optional<envelope::MailboxId> mailboxOf(const recovery::CourseId& id) const;
    /// The newest roster, or the one that says what has been true so far: this desk alone.
    pairing::Roster roster(bytes::Bytes* signedBytes = nullptr) const;
    /// Signs and keeps the next one. `epochSecret`: of the epoch that it begins.
    Done changeRoster(const std::function<Done(pairing::Roster&)>& change, const crypto::BoxKey* epochSecret = nullptr);
    /// \returns Reason::refused without the root key.
    Done needsRoot() const;
    bool isAllowed() const;
    Done needsStep() const;    ///< Reason::locked if the passphrase was not given just now
    Done needsSecond() const;  ///< Reason::notEnough if the clinic names another person and none of them stands by
    /// Uses up what allowed it, and leaves a line.
    Done stepTaken(records::Step step, const envelope::DeviceId& device, const recovery::CourseId& course);
    Done prepareKey(bool anew);
    bool isFirstOwner() const;
    /// After a run that reached the hub: begins an epoch that is due, and destroys keys whose time is over.
    Done keepKeys();
    /// From `due` on the hub is to refuse this device; an earlier moment counts, a later one does not. \returns as needsRoot().
    Done endAtHub(const envelope::DeviceId& device, bool phone, clock::Instant due);
    /// Whether a device is refused, so that it cannot be paired again under its keys.
    Result<bool> isEnded(const envelope::DeviceId& device) const;
    Done noteEndings();
    /// What a desk wrote for phones goes to them from this one.
    Done passOnFrom(const envelope::DeviceId& device);
    Done noteTold(const std::vector<envelope::DeviceId>& devices);
    Result<std::vector<std::pair<envelope::DeviceId, bytes::Bytes>>> endingsDue();
    /// What is due, in one request; `then` gets an error of our own disk alone.
    void tellHub(sync::Courier& courier, std::function<void(std::optional<Error>)> then);
    CourseSummary summaryOf(const recovery::CourseId& id, const journal::CourseState& course) const;
};

}  // namespace ebbline::desk
