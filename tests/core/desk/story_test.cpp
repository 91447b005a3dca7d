// One whole course, from the treatment to the follow-up, through real vaults and the hub's rules.

#include "core/sync/messages.h"
#include "core/sync/packed.h"
#include "tests/core/desk/clinic_world.h"

#include <algorithm>
#include <fstream>
#include <set>

using namespace ebbline;
using namespace std::chrono_literals;
using patient::EntryState;

TEST_CASE("a course arrives on the phone with its plan and whom to call", "[story]")
{
    test::ClinicWorld world;
    const auto course = world.treat();

    patient::Diary& phone = world.join(course);

    CHECK(phone.course().course == course);
    CHECK(phone.course().contacts.clinicPhone == "+00 555 0110");
    CHECK(phone.course().practitioner == "Dr. Ada Lund");
    CHECK(phone.course().protocol == triggers::defaultProtocol());
    const auto today = phone.today();
    CHECK(today.day == 0);
    REQUIRE_FALSE(today.next.empty());
    CHECK(std::any_of(today.next.begin(), today.next.end(), [](const auto& view) {
        return view.reminder.kind == aftercare::InstructionKind::dressingsOff;
    }));
    // Readable while locked, too.
    CHECK(patient::Diary::openInfo(world.folder.path() / "phone0")->contacts.onCallPhone == "+00 555 0119");
}

TEST_CASE("an entry is judged at once, offline, and its state is only ever what is proved", "[story]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course, true);
    world.clock.advance(30h);
    world.courier.offline = true;
    const int requests = world.courier.requests;

    auto entry = world.entryOf(phone, 4, 3);
    entry.temperature = *recovery::Temperature::celsius(38.2);
    entry.note = "I feel hot.";
    const auto saved = phone.record(entry);

    REQUIRE(saved);
    REQUIRE(saved->findings.size() == 1);
    CHECK(saved->findings.front().urgency == recovery::Urgency::callNow);
    CHECK(world.courier.requests == requests);
    CHECK(phone.today().standing.size() == 1);
    CHECK(phone.history().front().state.place == EntryState::Place::savedHere);
    CHECK(phone.today().waiting == 1);

    // Without a network nothing is claimed.
    CHECK(world.syncPhone(phone).problem->reason == Reason::unreachable);
    CHECK(phone.history().front().state.place == EntryState::Place::savedHere);

    // With the hub only, nothing is claimed either.
    world.courier.offline = false;
    CHECK(world.syncPhone(phone).envelopesSent == 2);
    std::multiset<envelope::Kind> sent;
    const auto outgoing = phone.vault().outgoing(phone.vault().links()->front().mailbox);
    REQUIRE(outgoing);
    for (const vault::Outgoing& each : *outgoing)
        sent.insert(envelope::peek(each.envelope)->kind);
    // The entry; and, once more, what the phone acknowledged on joining: the desk has not been heard since.
    CHECK(sent == std::multiset{envelope::Kind::operations, envelope::Kind::acknowledgement});
    CHECK(phone.history().front().state.place == EntryState::Place::savedHere);

    // The desk's own acknowledgement is what counts.
    world.clock.advance(5min);
    CHECK(world.syncDesk().operationsReceived == 2);
    const auto acknowledgedAt = world.clock.now();
    world.clock.advance(5min);
    world.syncPhone(phone);
    CHECK(phone.history().front().state.place == EntryState::Place::withClinic);
    CHECK(phone.history().front().state.since == acknowledgedAt);

    // At the desk it stands first in the queue, with its reason.
    const auto queue = world.desk.queue();
    REQUIRE(queue.size() == 1);
    CHECK(queue.front().course == course);
    CHECK(queue.front().urgency == recovery::Urgency::callNow);
    CHECK(triage::explain(queue.front().findings.front()).find("temperature 38.2 C") != std::string::npos);

    REQUIRE(world.desk.openEntries(course));
    world.syncDesk();
    world.syncPhone(phone);
    const auto state = phone.history().front().state;
    CHECK(state.place == EntryState::Place::opened);
    CHECK(state.openedBy == "Dr. Ada Lund");

    // A good entry afterwards takes the warning back on neither side.
    world.clock.advance(12h);
    REQUIRE(phone.record(world.entryOf(phone, 1, 1)));
    CHECK(phone.today().standing.size() == 1);
    REQUIRE(phone.confirmWarning(saved->findings.front()));
    CHECK(phone.today().standing.empty());
    world.syncPhone(phone);
    world.syncDesk();
    CHECK(world.desk.queue().size() == 1);
}

TEST_CASE("only an act with an outcome takes a finding out of the queue", "[story]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    world.tellOfFluid(phone);
    REQUIRE(world.desk.queue().size() == 1);
    const std::string key = world.desk.queue().front().findings.front().key;

    CHECK_FALSE(world.desk.act(course, "w/none", records::Act::seen));
    CHECK_FALSE(world.desk.act(course, key, records::Act::closed));
    REQUIRE(world.desk.act(course, key, records::Act::taken));
    CHECK(world.desk.queue().front().takenBy == "Dr. Ada Lund");
    REQUIRE(world.desk.act(course, key, records::Act::called));
    CHECK(world.desk.queue().size() == 1);
    REQUIRE(world.desk.act(course, key, records::Act::closed, records::Outcome::treatedInClinic, "Rinsed, antibiotic."));
    CHECK(world.desk.queue().empty());
    REQUIRE(world.desk.act(course, key, records::Act::reopened));
    CHECK(world.desk.queue().size() == 1);
}

TEST_CASE("a corrected entry keeps its history and what it raised", "[story]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    world.clock.advance(30h);
    auto entry = world.entryOf(phone, 3, 3);
    entry.present = {recovery::Sign::thickFluid};
    const auto saved = phone.record(entry);
    REQUIRE(saved);

    auto corrected = entry;
    corrected.present.clear();
    REQUIRE(phone.amend(saved->entry, corrected));

    const auto history = phone.history();
    REQUIRE(history.size() == 1);
    CHECK(history.front().history.versions.size() == 2);
    CHECK(history.front().history.amended());
    CHECK(phone.today().standing.size() == 1);
    world.syncPhone(phone);
    world.syncDesk();
    CHECK(world.desk.queue().size() == 1);
    CHECK(journal::dump(world.desk.vault().state()).find("entry") != std::string::npos);
}

TEST_CASE("a draft survives everything until it is recorded", "[story]")
{
    test::ClinicWorld world;
    patient::Diary& phone = world.join(world.treat());
    auto entry = world.entryOf(phone, 7, 2);
    const patient::Draft typed{entry, "38,", 3};
    REQUIRE(phone.keepDraft(typed));

    // The program ends here and starts again.
    world.phones.clear();
    auto again = patient::Diary::unlock(world.folder.path() / "phone0", test::passphrase, world.clock, world.zone);
    REQUIRE(again);
    REQUIRE(again->draft());
    CHECK(*again->draft() == typed);
    REQUIRE(again->record(again->draft()->entry));
    CHECK_FALSE(again->draft());

    // A correction, while the next entry is being typed: only what was recorded is let go.
    const patient::Draft next{again->blankEntry(), "37", 1};
    REQUIRE(again->keepDraft(next));
    patient::Draft corrected{again->history().front().history.current(), {}, 3};
    corrected.entry.note = "It was the right side.";
    REQUIRE(again->keepCorrection(corrected));
    CHECK(*again->correctionDraft() == corrected);
    REQUIRE(again->amend(corrected.entry.id, corrected.entry));
    CHECK_FALSE(again->correctionDraft());
    CHECK(*again->draft() == next);
}

TEST_CASE("a reminder that was answered, postponed or made moot rings no more", "[story]")
{
    test::ClinicWorld world;
    patient::Diary& phone = world.join(world.treat());
    const auto find = [&](const std::vector<patient::ReminderView>& views, aftercare::InstructionKind kind) {
        return std::find_if(views.begin(), views.end(), [&](const auto& view) { return view.reminder.kind == kind; });
    };
    world.clock.set(test::momentAt("2027-03-01T19:30:00+01:00").at);
    auto today = phone.today();
    const auto dressings = find(today.dueNow, aftercare::InstructionKind::dressingsOff);
    REQUIRE(dressings != today.dueNow.end());
    CHECK(dressings->overdue);
    const std::string key = dressings->reminder.key;

    CHECK_FALSE(phone.answerReminder("no-such/0/0", records::ReminderAnswer::done));
    CHECK_FALSE(phone.answerReminder(key, records::ReminderAnswer::later));
    REQUIRE(phone.answerReminder(key, records::ReminderAnswer::later, world.clock.now() + 1h));
    today = phone.today();
    CHECK(find(today.dueNow, aftercare::InstructionKind::dressingsOff) == today.dueNow.end());
    world.clock.advance(61min);
    today = phone.today();
    CHECK(find(today.dueNow, aftercare::InstructionKind::dressingsOff) != today.dueNow.end());
    REQUIRE(phone.answerReminder(key, records::ReminderAnswer::done));
    today = phone.today();
    CHECK(find(today.dueNow, aftercare::InstructionKind::dressingsOff) == today.dueNow.end());

    // The evening entry is written: its reminder has nothing left to say.
    CHECK(find(today.dueNow, aftercare::InstructionKind::diaryEntry) != today.dueNow.end());
    REQUIRE(phone.record(world.entryOf(phone, 3, 3)));
    today = phone.today();
    CHECK(find(today.dueNow, aftercare::InstructionKind::diaryEntry) == today.dueNow.end());
    const auto upcoming = phone.upcoming(48);
    REQUIRE((upcoming.size() > 30 && upcoming.size() <= 48));
    CHECK(std::is_sorted(upcoming.begin(), upcoming.end(), [](const auto& a, const auto& b) { return a.due < b.due; }));
    CHECK(upcoming.front().due > world.clock.now());
    CHECK(phone.upcoming(3).size() == 3);
}

TEST_CASE("messages go both ways and being read is said by the reader", "[story]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);

    REQUIRE(world.desk.writeMessage(course, "How is the left side today?"));
    world.syncDesk();
    world.syncPhone(phone);
    CHECK(phone.today().unread == 1);
    REQUIRE(phone.readMessages());
    CHECK(phone.today().unread == 0);
    REQUIRE(phone.writeMessage("Better, thank you."));
    world.syncPhone(phone);
    world.syncDesk();

    const auto view = world.desk.course(course);
    REQUIRE(view);
    CHECK(view->state->messages.size() == 2);
    CHECK(view->state->reads.size() == 1);
    CHECK(view->summary.unread == 1);
    REQUIRE(world.desk.openEntries(course));
    CHECK(world.desk.course(course)->summary.unread == 0);
}

TEST_CASE("a silent patient stands apart in the queue, and the follow-up ends the course", "[story]")
{
    test::ClinicWorld world;
    const auto course = world.treat("Rosa Quint");
    patient::Diary& phone = world.join(course);
    REQUIRE(phone.record(world.entryOf(phone, 3, 3)));
    world.syncPhone(phone);
    world.syncDesk();
    CHECK(world.desk.queue().empty());

    world.clock.advance(73h);
    const auto queue = world.desk.queue();
    REQUIRE(queue.size() == 1);
    CHECK(queue.front().silent);

    world.clock.advance(24h * 18);
    records::FollowUpRecorded followUp{course, records::GlobalChange::muchBetter, 4, {}, true, "", "in a year", "", {}};
    REQUIRE(world.desk.recordFollowUp(followUp));
    CHECK(world.desk.queue().empty());
    CHECK(world.desk.course(course)->summary.closed);
    CHECK(world.desk.course(course)->state->followUp->by == "Dr. Ada Lund");
}

TEST_CASE("nothing that a person wrote can be read at the hub", "[story]")
{
    test::ClinicWorld world;
    const auto course = world.treat("Odile Brandt");
    patient::Diary& phone = world.join(course);
    auto entry = world.entryOf(phone, 6, 2);
    entry.note = "canary-note-of-the-patient";
    REQUIRE(phone.record(entry));
    REQUIRE(world.desk.writeMessage(course, "canary-message-of-the-clinic"));
    world.syncPhone(phone);
    world.syncDesk();
    world.syncPhone(phone);

    // As it was carried, and what would stand packed within: a batch is packed before it is sealed.
    const auto isReadable = [](bytes::View carried, std::string_view canary) {
        const auto holds = [&](bytes::View where) { return std::ranges::search(where, canary, [](std::uint8_t a, char b) { return a == static_cast<std::uint8_t>(b); }).begin() != where.end(); };
        return holds(carried) || std::ranges::any_of(sync::unpackedWithin(carried), holds);
    };
    REQUIRE(world.courier.received.size() > 5000);
    for (const char* canary : {"canary-note", "canary-message", "Odile", "Brandt", "swelling", "Mole", "555 0110"}) {
        CAPTURE(canary);
        CHECK_FALSE(isReadable(world.courier.received, canary));
    }
    // The same search finds them where they may be: it is not looking past them, packed or not.
    const auto operations = phone.vault().operations();
    CHECK(std::any_of(operations.begin(), operations.end(), [&](const auto& operation) { return isReadable(operation.body, "canary-note"); }));
    bytes::Bytes unsealed = world.courier.received;
    const bytes::Bytes packed = sync::packOperations(operations);
    unsealed.insert(unsealed.begin() + 100, packed.begin(), packed.end());
    CHECK(isReadable(unsealed, "canary-note"));
}

TEST_CASE("both ends show the same course", "[story]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    for (int day = 0; day < 5; ++day) {
        world.clock.advance(24h);
        REQUIRE(phone.record(world.entryOf(phone, 5 - day, 4 - day > 0 ? 4 - day : 0)));
        if (day % 2 == 1)
            world.syncPhone(phone);
        world.syncDesk();
        REQUIRE(world.desk.openEntries(course));
    }
    world.syncPhone(phone);
    world.syncDesk();
    world.syncPhone(phone);

    const recovery::Stream left{recovery::Symptom::swelling, recovery::Side::left};
    const auto here = phone.curve(left);
    const auto there = world.desk.curve(course, left);
    REQUIRE(here.points.size() == 5);
    CHECK(there.points.size() == 5);
    CHECK(here.points.back().points == there.points.back().points);
    CHECK(phone.vault().verify());
    CHECK(world.desk.vault().verify());
}

TEST_CASE("the files of the keys hold nothing any more before they go", "[diary]")
{
    test::ClinicWorld world;
    (void)world.newPhone();
    const auto folder = world.folder.path() / "phone0";
    // Names of our own for the same files: what they hold stays to be seen.
    const std::array<const char*, 2> names{"vault.keys", "vault.keys.previous"};
    for (const char* name : names)
        std::filesystem::create_hard_link(folder / name, world.folder.path() / name);
    world.phones.clear();
    REQUIRE(patient::Diary::erase(folder));
    for (const char* name : names) {
        CAPTURE(name);
        CHECK_FALSE(std::filesystem::exists(folder / name));
        std::ifstream input(world.folder.path() / name, std::ios::binary);
        const std::string left{std::istreambuf_iterator<char>(input), {}};
        CHECK(left.size() >= 400);
        CHECK(left.find_first_not_of('\0') == std::string::npos);
    }
}
