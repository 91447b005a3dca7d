#include "tests/simulation/clinic_template.h"

#include "core/desk/inviting.h"
#include "core/patient/joining.h"

#include <cstdio>
#include <cstdlib>

namespace ebbline::simulation {

void must(bool holds, const std::string& what)
{
    if (holds)
        return;
    std::fprintf(stderr, "FAILED: %s\n", what.c_str());
    std::exit(2);
}

aftercare::Zone zone()
{
    auto found = aftercare::Zone::find("Europe/Berlin");
    must(found.has_value(), "the time zone is there");
    return *found;
}

mailbox::Limits limits()
{
    mailbox::Limits limits;
    limits.perDevice = {100'000, 1000};
    limits.perAddress = {100'000, 1000};
    limits.enrolPerAddress = {1000, 10};
    return limits;
}

namespace {

recovery::CourseId treat(desk::Desk& desk, std::size_t number)
{
    const auto patient = desk.registerPatient("Patient " + std::to_string(number), "+00 555 0101", "en");
    must(patient.has_value(), "a patient is registered");
    auto treatment = desk.blankTreatment(*patient);
    recovery::Placement placement;
    placement.entry = {296, 170};
    placement.end = {256, 256};
    placement.lot = "TH-4417";
    placement.expiry = "2029-06-30";
    placement.anaestheticMl = 0.4;
    treatment.placements = {placement};
    treatment.weightKg = 62;
    must(desk.recordTreatment(treatment).has_value(), "a treatment is recorded");
    return treatment.course;
}

void pair(desk::Desk& desk, patient::Diary& phone, const recovery::CourseId& course, sync::Courier& courier,
          const clock::Clock& clock)
{
    desk::Inviting inviting(desk, clock, course, triggers::defaultProtocol(), zone().moment(clock.now() + std::chrono::hours(24 * 21)));
    inviting.start(courier, [] {});
    patient::Joining joining(phone, clock);
    must(joining.start(inviting.qrText()).has_value(), "the code is read");
    for (int i = 0; i < 4; ++i) {
        joining.poll(courier, [] {});
        inviting.poll(courier, [] {});
    }
    must(joining.confirmationNumber() == inviting.confirmationNumber(), "both show one number");
    inviting.confirm(courier, [] {});
    joining.poll(courier, [] {});
    must(joining.step() == patient::Joining::Step::linked, "the phone is linked");
    desk.syncNow(courier, [](const sync::Report&) {});
    phone.syncNow(courier, [](const sync::Report&) {});
    desk.syncNow(courier, [](const sync::Report&) {});
    must(phone.joined(), "the course arrived");
}

}  // namespace

ClinicTemplate ClinicTemplate::make(const std::filesystem::path& home, std::size_t phones, std::chrono::hours keysAge)
{
    ClinicTemplate made{home, {}, {}};
    clock::ManualClock clock{clock::Instant{std::chrono::sys_days{std::chrono::year{2027} / 3 / 1} + std::chrono::hours(9)}};
    auto store = mailbox::openEmbeddedStore(home / "hub");
    must(store.has_value(), "the hub's store opens");
    mailbox::Service service(**store, limits());
    DirectCourier courier(service, clock);
    auto desk = desk::Desk::create(home / "desk", passphrase, cheap, clock, zone());
    must(desk.has_value(), "the desk is made");
    must((*store)->addClinic(desk->vault().clinicRoot().publicKey(), "clinic").has_value(), "the hub knows the clinic");
    must(desk->setHub("hub.example", true, {}).has_value(), "the desk knows the hub");
    desk->setPerson("Dr. Ada Lund");
    must(desk->describeClinic({{"Practice on the Mole", "+00 555 0110", "+00 555 0119", "112"}, "Europe/Berlin", {"Dr. Ada Lund"}})
             .has_value(),
         "the clinic is described");
    must(desk->vault().keyAges().has_value(), "the age of its keys is noted");
    std::vector<patient::Diary> diaries;
    for (std::size_t i = 0; i < phones; ++i) {
        auto diary = patient::Diary::create(home / ("phone" + std::to_string(i)), passphrase, cheap, clock, zone());
        must(diary.has_value(), "a diary is made");
        must(diary->vault().keyAges().has_value(), "the age of its key is noted");
        diaries.push_back(std::move(*diary));
    }
    clock.advance(keysAge);
    for (std::size_t i = 0; i < phones; ++i) {
        Phone phone{"phone" + std::to_string(i), treat(*desk, i), {}};
        pair(*desk, diaries[i], phone.course, courier, clock);
        phone.mailbox = diaries[i].link()->mailbox;
        made.phones.push_back(phone);
        clock.advance(std::chrono::minutes(1));
    }
    made.ends = clock.now();
    return made;
}

}  // namespace ebbline::simulation
