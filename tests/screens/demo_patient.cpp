#include "tests/screens/demo_patient.h"

#include "app/face/portrait.h"
#include "core/crypto/crypto.h"
#include "core/mailbox/embedded_store.h"
#include "tests/platform/camera/drawn_code.h"

#include <QCoreApplication>
#include <QElapsedTimer>

#include <stdexcept>

namespace ebbline::screens {

namespace {

constexpr crypto::StretchCost quickly{1, 8 * 1024};
constexpr int questions = 5;  // asked every time, before the signs

void need(const Done& outcome)
{
    if (!outcome)
        throw std::runtime_error("demo patient: " + outcome.error().detail);
}

template <typename T>
T need(Result<T> outcome)
{
    if (!outcome)
        throw std::runtime_error("demo patient: " + outcome.error().detail);
    return std::move(*outcome);
}

/// Hands requests straight to the hub's rules, while there is a network.
class Loopback final : public sync::Courier {
public:
    Loopback(mailbox::Service& service, const clock::Clock& clock, const bool& offline, const bool& stranger)
        : m_service(service), m_clock(clock), m_offline(offline), m_stranger(stranger)
    {
    }
    void send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer) override
    {
        if (m_offline)
            return answer(fail(Reason::unreachable, "no network"));
        if (m_stranger)
            return answer(fail(Reason::forged, "another key"));
        answer(m_service.handle(request, "127.0.0.1", m_clock.now()));
    }

private:
    mailbox::Service& m_service;
    const clock::Clock& m_clock;
    const bool& m_offline;
    const bool& m_stranger;
};

clock::LocalDay firstDay()
{
    using namespace std::chrono;
    return local_days{year{2027} / 3 / 1};
}

recovery::Placement thread()
{
    recovery::Placement placement;
    placement.zone = recovery::Zone::midface;
    placement.entry = {296, 170};
    placement.end = {252, 262};
    placement.lot = "TH-4417";
    placement.expiry = "2029-06-30";
    placement.anaestheticMl = 0.4;
    return placement;
}

}  // namespace

DemoPatient::DemoPatient() : m_clock(clock::Instant{}), m_zone(*aftercare::Zone::find("Europe/Berlin"))
{
    need(crypto::initialise());
    goTo(0, 10, 30);
    m_store = need(mailbox::openEmbeddedStore(std::filesystem::path(m_folder.path().toStdString()) / "hub"));
    mailbox::Limits limits;
    limits.enrolPerAddress = {100, 1};  // every try comes from one address here
    m_service = std::make_unique<mailbox::Service>(*m_store, limits);
    m_deskCourier = std::make_unique<Loopback>(*m_service, m_clock, m_offline, m_stranger);
    m_desk.emplace(need(desk::Desk::create(std::filesystem::path(m_folder.path().toStdString()) / "desk",
                                           bytes::viewOf(passphrase), quickly, m_clock, m_zone)));
    need(m_store->addClinic(m_desk->vault().clinicRoot().publicKey(), "Practice at the Quay"));
    need(m_desk->setHub("hub.example", true, {}));
    m_desk->setPerson("Dr Mara Lindqvist");
    need(m_desk->describeClinic({{"Practice at the Quay", "+00 555 0100", "+00 555 0199", "112"},
                                 "Europe/Berlin",
                                 {"Dr Mara Lindqvist"}}));
    const auto patient = need(m_desk->registerPatient("Ines Varga", "+00 555 0111", "en"));
    auto treatment = m_desk->blankTreatment(patient);
    treatment.placements = {thread(), recovery::mirrored(thread())};
    treatment.weightKg = 62;
    need(m_desk->recordTreatment(treatment));
    m_course = treatment.course;
    goTo(0, 11, 15);
}

std::filesystem::path DemoPatient::folder() const
{
    return std::filesystem::path(m_folder.path().toStdString()) / "phone";
}

std::unique_ptr<sync::Courier> DemoPatient::courier()
{
    return std::make_unique<Loopback>(*m_service, m_clock, m_offline, m_stranger);
}

std::unique_ptr<app::DiaryProgram> DemoPatient::program(const QString& language)
{
    return programIn(folder(), language);
}

std::unique_ptr<app::DiaryProgram> DemoPatient::programIn(const std::filesystem::path& folder, const QString& language)
{
    return std::make_unique<app::DiaryProgram>(app::DiarySetup{
        .folder = folder,
        .clock = m_clock,
        .zone = m_zone,
        .courier = [this](const std::string&, const bytes::Array<32>&) { return courier(); },
        .cost = quickly,
        .language = language,
        .syncEvery = m_syncEvery,
        .bells = &m_bells,
        .secrets = &m_keeper,
        .locksWhenIdle = m_locksWhenIdle});
}

std::unique_ptr<app::DiaryProgram> DemoPatient::joined(const QString& language)
{
    auto made = program(language);
    join(*made);
    return made;
}

std::unique_ptr<app::DiaryProgram> DemoPatient::joinedOnAnotherPhone(const QString& language)
{
    auto made = programIn(std::filesystem::path(m_folder.path().toStdString()) / "another-phone", language);
    join(*made);
    return made;
}

void DemoPatient::join(app::DiaryProgram& program)
{
    program.warning()->setRegion(QLocale::Germany);  // as her clinic's, whatever the machine of the tests says
    need(program.home().create(bytes::viewOf(passphrase)));
    program.joining()->useText(showsCode(), QString::fromLatin1(hub));
    program.joining()->poll();
    looks();
    program.joining()->poll();
    confirms();
    sends();
    program.joining()->poll();
    program.joining()->poll();
    need(program.home().diary().joined() ? Done{} : Done(fail(Reason::invalidState, "the phone did not join")));
}

QString DemoPatient::showsCode()
{
    const auto followUp = m_zone.moment(m_zone.instantOf(firstDay() + std::chrono::days(21), std::chrono::hours(10)));
    m_inviting.emplace(*m_desk, m_clock, m_course, triggers::defaultProtocol(), followUp);
    m_inviting->start(*m_deskCourier, [] {});
    return QString::fromStdString(m_inviting->typedCode());
}

std::string DemoPatient::showsQr()
{
    (void)showsCode();
    return m_inviting->qrText();
}

QUrl DemoPatient::showsPicture()
{
    const QString file = m_folder.filePath(QStringLiteral("code.png"));
    need(test::drawnCode(showsQr()).save(file) ? Done{} : Done(fail(Reason::storageFailed, "the picture of the code was not written")));
    return QUrl::fromLocalFile(file);
}

void DemoPatient::looks()
{
    for (int i = 0; i < 2; ++i)
        m_inviting->poll(*m_deskCourier, [] {});
}

QString DemoPatient::number() const
{
    return QString::fromStdString(m_inviting->confirmationNumber());
}

void DemoPatient::confirms()
{
    m_inviting->confirm(*m_deskCourier, [] {});
    need(m_inviting->step() == desk::Inviting::Step::linked ? Done{} : Done(fail(Reason::invalidState, "no link was made")));
}

void DemoPatient::sends()
{
    m_desk->syncNow(*m_deskCourier, [](const sync::Report&) {});
}

void DemoPatient::agrees(const aftercare::Visit& visit)
{
    need(m_desk->openCourse(m_course, triggers::defaultProtocol(), aftercare::momentOf(visit, m_zone)));
    sends();
}

void DemoPatient::plans(const std::function<void(aftercare::CarePlan&)>& change)
{
    auto protocol = triggers::defaultProtocol();
    change(protocol.carePlan);
    need(m_desk->openCourse(m_course, protocol, aftercare::momentOf({firstDay() + std::chrono::days(21), 10 * 60}, m_zone)));
    sends();
}

void DemoPatient::opens()
{
    sends();
    need(m_desk->openEntries(m_course));
    sends();
}

void DemoPatient::writes(const std::string& text)
{
    need(m_desk->writeMessage(m_course, text));
    sends();
}

void DemoPatient::goTo(int day, int hour, int minute)
{
    m_clock.set(m_zone.instantOf(firstDay() + std::chrono::days(day), std::chrono::minutes(hour * 60 + minute)));
}

void DemoPatient::tell(app::DiaryProgram& program, int points)
{
    auto& entry = *program.entry();
    program.openEntry();
    for (int question = 0; question < questions; ++question) {
        for (const int side : {1, 2})
            entry.answer(side, points);
        entry.next();
    }
    entry.signsDone();
    entry.save();
}

bool DemoPatient::waits(const std::function<bool()>& ready)
{
    QElapsedTimer passed;
    passed.start();
    while (!ready()) {
        if (passed.hasExpired(10'000))
            return false;
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents | QEventLoop::AllEvents, 20);
    }
    return true;
}

void DemoPatient::aims(app::DiaryProgram& program, double swelling)
{
    auto& photo = *program.photo();
    photo.useFrame(face::portrait(static_cast<recovery::ChartView>(photo.chart()), 720, swelling));
    need(waits([&] { return photo.stage() != diaryapp::PhotoBoard::Stage::Working; }) ? Done{} : Done(fail(Reason::invalidState, "no picture")));
}

bool DemoPatient::seesPhotos(app::DiaryProgram& program)
{
    auto& history = *program.history();
    return waits([&] {
        for (const diaryapp::EntryLine& line : history.entries())
            for (const diaryapp::PhotoLine& photo : line.photos)
                if (photo.here && history.shelf()->picture(photo.key, diaryapp::PhotoShelf::Size::Small).isNull())
                    return false;
        return true;
    });
}

void DemoPatient::tellSign(app::DiaryProgram& program, recovery::Sign sign)
{
    auto& entry = *program.entry();
    program.openEntry();
    while (entry.step() == diaryapp::EntryBoard::Step::Score)
        entry.next();
    entry.tick(static_cast<int>(sign), true);
    entry.signsDone();
    entry.save();
}

}  // namespace ebbline::screens
