#pragma once
/// \file
/// The clinic's protocols in plain words: what the patient is asked to do and until when, which
/// rules raise a finding, and what the usual range rests on; changing them is protocol/protocol_editor's.

#include "app/desk/model/row_list.h"
#include "app/desk/model/workplace.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace ebbline::deskapp {

struct ProtocolLine {
    Q_GADGET
    QML_VALUE_TYPE(protocolLine)
    Q_PROPERTY(QString what MEMBER what)
    Q_PROPERTY(QString until MEMBER until)
    Q_PROPERTY(QString detail MEMBER detail)

public:
    QString what;
    QString until;
    QString detail;
    bool operator==(const ProtocolLine&) const = default;
};

class ProtocolBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QStringList names READ names NOTIFY changed FINAL)
    Q_PROPERTY(int chosen READ chosen WRITE setChosen NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString band READ band NOTIFY changed FINAL)
    Q_PROPERTY(QString calibration READ calibration NOTIFY changed FINAL)
    Q_PROPERTY(ebbline::deskapp::RowList* carePlan READ carePlan CONSTANT FINAL)
    Q_PROPERTY(ebbline::deskapp::RowList* rules READ rules CONSTANT FINAL)

public:
    explicit ProtocolBoard(Workplace& workplace, QObject* parent = nullptr);

    void refresh();
    QStringList names() const;
    int chosen() const { return m_chosen; }
    void setChosen(int index);
    QString title() const;
    QString band() const;
    QString calibration() const;
    RowList* carePlan() { return &m_carePlan; }
    RowList* rules() { return &m_rules; }
    /// The chosen one; null before the vault is open.
    const triggers::Protocol* current() const;

Q_SIGNALS:
    void changed();

private:
    Workplace& m_workplace;
    std::vector<triggers::Protocol> m_protocols;
    int m_chosen = 0;
    RowList m_carePlan;
    RowList m_rules;
};

/// "Take the dressings off".
QString instructionName(aftercare::InstructionKind kind);
/// An instruction in plain words, when it holds, and when it rings.
ProtocolLine lineOf(const aftercare::Instruction& instruction);
/// The rules with their thresholds.
QList<ProtocolLine> rulesOf(const triggers::Thresholds& thresholds);
/// What the thresholds rest on, and the budget only as far as it was shown to hold.
QString calibrationText(const triggers::Thresholds& thresholds);

}  // namespace ebbline::deskapp
