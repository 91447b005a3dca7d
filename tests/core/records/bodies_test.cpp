// Bodies of operations as bytes: exact, bounded, and refused when they are not sound.

#include "tests/core/records/sample_bodies.h"

#include "core/bytes/text.h"
#include "core/crypto/crypto.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <rapidcheck.h>

using namespace ebbline;
using namespace ebbline::records;

TEST_CASE("every kind of body reads back as it was written", "[records]")
{
    const auto bodies = test::sampleBodies();
    REQUIRE(bodies.size() == std::variant_size_v<Body>);

    for (std::size_t i = 0; i < bodies.size(); ++i) {
        CAPTURE(i);
        CHECK(static_cast<std::size_t>(kindOf(bodies[i])) == i + 1);
        const auto back = decode(kindOf(bodies[i]), encode(bodies[i]));
        REQUIRE(back);
        CHECK(*back == bodies[i]);
        CHECK(encode(*back) == encode(bodies[i]));
    }
}

TEST_CASE("a body cut short anywhere, or lengthened, is refused", "[records][errors]")
{
    for (const Body& body : test::sampleBodies()) {
        const bytes::Bytes whole = encode(body);
        const std::size_t step = whole.size() > 4000 ? 97 : 1;
        for (std::size_t length = 0; length < whole.size(); length += step) {
            CAPTURE(static_cast<int>(kindOf(body)), length);
            REQUIRE_FALSE(decode(kindOf(body), bytes::View(whole).first(length)));
        }
        bytes::Bytes longer = whole;
        longer.push_back(0);
        CHECK_FALSE(decode(kindOf(body), longer));
    }
}

TEST_CASE("a length that claims gigabytes costs nothing", "[records][errors]")
{
    // The note's length of an entry, replaced by the largest number there is.
    bytes::Bytes body = encode(EntryRecorded{test::sampleEntry()});
    const std::size_t note = test::sampleEntry().note.size();
    for (std::size_t i = 0; i < 4; ++i)
        body[body.size() - note - 4 + i] = 0xff;

    CHECK(decode(Kind::entryRecorded, body).error().reason == Reason::malformed);
}

TEST_CASE("kinds and versions of a newer program are called so", "[records]")
{
    CHECK(decode(static_cast<Kind>(900), bytes::Bytes{1, 0, 5}).error().reason == Reason::unsupported);
    const int next = static_cast<int>(newestKind) + 1;
    CHECK(decode(static_cast<Kind>(next), bytes::Bytes{1, 0, 5}).error().reason == Reason::unsupported);
    bytes::Bytes newer = encode(EntryRecorded{test::sampleEntry()});
    newer[0] = 9;
    CHECK(decode(Kind::entryRecorded, newer).error().reason == Reason::unsupported);
}

TEST_CASE("a body with values out of their bounds is refused", "[records][errors]")
{
    auto entry = test::sampleEntry();
    entry.absent.insert(recovery::Sign::warmer);
    CHECK_FALSE(decode(Kind::entryRecorded, encode(EntryRecorded{entry})));

    auto treatment = test::sampleTreatment();
    treatment.placements[0].gauge = 99;
    CHECK_FALSE(decode(Kind::treatmentRecorded, encode(TreatmentRecorded{treatment})));

    CHECK_FALSE(decode(Kind::messageWritten,
                       encode(MessageWritten{test::sampleCourse, test::idOf<MessageTag>(4), std::string(3000, 'x'), "",
                                             test::sampleEntry().at})));
    CHECK_FALSE(decode(Kind::messageWritten,
                       encode(MessageWritten{test::sampleCourse, test::idOf<MessageTag>(4), "\xff\xfe", "",
                                             test::sampleEntry().at})));
}

TEST_CASE("a treatment says who placed the threads and what was redone, and only then is of the newer version", "[records][treatment]")
{
    auto treatment = test::sampleTreatment();
    const auto older = encode(TreatmentRecorded{treatment});
    CHECK(older[0] == 1);

    treatment.placedBy = "Dr. Ada Lund";
    treatment.placements[1].redone = recovery::Redone{recovery::Redoing::replaced, "it stood under the skin"};
    const auto newer = encode(TreatmentRecorded{treatment});
    CHECK(newer[0] == 2);
    const auto back = decode(Kind::treatmentRecorded, newer);
    REQUIRE(back);
    CHECK(std::get<TreatmentRecorded>(*back).treatment == treatment);
    CHECK(encode(*back) == newer);
    for (std::size_t length = 0; length < newer.size(); ++length) {
        CAPTURE(length);
        REQUIRE_FALSE(decode(Kind::treatmentRecorded, bytes::View(newer).first(length)));
    }

    // The place of the thread that was redone stands behind the length of the name, the name and a number of places.
    auto elsewhere = newer;
    const auto place = older.size() + 4 + treatment.placedBy.size() + 4;
    REQUIRE(elsewhere[place] == 1);
    elsewhere[place] = 2;
    CHECK(decode(Kind::treatmentRecorded, elsewhere).error().reason == Reason::malformed);

    treatment.placements[1].redone->reason.clear();
    CHECK_FALSE(decode(Kind::treatmentRecorded, encode(TreatmentRecorded{treatment})));
    CHECK(decodeDraft(encode(TreatmentRecorded{treatment})).value() == treatment);
}

namespace {

/// A treatment as programs wrote it before there was a fourth version; the second adds who placed the threads and one that was redone,
/// the third a binary64 of what was given otherwise.
constexpr auto treatmentOfBefore =
    "0707070707070707070707070707070703030303030303030303030303030303806a5100a40100003c0000000d0000004575726f70652f42"
    "65726c696e020000000103010000000000807240000000000040654000000000000070400000000000007040010104130000006400000007"
    "00000054482d34343137000a000000323032392d30362d33309a9999999999d93f0203010000000000005a40000000000040654000000000"
    "00006240000000000000704001010413000000640000000700000054482d34343137000a000000323032392d30362d33309a9999999999d9"
    "3f01000000000000f03f0000000000000000000000000000000000000000000000000000004f4001000000010000000201020f000000626f"
    "7468207369646573206576656e";
constexpr auto addedBySecond = "0c00000044722e20416461204c756e640100000001011700000069742073746f6f6420756e6465722074686520736b696e";

}  // namespace

TEST_CASE("a treatment that an older program wrote reads as it did, and goes on in the same bytes", "[records][treatment]")
{
    auto treatment = test::sampleTreatment();
    treatment.note = "both sides even";
    const auto readsAs = [&](const std::string& hex) {
        const bytes::Bytes raw = bytes::fromHex(hex).value();
        const auto body = decode(Kind::treatmentRecorded, raw);
        REQUIRE(body);
        CHECK(std::get<TreatmentRecorded>(*body).treatment == treatment);
        CHECK(encode(*body) == raw);
    };
    readsAs("0100" + std::string(treatmentOfBefore));
    treatment.placedBy = "Dr. Ada Lund";
    treatment.placements[1].redone = recovery::Redone{recovery::Redoing::replaced, "it stood under the skin"};
    readsAs("0200" + std::string(treatmentOfBefore) + addedBySecond);
    treatment.otherwiseMg = 37.5;
    readsAs("0300" + std::string(treatmentOfBefore) + addedBySecond + "0000000000c04240");
}

TEST_CASE("what was given otherwise is a newer version of a treatment, and none of it is another thing than not written down", "[records][treatment]")
{
    auto treatment = test::sampleTreatment();
    treatment.otherwiseMg = GENERATE(0.0, 37.5);
    if (GENERATE(false, true))
        treatment.placements[1].redone = recovery::Redone{recovery::Redoing::added, "one side hung lower"};
    const auto newer = encode(TreatmentRecorded{treatment});
    CHECK(newer[0] == 3);
    const auto back = decode(Kind::treatmentRecorded, newer);
    REQUIRE(back);
    CHECK(std::get<TreatmentRecorded>(*back).treatment == treatment);
    CHECK(encode(*back) == newer);
    for (std::size_t length = 0; length < newer.size(); ++length) {
        CAPTURE(length);
        REQUIRE_FALSE(decode(Kind::treatmentRecorded, bytes::View(newer).first(length)));
    }

    // Of an older program: nobody said how much.
    treatment.otherwiseMg.reset();
    const auto older = encode(TreatmentRecorded{treatment});
    CHECK(older[0] == (treatment.placements[1].redone ? 2 : 1));
    CHECK_FALSE(std::get<TreatmentRecorded>(decode(Kind::treatmentRecorded, older).value()).treatment.otherwiseMg);

    // Out of bounds: refused in a record, and read in a draft, which nobody has finished.
    treatment.otherwiseMg = 1001;
    CHECK(decode(Kind::treatmentRecorded, encode(TreatmentRecorded{treatment})).error().reason == Reason::outOfRange);
    CHECK(decodeDraft(encode(TreatmentRecorded{treatment})).value() == treatment);
}

TEST_CASE("needle or cannula and epinephrine of a thread are a newer version of a treatment, and what nobody said stays unsaid", "[records][treatment]")
{
    auto treatment = test::sampleTreatment();
    treatment.note = "both sides even";
    treatment.placedBy = "Dr. Ada Lund";
    treatment.placements[1].redone = recovery::Redone{recovery::Redoing::replaced, "it stood under the skin"};
    treatment.placements[0].instrument = recovery::Instrument::bluntCannula;
    treatment.placements[0].instrumentLengthMm = 90;
    treatment.placements[0].epinephrineAt = recovery::EpinephrineAt::nowhere;
    // Not written down what was given otherwise (1), of the first thread three of four things (0 and the value) and no product (1), of the second none,
    // no thread of a plan, and no correction (1).
    CHECK(encode(TreatmentRecorded{treatment})
          == bytes::fromHex("0400" + std::string(treatmentOfBefore) + addedBySecond + "01" "0002" "005a000000" "0001" "01" "01010101" "00000000" "01").value());

    treatment.anaesthetic.drug = recovery::Drug::lidocaineWithEpinephrine;
    treatment.anaesthetic.epinephrineOneIn = 200'000;
    treatment.otherwiseMg = GENERATE(std::optional<double>(), std::optional(0.0), std::optional(37.5));
    treatment.placements[0].epinephrineAt = recovery::EpinephrineAt::entryPoint;
    if (GENERATE(false, true)) {
        treatment.placements[0].lot = "TH-4417";
        treatment.placements[0].article = "09506000134352";
        treatment.planned = {recovery::asPlanned(treatment.placements[1]), recovery::asPlanned(treatment.placements[0])};
    }
    treatment.placements[1].epinephrineAt = GENERATE(std::optional<recovery::EpinephrineAt>(), std::optional(recovery::EpinephrineAt::both));
    const auto newer = encode(TreatmentRecorded{treatment});
    CHECK(newer[0] == 4);
    const auto back = decode(Kind::treatmentRecorded, newer);
    REQUIRE(back);
    CHECK(std::get<TreatmentRecorded>(*back).treatment == treatment);
    CHECK(encode(*back) == newer);
    for (std::size_t length = 0; length < newer.size(); ++length) {
        CAPTURE(length);
        REQUIRE_FALSE(decode(Kind::treatmentRecorded, bytes::View(newer).first(length)));
    }

    // One of the six is enough for the version, and none of them is too little for it.
    for (const int said : {0, 1, 2, 3, 4, 5, 6}) {
        auto one = test::sampleTreatment();
        recovery::Placement& thread = one.placements[1];
        if (said == 1)
            thread.instrument = recovery::Instrument::sharpNeedle;
        if (said == 2)
            thread.instrumentLengthMm = 60;
        if (said == 3)
            thread.epinephrineAt = recovery::EpinephrineAt::nowhere;
        if (said == 4)
            thread.article = "09506000134352";
        if (said == 5)
            one.planned = {recovery::asPlanned(one.placements[0])};
        if (said == 6)
            one.corrected = recovery::Correction{"the lot of the other tray", ""};
        const auto raw = encode(TreatmentRecorded{one});
        CHECK(raw[0] == (said == 0 ? 1 : 4));
        CHECK(std::get<TreatmentRecorded>(decode(Kind::treatmentRecorded, raw).value()).treatment == one);
    }
    const auto empty = bytes::fromHex("0400" + std::string(treatmentOfBefore) + addedBySecond + "01" "01010101" "01010101" "00000000" "01").value();
    CHECK(decode(Kind::treatmentRecorded, empty).error().reason == Reason::malformed);

    // Out of bounds: refused in a record, and read in a draft, which nobody has finished.
    treatment.placements[0].instrumentLengthMm = 9;
    CHECK(decode(Kind::treatmentRecorded, encode(TreatmentRecorded{treatment})).error().reason == Reason::outOfRange);
    CHECK(decodeDraft(encode(TreatmentRecorded{treatment})).value() == treatment);
}

TEST_CASE("a record that stands in place of another says why and by whom at its end, and not without a reason", "[records][treatment]")
{
    auto treatment = test::sampleTreatment();
    treatment.note = "both sides even";
    treatment.placedBy = "Dr. Ada Lund";
    treatment.placements[1].redone = recovery::Redone{recovery::Redoing::replaced, "it stood under the skin"};
    treatment.corrected = recovery::Correction{"lot", "Ada", 2};
    const auto raw = encode(TreatmentRecorded{treatment});
    // Nothing else is new; then 0, the reason and the name with their lengths, and how many records were in sight.
    CHECK(raw == bytes::fromHex("0400" + std::string(treatmentOfBefore) + addedBySecond + "01" "01010101" "01010101" "00000000"
                                "00" "03000000" "6c6f74" "03000000" "416461" "02000000").value());
    CHECK(std::get<TreatmentRecorded>(decode(Kind::treatmentRecorded, raw).value()).treatment == treatment);
    for (std::size_t length = 0; length < raw.size(); ++length) {
        CAPTURE(length);
        REQUIRE_FALSE(decode(Kind::treatmentRecorded, bytes::View(raw).first(length)));
    }

    const auto refused = [&](std::string reason, std::string by, std::uint32_t inSight = 1) {
        treatment.corrected = recovery::Correction{std::move(reason), std::move(by), inSight};
        const auto bytes = encode(TreatmentRecorded{treatment});
        CHECK(decodeDraft(bytes).value() == treatment);
        return decode(Kind::treatmentRecorded, bytes).error().reason == Reason::malformed;
    };
    CHECK(refused("", "Ada"));
    CHECK(refused(std::string(401, 'x'), "Ada"));
    CHECK(refused("lot", std::string(201, 'x')));
    CHECK(refused("\xff", "Ada"));
    CHECK(refused("lot", "Ada", 0));
}

TEST_CASE("a protocol reads back exactly, its band to the last bit", "[records]")
{
    const auto protocol = triggers::defaultProtocol();

    const auto back = decodeProtocol(encodeProtocol(protocol));

    REQUIRE(back);
    CHECK(*back == protocol);
    CHECK(encodeProtocol(protocol).size() < maximumBody);
}

namespace {

triggers::Protocol ofFirstForm()
{
    triggers::Protocol protocol{.name = "Neck", .version = 3, .carePlan = {}, .thresholds = {}};
    triggers::Thresholds& limits = protocol.thresholds;
    limits.level = 4.5;
    limits.levelOverall = 1.6;
    limits.rebound = 6.25;
    limits.sideDivergence = 3.3;
    limits.slowRecovery = 2.65;
    limits.slowOverall = 0.83;
    limits.calibratedOn = "first";
    protocol.former = triggers::FormerThresholds{.sideRebound = 2.25, .filling = 1.5};
    return protocol;
}

}  // namespace

TEST_CASE("a protocol of the first form keeps the very bytes that were signed", "[records][protocol]")
{
    REQUIRE(crypto::initialise());
    // Recorded with the program that wrote the first form: 18242 bytes and their BLAKE2b-256.
    const bytes::Bytes first = encodeProtocol(ofFirstForm());
    REQUIRE(first.size() == 18242);
    CHECK(bytes::toHex(crypto::hash256(first)) == "c3442f1ed656cf6332d792b8dddc2853a8fab28577f187fac0684c9e60021fdb");

    const auto back = decodeProtocol(first);

    REQUIRE(back);
    CHECK(*back == ofFirstForm());
    CHECK(encodeProtocol(*back) == first);
    CHECK(back->thresholds.oneSideFills == triggers::Thresholds{}.oneSideFills);
    CHECK(back->band.movements().sums == bands::assumedMovements().sums);
}

TEST_CASE("what carries a protocol goes by the form of the protocol", "[records][protocol]")
{
    for (const Body& body : test::sampleBodies()) {
        const bool carries = kindOf(body) == Kind::courseOpened || kindOf(body) == Kind::protocolSigned
                             || kindOf(body) == Kind::bandLearned;
        CHECK(encode(body)[0] == (carries ? 2 : 1));
    }
    const Body old = ProtocolSigned{ofFirstForm(), bytes::Bytes(64, 6), test::sampleEntry().at};
    const bytes::Bytes bytes = encode(old);
    CHECK(bytes[0] == 1);
    const auto back = decode(Kind::protocolSigned, bytes);
    REQUIRE(back);
    CHECK(*back == old);
    CHECK(encode(*back) == bytes);
}

TEST_CASE("damaged bytes are refused or read as a sound body, and never more", "[records][property]")
{
    CHECK(rc::check("mutations", [] {
        const auto bodies = test::sampleBodies();
        const Body& body = *rc::gen::elementOf(bodies);
        bytes::Bytes damaged = encode(body);
        const int changes = *rc::gen::inRange(1, 6);
        for (int i = 0; i < changes; ++i)
            damaged[*rc::gen::inRange<std::size_t>(0, damaged.size())] = *rc::gen::arbitrary<std::uint8_t>();
        const auto back = decode(kindOf(body), damaged);
        if (back)
            RC_ASSERT(check(*back).has_value());
    }));
}
