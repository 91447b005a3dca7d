#include "app/desk/model/phone_outlooks.h"

#include "app/desk/model/times.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>

namespace ebbline::deskapp {

namespace {

using State = sync::Outlook::State;

class PhoneWords {
    Q_DECLARE_TR_FUNCTIONS(PhoneWords)
};

}  // namespace

QString refusedText(sync::Refusal::Why why)
{
    const auto reason = [why] {
        switch (why) {
        case sync::Refusal::Why::unknownThere:
            return PhoneWords::tr("it does not know this desk or the mailbox", "why the hub takes nothing");
        case sync::Refusal::Why::taken:
            return PhoneWords::tr("it holds something else under the same number", "why the hub takes nothing");
        case sync::Refusal::Why::full:
            return PhoneWords::tr("the mailbox is full", "why the hub takes nothing");
        case sync::Refusal::Why::unreadable:
            break;
        }
        return PhoneWords::tr("it is too large or unreadable for it", "why the hub takes nothing");
    };
    return PhoneWords::tr("The hub does not take what this desk sends: %1. It stays here and is tried again. Tell whoever runs the hub.")
        .arg(reason());
}

PhoneOutlooks::PhoneOutlooks(Workplace& workplace) : m_workplace(workplace)
{
    const auto links = workplace.desk().vault().links();
    for (const auto& link : links.value_or(std::vector<vault::Link>{})) {
        if (!link.ended && !link.course.isNull()) {
            m_phones.insert_or_assign(link.course, Phone{link.mailbox, envelope::deviceIdOf(link.peerSigning)});
        }
    }
}

std::optional<sync::Outlook> PhoneOutlooks::of(const recovery::CourseId& course) const
{
    const auto found = m_phones.find(course);
    if (found == m_phones.end()) {
        return std::nullopt;
    }
    const auto outlook = sync::outlookOf(m_workplace.desk().vault(), found->second.mailbox);
    return outlook ? std::optional(*outlook) : std::nullopt;
}

int PhoneOutlooks::unreadableOf(const recovery::CourseId& course) const
{
    const auto found = m_phones.find(course);
    if (found == m_phones.end()) {
        return 0;
    }
    return static_cast<int>(m_workplace.desk().vault().unreadable(found->second.mailbox, found->second.device).value_or(0));
}

QString PhoneOutlooks::text(const recovery::CourseId& course) const
{
    const auto outlook = of(course);
    if (!outlook) {
        return {};
    }
    const auto now = m_workplace.now();
    const auto when = [&](clock::Instant at) { return whenText(m_workplace.zone().moment(at), now); };
    QStringList lines;
    if (outlook->state == State::olderHere) {
        lines << PhoneWords::tr("The phone holds more from this desk than the desk does: the desk runs on older data.");
    } else if (outlook->state == State::forked) {
        lines << PhoneWords::tr("The phone sent two different histories: call, and do not rely on its entries.");
    } else if (outlook->state == State::withheld) {
        lines << PhoneWords::tr("A message of the phone is missing: the hub holds it back or lost it.");
    } else if (outlook->unheard) {
        lines << (outlook->heardAt ? PhoneWords::tr("Phone not heard of since %1: what was written there may not be here.").arg(when(*outlook->heardAt))
                                   : PhoneWords::tr("Phone not heard of since it was linked."));
    }
    if (const int unreadable = unreadableOf(course); unreadable > 0) {
        lines << PhoneWords::tr("%Ln message(s) of the phone cannot be read here. Call and ask what was written. If it stays so, have the diary's data saved on the phone (Settings, My data). "
                                "Only then delete the diary there and link the phone again.", nullptr,
                                unreadable);
    }
    const auto& notUnderstood = m_workplace.state().notUnderstood;
    if (const auto newer = notUnderstood.find(course); newer != notUnderstood.end()) {
        lines << PhoneWords::tr("%Ln thing(s) in this course were written by a newer program and cannot be shown here. Update this desk, and call until then.", nullptr,
                                static_cast<int>(newer->second));
    }
    // What cannot be sent says nothing of what does not come.
    if (outlook->refusal) {
        lines << refusedText(outlook->refusal->why);
    }
    if (outlook->waitingSince && sync::isOver(*outlook->waitingSince, sync::longestSilence, now.at)) {
        lines << PhoneWords::tr("It has not confirmed what was sent to it, %1.", "when it was sent").arg(when(*outlook->waitingSince));
    }
    if (const int days = sync::overdueOf(*outlook, now.at); days > 0) {
        lines << PhoneWords::tr("That is more than %1 days: the phone may be lost or out of use. Call, and link a phone again if need be.").arg(days);
    }
    return lines.join(u' ');
}

PhoneOutlooks::Count PhoneOutlooks::count() const
{
    Count count;
    std::vector<std::pair<clock::Instant, QString>> unheard;
    const auto now = m_workplace.now();
    const auto& courses = m_workplace.state().courses;
    for (const auto& [course, phone] : m_phones) {
        const auto known = courses.find(course);
        if (known == courses.end() || known->second.followUp) {
            continue;
        }
        const auto outlook = of(course);
        if (!outlook) {
            continue;
        }
        ++count.linked;
        count.waiting += outlook->waitingSince ? 1 : 0;
        count.unproved += outlook->waitingSince && sync::isOver(*outlook->waitingSince, sync::longestSilence, now.at) ? 1 : 0;
        count.withheld += outlook->state == State::withheld ? 1 : 0;
        count.forked += outlook->state == State::forked ? 1 : 0;
        count.older += outlook->state == State::olderHere ? 1 : 0;
        if (const int days = sync::overdueOf(*outlook, now.at); days > 0) {
            count.overdue = std::max(count.overdue, days);
            count.overdueNames << m_workplace.patientName(course);
        }
        if (const int unreadable = unreadableOf(course); unreadable > 0) {
            count.unreadable << PhoneWords::tr("%1 (%2)", "a name, and how many").arg(m_workplace.patientName(course), QLocale().toString(unreadable));
        }
        if (outlook->unheard) {
            unheard.emplace_back(outlook->heardAt.value_or(clock::Instant{}), m_workplace.patientName(course));
        }
    }
    std::sort(unheard.begin(), unheard.end());
    for (const auto& [at, name] : unheard) {
        count.unheard << name;
    }
    return count;
}

}  // namespace ebbline::deskapp
