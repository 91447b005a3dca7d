#include "app/diary/model/emergency_numbers.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace ebbline::diaryapp {

namespace {

/// Sources: docs/clinical/emergency_numbers.md.
struct Known {
    const char* title;
    const char* number;
    QLocale::Territory region;  ///< AnyTerritory: the member states below
};

constexpr std::array table{
    Known{QT_TRANSLATE_NOOP("EmergencyNumbers", "Emergency number (European Union)"), "112", QLocale::AnyTerritory},
    Known{QT_TRANSLATE_NOOP("EmergencyNumbers", "Emergency number (United Kingdom)"), "999", QLocale::UnitedKingdom},
    Known{QT_TRANSLATE_NOOP("EmergencyNumbers", "Emergency number (United States)"), "911", QLocale::UnitedStates},
    Known{QT_TRANSLATE_NOOP("EmergencyNumbers", "Ambulance (Brazil)"), "192", QLocale::Brazil},
    Known{QT_TRANSLATE_NOOP("EmergencyNumbers", "Ambulance (China)"), "120", QLocale::China},
    Known{QT_TRANSLATE_NOOP("EmergencyNumbers", "Ambulance (Switzerland)"), "144", QLocale::Switzerland},
    Known{QT_TRANSLATE_NOOP("EmergencyNumbers", "Ambulance (Turkey)"), "112", QLocale::Turkey},
};

constexpr std::array union27{
    QLocale::Austria, QLocale::Belgium, QLocale::Bulgaria, QLocale::Croatia,   QLocale::Cyprus,     QLocale::Czechia,     QLocale::Denmark,
    QLocale::Estonia, QLocale::Finland, QLocale::France,   QLocale::Germany,   QLocale::Greece,     QLocale::Hungary,     QLocale::Ireland,
    QLocale::Italy,   QLocale::Latvia,  QLocale::Lithuania, QLocale::Luxembourg, QLocale::Malta,    QLocale::Netherlands, QLocale::Poland,
    QLocale::Portugal, QLocale::Romania, QLocale::Slovakia, QLocale::Slovenia, QLocale::Spain,      QLocale::Sweden};
static_assert(union27.size() == 27);

bool isFor(const Known& known, QLocale::Territory region)
{
    return known.region == QLocale::AnyTerritory ? std::find(union27.begin(), union27.end(), region) != union27.end()
                                                 : known.region == region;
}

}  // namespace

QLocale::Territory regionOf(const QTimeZone& zone, QLocale::Territory settings)
{
    const QLocale::Territory region = zone.isValid() ? zone.territory() : QLocale::AnyTerritory;
    return region == QLocale::AnyTerritory ? settings : region;
}

QLocale::Territory regionHere()
{
    return regionOf(QTimeZone::systemTimeZone(), QLocale::system().territory());
}

QList<RegionNumber> emergencyNumbersIn(QLocale::Territory region)
{
    QList<RegionNumber> here;
    QList<RegionNumber> all;
    for (const Known& known : table) {
        const RegionNumber number{QCoreApplication::translate("EmergencyNumbers", known.title), QString::fromLatin1(known.number)};
        all << number;
        if (isFor(known, region))
            here << number;
    }
    return here.isEmpty() ? all : here;
}

}  // namespace ebbline::diaryapp
