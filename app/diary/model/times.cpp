#include "app/diary/model/times.h"

#include "core/clock/iso8601.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QTimeZone>

namespace ebbline::diaryapp {

namespace {

QDateTime localTime(const clock::Moment& moment)
{
    return QDateTime::fromMSecsSinceEpoch(moment.at.time_since_epoch().count(),
                                          QTimeZone(static_cast<int>(moment.offset.count()) * 60));
}

/// Newer locale data puts a narrow space that does not break before AM and PM; a font may lack it, and who copies
/// a time elsewhere expects the plain one.
QString shortTime(QTime time)
{
    return QLocale().toString(time, QLocale::ShortFormat).replace(QChar(0x202f), QLatin1Char(' '));
}

}  // namespace

QString clockText(const clock::Moment& moment)
{
    return shortTime(localTime(moment).time());
}

QString timeText(int minuteOfDay)
{
    return shortTime(QTime(minuteOfDay / 60, minuteOfDay % 60));
}

QString dateText(const clock::Moment& moment)
{
    //: A day and a month, as in "22 March"
    return QLocale().toString(localTime(moment).date(), QCoreApplication::translate("DiaryTimes", "d MMMM"));
}

QString stampText(const clock::Moment& moment)
{
    // The offset keeps its own order inside text that runs from the right.
    const auto offset = QChar(0x2066) + QString::fromStdString(clock::offsetText(moment)) + QChar(0x2069);
    return QCoreApplication::translate("DiaryTimes", "%1, %2")
        .arg(QLocale().toString(localTime(moment).date(), QLocale::LongFormat), clockText(moment) + QLatin1Char(' ') + offset);
}

QString whenText(const clock::Moment& moment, const clock::Moment& now)
{
    const auto days = (now.day() - moment.day()).count();
    if (days == 0)
        return QCoreApplication::translate("DiaryTimes", "today %1").arg(clockText(moment));
    if (days == 1)
        return QCoreApplication::translate("DiaryTimes", "yesterday %1").arg(clockText(moment));
    if (days == -1)
        return QCoreApplication::translate("DiaryTimes", "tomorrow %1").arg(clockText(moment));
    //: %1 is a date such as "22 March", %2 a time
    return QCoreApplication::translate("DiaryTimes", "%1, %2").arg(dateText(moment), clockText(moment));
}

QString dayNameText(const clock::Moment& moment, const clock::Moment& now)
{
    const auto days = (now.day() - moment.day()).count();
    if (days == 0)
        return QCoreApplication::translate("DiaryTimes", "Today");
    if (days == 1)
        return QCoreApplication::translate("DiaryTimes", "Yesterday");
    return dateText(moment);
}

QString dayText(int day)
{
    return QCoreApplication::translate("DiaryTimes", "Day %1").arg(QLocale().toString(day));
}

QString lengthText(std::chrono::minutes length)
{
    const auto minutes = static_cast<int>(length.count());
    if (minutes < 120)
        return QCoreApplication::translate("DiaryTimes", "%n minute(s)", nullptr, minutes);
    const int hours = minutes / 60;
    if (hours < 48)
        return QCoreApplication::translate("DiaryTimes", "%n hour(s)", nullptr, hours);
    const int days = hours / 24;
    return QCoreApplication::translate("DiaryTimes", "%n day(s)", nullptr, days);
}

QString untilText(int lastDay, int today)
{
    if (lastDay <= today)
        return QCoreApplication::translate("DiaryTimes", "only today");
    if (lastDay == today + 1)
        return QCoreApplication::translate("DiaryTimes", "until tomorrow");
    return QCoreApplication::translate("DiaryTimes", "until day %1").arg(QLocale().toString(lastDay));
}

}  // namespace ebbline::diaryapp
