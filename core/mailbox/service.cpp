#include "core/mailbox/call.h"

#include <charconv>

namespace ebbline::mailbox {

namespace {

constexpr std::string_view prefix = "/v1/";
constexpr std::string_view newsPath = "/v1/news";
constexpr std::size_t maximumPositions = 64;

/// `name=value` in a query.
std::optional<std::string_view> field(std::string_view query, std::string_view name)
{
    for (const std::string_view pair : split(query, '&'))
        if (pair.size() > name.size() && pair.starts_with(name) && pair[name.size()] == '=')
            return pair.substr(name.size() + 1);
    return std::nullopt;
}

std::optional<envelope::MailboxId> mailboxIn(std::string_view text)
{
    const auto value = hexPart<16>(text);
    return value ? std::optional(envelope::MailboxId{*value}) : std::nullopt;
}

std::optional<std::vector<Position>> positionsIn(std::string_view query)
{
    std::vector<Position> positions;
    const auto after = field(query, "after");
    if (!after || after->empty())
        return positions;
    for (const std::string_view item : split(*after, ',')) {
        const auto colon = item.find(':');
        const auto device = hexPart<16>(item.substr(0, colon));
        const auto sequence = colon == std::string_view::npos ? std::nullopt : numberIn(item.substr(colon + 1));
        if (!device || !sequence || positions.size() == maximumPositions)
            return std::nullopt;
        positions.push_back({envelope::DeviceId{*device}, *sequence});
    }
    return positions;
}

}  // namespace

std::vector<std::string_view> split(std::string_view text, char separator)
{
    std::vector<std::string_view> parts;
    while (true) {
        const auto end = text.find(separator);
        parts.push_back(text.substr(0, end));
        if (end == std::string_view::npos)
            return parts;
        text.remove_prefix(end + 1);
    }
}

std::optional<std::uint64_t> numberIn(std::string_view text)
{
    std::uint64_t value = 0;
    const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), value);
    constexpr std::uint64_t highest = 0x7fff'ffff'ffff'ffff;
    if (text.empty() || problem != std::errc() || end != text.data() + text.size() || value > highest)
        return std::nullopt;
    return value;
}

Service::Service(MailStore& store, Limits limits)
    : m_store(store), m_limits(limits), m_devices(limits.perDevice), m_addresses(limits.perAddress),
      m_enrolments(limits.enrolPerAddress), m_blobDevices(limits.blobsPerDevice), m_blobAddresses(limits.blobsPerAddress)
{
}

Response Service::handle(const Request& request, const std::string& address, clock::Instant now, bool again)
{
    Call call{request, address, now, again};
    Response response = answer(404);
    RateLimiter& addresses = isAboutBlobs(request) ? m_blobAddresses : m_addresses;
    if (const std::int64_t wait = again ? 0 : addresses.take(address, now); wait > 0) {
        response = answer(429);
        response.retryAfterSeconds = wait;
    } else if (request.body.size() > maximumRequestBody) {
        response = answer(413);
    } else if (request.path.starts_with(prefix)) {
        // Out of memory, say: whether it took effect is unknown, as with a store that is away.
        try {
            call.parts = split(std::string_view(request.path).substr(prefix.size()), '/');
            response = route(call);
        } catch (const std::exception&) {
            response = answerFor(Error{Reason::storageFailed, {}});
        }
    }
    response.clinic = call.clinic;
    response.refused = response.status < 500 ? call.refused : std::string_view();
    response.hubTime =
        std::to_string(std::chrono::floor<std::chrono::seconds>(now).time_since_epoch().count());
    return response;
}

Response Service::route(Call& call)
{
    const std::string& method = call.request.method;
    const auto& parts = call.parts;
    const std::size_t count = parts.size();
    const std::string_view first = parts[0];

    // What needs no registered device.
    if (method == "GET" && count == 1 && first == "health")
        return answer(m_store.ready() ? 200 : 503);
    if (method == "POST" && count == 1 && first == "desks")
        return registerDesk(call);
    if (method == "GET" && count == 2 && first == "bundles")
        return bundle(call);
    if (method == "POST" && count == 3 && first == "offers" && parts[2] == "enrol")
        return enrol(call);
    if (method == "POST" && count == 3 && first == "offers" && parts[2] == "answer")
        return offerAnswer(call);

    const Result<Device> device = authorised(call);
    if (!device)
        return answerFor(device.error());
    call.clinic = device->clinic;
    RateLimiter& devices = isAboutBlobs(call.request) ? m_blobDevices : m_devices;
    if (const std::int64_t wait = call.again ? 0 : devices.take(bytes::toHex(device->id.view()), call.now); wait > 0) {
        Response limited = answer(429);
        limited.retryAfterSeconds = wait;
        return limited;
    }
    const bool desk = device->role == Role::desk;
    if (desk && method == "POST" && count == 1 && first == "offers")
        return putOffer(call, *device);
    if (desk && method == "GET" && count == 2 && first == "offers")
        return enrolment(call, *device);
    if (desk && method == "PUT" && count == 3 && first == "offers" && parts[2] == "nonce")
        return answerOffer(call, *device);
    if (desk && method == "PUT" && count == 3 && first == "offers" && parts[2] == "link")
        return linkOffer(call, *device);
    if (desk && method == "GET" && count == 1 && first == "news")
        return news(call, *device);
    if (desk && method == "POST" && count == 1 && first == "ended")
        return endDevices(call, *device);
    if (count >= 3 && count <= 5 && first == "m" && parts[2] == "blobs")
        return aboutBlob(call, *device);
    // Whose mailbox it is, if there is one, is not said; the operator sees that somebody asked.
    const auto ofMailbox = [&call](Response response) {
        if (response.status == 404)
            call.refused = "not its mailbox";
        return response;
    };
    if (method == "PUT" && count == 4 && first == "m")
        return ofMailbox(putEnvelope(call, *device));
    if (method == "GET" && count == 2 && first == "m")
        return ofMailbox(getEnvelopes(call, *device));
    if (method == "POST" && count == 3 && first == "m" && parts[2] == "ack")
        return ofMailbox(acknowledge(call, *device));
    return answer(404);
}

/// The answer is the same whatever the reason; the reason is for the operator.
Response Service::refuse(Call& call, int status, std::string_view why)
{
    call.refused = why;
    return answer(status);
}

Result<Device> Service::authorised(Call& call)
{
    const Result<Authorisation> parsed = parseAuthorisation(call.request.authorisation);
    call.refused = "no signature";
    if (!parsed)
        return fail(Reason::forged, "device: no authorisation that can be read");
    call.refused = "unknown or revoked device";
    const Result<Device> device = m_store.device(parsed->device);
    if (!device && device.error().reason != Reason::notFound)
        return device;
    if (!device || device->revoked)
        return fail(Reason::forged, "device: unknown or revoked");
    call.refused = "signature";
    if (!signatureHolds(call.request, *parsed, device->key))
        return fail(Reason::forged, "device: the signature does not hold");
    call.refused = "stale or replayed";
    if (!call.again && !isFresh(*parsed, call.now))
        return fail(Reason::expired, "device: too old, or seen before");
    call.refused = {};
    return device;
}

bool Service::isFresh(const Authorisation& authorisation, clock::Instant now)
{
    const clock::Instant said{std::chrono::seconds{authorisation.unixSeconds}};
    if (said > now + m_limits.window || said < now - m_limits.window)
        return false;
    const std::scoped_lock lock(m_nonceMutex);
    for (; !m_noncesInOrder.empty() && m_noncesInOrder.front().first < now - 2 * m_limits.window; m_noncesInOrder.pop_front())
        m_nonces.erase(m_noncesInOrder.front().second);
    const auto [seen, fresh] = m_nonces.emplace(authorisation.device, authorisation.nonce);
    if (fresh)
        m_noncesInOrder.emplace_back(now, seen);
    return fresh;
}

Response Service::putEnvelope(Call& call, const Device& device)
{
    const auto mailbox = mailboxIn(call.parts[1]);
    const auto sender = hexPart<16>(call.parts[2]);
    const auto sequence = numberIn(call.parts[3]);
    if (!mailbox || !sender || !sequence)
        return answer(400);
    if (*sender != device.id.value)
        return answer(404);
    const auto header = envelope::verify(call.request.body, device.key);
    if (!header || header->mailbox != *mailbox || header->sequence != *sequence)
        return answer(400);
    return answerFor(m_store.putEnvelope(device, *mailbox, *sequence, call.request.body, call.now, m_limits.quota));
}

Response Service::getEnvelopes(Call& call, const Device& device)
{
    const auto mailbox = mailboxIn(call.parts[1]);
    const auto positions = positionsIn(call.request.query);
    if (!mailbox || !positions)
        return answer(400);
    const auto found = m_store.envelopesAfter(device, *mailbox, *positions, maximumAnswer - envelope::maximumEnvelope);
    if (!found)
        return answerFor(found.error());
    bytes::Writer out;
    for (const StoredEnvelope& envelope : *found)
        out.block(envelope.body);
    return answer(200, std::move(out).bytes());
}

Response Service::acknowledge(Call& call, const Device& device)
{
    const auto mailbox = mailboxIn(call.parts[1]);
    bytes::Reader reader(call.request.body);
    Position position;
    position.device = reader.id<envelope::DeviceTag>();
    position.sequence = reader.u64();
    if (!mailbox || !reader.atEnd() || position.sequence > 0x7fff'ffff'ffff'ffff)
        return answer(400);
    return answerFor(m_store.acknowledge(device, *mailbox, position, call.now));
}

Response Service::news(Call&, const Device& device)
{
    const auto mailboxes = m_store.withNews(device);
    if (!mailboxes)
        return answerFor(mailboxes.error());
    bytes::Writer out;
    for (const envelope::MailboxId& mailbox : *mailboxes)
        out.raw(mailbox.view());
    return answer(200, std::move(out).bytes());
}

std::string knownNews(bytes::View news)
{
    return news.empty() ? std::string() : bytes::toHex(crypto::hash128(news));
}

std::optional<Service::Wait> Service::waitOf(const Request& request)
{
    const bool news = request.path == newsPath;
    if (request.method != "GET" || (!news && !request.path.starts_with("/v1/m/")))
        return std::nullopt;
    const auto wait = field(request.query, "wait");
    const std::uint64_t seconds = wait ? numberIn(*wait).value_or(0) : 0;
    const auto mailbox = news ? std::nullopt : mailboxIn(std::string_view(request.path).substr(6));
    if (seconds == 0 || (!news && !mailbox))
        return std::nullopt;
    constexpr std::uint64_t most = longestWait.count();
    return Wait{mailbox, std::chrono::seconds(std::min(seconds, most))};
}

bool Service::endsWait(const Request& request, const Response& response)
{
    if (response.status != 200)
        return true;
    if (request.path != newsPath)
        return !response.body.empty();
    // What is gone because it was taken is no news.
    return !response.body.empty() && knownNews(response.body) != field(request.query, "known").value_or(std::string_view());
}

std::optional<envelope::MailboxId> Service::writtenBy(const Request& request)
{
    if (request.method != "PUT" || !request.path.starts_with("/v1/m/") || isAboutBlobs(request))
        return std::nullopt;
    return mailboxIn(std::string_view(request.path).substr(6, 32));
}

Done Service::tidy(clock::Instant now)
{
    const Done offers = m_store.dropOffersBefore(now - std::chrono::hours(1));
    const Done envelopes = m_store.dropAcknowledged(now - m_limits.retention);
    const Done blobs = m_store.dropBlobs(now - m_limits.blobRetention, now - m_limits.unclaimedBlobRetention);
    return !offers ? offers : !envelopes ? envelopes : blobs;
}

}  // namespace ebbline::mailbox
