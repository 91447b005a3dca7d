#pragma once
/// \file
/// One figure of the practice page: what it says in a sentence, its picture, its table, its method and
/// what to beware of. "Not enough to say" is a figure too: it says how much there is and how much it takes.

#include "app/charts/figure_picture.h"

#include <QStringList>
#include <QVariantList>

namespace ebbline::deskapp {

struct PracticeFigure {
    Q_GADGET
    QML_VALUE_TYPE(practiceFigure)
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString says MEMBER says)
    Q_PROPERTY(QString caution MEMBER caution)
    Q_PROPERTY(QString method MEMBER method)
    Q_PROPERTY(bool enough MEMBER enough)
    Q_PROPERTY(ebbline::charts::FigurePicture picture MEMBER picture)
    Q_PROPERTY(QStringList header MEMBER header)
    Q_PROPERTY(QVariantList table MEMBER table)  ///< of QStringList, as many cells as the header

public:
    QString key;        ///< stable, for files: "complications"
    QString title;
    QString says;
    QString caution;
    QString method;
    bool enough = true;
    charts::FigurePicture picture;
    QStringList header;
    QVariantList table;
    QList<QStringList> csv;  ///< with its header; numbers as they are, words of core
    bool operator==(const PracticeFigure&) const = default;
};

}  // namespace ebbline::deskapp
