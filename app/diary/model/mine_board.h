#pragma once
/// \file
/// What is mine: what leaves this phone, taking it along, and taking the diary off the phone.

#include "app/diary/model/diary_settings.h"
#include "app/diary/model/home.h"

#include <QUrl>

namespace ebbline::diaryapp {

class MineBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString again READ again NOTIFY changed FINAL)          ///< the way to another treatment; empty: none is held yet
    Q_PROPERTY(QString outcome READ outcome NOTIFY changed FINAL)      ///< of taking along
    Q_PROPERTY(bool confirming READ isConfirming NOTIFY changed FINAL)  ///< of deletion
    Q_PROPERTY(QString loss READ loss NOTIFY changed FINAL)             ///< what would be lost, exactly
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)       ///< of deletion
    Q_PROPERTY(QString takeProblem READ takeProblem NOTIFY changed FINAL)    ///< of the passphrase for taking along
    Q_PROPERTY(QString eraseProblem READ eraseProblem NOTIFY changed FINAL)  ///< of the passphrase for deletion

public:
    static constexpr std::chrono::minutes stepHolds{2};  ///< as at the desk; our own choice

    MineBoard(Home& home, DiarySettings& settings, QObject* parent = nullptr);

    QString again() const;
    QString outcome() const { return m_outcome; }
    bool isConfirming() const { return m_confirming; }
    QString loss() const;
    QString problem() const { return m_problem; }
    QString takeProblem() const { return m_takeProblem; }
    QString eraseProblem() const { return m_eraseProblem; }

    /// Her passphrase once more, before all of it leaves the phone: whoever found the diary open does not take it along.
    /// Holds for one taking along and `stepHolds`. \returns whether it is hers; a wrong one counts as an attempt.
    Q_INVOKABLE bool allowTaking(const QString& passphrase);
    /// Writes a folder of its own inside the given one: tables, a bundle for other programs, and a page to print.
    /// If one file fails, what was written goes again; what cannot be removed is named. \pre allowTaking()
    Q_INVOKABLE void takeAlong(const QUrl& folder);
    Q_INVOKABLE void askDelete();
    Q_INVOKABLE void keepAll();
    /// \pre confirming. A wrong passphrase deletes nothing and counts as an attempt.
    Q_INVOKABLE void deleteAll(const QString& passphrase);
    void clear();

Q_SIGNALS:
    void changed();
    void deleted();

private:
    /// What is wrong with a passphrase that was asked once more; empty: it is hers.
    QString faultOf(const QString& passphrase) const;
    Home& m_home;
    DiarySettings& m_settings;
    QString m_outcome;
    QString m_problem;
    QString m_takeProblem;
    QString m_eraseProblem;
    std::optional<clock::Instant> m_allowedAt;
    bool m_confirming = false;
};

/// The page to print: everything written, oldest first, in the language of now.
/// \returns false if the file could not be written.
bool writeRecordPdf(const patient::Diary& diary, bool fahrenheit, const QString& file);
/// The same as simple HTML, for tests and for who prefers it.
QString recordHtml(const patient::Diary& diary, bool fahrenheit);

}  // namespace ebbline::diaryapp
