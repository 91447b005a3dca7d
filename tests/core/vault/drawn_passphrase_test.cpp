// A passphrase that is drawn: as hard to guess as stated, forgiving to type, and no other passphrase is touched.
#include "core/crypto/crypto.h"
#include "core/vault/drawn_passphrase.h"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <set>
#include <utility>

using namespace ebbline;
using namespace ebbline::vault;

namespace {

constexpr std::string_view alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";

std::string withoutDashes(std::string text)
{
    std::erase(text, '-');
    return text;
}

}  // namespace

TEST_CASE("a drawn passphrase has four groups of four, and fifteen of its characters are free", "[vault][drawn]")
{
    REQUIRE(crypto::initialise());
    std::set<std::string> seen;
    std::array<std::array<int, 32>, 15> counts{};
    constexpr int draws = 20'000;
    for (int i = 0; i < draws; ++i) {
        const std::string text = drawPassphrase();
        REQUIRE(text.size() == 19);
        CHECK((text[4] == '-' && text[9] == '-' && text[14] == '-'));
        const std::string letters = withoutDashes(text);
        REQUIRE(letters.find_first_not_of(alphabet) == std::string::npos);
        for (std::size_t at = 0; at < counts.size(); ++at)
            ++counts[at][alphabet.find(letters[at])];
        seen.insert(text);
    }
    CHECK(seen.size() == draws);
    // Each of 480 counts is binomial with mean 625 and standard deviation 24.6: six of them are not reached by chance.
    for (const auto& place : counts)
        for (const int count : place)
            CHECK(std::abs(count - draws / 32.0) < 6 * std::sqrt(draws / 32.0 * 31 / 32));
    // As many bits as are stated: every one of 32 characters comes at each of the fifteen places, each as often.
    double bits = 0;
    for (const auto& place : counts)
        for (const int count : place)
            bits -= count / double(draws) * std::log2(count / double(draws));
    CHECK(std::abs(bits - drawnPassphraseBits) < 0.1);
    // More than fifteen small letters at random, the best that the shortest passphrase of small letters can be.
    CHECK(bits > 15 * std::log2(26.0));
}

TEST_CASE("two groups of a drawn passphrase, or all of it, prove the paper; any other text does not", "[vault][drawn]")
{
    REQUIRE(crypto::initialise());
    std::set<std::array<int, 2>> pairs;
    for (int i = 0; i < 500; ++i) {
        const auto groups = groupsToAsk();
        CHECK((groups[0] >= 1 && groups[0] < groups[1] && groups[1] <= 4));
        pairs.insert(groups);
    }
    CHECK(pairs.size() == 6);

    const std::string drawn = "ABCD-EFGH-IJKL-MNOB";
    const auto says = [&](std::string_view typed) { return saysGroups(drawn, {2, 4}, typed); };
    for (const char* right : {"EFGHMNOB", "efgh mnob", "EFGH-MNOB", " efgh  mno8 ", "efghmn0b", "EFGH\tMNOB\n"}) {
        CAPTURE(right);
        CHECK(says(right));
    }
    CHECK(says(drawn));
    for (const char* wrong : {"", "EFGH", "MNOBEFGH", "ABCDMNOB", "EFGHMNOBA", "EFGHMNOA", "ABCDEFGHIJKLMNOA"}) {
        CAPTURE(wrong);
        CHECK_FALSE(says(wrong));
    }
    const std::string fresh = drawPassphrase();
    std::string spaced = fresh;
    std::ranges::replace(spaced, '-', ' ');
    CHECK(saysGroups(fresh, {1, 2}, spaced));
    CHECK(saysGroups(fresh, {1, 3}, withoutDashes(fresh.substr(0, 4) + fresh.substr(10, 4))));
}

TEST_CASE("a drawn passphrase is understood as people type it", "[vault][drawn]")
{
    REQUIRE(crypto::initialise());
    CHECK(passphraseAsDrawn("abcd efgh ijkl mnoe") == "ABCD-EFGH-IJKL-MNOE");  // the example of docs/formats/vault.md
    for (const std::string_view typed : {"abcd efgh \u0131jkl mnoe", "abcd efgh \u0130jkl mnoe", "ABCD\u2013EFGH\u2014IJKL\u2010MNOE",
                                         "\uff21\uff22\uff23\uff24 \uff45\uff46\uff47\uff48 ijkl mnoe", "abcd efgh \u0661jkl mnoe", "abcd efgh \u06f1jkl mnoe"})
        CHECK(passphraseAsDrawn(typed) == "ABCD-EFGH-IJKL-MNOE");
    for (int i = 0; i < 200; ++i) {
        const std::string text = drawPassphrase();
        CAPTURE(text);
        std::string small = text;
        for (char& c : small)
            c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
        std::string spaced = text;
        std::replace(spaced.begin(), spaced.end(), '-', ' ');
        std::string mistaken = text;
        std::replace(mistaken.begin(), mistaken.end(), 'O', '0');
        std::replace(mistaken.begin(), mistaken.end(), 'I', '1');
        std::replace(mistaken.begin(), mistaken.end(), 'B', '8');
        for (const std::string& typed : {text, small, spaced, mistaken, withoutDashes(small), text + " ", " " + small})
            CHECK(passphraseAsDrawn(typed) == text);
    }
}

TEST_CASE("what is no drawn passphrase stays as it was typed, to the letter", "[vault][drawn]")
{
    REQUIRE(crypto::initialise());
    for (const std::string_view typed : {"", "short", "three calm herons wade", "Fünfzehn Zeichen", "A passphrase with-dashes", "abcd efgh ijkl",
                                         "abcdefghijklmnopq", "ab cd efgh ijklmnop", "abcd--efgh-ijkl-mnop", "abcd efgh ijkl mno!"})
        CHECK(passphraseAsDrawn(typed) == typed);
    // One wrong character, or two that changed places, and it is none: then it is tried as it stands.
    const std::string text = drawPassphrase();
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text[at] == '-')
            continue;
        for (const char other : alphabet) {
            const bool sameToTheCheck = (other == 'A' && text[at] == '7') || (other == '7' && text[at] == 'A');
            if (other == text[at] || sameToTheCheck)
                continue;
            std::string wrong = text;
            wrong[at] = other;
            std::string small = wrong;
            for (char& c : small)
                c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
            CHECK(passphraseAsDrawn(small) == small);
        }
    }
    for (std::size_t a = 0; a < text.size(); ++a)
        for (std::size_t b = a + 1; b < text.size(); ++b) {
            const bool sameToTheCheck = text[a] == text[b] || (text[a] == 'A' && text[b] == '7') || (text[a] == '7' && text[b] == 'A');
            if (text[a] == '-' || text[b] == '-' || sameToTheCheck)
                continue;
            std::string wrong = text;
            std::swap(wrong[a], wrong[b]);
            CHECK(passphraseAsDrawn(wrong) == wrong);
        }
}
