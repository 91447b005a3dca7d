#pragma once
/// \file
/// Changing a protocol: the care plan and the rules in plain words, what the patient would see, a rehearsal
/// over past and invented courses, and only then the signature. Kept durably at every change; every change
/// can be undone, and every version that was ever signed can be taken up again.

#include "app/desk/model/row_list.h"
#include "app/desk/model/workplace.h"

#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <atomic>
#include <memory>

namespace ebbline::deskapp {

struct PlanRow {
    Q_GADGET
    QML_VALUE_TYPE(planRow)
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(QString what MEMBER what)
    Q_PROPERTY(QString until MEMBER until)
    Q_PROPERTY(QString detail MEMBER detail)
    Q_PROPERTY(bool changed MEMBER changed)
    Q_PROPERTY(QString spoken MEMBER spoken)

public:
    QString key;
    QString what;
    QString until;
    QString detail;
    bool changed = false;
    QString spoken;
    bool operator==(const PlanRow&) const = default;
};

struct RuleRow {
    Q_GADGET
    QML_VALUE_TYPE(ruleRow)
    Q_PROPERTY(int index MEMBER index)
    Q_PROPERTY(QString title MEMBER title)  ///< empty if the rule is that of the row before
    Q_PROPERTY(QString what MEMBER what)
    Q_PROPERTY(QString unit MEMBER unit)
    Q_PROPERTY(int value MEMBER value)
    Q_PROPERTY(int from MEMBER from)
    Q_PROPERTY(int to MEMBER to)
    Q_PROPERTY(QString was MEMBER was)      ///< empty: unchanged

public:
    int index = 0;
    QString title;
    QString what;
    QString unit;
    int value = 0;
    int from = 0;
    int to = 0;
    QString was;
    bool operator==(const RuleRow&) const = default;
};

class ProtocolEditor : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QStringList steps READ steps NOTIFY changed FINAL)
    Q_PROPERTY(int step READ step WRITE setStep NOTIFY changed FINAL)  ///< 0 care plan, 1 rules, 2 rehearse and sign
    Q_PROPERTY(ebbline::deskapp::RowList* plan READ plan CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::RowList* rules READ rules CONSTANT FINAL)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed FINAL)
    Q_PROPERTY(bool canRedo READ canRedo NOTIFY changed FINAL)
    Q_PROPERTY(QStringList changes READ changes NOTIFY changed FINAL)  ///< against what is in use, a line each
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    // The chosen instruction.
    Q_PROPERTY(QString chosen READ chosen NOTIFY changed FINAL)        ///< key; empty: none
    Q_PROPERTY(QString chosenName READ chosenName NOTIFY changed FINAL)
    Q_PROPERTY(int firstDay READ firstDay WRITE setFirstDay NOTIFY changed FINAL)
    Q_PROPERTY(int lastDay READ lastDay WRITE setLastDay NOTIFY changed FINAL)
    Q_PROPERTY(int everyDays READ everyDays WRITE setEveryDays NOTIFY changed FINAL)
    Q_PROPERTY(QString times READ times NOTIFY changed FINAL)          ///< "08:00 20:00"
    Q_PROPERTY(QString timesProblem READ timesProblem NOTIFY changed FINAL)
    Q_PROPERTY(QString clinicText READ clinicText WRITE setClinicText NOTIFY changed FINAL)
    Q_PROPERTY(bool ignoresQuiet READ ignoresQuiet WRITE setIgnoresQuiet NOTIFY changed FINAL)
    Q_PROPERTY(QStringList addable READ addable NOTIFY changed FINAL)  ///< instructions that are not in the plan
    Q_PROPERTY(int followUpDay READ followUpDay WRITE setFollowUpDay NOTIFY changed FINAL)
    // What the patient would see.
    Q_PROPERTY(int previewDay READ previewDay WRITE setPreviewDay NOTIFY changed FINAL)
    Q_PROPERTY(QString previewTitle READ previewTitle NOTIFY changed FINAL)
    Q_PROPERTY(QStringList previewDue READ previewDue NOTIFY changed FINAL)    ///< with a time of that day
    Q_PROPERTY(QStringList previewRules READ previewRules NOTIFY changed FINAL)  ///< to keep, without one
    // Rehearsal and signature.
    Q_PROPERTY(bool rehearsing READ isRehearsing NOTIFY changed FINAL)
    Q_PROPERTY(double progress READ progress NOTIFY changed FINAL)
    Q_PROPERTY(bool rehearsed READ isRehearsed NOTIFY changed FINAL)   ///< this very draft
    Q_PROPERTY(QString verdict READ verdict NOTIFY changed FINAL)
    Q_PROPERTY(QStringList figuresHeader READ figuresHeader NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList figures READ figures NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList differences READ differences NOTIFY changed FINAL)  ///< name, before, after
    Q_PROPERTY(QStringList missing READ missing NOTIFY changed FINAL)  ///< what stops signing
    Q_PROPERTY(QString outcome READ outcome NOTIFY changed FINAL)
    Q_PROPERTY(bool bringsRange READ bringsRange NOTIFY changed FINAL)  ///< another usual range than the one in use
    Q_PROPERTY(bool canTakeBack READ canTakeBack NOTIFY changed FINAL)  ///< what was signed last, here
    Q_PROPERTY(QStringList versions READ versions NOTIFY changed FINAL)  ///< newest first

public:
    explicit ProtocolEditor(Workplace& workplace, QObject* parent = nullptr);
    ~ProtocolEditor() override;

    /// Takes up the kept draft of this protocol, or begins with what is in use.
    void open(const std::string& name);
    void refresh();
    /// Makes a draft of what came in a file; what was in the making comes back by undo(). `band`: a version of this clinic, or
    /// the one in use. Without its plan that of the draft stays. \pre open()
    void take(const triggers::Protocol& file, const bands::Band& band, bool withPlan);

    QString title() const;
    QStringList steps() const;
    int step() const { return m_step; }
    void setStep(int step);
    RowList* plan() { return &m_plan; }
    RowList* rules() { return &m_rules; }
    bool canUndo() const { return !m_before.empty(); }
    bool canRedo() const { return !m_after.empty(); }
    QStringList changes() const;
    QString problem() const;
    QString chosen() const { return QString::fromStdString(m_chosen); }
    QString chosenName() const;
    int firstDay() const { return current().firstDay; }
    void setFirstDay(int day);
    int lastDay() const { return current().lastDay; }
    void setLastDay(int day);
    int everyDays() const { return current().everyDays; }
    void setEveryDays(int days);
    QString times() const;
    QString timesProblem() const { return m_timesProblem; }
    QString clinicText() const { return QString::fromStdString(current().clinicText); }
    void setClinicText(const QString& text);
    bool ignoresQuiet() const { return current().ignoresQuietHours; }
    void setIgnoresQuiet(bool ignores);
    QStringList addable() const;
    int followUpDay() const { return m_draft.plan.followUpDay; }
    void setFollowUpDay(int day);
    int previewDay() const { return m_previewDay; }
    void setPreviewDay(int day);
    QString previewTitle() const;
    QStringList previewDue() const;
    QStringList previewRules() const;
    bool isRehearsing() const { return m_rehearsing; }
    double progress() const { return m_progress ? m_progress->load() : 0; }
    bool isRehearsed() const { return m_rehearsed && m_rehearsed->draft == m_draft; }
    QString verdict() const;
    QStringList figuresHeader() const;
    QVariantList figures() const;
    QVariantList differences() const;
    QStringList missing() const;
    QString outcome() const { return m_outcome; }
    bool bringsRange() const { return !(m_draft.band == m_inUse.band); }
    bool canTakeBack() const { return m_signedOver.has_value(); }
    QStringList versions() const;

    Q_INVOKABLE void choose(const QString& key);
    Q_INVOKABLE void setTimes(const QString& text);
    Q_INVOKABLE void addInstruction(int index);  ///< of addable()
    Q_INVOKABLE void removeChosen();
    Q_INVOKABLE void setRule(int index, int value);
    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();
    Q_INVOKABLE void startOver();
    /// The draft without the range that it brings, and without that range's thresholds.
    Q_INVOKABLE void keepRange();
    Q_INVOKABLE void rehearse();
    Q_INVOKABLE void sign();
    /// Signs what was in use before the last signature anew.
    Q_INVOKABLE void takeBack();
    /// Makes a former version the draft; it is rehearsed and signed like any other.
    Q_INVOKABLE void takeUp(int index);          ///< of versions()

Q_SIGNALS:
    void changed();

private:
    /// What can be changed. The band is the one in use, or came with a file.
    struct Draft {
        aftercare::CarePlan plan;
        triggers::Thresholds thresholds;
        bands::Band band = bands::seedBand();
        std::shared_ptr<const triggers::Protocol> from{};  ///< beside whose rules the thresholds were calibrated; null: those in use
        bool operator==(const Draft&) const = default;
    };
    struct Rehearsed {
        Draft draft;
        desk::ProtocolRehearsal result;
    };

    Draft asInUse() const;
    QString rangeProblem() const;
    const aftercare::Instruction& current() const;
    void change(Draft next);
    void changeCurrent(const aftercare::Instruction& instruction);
    void drop();
    triggers::Protocol protocol() const;
    void keep();
    void sayUnread(const Error& why);

    Workplace& m_workplace;
    QThreadPool m_pool;
    QTimer m_watch;
    int m_round = 0;
    int m_step = 0;
    triggers::Protocol m_inUse;
    Draft m_draft;
    std::optional<Error> m_unread;  ///< why the draft that is kept cannot be read; while that is so nothing is kept over it
    std::vector<Draft> m_before;
    std::vector<Draft> m_after;
    std::string m_chosen;
    QString m_timesProblem;
    int m_previewDay = 0;
    bool m_rehearsing = false;
    std::shared_ptr<std::atomic<double>> m_progress;
    std::optional<Rehearsed> m_rehearsed;
    std::optional<triggers::Protocol> m_signedOver;
    QString m_outcome;
    RowList m_plan;
    RowList m_rules;
};

}  // namespace ebbline::deskapp
