// Openings: who saw which version of an entry, claimed for that version and for no other.

#include "core/journal/state.h"

#include "tests/core/records/sample_bodies.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <set>

using namespace ebbline;
using namespace ebbline::journal;
using namespace ebbline::records;

namespace {

const clock::Moment evening = test::momentAt("2027-03-02T21:00:00+01:00");

struct Writer {
    std::uint8_t device;
    std::uint64_t number = 0;

    Operation write(const Body& body, std::uint64_t time, std::optional<OperationId> corrects = {})
    {
        Operation operation;
        operation.id = {test::idOf<envelope::DeviceTag>(device), ++number};
        operation.stamp = clock::HybridTime{time << 16};
        operation.entered = evening;
        operation.kind = static_cast<std::uint16_t>(kindOf(body));
        operation.course = courseOf(body);
        operation.supersedes = corrects;
        operation.body = encode(body);
        return operation;
    }
};

EntryVersion versionOf(const Operation& operation) { return {operation.id.device, operation.id.number}; }

EntryRecorded entryOf(std::uint8_t number) { return {test::sampleEntry(number)}; }

const CourseState& courseIn(const State& state) { return state.courses.at(test::sampleCourse); }
const EntryHistory& entryIn(const State& state) { return courseIn(state).entries.at(test::sampleEntry().id); }

/// An entry, its correction, and who writes next.
struct Corrected {
    Writer phone{1}, desk{2};
    Operation first = phone.write(entryOf(9), 10);
    Operation correction = phone.write(entryOf(9), 20, first.id);

    Operation opens(const Operation& version, const char* who = "Dr. Ada Lund", std::uint64_t time = 30)
    {
        return desk.write(VersionsOpened{test::sampleCourse, {versionOf(version)}, who, evening}, time);
    }
};

}  // namespace

TEST_CASE("an entry that was opened and then corrected is unopened again, and its first version stays opened", "[journal][opening]")
{
    Corrected entry;

    const State state = fold(std::vector{entry.first, entry.opens(entry.first), entry.correction});

    CHECK(courseIn(state).opening(entryIn(state)) == nullptr);
    CHECK(courseIn(state).unopened() == std::vector{versionOf(entry.correction)});
    REQUIRE(courseIn(state).earlierOpening(entryIn(state)));
    CHECK(courseIn(state).earlierOpening(entryIn(state))->by == "Dr. Ada Lund");
}

TEST_CASE("who opened the correction is named for the correction", "[journal][opening]")
{
    Corrected entry;

    const State state = fold(std::vector{entry.first, entry.opens(entry.first), entry.correction,
                                         entry.opens(entry.correction, "Dr. Jonas Feld", 40)});

    REQUIRE(courseIn(state).opening(entryIn(state)));
    CHECK(courseIn(state).opening(entryIn(state))->by == "Dr. Jonas Feld");
    CHECK(courseIn(state).opening(entryIn(state), 0)->by == "Dr. Ada Lund");
    CHECK(courseIn(state).unopened().empty());
}

TEST_CASE("an opening that arrives before the version it names waits for it", "[journal][opening]")
{
    Corrected entry;
    const Operation opening = entry.opens(entry.correction);
    Journal phone;

    phone.add(opening);
    phone.add(entry.first);
    CHECK(courseIn(phone.state()).opening(entryIn(phone.state())) == nullptr);
    phone.add(entry.correction);
    CHECK(courseIn(phone.state()).opening(entryIn(phone.state())) != nullptr);
}

TEST_CASE("the first opening of a version counts", "[journal][opening]")
{
    Corrected entry;

    const State state = fold(std::vector{entry.first, entry.opens(entry.first, "Dr. Ada Lund", 40), entry.opens(entry.first, "Dr. Jonas Feld", 30)});

    CHECK(courseIn(state).opening(entryIn(state))->by == "Dr. Jonas Feld");
}

TEST_CASE("an opening of the old form speaks of what was written first and of no correction", "[journal][opening]")
{
    Corrected entry;
    const Operation old = entry.desk.write(EntriesOpened{test::sampleCourse, {test::sampleEntry().id}, "Dr. Ada Lund", evening}, 40);

    const State alone = fold(std::vector{entry.first, old});
    CHECK(courseIn(alone).opening(entryIn(alone))->by == "Dr. Ada Lund");

    const State corrected = fold(std::vector{entry.first, entry.correction, old});
    CHECK(courseIn(corrected).opening(entryIn(corrected)) == nullptr);
    CHECK(courseIn(corrected).earlierOpening(entryIn(corrected))->by == "Dr. Ada Lund");

    // A correction by a clock that goes behind stands before what it corrects, and is no first version for that.
    const Operation behind = entry.phone.write(entryOf(9), 5, entry.first.id);
    const State turned = fold(std::vector{behind, entry.first, old});
    CHECK(courseIn(turned).opening(entryIn(turned), 0) == nullptr);
    CHECK(courseIn(turned).opening(entryIn(turned), 1) != nullptr);

    // Nor is one whose original has not arrived.
    const State orphan = fold(std::vector{entry.correction, old});
    CHECK(courseIn(orphan).opening(entryIn(orphan)) == nullptr);
}

namespace {

/// Phones that write and correct, desks that open what they hold, and every operation on its way to everybody.
class Traffic {
public:
    static constexpr std::size_t phones = 2, desks = 3, devices = phones + desks;

    Traffic()
    {
        for (std::size_t i = 0; i < devices; ++i) {
            m_writers.push_back({static_cast<std::uint8_t>(i + 1)});
            // Clocks may be far apart: what was written later may stand earlier.
            m_skew.push_back(*rc::gen::inRange<std::uint64_t>(0, 60));
        }
    }

    void step()
    {
        ++m_time;
        const auto dice = *rc::gen::inRange(0, 10);
        if (dice < 2)
            writeAt(*rc::gen::inRange<std::size_t>(0, phones));
        else if (dice < 4)
            openAt(*rc::gen::inRange<std::size_t>(phones, devices));
        else if (!m_written.empty())
            deliver(*rc::gen::inRange<std::size_t>(0, m_written.size()), *rc::gen::inRange<std::size_t>(0, devices));
    }

    void openAt(std::size_t desk)
    {
        const auto& courses = m_journals[desk].state().courses;
        const auto course = courses.find(test::sampleCourse);
        if (course == courses.end() || course->second.entries.empty())
            return;
        const std::string who = "desk " + std::to_string(desk);
        std::optional<Body> body;
        if (desk == oldDesk) {
            std::vector<recovery::EntryId> entries;
            for (const auto& [id, history] : course->second.entries) {
                for (const auto& version : history.versions)
                    m_seen.insert({who, version.operation});
                if (!course->second.openings.contains(id))
                    entries.push_back(id);
            }
            if (!entries.empty())
                body = EntriesOpened{test::sampleCourse, entries, who, evening};
        } else {
            for (const auto& [id, history] : course->second.entries)
                m_seen.insert({who, history.versions.back().operation});
            if (auto versions = course->second.unopened(); !versions.empty())
                body = VersionsOpened{test::sampleCourse, std::move(versions), who, evening};
        }
        if (body)
            publish(desk, *body, {});
    }

    void deliverAll()
    {
        for (int round = 0; round < 2; ++round)
            for (std::size_t i = 0; i < m_written.size(); ++i)
                for (std::size_t to = 0; to < devices; ++to)
                    deliver(i, to);
    }

    /// Nobody is told of an opening of what the one who is named had not in sight.
    bool honest() const
    {
        for (const Journal& journal : m_journals)
            for (const auto& [id, course] : journal.state().courses)
                for (const auto& [entry, history] : course.entries)
                    for (std::size_t version = 0; version < history.versions.size(); ++version)
                        if (const Opening* opening = course.opening(history, version);
                            opening && !m_seen.contains({opening->by, history.versions[version].operation}))
                            return false;
        return true;
    }

    bool allOpened() const
    {
        return std::ranges::all_of(m_journals, [](const Journal& journal) {
            return std::ranges::all_of(journal.state().courses, [](const auto& each) { return each.second.unopened().empty(); });
        });
    }

    bool agree() const
    {
        return std::ranges::all_of(m_journals, [&](const Journal& journal) {
            return dump(journal.state()) == dump(m_journals.front().state()) && dump(journal.state()) == dump(fold(journal.operations()));
        });
    }

private:
    static constexpr std::size_t oldDesk = devices - 1;  ///< writes the old form

    void writeAt(std::size_t phone)
    {
        const auto number = *rc::gen::inRange<std::uint8_t>(1, 4);
        const auto& courses = m_journals[phone].state().courses;
        const auto course = courses.find(test::sampleCourse);
        std::optional<OperationId> corrects;
        if (course != courses.end())
            if (const auto known = course->second.entries.find(test::sampleEntry(number).id); known != course->second.entries.end())
                corrects = known->second.versions.back().operation;
        // An entry is begun at one phone; the other one corrects what it has heard of.
        if (corrects || number % phones == phone)
            publish(phone, entryOf(number), corrects);
    }

    void publish(std::size_t device, const Body& body, std::optional<OperationId> corrects)
    {
        m_written.push_back(m_writers[device].write(body, m_time + m_skew[device], corrects));
        m_journals[device].add(m_written.back());
    }

    void deliver(std::size_t which, std::size_t to)
    {
        const Operation& operation = m_written[which];
        // A program that names no versions is told of a correction after what it corrects: envelopes of one sender
        // come in their order. The others may be told in any.
        if (to == oldDesk && operation.supersedes && !m_journals[to].knows(*operation.supersedes))
            return;
        m_journals[to].add(operation);
    }

    std::vector<Writer> m_writers;
    std::vector<std::uint64_t> m_skew;
    std::array<Journal, devices> m_journals;
    std::vector<Operation> m_written;
    std::set<std::pair<std::string, OperationId>> m_seen;  ///< who had which version in sight
    std::uint64_t m_time = 0;
};

}  // namespace

TEST_CASE("no order of arrival lets a desk or a phone claim that a version was opened which nobody saw", "[journal][opening][property]")
{
    CHECK(rc::check("openings", [] {
        Traffic traffic;
        const int steps = *rc::gen::inRange(1, 80);
        for (int i = 0; i < steps; ++i) {
            traffic.step();
            RC_ASSERT(traffic.honest());
        }
        traffic.deliverAll();
        RC_ASSERT(traffic.honest());
        RC_ASSERT(traffic.agree());

        // Once everything is everywhere, one desk's opening covers all that is shown.
        traffic.openAt(Traffic::phones);
        traffic.deliverAll();
        RC_ASSERT(traffic.honest());
        RC_ASSERT(traffic.allOpened());
    }));
}
