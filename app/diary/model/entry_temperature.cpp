// The temperature of an entry: read in both units and as it is typed.

#include "app/diary/model/entry_board.h"

#include <QLocale>

namespace ebbline::diaryapp {

namespace {

constexpr qsizetype longestTemperature = 9;  ///< letters; two bytes each at most in every language of ours

/// In the digits of the language, or in plain ones with a point or a comma.
std::optional<double> degreesIn(const QString& typed)
{
    QString text = typed.trimmed();
    bool number = false;
    double degrees = QLocale().toDouble(text, &number);
    if (!number)
        degrees = QLocale::c().toDouble(text.replace(QLatin1Char(','), QLatin1Char('.')), &number);
    return number ? std::optional(degrees) : std::nullopt;
}

}  // namespace

void EntryBoard::setFahrenheit(bool fahrenheit)
{
    m_settings.setFahrenheit(fahrenheit);
    writeTemperature(m_temperature);
}

bool EntryBoard::readTemperature()
{
    m_entry.temperature.reset();
    if (m_temperature.trimmed().isEmpty())
        return true;
    const auto degrees = degreesIn(m_temperature);
    if (!degrees)
        return false;
    if (const auto value = isFahrenheit() ? recovery::Temperature::fahrenheit(*degrees) : recovery::Temperature::celsius(*degrees))
        m_entry.temperature = *value;
    return m_entry.temperature.has_value();
}

void EntryBoard::typeTemperature(const QString& text)
{
    m_temperature = text.left(longestTemperature);
    m_temperatureProblem.clear();
    (void)readTemperature();
    keep();
}

void EntryBoard::writeTemperature(const QString& text)
{
    m_temperature = text.left(longestTemperature);
    m_temperatureProblem.clear();
    if (!readTemperature())
        m_temperatureProblem = temperatureComplaint();
    keep();
}

/// A number of the other unit is said to be one: no value of one is a value of the other.
QString EntryBoard::temperatureComplaint() const
{
    const auto degrees = degreesIn(m_temperature);
    if (degrees && isFahrenheit() && recovery::Temperature::celsius(*degrees))
        return tr("%1 looks like °C. Choose °C, or type a value from 86 to 113 °F.").arg(m_temperature.trimmed());
    if (degrees && !isFahrenheit() && recovery::Temperature::fahrenheit(*degrees))
        return tr("%1 looks like °F. Choose °F, or type a value from 30 to 45 °C.").arg(m_temperature.trimmed());
    return isFahrenheit() ? tr("Please type a value from 86 to 113 °F.") : tr("Please type a value from 30 to 45 °C.");
}

}  // namespace ebbline::diaryapp
