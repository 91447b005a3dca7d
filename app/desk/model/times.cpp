#include "app/desk/model/times.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/words.h"
#include "core/clock/iso8601.h"

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

QString inPlainDigits(const QString& text)
{
    auto plain = text.trimmed();
    for (auto& letter : plain) {
        if (letter.isDigit()) {
            letter = QChar(u'0' + letter.digitValue());
        }
    }
    return plain;
}

}  // namespace

QDate dateOf(const clock::Moment& moment)
{
    return wallClock(moment).date();
}

QDate dateOf(clock::LocalDay day)
{
    return QDate(1970, 1, 1).addDays(day.time_since_epoch().count());
}

QString dayField(clock::LocalDay day)
{
    return dateOf(day).toString(Qt::ISODate);
}

QString timeField(int minuteOfDay)
{
    return QTime(0, 0).addSecs(60 * minuteOfDay).toString(QStringLiteral("HH:mm"));
}

std::optional<clock::LocalDay> dayFrom(const QString& text)
{
    const auto date = QDate::fromString(inPlainDigits(text), Qt::ISODate);
    return date.isValid() ? std::optional(clock::LocalDay{std::chrono::days(QDate(1970, 1, 1).daysTo(date))}) : std::nullopt;
}

std::optional<int> minuteFrom(const QString& text)
{
    auto time = QTime::fromString(inPlainDigits(text).replace(u'.', u':'), QStringLiteral("H:mm"));
    if (!time.isValid()) {
        time = QLocale().toTime(text.trimmed(), QLocale::ShortFormat);
    }
    return time.isValid() ? std::optional(time.hour() * 60 + time.minute()) : std::nullopt;
}

QString clockText(const clock::Moment& moment)
{
    return QLocale().toString(wallClock(moment).time(), QLocale::ShortFormat);
}

QString zonedClockText(const clock::Moment& moment)
{
    return clockText(moment) + u' ' + leftToRight(clock::offsetText(moment));
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
    return Times::tr("%1, %2", "date, time").arg(date, zonedClockText(moment));
}

QString agoText(const clock::Moment& moment, const clock::Moment& now)
{
    const auto passed = std::chrono::floor<std::chrono::minutes>(now.at - moment.at);
    return passed.count() < 1 ? Times::tr("just now") : lengthText(passed);
}

QString lengthText(std::chrono::minutes length)
{
    const auto minutes = static_cast<int>(length.count());
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
