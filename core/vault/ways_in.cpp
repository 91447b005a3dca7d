#include "core/vault/ways_in.h"

#include "core/vault/attempt_guard.h"
#include "core/vault/vault.h"

namespace ebbline::vault {

namespace {

struct Opened {
    KeySlots slots;
    crypto::Secret dataKey;
};

constexpr std::string_view onPaperName = "recovery-code-on-paper";

const Error halfIsMissing{Reason::refused, "key slots: the passphrase is bound to a device, whose secret is not at hand"};

bool lacksHalf(const KeySlots& slots, const Offered& offered)
{
    return kindOf(slots, offered) == SlotKind::passphraseAndKeystore && offered.deviceSecret.empty();
}

/// Asks the undamaged generations first, the newest of them foremost.
Result<Opened> ask(const std::filesystem::path& folder, const Offered& offered)
{
    auto generations = KeySlots::generations(folder);
    if (!generations)
        return fail(generations.error());
    std::optional<Error> answer;
    for (const bool sound : {true, false})
        for (KeySlots& slots : *generations) {
            if (slots.isSound() != sound)
                continue;
            Result<crypto::Secret> dataKey = unlockSlot(slots, offered);
            if (dataKey)
                return Opened{std::move(slots), std::move(*dataKey)};
            if (!answer)
                answer = dataKey.error();
        }
    return fail(answer.value_or(Error{Reason::damaged, "key slots: none can be read"}));
}

Result<Opened> open(const std::filesystem::path& folder, const Offered& offered, const clock::Readings& now)
{
    // First whether there is a vault at all: an attempt on nothing is none, nor is one that lacks a half.
    const auto generations = KeySlots::generations(folder);
    if (!generations)
        return fail(generations.error());
    if (lacksHalf(generations->front(), offered))
        return fail(halfIsMissing);
    AttemptGuard guard(folder);
    if (const Done allowed = guard.begin(now); !allowed)
        return fail(allowed.error());
    Result<Opened> opened = ask(folder, offered);
    if (!opened)
        return opened;
    (void)guard.clear();
    // Mending is a kindness: the vault opens without it. What is damaged itself mends nothing.
    if (opened->slots.isSound() && !KeySlots::isWhole(folder))
        (void)opened->slots.saveAndForget(folder);
    return opened;
}

/// What the vault has is the least: a machine that is busy while it measures, or a program that did not measure, must
/// not leave it easier to search than it was.
crypto::StretchCost notBelow(const KeySlots& slots, const crypto::StretchCost& cost)
{
    const crypto::StretchCost least = slots.dearest().value_or(cost);
    return {std::max(cost.passes, least.passes), std::max(cost.memoryKiB, least.memoryKiB)};
}

Done replace(Opened& opened, SlotKind kind, bytes::View secret, const crypto::StretchCost& asked,
             const std::filesystem::path& folder, bytes::View deviceSecret = {})
{
    const crypto::StretchCost cost = notBelow(opened.slots, asked);
    // Bound and not bound are two forms of one way in: the other one goes.
    if (kind == SlotKind::passphraseAndKeystore)
        opened.slots.drop(SlotKind::passphrase);
    else if (kind == SlotKind::passphrase)
        opened.slots.drop(SlotKind::passphraseAndKeystore);
    if (const Done put = opened.slots.put(opened.dataKey, kind, secret, cost, deviceSecret); !put)
        return put;
    return opened.slots.saveAndForget(folder);
}

}  // namespace

SlotKind kindOf(const KeySlots& slots, const Offered& offered)
{
    if (offered.kind == Offered::Kind::recoveryCode)
        return SlotKind::recoveryCode;
    if (slots.has(SlotKind::passphraseAndKeystore))
        return SlotKind::passphraseAndKeystore;
    return slots.has(SlotKind::desk) ? SlotKind::desk : SlotKind::passphrase;
}

Result<crypto::Secret> unlockSlot(const KeySlots& slots, const Offered& offered)
{
    if (lacksHalf(slots, offered))
        return fail(halfIsMissing);
    const SlotKind kind = kindOf(slots, offered);
    return slots.unlock(kind, offered.secret, kind == SlotKind::passphraseAndKeystore ? offered.deviceSecret : bytes::View());
}

Result<crypto::Secret> openDataKey(const std::filesystem::path& folder, const Offered& offered,
                                   const clock::Readings& now)
{
    Result<Opened> opened = open(folder, offered, now);
    if (!opened)
        return fail(opened.error());
    return std::move(opened->dataKey);
}

Result<RecoveryCode> renewRecoveryCode(const std::filesystem::path& folder, const Offered& offered,
                                       const crypto::StretchCost& cost, const clock::Readings& now)
{
    Result<Opened> opened = open(folder, offered, now);
    if (!opened)
        return fail(opened.error());
    RecoveryCode code = RecoveryCode::random();
    if (const Done put = replace(*opened, SlotKind::recoveryCode, code.view(), cost, folder); !put)
        return fail(put.error());
    return code;
}

Done changePassphrase(const std::filesystem::path& folder, const Offered& offered, bytes::View newPassphrase,
                      const crypto::StretchCost& cost, const clock::Readings& now, bytes::View deviceSecret)
{
    Result<Opened> opened = open(folder, offered, now);
    if (!opened)
        return fail(opened.error());
    const bool desk = opened->slots.has(SlotKind::desk);
    if (!deviceSecret.empty() && (desk || !opened->slots.has(SlotKind::recoveryCode)))
        return fail(Reason::invalidState, "key slots: binding to a device needs a recovery code");
    const SlotKind kind = desk                   ? SlotKind::desk
                          : deviceSecret.empty() ? SlotKind::passphrase
                                                 : SlotKind::passphraseAndKeystore;
    return replace(*opened, kind, newPassphrase, cost, folder, deviceSecret);
}

bool isBoundToDevice(const std::filesystem::path& folder)
{
    const auto generations = KeySlots::generations(folder);
    return generations && generations->front().has(SlotKind::passphraseAndKeystore);
}

bool hasRecoveryCode(const std::filesystem::path& folder)
{
    const auto generations = KeySlots::generations(folder);
    return generations && generations->front().has(SlotKind::recoveryCode);
}

Done noteCodeOnPaper(Vault& vault, const std::filesystem::path& folder)
{
    const auto generations = KeySlots::generations(folder);
    if (!generations)
        return fail(generations.error());
    const auto name = generations->front().nameOf(SlotKind::recoveryCode);
    return name ? vault.keep(onPaperName, *name) : Done(fail(Reason::notFound, "key slots: there is no recovery code"));
}

bool isCodeOnPaper(const Vault& vault, const std::filesystem::path& folder)
{
    const auto generations = KeySlots::generations(folder);
    const auto name = generations ? generations->front().nameOf(SlotKind::recoveryCode) : std::nullopt;
    const auto noted = vault.kept(onPaperName);
    return name && noted && crypto::equal(*noted, *name);
}

crypto::StretchCost calibratedCost(
    const std::function<std::optional<std::chrono::milliseconds>(const crypto::StretchCost&)>& measure)
{
    constexpr std::array<crypto::StretchCost, 4> ladder{
        {{3, 128 * 1024}, {3, 192 * 1024}, {3, 256 * 1024}, {4, 256 * 1024}}};
    constexpr std::chrono::milliseconds longest{700};
    crypto::StretchCost best = crypto::stretchFloor;
    for (const crypto::StretchCost& cost : ladder) {
        const auto took = measure(cost);
        if (!took || *took > longest)
            break;
        best = cost;
    }
    return best;
}

crypto::StretchCost calibratedCost(const clock::Clock& clock)
{
    return calibratedCost([&](const crypto::StretchCost& cost) -> std::optional<std::chrono::milliseconds> {
        const auto began = clock.uptime().elapsed;
        if (!crypto::stretchPassphrase(bytes::viewOf("how long does this take"), {}, cost))
            return std::nullopt;
        return clock.uptime().elapsed - began;
    });
}

}  // namespace ebbline::vault
