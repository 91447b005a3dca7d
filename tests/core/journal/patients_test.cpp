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
