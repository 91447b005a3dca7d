#include "app/desk/clinic/apply_board.h"

#include "app/desk/model/words.h"

namespace ebbline::deskapp {

namespace {

using Step = desk::Applying::Step;

constexpr std::chrono::seconds pollInterval{2};

}  // namespace

ApplyBoard::ApplyBoard(Workplace& workplace, CourierMaker maker, QObject* parent)
    : QObject(parent), m_workplace(workplace),
      m_way([maker = std::move(maker)](const pairing::HubAddress& hub, const bytes::Array<32>& key) {
          return maker ? maker({hub.host, hub.tls, key}) : nullptr;
      })
{
    connect(&m_timer, &QTimer::timeout, this, &ApplyBoard::poll);
    connect(&workplace, &Workplace::openChanged, this, [this] {
        m_joined = false;
        startOver();
    });
    connect(&workplace, &Workplace::changed, this, &ApplyBoard::changed);
}

bool ApplyBoard::mayJoin() const
{
    return m_workplace.isOpen() && !m_workplace.isDemo() && !m_workplace.desk().clinic() && m_workplace.desk().patients().empty();
}

Step ApplyBoard::step() const
{
    return m_applying ? m_applying->step() : Step::idle;
}

bool ApplyBoard::isComparing() const
{
    return step() == Step::compare;
}

void ApplyBoard::start(const QString& code, const QString& hub)
{
    startOver();
    if (!mayJoin()) {
        m_problem = tr("This desk has a clinic of its own already. Only a new, empty one can join.");
        Q_EMIT changed();
        return;
    }
    const auto address = hub.trimmed();
    auto applying = std::make_shared<desk::Applying>(m_workplace.desk(), m_workplace.clock());
    const auto started = address.isEmpty() ? Done(fail(Reason::notEnough, "hub"))
                                           : applying->start(code.trimmed().toStdString(), address.toStdString());
    if (!started) {
        m_problem = address.isEmpty() ? tr("Type the hub's address as well: it stands under the code.")
                    : started.error().reason == Reason::malformed
                        ? tr("That is not such a code: compare it letter by letter with the other screen.")
                        : errorText(started.error());
        Q_EMIT changed();
        return;
    }
    m_applying = std::move(applying);
    if (!courier()) {
        m_applying.reset();
        m_problem = tr("This computer has no way to a hub.");
        Q_EMIT changed();
        return;
    }
    m_timer.start(pollInterval);
    poll();
    Q_EMIT changed();
}

void ApplyBoard::startOver()
{
    m_timer.stop();
    m_applying.reset();
    m_way.close();
    m_problem.clear();
    Q_EMIT changed();
}

void ApplyBoard::poll()
{
    if (auto* courier = m_applying && m_workplace.isOpen() ? this->courier() : nullptr) {
        m_applying->poll(*courier, [this, weak = std::weak_ptr(m_applying)] {
            if (!weak.expired()) {
                follow();
            }
        });
    }
}

sync::Courier* ApplyBoard::courier()
{
    return m_way.to({m_applying->hub(), m_applying->tls()}, m_applying->hubKeyHash());
}

void ApplyBoard::follow()
{
    if (step() == Step::failed) {
        const auto why = m_applying->problem().value_or(Error{Reason::refused, {}});
        // The answer to a question in flight may still use them.
        QMetaObject::invokeMethod(this, [this, why] {
            startOver();
            m_problem = why.reason == Reason::alreadyExists ? tr("Somebody else has used this code. Ask for a new one, out of other people's sight.")
                        : why.reason == Reason::forged      ? tr("Who answered is not the clinic's hub. Nothing was joined. Compare the address, and tell the clinic.")
                                                            : errorText(why);
            Q_EMIT changed();
        }, Qt::QueuedConnection);
        return;
    }
    if (step() == Step::linked && !m_joined) {
        m_joined = true;
        m_timer.stop();
        m_workplace.settle({});
        Q_EMIT arrived();
    }
    m_problem = m_applying->problem() ? tr("The hub does not answer. It is asked again by itself.") : QString();
    Q_EMIT changed();
}

bool ApplyBoard::isReady() const
{
    return m_joined && m_workplace.isOpen() && m_workplace.desk().clinic();
}

QString ApplyBoard::title() const
{
    if (m_joined) {
        return tr("This desk belongs to the clinic");
    }
    return isComparing() ? tr("Compare the numbers") : isTyping() ? tr("Join the clinic's other desks") : tr("Asking the hub");
}

QString ApplyBoard::text() const
{
    if (m_joined) {
        return isReady() ? tr("The clinic's keys are here, and what patients and colleagues wrote has begun to arrive. Say who is at this desk.")
                         : tr("The clinic's keys are here. What patients and colleagues wrote arrives once the other desk, and then this one, "
                              "have asked the hub.");
    }
    if (isComparing()) {
        return tr("Read these six digits aloud. Only if the other desk shows the same ones may somebody confirm there.");
    }
    return isTyping() ? tr("At a desk that holds the clinic's root key, open Clinic, Desks, and add a desk. It shows a code and the hub's address.")
                      : tr("Leave both programs open.");
}

QString ApplyBoard::number() const
{
    const auto digits = isComparing() ? QString::fromStdString(m_applying->confirmationNumber()) : QString();
    return digits.size() == 6 ? digits.left(3) + QChar(0x00a0) + digits.right(3) : digits;
}

}  // namespace ebbline::deskapp
