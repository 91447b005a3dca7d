#include "app/story/stage.h"

#include "app/story/recording_courier.h"
#include "platform/camera/qr_reader.h"
#include "platform/courier/qt_courier.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QPainter>

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
    m_deskCourier = courierTo("http://" + host);
    const Done described = desk.describeClinic({{m_scenario.clinicName, m_scenario.clinicPhone, m_scenario.onCallPhone,
                                                 m_scenario.emergencyNumber},
                                                m_scenario.zone,
                                                {m_scenario.practitioner, m_scenario.colleague}});
    if (!described)
        return described;
    m_desk->choosePerson(QString::fromStdString(m_scenario.practitioner));
    return desk.signProtocol(triggers::defaultProtocol());
}

Done Stage::treat(const Patient& patient)
{
    desk::Desk& desk = m_desk->workplace().desk();
    const auto id = desk.registerPatient(patient.name, patient.phone, patient.language);
    if (!id)
        return fail(id.error());
    recovery::Treatment treatment = patient.treatment;
    const recovery::Treatment blank = desk.blankTreatment(*id);
    treatment.course = blank.course;
    treatment.patient = *id;
    treatment.at = blank.at;
    if (const Done recorded = desk.recordTreatment(treatment); !recorded)
        return recorded;
    m_desk->workplace().settle(Done{});

    auto phone = std::make_unique<Phone>();
    phone->patient = &patient;
    phone->course = treatment.course;
    phone->program = freshPhone(QStringLiteral("phone-") + QString::fromStdString(patient.kind));
    if (const Done made = phone->program->home().create(bytes::viewOf(passphrase)); !made)
        return made;
    const Done paired = pair(*phone);
    m_phones.push_back(std::move(phone));
    return paired;
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

Done Stage::pair(Phone& phone)
{
    m_desk->openPairing(deskapp::keyOf(phone.course));
    deskapp::PairingBoard& inviting = *m_desk->pairing();
    inviting.start();
    if (!waitFor([&] { return inviting.isCodeShown() || inviting.isEnded(); }) || !inviting.isCodeShown())
        return fail(Reason::unreachable, "pairing: the desk shows no code");

    diaryapp::JoinBoard& joining = *phone.program->joining();
    if (phone.patient->typedCode) {
        joining.useText(inviting.typedCode(), QStringLiteral("http://") + m_hub.host());
    } else {
        const QString file = m_folder + QStringLiteral("/code.png");
        pictureOf(inviting.qr()).save(file);
        joining.usePicture(QUrl::fromLocalFile(file));
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
    inviting.confirm();
    const bool joined = waitFor([&] {
        joining.poll();
        if (inviting.isLinked())
            (void)syncDesk();
        return joining.stage() == diaryapp::JoinBoard::Stage::Joined;
    });
    return joined ? Done{} : Done(fail(Reason::unreachable, "pairing: the course did not arrive"));
}

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
        phone.program->home().touch();
    }
    return report;
}

sync::Report Stage::syncDesk()
{
    sync::Report report;
    bool over = false;
    m_desk->workplace().desk().syncNow(*m_deskCourier, [&](const sync::Report& done) {
        report = done;
        over = true;
    });
    if (!waitFor([&] { return over; }))
        report.problem = Error{Reason::unreachable, "sync: no end"};
    m_desk->workplace().settle(Done{});
    return report;
}

}  // namespace ebbline::story
