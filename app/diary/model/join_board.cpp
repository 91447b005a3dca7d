#include "app/diary/model/join_board.h"

#include "app/diary/model/words.h"
#include "platform/camera/qr_reader.h"

#include <QCameraDevice>
#include <QMediaDevices>

namespace ebbline::diaryapp {

namespace {

/// While joining nothing waits to be sent: without a network the board asks again.
QString problemText(const Error& error)
{
    return error.reason == Reason::unreachable ? JoinBoard::tr("No network right now. The diary keeps trying.") : errorText(error);
}

}  // namespace

JoinBoard::JoinBoard(Home& home, QObject* parent) : QObject(parent), m_home(home)
{
    m_timer.setInterval(std::chrono::seconds(2));
    connect(&m_timer, &QTimer::timeout, this, &JoinBoard::poll);
    connect(&home, &Home::openChanged, this, [this] {
        if (!m_home.isOpen())
            startOver();
    });
}

bool JoinBoard::isCameraThere() const
{
    return !QMediaDevices::videoInputs().isEmpty();
}

QString JoinBoard::number() const
{
    const QString number = m_joining ? QString::fromStdString(m_joining->confirmationNumber()) : QString();
    return number.size() == 6 ? number.left(3) + QLatin1Char(' ') + number.mid(3) : number;
}

void JoinBoard::say(const QString& problem)
{
    m_problem = problem;
    Q_EMIT changed();
}

void JoinBoard::useText(const QString& code, const QString& hub)
{
    begin(code.trimmed().toStdString(), hub.trimmed().toStdString());
}

void JoinBoard::usePicture(const QUrl& file)
{
    const QString text = camera::qrTextIn(QImage(file.toLocalFile()));
    if (text.isEmpty())
        return say(tr("There is no code in this picture. Try another, or type the code."));
    begin(text.toStdString(), {});
}

void JoinBoard::useFrame(const QImage& frame)
{
    if (m_stage != Stage::Code || !m_home.isOpen())
        return;
    const QString text = camera::qrTextIn(frame);
    if (text.startsWith(QLatin1String("EBP1:")))
        begin(text.toStdString(), {});
}

void JoinBoard::begin(const std::string& code, const std::string& hub)
{
    if (!m_home.isOpen())
        return;
    if (hub.empty() && !code.starts_with("EBP1:"))
        return say(tr("A typed code also needs the address under it."));
    m_joining = std::make_unique<patient::Joining>(m_home.diary(), m_home.clock());
    // "http://" in front of an address is for one machine only; a clinic's hub is reached by TLS.
    const bool plain = hub.starts_with("http://");
    const std::string host = plain ? hub.substr(7) : hub.starts_with("https://") ? hub.substr(8) : hub;
    const Done started = m_joining->start(code, host);
    if (!started) {
        m_joining.reset();
        return say(errorText(started.error()));
    }
    const bool tls = code.starts_with("EBP1:") ? m_joining->tls() : !plain;
    m_courier = m_home.courierTo((tls ? "https://" : "http://") + m_joining->hub(), m_joining->hubKeyHash());
    if (!m_courier) {
        m_joining.reset();
        return say(tr("This device can not reach a clinic."));
    }
    m_stage = Stage::Waiting;
    m_timer.start();
    say({});
    poll();
}

void JoinBoard::poll()
{
    if (m_stage == Stage::Arriving) {
        if (sync::Courier* courier = m_home.courier())
            m_home.diary().syncNow(*courier, [this](const sync::Report&) {
                if (m_home.isOpen() && m_home.diary().joined()) {
                    m_stage = Stage::Joined;
                    m_timer.stop();
                }
                Q_EMIT changed();
                m_home.touch();
            });
        return;
    }
    if (m_joining && m_courier)
        m_joining->poll(*m_courier, [this] { follow(); });
}

void JoinBoard::follow()
{
    using Step = patient::Joining::Step;
    switch (m_joining->step()) {
    case Step::compare: m_stage = Stage::Compare; break;
    case Step::linked: m_stage = Stage::Arriving; break;
    case Step::failed: {
        const Error problem = m_joining->problem().value_or(Error{Reason::refused, {}});
        startOver();
        return say(errorText(problem));
    }
    default: break;
    }
    say(m_joining->problem() ? problemText(*m_joining->problem()) : QString());
    if (m_stage == Stage::Arriving)
        poll();
}

void JoinBoard::startOver()
{
    m_timer.stop();
    m_joining.reset();
    m_courier.reset();
    m_stage = Stage::Code;
    say({});
}

}  // namespace ebbline::diaryapp
