#pragma once
/// \file
/// The clinic's own limits of lidocaine: four numbers, each empty or lower than the label's. They go into the
/// journal and hold at every desk of the clinic that knows them.

#include "app/desk/model/workplace.h"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <array>

namespace ebbline::deskapp {

class DoseLimits : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QStringList labels READ labels NOTIFY changed FINAL)      ///< what each number limits, with its unit
    Q_PROPERTY(QStringList hints READ hints NOTIFY changed FINAL)        ///< the label's number of each
    Q_PROPERTY(QStringList texts READ texts NOTIFY changed FINAL)        ///< as typed; empty: the label's
    Q_PROPERTY(QStringList problems READ problems NOTIFY changed FINAL)  ///< of each; empty: none
    Q_PROPERTY(bool ready READ isReady NOTIFY changed FINAL)             ///< there is something to save, and it can be
    Q_PROPERTY(QString state READ state NOTIFY changed FINAL)            ///< whose limits hold, and since when

public:
    explicit DoseLimits(Workplace& workplace, QObject* parent = nullptr);

    /// Takes what is recorded, and what was begun.
    void open();
    QStringList labels() const;
    QStringList hints() const;
    QStringList texts() const { return QStringList(m_texts.begin(), m_texts.end()); }
    QStringList problems() const;
    bool isReady() const;
    QString state() const;

    Q_INVOKABLE void write(int index, const QString& text);
    Q_INVOKABLE bool save();

Q_SIGNALS:
    void changed();

private:
    std::optional<anaesthesia::Limits> typed() const;  ///< empty while a number has a problem

    Workplace& m_workplace;
    std::array<QString, 4> m_texts;
};

}  // namespace ebbline::deskapp
