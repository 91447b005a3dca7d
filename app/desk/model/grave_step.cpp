#include "app/desk/model/grave_step.h"

#include "app/controls/typed_secret.h"
#include "app/desk/model/words.h"

#include <QCoreApplication>

namespace ebbline::deskapp {

namespace {

struct GraveStep {
    Q_DECLARE_TR_FUNCTIONS(GraveStep)
};

}  // namespace

QStringList secondsOf(Workplace& workplace)
{
    QStringList names;
    if (workplace.isOpen()) {
        for (const auto& name : workplace.desk().seconds()) {
            names << QString::fromStdString(name);
        }
    }
    return names;
}

QString prepareStep(Workplace& workplace, bool asksPassphrase, const QString& passphrase, bool forTwo, int second)
{
    auto& desk = workplace.desk();
    const auto names = desk.seconds();
    const bool named = second >= 0 && static_cast<std::size_t>(second) < names.size();
    if (forTwo && !names.empty() && !named) {
        return GraveStep::tr("Choose who stands by: this is for two people.");
    }
    if (asksPassphrase) {
        const TypedSecret typed(passphrase);
        if (const Done allowed = desk.allowStep(typed.view()); !allowed) {
            return passphrase.isEmpty() ? GraveStep::tr("Type the passphrase of this desk.") : errorText(allowed.error());
        }
    }
    desk.setSecond(forTwo && named ? names[static_cast<std::size_t>(second)] : std::string());
    return {};
}

}  // namespace ebbline::deskapp
