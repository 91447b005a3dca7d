#include "core/crypto/crypto.h"

#include <sodium.h>

#include <bit>
#include <cassert>
#include <new>

namespace ebbline::crypto {

static_assert(crypto_generichash_BYTES == 32);
static_assert(crypto_sign_BYTES == 64);
static_assert(crypto_sign_PUBLICKEYBYTES == 32);
static_assert(crypto_sign_SEEDBYTES == 32);
static_assert(crypto_box_PUBLICKEYBYTES == 32);
static_assert(crypto_box_SECRETKEYBYTES == 32);
static_assert(crypto_box_SEALBYTES == sealOverhead);
static_assert(crypto_aead_xchacha20poly1305_ietf_ABYTES == aeadOverhead);
static_assert(crypto_aead_xchacha20poly1305_ietf_NPUBBYTES == std::tuple_size_v<Nonce>);
static_assert(crypto_kdf_KEYBYTES == Secret::size && crypto_kdf_CONTEXTBYTES == 8);
static_assert(crypto_pwhash_argon2id_SALTBYTES == 16);

Done initialise()
{
    if (sodium_init() < 0)
        return fail(Reason::unsupported, "the cryptographic library cannot start");
    return {};
}

void randomFill(std::span<std::uint8_t> out)
{
    randombytes_buf(out.data(), out.size());
}

Secret::Secret()
{
    auto* memory = static_cast<std::uint8_t*>(sodium_malloc(size));
    if (memory == nullptr)
        throw std::bad_alloc();
    m_bytes.reset(memory);
}

void Secret::Free::operator()(std::uint8_t* bytes) const
{
    sodium_free(bytes);
}

Secret Secret::random()
{
    Secret secret;
    randombytes_buf(secret.m_bytes.get(), size);
    return secret;
}

Secret Secret::from(View source)
{
    assert(source.size() == size);
    Secret secret;
    std::copy_n(source.begin(), size, secret.m_bytes.get());
    return secret;
}

void wipe(std::span<std::uint8_t> bytes)
{
    sodium_memzero(bytes.data(), bytes.size());
}

bool equal(View a, View b)
{
    return a.size() == b.size() && sodium_memcmp(a.data(), b.data(), a.size()) == 0;
}

namespace {

template <std::size_t N>
Array<N> hashed(View key, View message)
{
    Array<N> out;
    crypto_generichash(out.data(), out.size(), message.data(), message.size(),
                       key.empty() ? nullptr : key.data(), key.size());
    return out;
}

}  // namespace

Array<32> hash256(View message) { return hashed<32>({}, message); }
Array<16> hash128(View message) { return hashed<16>({}, message); }
Array<32> keyedHash256(View key, View message) { return hashed<32>(key, message); }
Array<16> keyedHash128(View key, View message) { return hashed<16>(key, message); }

struct Hash256::State {
    crypto_generichash_state inner;
};

Hash256::Hash256() : m_state(std::make_unique<State>())
{
    crypto_generichash_init(&m_state->inner, nullptr, 0, 32);
}

Hash256::Hash256(Hash256&&) noexcept = default;
Hash256& Hash256::operator=(Hash256&&) noexcept = default;
Hash256::~Hash256() = default;

Hash256& Hash256::add(View piece)
{
    crypto_generichash_update(&m_state->inner, piece.data(), piece.size());
    return *this;
}

Array<32> Hash256::take()
{
    Array<32> out;
    crypto_generichash_final(&m_state->inner, out.data(), out.size());
    return out;
}

Secret derive(const Secret& from, std::uint64_t id, std::string_view context)
{
    assert(context.size() == crypto_kdf_CONTEXTBYTES);
    Array<Secret::size> out;
    crypto_kdf_derive_from_key(out.data(), out.size(), id, context.data(), from.view().data());
    Secret secret = Secret::from(out);
    wipe(out);
    return secret;
}

bool isPossible(const StretchCost& cost)
{
    return cost.passes >= 1 && cost.passes <= 8 && cost.memoryKiB >= 8 * 1024 && cost.memoryKiB <= 512 * 1024;
}

Result<Secret> stretchPassphrase(View passphrase, const Array<16>& salt, const StretchCost& cost)
{
    if (!isPossible(cost))
        return fail(Reason::outOfRange, "stretch: want 1..8 passes and 8..512 MiB");
    Array<Secret::size> out;
    const int failed = crypto_pwhash_argon2id(
        out.data(), out.size(), reinterpret_cast<const char*>(passphrase.data()), passphrase.size(),
        salt.data(), cost.passes, static_cast<std::size_t>(cost.memoryKiB) * 1024,
        crypto_pwhash_argon2id_ALG_ARGON2ID13);
    if (failed != 0)
        return fail(Reason::tooLarge, "stretch: the memory it needs cannot be had");
    Secret secret = Secret::from(out);
    wipe(out);
    return secret;
}

// --- signatures ---------------------------------------------------------------------------

SigningKey::SigningKey(Secret seed, SigningPublicKey publicKey)
    : m_seed(std::move(seed)), m_public(publicKey)
{
}

SigningKey SigningKey::generate()
{
    const Secret seed = Secret::random();
    return fromSeed(seed.view());
}

SigningKey SigningKey::fromSeed(View seed)
{
    Secret kept = Secret::from(seed);
    SigningPublicKey publicKey;
    Array<crypto_sign_SECRETKEYBYTES> expanded;
    crypto_sign_seed_keypair(publicKey.value.data(), expanded.data(), kept.view().data());
    wipe(expanded);
    return SigningKey(std::move(kept), publicKey);
}

Signature SigningKey::sign(View message) const
{
    Array<crypto_sign_SECRETKEYBYTES> expanded;
    Array<32> publicKey;
    crypto_sign_seed_keypair(publicKey.data(), expanded.data(), m_seed.view().data());
    Signature signature;
    crypto_sign_detached(signature.data(), nullptr, message.data(), message.size(), expanded.data());
    wipe(expanded);
    return signature;
}

bool verify(const SigningPublicKey& key, View message, const Signature& signature)
{
    return crypto_sign_verify_detached(signature.data(), message.data(), message.size(), key.value.data()) == 0;
}

// --- sealed boxes ---------------------------------------------------------------------------

BoxKey::BoxKey(Secret secret, BoxPublicKey publicKey)
    : m_secret(std::move(secret)), m_public(publicKey)
{
}

BoxKey BoxKey::generate()
{
    const Secret secret = Secret::random();
    return fromSecret(secret.view());
}

BoxKey BoxKey::fromSecret(View secret)
{
    Secret kept = Secret::from(secret);
    BoxPublicKey publicKey;
    crypto_scalarmult_base(publicKey.value.data(), kept.view().data());
    return BoxKey(std::move(kept), publicKey);
}

Bytes sealTo(const BoxPublicKey& recipient, View message)
{
    Bytes sealed(message.size() + sealOverhead);
    crypto_box_seal(sealed.data(), message.data(), message.size(), recipient.value.data());
    return sealed;
}

Result<Bytes> openSealed(const BoxKey& key, View sealed)
{
    if (sealed.size() < sealOverhead)
        return fail(Reason::forged, "sealed box: too short");
    Bytes message(sealed.size() - sealOverhead);
    if (crypto_box_seal_open(message.data(), sealed.data(), sealed.size(), key.publicKey().value.data(),
                             key.secret().data()) != 0)
        return fail(Reason::forged, "sealed box: not sealed to this key, or changed");
    return message;
}

Result<Secret> exchange(const BoxKey& own, const BoxPublicKey& peer)
{
    Array<Secret::size> shared;
    if (crypto_scalarmult(shared.data(), own.secret().data(), peer.value.data()) != 0)
        return fail(Reason::forged, "key exchange: the public key is of low order");
    Secret secret = Secret::from(shared);
    wipe(shared);
    return secret;
}

// --- authenticated encryption ------------------------------------------------------------------

Bytes aeadSeal(const Secret& key, const Nonce& nonce, View associated, View plaintext)
{
    Bytes out(plaintext.size() + aeadOverhead);
    crypto_aead_xchacha20poly1305_ietf_encrypt(out.data(), nullptr, plaintext.data(), plaintext.size(),
                                               associated.data(), associated.size(), nullptr, nonce.data(),
                                               key.view().data());
    return out;
}

Result<Bytes> aeadOpen(const Secret& key, const Nonce& nonce, View associated, View ciphertext)
{
    if (ciphertext.size() < aeadOverhead)
        return fail(Reason::forged, "ciphertext: too short");
    Bytes out(ciphertext.size() - aeadOverhead);
    if (crypto_aead_xchacha20poly1305_ietf_decrypt(out.data(), nullptr, nullptr, ciphertext.data(),
                                                   ciphertext.size(), associated.data(), associated.size(),
                                                   nonce.data(), key.view().data()) != 0)
        return fail(Reason::forged, "ciphertext: the tag does not hold");
    return out;
}

// --- padding -------------------------------------------------------------------------------------

Bytes pad(View plaintext, std::size_t step)
{
    Bytes out(plaintext.begin(), plaintext.end());
    out.push_back(0x80);
    out.resize((out.size() + step - 1) / step * step);
    return out;
}

Result<Bytes> unpad(View padded)
{
    std::size_t end = padded.size();
    while (end > 0 && padded[end - 1] == 0)
        --end;
    if (end == 0 || padded[end - 1] != 0x80)
        return fail(Reason::malformed, "padding: its mark is missing");
    return Bytes(padded.begin(), padded.begin() + static_cast<std::ptrdiff_t>(end - 1));
}

std::size_t padmeSize(std::size_t length)
{
    const auto exponent = static_cast<std::size_t>(std::bit_width(length) - 1);
    const auto kept = static_cast<std::size_t>(std::bit_width(exponent));
    const std::size_t mask = (std::size_t{1} << (exponent - kept)) - 1;
    return (length + mask) & ~mask;
}

}  // namespace ebbline::crypto
