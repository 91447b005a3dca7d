#include "app/desk/model/settings_board.h"
#include "app/charts/curve_words.h"

#include "app/controls/idle_lock.h"
#include "app/desk/model/words.h"

#include <QLocale>
#include <QSettings>
#include <QVariant>

#include <algorithm>

namespace ebbline::deskapp {

namespace {

const QList<int> lockChoices{2, 5, 15, 30};  // judgement, no source

}  // namespace

SettingsBoard::SettingsBoard(const std::filesystem::path& file, QObject* parent)
    : QObject(parent), m_file(QString::fromStdString(file.string()))
{
    const QSettings stored(m_file, QSettings::IniFormat);
    m_language = stored.value(QStringLiteral("language"), nearestLanguage(QLocale::system().name(), languages())).toString();
    if (!languages().contains(m_language)) {
        m_language = QStringLiteral("en");
    }
    m_textPercent = std::clamp(stored.value(QStringLiteral("textPercent"), 100).toInt(), 100, 200);
    m_look = std::clamp(stored.value(QStringLiteral("look"), 0).toInt(), 0, 2);
    m_reducedMotion = stored.value(QStringLiteral("reducedMotion"), false).toBool();
    m_singleKeys = stored.value(QStringLiteral("singleKeys"), true).toBool();
    m_lockMinutes = controls::lockChoice(
        lockChoices, stored.value(QStringLiteral("lockMinutes"), static_cast<int>(controls::IdleLock::defaultLimit.count())).toInt());
}

void SettingsBoard::keep(const QString& name, const QVariant& value)
{
    QSettings(m_file, QSettings::IniFormat).setValue(name, value);
}

QStringList SettingsBoard::languages()
{
    return {QStringLiteral("en"), QStringLiteral("de"),    QStringLiteral("es"),
            QStringLiteral("fr"), QStringLiteral("pt_BR"), QStringLiteral("ar")};
}

QStringList SettingsBoard::languageNames() const
{
    QStringList names;
    for (const auto& code : languages()) {
        names << languageName(code);
    }
    return names;
}

void SettingsBoard::setLanguage(const QString& language)
{
    if (language != m_language && languages().contains(language)) {
        m_language = language;
        keep(QStringLiteral("language"), language);
        Q_EMIT languageChanged();
    }
}

QStringList SettingsBoard::textSizes()
{
    QStringList sizes;
    for (int percent = 100; percent <= 200; percent += textStep) {
        sizes << charts::withPercent(QLocale().toString(percent));
    }
    return sizes;
}

void SettingsBoard::setTextPercent(int percent)
{
    const int next = std::clamp(percent, 100, 200);
    if (next != m_textPercent) {
        m_textPercent = next;
        keep(QStringLiteral("textPercent"), next);
        Q_EMIT changed();
    }
}

void SettingsBoard::setLook(int look)
{
    const int next = std::clamp(look, 0, 2);
    if (next != m_look) {
        m_look = next;
        keep(QStringLiteral("look"), next);
        Q_EMIT changed();
    }
}

void SettingsBoard::setReducedMotion(bool reduced)
{
    if (reduced != m_reducedMotion) {
        m_reducedMotion = reduced;
        keep(QStringLiteral("reducedMotion"), reduced);
        Q_EMIT changed();
    }
}

void SettingsBoard::setSingleKeys(bool on)
{
    if (on != m_singleKeys) {
        m_singleKeys = on;
        keep(QStringLiteral("singleKeys"), on);
        Q_EMIT changed();
    }
}

QStringList SettingsBoard::lockNames() const
{
    QStringList names;
    for (const int minutes : lockChoices) {
        names << tr("%Ln minute(s)", nullptr, minutes);
    }
    return names;
}

int SettingsBoard::lockChoice() const
{
    return static_cast<int>(lockChoices.indexOf(m_lockMinutes));
}

void SettingsBoard::setLockChoice(int index)
{
    const int next = lockChoices.at(std::clamp(index, 0, static_cast<int>(lockChoices.size()) - 1));
    if (next != m_lockMinutes) {
        m_lockMinutes = next;
        keep(QStringLiteral("lockMinutes"), next);
        Q_EMIT changed();
    }
}

}  // namespace ebbline::deskapp
