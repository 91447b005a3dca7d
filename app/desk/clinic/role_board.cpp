#include "app/desk/clinic/role_board.h"

#include "app/desk/model/role_words.h"
#include "app/desk/model/words.h"

namespace ebbline::deskapp {

RoleBoard::RoleBoard(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace)
{
    connect(&workplace, &Workplace::openChanged, this, &RoleBoard::open);
    connect(&workplace, &Workplace::changed, this, &RoleBoard::refresh);
}

void RoleBoard::open()
{
    m_outcome.clear();
    m_asked.reset();
    refresh();
}

void RoleBoard::refresh()
{
    QList<RowList::Row> rows;
    const auto clinic = m_workplace.isOpen() ? m_workplace.desk().clinic() : std::nullopt;
    for (const auto& name : clinic ? clinic->people : std::vector<std::string>()) {
        const auto role = m_workplace.desk().roleOf(name);
        PersonRow row;
        row.name = QString::fromStdString(name);
        row.role = role ? static_cast<int>(*role) - 1 : -1;
        row.may = roleText(role);
        rows.append({row.name, {}, QVariant::fromValue(row)});
    }
    m_persons.setRows(std::move(rows));
    Q_EMIT changed();
}

QStringList RoleBoard::names() const
{
    QStringList names;
    for (int role = 1; role <= static_cast<int>(records::newestRole); ++role) {
        names << roleName(static_cast<records::Role>(role));
    }
    return names;
}

QString RoleBoard::barred(records::Task task) const
{
    return m_workplace.isOpen() ? barredText(m_workplace.desk(), task) : QString();
}

bool RoleBoard::give(const QString& name, int role)
{
    if (!m_workplace.isOpen() || role < 0 || role >= static_cast<int>(records::newestRole)) {
        return false;
    }
    m_outcome.clear();
    m_asked.reset();
    if (!m_workplace.mayDo(records::Task::people)) {
        Q_EMIT changed();
        return false;
    }
    const auto wanted = static_cast<records::Role>(role + 1);
    const desk::Desk& desk = m_workplace.desk();
    // Where nobody else may, it is refused below.
    const bool fromHerself = name.toStdString() == desk.person() && !records::allows(wanted, records::Task::people)
                             && desk.mayDo(records::Task::people) && desk.whoMay(records::Task::people).size() > 1;
    if (fromHerself) {
        m_asked = {name, wanted};
        Q_EMIT changed();
        return false;
    }
    return giveNow(name, wanted);
}

QString RoleBoard::question() const
{
    return m_asked ? tr("%1, “%2” takes the right to give roles from you. Only somebody else who has it can give it back.", "person, role")
                         .arg(m_asked->first, roleName(m_asked->second))
                   : QString();
}

bool RoleBoard::giveAsked()
{
    const auto asked = std::exchange(m_asked, std::nullopt);
    return asked && m_workplace.isOpen() && giveNow(asked->first, asked->second);
}

void RoleBoard::leaveQuestion()
{
    if (m_asked) {
        m_asked.reset();
        Q_EMIT changed();
    }
}

bool RoleBoard::giveNow(const QString& name, records::Role role)
{
    const auto given = m_workplace.desk().giveRole(name.toStdString(), role);
    if (given) {
        m_outcome = tr("%1: %2 from now on.", "person, role").arg(name, roleName(role));
    } else {
        m_outcome = given.error().reason == Reason::notEnough ? nobodyLeftText() : errorText(given.error());
    }
    m_workplace.settle({});
    return given.has_value();
}

}  // namespace ebbline::deskapp
