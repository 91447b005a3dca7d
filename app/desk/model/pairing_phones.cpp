// A phone that takes another's place: what the one before held, and one that is lost.
#include "app/desk/model/grave_step.h"
#include "app/desk/model/pairing_board.h"
#include "app/desk/model/role_words.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"

namespace ebbline::deskapp {

bool PairingBoard::isReplacing() const
{
    const auto summary = m_workplace.isOpen() && !m_forDesk ? m_workplace.desk().summary(m_course) : std::nullopt;
    return summary && summary->linked;
}

QString PairingBoard::former() const
{
    QStringList lines;
    if (!isReplacing()) {
        return {};
    }
    for (const auto& phone : m_workplace.desk().formerPhones(m_course)) {
        if (!phone.left) {
            lines << tr("A phone before this one has not said what it still holds. What was written on it and not sent is not here.");
        } else if (phone.left->isNothing()) {
            lines << tr("A phone before this one says that everything on it has arrived.");
        } else {
            const auto& left = *phone.left;
            lines << tr("A phone before this one still holds %Ln thing(s) that did not arrive", nullptr,
                        static_cast<int>(left.entries + left.messages + left.photos + left.others))
                         + QLatin1Char(' ')
                         + tr("(of them entries: %L1, messages: %L2, photographs: %L3), the newest of %4. Look at them on that phone together with the "
                              "patient.")
                               .arg(left.entries)
                               .arg(left.messages)
                               .arg(left.photos)
                               .arg(whenText(m_workplace.zone().moment(left.last), m_workplace.now()));
        }
    }
    return lines.join(QLatin1Char('\n'));
}

QString PairingBoard::replacingText() const
{
    if (!isReplacing()) {
        return {};
    }
    const auto before = former();
    if (m_oldLost) {
        return tr("The hub refuses the lost phone as soon as the new one is confirmed, or at once if you only end it. What it did not send stays unknown. The new phone gets the whole diary. Photographs stay with the clinic.")
               + (before.isEmpty() ? QString() : u'\n' + before);
    }
    return tr("The phone that is linked now is let go of as soon as the new one is confirmed: what is written there afterwards does not reach the clinic, and it says so. The new phone gets the whole diary. Photographs stay with the clinic. Nothing changes before the six digits are confirmed.")
           + (before.isEmpty() ? QString() : u'\n' + before);
}

void PairingBoard::setOldLost(bool lost)
{
    if (lost != m_oldLost) {
        m_oldLost = lost;
        Q_EMIT changed();
    }
}

QStringList PairingBoard::seconds() const
{
    return m_forDesk || isReplacing() ? secondsOf(m_workplace) : QStringList();
}

void PairingBoard::endPhone(const QString& passphrase)
{
    if (!m_workplace.isOpen() || m_course.isNull()) {
        return;
    }
    m_phoneEnded.clear();
    m_stepProblem = barredText(m_workplace.desk(), records::Task::phones);
    if (m_stepProblem.isEmpty()) {
        m_stepProblem = prepareStep(m_workplace, true, passphrase, false, -1);
    }
    if (m_stepProblem.isEmpty()) {
        const auto ended = m_workplace.desk().endPhone(m_course);
        if (ended) {
            m_phoneEnded = tr("The phone is ended. The hub is told with the next sync and refuses it from then on.");
        } else {
            m_stepProblem = ended.error().reason == Reason::notFound ? tr("This course has no phone in use.") : errorText(ended.error());
        }
        m_workplace.settle({});
    }
    Q_EMIT changed();
}

}  // namespace ebbline::deskapp
