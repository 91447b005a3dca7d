#include "app/desk/model/usual_board.h"

#include "app/desk/model/words.h"

#include <QLocale>

namespace ebbline::deskapp {

void UsualBoard::show(const desk::CourseSummary& course, bool urgent, bool waiting)
{
    if (course.course != m_course) {
        m_course = course.course;
        m_registered = m_language = diaryLanguageOf(course.patientLanguage);
        m_chosen = -1;
    }
    if (urgent != m_urgent || waiting != m_waiting) {
        m_urgent = urgent;
        m_waiting = waiting;
        m_chosen = -1;
    }
    Q_EMIT changed();
}

void UsualBoard::empty()
{
    m_course = {};
    m_registered.clear();
    m_language.clear();
    m_urgent = m_waiting = false;
    m_chosen = -1;
    Q_EMIT changed();
}

/// While a call is due a message can only ask for it. Nobody is thanked for what nobody looked at yet.
std::vector<UsualText> UsualBoard::offered() const
{
    if (m_urgent) {
        return {UsualText::callUs};
    }
    std::vector<UsualText> offered(allUsualTexts.begin(), allUsualTexts.end());
    if (m_waiting) {
        std::erase(offered, UsualText::thankYou);
    }
    return offered;
}

QStringList UsualBoard::titles() const
{
    QStringList titles;
    for (const auto text : offered()) {
        switch (text) {
        case UsualText::dressings: titles << tr("Dressings"); break;
        case UsualText::writeEntry: titles << tr("Please write an entry"); break;
        case UsualText::comeEarlier: titles << tr("Come earlier"); break;
        case UsualText::callUs: titles << tr("Please call us"); break;
        case UsualText::thankYou: titles << tr("Thank you"); break;
        }
    }
    return titles;
}

void UsualBoard::choose(int index)
{
    const int next = index >= 0 && index < static_cast<int>(offered().size()) && index != m_chosen ? index : -1;
    if (next != m_chosen) {
        m_chosen = next;
        Q_EMIT changed();
    }
}

QStringList UsualBoard::languages() const
{
    QStringList names;
    for (const auto& code : diaryLanguages()) {
        names << languageName(code);
    }
    return names;
}

int UsualBoard::language() const
{
    return static_cast<int>(diaryLanguages().indexOf(m_language));
}

void UsualBoard::setLanguage(int index)
{
    const auto code = diaryLanguages().value(index);
    if (!code.isEmpty() && code != m_language) {
        m_language = code;
        Q_EMIT changed();
    }
}

QString UsualBoard::languageText() const
{
    return m_registered.isEmpty() ? tr("It is not known which language the patient reads: choose it.")
                                  : tr("The patient was registered with %1.", "a language").arg(languageName(m_registered));
}

QString UsualBoard::words(const QString& language) const
{
    if (m_chosen < 0 || !m_workplace.isOpen()) {
        return {};
    }
    const auto clinic = m_workplace.desk().clinic();
    return usualText(offered()[static_cast<std::size_t>(m_chosen)], language, clinic ? clinic->contacts.clinicPhone : std::string());
}

QString UsualBoard::theirs() const
{
    return words(m_language);
}

QString UsualBoard::theirsLabel() const
{
    return tr("The patient reads, in %1", "a language").arg(languageName(m_language));
}

QString UsualBoard::ours() const
{
    const auto own = nearestLanguage(QLocale().name(), diaryLanguages());
    return own == m_language ? QString() : words(own);
}

QString UsualBoard::caution() const
{
    return m_urgent ? tr("A call is due. A message may be read too late: call first.") : QString();
}

}  // namespace ebbline::deskapp
