#pragma once
/// \file
/// The note for whoever takes over: everybody who waits, why, since when, what was done, and a word from who
/// leaves. It is made from the queue of the moment at which it is read, and anew before it goes anywhere; the word is in the clinic's journal, at every desk with its
/// author, until somebody takes it down.

#include "app/desk/model/course_rows.h"
#include "app/desk/model/workplace.h"
#include "app/desk/sheet/paper.h"
#include "app/desk/sheet/paper_printer.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace ebbline::deskapp {

class HandOverBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString pinned READ pinned NOTIFY changed FINAL)          ///< the word, with who and when; empty: none
    Q_PROPERTY(QString word READ word WRITE setWord NOTIFY changed FINAL)
    Q_PROPERTY(QString text READ text NOTIFY changed FINAL)              ///< the whole note
    Q_PROPERTY(QString outcome READ outcome NOTIFY changed FINAL)

public:
    explicit HandOverBoard(Workplace& workplace, QObject* parent = nullptr);

    void open();
    QString pinned() const;
    QString word() const { return m_word; }
    void setWord(const QString& word);
    QString text() { return paper().asText(); }
    const Paper& paper();
    QString outcome() const { return m_outcome; }

    /// Pins the word in the name of the person at the desk.
    Q_INVOKABLE void pin();
    Q_INVOKABLE void takeDown();
    /// `.pdf` or `.txt`. \returns false and says why in outcome().
    bool write(const QString& path);
    Q_INVOKABLE void saveAs();
    Q_INVOKABLE void print();
    Q_INVOKABLE void copy();  ///< as text, to the clipboard

Q_SIGNALS:
    void changed();

private:
    void make();
    bool isOpened() const { return m_workplace.isOpen() && !m_paper.title.isEmpty(); }
    /// What was pinned, each word with who and when.
    QString wordsUp(const Stamp& stamp) const;

    Workplace& m_workplace;
    PaperPrinter m_printer;
    Paper m_paper;
    bool m_stale = false;  ///< something changed since it was made
    QString m_word;
    QString m_outcome;
};

}  // namespace ebbline::deskapp
