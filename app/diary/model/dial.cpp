#include "app/diary/model/dial.h"

#include <QRegularExpression>
#include <QStringList>

namespace ebbline::diaryapp {

namespace {

constexpr qsizetype longestPrefix = 7;  // a country's or an area's, with its + or 0; common practice, no source

/// Digits of every script as ASCII, and signs in their plain width.
QString plain(const QString& number)
{
    QString text;
    for (const QChar c : number.normalized(QString::NormalizationForm_KC))
        text += c.isDigit() ? QChar(u'0' + c.digitValue()) : c;
    return text;
}

QString digitsOf(const QString& part)
{
    QString digits;
    for (const QChar c : part)
        if (c.isDigit() || (c == u'+' && digits.isEmpty()))
            digits += c;
    return digits;
}

bool beginsNumber(const QString& digits)
{
    return digits.startsWith(u'0') || digits.startsWith(u'+');
}

bool isPrefix(const QString& digits)
{
    return beginsNumber(digits) && digits.size() <= longestPrefix;
}

QString withoutTrunkZero(QString part)
{
    static const QRegularExpression trunkZero(QStringLiteral("\\(\\s*0\\s*\\)"));
    const QString digits = digitsOf(part);
    if (digits.startsWith(u'+') || digits.startsWith(QLatin1String("00")))
        part.remove(trunkZero);
    return part;
}

}  // namespace

QString dialable(const QString& number)
{
    static const QRegularExpression between(QStringLiteral("[;,\u060c\u061b]"));
    for (const QString& part : plain(number).split(between)) {
        QString first;
        for (const QString& piece : part.split(u'/')) {
            const QString digits = digitsOf(withoutTrunkZero(piece));
            if (first.isEmpty())
                first = digits;
            else if (isPrefix(first) && !beginsNumber(digits))
                first += digits;
            else
                break;
        }
        if (!first.isEmpty())
            return first;
    }
    return {};
}

}  // namespace ebbline::diaryapp
