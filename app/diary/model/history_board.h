#pragma once
/// \file
/// What was written down so far, with the true state of each entry; and the notes both ways.

#include "app/diary/model/diary_settings.h"
#include "app/diary/model/home.h"
#include "app/diary/model/photo_lines.h"
#include "app/diary/model/photo_shelf.h"

#include <QtQml/qqmlregistration.h>

namespace ebbline::diaryapp {

struct EntryLine {
    Q_GADGET
    QML_VALUE_TYPE(entryLine)
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(QString title MEMBER title)    ///< "Day 2, today 9:12"
    Q_PROPERTY(QString scores MEMBER scores)  ///< one symptom a line
    Q_PROPERTY(QString marks MEMBER marks)    ///< "Written later. Corrected.", or empty
    Q_PROPERTY(QString note MEMBER note)
    Q_PROPERTY(QString warning MEMBER warning)  ///< the most urgent of what it raised, or empty
    Q_PROPERTY(bool loud MEMBER loud)           ///< emergency or call now
    Q_PROPERTY(QString advice MEMBER advice)    ///< all of what to do and why, for whatever it raised, or empty
    Q_PROPERTY(QString state MEMBER state)
    Q_PROPERTY(QString before MEMBER before)  ///< earlier versions, newest first; empty: never corrected
    Q_PROPERTY(bool begun MEMBER begun)       ///< a correction of it was begun and not saved
    Q_PROPERTY(QList<ebbline::diaryapp::PhotoLine> photos MEMBER photos)
    Q_PROPERTY(QString photosState MEMBER photosState)  ///< where they are, or empty
    Q_PROPERTY(bool bare MEMBER bare)         ///< photographs of a day that stand by themselves: no entry

public:
    QString key, title, scores, marks, note, warning;
    bool loud = false;
    QString advice;
    QString state, before;
    bool begun = false;
    QList<PhotoLine> photos;
    QString photosState;
    bool bare = false;
    bool operator==(const EntryLine&) const = default;
};

struct NoteLine {
    Q_GADGET
    QML_VALUE_TYPE(noteLine)
    Q_PROPERTY(QString from MEMBER from)
    Q_PROPERTY(QString text MEMBER text)
    Q_PROPERTY(bool mine MEMBER mine)
    Q_PROPERTY(QString state MEMBER state)  ///< "Seen by you", "Read by the clinic, today 9:12"

public:
    QString from, text, state;
    bool mine = false;
    bool operator==(const NoteLine&) const = default;
};

class HistoryBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QList<ebbline::diaryapp::EntryLine> entries READ entries NOTIFY changed FINAL)
    Q_PROPERTY(QList<ebbline::diaryapp::NoteLine> notes READ notes NOTIFY changed FINAL)
    Q_PROPERTY(ebbline::diaryapp::PhotoShelf* shelf READ shelf CONSTANT FINAL)
    Q_PROPERTY(QString noteDraft READ noteDraft WRITE setNoteDraft NOTIFY draftChanged FINAL)  ///< kept at every letter

public:
    HistoryBoard(Home& home, DiarySettings& settings, PhotoShelf& shelf, QObject* parent = nullptr);

    /// Newest first; photographs that belong to no entry stand under their day, among them.
    QList<EntryLine> entries() const;
    QList<NoteLine> notes() const;
    std::optional<recovery::EntryId> entryOf(const QString& key) const;
    void markRead();
    PhotoShelf* shelf() { return &m_shelf; }
    QString noteDraft() const;
    void setNoteDraft(const QString& text);
    /// Sends the draft. \returns false if it is empty or could not be kept.
    Q_INVOKABLE bool sendNote();
    Q_INVOKABLE bool writeNote(const QString& text);

Q_SIGNALS:
    void changed();
    void draftChanged();
    void failed(const QString& text);

private:
    QString versionText(const recovery::Entry& old, const recovery::Entry& current, const clock::Moment& now) const;

    Home& m_home;
    DiarySettings& m_settings;
    PhotoShelf& m_shelf;
};

}  // namespace ebbline::diaryapp
