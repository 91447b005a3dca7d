#include "app/desk/model/role_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

namespace ebbline::deskapp {

namespace {

struct Roles {
    Q_DECLARE_TR_FUNCTIONS(Roles)
};

QString taskText(records::Task task)
{
    switch (task) {
    case records::Task::treat:
        return Roles::tr("Recording treatments and follow-ups");
    case records::Task::close:
        return Roles::tr("Closing a finding");
    case records::Task::protocol:
        return Roles::tr("Signing a protocol, a usual range or a limit");
    case records::Task::phones:
        return Roles::tr("Linking and ending patients' phones");
    case records::Task::desks:
        return Roles::tr("Adding and shutting out desks, fresh keys and the hub");
    case records::Task::numbers:
        return Roles::tr("Changing the numbers that patients call");
    case records::Task::people:
        return Roles::tr("Naming people and giving roles");
    case records::Task::keep:
        return Roles::tr("Backups, passphrase and saving who did what");
    case records::Task::figures:
        return Roles::tr("The practice's figures");
    }
    return {};
}

}  // namespace

QString roleName(records::Role role)
{
    switch (role) {
    case records::Role::inCharge:
        return Roles::tr("In charge");
    case records::Role::practitioner:
        return Roles::tr("Practitioner");
    case records::Role::onCall:
        return Roles::tr("Colleague on call");
    case records::Role::assistant:
        return Roles::tr("Assistant");
    case records::Role::machines:
        return Roles::tr("Keeper of the computers");
    }
    return {};
}

QString roleText(std::optional<records::Role> role)
{
    if (!role) {
        return Roles::tr("No role yet: may do everything.");
    }
    switch (*role) {
    case records::Role::inCharge:
        return Roles::tr("May do everything.");
    case records::Role::practitioner:
        return Roles::tr("Treatments, follow-ups and closing findings; patients' phones; the numbers that patients call; the practice's figures.");
    case records::Role::onCall:
        return Roles::tr("Closing findings; patients' phones.");
    case records::Role::assistant:
        return Roles::tr("Patients' phones.");
    case records::Role::machines:
        return Roles::tr("Desks, keys and the hub; backups and passphrase; saving who did what.");
    }
    return {};
}

QString barredText(const desk::Desk& desk, records::Task task)
{
    if (desk.mayDo(task)) {
        return {};
    }
    const auto role = desk.roleOf(desk.person());
    if (!role) {
        return Roles::tr("Say first who is at the desk.");
    }
    QStringList names;
    for (const auto& name : desk.whoMay(task)) {
        names << QString::fromStdString(name);
    }
    if (names.isEmpty()) {
        return Roles::tr("%1: nobody here has a role for that. Whoever is in charge can give one.").arg(taskText(task));
    }
    return Roles::tr("%1: for %2. Your role here: %3.", "task, people, role")
        .arg(taskText(task), QLocale().createSeparatedList(names), roleName(*role));
}

QString beyondRoleText()
{
    return Roles::tr("not allowed by the role at that time");
}

QString nobodyLeftText()
{
    return Roles::tr("Somebody has to remain who may name people and give roles. Give another person the role “In charge” first.");
}

}  // namespace ebbline::deskapp
