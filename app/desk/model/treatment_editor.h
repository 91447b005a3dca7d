#pragma once
/// \file
/// Writing down a treatment: whose it is, what was placed where, what was injected, what was said
/// and agreed. Kept durably at every change, so that a power cut costs nothing. Each patient has a draft of her own: what
/// was written of one never stands under another's name.

#include "app/desk/model/dose_words.h"
#include "app/desk/model/placement_book.h"
#include "app/desk/model/row_list.h"
#include "app/desk/model/treatment_history.h"
#include "app/desk/model/treatment_row_types.h"
#include "app/desk/model/workplace.h"
#include "app/face/face_paint.h"
#include "core/exchange/gs1.h"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <map>

namespace ebbline::deskapp {

class TreatmentEditor : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(int step READ step WRITE setStep NOTIFY stepChanged FINAL)  ///< 0 patient .. 3 check
    Q_PROPERTY(QStringList steps READ steps NOTIFY stepChanged FINAL)
    Q_PROPERTY(ebbline::deskapp::RowList* patients READ patients CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::RowList* begun READ begun CONSTANT FINAL)  ///< whose treatments are begun and not recorded
    Q_PROPERTY(QString patientSearch READ patientSearch WRITE setPatientSearch NOTIFY changed FINAL)
    Q_PROPERTY(QString patientKey READ patientKey NOTIFY changed FINAL)
    Q_PROPERTY(QString patientName READ patientName NOTIFY changed FINAL)
    Q_PROPERTY(QString when READ when NOTIFY changed FINAL)
    Q_PROPERTY(QString day READ day WRITE setDay NOTIFY changed FINAL)     ///< of the treatment, ISO date
    Q_PROPERTY(QString time READ time WRITE setTime NOTIFY changed FINAL)  ///< "14:05"
    Q_PROPERTY(QString whenProblem READ whenProblem NOTIFY changed FINAL)
    Q_PROPERTY(QString whenQuestion READ whenQuestion NOTIFY changed FINAL)  ///< empty: nothing to confirm
    Q_PROPERTY(bool fromDraft READ isFromDraft NOTIFY changed FINAL)

    Q_PROPERTY(int view READ view WRITE setView NOTIFY changed FINAL)  ///< recovery::ChartView
    Q_PROPERTY(QList<ebbline::face::Track> tracks READ tracks NOTIFY changed FINAL)
    Q_PROPERTY(ebbline::deskapp::RowList* placements READ placements CONSTANT FINAL)
    Q_PROPERTY(int selected READ selected WRITE choose NOTIFY changed FINAL)  ///< number, 0 none
    Q_PROPERTY(QString caution READ caution NOTIFY changed FINAL)
    Q_PROPERTY(QString drawnOtherwise READ drawnOtherwise NOTIFY changed FINAL)  ///< what the drawing says where she chose otherwise
    Q_PROPERTY(bool planned READ isPlanned NOTIFY changed FINAL)               ///< a plan is kept beside
    Q_PROPERTY(QList<ebbline::face::Track> planTracks READ planTracks NOTIFY changed FINAL)
    Q_PROPERTY(QString planText READ planText NOTIFY changed FINAL)           ///< how what is done differs from it
    Q_PROPERTY(QString packProblem READ packProblem NOTIFY changed FINAL)     ///< of the code that was scanned last
    Q_PROPERTY(QStringList packReadings READ packReadings NOTIFY changed FINAL) ///< to choose from, where that code can mean several
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed FINAL)
    Q_PROPERTY(bool canRedo READ canRedo NOTIFY changed FINAL)
    Q_PROPERTY(QString solutionSaid READ solutionSaid NOTIFY changed FINAL)   ///< that a thread's epinephrine changed the solution; empty: it did not
    Q_PROPERTY(QString mirrorSaid READ mirrorSaid NOTIFY changed FINAL)       ///< why the last mirroring drew nothing; empty: it drew
    // The selected placement.
    Q_PROPERTY(int side READ side WRITE setSide NOTIFY changed FINAL)            ///< recovery::Side
    Q_PROPERTY(int zone READ zone WRITE setZone NOTIFY changed FINAL)            ///< recovery::Zone
    Q_PROPERTY(int ending READ ending WRITE setEnding NOTIFY changed FINAL)      ///< recovery::Ending
    Q_PROPERTY(int material READ material WRITE setMaterial NOTIFY changed FINAL)
    Q_PROPERTY(int form READ form WRITE setForm NOTIFY changed FINAL)
    Q_PROPERTY(int gauge READ gauge WRITE setGauge NOTIFY changed FINAL)         ///< G
    Q_PROPERTY(QStringList instrumentNames READ instrumentNames NOTIFY changed FINAL)
    Q_PROPERTY(int instrument READ instrument WRITE setInstrument NOTIFY changed FINAL)  ///< 0 not said, else recovery::Instrument
    /// Of needle or cannula; 0: not said.
    Q_PROPERTY(int instrumentLengthMm READ instrumentLengthMm WRITE setInstrumentLengthMm NOTIFY changed FINAL)
    Q_PROPERTY(QStringList epinephrineNames READ epinephrineNames NOTIFY changed FINAL)
    Q_PROPERTY(int epinephrine READ epinephrine WRITE setEpinephrine NOTIFY changed FINAL)  ///< 0 not said, else recovery::EpinephrineAt
    /// The same of all threads at once; -1: they differ.
    Q_PROPERTY(int epinephrineOfAll READ epinephrineOfAll WRITE setEpinephrineOfAll NOTIFY changed FINAL)
    Q_PROPERTY(int lengthMm READ lengthMm WRITE setLengthMm NOTIFY changed FINAL)
    Q_PROPERTY(QString lot READ lot WRITE setLot NOTIFY changed FINAL)
    Q_PROPERTY(QString expiry READ expiry WRITE setExpiry NOTIFY changed FINAL)  ///< ISO date or empty
    Q_PROPERTY(QString expiryProblem READ expiryProblem NOTIFY changed FINAL)
    Q_PROPERTY(double trackMl READ trackMl WRITE setTrackMl NOTIFY changed FINAL)

    Q_PROPERTY(QStringList redoneNames READ redoneNames NOTIFY changed FINAL)
    Q_PROPERTY(int redone READ redone WRITE setRedone NOTIFY changed FINAL)  ///< 0 placed once, else recovery::Redoing
    Q_PROPERTY(QString redoneReason READ redoneReason WRITE setRedoneReason NOTIFY changed FINAL)
    Q_PROPERTY(QString redoneProblem READ redoneProblem NOTIFY changed FINAL)

    Q_PROPERTY(QStringList zoneNames READ zoneNames NOTIFY changed FINAL)
    Q_PROPERTY(QStringList endingNames READ endingNames NOTIFY changed FINAL)
    Q_PROPERTY(QStringList materialNames READ materialNames NOTIFY changed FINAL)
    Q_PROPERTY(QStringList formNames READ formNames NOTIFY changed FINAL)
    Q_PROPERTY(QStringList drugNames READ drugNames NOTIFY changed FINAL)
    Q_PROPERTY(QStringList percentNames READ percentNames NOTIFY changed FINAL)
    Q_PROPERTY(int percentIndex READ percentIndex WRITE setPercentIndex NOTIFY changed FINAL)  ///< -1: another
    Q_PROPERTY(QStringList bufferNames READ bufferNames NOTIFY changed FINAL)
    /// 0 none, then 1:10, 1:9, 1:3 of bicarbonate to solution; -1: another.
    Q_PROPERTY(int bufferIndex READ bufferIndex WRITE setBufferIndex NOTIFY changed FINAL)

    Q_PROPERTY(int drug READ drug WRITE setDrug NOTIFY changed FINAL)
    Q_PROPERTY(QStringList dilutionNames READ dilutionNames NOTIFY changed FINAL)
    /// Of epinephrine, the place among them; -1: another, or none.
    Q_PROPERTY(int dilutionIndex READ dilutionIndex WRITE setDilutionIndex NOTIFY changed FINAL)
    Q_PROPERTY(double extraMl READ extraMl WRITE setExtraMl NOTIFY changed FINAL)
    Q_PROPERTY(QString weight READ weight WRITE setWeight NOTIFY changed FINAL)  ///< kg as typed
    Q_PROPERTY(QString otherwise READ otherwise WRITE setOtherwise NOTIFY changed FINAL)  ///< lidocaine given otherwise, mg, as typed
    Q_PROPERTY(QString otherwiseProblem READ otherwiseProblem NOTIFY changed FINAL)
    Q_PROPERTY(QString doseGiven READ doseGiven NOTIFY changed FINAL)
    Q_PROPERTY(QString doseMaximum READ doseMaximum NOTIFY changed FINAL)
    Q_PROPERTY(QString doseSource READ doseSource NOTIFY changed FINAL)
    Q_PROPERTY(QString doseClinic READ doseClinic NOTIFY changed FINAL)  ///< the clinic's own limit; empty: it has none
    Q_PROPERTY(QString doseShare READ doseShare NOTIFY changed FINAL)
    Q_PROPERTY(double dosePart READ dosePart NOTIFY changed FINAL)
    Q_PROPERTY(QString doseWarning READ doseWarning NOTIFY changed FINAL)
    Q_PROPERTY(QString doseTracks READ doseTracks NOTIFY changed FINAL)
    Q_PROPERTY(QString doseProblem READ doseProblem NOTIFY changed FINAL)

    Q_PROPERTY(QStringList diaryLanguageNames READ diaryLanguageNames CONSTANT FINAL)
    Q_PROPERTY(int likelyDiaryLanguage READ likelyDiaryLanguage NOTIFY changed FINAL)
    Q_PROPERTY(QStringList placedByNames READ placedByNames NOTIFY changed FINAL)  ///< nobody yet, who works here, and whoever stands there
    Q_PROPERTY(int placedBy READ placedBy WRITE setPlacedBy NOTIFY changed FINAL)  ///< of placedByNames(); 0: not written down
    Q_PROPERTY(bool dressings READ dressings WRITE setDressings NOTIFY changed FINAL)
    Q_PROPERTY(bool cautionsGiven READ cautionsGiven WRITE setCautionsGiven NOTIFY changed FINAL)
    Q_PROPERTY(bool consentGiven READ consentGiven WRITE setConsentGiven NOTIFY changed FINAL)
    Q_PROPERTY(bool learningConsent READ learningConsent WRITE setLearningConsent NOTIFY changed FINAL)
    Q_PROPERTY(QString note READ note WRITE setNote NOTIFY changed FINAL)
    Q_PROPERTY(ebbline::deskapp::RowList* baseline READ baseline CONSTANT FINAL)
    Q_PROPERTY(QStringList missing READ missing NOTIFY changed FINAL)  ///< what stops saving
    Q_PROPERTY(QString kept READ kept NOTIFY changed FINAL)            ///< "Draft kept 14:05"

    Q_PROPERTY(bool correction READ isCorrection NOTIFY changed FINAL)          ///< of a record that stands; else a new treatment
    Q_PROPERTY(QString reason READ reason WRITE setReason NOTIFY changed FINAL) ///< why it is corrected
    Q_PROPERTY(QStringList corrections READ corrections NOTIFY changed FINAL)   ///< what it changes, a line each
    Q_PROPERTY(QString correctionNews READ correctionNews NOTIFY changed FINAL) ///< corrected elsewhere meanwhile; empty: no
    Q_PROPERTY(QString phoneKeeps READ phoneKeeps NOTIFY changed FINAL)

public:
    explicit TreatmentEditor(Workplace& workplace, QObject* parent = nullptr);

    /// Takes up the draft that was in hand last, or starts blank. What was done to it before can be undone still, until the desk locks.
    void open();
    /// Whether there is something to come back to: a patient is chosen, or something is written.
    bool isBegun() const;
    /// Takes up the correction of a course's newest record that was begun, or begins one. \returns false without a record.
    bool openCorrection(const QString& course);
    bool isCorrection() const { return m_correction.has_value(); }
    recovery::CourseId correcting() const;  ///< null: none
    QString reason() const;
    void setReason(const QString& reason);
    QStringList corrections() const;
    QString correctionNews() const;
    QString phoneKeeps() const;
    void refresh();

    int step() const { return m_step; }
    void setStep(int step);
    QStringList steps() const;
    RowList* patients() { return &m_patients; }
    RowList* begun() { return &m_begun; }
    QString patientSearch() const { return m_patientSearch; }
    void setPatientSearch(const QString& text);
    QString patientKey() const { return keyOf(m_treatment.patient); }
    QString patientName() const;
    QString when() const;
    QString day() const { return m_day; }
    void setDay(const QString& day);
    QString time() const { return m_time; }
    void setTime(const QString& time);
    QString whenProblem() const;
    QString whenQuestion() const;
    bool isFromDraft() const { return m_fromDraft; }
    int view() const { return static_cast<int>(m_view); }
    void setView(int view);
    QList<face::Track> tracks() const;
    RowList* placements() { return &m_placementRows; }
    int selected() const { return m_selected; }
    QString caution() const;
    QString drawnOtherwise() const;
    bool isPlanned() const { return m_plan.has_value(); }
    QList<face::Track> planTracks() const;
    QString planText() const;
    QString mirrorSaid() const { return m_mirrorSaid; }
    QString solutionSaid() const { return m_solutionSaid; }
    QString packProblem() const { return m_packProblem; }
    QStringList packReadings() const;
    bool canUndo() const { return m_history.canUndo(); }
    bool canRedo() const { return m_history.canRedo(); }
    RowList* baseline() { return &m_baselineRows; }
    QStringList missing() const;
    QString kept() const { return m_kept; }
    /// The treatment as it would be recorded.
    recovery::Treatment treatment() const;

    int side() const { return static_cast<int>(current().side); }
    void setSide(int side);
    int zone() const { return static_cast<int>(current().zone); }
    void setZone(int zone);
    int ending() const { return static_cast<int>(current().ending); }
    void setEnding(int ending);
    int material() const { return static_cast<int>(current().material); }
    void setMaterial(int material);
    int form() const { return static_cast<int>(current().form); }
    void setForm(int form);
    int gauge() const { return current().gauge; }
    void setGauge(int gauge);
    QStringList instrumentNames() const;
    int instrument() const;
    void setInstrument(int instrument);
    int instrumentLengthMm() const { return current().instrumentLengthMm.value_or(0); }
    void setInstrumentLengthMm(int length);
    QStringList epinephrineNames() const;
    int epinephrine() const;
    /// Of a plain solution it makes one with epinephrine, where there was some.
    void setEpinephrine(int at);
    int epinephrineOfAll() const;
    void setEpinephrineOfAll(int at);
    int lengthMm() const { return current().lengthMm; }
    void setLengthMm(int length);
    QString lot() const { return QString::fromStdString(current().lot); }
    void setLot(const QString& lot);
    QString expiry() const { return QString::fromStdString(current().expiry.value_or(std::string())); }
    void setExpiry(const QString& date);
    QString expiryProblem() const;
    double trackMl() const { return current().anaestheticMl; }
    void setTrackMl(double volume);

    QStringList redoneNames() const;
    int redone() const;
    void setRedone(int how);
    QString redoneReason() const;
    void setRedoneReason(const QString& reason);
    QString redoneProblem() const;
    QStringList placedByNames() const;
    int placedBy() const;
    void setPlacedBy(int index);

    int drug() const { return static_cast<int>(m_treatment.anaesthetic.drug); }
    /// Plain: no thread had epinephrine of it.
    void setDrug(int drug);
    QStringList zoneNames() const;
    QStringList endingNames() const;
    QStringList materialNames() const;
    QStringList formNames() const;
    QStringList drugNames() const;
    QStringList percentNames() const;
    int percentIndex() const;
    void setPercentIndex(int index);
    QStringList bufferNames() const;
    int bufferIndex() const;
    void setBufferIndex(int index);
    QStringList dilutionNames() const;
    int dilutionIndex() const;
    void setDilutionIndex(int index);
    double extraMl() const { return m_treatment.anaesthetic.extraMl; }
    void setExtraMl(double volume);
    QString weight() const { return m_weight; }
    void setWeight(const QString& text);
    QString otherwise() const { return m_otherwise; }
    void setOtherwise(const QString& text);
    QString otherwiseProblem() const;
    QString doseGiven() const { return m_dose.given; }
    QString doseMaximum() const { return m_dose.maximum; }
    QString doseClinic() const { return m_dose.clinic; }
    QString doseSource() const { return m_dose.source; }
    QString doseShare() const { return m_dose.share; }
    double dosePart() const { return m_dose.part; }
    QString doseWarning() const { return m_dose.warning; }
    QString doseTracks() const { return m_dose.tracks; }
    QString doseProblem() const { return m_dose.problem; }
    bool dressings() const { return m_treatment.dressings; }
    void setDressings(bool placed);
    bool cautionsGiven() const { return m_treatment.cautionsGiven; }
    void setCautionsGiven(bool given);
    bool consentGiven() const { return m_treatment.consentGiven; }
    void setConsentGiven(bool given);
    bool learningConsent() const { return m_treatment.learningConsent; }
    void setLearningConsent(bool given);
    QString note() const { return QString::fromStdString(m_treatment.note); }
    void setNote(const QString& note);

    /// The treatment was just now; recording it later today renews that.
    Q_INVOKABLE void takeNow();
    /// The day and time that stand there are right, though they are of another day.
    Q_INVOKABLE void confirmWhen();
    /// Takes up the patient's own draft, or a blank one. What was written while nobody was chosen becomes hers, unless she has a draft.
    Q_INVOKABLE void choosePatient(const QString& key);
    Q_INVOKABLE void takeUpBegun(const QString& key);  ///< of begun()
    /// What was begun of a new patient, "name" or "phone"; kept at every letter, gone once registered.
    Q_INVOKABLE QString begunOf(const QString& field) const;
    Q_INVOKABLE void keepOf(const QString& field, const QString& text);
    QStringList diaryLanguageNames() const;
    int likelyDiaryLanguage() const;
    /// `language`: its place among diaryLanguageNames().
    Q_INVOKABLE bool registerPatient(const QString& name, const QString& phone, int language);
    Q_INVOKABLE void draw(QPointF entry, QPointF end);
    Q_INVOKABLE void move(int number, QPointF entry, QPointF end);
    Q_INVOKABLE void choose(int number);
    Q_INVOKABLE void removeSelected();
    Q_INVOKABLE void duplicateSelected();
    /// The thread that lies there already is chosen instead, and mirrorSaid() says so.
    Q_INVOKABLE void mirrorSelected();
    Q_INVOKABLE void mirrorAll();
    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();
    Q_INVOKABLE void setBaseline(int symptom, int side, int points);  ///< -1 clears
    Q_INVOKABLE void startOver();  ///< blank, for the same patient; can be undone
    /// What is drawn now is the plan; it stays as it is while the treatment is changed.
    Q_INVOKABLE void keepAsPlan();
    Q_INVOKABLE void dropPlan();
    /// The code on a pack, scanned or typed: its product, lot and expiry go to the chosen thread, and to those drawn next.
    /// \returns false and says why in packProblem().
    Q_INVOKABLE bool takePackCode(const QString& text);
    /// `index` of packReadings(): what the pack says.
    Q_INVOKABLE void takePackReading(int index);
    /// Records the treatment; `recorded` tells its course.
    Q_INVOKABLE void save();
    Q_INVOKABLE void dropCorrection();
    Q_INVOKABLE void seeNews();  ///< what a colleague corrected meanwhile was read; the draft stays as it is

Q_SIGNALS:
    void changed();
    void stepChanged();
    void recorded(QString course);
    void correctionEnded(QString course);  ///< recorded, or dropped

private:
    const recovery::Placement& current() const;
    void changeCurrent(const recovery::Placement& placement, TypedField field = TypedField::none);
    void takeDrug(recovery::Drug drug);
    void placeEpinephrine(std::size_t first, std::size_t end, int at);
    void takePack(const exchange::PackCode& code);
    void forgetPack();
    /// What a code or a mirroring said was said of the thread that was selected then.
    void select(int number);
    void placed(int number);
    void touched(TypedField field = TypedField::none);
    void keep();
    bool isEmpty() const;
    bool isBlank() const;  ///< nothing is written, and no plan waits for it
    void takeUp(const recovery::PatientId& patient);
    void layAside();
    void treat(const recovery::PatientId& patient);
    void handTo(const recovery::PatientId& patient);
    void adoptFormer();
    void forget();
    void recordedHere(const recovery::PatientId& patient);
    QList<RowList::Row> begunRows() const;
    static QString unreadText(const Error& why);
    static QString whenPlace(const recovery::PatientId& patient);
    void takeAt(const clock::Moment& at, WhenSaid when);
    void takeTyped();
    void openWhen();
    void forgetWhen();
    void showAt();
    /// While nobody has said otherwise, a treatment of today is of this moment.
    void renewAt();
    void restore(const TreatmentHistory::Step& step);
    void refreshPatients();
    const journal::CourseState* corrected() const;
    QStringList missingOfCorrection() const;
    void takeWritten();
    void keepCorrection();
    void recordCorrection();
    void endCorrection();
    void showRecordedPlan();
    /// The numbers as they are typed, from those of the treatment.
    void showNumbers();

    Workplace& m_workplace;
    recovery::Treatment m_treatment;
    PlacementBook m_book;
    TreatmentHistory m_history;
    /// What was in hand before, while the desk stays open.
    struct Aside {
        TreatmentHistory history;
        bool unkept = false;  ///< it stands here alone
    };
    std::map<recovery::PatientId, Aside> m_aside;
    QString m_unread;         ///< why the draft cannot be read; while that is so nothing is kept over it
    bool m_unkept = false;
    std::optional<recovery::Treatment> m_plan;
    std::optional<desk::TreatmentCorrection> m_correction;
    QString m_mirrorSaid;
    QString m_solutionSaid;
    QString m_packProblem;
    std::vector<exchange::PackCode> m_packReadings;
    WhenSaid m_when = WhenSaid::no;
    QString m_day;
    QString m_time;
    int m_step = 0;
    recovery::ChartView m_view = recovery::ChartView::front;
    int m_selected = 0;
    bool m_fromDraft = false;
    QString m_patientSearch;
    QString m_weight;
    QString m_otherwise;
    QString m_kept;
    DoseWords m_dose;
    RowList m_patients;
    RowList m_begun;
    RowList m_placementRows;
    RowList m_baselineRows;
};

}  // namespace ebbline::deskapp
