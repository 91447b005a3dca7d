#pragma once
/// \file
/// How the diary looks and speaks. Nothing of the patient's health is in it, so it stays outside
/// the vault and holds before unlocking.

#include <QObject>
#include <QSettings>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

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

public:
    explicit DiarySettings(const QString& file, QObject* parent = nullptr);

    int language() const;
    void setLanguage(int index);
    QString languageCode() const;
    void setLanguageCode(const QString& code);
    QStringList languageNames() const;
    int textSize() const { return m_settings.value("text", 0).toInt(); }
    void setTextSize(int size) { keep("text", size); }
    qreal textScale() const { return 1 + 0.5 * textSize(); }
    int look() const { return m_settings.value("look", 0).toInt(); }
    void setLook(int look) { keep("look", look); }
    bool isReducedMotion() const { return m_settings.value("calm", false).toBool(); }
    void setReducedMotion(bool reduced) { keep("calm", reduced); }

Q_SIGNALS:
    void languageChanged();
    void changed();

private:
    void keep(const QString& name, const QVariant& value);
    QSettings m_settings;
};

}  // namespace ebbline::diaryapp
