// Codes that a clinic shows: every typing error of one letter is caught, nothing old is taken.

#include "core/pairing/code.h"

#include "core/bytes/text.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

#include <random>

using namespace ebbline;
using namespace ebbline::pairing;
using namespace std::chrono_literals;

namespace {

const clock::Instant noon{std::chrono::sys_days{std::chrono::year{2027} / 3 / 1} + 12h};
constexpr std::string_view sample = "AAIS-EMYA-AEBA-GBAF-AYDQ-Q7AY";

Offer offer()
{
    REQUIRE(crypto::initialise());
    Offer made;
    made.expires = noon + offerLifetime;
    made.id = crypto::randomArray<8>();
    made.secret = crypto::randomArray<16>();
    made.clinicRoot.value = crypto::randomArray<32>();
    made.clinicEpoch.value = crypto::randomArray<32>();
    made.hubKeyHash = crypto::randomArray<32>();
    made.hub = "hub.example:8443";
    return made;
}

}  // namespace

TEST_CASE("the typed code is locator, secret and checksum in base32", "[pairing]")
{
    // Locator 00112233, secret 000102030405060708, CRC-16/CCITT-FALSE 7c18.
    const TypedCode code{{0x00, 0x11, 0x22, 0x33}, {0, 1, 2, 3, 4, 5, 6, 7, 8}};

    CHECK(toText(code) == sample);
    CHECK(typedCodeFromText(sample).value() == code);
}

TEST_CASE("a typed code may be written carelessly", "[pairing]")
{
    CHECK(typedCodeFromText("aais emya aeba gbaf aydq q7ay"));
    CHECK(typedCodeFromText(" AAISEMYAAEBAGBAFAYDQQ7AY\n"));
    CHECK(typedCodeFromText("AA1S-EMYA-AE8A-G8AF-AYDQ-Q7AY"));
}

TEST_CASE("every wrong letter is noticed", "[pairing]")
{
    const std::string_view alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
    int tried = 0;
    for (std::size_t i = 0; i < sample.size(); ++i) {
        for (const char letter : alphabet) {
            if (sample[i] == '-' || sample[i] == letter)
                continue;
            std::string typed(sample);
            typed[i] = letter;
            ++tried;
            CAPTURE(typed);
            REQUIRE_FALSE(typedCodeFromText(typed));
        }
    }
    CHECK(tried == 744);
}

TEST_CASE("two neighbours that changed places are noticed", "[pairing]")
{
    std::string letters(sample);
    std::erase(letters, '-');
    int tried = 0;
    for (std::size_t i = 0; i + 1 < letters.size(); ++i) {
        if (letters[i] == letters[i + 1])
            continue;
        std::string typed = letters;
        std::swap(typed[i], typed[i + 1]);
        ++tried;
        CAPTURE(typed);
        REQUIRE_FALSE(typedCodeFromText(typed));
    }
    CHECK(tried == 20);
}

TEST_CASE("of two wrong letters at most one pair in a thousand passes", "[pairing]")
{
    constexpr std::string_view alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
    const auto lettersOf = [](std::string code) {
        std::erase(code, '-');
        return code;
    };
    // Every pair of places of one code, with every two wrong letters.
    const std::string letters = lettersOf(std::string(sample));
    std::size_t tried = 0, passed = 0;
    for (std::size_t i = 0; i < letters.size(); ++i)
        for (std::size_t j = i + 1; j < letters.size(); ++j)
            for (const char first : alphabet)
                for (const char second : alphabet) {
                    if (first == letters[i] || second == letters[j])
                        continue;
                    std::string typed = letters;
                    typed[i] = first;
                    typed[j] = second;
                    ++tried;
                    passed += typedCodeFromText(typed) ? 1 : 0;
                }
    CHECK(tried == 24 * 23 / 2 * 31 * 31);
    CHECK(passed * 1000 <= tried);

    // And a sample over many codes, always the same one.
    std::mt19937 dice(20'270'301);
    const auto roll = [&](std::size_t below) { return static_cast<std::size_t>(dice() % below); };
    std::size_t slipped = 0;
    constexpr std::size_t typos = 20'000;
    for (std::size_t round = 0; round < typos; ++round) {
        TypedCode code;
        for (auto& byte : code.locator)
            byte = static_cast<std::uint8_t>(roll(256));
        for (auto& byte : code.secret)
            byte = static_cast<std::uint8_t>(roll(256));
        std::string typed = lettersOf(toText(code));
        const std::size_t i = roll(24), j = (i + 1 + roll(23)) % 24;
        for (const std::size_t place : {i, j})
            typed[place] = alphabet[(alphabet.find(typed[place]) + 1 + roll(31)) % 32];
        slipped += typedCodeFromText(typed) ? 1 : 0;
    }
    CHECK(slipped * 1000 <= typos);
}

TEST_CASE("a code with too few or too many letters is refused", "[pairing][errors]")
{
    CHECK_FALSE(typedCodeFromText(""));
    CHECK_FALSE(typedCodeFromText(sample.substr(0, 28)));
    CHECK_FALSE(typedCodeFromText(std::string(sample) + "A"));
    CHECK_FALSE(typedCodeFromText("AAIS-EMYA-AEBA-GBAF-AYDQ-Q7A!"));
}

TEST_CASE("the picture's text carries the whole offer", "[pairing]")
{
    const Offer made = offer();

    const std::string text = toQrText(made);

    CHECK(text.starts_with("EBP1:"));
    CHECK(text.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZ234567:1") == std::string::npos);
    CHECK(text.size() <= 5 + 317);
    CHECK(fromQrText(text, noon).value() == made);
}

TEST_CASE("an offer is over after ten minutes", "[pairing]")
{
    const std::string text = toQrText(offer());

    CHECK(fromQrText(text, noon + 10min - 1ms));
    CHECK(fromQrText(text, noon + 10min).error().reason == Reason::expired);
}

TEST_CASE("a changed letter of the picture's text is refused", "[pairing]")
{
    const std::string text = toQrText(offer());
    for (std::size_t i = 0; i < text.size(); ++i) {
        std::string changed = text;
        changed[i] = changed[i] == 'A' ? 'B' : 'A';
        CAPTURE(i);
        REQUIRE_FALSE(fromQrText(changed, noon));
    }
}

TEST_CASE("the bundle's tag depends on code and bundle, and the offer's secret on the code", "[pairing]")
{
    REQUIRE(crypto::initialise());
    const TypedCode code{{0x00, 0x11, 0x22, 0x33}, {0, 1, 2, 3, 4, 5, 6, 7, 8}};
    TypedCode other = code;
    other.secret[0] = 9;
    const auto secrets = secretsOf(code);
    const auto otherSecrets = secretsOf(other);
    REQUIRE(secrets);
    REQUIRE(otherSecrets);

    CHECK(secretsOf(code)->offerSecret == secrets->offerSecret);
    CHECK(otherSecrets->offerSecret != secrets->offerSecret);
    CHECK(bundleTag(*secrets, bytes::viewOf("bundle")) == bundleTag(*secretsOf(code), bytes::viewOf("bundle")));
    CHECK(bundleTag(*secrets, bytes::viewOf("bundle")) != bundleTag(*secrets, bytes::viewOf("bundlf")));
    CHECK(bundleTag(*secrets, bytes::viewOf("bundle")) != bundleTag(*otherSecrets, bytes::viewOf("bundle")));
}

TEST_CASE("no text makes the readers misbehave", "[pairing][property]")
{
    CHECK(rc::check("refused, never crashed", [](const std::string& text) {
        RC_ASSERT(!fromQrText("EBP1:" + text, noon).has_value());
        (void)typedCodeFromText(text);
    }));
}
