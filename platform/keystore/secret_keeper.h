#pragma once
/// \file
/// The key store of a device, as far as the diary uses it: one secret of 32 bytes that only this device
/// gives out; a phone gives it to this program alone (isOfSession() else). It is mixed into the key that a passphrase makes, so that a copy
/// of the files can not be searched on another machine; it opens nothing alone (docs/formats/vault.md).
///
/// Key stores lose keys, with no word to the person. So a diary is bound to its device only when its
/// recovery code exists, and nothing ever makes a second secret over one that may still be needed.

#include "core/crypto/crypto.h"

namespace ebbline::keystore {

class SecretKeeper {
public:
    virtual ~SecretKeeper() = default;

    /// False if this device has no key store that the program may trust.
    virtual bool isThere() const = 0;
    /// True if the session of a computer keeps the secret: it may ask for a password of its own, and it gives the secret to
    /// every program of that session, not to this one alone.
    virtual bool isOfSession() const { return false; }

    /// \returns Reason::notFound if none was made; Reason::damaged if there was one and the key store lost it:
    ///          the recovery code is the way in; Reason::storageFailed if the key store did not answer now;
    ///          Reason::unsupported if there is no key store.
    virtual Result<crypto::Secret> fetch() = 0;

    /// Makes the secret, and has read it back before it returns.
    /// \returns Reason::alreadyExists if there is one, also one that was lost; otherwise as fetch().
    virtual Result<crypto::Secret> make() = 0;

    /// After it nothing on this device gives the secret out. Nothing there is success too.
    /// \returns Reason::storageFailed if the secret is still there, or the key store did not answer now;
    ///          Reason::unsupported if there is no key store now that could say so.
    virtual Done forget() = 0;
};

/// A device without a key store, or with one that we do not use: says so instead of pretending.
class NoKeeper final : public SecretKeeper {
public:
    bool isThere() const override { return false; }
    Result<crypto::Secret> fetch() override { return none(); }
    Result<crypto::Secret> make() override { return none(); }
    Done forget() override { return {}; }

private:
    static std::unexpected<Error> none() { return fail(Reason::unsupported, "key store: this device has none that we use"); }
};

}  // namespace ebbline::keystore
