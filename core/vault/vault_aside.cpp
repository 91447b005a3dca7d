// What is next in its sender's chain and genuine, and cannot be read or taken here: tried for a while, then set aside,
// so that what comes after it is taken.

#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "core/vault/inside.h"
#include "core/vault/rows.h"

namespace ebbline::vault {

namespace {

/// The names sort by sequence.
std::string asideName(const envelope::MailboxId& mailbox, const envelope::DeviceId& sender, std::uint64_t sequence)
{
    return asidePrefix(mailbox, sender) + bytes::toHex(bytes::Writer().u64(sequence).bytes());
}

std::string triesName(const envelope::MailboxId& mailbox, const envelope::DeviceId& sender)
{
    return "tries/" + bytes::toHex(mailbox.view()) + "/" + bytes::toHex(sender.view());
}

constexpr const char* within = " FROM kept WHERE name > ?1 AND name < ?1 || '~'";

}  // namespace

std::string asidePrefix(const envelope::MailboxId& mailbox)
{
    return "set-aside/" + bytes::toHex(mailbox.view()) + "/";
}

std::string asidePrefix(const envelope::MailboxId& mailbox, const envelope::DeviceId& sender)
{
    return asidePrefix(mailbox) + bytes::toHex(sender.view()) + "/";
}

Result<std::size_t> Vault::Inside::countKept(const std::string& prefix)
{
    auto statement = database.prepare(std::string("SELECT count(*)") + within);
    if (!statement)
        return fail(statement.error());
    const Result<bool> row = statement->bind(std::string_view(prefix)).step();
    if (!row)
        return fail(row.error());
    return *row ? static_cast<std::size_t>(statement->integer(0)) : 0;
}

Result<int> Vault::noteTry(const envelope::MailboxId& mailbox, const envelope::DeviceId& sender, const Cursor& next)
{
    const std::string name = triesName(mailbox, sender);
    const auto before = m_inside->keptOf(name);
    if (!before)
        return fail(before.error());
    std::uint32_t tries = 0;
    if (*before) {
        bytes::Reader reader(**before);
        const std::uint64_t sequence = reader.u64();
        const auto hash = reader.array<32>();
        const std::uint32_t known = reader.u32();
        // What was counted of another one, which came right in the end, says nothing of this one.
        if (reader.atEnd() && sequence == next.sequence && hash == next.hash)
            tries = known;
    }
    ++tries;
    const Done noted = keep(name, bytes::Writer().u64(next.sequence).raw(next.hash).u32(tries).bytes());
    return noted ? Result<int>(static_cast<int>(tries)) : fail(noted.error());
}

Result<bool> Vault::setAside(const envelope::MailboxId& mailbox, const envelope::DeviceId& sender, const Cursor& next,
                             bytes::View envelope, Reason why)
{
    Inside& inside = *m_inside;
    bool room = false;
    const Done done = inside.database.transaction([&]() -> Done {
        const auto held = inside.countKept(asidePrefix(mailbox));
        if (!held)
            return fail(held.error());
        room = *held < mostSetAside;
        if (!room)
            return {};
        const bytes::Bytes value = bytes::Writer().u16(static_cast<std::uint16_t>(why)).raw(envelope).bytes();
        if (const Done kept = inside.putKept(asideName(mailbox, sender, next.sequence), value); !kept)
            return kept;
        if (const Done counted = inside.putKept(triesName(mailbox, sender), {}); !counted)
            return counted;
        if (const Done noted = inside.notePassed(mailbox, sender, next); !noted)
            return noted;
        return putHead(inside.database, mailbox, sender, next);
    });
    return done ? Result<bool>(room) : fail(done.error());
}

Result<std::vector<Vault::SetAside>> Vault::setAside(const envelope::MailboxId& mailbox) const
{
    std::vector<SetAside> found;
    auto rows = m_inside->database.prepare(std::string("SELECT value") + within + " ORDER BY name");
    const std::string prefix = asidePrefix(mailbox);
    if (rows)
        rows->bind(std::string_view(prefix));
    const Done read = forEachRow(rows, [&](store::Statement& row) -> Done {
        const bytes::Bytes value = row.blob(0);
        bytes::Reader reader(value);
        const auto why = static_cast<Reason>(reader.u16());
        const bytes::View sealed = reader.take(reader.left());
        const auto header = envelope::peek(sealed);
        if (!header)
            return fail(Reason::damaged, "vault: what was set aside is no envelope");
        found.push_back({header->sender, header->sequence, header->previous, why, {sealed.begin(), sealed.end()}});
        return {};
    });
    if (!read)
        return fail(read.error());
    return found;
}

bool Vault::hasSetAside() const
{
    const auto count = m_inside->countKept("set-aside/");
    return !count || *count > 0;
}

Done Vault::takeUp(const envelope::MailboxId& mailbox, const SetAside& aside, const std::vector<journal::Operation>& operations,
                   const std::function<Done()>& with)
{
    Inside& inside = *m_inside;
    std::vector<const journal::Operation*> fresh;
    const Done stored = inside.database.transaction([&]() -> Done {
        if (const Done inserted = inside.insertAll(operations, fresh); !inserted)
            return inserted;
        if (const Done done = with ? with() : Done{}; !done)
            return done;
        return inside.putKept(asideName(mailbox, aside.sender, aside.sequence), {});
    });
    if (stored)
        inside.addAll(fresh);
    return stored;
}

Done Vault::releaseSetAside(const envelope::MailboxId& mailbox, const envelope::DeviceId& sender, std::uint64_t first, std::uint64_t last)
{
    const auto aside = setAside(mailbox);
    if (!aside)
        return fail(aside.error());
    for (const SetAside& each : *aside)
        if (each.sender == sender && each.sequence >= first && each.sequence <= last)
            if (const Done gone = keep(asideName(mailbox, sender, each.sequence), {}); !gone)
                return gone;
    return {};
}

Result<Cursor> Vault::provedHead(const envelope::MailboxId& mailbox, const envelope::DeviceId& sender) const
{
    auto row = m_inside->database.prepare(std::string("SELECT value") + within + " ORDER BY name LIMIT 1");
    if (!row)
        return fail(row.error());
    const std::string prefix = asidePrefix(mailbox, sender);
    const Result<bool> found = row->bind(std::string_view(prefix)).step();
    if (!found)
        return fail(found.error());
    if (!*found)
        return peerHead(mailbox, sender);
    const bytes::Bytes value = row->blob(0);
    const auto first = envelope::peek(bytes::View(value).subspan(std::min<std::size_t>(2, value.size())));
    if (!first)
        return fail(Reason::damaged, "vault: what was set aside is no envelope");
    return Cursor{first->sequence - 1, first->previous};
}

}  // namespace ebbline::vault
