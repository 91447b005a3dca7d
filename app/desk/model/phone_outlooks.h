#pragma once
/// \file
/// How it stands with the patients' phones, in words. Nothing here says that a phone has something before it has
/// acknowledged it, and silence of a phone is not taken for silence of the patient.

#include "app/desk/model/workplace.h"
#include "core/sync/outlook.h"

#include <QStringList>

#include <map>

namespace ebbline::deskapp {

/// That the hub does not take something, why, and what to do.
QString refusedText(sync::Refusal::Why why);

class PhoneOutlooks {
public:
    /// The phones in use, one a course. \pre the workplace is open, and stays so
    explicit PhoneOutlooks(Workplace& workplace);

    /// Of a course's phone; empty: none is linked, or there is nothing to say.
    QString text(const recovery::CourseId& course) const;

    struct Count {
        int linked = 0;
        int waiting = 0;     ///< have not confirmed what was sent to them
        int unproved = 0;    ///< the same for longer than a day
        int withheld = 0;
        int forked = 0;
        int older = 0;
        QStringList unreadable;   ///< names of the patients of whose phones something cannot be read, with how much
        int overdue = 0;          ///< the highest of sync::overdueDays that any of them reached; 0: none
        QStringList overdueNames; ///< of all that reached one
        QStringList unheard;  ///< names of the patients, by how long it is since
    };
    /// Over courses that are not closed.
    Count count() const;

private:
    std::optional<sync::Outlook> of(const recovery::CourseId& course) const;
    int unreadableOf(const recovery::CourseId& course) const;  ///< messages

    Workplace& m_workplace;
    struct Phone {
        envelope::MailboxId mailbox;
        envelope::DeviceId device;
    };
    std::map<recovery::CourseId, Phone> m_phones;
};

}  // namespace ebbline::deskapp
