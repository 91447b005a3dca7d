#include "app/diary/diary_program.h"

#include "app/diary/model/words.h"

namespace ebbline::app {

void DiaryProgram::syncNow()
{
    m_pulse.nudge();
}

void DiaryProgram::askNow()
{
    m_asked = true;
    if (m_pulse.runNow() || m_pulse.isBusy())
        return;
    m_asked = false;
    say(tr("This device can not reach a clinic."));
}

/// A run without a problem may have left something here: the hub refuses it, the clinic asks for a newer program first, or
/// another phone is linked.
bool DiaryProgram::isAllSent(const sync::Report& report) const
{
    return !report.problem && !report.tooOld && report.refused == 0 && m_home.isOpen() && !m_home.diary().tooOld() && !m_home.diary().replaced();
}

void DiaryProgram::afterRun(const sync::Report& report)
{
    // As it stands now, whatever run saw it: what one run missed the next one may have brought. Where it cannot be told, what
    // this run saw counts, and nothing is taken back.
    const bool seen = report.gapSeen || report.forkSeen;
    const auto outlook = m_home.isOpen() && m_home.diary().joined() ? m_home.diary().outlook() : std::nullopt;
    if (m_tellsMissing && outlook && !outlook->missing)
        dismissNotice();
    if (outlook ? outlook->missing && (seen || m_asked) : seen) {
        say(tr("A message between you and the clinic is missing. Call the clinic, please."), {}, true);
        m_tellsMissing = true;
    } else if (m_asked && report.problem)
        say(diaryapp::errorText(*report.problem));
    else if (m_asked && isAllSent(report))
        say(tr("Done. All is sent and fetched."));
    else if (m_asked)
        say(tr("Something that you wrote still waits on this phone. If it is urgent, call."), {}, true);
    m_asked = false;
    m_home.touch();
}

}  // namespace ebbline::app
