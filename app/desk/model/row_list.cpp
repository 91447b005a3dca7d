#include "app/desk/model/row_list.h"

#include <algorithm>

namespace ebbline::deskapp {

int RowList::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant RowList::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() < 0 || index.row() >= m_rows.size()) {
        return {};
    }
    const auto& row = m_rows[index.row()];
    switch (role) {
    case rowRole:
        return row.value;
    case sectionRole:
        return row.section;
    default:
        return {};
    }
}

QHash<int, QByteArray> RowList::roleNames() const
{
    return {{rowRole, "row"}, {sectionRole, "section"}};
}

void RowList::setRows(QList<Row> rows)
{
    const auto sameKeys = std::equal(rows.begin(), rows.end(), m_rows.begin(), m_rows.end(),
                                     [](const Row& a, const Row& b) { return a.key == b.key && a.section == b.section; });
    if (sameKeys) {
        m_rows = std::move(rows);
        if (!m_rows.isEmpty()) {
            Q_EMIT dataChanged(index(0), index(static_cast<int>(m_rows.size()) - 1));
        }
        return;
    }
    // So many that moving them one by one would hold up the desk.
    constexpr qsizetype many = 1000;
    if (m_rows.size() > many || rows.size() > many) {
        beginResetModel();
        m_rows = std::move(rows);
        endResetModel();
        Q_EMIT countChanged();
        return;
    }
    // Remove what went, then insert or move into the new order: a view keeps its place.
    for (int i = static_cast<int>(m_rows.size()) - 1; i >= 0; --i) {
        const auto gone = std::none_of(rows.begin(), rows.end(), [&](const Row& row) { return row.key == m_rows[i].key; });
        if (gone) {
            beginRemoveRows({}, i, i);
            m_rows.removeAt(i);
            endRemoveRows();
        }
    }
    for (int i = 0; i < rows.size(); ++i) {
        const int now = rowOf(rows[i].key);
        if (now < 0) {
            beginInsertRows({}, i, i);
            m_rows.insert(i, rows[i]);
            endInsertRows();
        } else if (now != i) {
            beginMoveRows({}, now, now, {}, i);
            m_rows.move(now, i);
            endMoveRows();
        }
    }
    m_rows = std::move(rows);
    if (!m_rows.isEmpty()) {
        Q_EMIT dataChanged(index(0), index(static_cast<int>(m_rows.size()) - 1));
    }
    Q_EMIT countChanged();
}

QString RowList::keyAt(int row) const
{
    return row >= 0 && row < m_rows.size() ? m_rows[row].key : QString();
}

int RowList::rowOf(const QString& key) const
{
    const auto found = std::find_if(m_rows.begin(), m_rows.end(), [&](const Row& row) { return row.key == key; });
    return found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

}  // namespace ebbline::deskapp
