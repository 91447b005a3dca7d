#include "core/pairing/code.h"

#include "core/bytes/reader.h"
#include "core/bytes/text.h"

namespace ebbline::pairing {

namespace {

constexpr std::string_view prefix = "EBP1:";
constexpr std::uint8_t version = 1;
constexpr std::uint8_t flagPlainHttp = 1;
constexpr std::uint8_t flagDesk = 2;
constexpr std::size_t maximumHost = 63;
constexpr std::size_t maximumQrText = 400;

bytes::Array<4> checksum(bytes::View preceding)
{
    const auto hash = crypto::hash256(preceding);
    return {hash[0], hash[1], hash[2], hash[3]};
}

/// Letters, digits, dots, dashes, colons and brackets: a host name or address and a port.
bool isHost(std::string_view host)
{
    return !host.empty() && host.size() <= maximumHost
           && host.find_first_not_of("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789.-:[]")
                  == std::string_view::npos;
}

}  // namespace

std::string toQrText(const Offer& offer)
{
    bytes::Writer out;
    out.u8(version).u8(static_cast<std::uint8_t>((offer.tls ? 0 : flagPlainHttp)
                                                 | (offer.purpose == Purpose::desk ? flagDesk : 0)));
    out.u32(static_cast<std::uint32_t>(
        std::chrono::floor<std::chrono::seconds>(offer.expires).time_since_epoch().count()));
    out.raw(offer.id).raw(offer.secret).raw(offer.clinicRoot.value).raw(offer.clinicEpoch.value);
    out.u32(offer.epoch).raw(offer.hubKeyHash);
    out.u8(static_cast<std::uint8_t>(offer.hub.size())).raw(bytes::viewOf(offer.hub));
    const auto check = checksum(out.bytes());
    return std::string(prefix) + bytes::toBase32(out.raw(check).bytes());
}

Result<Offer> fromQrText(std::string_view text, clock::Instant now)
{
    if (text.size() > maximumQrText || !text.starts_with(prefix))
        return fail(Reason::malformed, "pairing code: not one of ours");
    const Result<bytes::Bytes> decoded = bytes::fromBase32(text.substr(prefix.size()));
    if (!decoded || decoded->size() < 5)
        return fail(Reason::malformed, "pairing code: cannot be read");
    const bytes::View body = bytes::View(*decoded).first(decoded->size() - 4);
    if (!crypto::equal(checksum(body), bytes::View(*decoded).last(4)))
        return fail(Reason::malformed, "pairing code: the checksum does not hold");

    bytes::Reader reader(body);
    if (reader.u8() != version)
        return fail(Reason::unsupported, "pairing code: made by a newer program");
    const std::uint8_t flags = reader.u8();
    if ((flags & ~(flagPlainHttp | flagDesk)) != 0)
        return fail(Reason::unsupported, "pairing code: unknown flag");
    Offer offer;
    offer.tls = (flags & flagPlainHttp) == 0;
    offer.purpose = (flags & flagDesk) == 0 ? Purpose::phone : Purpose::desk;
    offer.expires = clock::Instant{std::chrono::seconds{reader.u32()}};
    offer.id = reader.array<8>();
    offer.secret = reader.array<16>();
    offer.clinicRoot.value = reader.array<32>();
    offer.clinicEpoch.value = reader.array<32>();
    offer.epoch = reader.u32();
    offer.hubKeyHash = reader.array<32>();
    const bytes::View host = reader.take(reader.u8());
    offer.hub.assign(host.begin(), host.end());
    if (!reader.atEnd() || !isHost(offer.hub))
        return fail(Reason::malformed, "pairing code: lengths do not add up");
    if (offer.expires <= now)
        return fail(Reason::expired, "pairing code: its ten minutes are over");
    return offer;
}

std::string toText(const TypedCode& code)
{
    const bytes::Bytes body = bytes::Writer().raw(code.locator).raw(code.secret).bytes();
    const std::string letters = bytes::toBase32(bytes::Writer().raw(body).u16(bytes::crc16(body)).bytes());
    return bytes::inGroups(letters);
}

Result<TypedCode> typedCodeFromText(std::string_view text)
{
    const std::string letters = bytes::fromTyped(text, 24);
    if (letters.size() != 24)
        return fail(Reason::malformed, "typed code: want 24 letters and digits");
    const Result<bytes::Bytes> decoded = bytes::fromBase32(letters);
    if (!decoded)
        return fail(Reason::malformed, "typed code: a character that the code never has");
    bytes::Reader reader(*decoded);
    TypedCode code;
    code.locator = reader.array<4>();
    code.secret = reader.array<9>();
    const std::uint16_t check = reader.u16();
    if (!reader.atEnd() || check != bytes::crc16(bytes::View(*decoded).first(13)))
        return fail(Reason::malformed, "typed code: a letter is wrong or two changed places");
    return code;
}

Result<TypedSecrets> secretsOf(const TypedCode& code)
{
    bytes::Array<16> salt{};
    std::copy(code.locator.begin(), code.locator.end(), salt.begin());
    const Result<crypto::Secret> key = crypto::stretchPassphrase(code.secret, salt, {3, 64 * 1024});
    if (!key)
        return fail(key.error());
    return TypedSecrets{crypto::keyedHash128(key->view(), bytes::viewOf("EB-typed-offer")),
                        crypto::keyedHash256(key->view(), bytes::viewOf("EB-typed-bundle"))};
}

bytes::Array<32> bundleTag(const TypedSecrets& secrets, bytes::View bundle)
{
    return crypto::keyedHash256(secrets.bundleKey, bundle);
}

}  // namespace ebbline::pairing
