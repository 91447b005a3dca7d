#include "app/diary/model/join_board.h"

#include "app/diary/model/chosen_place.h"
#include "app/diary/model/words.h"
#include "core/pairing/code.h"
#include "platform/camera/qr_reader.h"

#include <QCameraDevice>
#include <QGuiApplication>
#include <QMediaDevices>

namespace ebbline::diaryapp {

namespace {

constexpr QLatin1String ours("EBP1:");  // docs/formats/pairing.md

/// While joining nothing waits to be sent: without a network the board asks again. An address that was typed
/// wrong looks the same from here.
QString problemText(const Error& error, bool addressTyped)
{
    if (error.reason != Reason::unreachable)
        return errorText(error);
    return addressTyped ? JoinBoard::tr("The clinic's address does not answer. Check that you typed the address under the code right, and that this phone has a network. The diary keeps trying.")
                        : JoinBoard::tr("No network right now. The diary keeps trying.");
}

}  // namespace

JoinBoard::JoinBoard(Home& home, QObject* parent) : QObject(parent), m_home(home),
      m_way([this](const pairing::HubAddress& hub, const bytes::Array<32>& key) {
          return m_home.courierTo((hub.tls ? "https://" : "http://") + hub.host, key);
      })
{
    m_timer.setInterval(std::chrono::seconds(2));
    connect(&m_timer, &QTimer::timeout, this, &JoinBoard::poll);
    connect(&home, &Home::openChanged, this, [this] {
        startOver();
        // The clinic has said yes already, and its code works once: only the plan is still to come.
        if (m_home.isOpen() && m_home.diary().linked() && !m_home.diary().joined()) {
            m_stage = Stage::Arriving;
            m_timer.start();
            Q_EMIT changed();
            poll();
        }
    });
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState state) {
        // Back from the settings, or from the program that held the camera.
        if (state == Qt::ApplicationActive)
            setCamera(Camera::works);
    });
}

bool JoinBoard::isCameraShown() const
{
    return m_camera == Camera::works && !QMediaDevices::videoInputs().isEmpty();
}

QString JoinBoard::cameraSays() const
{
    switch (m_camera) {
    case Camera::forbidden:
        return tr("The diary may not use the camera. Choose a picture of the code, or type it. You can allow the camera in the phone's settings.");
    case Camera::broken:
        return tr("The camera does not work right now. It may be in use. Choose a picture of the code, or type it.");
    case Camera::works: break;
    }
    return isCameraShown() ? QString() : tr("This device has no camera. Choose a picture of the code, or type it.");
}

void JoinBoard::setCamera(Camera camera)
{
    if (camera == m_camera)
        return;
    m_camera = camera;
    Q_EMIT changed();
}

QString JoinBoard::number() const
{
    const QString number = m_joining ? QString::fromStdString(m_joining->confirmationNumber()) : QString();
    return number.size() == 6 ? number.left(3) + QLatin1Char(' ') + number.mid(3) : number;
}

void JoinBoard::say(const QString& problem, const QString& outcome)
{
    m_problem = problem;
    m_outcome = outcome;
    Q_EMIT changed();
}

void JoinBoard::useText(const QString& code, const QString& hub)
{
    begin(code.trimmed().toStdString(), hub.trimmed().toStdString());
}

void JoinBoard::usePicture(const QUrl& file)
{
    if (m_stage != Stage::Code || !m_home.isOpen())
        return;  // the camera found a code while the picture was being chosen
    const QImage picture(nameOfChosen(file));
    if (picture.isNull())
        return say(tr("This picture does not open. Choose another, or type the code."));
    const QString text = camera::qrTextIn(picture);
    if (text.isEmpty())
        return say(tr("There is no code in this picture. Try another, or type the code."));
    if (!isOfClinic(text) || !prepare(text.toStdString(), {}))
        return;
    // Nobody is asked about a code that would not do. Until the answer it is no more than text: no poll can use it.
    m_joining.reset();
    m_way.close();
    m_inPicture = text.toStdString();
    m_stage = Stage::Place;
    say({});
}

void JoinBoard::answerPlace(bool atClinic)
{
    if (m_stage != Stage::Place)
        return;
    const std::string code = m_inPicture;
    reset();
    if (atClinic)
        return begin(code, {});  // judged anew: it may have run out while the question stood
    say({}, tr("Nothing was joined. Ask your clinic for a code when you are there."));
}

void JoinBoard::useFrame(const QImage& frame)
{
    if (m_stage != Stage::Code || !m_home.isOpen())
        return;
    const QString text = camera::qrTextIn(frame);
    if (text.isEmpty() || text == m_tried)
        return;
    m_tried = text;
    if (isOfClinic(text))
        begin(text.toStdString(), {});
}

/// Says so if it is not.
bool JoinBoard::isOfClinic(const QString& text)
{
    if (text.startsWith(ours))
        return true;
    say(tr("This is not a code of a clinic. Use the code that your clinic shows on its screen."));
    return false;
}

/// Takes the code, and asks nobody for anything yet. Says what is wrong with it. \pre the diary is open
bool JoinBoard::prepare(const std::string& code, const std::string& hub)
{
    const auto refuse = [this](const QString& problem) {
        say(problem);
        return false;
    };
    if (m_home.diary().joined())
        return refuse(tr("This diary holds a treatment, and it can hold just one. Open My data in the settings. Save your data there and delete the diary. Then join again."));
    if (hub.empty() && pairing::typedCodeFromText(code))
        return refuse(tr("A typed code also needs the address under it."));
    m_way.close();  // what was asked for an earlier code
    m_joining = std::make_unique<patient::Joining>(m_home.diary(), m_home.clock());
    m_addressTyped = pairing::typedCodeFromText(code).has_value();
    const Done started = m_joining->start(code, hub);
    if (started && courier())
        return true;
    m_joining.reset();
    return refuse(started ? tr("This device can not reach a clinic.") : errorText(started.error()));
}

void JoinBoard::begin(const std::string& code, const std::string& hub)
{
    if (!m_home.isOpen() || !prepare(code, hub))
        return;
    m_stage = Stage::Waiting;
    m_timer.start();
    say({});
    poll();
}

void JoinBoard::poll()
{
    if (m_stage == Stage::Arriving) {
        if (sync::Courier* courier = m_fetching ? nullptr : m_home.courier()) {
            m_fetching = true;
            m_home.diary().syncNow(*courier, [this](const sync::Report& report) {
                m_fetching = false;
                if (m_home.isOpen() && m_home.diary().joined()) {
                    m_stage = Stage::Joined;
                    m_timer.stop();
                }
                const bool alone = report.problem && report.problem->reason == Reason::unreachable;
                say(!report.problem ? QString() : alone ? tr("No network right now. The diary keeps trying.") : errorText(*report.problem));
                m_home.touch();
            });
        }
        return;
    }
    if (sync::Courier* courier = m_joining ? this->courier() : nullptr)
        m_joining->poll(*courier, [this] { follow(); });
}

sync::Courier* JoinBoard::courier()
{
    return m_way.to({m_joining->hub(), m_joining->tls()}, m_joining->hubKeyHash());
}

void JoinBoard::follow()
{
    using Step = patient::Joining::Step;
    switch (m_joining->step()) {
    case Step::compare: m_stage = Stage::Compare; break;
    case Step::linked: m_stage = Stage::Arriving; break;
    case Step::failed: {
        const Error problem = m_joining->problem().value_or(Error{Reason::refused, {}});
        reset();
        return say(errorText(problem));
    }
    default: break;
    }
    say(m_joining->problem() ? problemText(*m_joining->problem(), m_addressTyped) : QString());
    if (m_stage == Stage::Arriving)
        poll();
}

void JoinBoard::startOver()
{
    if (m_stage == Stage::Arriving && m_home.isOpen())
        return;  // its code is used up: what is on its way would be lost
    m_tried.clear();
    reset();
}

void JoinBoard::reset()
{
    m_timer.stop();
    m_joining.reset();
    m_way.close();
    m_inPicture.clear();
    m_fetching = false;
    m_stage = Stage::Code;
    say({});
}

}  // namespace ebbline::diaryapp
