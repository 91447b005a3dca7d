#pragma once
/// \file
/// A number that can be typed, or stepped up and down: what a field with two buttons needs.
/// Understands both the language's decimal sign and a point.

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace ebbline::deskapp {

class StepValue : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(double value MEMBER m_value NOTIFY changed FINAL)
    Q_PROPERTY(double from MEMBER m_from NOTIFY changed FINAL)
    Q_PROPERTY(double to MEMBER m_to NOTIFY changed FINAL)
    Q_PROPERTY(double step MEMBER m_step NOTIFY changed FINAL)
    Q_PROPERTY(int decimals MEMBER m_decimals NOTIFY changed FINAL)
    Q_PROPERTY(QString lowest MEMBER m_lowest NOTIFY changed FINAL)  ///< what stands there instead of `from`, which is not said then; empty: the number
    Q_PROPERTY(QString text READ text NOTIFY changed FINAL)
    Q_PROPERTY(QString range READ range NOTIFY changed FINAL)  ///< "14 to 32"

public:
    explicit StepValue(QObject* parent = nullptr) : QObject(parent) {}

    QString text() const;
    QString range() const;

    /// Takes typed text (none is `from`, where that is not said): `moved` with the number inside the range, or `changed` to show the old one
    /// again if it is no number.
    Q_INVOKABLE void take(const QString& text);
    Q_INVOKABLE void up();
    Q_INVOKABLE void down();

Q_SIGNALS:
    void changed();
    void moved(double value);

private:
    void offer(double value);

    double m_value = 0;
    double m_from = 0;
    double m_to = 100;
    double m_step = 1;
    int m_decimals = 0;
    QString m_lowest;
};

}  // namespace ebbline::deskapp
