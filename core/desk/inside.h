#pragma once
/// \file
/// What an open desk holds; inside of core/desk only.

#include "core/desk/desk.h"

namespace ebbline::desk {

struct Desk::Inside {
    Inside(vault::Vault opened, const clock::Clock& source, aftercare::Zone where)
        : vault(std::move(opened)), clock(source), zone(std::move(where))
    {
    }

    vault::Vault vault;
    const clock::Clock& clock;
    aftercare::Zone zone;
    std::string person;

    clock::Moment now() const { return zone.moment(clock.now()); }
    Done append(const records::Body& body, const std::optional<envelope::MailboxId>& mailbox = {});
    const journal::CourseState* course(const recovery::CourseId& id) const;
    std::optional<envelope::MailboxId> mailboxOf(const recovery::CourseId& id) const;
    CourseSummary summaryOf(const recovery::CourseId& id, const journal::CourseState& course) const;
};

}  // namespace ebbline::desk
