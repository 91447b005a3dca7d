#pragma once
/// \file
/// The usual range: which version is in use and what it rests on, whom a new one would be learned from,
/// whether a learned one held on courses it had not seen, and the choice of a person to use it or to go
/// back. docs/clinical/band_versions.md.

#include "app/desk/model/row_list.h"
#include "app/desk/model/workplace.h"

#include <QObject>
#include <QThreadPool>
#include <QtQml/qqmlregistration.h>

namespace ebbline::deskapp {

struct BandRow {
    Q_GADGET
    QML_VALUE_TYPE(bandRow)
    Q_PROPERTY(QString version MEMBER version)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString rests MEMBER rests)      ///< how many courses, by whom, when
    Q_PROPERTY(QString check MEMBER check)      ///< whether it held, in words
    Q_PROPERTY(bool inUse MEMBER inUse)
    Q_PROPERTY(bool usable MEMBER usable)
    Q_PROPERTY(bool wasInUse MEMBER wasInUse)   ///< using it again is going back
    Q_PROPERTY(QVariantList coverage MEMBER coverage)  ///< of QStringList: symptom, courses, verdict, above the 90th, above the 97th

public:
    QString version;
    QString title;
    QString rests;
    QString check;
    bool inUse = false;
    bool usable = false;
    bool wasInUse = false;
    QVariantList coverage;
    bool operator==(const BandRow&) const = default;
};

class BandBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString inUse READ inUse NOTIFY changed FINAL)
    Q_PROPERTY(QString teachers READ teachers NOTIFY changed FINAL)      ///< how many courses may teach
    Q_PROPERTY(QStringList refusals READ refusals NOTIFY changed FINAL)  ///< how many may not, and why
    Q_PROPERTY(QStringList choices READ choices NOTIFY changed FINAL)    ///< who chose what, newest first
    Q_PROPERTY(QStringList coverageHeader READ coverageHeader NOTIFY changed FINAL)
    Q_PROPERTY(ebbline::deskapp::RowList* versions READ versions CONSTANT FINAL)
    Q_PROPERTY(bool learning READ isLearning NOTIFY changed FINAL)
    Q_PROPERTY(bool mayLearn READ mayLearn NOTIFY changed FINAL)
    Q_PROPERTY(QString outcome READ outcome NOTIFY changed FINAL)
    Q_PROPERTY(QString choosing READ choosing NOTIFY changed FINAL)      ///< version about to be used; empty: none
    Q_PROPERTY(QString choosingText READ choosingText NOTIFY changed FINAL)

public:
    explicit BandBoard(Workplace& workplace, QObject* parent = nullptr);
    ~BandBoard() override;

    void open();
    void refresh();
    QString inUse() const;
    QString teachers() const { return m_teachers; }
    QStringList refusals() const { return m_refusals; }
    QStringList choices() const;
    QStringList coverageHeader() const;
    RowList* versions() { return &m_versions; }
    bool isLearning() const { return m_learning; }
    bool mayLearn() const { return m_mayLearn && !m_learning; }
    QString outcome() const { return m_outcome; }
    QString choosing() const { return m_choosing; }
    QString choosingText() const;

    /// Learns beside the interface; nothing comes into use by it.
    Q_INVOKABLE void learn();
    Q_INVOKABLE void startChoosing(const QString& version);
    Q_INVOKABLE void cancelChoosing();
    /// Uses the chosen version, or goes back to it; a reason is needed.
    Q_INVOKABLE void choose(const QString& reason);

Q_SIGNALS:
    void changed();

private:
    Workplace& m_workplace;
    QThreadPool m_pool;
    RowList m_versions;
    int m_round = 0;
    bool m_learning = false;
    bool m_mayLearn = false;
    QString m_teachers;
    QStringList m_refusals;
    QString m_outcome;
    QString m_choosing;
    bool m_choosingBack = false;
};

/// Whether a version held on courses that it had not seen, or why it cannot be used.
QString checkText(const bands::Learned& learned);

}  // namespace ebbline::deskapp
