#include "app/desk/model/step_value.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace ebbline::deskapp {

namespace {

QString written(double value, int decimals)
{
    auto locale = QLocale();
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(value, 'f', decimals);
}

}  // namespace

QString StepValue::text() const
{
    return !m_lowest.isEmpty() && m_value <= m_from ? m_lowest : written(m_value, m_decimals);
}

QString StepValue::range() const
{
    return tr("%1 to %2").arg(written(m_from, m_decimals), written(m_to, m_decimals));
}

void StepValue::offer(double value)
{
    const double scale = std::pow(10.0, m_decimals);
    const double inside = std::round(std::clamp(value, m_from, m_to) * scale) / scale;
    if (inside != m_value) {
        Q_EMIT moved(inside);
    }
    Q_EMIT changed();
}

void StepValue::take(const QString& text)
{
    bool read = false;
    double value = QLocale().toDouble(text.trimmed(), &read);
    if (!read) {
        value = QLocale::c().toDouble(text.trimmed(), &read);
    }
    if (!m_lowest.isEmpty() && (text.trimmed().isEmpty() || text.trimmed() == m_lowest)) {
        offer(m_from);
    } else if (read && std::isfinite(value)) {
        offer(value);
    } else {
        Q_EMIT changed();
    }
}

void StepValue::up()
{
    offer(m_value + m_step);
}

void StepValue::down()
{
    offer(m_value - m_step);
}

}  // namespace ebbline::deskapp
