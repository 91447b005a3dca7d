#include "core/mailbox/wire.h"

#include "core/bytes/reader.h"
#include "core/bytes/text.h"

#include <charconv>
#include <vector>

namespace ebbline::mailbox {

namespace {

constexpr std::string_view version = "v1";

bytes::Bytes signedText(const Request& request, std::int64_t unixSeconds, const bytes::Array<16>& nonce)
{
    constexpr std::string_view domain("EB-REQ-v1\0", 10);
    return bytes::Writer()
        .raw(bytes::viewOf(domain))
        .raw(bytes::viewOf(request.method))
        .u8(0)
        .raw(bytes::viewOf(request.path))
        .u8(0)
        .raw(bytes::viewOf(request.query))
        .u8(0)
        .u64(static_cast<std::uint64_t>(unixSeconds))
        .raw(nonce)
        .raw(crypto::hash256(request.body))
        .bytes();
}

template <std::size_t N>
bool fromHexInto(std::string_view text, bytes::Array<N>& out)
{
    const auto decoded = bytes::fromHex(text);
    if (!decoded || decoded->size() != N)
        return false;
    std::copy(decoded->begin(), decoded->end(), out.begin());
    return true;
}

}  // namespace

void signRequest(Request& request, const crypto::SigningKey& key, clock::Instant hubTime)
{
    const std::int64_t seconds = std::chrono::floor<std::chrono::seconds>(hubTime).time_since_epoch().count();
    const auto nonce = crypto::randomArray<16>();
    const auto signature = key.sign(signedText(request, seconds, nonce));
    request.authorisation = std::string(version) + "," + bytes::toHex(envelope::deviceIdOf(key.publicKey()).view()) + ","
                            + std::to_string(seconds) + "," + bytes::toHex(nonce) + "," + bytes::toHex(signature);
}

Result<Authorisation> parseAuthorisation(std::string_view header)
{
    std::vector<std::string_view> parts;
    while (parts.size() < 6) {
        const auto comma = header.find(',');
        parts.push_back(header.substr(0, comma));
        if (comma == std::string_view::npos)
            break;
        header.remove_prefix(comma + 1);
    }
    Authorisation parsed;
    const bool shaped = parts.size() == 5 && parts[0] == version && fromHexInto(parts[1], parsed.device.value)
                        && fromHexInto(parts[3], parsed.nonce) && fromHexInto(parts[4], parsed.signature);
    if (!shaped)
        return fail(Reason::malformed, "authorisation: not of the documented form");
    const auto [end, problem] = std::from_chars(parts[2].data(), parts[2].data() + parts[2].size(), parsed.unixSeconds);
    if (problem != std::errc() || end != parts[2].data() + parts[2].size() || parsed.unixSeconds < 0)
        return fail(Reason::malformed, "authorisation: the time is not a number");
    return parsed;
}

bool signatureHolds(const Request& request, const Authorisation& authorisation, const crypto::SigningPublicKey& key)
{
    return crypto::verify(key, signedText(request, authorisation.unixSeconds, authorisation.nonce),
                          authorisation.signature);
}

}  // namespace ebbline::mailbox
