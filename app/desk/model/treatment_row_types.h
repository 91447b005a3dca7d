#pragma once
/// \file
/// The lines of the lists on the pages of a treatment.

#include <QMetaType>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace ebbline::deskapp {

struct PatientRow {
    Q_GADGET
    QML_VALUE_TYPE(patientRow)
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString phone MEMBER phone)

public:
    QString key;
    QString name;
    QString phone;
    bool operator==(const PatientRow&) const = default;
};

struct PlacementRow {
    Q_GADGET
    QML_VALUE_TYPE(placementRow)
    Q_PROPERTY(int number MEMBER number)
    Q_PROPERTY(QString side MEMBER side)
    Q_PROPERTY(bool isLeft MEMBER isLeft)
    Q_PROPERTY(QString zone MEMBER zone)
    Q_PROPERTY(QString ending MEMBER ending)
    Q_PROPERTY(QString thread MEMBER thread)
    Q_PROPERTY(QString lot MEMBER lot)
    Q_PROPERTY(QString volume MEMBER volume)
    Q_PROPERTY(QString epinephrine MEMBER epinephrine)  ///< where; empty if it is not said
    Q_PROPERTY(QString caution MEMBER caution)  ///< empty if nothing asks for care
    Q_PROPERTY(QString spoken MEMBER spoken)

public:
    int number = 0;
    QString side;
    bool isLeft = true;
    QString zone;
    QString ending;
    QString thread;
    QString lot;
    QString volume;
    QString epinephrine;
    QString caution;
    QString spoken;
    bool operator==(const PlacementRow&) const = default;
};

struct BaselineRow {
    Q_GADGET
    QML_VALUE_TYPE(baselineRow)
    Q_PROPERTY(int symptom MEMBER symptom)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(int left MEMBER left)    ///< score points; -1: not scored
    Q_PROPERTY(int right MEMBER right)

public:
    int symptom = 1;
    QString name;
    int left = -1;
    int right = -1;
    bool operator==(const BaselineRow&) const = default;
};

}  // namespace ebbline::deskapp
