#include "app/desk/queue/queue_filter.h"

#include "app/charts/curve_words.h"

#include <algorithm>
#include <array>
#include <limits>

namespace ebbline::deskapp {

namespace {

struct Stretch {
    int first;
    int last;
};

/// Between the ticks that every curve has; what comes after the axis is the last.
constexpr std::array<Stretch, 6> stretches{{{0, 1}, {2, 3}, {4, 7}, {8, 14}, {15, 21}, {22, std::numeric_limits<int>::max()}}};

bool holds(const Stretch& stretch, int day)
{
    // A clock that ran ahead of the treatment's gives a day before 0; it stands with the first.
    return std::max(day, 0) >= stretch.first && std::max(day, 0) <= stretch.last;
}

}  // namespace

void QueueFilter::begin()
{
    m_placedNames.clear();
    m_takenNames.clear();
    m_perStretch.clear();
    // What is chosen stays to be seen, also when the last of its rows has gone.
    if (m_placed) {
        m_placedNames[*m_placed] = 0;
    }
    if (m_taken) {
        m_takenNames[*m_taken] = 0;
    }
}

void QueueFilter::count(const Facts& row)
{
    ++m_placedNames[row.placedBy];
    if (row.takenBy) {
        ++m_takenNames[*row.takenBy];
    }
    for (int i = 0; i < static_cast<int>(stretches.size()); ++i) {
        m_perStretch[i] += holds(stretches[static_cast<std::size_t>(i)], row.day) ? 1 : 0;
    }
}

bool QueueFilter::lets(const Facts& row) const
{
    return (!m_placed || row.placedBy == *m_placed) && (!m_taken || row.takenBy == m_taken)
           && (m_days == 0 || holds(stretches[static_cast<std::size_t>(m_days - 1)], row.day));
}

void QueueFilter::setChoosing(bool choosing)
{
    if (choosing != m_choosing) {
        m_choosing = choosing;
        Q_EMIT changed();
    }
}

QString QueueFilter::placedName(const std::string& name)
{
    return name.empty() ? tr("Not written down") : QString::fromStdString(name);
}

QStringList QueueFilter::optionsOf(const QString& all, const Names& names, QString (*word)(const std::string&))
{
    QStringList options{all};
    for (const auto& [name, rows] : names) {
        options << tr("%1: %2", "name, count").arg(word(name), charts::digits(rows));
    }
    return options;
}

int QueueFilter::placeOf(const Names& names, const std::optional<std::string>& name)
{
    return name ? static_cast<int>(std::distance(names.begin(), names.find(*name))) + 1 : 0;
}

std::optional<std::string> QueueFilter::nameAt(const Names& names, int option)
{
    if (option < 1 || option > static_cast<int>(names.size())) {
        return std::nullopt;
    }
    return std::next(names.begin(), option - 1)->first;
}

QStringList QueueFilter::placedOptions() const
{
    return optionsOf(tr("Anybody"), m_placedNames, &QueueFilter::placedName);
}

int QueueFilter::placed() const
{
    return placeOf(m_placedNames, m_placed);
}

QStringList QueueFilter::takenOptions() const
{
    return optionsOf(tr("Anybody or nobody"), m_takenNames, &QueueFilter::placedName);
}

int QueueFilter::taken() const
{
    return placeOf(m_takenNames, m_taken);
}

QStringList QueueFilter::dayOptions() const
{
    QStringList options{tr("Any day")};
    for (int i = 0; i < static_cast<int>(stretches.size()); ++i) {
        const auto& stretch = stretches[static_cast<std::size_t>(i)];
        const auto words = i + 1 == static_cast<int>(stretches.size())
                               ? tr("After day %1").arg(charts::digits(stretch.first - 1))
                               : tr("Days %1 to %2").arg(charts::digits(stretch.first), charts::digits(stretch.last));
        const auto rows = m_perStretch.find(i);
        options << tr("%1: %2", "name, count").arg(words, charts::digits(rows == m_perStretch.end() ? 0 : rows->second));
    }
    return options;
}

QStringList QueueFilter::chips() const
{
    QStringList chips;
    if (m_placed) {
        chips << tr("Threads by %1").arg(placedOptions().value(placed()));
    }
    if (m_taken) {
        chips << tr("Taken by %1").arg(takenOptions().value(taken()));
    }
    if (m_days > 0) {
        chips << dayOptions().value(m_days);
    }
    return chips;
}

void QueueFilter::choosePlaced(int option)
{
    m_placed = nameAt(m_placedNames, option);
    Q_EMIT chosen();
}

void QueueFilter::chooseTaken(int option)
{
    m_taken = nameAt(m_takenNames, option);
    Q_EMIT chosen();
}

void QueueFilter::chooseDays(int option)
{
    m_days = std::clamp(option, 0, static_cast<int>(stretches.size()));
    Q_EMIT chosen();
}

void QueueFilter::takeOff(int chip)
{
    // In the order of chips().
    int place = 0;
    if (m_placed && place++ == chip) {
        m_placed.reset();
    } else if (m_taken && place++ == chip) {
        m_taken.reset();
    } else if (m_days > 0 && place++ == chip) {
        m_days = 0;
    }
    Q_EMIT chosen();
}

void QueueFilter::takeAllOff()
{
    m_choosing = false;
    m_placed.reset();
    m_taken.reset();
    m_days = 0;
    Q_EMIT chosen();
}

}  // namespace ebbline::deskapp
