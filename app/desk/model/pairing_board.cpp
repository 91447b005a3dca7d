#include "app/desk/model/pairing_board.h"

#include "app/desk/model/grave_step.h"
#include "app/desk/model/qr_encode.h"
#include "app/desk/model/role_words.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"

#include <QLocale>

#include <algorithm>

namespace ebbline::deskapp {

namespace {

using Step = desk::Inviting::Step;

constexpr std::chrono::milliseconds pollInterval{1500};

}  // namespace

PairingBoard::PairingBoard(Workplace& workplace, HubWatch& hub, QObject* parent)
    : QObject(parent), m_workplace(workplace), m_hub(hub)
{
    connect(&m_timer, &QTimer::timeout, this, &PairingBoard::poll);
    connect(&workplace, &Workplace::openChanged, this, [this] {
        if (!m_workplace.isOpen()) {
            leave();
            m_course = {};
            m_forDesk = false;
            m_protocols.clear();
            Q_EMIT changed();
        }
    });
}

bool PairingBoard::open(const recovery::CourseId& course)
{
    leave();
    const auto view = m_workplace.desk().course(course);
    if (!view) {
        return false;
    }
    m_course = course;
    m_forDesk = false;
    m_oldLost = false;
    m_stepProblem.clear();
    m_phoneEnded.clear();
    m_protocols = m_workplace.desk().protocols();
    m_protocol = 0;
    m_treated = view->summary.treated;
    m_followUpTime.clear();
    m_followUpTyped = false;
    proposeFollowUp();
    // Another phone for a course that runs: what was agreed stands.
    if (const auto& opened = view->state->opened) {
        const auto visit = aftercare::visitOf(opened->followUp);
        m_followUp = dayField(visit.day);
        m_followUpTime = visit.minute ? timeField(*visit.minute) : QString();
        m_followUpTyped = true;
        const auto same = std::find_if(m_protocols.begin(), m_protocols.end(),
                                       [&](const auto& protocol) { return protocol.name == opened->protocol.name; });
        m_protocol = same == m_protocols.end() ? 0 : static_cast<int>(same - m_protocols.begin());
    }
    Q_EMIT changed();
    return true;
}

void PairingBoard::openForDesk()
{
    leave();
    m_course = {};
    m_forDesk = true;
    m_owner = false;
    m_stepProblem.clear();
    m_phoneEnded.clear();
    Q_EMIT changed();
}

void PairingBoard::setOwner(bool owner)
{
    if (owner != m_owner) {
        m_owner = owner;
        Q_EMIT changed();
    }
}

void PairingBoard::leave()
{
    m_timer.stop();
    if (m_inviting && !isLinked() && !isEnded()) {
        m_inviting->refuse();
    }
    m_inviting.reset();
    m_qrText.clear();
    m_qr = {};
}

Step PairingBoard::step() const
{
    return m_inviting ? m_inviting->step() : Step::idle;
}

QString PairingBoard::name() const
{
    return m_workplace.isOpen() && !m_course.isNull() ? m_workplace.patientName(m_course) : QString();
}

QStringList PairingBoard::protocols() const
{
    QStringList names;
    for (const auto& protocol : m_protocols) {
        names << tr("%1, version %2").arg(QString::fromStdString(protocol.name), QLocale().toString(protocol.version));
    }
    return names;
}

void PairingBoard::setProtocol(int index)
{
    if (index != m_protocol && index >= 0 && static_cast<std::size_t>(index) < m_protocols.size()) {
        m_protocol = index;
        if (!m_followUpTyped) {
            proposeFollowUp();
        }
        Q_EMIT changed();
    }
}

QString PairingBoard::blocked() const
{
    if (!m_workplace.isOpen()) {
        return {};
    }
    if (const auto barred = barredText(m_workplace.desk(), m_forDesk ? records::Task::desks : records::Task::phones); !barred.isEmpty()) {
        return barred;
    }
    if (!m_workplace.desk().isOwner()) {
        return tr("Only a desk that holds the clinic's root key can do this.");
    }
    const auto clinic = m_workplace.desk().clinic();
    if (!clinic || clinic->contacts.clinicPhone.empty() || clinic->contacts.emergencyNumber.empty()) {
        return tr("First enter the numbers to call on the Clinic page: the phone shows them with every warning.");
    }
    if (!m_workplace.desk().hub()) {
        return tr("First name the hub on the Clinic page.");
    }
    if (!m_forDesk && m_protocols.empty()) {
        return tr("Choose a protocol and a day for the follow-up.");
    }
    if (!m_forDesk) {
        return followUpProblem();
    }
    return {};
}

void PairingBoard::start(const QString& passphrase, int second)
{
    auto* courier = m_hub.courier();
    if (!blocked().isEmpty() || courier == nullptr) {
        Q_EMIT changed();
        return;
    }
    m_phoneEnded.clear();
    m_stepProblem = prepareStep(m_workplace, m_forDesk || (isReplacing() && m_oldLost), passphrase, m_forDesk || isReplacing(), second);
    if (!m_stepProblem.isEmpty()) {
        Q_EMIT changed();
        return;
    }
    leave();
    using Kind = desk::Inviting::NewDesk;
    m_inviting = m_forDesk ? std::make_shared<desk::Inviting>(m_workplace.desk(), m_workplace.clock(), m_owner ? Kind::owner : Kind::plain)
                           : std::make_shared<desk::Inviting>(m_workplace.desk(), m_workplace.clock(), m_course,
                                                              m_protocols[static_cast<std::size_t>(m_protocol)],
                                                              aftercare::momentOf(*visit(), m_workplace.zone()),
                                                              m_oldLost ? desk::Inviting::OldPhone::lost : desk::Inviting::OldPhone::atHand);
    m_timer.start(pollInterval);
    m_inviting->start(*courier, [this, weak = std::weak_ptr(m_inviting)] {
        if (!weak.expired()) {
            stepped();
        }
    });
    stepped();
}

void PairingBoard::poll()
{
    auto* courier = m_hub.courier();
    if (m_inviting && courier != nullptr && !isLinked() && !isEnded()) {
        m_inviting->poll(*courier, [this, weak = std::weak_ptr(m_inviting)] {
            if (!weak.expired()) {
                stepped();
            }
        });
    }
    stepped();
}

void PairingBoard::stepped()
{
    const bool justLinked = isLinked() && m_timer.isActive();
    if (isLinked() || isEnded()) {
        m_timer.stop();
    }
    const auto text = isCodeShown() && m_inviting ? m_inviting->qrText() : std::string();
    if (text != m_qrText) {
        m_qrText = text;
        m_qr = encodeQr(text);
    }
    if (isLinked()) {
        m_workplace.settle({});
    }
    Q_EMIT changed();
    if (justLinked) {
        m_hub.pulse().begin();  // who was linked waits for the desk, which may have had nowhere to wait until now
    }
}

void PairingBoard::confirm()
{
    auto* courier = m_hub.courier();
    if (isComparing() && courier != nullptr) {
        m_inviting->confirm(*courier, [this, weak = std::weak_ptr(m_inviting)] {
            if (!weak.expired()) {
                stepped();
            }
        });
        stepped();
    }
}

void PairingBoard::refuse()
{
    if (m_inviting) {
        m_inviting->refuse();
        m_timer.stop();
        // Numbers that differ are said until a new code is made; a code that was called off is not worth a word.
        if (!m_inviting->hasDiffered()) {
            m_inviting.reset();
        }
        stepped();
    }
}

void PairingBoard::again()
{
    leave();
    Q_EMIT changed();
}

bool PairingBoard::isCodeShown() const
{
    return step() == Step::shown;
}

bool PairingBoard::isComparing() const
{
    return step() == Step::compare;
}

bool PairingBoard::isLinked() const
{
    return step() == Step::linked;
}

bool PairingBoard::isEnded() const
{
    return step() == Step::usedTwice || step() == Step::expired || step() == Step::failed;
}

bool PairingBoard::isAlarming() const
{
    return step() == Step::usedTwice || (m_inviting && m_inviting->hasDiffered());
}

QString PairingBoard::title() const
{
    switch (step()) {
    case Step::idle:
        return m_forDesk ? tr("Add a desk") : isReplacing() ? tr("Another phone for this course") : tr("Link a phone");
    case Step::publishing:
        return tr("Making a code");
    case Step::shown:
        return m_forDesk ? tr("Type this at the other desk") : tr("Let the patient scan this code");
    case Step::compare:
        return tr("Compare the numbers");
    case Step::linking:
        return tr("Linking");
    case Step::linked:
        return m_forDesk ? tr("The desk is added") : tr("The phone is linked");
    case Step::usedTwice:
        return tr("Stop: this code was used twice");
    case Step::expired:
        return tr("The code has run out");
    case Step::failed:
        return m_inviting->hasDiffered() ? tr("Stop: the numbers were not the same") : tr("No code could be made");
    }
    return {};
}

QString PairingBoard::textForDesk() const
{
    switch (step()) {
    case Step::idle:
        return tr("Start this program on the other computer, set up its vault, and choose there to join the clinic's other desks. Do this "
                  "together, in the same room.");
    case Step::shown:
        return tr("The code works once. The new desk also asks for the hub's address.");
    case Step::compare:
        return tr("Read the six digits on the new desk. Only if they are the same is it the right one.");
    case Step::linking:
        return tr("The clinic's keys go to the new desk.");
    case Step::linked:
        return tr("It has the clinic's keys. What patients and desks wrote arrives there once this desk, and then the new one, have asked the "
                  "hub.");
    default:
        return {};
    }
}

QString PairingBoard::text() const
{
    if (const auto words = m_forDesk ? textForDesk() : QString(); !words.isEmpty()) {
        return words;
    }
    switch (step()) {
    case Step::idle:
        return tr("The patient opens the diary, which asks for a code. Do this together, in the same room.");
    case Step::publishing:
        return tr("The hub takes the offer. This takes a moment.");
    case Step::shown:
        return tr("If the camera does not work, the code below can be typed instead. It works once.");
    case Step::compare:
        return tr("Read the six digits on the patient's phone. Only if they are the same is it the right phone.");
    case Step::linking:
        return tr("The course, its care plan and the numbers to call go to the phone.");
    case Step::linked:
        return tr("The course, its care plan and the numbers to call are on their way. The page of the course "
                  "shows when the first entry arrives.");
    case Step::usedTwice:
        return tr("Somebody else may have read the code. Nothing was linked. Make a new code out of other people's sight.");
    case Step::expired:
        return tr("A code is valid for ten minutes. Nothing was linked. Make a new one.");
    case Step::failed:
        if (m_inviting && m_inviting->hasDiffered()) {
            return tr("Somebody else may have used the code first. Nothing was linked. Make a new code out of other people's sight.");
        }
        if (m_inviting && m_inviting->isClinicUnknown()) {
            return tr("The hub does not know this clinic yet. Ask whoever runs the hub to run %1 with this clinic's key. The key stands on the "
                      "Clinic page, where it can be copied. Then make a new code.", "a command")
                .arg(leftToRight("ebbline-hub add-clinic"));
        }
        return m_inviting && m_inviting->problem() ? errorText(*m_inviting->problem()) : tr("Try again.");
    }
    return {};
}

QString PairingBoard::typedCode() const
{
    return isCodeShown() ? QString::fromStdString(m_inviting->typedCode()) : QString();
}

QString PairingBoard::hubAddress() const
{
    const auto hub = m_workplace.isOpen() ? m_workplace.desk().hub() : std::nullopt;
    return hub ? leftToRight(hub->tls ? hub->host : hub->address()) : QString();
}

QString PairingBoard::timeLeft() const
{
    if (!isCodeShown()) {
        return {};
    }
    const auto seconds = std::max<std::int64_t>(0, m_inviting->secondsLeft());
    const QLocale locale;
    const auto rest = locale.toString(static_cast<qlonglong>(seconds % 60));
    return tr("Valid for %1:%2", "minutes:seconds")
        .arg(locale.toString(static_cast<qlonglong>(seconds / 60)), seconds % 60 < 10 ? locale.zeroDigit() + rest : rest);
}

QString PairingBoard::number() const
{
    if (!isComparing()) {
        return {};
    }
    const auto digits = QString::fromStdString(m_inviting->confirmationNumber());
    return digits.size() == 6 ? digits.left(3) + QChar(0x00a0) + digits.right(3) : digits;
}

}  // namespace ebbline::deskapp
