// What the tool says about a damaged vault: every fault and refusal has a sentence of its own.

#include "app/tool/vault_words.h"

#include <catch2/catch_test_macros.hpp>

#include <set>

using namespace ebbline;
using Kind = vault::Fault::Kind;

TEST_CASE("every fault has a word and a sentence of its own that names the place", "[tool]")
{
    std::set<std::string> words, sentences;
    std::size_t kinds = 0;
    for (int i = 0; i <= static_cast<int>(Kind::openInfo); ++i, ++kinds) {
        const vault::Fault fault{static_cast<Kind>(i), "page 51"};
        const std::string text = tool::sentence(fault);
        CAPTURE(text);
        CHECK(text.find("page 51") != std::string::npos);
        CHECK(text.find('%') == std::string::npos);
        CHECK(text.ends_with('.'));
        words.insert(tool::word(fault.kind));
        sentences.insert(text);
    }
    CHECK(kinds == 14);
    CHECK(words.size() == kinds);
    CHECK(sentences.size() == kinds);
}

TEST_CASE("a wrong passphrase, damage, a newer program and a full disk are told apart", "[tool]")
{
    std::set<std::string> sentences;
    for (const Reason reason : {Reason::wrongKey, Reason::tooSoon, Reason::notFound, Reason::malformed, Reason::alreadyExists,
                                Reason::unsupported, Reason::damaged, Reason::storageFull, Reason::storageFailed})
        sentences.insert(tool::sentence(Error{reason, "30"}));

    CHECK(sentences.size() == 9);
    CHECK(tool::sentence(Error{Reason::tooSoon, "30"}) == "Too many wrong attempts: wait 30 seconds.");
}
