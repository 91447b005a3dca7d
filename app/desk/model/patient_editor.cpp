#include "app/desk/model/patient_editor.h"

#include "app/desk/model/begun.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "core/bytes/text.h"

#include <algorithm>

namespace ebbline::deskapp {

namespace {

int languageIndex(const std::string& code)
{
    return static_cast<int>(diaryLanguages().indexOf(nearestLanguage(QString::fromStdString(code).replace(u'-', u'_'), diaryLanguages())));
}

QString changesText(const journal::PatientCorrection& correction)
{
    const auto& before = correction.before;
    const auto& after = correction.after;
    QStringList parts;
    if (before.name != after.name) {
        parts << PatientEditor::tr("name until then: %1").arg(QString::fromStdString(before.name));
    }
    if (before.phone != after.phone) {
        parts << (before.phone.empty() ? PatientEditor::tr("no number until then")
                                       : PatientEditor::tr("number until then: %1").arg(leftToRight(before.phone)));
    }
    if (before.language != after.language) {
        const auto language = languageName(QString::fromStdString(before.language));
        parts << PatientEditor::tr("language until then: %1").arg(language.isEmpty() ? QString::fromStdString(before.language) : language);
    }
    return parts.isEmpty() ? PatientEditor::tr("as it was already") : parts.join(QStringLiteral(" · "));
}

QString whoText(const journal::PatientCorrection& correction)
{
    return correction.by.empty() ? PatientEditor::tr("somebody at another desk") : QString::fromStdString(correction.by);
}

/// Which correction a kept draft came from: the operation as text; empty: the registering.
QString textOf(const std::optional<journal::OperationId>& operation)
{
    return operation ? QString::fromStdString(bytes::toHex(operation->device.view()) + '/' + std::to_string(operation->number)) : QString();
}

}  // namespace

QStringList correctionLines(const std::vector<journal::PatientCorrection>& corrections, const clock::Moment& now)
{
    QStringList lines;
    for (auto correction = corrections.rbegin(); correction != corrections.rend(); ++correction) {
        lines << PatientEditor::tr("Corrected %1 by %2: %3", "when, who, what held until then")
                     .arg(whenText(correction->entered, now), whoText(*correction), changesText(*correction));
    }
    return lines;
}

QString crossedText(const std::vector<journal::PatientCorrection>& corrections)
{
    return corrections.empty() || !corrections.back().crossed
               ? QString()
               : PatientEditor::tr("Two desks corrected this without knowing of each other. Where both changed the same, the later one holds. Ask the patient what is right.");
}

PatientEditor::PatientEditor(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace)
{
    connect(&workplace, &Workplace::changed, this, &PatientEditor::changed);
    connect(&workplace, &Workplace::openChanged, this, [this] {
        close();
        forgetUndo();
    });
}

QString PatientEditor::place() const
{
    return QStringLiteral("patient/") + keyOf(m_patient);
}

QString PatientEditor::title() const
{
    return isShown() ? tr("Correct what is on record of %1").arg(QString::fromStdString(m_opened.name)) : QString();
}

QStringList PatientEditor::languages() const
{
    QStringList names;
    for (const auto& code : diaryLanguages()) {
        names << languageName(code);
    }
    return names;
}

void PatientEditor::open(const QString& patient)
{
    const auto id = patientFromKey(patient);
    if (!m_workplace.isOpen() || !m_workplace.state().patients.contains(id)) {
        return;
    }
    close();
    forgetUndo();
    m_patient = id;
    m_opened = m_workplace.state().patients.at(id);
    const auto corrections = m_workplace.desk().corrections(id);
    m_seen = corrections.empty() ? std::nullopt : std::optional(corrections.back().operation);
    m_name = QString::fromStdString(m_opened.name);
    m_phone = QString::fromStdString(m_opened.phone);
    m_language = languageIndex(m_opened.language);
    // What was begun stays upon what its writer had in sight then.
    const auto begun = begunWords(m_workplace, place()).split(u'\n');
    if (begun.size() == 4 || begun.size() == 7) {
        const auto from = std::ranges::find_if(corrections, [&](const auto& each) { return textOf(each.operation) == begun[3]; });
        if (from != corrections.end()) {
            m_seen = from->operation;
            m_opened = from->after;
        } else if (!corrections.empty()) {
            m_seen.reset();
            m_opened = corrections.front().before;
        }
        if (begun.size() == 7) {
            m_opened.name = begun[4].toStdString();
            m_opened.phone = begun[5].toStdString();
            m_opened.language = begun[6].toStdString();
        }
        m_name = begun[0];
        m_phone = begun[1];
        m_language = static_cast<int>(diaryLanguages().indexOf(begun[2]));
    }
    Q_EMIT changed();
}

records::PatientRegistered PatientEditor::written() const
{
    auto patient = m_opened;
    patient.name = m_name.trimmed().toStdString();
    patient.phone = m_phone.trimmed().toStdString();
    // A language that this desk does not name stays as it was registered unless another one is chosen.
    if (m_language != languageIndex(m_opened.language)) {
        patient.language = diaryLanguages().value(m_language).replace(u'_', u'-').toStdString();
    }
    return patient;
}

bool PatientEditor::isSavable() const
{
    return isShown() && !m_name.trimmed().isEmpty() && written() != m_opened;
}

QString PatientEditor::meanwhile() const
{
    const auto corrections = isShown() && m_workplace.isOpen() ? m_workplace.desk().corrections(m_patient) : std::vector<journal::PatientCorrection>{};
    if (corrections.empty() || corrections.back().operation == m_seen) {
        return {};
    }
    const auto& last = corrections.back();
    return tr("%1 corrected this meanwhile: %2. Only what you change here is changed.", "who, what held until then").arg(whoText(last), changesText(last));
}

QStringList PatientEditor::history() const
{
    return isShown() && m_workplace.isOpen() ? correctionLines(m_workplace.desk().corrections(m_patient), m_workplace.now()) : QStringList();
}

void PatientEditor::edited()
{
    m_problem.clear();
    keepBegun(m_workplace, place(),
              written() == m_opened ? QString()
                                    : QStringList{m_name, m_phone, diaryLanguages().value(m_language), textOf(m_seen), QString::fromStdString(m_opened.name),
                                                QString::fromStdString(m_opened.phone), QString::fromStdString(m_opened.language)}
                                        .join(u'\n'));
    Q_EMIT changed();
}

void PatientEditor::setName(const QString& name)
{
    if (isShown() && name != m_name) {
        m_name = name;
        edited();
    }
}

void PatientEditor::setPhone(const QString& phone)
{
    if (isShown() && phone != m_phone) {
        m_phone = phone;
        edited();
    }
}

void PatientEditor::setLanguage(int language)
{
    if (isShown() && language != m_language && language >= 0 && language < diaryLanguages().size()) {
        m_language = language;
        edited();
    }
}

bool PatientEditor::save()
{
    if (!isSavable() || !m_workplace.isOpen()) {
        return false;
    }
    const auto patient = written();
    const auto done = m_workplace.desk().correctPatient(patient, m_seen, m_opened);
    // A colleague wrote the very same meanwhile: it is on record.
    if (!done && done.error().reason != Reason::alreadyExists) {
        m_problem = errorText(done.error());
        Q_EMIT changed();
        return false;
    }
    keepBegun(m_workplace, place(), {});
    close();
    if (done) {
        m_undo = Target{patient.patient, *done, tr("Corrected: %1", "name").arg(QString::fromStdString(patient.name))};
        Q_EMIT undoChanged();
    }
    m_workplace.settle({});
    return true;
}

void PatientEditor::leave()
{
    if (isShown()) {
        keepBegun(m_workplace, place(), {});
        close();
    }
}

void PatientEditor::setAside()
{
    if (isShown()) {
        close();
    }
}

void PatientEditor::close()
{
    m_patient = {};
    m_opened = {};
    m_seen.reset();
    m_name.clear();
    m_phone.clear();
    m_language = -1;
    m_problem.clear();
    Q_EMIT changed();
}

void PatientEditor::undo()
{
    if (!m_undo || !m_workplace.isOpen()) {
        return;
    }
    const auto target = *m_undo;
    forgetUndo();
    const auto back = m_workplace.desk().takeBackCorrection(target.patient, target.correction);
    if (!back && back.error().reason == Reason::alreadyExists) {
        Q_EMIT m_workplace.failed(tr("It was corrected again meanwhile: nothing was taken back."));
    } else {
        m_workplace.settle(back);
    }
}

void PatientEditor::forgetUndo()
{
    if (m_undo) {
        m_undo.reset();
        Q_EMIT undoChanged();
    }
}

}  // namespace ebbline::deskapp
