#include "app/story/stage.h"

#include "app/story/practitioner.h"
#include "app/story/recording_courier.h"
#include "core/sync/hub_time.h"
#include "platform/camera/qr_reader.h"
#include "platform/courier/qt_courier.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QPainter>

#include <algorithm>
#include <array>

namespace ebbline::story {

bool waitFor(const std::function<bool()>& ready, std::chrono::milliseconds patience)
{
    QElapsedTimer timer;
    timer.start();
    while (!ready()) {
        if (timer.elapsed() > patience.count())
            return false;
        QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 5);
    }
    return true;
}

Stage::Stage(const Scenario& scenario, QString folder, QString hubProgram, QString language)
    : m_scenario(scenario), m_folder(std::move(folder)), m_language(std::move(language)),
      m_zone(*aftercare::Zone::find(scenario.zone)), m_clock(m_zone.instantOf(scenario.firstDay, std::chrono::hours(8))),
      m_hub(std::move(hubProgram), m_folder + QStringLiteral("/hub"))
{
}

std::unique_ptr<sync::Courier> Stage::courierTo(const std::string& base) const
{
    return std::make_unique<RecordingCourier>(std::make_unique<courier::QtCourier>(QString::fromStdString(base)), m_carried);
}

void Stage::setTime(clock::LocalDay day, int minuteOfDay)
{
    m_clock.set(m_zone.instantOf(day, std::chrono::minutes(minuteOfDay)));
}

std::unique_ptr<app::DiaryProgram> Stage::freshPhone(const QString& name)
{
    return std::make_unique<app::DiaryProgram>(app::DiarySetup{
        .folder = (m_folder + QLatin1Char('/') + name).toStdString(),
        .clock = m_clock,
        .zone = m_zone,
        .courier = [this](const std::string& base, const bytes::Array<32>&) { return courierTo(base); },
        .cost = crypto::stretchFloor,
        .language = m_language});
}

std::unique_ptr<app::DeskProgram> Stage::freshDesk(const QString& name)
{
    return std::make_unique<app::DeskProgram>(app::DeskSetup{
        .folder = (m_folder + QLatin1Char('/') + name).toStdString(),
        .clock = m_clock,
        .zone = m_zone,
        .courier = [this](const desk::Desk::Hub& hub) { return courierTo(hub.address()); },
        .cost = crypto::stretchFloor,
        .language = m_language});
}

Done Stage::setUp()
{
    m_desk = freshDesk(QStringLiteral("desk"));
    if (const Done made = m_desk->workplace().create(bytes::viewOf(passphrase), crypto::stretchFloor); !made)
        return made;
    desk::Desk& desk = m_desk->workplace().desk();
    if (const Done started = m_hub.start(desk.vault().clinicRoot().publicKey()); !started)
        return started;
    const std::string host = m_hub.host().toStdString();
    if (const Done named = desk.setHub(host, false, {}); !named)
        return named;
    const Done described = desk.describeClinic({{m_scenario.clinicName, m_scenario.clinicPhone, m_scenario.onCallPhone,
                                                 m_scenario.emergencyNumber},
                                                m_scenario.zone,
                                                {m_scenario.practitioner, m_scenario.colleague}});
    if (!described)
        return described;
    m_desk->choosePerson(QString::fromStdString(m_scenario.practitioner));
    triggers::Protocol other = triggers::defaultProtocol();
    other.name = m_scenario.otherProtocol;
    if (const Done signedOne = desk.signProtocol(other); !signedOne)
        return signedOne;
    return desk.signProtocol(triggers::defaultProtocol());
}

Done Stage::writeDown(const Patient& patient, const Onlooker& look)
{
    const recovery::Treatment& treated = patient.treatment;
    const std::array<std::pair<std::function<Done()>, Scene>, 4> steps{{
        {[&] { return registerPatient(*m_desk, patient); }, Scene::registered},
        {[&] { return writeThreads(*m_desk, treated); }, Scene::threadsDrawn},
        {[&] { return writeAnaesthetic(*m_desk, treated); }, Scene::anaestheticCounted},
        {[&] { return writeCare(*m_desk, treated); }, Scene::careSaid},
    }};
    for (const auto& [write, scene] : steps) {
        if (const Done written = write(); !written)
            return written;
        look(scene);
    }
    return {};
}

Done Stage::treat(const Patient& patient, const Onlooker& look)
{
    auto made = std::make_unique<Phone>();
    made->patient = &patient;
    made->program = freshPhone(QStringLiteral("phone-") + QString::fromStdString(patient.kind));
    if (const Done created = made->program->home().create(bytes::viewOf(passphrase)); !created)
        return created;
    Phone& phone = *m_phones.emplace_back(std::move(made));
    if (const Done written = writeDown(patient, look); !written)
        return written;
    const auto course = recordTreatment(*m_desk, patient.treatment);
    if (!course)
        return fail(course.error());
    phone.course = *course;
    look(Scene::recorded);
    return pair(phone, look);
}

namespace {

/// The code as a phone's camera would see it on the desk's screen.
QImage pictureOf(const deskapp::QrMatrix& code)
{
    constexpr int module = 6, quiet = 4;
    const int size = code.size;
    QImage picture((size + 2 * quiet) * module, (size + 2 * quiet) * module, QImage::Format_RGB32);
    picture.fill(Qt::white);
    QPainter painter(&picture);
    for (int y = 0; y < size; ++y)
        for (int x = 0; x < size; ++x)
            if (code.dark.at(y * size + x))
                painter.fillRect((x + quiet) * module, (y + quiet) * module, module, module, Qt::black);
    return picture;
}

/// The two programs group the digits with different spaces.
QString digitsOf(const QString& number)
{
    QString digits;
    for (const QChar c : number)
        if (c.isDigit())
            digits += c;
    return digits;
}

}  // namespace

/// The page of pairing stands open for her course, as recording leaves it.
Done Stage::pair(Phone& phone, const Onlooker& look)
{
    deskapp::PairingBoard& inviting = *m_desk->pairing();
    const QStringList protocols = inviting.protocols();
    const auto usual = QString::fromStdString(triggers::defaultProtocol().name);
    inviting.setProtocol(static_cast<int>(std::ranges::find_if(protocols, [&](const QString& name) { return name.startsWith(usual); }) - protocols.begin()));
    inviting.start();
    if (!waitFor([&] { return inviting.isCodeShown() || inviting.isEnded(); }) || !inviting.isCodeShown())
        return fail(Reason::unreachable, "pairing: the desk shows no code");
    look(Scene::codeShown);
    diaryapp::JoinBoard& joining = *phone.program->joining();
    if (phone.patient->typedCode) {
        joining.useText(inviting.typedCode(), QStringLiteral("http://") + m_hub.host());
    } else {
        joining.useFrame(pictureOf(inviting.qr()));
    }
    const bool compared = waitFor([&] {
        joining.poll();
        inviting.poll();
        return inviting.isComparing() && joining.stage() == diaryapp::JoinBoard::Stage::Compare;
    });
    if (!compared)
        return fail(Reason::unreachable, "pairing: no number appeared; the phone says: " + joining.problem().toStdString());
    if (digitsOf(inviting.number()) != digitsOf(joining.number()))
        return fail(Reason::forged, "pairing: the numbers differ");
    look(Scene::numbersShown);
    inviting.confirm();
    const bool joined = waitFor([&] {
        joining.poll();
        if (inviting.isLinked())
            (void)syncDesk();
        return joining.stage() == diaryapp::JoinBoard::Stage::Joined;
    });
    if (!joined)
        return fail(Reason::unreachable, "pairing: the course did not arrive");
    look(Scene::joined);
    return {};
}

namespace {

/// The hub keeps this machine's time, in which weeks of the story are minutes: that difference is of no clock that anybody could set.
void forgetHubTime(vault::Vault& vault)
{
    (void)sync::noteClockAhead(vault, std::chrono::seconds(0));
}

}  // namespace

sync::Report Stage::syncPhone(Phone& phone)
{
    sync::Report report;
    bool over = false;
    if (sync::Courier* courier = phone.program->home().courier()) {
        phone.program->home().diary().syncNow(*courier, [&](const sync::Report& done) {
            report = done;
            over = true;
        });
        if (!waitFor([&] { return over; }))
            report.problem = Error{Reason::unreachable, "sync: no end"};
        forgetHubTime(phone.program->home().diary().vault());
        phone.program->home().touch();
    }
    return report;
}

sync::Report Stage::syncDesk()
{
    sync::Report report;
    bool over = false;
    deskapp::HubWatch& hub = *m_desk->hub();
    waitFor([&] { return !hub.isBusy(); });
    const auto ending = QObject::connect(&hub.pulse(), &pulse::HubPulse::ended, &hub, [&](const sync::Report& done) {
        report = done;
        over = true;
    });
    hub.syncNow();
    if (!waitFor([&] { return over; }))
        report.problem = Error{Reason::unreachable, "sync: no end"};
    QObject::disconnect(ending);
    forgetHubTime(m_desk->workplace().desk().vault());
    // The clock has jumped: what the program looks at once a minute, it looks at now.
    m_desk->workplace().settle(Done{});
    hub.refresh();
    return report;
}

}  // namespace ebbline::story
