#include "core/envelope/envelope.h"

#include "core/bytes/reader.h"

namespace ebbline::envelope {

namespace {

constexpr std::string_view magic = "EBE1";
constexpr std::uint16_t suite = 1;
constexpr std::size_t fixedSize = 144;      // up to the recipients
constexpr std::size_t recipientSize = 96;
constexpr std::size_t signatureSize = 64;
constexpr std::size_t smallStep = 1024;
constexpr std::size_t smallLimit = 8 * 1024;

Bytes padded(View plaintext)
{
    const std::size_t needed = plaintext.size() + 1;
    return crypto::pad(plaintext, needed <= smallLimit ? smallStep : crypto::padmeSize(needed));
}

Array<32> commitment(const crypto::Secret& contentKey)
{
    return crypto::keyedHash256(contentKey.view(), bytes::viewOf("EB-commit-v1"));
}

/// "EB-ENV-v1" with a zero byte, then the hash of everything before the signature.
Bytes signedText(View preceding)
{
    constexpr std::string_view domain("EB-ENV-v1\0", 10);
    const auto hash = crypto::hash256(preceding);
    return bytes::Writer().raw(bytes::viewOf(domain)).raw(hash).bytes();
}

struct Parsed {
    Header header;
    crypto::Nonce nonce{};
    Array<32> commit{};
    std::vector<std::pair<Array<16>, View>> recipients;
    View associated;
    View ciphertext;
    View preceding;
    crypto::Signature signature{};
};

Result<Parsed> parse(View input)
{
    if (input.size() > maximumEnvelope)
        return fail(Reason::malformed, "envelope: too long");
    bytes::Reader reader(input);
    Parsed parsed;
    const View mark = reader.take(magic.size());
    if (!reader.ok() || !std::equal(mark.begin(), mark.end(), magic.begin(), magic.end()))
        return fail(Reason::malformed, "envelope: not one of ours");
    const std::uint8_t kind = reader.u8();
    const std::uint8_t flags = reader.u8();
    const std::uint16_t usedSuite = reader.u16();
    if (!reader.ok())
        return fail(Reason::malformed, "envelope: cut short");
    if (kind < 1 || kind > 5 || flags != 0 || usedSuite != suite)
        return fail(Reason::unsupported, "envelope: unknown kind, flag or suite");
    parsed.header.kind = static_cast<Kind>(kind);
    parsed.header.mailbox = reader.id<MailboxTag>();
    parsed.header.sender = reader.id<DeviceTag>();
    parsed.header.sequence = reader.u64();
    parsed.header.previous = reader.array<32>();
    parsed.header.recipientEpoch = reader.u32();
    parsed.nonce = reader.array<24>();
    const std::size_t count = reader.u16();
    const std::uint16_t reserved = reader.u16();
    parsed.commit = reader.array<32>();
    if (!reader.ok() || count < 1 || count > maximumRecipients || reserved != 0 || parsed.header.sequence == 0)
        return fail(Reason::malformed, "envelope: recipients, sequence or reserved bytes");
    for (std::size_t i = 0; i < count; ++i) {
        const auto key = reader.array<16>();
        parsed.recipients.emplace_back(key, reader.take(recipientSize - 16));
    }
    if (!reader.ok())
        return fail(Reason::malformed, "envelope: cut short");
    parsed.associated = input.first(fixedSize + count * recipientSize);
    parsed.ciphertext = reader.block(maximumCiphertext);
    parsed.preceding = input.first(input.size() - reader.left());
    parsed.signature = reader.array<signatureSize>();
    if (!reader.atEnd() || parsed.ciphertext.size() < crypto::aeadOverhead)
        return fail(Reason::malformed, "envelope: lengths do not add up");
    return parsed;
}

Result<Parsed> parseAndVerify(View input, const crypto::SigningPublicKey& sender)
{
    Result<Parsed> parsed = parse(input);
    if (!parsed)
        return parsed;
    if (parsed->header.sender != deviceIdOf(sender))
        return fail(Reason::forged, "envelope: another sender");
    if (!crypto::verify(sender, signedText(parsed->preceding), parsed->signature))
        return fail(Reason::forged, "envelope: the signature does not hold");
    return parsed;
}

}  // namespace

DeviceId deviceIdOf(const crypto::SigningPublicKey& key)
{
    return DeviceId{crypto::hash128(key.value)};
}

Result<Bytes> seal(const Header& header, const crypto::SigningKey& sender,
                   const std::vector<crypto::BoxPublicKey>& recipients, View plaintext)
{
    if (recipients.empty() || recipients.size() > maximumRecipients)
        return fail(Reason::outOfRange, "envelope: want 1..8 recipients");
    if (header.sequence == 0)
        return fail(Reason::outOfRange, "envelope: the sequence starts at 1");
    if (plaintext.size() >= maximumCiphertext)
        return fail(Reason::tooLarge, "envelope: the plaintext is too large");
    const Bytes body = padded(plaintext);
    if (body.size() + crypto::aeadOverhead > maximumCiphertext)
        return fail(Reason::tooLarge, "envelope: the plaintext is too large");

    const crypto::Secret contentKey = crypto::Secret::random();
    const auto nonce = crypto::randomArray<24>();
    bytes::Writer out;
    out.raw(bytes::viewOf(magic)).u8(static_cast<std::uint8_t>(header.kind)).u8(0).u16(suite);
    out.raw(header.mailbox.view()).raw(header.sender.view()).u64(header.sequence).raw(header.previous);
    out.u32(header.recipientEpoch).raw(nonce).u16(static_cast<std::uint16_t>(recipients.size())).u16(0);
    out.raw(commitment(contentKey));
    for (const crypto::BoxPublicKey& recipient : recipients)
        out.raw(crypto::hash128(recipient.value)).raw(crypto::sealTo(recipient, contentKey.view()));
    const Bytes associated = out.bytes();
    out.block(crypto::aeadSeal(contentKey, nonce, associated, body));
    const crypto::Signature signature = sender.sign(signedText(out.bytes()));
    return std::move(out.raw(signature)).bytes();
}

Result<Header> peek(View envelope)
{
    const Result<Parsed> parsed = parse(envelope);
    if (!parsed)
        return fail(parsed.error());
    return parsed->header;
}

Result<Header> verify(View envelope, const crypto::SigningPublicKey& sender)
{
    const Result<Parsed> parsed = parseAndVerify(envelope, sender);
    if (!parsed)
        return fail(parsed.error());
    return parsed->header;
}

Result<Opened> open(View envelope, const crypto::SigningPublicKey& sender, const crypto::BoxKey& recipient)
{
    const Result<Parsed> parsed = parseAndVerify(envelope, sender);
    if (!parsed)
        return fail(parsed.error());

    const Array<16> own = crypto::hash128(recipient.publicKey().value);
    for (const auto& [key, wrapped] : parsed->recipients) {
        if (key != own)
            continue;
        Result<Bytes> unwrapped = crypto::openSealed(recipient, wrapped);
        if (!unwrapped || unwrapped->size() != crypto::Secret::size)
            return fail(Reason::wrongKey, "envelope: its key is not sealed to this recipient");
        const crypto::Secret contentKey = crypto::Secret::from(*unwrapped);
        crypto::wipe(*unwrapped);
        if (!crypto::equal(commitment(contentKey), parsed->commit))
            return fail(Reason::forged, "envelope: the key commitment does not hold");
        const Result<Bytes> body = crypto::aeadOpen(contentKey, parsed->nonce, parsed->associated, parsed->ciphertext);
        if (!body)
            return fail(body.error());
        Result<Bytes> plaintext = crypto::unpad(*body);
        if (!plaintext)
            return fail(plaintext.error());
        return Opened{parsed->header, std::move(*plaintext)};
    }
    return fail(Reason::wrongKey, "envelope: not sealed to this recipient");
}

Hash hashOf(View envelope)
{
    return crypto::hash256(envelope);
}

}  // namespace ebbline::envelope
