#include "core/pairing/statement.h"

#include "core/bytes/reader.h"

#include <algorithm>
#include <set>

namespace ebbline::pairing {

namespace {

constexpr std::string_view mark = "EBT1";
constexpr std::size_t signatureSize = 64;
/// 3 is for the hub alone (core/mailbox/ending.h).
enum class Kind : std::uint8_t { roster = 1, phoneReplaced = 2, leastVersion = 4 };

void write(bytes::Writer& out, const Roster& roster)
{
    out.u8(static_cast<std::uint8_t>(Kind::roster)).u64(roster.number).raw(roster.previous);
    out.u32(roster.epoch).raw(roster.epochKey.value);
    out.u8(static_cast<std::uint8_t>(roster.desks.size()));
    for (const Roster::Desk& desk : roster.desks)
        out.raw(desk.signing.value).raw(desk.box.value).u8(desk.owner ? 1 : 0);
    out.u16(static_cast<std::uint16_t>(roster.revoked.size()));
    for (const envelope::DeviceId& device : roster.revoked)
        out.raw(device.view());
}

void write(bytes::Writer& out, const PhoneReplaced& replaced)
{
    out.u8(static_cast<std::uint8_t>(Kind::phoneReplaced)).raw(replaced.mailbox.view()).raw(replaced.phone.view());
    out.u64(replaced.held).u64(static_cast<std::uint64_t>(replaced.at.time_since_epoch().count()));
}

void write(bytes::Writer& out, const LeastVersion& least)
{
    out.u8(static_cast<std::uint8_t>(Kind::leastVersion)).u64(least.number).u32(least.protocol);
    out.u64(static_cast<std::uint64_t>(least.at.time_since_epoch().count()));
}

Done check(const Roster& roster)
{
    if (roster.number == 0 || roster.epoch == 0 || roster.desks.empty() || roster.desks.size() > mostDesks)
        return fail(Reason::outOfRange, "roster: number, epoch or desks");
    std::set<envelope::DeviceId> seen;
    for (const Roster::Desk& desk : roster.desks) {
        const envelope::DeviceId device = envelope::deviceIdOf(desk.signing);
        if (!seen.insert(device).second || roster.isRevoked(device))
            return fail(Reason::outOfRange, "roster: a desk stands in it twice, or is revoked by it");
    }
    return {};
}

Result<Statement> readRoster(bytes::Reader& reader)
{
    Roster roster;
    roster.number = reader.u64();
    roster.previous = reader.array<32>();
    roster.epoch = reader.u32();
    roster.epochKey.value = reader.array<32>();
    const std::size_t desks = reader.u8();
    for (std::size_t i = 0; i < desks && reader.ok(); ++i) {
        Roster::Desk desk;
        desk.signing.value = reader.array<32>();
        desk.box.value = reader.array<32>();
        const std::uint8_t owner = reader.u8();
        if (owner > 1)
            reader.invalidate();
        desk.owner = owner == 1;
        roster.desks.push_back(desk);
    }
    const std::size_t revoked = reader.u16();
    if (revoked > mostRevoked)
        reader.invalidate();
    for (std::size_t i = 0; i < revoked && reader.ok(); ++i)
        roster.revoked.push_back(reader.id<envelope::DeviceTag>());
    if (!reader.atEnd())
        return fail(Reason::malformed, "roster: lengths do not add up");
    if (const Done checked = check(roster); !checked)
        return fail(checked.error());
    return roster;
}

Result<Statement> readReplaced(bytes::Reader& reader)
{
    PhoneReplaced replaced;
    replaced.mailbox = reader.id<envelope::MailboxTag>();
    replaced.phone = reader.id<envelope::DeviceTag>();
    replaced.held = reader.u64();
    replaced.at = clock::Instant{std::chrono::milliseconds{static_cast<std::int64_t>(reader.u64())}};
    if (!reader.atEnd())
        return fail(Reason::malformed, "replaced phone: lengths do not add up");
    return replaced;
}

Result<Statement> readLeast(bytes::Reader& reader)
{
    LeastVersion least;
    least.number = reader.u64();
    least.protocol = reader.u32();
    least.at = clock::Instant{std::chrono::milliseconds{static_cast<std::int64_t>(reader.u64())}};
    if (!reader.atEnd())
        return fail(Reason::malformed, "least version: lengths do not add up");
    if (least.number == 0 || least.protocol == 0)
        return fail(Reason::outOfRange, "least version: number or protocol");
    return least;
}

}  // namespace

bytes::Bytes statementText(bytes::View body)
{
    constexpr std::string_view domain("EB-STMT-v1\0", 11);
    return bytes::Writer().raw(bytes::viewOf(domain)).raw(crypto::hash256(body)).bytes();
}

const Roster::Desk* Roster::find(const envelope::DeviceId& device) const
{
    const auto found = std::ranges::find_if(desks, [&](const Desk& desk) { return envelope::deviceIdOf(desk.signing) == device; });
    return found == desks.end() ? nullptr : &*found;
}

bool Roster::isRevoked(const envelope::DeviceId& device) const
{
    return std::ranges::find(revoked, device) != revoked.end();
}

bytes::Bytes signStatement(const Statement& statement, const crypto::SigningKey& root)
{
    bytes::Writer out;
    out.raw(bytes::viewOf(mark));
    std::visit([&](const auto& value) { write(out, value); }, statement);
    const auto signature = root.sign(statementText(out.bytes()));
    return std::move(out.raw(signature)).bytes();
}

Result<Statement> openStatement(bytes::View signedStatement, const crypto::SigningPublicKey& root)
{
    if (signedStatement.size() < signatureSize)
        return fail(Reason::malformed, "statement: cut short");
    const bytes::View body = signedStatement.first(signedStatement.size() - signatureSize);
    bytes::Reader tail(signedStatement.last(signatureSize));
    if (!crypto::verify(root, statementText(body), tail.array<signatureSize>()))
        return fail(Reason::forged, "statement: not signed by this clinic");
    bytes::Reader reader(body);
    const bytes::View begin = reader.take(mark.size());
    const auto kind = static_cast<Kind>(reader.u8());
    if (!reader.ok() || !std::equal(begin.begin(), begin.end(), mark.begin(), mark.end()))
        return fail(Reason::malformed, "statement: not one of ours");
    switch (kind) {
    case Kind::roster: return readRoster(reader);
    case Kind::phoneReplaced: return readReplaced(reader);
    case Kind::leastVersion: return readLeast(reader);
    }
    return fail(Reason::unsupported, "statement: of a newer program");
}

Roster following(const Roster& roster, bytes::View signedRoster)
{
    Roster next = roster;
    ++next.number;
    next.previous = crypto::hash256(signedRoster);
    return next;
}

}  // namespace ebbline::pairing
