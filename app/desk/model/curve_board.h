#pragma once
/// \file
/// The curves of the open course: one symptom at a time, left beside right on the same axes, the
/// events of the course under them, and the same thing as a table.

#include "app/charts/curve_picture.h"
#include "app/desk/model/course_events.h"
#include "app/desk/model/curve_figures.h"
#include "app/desk/model/row_list.h"
#include "app/desk/model/workplace.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace ebbline::deskapp {

/// One symptom in the chooser.
struct SymptomTab {
    Q_GADGET
    QML_VALUE_TYPE(symptomTab)
    Q_PROPERTY(int symptom MEMBER symptom)   ///< recovery::Symptom
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString last MEMBER last)     ///< "L 3  R 2", dashes where nothing was scored
    Q_PROPERTY(QString spoken MEMBER spoken)
    Q_PROPERTY(ebbline::charts::CurvePicture leftCurve MEMBER leftCurve)
    Q_PROPERTY(ebbline::charts::CurvePicture rightCurve MEMBER rightCurve)

public:
    int symptom = 1;
    QString name;
    QString last;
    QString spoken;
    charts::CurvePicture leftCurve;
    charts::CurvePicture rightCurve;
    bool operator==(const SymptomTab&) const = default;
};

/// One day of the table twin.
struct CurveTableRow {
    Q_GADGET
    QML_VALUE_TYPE(curveTableRow)
    Q_PROPERTY(QString day MEMBER day)
    Q_PROPERTY(QString when MEMBER when)
    Q_PROPERTY(QString left MEMBER left)
    Q_PROPERTY(QString right MEMBER right)
    Q_PROPERTY(QString usual MEMBER usual)
    Q_PROPERTY(QString note MEMBER note)     ///< "entered late", "amended", events of the day
    Q_PROPERTY(QString spoken MEMBER spoken)

public:
    QString day;
    QString when;
    QString left;
    QString right;
    QString usual;
    QString note;
    QString spoken;
    bool operator==(const CurveTableRow&) const = default;
};

class CurveBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(ebbline::deskapp::RowList* symptoms READ symptoms CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::RowList* table READ table CONSTANT FINAL)
    Q_PROPERTY(int symptom READ symptom WRITE setSymptom NOTIFY changed FINAL)
    Q_PROPERTY(bool tableShown READ isTableShown WRITE setTableShown NOTIFY changed FINAL)
    Q_PROPERTY(ebbline::charts::CurvePicture leftCurve READ leftCurve NOTIFY changed FINAL)
    Q_PROPERTY(ebbline::charts::CurvePicture rightCurve READ rightCurve NOTIFY changed FINAL)
    Q_PROPERTY(QList<ebbline::charts::Event> events READ events NOTIFY changed FINAL)
    Q_PROPERTY(QString eventsSentence READ eventsText NOTIFY changed FINAL)  ///< the events, day by day
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed FINAL)
    Q_PROPERTY(QString legend READ legend NOTIFY changed FINAL)
    Q_PROPERTY(QString figures READ figures NOTIFY changed FINAL)  ///< figuresOf()
    Q_PROPERTY(QString beyond READ beyond NOTIFY changed FINAL)    ///< beyondOf()

public:
    explicit CurveBoard(Workplace& workplace, QObject* parent = nullptr);

    void show(const recovery::CourseId& course);
    void refresh();

    RowList* symptoms() { return &m_symptoms; }
    RowList* table() { return &m_table; }
    int symptom() const { return static_cast<int>(m_symptom); }
    void setSymptom(int symptom);
    bool isTableShown() const { return m_tableShown; }
    void setTableShown(bool shown);
    charts::CurvePicture leftCurve() const { return m_left; }
    charts::CurvePicture rightCurve() const { return m_right; }
    QList<charts::Event> events() const { return m_events; }
    QString sentence() const;
    QString eventsText() const { return eventsSentence(m_events); }
    QString legend() const { return m_left.legend; }
    QString figures() const { return m_figures; }
    QString beyond() const { return m_beyond; }

Q_SIGNALS:
    void changed();

private:
    void refreshTable(const clock::Moment& treated, const curves::Curve& left, const curves::Curve& right);

    Workplace& m_workplace;
    recovery::CourseId m_course;
    recovery::Symptom m_symptom = recovery::Symptom::pain;
    bool m_tableShown = false;
    RowList m_symptoms;
    RowList m_table;
    charts::CurvePicture m_left;
    charts::CurvePicture m_right;
    QList<charts::Event> m_events;
    QString m_figures;
    QString m_beyond;
};

CurvePair curvesOf(desk::Desk& desk, const recovery::CourseId& course, recovery::Symptom symptom);

}  // namespace ebbline::deskapp
