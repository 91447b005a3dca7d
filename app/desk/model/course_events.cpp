#include "app/desk/model/course_events.h"

#include "app/desk/model/times.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>
#include <tuple>

namespace ebbline::deskapp {

namespace {

struct Events {
    Q_DECLARE_TR_FUNCTIONS(Events)
};

}  // namespace

double recoveryDays(const clock::Moment& treated, const clock::Moment& at)
{
    const auto day = clock::dayOfRecovery(treated, at);
    return day + at.minuteOfDay() / (24.0 * 60.0);
}

QList<charts::Event> eventsOf(const journal::CourseState& course)
{
    QList<charts::Event> events;
    if (!course.treatment) {
        return events;
    }
    const auto& treated = course.treatment->treatment.at;
    const auto add = [&](const clock::Moment& at, const QString& label, bool urgent = false) {
        events.append({recoveryDays(treated, at), label, urgent});
    };
    for (const auto& warning : course.warnings) {
        if (!warning.confirmed) {
            add(warning.at, Events::tr("warned"), warning.urgency <= recovery::Urgency::callNow);
        }
    }
    const auto addQuiet = [&](const clock::Moment& at, const QString& label) {
        events.append({recoveryDays(treated, at), label, false, true});
    };
    std::map<int, std::pair<clock::Moment, int>> done;  // reminders of a day, at the last of them
    for (const auto& [key, reminder] : course.reminders) {
        if (reminder.answer != records::ReminderAnswer::done) {
            continue;
        }
        if (key.starts_with("dressings-off/")) {
            add(reminder.at, Events::tr("dressings off"));
            continue;
        }
        auto& [last, count] = done[clock::dayOfRecovery(treated, reminder.at)];
        last = count == 0 || reminder.at.at > last.at ? reminder.at : last;
        ++count;
    }
    for (const auto& [day, answered] : done) {
        addQuiet(answered.first, Events::tr("%Ln reminder(s) done", nullptr, answered.second));
    }
    for (std::size_t i = 0; i < course.acts.size(); ++i) {
        const auto& act = course.acts[i];
        if (course.takenBack(i) != nullptr) {
            continue;
        }
        switch (act.act) {
        case records::Act::called:
            add(act.at, act.outcome == records::Outcome::notReached ? Events::tr("not reached") : Events::tr("called"), true);
            break;
        case records::Act::visitBroughtForward: add(act.at, Events::tr("visit forward"), true); break;
        case records::Act::closed: add(act.at, Events::tr("closed")); break;
        case records::Act::reopened: add(act.at, Events::tr("reopened")); break;
        case records::Act::seen: addQuiet(act.at, Events::tr("seen")); break;
        case records::Act::taken: addQuiet(act.at, Events::tr("taken on")); break;
        }
    }
    for (const auto& call : course.calls) {
        if (!course.actsTakenBack.contains(call.operation)) {
            const auto contact = call.value.contact;
            add(call.value.at, contact == records::Contact::sheRang      ? Events::tr("she rang")
                               : contact == records::Contact::notReached ? Events::tr("not reached")
                               : contact == records::Contact::visitBroughtForward ? Events::tr("visit forward")
                                                                         : Events::tr("called"), true);
        }
    }
    for (const auto& [entry, opening] : course.openings) {
        addQuiet(opening.at, Events::tr("opened"));
    }
    for (const auto& [version, opening] : course.versionOpenings) {
        addQuiet(opening.at, Events::tr("opened"));
    }
    for (const auto& [entry, history] : course.entries) {
        if (history.current().scores.empty()) {
            addQuiet(history.current().at, Events::tr("entry without scores"));
        }
    }
    if (course.followUp) {
        add(course.followUp->at, Events::tr("follow-up"));
    }
    for (const auto& [photo, taken] : course.photos) {
        if (!course.photosRemoved.contains(photo)) {
            const bool own = course.clinicPhotos.contains(photo) && course.treatment;
            addQuiet(own ? course.treatment->treatment.at : taken.value.at, Events::tr("photos"));
        }
    }
    std::stable_sort(events.begin(), events.end(), [](const auto& a, const auto& b) {
        return std::tuple(static_cast<int>(a.day), a.label, a.day) < std::tuple(static_cast<int>(b.day), b.label, b.day);
    });
    // The same word twice on one day says nothing more.
    const auto same = [](const charts::Event& a, const charts::Event& b) {
        return a.label == b.label && static_cast<int>(a.day) == static_cast<int>(b.day);
    };
    events.erase(std::unique(events.begin(), events.end(), same), events.end());
    std::stable_sort(events.begin(), events.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
    return events;
}

QString eventsSentence(const QList<charts::Event>& events)
{
    QStringList days;
    for (qsizetype i = 0; i < events.size();) {
        const int day = static_cast<int>(events[i].day);
        QStringList labels;
        for (; i < events.size() && static_cast<int>(events[i].day) == day; ++i) {
            labels << events[i].label;
        }
        days << Events::tr("%1: %2.", "day, what happened").arg(dayText(day), labels.join(QStringLiteral(", ")));
    }
    return days.join(u' ');
}

}  // namespace ebbline::deskapp
