// The title of each page, for the window and for screen readers.
#include "app/desk/desk_program.h"

namespace ebbline::app {

QString DeskProgram::pageTitle() const
{
    switch (m_page) {
    case Page::unlock:
        return m_unlocking.title();
    case Page::person:
        return tr("Who is at the desk?");
    case Page::queue:
        return tr("Queue");
    case Page::handOver:
        return tr("Hand-over");
    case Page::courses:
        return tr("Courses");
    case Page::treatment:
        return tr("Treatment");
    case Page::pairing:
        return m_pairing.isForDesk() ? tr("Add a desk") : tr("Link a phone");
    case Page::course:
        return tr("Course");
    case Page::photos:
        return tr("Photographs");
    case Page::followUp:
        return tr("Follow-up");
    case Page::sheet:
        return tr("Follow-up sheet");
    case Page::protocols:
        return tr("Protocols");
    case Page::protocolEdit:
        return tr("Change the protocol");
    case Page::protocolFile:
        return tr("A protocol from a file");
    case Page::practice:
        return tr("Practice");
    case Page::clinic:
        return tr("Clinic");
    case Page::desks:
        return tr("Desks");
    case Page::apply:
        return tr("Join the clinic's other desks");
    case Page::keep:
        return tr("Backup and keys");
    case Page::traces:
        return tr("Who did what");
    case Page::settings:
        return tr("Settings");
    case Page::notices:
        return tr("About Ebbline");
    case Page::licence:
        return m_notices.chosen();
    }
    return {};
}

}  // namespace ebbline::app
