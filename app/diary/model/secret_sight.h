#pragma once
/// \file
/// Whether what is typed as a passphrase can be read, and in words what it still lacks. Belongs to a page and goes with
/// it; out of sight again as soon as the program is not in front any more. Keeps no letter of what is typed.

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace ebbline::diaryapp {

class SecretSight : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool shown READ isShown WRITE setShown NOTIFY changed FINAL)
    Q_PROPERTY(QString typed READ typed WRITE weigh FINAL)      ///< goes in and is not given back
    Q_PROPERTY(QString meter READ meter NOTIFY changed FINAL)  ///< of a new passphrase: "3 letters more"

public:
    explicit SecretSight(QObject* parent = nullptr);

    bool isShown() const { return m_shown; }
    void setShown(bool shown);
    QString meter() const;

    static QString typed() { return {}; }
    /// What stands in the field now.
    void weigh(const QString& text);

Q_SIGNALS:
    void changed();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    bool m_shown = false;
    qsizetype m_letters = 0;
    qsizetype m_different = 0;
};

}  // namespace ebbline::diaryapp
