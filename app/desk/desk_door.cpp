// The door of the desk: what shows when it opens and locks, by hand or because nobody uses it.
#include "app/desk/desk_program.h"

#include <QApplication>
#include <QDialog>

#include <utility>

namespace ebbline::app {

void DeskProgram::watchUse()
{
    const auto limit = [this] { m_idle.setLimit(std::chrono::minutes(m_settings.lockMinutes())); };
    limit();
    connect(&m_settings, &deskapp::SettingsBoard::changed, this, limit);
    connect(&m_idle, &controls::IdleLock::lockAsked, this, &DeskProgram::lockIdle);
    // A screen reader acts without a touch or a key: what it changes is use as well.
    const auto used = [this] { m_idle.used(); };
    connect(this, &DeskProgram::pageChanged, this, used);
    connect(&m_settings, &deskapp::SettingsBoard::changed, this, used);
    connect(&m_course, &deskapp::CourseBoard::draftChanged, this, used);
    connect(&m_call, &deskapp::CallBoard::noteChanged, this, used);
    connect(&m_followUp, &deskapp::FollowUpEditor::changed, this, used);
}

void DeskProgram::afterUnlock()
{
    dismissNotice();
    // Invented patients have no keys to protect, and locking would throw them away.
    m_idle.watch(m_setup.locksWhenIdle && m_workplace.isOpen() && !m_workplace.isDemo());
    if (!m_workplace.isOpen()) {
        turnTo(Page::unlock);
    } else if (!m_clinic.isDescribed()) {
        openClinic();
    } else if (m_clinic.person().isEmpty()) {
        whoAmI();
    } else {
        goOn();
    }
}

void DeskProgram::sayCodeIsGone()
{
    m_notice = tr("The recovery code is not shown any more. If it is not on paper, make a new one.");
    Q_EMIT noticeChanged();
}

void DeskProgram::choosePerson(const QString& name)
{
    m_clinic.setPerson(name);
    m_queue.showAll();
    m_queue.forgetUndo();  // it was somebody else's act
    goOn();
}

/// To the queue, unless a record was being written: it lies where it was left. A course is not opened again by itself,
/// because that tells the patient who has read it.
void DeskProgram::goOn()
{
    const auto left = std::exchange(m_left, {});
    if (left && left->page == Page::treatment && !left->course.isNull()) {
        openCorrection(deskapp::keyOf(left->course));
        m_treatment.setStep(left->step);
    } else if (left && left->page == Page::treatment && m_treatment.isBegun()) {
        openTreatment();
        m_treatment.setStep(left->step);
    } else if (left && left->page == Page::followUp) {
        openFollowUp(deskapp::keyOf(left->course));
    } else if (const auto draft = m_workplace.desk().protocolDraft(); left && left->page == Page::protocolEdit && draft) {
        m_protocolEditor.open(draft->name);
        m_protocolEditor.setStep(left->step);
        turnTo(Page::protocolEdit);
    } else if (left && left->page == Page::clinic) {
        openClinic();
    } else if (left && left->page == Page::keep && left->codeShown) {
        openKeep();
        sayCodeIsGone();
    } else {
        openQueue();
    }
    if (m_page == Page::unlock || m_page == Page::person) {
        openQueue();  // what was begun is no more: a colleague at another desk recorded it
    }
}

void DeskProgram::lock()
{
    m_idle.watch(false);  // what closing changes is no use, and asks for no second lock
    if (m_workplace.isOpen()) {
        controls::finishTyping(window());
    }
    m_workplace.lock();
    // What stands in a window of its own, a place to save a file above all, does not stay over the locked desk.
    for (QWidget* window : QApplication::topLevelWidgets()) {
        if (auto* dialog = qobject_cast<QDialog*>(window)) {
            dialog->reject();
        }
    }
}

void DeskProgram::lockIdle()
{
    if (m_keep.isBusy()) {
        return m_idle.watch(true);  // how a backup or a check ends would go unseen
    }
    m_left = Left{m_page, m_page == Page::protocolEdit ? m_protocolEditor.step() : m_treatment.step(), !m_keep.code().isEmpty(),
                  m_page == Page::treatment ? m_treatment.correcting() : m_followUp.course()};
    lock();
}

}  // namespace ebbline::app
