#pragma once
/// \file
/// The practice page: what many courses teach. Courses are read from the vault a few at a time, so that
/// the desk stays awake; the figures are worked out beside it, and kept until something new arrives.

#include "app/desk/model/workplace.h"
#include "app/desk/practice/practice_figure.h"
#include "core/desk/practice.h"

#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <map>
#include <memory>

namespace ebbline::deskapp {

class PracticeBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QStringList parts READ parts NOTIFY changed FINAL)
    Q_PROPERTY(int part READ part WRITE setPart NOTIFY changed FINAL)  ///< as Part
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)
    Q_PROPERTY(bool working READ isWorking NOTIFY changed FINAL)
    Q_PROPERTY(double progress READ progress NOTIFY changed FINAL)     ///< 0..1
    Q_PROPERTY(QList<ebbline::deskapp::PracticeFigure> figures READ figures NOTIFY figuresChanged FINAL)
    Q_PROPERTY(QStringList ways READ ways NOTIFY figuresChanged FINAL)
    Q_PROPERTY(int way READ way WRITE setWay NOTIFY figuresChanged FINAL)
    Q_PROPERTY(QStringList groups READ groups NOTIFY figuresChanged FINAL)
    Q_PROPERTY(int first READ first NOTIFY figuresChanged FINAL)       ///< of groups, -1 none
    Q_PROPERTY(int second READ second NOTIFY figuresChanged FINAL)
    Q_PROPERTY(QString wayCaution READ wayCautionText NOTIFY figuresChanged FINAL)
    Q_PROPERTY(QString outcome READ outcome NOTIFY outcomeChanged FINAL)  ///< of writing a file

public:
    enum Part { Complications, Settling, Comparison, OverTime, Alerts, Adherence, Lots, UsualRange };
    Q_ENUM(Part)

    explicit PracticeBoard(Workplace& workplace, QObject* parent = nullptr);
    ~PracticeBoard() override;

    /// Begins to work the figures out, unless nothing has changed since.
    void open();
    void retranslate();

    QStringList parts() const;
    int part() const { return m_part; }
    void setPart(int part);
    QString summary() const;
    bool isWorking() const { return m_working; }
    double progress() const;
    QList<PracticeFigure> figures() const { return m_shown; }
    QStringList ways() const;
    int way() const { return static_cast<int>(m_way); }
    void setWay(int way);
    QStringList groups() const;
    int first() const { return groupIndex(m_first); }
    int second() const { return groupIndex(m_second); }
    Q_INVOKABLE void compare(int first, int second);
    QString wayCautionText() const;
    QString outcome() const { return m_outcome; }
    /// What is known so far; null before the first figures.
    const desk::PracticeFigures* known() const { return m_figures.get(); }
    const desk::Burden* burden() const { return m_burden ? &*m_burden : nullptr; }

    /// Writes a figure: `csv`, `png` or `svg` by the name's end. \returns false and says why in outcome().
    bool write(const QString& key, const QString& path);
    /// Asks where to, then writes.
    Q_INVOKABLE void saveAs(const QString& key, const QString& kind);

Q_SIGNALS:
    void changed();
    void figuresChanged();
    void outcomeChanged();

private:
    using Courses = std::shared_ptr<const std::vector<learning::PastCourse>>;
    struct Kept {
        desk::TallyStamp stamp;
        std::optional<desk::CourseTally> tally;
    };

    void forget();
    void readSome();
    void readPast();
    void readTallies();
    void workOutFigures();
    void workOutComparison();
    void finish();
    void show();
    int groupIndex(const std::string& group) const;
    const std::vector<learning::GroupShare>& groupsOfWay() const;
    /// Runs beside the interface; what comes back is dropped if the vault was locked or left meanwhile.
    template <typename Work, typename Take>
    void beside(Work work, Take take);

    Workplace& m_workplace;
    QThreadPool m_pool;
    QTimer m_slice;
    int m_round = 0;  ///< what is worked out belongs to this one, or is dropped
    int m_running = 0;
    bool m_working = false;
    std::size_t m_operations = 0;  ///< of the journal, for which the figures hold
    int m_day = 0;
    std::vector<recovery::CourseId> m_ids;
    std::size_t m_read = 0;
    std::size_t m_tallied = 0;
    std::shared_ptr<std::vector<learning::PastCourse>> m_reading;
    Courses m_courses;
    std::map<recovery::CourseId, Kept> m_tallies;
    std::shared_ptr<const desk::PracticeFigures> m_figures;
    std::optional<desk::Burden> m_burden;
    std::optional<desk::Adherence> m_adherence;
    learning::PracticeWatch m_watch;
    bool m_odds = false;
    std::optional<learning::Comparison> m_comparison;
    learning::Way m_way = learning::Way::ending;
    std::string m_first;
    std::string m_second;
    int m_part = Complications;
    QList<PracticeFigure> m_shown;
    QString m_outcome;
};

}  // namespace ebbline::deskapp
