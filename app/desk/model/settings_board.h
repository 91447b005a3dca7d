#pragma once
/// \file
/// How the program looks and behaves for the person at the desk. Nothing of a patient is in it, so
/// it stays outside the vault and holds before unlocking.

#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <filesystem>

namespace ebbline::deskapp {

class SettingsBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY languageChanged FINAL)  ///< BCP 47
    Q_PROPERTY(QStringList languages READ languages CONSTANT FINAL)
    Q_PROPERTY(QStringList languageNames READ languageNames CONSTANT FINAL)
    Q_PROPERTY(int textPercent READ textPercent WRITE setTextPercent NOTIFY changed FINAL)     ///< 100..200
    Q_PROPERTY(QStringList textSizes READ textSizes NOTIFY languageChanged FINAL)  ///< "100 %" .. "200 %"
    Q_PROPERTY(int textSize READ textSize WRITE setTextSize NOTIFY changed FINAL)  ///< of these; -1: another
    Q_PROPERTY(int look READ look WRITE setLook NOTIFY changed FINAL)  ///< 0 light, 1 dark, 2 high contrast
    Q_PROPERTY(bool reducedMotion READ isReducedMotion WRITE setReducedMotion NOTIFY changed FINAL)
    Q_PROPERTY(bool singleKeys READ hasSingleKeys WRITE setSingleKeys NOTIFY changed FINAL)    ///< T, C, X, …
    Q_PROPERTY(QStringList lockNames READ lockNames NOTIFY languageChanged FINAL)  ///< minutes without a touch
    Q_PROPERTY(int lockChoice READ lockChoice WRITE setLockChoice NOTIFY changed FINAL)  ///< of these

public:
    /// `file` may be missing: everything has a default.
    explicit SettingsBoard(const std::filesystem::path& file, QObject* parent = nullptr);

    QString language() const { return m_language; }
    void setLanguage(const QString& language);
    static QStringList languages();
    QStringList languageNames() const;
    int textPercent() const { return m_textPercent; }
    void setTextPercent(int percent);
    static QStringList textSizes();
    int textSize() const { return m_textPercent % textStep == 0 ? (m_textPercent - 100) / textStep : -1; }
    void setTextSize(int index) { setTextPercent(100 + index * textStep); }
    int look() const { return m_look; }
    void setLook(int look);
    bool isReducedMotion() const { return m_reducedMotion; }
    void setReducedMotion(bool reduced);
    bool hasSingleKeys() const { return m_singleKeys; }
    void setSingleKeys(bool on);
    /// After so long without a touch or a key the desk locks: 2, 5, 15 or 30.
    int lockMinutes() const { return m_lockMinutes; }
    QStringList lockNames() const;
    int lockChoice() const;
    void setLockChoice(int index);

Q_SIGNALS:
    void languageChanged();
    void changed();

private:
    void keep(const QString& name, const QVariant& value);

    static constexpr int textStep = 25;  ///< of text sizes, in percent

    QString m_file;
    QString m_language;
    int m_textPercent = 100;
    int m_look = 0;
    bool m_reducedMotion = false;
    bool m_singleKeys = true;
    int m_lockMinutes = 0;
};

}  // namespace ebbline::deskapp
