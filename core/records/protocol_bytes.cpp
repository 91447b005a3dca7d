#include "core/records/layouts.h"

#include <exception>

namespace ebbline::records {

bytes::Bytes encodeProtocol(const triggers::Protocol& protocol)
{
    bytes::Bytes out;
    OutputBytes archive(out);
    triggers::Protocol copy = protocol;
    archive(formOf(protocol));
    field(archive, copy);
    return out;
}

Result<triggers::Protocol> decodeProtocolDraft(bytes::View input)
{
    if (input.size() > maximumBody)
        return fail(Reason::tooLarge, "protocol: too large");
    try {
        BoundedInput archive(input);
        std::uint16_t version = 0;
        archive(version);
        if (version > newestProtocolForm)
            return fail(Reason::unsupported, "protocol: made by a newer program");
        if (version == 0)
            return fail(Reason::malformed, "protocol: version 0");
        archive.bodyForm = version;
        triggers::Protocol protocol;
        field(archive, protocol);
        if (archive.left() != 0)
            return fail(Reason::malformed, "protocol: bytes are left over");
        return protocol;
    } catch (const std::exception&) {
        return fail(Reason::malformed, "protocol: cannot be read");
    }
}

Result<triggers::Protocol> decodeProtocol(bytes::View input)
{
    auto protocol = decodeProtocolDraft(input);
    if (!protocol)
        return protocol;
    if (const Done checked = aftercare::check(protocol->carePlan); !checked)
        return fail(checked.error());
    return protocol;
}

}  // namespace ebbline::records
