#include "app/desk/queue/act_words.h"

#include "app/desk/model/times.h"

#include <QCoreApplication>

namespace ebbline::deskapp {

namespace {

struct LastAct {
    Q_DECLARE_TR_FUNCTIONS(LastAct)
};

}  // namespace

QString lastActText(const records::FindingActed& act, const clock::Moment& now)
{
    const bool reached = act.outcome != records::Outcome::notReached;
    const auto text = act.act == records::Act::visitBroughtForward      ? LastAct::tr("%1 brought the visit forward, %2", "person, when")
                      : act.act == records::Act::called && reached      ? LastAct::tr("%1 spoke with her, %2", "person, when")
                      : act.act == records::Act::called                 ? LastAct::tr("%1 called and did not reach her, %2", "person, when")
                                                                        : LastAct::tr("Taken by %1, %2", "person, when");
    return text.arg(QString::fromStdString(act.by), whenText(act.at, now));
}

QString lapsedText(const records::FindingActed& act, const clock::Moment& now)
{
    const auto by = QString::fromStdString(act.by);
    if (act.act == records::Act::called && act.outcome == records::Outcome::notReached) {
        return LastAct::tr("%1 called and did not reach her, %2, nothing noted since", "person, when").arg(by, whenText(act.at, now));
    }
    const auto text = act.act == records::Act::visitBroughtForward ? LastAct::tr("%1 brought the visit forward %2 ago, nothing noted since", "person, how long")
                      : act.act == records::Act::called            ? LastAct::tr("%1 spoke with her %2 ago, nothing noted since", "person, how long")
                                                                   : LastAct::tr("Taken by %1 %2 ago, nothing noted since", "person, how long");
    return text.arg(by, agoText(act.at, now));
}

}  // namespace ebbline::deskapp
