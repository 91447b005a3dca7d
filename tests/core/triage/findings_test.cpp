// What an act on a finding covers: what its author had in sight, and nothing worse that came under the same subject.

#include "core/bytes/text.h"
#include "core/crypto/crypto.h"
#include "tests/core/bytes/decimal_comma.h"
#include "tests/core/triage/course_writer.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <map>
#include <set>

using namespace ebbline;
using namespace ebbline::test;
using records::Act;
using recovery::Side;
using recovery::Sign;
using recovery::Symptom;
using recovery::Urgency;
using triage::Finding;

namespace {

const auto later = hoursAfter(15 * 24);

/// One entry, what was acted on it, and its correction.
struct Corrected {
    Writer phone{1}, desk{2};
    std::vector<journal::Operation> operations{desk.write(openedCourse(), 1)};
    std::uint64_t time = 10;

    void tell(const recovery::Entry& entry)
    {
        std::optional<journal::OperationId> corrects;
        for (const auto& operation : operations)
            if (operation.kind == static_cast<std::uint16_t>(records::Kind::entryRecorded))
                corrects = operation.id;
        operations.push_back(phone.write(records::EntryRecorded{entry}, ++time, corrects));
    }
    void act(const std::string& finding, Act act) { operations.push_back(desk.write(actOn(finding, act, hoursAfter(40)), ++time)); }
    Finding only() const
    {
        std::vector<Finding> found = findingsIn(journal::fold(operations), hoursAfter(50));
        std::erase_if(found, [](const Finding& each) { return !each.entry; });
        REQUIRE(found.size() == 1);
        return found.front();
    }
};

recovery::Entry fever(double celsius)
{
    auto entry = entryAt(9, 30);
    entry.temperature = *recovery::Temperature::celsius(celsius);
    return entry;
}

recovery::Entry threadOut(recovery::Signs with = {})
{
    auto entry = entryAt(9, 30);
    entry.present = std::move(with);
    entry.present.insert(Sign::threadOut);
    return entry;
}

}  // namespace

TEST_CASE("a correction that makes a closed sign more urgent opens it again, touched by nobody", "[triage]")
{
    Corrected course;
    course.tell(threadOut());
    CHECK(course.only().urgency == Urgency::nextWorkingDay);
    course.act(course.only().key, Act::taken);
    course.act(course.only().key, Act::closed);
    CHECK_FALSE(course.only().open);

    course.tell(threadOut({Sign::moreTender}));

    CHECK(course.only().urgency == Urgency::callNow);
    CHECK(course.only().open);
    CHECK(course.only().acts.empty());
    // What was done about it before is told, and counts for nothing.
    REQUIRE(course.only().actsBefore.size() == 2);
    CHECK(course.only().actsBefore.back().act == Act::closed);
}

TEST_CASE("a fever that is corrected upwards opens again, and one that is corrected downwards does not", "[triage]")
{
    Corrected course;
    course.tell(fever(38.0));
    course.act(course.only().key, Act::closed);
    auto noted = fever(38.0);
    noted.note = "In the evening.";
    course.tell(noted);
    CHECK_FALSE(course.only().open);

    course.tell(fever(39.5));
    CHECK(course.only().open);
    course.act(course.only().key, Act::closed);
    CHECK_FALSE(course.only().open);

    course.tell(fever(38.2));
    CHECK_FALSE(course.only().open);
    CHECK(std::get<warnings::Finding>(course.only().what).reasons == std::vector<std::string>{"temperature 39.5 C"});
}

TEST_CASE("an act of an older program, which named the subject alone, covers what was raised first and no worse", "[triage]")
{
    Corrected course;
    course.tell(fever(38.0));
    course.act(course.only().subject, Act::closed);
    CHECK_FALSE(course.only().open);

    course.tell(fever(39.5));
    CHECK(course.only().open);
    course.act(course.only().subject, Act::closed);
    CHECK(course.only().open);
    course.act(course.only().key, Act::closed);
    CHECK_FALSE(course.only().open);
    course.act(course.only().key, Act::reopened);
    CHECK(course.only().open);
}

namespace {

/// Two entries a day of a face that settles, until its left side turns within one day, as chance has it.
std::vector<recovery::Entry> chancyCourse(unsigned seed)
{
    std::vector<recovery::Entry> entries;
    std::uint32_t state = seed * 2654435761U + 1;
    const auto drawn = [&](unsigned below) {
        state = state * 1664525U + 1013904223U;
        return static_cast<int>((state >> 16) % below);
    };
    const int turn = 3 + drawn(5);
    for (int day = 1; day <= 8; ++day) {
        for (const bool evening : {false, true}) {
            auto entry = entryAt(static_cast<std::uint8_t>(entries.size() + 1), 24 * day + (evening ? 10 : -1));
            const int worse = day < turn ? 0 : day > turn || evening ? 5 + drawn(5) : 2 + drawn(3);
            for (const Symptom symptom : {Symptom::swelling, Symptom::pain})
                for (const Side side : recovery::bothSides)
                    setScore(entry, symptom, side,
                             std::min(10, std::max(0, 4 - day) + drawn(2) + (side == Side::left ? worse : 0)));
            entries.push_back(std::move(entry));
        }
    }
    return entries;
}

}  // namespace

TEST_CASE("closing the milder of two findings of one day leaves the worse one open", "[triage]")
{
    int twice = 0;
    for (unsigned seed = 0; seed < 400; ++seed) {
        Writer phone{1}, desk{2};
        std::vector<journal::Operation> operations{desk.write(openedCourse(), 1)};
        std::uint64_t time = 10;
        for (const auto& entry : chancyCourse(seed))
            operations.push_back(phone.write(records::EntryRecorded{entry}, ++time));
        std::map<std::string, std::vector<Finding>> bySubject;
        for (const Finding& finding : findingsIn(journal::fold(operations), later))
            bySubject[finding.subject].push_back(finding);
        for (const auto& [subject, findings] : bySubject) {
            if (findings.size() < 2)
                continue;
            ++twice;
            const Finding& worse = findings.front();  // the newest
            const Finding& milder = findings.back();
            REQUIRE(worse.urgency < milder.urgency);
            for (const std::string& named : {milder.key, subject}) {
                auto closed = operations;
                Writer other{3};
                closed.push_back(other.write(actOn(named, Act::taken, milder.raisedAt), time + 1));
                closed.push_back(other.write(actOn(named, Act::closed, milder.raisedAt), time + 2));
                for (const Finding& finding : findingsIn(journal::fold(closed), later)) {
                    if (finding.subject != subject)
                        continue;
                    CHECK(finding.open == (finding.key != milder.key));
                    CHECK(finding.acts.empty() == (finding.key != milder.key));
                }
            }
        }
    }
    // The search has found what it is about.
    CHECK(twice > 0);
}

TEST_CASE("no key names two findings of a course", "[triage]")
{
    CHECK(rc::check([] {
        Writer phone{1}, desk{2};
        std::vector<journal::Operation> operations{desk.write(openedCourse(), 1)};
        std::uint64_t time = 10;
        for (const auto& entry : chancyCourse(*rc::gen::arbitrary<unsigned>()))
            operations.push_back(phone.write(records::EntryRecorded{entry}, ++time));
        std::set<std::string> keys;
        for (const Finding& finding : findingsIn(journal::fold(operations), later)) {
            RC_ASSERT(keys.insert(finding.key).second);
            RC_ASSERT(finding.key.size() <= 160U);
        }
    }));
}

namespace {

/// A phone that tells and corrects, desks that act on what they hold, and operations that arrive when they do.
class Traffic {
public:
    static constexpr std::size_t desks = 2, devices = desks + 1;

    Traffic()
    {
        for (std::size_t i = 0; i < devices; ++i) {
            m_writers.push_back({static_cast<std::uint8_t>(i + 1)});
            m_skew.push_back(*rc::gen::inRange<std::uint64_t>(0, 40));
        }
        publish(1, openedCourse(), {});
    }

    void step()
    {
        ++m_time;
        const auto dice = *rc::gen::inRange(0, 10);
        if (dice < 3)
            tell();
        else if (dice < 6)
            act(*rc::gen::inRange<std::size_t>(1, devices));
        else
            deliver(*rc::gen::inRange<std::size_t>(0, m_written.size()), *rc::gen::inRange<std::size_t>(0, devices));
    }

    /// Nothing is closed, taken or called but what somebody had in sight then, as urgent as it is.
    bool honest() const
    {
        return std::ranges::all_of(m_journals, [&](const journal::Journal& journal) {
            const auto found = findingsIn(journal.state(), later);
            return std::ranges::all_of(found, [&](const Finding& finding) {
                const bool seen = m_acted.contains(signatureOf(finding));
                return seen || (finding.open && finding.acts.empty());
            });
        });
    }

    bool anyOrderIsTheSame() const
    {
        auto operations = m_written;
        const auto wanted = findingsIn(journal::fold(operations), later);
        std::vector<journal::Operation> shuffled;
        while (!operations.empty()) {
            const auto at = *rc::gen::inRange<std::size_t>(0, operations.size());
            shuffled.push_back(operations[at]);
            operations.erase(operations.begin() + static_cast<std::ptrdiff_t>(at));
        }
        return same(wanted, findingsIn(journal::fold(shuffled), later));
    }

private:
    static std::string signatureOf(const Finding& finding)
    {
        std::string said;
        if (const auto* warning = std::get_if<warnings::Finding>(&finding.what))
            for (const std::string& reason : warning->reasons)
                said += reason + ";";
        else
            said = std::to_string(finding.raisedAt.at.time_since_epoch().count());
        return finding.subject + " " + std::to_string(static_cast<int>(finding.urgency)) + " " + said;
    }

    static bool same(const std::vector<Finding>& a, const std::vector<Finding>& b)
    {
        return std::ranges::equal(a, b, [](const Finding& x, const Finding& y) {
            return x.key == y.key && x.open == y.open && x.acts == y.acts && x.raisedAt == y.raisedAt;
        });
    }

    void tell()
    {
        const auto number = *rc::gen::inRange<std::uint8_t>(1, 8);
        auto entry = entryAt(number, 24.0 * ((number + 3) / 2) + (number % 2) * 10);
        for (const Side side : recovery::bothSides)
            setScore(entry, Symptom::swelling, side, *rc::gen::inRange(0, 11));
        if (*rc::gen::inRange(0, 3) == 0)
            entry.temperature = *recovery::Temperature::celsius(37.5 + *rc::gen::inRange(0, 5) / 2.0);
        if (*rc::gen::inRange(0, 3) == 0)
            entry.present.insert(Sign::threadOut);
        if (*rc::gen::inRange(0, 3) == 0)
            entry.present.insert(Sign::moreTender);
        const auto known = m_newest.find(number);
        publish(0, records::EntryRecorded{entry}, known == m_newest.end() ? std::nullopt : std::optional(known->second));
        m_newest[number] = m_written.back().id;
    }

    void act(std::size_t desk)
    {
        const auto found = findingsIn(m_journals[desk].state(), later);
        if (found.empty())
            return;
        const Finding& finding = found[*rc::gen::inRange<std::size_t>(0, found.size())];
        m_acted.insert(signatureOf(finding));
        publish(desk, actOn(finding.key, *rc::gen::element(Act::taken, Act::called, Act::closed), hoursAfter(24)), {});
    }

    void publish(std::size_t device, const records::Body& body, const std::optional<journal::OperationId>& corrects)
    {
        m_written.push_back(m_writers[device].write(body, m_time + m_skew[device], corrects));
        m_journals[device].add(m_written.back());
    }

    void deliver(std::size_t operation, std::size_t to) { m_journals[to].add(m_written[operation]); }

    std::uint64_t m_time = 100;
    std::vector<Writer> m_writers;
    std::vector<std::uint64_t> m_skew;
    std::vector<journal::Operation> m_written;
    std::map<std::uint8_t, journal::OperationId> m_newest;
    std::set<std::string> m_acted;
    std::array<journal::Journal, devices> m_journals;
};

}  // namespace

TEST_CASE("no finding is born closed or taken, whatever arrives when", "[triage]")
{
    CHECK(rc::check([] {
        Traffic traffic;
        const auto steps = *rc::gen::inRange(5, 60);
        for (int i = 0; i < steps; ++i)
            traffic.step();
        RC_ASSERT(traffic.honest());
        RC_ASSERT(traffic.anyOrderIsTheSame());
    }));
}

TEST_CASE("a finding of a fever has one key, whatever the system's locale, and an act under the key of a comma covers it", "[triage]")
{
    Corrected course;
    course.tell(fever(38.2));
    const Finding plain = course.only();
    const auto keyOver = [&](const std::string& said) {
        return plain.subject + "/" + std::string(recovery::word(plain.urgency)) + "/"
               + bytes::toHex(bytes::View(crypto::hash256(bytes::viewOf(said))).first(8));
    };
    REQUIRE(plain.key == keyOver("temperature 38.2 C\n"));

    SECTION("programs before wrote the decimal sign of the locale")
    {
        const auto* sign = GENERATE(",", "\u066B");
        course.act(keyOver(std::string("temperature 38") + sign + "2 C\n"), Act::closed);
        CHECK_FALSE(course.only().open);
        CHECK(course.only().acts.size() == 1);
        CHECK(course.only().key == plain.key);

        course.tell(fever(39.5));
        CHECK(course.only().open);
        CHECK(course.only().acts.empty());
        CHECK(course.only().actsBefore.size() == 1);
    }
    SECTION("a key over another value is another finding's")
    {
        CHECK_FALSE(triage::isKeyOf(keyOver("temperature 38,3 C\n"), plain));
        CHECK_FALSE(triage::isKeyOf("", plain));
        CHECK(triage::isKeyOf(plain.key, plain));
    }
    SECTION("under a decimal comma")
    {
        const test::DecimalComma comma;
        if (!comma.isThere())
            SKIP(test::DecimalComma::missing);
        CHECK(course.only().key == plain.key);
        CHECK(triage::explain(course.only()) == triage::explain(plain));
        course.act(plain.key, Act::closed);
        CHECK_FALSE(course.only().open);
    }
}
