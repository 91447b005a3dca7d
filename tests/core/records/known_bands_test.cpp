// Bodies that carry the same band share it; one that differs in a bit has its own.

#include "tests/core/records/sample_bodies.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using namespace ebbline::records;

namespace {

bands::Band clinicBand(const std::string& version, double firstOfDay = 0)
{
    auto table = bands::seedBand().table();
    table[6][28] = {};
    table[6][28][0] = 1;
    table[6][28][10] = firstOfDay;
    return *bands::Band::create({version, 40, false, "2027-05-01", std::string(64, 'b')}, table);
}

Body courseWith(std::uint8_t number, const bands::Band& band)
{
    CourseOpened opened = test::openedCourse(number);
    opened.protocol.band = band;
    return opened;
}

const bands::Band& bandOf(const Result<Body>& body)
{
    REQUIRE(body);
    return std::get<CourseOpened>(*body).protocol.band;
}

}  // namespace

TEST_CASE("courses with one learned band share it when they are read together", "[records][bands]")
{
    KnownBands known;
    const auto first = decode(Kind::courseOpened, encode(courseWith(1, clinicBand("clinic-1"))), &known);
    const auto second = decode(Kind::courseOpened, encode(courseWith(2, clinicBand("clinic-1"))), &known);

    CHECK(&bandOf(first).table() == &bandOf(second).table());
    CHECK(bandOf(second) == clinicBand("clinic-1"));
}

TEST_CASE("another version, and a zero of another sign, is another band, and its bytes stay what they were", "[records][bands]")
{
    KnownBands known;
    const Body plain = courseWith(1, clinicBand("clinic-1", 0.0));
    const Body signedZero = courseWith(2, clinicBand("clinic-1", -0.0));
    const Body later = courseWith(3, clinicBand("clinic-2"));
    for (const Body* body : {&plain, &signedZero, &later, &plain}) {
        const auto read = decode(Kind::courseOpened, encode(*body), &known);
        REQUIRE(read);
        CHECK(encode(*read) == encode(*body));
    }
}

TEST_CASE("the oldest of the known bands goes first", "[records][bands]")
{
    KnownBands known;
    for (std::size_t i = 0; i <= KnownBands::most; ++i)
        known.add(clinicBand("clinic-" + std::to_string(i)));
    const auto find = [&](const std::string& version) {
        const bands::Band band = clinicBand(version);
        return known.find(band.provenance(), band.table(), band.movements());
    };
    CHECK(find("clinic-0") == nullptr);
    REQUIRE(find("clinic-1") != nullptr);
    CHECK(*find("clinic-1") == clinicBand("clinic-1"));
}
