#include "app/diary/model/entry_words.h"

#include "app/diary/model/words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

namespace ebbline::diaryapp {

namespace {

QString said(const char* text)
{
    return QCoreApplication::translate("DiaryEntryWords", text);
}

}  // namespace

QString temperatureText(const recovery::Temperature& temperature, bool fahrenheit)
{
    return fahrenheit ? said(QT_TRANSLATE_NOOP("DiaryEntryWords", "%1 °F")).arg(QLocale().toString(temperature.fahrenheit(), 'f', 1))
                      : said(QT_TRANSLATE_NOOP("DiaryEntryWords", "%1 °C")).arg(QLocale().toString(temperature.celsius(), 'f', 1));
}

QString entryText(const recovery::Entry& entry, bool fahrenheit)
{
    QStringList lines;
    for (const recovery::Symptom symptom : recovery::allSymptoms) {
        const auto left = entry.scores.find({symptom, recovery::Side::left});
        const auto right = entry.scores.find({symptom, recovery::Side::right});
        if (left == entry.scores.end() && right == entry.scores.end())
            continue;
        const auto points = [&](const auto& found) {
            return found == entry.scores.end() ? QStringLiteral("–") : digits(found->second.points());
        };
        //: A symptom with its scores: "Swelling: right 3, left 4"
        lines << said(QT_TRANSLATE_NOOP("DiaryEntryWords", "%1: right %2, left %3")).arg(symptomName(symptom), points(right), points(left));
    }
    if (entry.temperature)
        lines << said(QT_TRANSLATE_NOOP("DiaryEntryWords", "Temperature: %1")).arg(temperatureText(*entry.temperature, fahrenheit));
    for (const recovery::Sign sign : entry.present)
        lines << signQuestion(sign);
    return lines.join(QLatin1Char('\n'));
}

}  // namespace ebbline::diaryapp
