#include "app/tool/vault_words.h"

#include <array>

namespace ebbline::tool {

namespace {

struct Words {
    vault::Fault::Kind kind;
    const char* word;
    const char* sentence;  ///< with % where the detail goes
};

using Kind = vault::Fault::Kind;
constexpr std::array<Words, 15> words{{
    {Kind::keyFile, "key-file", "The key file is damaged or missing (%). Change the passphrase to write a new one."},
    {Kind::keyFileBefore, "key-file-before",
     "The second copy of the key file is damaged or missing (%). Change the passphrase to write a new one."},
    {Kind::unreadable, "unreadable",
     "The passphrase is right, but vault.db cannot be opened with its key (%). Restore a backup; keep the damaged folder."},
    {Kind::page, "page", "A page of vault.db does not match its authentication tag (%). Restore a backup; keep the damaged folder."},
    {Kind::structure, "structure", "The structure of vault.db is broken (%). Restore a backup; keep the damaged folder."},
    {Kind::version, "version", "The vault's version is recorded in two ways that differ (%)."},
    {Kind::deviceKeys, "device-keys", "A key of this device is missing (%). Restore a backup."},
    {Kind::operation, "operation", "A record cannot be read or stands in another's place (%)."},
    {Kind::gap, "gap", "A record of this device is missing (%)."},
    {Kind::chain, "chain", "The chain over this device's records breaks (%): a record was changed, removed or put in."},
    {Kind::contents, "contents", "The contents of a record of this device are refused (%)."},
    {Kind::outbox, "outbox", "The messages that wait for their acknowledgement do not add up (%)."},
    {Kind::fold, "fold", "What is shown does not follow from the records (%)."},
    {Kind::photo, "photo", "A photograph is not whole, or not what was sealed (%). Restore a backup; keep the damaged folder."},
    {Kind::openInfo, "open-info", "Whom to call cannot be read while locked (%). Unlock the diary once to write it again."},
}};

const Words& wordsOf(Kind kind)
{
    return *std::ranges::find(words, kind, &Words::kind);
}

}  // namespace

const char* word(vault::Fault::Kind kind)
{
    return wordsOf(kind).word;
}

std::string sentence(const vault::Fault& fault)
{
    const std::string_view text = wordsOf(fault.kind).sentence;
    const std::size_t gap = text.find('%');
    return std::string(text.substr(0, gap)) + fault.detail + std::string(text.substr(gap + 1));
}

std::string sentence(const Error& error)
{
    switch (error.reason) {
    case Reason::wrongKey: return "The passphrase or recovery code does not open it.";
    case Reason::tooSoon: return "Too many wrong attempts: wait " + error.detail + " seconds.";
    case Reason::notFound: return "Nothing was found there (" + error.detail + ").";
    case Reason::malformed: return "This is not what it should be (" + error.detail + ").";
    case Reason::notEnough:
    case Reason::tooLarge: return "This cannot be right (" + error.detail + ").";
    case Reason::alreadyExists: return "There is one already, and it is never written over (" + error.detail + ").";
    case Reason::unsupported: return "It was written by a newer program; use that one (" + error.detail + ").";
    case Reason::damaged: return "It is damaged (" + error.detail + ").";
    case Reason::storageFull: return "The disk is full (" + error.detail + ").";
    default: return "It failed (" + error.detail + ").";
    }
}

}  // namespace ebbline::tool
