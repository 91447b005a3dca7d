// Blobs: what a photograph's ciphertext is to a hub.

#include "core/mailbox/call.h"

namespace ebbline::mailbox {

namespace {

std::optional<envelope::MailboxId> mailboxIn(const std::vector<std::string_view>& parts)
{
    const auto value = hexPart<16>(parts[1]);
    return value ? std::optional(envelope::MailboxId{*value}) : std::nullopt;
}

std::optional<BlobId> blobIn(const std::vector<std::string_view>& parts)
{
    const auto value = parts.size() > 3 ? hexPart<16>(parts[3]) : std::nullopt;
    return value ? std::optional(BlobId{*value}) : std::nullopt;
}

}  // namespace

bool Service::isAboutBlobs(const Request& request)
{
    constexpr std::string_view front = "/v1/m/";
    constexpr std::size_t mailbox = 32;
    const std::string_view path = request.path;
    return path.starts_with(front) && path.size() > front.size() + mailbox && path.substr(front.size() + mailbox).starts_with("/blobs");
}

/// complete 1 | count 4 | numbers of the missing chunks, 4 each.
Response Service::beginBlob(Call& call, const Device& device)
{
    const auto mailbox = mailboxIn(call.parts);
    const auto blob = blobIn(call.parts);
    bytes::Reader reader(call.request.body);
    BlobShape shape;
    shape.chunks = reader.u32();
    shape.size = reader.u64();
    if (!mailbox || !blob || blob->isNull() || !reader.atEnd() || !shape.fits())
        return answer(400);
    const auto standing = m_store.beginBlob(device, *mailbox, *blob, shape, call.now, m_limits.quota);
    if (!standing)
        return answerFor(standing.error());
    bytes::Writer out;
    out.u8(standing->complete ? 1 : 0).u32(static_cast<std::uint32_t>(standing->missing.size()));
    for (const std::uint32_t number : standing->missing)
        out.u32(number);
    return answer(200, std::move(out).bytes());
}

Response Service::aboutChunk(Call& call, const Device& device)
{
    const auto mailbox = mailboxIn(call.parts);
    const auto blob = blobIn(call.parts);
    const auto number = numberIn(call.parts[4]);
    if (!mailbox || !blob || !number || *number >= mostBlobChunks)
        return answer(400);
    const auto place = static_cast<std::uint32_t>(*number);
    if (call.request.method == "GET") {
        auto chunk = m_store.chunk(device, *mailbox, *blob, place);
        return chunk ? answer(200, std::move(*chunk)) : answerFor(chunk.error());
    }
    if (call.request.body.empty())
        return answer(400);
    if (call.request.body.size() > largestBlobChunk)
        return answer(413);
    return answerFor(m_store.putChunk(device, *mailbox, *blob, place, call.request.body, call.now));
}

Response Service::blobs(Call& call, const Device& device)
{
    const auto mailbox = mailboxIn(call.parts);
    if (!mailbox)
        return answer(400);
    const auto found = m_store.finishedBlobs(device, *mailbox);
    if (!found)
        return answerFor(found.error());
    bytes::Writer out;
    for (const BlobId& blob : *found)
        out.raw(blob.view());
    return answer(200, std::move(out).bytes());
}

Response Service::aboutBlob(Call& call, const Device& device)
{
    const std::string& method = call.request.method;
    const std::size_t count = call.parts.size();
    if (method == "GET" && count == 3)
        return blobs(call, device);
    if (method == "PUT" && count == 4)
        return beginBlob(call, device);
    if ((method == "PUT" || method == "GET") && count == 5)
        return aboutChunk(call, device);
    if (method != "POST" || count != 5)
        return answer(404);
    const auto mailbox = mailboxIn(call.parts);
    const auto blob = blobIn(call.parts);
    if (!mailbox || !blob || !call.request.body.empty())
        return answer(400);
    if (call.parts[4] == "done")
        return answerFor(m_store.finishBlob(device, *mailbox, *blob, call.now));
    if (call.parts[4] == "drop")
        return answerFor(m_store.dropBlob(device, *mailbox, *blob));
    if (call.parts[4] == "ack" && device.role == Role::desk)
        return answerFor(m_store.acknowledgeBlob(device, *mailbox, *blob, call.now));
    return answer(404);
}

}  // namespace ebbline::mailbox
