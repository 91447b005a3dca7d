// What belongs to no course is folded anew as a whole when something arrives late.

#include "core/journal/state.h"

#include "tests/core/records/sample_bodies.h"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <ranges>
#include <set>

using namespace ebbline;
using namespace ebbline::journal;
using namespace ebbline::records;

namespace {

/// One of every kind that belongs to no course, and another of some, from two desks.
std::vector<Operation> clinicOperations()
{
    std::vector<Body> bodies;
    for (const Body& body : test::sampleBodies())
        if (courseOf(body).isNull())
            bodies.push_back(body);
    const auto at = test::momentAt("2027-03-02T21:00:00+01:00");
    bodies.push_back(PatientRegistered{test::idOf<recovery::PatientTag>(3), "Ines Varga", "+00 555 0199", "en"});
    bodies.push_back(StepTaken{Step::backupMade, {}, {}, "Dr. Ada Lund", {}, at});
    bodies.push_back(ClinicDescribed{{"Quay", "1", "", "112"}, "Europe/Berlin", {"Dr. Ada Lund"}});
    bodies.push_back(ProtocolSigned{triggers::defaultProtocol(), bytes::Bytes(64, 9), at});
    std::vector<Operation> operations;
    std::uint64_t time = 10;
    std::map<std::uint8_t, std::uint64_t> numbers;
    for (const Body& body : bodies) {
        Operation operation;
        const std::uint8_t device = time % 3 == 0 ? 3 : 2;
        operation.id = {test::idOf<envelope::DeviceTag>(device), ++numbers[device]};
        operation.stamp = clock::HybridTime{time++ << 16};
        operation.entered = at;
        operation.kind = static_cast<std::uint16_t>(kindOf(body));
        operation.body = encode(body);
        operations.push_back(operation);
    }
    return operations;
}

}  // namespace

TEST_CASE("of every kind that belongs to no course, the last to arrive first gives the same state", "[journal]")
{
    const auto operations = clinicOperations();
    std::set<std::uint16_t> kinds;
    for (const Operation& operation : operations)
        kinds.insert(operation.kind);
    CHECK(kinds.size() == 10);

    auto reversed = operations;
    std::ranges::reverse(reversed);
    const State inOrder = fold(operations);
    const State late = fold(reversed);
    CHECK(static_cast<const ClinicState&>(inOrder) == static_cast<const ClinicState&>(late));
    CHECK(digest(inOrder) == digest(late));

    // Nothing of it is empty: a member that no operation reaches would prove nothing.
    CHECK_FALSE(inOrder.patients.empty());
    CHECK_FALSE(inOrder.patientCorrections.empty());
    CHECK_FALSE(inOrder.namedBefore.empty());
    CHECK(inOrder.protocolVersions.begin()->second.size() == 2);
    CHECK(inOrder.clinic);
    CHECK(inOrder.doseLimited);
    CHECK_FALSE(inOrder.bands.versions().empty());
    CHECK_FALSE(inOrder.bandThresholds.empty());
    CHECK_FALSE(inOrder.words.empty());
    CHECK(inOrder.roles.size() == 1);
    CHECK(inOrder.people.size() == 2);
    CHECK(inOrder.backups.size() == 1);
}

namespace {

/// As one device wrote it, one after another; `supersedes` of the last one.
std::vector<Operation> writtenInTurn(const std::vector<Body>& bodies, std::optional<OperationId> supersedes = {})
{
    std::vector<Operation> operations;
    for (const Body& body : bodies) {
        Operation operation;
        operation.id = {test::idOf<envelope::DeviceTag>(2), operations.size() + 1};
        operation.stamp = clock::HybridTime{(operations.size() + 1) << 16};
        operation.entered = test::momentAt("2027-03-02T21:00:00+01:00");
        operation.kind = static_cast<std::uint16_t>(kindOf(body));
        operation.course = courseOf(body);
        operation.body = encode(body);
        operations.push_back(operation);
    }
    operations.back().supersedes = supersedes;
    return operations;
}

PatientRegistered patientAs(const char* name, const char* phone) { return {test::idOf<recovery::PatientTag>(3), name, phone, "en"}; }

}  // namespace

TEST_CASE("the digest tells who corrected, whether it crossed, and what held after it", "[journal]")
{
    const auto at = test::momentAt("2027-03-02T21:00:00+01:00");
    const auto first = patientAs("Ines Varga", "+00 555 0101"), second = patientAs("Ines Varga", "+00 555 0199"), third = patientAs("Inez Varga", "+00 555 0199");
    const auto digestOf = [](const std::vector<Operation>& operations) { return digest(fold(operations)); };

    const auto by = [&](const char* person) { return digestOf(writtenInTurn({first, WorkDone{Task::treat, {}, person, at}, second})); };
    CHECK(by("Dr. Ada Lund") != by("Dr. Jonas Feld"));

    const auto knowing = writtenInTurn({first, second, third}, OperationId{test::idOf<envelope::DeviceTag>(2), 2}), unaware = writtenInTurn({first, second, third});
    CHECK(fold(knowing).patients == fold(unaware).patients);
    CHECK(digestOf(knowing) != digestOf(unaware));

    // The last one takes every field: what held in between is seen in the corrections alone.
    const OperationId never{test::idOf<envelope::DeviceTag>(9), 1};
    auto upon = writtenInTurn({first, second, patientAs("Inez Varga", "+00 555 0101"), third}, never);
    const auto leftAlone = upon;
    upon[2].supersedes = never;
    CHECK(fold(leftAlone).patients == fold(upon).patients);
    CHECK(digestOf(leftAlone) != digestOf(upon));
}

TEST_CASE("the digest tells when backups were made, how often a plan was changed, and of which course something is not understood", "[journal]")
{
    const auto digestOf = [](const std::vector<Operation>& operations) { return digest(fold(operations)); };
    const auto backupAt = [&](const char* when) { return digestOf(writtenInTurn({StepTaken{Step::backupMade, {}, {}, "Dr. Ada Lund", {}, test::momentAt(when)}})); };
    CHECK(backupAt("2027-03-02T21:00:00+01:00") != backupAt("2027-03-03T21:00:00+01:00"));

    const auto bodies = test::sampleBodies();
    const auto opened = std::get<CourseOpened>(*std::ranges::find_if(bodies, [](const Body& body) { return std::holds_alternative<CourseOpened>(body); }));
    auto another = opened;
    another.treated.at += std::chrono::hours(1);
    CHECK(digestOf(writtenInTurn({opened, another, opened})) != digestOf(writtenInTurn({opened, opened, opened})));

    const auto unknownOf = [&](std::uint8_t course) {
        auto operations = writtenInTurn({opened});
        operations.front().kind = 60000;
        operations.front().course = test::idOf<recovery::CourseTag>(course);
        return digestOf(operations);
    };
    CHECK(unknownOf(1) != unknownOf(2));
}
