#pragma once
/// \file
/// Writing an entry: one question at a time, every tap durable, nothing pre-filled. A correction is
/// kept at every tap too, beside the entry, which stands as it was until the correction is saved.

#include "app/diary/model/diary_settings.h"
#include "app/diary/model/entry_moment.h"

#include <QtQml/qqmlregistration.h>

namespace ebbline::diaryapp {

/// One answer of a side, as a page shows it.
struct SideAnswer {
    Q_GADGET
    QML_VALUE_TYPE(sideAnswer)
    Q_PROPERTY(int side MEMBER side)          ///< recovery::Side
    Q_PROPERTY(QString name MEMBER name)      ///< "Your left"
    Q_PROPERTY(int points MEMBER points)      ///< 0..10, -1 while not answered
    Q_PROPERTY(QString before MEMBER before)  ///< "Last time 4", to look at only

public:
    int side = 0;
    QString name;
    int points = -1;
    QString before;
    bool operator==(const SideAnswer&) const = default;
};

struct SignLine {
    Q_GADGET
    QML_VALUE_TYPE(signLine)
    Q_PROPERTY(int sign MEMBER sign)
    Q_PROPERTY(QString text MEMBER text)
    Q_PROPERTY(bool ticked MEMBER ticked)

public:
    int sign = 0;
    QString text;
    bool ticked = false;
    bool operator==(const SignLine&) const = default;
};

class EntryBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(Step step READ step NOTIFY changed FINAL)
    Q_PROPERTY(QString progress READ progress NOTIFY changed FINAL)  ///< "2 of 7"
    Q_PROPERTY(qreal share READ share NOTIFY changed FINAL)          ///< 0..1
    Q_PROPERTY(QString question READ question NOTIFY changed FINAL)
    Q_PROPERTY(QString scale READ scale NOTIFY changed FINAL)
    Q_PROPERTY(QList<ebbline::diaryapp::SideAnswer> sides READ sides NOTIFY changed FINAL)
    Q_PROPERTY(QString nextWord READ nextWord NOTIFY changed FINAL)  ///< "Next" or "Skip"
    Q_PROPERTY(QList<ebbline::diaryapp::SignLine> signLines READ signLines NOTIFY changed FINAL)
    Q_PROPERTY(QString signsWord READ signsWord NOTIFY changed FINAL)  ///< "None of these" or "These, nothing else"
    Q_PROPERTY(QString temperature READ temperature NOTIFY changed FINAL)
    Q_PROPERTY(QString temperatureProblem READ temperatureProblem NOTIFY changed FINAL)
    Q_PROPERTY(bool fahrenheit READ isFahrenheit WRITE setFahrenheit NOTIFY changed FINAL)
    Q_PROPERTY(QString note READ note NOTIFY changed FINAL)  ///< as it is kept: of what is too long its beginning
    Q_PROPERTY(QString noteProblem READ noteProblem NOTIFY changed FINAL)  ///< that something was not kept, until it is shorter again
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(bool moreOffered READ isMoreOffered NOTIFY changed FINAL)
    Q_PROPERTY(bool throwing READ isThrowing NOTIFY changed FINAL)  ///< asked whether all that was typed shall go
    Q_PROPERTY(QString throwText READ throwText NOTIFY changed FINAL)
    Q_PROPERTY(bool amending READ isAmending NOTIFY changed FINAL)
    Q_PROPERTY(ebbline::diaryapp::EntryMoment* moment READ moment CONSTANT FINAL)

public:
    enum class Step { Score, Signs, Rest };  // upper case: QML asks for it
    Q_ENUM(Step)

    EntryBoard(Home& home, DiarySettings& settings, QObject* parent = nullptr);

    /// A new entry, or the one that was being typed when the program ended: at the first question that is open,
    /// or at the very one that was in sight.
    /// \returns as patient::Diary::draft(): then nothing was opened.
    enum class Place { firstOpen, asLeft };
    Done open(Place place = Place::firstOpen);
    /// Corrects an entry, or goes on correcting it; its old version is kept.
    Done amend(const recovery::EntryId& id);

    /// True if anything was answered or typed: worth going on with.
    static bool isBegun(const patient::Draft& draft);
    /// Something is being typed that speaks of the moment when it was begun: its moment is not to change unasked.
    bool isBegunOfNow() const;

    Step step() const;
    QString progress() const;
    qreal share() const;
    QString question() const;
    QString scale() const;
    QList<SideAnswer> sides() const;
    QString nextWord() const;
    QList<SignLine> signLines() const;
    QString signsWord() const;
    QString temperature() const { return m_temperature; }
    QString temperatureProblem() const { return m_temperatureProblem; }
    bool isFahrenheit() const { return m_settings.isFahrenheit(); }
    void setFahrenheit(bool fahrenheit);
    QString note() const { return QString::fromStdString(m_entry.note); }
    QString noteProblem() const;
    QString summary() const;
    QString problem() const { return m_problem; }
    bool isMoreOffered() const;
    bool isThrowing() const { return m_throwing; }
    /// What would be lost of warning signs and fever, what they ask for, and the question.
    QString throwText() const;
    bool isAmending() const { return m_amends.has_value(); }
    const std::optional<recovery::EntryId>& amends() const { return m_amends; }
    EntryMoment* moment() { return &m_moment; }

    Q_INVOKABLE void answer(int side, int points);
    Q_INVOKABLE void clear(int side);
    Q_INVOKABLE void next();
    Q_INVOKABLE void back();
    Q_INVOKABLE void askMore();
    Q_INVOKABLE void tick(int sign, bool present);
    /// Says no to what is not ticked. What asks for a call is said at once, before the next question.
    Q_INVOKABLE void signsDone();
    /// While typing: kept as far as it is a temperature, and not judged yet.
    Q_INVOKABLE void typeTemperature(const QString& text);
    /// Done typing: what is not a temperature is said.
    Q_INVOKABLE void writeTemperature(const QString& text);
    /// The beginning of a note that there is room for.
    Q_INVOKABLE static QString keptNote(const QString& text);
    Q_INVOKABLE void writeNote(const QString& text);
    /// Refused while the temperature is not one: it may be a fever. What the rest of it raises is judged and
    /// said all the same, and where it cannot be stored.
    Q_INVOKABLE void save();
    /// Asks first, unless nothing was typed.
    Q_INVOKABLE void askDiscard();
    Q_INVOKABLE void keepTyping();
    Q_INVOKABLE void discard();

    /// Findings of the entry that was saved last, or could not be, most urgent first.
    const std::vector<triage::Finding>& findings() const { return m_findings; }
    /// The entry saved last: the newest by its writing, not by the moment that it speaks of.
    const std::optional<recovery::EntryId>& savedEntry() const { return m_saved; }
    /// What is not saved asks for a call, and nobody has read that yet.
    bool isLoudUnsaved() const { return m_unsaved && !m_findings.empty() && m_findings.front().urgency <= recovery::Urgency::callNow; }
    /// The warning that shows was read. One of an entry that nobody had tried to save yet needs no second
    /// showing once it is saved.
    void setRead();
    /// What was saved last asks for a call, and some of it was not read while it was typed.
    bool isLoudSaved() const;
    /// Opens what was being typed, an entry or a correction, if it asks for a call that nobody has read: nothing was done about
    /// it as far as is known. Whoever leaves what she typed leaves through here, and so does a diary that opens again.
    /// \returns false if it does not, or nothing is being typed.
    bool reopenLoud();

Q_SIGNALS:
    void changed();
    void saved();
    void notSaved();  ///< problem() says why, empty: nobody has tried yet; findings() what it raises
    void left();  ///< back from the first question, or discarded

private:
    void keep();
    void start(const patient::Draft& draft);
    int keptStep() const;
    bool readTemperature();
    QString temperatureComplaint() const;
    void warnOf(std::vector<triage::Finding> findings);
    bool isNews(const recovery::EntryId& entry, const triage::Finding& finding) const;
    bool isRead(const recovery::EntryId& entry, const triage::Finding& finding) const;
    std::vector<triage::Finding> unreadOf(recovery::Entry typed) const;
    recovery::Symptom symptom() const { return m_symptoms[m_place]; }
    int stepCount() const { return static_cast<int>(m_symptoms.size()) + 2; }

    Home& m_home;
    DiarySettings& m_settings;
    EntryMoment m_moment;
    recovery::Entry m_entry;
    std::optional<recovery::Entry> m_before;
    std::optional<recovery::EntryId> m_amends;
    std::vector<recovery::Symptom> m_symptoms;
    std::size_t m_place = 0;  ///< symptoms, then signs, then the rest
    QString m_temperature;
    QString m_temperatureProblem;
    bool m_noteFull = false;
    QString m_problem;
    std::vector<triage::Finding> m_findings;
    std::optional<recovery::EntryId> m_saved;
    bool m_unsaved = false;
    bool m_throwing = false;
    bool m_tried = false;  ///< storing what is unsaved was tried
    bool m_unkept = false;  ///< what was typed last could not be kept: it is on this page alone
    std::map<std::pair<recovery::EntryId, std::string>, recovery::Urgency> m_read;  ///< warnings read before their entry was saved
};

}  // namespace ebbline::diaryapp
