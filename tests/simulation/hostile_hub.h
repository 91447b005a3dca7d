#pragma once
/// \file
/// A hub that lies by a script: it drops, repeats, reorders, truncates, substitutes, changes, rolls back, serves
/// other mailboxes, withholds, answers garbage and too much, and lies about what it took. It has no key.

#include "tests/simulation/world.h"

namespace ebbline::simulation {

enum class Trick : std::uint8_t {
    none,
    dropOne,          ///< one envelope of an answer is left out
    repeat,           ///< envelopes come twice, and old ones again
    reorder,          ///< the last one first
    truncate,         ///< the answer is cut off within an envelope
    change,           ///< one bit of an envelope is another
    substitute,       ///< an envelope of the hub's own making, signed by a key of its own, in the sender's name
    otherMailbox,     ///< what stands in another mailbox
    withhold,         ///< an empty answer
    olderState,       ///< the newest envelopes are not there yet
    lieTaken,         ///< it says that it took an envelope, and keeps nothing
    lieOther,         ///< it says that other bytes stand there, that it is full, that nobody is known
    garbage,          ///< an answer of random bytes
    oversize,         ///< an answer above every bound, or lengths that claim gigabytes
    noNews,           ///< it says that no mailbox has anything new
    wrongTime,        ///< it refuses and names another century
    replayEarlier,    ///< the answer that it gave to an earlier question
};
inline constexpr std::size_t trickCount = 17;
const char* nameOf(Trick trick);

class HostileHub {
public:
    HostileHub(World& world, std::uint64_t seed);

    /// From now on this often, in thousandths of the requests, one of these.
    void play(std::vector<Trick> tricks, unsigned thousandths);
    void behave() { m_tricks.clear(); }

    /// How often each trick changed an answer.
    const std::array<std::uint64_t, trickCount>& played() const { return m_played; }
    mailbox::Response answer(const mailbox::Request& request, const std::string& device);

private:
    using Pieces = std::vector<bytes::Bytes>;
    static Pieces piecesOf(const bytes::Bytes& body);
    static bytes::Bytes joined(const Pieces& pieces);
    bool playWith(Trick trick, const mailbox::Request& request, mailbox::Response& response);
    bool playWithEnvelopes(Trick trick, const std::string& mailbox, mailbox::Response& response);
    bytes::Bytes forged(const bytes::Bytes& like);

    World& m_world;
    std::mt19937_64 m_random;
    std::vector<Trick> m_tricks;
    unsigned m_often = 0;
    crypto::SigningKey m_own = crypto::SigningKey::generate();
    std::map<std::string, Pieces> m_seen;          ///< all envelopes by mailbox, as they were put
    std::map<std::string, bytes::Bytes> m_earlier; ///< by mailbox: an answer that was given
    std::array<std::uint64_t, trickCount> m_played{};
};

}  // namespace ebbline::simulation
