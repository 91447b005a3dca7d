// Times as the desk writes them.
#include "app/charts/curve_words.h"
#include "app/desk/model/times.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using namespace ebbline::deskapp;

namespace {

/// 2027-03-05 at the given local time, one hour ahead of UTC.
clock::Moment at(int day, int hour, int minute)
{
    using namespace std::chrono;
    return {sys_days{year{2027} / 3 / day} + hours(hour) + minutes(minute) - hours(1), minutes(60), "Europe/Berlin"};
}

}  // namespace

TEST_CASE("today and yesterday are named, other days have their date", "[desk][times]")
{
    const auto now = at(5, 14, 0);

    CHECK(whenText(at(5, 9, 5), now).startsWith(QLatin1String("Today 9:05")));
    CHECK(whenText(at(4, 23, 59), now).startsWith(QLatin1String("Yesterday 11:59")));
    CHECK(whenText(at(1, 9, 5), now).startsWith(QLatin1String("1 Mar, 9:05")));
}

TEST_CASE("a time is shown as its own wall clock had it, wherever the reader is", "[desk][times]")
{
    auto far = at(5, 9, 5);
    far.offset = std::chrono::minutes(9 * 60);  // 08:05 UTC is 17:05 there

    CHECK(clockText(far).startsWith(QLatin1String("5:05")));
}

TEST_CASE("how long ago is rounded down", "[desk][times]")
{
    const auto now = at(5, 14, 0);

    CHECK(agoText(at(5, 14, 0), now) == QLatin1String("just now"));
    CHECK(agoText(at(5, 13, 1), now) == QLatin1String("59 min"));
    CHECK(agoText(at(5, 12, 1), now) == QLatin1String("1 h"));
    CHECK(agoText(at(3, 13, 59), now) == QLatin1String("2 day(s)"));
}

TEST_CASE("a share is written as the language sets it: with its own space before the sign, or with none", "[desk][percent]")
{
    const QLocale before;
    const auto written = [](const char* locale) {
        QLocale::setDefault(QLocale(QLatin1String(locale)));
        return charts::withPercent(QStringLiteral("23"));
    };
    CHECK(written("en_GB") == QStringLiteral("23%"));
    CHECK(written("pt_BR") == QStringLiteral("23%"));
    CHECK(written("de") == QStringLiteral("23\u00A0%"));
    CHECK(written("es") == QStringLiteral("23\u00A0%"));
    CHECK(written("fr") == QStringLiteral("23\u202F%"));
    CHECK(written("tr") == QStringLiteral("%23"));
    QLocale::setDefault(before);
}
