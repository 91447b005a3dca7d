#pragma once
/// \file
/// The bells of a device with what a program needs around them: the person's word, the words that
/// are shown, and what the person touched.

#include "core/aftercare/booking.h"

#include <QObject>
#include <QString>

namespace ebbline::notifications {

/// What every bell says, on a screen that others may see. Translated by the program.
struct BellWords {
    QString name;   ///< of the program
    QString title;
    QString text;
    QString asksToOpen;  ///< the text of the last bell that could be booked
    QString open;        ///< acts; empty: not offered
    QString later;
    QString desktopEntry = QStringLiteral("ebbline-diary");  ///< by which a desktop knows the program
};

class Bells : public QObject, public aftercare::PhoneBells {
    Q_OBJECT

public:
    using QObject::QObject;
    virtual void setWords(const BellWords& words) = 0;
    /// What the person said; nothing rings before.
    virtual void allow(bool ring) = 0;
    /// Shows a bell at once, to try it.
    virtual void ringNow() = 0;
    /// False if this device may ring late to save power and the person could change that.
    virtual bool isPunctual() const { return true; }
    /// Leads the person to where they can let bells ring on time. The answer comes as leaveChanged().
    virtual void askPunctual() {}

Q_SIGNALS:
    void openAsked();
    void laterAsked();
    void leaveChanged();
    void rang();
    void failed();  ///< the system did not take a bell
    void zoneChanged();  ///< the device is in another time zone, or may be
};

}  // namespace ebbline::notifications
