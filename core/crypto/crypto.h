#pragma once
/// \file
/// Every cryptographic operation of Ebbline, over libsodium and nothing else; one suite, no
/// primitive of our own. Keys are types, so that a public key is never passed as a secret.
///
/// Suite 1: X25519 sealed boxes, XChaCha20-Poly1305-IETF, Ed25519, BLAKE2b, Argon2id13.
/// Call initialise() once before anything else; every main() and test does.

#include "core/bytes/bytes.h"
#include "core/result/result.h"

#include <memory>

namespace ebbline::crypto {

using bytes::Array;
using bytes::Bytes;
using bytes::View;

/// Prepares the library. Safe to call again. \returns Reason::unsupported if it cannot start.
Done initialise();

void randomFill(std::span<std::uint8_t> out);

template <std::size_t N>
Array<N> randomArray()
{
    Array<N> out;
    randomFill(out);
    return out;
}

/// 32 secret bytes in guarded, non-swappable memory, zeroed when let go. Moves, never copies.
class Secret {
public:
    static constexpr std::size_t size = 32;

    Secret(Secret&&) noexcept = default;
    Secret& operator=(Secret&&) noexcept = default;

    static Secret random();
    /// \pre source.size() == 32. The caller wipes its own copy.
    static Secret from(View source);
    Secret clone() const { return from(view()); }

    View view() const { return {m_bytes.get(), size}; }

private:
    struct Free {
        void operator()(std::uint8_t* bytes) const;
    };
    Secret();
    std::unique_ptr<std::uint8_t, Free> m_bytes;
};

/// Overwrites `bytes` in a way the compiler may not remove.
void wipe(std::span<std::uint8_t> bytes);

/// Equal in constant time; false if the lengths differ.
bool equal(View a, View b);

// --- hashing and derivation -------------------------------------------------------------

Array<32> hash256(View message);                  ///< BLAKE2b-256
Array<16> hash128(View message);                  ///< BLAKE2b-128
Array<32> keyedHash256(View key, View message);   ///< BLAKE2b-256, key 16..64 bytes
Array<16> keyedHash128(View key, View message);

/// BLAKE2b-256 of bytes that come in pieces.
class Hash256 {
public:
    Hash256();
    Hash256(Hash256&&) noexcept;
    Hash256& operator=(Hash256&&) noexcept;
    ~Hash256();
    Hash256& add(View piece);
    /// Ends it: add nothing afterwards.
    Array<32> take();

private:
    struct State;
    std::unique_ptr<State> m_state;
};

/// crypto_kdf with an 8-character context. \pre context.size() == 8
Secret derive(const Secret& from, std::uint64_t id, std::string_view context);

/// Cost of stretching a passphrase with Argon2id.
struct StretchCost {
    std::uint32_t passes = 3;            ///< 1..8
    std::uint32_t memoryKiB = 128 * 1024;  ///< 8..512 MiB
    bool operator==(const StretchCost&) const = default;
};
inline constexpr StretchCost stretchFloor{3, 64 * 1024};
/// Within its bounds.
bool isPossible(const StretchCost& cost);

/// \returns Reason::outOfRange for a cost outside its bounds (bytes from a file decide the cost:
///          an unbounded one would be an attack), Reason::tooLarge if the memory cannot be had.
Result<Secret> stretchPassphrase(View passphrase, const Array<16>& salt, const StretchCost& cost);

// --- signatures (Ed25519) ----------------------------------------------------------------

struct SigningPublicKey {
    Array<32> value{};
    auto operator<=>(const SigningPublicKey&) const = default;
};
using Signature = Array<64>;

class SigningKey {
public:
    static SigningKey generate();
    /// \pre seed.size() == 32
    static SigningKey fromSeed(View seed);
    const SigningPublicKey& publicKey() const { return m_public; }
    /// The 32-byte seed, for storing inside the vault.
    View seed() const { return m_seed.view(); }
    Signature sign(View message) const;
    SigningKey clone() const { return fromSeed(seed()); }

private:
    SigningKey(Secret seed, SigningPublicKey publicKey);
    Secret m_seed;
    SigningPublicKey m_public;
};

bool verify(const SigningPublicKey& key, View message, const Signature& signature);

// --- sealed boxes (X25519) ---------------------------------------------------------------

struct BoxPublicKey {
    Array<32> value{};
    auto operator<=>(const BoxPublicKey&) const = default;
};

class BoxKey {
public:
    static BoxKey generate();
    /// \pre secret.size() == 32
    static BoxKey fromSecret(View secret);
    const BoxPublicKey& publicKey() const { return m_public; }
    View secret() const { return m_secret.view(); }
    BoxKey clone() const { return fromSecret(secret()); }

private:
    BoxKey(Secret secret, BoxPublicKey publicKey);
    Secret m_secret;
    BoxPublicKey m_public;
};

inline constexpr std::size_t sealOverhead = 48;
Bytes sealTo(const BoxPublicKey& recipient, View message);
/// \returns Reason::forged if it was not sealed to this key or was changed.
Result<Bytes> openSealed(const BoxKey& key, View sealed);

/// X25519. \returns Reason::forged for a public key of low order (an all-zero shared secret).
Result<Secret> exchange(const BoxKey& own, const BoxPublicKey& peer);

// --- authenticated encryption (XChaCha20-Poly1305-IETF) ------------------------------------

using Nonce = Array<24>;
inline constexpr std::size_t aeadOverhead = 16;
Bytes aeadSeal(const Secret& key, const Nonce& nonce, View associated, View plaintext);
/// \returns Reason::forged if key, nonce, associated data or ciphertext differ from sealing.
Result<Bytes> aeadOpen(const Secret& key, const Nonce& nonce, View associated, View ciphertext);

// --- padding (ISO/IEC 7816-4) ----------------------------------------------------------------

/// Pads to a multiple of `step` bytes, always by at least one byte.
Bytes pad(View plaintext, std::size_t step);
/// \returns Reason::malformed if it is not padded.
Result<Bytes> unpad(View padded);

/// Padmé: the next size whose low bits are zero, at most 12 % more (Nikitin, Barman, Lueks, Underwood, Hubaux,
/// Ford, "Reducing Metadata Leakage from Encrypted Files and Communication with PURBs", PETS 2019, section 4.3).
/// \pre length > 0
std::size_t padmeSize(std::size_t length);

}  // namespace ebbline::crypto
