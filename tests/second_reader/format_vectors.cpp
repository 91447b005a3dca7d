// format_vectors write FILE | read FILE
//
// write: what core makes of every format that the second reader knows. read: opens what the second reader made.

#include "core/bytes/text.h"
#include "core/envelope/envelope.h"
#include "core/mailbox/ending.h"
#include "core/pairing/handshake.h"
#include "core/pairing/statement.h"
#include "core/vault/key_slots.h"
#include "core/vault/recovery_code.h"

#include <nlohmann/json.hpp>

#include <fstream>
#include <iostream>

using namespace ebbline;
using Json = nlohmann::ordered_json;

namespace {

std::string hex(bytes::View bytes) { return bytes::toHex(bytes); }
bytes::Bytes fromHex(const Json& text) { return bytes::fromHex(text.get<std::string>()).value(); }

template <std::size_t N>
bytes::Array<N> arrayOf(const Json& text)
{
    const bytes::Bytes bytes = fromHex(text);
    bytes::Array<N> out{};
    if (bytes.size() == N)
        std::copy(bytes.begin(), bytes.end(), out.begin());
    return out;
}

bytes::Bytes randomBytes(std::size_t size)
{
    bytes::Bytes out(size);
    crypto::randomFill(out);
    return out;
}

Json writtenEnvelope(std::size_t size, std::size_t number)
{
    const auto sender = crypto::SigningKey::generate();
    const auto recipient = crypto::BoxKey::generate();
    std::vector<crypto::BoxPublicKey> recipients{recipient.publicKey()};
    for (std::size_t other = 0; other < number % 3; ++other)
        recipients.push_back(crypto::BoxKey::generate().publicKey());
    const envelope::Header header{static_cast<envelope::Kind>(1 + number % 5),
                                  envelope::MailboxId{crypto::randomArray<16>()},
                                  envelope::deviceIdOf(sender.publicKey()),
                                  number == 8 ? (std::uint64_t{1} << 53) + 1 : number + 1,
                                  crypto::randomArray<32>(),
                                  static_cast<std::uint32_t>(number)};
    const bytes::Bytes plaintext = randomBytes(size);
    const bytes::Bytes sealed = envelope::seal(header, sender, recipients, plaintext).value();
    return {{"kind", static_cast<int>(header.kind)}, {"mailbox", hex(header.mailbox.view())}, {"senderSeed", hex(sender.seed())},
            {"recipientSecret", hex(recipient.secret())}, {"sequence", std::to_string(header.sequence)},
            {"previous", hex(header.previous)}, {"epoch", header.recipientEpoch}, {"plaintext", hex(plaintext)},
            {"envelope", hex(sealed)}, {"hash", hex(envelope::hashOf(sealed))}};
}

Json writtenKeyFile()
{
    struct Way {
        vault::SlotKind kind;
        bytes::Bytes secret;
        bytes::Bytes keystore;
    };
    const std::vector<Way> ways{{vault::SlotKind::passphrase, randomBytes(21), {}},
                                {vault::SlotKind::passphraseAndKeystore, randomBytes(6), randomBytes(32)},
                                {vault::SlotKind::recoveryCode, randomBytes(20), {}}};
    auto made = vault::KeySlots::create(ways[0].kind, ways[0].secret, {1, 8 * 1024}, ways[0].keystore).value();
    Json list = Json::array();
    for (std::size_t i = 0; i < ways.size(); ++i) {
        if (i > 0)
            made.first.put(made.second, ways[i].kind, ways[i].secret, {static_cast<std::uint32_t>(i + 1), 8 * 1024}, ways[i].keystore).value();
        list.push_back({{"kind", static_cast<int>(ways[i].kind)}, {"secret", hex(ways[i].secret)}, {"keystore", hex(ways[i].keystore)}});
    }
    return {{"dataKey", hex(made.second.view())}, {"databaseKey", hex(crypto::derive(made.second, 1, "eb-vault").view())},
            {"file", hex(made.first.encode())}, {"ways", list}};
}

Json writtenOffer(const std::string& hub, bool tls)
{
    pairing::Offer offer;
    offer.tls = tls;
    offer.expires = clock::Instant{std::chrono::seconds{1'800'000'000}};
    offer.id = crypto::randomArray<8>();
    offer.secret = crypto::randomArray<16>();
    offer.clinicRoot.value = crypto::randomArray<32>();
    offer.clinicEpoch.value = crypto::randomArray<32>();
    offer.epoch = 7;
    offer.hubKeyHash = crypto::randomArray<32>();
    offer.hub = hub;
    return {{"tls", tls}, {"expires", "1800000000"}, {"id", hex(offer.id)}, {"secret", hex(offer.secret)},
            {"root", hex(offer.clinicRoot.value)}, {"epochKey", hex(offer.clinicEpoch.value)}, {"epoch", offer.epoch},
            {"hubKeyHash", hex(offer.hubKeyHash)}, {"hub", hub}, {"text", pairing::toQrText(offer)}};
}

Json written()
{
    Json all;
    std::size_t number = 0;
    for (const std::size_t size : {0, 1, 500, 1023, 1024, 8191, 8192, 30'000, 60'000})
        all["envelopes"].push_back(writtenEnvelope(size, number++));
    all["keyFiles"].push_back(writtenKeyFile());
    all["offers"] = {writtenOffer("hub.example:8443", true), writtenOffer("[2001:db8::1]:443", true), writtenOffer("127.0.0.1:8080", false)};
    const pairing::TypedCode code{crypto::randomArray<4>(), crypto::randomArray<9>()};
    const auto secrets = pairing::secretsOf(code).value();
    all["typedCodes"].push_back({{"locator", hex(code.locator)}, {"secret", hex(code.secret)}, {"offerSecret", hex(secrets.offerSecret)},
                                 {"bundleKey", hex(secrets.bundleKey)}, {"text", pairing::toText(code)}});
    for (int i = 0; i < 2; ++i) {
        const auto recovery = vault::RecoveryCode::random();
        all["recoveryCodes"].push_back({{"bytes", hex(recovery.view())}, {"text", recovery.text()}});
    }
    const crypto::SigningPublicKey signing{crypto::randomArray<32>()};
    const crypto::BoxPublicKey box{crypto::randomArray<32>()};
    const auto nonce = crypto::randomArray<16>();
    all["confirmations"].push_back({{"signing", hex(signing.value)}, {"box", hex(box.value)}, {"nonce", hex(nonce)},
                                    {"number", pairing::confirmationNumber(signing, box, nonce)}});
    const auto root = crypto::SigningKey::generate();
    const pairing::PatientLink link{envelope::MailboxId{crypto::randomArray<16>()}, signing, {crypto::randomArray<32>()}, "Praxis an der Mole – عيادة"};
    all["links"].push_back({{"rootSeed", hex(root.seed())}, {"mailbox", hex(link.mailbox.view())}, {"phone", hex(link.phone.value)},
                            {"desk", hex(link.desk.value)}, {"clinicName", link.clinicName}, {"signed", hex(pairing::signPatientLink(link, root))}});
    const clock::Instant at{std::chrono::milliseconds{1'800'000'000'123}};
    const pairing::PhoneReplaced replaced{link.mailbox, envelope::DeviceId{crypto::randomArray<16>()}, 12, at};
    const mailbox::DeviceEnded ended{replaced.phone, at};
    const pairing::LeastVersion least{3, 2, at};
    const auto add = [&](Json fields, bytes::View signedBytes) {
        fields["at"] = std::to_string(at.time_since_epoch().count());
        fields["rootSeed"] = hex(root.seed());
        fields["signed"] = hex(signedBytes);
        all["statements"].push_back(std::move(fields));
    };
    add({{"type", "replaced"}, {"mailbox", hex(replaced.mailbox.view())}, {"phone", hex(replaced.phone.view())}, {"held", "12"}},
        pairing::signStatement(replaced, root));
    add({{"type", "ended"}, {"device", hex(ended.device.view())}}, mailbox::signEnding(ended, root));
    add({{"type", "least"}, {"number", "3"}, {"protocol", "2"}}, pairing::signStatement(least, root));
    return all;
}

int checked = 0, failed = 0;

void check(bool holds, const std::string& what)
{
    ++checked;
    failed += holds ? 0 : 1;
    if (!holds)
        std::cout << "FAILED " << what << '\n';
}

void readEnvelope(const Json& v)
{
    const auto sender = crypto::SigningKey::fromSeed(fromHex(v["senderSeed"]));
    const auto recipient = crypto::BoxKey::fromSecret(fromHex(v["recipientSecret"]));
    const bytes::Bytes sealed = fromHex(v["envelope"]);
    const auto opened = envelope::open(sealed, sender.publicKey(), recipient);
    check(opened.has_value(), "envelope opens");
    if (!opened)
        return;
    const envelope::Header wanted{static_cast<envelope::Kind>(v["kind"].get<int>()),
                                  envelope::MailboxId{arrayOf<16>(v["mailbox"])},
                                  envelope::deviceIdOf(sender.publicKey()),
                                  std::stoull(v["sequence"].is_string() ? v["sequence"].get<std::string>() : v["sequence"].dump()),
                                  arrayOf<32>(v["previous"]),
                                  v["epoch"].get<std::uint32_t>()};
    check(opened->header == wanted, "envelope header");
    check(opened->plaintext == fromHex(v["plaintext"]), "envelope text");
    check(hex(envelope::hashOf(sealed)) == v["hash"].get<std::string>(), "envelope hash");
    for (std::size_t bit = 0; bit < 8 * std::min<std::size_t>(sealed.size(), 2000); bit += 97) {
        bytes::Bytes other = sealed;
        other[bit / 8] ^= static_cast<std::uint8_t>(1u << (bit % 8));
        check(!envelope::open(other, sender.publicKey(), recipient), "envelope with bit " + std::to_string(bit) + " changed is refused");
    }
}

std::uint64_t numberOf(const Json& text) { return std::stoull(text.get<std::string>()); }

/// Signing is the same every time, so that the bytes can be compared as a whole.
void readStatement(const Json& v)
{
    const auto root = crypto::SigningKey::fromSeed(fromHex(v["rootSeed"]));
    const bytes::Bytes signedBytes = fromHex(v["signed"]);
    const clock::Instant at{std::chrono::milliseconds{numberOf(v["at"])}};
    const std::string type = v["type"];
    bool holds = false;
    if (type == "ended") {
        const mailbox::DeviceEnded wanted{envelope::DeviceId{arrayOf<16>(v["device"])}, at};
        holds = mailbox::openEnding(signedBytes, root.publicKey()) == wanted && mailbox::signEnding(wanted, root) == signedBytes;
    } else {
        const pairing::Statement wanted =
            type == "least" ? pairing::Statement(pairing::LeastVersion{numberOf(v["number"]), static_cast<std::uint32_t>(numberOf(v["protocol"])), at})
                            : pairing::Statement(pairing::PhoneReplaced{envelope::MailboxId{arrayOf<16>(v["mailbox"])},
                                                                        envelope::DeviceId{arrayOf<16>(v["phone"])}, numberOf(v["held"]), at});
        holds = pairing::openStatement(signedBytes, root.publicKey()) == wanted && pairing::signStatement(wanted, root) == signedBytes;
    }
    check(holds, "statement " + type);
    for (std::size_t bit = 0; bit < 8 * signedBytes.size(); bit += 31) {
        bytes::Bytes other = signedBytes;
        other[bit / 8] ^= static_cast<std::uint8_t>(1u << (bit % 8));
        check(!mailbox::openEnding(other, root.publicKey()) && !pairing::openStatement(other, root.publicKey()), "statement with a bit changed is refused");
    }
}

void read(const Json& all)
{
    for (const Json& v : all["statements"])
        readStatement(v);
    for (const Json& v : all["envelopes"])
        readEnvelope(v);
    for (const Json& v : all["keyFiles"]) {
        const auto slots = vault::KeySlots::decode(fromHex(v["file"]));
        check(slots.has_value() && slots->isSound(), "key file");
        for (const Json& way : v["ways"]) {
            const auto kind = static_cast<vault::SlotKind>(way["kind"].get<int>());
            const auto key = slots ? slots->unlock(kind, fromHex(way["secret"]), fromHex(way["keystore"])) : fail(Reason::damaged, "");
            check(key && hex(key->view()) == v["dataKey"].get<std::string>(), "data key");
            check(key && hex(crypto::derive(*key, 1, "eb-vault").view()) == v["databaseKey"].get<std::string>(), "database key");
            check(slots && !slots->unlock(kind, bytes::viewOf("another"), fromHex(way["keystore"])), "another secret is refused");
        }
    }
    for (const Json& v : all["offers"]) {
        const auto offer = pairing::fromQrText(v["text"].get<std::string>(), clock::Instant{std::chrono::seconds{1'700'000'000}});
        check(offer && offer->tls == v["tls"].get<bool>() && hex(offer->id) == v["id"].get<std::string>() && hex(offer->secret) == v["secret"].get<std::string>()
                  && hex(offer->clinicRoot.value) == v["root"].get<std::string>() && hex(offer->clinicEpoch.value) == v["epochKey"].get<std::string>()
                  && offer->epoch == v["epoch"].get<std::uint32_t>() && hex(offer->hubKeyHash) == v["hubKeyHash"].get<std::string>() && offer->hub == v["hub"].get<std::string>(),
              "offer");
    }
    for (const Json& v : all["typedCodes"]) {
        const auto code = pairing::typedCodeFromText(v["text"].get<std::string>());
        const auto secrets = code ? pairing::secretsOf(*code) : fail(Reason::malformed, "");
        check(code && hex(code->locator) == v["locator"].get<std::string>() && hex(code->secret) == v["secret"].get<std::string>(), "typed code");
        check(secrets && hex(secrets->offerSecret) == v["offerSecret"].get<std::string>() && hex(secrets->bundleKey) == v["bundleKey"].get<std::string>(), "typed secrets");
    }
    for (const Json& v : all["recoveryCodes"]) {
        const auto code = vault::RecoveryCode::fromText(v["text"].get<std::string>());
        check(code && hex(code->view()) == v["bytes"].get<std::string>(), "recovery code");
    }
    for (const Json& v : all["confirmations"])
        check(pairing::confirmationNumber({arrayOf<32>(v["signing"])}, {arrayOf<32>(v["box"])}, arrayOf<16>(v["nonce"])) == v["number"].get<std::string>(), "confirmation");
    for (const Json& v : all["links"]) {
        const auto root = crypto::SigningKey::fromSeed(fromHex(v["rootSeed"]));
        const auto link = pairing::openPatientLink(fromHex(v["signed"]), root.publicKey());
        check(link && hex(link->mailbox.view()) == v["mailbox"].get<std::string>() && hex(link->phone.value) == v["phone"].get<std::string>() && hex(link->desk.value) == v["desk"].get<std::string>()
                  && link->clinicName == v["clinicName"].get<std::string>(),
              "link");
    }
}

}  // namespace

int main(int argc, char** argv)
{
    const std::string mode = argc == 3 ? argv[1] : "";
    if (!crypto::initialise() || (mode != "read" && mode != "write")) {
        std::cerr << "usage: format_vectors write FILE | read FILE\n";
        return 2;
    }
    if (mode == "write") {
        std::ofstream(argv[2]) << written().dump(1) << '\n';
        return 0;
    }
    std::ifstream input(argv[2]);
    read(Json::parse(input));
    std::cout << "core: " << checked << " checks, " << failed << " failed\n";
    return failed == 0 && checked > 500 ? 0 : 1;
}
