// Who may invite, and what is true here once both have read the same number.

#include "core/desk/inviting_inside.h"

namespace ebbline::desk {

/// A desk gets the clinic's keys: that is a grave step, and for two. Whoever takes a phone's place gets its history: for two.
Done Inviting::mayInvite()
{
    Desk::Inside& desk = *m_desk.m_inside;
    if (const Done may = desk.needsTask(m_inside->newDesk ? records::Task::desks : records::Task::phones); !may)
        return may;
    if (m_inside->newDesk)
        if (const Done may = desk.needsStep(); !may)
            return may;
    if (!m_inside->newDesk && !desk.mailboxOf(m_inside->course))
        return {};
    if (const Done may = desk.needsSecond(); !may)
        return may;
    m_inside->second = std::exchange(desk.second, {});
    desk.allowedAt.reset();
    return {};
}

Done Inviting::linkHere()
{
    Inside& inside = *m_inside;
    inside.mailbox = envelope::MailboxId{crypto::randomArray<16>()};
    const Done linked = inside.newDesk ? linkDesk() : linkPhone();
    if (!linked || !inside.second)
        return linked;
    m_desk.m_inside->second = *inside.second;
    return m_desk.m_inside->stepTaken(inside.newDesk ? records::Step::deskAdded : records::Step::phoneReplaced,
                                      envelope::deviceIdOf(inside.request->signing), inside.course);
}

Done Inviting::linkPhone()
{
    Inside& inside = *m_inside;
    vault::Vault& vault = m_desk.vault();
    const auto hub = m_desk.hub();
    vault::Link link;
    link.mailbox = inside.mailbox;
    link.course = inside.course;
    link.peerSigning = inside.request->signing;
    link.peerBox = inside.request->box;
    link.clinicRoot = vault.clinicRootKey();
    link.epoch = inside.offer.epoch;
    link.hub = hub ? hub->address() : std::string();
    link.hubKeyHash = inside.offer.hubKeyHash;
    const Done linked = vault.together([&]() -> Done {
        const Done replaced = replaceOldPhone();
        return replaced ? vault.putLink(link) : replaced;
    });
    if (!linked)
        return linked;
    const Done appended = m_desk.m_inside->appendNamed(
        records::Task::phones, inside.course,
        records::PatientLinked{inside.course, inside.mailbox, inside.request->signing.value, inside.request->box.value});
    if (!appended)
        return appended;
    return m_desk.openCourse(inside.course, inside.protocol, inside.followUp);
}

/// The old phone is told, and its mailbox ends; the new one gets everything that both sides held, also if a change
/// that was interrupted has ended the old one before.
Done Inviting::replaceOldPhone()
{
    Inside& inside = *m_inside;
    vault::Vault& vault = m_desk.vault();
    const auto links = vault.links();
    if (!links)
        return fail(links.error());
    for (const vault::Link& old : *links) {
        if (old.course != inside.course || old.ended)
            continue;
        const envelope::DeviceId phone = envelope::deviceIdOf(old.peerSigning);
        std::uint64_t held = 0;
        for (const journal::Operation& operation : vault.operations())
            if (operation.id.device == phone)
                held = std::max(held, operation.id.number);
        const bytes::Bytes statement =
            pairing::signStatement(pairing::PhoneReplaced{old.mailbox, phone, held, m_clock.now()}, vault.clinicRoot());
        if (const Done left = vault.keep(sync::statementName(old.mailbox), statement); !left)
            return left;
        if (const Done ended = vault.endLink(old.mailbox); !ended)
            return ended;
        // The same phone, paired again, goes on.
        if (old.peerSigning == inside.request->signing)
            continue;
        const auto due = m_clock.now() + (inside.old == OldPhone::lost ? std::chrono::hours{0} : replacedPhoneMayAnswer);
        if (const Done told = m_desk.m_inside->endAtHub(phone, true, due); !told)
            return told;
    }
    // A phone that is paired again takes nothing that it wrote itself from anybody else.
    const envelope::DeviceId newPhone = envelope::deviceIdOf(inside.request->signing);
    std::vector<journal::OperationId> history;
    for (const journal::Operation& operation : vault.operations())
        if (operation.course == inside.course && operation.id.device != newPhone && operation.audience == journal::Audience::patientAndClinic
            && operation.kind != static_cast<std::uint16_t>(records::Kind::keyAnnounced))
            history.push_back(operation.id);
    return vault.sendAgain(history, inside.mailbox);
}

Done Inviting::linkDesk()
{
    Inside& inside = *m_inside;
    const auto hub = m_desk.hub();
    const bool owner = *inside.newDesk == NewDesk::owner;
    if (const Done kept = m_desk.vault().putChannel({inside.mailbox, inside.request->signing, inside.request->box,
                                                     hub ? hub->address() : std::string(), 0, false});
        !kept)
        return kept;
    return m_desk.m_inside->changeRoster([&](pairing::Roster& roster) -> Done {
        if (roster.desks.size() == pairing::mostDesks)
            return fail(Reason::storageFull, "desk: the clinic has as many as it may have");
        roster.desks.push_back({inside.request->signing, inside.request->box, owner});
        return {};
    });
}

}  // namespace ebbline::desk
