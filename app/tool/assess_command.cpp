// ebbline assess: judges anybody's tables of scores, signs and temperatures by the rules of the phone.

#include "app/tool/assess_tables.h"
#include "app/tool/course_tables.h"
#include "app/tool/file_guard.h"
#include "app/tool/subcommand.h"

#include "core/clock/instant.h"
#include "core/exchange/protocol_file.h"

#include <iostream>
#include <memory>

namespace ebbline::tool {

namespace {

struct Options {
    std::string scores;
    std::string signs;
    std::string temperatures;
    std::string protocol;
    std::string out;
};

std::string counted(std::size_t count, const std::string& thing)
{
    return std::to_string(count) + ' ' + thing + (count == 1 ? "" : "s");
}

int assess(const Options& options)
{
    const auto complain = [](const std::string& what) {
        std::cerr << "ebbline assess: " << what << "\n";
        return badInput;
    };
    if (const Done kept = keepsInputs({{"--scores", options.scores}, {"--signs", options.signs}, {"--temperatures", options.temperatures},
                                       {"--protocol", options.protocol}},
                                      {{"--out", options.out}});
        !kept)
        return complain(kept.error().detail);
    const auto scores = rowsOf<exchange::ScoreRow>(options.scores, exchange::readScores, std::cerr);
    if (!scores)
        return badInput;
    std::vector<exchange::SignRow> signs;
    if (!options.signs.empty()) {
        auto read = rowsOf<exchange::SignRow>(options.signs, exchange::readSigns, std::cerr);
        if (!read)
            return badInput;
        signs = std::move(*read);
    }
    std::vector<exchange::TemperatureRow> temperatures;
    if (!options.temperatures.empty()) {
        auto read = rowsOf<exchange::TemperatureRow>(options.temperatures, exchange::readTemperatures, std::cerr);
        if (!read)
            return badInput;
        temperatures = std::move(*read);
    }
    triggers::Protocol protocol = triggers::defaultProtocol();
    if (!options.protocol.empty()) {
        const auto text = readFile(options.protocol);
        auto read = text ? exchange::protocolFromText(*text) : fail(text.error());
        if (!read)
            return complain(options.protocol + ": " + read.error().detail);
        protocol = std::move(read->protocol);
    }
    const auto assessed = assessTables(*scores, signs, temperatures, protocol, clock::SystemClock().now());
    if (!assessed)
        return complain((assessed.error().reason == Reason::notEnough ? "not enough to say: " : "") + assessed.error().detail);
    if (assessed->allAhead)
        std::cerr << "ebbline assess: note: all rows lie more than a day ahead of this computer's clock; the table is judged by its own time, "
                     "silence up to its last row\n";
    else if (assessed->ahead > 0)
        std::cerr << "ebbline assess: note: " << counted(assessed->ahead, "row") << (assessed->ahead == 1 ? " lies" : " lie")
                  << " more than a day ahead of this computer's clock; " << (assessed->ahead == 1 ? "it is" : "they are")
                  << " judged as written, and nobody is called silent for " << (assessed->ahead == 1 ? "it\n" : "them\n");
    if (const Done written = writeFile(options.out, exchange::writeFindings(assessed->findings)); !written) {
        std::cerr << "ebbline assess: " << options.out << ": " << written.error().detail << "\n";
        return failed;
    }
    std::cout << counted(assessed->findings.size(), "finding") << " in " << counted(assessed->courses, "course") << '\n';
    return fine;
}

}  // namespace

void addAssess(CLI::App& app, std::function<int()>& run)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("assess", "Judge tables of scores, signs and temperatures by the rules of the phone");
    command->footer("Fever, which the phone asks for, is judged where a table of temperatures is handed in, and not without.\n"
                    "Tables: docs/formats/tables.md. A bad row is named with line and column, and nothing is written.\n"
                    "Example: ebbline assess --scores scores.csv --signs signs.csv --out findings.csv");
    command->add_option("--scores", options->scores, "Table of scores (CSV)")->required();
    command->add_option("--signs", options->signs, "Table of warning signs (CSV)");
    command->add_option("--temperatures", options->temperatures, "Table of temperatures (CSV)");
    command->add_option("--protocol", options->protocol, "Protocol to judge by (JSON); without it the default one");
    command->add_option("--out", options->out, "Where the findings go (CSV)")->required();
    command->callback([options, &run] { run = [options] { return assess(*options); }; });
}

}  // namespace ebbline::tool
