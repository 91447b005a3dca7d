#pragma once
/// \file
/// Usual messages to patients, in every language of the diary: our own words, common practice, no source. None says how
/// she is, or that anybody has seen anything; what is to be done is said by the clinic on the telephone.

#include <QString>
#include <QStringList>

#include <array>
#include <cstdint>

namespace ebbline::deskapp {

enum class UsualText : std::uint8_t { dressings, writeEntry, comeEarlier, callUs, thankYou };
inline constexpr std::array allUsualTexts{UsualText::dressings, UsualText::writeEntry, UsualText::comeEarlier, UsualText::callUs,
                                          UsualText::thankYou};

/// The message in one of diaryLanguages(), with the clinic's number where she is asked to call; empty for another language.
/// Without a number that sentence is left out.
QString usualText(UsualText text, const QString& language, const std::string& clinicPhone);

/// The one of diaryLanguages() that a patient was registered with ("pt-BR"); empty if the diary does not speak it.
QString diaryLanguageOf(const std::string& registered);

}  // namespace ebbline::deskapp
