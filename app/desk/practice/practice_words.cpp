#include "app/desk/practice/practice_words.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/words.h"

#include <QLocale>

#include <array>
#include <cmath>

namespace ebbline::deskapp {

QString numberText(double value, int decimals)
{
    const double scale = std::pow(10.0, decimals);
    return QLocale().toString(std::round(scale * value) / scale + 0.0, 'f', decimals);
}

QString percentText(double share)
{
    return charts::withPercent(numberText(100 * share));
}

QString rawNumber(double value)
{
    return QString::number(value, 'g', QLocale::FloatingPointShortest);
}

QString ofHundredText(double probability)
{
    return probability > 0 && probability < 0.0005 ? Practice::tr("fewer than %1", "of 100").arg(numberText(0.1)) : numberText(100 * probability);
}

QString lackText(const learning::NotEnough& lack)
{
    const auto have = static_cast<int>(lack.have);
    const auto want = charts::digits(static_cast<int>(lack.want));
    switch (lack.lack) {
    case learning::Lack::outcomes:
        return Practice::tr("Not enough to say: %Ln known outcome(s), %1 are needed", nullptr, have).arg(want);
    case learning::Lack::courses:
        return Practice::tr("Not enough to say: %Ln course(s) had it, %1 are needed", nullptr, have).arg(want);
    case learning::Lack::followed:
        return Practice::tr("Not enough to say: followed for %Ln day(s), %1 are needed", nullptr, have).arg(want);
    case learning::Lack::groups:
        return Practice::tr("Not enough to say: %Ln group(s), %1 are needed", nullptr, have).arg(want);
    case learning::Lack::spread:
        return Practice::tr("Not enough to say: nothing varied");
    case learning::Lack::apart:
        return Practice::tr("Not enough to say: the groups lie too far apart");
    case learning::Lack::events:
        return Practice::tr("Not enough to say: nothing happened in either group");
    }
    return {};
}

QString shareText(const learning::Answer<learning::Share>& share)
{
    return share ? Practice::tr("%1 (%2 to %3)", "share, its limits")
                       .arg(percentText(share->share), numberText(100 * share->limits.low), numberText(100 * share->limits.high))
                 : lackText(share.error());
}

QString countText(long part, long whole)
{
    return Practice::tr("%1 of %Ln course(s)", nullptr, static_cast<int>(whole)).arg(charts::digits(static_cast<int>(part)));
}

QString wayName(learning::Way way)
{
    switch (way) {
    case learning::Way::ending:
        return Practice::tr("Where threads end");
    case learning::Way::gauge:
        return Practice::tr("Gauge");
    case learning::Way::epinephrine:
        return Practice::tr("Epinephrine at the entry point");
    case learning::Way::area:
        return Practice::tr("Face or neck");
    case learning::Way::threads:
        return Practice::tr("Threads");
    }
    return {};
}

QString groupName(learning::Way way, const std::string& group)
{
    const auto text = QString::fromStdString(group);
    if (group.empty()) {
        return Practice::tr("Not told");
    }
    if (group == "mixed") {
        return Practice::tr("Mixed");
    }
    switch (way) {
    case learning::Way::ending:
        return group == "past-moving-zone" ? Practice::tr("Past the moving zone") : Practice::tr("Short of the moving zone");
    case learning::Way::gauge:
        return Practice::tr("%1 G", "gauge of needle or cannula").arg(charts::digits(text.toInt()));
    case learning::Way::epinephrine:
        return group == "with" ? Practice::tr("With epinephrine") : Practice::tr("Without epinephrine");
    case learning::Way::area:
        return group == "neck" ? Practice::tr("Neck") : Practice::tr("Face");
    case learning::Way::threads:
        break;
    }
    const auto space = text.indexOf(QLatin1Char(' '));
    for (int material = 1; material <= static_cast<int>(recovery::Material::other); ++material) {
        for (int form = 1; form <= static_cast<int>(recovery::Form::cones); ++form) {
            const auto m = static_cast<recovery::Material>(material);
            const auto f = static_cast<recovery::Form>(form);
            if (space > 0 && text == QString::fromUtf8(recovery::word(m)) + QLatin1Char(' ') + QString::fromUtf8(recovery::word(f))) {
                return materialName(m) + QStringLiteral(", ") + formName(f);
            }
        }
    }
    return text;
}

QString wayCaution(learning::Way way)
{
    switch (way) {
    case learning::Way::ending:
        return Practice::tr("Deep folds ask for threads past the moving zone, and deep folds recover otherwise.");
    case learning::Way::gauge:
        return Practice::tr("Stronger threads need a lower gauge: what differs may be the thread.");
    case learning::Way::epinephrine:
        return Practice::tr("Epinephrine hides early bruising, and is left out for patients who bleed or have a weak heart. Courses whose threads do not all say where they had it, as those of an older program, are not counted.");
    case learning::Way::area:
        return Practice::tr("Face and neck swell and settle otherwise by nature: this shows what to tell patients, not which is better.");
    case learning::Way::threads:
        return Practice::tr("Threads were chosen for the face: heavy faces get other threads than light ones.");
    }
    return {};
}

}  // namespace ebbline::deskapp
