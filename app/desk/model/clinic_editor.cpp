#include "app/desk/model/grave_step.h"
#include "app/desk/model/clinic_editor.h"

#include "app/desk/model/begun.h"
#include "app/desk/model/role_words.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "core/bytes/text.h"
#include "core/pairing/hub_address.h"

#include <QByteArray>
#include <QClipboard>
#include <QGuiApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QRegularExpression>

#include <algorithm>
#include <array>

namespace ebbline::deskapp {

namespace {

const QString begunName = QStringLiteral("clinic");

/// 32 bytes from 64 hexadecimal digits.
std::optional<bytes::Array<32>> keyHashOf(const QString& text)
{
    static const QRegularExpression form(QStringLiteral("^[0-9a-fA-F]{64}$"));
    if (!form.match(text.trimmed()).hasMatch()) {
        return std::nullopt;
    }
    const auto raw = QByteArray::fromHex(text.trimmed().toLatin1());
    bytes::Array<32> hash{};
    std::copy(raw.begin(), raw.end(), hash.begin());
    return hash;
}

/// One number that a phone can dial as it is written. Of "+49 (0)30" nobody can know which digits count.
bool isOneNumber(const QString& text)
{
    static const QRegularExpression none(QStringLiteral("[\\p{L}/;,\u060c\u061b]|\\(\\s*0\\s*\\)"));
    static const QRegularExpression digit(QStringLiteral("[0-9]"));
    QString plain = text.normalized(QString::NormalizationForm_KC);
    for (QChar& c : plain) {
        if (c.isDigit()) {
            c = QChar(u'0' + c.digitValue());
        }
    }
    return !none.match(plain).hasMatch() && digit.match(plain).hasMatch();
}

}  // namespace

bool isThisMachine(const QString& hostAndPort)
{
    return pairing::isThisMachine(hostAndPort.trimmed().toStdString());
}

ClinicEditor::ClinicEditor(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace)
{
    connect(&workplace, &Workplace::openChanged, this, &ClinicEditor::open);
    connect(this, &ClinicEditor::changed, this, &ClinicEditor::keep);
}

void ClinicEditor::open()
{
    m_name.clear();
    m_phone.clear();
    m_onCall.clear();
    m_emergency.clear();
    m_people.clear();
    m_hub.clear();
    m_hubKey.clear();
    m_stepProblem.clear();
    m_saved.clear();
    if (m_workplace.isOpen()) {
        if (const auto clinic = m_workplace.desk().clinic()) {
            m_name = QString::fromStdString(clinic->contacts.clinicName);
            m_phone = QString::fromStdString(clinic->contacts.clinicPhone);
            m_onCall = QString::fromStdString(clinic->contacts.onCallPhone);
            m_emergency = QString::fromStdString(clinic->contacts.emergencyNumber);
            QStringList people;
            for (const auto& person : clinic->people) {
                people << QString::fromStdString(person);
            }
            m_people = people.join(u'\n');
        }
        m_hub = recordedHub();
    }
    m_opened = typed();
    takeUpBegun();
    Q_EMIT changed();
    Q_EMIT peopleChanged();
}

QString ClinicEditor::typed() const
{
    const QJsonArray fields{m_name, m_phone, m_onCall, m_emergency, m_people, m_hub, m_hubKey};
    return QString::fromUtf8(QJsonDocument(fields).toJson(QJsonDocument::Compact));
}

void ClinicEditor::keep()
{
    const auto now = typed();
    keepBegun(m_workplace, begunName, now == m_opened ? QString() : now);
}

void ClinicEditor::takeUpBegun()
{
    const auto fields = QJsonDocument::fromJson(begunWords(m_workplace, begunName).toUtf8()).array();
    const std::array all{&m_name, &m_phone, &m_onCall, &m_emergency, &m_people, &m_hub, &m_hubKey};
    for (std::size_t i = 0; i < all.size() && static_cast<qsizetype>(all.size()) == fields.size(); ++i) {
        *all[i] = fields[static_cast<qsizetype>(i)].toString();
    }
}

QStringList ClinicEditor::peopleLines() const
{
    QStringList people;
    for (const auto& line : m_people.split(u'\n')) {
        if (!line.trimmed().isEmpty()) {
            people << line.trimmed();
        }
    }
    people.removeDuplicates();
    return people;
}

QStringList ClinicEditor::missing() const
{
    QStringList missing;
    if (m_name.trimmed().isEmpty()) {
        missing << tr("The clinic's name.");
    }
    if (m_phone.trimmed().isEmpty()) {
        missing << tr("The clinic's phone number.");
    } else if (!isOneNumber(m_phone)) {
        missing << tr("The clinic's phone number as one number, without letters, “/”, “,”, “;” or “(0)”, for example +00 555 0100.");
    }
    if (!m_onCall.trimmed().isEmpty() && !isOneNumber(m_onCall)) {
        missing << tr("The number on call as one number, without letters, “/”, “,”, “;” or “(0)”, for example +00 555 0100.");
    }
    static const QRegularExpression digits(QStringLiteral("^[0-9]{2,6}$"));
    if (!digits.match(m_emergency.trimmed()).hasMatch()) {
        missing << tr("The emergency number, digits only, for example 112.");
    }
    if (peopleLines().isEmpty()) {
        missing << tr("At least one person who works at the desk.");
    }
    if (isHubKeyAsked() && !keyHashOf(m_hubKey)) {
        missing << tr("The fingerprint of the hub's key: 64 digits 0 to 9 and A to F.");
    }
    return missing;
}

QString ClinicEditor::recordedHub() const
{
    const auto hub = m_workplace.desk().hub();
    return hub ? QString::fromStdString(hub->host) : QString();
}

bool ClinicEditor::isHubRenamed() const
{
    return m_workplace.isOpen() && m_hub.trimmed() != recordedHub();
}

bool ClinicEditor::isHubKeyAsked() const
{
    return isHubRenamed() && !m_hub.trimmed().isEmpty() && !isThisMachine(m_hub);
}

QString ClinicEditor::clinicKey() const
{
    if (!m_workplace.isOpen()) {
        return {};
    }
    return QString::fromStdString(bytes::toHex(m_workplace.desk().vault().clinicRootKey().value));
}

QString ClinicEditor::contactsText() const
{
    const auto clinic = m_workplace.isOpen() ? m_workplace.desk().clinic() : std::nullopt;
    if (!clinic) {
        return tr("No number is recorded yet.");
    }
    const auto& contacts = clinic->contacts;
    QStringList lines{tr("%1: %2", "clinic, phone").arg(QString::fromStdString(contacts.clinicName), leftToRight(contacts.clinicPhone))};
    if (!contacts.onCallPhone.empty()) {
        lines << tr("On call: %1").arg(leftToRight(contacts.onCallPhone));
    }
    lines << tr("Emergency: %1").arg(leftToRight(contacts.emergencyNumber));
    return lines.join(u'\n');
}

bool ClinicEditor::isDescribed() const
{
    return m_workplace.isOpen() && m_workplace.desk().clinic().has_value();
}

QString ClinicEditor::person() const
{
    return m_workplace.isOpen() ? QString::fromStdString(m_workplace.desk().person()) : QString();
}

void ClinicEditor::setPerson(const QString& name)
{
    if (m_workplace.isOpen() && name.toStdString() != m_workplace.desk().person()) {
        m_workplace.desk().setPerson(name.toStdString());
        Q_EMIT peopleChanged();
        m_workplace.settle({});
    }
}

void ClinicEditor::copyClinicKey()
{
    QGuiApplication::clipboard()->setText(clinicKey());
    m_saved = tr("The clinic's key is copied.");
    Q_EMIT changed();
}

bool ClinicEditor::areNumbersChanged() const
{
    const auto known = m_workplace.isOpen() ? m_workplace.desk().clinic() : std::nullopt;
    return known
           && (known->contacts.clinicPhone != m_phone.trimmed().toStdString() || known->contacts.onCallPhone != m_onCall.trimmed().toStdString()
               || known->contacts.emergencyNumber != m_emergency.trimmed().toStdString());
}

bool ClinicEditor::areNamesChanged() const
{
    const auto known = m_workplace.isOpen() ? m_workplace.desk().clinic() : std::nullopt;
    if (!known) {
        return false;
    }
    QStringList people;
    for (const auto& person : known->people) {
        people << QString::fromStdString(person);
    }
    return people != peopleLines() || known->contacts.clinicName != m_name.trimmed().toStdString();
}

/// By the role of who is at the desk, of all that was changed; says who may if not.
bool ClinicEditor::mayChange() const
{
    return (!areNumbersChanged() || m_workplace.mayDo(records::Task::numbers)) && (!areNamesChanged() || m_workplace.mayDo(records::Task::people))
           && (!isHubRenamed() || m_workplace.mayDo(records::Task::desks));
}

bool ClinicEditor::save(const QString& passphrase)
{
    if (!m_workplace.isOpen() || !missing().isEmpty() || !mayChange()) {
        Q_EMIT changed();
        return false;
    }
    m_stepProblem = areNumbersChanged() ? prepareStep(m_workplace, true, passphrase, false, -1) : QString();
    if (!m_stepProblem.isEmpty()) {
        Q_EMIT changed();
        return false;
    }
    records::ClinicDescribed clinic;
    clinic.contacts = {m_name.trimmed().toStdString(), m_phone.trimmed().toStdString(), m_onCall.trimmed().toStdString(),
                       m_emergency.trimmed().toStdString()};
    clinic.zone = m_workplace.zone().name();
    for (const auto& person : peopleLines()) {
        clinic.people.push_back(person.toStdString());
    }
    auto outcome = m_workplace.desk().describeClinic(clinic);
    if (outcome && isHubRenamed()) {
        outcome = m_workplace.desk().setHub(m_hub.trimmed().toStdString(), !isThisMachine(m_hub),
                                            keyHashOf(m_hubKey).value_or(bytes::Array<32>{}));
    }
    const bool nobodyLeft = !outcome && outcome.error().reason == Reason::notEnough && areNamesChanged();
    const bool well = m_workplace.settle(nobodyLeft ? Done{} : outcome) && !nobodyLeft;
    if (nobodyLeft) {
        Q_EMIT m_workplace.failed(nobodyLeftText());
    }
    if (well) {
        m_opened = typed();
    }
    m_saved = well ? tr("Saved, %1").arg(clockText(m_workplace.now())) : QString();
    if (well && person().isEmpty()) {
        setPerson(peopleLines().front());
    }
    Q_EMIT changed();
    Q_EMIT peopleChanged();
    return well;
}

}  // namespace ebbline::deskapp
