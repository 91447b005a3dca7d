#include "app/diary/model/diary_settings.h"

#include <QLocale>

namespace ebbline::diaryapp {

namespace {

const QStringList codes{QStringLiteral("en"), QStringLiteral("de"), QStringLiteral("ar")};

}  // namespace

DiarySettings::DiarySettings(const QString& file, QObject* parent)
    : QObject(parent), m_settings(file, QSettings::IniFormat)
{
}

QString DiarySettings::languageCode() const
{
    const QString system = QLocale::system().name().left(2);
    return m_settings.value("language", codes.contains(system) ? system : codes.first()).toString();
}

void DiarySettings::setLanguageCode(const QString& code)
{
    if (!codes.contains(code) || code == languageCode())
        return;
    keep("language", code);
    Q_EMIT languageChanged();
}

int DiarySettings::language() const
{
    return static_cast<int>(codes.indexOf(languageCode()));
}

void DiarySettings::setLanguage(int index)
{
    if (index >= 0 && index < codes.size())
        setLanguageCode(codes.at(index));
}

QStringList DiarySettings::languageNames() const
{
    // Each in its own words: whoever looks for hers finds it in any language.
    return {QStringLiteral("English"), QStringLiteral("Deutsch"), QStringLiteral("العربية")};
}

void DiarySettings::keep(const QString& name, const QVariant& value)
{
    m_settings.setValue(name, value);
    Q_EMIT changed();
}

}  // namespace ebbline::diaryapp
