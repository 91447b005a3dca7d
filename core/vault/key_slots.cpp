#include "core/vault/key_slots.h"

#include "core/bytes/reader.h"
#include "core/store/durable_file.h"

namespace ebbline::vault {

namespace {

constexpr std::string_view magic = "EBV1";
constexpr std::uint8_t argon2id13 = 2;
constexpr std::size_t headSize = 72;  // what the wrapping authenticates
constexpr const char* newestFile = "vault.keys";
constexpr const char* previousFile = "vault.keys.previous";

struct Slot {
    SlotKind kind{};
    crypto::StretchCost cost;
    bytes::Array<16> salt{};
    crypto::Nonce nonce{};
    bytes::Array<16> commit{};
    bytes::Array<48> wrapped{};
};

bytes::Bytes headOf(const Slot& slot)
{
    return bytes::Writer()
        .raw(bytes::viewOf(magic))
        .u8(argon2id13)
        .u8(static_cast<std::uint8_t>(slot.kind))
        .u16(0)
        .u32(slot.cost.passes)
        .u32(slot.cost.memoryKiB)
        .raw(slot.salt)
        .raw(slot.nonce)
        .raw(slot.commit)
        .bytes();
}

Result<Slot> parse(bytes::View input)
{
    bytes::Reader reader(input);
    const bytes::View mark = reader.take(magic.size());
    if (!reader.ok() || !std::equal(mark.begin(), mark.end(), magic.begin(), magic.end()))
        return fail(Reason::damaged, "key slot: its mark is missing");
    const std::uint8_t kdf = reader.u8();
    const std::uint8_t kind = reader.u8();
    const std::uint16_t zero = reader.u16();
    Slot slot;
    slot.cost.passes = reader.u32();
    slot.cost.memoryKiB = reader.u32();
    slot.salt = reader.array<16>();
    slot.nonce = reader.array<24>();
    slot.commit = reader.array<16>();
    slot.wrapped = reader.array<48>();
    if (!reader.atEnd())
        return fail(Reason::damaged, "key slot: cut short");
    if (kdf != argon2id13 || kind < 1 || kind > 4 || zero != 0)
        return fail(Reason::damaged, "key slot: unknown kind");
    slot.kind = static_cast<SlotKind>(kind);
    return slot;
}

/// The key that wraps: the stretched secret, mixed with the key store's where there is one.
Result<crypto::Secret> wrappingKey(const Slot& slot, bytes::View secret, bytes::View keystoreSecret)
{
    if (!keystoreSecret.empty() && keystoreSecret.size() != crypto::Secret::size)
        return fail(Reason::outOfRange, "key store secret: want 32 bytes or none");
    const Result<crypto::Secret> stretched = crypto::stretchPassphrase(secret, slot.salt, slot.cost);
    if (!stretched)
        return fail(stretched.error());
    const bytes::Array<32> none{};
    bytes::Bytes message = bytes::Writer().raw(bytes::viewOf("EB-kek-v1")).raw(stretched->view()).bytes();
    auto key = crypto::keyedHash256(keystoreSecret.empty() ? bytes::View(none) : keystoreSecret, message);
    crypto::wipe(message);
    crypto::Secret wrapping = crypto::Secret::from(key);
    crypto::wipe(key);
    return wrapping;
}

bytes::Array<16> commitment(const crypto::Secret& wrapping)
{
    return crypto::keyedHash128(wrapping.view(), bytes::viewOf("EB-vault-commit"));
}

Result<bytes::Array<KeySlots::slotSize>> wrap(const crypto::Secret& dataKey, SlotKind kind, bytes::View secret,
                                              const crypto::StretchCost& cost, bytes::View keystoreSecret)
{
    Slot slot{kind, cost, crypto::randomArray<16>(), crypto::randomArray<24>(), {}, {}};
    const Result<crypto::Secret> wrapping = wrappingKey(slot, secret, keystoreSecret);
    if (!wrapping)
        return fail(wrapping.error());
    slot.commit = commitment(*wrapping);
    const bytes::Bytes head = headOf(slot);
    const bytes::Bytes wrapped = crypto::aeadSeal(*wrapping, slot.nonce, head, dataKey.view());
    bytes::Array<KeySlots::slotSize> out;
    std::copy(head.begin(), head.end(), out.begin());
    std::copy(wrapped.begin(), wrapped.end(), out.begin() + headSize);
    return out;
}

}  // namespace

Result<std::pair<KeySlots, crypto::Secret>> KeySlots::create(SlotKind kind, bytes::View secret,
                                                             const crypto::StretchCost& cost,
                                                             bytes::View keystoreSecret)
{
    KeySlots slots;
    crypto::Secret dataKey = crypto::Secret::random();
    if (const Done put = slots.put(dataKey, kind, secret, cost, keystoreSecret); !put)
        return fail(put.error());
    return std::pair{std::move(slots), std::move(dataKey)};
}

Result<std::vector<KeySlots>> KeySlots::generations(const std::filesystem::path& folder)
{
    std::vector<KeySlots> found;
    std::optional<Error> problem;
    for (const char* name : {newestFile, previousFile}) {
        const Result<bytes::Bytes> contents = store::readWhole(folder / name, fileSize);
        Result<KeySlots> slots = contents ? decode(*contents) : fail(contents.error());
        if (slots && (found.empty() || found.front().encode() != slots->encode()))
            found.push_back(std::move(*slots));
        else if (!slots && (!problem || problem->reason == Reason::notFound))
            problem = slots.error();
    }
    if (found.empty())
        return fail(problem->reason == Reason::tooLarge ? Error{Reason::damaged, "key slots: wrong length"} : *problem);
    return found;
}

bool KeySlots::isFileSound(const std::filesystem::path& folder, bool newest)
{
    const Result<bytes::Bytes> contents = store::readWhole(folder / (newest ? newestFile : previousFile), fileSize);
    const Result<KeySlots> slots = contents ? decode(*contents) : fail(contents.error());
    return slots && slots->isSound();
}

bool KeySlots::isWhole(const std::filesystem::path& folder)
{
    return isFileSound(folder, true) && isFileSound(folder, false);
}

Done KeySlots::save(const std::filesystem::path& folder) const
{
    const Result<bytes::Bytes> old = store::readWhole(folder / newestFile, fileSize);
    const Result<KeySlots> kept = old ? decode(*old) : fail(old.error());
    // Never a damaged generation over a good one.
    if (kept && kept->isSound())
        if (const Done moved = store::writeDurably(folder / previousFile, *old); !moved)
            return moved;
    return store::writeDurably(folder / newestFile, encode());
}

Done KeySlots::saveAndForget(const std::filesystem::path& folder) const
{
    if (const Done saved = save(folder); !saved)
        return saved;
    const Result<bytes::Bytes> stored = store::readWhole(folder / newestFile, fileSize);
    if (!stored || *stored != encode())
        return fail(Reason::storageFailed, "key slots: the file does not read back as it was written");
    return store::writeDurably(folder / previousFile, *stored);
}

Result<crypto::Secret> KeySlots::unlock(SlotKind kind, bytes::View secret, bytes::View keystoreSecret) const
{
    Error answer{Reason::notFound, "key slots: none of this kind"};
    for (const auto& stored : m_slots) {
        if (!stored)
            continue;
        const Result<Slot> slot = parse(*stored);
        if (!slot) {
            answer = slot.error();
            continue;
        }
        if (slot->kind != kind)
            continue;
        const Result<crypto::Secret> wrapping = wrappingKey(*slot, secret, keystoreSecret);
        if (!wrapping) {
            // A cost outside its bounds cannot have been written by us.
            answer = wrapping.error().reason == Reason::outOfRange
                         ? Error{Reason::damaged, "key slot: impossible cost"}
                         : wrapping.error();
            continue;
        }
        if (!crypto::equal(commitment(*wrapping), slot->commit)) {
            answer = m_sound ? Error{Reason::wrongKey, "key slot: the secret does not open it"}
                             : Error{Reason::damaged, "key slots: the file is damaged, the secret does not open it"};
            continue;
        }
        Result<bytes::Bytes> dataKey =
            crypto::aeadOpen(*wrapping, slot->nonce, bytes::View(*stored).first(headSize), slot->wrapped);
        if (!dataKey || dataKey->size() != crypto::Secret::size)
            return fail(Reason::damaged, "key slot: the secret is right, the wrapped key is not");
        crypto::Secret key = crypto::Secret::from(*dataKey);
        crypto::wipe(*dataKey);
        return key;
    }
    return fail(answer);
}

Done KeySlots::put(const crypto::Secret& dataKey, SlotKind kind, bytes::View secret, const crypto::StretchCost& cost,
                   bytes::View keystoreSecret)
{
    const auto made = wrap(dataKey, kind, secret, cost, keystoreSecret);
    if (!made)
        return fail(made.error());
    std::optional<std::size_t> place;
    for (std::size_t i = 0; i < slotCount; ++i) {
        const bool same = m_slots[i] && (*m_slots[i])[5] == static_cast<std::uint8_t>(kind);
        if (same || (!m_slots[i] && !place))
            place = i;
        if (same)
            break;
    }
    if (!place)
        return fail(Reason::storageFull, "key slots: all four are taken");
    m_slots[*place] = *made;
    return {};
}

void KeySlots::drop(SlotKind kind)
{
    for (auto& stored : m_slots)
        if (stored && (*stored)[5] == static_cast<std::uint8_t>(kind))
            stored.reset();
}

bool KeySlots::has(SlotKind kind) const
{
    for (const auto& stored : m_slots)
        if (const auto slot = stored ? parse(*stored) : fail(Reason::notFound, ""); slot && slot->kind == kind)
            return true;
    return false;
}

std::optional<bytes::Array<16>> KeySlots::nameOf(SlotKind kind) const
{
    for (const auto& stored : m_slots)
        if (const auto slot = stored ? parse(*stored) : fail(Reason::notFound, ""); slot && slot->kind == kind)
            return crypto::hash128(*stored);
    return std::nullopt;
}

std::optional<crypto::StretchCost> KeySlots::dearest() const
{
    std::optional<crypto::StretchCost> most;
    for (const auto& stored : m_slots)
        if (const auto slot = stored && m_sound ? parse(*stored) : fail(Reason::notFound, ""); slot && crypto::isPossible(slot->cost))
            most = most ? crypto::StretchCost{std::max(most->passes, slot->cost.passes), std::max(most->memoryKiB, slot->cost.memoryKiB)}
                        : slot->cost;
    return most;
}

bytes::Bytes KeySlots::encode() const
{
    bytes::Writer out;
    for (const auto& stored : m_slots)
        out.raw(stored ? *stored : bytes::Array<slotSize>{});
    bytes::Array<16> check = crypto::hash128(out.bytes());
    // What was read as damaged is never passed on as sound.
    if (!m_sound)
        check[0] = static_cast<std::uint8_t>(check[0] ^ 1);
    return out.raw(check).bytes();
}

Result<KeySlots> KeySlots::decode(bytes::View input)
{
    if (input.size() != fileSize)
        return fail(Reason::damaged, "key slots: wrong length");
    KeySlots slots;
    slots.m_sound = crypto::equal(crypto::hash128(input.first(slotSize * slotCount)), input.last(16));
    std::size_t readable = 0;
    for (std::size_t i = 0; i < slotCount; ++i) {
        bytes::Array<slotSize> stored;
        std::copy_n(input.begin() + static_cast<std::ptrdiff_t>(i * slotSize), slotSize, stored.begin());
        if (stored == bytes::Array<slotSize>{})
            continue;
        readable += parse(stored) ? 1 : 0;
        slots.m_slots[i] = stored;
    }
    if (readable == 0)
        return fail(Reason::damaged, "key slots: none can be read");
    return slots;
}

}  // namespace ebbline::vault
