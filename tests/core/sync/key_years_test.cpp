// Years of replaced keys in random order: phones with wrong clocks that are away for months, a desk that closes, lines that
// break in the middle of a run. In the end nothing is lost, and at no moment did anything pass for delivered that was not.

#include "core/sync/key_change.h"
#include "tests/core/desk/clinic_world.h"
#include "tests/simulation/timeline.h"

#include <iostream>
#include <random>

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

constexpr auto day = 24h;

struct Counts {
    std::size_t entries = 0, messages = 0, epochs = 0, destroyed = 0, ownKeys = 0, asked = 0, late = 0, broken = 0, lost = 0;
};

struct Phone {
    std::unique_ptr<simulation::SkewedClock> clock;
    patient::Diary* diary = nullptr;
    recovery::CourseId course;
    clock::Instant awayUntil{};
    std::set<recovery::EntryId> kept;
};

class Years {
public:
    explicit Years(std::uint64_t seed, Counts& counts) : m_random(seed), m_counts(counts)
    {
        for (int i = 0; i < 2; ++i)
            join("Patient " + std::to_string(i));
        m_world.courier.swallow = [this](const mailbox::Request& request) { return fate(request); };
    }

    void live(std::chrono::hours time)
    {
        for (const clock::Instant end = m_world.clock.now() + time; m_world.clock.now() < end;) {
            m_world.clock.advance(std::chrono::hours(1 + m_random() % 120));
            for (Phone& phone : m_phones)
                live(phone);
            if (chance(200))
                m_closedUntil = m_world.clock.now() + day * (40 + m_random() % 160);
            if (m_world.clock.now() >= m_closedUntil) {
                if (chance(4))
                    message();
                breakLine();
                m_world.syncDesk();
                mend();
            }
            // A hub that never forgot would be full of what was acknowledged long ago.
            REQUIRE(m_world.service.tidy(m_world.clock.now()));
            checkClaims();
        }
    }

    void heal()
    {
        m_world.courier.swallow = {};
        for (Phone& phone : m_phones)
            phone.clock->set(0h);
        for (int round = 0; round < 16; ++round) {
            for (Phone& phone : m_phones)
                m_world.syncPhone(*phone.diary);
            m_world.syncDesk();
            m_world.clock.advance(7h);
        }
        // The last sync may have begun an epoch.
        for (int round = 0; round < 3; ++round) {
            m_world.syncDesk();
            for (Phone& phone : m_phones)
                m_world.syncPhone(*phone.diary);
        }
    }

    void checkEnd()
    {
        CHECK(m_world.desk.vault().verify());
        for (Phone& phone : m_phones) {
            CHECK(phone.diary->vault().verify());
            const auto view = m_world.desk.course(phone.course);
            REQUIRE(view);
            for (const recovery::EntryId& id : phone.kept)
                CHECK(view->state->entries.contains(id));
            for (const patient::EntryView& entry : phone.diary->history())
                CHECK(entry.state.place == patient::EntryState::Place::withClinic);
            CHECK(phone.diary->messages().size() == view->state->messages.size());
            CHECK(phone.diary->link()->epoch == m_world.desk.vault().epochNumber());
            const auto here = phone.diary->vault().standing(phone.diary->link()->mailbox);
            const auto there = m_world.desk.vault().standing(phone.diary->link()->mailbox);
            CHECK_FALSE((here->gap || here->fork || here->rolledBack || there->gap || there->fork || there->rolledBack));
            m_counts.asked += phone.diary->vault().keptUnder("asked/")->size();
            m_counts.ownKeys += phone.diary->vault().epochNumber() - 1;
            m_counts.destroyed += phone.diary->vault().keptUnder("key-gone/")->size();
        }
        m_counts.epochs += m_world.desk.vault().epochNumber() - 1;
        m_counts.asked += m_world.desk.vault().keptUnder("asked/")->size();
        m_counts.destroyed += m_world.desk.vault().keptUnder("key-gone/")->size();
        // A key whose time is over is nowhere any more.
        for (std::uint32_t number = 1; number < m_world.desk.vault().epochNumber(); ++number)
            CHECK((m_world.desk.vault().epochKey(number) != nullptr) != m_world.desk.vault().isDestroyed(number));
    }

private:
    bool chance(unsigned oneIn) { return m_random() % oneIn == 0; }

    void join(const std::string& name)
    {
        const auto course = m_world.treat(name.c_str());
        auto clock = std::make_unique<simulation::SkewedClock>(m_world.clock);
        auto diary = patient::Diary::create(m_world.folder.path() / ("phone" + std::to_string(m_phones.size())), test::passphrase, test::cheap,
                                            *clock, m_world.zone);
        REQUIRE(diary);
        m_world.phones.push_back(std::make_unique<patient::Diary>(std::move(*diary)));
        patient::Diary& phone = *m_world.phones.back();
        desk::Inviting inviting(m_world.desk, m_world.clock, course, triggers::defaultProtocol(), m_world.inDays(21));
        inviting.start(m_world.courier, [] {});
        patient::Joining joining(phone, *clock);
        REQUIRE(joining.start(inviting.qrText()));
        for (int i = 0; i < 4; ++i) {
            joining.poll(m_world.courier, [] {});
            inviting.poll(m_world.courier, [] {});
        }
        inviting.confirm(m_world.courier, [] {});
        joining.poll(m_world.courier, [] {});
        REQUIRE(joining.step() == patient::Joining::Step::linked);
        m_world.syncDesk();
        m_world.syncPhone(phone);
        REQUIRE(phone.joined());
        m_phones.push_back({std::move(clock), &phone, course, {}, {}});
    }

    void live(Phone& phone)
    {
        const auto now = m_world.clock.now();
        if (now < phone.awayUntil)
            return;
        if (chance(10))
            phone.clock->set(std::chrono::hours(static_cast<int>(m_random() % 97) - 48));
        if (chance(3)) {
            auto entry = m_world.entryOf(*phone.diary, static_cast<int>(m_random() % 9), static_cast<int>(m_random() % 9));
            if (const auto saved = phone.diary->record(entry)) {
                phone.kept.insert(saved->entry);
                ++m_counts.entries;
            }
        }
        breakLine();
        m_world.syncPhone(*phone.diary);
        mend();
        if (chance(25)) {
            // Something was sealed and went nowhere; then the phone lies in a drawer.
            auto entry = m_world.entryOf(*phone.diary, 1, 1);
            if (const auto saved = phone.diary->record(entry)) {
                phone.kept.insert(saved->entry);
                ++m_counts.entries;
            }
            m_world.courier.offline = true;
            m_world.syncPhone(*phone.diary);
            m_world.courier.offline = false;
            phone.awayUntil = now + day * (5 + m_random() % 200);
            m_counts.late += phone.awayUntil - now > sync::oldKeyIsKept ? 1 : 0;
        }
    }

    void message()
    {
        if (m_world.desk.writeMessage(m_phones[m_random() % m_phones.size()].course, "message " + std::to_string(m_random() % 1000)))
            ++m_counts.messages;
    }

    /// The line breaks after some requests, or the hub says of one that it holds it, and does not.
    void breakLine()
    {
        m_left = chance(5) ? static_cast<int>(m_random() % 5) : -1;
        m_loses = chance(12);
    }
    void mend()
    {
        m_left = -1;
        m_loses = false;
        m_world.courier.offline = false;
    }
    bool fate(const mailbox::Request& request)
    {
        if (m_left == 0) {
            m_world.courier.offline = true;
            ++m_counts.broken;
        }
        m_left = std::max(-1, m_left - 1);
        const bool lost = m_loses && request.method == "PUT" && chance(2);
        m_counts.lost += lost ? 1 : 0;
        return lost;
    }

    void checkClaims()
    {
        for (Phone& phone : m_phones) {
            const auto view = m_world.desk.course(phone.course);
            REQUIRE(view);
            for (const patient::EntryView& entry : phone.diary->history())
                if (entry.state.place != patient::EntryState::Place::savedHere && !view->state->entries.contains(entry.history.current().id))
                    FAIL_CHECK("an entry passes for delivered that the desk does not hold");
        }
    }

    std::mt19937_64 m_random;
    Counts& m_counts;
    test::ClinicWorld m_world;
    std::vector<Phone> m_phones;
    clock::Instant m_closedUntil{};
    int m_left = -1;
    bool m_loses = false;
};

}  // namespace

TEST_CASE("through years of replaced keys, wrong clocks and long absences nothing is lost and nothing passes for delivered", "[sync][keys]")
{
    Counts counts;
    constexpr std::uint64_t schedules = 6;
    for (std::uint64_t seed = 1; seed <= schedules; ++seed) {
        CAPTURE(seed);
        Years years(seed, counts);
        years.live(day * 500);
        years.heal();
        years.checkEnd();
    }
    std::cout << schedules << " schedules of 500 days: entries " << counts.entries << ", messages " << counts.messages << ", epochs " << counts.epochs
              << ", phones' own keys " << counts.ownKeys << ", destroyed " << counts.destroyed << ", asked to seal anew " << counts.asked
              << ", absences past the grace " << counts.late << ", lines broken " << counts.broken << ", envelopes lost by the hub " << counts.lost << '\n';
    CHECK(counts.entries > 100);
    CHECK(counts.messages > 20);
    CHECK(counts.epochs > 50);
    CHECK(counts.ownKeys > 50);
    CHECK(counts.destroyed > 50);
    CHECK(counts.asked > 0);
    CHECK(counts.late > 0);
    CHECK(counts.broken > 20);
    CHECK(counts.lost > 5);
}
