// A patient's name, number and language, corrected: what holds, in whatever order it arrives.

#include "core/journal/state.h"

#include "tests/core/records/sample_bodies.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

#include <algorithm>

using namespace ebbline;
using namespace ebbline::journal;
using namespace ebbline::records;

namespace {

const auto ines = test::idOf<recovery::PatientTag>(3);
const std::string ada = "Dr. Ada Lund";

struct Writer {
    std::uint8_t device;
    std::uint64_t number = 0;

    Operation write(const Body& body, std::uint64_t time, std::optional<OperationId> supersedes = {})
    {
        Operation operation;
        operation.id = {test::idOf<envelope::DeviceTag>(device), ++number};
        operation.stamp = clock::HybridTime{time << 16};
        operation.entered = test::momentAt("2027-03-02T21:00:00+01:00");
        operation.kind = static_cast<std::uint16_t>(kindOf(body));
        operation.supersedes = supersedes;
        operation.body = encode(body);
        return operation;
    }
};

PatientRegistered as(const char* name, const char* phone, const char* language = "en") { return {ines, name, phone, language}; }
WorkDone by(const std::string& person) { return {Task::treat, {}, person, test::momentAt("2027-03-02T21:00:00+01:00")}; }

}  // namespace

TEST_CASE("a correction holds, and what held before stays with who and when", "[journal][patients]")
{
    Writer desk{2};
    const Operation first = desk.write(as("Ines Varga", "+00 555 0101"), 10);
    const Operation who = desk.write(by(ada), 20);
    const Operation second = desk.write(as("Ines Varga", "+00 555 0199", "de"), 20);
    const State state = fold(std::vector{first, who, second});
    CHECK(state.patients.at(ines) == as("Ines Varga", "+00 555 0199", "de"));
    const auto& corrections = state.patientCorrections.at(ines);
    REQUIRE(corrections.size() == 1);
    CHECK(corrections[0].before == as("Ines Varga", "+00 555 0101"));
    CHECK(corrections[0].after == state.patients.at(ines));
    CHECK(corrections[0].by == ada);
    CHECK(corrections[0].operation == second.id);
    CHECK_FALSE(corrections[0].crossed);
    CHECK(fold(std::vector{first}).patientCorrections.empty());
}

TEST_CASE("of two corrections at once each holds in what it changed, and the later one where both changed the same", "[journal][patients]")
{
    Writer desk{2}, other{3};
    const Operation first = desk.write(as("Ines Varga", "+00 555 0101"), 10);
    const Operation number = desk.write(as("Ines Varga", "+00 555 0199"), 20);
    const Operation name = other.write(as("Inez Varga", "+00 555 0101"), 21);
    const Operation again = other.write(as("Inez Vargas", "+00 555 0101", "de"), 22);

    const State apart = fold(std::vector{first, number, name});
    CHECK(apart.patients.at(ines) == as("Inez Varga", "+00 555 0199"));
    CHECK(apart.patientCorrections.at(ines).back().crossed);
    CHECK(apart.patientCorrections.at(ines).back().before == as("Ines Varga", "+00 555 0199"));

    const State both = fold(std::vector{first, name, again});
    CHECK(both.patients.at(ines) == as("Inez Vargas", "+00 555 0101", "de"));
    CHECK(both.patientCorrections.at(ines).back().crossed);
}

TEST_CASE("a correction of what was corrected is no crossing, and may bring a former number back", "[journal][patients]")
{
    Writer desk{2}, other{3};
    const Operation first = desk.write(as("Ines Varga", "+00 555 0101"), 10);
    const Operation second = desk.write(as("Ines Varga", "+00 555 0199"), 20);
    const Operation back = other.write(as("Ines Varga", "+00 555 0101"), 30, second.id);
    const State state = fold(std::vector{first, second, back});
    CHECK(state.patients.at(ines).phone == "+00 555 0101");
    CHECK_FALSE(state.patientCorrections.at(ines).back().crossed);

    // What it was written upon has not arrived: it holds as it was written.
    const State partly = fold(std::vector{first, back});
    CHECK(partly.patients.at(ines) == as("Ines Varga", "+00 555 0101"));
    CHECK(partly.patientCorrections.at(ines).back().crossed);
}

TEST_CASE("corrections give one state in every order of arrival", "[journal][patients]")
{
    Writer desk{2}, other{3};
    const Operation first = desk.write(as("Ines Varga", "+00 555 0101"), 10);
    const Operation who = desk.write(by(ada), 20);
    const Operation number = desk.write(as("Ines Varga", "+00 555 0199"), 20);
    const Operation name = other.write(as("Inez Varga", "+00 555 0101"), 21);
    const Operation last = desk.write(as("Inez Varga", "+00 555 0188", "de"), 30, name.id);
    const std::vector all{first, who, number, name, last};
    const State expected = fold(all);
    CHECK(rc::check("any order", [&] {
        std::vector<std::size_t> order{0, 1, 2, 3, 4};
        for (std::size_t i = order.size(); i > 1; --i)
            std::swap(order[i - 1], order[*rc::gen::inRange<std::size_t>(0, i)]);
        std::vector<Operation> shuffled;
        for (const std::size_t place : order)
            shuffled.push_back(all[place]);
        const State state = fold(shuffled);
        RC_ASSERT(static_cast<const ClinicState&>(state) == static_cast<const ClinicState&>(expected));
        RC_ASSERT(digest(state) == digest(expected));
    }));
}

TEST_CASE("what its writer saw is left alone, whether the named correction wrote it or left it to hold", "[journal][patients]")
{
    Writer desk{2}, other{3}, third{4};
    const Operation first = desk.write(as("Ines Varga", "+00 555 0101"), 10);
    const Operation number = desk.write(as("Ines Varga", "+00 555 0199"), 20);
    const Operation name = other.write(as("Inez Varga", "+00 555 0101"), 21);
    // Upon the name, where 0199 holds: the language alone. A third desk corrects the number meanwhile.
    const Operation meanwhile = third.write(as("Ines Varga", "+00 555 0177"), 25);
    const Operation language = other.write(as("Inez Varga", "+00 555 0199", "de"), 30, name.id);
    CHECK(fold(std::vector{first, number, name, meanwhile, language}).patients.at(ines) == as("Inez Varga", "+00 555 0177", "de"));
    const Operation asWritten = other.write(as("Inez Varga", "+00 555 0101", "fr"), 31, name.id);
    CHECK(fold(std::vector{first, number, name, meanwhile, asWritten}).patients.at(ines) == as("Inez Varga", "+00 555 0177", "fr"));
}

TEST_CASE("what the named correction wrote and did not bring about is brought back in two steps, which say once what they did not know of", "[journal][patients]")
{
    Writer desk{2}, other{3}, third{4};
    const Operation first = desk.write(as("Ines Varga", "+00 555 0101"), 10);
    const Operation number = desk.write(as("Ines Varga", "+00 555 0199"), 20);
    const Operation name = other.write(as("Inez Varga", "+00 555 0101"), 21);
    const Operation meanwhile = third.write(as("Ines Varga", "+00 555 0101", "de"), 25);
    const Operation sight = other.write(as("Inez Varga", "+00 555 0199"), 30, name.id);
    const Operation who = other.write(by(ada), 31);
    const Operation back = other.write(as("Inez Varga", "+00 555 0101"), 32, sight.id);

    const State alone = fold(std::vector{first, number, name, sight, who, back});
    CHECK(alone.patients.at(ines) == as("Inez Varga", "+00 555 0101"));
    CHECK_FALSE(alone.patientCorrections.at(ines).back().crossed);
    const State crossed = fold(std::vector{first, number, name, meanwhile, sight, who, back});
    CHECK(crossed.patients.at(ines) == as("Inez Varga", "+00 555 0101", "de"));
    CHECK(crossed.patientCorrections.at(ines).back().crossed);

    // Another step of the same desk ends it.
    const Operation next = other.write(as("Inez Varga", "+00 555 0102"), 40, back.id);
    CHECK_FALSE(fold(std::vector{first, number, name, meanwhile, sight, who, back, next}).patientCorrections.at(ines).back().crossed);
}

namespace {

/// Three desks that correct anything, upon anything that any of them wrote or never wrote, with stamps in any order.
std::vector<Operation> drawnOperations()
{
    const auto one = [](std::initializer_list<const char*> of) { return *rc::gen::elementOf(std::vector<const char*>(of)); };
    std::vector<Operation> all;
    for (std::uint8_t device = 2; device < 5; ++device) {
        Writer desk{device};
        for (int i = 0; i < 8; ++i) {
            const auto time = *rc::gen::inRange<std::uint64_t>(1, 40);
            if (*rc::gen::inRange(0, 6) == 0) {
                all.push_back(desk.write(by(ada), time));
                continue;
            }
            std::optional<OperationId> named;
            if (const int upon = *rc::gen::inRange(0, 32); upon < 27)
                named = OperationId{test::idOf<envelope::DeviceTag>(static_cast<std::uint8_t>(2 + upon / 9)), static_cast<std::uint64_t>(1 + upon % 9)};
            all.push_back(desk.write(as(one({"Ines Varga", "Inez Varga", "Ines Vargas"}), one({"+00 555 0101", "+00 555 0199", "+00 555 0177"}), one({"en", "de", "fr"})),
                                     time, named));
        }
    }
    return all;
}

/// Each of them once or twice, in any order.
std::vector<Operation> asTheyArrive(const std::vector<Operation>& all)
{
    std::vector<Operation> arriving = all;
    for (const Operation& operation : all)
        if (*rc::gen::inRange(0, 2) == 1)
            arriving.push_back(operation);
    for (std::size_t i = arriving.size(); i > 1; --i)
        std::swap(arriving[i - 1], arriving[*rc::gen::inRange<std::size_t>(0, i)]);
    return arriving;
}

}  // namespace

TEST_CASE("three desks correct anything upon anything: one state in every order, and in it each changed what it changed", "[journal][patients]")
{
    CHECK(rc::check("three desks", [] {
        std::vector<Operation> all = drawnOperations();
        std::ranges::sort(all, before);
        const State expected = fold(all);
        Journal journal;
        for (const Operation& operation : asTheyArrive(all))
            journal.add(operation);
        RC_ASSERT(static_cast<const ClinicState&>(journal.state()) == static_cast<const ClinicState&>(expected));
        RC_ASSERT(digest(journal.state()) == digest(expected));

        std::erase_if(all, [](const Operation& operation) { return operation.kind != static_cast<std::uint16_t>(Kind::patientRegistered); });
        RC_PRE(!all.empty());
        const auto written = [](const Operation& operation) { return std::get<PatientRegistered>(*decode(Kind::patientRegistered, operation.body)); };
        const PatientRegistered registered = written(all.front());
        PatientRegistered holds = registered;
        std::vector<PatientCorrection> corrections;
        if (const auto found = expected.patientCorrections.find(ines); found != expected.patientCorrections.end())
            corrections = found->second;
        RC_ASSERT(corrections.size() + 1 == all.size());
        for (std::size_t i = 0; i < corrections.size(); ++i) {
            const Operation& operation = all[i + 1];
            const PatientCorrection& correction = corrections[i];
            RC_ASSERT(correction.operation == operation.id);
            RC_ASSERT(correction.before == holds);
            RC_ASSERT(correction.written == written(operation));
            const auto sight = std::ranges::find_if(corrections.begin(), corrections.begin() + static_cast<std::ptrdiff_t>(i),
                                                    [&](const PatientCorrection& each) { return each.operation == operation.supersedes; });
            const bool arrived = sight != corrections.begin() + static_cast<std::ptrdiff_t>(i);
            for (const auto field : {&PatientRegistered::name, &PatientRegistered::phone, &PatientRegistered::language}) {
                const std::string& says = correction.written.*field;
                const bool sawIt = arrived ? says == sight->written.*field || says == sight->after.*field
                                           : !operation.supersedes && says == registered.*field;
                const std::string& became = correction.after.*field;
                RC_ASSERT(became == (sawIt ? holds.*field : says));
            }
            const bool knewTheLast = operation.supersedes ? i > 0 && corrections[i - 1].operation == *operation.supersedes : i == 0;
            RC_ASSERT(knewTheLast || correction.crossed);
            holds = correction.after;
        }
        RC_ASSERT(expected.patients.at(ines) == holds);
    }));
}
