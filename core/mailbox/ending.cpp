#include "core/mailbox/ending.h"

#include "core/bytes/reader.h"

#include <algorithm>

namespace ebbline::mailbox {

namespace {

constexpr std::string_view mark = "EBT1";
constexpr std::uint8_t kind = 3;
constexpr std::size_t signatureSize = 64;

/// As every statement of a clinic (core/pairing/statement.h), which a hub knows nothing else of.
bytes::Bytes signedText(bytes::View body)
{
    constexpr std::string_view domain("EB-STMT-v1\0", 11);
    return bytes::Writer().raw(bytes::viewOf(domain)).raw(crypto::hash256(body)).bytes();
}

}  // namespace

bytes::Bytes signEnding(const DeviceEnded& ended, const crypto::SigningKey& root)
{
    bytes::Writer out;
    out.raw(bytes::viewOf(mark)).u8(kind).raw(ended.device.view());
    out.u64(static_cast<std::uint64_t>(ended.at.time_since_epoch().count()));
    const auto signature = root.sign(signedText(out.bytes()));
    return std::move(out.raw(signature)).bytes();
}

Result<DeviceEnded> openEnding(bytes::View signedEnding, const crypto::SigningPublicKey& root)
{
    if (signedEnding.size() != endingSize)
        return fail(Reason::malformed, "ending: of another length");
    const bytes::View body = signedEnding.first(endingSize - signatureSize);
    bytes::Reader tail(signedEnding.last(signatureSize));
    if (!crypto::verify(root, signedText(body), tail.array<signatureSize>()))
        return fail(Reason::forged, "ending: not signed by this clinic");
    bytes::Reader reader(body);
    const bytes::View begin = reader.take(mark.size());
    if (!std::equal(begin.begin(), begin.end(), mark.begin(), mark.end()) || reader.u8() != kind)
        return fail(Reason::malformed, "ending: another statement");
    DeviceEnded ended;
    ended.device = reader.id<envelope::DeviceTag>();
    ended.at = clock::Instant{std::chrono::milliseconds{static_cast<std::int64_t>(reader.u64())}};
    return ended;
}

}  // namespace ebbline::mailbox
