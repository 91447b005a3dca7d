#include "app/desk/clinic/dose_limits.h"

#include "app/desk/model/begun.h"
#include "app/desk/model/times.h"

#include <QLocale>

namespace ebbline::deskapp {

namespace {

const QString begunName = QStringLiteral("doseLimits");

using Number = double anaesthesia::Limits::*;
constexpr std::array<Number, 4> numbers{&anaesthesia::Limits::plainMgPerKg, &anaesthesia::Limits::plainCapMg,
                                        &anaesthesia::Limits::epinephrineMgPerKg, &anaesthesia::Limits::epinephrineCapMg};

QString shortest(double value)
{
    return QLocale().toString(value, 'f', QLocale::FloatingPointShortest);
}

/// The label's where nothing is typed; empty if it is no number, or none that core takes.
std::optional<double> numberOf(const QString& text, Number number)
{
    anaesthesia::Limits limits;
    if (text.trimmed().isEmpty()) {
        return limits.*number;
    }
    bool read = false;
    limits.*number = QLocale().toDouble(text.trimmed(), &read);
    if (!read) {
        limits.*number = QLocale::c().toDouble(text.trimmed(), &read);  // 4.5 is understood everywhere
    }
    return read && anaesthesia::check(limits) ? std::optional(limits.*number) : std::nullopt;
}

}  // namespace

DoseLimits::DoseLimits(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace)
{
    connect(&workplace, &Workplace::openChanged, this, &DoseLimits::open);
}

void DoseLimits::open()
{
    m_texts = {};
    if (m_workplace.isOpen()) {
        const auto limits = m_workplace.desk().doseLimits();
        const auto begun = begunWords(m_workplace, begunName).split(u'\n');
        for (std::size_t i = 0; i < numbers.size(); ++i) {
            if (begun.size() == static_cast<qsizetype>(numbers.size())) {
                m_texts[i] = begun[static_cast<qsizetype>(i)];
            } else if (limits.*numbers[i] < anaesthesia::Limits{}.*numbers[i]) {
                m_texts[i] = shortest(limits.*numbers[i]);
            }
        }
    }
    Q_EMIT changed();
}

QStringList DoseLimits::labels() const
{
    return {tr("Plain, mg/kg"), tr("Plain, in all, mg"), tr("With epinephrine, mg/kg"), tr("With epinephrine, in all, mg")};
}

QStringList DoseLimits::hints() const
{
    QStringList hints;
    for (const auto number : numbers) {
        hints << shortest(anaesthesia::Limits{}.*number);
    }
    return hints;
}

QStringList DoseLimits::problems() const
{
    QStringList problems;
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        problems << (numberOf(m_texts[i], numbers[i])
                         ? QString()
                         : tr("A number up to %1, the label's. Empty: the label's.").arg(shortest(anaesthesia::Limits{}.*numbers[i])));
    }
    return problems;
}

std::optional<anaesthesia::Limits> DoseLimits::typed() const
{
    anaesthesia::Limits limits;
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        const auto number = numberOf(m_texts[i], numbers[i]);
        if (!number) {
            return std::nullopt;
        }
        limits.*numbers[i] = *number;
    }
    return limits;
}

bool DoseLimits::isReady() const
{
    const auto limits = typed();
    return m_workplace.isOpen() && limits && *limits != m_workplace.desk().doseLimits();
}

QString DoseLimits::state() const
{
    const auto limited = m_workplace.isOpen() ? m_workplace.desk().doseLimited() : std::nullopt;
    if (!limited || limited->limits == anaesthesia::Limits{}) {
        return tr("The label's limits hold.");
    }
    return tr("Lowered by %1, %2", "person, time").arg(QString::fromStdString(limited->by), stampText(limited->at));
}

void DoseLimits::write(int index, const QString& text)
{
    if (index < 0 || static_cast<std::size_t>(index) >= m_texts.size() || m_texts[static_cast<std::size_t>(index)] == text) {
        return;
    }
    m_texts[static_cast<std::size_t>(index)] = text;
    const auto limits = typed();
    const bool recorded = m_workplace.isOpen() && limits && *limits == m_workplace.desk().doseLimits();
    keepBegun(m_workplace, begunName, recorded ? QString() : texts().join(u'\n'));
    Q_EMIT changed();
}

bool DoseLimits::save()
{
    if (!isReady() || !m_workplace.mayDo(records::Task::protocol) || !m_workplace.settle(m_workplace.desk().limitDose(*typed()))) {
        return false;
    }
    keepBegun(m_workplace, begunName, {});
    open();
    return true;
}

}  // namespace ebbline::deskapp
