#pragma once
/// \file
/// A key store that can lose what it kept, fall silent, and outlive the program's files.

#include "platform/keystore/secret_keeper.h"

#include <optional>

namespace ebbline::test {

class FakeKeeper final : public keystore::SecretKeeper {
public:
    static FakeKeeper absent()
    {
        FakeKeeper none;
        none.there = false;
        return none;
    }

    bool isThere() const override { return there; }
    bool isOfSession() const override { return ofSession; }
    Result<crypto::Secret> fetch() override
    {
        ++fetched;
        if (!there)
            return fail(Reason::unsupported, "fake: no key store");
        if (silent)
            return fail(Reason::storageFailed, "fake: no answer");
        if (lost)
            return fail(Reason::damaged, "fake: lost");
        if (!kept)
            return fail(Reason::notFound, "fake: nothing there");
        return kept->clone();
    }
    Result<crypto::Secret> make() override
    {
        if (!there || silent)
            return fetch();
        if (kept || lost)
            return fail(Reason::alreadyExists, "fake: there is one");
        ++made;
        kept = crypto::Secret::random();
        return kept->clone();
    }
    Done forget() override
    {
        if (stubborn)
            return fail(Reason::storageFailed, "fake: still there");
        kept.reset();
        lost = false;
        return {};
    }
    /// What key stores do in the field.
    void lose()
    {
        kept.reset();
        lost = true;
    }

    std::optional<crypto::Secret> kept;
    bool there = true;
    bool ofSession = false;  ///< a computer's keyring, not a phone's
    bool silent = false;
    bool lost = false;
    bool stubborn = false;  ///< forgets nothing
    int made = 0;
    int fetched = 0;
};

}  // namespace ebbline::test
