#pragma once
/// \file
/// What an open diary holds; inside of core/patient only.

#include "core/patient/diary.h"

namespace ebbline::patient {

struct Diary::Inside {
    Inside(vault::Vault opened, std::filesystem::path home, const clock::Clock& source, aftercare::Zone where)
        : vault(std::move(opened)), folder(std::move(home)), clock(source), zone(std::move(where))
    {
    }

    vault::Vault vault;
    std::filesystem::path folder;
    const clock::Clock& clock;
    aftercare::Zone zone;

    clock::Moment now() const { return zone.moment(clock.now()); }
    /// The course of the link in use, once it has arrived; until then, and without one, that with the newest treatment.
    const journal::CourseState* course() const;
    /// Its id; null before a treatment has arrived.
    recovery::CourseId courseId() const;
    /// The one in use; one that ended if there is no other.
    Result<std::optional<vault::Link>> link() const;
    /// Into the vault, and on its way to the clinic if there is one: a link that cannot be read is an error, not none.
    Result<std::vector<journal::OperationId>> append(const std::vector<records::Body>& bodies, const clock::Moment& entered,
                                                     std::optional<journal::OperationId> supersedes = {},
                                                     const std::vector<std::string_view>& finished = {});
    Result<Draft> draftOf(const char* name) const;
    std::vector<triage::Finding> findings() const;
    /// The entry that raised it, by any of its versions; null if none did, as of a silence. \pre joined
    recovery::EntryId raisedIn(const triage::Finding& finding) const;
    EntryView viewOf(const recovery::EntryId& id, const std::vector<triage::Finding>& findings) const;
    EntryState stateOf(const journal::EntryHistory& history) const;
    recovery::Entry dated(recovery::Entry entry) const;                             ///< \pre joined
    std::vector<triage::Finding> raisedBy(const recovery::Entry& entry) const;  ///< \pre joined
    Result<Saved> store(recovery::Entry entry, std::optional<journal::OperationId> supersedes);
    aftercare::QuietHours quietHours() const;
    std::vector<ReminderView> reminders() const;
    /// The open table of photographs.
    static std::string photoTable(const std::vector<PhotoView>& views,
                                  const std::vector<std::pair<std::string, photos::PhotoId>>& files);
    /// Begins and announces this phone's next key where that is due.
    Done announceKey();
    /// Keeps the contacts readable while locked, once a course has arrived.
    Done publishContacts();
};

/// How the open tables name an entry.
std::string shortName(const recovery::EntryId& id);

}  // namespace ebbline::patient
