#include "core/crypto/stream.h"

#include <sodium.h>

namespace ebbline::crypto {

static_assert(crypto_secretstream_xchacha20poly1305_HEADERBYTES == streamHeaderSize);
static_assert(crypto_secretstream_xchacha20poly1305_ABYTES == streamOverhead);
static_assert(crypto_secretstream_xchacha20poly1305_KEYBYTES == Secret::size);

struct StreamSealer::State {
    crypto_secretstream_xchacha20poly1305_state stream{};
    StreamHeader header{};
    ~State() { sodium_memzero(&stream, sizeof stream); }
};

StreamSealer::StreamSealer(const Secret& key) : m_state(std::make_unique<State>())
{
    crypto_secretstream_xchacha20poly1305_init_push(&m_state->stream, m_state->header.data(), key.view().data());
}
StreamSealer::StreamSealer(StreamSealer&&) noexcept = default;
StreamSealer& StreamSealer::operator=(StreamSealer&&) noexcept = default;
StreamSealer::~StreamSealer() = default;

const StreamHeader& StreamSealer::header() const { return m_state->header; }

Bytes StreamSealer::add(View piece, View associated, bool last)
{
    Bytes sealed(piece.size() + streamOverhead);
    const unsigned char tag = last ? crypto_secretstream_xchacha20poly1305_TAG_FINAL
                                   : crypto_secretstream_xchacha20poly1305_TAG_MESSAGE;
    crypto_secretstream_xchacha20poly1305_push(&m_state->stream, sealed.data(), nullptr, piece.data(), piece.size(),
                                               associated.data(), associated.size(), tag);
    return sealed;
}

struct StreamOpener::State {
    crypto_secretstream_xchacha20poly1305_state stream{};
    bool usable = false;
    ~State() { sodium_memzero(&stream, sizeof stream); }
};

StreamOpener::StreamOpener(const Secret& key, const StreamHeader& header) : m_state(std::make_unique<State>())
{
    m_state->usable =
        crypto_secretstream_xchacha20poly1305_init_pull(&m_state->stream, header.data(), key.view().data()) == 0;
}
StreamOpener::StreamOpener(StreamOpener&&) noexcept = default;
StreamOpener& StreamOpener::operator=(StreamOpener&&) noexcept = default;
StreamOpener::~StreamOpener() = default;

Result<StreamOpener::Piece> StreamOpener::take(View sealed, View associated)
{
    if (!m_state->usable || sealed.size() < streamOverhead)
        return fail(Reason::forged, "stream: it is over, or the piece is too short");
    Piece piece{Bytes(sealed.size() - streamOverhead), false};
    unsigned char tag = 0;
    if (crypto_secretstream_xchacha20poly1305_pull(&m_state->stream, piece.plaintext.data(), nullptr, &tag, sealed.data(),
                                                   sealed.size(), associated.data(), associated.size())
        != 0)
        return fail(Reason::forged, "stream: the piece is not the next one");
    piece.last = tag == crypto_secretstream_xchacha20poly1305_TAG_FINAL;
    if (!piece.last && tag != crypto_secretstream_xchacha20poly1305_TAG_MESSAGE)
        return fail(Reason::forged, "stream: a tag that we do not write");
    m_state->usable = !piece.last;
    return piece;
}

}  // namespace ebbline::crypto
