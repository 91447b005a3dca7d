#include "tests/simulation/hostile_hub.h"

#include "core/bytes/reader.h"

namespace ebbline::simulation {

namespace {

constexpr std::array<const char*, trickCount> names{
    "none", "left one out", "repeated", "reordered", "cut off", "changed a bit", "substituted", "other mailbox", "withheld",
    "served an older state", "lied that it took", "lied that it could not", "garbage", "oversize", "no news", "wrong time", "an earlier answer"};

std::string mailboxOf(const std::string& path)
{
    return path.starts_with("/v1/m/") ? path.substr(6, 32) : std::string();
}

}  // namespace

const char* nameOf(Trick trick) { return names.at(static_cast<std::size_t>(trick)); }

HostileHub::HostileHub(World& world, std::uint64_t seed) : m_world(world), m_random(seed) {}

void HostileHub::play(std::vector<Trick> tricks, unsigned thousandths)
{
    m_tricks = std::move(tricks);
    m_often = thousandths;
}

HostileHub::Pieces HostileHub::piecesOf(const bytes::Bytes& body)
{
    Pieces pieces;
    bytes::Reader reader(body);
    while (reader.ok() && reader.left() > 0) {
        const bytes::View piece = reader.block(envelope::maximumEnvelope);
        if (reader.ok())
            pieces.emplace_back(piece.begin(), piece.end());
    }
    return pieces;
}

bytes::Bytes HostileHub::joined(const Pieces& pieces)
{
    bytes::Writer out;
    for (const bytes::Bytes& piece : pieces)
        out.block(piece);
    return std::move(out).bytes();
}

/// What somebody without the sender's key can make of an envelope: its header, with other contents.
bytes::Bytes HostileHub::forged(const bytes::Bytes& like)
{
    auto header = envelope::peek(like);
    if (!header)
        return like;
    const bytes::Bytes text(64, 7);
    auto sealed = envelope::seal(*header, m_own, {crypto::BoxKey::generate().publicKey()}, text);
    return sealed ? *sealed : like;
}

mailbox::Response HostileHub::answer(const mailbox::Request& request, const std::string&)
{
    const Trick trick = m_tricks.empty() || m_random() % 1000 >= m_often ? Trick::none : m_tricks[m_random() % m_tricks.size()];
    const std::string box = mailboxOf(request.path);
    const bool put = request.method == "PUT" && !box.empty();
    mailbox::Response response;
    if (trick == Trick::lieTaken && put) {
        // It keeps nothing; the answer is the one that an honest hub would give.
        response = {200, {}, 0, std::to_string(std::chrono::floor<std::chrono::seconds>(m_world.timeline.now()).time_since_epoch().count())};
        ++m_played[static_cast<std::size_t>(trick)];
    } else {
        response = m_world.honest(request);
        if (put && response.status == 200)
            m_seen[box].push_back(request.body);
        if (trick != Trick::none && playWith(trick, request, response)) {
            ++m_played[static_cast<std::size_t>(trick)];
            m_world.trace.line(m_world.timeline.now(), std::string("hub: ") + nameOf(trick));
        }
    }
    if (request.method == "GET" && !box.empty() && response.status == 200 && !response.body.empty())
        m_earlier[box] = response.body;
    return response;
}

bool HostileHub::playWith(Trick trick, const mailbox::Request& request, mailbox::Response& response)
{
    const std::string box = mailboxOf(request.path);
    const bool pull = request.method == "GET" && !box.empty() && response.status == 200;
    switch (trick) {
    case Trick::lieOther:
        response = {std::array{401, 404, 409, 429, 500, 503, 507, 302, 0}[m_random() % 9], {}, 0, response.hubTime};
        return true;
    case Trick::garbage:
        if (!pull)
            return false;
        response.body.resize(m_random() % 4000);
        for (auto& byte : response.body)
            byte = static_cast<std::uint8_t>(m_random());
        return response.body.size() > 4;
    case Trick::oversize: {
        if (!pull)
            return false;
        // Either really too much, or a length that only claims it.
        const bool claim = m_random() % 2 == 0;
        response.body = claim ? bytes::Writer().u32(0xffff'ffff).raw(bytes::Bytes(100, 1)).bytes()
                              : bytes::Bytes(3 * mailbox::maximumAnswer, 0);
        return true;
    }
    case Trick::noNews:
        if (request.path != "/v1/news" || response.body.empty())
            return false;
        response.body.clear();
        return true;
    case Trick::wrongTime:
        response = {401, {}, 0, m_random() % 2 == 0 ? "9223372036854775807" : "-62135596800"};
        return true;
    case Trick::olderState:
        if (!pull || piecesOf(response.body).size() < 2)
            return false;
        {
            Pieces pieces = piecesOf(response.body);
            pieces.resize(m_random() % pieces.size());
            response.body = joined(pieces);
        }
        return true;
    case Trick::replayEarlier:
        if (!pull || !m_earlier.contains(box) || m_earlier.at(box) == response.body)
            return false;
        response.body = m_earlier.at(box);
        return true;
    default: return pull && playWithEnvelopes(trick, box, response);
    }
}

bool HostileHub::playWithEnvelopes(Trick trick, const std::string& mailbox, mailbox::Response& response)
{
    Pieces pieces = piecesOf(response.body);
    const auto any = [&] { return m_random() % pieces.size(); };
    switch (trick) {
    case Trick::dropOne:
        if (pieces.size() < 2)
            return false;
        pieces.erase(pieces.begin() + static_cast<std::ptrdiff_t>(m_random() % (pieces.size() - 1)));
        break;
    case Trick::repeat: {
        const Pieces& old = m_seen[mailbox];
        if (pieces.empty() && old.empty())
            return false;
        pieces.insert(pieces.end(), pieces.begin(), pieces.end());
        pieces.insert(pieces.end(), old.begin(), old.end());
        break;
    }
    case Trick::reorder:
        if (pieces.size() < 2)
            return false;
        std::ranges::reverse(pieces);
        break;
    case Trick::truncate:
        if (pieces.empty())
            return false;
        response.body.resize(response.body.size() - 1 - m_random() % 900);
        return true;
    case Trick::change: {
        if (pieces.empty())
            return false;
        bytes::Bytes& piece = pieces[any()];
        piece[m_random() % piece.size()] ^= static_cast<std::uint8_t>(1u << (m_random() % 8));
        break;
    }
    case Trick::substitute: {
        if (pieces.empty())
            return false;
        bytes::Bytes& piece = pieces[any()];
        piece = forged(piece);
        break;
    }
    case Trick::otherMailbox: {
        Pieces others;
        for (const auto& [name, all] : m_seen)
            if (name != mailbox)
                others.insert(others.end(), all.begin(), all.end());
        if (others.empty())
            return false;
        pieces = others;
        pieces.resize(std::min<std::size_t>(pieces.size(), 20));
        break;
    }
    case Trick::withhold:
        if (pieces.empty())
            return false;
        pieces.clear();
        break;
    default: return false;
    }
    response.body = joined(pieces);
    return true;
}

}  // namespace ebbline::simulation
