// One operation as bytes.

#include "core/journal/operation.h"

#include "tests/core/records/sample_bodies.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

using namespace ebbline;
using namespace ebbline::journal;

namespace {

Operation sample()
{
    Operation operation;
    operation.id = {test::idOf<envelope::DeviceTag>(2), 41};
    operation.stamp = clock::HybridTime{0x0123456789ab0003};
    operation.entered = test::momentAt("2027-03-02T20:01:00-03:30");
    operation.kind = static_cast<std::uint16_t>(records::Kind::entryRecorded);
    operation.audience = Audience::patientAndClinic;
    operation.course = test::sampleCourse;
    operation.body = records::encode(records::EntryRecorded{test::sampleEntry()});
    return operation;
}

}  // namespace

TEST_CASE("an operation reads back as it was written, with and without a predecessor", "[journal]")
{
    Operation operation = sample();
    CHECK(decode(encode(operation)).value() == operation);

    operation.supersedes = OperationId{test::idOf<envelope::DeviceTag>(2), 40};
    CHECK(decode(encode(operation)).value() == operation);
}

TEST_CASE("an operation of an unknown kind keeps its bytes", "[journal]")
{
    Operation newer = sample();
    newer.kind = 900;
    newer.body = {1, 2, 3};

    CHECK(decode(encode(newer)).value() == newer);
}

TEST_CASE("an operation cut short anywhere, or lengthened, is refused", "[journal][errors]")
{
    const bytes::Bytes whole = encode(sample());
    for (std::size_t length = 0; length < whole.size(); ++length) {
        CAPTURE(length);
        REQUIRE_FALSE(decode(bytes::View(whole).first(length)));
    }
    bytes::Bytes longer = whole;
    longer.push_back(0);
    CHECK_FALSE(decode(longer));
}

TEST_CASE("no bytes make the reader misbehave", "[journal][property]")
{
    CHECK(rc::check("refused or canonical", [](bytes::Bytes input) {
        if (!input.empty())
            input[0] = 1;
        const auto operation = decode(input);
        if (operation)
            RC_ASSERT(encode(*operation) == input);
    }));
}
