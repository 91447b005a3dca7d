#pragma once
/// \file
/// What of the queue is shown: by who placed the threads, who took the row, and the day of recovery. Kept in
/// memory for one sitting of one person. It hides rows, and the board says how many of them are urgent.

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <map>
#include <optional>
#include <string>

namespace ebbline::deskapp {

class QueueFilter : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the board of the queue")
    Q_PROPERTY(bool choosing READ isChoosing WRITE setChoosing NOTIFY changed FINAL)
    Q_PROPERTY(QStringList placedOptions READ placedOptions NOTIFY changed FINAL)  ///< "Anybody", then names with counts
    Q_PROPERTY(int placed READ placed NOTIFY changed FINAL)
    Q_PROPERTY(QStringList takenOptions READ takenOptions NOTIFY changed FINAL)
    Q_PROPERTY(int taken READ taken NOTIFY changed FINAL)
    Q_PROPERTY(QStringList dayOptions READ dayOptions NOTIFY changed FINAL)        ///< "Any day", then stretches with counts
    Q_PROPERTY(int days READ days NOTIFY changed FINAL)
    Q_PROPERTY(QStringList chips READ chips NOTIFY changed FINAL)                  ///< what is on, a line each

public:
    explicit QueueFilter(QObject* parent = nullptr) : QObject(parent) {}

    /// What a row is told apart by.
    struct Facts {
        std::string placedBy;                ///< empty: not written down
        std::optional<std::string> takenBy;  ///< empty: nobody has
        int day = 0;                         ///< of recovery
    };

    /// Before the rows are read anew, and after.
    void begin();
    void count(const Facts& row);
    void end() { Q_EMIT changed(); }
    /// Whether such a row is shown.
    bool lets(const Facts& row) const;
    bool isOn() const { return m_placed || m_taken || m_days > 0; }

    bool isChoosing() const { return m_choosing; }
    void setChoosing(bool choosing);
    QStringList placedOptions() const;
    int placed() const;
    QStringList takenOptions() const;
    int taken() const;
    QStringList dayOptions() const;
    int days() const { return m_days; }
    QStringList chips() const;

    Q_INVOKABLE void choosePlaced(int option);  ///< of placedOptions()
    Q_INVOKABLE void chooseTaken(int option);
    Q_INVOKABLE void chooseDays(int option);
    Q_INVOKABLE void takeOff(int chip);         ///< of chips()
    void takeAllOff();

Q_SIGNALS:
    void changed();
    /// Other rows are to be shown.
    void chosen();

private:
    using Names = std::map<std::string, int>;  ///< with how many rows

    static QString placedName(const std::string& name);
    static QStringList optionsOf(const QString& all, const Names& names, QString (*word)(const std::string&));
    static int placeOf(const Names& names, const std::optional<std::string>& name);
    static std::optional<std::string> nameAt(const Names& names, int option);

    bool m_choosing = false;
    std::optional<std::string> m_placed;
    std::optional<std::string> m_taken;
    int m_days = 0;
    Names m_placedNames;
    Names m_takenNames;
    std::map<int, int> m_perStretch;
};

}  // namespace ebbline::deskapp
