#include "app/diary/model/diary_settings.h"

#include "app/controls/idle_lock.h"
#include "app/diary/model/words.h"

#include <QLocale>

namespace ebbline::diaryapp {

namespace {

// In the order in which they are offered.
const QStringList codes{QStringLiteral("en"), QStringLiteral("de"), QStringLiteral("es"), QStringLiteral("fr"),
                        QStringLiteral("pt_BR"), QStringLiteral("tr"), QStringLiteral("ar"), QStringLiteral("zh_CN")};

const QList<int> lockChoices{2, 5, 15};  // judgement, no source

}  // namespace

DiarySettings::DiarySettings(const QString& file, QObject* parent)
    : QObject(parent), m_settings(file, QSettings::IniFormat)
{
}

QStringList DiarySettings::languageCodes()
{
    return codes;
}

QString DiarySettings::languageCode() const
{
    const QString kept = m_settings.value("language").toString();
    if (codes.contains(kept))
        return kept;
    // The system's language, if it is one of ours; by its first part where only that fits.
    const QString system = QLocale::system().name();
    for (const QString& code : codes)
        if (system == code)
            return code;
    for (const QString& code : codes)
        if (system.section(QLatin1Char('_'), 0, 0) == code.section(QLatin1Char('_'), 0, 0))
            return code;
    return codes.first();
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
    return {QStringLiteral("English"), QStringLiteral("Deutsch"), QStringLiteral("Español"), QStringLiteral("Français"),
            QStringLiteral("Português (Brasil)"), QStringLiteral("Türkçe"), QStringLiteral("العربية"), QStringLiteral("中文（简体）")};
}

void DiarySettings::keep(const QString& name, const QVariant& value)
{
    m_settings.setValue(name, value);
    m_settings.sync();
    Q_EMIT changed();
}

int DiarySettings::lockMinutes() const
{
    return controls::lockChoice(lockChoices, m_settings.value("lockMinutes", static_cast<int>(controls::IdleLock::defaultLimit.count())).toInt());
}

QStringList DiarySettings::lockNames() const
{
    QStringList names;
    for (const int minutes : lockChoices)
        names << digits(minutes);
    return names;
}

int DiarySettings::lockChoice() const
{
    return static_cast<int>(lockChoices.indexOf(lockMinutes()));
}

void DiarySettings::setLockChoice(int index)
{
    keep("lockMinutes", lockChoices.at(std::clamp(index, 0, static_cast<int>(lockChoices.size()) - 1)));
}

std::optional<bool> DiarySettings::mayRing() const
{
    const QVariant kept = m_settings.value("ring");
    return kept.isValid() ? std::optional(kept.toBool()) : std::nullopt;
}

void DiarySettings::forget()
{
    m_settings.clear();
    m_settings.sync();
    Q_EMIT languageChanged();
    Q_EMIT changed();
}

}  // namespace ebbline::diaryapp
