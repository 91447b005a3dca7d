// ebbline simulate: invented courses whose truth is known, as open tables.

#include "app/tool/course_tables.h"
#include "app/tool/file_guard.h"
#include "app/tool/progress_bar.h"
#include "app/tool/subcommand.h"

#include "core/rehearsal/chance.h"

#include <algorithm>
#include <charconv>
#include <cstdio>
#include <iostream>
#include <memory>
#include <numeric>

namespace ebbline::tool {

namespace {

constexpr int mostCourses = 100'000;

struct Options {
    int courses = 1000;
    std::uint64_t seed = 1;
    std::string model = "A";
    std::string entries = "mixed";
    std::string kinds = "plain:16,infection,haematoma,slow-recovery,puckering";
    std::string scores;
    std::string truth;
    std::string signs;
    std::string temperatures;
};

struct Wanted {
    rehearsal::Kind kind;
    int weight;
    int courses = 0;
};

/// `plain:16,infection` as kinds with weights.
Result<std::vector<Wanted>> wantedKinds(std::string_view text)
{
    std::vector<Wanted> wanted;
    while (!text.empty()) {
        const std::string_view item = text.substr(0, text.find(','));
        text.remove_prefix(std::min(text.size(), item.size() + 1));
        const std::string_view name = item.substr(0, item.find(':'));
        const auto kind = rehearsal::kindFromWord(name);
        if (!kind)
            return fail(kind.error());
        int weight = 1;
        if (name.size() < item.size()) {
            const std::string_view digits = item.substr(name.size() + 1);
            const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), weight);
            if (read.ec != std::errc{} || read.ptr != digits.data() + digits.size() || weight < 1 || weight > 1'000'000)
                return fail(Reason::outOfRange, "kind: want a weight of 1..1000000 after the colon");
        }
        wanted.push_back({*kind, weight});
    }
    if (wanted.empty())
        return fail(Reason::notEnough, "kinds: want at least one");
    return wanted;
}

/// Shares the courses out by weight; what is left over goes to the largest remainders.
void apportion(std::vector<Wanted>& wanted, int courses)
{
    const long weights = std::max(1L, std::accumulate(wanted.begin(), wanted.end(), 0L,
                                                      [](long sum, const Wanted& w) { return sum + w.weight; }));
    std::vector<std::pair<long, std::size_t>> remainders;
    int given = 0;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        const long exact = static_cast<long>(courses) * wanted[i].weight;
        wanted[i].courses = static_cast<int>(exact / weights);
        given += wanted[i].courses;
        remainders.emplace_back(-(exact % weights), i);
    }
    std::sort(remainders.begin(), remainders.end());
    for (std::size_t i = 0; given < courses; ++i, ++given)
        ++wanted[remainders[i].second].courses;
}

/// Names that do not tell the truth: numbered in a shuffled order.
void nameBlind(std::vector<rehearsal::KnownCourse>& courses, std::uint64_t seed)
{
    rehearsal::Chance chance(seed, ~std::uint64_t{0});
    for (std::size_t i = courses.size(); i > 1; --i)
        std::swap(courses[i - 1], courses[static_cast<std::size_t>(chance.whole(0, static_cast<int>(i) - 1))]);
    for (std::size_t i = 0; i < courses.size(); ++i) {
        char name[32];
        std::snprintf(name, sizeof name, "c%06zu", i + 1);
        courses[i].name = name;
    }
}

/// A table that grows course by course; one that nobody wants to have stays empty.
template <typename Row>
class GrowingTable {
public:
    using Writer = std::string (*)(const std::vector<Row>&);

    GrowingTable(std::string file, Writer writer)
        : m_file(std::move(file)), m_writer(writer), m_text(m_writer({})), m_header(m_text.size())
    {
    }

    void add(const std::vector<Row>& rows)
    {
        m_rows += rows.size();
        if (wanted())
            m_text.append(m_writer(rows), m_header);
    }

    bool wanted() const { return !m_file.empty(); }
    std::size_t rows() const { return m_rows; }
    Done readable(std::size_t courses) const { return checkReadable(m_file, m_text.size(), m_rows, courses); }
    Output output() && { return {std::move(m_file), std::move(m_text)}; }

private:
    std::string m_file;
    Writer m_writer;
    std::string m_text;
    std::size_t m_header;
    std::size_t m_rows = 0;
};

int simulate(const Options& options)
{
    auto wanted = wantedKinds(options.kinds);
    if (!wanted) {
        std::cerr << "ebbline simulate: " << wanted.error().detail << "\n";
        return badInput;
    }
    std::vector<NamedFile> tables{{"--out-scores", options.scores}, {"--out-truth", options.truth}};
    if (!options.signs.empty())
        tables.push_back({"--out-signs", options.signs});
    if (!options.temperatures.empty())
        tables.push_back({"--out-temperatures", options.temperatures});
    if (const Done kept = keepsInputs({}, tables); !kept) {
        std::cerr << "ebbline simulate: " << kept.error().detail << "\n";
        return badInput;
    }
    apportion(*wanted, options.courses);
    const rehearsal::Invention invention{
        options.model == "A" ? rehearsal::Model::decay : rehearsal::Model::steps,
        options.entries == "daily"   ? rehearsal::Rhythm::daily
        : options.entries == "twice" ? rehearsal::Rhythm::twice
        : options.entries == "plan"  ? rehearsal::Rhythm::plan
                                     : rehearsal::Rhythm::mixed,
        options.seed};
    std::vector<rehearsal::KnownCourse> courses;
    {
        ProgressBar bar("inventing");
        for (const Wanted& each : *wanted)
            for (int i = 0; i < each.courses; ++i) {
                courses.push_back(rehearsal::invent(invention, each.kind, i));
                bar.show(static_cast<int>(courses.size()), options.courses);
            }
    }
    nameBlind(courses, options.seed);
    GrowingTable<exchange::ScoreRow> scores(options.scores, exchange::writeScores);
    GrowingTable<exchange::TruthRow> truth(options.truth, exchange::writeTruth);
    GrowingTable<exchange::SignRow> signs(options.signs, exchange::writeSigns);
    GrowingTable<exchange::TemperatureRow> temperatures(options.temperatures, exchange::writeTemperatures);
    for (const rehearsal::KnownCourse& course : courses) {
        const auto rows = scoreRowsOf(course);
        // Who never wrote a word has no place in a table of scores.
        if (rows.empty())
            continue;
        scores.add(rows);
        truth.add({truthRowOf(course)});
        signs.add(signRowsOf(course));
        temperatures.add(temperatureRowsOf(course));
        // They stand in a shuffled order: so far is as it goes on.
        const std::size_t soFar = truth.rows();
        for (const Done& readable : {scores.readable(soFar), truth.readable(soFar), signs.readable(soFar), temperatures.readable(soFar)})
            if (!readable) {
                std::cerr << "ebbline simulate: " << readable.error().detail << "\n";
                return badInput;
            }
    }
    const std::size_t written = truth.rows(), scored = scores.rows(), ticked = signs.rows(), measured = temperatures.rows();
    std::vector<Output> outputs{std::move(scores).output(), std::move(truth).output()};
    if (signs.wanted())
        outputs.push_back(std::move(signs).output());
    if (temperatures.wanted())
        outputs.push_back(std::move(temperatures).output());
    if (const Done done = writeFiles(outputs); !done) {
        std::cerr << "ebbline simulate: " << done.error().detail << "\n";
        return failed;
    }
    std::cout << written << " courses, " << scored << " scores, " << ticked << " signs, " << measured << " temperatures, model "
              << options.model << ", seed " << options.seed << "\n";
    return fine;
}

}  // namespace

void addSimulate(CLI::App& app, std::function<int()>& run)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("simulate", "Invent courses whose truth is known");
    command->footer("All of it is invented; the assumptions stand in docs/statistics/detection.md. The same seed gives\n"
                    "the same tables on every machine. Kinds: plain, infection, haematoma, slow-recovery, puckering,\n"
                    "silent; late-haematoma, worsening-puckering, severe-pain; and told by warning signs thread-out, weakness,\n"
                    "saliva-swelling, pale-skin, bleeding, thread-lump, spreading-colour, airway, allergy,\n"
                    "numbing-reaction, severe-illness, stroke-signs, vision; by a temperature fever and\n"
                    "febrile-infection; by scores of numbness, which no other kind writes, spreading-numbness; each with a weight if wanted.\n"
                    "A table larger than the tool reads again is not written; then it says roughly how many courses fit.\n"
                    "Example: ebbline simulate --courses 4000 --seed 7 --kinds plain --out-scores s.csv --out-truth t.csv");
    command->add_option("--courses", options->courses, "How many, all kinds together")
        ->check(CLI::Range(1, mostCourses))
        ->capture_default_str();
    command->add_option("--seed", options->seed, "Seed")->capture_default_str();
    command->add_option("--model", options->model, "A: smooth decay through noise; B: scores that step up and down")
        ->check(CLI::IsMember({"A", "B"}))
        ->capture_default_str();
    command->add_option("--entries", options->entries, "When they write: mixed, daily, twice, plan (as the care plan asks)")
        ->check(CLI::IsMember({"mixed", "daily", "twice", "plan"}))
        ->capture_default_str();
    command->add_option("--kinds", options->kinds, "Kinds and weights")->capture_default_str();
    command->add_option("--out-scores", options->scores, "Where the scores go (CSV)")->required();
    command->add_option("--out-truth", options->truth, "Where the truth goes (CSV)")->required();
    command->add_option("--out-signs", options->signs, "Where the warning signs go that were ticked (CSV)");
    command->add_option("--out-temperatures", options->temperatures, "Where the temperatures go that were measured (CSV)");
    command->callback([options, &run] { run = [options] { return simulate(*options); }; });
}

}  // namespace ebbline::tool
