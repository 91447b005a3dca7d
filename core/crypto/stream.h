#pragma once
/// \file
/// A long secret in pieces that cannot be swapped, left out or cut off: libsodium's secretstream over
/// XChaCha20-Poly1305, rekeyed as it goes. Every piece but the last carries the tag MESSAGE, the last one FINAL.

#include "core/crypto/crypto.h"

namespace ebbline::crypto {

inline constexpr std::size_t streamHeaderSize = 24;
inline constexpr std::size_t streamOverhead = 17;  ///< of each piece
using StreamHeader = Array<streamHeaderSize>;

class StreamSealer {
public:
    explicit StreamSealer(const Secret& key);
    StreamSealer(StreamSealer&&) noexcept;
    StreamSealer& operator=(StreamSealer&&) noexcept;
    ~StreamSealer();

    const StreamHeader& header() const;
    /// Add nothing after the last piece.
    Bytes add(View piece, View associated, bool last);

private:
    struct State;
    std::unique_ptr<State> m_state;
};

class StreamOpener {
public:
    StreamOpener(const Secret& key, const StreamHeader& header);
    StreamOpener(StreamOpener&&) noexcept;
    StreamOpener& operator=(StreamOpener&&) noexcept;
    ~StreamOpener();

    struct Piece {
        Bytes plaintext;
        bool last = false;
    };
    /// \returns Reason::forged if the piece is not the next one that was sealed under this key and header with
    ///          this associated data, or if the last one was taken already.
    Result<Piece> take(View sealed, View associated);

private:
    struct State;
    std::unique_ptr<State> m_state;
};

}  // namespace ebbline::crypto
