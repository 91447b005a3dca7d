// Project Wycheproof's cases for everything in core/crypto that they cover. Origin and licence: README.md here.

#include "core/bytes/text.h"
#include "core/crypto/crypto.h"

#include <catch2/catch_test_macros.hpp>
#include <nlohmann/json.hpp>

#include <fstream>
#include <iostream>

using namespace ebbline;
using Json = nlohmann::json;

namespace {

struct Counts {
    int valid = 0, invalid = 0, acceptable = 0, wrong = 0;
    int all() const { return valid + invalid + acceptable; }
};

bytes::Bytes fromHex(const Json& text) { return bytes::fromHex(text.get<std::string>()).value(); }

template <std::size_t N>
bytes::Array<N> arrayOf(const bytes::Bytes& bytes)
{
    REQUIRE(bytes.size() == N);
    bytes::Array<N> out{};
    std::copy(bytes.begin(), bytes.end(), out.begin());
    return out;
}

/// Runs `holds` on every case of a file. It gives nothing for a case that our interface cannot even express.
template <typename Holds>
Counts run(const char* file, int wanted, const Holds& holds)
{
    REQUIRE(crypto::initialise());
    std::ifstream input(std::string(EBBLINE_WYCHEPROOF) + "/" + file);
    REQUIRE(input);
    const Json all = Json::parse(input);
    Counts counts;
    for (const Json& group : all["testGroups"])
        for (const Json& test : group["tests"]) {
            const std::string result = test["result"];
            counts.valid += result == "valid" ? 1 : 0;
            counts.invalid += result == "invalid" ? 1 : 0;
            counts.acceptable += result == "acceptable" ? 1 : 0;
            const bool right = holds(group, test, result);
            counts.wrong += right ? 0 : 1;
            CAPTURE(file, test["tcId"].get<int>());
            CHECK(right);
        }
    std::cout << file << ": " << counts.all() << " cases, " << counts.valid << " valid, " << counts.invalid << " invalid, "
              << counts.acceptable << " acceptable, " << counts.wrong << " wrong\n";
    CHECK(counts.all() == wanted);
    CHECK(all["numberOfTests"].get<int>() == wanted);
    return counts;
}

}  // namespace

TEST_CASE("Ed25519 signatures are judged as Wycheproof says", "[vectors]")
{
    const Counts counts = run("eddsa_test.json", 145, [](const Json& group, const Json& test, const std::string& result) {
        const crypto::SigningPublicKey key{arrayOf<32>(fromHex(group["key"]["pk"]))};
        const bytes::Bytes signature = fromHex(test["sig"]);
        // A signature of another length cannot be given to verify(): its type refuses it.
        if (signature.size() != std::tuple_size_v<crypto::Signature>)
            return result == "invalid";
        const bytes::Bytes message = fromHex(test["msg"]);
        if (result == "valid" && crypto::SigningKey::fromSeed(fromHex(group["key"]["sk"])).sign(message) != arrayOf<64>(signature))
            return false;
        return crypto::verify(key, message, arrayOf<64>(signature)) == (result == "valid");
    });
    CHECK(counts.acceptable == 0);
}

TEST_CASE("X25519 gives Wycheproof's secrets and refuses those that are all zero", "[vectors]")
{
    int refused = 0;
    run("x25519_test.json", 518, [&](const Json&, const Json& test, const std::string&) {
        const auto own = crypto::BoxKey::fromSecret(fromHex(test["private"]));
        const auto shared = crypto::exchange(own, {arrayOf<32>(fromHex(test["public"]))});
        const bytes::Bytes wanted = fromHex(test["shared"]);
        const bool zero = std::ranges::all_of(wanted, [](std::uint8_t byte) { return byte == 0; });
        refused += zero ? 1 : 0;
        return zero ? !shared : shared && std::ranges::equal(shared->view(), wanted);
    });
    CHECK(refused > 0);
}

TEST_CASE("XChaCha20-Poly1305 opens and seals as Wycheproof says", "[vectors]")
{
    run("xchacha20_poly1305_test.json", 284, [](const Json&, const Json& test, const std::string& result) {
        const bytes::Bytes nonce = fromHex(test["iv"]);
        // A nonce of another length cannot be given: its type refuses it.
        if (nonce.size() != std::tuple_size_v<crypto::Nonce>)
            return result == "invalid";
        const auto key = crypto::Secret::from(fromHex(test["key"]));
        const bytes::Bytes associated = fromHex(test["aad"]);
        const bytes::Bytes message = fromHex(test["msg"]);
        bytes::Bytes sealed = fromHex(test["ct"]);
        const bytes::Bytes tag = fromHex(test["tag"]);
        sealed.insert(sealed.end(), tag.begin(), tag.end());
        const auto opened = crypto::aeadOpen(key, arrayOf<24>(nonce), associated, sealed);
        if (result != "valid")
            return !opened;
        return opened && *opened == message && crypto::aeadSeal(key, arrayOf<24>(nonce), associated, message) == sealed;
    });
}
