// ebbline verify, backup, restore: whether a vault is whole, one file of it, and back.

#include "app/tool/secret_input.h"
#include "app/tool/subcommand.h"
#include "app/tool/vault_words.h"

#include "core/bytes/text.h"
#include "core/clock/iso8601.h"
#include "core/vault/drawn_passphrase.h"
#include "core/vault/backup.h"

#include <nlohmann/json.hpp>

#include <iostream>
#include <memory>

namespace ebbline::tool {

namespace {

using Json = nlohmann::ordered_json;

struct Options {
    std::string folder;
    std::string file;
    bool recoveryCode = false;
    bool json = false;
};

constexpr const char* asking = "The passphrase is asked for without echo, or read from the first line of standard input.";

int codeOf(const Error& error)
{
    switch (error.reason) {
    case Reason::wrongKey:
    case Reason::tooSoon:
    case Reason::notFound:
    case Reason::notEnough:
    case Reason::tooLarge:
    case Reason::malformed:
    case Reason::alreadyExists: return badInput;
    default: return failed;
    }
}

int refuse(const char* command, const Error& error)
{
    std::cerr << "ebbline " << command << ": " << sentence(error) << '\n';
    return codeOf(error);
}

/// Reads the passphrase or code, then does `work` with it.
int withSecret(const char* command, const Options& options, const std::function<int(const vault::Offered&)>& work)
{
    if (const Done ready = crypto::initialise(); !ready)
        return refuse(command, ready.error());
    SecretLine line;
    if (const Done read = line.read(options.recoveryCode ? "Recovery code" : "Passphrase"); !read)
        return refuse(command, read.error());
    if (!options.recoveryCode) {
        // As the diary reads it; one that a person chose comes back to the byte.
        std::string passphrase = vault::passphraseAsDrawn(line.text());
        const int code = work(vault::Offered::passphrase(bytes::viewOf(passphrase)));
        crypto::wipe({reinterpret_cast<std::uint8_t*>(passphrase.data()), passphrase.size()});
        return code;
    }
    const auto code = vault::RecoveryCode::fromText(line.text());
    return code ? work(vault::Offered::recoveryCode(*code)) : refuse(command, code.error());
}

Json jsonOf(const vault::Inspection& inspection)
{
    Json json{{"sound", inspection.sound()},
              {"version", inspection.version},
              {"operations", inspection.operations},
              {"own", inspection.own},
              {"courses", inspection.courses},
              {"waiting", inspection.waiting},
              {"unacknowledged", inspection.unacknowledged},
              {"photos", inspection.photos},
              {"quarantined", inspection.quarantined},
              {"folded", bytes::toHex(inspection.folded)},
              {"faults", Json::array()}};
    for (const vault::Fault& fault : inspection.faults)
        json["faults"].push_back({{"kind", word(fault.kind)}, {"detail", fault.detail}, {"sentence", sentence(fault)}});
    return json;
}

void print(const vault::Inspection& inspection)
{
    std::cout << "  records           " << inspection.operations << ", " << inspection.own << " of this device\n"
              << "  courses           " << inspection.courses << "\n"
              << "  not sent yet      " << inspection.waiting << "\n"
              << "  not acknowledged  " << inspection.unacknowledged << "\n"
              << "  photographs       " << inspection.photos << "\n"
              << "  quarantined       " << inspection.quarantined << "\n"
              << "  format            " << inspection.version << "\n"
              << "  folded            " << bytes::toHex(inspection.folded) << "\n";
}

int verify(const Options& options)
{
    return withSecret("verify", options, [&](const vault::Offered& offered) {
        const auto found = vault::inspect(options.folder, offered, clock::SystemClock().readings());
        if (!found)
            return refuse("verify", found.error());
        if (options.json) {
            std::cout << jsonOf(*found).dump(1) << '\n';
        } else {
            std::cout << (found->sound() ? "The vault is whole." : "The vault is NOT whole.") << '\n';
            for (const vault::Fault& fault : found->faults)
                std::cout << "- " << sentence(fault) << '\n';
            print(*found);
        }
        return found->sound() ? fine : failed;
    });
}

int report(const char* command, const Options& options, const Result<vault::BackupReport>& done, const std::string& what)
{
    if (!done)
        return refuse(command, done.error());
    if (options.json) {
        Json json{{"bytes", done->size}, {"hash", bytes::toHex(done->hash)},
                  {"made", clock::toIso8601(clock::Moment{done->made, {}, {}})}};
        json["inspection"] = jsonOf(done->inspection);
        std::cout << json.dump(1) << '\n';
        return fine;
    }
    std::cout << what << '\n';
    print(done->inspection);
    std::cout << "  bytes             " << done->size << "\n"
              << "  hash              " << bytes::toHex(done->hash) << "\n"
              << "  made              " << clock::toIso8601(clock::Moment{done->made, {}, {}}) << "\n";
    return fine;
}

int makeBackup(const Options& options)
{
    return withSecret("backup", options, [&](const vault::Offered& offered) {
        const auto done = vault::backup(options.folder, offered, clock::SystemClock().readings(), options.file);
        return report("backup", options, done, "The backup was made, unpacked, opened, inspected and compared.");
    });
}

int restore(const Options& options)
{
    return withSecret("restore", options, [&](const vault::Offered& offered) {
        const auto done = vault::restore(options.file, offered, clock::SystemClock().readings(), options.folder);
        return report("restore", options, done,
                      "The vault was restored and is whole. What it writes from now on has numbers of its own. If the old\n"
                      "one sent anything after the backup was made, whoever got it sees two stories and takes nothing more:\n"
                      "pair those anew.");
    });
}

void addShared(CLI::App& command, Options& options)
{
    command.add_flag("--recovery-code", options.recoveryCode, "Ask for the printed recovery code instead");
    command.add_flag("--json", options.json, "Print as JSON");
}

}  // namespace

void addVerify(CLI::App& app, std::function<int()>& run)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("verify", "Check that a vault is whole: keys, pages, records, chain, outbox, fold");
    command->footer(std::string(asking) + "\nExit code 0: whole; 1: something is wrong, one sentence each; 2: it could not be opened.\n"
                                          "Example: ebbline verify ~/.local/share/ebbline-desk/vault");
    command->add_option("folder", options->folder, "Folder of the vault")->required();
    addShared(*command, *options);
    command->callback([options, &run] { run = [options] { return verify(*options); }; });
}

void addBackup(CLI::App& app, std::function<int()>& run)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("backup", "Make one encrypted file of a vault, and prove that it restores");
    command->footer(std::string(asking) + "\nThe programs may stay open. A file is never written over.\n"
                                          "Example: ebbline backup ~/.local/share/ebbline-desk/vault /media/stick/clinic.ebbline");
    command->add_option("folder", options->folder, "Folder of the vault")->required();
    command->add_option("file", options->file, "The backup to make")->required();
    addShared(*command, *options);
    command->callback([options, &run] { run = [options] { return makeBackup(*options); }; });
}

void addRestore(CLI::App& app, std::function<int()>& run)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("restore", "Make a vault from a backup, in a new or empty folder");
    command->footer(std::string(asking) + "\nExample: ebbline restore /media/stick/clinic.ebbline restored-vault");
    command->add_option("file", options->file, "The backup")->required();
    command->add_option("folder", options->folder, "Where the vault should be; new or empty")->required();
    addShared(*command, *options);
    command->callback([options, &run] { run = [options] { return restore(*options); }; });
}

}  // namespace ebbline::tool
