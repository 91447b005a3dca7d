#pragma once
/// \file
/// How the diary looks and speaks. Nothing of the patient's health is in it, so it stays outside
/// the vault and holds before unlocking.

#include <QObject>
#include <QSettings>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <algorithm>
#include <optional>

namespace ebbline::diaryapp {

class DiarySettings : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(int language READ language WRITE setLanguage NOTIFY languageChanged FINAL)  ///< index
    Q_PROPERTY(QStringList languageNames READ languageNames CONSTANT FINAL)
    Q_PROPERTY(int textSize READ textSize WRITE setTextSize NOTIFY changed FINAL)          ///< 0..2
    Q_PROPERTY(qreal textScale READ textScale NOTIFY changed FINAL)                        ///< 1, 1.5, 2
    Q_PROPERTY(int look READ look WRITE setLook NOTIFY changed FINAL)  ///< 0 light, 1 dark, 2 high contrast
    Q_PROPERTY(bool reducedMotion READ isReducedMotion WRITE setReducedMotion NOTIFY changed FINAL)
    Q_PROPERTY(QStringList lockNames READ lockNames NOTIFY languageChanged FINAL)  ///< minutes without a touch
    Q_PROPERTY(int lockChoice READ lockChoice WRITE setLockChoice NOTIFY changed FINAL)  ///< of these
    Q_PROPERTY(bool fahrenheit READ isFahrenheit WRITE setFahrenheit NOTIFY changed FINAL)

public:
    explicit DiarySettings(const QString& file, QObject* parent = nullptr);

    int language() const;
    void setLanguage(int index);
    /// What `setLanguageCode` takes, in the order in which they are offered.
    static QStringList languageCodes();
    QString languageCode() const;
    void setLanguageCode(const QString& code);
    QStringList languageNames() const;
    int textSize() const { return number("text", 2); }
    void setTextSize(int size) { keep("text", std::clamp(size, 0, 2)); }
    qreal textScale() const { return 1 + 0.5 * textSize(); }
    int look() const { return number("look", 2); }
    void setLook(int look) { keep("look", std::clamp(look, 0, 2)); }
    bool isReducedMotion() const { return m_settings.value("calm", false).toBool(); }
    void setReducedMotion(bool reduced) { keep("calm", reduced); }
    bool isFahrenheit() const { return m_settings.value("fahrenheit", false).toBool(); }
    void setFahrenheit(bool fahrenheit) { keep("fahrenheit", fahrenheit); }

    /// After so long without a touch or a key the diary locks by itself: 2, 5 or 15.
    int lockMinutes() const;
    QStringList lockNames() const;
    int lockChoice() const;
    void setLockChoice(int index);

    /// Whether reminders may ring on this device; empty until the person has said.
    std::optional<bool> mayRing() const;
    void setMayRing(bool ring) { keep("ring", ring); }
    /// Whether a bell was tried on this device, or the offer to try one was put away.
    bool isTryDone() const { return m_settings.value("tried", false).toBool(); }
    void setTryDone(bool done) { keep("tried", done); }

    /// As on the first day. What was kept is gone from the file.
    void forget();

Q_SIGNALS:
    void languageChanged();
    void changed();

private:
    /// Written to the file before it returns.
    void keep(const QString& name, const QVariant& value);
    /// 0..highest, whatever stands in the file.
    int number(const QString& name, int highest) const { return std::clamp(m_settings.value(name, 0).toInt(), 0, highest); }
    QSettings m_settings;
};

}  // namespace ebbline::diaryapp
