#include "tests/faults/abuse.h"

#include "core/bytes/text.h"

#include <algorithm>

namespace ebbline::faults {

namespace {

std::string pathOf(const Phone& phone, std::uint64_t sequence)
{
    return "/v1/m/" + bytes::toHex(phone.mailbox.view()) + "/" + bytes::toHex(phone.member.id.view()) + "/" + std::to_string(sequence);
}

std::string noise(std::mt19937_64& random, std::size_t atMost)
{
    std::string bytes(random() % atMost, '\0');
    for (char& each : bytes)
        each = static_cast<char>(random());
    return bytes;
}

std::string smuggled(std::mt19937_64& random)
{
    static constexpr const char* framings[] = {
        "Content-Length: 5\r\nContent-Length: 6", "Content-Length: 5\r\nTransfer-Encoding: chunked", "Content-Length: -5",
        "Content-Length: 0x5", "Content-Length: 5, 5", "Transfer-Encoding: chunked, chunked", "Transfer-Encoding: identity",
        "Transfer-Encoding: chunked", "Content-Length: 99999999999999999999", "Host: other", " Folded: x", "Bad Header: x",
        "Content-Length : 5", "Content-Length: 5\nX: y", "Transfer-Encoding:\tchunked"};
    const auto framing = framings[random() % std::size(framings)];
    return std::string("POST /v1/desks HTTP/1.1\r\nHost: hub\r\n") + framing + "\r\n\r\n0\r\n\r\nGET /v1/health HTTP/1.1\r\nHost: hub\r\n\r\n";
}

std::string wrongRoute(std::mt19937_64& random)
{
    static constexpr const char* lines[] = {"DELETE /v1/m/", "PUT /v1/m/../../etc/passwd", "GET /v1/m/%00", "GET /v1//", "GET /",
                                            "OPTIONS *", "GET /v1/offers/", "PUT /v1/offers/zz/link", "TRACE /v1/health",
                                            "GET /v1/m/00000000000000000000000000000000?after=,,,:", "CONNECT hub:1"};
    return std::string(lines[random() % std::size(lines)]) + " HTTP/1.1\r\nHost: hub\r\nContent-Length: 0\r\n\r\n";
}

}  // namespace

std::string Attacker::request(Abuse kind, std::mt19937_64& random, clock::Instant now) const
{
    // A number that the victim has not used: nothing of this may ever stand there.
    const std::uint64_t sequence = 1'000'000 + random() % 1'000'000;
    const std::string path = pathOf(victim, sequence);
    const std::string sound = stranger.http("PUT", path, {}, victimsEnvelope, now);
    const std::size_t head = sound.find("\r\n\r\n");
    std::string bad = sound;
    switch (kind) {
    case Abuse::cutShort:
        bad.resize(random() % bad.size());
        return bad;
    case Abuse::headChanged:
        for (int i = 0; i < 4; ++i)
            bad[random() % head] = static_cast<char>(random());
        return bad;
    case Abuse::bodyChanged: {
        // The victim's own signature over other bytes.
        bad = overheard;
        const std::size_t body = bad.find("\r\n\r\n") + 4;
        bad[body + random() % (bad.size() - body)] ^= static_cast<char>(1 + random() % 255);
        return bad;
    }
    case Abuse::noise:
        return noise(random, 2000);
    case Abuse::hugeHeader:
        return "GET /v1/health HTTP/1.1\r\nHost: hub\r\nX: " + std::string(9'000 + random() % 100'000, 'a') + "\r\n\r\n";
    case Abuse::hugeBody:
        return "POST /v1/desks HTTP/1.1\r\nHost: hub\r\nContent-Length: " + std::to_string(310'000 + random() % 600'000'000)
               + "\r\n\r\n" + std::string(random() % 2000, 'a');
    case Abuse::unsignedRequest:
        return "PUT " + path + " HTTP/1.1\r\nHost: hub\r\nContent-Length: 3\r\n\r\nabc";
    case Abuse::strangersKey:
        return sound;
    case Abuse::stale:
        return victim.member.http("PUT", path, {}, victimsEnvelope, now + (random() % 2 ? 1 : -1) * std::chrono::seconds(310 + random() % 90'000));
    case Abuse::replayed:
        return overheard;
    case Abuse::foreignMailbox: {
        const std::string foreign = "/v1/m/" + bytes::toHex(victim.mailbox.view());
        switch (random() % 3) {
        case 0: return ofAnotherClinic.http("GET", foreign, {}, {}, now);
        case 1: return ofAnotherClinic.http("PUT", path, {}, victimsEnvelope, now);
        default: {
            bytes::Bytes acknowledged(24, 1);
            std::copy_n(victim.member.id.value.begin(), 16, acknowledged.begin());
            return ofAnotherClinic.http("POST", foreign + "/ack", {}, acknowledged, now);
        }
        }
    }
    case Abuse::smuggled:
        return smuggled(random);
    case Abuse::halfOpen:
        return std::string("GET /v1/health HT").substr(0, random() % 17);
    default:
        return wrongRoute(random);
    }
}

}  // namespace ebbline::faults
