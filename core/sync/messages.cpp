#include "core/sync/messages.h"

#include "core/bytes/reader.h"
#include "core/bytes/text.h"

#include <zstd.h>

namespace ebbline::sync {

namespace {

constexpr std::uint8_t version = 1;
constexpr int level = 6;
constexpr std::size_t maximumOperations = 4000;

}  // namespace

bytes::Bytes packOperations(const std::vector<journal::Operation>& operations)
{
    bytes::Writer plain;
    plain.u32(static_cast<std::uint32_t>(operations.size()));
    for (const journal::Operation& operation : operations)
        plain.block(journal::encode(operation));
    bytes::Bytes packed(ZSTD_compressBound(plain.size()));
    const std::size_t size = ZSTD_compress(packed.data(), packed.size(), plain.bytes().data(), plain.size(), level);
    packed.resize(ZSTD_isError(size) != 0U ? 0 : size);
    return bytes::Writer().u8(version).u32(static_cast<std::uint32_t>(plain.size())).raw(packed).bytes();
}

Result<std::vector<journal::Operation>> unpackOperations(bytes::View message)
{
    bytes::Reader head(message);
    const std::uint8_t used = head.u8();
    const std::size_t size = head.u32();
    if (!head.ok())
        return fail(Reason::malformed, "operations: cut short");
    if (used != version)
        return fail(Reason::unsupported, "operations: packed by a newer program");
    if (size > maximumUnpacked)
        return fail(Reason::tooLarge, "operations: too many in one envelope");
    const bytes::View packed = head.take(head.left());
    bytes::Bytes plain(size);
    const std::size_t unpacked = ZSTD_decompress(plain.data(), plain.size(), packed.data(), packed.size());
    if (ZSTD_isError(unpacked) != 0U || unpacked != size)
        return fail(Reason::malformed, "operations: cannot be unpacked");
    bytes::Reader reader(plain);
    const std::size_t count = reader.u32();
    if (count > maximumOperations)
        return fail(Reason::tooLarge, "operations: too many in one envelope");
    std::vector<journal::Operation> operations;
    for (std::size_t i = 0; i < count; ++i) {
        auto operation = journal::decode(reader.block(maximumUnpacked));
        if (!reader.ok() || !operation)
            return fail(Reason::malformed, "operations: one cannot be read");
        operations.push_back(std::move(*operation));
    }
    if (!reader.atEnd())
        return fail(Reason::malformed, "operations: bytes are left over");
    return operations;
}

bytes::Bytes pack(const Acknowledgement& acknowledgement)
{
    return bytes::Writer()
        .u8(version)
        .raw(acknowledgement.of.view())
        .u64(acknowledgement.held.sequence)
        .raw(acknowledgement.held.hash)
        .u64(static_cast<std::uint64_t>(acknowledgement.at.time_since_epoch().count()))
        .bytes();
}

Result<Acknowledgement> unpackAcknowledgement(bytes::View message)
{
    bytes::Reader reader(message);
    if (reader.u8() != version)
        return fail(Reason::unsupported, "acknowledgement: made by a newer program");
    Acknowledgement acknowledgement;
    acknowledgement.of = reader.id<envelope::DeviceTag>();
    acknowledgement.held.sequence = reader.u64();
    acknowledgement.held.hash = reader.array<32>();
    acknowledgement.at = clock::Instant{std::chrono::milliseconds{static_cast<std::int64_t>(reader.u64())}};
    if (!reader.atEnd())
        return fail(Reason::malformed, "acknowledgement: lengths do not add up");
    return acknowledgement;
}

namespace {

enum class StatementForm : std::uint8_t { signedByRoot = 1, heads = 2, epochSecret = 3, askAgain = 4, sealedAgain = 5, leftBehind = 6, olderCopy = 7 };
constexpr std::size_t maximumSigned = 8 * 1024;

bytes::Writer begin(StatementForm form)
{
    bytes::Writer out;
    out.u8(version).u8(static_cast<std::uint8_t>(form));
    return out;
}

}  // namespace

bytes::Bytes packSigned(bytes::View signedStatement)
{
    return std::move(begin(StatementForm::signedByRoot).block(signedStatement)).bytes();
}

bytes::Bytes pack(const EpochSecret& secret)
{
    return std::move(begin(StatementForm::epochSecret).u32(secret.number).raw(secret.key.secret())).bytes();
}

bytes::Bytes pack(std::span<const vault::Vault::Head> heads)
{
    bytes::Writer out = begin(StatementForm::heads);
    out.u16(static_cast<std::uint16_t>(heads.size()));
    for (const vault::Vault::Head& head : heads)
        out.raw(head.mailbox.view()).raw(head.device.view()).u64(head.cursor.sequence).raw(head.cursor.hash);
    return std::move(out).bytes();
}

bytes::Bytes pack(const AskAgain& ask)
{
    return std::move(begin(StatementForm::askAgain).raw(ask.of.view()).u64(ask.held)).bytes();
}

bytes::Bytes pack(const SealedAgain& again)
{
    return std::move(begin(StatementForm::sealedAgain).u64(again.first).u64(again.last)).bytes();
}

bytes::Bytes pack(const LeftBehind& left)
{
    bytes::Writer out = begin(StatementForm::leftBehind);
    for (const std::uint32_t count : {left.entries, left.messages, left.photos, left.others})
        out.u32(count);
    for (const clock::Instant at : {left.first, left.last})
        out.u64(static_cast<std::uint64_t>(at.time_since_epoch().count()));
    return std::move(out).bytes();
}

bytes::Bytes pack(const OlderCopy& older)
{
    return std::move(begin(StatementForm::olderCopy).u64(older.own)).bytes();
}

std::string leftBehindName(const envelope::MailboxId& mailbox) { return "left-behind/" + bytes::toHex(mailbox.view()); }

Result<std::optional<LeftBehind>> leftBehind(const vault::Vault& vault, const envelope::MailboxId& mailbox)
{
    const auto kept = vault.kept(leftBehindName(mailbox));
    if (!kept)
        return kept.error().reason == Reason::notFound ? Result<std::optional<LeftBehind>>(std::nullopt) : fail(kept.error());
    const auto message = unpackStatement(*kept);
    const auto* left = message ? std::get_if<LeftBehind>(&*message) : nullptr;
    return left ? std::optional(*left) : std::nullopt;
}

Result<StatementMessage> unpackStatement(bytes::View message)
{
    using Any = StatementMessage;
    bytes::Reader reader(message);
    const std::uint8_t used = reader.u8();
    const auto form = static_cast<StatementForm>(reader.u8());
    if (!reader.ok())
        return fail(Reason::malformed, "statement: cut short");
    if (used != version)
        return fail(Reason::unsupported, "statement: packed by a newer program");
    switch (form) {
    case StatementForm::signedByRoot: {
        const bytes::View inner = reader.block(maximumSigned);
        if (!reader.atEnd())
            break;
        return Any(SignedStatement{{inner.begin(), inner.end()}});
    }
    case StatementForm::epochSecret: {
        const std::uint32_t number = reader.u32();
        const bytes::View secret = reader.take(32);
        if (!reader.atEnd() || number == 0)
            break;
        return Any(EpochSecret{number, crypto::BoxKey::fromSecret(secret)});
    }
    case StatementForm::heads: {
        Heads heads;
        const std::size_t count = reader.u16();
        for (std::size_t i = 0; i < count && i < mostHeads && reader.ok(); ++i) {
            vault::Vault::Head head;
            head.mailbox = reader.id<envelope::MailboxTag>();
            head.device = reader.id<envelope::DeviceTag>();
            head.cursor.sequence = reader.u64();
            head.cursor.hash = reader.array<32>();
            heads.push_back(head);
        }
        if (!reader.atEnd())
            break;
        return Any(std::move(heads));
    }
    case StatementForm::askAgain: {
        AskAgain ask;
        ask.of = reader.id<envelope::DeviceTag>();
        ask.held = reader.u64();
        if (!reader.atEnd())
            break;
        return Any(ask);
    }
    case StatementForm::sealedAgain: {
        SealedAgain again;
        again.first = reader.u64();
        again.last = reader.u64();
        if (!reader.atEnd() || again.first == 0 || again.first > again.last)
            break;
        return Any(again);
    }
    case StatementForm::leftBehind: {
        LeftBehind left;
        for (std::uint32_t* count : {&left.entries, &left.messages, &left.photos, &left.others})
            *count = reader.u32();
        for (clock::Instant* at : {&left.first, &left.last})
            *at = clock::Instant{std::chrono::milliseconds{static_cast<std::int64_t>(reader.u64())}};
        if (!reader.atEnd())
            break;
        return Any(left);
    }
    case StatementForm::olderCopy: {
        const OlderCopy older{reader.u64()};
        if (!reader.atEnd())
            break;
        return Any(older);
    }
    default: return fail(Reason::unsupported, "statement: of a newer program");
    }
    return fail(Reason::malformed, "statement: lengths do not add up");
}

}  // namespace ebbline::sync
