#pragma once
/// \file
/// The lists of a course in words: findings with what people did about them, entries, messages.

#include "app/desk/model/row_list.h"
#include "app/desk/model/workplace.h"
#include "core/desk/desk.h"

#include <QMetaType>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <functional>

namespace ebbline::deskapp {

struct FindingRow {
    Q_GADGET
    QML_VALUE_TYPE(findingRow)
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(int urgency MEMBER urgency)  ///< recovery::Urgency
    Q_PROPERTY(QString urgencyName MEMBER urgencyName)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString reason MEMBER reason)
    Q_PROPERTY(QString basis MEMBER basis)
    Q_PROPERTY(QString advice MEMBER advice)
    Q_PROPERTY(QString when MEMBER when)
    Q_PROPERTY(QStringList acts MEMBER acts)  ///< oldest first, one line each
    Q_PROPERTY(bool open MEMBER open)
    Q_PROPERTY(QString entryKey MEMBER entryKey)
    Q_PROPERTY(QString spoken MEMBER spoken)

public:
    QString key;
    int urgency = 4;
    QString urgencyName;
    QString title;
    QString reason;
    QString basis;
    QString advice;
    QString when;
    QStringList acts;
    bool open = true;
    QString entryKey;
    QString spoken;
    bool operator==(const FindingRow&) const = default;
};

struct EntryRow {
    Q_GADGET
    QML_VALUE_TYPE(entryRow)
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(QString day MEMBER day)
    Q_PROPERTY(QString when MEMBER when)
    Q_PROPERTY(QString scores MEMBER scores)
    Q_PROPERTY(QString signs MEMBER signs)      ///< answered yes, and a temperature
    Q_PROPERTY(QString note MEMBER note)        ///< the patient's own words
    Q_PROPERTY(QString photos MEMBER photos)    ///< which views were taken beside it
    Q_PROPERTY(QString marks MEMBER marks)      ///< "entered late", "amended, was: …"
    Q_PROPERTY(QString opened MEMBER opened)    ///< by whom and when, or that nobody has
    Q_PROPERTY(bool isOpened MEMBER isOpened)
    Q_PROPERTY(QString spoken MEMBER spoken)

public:
    QString key;
    QString day;
    QString when;
    QString scores;
    QString signs;
    QString note;
    QString photos;
    QString marks;
    QString opened;
    bool isOpened = false;
    QString spoken;
    bool operator==(const EntryRow&) const = default;
};

struct MessageRow {
    Q_GADGET
    QML_VALUE_TYPE(messageRow)
    Q_PROPERTY(QString who MEMBER who)
    Q_PROPERTY(QString when MEMBER when)
    Q_PROPERTY(QString text MEMBER text)
    Q_PROPERTY(QString state MEMBER state)  ///< of ours: what is true of it now
    Q_PROPERTY(bool ours MEMBER ours)

public:
    QString who;
    QString when;
    QString text;
    QString state;
    bool ours = false;
    bool operator==(const MessageRow&) const = default;
};

/// How a moment is written: against now on a screen, with its date on paper.
using Stamp = std::function<QString(const clock::Moment&)>;

/// "Called by Dr Ito, 12 Nov, 14:20. Left a message". One act as a line.
QString actText(const records::FindingActed& act, const Stamp& stamp);

/// The same, and whether her role did not allow it then.
QString actText(const records::FindingActed& act, const Stamp& stamp, bool beyondRole);

/// The phone wrote down that it showed this, at least as urgent. Without that nobody knows.
bool isShownByPhone(const triage::Finding& finding, const journal::CourseState& course);

/// The entry that raised a finding: the one it names, or the one of whose moment it speaks; empty for a silence, which no
/// entry raised, and while the entry is not here.
QString raisingEntry(const triage::Finding& finding, const journal::CourseState& course);

/// Open ones first, most urgent first, then the closed ones, newest first.
QList<RowList::Row> findingRows(const desk::CourseView& view, const Stamp& stamp);
/// When operations came that bear a clearly later time (vault::Vault::cameEarly()), on the clinic's wall.
using CameEarly = std::map<journal::OperationId, clock::Moment>;
CameEarly cameEarly(Workplace& workplace);
/// Newest first.
QList<RowList::Row> entryRows(const journal::CourseState& course, const Stamp& stamp, const CameEarly& early = {});
/// Oldest first.
QList<RowList::Row> messageRows(const journal::CourseState& course, const QString& patient, const Stamp& stamp);

/// "Pain L 3, R 2; Swelling L 4".
QString scoresText(const recovery::Scores& scores);

}  // namespace ebbline::deskapp
