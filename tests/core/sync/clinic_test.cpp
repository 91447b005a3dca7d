// A clinic with two desks, fresh epochs, a lost desk, and a phone that takes another's place.

#include "tests/core/photos/sample_jpeg.h"
#include "tests/core/sync/two_desks.h"

#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;
using namespace std::chrono_literals;
using desk::Applying;
using desk::Inviting;
using patient::EntryState;

using test::syncOf;
using test::TwoDesks;

TEST_CASE("a second desk learns everything, and both show the same bytes", "[sync][clinic]")
{
    TwoDesks clinic;
    clinic.record();
    clinic.everybody(1);
    (void)clinic.world.service.tidy(clinic.world.clock.now() + 24h * 9);  // the hub forgot what the first desk has
    clinic.enlist();
    CHECK(clinic.world.desk.desks().size() == 2);
    CHECK(clinic.second.vault().clinicRootKey() == clinic.world.desk.vault().clinicRootKey());
    CHECK_FALSE(clinic.second.isOwner());

    clinic.everybody();
    REQUIRE(clinic.second.courses().size() == 1);
    CHECK(clinic.second.courses().front().patientName == "Ines Varga");
    CHECK(clinic.whole(clinic.second) == clinic.whole(clinic.world.desk));

    // Each can act, and what one does the other and the phone see.
    clinic.record();
    clinic.everybody();
    REQUIRE(clinic.second.openEntries(clinic.course));
    REQUIRE(clinic.second.writeMessage(clinic.course, "We have seen it."));
    clinic.everybody();
    CHECK(clinic.phone.history().front().state.place == EntryState::Place::opened);
    CHECK(clinic.phone.history().front().state.openedBy == "Dr. Jonas Feld");
    CHECK(clinic.phone.messages().size() == 1);
    CHECK(clinic.whole(clinic.second) == clinic.whole(clinic.world.desk));
    CHECK(clinic.world.desk.vault().verify());
    CHECK(clinic.second.vault().verify());
    const auto standing = clinic.second.vault().standing(clinic.phone.link()->mailbox);
    CHECK_FALSE((standing->gap || standing->fork || standing->rolledBack));
}

TEST_CASE("the second desk alone acknowledges, and that counts as delivered", "[sync][clinic]")
{
    TwoDesks clinic;
    clinic.enlist();
    clinic.everybody();
    clinic.record();
    clinic.world.syncPhone(clinic.phone);
    CHECK(syncOf(clinic.second, clinic.world.courier).operationsReceived == 1);
    clinic.world.syncPhone(clinic.phone);
    CHECK(clinic.phone.history().front().state.place == EntryState::Place::withClinic);
}

TEST_CASE("both desks come for a photograph, and the phone is told once that it is with the clinic", "[sync][clinic][photos]")
{
    TwoDesks clinic;
    clinic.enlist();
    clinic.everybody();
    const bytes::Bytes picture = test::sampleJpegOf(90'000);
    const auto photo = clinic.phone.addPhoto(picture, photos::Pose::front, {}, clinic.world.now());
    REQUIRE(photo);
    clinic.everybody();
    CHECK(clinic.world.desk.photo(clinic.course, *photo) == picture);
    CHECK(clinic.second.photo(clinic.course, *photo) == picture);
    CHECK(clinic.phone.photos().front().received.has_value());
    CHECK(clinic.whole(clinic.second) == clinic.whole(clinic.world.desk));
    const auto told = [&] {
        return std::ranges::count(clinic.world.desk.vault().operations(), static_cast<std::uint16_t>(records::Kind::photosReceived),
                                  &journal::Operation::kind);
    };
    CHECK(told() == 1);

    // Taken back on the phone, it is gone from both.
    REQUIRE(clinic.phone.removePhoto(*photo));
    clinic.everybody();
    CHECK(clinic.world.desk.photos(clinic.course).empty());
    CHECK(clinic.second.photos(clinic.course).empty());
    CHECK(clinic.second.vault().heldPhotoChunks()->empty());
    CHECK(clinic.world.store->usage(clinic.world.clock.now())->blobs == 0);
}

TEST_CASE("a new phone knows of the photographs of the old one, and that the clinic has them", "[sync][clinic][photos]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& old = world.join(course);
    const auto photo = old.addPhoto(test::sampleJpegOf(500), photos::Pose::front, {}, world.now());
    REQUIRE(photo);
    world.syncPhone(old);
    world.syncDesk();
    world.syncPhone(old);
    patient::Diary& fresh = world.join(course);
    REQUIRE(fresh.photos().size() == 1);
    CHECK_FALSE(fresh.photos().front().here);
    CHECK(fresh.photos().front().received.has_value());
    CHECK(fresh.photo(*photo).error().reason == Reason::notEnough);
    CHECK(fresh.photoFiles().empty());
    CHECK(fresh.vault().verify());
    // Its own go on as before.
    REQUIRE(fresh.addPhoto(test::sampleJpegOf(600), photos::Pose::leftOblique, {}, world.now()));
    world.syncPhone(fresh);
    world.syncDesk();
    CHECK(world.desk.photos(course).size() == 2);
    CHECK(std::ranges::all_of(world.desk.photos(course), &desk::CoursePhoto::isHere));
}

TEST_CASE("a desk without the root key may not sign for the clinic, an owner's may", "[sync][clinic]")
{
    TwoDesks clinic;
    clinic.kind = GENERATE(Inviting::NewDesk::plain, Inviting::NewDesk::owner);
    const bool owner = clinic.kind == Inviting::NewDesk::owner;
    clinic.enlist();
    clinic.everybody();
    CHECK(clinic.second.isOwner() == owner);
    REQUIRE(clinic.second.allowStep(test::passphrase));
    CHECK(clinic.second.beginEpoch().has_value() == owner);
    CHECK(clinic.second.signProtocol(triggers::defaultProtocol()).has_value() == owner);
    clinic.second.setSecond("Dr. Ada Lund");
    Inviting inviting(clinic.second, clinic.world.clock, clinic.course, triggers::defaultProtocol(), clinic.world.inDays(21));
    inviting.start(clinic.world.courier, [] {});
    CHECK((inviting.step() == Inviting::Step::shown) == owner);
}

TEST_CASE("a fresh epoch reaches phone and desk, and both desks read what is sealed to it", "[sync][clinic]")
{
    TwoDesks clinic;
    clinic.enlist();
    clinic.everybody();
    clinic.record();  // sealed to the first epoch, still on its way
    clinic.world.syncPhone(clinic.phone);
    REQUIRE(clinic.world.desk.allowStep(test::passphrase));
    REQUIRE(clinic.world.desk.beginEpoch());
    clinic.everybody();
    CHECK(clinic.phone.link()->epoch == 2);
    CHECK(clinic.second.vault().epochNumber() == 2);
    CHECK(clinic.phone.history().front().state.place == EntryState::Place::withClinic);
    clinic.record();
    clinic.everybody();
    CHECK(clinic.whole(clinic.second) == clinic.whole(clinic.world.desk));
    CHECK(clinic.second.course(clinic.course)->state->entries.size() == 2);

    // An older roster changes nothing; another one of the same number is a fork.
    auto& vault = clinic.phone.vault();
    const auto root = clinic.phone.link()->clinicRoot;
    const auto newest = *vault.roster(root);
    const auto other = crypto::BoxKey::generate().publicKey();
    CHECK(vault.putRoster(root, {1, 1, other, {1, 2, 3}}) == false);
    CHECK(vault.putRoster(root, {2, 2, other, {1, 2, 3}}).error().reason == Reason::outOfOrder);
    CHECK(*vault.roster(root) == newest);
    CHECK(clinic.phone.link()->epoch == 2);
}

TEST_CASE("a lost desk is cut off: it reads nothing new, and nobody takes anything from it", "[sync][clinic]")
{
    TwoDesks clinic;
    clinic.enlist();
    clinic.everybody();
    const auto lost = clinic.second.vault().device();
    // A hub that says that it refuses the lost desk, and does not.
    clinic.world.courier.swallow = [](const mailbox::Request& request) { return request.path == "/v1/ended"; };
    REQUIRE(clinic.world.desk.allowStep(test::passphrase));
    REQUIRE(clinic.world.desk.revokeDesk(lost));
    CHECK(clinic.world.desk.revokeDesk(lost).error().reason == Reason::notFound);
    CHECK(clinic.world.desk.revokeDesk(clinic.world.desk.vault().device()).error().reason == Reason::refused);
    CHECK(clinic.world.desk.desks().size() == 1);
    clinic.world.syncDesk();
    clinic.world.syncPhone(clinic.phone);
    CHECK(clinic.phone.link()->epoch == 2);

    // The lost desk still gets ciphertext, and still writes.
    clinic.record();
    clinic.world.syncPhone(clinic.phone);
    const auto report = syncOf(clinic.second, clinic.world.courier);
    CHECK(report.operationsReceived == 0);
    CHECK(clinic.second.course(clinic.course)->state->entries.empty());
    REQUIRE(clinic.second.writeMessage(clinic.course, "from whoever found it"));
    syncOf(clinic.second, clinic.world.courier);
    CHECK(clinic.world.syncPhone(clinic.phone).quarantined == 0);  // it is not asked for
    CHECK(clinic.phone.messages().empty());
    CHECK(clinic.world.syncDesk().problem == std::nullopt);
    CHECK(clinic.world.desk.course(clinic.course)->state->messages.empty());
    clinic.world.syncPhone(clinic.phone);
    CHECK(clinic.phone.history().front().state.place == EntryState::Place::withClinic);

    // An honest hub ends the credential as soon as it hears of it.
    clinic.world.courier.swallow = {};
    clinic.world.clock.advance(desk::tellHubAgainAfter + 1min);
    CHECK(clinic.world.syncDesk().problem == std::nullopt);
    CHECK(syncOf(clinic.second, clinic.world.courier).problem->reason == Reason::refused);
}

TEST_CASE("a new phone takes the old one's place with the whole history", "[sync][clinic]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& old = world.join(course);
    for (int i = 0; i < 3; ++i)
        REQUIRE(old.record(world.entryOf(old, i, i)));
    REQUIRE(world.desk.writeMessage(course, "How is it?"));
    world.syncPhone(old);
    world.syncDesk();
    REQUIRE(world.desk.openEntries(course));
    world.syncDesk();
    world.syncPhone(old);
    REQUIRE(old.record(world.entryOf(old, 9, 9)));  // never sent in time

    patient::Diary& fresh = world.join(course);
    CHECK(fresh.history().size() == 3);
    for (const auto& view : fresh.history())
        CHECK(view.state.place == EntryState::Place::opened);
    CHECK(fresh.messages().size() == 1);
    CHECK(fresh.vault().verify());

    // The old one learns it, and what it still sends is kept aside, not taken.
    CHECK_FALSE(old.replaced());
    world.syncPhone(old);
    CHECK(old.replaced());
    CHECK(world.syncDesk().operationsReceived == 0);
    CHECK(world.desk.course(course)->state->entries.size() == 3);
    CHECK(world.desk.vault().quarantined(old.link()->mailbox) >= 1);
    CHECK_FALSE(fresh.replaced());
    // Both sides know what it is that never arrived.
    REQUIRE(old.leftBehind());
    CHECK(old.leftBehind()->entries == 1);
    CHECK(std::ranges::count_if(old.history(), [](const auto& view) { return view.state.place == EntryState::Place::savedHere; }) == 1);
    const auto former = world.desk.formerPhones(course);
    REQUIRE(former.size() == 1);
    CHECK(former.front().device == old.vault().device());
    CHECK(former.front().left == old.leftBehind());

    // Life goes on with the new one.
    world.clock.advance(1h);
    REQUIRE(fresh.record(world.entryOf(fresh, 2, 2)));
    world.syncPhone(fresh);
    world.syncDesk();
    world.syncPhone(fresh);
    CHECK(fresh.history().front().state.place == EntryState::Place::withClinic);
    CHECK(world.desk.course(course)->state->entries.size() == 4);
    CHECK(world.desk.vault().verify());
}

TEST_CASE("codes are for one kind of device only", "[sync][clinic][pairing]")
{
    TwoDesks clinic;
    REQUIRE(clinic.world.desk.allowStep(test::passphrase));
    Inviting forDesk(clinic.world.desk, clinic.world.clock, Inviting::NewDesk::plain);
    forDesk.start(clinic.world.courier, [] {});
    Inviting forPhone(clinic.world.desk, clinic.world.clock, clinic.course, triggers::defaultProtocol(), clinic.world.inDays(21));
    forPhone.start(clinic.world.courier, [] {});
    patient::Diary& other = clinic.world.newPhone();
    patient::Joining joining(other, clinic.world.clock);
    Applying applying(clinic.second, clinic.world.clock);

    CHECK(joining.start(forDesk.qrText()).error().reason == Reason::refused);
    CHECK(applying.start(forPhone.qrText()).error().reason == Reason::refused);
    REQUIRE(joining.start(forDesk.typedCode(), "hub.example"));
    joining.poll(clinic.world.courier, [] {});
    CHECK(joining.step() == patient::Joining::Step::failed);
    CHECK(joining.problem()->reason == Reason::refused);

    // Photographed, expired, mistyped: as for a phone.
    Applying stolen(clinic.second, clinic.world.clock);
    std::string mistyped = forDesk.typedCode();
    mistyped[3] = mistyped[3] == 'A' ? 'B' : 'A';
    CHECK(stolen.start(mistyped, "hub.example").error().reason == Reason::malformed);
    REQUIRE(stolen.start(forDesk.qrText()));
    desk::Desk third = *desk::Desk::create(clinic.world.folder.path() / "third", test::passphrase, test::cheap, clinic.world.clock,
                                           clinic.world.zone);
    Applying own(third, clinic.world.clock);
    REQUIRE(own.start(forDesk.qrText()));
    stolen.poll(clinic.world.courier, [] {});
    own.poll(clinic.world.courier, [] {});
    forDesk.poll(clinic.world.courier, [] {});
    CHECK(own.problem()->reason == Reason::alreadyExists);
    CHECK(forDesk.step() == Inviting::Step::usedTwice);
    forDesk.confirm(clinic.world.courier, [] {});
    CHECK(clinic.world.desk.desks().size() == 1);
    clinic.world.clock.advance(11min);
    CHECK(Applying(third, clinic.world.clock).start(forDesk.qrText()).error().reason == Reason::expired);
}

TEST_CASE("a desk with patients of its own joins no other clinic", "[sync][clinic]")
{
    TwoDesks clinic;
    REQUIRE(clinic.second.registerPatient("Rosa Quint", "+00 555 0102", "en"));
    REQUIRE(clinic.world.desk.allowStep(test::passphrase));
    Inviting inviting(clinic.world.desk, clinic.world.clock, Inviting::NewDesk::plain);
    inviting.start(clinic.world.courier, [] {});
    Applying applying(clinic.second, clinic.world.clock);
    REQUIRE(applying.start(inviting.qrText()));
    for (int i = 0; i < 4; ++i) {
        applying.poll(clinic.world.courier, [] {});
        inviting.poll(clinic.world.courier, [] {});
    }
    inviting.confirm(clinic.world.courier, [] {});
    applying.poll(clinic.world.courier, [] {});
    CHECK(applying.step() == Applying::Step::failed);
    CHECK(applying.problem()->reason == Reason::invalidState);
    CHECK(clinic.second.isOwner());  // of its own
}

TEST_CASE("a number that one desk corrects stands at the other, and no phone is told", "[sync][clinic][patients]")
{
    TwoDesks clinic;
    clinic.enlist();
    clinic.everybody();
    const auto patient = clinic.second.patients().front();
    const auto atPhone = clinic.phone.vault().operations().size();
    auto changed = patient;
    changed.phone = "+00 555 0199";
    REQUIRE(clinic.world.desk.correctPatient(changed, {}));
    clinic.everybody();
    CHECK(clinic.second.summary(clinic.course)->patientPhone == "+00 555 0199");
    CHECK(clinic.second.corrections(patient.patient).front().by == "Dr. Ada Lund");
    CHECK(clinic.phone.vault().operations().size() == atPhone);
    CHECK(clinic.whole(clinic.second) == clinic.whole(clinic.world.desk));

    // Both at once, from what the first correction left: each holds in what it changed.
    const auto seen = clinic.second.corrections(patient.patient).back().operation;
    auto here = changed, there = changed;
    here.phone = "+00 555 0188";
    there.name = "Inez Varga";
    REQUIRE(clinic.world.desk.correctPatient(here, seen));
    clinic.world.clock.advance(1s);  // the name is the later one
    REQUIRE(clinic.second.correctPatient(there, seen));
    clinic.everybody();
    for (desk::Desk* desk : {&clinic.world.desk, &clinic.second}) {
        CHECK(desk->summary(clinic.course)->patientPhone == "+00 555 0188");
        CHECK(desk->summary(clinic.course)->patientName == "Inez Varga");
        CHECK(desk->corrections(patient.patient).back().crossed);
    }
    CHECK(clinic.whole(clinic.second) == clinic.whole(clinic.world.desk));

    // What a correction had written and a colleague's held against is in sight no more: brought back, it holds.
    auto back = clinic.second.vault().state().patients.at(patient.patient);
    back.phone = "+00 555 0199";
    const auto last = clinic.second.corrections(patient.patient).back();
    REQUIRE(last.written.phone == back.phone);
    REQUIRE(last.after.phone == "+00 555 0188");
    const auto brought = clinic.second.correctPatient(back, last.operation);
    REQUIRE(brought);
    CHECK(clinic.second.summary(clinic.course)->patientPhone == "+00 555 0199");
    clinic.everybody();
    for (desk::Desk* desk : {&clinic.world.desk, &clinic.second}) {
        CHECK(desk->summary(clinic.course)->patientPhone == "+00 555 0199");
        CHECK(desk->corrections(patient.patient).back().operation == *brought);
        CHECK(desk->corrections(patient.patient).back().by == "Dr. Jonas Feld");
        CHECK_FALSE(desk->corrections(patient.patient).back().crossed);
    }
    CHECK(clinic.whole(clinic.second) == clinic.whole(clinic.world.desk));
    REQUIRE(clinic.second.takeBackCorrection(patient.patient, *brought));
    CHECK(clinic.second.summary(clinic.course)->patientPhone == "+00 555 0188");

    // A backup is of one desk's own vault.
    REQUIRE(clinic.world.desk.noteStep(records::Step::backupMade, "Dr. Ada Lund"));
    clinic.everybody();
    CHECK_FALSE(clinic.world.desk.isBackupDue());
    CHECK(clinic.second.isBackupDue());
}

TEST_CASE("a correction that arrives late, from before the one in sight, is not undone by who had not seen it", "[sync][clinic][patients]")
{
    TwoDesks clinic;
    clinic.enlist();
    clinic.everybody();
    const auto registered = clinic.second.patients().front();
    auto number = registered, name = registered;
    number.phone = "+00 555 0199";
    name.name = "Inez Varga";
    REQUIRE(clinic.world.desk.correctPatient(number, {}));
    clinic.world.clock.advance(1s);
    const auto seen = clinic.second.correctPatient(name, {});
    REQUIRE(seen);
    const auto inSight = clinic.second.patients().front();
    REQUIRE(inSight == name);
    clinic.everybody();
    REQUIRE(clinic.second.summary(clinic.course)->patientPhone == number.phone);

    auto written = inSight;
    written.language = "de";
    REQUIRE(clinic.second.correctPatient(written, *seen, inSight));
    CHECK(clinic.second.summary(clinic.course)->patientPhone == number.phone);
    CHECK(clinic.second.patients().front().language == "de");
    CHECK(clinic.second.corrections(registered.patient).size() == 3);
    // Who saw the number, and writes the former one, means it.
    const auto now = clinic.second.patients().front();
    auto back = now;
    back.phone = registered.phone;
    REQUIRE(clinic.second.correctPatient(back, clinic.second.corrections(registered.patient).back().operation, now));
    CHECK(clinic.second.summary(clinic.course)->patientPhone == registered.phone);
}
