#include "platform/android/android_keeper.h"

#include <QJniEnvironment>
#include <QJniObject>

#include <array>

namespace ebbline::android {

namespace {

constexpr const char* box = "invalid/ebbline/diary/SecretBox";

// The first byte of an answer, as SecretBox.java has it.
constexpr std::uint8_t done = 0;
constexpr std::uint8_t nothingThere = 1;
constexpr std::uint8_t lost = 2;
constexpr std::uint8_t alreadyThere = 4;

class AndroidKeeper final : public keystore::SecretKeeper {
public:
    bool isThere() const override { return true; }
    Result<crypto::Secret> fetch() override { return read("fetch"); }
    Result<crypto::Secret> make() override { return read("make"); }
    Done forget() override
    {
        if (QJniObject::callStaticMethod<jboolean>(box, "forget", "()Z") == 0)
            return fail(Reason::storageFailed, "key store: the secret is still there");
        return {};
    }

private:
    static Result<crypto::Secret> read(const char* act)
    {
        const auto answer = QJniObject::callStaticObjectMethod(box, act, "()[B");
        if (!answer.isValid())
            return fail(Reason::storageFailed, "key store: no answer");
        QJniEnvironment environment;
        const auto array = answer.object<jbyteArray>();
        const jsize length = environment->GetArrayLength(array);
        std::array<std::uint8_t, 1 + crypto::Secret::size> bytes{};
        if (length < 1 || static_cast<std::size_t>(length) > bytes.size())
            return fail(Reason::storageFailed, "key store: an answer of another length");
        environment->GetByteArrayRegion(array, 0, length, reinterpret_cast<jbyte*>(bytes.data()));
        // Java's own copy is overwritten too: it would wait for the collector otherwise.
        const std::array<jbyte, 1 + crypto::Secret::size> zeros{};
        environment->SetByteArrayRegion(array, 0, length, zeros.data());

        if (bytes[0] == done && static_cast<std::size_t>(length) == bytes.size()) {
            crypto::Secret secret = crypto::Secret::from(std::span(bytes).subspan(1));
            crypto::wipe(bytes);
            return secret;
        }
        const std::uint8_t how = bytes[0];
        crypto::wipe(bytes);
        switch (how) {
        case nothingThere: return fail(Reason::notFound, "key store: no secret was made");
        case lost: return fail(Reason::damaged, "key store: the secret is lost");
        case alreadyThere: return fail(Reason::alreadyExists, "key store: there is a secret");
        default: return fail(Reason::storageFailed, "key store: it does not answer now");
        }
    }
};

}  // namespace

std::unique_ptr<keystore::SecretKeeper> makeKeeper()
{
    return std::make_unique<AndroidKeeper>();
}

}  // namespace ebbline::android
