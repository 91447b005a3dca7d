#include "tests/screens/demo_clinic.h"

#include "app/desk/photos/photo_lay.h"
#include "app/face/drawn_face.h"
#include "core/crypto/crypto.h"
#include "core/desk/invented_past.h"
#include "core/mailbox/embedded_store.h"
#include "core/patient/joining.h"
#include "core/photos/sealed_photo.h"
#include "tests/core/photos/sample_jpeg.h"

#include <algorithm>
#include <iterator>
#include <stdexcept>

namespace ebbline::screens {

namespace {

using recovery::Score;
using recovery::Side;
using recovery::Sign;
using recovery::Symptom;

constexpr crypto::StretchCost quickly{1, 8 * 1024};

void need(const Done& outcome)
{
    if (!outcome) {
        throw std::runtime_error("demo clinic: " + outcome.error().detail);
    }
}

/// Hands requests straight to the hub's rules.
class Loopback final : public sync::Courier {
public:
    Loopback(mailbox::Service& service, const clock::Clock& clock) : m_service(service), m_clock(clock) {}
    void send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer) override
    {
        answer(m_service.handle(request, "127.0.0.1", m_clock.now()));
    }

private:
    mailbox::Service& m_service;
    const clock::Clock& m_clock;
};

clock::LocalDay today()
{
    using namespace std::chrono;
    return local_days{year{2027} / 3 / 22};
}

/// An ordinary evening: near the middle of the seed band.
std::map<Symptom, std::array<int, 2>> usual(int day)
{
    constexpr std::array pain{3, 3, 3, 2, 2, 1, 1, 1, 1, 0, 0};
    constexpr std::array swelling{3, 4, 4, 4, 3, 2, 2, 1, 1, 1, 1};
    const auto at = static_cast<std::size_t>(std::min(day, 10));
    return {{Symptom::pain, {pain[at], pain[at]}},
            {Symptom::swelling, {swelling[at], std::max(0, swelling[at] - day % 2)}},
            {Symptom::bruising, {std::max(0, 3 - day / 3), std::max(0, 2 - day / 3)}},
            {Symptom::tightness, {std::max(0, 4 - day / 3), std::max(0, 4 - day / 3)}},
            {Symptom::twinges, {day < 8 ? 1 : 0, day < 7 ? 1 : 0}},
            {Symptom::puckering, {std::max(0, 3 - day / 3), std::max(0, 2 - day / 3)}},
            {Symptom::numbness, {day < 2 ? 2 : 0, day < 2 ? 1 : 0}}};
}

recovery::Placement line(recovery::Zone zone, recovery::ChartPoint entry, recovery::ChartPoint end)
{
    recovery::Placement placement;
    placement.zone = zone;
    placement.entry = entry;
    placement.end = end;
    placement.lot = "TH-4417";
    placement.expiry = "2029-06-30";
    placement.anaestheticMl = 0.4;
    return placement;
}

}  // namespace

DemoClinic::DemoClinic(int past)
    : m_clock(clock::Instant{}), m_zone(*aftercare::Zone::find("Europe/Berlin"))
{
    need(crypto::initialise());
    m_clock.set(m_zone.instantOf(today(), std::chrono::minutes(14 * 60 + 5)));
    auto desk = desk::Desk::create(folder(), bytes::viewOf(passphrase), quickly, m_clock, m_zone);
    need(desk ? Done{} : Done(fail(desk.error())));
    fill(*desk, past);
    need(desk->noteStep(records::Step::backupMade, "Dr Mara Lindqvist"));  // whoever lets seven days pass sees the notice
    auto store = mailbox::openEmbeddedStore(folder().parent_path() / "hub");
    need(store ? Done{} : Done(fail(store.error())));
    m_store = std::move(*store);
    mailbox::Limits limits;
    limits.enrolPerAddress = {100, 1};  // every try comes from one address here
    m_service = std::make_unique<mailbox::Service>(*m_store, limits);
    const auto known = m_store->addClinic(desk->vault().clinicRoot().publicKey(), "Practice at the Quay");
    need(known ? Done{} : Done(fail(known.error())));
}

deskapp::CourierMaker DemoClinic::hub()
{
    return [this](const desk::Desk::Hub&) { return std::make_unique<Loopback>(*m_service, m_clock); };
}

void DemoClinic::bringPhone(app::DeskProgram& program)
{
    bringPhone(program, program.pairing()->typedCode());
}

void DemoClinic::bringPhone(app::DeskProgram& program, const QString& code)
{
    Loopback courier(*m_service, m_clock);
    auto phone = patient::Diary::create(folder().parent_path() / ("phone" + std::to_string(++m_phonesBrought)),
                                        bytes::viewOf(passphrase), quickly, m_clock, m_zone);
    need(phone ? Done{} : Done(fail(phone.error())));
    patient::Joining joining(*phone, m_clock);
    need(joining.start(code.toStdString(), "127.0.0.1:1"));
    for (int i = 0; i < 4; ++i) {
        joining.poll(courier, [] {});
        program.pairing()->poll();
    }
}

std::filesystem::path DemoClinic::folder() const { return std::filesystem::path(m_folder.path().toStdString()) / "desk"; }

std::unique_ptr<app::DeskProgram> DemoClinic::program(const QString& language, deskapp::CourierMaker courier)
{
    auto made = std::make_unique<app::DeskProgram>(app::DeskSetup{.folder = folder(), .clock = m_clock, .zone = m_zone,
                                                                  .courier = std::move(courier), .cost = quickly,
                                                                  .language = language, .locksWhenIdle = m_locksWhenIdle,
                                                                  .bells = m_bells});
    need(made->workplace().unlock(bytes::viewOf(passphrase)));
    made->choosePerson(QStringLiteral("Dr Mara Lindqvist"));
    return made;
}

std::unique_ptr<app::DeskProgram> DemoClinic::freshProgram(const QString& language, deskapp::CourierMaker courier)
{
    return std::make_unique<app::DeskProgram>(app::DeskSetup{.folder = folder().parent_path() / "fresh", .clock = m_clock,
                                                             .zone = m_zone, .courier = std::move(courier), .cost = quickly,
                                                             .language = language});
}

clock::Moment DemoClinic::moment(int daysAgo, int minuteOfDay) const
{
    return m_zone.moment(m_zone.instantOf(today() - std::chrono::days(daysAgo), std::chrono::minutes(minuteOfDay)));
}

recovery::CourseId DemoClinic::treat(desk::Desk& desk, const std::string& name, int daysAgo, bool linked)
{
    const auto now = m_clock.now();
    m_clock.set(moment(daysAgo, 10 * 60 + 30).at);
    const auto patient = desk.registerPatient(name, "+00 555 01" + std::to_string(10 + m_courses.size()), "en");
    need(patient ? Done{} : Done(fail(patient.error())));
    auto treatment = desk.blankTreatment(*patient);
    for (const auto& left : {line(recovery::Zone::midface, {296, 170}, {252, 262}), line(recovery::Zone::nasolabial, {300, 186}, {258, 288}),
                             line(recovery::Zone::jawline, {304, 236}, {281, 338})}) {
        treatment.placements.push_back(left);
        treatment.placements.push_back(recovery::mirrored(left));
    }
    auto oblique = line(recovery::Zone::cheek, {268, 182}, {226, 292});
    oblique.view = recovery::ChartView::leftOblique;
    treatment.placements.push_back(oblique);
    treatment.placements.push_back(recovery::mirrored(oblique));
    treatment.anaesthetic = {recovery::Drug::lidocaineWithEpinephrine, 1.0, 200'000, 0.1, 2.0};
    treatment.weightKg = 62;
    treatment.consentGiven = true;
    treatment.cautionsGiven = true;
    for (const auto side : recovery::bothSides) {
        treatment.baseline.insert_or_assign({Symptom::swelling, side}, *Score::of(2));
    }
    need(desk.recordTreatment(treatment));
    m_courses[name] = treatment.course;
    if (linked) {
        const auto phone = crypto::SigningKey::generate().publicKey();
        const envelope::MailboxId mailbox{crypto::randomArray<16>()};
        m_phones.insert_or_assign(name, phone);
        m_mailboxes[name] = mailbox;
        vault::Link link;
        link.mailbox = mailbox;
        link.course = treatment.course;
        link.peerSigning = phone;
        link.hub = "http://127.0.0.1:1";
        need(desk.vault().putLink(link));
        const auto appended = desk.vault().append({records::PatientLinked{treatment.course, mailbox, phone.value, {}}}, desk.now());
        need(appended ? Done{} : Done(fail(appended.error())));
        need(desk.openCourse(treatment.course, triggers::defaultProtocol(), moment(daysAgo - 21, 9 * 60)));
    }
    m_clock.set(now);
    return treatment.course;
}

DemoClinic::Sent DemoClinic::photograph(const recovery::Entry& entry, const Told& told, const Shot& shot)
{
    face::DrawnFace face;
    face.view = static_cast<recovery::ChartView>(shot.pose);
    face.marked = 1.0 - told.day / 8.0;
    face.turned = told.day * 5 % 13 - 6;
    face.size = 0.8 + told.day % 4 * 0.06;
    face.shift = {told.day * 11.0 - 30, 12.0 - told.day * 4};
    face.pixels = {360, 480};
    const auto drawn = face::drawnFace(face);
    const auto raw = face::jpegOf(drawn.picture);
    bytes::Bytes jpeg(raw.begin(), raw.end());
    if (shot.came == Came::undecodable) {
        jpeg = test::sampleJpeg();  // a JPEG by its form, with nothing in it to decode
    } else if (shot.came == Came::inPart) {
        jpeg = test::sampleJpegOf(200'000);  // four chunks
    }
    auto sealed = photos::seal(jpeg);
    need(sealed ? Done{} : Done(fail(sealed.error())));
    m_eyes[sealed->manifest.photo] = {deskapp::spotOf(drawn.leftEye, drawn.picture.size()), deskapp::spotOf(drawn.rightEye, drawn.picture.size())};
    return {{entry.course, sealed->manifest, shot.pose, entry.id, entry.at}, std::move(sealed->chunks), shot.came};
}

void DemoClinic::receive(desk::Desk& desk, const Sent& sent)
{
    const auto& photo = sent.taken.manifest.photo;
    if (sent.came == Came::refused) {
        need(desk.vault().notePhoto(photo, {false, true, m_clock.now()}));
    } else if (sent.came != Came::takenBack) {
        const std::size_t chunks = sent.chunks.size() - (sent.came == Came::inPart ? 1 : 0);
        for (std::uint32_t number = 0; number < chunks; ++number) {
            need(desk.vault().putPhotoChunk(sent.taken, number, sent.chunks[number]));
        }
    }
}

void DemoClinic::tell(desk::Desk& desk, const std::string& name, int daysAgo, const std::vector<Told>& told)
{
    const auto device = envelope::deviceIdOf(m_phones.at(name));
    std::vector<journal::Operation> operations;
    std::uint64_t number = 0;
    std::vector<Sent> sent;
    const auto say = [&](const recovery::Entry& entry, const records::Body& body) {
        journal::Operation operation;
        operation.id = {device, ++number};
        operation.stamp = clock::HybridTime{static_cast<std::uint64_t>(entry.recordedAt.at.time_since_epoch().count()) << 16};
        operation.entered = entry.recordedAt;
        operation.kind = static_cast<std::uint16_t>(records::kindOf(body));
        operation.audience = journal::Audience::patientAndClinic;
        operation.course = entry.course;
        operation.body = records::encode(body);
        operations.push_back(operation);
    };
    for (const auto& telling : told) {
        recovery::Entry entry;
        entry.id = recovery::EntryId{crypto::randomArray<16>()};
        entry.course = m_courses.at(name);
        entry.at = moment(daysAgo - telling.day, telling.minuteOfDay);
        entry.recordedAt = m_zone.moment(entry.at.at + std::chrono::hours(telling.lateByHours));
        for (const auto& [symptom, sides] : telling.scores) {
            entry.scores.insert_or_assign({symptom, Side::left}, *Score::of(sides[0]));
            entry.scores.insert_or_assign({symptom, Side::right}, *Score::of(sides[1]));
        }
        entry.present = telling.signs;
        if (telling.celsius) {
            entry.temperature = *recovery::Temperature::celsius(*telling.celsius);
        }
        entry.note = telling.note;
        need(recovery::check(entry));
        say(entry, records::EntryRecorded{entry});
        for (const auto& shot : telling.shots) {
            sent.push_back(photograph(entry, telling, shot));
            say(entry, sent.back().taken);
            if (shot.came == Came::takenBack) {
                say(entry, records::PhotoRemoved{entry.course, sent.back().taken.manifest.photo, entry.at});
            }
        }
    }
    need(desk.vault().accept(m_mailboxes.at(name), device, {1, {}}, operations));
    for (const auto& one : sent) {
        receive(desk, one);
    }
}

void DemoClinic::confirmAll(desk::Desk& desk)
{
    auto& vault = desk.vault();
    for (const auto& [name, mailbox] : m_mailboxes) {
        std::vector<journal::OperationId> carried;
        const auto unsealed = vault.unsealed(mailbox).value();
        for (const auto& operation : unsealed) {
            carried.push_back(operation.id);
        }
        const auto number = vault.ownHead(mailbox).value().sequence + 1;
        need(vault.storeSealed(mailbox, number, bytes::viewOf("sealed"), carried));
        need(vault.acknowledged(mailbox, number, m_clock.now()));
    }
}

namespace {

/// The phones told their patients at once, and wrote it down.
void writeShown(desk::Desk& desk)
{
    std::vector<records::Body> shown;
    for (const auto& row : desk.queue()) {
        for (const auto& finding : row.findings) {
            if (finding.urgency <= recovery::Urgency::callNow) {
                const auto& entries = desk.vault().state().courses.at(row.course).entries;
                const auto raised = std::find_if(entries.begin(), entries.end(), [&](const auto& entry) {
                    return finding.entry ? *finding.entry == entry.first : entry.second.current().at == finding.raisedAt;
                });
                shown.push_back(records::WarningShown{row.course, raised->first, finding.key, finding.urgency, finding.raisedAt, true});
            }
        }
    }
    const auto written = desk.vault().append(shown, desk.now());
    need(written ? Done{} : Done(fail(written.error())));
}

}  // namespace

void DemoClinic::fill(desk::Desk& desk, int past)
{
    need(desk.describeClinic({{"Practice at the Quay", "+00 555 0100", "+00 555 0199", "112"},
                              "Europe/Berlin",
                              {"Dr Mara Lindqvist", "Ilan Osei"}}));
    need(desk.setHub("127.0.0.1:1", false, {}));
    desk.setPerson("Ilan Osei");
    if (past > 0) {
        need(desk::addInventedPast(desk, m_zone, {.courses = past, .now = m_zone.moment(m_clock.now())}));
    }
    constexpr int evening = 20 * 60;
    constexpr int noon = 13 * 60;
    const auto ordinary = [&](int days) {
        std::vector<Told> told;
        for (int day = 0; day <= days; ++day) {
            told.push_back({day, day == days ? noon : evening, usual(day)});
        }
        return told;
    };

    treat(desk, "Noor Castellan", 0, true);
    tell(desk, "Noor Castellan", 0, {{0, noon, usual(0), {Sign::breathing, Sign::neckSwelling}, {}, "My neck feels tight and it is hard to swallow."}});

    treat(desk, "Odile Brandt", 1, true);
    auto full = usual(1);
    full[Symptom::swelling] = {8, 3};
    full[Symptom::pain] = {7, 2};
    tell(desk, "Odile Brandt", 1, {{0, evening, usual(0)}, {1, 8 * 60 + 10, full, {Sign::fastSwelling}, {}, "My left cheek is much fuller than last night."}});

    treat(desk, "Tomas Reyl", 6, true);
    auto rising = ordinary(4);
    auto worse = usual(5);
    worse[Symptom::pain] = {6, 1};
    worse[Symptom::swelling] = {5, 1};
    rising.push_back({5, evening, worse, {Sign::warmer}});
    worse[Symptom::pain] = {8, 1};
    rising.push_back({6, 11 * 60, worse, {Sign::warmer, Sign::moreTender, Sign::colourChange}, 38.4, "Left side hurts more since last night."});
    rising.erase(rising.begin() + 2);  // a missing day is a gap
    rising[2].lateByHours = 14;
    rising[0].shots = {{photos::Pose::front}, {photos::Pose::leftOblique}, {photos::Pose::rightOblique}};
    rising[2].shots = {{photos::Pose::front}, {photos::Pose::front, Came::takenBack}};
    rising[3].shots = {{photos::Pose::leftOblique, Came::refused}};
    rising[4].shots = {{photos::Pose::front}, {photos::Pose::leftOblique}};
    rising.back().shots = {{photos::Pose::front}, {photos::Pose::rightOblique, Came::inPart}};
    tell(desk, "Tomas Reyl", 6, rising);
    need(desk.writeMessage(m_courses["Tomas Reyl"], "Please take your temperature this evening and write it down."));

    treat(desk, "Ines Varga", 8, true);
    auto lump = ordinary(8);
    lump[1].shots = {{photos::Pose::front}};
    lump.back().signs = {Sign::threadLump};
    tell(desk, "Ines Varga", 8, lump);

    treat(desk, "Mirela Sand", 21, true);
    auto pucker = ordinary(21);
    for (auto& telling : pucker) {
        telling.scores[Symptom::puckering] = {std::max(4, 5 - telling.day / 6), std::max(0, 2 - telling.day / 3)};
    }
    tell(desk, "Mirela Sand", 21, pucker);

    treat(desk, "Jonas Weir", 9, true);
    auto quiet = ordinary(4);
    quiet[2].shots = {{photos::Pose::front, Came::undecodable}, {photos::Pose::front}};
    tell(desk, "Jonas Weir", 9, quiet);

    treat(desk, "Aiko Brandvold", 4, true);
    tell(desk, "Aiko Brandvold", 4, ordinary(4));

    treat(desk, "Petra Halden", 0, false);
    writeShown(desk);
    const auto queue = desk.queue();
    const auto tomas = std::ranges::find(queue, m_courses["Tomas Reyl"], &triage::Row::course);
    std::vector<std::string> findings;
    std::ranges::transform(tomas->findings, std::back_inserter(findings), &triage::Finding::key);
    const auto taken = desk.actOn(tomas->course, findings, records::Act::taken);
    need(taken ? Done{} : Done(fail(taken.error())));
    const auto called = desk.actOn(tomas->course, findings, records::Act::called, records::Outcome::notReached, "No answer, left a message.");
    need(called ? Done{} : Done(fail(called.error())));
    confirmAll(desk);
}

}  // namespace ebbline::screens
