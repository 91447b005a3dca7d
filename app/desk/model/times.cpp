#include "app/desk/model/times.h"

#include "app/charts/curve_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QTimeZone>

namespace ebbline::deskapp {

namespace {

class Times {
    Q_DECLARE_TR_FUNCTIONS(Times)
};

/// The wall clock of a moment, carried as if it were UTC so that no zone of this machine moves it.
QDateTime wallClock(const clock::Moment& moment)
{
    const auto local = moment.at.time_since_epoch() + moment.offset;
    return QDateTime::fromMSecsSinceEpoch(
        std::chrono::duration_cast<std::chrono::milliseconds>(local).count(), QTimeZone::utc());
}

}  // namespace

QDate dateOf(const clock::Moment& moment)
{
    return wallClock(moment).date();
}

QString clockText(const clock::Moment& moment)
{
    return QLocale().toString(wallClock(moment).time(), QLocale::ShortFormat);
}

QString dateText(const clock::Moment& moment)
{
    auto text = QLocale().toString(wallClock(moment).date(), QLocale::LongFormat);
    return text;
}

QString whenText(const clock::Moment& moment, const clock::Moment& now)
{
    const auto days = dateOf(moment).daysTo(dateOf(now));
    if (days == 0) {
        return Times::tr("Today %1").arg(clockText(moment));
    }
    if (days == 1) {
        return Times::tr("Yesterday %1").arg(clockText(moment));
    }
    const auto date = QLocale().toString(dateOf(moment), Times::tr("d MMM", "date without a year"));
    return Times::tr("%1, %2", "date, time").arg(date, clockText(moment));
}

QString stampText(const clock::Moment& moment)
{
    const auto date = QLocale().toString(dateOf(moment), Times::tr("d MMM yyyy", "date with a year"));
    return Times::tr("%1, %2", "date, time").arg(date, clockText(moment));
}

QString agoText(const clock::Moment& moment, const clock::Moment& now)
{
    const auto passed = std::chrono::floor<std::chrono::minutes>(now.at - moment.at);
    const auto minutes = static_cast<int>(passed.count());
    if (minutes < 1) {
        return Times::tr("just now");
    }
    if (minutes < 60) {
        return Times::tr("%Ln min", nullptr, minutes);
    }
    if (minutes < 48 * 60) {
        return Times::tr("%Ln h", nullptr, minutes / 60);
    }
    return Times::tr("%Ln day(s)", nullptr, minutes / (24 * 60));
}

QString dayText(int day)
{
    return Times::tr("Day %1").arg(charts::digits(day));
}

}  // namespace ebbline::deskapp
