#pragma once
/// \file
/// A list for a ListView: each row is a value with a key that stays the same. Setting new rows
/// keeps the rows that stayed, so that the view keeps its place while news arrives.

#include <QAbstractListModel>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

namespace ebbline::deskapp {

class RowList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the view models")
    Q_PROPERTY(int count READ rowCount NOTIFY countChanged FINAL)

public:
    enum Role { rowRole = Qt::UserRole, sectionRole };

    struct Row {
        QString key;
        QString section;
        QVariant value;
    };

    explicit RowList(QObject* parent = nullptr) : QAbstractListModel(parent) {}

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;

    void setRows(QList<Row> rows);
    const QList<Row>& rows() const { return m_rows; }

    /// The key of a row, empty outside the list.
    Q_INVOKABLE QString keyAt(int row) const;
    /// The row of a key, -1 if it is not there.
    Q_INVOKABLE int rowOf(const QString& key) const;

Q_SIGNALS:
    void countChanged();

private:
    QList<Row> m_rows;
};

}  // namespace ebbline::deskapp
