#include "app/desk/queue/act_words.h"

#include "app/desk/model/times.h"

#include <QCoreApplication>

#include <algorithm>

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

QString onItText(const triage::Row& row, bool lapsed, const clock::Moment& now)
{
    const auto& last = *row.lastAct;
    QStringList parts;
    if (!lapsed) {
        parts << lastActText(last, now);
    }
    const bool isTaking = last.act == records::Act::taken && last.by == row.takenBy && last.at == row.takenAt;
    if (row.takenBy && !isTaking) {
        parts << LastAct::tr("Taken by %1, %2", "person, when").arg(QString::fromStdString(*row.takenBy), whenText(row.takenAt, now));
    }
    return parts.join(QStringLiteral(" · "));
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

QString callText(const journal::CourseState& course, const journal::Version<records::CallNoted>& call, const Stamp& stamp)
{
    const auto& noted = call.value;
    const auto said = noted.contact == records::Contact::sheRang  ? LastAct::tr("She rang, and %1 answered, %2", "person, when")
                      : noted.contact == records::Contact::spoken ? LastAct::tr("%1 spoke with her, %2", "person, when")
                      : noted.contact == records::Contact::visitBroughtForward ? LastAct::tr("%1 brought the visit forward, %2", "person, when")
                                                                  : LastAct::tr("%1 called and did not reach her, %2", "person, when");
    QStringList parts{said.arg(QString::fromStdString(noted.by), stamp(noted.at))};
    if (!noted.text.empty()) {
        parts << QString::fromStdString(noted.text);
    }
    if (const auto back = course.actsTakenBack.find(call.operation); back != course.actsTakenBack.end()) {
        parts << LastAct::tr("Taken back by %1").arg(QString::fromStdString(back->second.by));
    }
    return parts.join(QStringLiteral(". "));
}

QStringList callLines(const desk::CourseView& view, const Stamp& stamp)
{
    std::vector<std::pair<clock::Instant, QString>> lines;
    for (const auto& call : view.state->calls) {
        lines.emplace_back(call.value.at.at, callText(*view.state, call, stamp));
    }
    for (std::size_t i = 0; i < view.state->acts.size(); ++i) {
        const auto& act = view.state->acts[i];
        if (!triage::namesSilence(act.finding) || std::ranges::find(view.findings, act.finding, &triage::Finding::key) != view.findings.end()) {
            continue;
        }
        const auto* back = view.state->takenBack(i);
        lines.emplace_back(act.at.at, actText(act, stamp)
                                          + (back == nullptr ? QString() : QStringLiteral(". ") + LastAct::tr("Taken back by %1").arg(QString::fromStdString(back->by))));
    }
    std::ranges::stable_sort(lines, {}, [](const auto& line) { return line.first; });
    QStringList texts;
    for (const auto& [at, text] : lines) {
        texts << text;
    }
    texts.removeDuplicates();
    return texts;
}

}  // namespace ebbline::deskapp
