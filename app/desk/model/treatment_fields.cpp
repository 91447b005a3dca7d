// The fields of the selected placement, of the anaesthetic and of the care given: each keeps the
// draft when it changes. Apart from treatment_editor.cpp because there are many.
#include "app/desk/model/treatment_editor.h"
#include "app/charts/curve_words.h"

#include "app/desk/model/treatment_rows.h"
#include "app/desk/model/words.h"

#include <QDate>
#include <QLocale>

#include <algorithm>
#include <array>
#include <cmath>

namespace ebbline::deskapp {

namespace {

template <typename Enum>
Enum within(int value, Enum first, Enum last)
{
    return static_cast<Enum>(std::clamp(value, static_cast<int>(first), static_cast<int>(last)));
}

// Strengths and mixtures to choose from; US label Table 1 and the buffering papers named in
// docs/clinical. Another one in a treatment is kept and shown, only not offered.
constexpr std::array strengths{0.5, 1.0, 1.5, 2.0};         // grams in 100 mL
constexpr std::array buffers{0.0, 1.0 / 10, 1.0 / 9, 1.0 / 3};  // parts of bicarbonate
constexpr std::array dilutions{100'000, 200'000, 400'000};     // of epinephrine, one in

template <typename Enum>
QStringList namesOf(Enum first, Enum last, QString (*name)(Enum))
{
    QStringList names;
    for (int i = static_cast<int>(first); i <= static_cast<int>(last); ++i) {
        names << name(static_cast<Enum>(i));
    }
    return names;
}

double finite(double value, double low, double high)
{
    return std::isfinite(value) ? std::clamp(value, low, high) : low;
}

/// A number as it is written here, or with a point: 62.5 is understood everywhere.
std::optional<double> numberOf(const QString& text)
{
    bool read = false;
    double number = QLocale().toDouble(text.trimmed(), &read);
    if (!read) {
        number = QLocale::c().toDouble(text.trimmed(), &read);
    }
    return read ? std::optional(number) : std::nullopt;
}

/// Milligrams with at most one decimal; a tenth is off by some 1e-16 of itself.
bool isAmount(double milligrams)
{
    return std::isfinite(milligrams) && milligrams >= 0 && milligrams <= recovery::maximumOtherwiseMg
           && std::abs(milligrams * 10 - std::round(milligrams * 10)) < 1e-6;
}

}  // namespace

QStringList TreatmentEditor::zoneNames() const
{
    return namesOf(recovery::Zone::brow, recovery::Zone::neck, &zoneName);
}

QStringList TreatmentEditor::endingNames() const
{
    return namesOf(recovery::Ending::shortOfMovingZone, recovery::Ending::pastMovingZone, &endingName);
}

QStringList TreatmentEditor::materialNames() const
{
    return namesOf(recovery::Material::pdo, recovery::Material::other, &materialName);
}

QStringList TreatmentEditor::formNames() const
{
    return namesOf(recovery::Form::smooth, recovery::Form::cones, &formName);
}

QStringList TreatmentEditor::drugNames() const
{
    return namesOf(recovery::Drug::lidocaine, recovery::Drug::lidocaineWithEpinephrine, &drugName);
}

QStringList TreatmentEditor::percentNames() const
{
    QStringList names;
    for (const double strength : strengths) {
        names << charts::withPercent(QLocale().toString(strength, 'g', 3));
    }
    return names;
}

void TreatmentEditor::setSide(int side)
{
    auto placement = current();
    placement.side = side == static_cast<int>(recovery::Side::right) ? recovery::Side::right : recovery::Side::left;
    changeCurrent(placement);
}

void TreatmentEditor::setZone(int zone)
{
    auto placement = current();
    placement.zone = within(zone, recovery::Zone::brow, recovery::Zone::neck);
    changeCurrent(placement);
}

void TreatmentEditor::setEnding(int ending)
{
    auto placement = current();
    placement.ending = within(ending, recovery::Ending::shortOfMovingZone, recovery::Ending::pastMovingZone);
    changeCurrent(placement);
}

void TreatmentEditor::setMaterial(int material)
{
    auto placement = current();
    placement.material = within(material, recovery::Material::pdo, recovery::Material::other);
    changeCurrent(placement);
}

void TreatmentEditor::setForm(int form)
{
    auto placement = current();
    placement.form = within(form, recovery::Form::smooth, recovery::Form::cones);
    changeCurrent(placement);
}

void TreatmentEditor::setGauge(int gauge)
{
    auto placement = current();
    placement.gauge = std::clamp(gauge, 14, 32);
    changeCurrent(placement);
}

void TreatmentEditor::setLengthMm(int length)
{
    auto placement = current();
    placement.lengthMm = std::clamp(length, 10, 500);
    changeCurrent(placement);
}

void TreatmentEditor::setLot(const QString& lot)
{
    auto placement = current();
    placement.lot = lot.toStdString();
    if (placement.lot != current().lot) {
        placement.article.reset();  // it was that of the pack with the other lot
    }
    changeCurrent(placement, TypedField::lot);
}

void TreatmentEditor::setExpiry(const QString& date)
{
    auto placement = current();
    placement.expiry = date.trimmed().isEmpty() ? std::nullopt : std::optional(date.trimmed().toStdString());
    changeCurrent(placement, TypedField::expiry);
}

QString TreatmentEditor::expiryProblem() const
{
    const auto text = expiry();
    if (text.isEmpty()) {
        return {};
    }
    const auto date = QDate::fromString(text, Qt::ISODate);
    if (!date.isValid()) {
        return tr("Write it as year-month-day, for example 2029-06-30.");
    }
    const auto day = m_treatment.at.day().time_since_epoch().count();
    return date < QDate(1970, 1, 1).addDays(day) ? tr("This thread was past its expiry on the day of the treatment.")
                                                 : QString();
}

void TreatmentEditor::setTrackMl(double volume)
{
    auto placement = current();
    placement.anaestheticMl = finite(volume, 0, 20);
    changeCurrent(placement);
}

void TreatmentEditor::setDrug(int drug)
{
    const auto next = within(drug, recovery::Drug::lidocaine, recovery::Drug::lidocaineWithEpinephrine);
    if (next == m_treatment.anaesthetic.drug) {
        return;
    }
    takeDrug(next);
    // The later word holds: of a solution without, no thread had any. That is said of none: chosen by mistake, it would stay as a statement.
    for (std::size_t i = 0; next == recovery::Drug::lidocaine && i < m_book.placements().size(); ++i) {
        auto placement = m_book.placements()[i];
        if (placement.epinephrineAt && *placement.epinephrineAt != recovery::EpinephrineAt::nowhere) {
            placement.epinephrineAt.reset();
            m_book.change(static_cast<int>(i) + 1, placement);
        }
    }
    touched();
}

int TreatmentEditor::percentIndex() const
{
    const auto found = std::find(strengths.begin(), strengths.end(), m_treatment.anaesthetic.percent);
    return found == strengths.end() ? -1 : static_cast<int>(found - strengths.begin());
}

void TreatmentEditor::setPercentIndex(int index)
{
    if (index >= 0 && static_cast<std::size_t>(index) < strengths.size() && index != percentIndex()) {
        m_treatment.anaesthetic.percent = strengths[static_cast<std::size_t>(index)];
        touched();
    }
}

QStringList TreatmentEditor::bufferNames() const
{
    QStringList names{tr("No")};
    for (const double part : buffers) {
        if (part > 0) {
            names << ratioText(static_cast<int>(std::lround(1 / part)));
        }
    }
    return names;
}

int TreatmentEditor::bufferIndex() const
{
    const auto found = std::find(buffers.begin(), buffers.end(), m_treatment.anaesthetic.bicarbonatePart);
    return found == buffers.end() ? -1 : static_cast<int>(found - buffers.begin());
}

void TreatmentEditor::setBufferIndex(int index)
{
    if (index >= 0 && static_cast<std::size_t>(index) < buffers.size() && index != bufferIndex()) {
        m_treatment.anaesthetic.bicarbonatePart = buffers[static_cast<std::size_t>(index)];
        touched();
    }
}

QStringList TreatmentEditor::dilutionNames() const
{
    QStringList names;
    for (const int oneIn : dilutions) {
        names << ratioText(oneIn);
    }
    return names;
}

int TreatmentEditor::dilutionIndex() const
{
    const auto found = std::find(dilutions.begin(), dilutions.end(), m_treatment.anaesthetic.epinephrineOneIn);
    return found == dilutions.end() ? -1 : static_cast<int>(found - dilutions.begin());
}

void TreatmentEditor::setDilutionIndex(int index)
{
    if (m_treatment.anaesthetic.drug == recovery::Drug::lidocaineWithEpinephrine && index >= 0
        && static_cast<std::size_t>(index) < dilutions.size() && index != dilutionIndex()) {
        m_treatment.anaesthetic.epinephrineOneIn = dilutions[static_cast<std::size_t>(index)];
        touched();
    }
}

void TreatmentEditor::setExtraMl(double volume)
{
    const double next = finite(volume, 0, 100);
    if (next != m_treatment.anaesthetic.extraMl) {
        m_treatment.anaesthetic.extraMl = next;
        touched();
    }
}

void TreatmentEditor::showNumbers()
{
    const auto typed = [](const std::optional<double>& value) {
        return value ? QLocale().toString(*value, 'f', QLocale::FloatingPointShortest) : QString();
    };
    m_weight = typed(m_treatment.weightKg);
    m_otherwise = typed(m_treatment.otherwiseMg);
}

void TreatmentEditor::setWeight(const QString& text)
{
    if (text == m_weight) {
        return;
    }
    m_weight = text;
    // A weight outside 30..300 kg stays in, so that core refuses it and no number is shown.
    m_treatment.weightKg = numberOf(text);
    touched(TypedField::weight);
}

void TreatmentEditor::setOtherwise(const QString& text)
{
    if (text == m_otherwise) {
        return;
    }
    m_otherwise = text;
    const auto milligrams = numberOf(text);
    m_treatment.otherwiseMg = milligrams && isAmount(*milligrams) ? milligrams : std::nullopt;
    touched(TypedField::otherwise);
}

QString TreatmentEditor::otherwiseProblem() const
{
    return m_otherwise.trimmed().isEmpty() || m_treatment.otherwiseMg
               ? QString()
               : tr("Lidocaine given otherwise: want milligrams, 0 to %L1, at most one decimal.").arg(recovery::maximumOtherwiseMg);
}

void TreatmentEditor::setDressings(bool placed)
{
    if (placed != m_treatment.dressings) {
        m_treatment.dressings = placed;
        touched();
    }
}

void TreatmentEditor::setCautionsGiven(bool given)
{
    if (given != m_treatment.cautionsGiven) {
        m_treatment.cautionsGiven = given;
        touched();
    }
}

void TreatmentEditor::setConsentGiven(bool given)
{
    if (given != m_treatment.consentGiven) {
        m_treatment.consentGiven = given;
        touched();
    }
}

void TreatmentEditor::setLearningConsent(bool given)
{
    if (given != m_treatment.learningConsent) {
        m_treatment.learningConsent = given;
        touched();
    }
}

void TreatmentEditor::setNote(const QString& note)
{
    if (note.toStdString() != m_treatment.note) {
        m_treatment.note = note.toStdString();
        touched(TypedField::note);
    }
}

}  // namespace ebbline::deskapp
