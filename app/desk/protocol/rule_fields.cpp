#include "app/desk/protocol/rule_fields.h"

#include <QCoreApplication>

namespace ebbline::deskapp {

namespace {

class RuleFields {
    Q_DECLARE_TR_FUNCTIONS(RuleFields)
};

using triggers::Thresholds;

constexpr const char* level = QT_TRANSLATE_NOOP("RuleFields", "Above the usual range");
constexpr const char* rebound = QT_TRANSLATE_NOOP("RuleFields", "Rising again");
constexpr const char* sides = QT_TRANSLATE_NOOP("RuleFields", "One side much worse");
constexpr const char* fills = QT_TRANSLATE_NOOP("RuleFields", "One side fills in the first days");
constexpr const char* slow = QT_TRANSLATE_NOOP("RuleFields", "Slow to settle");
constexpr const char* pucker = QT_TRANSLATE_NOOP("RuleFields", "Puckering that stays");
constexpr const char* silence = QT_TRANSLATE_NOOP("RuleFields", "Nothing heard");

constexpr const char* atLeast = QT_TRANSLATE_NOOP("RuleFields", "only from this score on");
constexpr const char* aboveLowest = QT_TRANSLATE_NOOP("RuleFields", "only so far above the lowest so far");
constexpr const char* fromDay = QT_TRANSLATE_NOOP("RuleFields", "from this day on");
constexpr const char* upToDay = QT_TRANSLATE_NOOP("RuleFields", "up to this day");
constexpr const char* between = QT_TRANSLATE_NOOP("RuleFields", "only with so much between the sides");
constexpr const char* betweenAll = QT_TRANSLATE_NOOP("RuleFields", "only with so much between the sides, symptoms added up");
constexpr const char* peak = QT_TRANSLATE_NOOP("RuleFields", "only after a peak of this score");
constexpr const char* unchanged = QT_TRANSLATE_NOOP("RuleFields", "unchanged for a week: from this day on");
constexpr const char* unchangedFrom = QT_TRANSLATE_NOOP("RuleFields", "unchanged for a week: only from this score on");
constexpr const char* without = QT_TRANSLATE_NOOP("RuleFields", "without an entry");
constexpr const char* withoutHigh = QT_TRANSLATE_NOOP("RuleFields", "without an entry, after a high one");

constexpr RuleField fields[] = {
    {&Thresholds::levelGuard, level, atLeast, 1, 10, false},
    {&Thresholds::reboundGuard, rebound, aboveLowest, 1, 8, false},
    {&Thresholds::reboundFirstDay, rebound, fromDay, 1, 14, true},
    {&Thresholds::sideGuard, sides, between, 1, 8, false},
    {&Thresholds::fillingGuard, fills, betweenAll, 2, 20, false},
    {&Thresholds::fillingLastDay, fills, upToDay, 1, 10, true},
    {&Thresholds::slowGuard, slow, atLeast, 1, 8, false},
    {&Thresholds::slowFirstDay, slow, fromDay, 3, 20, true},
    {&Thresholds::slowPeakGuard, slow, peak, 1, 10, false},
    {&Thresholds::puckeringGuard, pucker, atLeast, 1, 8, false},
    {&Thresholds::puckeringDay, pucker, fromDay, 7, 28, true},
    {&Thresholds::puckeringStuckGuard, pucker, unchangedFrom, 1, 8, false},
    {&Thresholds::puckeringStuckDay, pucker, unchanged, 7, 21, true},
    {&Thresholds::silentDays, silence, without, 1, 7, true},
    {&Thresholds::silentDaysWhenHigh, silence, withoutHigh, 1, 7, true},
};

}  // namespace

std::span<const RuleField> ruleFields()
{
    return fields;
}

QString ruleTitle(const RuleField& field)
{
    return RuleFields::tr(field.rule);
}

QString ruleWhat(const RuleField& field)
{
    return RuleFields::tr(field.what);
}

QString ruleUnit(const RuleField& field)
{
    return field.days ? RuleFields::tr("days") : RuleFields::tr("points");
}

}  // namespace ebbline::deskapp
